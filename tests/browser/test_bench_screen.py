"""The bench screen follows the phone and its own foot switch, through dead servers and bad air.

Two devices each time: the large display at the machine and the phone in the hand.
"""

from __future__ import annotations

import time
from typing import Any
from urllib.parse import quote
from urllib.request import Request, urlopen

import pytest
from browsing import SILENCE, by_test, call, show, sideways, wait_ready
from playwright.sync_api import Page, expect
from shop_process import ShopProcess

CODE = "STEP6BQ"
STEPS = 6
MOVED = "412"
REST_MS = 350  # longer than the rest between two presses
PATIENCE_S = 20.0
NUMBERS = ["gauge-x-value", "gauge-r-value", "set-angle-value", "punch-depth-value"]


def put(server, name: str, code: str | None, step: int) -> Any:
    url = f"{server.url}/api/v1/press-screens/{quote(name)}"
    return call(url, "PUT", {"code": code, "step": step})


def take_out(server, name: str) -> None:
    url = f"{server.url}/api/v1/press-screens/{quote(name)}"
    with urlopen(Request(url, method="DELETE"), timeout=20):
        pass


def stands(server, name: str) -> tuple[str | None, int]:
    bench = call(f"{server.url}/api/v1/press-screens/{quote(name)}")
    return bench["code"], bench["step"]


def comes_to_stand(server, name: str, step: int, code: str = CODE) -> None:
    """A display shows its own step before the shop has it."""
    until = time.monotonic() + PATIENCE_S
    while stands(server, name) != (code, step):
        assert time.monotonic() < until, stands(server, name)
        time.sleep(0.1)


def at_bench(page: Page, server, name: str) -> Page:
    """A display that was told which bench it is."""
    show(page, f"{server.url}/press-screen", "press-screen")
    page.get_by_role("button", name=name, exact=True).click()
    expect(by_test(page, "press-screen-name")).to_contain_text(name)
    return page


def on_step(page: Page, step: int, code: str = CODE) -> None:
    expect(by_test(page, "press-screen-step")).to_have_attribute("data-step", str(step))
    expect(by_test(page, "press-screen-step")).to_have_attribute("data-code", code)


def phone_on_step(page: Page, step: int) -> None:
    page.wait_for_url(f"**/c/{CODE}/step/{step}")
    expect(by_test(page, "step-number")).to_have_text(f"Step {step} of {STEPS}")


def press(page: Page, key: str) -> None:
    page.wait_for_timeout(REST_MS)
    page.keyboard.press(key)


@pytest.fixture
def server(shop_server: ShopProcess) -> ShopProcess:
    """The file's server without a bench, whatever the tests before have made."""
    address = f"{shop_server.url}/api/v1/press-screens"
    for bench in call(address)["press_screens"]:
        take_out(shop_server, bench["name"])
    return shop_server


@pytest.fixture
def display(wide: Page, server: ShopProcess) -> Page:
    """The display at bench 1, with nothing on it."""
    put(server, "1", None, 0)
    return at_bench(wide, server, "Press screen 1")


@pytest.fixture
def own_display(wide: Page, own_server: ShopProcess) -> Page:
    """The same, in a shop that the test may kill."""
    put(own_server, "1", None, 0)
    return at_bench(wide, own_server, "Press screen 1")


def chosen(phone: Page, server, step: int) -> Page:
    """The phone opens a step and shows it on bench 1."""
    show(phone, f"{server.url}/c/{CODE}/step/{step}", "step")
    by_test(phone, "put-on-press-screen").click()
    expect(by_test(phone, "on-press-screen")).to_contain_text("On press screen 1")
    return phone


def test_a_new_press_screen_is_made_at_the_display(wide: Page, server, console):
    console.expect("422")
    wide.add_init_script("delete Navigator.prototype.wakeLock")
    show(wide, f"{server.url}/press-screen", "press-screen")
    expect(wide.locator("#masthead")).to_be_hidden()
    expect(by_test(wide, "may-go-dark")).to_contain_text("switch off sleep")
    by_test(wide, "make-press-screen").click()
    expect(by_test(wide, "wrong-press-screen")).to_be_visible()
    by_test(wide, "press-screen").fill("Big press")
    by_test(wide, "make-press-screen").click()
    expect(by_test(wide, "press-screen-idle")).to_contain_text("Open a card on a phone")
    assert stands(server, "Big press") == (None, 0)
    show(wide, f"{server.url}/press-screen", "press-screen")
    expect(by_test(wide, "press-screen-idle")).to_contain_text("Big press")
    by_test(wide, "press-screen-name").click()
    by_test(wide, "stay").click()
    expect(by_test(wide, "press-screen-idle")).to_be_visible()


