"""Three strips on the press screen give the figure, which is saved with the press."""

from __future__ import annotations

from browsing import by_test, call, show
from looks import unfit
from playwright.sync_api import Page, expect

TYPED = {
    "thickness_mm": "2", "strip_length_mm": "300", "end_mm": "150",
    "left_deg": "90", "middle_deg": "91,2", "right_deg": "90",
}  # fmt: skip


def test_three_strips_fill_the_box_and_the_press_keeps_it(page: Page, crib_server, console):
    show(page, f"{crib_server.url}/shop/press", "press")
    panel = by_test(page, "strips")
    panel.locator("summary").click()
    for name, code in (("metal", "mild-steel-cr"), ("die", "V16"), ("punch", "S85-2")):
        by_test(panel, name).select_option(code)
    for name, text in TYPED.items():
        by_test(panel, name).fill(text)
    by_test(page, "strips-ask").click()
    expect(by_test(page, "strips-found")).to_contain_text("1.2° more open")
    assert unfit(page) == []
    by_test(page, "strips-take").click()
    box = float(by_test(page, "deflection_mm").input_value())
    assert 0.1 < box < 3.0
    by_test(page, "save").click()
    expect(page.locator("h1")).to_have_text("The shop")
    assert call(f"{crib_server.url}/api/v1/press")["press"]["deflection_mm"] == box


def test_strips_that_tell_nothing_say_so_at_the_box(phone: Page, crib_server, console):
    console.expect("422")
    show(phone, f"{crib_server.url}/shop/press", "press")
    panel = by_test(phone, "strips")
    panel.locator("summary").click()
    for name, code in (("metal", "mild-steel-cr"), ("die", "V16"), ("punch", "S85-2")):
        by_test(panel, name).select_option(code)
    for name, text in (TYPED | {"middle_deg": "90"}).items():
        by_test(panel, name).fill(text)
    by_test(phone, "strips-ask").click()
    expect(by_test(panel, "wrong-middle_deg")).to_contain_text("thicker strips")
