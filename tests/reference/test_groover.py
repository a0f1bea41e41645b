"""M. P. Groover, Fundamentals of Modern Manufacturing: sheet metalworking.

The V-bending example (19.2 in one printing, chapter 20 in the 4th edition) and the
end-of-chapter problems of chapter 20, 4th edition, with the answers printed for instructors.
Read in public copies of the text: repository Zdong104/ManufacturtingQA,
1Book/2magic-pdf/sec19/auto/sec19.md and 2QuestionsData/4MathQ/2Math_txt/ch20.txt.

Problem 20.10 (R 11.35 mm, t 5.0 mm, included 40 degrees) is left out: its printed answer, 34.21
mm of allowance, fits R = 11.5 and does not follow from the R that the problem gives.
"""

from __future__ import annotations

import pytest

from flangebook.bending.handbook.allowance import allowance_groover, k_factor_groover
from flangebook.bending.handbook.force import force_textbook

MM_PER_IN = 25.4
MPA_PER_PSI = 0.00689475729
N_PER_LBF = 4.44822162


@pytest.mark.parametrize(
    ("tensile_mpa", "length_mm", "thickness_mm", "v_mm", "printed_n"),
    [
        pytest.param(450, 44.5, 3.2, 25, 10_909, id="example 19.2"),
        pytest.param(340, 20.0, 3.0, 15, 5_426, id="problem 20.17"),
    ],
)
def test_v_bending_force(tensile_mpa, length_mm, thickness_mm, v_mm, printed_n):
    # Printed to the newton: half of the last digit.
    assert force_textbook(tensile_mpa, length_mm, thickness_mm, v_mm) == pytest.approx(
        printed_n, abs=0.5
    )


def test_v_bending_force_in_inches_and_pounds():
    """Problem 20.15: t 5/32 in, w 1.5 in, TS 70 000 psi, D 1.25 in gives 2728 lb."""
    force_n = force_textbook(
        70_000 * MPA_PER_PSI, 1.5 * MM_PER_IN, 5 / 32 * MM_PER_IN, 1.25 * MM_PER_IN
    )
    assert force_n / N_PER_LBF == pytest.approx(2728, abs=0.5)


def test_wiping_die_force():
    """Problem 20.14: the same relation with K_bf 0.33: 6188 N."""
    assert force_textbook(600, 35, 5.0, 28, die_factor=0.33) == pytest.approx(6188, abs=0.5)


def test_allowance_and_blank_of_the_example():
    """R 4.75, t 3.2, bend angle 60 degrees: 6.08 mm; with flats of 38 and 25 mm 69.08 mm."""
    allowance = allowance_groover(120, 4.75, 3.2)
    assert allowance == pytest.approx(6.08, abs=0.005)
    assert 38 + allowance + 25 == pytest.approx(69.08, abs=0.005)


def test_allowance_of_an_l_part_in_inches():
    """Problem 20.11: t 5/32 in, R 3/16 in, 90 degrees: 0.3756 in; each flat 1.8122 in of 4.0."""
    allowance = allowance_groover(90, 3 / 16, 5 / 32)
    # The print rounds pi on the way: one unit of its last digit.
    assert allowance == pytest.approx(0.3756, abs=0.0001)
    assert (4.0 - allowance) / 2 == pytest.approx(1.8122, abs=0.0001)


@pytest.mark.parametrize(
    ("radius_over_t", "printed"), [(0.0, 0.33), (1.99, 0.33), (2.0, 0.50), (8.0, 0.50)]
)
def test_k_of_the_text(radius_over_t, printed):
    """K_ba is 0.33 for R < 2t and 0.50 for R >= 2t."""
    assert k_factor_groover(radius_over_t * 1.5, 1.5) == printed
