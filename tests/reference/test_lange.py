"""K. Lange (ed.), Umformtechnik, vol. 3: Blechbearbeitung, 2nd ed., Springer, Berlin 1990.

Maximum force of V-die bending after Oehler, F = (1 + 4 s0/w) R_m l s0^2/w, with its range
(0.5 <= s0 <= 10 mm, 5 <= w/s0 <= 20) and a worked case. Read in an online forming handbook
that cites the book: https://4ming.de/en/forming-handbook/bending-force-i
"""

from __future__ import annotations

import pytest

from flangebook.bending.errors import RangeError
from flangebook.bending.handbook.force import force_lange


def test_worked_case():
    """R_m 310 MPa, s0 1 mm, w 10 mm, l 100 mm: 4.34 kN, printed to 0.01 kN."""
    assert force_lange(310, 100, 1, 10) / 1000 == pytest.approx(4.34, abs=0.005)


@pytest.mark.parametrize(
    ("thickness_mm", "v_mm"), [(0.5, 2.5), (0.5, 10.0), (10.0, 50.0), (10.0, 200.0)]
)
def test_answers_up_to_the_printed_limits(thickness_mm, v_mm):
    assert force_lange(400, 1000, thickness_mm, v_mm) > 0


@pytest.mark.parametrize(
    ("thickness_mm", "v_mm", "where"),
    [
        (0.49, 4.0, "thickness_mm"),
        (10.1, 80.0, "thickness_mm"),
        (2.0, 9.9, "v_opening_mm"),
        (2.0, 40.1, "v_opening_mm"),
    ],
)
def test_refuses_beyond_them(thickness_mm, v_mm, where):
    with pytest.raises(RangeError) as error:
        force_lange(400, 1000, thickness_mm, v_mm)
    assert error.value.where == where
