"""US Navy training manuals: bend allowance.

Bending bar and plate along the neutral line, with worked examples, figure 13-50:
https://enginemechanics.tpub.com/14119/ (Computing Bend Allowance). Aviation sheet metal,
BA = N (0.0173 R + 0.0078 T) "for any degree of bend from 1 to 180": https://tpub.com/air/13-19.htm
"""

from __future__ import annotations

import pytest

from flangebook.bending.errors import RangeError
from flangebook.bending.handbook.allowance import allowance_from_k, allowance_navy


def test_square_bend_of_half_inch_plate():
    """R 3 in, T 1/2 in, neutral line in the middle: printed 5.10 in, cut to three figures."""
    assert allowance_from_k(90, 3.0, 0.5, 0.5) == pytest.approx(5.10, abs=0.0055)


def test_half_turn_of_half_inch_bar():
    """Neutral radius 1.25 in over 180 degrees: printed 3.925 in, with pi taken as 3.14."""
    assert allowance_from_k(0, 1.0, 0.5, 0.5) == pytest.approx(3.925, abs=0.0025)


@pytest.mark.parametrize(
    ("bend_angle", "radius", "thickness"), [(1, 0.16, 0.04), (45, 3, 1), (90, 1, 1), (180, 2, 1)]
)
def test_formula_as_printed(bend_angle, radius, thickness):
    printed = (0.0173 * radius + 0.0078 * thickness) * bend_angle
    assert allowance_navy(180 - bend_angle, radius, thickness) == pytest.approx(printed)


def test_range_as_printed():
    with pytest.raises(RangeError):
        allowance_navy(179.5, 1, 1)
