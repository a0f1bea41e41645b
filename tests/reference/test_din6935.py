"""DIN 6935, Cold bending of flat rolled steel: flat length of bent parts.

The formulas were read in two places: a page of a German metal-trade tables book,
https://de.scribd.com/document/401383818, and a note that quotes the standard,
https://www.scribd.com/document/373651793. With s thickness, r inside radius, beta included angle:

    k = 0.65 + 0.5 lg(r/s)                                        (k = 1 for r/s > 5: from memory)
    0 to 90 degrees:    v = 2 (r + s)                    - pi (180 - beta)/180 (r + s/2 k)
    > 90 to 165:        v = 2 (r + s) tan((180 - beta)/2) - pi (180 - beta)/180 (r + s/2 k)
    > 165 to 180:       v about 0

A worksheet with the tables book's rule for square bends, v = 0.43 r + 1.48 s, citing DIN 6935
(1975-10), was read at https://de.scribd.com/document/74375167.

Several public pages print other "DIN 6935" tables (v = 0.36 at r/s = 1 and the like). They
contradict the formulas above and are not used.
"""

from __future__ import annotations

from math import log10, pi, radians, tan

import pytest

from flangebook.bending.errors import RangeError
from flangebook.bending.geometry.setback import setback_mm
from flangebook.bending.handbook.allowance import (
    allowance_din6935,
    deduction,
    k_factor_din6935,
)


def deduction_din6935(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """V [mm] as printed above: blanks take the arc off flatter bends too, the standard does not."""
    arc = allowance_din6935(included_angle_deg, inside_radius_mm, thickness_mm)
    if included_angle_deg > 165.0:
        return 0.0
    return deduction(included_angle_deg, inside_radius_mm, thickness_mm, arc)


SIZES = [(1.0, 1.0), (1.0, 3.0), (2.5, 2.0), (6.0, 4.0), (16.0, 3.0)]


def printed_v(beta: float, r: float, s: float) -> float:
    """The standard's own formulas, letter by letter."""
    k = 1.0 if r / s > 5 else 0.65 + 0.5 * log10(r / s)
    arc = pi * ((180 - beta) / 180) * (r + s / 2 * k)
    if beta <= 90:
        return 2 * (r + s) - arc
    if beta <= 165:
        return 2 * (r + s) * tan(radians((180 - beta) / 2)) - arc
    return 0.0


@pytest.mark.parametrize(("radius_mm", "thickness_mm"), SIZES)
@pytest.mark.parametrize("included_angle_deg", [0, 15, 30, 60, 90, 90.001, 120, 150, 165, 166, 179])
def test_deduction_in_all_three_ranges(included_angle_deg, radius_mm, thickness_mm):
    assert deduction_din6935(included_angle_deg, radius_mm, thickness_mm) == pytest.approx(
        printed_v(included_angle_deg, radius_mm, thickness_mm), abs=1e-9
    )


@pytest.mark.parametrize(
    ("radius_mm", "thickness_mm", "tables_book_v"),
    [
        (1.0, 1.0, 1.9),
        (1.6, 1.0, 2.1),
        (1.6, 1.5, 2.9),
        (2.5, 1.0, 2.4),
        (2.5, 2.0, 4.0),
        (2.5, 2.5, 4.8),
    ],
)
def test_square_bends_of_the_tables_book(radius_mm, thickness_mm, tables_book_v):
    """Compensation values v for 90 degrees, printed to 0.1 mm. From memory, not looked up."""
    assert deduction_din6935(90, radius_mm, thickness_mm) == pytest.approx(tables_book_v, abs=0.05)


@pytest.mark.parametrize("size_mm", [0.8, 1.0, 1.5, 2.0, 3.0, 6.0])
def test_rule_of_the_worksheet(size_mm):
    """V = 0.43 r + 1.48 s, whose constants fit r = s; each is rounded to 0.01."""
    rule = 0.43 * size_mm + 1.48 * size_mm
    assert deduction_din6935(90, size_mm, size_mm) == pytest.approx(rule, abs=0.01 * size_mm)


@pytest.mark.parametrize(
    ("radius_over_t", "k"), [(0.1, 0.15), (1, 0.65), (5.0001, 1.0), (10, 1.0), (100, 1.0)]
)
def test_k(radius_over_t, k):
    """The usual K-factor is half of the standard's k."""
    assert k_factor_din6935(radius_over_t * 2.0, 2.0) == pytest.approx(k / 2, abs=1e-12)


def test_k_runs_into_its_upper_value():
    """The formula gives k = 0.9995 at r/s = 5, the rule beyond it 1."""
    assert k_factor_din6935(5.0, 1.0) == pytest.approx(0.5, abs=0.0003)


@pytest.mark.parametrize("radius_mm", [0.0, 0.01, 0.05])
def test_k_below_its_range_is_refused(radius_mm):
    """At r/s of 0.05 the formula turns negative: it says so instead of answering."""
    with pytest.raises(RangeError):
        k_factor_din6935(radius_mm, 1.0)


@pytest.mark.parametrize(("radius_mm", "thickness_mm"), SIZES)
def test_both_conventions_agree_at_90(radius_mm, thickness_mm):
    just_under = setback_mm(90, radius_mm, thickness_mm)
    just_over = setback_mm(90.0000001, radius_mm, thickness_mm)
    assert just_under == pytest.approx(just_over, rel=1e-6)


def test_flatter_than_165_the_blank_still_uses_the_arc():
    """The standard drops v above 165 degrees; a blank keeps it, or it would not fold back."""
    arc = allowance_din6935(170, 2, 2)
    assert deduction_din6935(170, 2, 2) == 0.0
    assert deduction(170, 2, 2, arc) == pytest.approx(0.237, abs=0.001)
