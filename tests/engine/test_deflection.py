"""Bow of bed and ram, the strip test that finds it, and the shims that take it out."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from flangebook.bending.errors import InputError
from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.crown import MOST_SHIM_MM, STRIP_MM, middle_open_deg, shim_for
from flangebook.bending.prediction.deflection import (
    SHEAR_SHARES,
    beam_of,
    bow_mm,
    deflection_from_strips,
    sinks_less_mm,
)

FULL, SPAN = 800e3, 2500.0


def force(nominal: float) -> Estimate:
    return Estimate(0.9 * nominal, nominal, 1.4 * nominal, "model", "")


@given(st.floats(0.05, 3.0), st.sampled_from(SHEAR_SHARES))
def test_the_figure_gives_the_beam_that_gives_the_figure(deflection: float, share: float):
    beam = beam_of(deflection, FULL, SPAN, share)
    bent, sheared = 5.0 * SPAN**3 / (384.0 * beam.bending_n_mm2), SPAN / (8.0 * beam.shear_n)
    assert FULL * (bent + sheared) == pytest.approx(deflection)
    assert sinks_less_mm(FULL, SPAN, SPAN / 2.0, beam) == pytest.approx(deflection)


@given(st.floats(0.05, 3.0), st.floats(1e3, FULL), st.floats(50.0, SPAN), st.floats(1.05, 3.0))
def test_the_bow_grows_with_length_force_and_figure(
    deflection: float, n: float, length: float, more: float
):
    bow = bow_mm(deflection, FULL, SPAN, force(n), length)
    assert 0.0 < bow.low <= bow.nominal <= bow.high
    assert bow_mm(deflection, FULL, SPAN, force(n * more), length).nominal == pytest.approx(
        bow.nominal * more
    )
    assert bow_mm(deflection * more, FULL, SPAN, force(n), length).nominal == pytest.approx(
        bow.nominal * more
    )
    longer = min(length * more, SPAN)
    assert bow_mm(deflection, FULL, SPAN, force(n), longer).nominal >= bow.nominal - 1e-12


def test_a_bend_longer_than_the_bed_counts_as_the_bed():
    long, bed = (bow_mm(0.6, FULL, SPAN, force(FULL), x).nominal for x in (2 * SPAN, SPAN))
    assert long == bed == pytest.approx(0.6)


@given(st.floats(0.3, 3.0), st.floats(0.0, 0.2), st.floats(0.02, 0.1))
def test_a_strip_test_finds_the_press_it_was_made_on(deflection: float, end: float, short: float):
    """Strips bent on a beam whose every place is known, by the curve of a single load."""
    strip, depth_per_degree = 200e3, short
    beam = beam_of(deflection, FULL, SPAN, SHEAR_SHARES[1])
    x = end * SPAN
    sinks = strip * (
        x**2 * (SPAN - x) ** 2 / (3.0 * beam.bending_n_mm2 * SPAN)
        + x * (SPAN - x) / (SPAN * beam.shear_n)
    )
    middle = strip * (SPAN**3 / (48.0 * beam.bending_n_mm2) + SPAN / (4.0 * beam.shear_n))
    lack = middle - sinks
    found = (lack / depth_per_degree, depth_per_degree, strip, 100.0, x, FULL, SPAN)
    assume(found[0] > 0.31)
    test = deflection_from_strips(*found)
    assert test.nominal == pytest.approx(deflection, rel=1e-9)
    assert 0.0 <= test.low < test.nominal < test.high


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"open_deg": 0.2}, "middle_deg"),
        ({"open_deg": -1.0}, "middle_deg"),
        ({"strip_length_mm": 900.0}, "strip_length_mm"),
        ({"end_mm": 900.0}, "end_mm"),
        ({"strip_force_n": 0.0}, "strip_force_n"),
    ],
)
def test_a_strip_test_that_tells_nothing_gives_no_figure(change: dict[str, float], where: str):
    told = {
        "open_deg": 1.0, "depth_per_degree_mm": 0.08, "strip_force_n": 60e3,
        "strip_length_mm": 200.0, "end_mm": 100.0, "full_force_n": FULL, "span_mm": SPAN,
    }  # fmt: skip
    with pytest.raises(InputError) as caught:
        deflection_from_strips(**(told | change))
    assert caught.value.where == where


@given(st.floats(0.026, MOST_SHIM_MM), st.floats(100.0, 4000.0))
def test_strips_follow_the_bow_to_half_a_strip(lack: float, length: float):
    shim = shim_for(lack, length)
    assert shim is not None
    assert shim.middle_mm == pytest.approx(lack, abs=STRIP_MM / 2.0 + 1e-9)
    assert list(shim.lengths_mm) == sorted(shim.lengths_mm, reverse=True)
    assert all(0.0 < one < length for one in shim.lengths_mm)
    for place in range(11):
        u = length / 2.0 * place / 10.0
        wanted = shim.middle_mm * (1.0 - (2.0 * u / length) ** 2)
        off = abs(shim.height_mm(u) - wanted)
        assert off <= STRIP_MM / 2.0 + 4.0 * shim.middle_mm / length + 1e-9, u


@given(st.floats(0.1, 1.0), st.sampled_from(SHEAR_SHARES))
def test_a_parabola_is_within_a_tenth_of_the_bow(share: float, shear: float):
    beam, length = beam_of(0.6, FULL, SPAN, shear), share * SPAN
    bow = sinks_less_mm(FULL, length, length / 2.0, beam)
    for place in range(11):
        u = place / 10.0
        left = bow - sinks_less_mm(FULL, length, u * length / 2.0, beam)
        assert left == pytest.approx(bow * (1.0 - u**2), abs=0.1 * bow)


def test_no_shim_for_next_to_nothing_nor_for_what_shims_do_not_mend():
    assert shim_for(0.02, 1000.0) is None
    assert shim_for(-0.3, 1000.0) is None
    assert shim_for(2.0 * MOST_SHIM_MM, 1000.0) is None
    assert middle_open_deg(90.0, 89.0, 90.0) == -1.0
