"""A card: opened by its address, with what it is, what to fetch, what may go wrong."""

from __future__ import annotations

import pytest
from browsing import by_test, call, go_to, plain_angle, show, sideways, visit, wait_ready
from playwright.sync_api import APIResponse, Locator, Page, Route, expect

CARD = "ZRA2CKX"
MARKUP = "<img src=x onerror=\"document.title='broken in'\"><script>alert(1)</script> & co"


@pytest.mark.parametrize("address", ["/c/SHE7FA1", "/C/SHE7FA1", "/c/she7fa1", "/C/she-7FAl"])
def test_the_label_s_address_opens_exactly_that_card(phone: Page, shop_server, address: str):
    show(phone, shop_server.url + address, "card")
    expect(by_test(phone, "card-code")).to_have_text("SHE-7FA1")
    expect(by_test(phone, "card-title")).to_have_text("Shelf bracket, reading room")


def test_what_a_card_shows(page: Page, shop_server):
    card = call(f"{shop_server.url}/api/v1/cards/SHE7FA1")
    show(page, f"{shop_server.url}/c/SHE7FA1", "card")
    expect(by_test(page, "card-what")).to_contain_text("3 mm")
    for tool in card["plan"]["tools"]:
        row = page.locator(f"[data-test=tools] [data-code='{tool['code']}']")
        expect(row).to_contain_text(tool["code"])
        if tool["tray"]:
            expect(row).to_contain_text(tool["tray"])
    length = f"{card['plan']['blank']['length_mm']:.2f}"
    expect(by_test(page, "blank-length")).to_contain_text(length)
    expect(by_test(page, "section")).to_be_visible()
    expect(by_test(page, "result")).to_have_count(min(3, len(card["trials"])))
    assert sideways(page) <= 0


def test_a_stop_is_in_view_before_the_way_on(page: Page, shop_server):
    plan = {**plain_angle("Too sharp for any die"), "bends": [
        {"included_angle_deg": 20, "direction": "up"}]}  # fmt: skip
    made = call(f"{shop_server.url}/api/v1/cards", "POST", {"part": plan})
    assert made["worst"] == "stop"
    show(page, f"{shop_server.url}/c/{made['code']}", "card")
    stop = page.locator(".card-stops [data-level=stop]").first
    expect(stop).to_be_in_viewport()
    expect(stop).to_contain_text("Stop")


def test_from_the_card_to_its_other_pages(phone: Page, shop_server):
    for name, ready in (("history", "history"), ("label", "label"), ("print", "print")):
        show(phone, f"{shop_server.url}/c/SHE7FA1", "card")
        by_test(phone, name).click()
        wait_ready(phone, ready)
    show(phone, f"{shop_server.url}/c/SHE7FA1", "card")
    by_test(phone, "edit").click()
    wait_ready(phone, "part")
    expect(by_test(phone, "title")).to_have_value("Shelf bracket, reading room")


def test_markup_in_a_title_and_note_is_only_words(page: Page, shop_server):
    made = call(
        f"{shop_server.url}/api/v1/cards",
        "POST",
        {"part": plain_angle(MARKUP), "note": MARKUP, "by": MARKUP[:70]},
    )
    for address, ready, name in (
        ("", "card", "card-title"),
        ("/step/1", "step", "to-card"),
        ("/result/1", "result", "to-card"),
        ("/history", "history", "history-screen"),
    ):
        visit(page, f"{shop_server.url}/c/{made['code']}{address}", ready)
        expect(by_test(page, name)).to_contain_text(MARKUP)
        assert page.locator("main img").count() == 0
        assert "broken in" not in (page.title().split(" · ")[-1])
    show(page, shop_server.url, "home")
    expect(page.locator(f"[data-code='{made['code']}']")).to_contain_text(MARKUP)
    assert page.evaluate("document.querySelectorAll('main script').length") == 0


def test_a_code_nobody_has(phone: Page, shop_server, console):
    console.expect("404")
    show(phone, f"{shop_server.url}/c/0000000", "card")
    expect(by_test(phone, "unknown-code")).to_contain_text("There is no card 000-0000")
    show(phone, f"{shop_server.url}/c/0000000/step/1", "step")
    expect(by_test(phone, "unknown-code")).to_be_visible()


def test_a_wrong_check_character_is_told_without_asking(phone: Page, shop_server):
    asked: list[str] = []
    phone.on("request", lambda request: asked.append(request.url))
    for rest, ready in (("", "card"), ("/step/1", "step"), ("/result/1", "result")):
        visit(phone, f"{shop_server.url}/c/SHE7FA2{rest}", ready)
        expect(by_test(phone, "bad-code")).to_contain_text("check character")
    assert not any("/cards/" in url for url in asked)


