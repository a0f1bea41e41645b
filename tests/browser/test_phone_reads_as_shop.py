"""A phone without the shop reads a card's saved tables as the shop does: one answer, not two."""

from __future__ import annotations

import pytest
from browsing import call, show
from playwright.sync_api import Page

from flangebook.planning.results.next_setting import next_setting

READ = """async ([step, trials, used]) => {
  const { fromTable } = await import("/app/results/measured_bend.js");
  const { fromFlange } = await import("/app/results/next_gauge.js");
  return trials.map(({ flange_mm, ...angles }) => {
    const next = fromTable(step, angles, used);
    const mean = Object.values(angles).reduce((a, b) => a + b) / Object.values(angles).length;
    const gauge = flange_mm ? fromFlange(step, mean, flange_mm, step.gauge_x_mm) : null;
    return [next?.set_angle_deg ?? null, next?.punch_depth_mm ?? null, gauge?.gauge_x_mm ?? null];
  });
}"""


def test_settings_and_gauge_are_the_shops(phone: Page, shop_server):
    """Seen: the phone read an expected flange at the nearest row, the shop between two."""
    card = call(f"{shop_server.url}/api/v1/cards/ZRA2CKX")
    step = next(s for s in card["plan"]["steps"] if s["gauged_flange"])
    wanted = step["gauged_flange"]["wanted_mm"]
    trials = [
        {"measured_deg": angle, "flange_mm": wanted + off}
        for angle in (88.25, 89.7, 90.0, 91.13, 92.26, 94.74, 97.0)
        for off in (-0.31, 0.02, 0.4, 3.0)
    ]
    trials += [
        {"left_deg": left, "middle_deg": middle, "right_deg": right}
        for left, middle, right in ((90.1, 91.6, 90.4), (90.0, 90.2, 90.0), (91.0, 90.0, 91.4))
    ]
    used = {"set_angle_deg": step["set_angle_deg"], "punch_depth_mm": step["punch_depth_mm"]}
    show(phone, f"{shop_server.url}/", "home")
    found = phone.evaluate(READ, [step, trials, used])
    for result, read in zip(trials, found, strict=True):
        shop = next_setting(step, result, card["part"]["bend_length_mm"])
        flange = shop["flange"] or {}
        said = (shop["set_angle_deg"], shop["punch_depth_mm"], flange.get("gauge_x_mm"))
        assert read == [pytest.approx(one, abs=1.5e-3) for one in said], result
    assert any(read[0] is None for read in found), "beyond the table both say nothing"
    assert any(read[2] for read in found)
