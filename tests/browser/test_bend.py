"""Check one bend: answers while typing, findings first, every other die with its reason."""

from __future__ import annotations

import re
from math import ceil
from typing import Any

import pytest
from browsing import by_test, call, show, sideways, unfold
from plan_reading import words_of
from playwright.sync_api import Page, Route, expect

ASKED = {
    "metal": "mild-steel-cr",
    "thickness_mm": "2",
    "bend_length_mm": "500",
    "included_angle_deg": "90",
}


def fill(page: Page, **values: str) -> None:
    """Type into the boxes, as a person does, and wait for the answer."""
    for name, value in values.items():
        box = page.locator(f"#{name}")
        if name in ("metal", "die", "punch"):
            if name != "metal":
                page.locator(".choose-tools").evaluate("box => { box.open = true; }")
            box.select_option(value)
        else:
            box.fill(value)
    settled(page)


def settled(page: Page) -> None:
    """Wait until what is shown belongs to what is typed."""
    expect(by_test(page, "bend")).to_have_attribute("data-busy", "false")


def answer(shop_server: Any, **more: Any) -> Any:
    """The same bend asked past the browser."""
    asked = {**ASKED, "included_angle_deg": 90, **more}
    return call(f"{shop_server.url}/api/v1/bend", "POST", asked)


def test_one_bend_with_all_its_figures(page: Page, shop_server):
    show(page, f"{shop_server.url}/bend", "bend")
    expect(by_test(page, "answer")).to_contain_text("Still to type: thickness, length")
    fill(page, **ASKED)
    right = answer(shop_server)
    for name, digits in (
        ("set_angle_deg", 1), ("punch_depth_mm", 2), ("inside_radius_mm", 2),
        ("min_flange_mm", 1), ("bend_allowance_mm", 2), ("bend_deduction_mm", 2), ("k_factor", 2),
    ):  # fmt: skip
        figure = by_test(page, name)
        expect(figure).to_contain_text(f"{right[name]:.{digits}f}")
        if f"{name}_low" in right:
            band = f"{right[f'{name}_low']:.{digits}f} to {right[f'{name}_high']:.{digits}f}"
            expect(figure).to_contain_text(band)
    force = by_test(page, "force_kn")
    expect(force.locator(".value")).to_have_text(f"{ceil(right['force_kn_high'])}kN")
    expect(force).to_contain_text(f"expected {right['force_kn']:.0f} kN")
    per_length = by_test(page, "force_kn_per_m")
    expect(per_length.locator(".value")).to_have_text(f"{ceil(right['force_kn_per_m_high'])}kN/m")
    expect(per_length).to_contain_text(f"expected {right['force_kn_per_m']:.0f} kN/m")
    expect(by_test(page, "chosen-die")).to_contain_text(right["die"])
    expect(by_test(page, "chosen-punch")).to_contain_text(right["punch"])
    expect(by_test(page, "chosen")).to_contain_text(re.compile(r"Tray \w+, slot \w+"))
    unfold(page)
    expect(by_test(page, "pose")).to_be_visible()
    assert sideways(page) <= 0


MOST_HIGH = {"phone": 1700, "wide": 5000}  # px


@pytest.mark.parametrize(("thickness", "metal"), [("2", "mild-steel-cr"), ("1.2", "stainless-304")])
def test_what_to_set_is_seen_at_once(page: Page, shop_server, request, thickness, metal):
    """Tools with their trays, setting, force, rating, flange, deduction: without scrolling."""
    show(page, f"{shop_server.url}/bend", "bend")
    fill(page, **{**ASKED, "thickness_mm": thickness, "metal": metal})
    page.evaluate("scrollTo(0, 0)")
    first = by_test(page, "first")
    for name in (
        "chosen-die", "chosen-punch", "set_angle_deg", "punch_depth_mm", "force_kn",
        "min_flange_mm", "bend_deduction_mm", "weakest",
    ):  # fmt: skip
        figure = by_test(first, name)
        expect(figure).to_be_in_viewport(ratio=1)
    size = "phone" if "phone" in request.node.callspec.id else "wide"
    assert page.evaluate("document.documentElement.scrollHeight") <= MOST_HIGH[size]


def test_every_rating_in_words_and_numbers(page: Page, shop_server):
    show(page, f"{shop_server.url}/bend", "bend")
    fill(page, **ASKED)
    ratings = answer(shop_server)["ratings"]
    assert {r["what"] for r in ratings} >= {"press", "punch", "die", "holder"}
    for rating in ratings:
        row = by_test(page, "ratings").locator(f"[data-what='{rating['what']}']")
        expect(row).to_contain_text(f"{int(rating['share_percent'] + 0.5)} %")
        unit = "kn" if "load_kn" in rating else "kn_per_m"
        expect(row).to_contain_text(f"{rating[f'load_{unit}']:.0f}")
        expect(row).to_contain_text(f"of {rating[f'rating_{unit}']:.0f}")


