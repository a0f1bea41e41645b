"""Sheet gauge numbers: what thickness a number means for a family of metals.

The same number means a different thickness for uncoated steel, galvanised steel, stainless
and aluminium, so a number without its family means nothing. Stainless and aluminium have a
second series in use, up to 5 % thinner under the same number: the measured thickness decides.

Sources: steel, Manufacturers' Standard Gauge, weight in lb/ft2 divided by 41.82 lb/ft2 per
inch; aluminium, ASTM B258, 0.005 in * 92 ** ((36 - n) / 39); galvanised and stainless,
traditional tables. Rows 13, 15, 17, 19, 21, 23 of galvanised and stainless and rows 3 to 6 of
steel are from memory.
"""

from __future__ import annotations

from flangebook.bending.errors import RangeError
from flangebook.bending.part.metals import GaugeFamily

MM_PER_INCH = 25.4
STEEL_LB_FT2_PER_INCH = 41.82
NEAR = 0.02  # a thickness is called by a gauge number when it is this close; common practice

_STEEL_LB_FT2 = {
    3: 10.0, 4: 9.375, 5: 8.75, 6: 8.125, 7: 7.5, 8: 6.875, 9: 6.25, 10: 5.625, 11: 5.0,
    12: 4.375, 13: 3.75, 14: 3.125, 15: 2.8125, 16: 2.5, 17: 2.25, 18: 2.0, 19: 1.75, 20: 1.5,
    21: 1.375, 22: 1.25, 23: 1.125, 24: 1.0, 25: 0.875, 26: 0.75, 27: 0.6875, 28: 0.625,
}  # fmt: skip
_GALVANISED_IN = {
    8: 0.1681, 9: 0.1532, 10: 0.1382, 11: 0.1233, 12: 0.1084, 13: 0.0934, 14: 0.0785,
    15: 0.0710, 16: 0.0635, 17: 0.0575, 18: 0.0516, 19: 0.0456, 20: 0.0396, 21: 0.0366,
    22: 0.0336, 23: 0.0306, 24: 0.0276, 25: 0.0247, 26: 0.0217, 27: 0.0202, 28: 0.0187,
}  # fmt: skip
_STAINLESS_IN = {
    7: 0.1875, 8: 0.1719, 9: 0.1562, 10: 0.1406, 11: 0.1250, 12: 0.1094, 13: 0.0937,
    14: 0.0781, 15: 0.0703, 16: 0.0625, 17: 0.0562, 18: 0.0500, 19: 0.0437, 20: 0.0375,
    21: 0.0344, 22: 0.0312, 23: 0.0281, 24: 0.0250, 25: 0.0219, 26: 0.0187, 27: 0.0172,
    28: 0.0156,
}  # fmt: skip
_TABLES_IN: dict[GaugeFamily, dict[int, float]] = {
    "steel": {n: round(lb / STEEL_LB_FT2_PER_INCH, 4) for n, lb in _STEEL_LB_FT2.items()},
    "galvanised": _GALVANISED_IN,
    "stainless": _STAINLESS_IN,
    "aluminium": {n: round(0.005 * 92 ** ((36 - n) / 39), 4) for n in range(3, 37)},
}


def thickness_of_gauge_mm(number: int, family: GaugeFamily) -> float:
    """Thickness [mm] that a gauge number means for this family.

    Valid for steel 3 to 28, galvanised 8 to 28, stainless 7 to 28, aluminium 3 to 36.

    Raises:
        RangeError: the table has no such number.

    Source: Manufacturers' Standard Gauge for steel, ASTM B258 for aluminium, traditional tables for
    galvanised and stainless, as at the top of the module.

    >>> round(thickness_of_gauge_mm(16, "steel"), 3)
    1.519
    >>> round(thickness_of_gauge_mm(16, "aluminium"), 3)
    1.29
    """
    table = _TABLES_IN[family]
    if number not in table:
        raise RangeError(
            f"There is no {number} gauge for {family}.",
            "thickness_mm",
            f"Gauge numbers for {family} run from {min(table)} to {max(table)}; "
            "or give the thickness in mm or inches.",
        )
    return table[number] * MM_PER_INCH


def nearest_gauge(thickness_mm: float, family: GaugeFamily) -> int | None:
    """The gauge number whose thickness is within 2 % of thickness_mm [mm], or None.

    >>> nearest_gauge(1.5, "steel"), nearest_gauge(2.0, "steel")
    (16, None)
    """
    inches = thickness_mm / MM_PER_INCH
    number, listed = min(_TABLES_IN[family].items(), key=lambda row: abs(row[1] - inches))
    return number if abs(listed - inches) <= NEAR * inches else None
