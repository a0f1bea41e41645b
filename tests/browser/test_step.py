"""One bend fills the screen: numbers huge, the drawing to scale and from the same numbers."""

from __future__ import annotations

import re

import pytest
from browsing import by_test, call, show, sideways, visit, wait_ready
from playwright.sync_api import Page, expect

NUMBERS = ["gauge-x-value", "gauge-r-value", "set-angle-value", "punch-depth-value"]
LEAST_TARGET_PX = 64
TARGETS = """() => [...document.querySelectorAll('a[href], button, input, summary, label')]
  .filter((one) => !one.matches('.skip, .choice input, .field > label, .code-form label'))
  .filter((one) => one.checkVisibility())
  .map((one) => [one.textContent.trim() || one.id, one.getBoundingClientRect()])
  .filter(([, box]) => box.width > 0)
  .map(([name, box]) => [name, box.width, box.height])"""


def step_of(shop_server, code: str, number: int):
    return call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"][number - 1]


def shown(page: Page, name: str) -> float:
    return float(by_test(page, name).inner_text().replace("−", "-").replace("°", ""))


def test_the_numbers_are_the_plan_s(page: Page, shop_server, demo_codes):
    code = demo_codes["Cable cover, hat section"]
    steps = call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"]
    for step in steps:
        visit(page, f"{shop_server.url}/c/{code}/step/{step['number']}", "step")
        assert shown(page, "gauge-x-value") == pytest.approx(step["gauge_x_mm"], abs=0.0501)
        assert shown(page, "gauge-r-value") == pytest.approx(step["gauge_r_mm"], abs=0.0501)
        assert shown(page, "set-angle-value") == pytest.approx(step["set_angle_deg"], abs=0.0501)
        assert shown(page, "punch-depth-value") == pytest.approx(
            step["punch_depth_mm"], abs=0.00501
        )
        face = "Top" if step["inside_face"] == "up" else "Bottom"
        expect(by_test(page, "face")).to_have_text(f"{face} face up.")
        assert ("over" in by_test(page, "move").inner_text()) == step["turn_over"]
        assert ("end for end" in by_test(page, "move").inner_text()) == step["turn_end"]
        expect(by_test(page, "end")).to_contain_text(step["gauged_end"], ignore_case=True)
        assert sideways(page) <= 0


def test_numbers_to_set_are_a_fourteenth_of_the_screen(page: Page, shop_server):
    show(page, f"{shop_server.url}/c/SHE7FA1/step/1", "step")
    height = page.viewport_size["height"]
    for name in NUMBERS:
        number = by_test(page, name)
        size = float(number.evaluate("(one) => parseFloat(getComputedStyle(one).fontSize)"))
        assert size >= height / 14, name
        expect(number).to_be_in_viewport(ratio=0.99)


@pytest.mark.parametrize("address", ["", "/step/1", "/result/1"])
def test_targets_on_the_floor_are_made_for_gloves(page: Page, shop_server, address: str):
    show(
        page,
        f"{shop_server.url}/c/SHE7FA1{address}",
        {"": "card", "/step/1": "step"}.get(address, "result"),
    )
    targets = page.evaluate(TARGETS)
    assert len(targets) >= 4
    assert [t for t in targets if t[2] < LEAST_TARGET_PX] == []


def test_no_word_on_a_step_is_small(page: Page, shop_server):
    """Nothing that matters is under 16 px; the drawing's own words neither."""
    show(page, f"{shop_server.url}/c/SHE7FA1/step/1", "step")
    sizes = page.evaluate(
        """() => [...document.querySelectorAll('main *')]
          .filter((one) => [...one.childNodes].some((n) => n.nodeType === 3 && n.data.trim()))
          .map((one) => [one.textContent, parseFloat(getComputedStyle(one).fontSize)])
          .filter(([, size]) => size < 16)"""
    )
    assert sizes == []
    box = page.locator(".pose .label").first.bounding_box()
    assert box["height"] >= 16


def test_before_and_after_and_closer(page: Page, shop_server):
    show(page, f"{shop_server.url}/c/SHE7FA1/step/1", "step")
    pose, sheet = by_test(page, "pose"), by_test(page, "sheet")
    flat = sheet.get_attribute("d")
    expect(by_test(page, "gauge-dimension")).to_be_visible()
    by_test(page, "after").click()
    expect(pose).to_have_attribute("data-pose", "after")
    assert sheet.get_attribute("d") != flat
    expect(by_test(page, "angle-dimension")).to_be_visible()
    wide = pose.get_attribute("viewBox")
    by_test(page, "closer").click()
    assert pose.get_attribute("viewBox") != wide
    by_test(page, "before").click()
    assert sheet.get_attribute("d") == flat