def test_an_unknown_rating_is_unknown_never_ok(page: Page, shop_server):
    dies = call(f"{shop_server.url}/api/v1/dies")["dies"]
    unrated = next(die["code"] for die in dies if die["rating_kn_per_m"] is None)
    show(page, f"{shop_server.url}/bend", "bend")
    fill(page, **ASKED, die=unrated)
    row = by_test(page, "ratings").locator("[data-what=die]")
    expect(row).to_have_attribute("data-level", "unknown")
    expect(row).to_contain_text("Unknown")
    expect(row).to_contain_text("rating unknown")


def test_every_die_stands_with_its_reason_and_a_tap_uses_it(page: Page, shop_server):
    show(page, f"{shop_server.url}/bend", "bend")
    fill(page, **ASKED)
    options = answer(shop_server)["options"]
    rows = by_test(page, "options").locator("[data-die]")
    expect(rows).to_have_count(len(options))
    for i, option in enumerate(sorted(options, key=lambda o: o["rank"])):
        expect(rows.nth(i)).to_have_attribute("data-die", option["die"])
        expect(rows.nth(i)).to_contain_text(words_of(option["reason_said"]))
    unfold(page)
    other = next(o["die"] for o in options if not o["chosen"] and o["level"] == "ok")
    page.locator(f"[data-die={other}] button").click()
    expect(by_test(page, "chosen-die")).to_contain_text(other)
    expect(page.locator(f"[data-die={other}] button")).to_have_attribute("aria-pressed", "true")
    by_test(page, "choose-for-me").click()
    expect(by_test(page, "chosen-die")).to_contain_text(answer(shop_server)["die"])


def test_what_stops_or_warns_comes_first(page: Page, shop_server):
    show(page, f"{shop_server.url}/bend", "bend")
    fill(page, **{**ASKED, "thickness_mm": "6", "bend_length_mm": "1500"})
    first = page.locator("[data-test=answer] > *").first
    expect(first).to_have_attribute("data-test", "urgent")
    expect(first.locator("[data-level]").first).to_have_attribute("data-level", "stop")
    expect(first.locator("[data-level=stop]").first).to_contain_text("Stop")


