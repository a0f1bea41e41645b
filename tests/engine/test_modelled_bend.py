"""What is kept of solved bends is what a fresh solve gives, and its line beside the setting."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sheet_metals import about, die, metal

from flangebook.bending.errors import InputError
from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.prediction.modelled_bend import (
    LEAST_RADIUS_OVER_T,
    beside,
    energy_gap,
    modelled_bend,
    whole_stroke,
)
from flangebook.bending.sheet_model.bands import FRICTION_USUAL, banded_bend
from flangebook.bending.sheet_model.hardening_from_strength import law_of
from flangebook.bending.sheet_model.stroke import set_bend
from flangebook.bending.sheet_model.tools import tools

STEEL = metal()
UNHARDENING = replace(metal(), yield_mpa=about(200.0, 0.0), tensile_mpa=about(200.0, 0.0))


def case(t=2.0, v=16.0, die_angle=30.0, rd=2.0, rp=1.0, angle=90.0, of=STEEL) -> BendCase:
    return BendCase(of, t, 100.0, angle, die(v, die_angle, rd), rp)


@settings(max_examples=25)
@given(st.floats(0.8, 6.0), st.floats(6.0, 14.0), st.floats(50.0, 170.0), st.floats(0.3, 1.2))
def test_what_is_kept_is_the_direct_solve(t, v_over_t, angle, tip_over_t):
    v = v_over_t * t
    one = case(t, v, 30.0, v / 8, tip_over_t * t, angle)
    alike = replace(one, bend_length_mm=250.0, die=replace(one.die, code="another", name="Same V"))
    kept, again = air_bend(one).model, air_bend(alike).model
    assert kept is again
    direct = banded_bend(STEEL, t, tools(v, 30.0, v / 8, tip_over_t * t, FRICTION_USUAL), angle)
    for mine, theirs in (
        (kept.force_n_per_mm, direct.force_n_per_mm),
        (kept.springback_deg, direct.springback_deg),
        (kept.depth_mm, direct.depth_mm),
        (kept.radius_mm, direct.released_radius_mm),
    ):
        ends = (theirs.low, theirs.nominal, theirs.high)
        assert (mine.low, mine.nominal, mine.high) == pytest.approx(ends, rel=1e-12)


def test_numbers_that_differ_at_all_are_solved_anew():
    assert air_bend(case()).model is not air_bend(case(t=2.0000001)).model


def test_next_to_no_radius_is_no_answer():
    """A sheet that does not harden folds up on a tip of nothing; the model is of no use there."""
    folded = case(die_angle=15.0, rp=0.0, angle=28.0, of=UNHARDENING)
    assert modelled_bend(folded) == "it finds next to no inside radius, which no sheet has"
    square = modelled_bend(replace(folded, included_angle_deg=90.0))
    assert square.nominal.released_radius_mm > LEAST_RADIUS_OVER_T * folded.thickness_mm


def test_an_error_is_kept_and_raised_each_time_anew():
    raised = []
    for _ in range(2):
        with pytest.raises(InputError) as error:
            air_bend(case(rp=9.0))
        raised.append(error.value)
    assert raised[0] is not raised[1]
    assert raised[0].what == raised[1].what


@pytest.mark.parametrize("angle", [60.0, 90.0, 135.0])
def test_the_line_beside_the_setting_is_the_models(angle):
    """Straight between points under half a degree apart: within 0.002 mm and 0.01 degrees."""
    near = beside(modelled_bend(case(angle=angle)))
    tool = tools(16.0, 30.0, 2.0, 1.0, FRICTION_USUAL)
    for off in (-5.0, -2.3, 0.0, 1.7, 5.0):
        direct = set_bend(law_of(STEEL, 2.0), tool, angle + off)
        assert near.set_at(angle + off) == pytest.approx(direct.set_angle_deg, abs=0.01)
        assert near.depth_at(angle + off) == pytest.approx(direct.depth_mm, abs=0.002)


def test_the_slope_of_the_line_is_the_models_depth_a_degree():
    found = modelled_bend(case())
    near = beside(found)
    slope = near.depth_at(89.5) - near.depth_at(90.5)
    assert slope == pytest.approx(found.nominal.depth_per_degree_mm, rel=0.02)


@pytest.mark.parametrize("angle", [60.0, 90.0, 150.0])
def test_without_friction_the_punchs_work_is_the_sheets_energy(angle):
    assert energy_gap(modelled_bend(case(angle=angle))) < 0.01


def test_the_whole_stroke_passes_through_the_setting():
    found = modelled_bend(case())
    curve = whole_stroke(found)
    assert curve.loaded_angle_deg[0] > 179.0
    assert curve.loaded_angle_deg[-1] < found.nominal.set_angle_deg
    assert max(curve.force_n_per_mm) == pytest.approx(found.nominal.peak_force_n_per_mm, rel=0.01)
