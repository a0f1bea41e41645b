"""Sheet gauge tables, inches.

Steel: Manufacturers' Standard Gauge, lb/ft2 over 41.82 (several pages). Galvanised, stainless:
traditional tables. Aluminium: ASTM B258, 0.005 * 92 ** ((36 - n) / 39). Rows 7 to 12, 14, 16, 18,
20, 22 and 24 to 28 were read on public pages that reprint the tables; rows 13, 15, 17, 19, 21, 23
are from memory, except for aluminium, which the formula gives. Printed to 0.0001 in.

One page prints 8 gauge galvanised as .1680, others .1681; stainless occurs rounded either way
(.0437/.0438), being 64ths and 32nds of an inch.
"""

from __future__ import annotations

import pytest

from flangebook.bending.errors import RangeError
from flangebook.bending.part.sheet_gauge import (
    nearest_gauge,
    thickness_of_gauge_mm,
)

FAMILIES = ("steel", "galvanised", "stainless", "aluminium")
READ = {
    7: (0.1793, None, 0.1875, 0.1443),
    8: (0.1644, 0.1681, 0.1719, 0.1285),
    9: (0.1495, 0.1532, 0.1562, 0.1144),
    10: (0.1345, 0.1382, 0.1406, 0.1019),
    11: (0.1196, 0.1233, 0.1250, 0.0907),
    12: (0.1046, 0.1084, 0.1094, 0.0808),
    14: (0.0747, 0.0785, 0.0781, 0.0641),
    16: (0.0598, 0.0635, 0.0625, 0.0508),
    18: (0.0478, 0.0516, 0.0500, 0.0403),
    20: (0.0359, 0.0396, 0.0375, 0.0320),
    22: (0.0299, 0.0336, 0.0312, 0.0253),
    24: (0.0239, 0.0276, 0.0250, 0.0201),
    25: (0.0209, 0.0247, 0.0219, 0.0179),
    26: (0.0179, 0.0217, 0.0187, 0.0159),
    27: (0.0164, 0.0202, 0.0172, 0.0142),
    28: (0.0149, 0.0187, 0.0156, 0.0126),
}
FROM_MEMORY = {
    13: (0.0897, 0.0934, 0.0937, 0.0720),
    15: (0.0673, 0.0710, 0.0703, 0.0571),
    17: (0.0538, 0.0575, 0.0562, 0.0453),
    19: (0.0418, 0.0456, 0.0437, 0.0359),
    21: (0.0329, 0.0366, 0.0344, 0.0285),
    23: (0.0269, 0.0306, 0.0281, 0.0226),
}


def rows(table):
    return [
        pytest.param(number, family, inches, id=f"{number} ga {family}")
        for number, row in table.items()
        for family, inches in zip(FAMILIES, row, strict=True)
        if inches is not None
    ]


@pytest.mark.parametrize(("number", "family", "inches"), rows(READ))
def test_rows_read(number, family, inches):
    assert thickness_of_gauge_mm(number, family) / 25.4 == pytest.approx(inches, abs=1e-9)


@pytest.mark.parametrize(("number", "family", "inches"), rows(FROM_MEMORY))
def test_rows_from_memory(number, family, inches):
    assert thickness_of_gauge_mm(number, family) / 25.4 == pytest.approx(inches, abs=1e-9)


@pytest.mark.parametrize(("number", "family", "inches"), rows(READ | FROM_MEMORY))
def test_thickness_finds_its_number_back(number, family, inches):
    assert nearest_gauge(inches * 25.4, family) == number


@pytest.mark.parametrize(
    ("number", "family", "other_in"),
    [
        *[(n, "stainless", x) for n, x in {
            28: 0.015, 26: 0.018, 24: 0.024, 22: 0.030, 20: 0.036, 18: 0.048, 16: 0.060,
            14: 0.075, 12: 0.105, 11: 0.120, 10: 0.134,
        }.items()],
        *[(n, "aluminium", x) for n, x in {
            22: 0.025, 20: 0.032, 18: 0.040, 16: 0.050, 14: 0.063, 12: 0.080, 11: 0.090, 10: 0.100,
        }.items()],
    ],
)  # fmt: skip
def test_second_series_in_use(number, family, other_in):
    """Mill-nominal stainless and rolled-thickness aluminium, read on secondary pages: up to 5 %
    thinner than what the number means here."""
    usual = thickness_of_gauge_mm(number, family) / 25.4
    assert 0.95 * usual <= other_in <= usual
    assert (other_in == usual) == ((number, family) == (20, "aluminium"))


@pytest.mark.parametrize(
    ("number", "family"), [(2, "steel"), (29, "steel"), (7, "galvanised"), (6, "stainless")]
)
def test_numbers_the_tables_do_not_have(number, family):
    with pytest.raises(RangeError, match="gauge"):
        thickness_of_gauge_mm(number, family)


@pytest.mark.parametrize("thickness_mm", [2.0, 7.0, 0.1])
def test_a_thickness_between_numbers_has_none(thickness_mm):
    assert nearest_gauge(thickness_mm, "steel") is None
