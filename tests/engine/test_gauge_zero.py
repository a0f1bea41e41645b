"""The gauge's zero from the flanges of several parts."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.gauge_zero import (
    DEDUCTION_SD_MM,
    FLANGE_SD_MM,
    ZERO_SD_MM,
    gauge_zero,
)

ERRORS = st.dictionaries(
    st.sampled_from("abcd"), st.lists(st.floats(-1.0, 1.0), min_size=1, max_size=6), min_size=1
)


@given(ERRORS)
def test_it_is_the_solution_of_the_whole_linear_model(errors):
    """All unknowns at once by the normal equations, against the closed form."""
    names = sorted(errors)
    size = 1 + len(names)
    left = np.diag([1.0 / ZERO_SD_MM**2, *[1.0 / DEDUCTION_SD_MM**2] * len(names)])
    right = np.zeros(size)
    for at, name in enumerate(names, 1):
        for error in errors[name]:
            row = np.zeros(size)
            row[[0, at]] = 1.0
            left += np.outer(row, row) / FLANGE_SD_MM**2
            right += row * error / FLANGE_SD_MM**2
    solved = np.linalg.solve(left, right)
    found = gauge_zero(errors)
    assert found.zero_mm == pytest.approx(solved[0], abs=1e-9)
    assert found.sd_mm == pytest.approx(np.sqrt(np.linalg.inv(left)[0, 0]))
    for at, name in enumerate(names, 1):
        assert found.deductions_mm[name] == pytest.approx(2.0 * solved[at], abs=1e-9)


def test_what_all_parts_have_in_common_is_the_gauge_s():
    found = gauge_zero({name: [0.3, 0.32, 0.28] for name in "abcde"})
    assert found.systematic
    assert found.zero_mm == pytest.approx(0.3, abs=0.03)
    assert all(abs(one) < 0.06 for one in found.deductions_mm.values())


def test_what_one_metal_has_alone_is_mostly_its_deduction_s():
    found = gauge_zero({"a": [0.2] * 5, "b": [0.0] * 5, "c": [0.0] * 5, "d": [0.0] * 5})
    assert not found.systematic
    assert found.deductions_mm["a"] > 2.0 * found.zero_mm > 0.0
    assert found.deductions_mm["b"] < 0.0


@given(st.floats(-0.6, 0.6), st.integers(1, 2))
def test_two_flanges_prove_nothing(error, count):
    assert not gauge_zero({"a": [error] * count}).systematic
