"""Deflection of simply supported beams, as printed.

R. L. Mott, Machine Elements in Mechanical Design, 4th ed., Pearson 2004, table A14-1,
"Beam-deflection formulas for simply supported beams":
(a) P in the middle: y_max = -P L³/(48 E I); between an end and the middle, at x from the end,
    y = -P x (3 L² - 4 x²)/(48 E I).
(c) P at a from each end: at the centre y_max = -P a (3 L² - 4 a²)/(24 E I);
    at the loads y = -P a² (3 L - 4 a)/(6 E I).
The uniform load, 5 w L⁴/(384 E I), is in every such table. All exact: no rounding of the print.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.prediction.deflection import Beam, sinks_less_mm

STIFF = float("inf")
E_I = 2.1e11
BEAM = Beam(3000.0, E_I, STIFF)


def centre_deflection_mm(force: float, length: float, beam: Beam) -> float:
    """How far the middle sinks under a force spread over a length in the middle.

    F (8 S³ - 4 S L² + L³)/(384 E I) + F (S/4 - L/8)/(k G A): elementary theory of beams.
    """
    s = beam.span_mm
    bent = (8.0 * s**3 - 4.0 * s * length**2 + length**3) / (384.0 * beam.bending_n_mm2)
    return force * (bent + (s / 4.0 - length / 8.0) / beam.shear_n)


def two_loads_centre(load: float, a: float, span: float) -> float:
    return load * a * (3.0 * span**2 - 4.0 * a**2) / (24.0 * E_I)


def test_a_load_over_the_whole_span_and_one_in_the_middle():
    force, span = 500e3, BEAM.span_mm
    whole = centre_deflection_mm(force, span, BEAM)
    assert whole == pytest.approx(5.0 * force * span**3 / (384.0 * E_I), rel=1e-12)
    point = centre_deflection_mm(force, 0.0, BEAM)
    assert point == pytest.approx(force * span**3 / (48.0 * E_I), rel=1e-12)


@given(st.floats(0.01, 1.0))
def test_a_load_over_part_of_the_span_is_the_printed_pairs_added_up(share: float):
    """Case (c) summed over slices of the spread load, by the midpoint rule."""
    force, span, slices = 500e3, BEAM.span_mm, 2000
    length = share * span
    reach = [length / 2.0 * (i + 0.5) / slices for i in range(slices)]
    added = sum(two_loads_centre(force / (2 * slices), span / 2.0 - u, span) for u in reach)
    assert centre_deflection_mm(force, length, BEAM) == pytest.approx(added, rel=1e-6)


@given(st.floats(0.05, 1.0), st.floats(0.0, 1.0))
def test_the_shape_under_the_load_is_that_of_many_single_loads(share: float, along: float):
    """The curve of a single load at a from an end (table A14-1, (b)), y = P b x (L² - b² - x²)/
    (6 E I L) from that end to the load, summed over slices."""
    force, span, slices = 500e3, BEAM.span_mm, 1000
    length = share * span

    def sinks(x: float) -> float:
        total = 0.0
        for i in range(slices):
            a = (span - length) / 2.0 + length * (i + 0.5) / slices
            near, b = (x, span - a) if x <= a else (span - x, a)
            load = force / slices
            total += load * b * near * (span**2 - b**2 - near**2) / (6.0 * E_I * span)
        return total

    u = along * length / 2.0
    less = sinks(span / 2.0) - sinks(span / 2.0 - u)
    found = sinks_less_mm(force, length, u, BEAM)
    assert found == pytest.approx(less, rel=1e-3, abs=1e-6 * sinks(span / 2.0))


@given(st.floats(0.05, 1.0))
def test_shear_alone_is_the_area_under_the_shear_force(share: float):
    """Timoshenko: shear slopes by V/(k G A); V falls evenly under the load, F/2 beside it."""
    force, span, k_g_a = 500e3, 3000.0, 2e8
    soft = Beam(span, STIFF, k_g_a)
    length, slices = share * span, 2000
    total = 0.0
    for i in range(slices):
        x = span / 2.0 * (i + 0.5) / slices
        from_middle = span / 2.0 - x
        total += force / 2.0 * min(1.0, 2.0 * from_middle / length)
    assert centre_deflection_mm(force, length, soft) == pytest.approx(
        total * span / 2.0 / slices / k_g_a, rel=1e-5
    )
