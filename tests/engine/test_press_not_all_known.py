"""A press of which only its plate is known: name, force, bed. Unknowns stay so and are named."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from planning_shop import CHANNEL, CRIB, METALS, PRESS

from flangebook.bending.motion.frames import bend_length_fits
from flangebook.bending.tools.setting_limits import press_depth_mm
from flangebook.bending.tools.tooling import Press
from flangebook.bending.tools.usual_sizes import PRESS_SIZES
from flangebook.planning.one_bend import Named, check_bend
from flangebook.planning.plan import plan
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.shop.crib import press_from

PLATE = {"name": "old one", "force_kn": 400.0, "bed_length_mm": 1600.0}


def half_known(**known: float) -> Press:
    """A press as kept, with nothing but its plate and what is given."""
    return press_from({**PLATE, **dict.fromkeys(PRESS_SIZES, None), **known})


def codes(answer: dict[str, Any], level: str) -> set[str]:
    """Codes of the findings of a level."""
    return {c["code"] for c in answer["checks"] if c["level"] == level}


def one_bend(press: Press) -> dict[str, Any]:
    """A bend of 500 mm in the shop's tools."""
    wanted = Wanted(METALS["mild-steel-cr"], 2.0, 500.0, 90.0)
    return check_bend(wanted, Equipment(press, CRIB), Named())


def test_what_is_not_entered_is_named_as_unknown():
    press = half_known()
    assert set(press.unknown) == set(PRESS_SIZES)
    assert half_known(stroke_mm=150.0).stroke_mm == 150.0
    assert "stroke_mm" not in half_known(stroke_mm=150.0).unknown


def test_a_press_of_an_older_shop_has_nothing_unknown():
    kept = {**PLATE, "between_frames_mm": 1280, "open_height_mm": 400, "stroke_mm": 150,
            "throat_mm": 200, "gauge_x_min_mm": 4, "gauge_x_max_mm": 600, "gauge_r_min_mm": -10,
            "gauge_r_max_mm": 140, "finger_height_mm": 14, "finger_depth_mm": 60}  # fmt: skip
    assert press_from(kept).unknown == ()
    assert press_from(kept).ram_width_mm == 80.0


def test_a_bend_on_it_is_answered_with_unknowns_and_without_a_stop():
    answer = one_bend(half_known())
    assert codes(answer, "stop") == set()
    assert {"longer-than-frames", "heights-unknown"} <= codes(answer, "unknown")
    assert answer["set_angle_deg"] is not None
    assert {"longer-than-frames", "heights-unknown"} & codes(answer, "ok") == set()


def test_its_force_is_checked_as_ever():
    few = replace(half_known(), force_kn=10.0)
    assert "press-load" in codes(one_bend(few), "stop")


def test_a_bend_longer_than_the_bed_still_stops():
    wanted = Wanted(METALS["mild-steel-cr"], 1.0, 1700.0, 90.0)
    answer = check_bend(wanted, Equipment(half_known(), CRIB), Named())
    assert "longer-than-bed" in codes(answer, "stop")


@pytest.mark.parametrize(
    ("known", "behind_mm", "level"),
    [
        ({}, None, "unknown"),
        ({}, 100.0, "unknown"),
        ({"throat_mm": 200.0}, 100.0, None),  # it clears however near the frames stand
        ({"throat_mm": 200.0}, 300.0, "unknown"),
        ({"between_frames_mm": 1280.0}, 100.0, None),
        ({"between_frames_mm": 400.0}, 100.0, "unknown"),  # only the throat could say
        ({"between_frames_mm": 400.0, "throat_mm": 50.0}, 100.0, "stop"),
    ],
)
def test_whether_the_sheet_clears_the_frames(known, behind_mm, level):
    check = bend_length_fits(half_known(**known), 500.0, behind_mm)
    assert (check.level if check else None) == level
    if level == "unknown":
        assert check.do.startswith("To know whether the sheet clears the frames, measure")


@pytest.mark.parametrize("known", [{}, {"stroke_mm": 150.0}, {"open_height_mm": 400.0}])
def test_a_stroke_that_is_not_known_limits_no_depth_and_says_so(known):
    die, punch = CRIB.dies[0], CRIB.punches[0]
    assert press_depth_mm(half_known(**known), die, punch, 2.0) == float("inf")
    assert "heights-unknown" in codes(one_bend(half_known(**known)), "unknown")


def test_tools_taller_than_a_known_open_height_still_stop():
    assert "tools-too-tall" in codes(one_bend(half_known(open_height_mm=100.0)), "stop")


def test_a_part_is_planned_and_its_clearance_is_not_called_sure():
    answer = plan(CHANNEL, half_known(), CRIB, METALS)
    assert codes(answer, "stop") == set()
    assert {"clearance-assumed", "gauge-travel-unknown"} <= codes(answer, "unknown")
    words = next(c for c in answer["checks"] if c["code"] == "clearance-assumed")["template"]
    for part in ("gauge fingers", "ram", "bed"):
        assert part in words
    assert "Assumed" in answer["order"]["words"]
    assert answer["order"]["proven"] is False


def test_a_press_that_is_all_known_has_none_of_these():
    answer = plan(CHANNEL, PRESS, CRIB, METALS)
    said = {c["code"] for c in answer["checks"]}
    assert {"clearance-assumed", "gauge-travel-unknown", "heights-unknown"} & said == set()


def test_without_figures_for_r_the_height_is_shown_and_its_reach_is_unknown():
    known = {"gauge_x_min_mm": 4.0, "gauge_x_max_mm": 600.0}
    answer = plan(CHANNEL, half_known(**known), CRIB, METALS)
    said = [c for c in answer["checks"] if c["code"] == "gauge-travel-unknown"]
    assert said
    assert all("{r_mm}" in c["template"] and "{x_mm}" not in c["template"] for c in said)