def test_a_thickness_as_people_write_it(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/bend?metal=mild-steel-cr&length=300&angle=90", "bend")
    for typed, mm in (("16 ga", 1.5189), ("1/8 in", 3.175), ("3", 3.0), ("1,5", 1.5)):
        with phone.expect_response(re.compile("/api/v1/bend")) as answered:
            fill(phone, thickness_mm=typed)
        assert answered.value.json()["thickness_mm"] == pytest.approx(mm, abs=5e-4)


def test_a_bare_number_means_the_unit_of_the_device(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/bend", "bend")
    phone.evaluate("localStorage.setItem('flangebook.settings', '{\"units\":\"inch\"}')")
    show(phone, f"{shop_server.url}/bend", "bend")
    fill(phone, **{**ASKED, "thickness_mm": "1/8", "bend_length_mm": "20"})
    right = answer(shop_server, thickness_mm="1/8 in", bend_length_mm="20 in")
    expect(by_test(phone, "chosen-die")).to_contain_text(right["die"])
    expect(by_test(phone, "inside_radius_mm")).to_contain_text(
        f"{right['inside_radius_mm'] / 25.4:.4f}in"
    )
    # The address carries the unit: a device in millimetres opens the same bend.
    phone.evaluate("localStorage.setItem('flangebook.settings', '{\"units\":\"mm\"}')")
    phone.reload()
    expect(phone.locator("#thickness_mm")).to_have_value("1/8 in")
    expect(by_test(phone, "inside_radius_mm")).to_contain_text(f"{right['inside_radius_mm']:.2f}mm")


def test_the_address_opens_the_same_bend_again(phone: Page, wide: Page, shop_server):
    show(phone, f"{shop_server.url}/bend", "bend")
    fill(phone, **{**ASKED, "thickness_mm": "16 ga"}, die="V20")
    expect(by_test(phone, "chosen-die")).to_contain_text("V20")
    show(wide, phone.url, "bend")
    expect(wide.locator("#thickness_mm")).to_have_value("16 ga")
    expect(by_test(wide, "chosen-die")).to_contain_text("V20")
    expect(by_test(wide, "force_kn")).to_have_text(by_test(phone, "force_kn").inner_text())


WRONG = [
    ("thickness_mm", "0", "0.05 or more"),
    ("thickness_mm", "-2", "0.05 or more"),
    ("thickness_mm", "1e9", "number in mm"),
    ("thickness_mm", "NaN", "not a length"),
    ("thickness_mm", "2 parsec", "unit"),
    ("bend_length_mm", "1000000000", "at most"),
    ("bend_length_mm", "16 ga", "thickness only"),
    ("included_angle_deg", "NaN", "degrees"),
    ("included_angle_deg", "0", "1 or more"),
    ("included_angle_deg", "180", "at most"),
]


def test_what_is_wrong_stands_beside_its_field(phone: Page, shop_server, console):
    console.expect("422")
    show(phone, f"{shop_server.url}/bend", "bend")
    fill(phone, **ASKED)
    for field, typed, words in WRONG:
        fill(phone, **{field: typed})
        expect(by_test(phone, f"wrong-{field}")).to_contain_text(words)
        expect(phone.locator(f"#{field}")).to_have_attribute("aria-invalid", "true")
        expect(by_test(phone, "force_kn")).to_have_count(0)  # no figure of another bend
        fill(phone, **{field: ASKED[field]})
        expect(by_test(phone, "force_kn")).to_be_visible()
        expect(phone.locator("[aria-invalid=true]")).to_have_count(0)


def test_a_gauge_number_needs_a_metal_of_a_gauge_family(phone: Page, shop_server, console):
    console.expect("422")
    metals = call(f"{shop_server.url}/api/v1/metals")["metals"]
    plain = next(metal["code"] for metal in metals if metal["gauge_family"] is None)
    show(phone, f"{shop_server.url}/bend", "bend")
    fill(phone, **{**ASKED, "metal": plain, "thickness_mm": "16 ga"})
    expect(by_test(phone, "wrong-thickness_mm")).to_contain_text("gauge")
    fill(phone, metal="mild-steel-cr")
    expect(by_test(phone, "force_kn")).to_be_visible()


def test_a_die_that_is_gone(phone: Page, shop_server, console):
    console.expect("422")
    address = f"{shop_server.url}/bend?metal=mild-steel-cr&thickness=2&length=500&angle=90"
    show(phone, f"{address}&die=NO-SUCH", "bend")
    expect(by_test(phone, "wrong-die")).to_contain_text("NO-SUCH")
    fill(phone, die="V16")
    expect(by_test(phone, "chosen-die")).to_contain_text("V16")


def test_markup_in_the_address_is_only_text(phone: Page, shop_server, console):
    console.expect("422")
    evil = "%3Cimg%20src=x%20onerror=%22document.title='in'%22%3E"
    show(phone, f"{shop_server.url}/bend?metal={evil}&thickness={evil}&length=1&die={evil}", "bend")
    expect(phone.locator("main img")).to_have_count(0)
    assert phone.title() == "Check a bend · Flangebook"


def test_the_newest_answer_wins(wide: Page, shop_server):
    """An answer to what was typed before never covers the newer one."""

    def slow(route: Route) -> None:
        if '"2 mm"' in (route.request.post_data or ""):
            held.append(route)
        else:
            route.continue_()

    held: list[Route] = []
    wide.route("**/api/v1/bend", slow)
    show(wide, f"{shop_server.url}/bend?metal=mild-steel-cr&length=500", "bend")
    wide.locator("#thickness_mm").fill("2")
    wide.wait_for_timeout(500)
    assert len(held) == 1
    fill(wide, thickness_mm="4")
    right = answer(shop_server, thickness_mm="4")
    expect(by_test(wide, "force_kn")).to_contain_text(f"expected {right['force_kn']:.0f} kN")
    for route in held:
        route.abort()  # the page has cancelled it already
    wide.wait_for_timeout(300)
    expect(by_test(wide, "force_kn")).to_contain_text(f"expected {right['force_kn']:.0f} kN")
    expect(by_test(wide, "chosen-die")).to_contain_text(right["die"])


def test_a_silent_server_is_said_and_asked_again(phone: Page, own_server, console):
    console.expect("Failed to fetch|ERR_CONNECTION|net::")
    show(phone, f"{own_server.url}/bend", "bend")
    fill(phone, **ASKED)
    expect(by_test(phone, "force_kn")).to_be_visible()
    phone.wait_for_selector("html[data-offline-ready]")  # else the worker's start is cut off too
    own_server.kill()
    fill(phone, thickness_mm="3")
    expect(by_test(phone, "unreachable")).to_be_visible()
    own_server.start()
    by_test(phone, "again").click()
    expect(by_test(phone, "force_kn")).to_be_visible()


def test_by_keyboard_alone(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/bend", "bend")
    wide.locator("#metal").focus()
    wide.keyboard.press("Tab")
    wide.keyboard.type("2")
    wide.keyboard.press("Tab")
    wide.keyboard.type("500")
    settled(wide)
    expect(by_test(wide, "force_kn")).to_be_visible()
    for _ in range(30):
        wide.keyboard.press("Tab")
        if wide.evaluate("!!document.activeElement.closest('[data-die=V20]')"):
            break
    wide.keyboard.press("Enter")
    expect(by_test(wide, "chosen-die")).to_contain_text("V20")
