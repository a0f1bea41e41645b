"""A long bend on a press that gives way: what the plan says of its middle."""

from __future__ import annotations

from dataclasses import replace

import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from hypothesis import given, settings
from hypothesis import strategies as st

from flangebook.bending.part.part import Bend, Part
from flangebook.planning.plan import plan
from flangebook.shop.crib import press_from

CODES = ("middle-open", "deflection-unknown")


def said(length: float, deflection: float | None, thickness: float = 2.0):
    part = Part("Angle", "mild-steel-cr", thickness, length, (40.0, 60.0), (Bend(90.0, "up"),))
    press = replace(DEMO_PRESS, deflection_mm=deflection)
    answer = plan(part, press, DEMO_CRIB, STARTER_METALS)
    return {c["code"]: c for c in answer["steps"][0]["checks"] if c["code"] in CODES}


def test_a_long_bend_on_a_soft_press_says_how_open_the_middle_comes_and_what_mends_it():
    found = said(1200.0, 0.8)["middle-open"]
    assert found["level"] == "caution"
    assert found["numbers"]["open_deg"] > 0.5
    assert found["numbers"]["most_deg"] > found["numbers"]["open_deg"]
    assert "{lack_mm}" in found["do"]


def test_a_stiff_press_or_a_short_bend_says_nothing():
    assert said(1200.0, 0.05) == {}
    assert said(300.0, 0.8) == {}
    assert said(300.0, None) == {}


def test_an_unknown_press_says_how_to_find_it_on_a_long_bend_and_nothing_wrong():
    found = said(1200.0, None)
    assert list(found) == ["deflection-unknown"]
    assert found["deflection-unknown"]["level"] == "ok"
    assert "three strips" in found["deflection-unknown"]["do"]


@settings(max_examples=10, deadline=None)
@given(st.floats(0.3, 2.0))
def test_twice_the_figure_opens_it_twice_as_far(deflection: float):
    one, two = (said(1200.0, x).get("middle-open") for x in (deflection, 2.0 * deflection))
    assert two is not None
    if one is not None:
        for name in ("open_deg", "lack_mm"):
            assert two["numbers"][name] == pytest.approx(2.0 * one["numbers"][name], rel=0.01)


def test_a_press_of_an_earlier_release_has_no_figure():
    old = {"name": "Old", "force_kn": 400, "bed_length_mm": 1600, "between_frames_mm": 1280,
           "open_height_mm": 400, "stroke_mm": 150, "throat_mm": 200, "gauge_x_min_mm": 4,
           "gauge_x_max_mm": 600, "gauge_r_min_mm": -10, "gauge_r_max_mm": 140,
           "finger_height_mm": 14, "finger_depth_mm": 60}  # fmt: skip
    assert press_from(old).deflection_mm is None
