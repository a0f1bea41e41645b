"""Allowance, deduction and setback: one bend seen from several sides."""

from __future__ import annotations

from math import pi, radians, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sheet_metals import thicknesses

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.geometry.setback import setback_mm
from flangebook.bending.handbook.allowance import (
    allowance_din6935,
    allowance_from_k,
    allowance_groover,
    allowance_machinerys_handbook,
    allowance_navy,
    deduction,
    opinions,
)
from flangebook.bending.handbook.k_factor import k_factor_band, k_factor_din6935

radii = st.floats(0.0, 60.0)
angles = st.floats(1.0, 179.0)
ks = st.floats(0.0, 0.5)
DIMENSIONS = ("din6935", "mould_line", "inside")


@given(angles, radii, thicknesses, ks, st.sampled_from(DIMENSIONS))
def test_blank_by_deduction_is_blank_by_allowance(angle, r, t, k, dimension):
    """Two flats of any dimension: sum less deduction equals straights plus allowance."""
    taken = allowance_from_k(angle, r, t, k)
    back = setback_mm(angle, r, t, dimension)
    first, second = back + 20.0, back + 35.0
    by_deduction = first + second - deduction(angle, r, t, taken, dimension)
    assert by_deduction == pytest.approx((first - back) + taken + (second - back), abs=1e-7)
    assert by_deduction == pytest.approx(55.0 + taken, rel=1e-9)


@given(angles, radii, thicknesses, ks)
def test_allowance_is_an_arc_inside_the_sheet(angle, r, t, k):
    arc = radians(180 - angle)
    assert arc * r <= allowance_from_k(angle, r, t, k) <= arc * (r + t)


@given(st.floats(90.0, 179.0), radii, thicknesses, ks)
def test_a_square_or_flatter_bend_always_shortens(angle, r, t, k):
    """Going round the corner outside is longer than the neutral line."""
    assert deduction(angle, r, t, allowance_from_k(angle, r, t, k)) > 0


@given(angles, radii, thicknesses)
def test_inside_and_outside_mould_lines_lie_a_thickness_apart(angle, r, t):
    apart = setback_mm(angle, r, t, "mould_line") - setback_mm(angle, r, t, "inside")
    assert apart == pytest.approx(t * tan(radians(180 - angle) / 2), rel=1e-6, abs=1e-9)


@given(st.floats(0.0, 90.0), radii, thicknesses)
def test_sharp_bends_are_measured_to_the_tangent(angle, r, t):
    assert setback_mm(angle, r, t, "din6935") == r + t


@given(st.floats(0.06, 4.99), thicknesses, st.floats(1.001, 1.2))
def test_din_k_rises_with_radius(ratio, t, more):
    assert k_factor_din6935(ratio * t * more, t) >= k_factor_din6935(ratio * t, t)


@given(radii, thicknesses, st.sampled_from(["steel", "stainless", "aluminium", None]))
def test_k_band_is_a_band_of_possible_ks(r, t, family):
    band = k_factor_band(r, t, family)
    assert 0.0 <= band.low <= band.nominal <= band.high <= 0.5
    assert band.basis


def test_k_band_says_when_din_has_no_value():
    assert k_factor_band(0.0, 2.0).nominal == 0.33
    assert k_factor_band(0.0, 2.0).basis.startswith("Groover, because DIN 6935 has no K")
    assert k_factor_band(2.0, 2.0).nominal == 0.325
    assert k_factor_band(2.0, 2.0).basis.startswith("DIN 6935")


@given(st.floats(30.0, 150.0), st.floats(0.06, 1.99), thicknesses)
def test_every_opinion_lies_in_the_band_of_k(angle, r_over_t, t):
    """Rounded constants in the sources (1.57, 0.0173) move K a little beyond."""
    band = k_factor_band(r_over_t * t, t)
    for said in opinions(angle, r_over_t * t, t):
        assert band.low - 0.02 <= said.k_factor <= band.high + 1e-9
        again = allowance_from_k(angle, r_over_t * t, t, said.k_factor)
        assert again == pytest.approx(said.bend_allowance_mm)


def test_opinions_out_of_their_range_are_left_out():
    assert "DIN 6935" not in [o.name for o in opinions(90, 0.0, 2.0)]
    assert "US Navy" not in [o.name for o in opinions(179.5, 2.0, 2.0)]
    assert "DIN 6935" in [o.name for o in opinions(90, 2.0, 2.0)]


@pytest.mark.parametrize(
    "allowance",
    [
        allowance_din6935,
        allowance_groover,
        allowance_navy,
        lambda a, r, t: allowance_machinerys_handbook(a, r, t, "hard"),
    ],
)
@given(angle=st.floats(1.0, 178.0), r=st.floats(0.5, 30.0), t=st.floats(0.5, 8.0))
def test_every_source_grows_with_bend_angle_and_radius(allowance, angle, r, t):
    base = allowance(angle, r, t)
    assert allowance(angle - 1.0, r, t) > base
    assert allowance(angle, r * 1.1, t) > base


@given(angle=st.floats(1.0, 178.0), r_over_t=st.floats(0.4, 10.0), t=st.floats(0.5, 8.0))
def test_din_allowance_grows_with_thickness(angle, r_over_t, t):
    """Its K falls as the sheet thickens, but K t rises down to r/t of about 0.14."""
    r = r_over_t * t
    assert allowance_din6935(angle, r, t * 1.001) > allowance_din6935(angle, r, t)


def test_a_fold_has_no_mould_line():
    with pytest.raises(RangeError, match="no mould line"):
        setback_mm(0.0, 1.0, 1.0, "mould_line")
    assert setback_mm(0.0, 1.0, 1.0, "din6935") == 2.0
    assert allowance_from_k(0.0, 1.0, 1.0, 0.5) == pytest.approx(1.5 * pi)


@pytest.mark.parametrize(
    ("bend", "where"),
    [
        ((180.0, 1.0, 1.0, 0.4), "included_angle_deg"),
        ((90.0, -1.0, 1.0, 0.4), "inside_radius_mm"),
        ((90.0, 1.0, 0.0, 0.4), "thickness_mm"),
        ((90.0, 1.0, 1.0, -0.1), "k_factor"),
        ((90.0, float("nan"), 1.0, 0.4), "inside_radius_mm"),
    ],
)
def test_refuses_unusable_sizes(bend, where):
    with pytest.raises(InputError) as error:
        allowance_from_k(*bend)
    assert error.value.where == where
