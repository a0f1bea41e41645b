"""Segments against trying every set of pieces."""

from __future__ import annotations

from collections import Counter
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from flangebook.bending.tools.segments import segments_for

LENGTHS = st.lists(st.integers(1, 60).map(lambda n: n * 2.5), min_size=0, max_size=9)


@settings(max_examples=200)
@given(LENGTHS, st.floats(1.0, 300.0), st.none() | st.floats(1.0, 400.0))
def test_least_sum_of_all_sets_of_pieces(
    owned: list[float], wanted: float, most: float | None
) -> None:
    wanted = round(wanted, 2)
    sums = {
        round(sum(chosen), 2) for n in range(1, len(owned) + 1) for chosen in combinations(owned, n)
    }
    possible = [s for s in sums if wanted <= s <= (most if most is not None else 1e9)]
    chosen = segments_for(owned, wanted, most)
    if not possible:
        assert chosen is None
        return
    assert chosen is not None
    assert sum(chosen) == pytest.approx(min(possible))
    assert not Counter(chosen) - Counter(owned)
    assert list(chosen) == sorted(chosen, reverse=True)


def test_exact_sum_comes_before_fewer_pieces() -> None:
    owned = [500.0, 200.0, 100.0, 50.0, 40.0, 20.0, 15.0, 10.0]
    assert segments_for(owned, 835.0) == (500.0, 200.0, 100.0, 20.0, 15.0)
    assert segments_for(owned, 500.0) == (500.0,)


def test_for_a_box_no_longer_than_the_inside() -> None:
    owned = [100.0, 50.0, 30.0]
    assert segments_for(owned, 140.0, most_mm=146.0) is None
    assert segments_for(owned, 140.0, most_mm=150.0) == (100.0, 50.0)


def test_inch_pieces_are_not_lost_in_rounding() -> None:
    assert segments_for([6.35, 12.7, 25.4, 254.0], 266.7) == (254.0, 12.7)


@pytest.mark.parametrize("wanted", [0.0, -1.0, float("nan"), 1e9])
def test_no_length_no_pieces(wanted: float) -> None:
    assert segments_for([100.0], wanted) is None
    assert segments_for([], 10.0) is None


def test_many_pieces_are_quick() -> None:
    owned = [float(10 + i % 17) for i in range(200)]
    chosen = segments_for(owned, 2500.0)
    assert chosen is not None
    assert sum(chosen) == 2500.0
