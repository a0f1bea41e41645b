"""Find a card: by its code, with slips told at once, or among the cards on the device."""

from __future__ import annotations

import random

from browsing import by_test, call, show, sideways, visit, wait_ready
from playwright.sync_api import Page, expect

from flangebook.labels import codes

A_SCREENFUL = 40  # as the screen shows at once


def test_a_long_title_without_a_gap_widens_no_screen(page: Page, shop_server, new_card):
    code = new_card("W" * 120)
    for address, ready in (
        ("/", "home"), ("/labels", "labels"), (f"/c/{code}", "card"), (f"/c/{code}/step/1", "step"),
        (f"/c/{code}/label", "label"), (f"/c/{code}/print", "print"), (f"/c/{code}/note", "note"),
        (f"/c/{code}/result/1", "result"), (f"/c/{code}/history", "history"),
        (f"/part?from={code}", "part"),
    ):  # fmt: skip
        visit(page, f"{shop_server.url}{address}", ready)
        assert sideways(page) <= 0, address


def test_the_code_opens_the_card(page: Page, shop_server):
    show(page, shop_server.url, "home")
    by_test(page, "code").fill("she-7fa1")
    expect(by_test(page, "code-found")).to_contain_text("Shelf bracket, reading room")
    by_test(page, "open").click()
    wait_ready(page, "card")
    expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
    assert page.url.endswith("/c/SHE7FA1")


def test_a_slip_is_told_while_typing(phone: Page, shop_server):
    show(phone, shop_server.url, "home")
    box, fault = by_test(phone, "code"), by_test(phone, "code-fault")
    box.fill("SHE7FA")
    expect(fault).to_have_count(0)
    box.fill("SHE7FA2")
    expect(fault).to_contain_text("check character")
    box.fill("SHE7FU1")
    expect(fault).to_contain_text("no U")
    box.fill("SHE7FA12")
    expect(fault).to_contain_text("seven characters")
    box.fill("SHE7")
    by_test(phone, "open").click()
    expect(fault).to_contain_text("seven characters")
    assert phone.url.rstrip("/") == shop_server.url.rstrip("/")


def test_a_right_code_that_is_not_here_says_so(phone: Page, shop_server, console):
    console.expect("404")
    show(phone, shop_server.url, "home")
    by_test(phone, "code").fill(codes.with_check("ZZZZZ7"))
    expect(by_test(phone, "code-unknown")).to_be_visible()
    by_test(phone, "open").click()
    wait_ready(phone, "card")
    expect(by_test(phone, "unknown-code")).to_contain_text("There is no card ZZZ-ZZ7")


def test_the_browser_checks_codes_as_the_server_does(phone: Page, shop_server):
    rng = random.Random(11)
    typed = [codes.new_code() for _ in range(100)]
    typed += [c[:i] + rng.choice(codes.ALPHABET) + c[i + 1 :] for c in typed for i in (0, 3, 6)]
    typed += ["", "ABC", "she-7fal", "O0ooO00", "ABCDEFU", "ÀBCDEF1", "<script>", "12345678"]
    show(phone, shop_server.url, "home")
    read = phone.evaluate(
        """async (typed) => {
          const { readCode } = await import("/app/scan/card_code.js");
          return typed.map((one) => readCode(one).whole);
        }""",
        typed,
    )
    assert read == [codes.is_code(one) for one in typed]
    assert True in read
    assert False in read


def test_every_card_is_listed_and_words_narrow_it(page: Page, shop_server):
    known = call(f"{shop_server.url}/api/v1/cards?limit=200")
    show(page, shop_server.url, "home")
    lines = by_test(page, "card")
    for shown in range(A_SCREENFUL, known["total"], A_SCREENFUL):  # other tests add cards too
        expect(lines).to_have_count(shown)
        by_test(page, "more").click()
    expect(lines).to_have_count(known["total"])
    expect(by_test(page, "more")).to_have_count(0)
    by_test(page, "search").fill("bracket READING")
    expect(lines).to_have_count(1)
    expect(lines).to_contain_text("SHE-7FA1")
    by_test(page, "search").fill("nothing of the kind")
    expect(lines).to_have_count(0)
    expect(by_test(page, "count")).to_contain_text("None of")
    assert sideways(page) <= 0


def test_the_two_ways_on(phone: Page, shop_server):
    show(phone, shop_server.url, "home")
    by_test(phone, "check-a-bend").click()
    wait_ready(phone, "bend")
    phone.go_back()
    wait_ready(phone, "home")
    by_test(phone, "new-part").click()
    wait_ready(phone, "part")


def test_a_device_without_storage_still_opens_cards(phone: Page, shop_server, console):
    """A browser that refuses IndexedDB is slower, not broken."""
    console.expect("changes feed")
    phone.add_init_script(
        "IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); };"
    )
    show(phone, f"{shop_server.url}/c/SHE7FA1", "card")
    expect(by_test(phone, "card-title")).to_have_text("Shelf bracket, reading room")