def test_the_drawing_is_the_step_s_own_outline(wide: Page, shop_server, demo_codes):
    """The path on the screen is the API's ring, y turned over, nothing else."""
    code = demo_codes["Cable cover, hat section"]
    for number in (1, 3):
        drawing = step_of(shop_server, code, number)["drawing"]
        visit(wide, f"{shop_server.url}/c/{code}/step/{number}", "step")
        for pose in ("before", "after"):
            by_test(wide, pose).click()
            drawn = by_test(wide, "sheet").get_attribute("d")
            points = [tuple(map(float, p.split())) for p in re.split("[MLZ]", drawn) if p]
            assert points == [(x, -y) for x, y in drawing[pose]["sheet"]]


def test_the_gauge_dimension_ends_at_the_gauge_point(wide: Page, shop_server, demo_codes):
    code = demo_codes["Cable cover, hat section"]
    step = step_of(shop_server, code, 1)
    assert step["drawing"]["gauge_point"][0] == pytest.approx(step["gauge_x_mm"], abs=0.01)
    show(wide, f"{shop_server.url}/c/{code}/step/1", "step")
    line = wide.locator("[data-test=gauge-dimension] .dimension").get_attribute("d")
    assert float(line.split("H")[1]) == pytest.approx(step["gauge_x_mm"], abs=0.01)


def test_next_back_and_the_arrow_keys(page: Page, shop_server, demo_codes):
    code = demo_codes["Z rail for sign holders"]
    show(page, f"{shop_server.url}/c/{code}", "card")
    by_test(page, "start").click()
    wait_ready(page, "step")
    expect(by_test(page, "step-number")).to_have_text("Step 1 of 2")
    by_test(page, "next").click()
    expect(by_test(page, "step-number")).to_have_text("Step 2 of 2")
    page.keyboard.press("ArrowLeft")
    expect(by_test(page, "step-number")).to_have_text("Step 1 of 2")
    page.keyboard.press("ArrowRight")
    expect(by_test(page, "step-number")).to_have_text("Step 2 of 2")
    expect(by_test(page, "next")).to_contain_text("Type the result")
    page.keyboard.press("ArrowRight")
    wait_ready(page, "result")
    by_test(page, "back").click()
    wait_ready(page, "step")


def test_hands_are_always_spoken_of(page: Page, shop_server):
    show(page, f"{shop_server.url}/c/SHE7FA1/step/1", "step")
    expect(page.locator(".step-watch")).to_contain_text("hands", ignore_case=True)


def test_a_step_that_is_not_there(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/c/SHE7FA1/step/9", "step")
    expect(by_test(phone, "no-step")).to_contain_text("no step 9")
    show(phone, f"{shop_server.url}/c/SHE7FA1/step/x", "step")
    expect(by_test(phone, "no-step")).to_be_visible()


def test_inches_on_this_device(phone: Page, shop_server):
    step = step_of(shop_server, "SHE7FA1", 1)
    phone.add_init_script("localStorage['flangebook.settings'] = '{\"units\": \"inch\"}'")
    show(phone, f"{shop_server.url}/c/SHE7FA1/step/1", "step")
    assert shown(phone, "gauge-x-value") == pytest.approx(step["gauge_x_mm"] / 25.4, abs=0.000501)
    expect(by_test(phone, "gauge-x")).to_contain_text("in")
    assert sideways(phone) <= 0


def test_numbers_do_not_change_under_somebody_s_hands(phone: Page, shop_server, new_card):
    """A newer revision arrives while a step is open: it is told, and shown when asked for."""
    code = new_card("Changed while at the press")
    show(phone, f"{shop_server.url}/c/{code}/step/1", "step")
    before = by_test(phone, "set-angle-value").inner_text()
    card = call(f"{shop_server.url}/api/v1/cards/{code}")
    setting = {"step": 1, "set_angle_deg": 89.5, "punch_depth_mm": 5.5}
    call(f"{shop_server.url}/api/v1/cards/{code}", "PUT", {"settings": [setting]}, card["etag"])
    phone.evaluate("import('/app/sync/sync.js').then((m) => m.sync())")
    expect(by_test(phone, "notice")).to_contain_text("revision 2")
    assert by_test(phone, "set-angle-value").inner_text() == before
    by_test(phone, "notice").get_by_role("button").click()
    expect(by_test(phone, "set-angle-value")).to_have_text("89.5°")


def test_a_step_with_nothing_to_set(page: Page, shop_server, demo_codes):
    code = demo_codes["Map-drawer side with hems"]
    steps = call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"]
    flatten = next(s for s in steps if s["operation"] == "hem flatten")
    show(page, f"{shop_server.url}/c/{code}/step/{flatten['number']}", "step")
    expect(by_test(page, "nothing-to-set")).to_be_visible()
    expect(by_test(page, "came-out")).to_have_count(0)
    expect(by_test(page, "sheet")).to_be_visible()
    expect(by_test(page, "end")).to_contain_text("flattening tool")