def test_a_card_says_when_a_fresh_plan_would_differ(wide: Page, shop_server):
    """The shop's die changes; the saved card does not, and says so."""
    made = call(f"{shop_server.url}/api/v1/cards", "POST", {"part": plain_angle("Old plan")})
    code, die = made["code"], made["plan"]["steps"][0]["die"]
    show(wide, f"{shop_server.url}/c/{code}", "card")
    expect(by_test(wide, "fresh")).to_have_count(0)
    with shop_server.changed_die(die, tray="Z9"):
        show(wide, f"{shop_server.url}/c/{code}", "card")
        expect(by_test(wide, "fresh")).to_contain_text("A fresh plan differs")
        by_test(wide, "fresh").locator("summary").click()
        expect(by_test(wide, "fresh").locator("tr", has_text="tray")).to_contain_text("Z9")
        expect(page_tools(wide, die)).not_to_contain_text("Z9")
        by_test(wide, "take-fresh").click()
        expect(by_test(wide, "fresh")).to_have_count(0)
        expect(page_tools(wide, die)).to_contain_text("Z9")
        assert call(f"{shop_server.url}/api/v1/cards/{code}")["revision"] == 2


def page_tools(page: Page, code: str) -> Locator:
    return by_test(page, "tools").locator(f"[data-code='{code}']")


def test_a_copy_is_a_new_card_and_the_first_one_stays(page: Page, shop_server):
    """Its form begins as the card's part; a reload keeps what was typed since."""
    before = call(f"{shop_server.url}/api/v1/cards/{CARD}")
    show(page, f"{shop_server.url}/c/{CARD}", "card")
    by_test(page, "copy").click()
    wait_ready(page, "part")
    expect(page.locator("#title")).to_have_value(f"Copy of {before['title']}")
    page.locator("#title").fill("A longer one")
    page.locator("#bend_length_mm").fill("480")
    page.reload()
    wait_ready(page, "part")
    expect(page.locator("#title")).to_have_value("A longer one")
    expect(by_test(page, "part")).to_have_attribute("data-busy", "false")
    by_test(page, "save").click()
    wait_ready(page, "card")
    expect(by_test(page, "card-title")).to_have_text("A longer one")
    code = page.url.rsplit("/", 1)[-1]
    made = call(f"{shop_server.url}/api/v1/cards/{code}")
    assert made["code"] != before["code"]
    assert (made["revision"], made["part"]["bend_length_mm"]) == (1, 480)
    assert made["part"]["flats_mm"] == before["part"]["flats_mm"]
    assert call(f"{shop_server.url}/api/v1/cards/{CARD}")["etag"] == before["etag"]


def test_a_card_is_archived_by_its_button_and_has_a_place(page: Page, own_server):
    show(page, f"{own_server.url}/c/{CARD}", "card")
    by_test(page, "archive").click()
    expect(page.locator("#notices")).to_contain_text("Archived.")
    expect(by_test(page, "archive")).to_have_text("Use again")
    assert call(f"{own_server.url}/api/v1/cards/{CARD}")["archived"]
    show(page, own_server.url, "home")
    away = by_test(page, "archived")
    away.locator("summary").click()
    away.locator(f"[data-code={CARD}]").click()
    wait_ready(page, "card")
    by_test(page, "archive").click()
    expect(page.locator("#notices")).to_contain_text("In use again.")
    expect(by_test(page, "archive")).to_have_text("Archive")
    assert not call(f"{own_server.url}/api/v1/cards/{CARD}")["archived"]
    show(page, own_server.url, "home")
    expect(by_test(page, "archived")).to_have_count(0)


def test_a_page_of_the_feed_that_was_on_its_way_puts_nothing_back(page: Page, own_server, console):
    """It was asked for before the card was archived, and comes after."""
    console.expect("ERR_FAILED")
    held: list[tuple[Route, APIResponse]] = []

    def hold(route: Route) -> None:
        if held:
            route.abort()
        else:
            held.append((route, route.fetch()))

    page.route("**/api/v1/changes?*", hold)
    show(page, f"{own_server.url}/c/{CARD}", "card")
    while not held:
        page.wait_for_timeout(50)
    by_test(page, "archive").click()
    expect(page.locator("#notices")).to_contain_text("Archived.")
    (route, response), *_ = held
    route.fulfill(response=response)
    go_to(page, "/", "home")
    expect(by_test(page, "cards").locator("[data-test=card]").nth(3)).to_be_visible()
    page.route(f"**/api/v1/cards/{CARD}", lambda route: route.abort())  # as the device has it
    go_to(page, f"/c/{CARD}", "card")
    expect(by_test(page, "archive")).to_have_text("Use again")


def test_a_card_is_found_by_its_thickness(phone: Page, shop_server):
    show(phone, shop_server.url, "home")
    by_test(phone, "search").fill("1.2 mm")
    cards = by_test(phone, "cards").locator("[data-test=card]")
    listed = call(f"{shop_server.url}/api/v1/cards?limit=200")["cards"]
    right = {card["code"] for card in listed if card["thickness_mm"] == 1.2}
    assert right
    expect(cards).to_have_count(len(right))
    assert {card.get_attribute("data-code") for card in cards.all()} == right
