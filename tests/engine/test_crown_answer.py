"""Left, middle and right of a result: how open the middle is, and what takes it out."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from plan_reading import words_of
from test_next_setting import STEP

from flangebook.planning.results.next_setting import next_setting


def crown(left, middle, right, length=1000.0):
    result = {"left_deg": left, "middle_deg": middle, "right_deg": right}
    return next_setting(STEP, result, length)["crown"]


def test_a_middle_that_is_open_gets_its_shim():
    """By the step's table a released degree is 0.1 * 92/90 mm of depth."""
    said = crown(90.0, 91.5, 90.0)
    assert said["middle_open_deg"] == 1.5
    assert said["lack_mm"] == pytest.approx(1.5 * 0.1 * 92 / 90, abs=2e-3)
    assert said["shim"] == {"middle_mm": 0.15, "strip_mm": 0.05, "lengths_mm": [913, 707, 408]}
    assert "1.5° more open" in words_of(said["said"])
    assert "0.15 mm" in words_of(said["said"])


def setting(left, middle, right):
    result = {"left_deg": left, "middle_deg": middle, "right_deg": right}
    return next_setting(STEP, result, 1000.0)


def test_with_a_shim_proposed_the_setting_is_for_the_ends():
    """Seen: the setting was for the mean, and with the shim laid it over-bent the whole piece."""
    said = setting(90.0, 91.5, 90.0)
    assert said["set_angle_deg"] == 88.0
    assert said["crown"]["setting_for"] == "ends"
    assert words_of(said["said"]) == "At the ends as wanted: leave the setting as it is."
    assert "first that, then the setting" in words_of(said["crown"]["said"])
    more = setting(91.0, 92.5, 91.0)
    assert more["set_angle_deg"] == pytest.approx(88.0 - 92 / 90, abs=0.01)
    assert words_of(more["said"]) == "At the ends 1° too open."
    assert (more["measured_deg"], more["error_deg"]) == (91.5, 1.5)


@given(st.floats(88.0, 92.0), st.floats(86.0, 94.0), st.floats(88.0, 92.0))
def test_an_open_middle_never_over_bends_the_ends(left, middle, right):
    said = setting(left, middle, right)
    if said["set_angle_deg"] is None or middle <= 0.5 * (left + right):
        return
    closes = (88.0 - said["set_angle_deg"]) * 90 / 92
    assert 0.5 * (left + right) - closes >= 90.0 - 0.31


def test_two_pieces_with_a_shim_laid_in_between_tell_how_the_press_answers():
    from flangebook.planning.results.next_setting import Made

    first = {"left_deg": 92.0, "middle_deg": 93.0, "right_deg": 92.0, "set_angle_deg": 88.0}
    second = {"left_deg": 90.0, "middle_deg": 90.0, "right_deg": 90.0, "set_angle_deg": 85.956}
    said = next_setting(STEP, second, 1000.0, None, [Made(first)])
    assert said["set_angle_deg"] == pytest.approx(85.956, abs=0.01)


def test_a_tilt_is_no_crown():
    assert crown(89.0, 90.0, 91.0)["middle_open_deg"] == 0.0
    assert crown(89.0, 90.0, 91.0)["shim"] is None


@given(st.floats(88.0, 92.0), st.floats(86.0, 94.0), st.floats(88.0, 92.0))
def test_a_shim_only_where_the_middle_is_open_and_never_more_than_it_lacks(left, middle, right):
    said = crown(left, middle, right)
    if said is None:  # beyond the table: no setting and no shim
        return
    if said["shim"] is not None:
        assert said["middle_open_deg"] >= 0.3 - 0.005
        assert said["shim"]["middle_mm"] <= said["lack_mm"] + 0.026
    if said["middle_open_deg"] < 0.29:
        assert said["shim"] is None


def test_a_middle_that_is_closed_says_so_and_two_places_say_nothing():
    said = crown(91.0, 90.0, 91.0)
    assert said["shim"] is None
    assert "1° more closed" in words_of(said["said"])
    both = next_setting(STEP, {"left_deg": 90.0, "right_deg": 91.0}, 1000.0)
    assert both["crown"] is None
