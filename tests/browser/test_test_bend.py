"""A test bend from the strip to the changed figures; forgetting it; the stroke in pictures."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from math import ceil
from typing import Any

import pytest
from browsing import by_test, call, plain_angle, show, sideways, wait_ready
from plan_reading import said_in
from playwright.sync_api import Page, expect

ASKED = {
    "metal": "mild-steel-cr",
    "thickness_mm": 2,
    "bend_length_mm": 500,
    "included_angle_deg": 90,
}
BEND = "/bend?metal=mild-steel-cr&thickness=2 mm&length=500 mm"


@pytest.fixture
def metal(own_server) -> str:
    """A metal of the demo shop that nobody has bent yet."""
    known = call(f"{own_server.url}/api/v1/metals")["metals"]
    for one in known:
        code = str(one["code"])
        if not call(f"{own_server.url}/api/v1/test-bends?metal={code}")["evidence"]:
            return code
    raise AssertionError("every metal of the demo shop has evidence")


def stage(page: Page, name: str) -> None:
    expect(by_test(page, "test-bend")).to_have_attribute("data-stage", name)


def to_measure(page: Page, url: str, metal: str, thickness: str = "2.02") -> None:
    """Choose a strip, read how to bend it, come to measuring."""
    show(page, f"{url}/shop/test-bend", "test-bend")
    by_test(page, "metal").select_option(metal)
    by_test(page, "thickness_mm").fill(thickness)
    by_test(page, "next").click()
    stage(page, "bend")
    by_test(page, "next").click()
    stage(page, "measure")


def measure(page: Page, **typed: str) -> None:
    for name, text in typed.items():
        by_test(page, name).fill(text)
    by_test(page, "done").click()


def learned(url: str, metal: str) -> Any:
    return call(f"{url}/api/v1/learned?metal={metal}")["groups"]


def taught(page: Page, what: str, when: str) -> str:
    figure = page.locator(f'[data-test="taught"][data-what="{what}"]').first
    return by_test(figure, when).inner_text()


def as_shown(value: float, digits: int) -> str:
    """A number as JavaScript rounds it: a tie goes up, where Python goes to the even digit."""
    return str(Decimal(value).quantize(Decimal(1).scaleb(-digits), ROUND_HALF_UP))


def test_a_strip_is_bent_measured_and_changes_the_figures(page: Page, own_server, metal: str):
    url = own_server.url
    asked = {**ASKED, "metal": metal, "bend_length_mm": 100, "thickness_mm": 2.02}
    before = call(f"{url}/api/v1/bend", "POST", asked)
    show(page, f"{url}/shop", "shop")
    by_test(page, "to-test-bend").click()
    wait_ready(page, "test-bend")
    by_test(page, "metal").select_option(metal)
    by_test(page, "thickness_mm").fill("2.02")
    by_test(page, "lot").fill("H 4471")
    by_test(page, "next").click()
    stage(page, "bend")
    expect(by_test(page, "hands")).to_contain_text("102 mm")
    expect(by_test(page, "hands")).to_contain_text("tongs")
    expect(by_test(page, "set-angle-value")).to_have_text(f"{before['set_angle_deg']:.1f}°")
    expect(by_test(page, "tools-line")).to_contain_text(before["die"])
    assert sideways(page) <= 0
    by_test(page, "next").click()
    stage(page, "measure")
    came = before["set_angle_deg"] + before["springback_deg_high"] + 0.3
    flange = f"{150 + before['bend_deduction_mm'] / 2:.2f}"
    radius = f"{before['inside_radius_mm']:.2f}"
    measure(page, measured_deg=f"{came:.1f}", flat_length_mm="300", flange_left_mm=flange,
            flange_right_mm=flange, radius_mm=radius)  # fmt: skip
    stage(page, "taught")
    assert sideways(page) <= 0
    (row,) = call(f"{url}/api/v1/test-bends?metal={metal}")["evidence"]
    assert (row["lot"], row["thickness_mm"], row["radius_mm"]) == ("H 4471", 2.02, float(radius))
    assert row["set_angle_deg"] == pytest.approx(before["set_angle_deg"], abs=1e-3)
    assert row["punch_depth_mm"] is None  # nobody read a depth off the press
    tools = {"die": before["die"], "punch": before["punch"]}
    after = call(f"{url}/api/v1/bend", "POST", {**asked, **tools})
    assert after["springback_deg"] > before["springback_deg"]
    assert after["sources"]["springback_deg"].startswith("your test bends")
    (group,) = (one for one in learned(url, metal) if one["lot"] == "H 4471")
    for figure in group["figures"]:
        digits, unit = {"deg": (1, "°"), "mm": (2, " mm"), "": (3, "")}[figure["unit"]]
        for when in ("before", "after"):
            text = as_shown(figure[when]["nominal"], digits) + unit
            assert text in taught(page, figure["what"], when)
    assert taught(page, "springback", "before") != taught(page, "springback", "after")
    points = page.locator('[data-what="springback"] [data-test="band-point"]')
    expect(points).to_have_count(1)
    assert points.get_attribute("data-id") == row["id"]


def test_forgetting_restores_the_figures_and_remembering_brings_them_back(
    phone: Page, own_server, metal: str
):
    url = own_server.url
    fresh = call(f"{url}/api/v1/bend", "POST", {**ASKED, "metal": metal})
    to_measure(phone, url, metal)
    measure(phone, measured_deg="91.5")
    stage(phone, "taught")
    taught_bend = call(f"{url}/api/v1/bend", "POST", {**ASKED, "metal": metal})
    assert taught_bend["springback_deg"] != fresh["springback_deg"]
    by_test(phone, "to-learned").click()
    wait_ready(phone, "learned")
    shown = taught(phone, "springback", "after")
    by_test(phone, "forget").click()
    expect(by_test(phone, "evidence-row")).to_have_attribute("data-forgotten", "true")
    expect(by_test(phone, "notice")).to_contain_text("Forgotten.")
    expect(by_test(phone, "no-groups")).to_be_visible()
    assert call(f"{url}/api/v1/bend", "POST", {**ASKED, "metal": metal}) == fresh
    by_test(phone, "remember").click()
    expect(by_test(phone, "evidence-row")).to_have_attribute("data-forgotten", "false")
    assert taught(phone, "springback", "after") == shown
    assert call(f"{url}/api/v1/bend", "POST", {**ASKED, "metal": metal}) == taught_bend


def test_cards_that_would_plan_differently_are_named_and_linked(phone: Page, own_server):
    url = own_server.url
    part = plain_angle("Angle that will change")
    code = str(call(f"{url}/api/v1/cards", "POST", {"part": part})["code"])
    to_measure(phone, url, "mild-steel-cr")
    measure(phone, measured_deg="90.4")
    stage(phone, "taught")
    card = phone.locator(f'[data-test="changed-card"][data-code="{code}"]')
    expect(card).to_contain_text("Angle that will change")
    expect(card).to_contain_text("angle to set")
    card.locator("a").click()
    wait_ready(phone, "card")


def test_what_is_not_right_is_told_at_its_box_and_nothing_is_kept(
    phone: Page, own_server, metal: str, console
):
    console.expect("422")
    url = own_server.url
    show(phone, f"{url}/shop/test-bend", "test-bend")
    by_test(phone, "next").click()
    expect(by_test(phone, "wrong-thickness_mm")).to_be_visible()
    expect(by_test(phone, "thickness_mm")).to_be_focused()
    to_measure(phone, url, metal)
    measure(phone, measured_deg="")
    expect(by_test(phone, "wrong-measured_deg")).to_contain_text("90.5")
    measure(phone, measured_deg="91", radius_mm="2 apples")
    expect(by_test(phone, "wrong-radius_mm")).to_be_visible()
    expect(by_test(phone, "measured_deg")).to_have_value("91")
    assert call(f"{url}/api/v1/test-bends?metal={metal}")["evidence"] == []


def test_a_strip_the_press_cannot_bend_stops_before_the_bend(phone: Page, own_server):
    show(phone, f"{own_server.url}/shop/test-bend", "test-bend")
    for name, text in (("thickness_mm", "6"), ("bend_length_mm", "1500")):
        by_test(phone, name).fill(text)
    by_test(phone, "next").click()
    stage(phone, "bend")
    expect(by_test(phone, "not-so")).to_be_visible()
    expect(by_test(phone, "next")).to_have_count(0)


def test_silence_of_the_server_keeps_what_was_typed(phone: Page, own_server, metal: str, console):
    console.expect("ERR_CONNECTION|Failed to load")
    to_measure(phone, own_server.url, metal)
    phone.wait_for_selector("html[data-offline-ready]")  # else the worker's start is cut off too
    own_server.kill()
    measure(phone, measured_deg="91.2")
    expect(by_test(phone, "wrong")).to_contain_text("does not answer")
    own_server.start()
    by_test(phone, "done").click()
    stage(phone, "taught")
    (row,) = call(f"{own_server.url}/api/v1/test-bends?metal={metal}")["evidence"]
    assert row["measured_deg"] == 91.2


def test_the_strokes_pictures_show_the_apis_numbers(page: Page, shop_server):
    right = call(f"{shop_server.url}/api/v1/stroke", "POST", ASKED)
    show(page, f"{shop_server.url}{BEND}", "bend")
    if page.viewport_size["width"] < 1000:
        expect(by_test(page, "stroke-force")).to_have_count(0)
        by_test(page, "stroke").locator("summary").click()
    peak = right["peak"]
    most = by_test(page, "stroke-peak")
    expect(most).to_contain_text(f"Allow for {ceil(peak['force_kn_high'])} kN.")
    expect(most).to_contain_text(f"expected at {peak['force_kn']:.0f} kN")
    expect(by_test(page, "stroke-peak")).to_contain_text(f"{peak['punch_depth_mm']:.2f} mm")
    expect(by_test(page, "stroke-set")).to_contain_text(f"{right['set']['set_angle_deg']:.1f}°")
    expect(by_test(page, "stroke-set")).to_contain_text(f"{right['set']['punch_depth_mm']:.2f} mm")
    for limit in right["limits"]:
        words = "stroke-unknown" if limit["limit_kn"] is None else "stroke-limits"
        told = limit["name"] if limit["limit_kn"] is None else f"{limit['limit_kn']:.0f} kN"
        expect(by_test(page, words)).to_contain_text(told)
    # The curve is drawn to scale: as many points, and heights in the proportion of the forces.
    path = by_test(page, "force-curve").get_attribute("d") or ""
    points = [tuple(map(float, pair.split())) for pair in path.removeprefix("M").split("L")]
    assert len(points) == len(right["curve"])
    zero = points[0][1]  # no force yet at the first touch
    mark = by_test(page, "peak-mark")
    scale = (zero - float(mark.get_attribute("cy") or 0)) / peak["force_kn"]
    for (_, y), moment in zip(points, right["curve"], strict=True):
        assert zero - y == pytest.approx(scale * moment["force_kn"], abs=0.05)


def test_a_result_stands_in_the_picture_where_it_was_measured(wide: Page, own_server):
    url = own_server.url
    asked = {**ASKED, "bend_length_mm": 100}
    bend = call(f"{url}/api/v1/bend", "POST", asked)
    strip = {
        **asked,
        "id": "5f0c8b9e-6a55-4f0e-9a3f-0d9c4b7f1a11",
        "die": bend["die"],
        "punch": bend["punch"],
        "set_angle_deg": bend["set_angle_deg"],
        "punch_depth_mm": bend["punch_depth_mm"],
        "measured_deg": 90.4,
    }
    call(f"{url}/api/v1/test-bends", "POST", strip)
    show(wide, f"{url}{BEND.replace('500', '100')}", "bend")
    point = wide.locator(f'[data-test="result-point"][data-id="{strip["id"]}"]')
    expect(point).to_have_count(1)


def test_the_handbook_stands_beside_the_model(wide: Page, shop_server):
    right = call(f"{shop_server.url}/api/v1/bend", "POST", ASKED)
    show(wide, f"{shop_server.url}{BEND}", "bend")
    assert right["sources"]["force_kn"].startswith("model")
    expect(by_test(by_test(wide, "force_expected"), "origin")).to_have_text("model")
    says = f"handbook says {right['handbook']['force_kn']:.0f} kN"
    expect(by_test(wide, "handbook-force_kn")).to_have_text(says)
    expect(by_test(by_test(wide, "k_factor"), "origin")).to_have_text("handbook")
    expect(by_test(wide, "handbook-k_factor")).to_have_count(0)


def test_lot_thickness_and_radius_of_a_first_piece(phone: Page, shop_server, new_card):
    code = new_card("Angle measured with care")
    show(phone, f"{shop_server.url}/c/{code}/result/1", "result")
    by_test(phone, "measured_deg").fill("90.4")
    by_test(phone, "more-measured").locator("summary").click()
    for name, text in (("lot", "H 4471"), ("thickness_mm", "1.97"), ("radius_mm", "2.5")):
        by_test(phone, name).fill(text)
    by_test(phone, "save").click()
    expect(by_test(phone, "sent")).to_be_visible()
    (result,) = call(f"{shop_server.url}/api/v1/cards/{code}")["trials"]
    assert (result["lot"], result["thickness_mm"], result["radius_mm"]) == ("H 4471", 1.97, 2.5)


def test_strips_that_contradict_each_other_say_so_on_the_screen(
    phone: Page, own_server, metal: str
):
    url = own_server.url
    for number, came in enumerate((87.4, 91.6, 87.3, 91.7)):
        own_id = f"00000000-0000-4000-8000-00000000000{number}"
        tools = {"die": "V16", "punch": "S85-2", "set_angle_deg": 88.0}
        strip = {**ASKED, **tools, "metal": metal, "measured_deg": came, "id": own_id}
        call(f"{url}/api/v1/test-bends", "POST", strip)
    said = [words for one in learned(url, metal) for words in said_in(one)]
    assert said
    show(phone, f"{url}/shop/learned/{metal}", "learned")
    shown = by_test(phone, "together")
    expect(shown).to_have_count(len(said))
    for number, words in enumerate(said):
        expect(shown.nth(number)).to_contain_text("Caution")
        expect(shown.nth(number)).to_contain_text(words)
