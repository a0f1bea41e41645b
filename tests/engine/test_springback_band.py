"""Springback: how the band moves, and that both witnesses are inside it."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sheet_metals import metal

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.handbook.springback import springback, springback_gardiner

thick = st.floats(0.5, 8.0)
over_t = st.floats(5.0, 20.0)
angles = st.floats(20.0, 175.0)
usual = st.floats(0.3, 4.0)


def natural(steel, t, v, angle=90.0):
    return springback(steel, t, v, steel.radius_over_v.nominal * v, angle)


@given(thick, usual)
def test_square_bend_at_8_t_is_the_metals_own_figure(t, figure):
    steel = metal(springback_deg=figure)
    band = natural(steel, t, 8 * t)
    assert band.nominal == pytest.approx(figure)
    assert band.low <= steel.springback_at_90_deg.low + 1e-9
    assert band.high >= steel.springback_at_90_deg.high - 1e-9


@given(thick, over_t, angles, usual, st.floats(0.5, 20.0))
def test_rises_with_bend_angle_in_proportion(t, v_over_t, angle, figure, sharper):
    assume(angle - sharper > 5)
    steel = metal(springback_deg=figure)
    flat, sharp = (
        natural(steel, t, v_over_t * t, angle),
        natural(steel, t, v_over_t * t, angle - sharper),
    )
    ratio = (180 - angle + sharper) / (180 - angle)
    for end in ("low", "nominal", "high"):
        assert getattr(sharp, end) == pytest.approx(ratio * getattr(flat, end))


@given(thick, over_t, angles, st.floats(1.02, 2.0))
def test_rises_with_a_wider_v(t, v_over_t, angle, wider):
    steel, v = metal(), v_over_t * t
    narrow, wide = natural(steel, t, v, angle), natural(steel, t, v * wider, angle)
    assert narrow.nominal < wide.nominal
    assert narrow.high < wide.high
    assert narrow.low < wide.low


@given(thick, over_t, angles, st.floats(1.02, 3.0))
def test_rises_with_a_rounder_punch(t, v_over_t, angle, rounder):
    steel, v = metal(), v_over_t * t
    own = steel.radius_over_v.nominal * v
    same, round_ = natural(steel, t, v, angle), springback(steel, t, v, own * rounder, angle)
    assert round_.nominal > same.nominal
    assert round_.high > same.high
    extra = springback_gardiner(240, 207_000, t, own * rounder, angle) - springback_gardiner(
        240, 207_000, t, own, angle
    )
    assert round_.nominal - same.nominal == pytest.approx(extra, rel=1e-6, abs=1e-9)


@given(thick, over_t, angles, usual, st.floats(0.5, 3.0))
def test_gardiner_lies_in_the_band(t, v_over_t, angle, figure, radius_over_own):
    steel, v = metal(springback_deg=figure), v_over_t * t
    radius = radius_over_own * steel.radius_over_v.nominal * v
    band = springback(steel, t, v, radius, angle)
    for stress in (steel.yield_mpa.low, steel.yield_mpa.nominal, steel.tensile_mpa.high):
        said = springback_gardiner(stress, 207_000, t, radius, angle)
        assert band.low - 1e-9 <= said <= band.high + 1e-9


@given(st.floats(50, 900), st.floats(0.5, 5), st.floats(0.0, 60), st.floats(1.01, 2.0))
def test_gardiner_rises_with_yield_and_radius(y, t, r, more):
    assume(r * y * more < 0.45 * 207_000 * t)
    base = springback_gardiner(y, 207_000, t, r, 90)
    assert springback_gardiner(y * more, 207_000, t, r, 90) >= base
    assert springback_gardiner(y, 207_000, t, r * more, 90) >= base
    assert springback_gardiner(y, 207_000 * more, t, r, 90) <= base


def test_a_huge_radius_is_refused_with_a_remedy():
    with pytest.raises(RangeError, match="springs back flat") as error:
        springback(metal(), 0.5, 8.0, 400.0, 90)
    assert error.value.right == "Use a smaller radius."


@pytest.mark.parametrize(
    ("bend", "where"),
    [
        ((0.0, 16.0, 2.0, 90.0), "thickness_mm"),
        ((2.0, -16.0, 2.0, 90.0), "v_opening_mm"),
        ((2.0, 16.0, -2.0, 90.0), "loaded_radius_mm"),
        ((2.0, 16.0, 2.0, 180.0), "included_angle_deg"),
    ],
)
def test_refuses_unusable_input(bend, where):
    with pytest.raises(InputError) as error:
        springback(metal(), *bend)
    assert error.value.where == where
