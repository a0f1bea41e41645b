"""Model and handbook side by side: a difference is said, and a caution only if it matters."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sheet_metals import die, metal

from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.bending.prediction.witnesses import CODE, handbook_differs, model_not_used

LENGTH_MM = 800.0


def bend(angle: float = 90.0) -> AirBend:
    return air_bend(BendCase(metal(), 2.0, LENGTH_MM, angle, die(16.0, 30.0, 2.0), 1.5))


def said(**handbook: float) -> list:
    """The findings when the handbook's nominals are these multiples of the model's own."""
    one = bend()
    assert one.model is not None
    own = {
        "force_n": one.force_n.nominal,
        "inside_radius_mm": one.model.radius_mm.nominal,
        "springback_deg": one.model.springback_deg.nominal,
        "punch_depth_mm": one.punch_depth_mm.nominal,
    }
    figures = {k: Estimate.exact(v * handbook.pop(k, 1.0)) for k, v in own.items()}
    deduction = Estimate.exact(one.bend_deduction_mm.nominal + handbook.pop("blank_mm", 0.0))
    beside = replace(one, model=None, handbook=None, bend_deduction_mm=deduction, **figures)
    assert not handbook
    return list(handbook_differs(replace(one, handbook=beside), LENGTH_MM))


def test_nothing_is_said_where_they_agree():
    assert said() == []


def test_a_force_above_the_models_band_is_a_caution_with_both_figures():
    one = bend()
    top = one.model.force_n_per_mm.high / one.model.force_n_per_mm.nominal
    assert said(force_n=top * 0.999) == []
    (check,) = said(force_n=top * 1.001)
    assert (check.level, check.code) == ("caution", CODE)
    assert check.numbers["handbook_kn"] == pytest.approx(one.force_n.nominal * top * 1.001e-3)
    assert check.numbers["model_kn"] == pytest.approx(one.force_n.nominal / 1000)
    assert "higher of both" in check.words


def test_a_force_below_the_models_band_is_only_said():
    one = bend().model.force_n_per_mm
    (check,) = said(force_n=0.999 * one.low / one.nominal)
    assert check.level == "ok"
    assert "below" in check.words


@pytest.mark.parametrize(("share", "blank_mm", "level"), [
    (1.0 / 1.21, 0.11, "caution"),
    (1.0 / 0.79, -0.11, "caution"),
    (1.0 / 1.21, 0.09, "ok"),
])  # fmt: skip
def test_a_radius_a_fifth_off_is_a_caution_where_it_changes_the_blank(share, blank_mm, level):
    (check,) = said(inside_radius_mm=share, blank_mm=blank_mm)
    assert check.level == level
    assert check.numbers["share_percent"] == pytest.approx(abs(1 / share - 1) * 100)


def test_a_radius_less_than_a_fifth_off_is_no_caution():
    assert all(c.level == "ok" for c in said(inside_radius_mm=1.0 / 1.19, blank_mm=0.5))


def test_the_radius_of_one_bump_is_not_compared():
    """The handbook's share of the V is that of a whole bend near square."""
    one = bend()
    beside = replace(one, model=None, inside_radius_mm=Estimate.exact(99.0))
    beside = replace(beside, springback_deg=one.model.springback_deg)
    apart = replace(one, handbook=replace(beside, handbook=None))
    assert "share_percent" in handbook_differs(apart, LENGTH_MM)[0].numbers
    assert handbook_differs(apart, LENGTH_MM, one_bump=True) == ()


def test_springback_and_depth_outside_are_only_said():
    assert [c.level for c in said(springback_deg=3.0, punch_depth_mm=2.0)] == ["ok", "ok"]


def test_the_handbook_alone_says_why():
    flat = bend(176.0)
    assert handbook_differs(flat, LENGTH_MM) == ()
    (check,) = model_not_used(flat)
    assert check.code == "handbook-alone"
    assert "175 degrees" in check.words
    assert model_not_used(bend()) == ()
