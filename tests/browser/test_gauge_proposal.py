"""Flanges that agree propose the gauge's zero on the press screen; the user says when it is set."""

from __future__ import annotations

import uuid

from browsing import by_test, call, show, unfold
from looks import unfit
from playwright.sync_api import Page, expect


def test_flanges_that_agree_propose_the_zero_until_it_is_set(page: Page, crib_server, new_card):
    code = new_card("Angle for the gauge")
    address = f"{crib_server.url}/api/v1"
    step = call(f"{address}/cards/{code}")["plan"]["steps"][0]
    for _ in range(9):
        result = {
            "id": str(uuid.uuid4()), "revision": 1, "step": 1, "measured_deg": 90,
            "flange_mm": step["gauged_flange"]["wanted_mm"] + 0.6,
        }  # fmt: skip
        call(f"{address}/cards/{code}/results", "POST", result)
    learned = call(f"{address}/learned?metal={call(f'{address}/cards/{code}')['part']['metal']}")
    assert learned["groups"][0]["deduction"]["flanges"] == 9
    show(page, f"{crib_server.url}/shop/learned/{learned['metal']}", "learned")
    said = by_test(page, "deduction").first
    expect(said).to_contain_text("Rests on 9 measured flanges of this metal")
    expect(said).to_contain_text("shorter for each such bend")
    assert unfit(page) == []
    show(page, f"{crib_server.url}/shop/press", "press")
    expect(by_test(page, "gauge-zero")).to_contain_text("too far back")
    assert unfit(page) == []
    by_test(page, "gauge-zero-set").click()
    expect(page.locator("h1")).to_have_text("The shop")
    assert call(f"{address}/press")["press"]["gauge_zeroed_at"]
    assert call(f"{address}/press/gauge")["flanges"] == 0
    show(page, f"{crib_server.url}/shop/press", "press")
    unfold(page)
    expect(by_test(page, "deflection_mm")).to_be_visible()
    by_test(page, "save").click()
    expect(page.locator("h1")).to_have_text("The shop")
    assert call(f"{address}/press")["press"]["gauge_zeroed_at"], "saved again it is not forgotten"