def test_no_press_screen_no_choice_on_the_phone(phone: Page, server):
    with phone.expect_response("**/api/v1/press-screens"):
        show(phone, f"{server.url}/c/{CODE}/step/1", "step")
    expect(by_test(phone, "put-on-press-screen")).to_have_count(0)
    put(server, "1", None, 0)
    show(phone, f"{server.url}/c/{CODE}/step/1", "step")
    expect(by_test(phone, "put-on-press-screen")).to_have_text("Show on press screen 1")


def test_the_display_follows_the_phone_and_the_phone_the_foot_switch(
    display: Page, phone: Page, server
):
    chosen(phone, server, 1)
    on_step(display, 1)
    by_test(phone, "next").click()
    on_step(display, 2)
    press(display, "PageDown")
    on_step(display, 3)
    phone_on_step(phone, 3)
    press(display, "PageUp")
    phone_on_step(phone, 2)
    by_test(display, "next").click()
    phone_on_step(phone, 3)
    phone.keyboard.press("ArrowRight")
    on_step(display, 4)
    assert stands(server, "1") == (CODE, 4)


def test_the_numbers_are_the_card_s(display: Page, server):
    steps = call(f"{server.url}/api/v1/cards/{CODE}")["plan"]["steps"]
    for step in steps:
        put(server, "1", CODE, step["number"])
        on_step(display, step["number"])
        for name, key, abs_tol in (
            ("gauge-x-value", "gauge_x_mm", 0.0501),
            ("set-angle-value", "set_angle_deg", 0.0501),
            ("punch-depth-value", "punch_depth_mm", 0.00501),
        ):
            shown = by_test(display, name).inner_text().replace("−", "-").replace("°", "")
            assert float(shown) == pytest.approx(step[key], abs=abs_tol)
        tools = by_test(display, "tools")
        expect(tools).to_contain_text(step["punch"])
        expect(tools).to_contain_text(step["die"])
        expect(tools).to_contain_text("Tray")
        expect(by_test(display, "sheet")).to_be_visible()
        assert ("over" in by_test(display, "move").inner_text()) == step["turn_over"]


def test_the_numbers_can_be_read_from_two_metres(page: Page, server):
    put(server, "1", CODE, 3)
    at_bench(page, server, "Press screen 1")
    on_step(page, 3)
    height = page.viewport_size["height"]
    for name in NUMBERS:
        number = by_test(page, name)
        size = float(number.evaluate("(one) => parseFloat(getComputedStyle(one).fontSize)"))
        assert size >= height / 14, name
        expect(number).to_be_in_viewport(ratio=0.99)
        assert number.evaluate("(one) => one.scrollWidth <= one.clientWidth"), name
    assert sideways(page) <= 0
    for name in ("back", "next"):
        assert by_test(page, name).bounding_box()["height"] >= 64


def test_every_step_of_the_shop_fits_on_the_large_display(display: Page, server):
    """Nobody has a hand free to scroll: cautions too are on the screen at once."""
    over = []
    for card in call(f"{server.url}/api/v1/cards?limit=200")["cards"]:
        steps = call(f"{server.url}/api/v1/cards/{card['code']}")["plan"]["steps"]
        for step in steps:
            put(server, "1", card["code"], step["number"])
            on_step(display, step["number"], card["code"])
            too_high = display.evaluate("document.documentElement.scrollHeight - innerHeight")
            if too_high > 0:
                over.append((card["code"], step["number"], too_high))
    assert over == []


@pytest.mark.parametrize("key", ["ArrowRight", "PageDown", "Space", "Enter"])
def test_keys_that_go_on(display: Page, server, key: str):
    put(server, "1", CODE, 1)
    on_step(display, 1)
    press(display, key)
    on_step(display, 2)


@pytest.mark.parametrize("key", ["ArrowLeft", "PageUp", "Backspace"])
def test_keys_that_go_back(display: Page, server, key: str):
    put(server, "1", CODE, 3)
    on_step(display, 3)
    press(display, key)
    on_step(display, 2)


