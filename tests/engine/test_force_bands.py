"""The force band: how it must move, and what its ends are."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sheet_metals import lengths, metal, openings, strengths, thicknesses

from flangebook.bending.errors import InputError
from flangebook.bending.handbook.force import (
    force_band,
    force_lange,
    force_opinions,
    force_textbook,
    force_us_chart,
)

growth = st.floats(1.01, 3.0)
ends = ("low", "nominal", "high")


def band(r_m=400.0, t=2.0, length=1000.0, v=16.0, angle=90.0):
    return force_band(metal(r_m), t, length, v, angle)


@given(strengths, thicknesses, lengths, openings, growth)
def test_rises_with_thickness(r_m, t, length, v, more):
    thin, thick = band(r_m, t, length, v), band(r_m, t * more, length, v)
    assert all(getattr(thick, end) > getattr(thin, end) for end in ends)


@given(strengths, thicknesses, lengths, openings, growth)
def test_rises_with_length_in_proportion(r_m, t, length, v, more):
    short, long = band(r_m, t, length, v), band(r_m, t, length * more, v)
    for end in ends:
        assert getattr(long, end) == pytest.approx(more * getattr(short, end))


@given(strengths, thicknesses, lengths, openings, growth)
def test_rises_with_strength(r_m, t, length, v, more):
    soft, hard = band(r_m, t, length, v), band(r_m * more, t, length, v)
    assert all(getattr(hard, end) > getattr(soft, end) for end in ends)


@given(strengths, thicknesses, lengths, openings, growth)
def test_falls_with_a_wider_v(r_m, t, length, v, more):
    narrow, wide = band(r_m, t, length, v), band(r_m, t, length, v * more)
    assert all(getattr(wide, end) < getattr(narrow, end) for end in ends)


@pytest.mark.parametrize("relation", [force_textbook, force_us_chart, force_lange])
@given(
    r_m=strengths,
    t=st.floats(0.6, 4.0),
    length=lengths,
    v_over_t=st.floats(6.0, 10.0),
    more=st.floats(1.01, 1.9),
)
def test_each_relation_moves_the_same_way(relation, r_m, t, length, v_over_t, more):
    v = v_over_t * t
    base = relation(r_m, length, t, v)
    assert relation(r_m * more, length, t, v) > base
    assert relation(r_m, length * more, t, v) > base
    assert relation(r_m, length, t, v * more) < base
    assert relation(r_m, length, min(t * more, v / 5), v) >= base


@given(strengths, st.floats(0.5, 10.0), lengths, st.floats(5.01, 19.9))
def test_high_end_is_over_every_relation_at_the_highest_strength(r_m, t, length, v_over_t):
    steel = metal(r_m)
    size = (steel.tensile_mpa.high, length, t, v_over_t * t)
    highest = max(f(*size) for f in (force_textbook, force_lange, force_us_chart))
    assert force_band(steel, t, length, v_over_t * t, 90).high == pytest.approx(highest)


@given(strengths, st.floats(0.5, 10.0), lengths, st.floats(5.01, 19.9))
def test_nominal_is_the_middle_opinion(r_m, t, length, v_over_t):
    steel, v = metal(r_m), v_over_t * t
    said = sorted(o.force_n for o in force_opinions(steel, t, length, v))
    assert len(said) == 3
    assert force_band(steel, t, length, v, 90).nominal == pytest.approx(said[1])


@given(st.floats(1.0, 179.0))
def test_does_not_depend_on_the_angle(angle):
    """The relations are for the peak of the stroke, whatever the angle."""
    assert band(angle=angle) == band(angle=90)


def test_short_bends_load_the_tools_as_long_ones_do():
    assert band(length=50).high / 50 == pytest.approx(band(length=1500).high / 1500)


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
@pytest.mark.parametrize("which", ["t", "length", "v"])
def test_refuses_what_is_no_size(which, bad):
    with pytest.raises(InputError) as error:
        band(**{which: bad})
    field = {"t": "thickness_mm", "length": "bend_length_mm", "v": "v_opening_mm"}[which]
    assert error.value.where == field
    assert error.value.right


@pytest.mark.parametrize("angle", [180.0, 200.0, -1.0, float("nan")])
def test_refuses_what_is_no_bend(angle):
    with pytest.raises(InputError) as error:
        band(angle=angle)
    assert error.value.where == "included_angle_deg"
