"""The first day of a shop with nothing in it: what is asked, what may be skipped, what is typed."""

from __future__ import annotations

import urllib.request

import pytest
from browsing import PHONE, by_test, call, show, sideways, wait_ready
from playwright.sync_api import Page, expect
from shop_process import ShopProcess


class Hands:
    """Somebody who only types and taps; counts the values typed."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.typed = 0

    def type(self, name: str, value: str) -> None:
        """One value into one box."""
        by_test(self.page, name).fill(value)
        self.typed += 1

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
    expect(by_test(page, "press-sizes").locator("svg").first).to_be_visible()
    forget_press(empty_server)


def forget_press(server: ShopProcess) -> None:
    """The shop without a press again, for the next test."""
    with urllib.request.urlopen(f"{server.url}/api/v1/press", timeout=20) as answer:
        etag = answer.headers["ETag"]
    call(f"{server.url}/api/v1/press", "PUT", {"press": None}, etag)
