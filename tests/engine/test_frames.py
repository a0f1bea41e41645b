"""A bend longer than the space between the frames: whether the sheet runs into them."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from plan_reading import codes, finding
from planning_shop import CRIB, METALS, PRESS, UP, part
from sheet_metals import die, press

from flangebook.bending.geometry.strip import Fold, Strip
from flangebook.bending.motion.frames import bend_length_fits, reach_behind_mm
from flangebook.bending.motion.lying import Pressing, Stroke
from flangebook.bending.part.part import Bend
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan

FRAMES = "longer-than-frames"


@pytest.mark.parametrize(
    ("length", "level"),
    [(1300.0, None), (1301.0, "caution"), (1600.0, "caution"), (1601.0, "stop")],
)
def test_length_against_bed_and_frames(length, level):
    found = bend_length_fits(press(), length)
    assert (found.level if found else None) == level


@pytest.mark.parametrize(
    ("behind", "level"), [(24.0, "ok"), (189.0, "ok"), (195.0, "caution"), (201.0, "stop")]
)
def test_a_long_sheet_against_the_throat(behind, level):
    found = bend_length_fits(press(), 1500.0, behind)  # frames 1300 apart, throat 200
    assert (found.level, found.code) == (level, FRAMES)
    assert found.numbers["behind_mm"] == behind
    assert bend_length_fits(press(), 1300.0, behind) is None


def pressing(behind_mm, angle_deg=90.0, flange=None):
    """60 mm in front; behind the bend a flat, and a finished flange at its end if asked."""
    folds = [Fold(60.0)]
    length = 60.0 + behind_mm
    if flange:
        folds.append(Fold(length, flange[1], 2.0, 4.0))
        length += flange[0]
    stroke = Stroke(angle_deg, 2.0, 4.0, 6.0)
    return Pressing(Strip(2.0, length, tuple(folds)), 1, stroke, die(16.0, 60.0))


@given(st.floats(60.0, 135.0), st.floats(30.0, 600.0))
def test_a_plain_leg_reaches_furthest_as_it_lies_flat(angle, behind):
    """The leg only draws in and rises: it never reaches further back than before the bend,
    but for half its thickness that turns into the way."""
    reach = reach_behind_mm(pressing(behind, angle))
    assert behind - 1e-6 <= reach <= behind + 1.01


def test_a_hanging_flange_swings_further_back_than_it_lay():
    """By hand: its lower edge, 80 below the flat and 150 behind the bend line, swings out to
    the circle about the bend."""
    lying = pressing(150.0, 90.0, flange=(80.0, -90.0))
    reach = reach_behind_mm(lying)
    assert reach > 150.0 + 8.0
    assert reach < math.hypot(154.0, 84.0)


def planned(flats, *bends: Bend, length=1300.0, order=None) -> JsonDict:
    long = replace(part(flats, *bends), bend_length_mm=length, thickness_mm=1.5, order=order)
    return plan(long, PRESS, CRIB, METALS)


def test_a_sheet_that_runs_into_the_frames_is_a_stop():
    """As seen: flats of 300 and 500, longer than the frames stand apart, throat 200."""
    answer = planned((300.0, 500.0), UP)
    assert finding(answer, FRAMES)["level"] == "stop"
    assert finding(answer, FRAMES)["numbers"]["behind_mm"] == pytest.approx(300.0, abs=5.0)


def test_a_short_side_behind_is_nothing_but_a_note():
    answer = planned((24.0, 150.0), UP)
    assert finding(answer, FRAMES)["level"] == "ok"
    assert FRAMES not in codes(answer, "caution") | codes(answer, "stop")
    assert finding(answer, FRAMES)["steps"] == [1]


@pytest.mark.parametrize("order", [None, (1, 2), (2, 1)])
def test_the_side_that_clears_the_frames_goes_behind(order):
    """In each step the side behind is one that goes in, though the other would be gauged too."""
    answer = planned((150.0, 80.0, 150.0), UP, UP, order=order)
    assert FRAMES not in codes(answer, "caution") | codes(answer, "stop")
    assert all(step["gauge_x_mm"] < PRESS.throat_mm for step in answer["steps"])


def test_a_bend_that_fits_between_the_frames_says_nothing():
    assert FRAMES not in codes(planned((300.0, 500.0), UP, length=1200.0))
