"""Head rows of published force charts: smallest flange and inside radius for each V opening.

Chart B: metric, mild steel of R_m about 450 N/mm2. Its text prints 19 flanges and radii for 20
openings; the missing pair is the last (V 200), which the stainless table of the same page prints
as 140. Chart C: US "averaged" chart, inches, https://it.scribd.com/document/414866806. These
rows were read whole, nothing in them is inferred.

The charts say b of about 0.7 V and a radius of about V/6 without saying how they were worked out
or rounded; the tolerances below are what their own rows scatter around those rules.
"""

from __future__ import annotations

from math import inf

import pytest

from flangebook.bending.geometry.air_bend_geometry import smallest_flange_mm
from flangebook.bending.handbook.inside_radius import inside_radius
from flangebook.bending.handbook.v_opening import NOMINAL_V_MM

B_V = (4, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200)
B_FLANGE = (
    2.8, 4, 5, 5.5, 7, 8.5, 10, 11, 13.5, 14, 17.5, 22, 28, 35, 45, 55, 71, 89, 113, 140,
)  # fmt: skip
B_RADIUS = (
    0.7, 1.0, 1.1, 1.3, 1.6, 2.0, 2.3, 2.6, 3.0, 3.3, 4.0, 5.0, 6.5, 8.0, 10, 13, 16, 20, 26,
)  # fmt: skip
C_V_IN = (0.118, 0.157, 0.236, 0.276, 0.315, 0.394, 0.472, 0.551, 0.630, 0.709)
C_FLANGE_IN = (0.085, 0.110, 0.165, 0.193, 0.221, 0.276, 0.340, 0.397, 0.454, 0.510)
C_RADIUS_IN = (0.020, 0.026, 0.039, 0.046, 0.053, 0.066, 0.079, 0.092, 0.105, 0.118)


def test_series_of_openings():
    assert NOMINAL_V_MM == B_V


@pytest.mark.parametrize(("v_mm", "printed_mm"), list(zip(B_V, B_FLANGE, strict=True)))
def test_smallest_flange_of_the_metric_chart(v_mm, printed_mm):
    """Square bend on sharp shoulders: 0.707 V; the row itself runs from 0.667 (V 6) to 0.75 V."""
    flange = smallest_flange_mm(90, v_mm, 86, 0.0)
    assert flange == pytest.approx(0.7071 * v_mm, rel=1e-4)
    assert flange == pytest.approx(printed_mm, rel=0.061)


@pytest.mark.parametrize(("v_in", "printed_in"), list(zip(C_V_IN, C_FLANGE_IN, strict=True)))
def test_smallest_flange_of_the_us_chart(v_in, printed_in):
    # The chart's own quotient runs from 0.699 to 0.721.
    assert smallest_flange_mm(90, v_in, 86, 0.0) == pytest.approx(printed_in, rel=0.021)


@pytest.mark.parametrize(("v_mm", "printed_mm"), list(zip(B_V[:-1], B_RADIUS, strict=True)))
def test_inside_radius_of_the_metric_chart_lies_in_the_band(shipped, v_mm, printed_mm):
    # A sharp punch, so that the V decides; printed to two figures.
    band = inside_radius(shipped["mild-steel-hr"], v_mm, 0.0)
    assert band.low - 0.05 <= printed_mm <= band.high + 0.05
    assert band.nominal == pytest.approx(printed_mm, rel=0.10)


@pytest.mark.parametrize(("v_in", "printed_in"), list(zip(C_V_IN, C_RADIUS_IN, strict=True)))
def test_inside_radius_of_the_us_chart_lies_in_the_band(shipped, v_in, printed_in):
    band = inside_radius(shipped["mild-steel-hr"], v_in * 25.4, 0.0).mapped(lambda r: r / 25.4)
    assert band.low - 0.0005 <= printed_in <= band.high + 0.0005
    assert printed_in == pytest.approx(v_in / 6, abs=0.0006)


# From and to which thickness [in], V over t.
OPENING_RULE = (
    (0.0, 0.105, 6.0),
    (0.120, 0.313, 8.0),
    (0.375, 0.5, 10.0),
    (0.625, inf, 12.0),
)


def published_v_range_mm(thickness_mm):
    """The opening that the rule gives, as (least, most): between two steps those of either side."""
    inches = round(thickness_mm / 25.4, 6)  # so that 3/8 in, given in mm, is on its step
    reached = [over_t for start, _, over_t in OPENING_RULE if inches >= start]
    allowed = [over_t for _, end, over_t in OPENING_RULE if inches <= end]
    return reached[-1] * thickness_mm, allowed[0] * thickness_mm


@pytest.mark.parametrize(
    ("thickness_in", "printed_over_t"),
    [(0.036, 6), (0.105, 6), (0.120, 8), (0.313, 8), (0.375, 10), (0.5, 10), (0.625, 12), (1, 12)],
)
def test_opening_rule_of_the_us_chart(thickness_in, printed_over_t):
    """6 t up to .105 in, 8 t from .120 to .313, 10 t from .375 to .5, 12 t from .625 up."""
    least, most = published_v_range_mm(thickness_in * 25.4)
    assert least == most == pytest.approx(printed_over_t * thickness_in * 25.4)


@pytest.mark.parametrize(
    ("thickness_in", "between"), [(0.110, (6, 8)), (0.340, (8, 10)), (0.560, (10, 12))]
)
def test_opening_rule_is_silent_between_its_steps(thickness_in, between):
    low, high = published_v_range_mm(thickness_in * 25.4)
    assert low == pytest.approx(between[0] * thickness_in * 25.4)
    assert high == pytest.approx(between[1] * thickness_in * 25.4)
