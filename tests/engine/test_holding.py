"""What sags, tips and traps fingers: cantilever tables, the centre of the weight, the hands."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from plan_reading import codes, finding
from planning_shop import CRIB, METALS, MILD, PRESS, UP, die, part

from flangebook.bending.geometry.ring import box, centre, moved
from flangebook.bending.motion.handling import hand_distance, nothing_to_hold
from flangebook.bending.motion.holding import between_part_and_gauge, drops_behind, sag_mm, sagging
from flangebook.bending.part.part import Bend
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan

STEEL = (207_000.0, 0.3, 7850.0)


def beam_by_finite_differences(a, b, t, e, nu, rho, pieces=4000):
    """Integrate the curvature of the beam twice: its load is the weight outside each place."""
    q, stiffness = rho * 1e-9 * 9.80665 * t, e / (1 - nu**2) * t**3 / 12
    x = np.linspace(0.0, a, pieces + 1)
    moment = q * (a - x) ** 2 / 2 + q * b * (a - x)
    step = a / pieces
    slope = np.concatenate(([0.0], np.cumsum((moment[1:] + moment[:-1]) / 2 * step))) / stiffness
    return float(np.sum((slope[1:] + slope[:-1]) / 2) * step)


@given(st.floats(50.0, 800.0), st.floats(0.0, 300.0), st.floats(0.5, 6.0))
def test_sag_is_the_integrated_beam(a, b, t):
    expected = beam_by_finite_differences(a, b, t, *STEEL)
    assert sag_mm(a, b, t, *STEEL) == pytest.approx(expected, rel=1e-4)


@given(st.floats(50.0, 800.0), st.floats(0.5, 6.0))
def test_sag_of_a_plain_edge_is_the_tables_cantilever(a, t):
    """Beam fixed at one end, load evenly spread: w l^4 / 8 E I (Machinery's Handbook, table of
    beams); for a wide sheet of unit width 1.5 rho g a^4 / (E' t^2)."""
    e, nu, rho = STEEL
    plane = e / (1 - nu**2)
    assert sag_mm(a, 0.0, t, *STEEL) == pytest.approx(
        1.5 * rho * 1e-9 * 9.80665 * a**4 / (plane * t**2)
    )


def test_a_little_sag_is_nothing():
    assert sagging(2.9, 8.0) is None
    square, under = sagging(4.0, 8.0), sagging(9.0, 8.0)
    assert (square.level, under.level) == ("caution", "caution")
    assert "under the finger" not in square.words
    assert "drops under the finger" in under.words


@pytest.mark.parametrize(
    ("before", "after", "words"),
    [
        (5.0, 10.0, "before or after the bend"),
        (5.0, -1.0, "before the bend"),
        (-1.0, 10.0, "after the bend"),
    ],
)
def test_drops_behind(before, after, words):
    found = drops_behind(before, after)
    assert found.level == "caution"
    assert f"Let go {words}," in found.words
    assert drops_behind(-1.0, 0.0) is None


@given(st.floats(-50, 50), st.floats(-50, 50), st.floats(1, 90), st.floats(1, 90))
def test_centre_of_a_box(x, y, width, height):
    found = centre(moved(box(0.0, 0.0, width, height), x, y))
    assert found == pytest.approx((x + width / 2, y + height / 2), abs=1e-6)


@pytest.mark.parametrize(
    ("back", "flange", "close", "level"),
    [
        (0.0, False, True, None),
        (8.0, False, True, "caution"),
        (8.0, False, False, "ok"),
        (0.0, True, True, "ok"),
    ],
)
def test_fingers_between_part_and_gauge(back, flange, close, level):
    found = between_part_and_gauge(back, against_flange=flange, held_close=close)
    assert (found.level if found else None) == level
    assert found is None or found.do


@pytest.mark.parametrize(
    ("length", "away", "level", "says"),
    [
        (300.0, 0.0, "caution", "never with fingers"),
        (599.0, 90.0, "caution", "tongs"),
        (600.0, 0.0, "ok", "two ends"),
        (300.0, 150.0, "ok", "flange that stands up"),
    ],
)
def test_a_hold_elsewhere_is_a_note_on_where_to_hold(length, away, level, says):
    found = hand_distance(60.0, 60.0, length, away)
    assert found.level == level
    assert says in found.do
    assert found.words == "Only 30 mm to hold in front of the die. Keep hands 102 mm away."


@given(st.floats(20.0, 400.0), st.floats(20.0, 90.0))
def test_the_room_shown_never_contradicts_the_safe_distance(held, width):
    found = hand_distance(held, width)
    if found.words.startswith("Only"):
        assert found.numbers["room_mm"] < found.numbers["safe_mm"]


@pytest.mark.parametrize(("held", "level"), [(30.1, None), (30.0, "stop"), (12.0, "stop")])
def test_nothing_in_front_of_the_die_is_a_stop(held, level):
    found = nothing_to_hold(held, 60.0)
    assert (found.level if found else None) == level
    if found:
        assert found.numbers["inside_mm"] == 30.0 - held
        assert "other end" in found.do
        assert "other way round" in found.do


def planned(flats, *bends: Bend, press=PRESS, crib=CRIB, **other) -> JsonDict:
    return plan(part(flats, *bends, **other), press, crib, METALS)


HEM = Bend(0.0, "up", None, "open_hem", 2.0)
ACUTE = replace(CRIB, dies=(*CRIB.dies, die(8.0, 400.0, 30.0)))


def hem_of_13(press=PRESS) -> JsonDict:
    """An open hem of 13 mm beside 70 mm, made in a die 32 wide: half of that is 16."""
    return planned((13.0, 70.0), HEM, press=press, crib=ACUTE, thickness_mm=1.0)


def test_a_hem_is_gauged_at_the_hem_so_that_the_long_side_is_held():
    answer = hem_of_13()
    assert "nothing-to-hold" not in codes(answer)
    assert answer["steps"][0]["gauged_end"] == "left"


def test_where_the_long_side_alone_can_be_gauged_nothing_is_left_to_hold():
    """As seen: the hem lies on the die in front. Here the gauge cannot come nearer than 40 mm."""
    answer = hem_of_13(replace(PRESS, gauge_x_min_mm=40.0))
    assert answer["steps"][0]["gauged_end"] == "right"
    found = finding(answer, "nothing-to-hold")
    assert (found["level"], found["step"]) == ("stop", 1)
    assert "hand-distance" not in codes(answer), "said once, by the stop"


def test_a_long_thin_sheet_sags_off_the_gauge():
    """430 behind a die 44 wide, 0.8 mm thick: by hand 1.5 rho g a^4 / (E' t^2)."""
    answer = planned((430.0, 480.0), UP, thickness_mm=0.8)
    found = finding(answer, "sags-off-gauge")
    step = answer["steps"][0]
    free = step["gauge_x_mm"] - next(d for d in CRIB.dies if d.code == step["die"]).width_mm / 2
    plane = MILD.youngs_modulus_mpa.nominal / (1 - 0.3**2)
    expected = 1.5 * 7850e-9 * 9.80665 * free**4 / (plane * 0.8**2)
    assert found["numbers"]["sag_mm"] == pytest.approx(expected, rel=1e-3)
    assert "sags-off-gauge" not in codes(planned((100.0, 480.0), UP, thickness_mm=0.8))


def test_the_heavy_side_behind_drops_when_let_go():
    """The short side alone can be held: the weight lies behind the V."""
    far = replace(PRESS, gauge_x_min_mm=100.0)
    answer = planned((60.0, 300.0), UP, press=far)
    assert "drops-behind" in codes(answer, "caution")
    assert "drops-behind" not in codes(planned((60.0, 300.0), UP))


def test_a_long_part_is_held_at_its_ends_and_the_step_says_so():
    short, long = planned((30.0, 60.0), UP), planned((30.0, 60.0), UP, bend_length_mm=900.0)
    assert "hand-distance" in codes(short, "caution")
    assert finding(long, "hand-distance")["level"] == "ok"
    at_step = [c for c in long["steps"][0]["checks"] if c["code"] == "hand-distance"]
    assert "two ends" in at_step[0]["do"]
