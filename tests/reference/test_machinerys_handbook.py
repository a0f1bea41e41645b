"""Machinery's Handbook, 26th ed., Industrial Press: bending sheet metal.

K-factors credited to the book, by metal, thickness and radius in inches, were read at
https://vedge.org/kfac.html (secondary; that they are for square bends is inferred). The book's
own right-angle formulas, L = 0.55 T + 1.57 R, 0.64 T + 1.57 R and 0.71 T + 1.57 R, are from
memory; no worked example printed in the book could be read.

Each formula has one K for all sizes (c * 2/pi less what 1.57 falls short of pi/2), the credited
tables scatter around it; the tolerances are that scatter.
"""

from __future__ import annotations

import pytest

from flangebook.bending.handbook.allowance import allowance_machinerys_handbook, opinions
from flangebook.bending.handbook.k_factor import k_factor_band

RADII_IN = (0.030, 0.060, 0.090, 0.120, 0.188)
ALUMINIUM = {
    0.032: (0.398, 0.394, 0.391, 0.391, 0.392),
    0.063: (0.404, 0.402, 0.401, 0.401, 0.401),
    0.100: (0.406, 0.381, 0.380, 0.380, 0.380),
    0.125: (0.407, 0.407, 0.406, 0.406, 0.406),
}
COLD_ROLLED_STEEL = {
    0.048: (0.438, 0.433, 0.433, 0.433, 0.420),
    0.060: (0.467, 0.463, 0.463, 0.463, 0.453),
    0.093: (0.459, 0.457, 0.456, 0.456, 0.450),
}
STAINLESS = {
    0.029: (0.483, 0.479, 0.475, 0.475, 0.454),
    0.078: (0.449, 0.446, 0.446, 0.446, 0.438),
}
ROWS = [
    (family, group, t, r, k)
    for family, group, table in (
        ("aluminium", "soft steel and aluminium", ALUMINIUM),
        ("steel", "hard", COLD_ROLLED_STEEL),
        ("stainless", "hard", STAINLESS),
    )
    for t, row in table.items()
    for r, k in zip(RADII_IN, row, strict=True)
]


@pytest.mark.parametrize(("family", "group", "t_in", "r_in", "k"), ROWS)
def test_credited_k_factors(family, group, t_in, r_in, k):
    by_k = 1.5707963 * (r_in + k * t_in)
    by_formula = allowance_machinerys_handbook(90, r_in, t_in, group)
    # Worst: 0.100 in aluminium (K 0.380 against 0.407) and 0.029 in stainless (0.483, 0.452).
    assert by_formula == pytest.approx(by_k, abs=1.5707963 * 0.032 * t_in)


@pytest.mark.parametrize(
    ("group", "c"),
    [("soft copper and brass", 0.55), ("soft steel and aluminium", 0.64), ("hard", 0.71)],
)
@pytest.mark.parametrize("radius", [0.0, 1.0, 2.5])
def test_right_angle_formulas(group, c, radius):
    """From memory, not looked up."""
    printed = c * 2.0 + 1.57 * radius
    assert allowance_machinerys_handbook(90, radius, 2.0, group) == pytest.approx(printed)
    assert allowance_machinerys_handbook(135, radius, 2.0, group) == pytest.approx(printed / 2)


@pytest.mark.parametrize(
    ("family", "names"),
    [
        ("aluminium", ["soft steel and aluminium"]),
        ("stainless", ["hard"]),
        ("steel", ["soft steel and aluminium", "hard"]),
        (None, ["soft copper and brass", "soft steel and aluminium", "hard"]),
    ],
)
def test_second_opinion_takes_the_metals_group(family, names):
    said = [o.name for o in opinions(90, 2, 2, family) if o.name.startswith("Machinery's")]
    assert said == [f"Machinery's Handbook, {name}" for name in names]


@pytest.mark.parametrize(("family", "group", "t_in", "r_in", "k"), ROWS)
def test_credited_k_factors_lie_near_the_band(family, group, t_in, r_in, k):
    """The band is made of constants, so a tabled value may pass its ends by its own scatter."""
    band = k_factor_band(r_in, t_in, family)
    assert band.low - 0.032 <= k <= band.high + 0.032
