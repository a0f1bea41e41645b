"""A measured flange moves the gauge, within its reach, and asks back where it cannot be."""

from __future__ import annotations

import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from hypothesis import given
from hypothesis import strategies as st
from plan_reading import words_of

from flangebook.bending.geometry.setback import setback_mm
from flangebook.bending.handbook.allowance import allowance_from_k
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.prediction.measured_flange import flange_at_angle_mm, most_error_mm
from flangebook.planning.plan import plan
from flangebook.planning.results.gauged_flange import TO_CHECK, gauge_reaches
from flangebook.planning.results.next_setting import next_setting

LENGTH = 400.0


@pytest.fixture(scope="module")
def l_step():
    """The one step of an angle of 2 mm, its short flat at the gauge."""
    part = Part("Angle", "mild-steel-cr", 2.0, LENGTH, (30.0, 60.0), (Bend(90.0, "up"),))
    (step,) = plan(part, DEMO_PRESS, DEMO_CRIB, STARTER_METALS)["steps"]
    return step


def answer(step, flange, angle=90.0, setting=None, **more):
    return next_setting(
        step, {"measured_deg": angle, "flange_mm": flange, **more}, LENGTH, setting
    )["flange"]


@given(
    st.floats(60.0, 150.0), st.floats(0.5, 8.0), st.floats(0.5, 6.0), st.floats(0.25, 0.5),
    st.floats(-4.0, 4.0), st.sampled_from(["din6935", "mould_line", "inside"]),
)  # fmt: skip
def test_a_flange_is_the_folded_length_of_its_strip(wanted, radius, t, k, off, dimension):
    """A leg from the gauge's face to the bend line keeps its developed length at any angle."""
    came = wanted + off
    flange = flange_at_angle_mm(60.0, wanted, came, radius, t, k, dimension)

    def developed(length, angle):
        arc = allowance_from_k(angle, radius, t, k)
        return length - setback_mm(angle, radius, t, dimension) + arc / 2.0

    assert developed(flange, came) == pytest.approx(developed(60.0, wanted), abs=1e-9)
    same = flange_at_angle_mm(60.0, wanted, wanted, radius, t, k, dimension)
    assert same == pytest.approx(60.0, abs=1e-12)


@given(st.floats(0.8, 2.6))
def test_a_flange_read_to_the_other_face_is_never_taken_for_the_gauge(t):
    assert most_error_mm(t) < t


def test_the_next_x_is_the_last_less_the_error(l_step):
    flange = l_step["gauged_flange"]
    assert flange["wanted_mm"] == 30.0
    for error in (-0.6, -0.2, 0.3, 0.9):
        said = answer(l_step, 30.0 + error)
        assert said["gauge_x_mm"] == pytest.approx(l_step["gauge_x_mm"] - error, abs=2e-3)
        assert said["error_mm"] == pytest.approx(error, abs=2e-3)
        assert words_of(said["said"]).startswith("Flange")


def test_as_wanted_leaves_the_gauge(l_step):
    said = answer(l_step, 30.02)
    assert said["gauge_x_mm"] == pytest.approx(l_step["gauge_x_mm"])
    assert words_of(said["said"]) == "Flange as wanted: leave the gauge."


def test_the_angle_that_came_out_is_taken_out_first(l_step):
    """A bend of 92 degrees of a gauge that stood right has a flange that is a little short."""
    row = next(r for r in l_step["gauged_flange"]["rows"] if r["measured_deg"] == 92.0)
    assert row["flange_mm"] < 29.97
    said = answer(l_step, row["flange_mm"], angle=92.0)
    assert said["gauge_x_mm"] == pytest.approx(l_step["gauge_x_mm"])


def test_it_starts_from_where_the_gauge_stood(l_step):
    own = {"gauge_x_mm": l_step["gauge_x_mm"] - 0.4}
    said = answer(l_step, 30.2, setting=own)
    assert said["gauge_x_mm"] == pytest.approx(own["gauge_x_mm"] - 0.2, abs=2e-3)
    said = answer(l_step, 30.2, setting=own, gauge_x_mm=28.0)
    assert said["gauge_x_mm"] == pytest.approx(27.8, abs=2e-3)


@given(st.floats(0.1, 2_000.0), st.floats(0.0, 600.0), st.floats(60.0, 120.0))
def test_no_x_out_of_reach_and_none_from_an_absurd_flange(l_step, flange, stood, angle):
    said = answer(l_step, flange, angle=angle, gauge_x_mm=stood)
    x = said["gauge_x_mm"]
    assert words_of(said["said"])
    if x is not None:
        assert abs(said["error_mm"]) <= l_step["gauged_flange"]["most_error_mm"]
        assert gauge_reaches(l_step, x)


def test_an_absurd_flange_asks_back(l_step):
    for flange in (28.0, 32.0, 3.0, 300.0):
        said = answer(l_step, flange)
        assert said["gauge_x_mm"] is None
        assert said["to_check"] == list(TO_CHECK)
        assert "No gauge is that far off" in words_of(said["said"])


def test_a_gauge_at_the_end_of_its_reach_says_so(l_step):
    far = l_step["gauged_flange"]["x_high_mm"]
    said = answer(l_step, 29.5, gauge_x_mm=far)
    assert said["gauge_x_mm"] is None
    assert "ends at 600 mm" in words_of(said["said"])


def test_the_gauge_stays_behind_the_tools(l_step):
    """The finger rests on the die, so the punch and the least travel are what end it."""
    low = l_step["gauged_flange"]["x_low_mm"]
    assert 4.0 <= low < l_step["gauge_x_mm"]


def test_without_a_flange_or_on_an_old_card_no_x(l_step):
    assert next_setting(l_step, {"measured_deg": 90.0}, LENGTH)["flange"] is None
    old = {k: v for k, v in l_step.items() if k != "gauged_flange"}
    assert "plan it again" in words_of(answer(old, 30.2)["said"])
    said = answer({**old, "gauged_flange": None}, 30.2)
    assert (said["gauge_x_mm"], said["to_check"]) == (None, [])
    assert answer(l_step, 30.2, angle=120.0)["gauge_x_mm"] is None
