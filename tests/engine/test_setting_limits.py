"""How far a setting may go, against constructions of its own and against limit cases."""

from __future__ import annotations

from dataclasses import replace
from math import inf, nan, radians, sin, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from planning_shop import HOLDER, PRESS, STRAIGHT, die

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.air_bend_geometry import angle_at_depth, punch_depth_mm
from flangebook.bending.tools.setting_limits import (
    MARGIN_DEG,
    SettingLimits,
    daylight_mm,
    press_depth_mm,
    setting_limits,
)
from flangebook.bending.tools.tooling import Die, Punch

PUNCH = replace(STRAIGHT, angle_deg=80.0, tip_radius_mm=1.0)
V16 = die(16.0, angle=84.0)
T, R = 2.0, 2.5

openings = st.floats(4.0, 80.0)
angles = st.floats(20.0, 120.0)
thicknesses = st.floats(0.5, 12.0)
radii = st.floats(0.0, 20.0)


def tools(v: float, die_deg: float, punch_deg: float, tip: float) -> tuple[Die, Punch]:
    return die(v, angle=die_deg), replace(PUNCH, angle_deg=punch_deg, tip_radius_mm=tip)


def test_the_flatter_of_die_and_punch_limits_with_half_a_degree_to_spare():
    assert setting_limits(V16, PUNCH, T, R).sharpest_deg == pytest.approx(84.5)
    assert setting_limits(V16, PUNCH, T, R).limited_by == ("die angle",)
    blunt = replace(PUNCH, angle_deg=88.0)
    assert setting_limits(V16, blunt, T, R).sharpest_deg == pytest.approx(88.5)
    assert setting_limits(V16, blunt, T, R).limited_by == ("punch angle",)
    alike = replace(PUNCH, angle_deg=84.0)
    assert setting_limits(V16, alike, T, R).limited_by == ("punch angle", "die angle")


def test_the_deepest_is_the_depth_at_the_sharpest_angle():
    found = setting_limits(V16, PUNCH, T, R)
    drawn = punch_depth_mm(found.sharpest_deg, R, T, 16.0, 84.0, V16.shoulder_radius_mm)
    assert found.deepest_mm == pytest.approx(drawn)


def test_a_tip_larger_than_the_predicted_radius_counts():
    round_tip = replace(PUNCH, tip_radius_mm=4.0)
    assert setting_limits(V16, round_tip, T, R) == setting_limits(V16, round_tip, T, 4.0)
    assert (
        setting_limits(V16, round_tip, T, R).deepest_mm
        < setting_limits(V16, PUNCH, T, R).deepest_mm
    )


def test_a_sheet_that_fills_the_v_limits_before_the_flanks_do():
    acute = replace(die(8.0, angle=30.0), shoulder_radius_mm=0.5)
    found = setting_limits(acute, replace(PUNCH, angle_deg=28.0), T, 3.0)
    assert found.limited_by == ("die depth",)
    x_c = 4.0 + 0.5 * tan(radians(75.0 / 2.0))
    filled = found.sharpest_deg - MARGIN_DEG
    assert 5.5 * sin(radians(180.0 - filled) / 2.0) == pytest.approx(x_c)


@given(openings, angles, angles, thicknesses, radii, st.floats(0.0, 5.0))
def test_the_sheet_never_lies_on_a_flank_nor_on_the_floor(v, die_deg, punch_deg, t, r, tip):
    one, other = tools(v, die_deg, punch_deg, tip)
    found = setting_limits(one, other, t, r)
    assert found.sharpest_deg >= max(die_deg, punch_deg) + MARGIN_DEG - 1e-9
    floor_mm = v / 2.0 / tan(radians(die_deg) / 2.0)
    assert 0.0 <= found.deepest_mm < floor_mm


@given(openings, angles, thicknesses, radii, st.floats(0.1, 60.0))
def test_a_shorter_stroke_limits_depth_and_angle_alike(v, die_deg, t, r, reach):
    one, other = tools(v, die_deg, 20.0, 0.5)
    way = daylight_mm(PRESS, one, other, t, HOLDER)
    short = replace(PRESS, stroke_mm=way + reach)
    free = setting_limits(one, other, t, r)
    found = setting_limits(one, other, t, r, short, HOLDER)
    if reach >= free.deepest_mm + 1e-9:
        assert found == free
    elif reach < free.deepest_mm - 1e-9:
        assert found.limited_by == ("press stroke",)
        assert found.deepest_mm == pytest.approx(reach)
        assert found.sharpest_deg >= free.sharpest_deg
        v_of = (one.v_opening_mm, one.angle_deg, one.shoulder_radius_mm)
        assert found.sharpest_deg == pytest.approx(
            angle_at_depth(found.deepest_mm, max(r, 0.5), t, *v_of)
        )


def test_a_press_that_does_not_reach_the_sheet_can_be_set_to_nothing():
    short = replace(PRESS, stroke_mm=1.0)
    found = setting_limits(V16, PUNCH, T, R, short, HOLDER)
    assert (found.sharpest_deg, found.deepest_mm) == (180.0, 0.0)
    assert found.beyond(179.0) == ("press stroke",)
    low = replace(PRESS, open_height_mm=120.0)
    assert setting_limits(V16, PUNCH, T, R, low, HOLDER).limited_by == ("open height",)
    assert press_depth_mm(low, V16, PUNCH, T, HOLDER) == 0.0
    assert press_depth_mm(None, V16, PUNCH, T) == inf


def test_an_unknown_holder_makes_the_depth_smaller():
    known = press_depth_mm(PRESS, V16, PUNCH, T, HOLDER)
    assert press_depth_mm(PRESS, V16, PUNCH, T) < known


LIMITS = SettingLimits(85.5, 6.5, ("punch angle",))


@pytest.mark.parametrize(
    ("angle", "depth", "said"),
    [
        (85.5, 6.5, ()),
        (85.4, 6.0, ("punch angle",)),
        (90.0, 6.6, ("punch angle",)),
        (None, 6.6, ("punch angle",)),
        (None, 6.4, ()),
        (88.0, None, ()),
        (None, None, ()),
        (180.0, 1.0, ("flat",)),
        (179.0, 0.0, ("flat",)),
        (179.0, -1.0, ("flat",)),
        (nan, 1.0, ("punch angle",)),
        (90.0, nan, ("punch angle",)),
        (inf, 1.0, ("flat",)),
        (-inf, None, ("punch angle",)),
    ],
)
def test_a_setting_is_inside_or_there_is_none(angle, depth, said):
    assert LIMITS.beyond(angle, depth) == said


@pytest.mark.parametrize("size", [0.0, -1.0, nan, inf])
def test_sizes_that_are_none_are_refused(size):
    with pytest.raises(InputError):
        setting_limits(V16, PUNCH, size, R)
    with pytest.raises(InputError):
        setting_limits(V16, PUNCH, T, size if size else nan)
