"""A bend over its stroke: the curve, the setting on it, the limits beside it."""

from __future__ import annotations

import json
from itertools import pairwise

import numpy as np
import pytest
from one_bend_asked import check_bend, check_stroke
from planning_shop import CRIB, MILD, PRESS, STAINLESS

from flangebook.bending.errors import InputError
from flangebook.bending.tools.tooling import Crib


def stroke(metal=MILD, t=2.0, length=500.0, angle=90.0, *, press=PRESS, crib=CRIB, **named):
    return check_stroke(metal, t, length, angle, press=press, crib=crib, **named)


@pytest.mark.parametrize("metal", [MILD, STAINLESS])
@pytest.mark.parametrize("angle", [60.0, 90.0, 135.0, 175.0])
def test_the_curve_runs_from_first_touch_through_the_setting(metal, angle):
    answer = stroke(metal, angle=angle)
    json.dumps(answer, allow_nan=False)
    curve = answer["curve"]
    first = curve[0]
    assert (first["punch_depth_mm"], first["force_kn"], first["loaded_angle_deg"]) == (0, 0, 180)
    for one, other in pairwise(curve):
        assert one["punch_depth_mm"] < other["punch_depth_mm"]
        assert one["loaded_angle_deg"] > other["loaded_angle_deg"]
        assert one["released_angle_deg"] >= other["released_angle_deg"]
    for one in curve:
        assert one["force_kn_low"] <= one["force_kn"] <= one["force_kn_high"]
        assert one["loaded_angle_deg"] <= one["released_angle_deg"] <= 180.0
    at = answer["set"]
    depths = [p["punch_depth_mm"] for p in curve]
    set_angle = np.interp(at["punch_depth_mm"], depths, [p["loaded_angle_deg"] for p in curve])
    assert set_angle == pytest.approx(at["set_angle_deg"], abs=0.5)
    force = np.interp(at["punch_depth_mm"], depths, [p["force_kn"] for p in curve])
    assert force == pytest.approx(at["force_kn"], rel=0.02)


def test_it_is_the_same_bend_as_the_bend_check():
    bend = check_bend(MILD, 2.0, 500.0, 90.0, press=PRESS, crib=CRIB)
    answer = stroke()
    for name in ("die", "punch", "metal", "v_opening_mm", "punch_radius_mm"):
        assert answer[name] == bend[name]
    for name in ("set_angle_deg", "punch_depth_mm"):
        assert answer["set"][name] == bend[name]
    assert answer["peak"]["force_kn"] == pytest.approx(bend["force_kn"], rel=1e-4)
    assert answer["peak"]["loaded_angle_deg"] > 90.0, "the force peaks before 90 degrees"
    assert answer["worst"] == bend["worst"]


def test_the_limits_are_the_ratings_as_forces_on_this_bend():
    by_what = {row["what"]: row["limit_kn"] for row in stroke(length=500.0)["limits"]}
    assert by_what["press"] == 400.0
    assert by_what["press per metre"] == 250.0, "500 kN/m over half a metre"
    unrated = stroke(die="V16-30")["limits"]
    assert {"what": "die", "name": "V16-30", "limit_kn": None} in unrated
    assert stroke(press=None)["limits"][0]["what"] == "punch"


def test_work_is_the_area_under_the_curve_up_to_the_setting():
    answer = stroke()
    depths = [p["punch_depth_mm"] for p in answer["curve"]]
    force = [p["force_kn"] for p in answer["curve"]]
    fine = np.linspace(0.0, answer["set"]["punch_depth_mm"], 4000)
    assert answer["work_j"] == pytest.approx(
        np.trapezoid(np.interp(fine, depths, force), fine), rel=0.02
    )
    assert 0.0 <= answer["energy_gap_percent"] < 1.0


def test_where_the_model_does_not_hold_there_is_no_curve_and_it_says_so():
    answer = stroke(angle=177.0)
    assert answer["curve"] == []
    assert answer["peak"] is None
    assert answer["work_j"] is None
    assert answer["set"]["punch_depth_mm"] > 0
    codes = {c["code"]: c["level"] for c in answer["checks"]}
    assert codes["no-stroke"] == "unknown"
    assert codes["handbook-alone"] == "ok"


def test_an_empty_shop_gets_a_curve_by_rule_and_no_limits():
    answer = stroke(crib=Crib(), press=None)
    assert answer["die"] is None
    assert answer["limits"] == []
    assert len(answer["curve"]) > 10


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), 1e9])
def test_sizes_out_of_range_are_refused(bad):
    with pytest.raises(InputError) as caught:
        stroke(t=bad)
    assert caught.value.where == "thickness_mm"
