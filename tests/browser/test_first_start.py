"""The first day of a shop with nothing in it: what is asked, what may be skipped, what is typed."""

from __future__ import annotations

import urllib.request

import pytest
from browsing import PHONE, SILENCE, by_test, call, show, sideways, unfold, wait_ready
from playwright.sync_api import Page, expect
from shop_process import ShopProcess


class Hands:
    """Somebody who only types and taps; counts the values typed, each of a list."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.typed = 0

    def type(self, name: str, value: str) -> None:
        """A value into a box, or several with commas between."""
        by_test(self.page, name).fill(value)
        self.typed += len(value.split(","))

    def tap(self, name: str) -> None:
        """One tap on what a screen names."""
        by_test(self.page, name).click()


def test_an_empty_shop_opens_with_three_steps_each_can_be_skipped(page: Page, empty_server):
    show(page, empty_server.url, "home")
    steps = by_test(page, "first-steps").locator("li")
    expect(steps).to_have_count(3)
    for step, words in zip(steps.all(), ("Units", "Press", "Tools"), strict=True):
        expect(step).to_contain_text(words)
    largest = by_test(page, "check-a-bend").bounding_box()
    assert largest
    assert largest["y"] + largest["height"] < page.viewport_size["height"]
    assert sideways(page) == 0
    for step in ("units", "press", "tools"):
        by_test(page, f"later-{step}").click()
        expect(by_test(page, f"later-{step}")).to_have_count(0)
    expect(by_test(page, "first-steps")).to_have_count(0)
    expect(by_test(page, "scan")).to_be_visible()
    page.reload()
    wait_ready(page, "home")
    expect(by_test(page, "scan")).to_be_visible()
    expect(by_test(page, "first-steps")).to_have_count(0)


@pytest.mark.parametrize(
    ("locale", "guessed"), [("en-US", "inch and tons"), ("en-GB", "mm and kN"), ("de", "mm and kN")]
)
def test_units_are_guessed_from_the_browsers_language_and_asked(
    devices, empty_server, console, locale, guessed
):
    phone = console.watch(devices.take(viewport=PHONE, has_touch=True, locale=locale))
    show(phone, empty_server.url, "home")
    expect(by_test(phone, "units").get_by_label(guessed)).to_be_checked()
    other = "mm and kN" if guessed.startswith("inch") else "inch and tons"
    by_test(phone, "units").get_by_label(other).check()
    show(phone, f"{empty_server.url}/settings", "settings")
    expect(by_test(phone, "units").get_by_label(other)).to_be_checked()


def test_a_device_that_chose_its_units_keeps_them(devices, empty_server, console):
    phone = console.watch(devices.take(viewport=PHONE, has_touch=True, locale="en-US"))
    phone.add_init_script("localStorage['flangebook.settings'] = '{\"units\": \"mm\"}'")
    show(phone, empty_server.url, "home")
    expect(by_test(phone, "units").get_by_label("mm and kN")).to_be_checked()


def test_a_bend_without_a_press_or_tools_takes_at_most_three_values(page: Page, empty_server):
    hands = Hands(page)
    show(page, empty_server.url, "home")
    hands.tap("check-a-bend")
    wait_ready(page, "bend")
    hands.type("thickness_mm", "2")
    hands.type("bend_length_mm", "200")
    expect(by_test(page, "first")).to_contain_text("plain stand-in tools")
    assert hands.typed <= 3
    for code in ("press-unknown", "die-assumed", "punch-assumed"):
        expect(page.locator(f'[data-code="{code}"]').first).to_be_attached()
    expect(by_test(page, "urgent")).to_have_count(0)
    expect(by_test(page, "set_angle_deg")).to_contain_text("°")
    expect(by_test(page, "to-first-tools")).to_be_visible()


def test_the_shop_with_a_press_and_tools_opens_as_ever(phone: Page, shop_server):
    show(phone, shop_server.url, "home")
    expect(by_test(phone, "scan")).to_be_visible()
    expect(by_test(phone, "first-steps")).to_have_count(0)


def test_a_press_takes_its_name_force_and_bed_length(page: Page, empty_server):
    hands = Hands(page)
    show(page, empty_server.url, "home")
    hands.tap("to-press")
    wait_ready(page, "press")
    expect(by_test(page, "stroke_mm")).to_be_hidden()
    hands.type("name", "The old one")
    hands.type("force_kn", "400")
    hands.type("bed_length_mm", "2000")
    hands.tap("save")
    wait_ready(page, "shop")
    assert hands.typed == 3
    press = call(f"{empty_server.url}/api/v1/press")["press"]
    assert press["bed_length_mm"] == 2000
    sizes = ("between_frames_mm", "stroke_mm", "throat_mm", "gauge_r_max_mm", "finger_depth_mm")
    assert [press[size] for size in sizes] == [None] * 5
    show(page, f"{empty_server.url}/bend?thickness=2&length=200", "bend")
    frames = page.locator('[data-code="longer-than-frames"]').first
    expect(frames).to_have_attribute("data-level", "unknown")
    frames.locator("summary").click()
    expect(frames).to_contain_text("To know whether the sheet clears the frames, measure")
    show(page, f"{empty_server.url}/shop/press", "press")
    expect(by_test(page, "more-figures")).to_contain_text("not known")
    unfold(page)
    expect(by_test(page, "press-sizes").locator("svg").first).to_be_visible()
    forget_press(empty_server)


def test_press_block_and_three_punches_take_at_most_twenty_values(page: Page, new_server):
    hands = Hands(page)
    show(page, f"{new_server.url}/shop/press", "press")
    for name, value in {"name": "Old one", "force_kn": "400", "bed_length_mm": "2000"}.items():
        hands.type(name, value)
    save(hands, "shop")
    show(page, f"{new_server.url}/shop/dies/+", "tool")
    hands.tap("shape-block")
    hands.type("vs", "16, 22, 35, 50")
    hands.type("angles", "85")
    hands.type("rating_kn_per_m", "1000")
    expect(by_test(page, "assumed")).to_contain_text("height")
    expect(by_test(page, "outline")).to_be_visible()
    save(hands, "tools")
    expect(by_test(page, "row-D1")).to_contain_text("Sizes assumed")
    for shape, angle, radius in (("straight", "85", "1"), ("acute", "30", "0.8"),
                                 ("gooseneck", "85", "2")):  # fmt: skip
        show(page, f"{new_server.url}/shop/punches/+", "tool")
        hands.tap(f"shape-{shape}")
        hands.type("angle_deg", angle)
        hands.type("tip_radius_mm", radius)
        hands.type("rating_kn_per_m", "800")
        save(hands, "tools")
    assert hands.typed <= 20
    show(page, f"{new_server.url}/bend?thickness=2&length=200", "bend")
    answer = call(
        f"{new_server.url}/api/v1/bend", "POST",
        {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 200,
         "included_angle_deg": 90},
    )  # fmt: skip
    levels = {check["code"]: check["level"] for check in answer["checks"]}
    assert "stop" not in levels.values()
    assert (answer["die"], answer["v_opening_mm"]) == ("D1.1", 16)
    assert levels["punch-pieces-unknown"] == levels["die-sizes-assumed"] == "unknown"
    assert levels["press-load"] == levels["die-load"] == "ok"
    expect(by_test(page, "chosen")).to_contain_text("D1.1")
    expect(page.locator('[data-code="die-sizes-assumed"]')).to_contain_text("assumed")
    show(page, f"{new_server.url}/", "home")
    expect(by_test(page, "first-steps")).to_have_count(0)


def test_a_size_measured_later_is_assumed_no_more(wide: Page, empty_server):
    show(wide, f"{empty_server.url}/shop/dies/+", "tool")
    for name, value in {"code": "LATER", "v_opening_mm": "20", "angle_deg": "85"}.items():
        by_test(wide, name).fill(value)
    save(Hands(wide), "tools")
    show(wide, f"{empty_server.url}/shop/dies/LATER", "tool")
    expect(by_test(wide, "height_mm")).to_have_value("")
    expect(wide.locator("#height_mm-more")).to_contain_text("60 mm, assumed")
    by_test(wide, "height_mm").fill("80")
    save(Hands(wide), "tools")
    kept = call(f"{empty_server.url}/api/v1/dies")["dies"]
    die = next(one for one in kept if one["code"] == "LATER")
    assert (die["height_mm"], die["assumed"]) == (80, ["shoulder_radius_mm", "width_mm"])


def test_the_guide_opens_without_the_shop(phone: Page, new_server, console):
    console.expect(SILENCE)
    show(phone, new_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    new_server.kill()
    show(phone, f"{new_server.url}/guide", "guide")
    pages = by_test(phone, "guide").locator("a")
    assert 1 <= pages.count() <= 8
    for address in [page.get_attribute("href") for page in pages.all()]:
        show(phone, f"{new_server.url}{address}", "guide-page")
        expect(by_test(phone, "guide-page").locator("svg")).to_be_visible()
        assert sideways(phone) == 0
    show(phone, f"{new_server.url}/words", "words")
    sections = by_test(phone, "words").locator("section")
    assert sections.count() == by_test(phone, "words").locator("svg").count()


def test_a_tap_on_a_word_says_what_it_means_and_what_was_typed_stays(page: Page, empty_server):
    show(page, f"{empty_server.url}/bend?thickness=2&length=200", "bend")
    by_test(page, "word-deduction").click()
    said = page.locator("dialog.word-entry")
    expect(said).to_contain_text("blank = A + B")
    expect(said.locator("svg")).to_be_visible()
    by_test(page, "close-word").click()
    expect(said).to_be_hidden()
    unfold(page)
    by_test(page, "word-k-factor").click()
    expect(said).to_contain_text("0.5 the middle")
    page.keyboard.press("Escape")
    show(page, f"{empty_server.url}/shop/dies/+", "tool")
    by_test(page, "v_opening_mm").fill("16")
    by_test(page, "word-v-opening").click()
    expect(said).to_contain_text("8 times")
    page.keyboard.press("Escape")
    expect(by_test(page, "v_opening_mm")).to_have_value("16")


def save(hands: Hands, ready: str) -> None:
    """Save, and nothing is found wrong."""
    hands.tap("save")
    wait_ready(hands.page, ready)


def forget_press(server: ShopProcess) -> None:
    """The shop without a press again, for the next test."""
    with urllib.request.urlopen(f"{server.url}/api/v1/press", timeout=20) as answer:
        etag = answer.headers["ETag"]
    call(f"{server.url}/api/v1/press", "PUT", {"press": None}, etag)