def test_a_key_held_down_or_bouncing_is_one_step(display: Page, server):
    put(server, "1", CODE, 1)
    on_step(display, 1)
    for _ in range(8):  # held: the same key down again and again
        display.keyboard.down("Enter")
        display.wait_for_timeout(60)
    display.keyboard.up("Enter")
    on_step(display, 2)
    display.wait_for_timeout(REST_MS)
    display.evaluate(
        """() => { for (let n = 0; n < 5; n += 1) {
          for (const kind of ["keydown", "keyup"]) {
            const press = new KeyboardEvent(kind, { key: "PageDown", bubbles: true });
            document.body.dispatchEvent(press);
          } } }"""
    )
    on_step(display, 3)
    comes_to_stand(server, "1", 3)
    display.wait_for_timeout(REST_MS)
    on_step(display, 3)
    assert stands(server, "1") == (CODE, 3)


def test_after_a_touch_the_foot_switch_still_goes_on(display: Page, server):
    """The button that was touched does not keep the key for itself."""
    put(server, "1", CODE, 3)
    on_step(display, 3)
    by_test(display, "back").click()
    on_step(display, 2)
    press(display, "Space")
    on_step(display, 3)


def test_done_after_the_last_step_and_on_with_the_next_piece(display: Page, phone: Page, server):
    chosen(phone, server, STEPS)
    on_step(display, STEPS)
    press(display, "Enter")
    expect(by_test(display, "press-screen-done")).to_contain_text("Done")
    press(display, "Enter")
    on_step(display, 1)
    phone_on_step(phone, 1)
    put(server, "1", CODE, STEPS + 1)
    by_test(display, "clear-press-screen").click()
    expect(by_test(display, "press-screen-idle")).to_be_visible()
    expect(
        by_test(phone, "put-on-press-screen")
    ).to_be_visible()  # the phone's card is not there any more


def test_a_server_killed_in_the_middle_comes_back_by_itself(
    own_display: Page, phone: Page, own_server, console
):
    console.expect(SILENCE)
    console.expect(MOVED)
    chosen(phone, own_server, 2)
    on_step(own_display, 2)
    own_server.kill()
    expect(by_test(own_display, "alone")).to_contain_text("stepping here only")
    expect(by_test(phone, "on-press-screen")).to_contain_text("does not answer")
    on_step(own_display, 2)
    press(own_display, "PageDown")
    on_step(own_display, 3)
    press(own_display, "PageDown")
    on_step(own_display, 4)
    own_server.start()
    expect(by_test(own_display, "alone")).to_have_count(0)
    on_step(own_display, 4)
    phone_on_step(phone, 4)
    assert stands(own_server, "1") == (CODE, 4)
    by_test(phone, "next").click()
    on_step(own_display, 5)


def test_a_display_opened_afresh_without_the_shop_stands_where_it_stood(
    own_display: Page, own_server, console
):
    console.expect(SILENCE)
    own_display.wait_for_selector("html[data-offline-ready=true]", timeout=60_000)
    put(own_server, "1", CODE, 2)
    on_step(own_display, 2)
    own_server.kill()
    press(own_display, "Enter")
    on_step(own_display, 3)
    own_display.reload()
    wait_ready(own_display, "press-screen")
    on_step(own_display, 3)
    expect(by_test(own_display, "alone")).to_be_visible()
    own_server.start()
    expect(by_test(own_display, "alone")).to_have_count(0)
    on_step(own_display, 3)
    comes_to_stand(own_server, "1", 3)


def test_what_was_stepped_alone_gives_way_to_who_moved_the_press_screen(
    display: Page, server, console
):
    """The display was cut off, the shop was not: versions decide, and nobody is jumped over."""
    console.expect("ERR_FAILED|ERR_INTERNET_DISCONNECTED")
    console.expect(MOVED)
    put(server, "1", CODE, 2)
    on_step(display, 2)
    display.context.route("**/api/**", lambda route: route.abort())
    expect(by_test(display, "alone")).to_be_visible()
    press(display, "Enter")
    on_step(display, 3)
    put(server, "1", CODE, 5)
    display.context.unroute_all()
    on_step(display, 5)
    assert stands(server, "1") == (CODE, 5)


def test_a_step_of_the_phone_that_got_old_is_not_sent_any_more(
    display: Page, phone: Page, server, console
):
    console.expect("ERR_FAILED")
    chosen(phone, server, 1)
    on_step(display, 1)
    phone.context.route("**/api/**", lambda route: route.abort())
    by_test(phone, "next").click()
    phone.wait_for_timeout(9_000)  # longer than a step is kept
    phone.context.unroute_all()
    expect(by_test(phone, "on-press-screen")).to_contain_text("Not shown there")
    on_step(display, 1)
    assert stands(server, "1") == (CODE, 1)
    by_test(phone, "show-again").click()
    on_step(display, 2)


