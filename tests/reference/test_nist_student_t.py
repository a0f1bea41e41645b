"""NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2: upper critical values of Student's t.

Read in a reprint of the table that names it. Printed to 0.001.
"""

from __future__ import annotations

import pytest

from flangebook.bending.errors import InputError
from flangebook.bending.learning.student import quantile, tail_probability

# degrees of freedom: value exceeded with probability 0.10, 0.05, 0.025, 0.01, 0.005
PRINTED = {
    1: (3.078, 6.314, 12.706, 31.821, 63.657),
    2: (1.886, 2.920, 4.303, 6.965, 9.925),
    3: (1.638, 2.353, 3.182, 4.541, 5.841),
    4: (1.533, 2.132, 2.776, 3.747, 4.604),
    5: (1.476, 2.015, 2.571, 3.365, 4.032),
    8: (1.397, 1.860, 2.306, 2.896, 3.355),
    12: (1.356, 1.782, 2.179, 2.681, 3.055),
    20: (1.325, 1.725, 2.086, 2.528, 2.845),
    30: (1.310, 1.697, 2.042, 2.457, 2.750),
    60: (1.296, 1.671, 2.000, 2.390, 2.660),
    100: (1.290, 1.660, 1.984, 2.364, 2.626),
}
CELLS = [
    (nu, above, value)
    for nu, row in PRINTED.items()
    for above, value in zip((0.10, 0.05, 0.025, 0.01, 0.005), row, strict=True)
]


@pytest.mark.parametrize(("nu", "above", "printed"), CELLS)
def test_quantile_is_the_printed_one(nu, above, printed):
    assert quantile(1.0 - above, float(nu)) == pytest.approx(printed, abs=0.00051)


@pytest.mark.parametrize(("nu", "above", "printed"), CELLS)
def test_tail_at_the_printed_value(nu, above, printed):
    assert tail_probability(printed, float(nu)) == pytest.approx(above, rel=1e-3)


def test_normal_in_the_limit():
    """The table's last line: 1.282, 1.645, 1.960, 2.326, 2.576."""
    for above, printed in zip(
        (0.10, 0.05, 0.025, 0.01, 0.005), (1.282, 1.645, 1.960, 2.326, 2.576), strict=True
    ):
        assert quantile(1.0 - above, 1e5) == pytest.approx(printed, abs=0.0006)


@pytest.mark.parametrize(("t", "nu"), [(1.0, 0.0), (1.0, -2.0), (1.0, float("nan")),
                                       (float("nan"), 4.0), (1.0, float("inf"))])  # fmt: skip
def test_refuses(t, nu):
    with pytest.raises(InputError):
        tail_probability(t, nu)


@pytest.mark.parametrize(("above", "nu"), [(1.0, 4.0), (0.4, 4.0), (0.95, 0.5)])
def test_quantile_refuses(above, nu):
    with pytest.raises(InputError):
        quantile(above, nu)
