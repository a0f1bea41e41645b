"""What a result says beside the angle: the gauge for the next piece, and an open middle."""

from __future__ import annotations

import pytest
from browsing import by_test, call, show, wait_ready
from looks import unfit
from playwright.sync_api import Page, expect


@pytest.fixture
def code(shop_server, new_card) -> str:
    """A card of its own for the test."""
    return new_card("Angle with a flange")


def step_of(shop_server, code: str):
    return call(f"{shop_server.url}/api/v1/cards/{code}")["plan"]["steps"][0]


def measure(page: Page, address: str, angle: str, flange: str) -> None:
    show(page, address, "result")
    by_test(page, "measured_deg").fill(angle)
    by_test(page, "flange_mm").fill(flange)
    by_test(page, "save").click()


def test_a_flange_moves_the_gauge_and_is_kept_with_the_card(page: Page, shop_server, code: str):
    step = step_of(shop_server, code)
    long = step["gauged_flange"]["wanted_mm"] + 0.3
    measure(page, f"{shop_server.url}/c/{code}/result/1", "90", f"{long}")
    expect(by_test(page, "new-gauge-x-value")).to_have_text(f"{step['gauge_x_mm'] - 0.3:.2f}")
    expect(by_test(page, "gauge-basis")).to_contain_text("0.3")
    by_test(page, "keep").click()
    expect(by_test(page, "kept")).to_be_visible()
    (kept,) = call(f"{shop_server.url}/api/v1/cards/{code}")["settings"]
    assert kept["gauge_x_mm"] == pytest.approx(step["gauge_x_mm"] - 0.3, abs=2e-3)
    page.goto(f"{shop_server.url}/c/{code}/step/1")
    wait_ready(page, "step")
    shown = float(by_test(page, "gauge-x-value").inner_text())
    assert shown == pytest.approx(kept["gauge_x_mm"], abs=0.051)
    assert unfit(page) == []


def test_an_absurd_flange_asks_back(phone: Page, shop_server, code: str):
    measure(phone, f"{shop_server.url}/c/{code}/result/1", "90", "4")
    expect(by_test(phone, "no-gauge")).to_contain_text("Check which flange was measured")
    expect(by_test(phone, "new-gauge")).to_have_count(0)


def test_an_open_middle_names_its_shim(page: Page, shop_server, code: str):
    show(page, f"{shop_server.url}/c/{code}/result/1", "result")
    by_test(page, "places").get_by_label("Left, middle, right").check()
    for name, text in (("left_deg", "90"), ("middle_deg", "92"), ("right_deg", "90.2")):
        by_test(page, name).fill(text)
    by_test(page, "save").click()
    expect(by_test(page, "crown")).to_contain_text("1.9° more open")
    expect(by_test(page, "shim")).to_contain_text("strip")
    assert unfit(page) == []


def test_without_the_shop_the_phone_works_the_gauge_out(
    phone: Page, shop_server, code: str, console
):
    """As ``test_offline``: the card is on the phone, the shop does not answer."""
    console.expect("ERR_FAILED")
    step = step_of(shop_server, code)
    show(phone, f"{shop_server.url}/c/{code}/result/1", "result")
    phone.context.route("**/results", lambda route: route.abort())
    by_test(phone, "measured_deg").fill("90")
    by_test(phone, "flange_mm").fill(f"{step['gauged_flange']['wanted_mm'] - 0.4}")
    by_test(phone, "save").click()
    expect(by_test(phone, "waits")).to_be_visible()
    expect(by_test(phone, "new-gauge-x-value")).to_have_text(f"{step['gauge_x_mm'] + 0.4:.2f}")