def test_two_presses_do_not_know_of_each_other(
    display: Page, phone: Page, devices, server, console
):
    put(server, "Big press", "SHE7FA1", 1)
    other = console.watch(devices.take(viewport={"width": 1280, "height": 800}))
    at_bench(other, server, "Big press")
    on_step(other, 1, "SHE7FA1")
    show(phone, f"{server.url}/c/{CODE}/step/1", "step")
    phone.select_option("#press-screen", "1")
    by_test(phone, "put-on-press-screen").click()
    on_step(display, 1)
    press(display, "Enter")
    on_step(display, 2)
    press(other, "Enter")
    expect(by_test(other, "press-screen-done")).to_be_visible()
    on_step(display, 2)
    comes_to_stand(server, "1", 2)
    comes_to_stand(server, "Big press", 2, "SHE7FA1")
    # What was chosen last is offered first.
    by_test(phone, "off-press-screen").click()
    expect(by_test(phone, "put-on-press-screen")).to_have_text("Show on press screen 1")


def test_two_screens_at_one_press_show_the_same(display: Page, devices, server, console):
    put(server, "1", CODE, 1)
    other = console.watch(devices.take(viewport={"width": 1280, "height": 800}))
    at_bench(other, server, "Press screen 1")
    on_step(display, 1)
    press(display, "Enter")
    on_step(other, 2)
    press(other, "Enter")
    on_step(display, 3)


def test_from_the_card_straight_to_the_press_screen(display: Page, phone: Page, server):
    show(phone, f"{server.url}/c/{CODE}", "card")
    by_test(phone, "put-on-press-screen").click()
    phone_on_step(phone, 1)
    on_step(display, 1)
    phone.reload()
    wait_ready(phone, "step")
    press(display, "Enter")
    phone_on_step(phone, 2)


def test_a_press_screen_taken_out_is_asked_for_again(display: Page, server, console):
    console.expect("404")
    take_out(server, "1")
    expect(by_test(display, "press-screen-choose")).to_be_visible()


def test_a_newer_revision_is_told_and_comes_with_the_next_step(own_display: Page, own_server):
    put(own_server, "1", CODE, 2)
    on_step(own_display, 2)
    card = call(f"{own_server.url}/api/v1/cards/{CODE}")
    settings = [{"step": 2, "set_angle_deg": 88.7}]
    call(f"{own_server.url}/api/v1/cards/{CODE}", "PUT", {"settings": settings}, card["etag"])
    expect(by_test(own_display, "newer")).to_contain_text(f"revision {card['revision'] + 1}")
    expect(by_test(own_display, "set-angle-value")).not_to_have_text("88.7°")
    by_test(own_display, "show-newer").click()
    expect(by_test(own_display, "set-angle-value")).to_have_text("88.7°")
    expect(by_test(own_display, "newer")).to_have_count(0)


def test_the_owner_takes_a_press_screen_out_and_its_screen_asks_which_it_is(
    display: Page, phone: Page, server, console
):
    console.expect("404")
    put(server, "Big press", CODE, 2)
    show(phone, f"{server.url}/shop", "shop")
    rows = by_test(phone, "press-screen-row")
    expect(rows).to_have_count(2)
    expect(rows.filter(has_text="Big press")).to_contain_text("STE-P6BQ")
    asked: list[str] = []
    phone.once("dialog", lambda question: (asked.append(question.message), question.dismiss()))
    by_test(rows.filter(has_text="Press screen 1"), "remove-press-screen").click()
    expect(rows).to_have_count(2)
    assert asked[0].startswith("Take press screen 1 out of the shop?")
    expect(by_test(display, "press-screen-idle")).to_be_visible()
    phone.once("dialog", lambda question: question.accept())
    by_test(rows.filter(has_text="Press screen 1"), "remove-press-screen").click()
    expect(rows).to_have_count(1)
    assert [one["name"] for one in call(f"{server.url}/api/v1/press-screens")["press_screens"]] == [
        "Big press"
    ]
    expect(by_test(display, "press-screen-choose")).to_be_visible()
    expect(by_test(display, "take-press-screen")).to_have_text("Big press")
    assert sideways(phone) <= 0
