"""What to set after a measured bend."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sheet_metals import die, metal, punch

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.air_bend_geometry import angle_at_depth, punch_depth_mm
from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.prediction.correction import (
    correct_setting,
    correction_table,
    depth_per_deg_mm,
    large_error,
    tilt_mm_per_m,
)
from flangebook.bending.tools.setting_limits import SettingLimits, setting_limits

DIE = die(16.0, 30.0, 2.0)
TOOL = (16.0, 30.0, 2.0)
R, T = 2.56, 2.0
wanted_angles = st.floats(50.0, 150.0)
errors = st.floats(-5.0, 5.0)
springs = st.floats(0.0, 4.0)


@given(wanted_angles, springs)
def test_nothing_wrong_nothing_changed(wanted, spring):
    again = correct_setting(wanted, wanted, wanted - spring, R, T, DIE, set_depth_mm=5.5)
    assert again.set_angle_deg == pytest.approx(wanted - spring)
    assert again.punch_depth_mm == pytest.approx(5.5)
    assert again.measured_deg == again.wanted_deg


@given(wanted_angles, errors, springs)
def test_too_open_means_deeper(wanted, error, spring):
    assume(abs(error) > 0.01)
    next_one = correct_setting(wanted, wanted + error, wanted - spring, R, T, DIE)
    before = punch_depth_mm(wanted - spring, R, T, *TOOL)
    assert (next_one.set_angle_deg < wanted - spring) == (error > 0)
    assert (next_one.punch_depth_mm > before) == (error > 0)


@given(wanted_angles, st.floats(0.90, 0.999), springs)
def test_one_correction_lands_on_a_sheet_with_another_springback(wanted, ratio, guessed):
    """The sheet's real ratio of released to loaded bend angle is not the one guessed."""
    set_angle = wanted - guessed
    measured = 180 - (180 - set_angle) * ratio
    assume(abs(measured - wanted) < 8 and wanted - guessed > 40)
    next_one = correct_setting(wanted, measured, set_angle, R, T, DIE)
    came_out = 180 - (180 - next_one.set_angle_deg) * ratio
    left = abs(came_out - wanted)
    # What is left is the error times how wrong the guessed ratio was.
    guessed_ratio = (180 - wanted) / (180 - set_angle)
    wrong = abs(ratio / guessed_ratio - 1.0)
    assert left == pytest.approx(abs(measured - wanted) * wrong, abs=1e-9)
    assert left <= 0.25 * abs(measured - wanted)


@given(wanted_angles, errors, st.floats(-0.5, 0.5))
def test_an_offset_of_the_depth_stays(wanted, error, offset):
    """The press's zero may be off: only the change of depth is geometry."""
    own = punch_depth_mm(wanted - 1, R, T, *TOOL)
    plain = correct_setting(wanted, wanted + error, wanted - 1, R, T, DIE)
    shifted = correct_setting(wanted, wanted + error, wanted - 1, R, T, DIE, own + offset)
    assert shifted.punch_depth_mm - plain.punch_depth_mm == pytest.approx(offset)


@given(wanted_angles, errors)
def test_depth_and_angle_of_a_correction_agree(wanted, error):
    row = correct_setting(wanted, wanted + error, wanted - 1.5, R, T, DIE)
    assert angle_at_depth(row.punch_depth_mm, R, T, *TOOL) == pytest.approx(row.set_angle_deg)


def test_table_runs_both_ways_in_half_degrees():
    case = BendCase(metal(), 2.0, 1000.0, 90.0, DIE, 1.0)
    bend = air_bend(case)
    rows = correction_table(bend, case, setting_limits(DIE, punch(28.0), 2.0, 2.56))
    assert [r.measured_deg for r in rows] == [85.0 + 0.5 * i for i in range(21)]
    assert rows[10].set_angle_deg == pytest.approx(bend.set_angle_deg.nominal)
    assert rows[10].punch_depth_mm == pytest.approx(bend.punch_depth_mm.nominal)
    settings = [r.set_angle_deg for r in rows]
    depths = [r.punch_depth_mm for r in rows]
    assert settings == sorted(settings, reverse=True)
    assert depths == sorted(depths)


def test_table_leaves_out_what_cannot_be_set():
    """Next to flat there is no flatter setting; the rows are gone, not bent to fit."""
    case = BendCase(metal(), 2.0, 1000.0, 177.0, DIE, 1.0)
    bend = air_bend(case)
    rows = correction_table(bend, case, setting_limits(DIE, punch(28.0), 2.0, 2.56))
    assert 0 < len(rows) < 21
    assert all(0 < r.measured_deg < 180 and 0 < r.set_angle_deg < 180 for r in rows)


@pytest.mark.parametrize(
    "limits",
    [SettingLimits(87.0, 99.0, ("punch angle",)), SettingLimits(20.0, 7.1, ("press stroke",))],
)
def test_table_ends_where_tools_or_press_end(limits):
    case = BendCase(metal(), 2.0, 1000.0, 90.0, DIE, 1.0)
    bend = air_bend(case)
    rows = correction_table(bend, case, limits)
    assert 0 < len(rows) < 21
    assert rows[0].measured_deg == 85.0
    assert not any(limits.beyond(row.set_angle_deg, row.punch_depth_mm) for row in rows)
    last = rows[-1]
    assert last.set_angle_deg == pytest.approx(87.0) or last.punch_depth_mm == pytest.approx(7.1)


@pytest.mark.parametrize("measured", [180.0, 0.0, -1.0, float("nan")])
def test_refuses_a_measured_angle_that_is_no_bend(measured):
    with pytest.raises(InputError) as error:
        correct_setting(90.0, measured, 89.0, R, T, DIE)
    assert error.value.where == "measured_deg"


def test_refuses_a_correction_past_closed():
    with pytest.raises(InputError, match="too far from the wanted"):
        correct_setting(60.0, 150.0, 58.0, R, T, DIE)


@pytest.mark.parametrize(("measured", "found"), [(95.0, False), (95.1, True), (84.0, True)])
def test_large_errors_are_questioned(measured, found):
    check = large_error(90.0, measured)
    assert (check is not None) == found
    if check:
        assert check.level == "caution"
        assert check.numbers["error_deg"] == pytest.approx(measured - 90)


@given(st.floats(50.0, 170.0))
def test_depth_per_degree_is_the_slope(angle):
    slope = depth_per_deg_mm(angle, R, T, DIE)
    step = punch_depth_mm(angle - 0.5, R, T, *TOOL) - punch_depth_mm(angle + 0.5, R, T, *TOOL)
    assert slope == pytest.approx(step, rel=2e-3)
    assert slope > 0


def test_tilt_lowers_the_open_end():
    slope = depth_per_deg_mm(89.0, R, T, DIE)
    assert tilt_mm_per_m(90.0, 91.0, 500.0, slope) == pytest.approx(2 * slope)
    assert tilt_mm_per_m(91.0, 90.0, 500.0, slope) < 0
    assert tilt_mm_per_m(90.0, 90.0, 500.0, slope) == 0
    with pytest.raises(InputError):
        tilt_mm_per_m(90.0, 91.0, 0.0, slope)
