"""What a result leads to when the press stood otherwise than the card says."""

from __future__ import annotations

import pytest
from plan_reading import words_of

from flangebook.planning.results.next_setting import next_setting

STEP = {
    "included_angle_deg": 90.0,
    "set_angle_deg": 88.0,
    "punch_depth_mm": 10.0,
    "limits": {"sharpest_deg": 80.5, "deepest_mm": 11.0, "limited_by": ["die angle"]},
    "corrections": [
        {
            "measured_deg": 90.0 + i,
            "set_angle_deg": 88.0 - i * 92.0 / 90.0,
            "punch_depth_mm": 10.0 + 0.1 * i * 92.0 / 90.0,
        }
        for i in range(-5, 6)
    ],
}


def test_a_typed_set_angle_without_a_depth_takes_the_depth_that_belongs_to_it():
    """Set at 87 instead of 88: by the table that was 10.1 deep, not the planned 10.0."""
    said = next_setting(STEP, {"measured_deg": 90.0, "set_angle_deg": 87.0}, 1000.0)
    assert said["set_angle_deg"] == 87.0
    assert said["punch_depth_mm"] == pytest.approx(10.1)


def test_a_depth_that_was_typed_is_believed():
    result = {"measured_deg": 91.0, "set_angle_deg": 87.0, "punch_depth_mm": 10.5}
    said = next_setting(STEP, result, 1000.0)
    moved = 87.0 - said["set_angle_deg"]
    assert moved == pytest.approx(92 / 90, abs=0.01)
    assert said["punch_depth_mm"] == pytest.approx(10.5 + 0.1 * moved, abs=0.002)


def test_the_card_s_own_setting_is_the_base_where_it_has_one():
    own = {"step": 1, "set_angle_deg": 86.0, "punch_depth_mm": 10.3}
    said = next_setting(STEP, {"measured_deg": 90.0}, 1000.0, own)
    assert (said["set_angle_deg"], said["punch_depth_mm"]) == (86.0, pytest.approx(10.3))
    said = next_setting(STEP, {"measured_deg": 90.0, "set_angle_deg": 87.0}, 1000.0, own)
    assert said["punch_depth_mm"] == pytest.approx(10.2)


def test_the_right_end_more_open_asks_for_more_depth_there():
    result = {"left_deg": 90.0, "right_deg": 91.0}
    assert next_setting(STEP, result, 500.0)["tilt_mm_per_m"] == pytest.approx(
        0.2 * 92 / 90, abs=0.001
    )


def test_a_step_without_an_angle_keeps_the_measurement_and_says_so():
    said = next_setting(
        {**STEP, "set_angle_deg": None, "corrections": []}, {"measured_deg": 3.0}, 1
    )
    assert said["set_angle_deg"] is None
    assert "kept" in words_of(said["said"])


def test_nothing_is_read_beyond_the_ends_of_the_saved_table():
    for result in (
        {"measured_deg": 95.5},
        {"measured_deg": 84.5},
        {"measured_deg": 94.0, "set_angle_deg": 83.5},
        {"measured_deg": 90.0, "set_angle_deg": 97.0},
        {"measured_deg": 90.0, "punch_depth_mm": 14.0},
    ):
        said = next_setting(STEP, result, 1000.0)
        assert (said["set_angle_deg"], said["punch_depth_mm"]) == (None, None), result
        assert said["to_check"], result
        assert "Something else is wrong" in words_of(said["said"])


def test_a_step_saved_without_limits_goes_no_further_than_its_own_table():
    """Saved by an earlier release: nothing is known of the tools but the table's ends."""
    old = {name: value for name, value in STEP.items() if name != "limits"}
    assert next_setting(old, {"measured_deg": 91.0}, 1000.0)["set_angle_deg"] < 88.0
    deep = {"measured_deg": 91.0, "set_angle_deg": 88.0, "punch_depth_mm": 10.45}
    said = next_setting(old, deep, 1000.0)
    assert (said["set_angle_deg"], said["punch_depth_mm"]) == (None, None)
    assert said["limited_by"] == ["saved table"]
    assert "saved with" in words_of(said["said"])


def test_a_depth_beyond_the_limit_gets_no_number_though_the_angle_would_do():
    deep = {"measured_deg": 91.0, "punch_depth_mm": 10.95}
    held = {**STEP, "limits": {**STEP["limits"], "limited_by": ["press stroke"]}}
    said = next_setting(held, {**deep, "set_angle_deg": 88.0}, 1000.0)
    assert (said["set_angle_deg"], said["punch_depth_mm"]) == (None, None)
    assert said["limited_by"] == ["press stroke"]
    assert "stroke of the press" in words_of(said["said"])


def test_one_row_is_too_little_to_read_between():
    said = next_setting({**STEP, "corrections": STEP["corrections"][:1]}, {"measured_deg": 90}, 1)
    assert said["set_angle_deg"] is None
