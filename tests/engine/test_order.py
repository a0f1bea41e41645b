"""The plain order rule: every bend once, from the ends in, never called proven."""

from __future__ import annotations

import pytest
from bending_parts import bend, part
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.errors import InputError
from flangebook.bending.part.order import order_for, outside_in
from flangebook.bending.part.part import Bend, Part

HEM = Bend(0.0, "up", kind="closed_hem")


def of(count: int, *, left_hem: bool = False, right_hem: bool = False) -> Part:
    bends = [bend() for _ in range(count)]
    if left_hem:
        bends[0] = HEM
    if right_hem:
        bends[-1] = HEM
    return part([30.0] * (count + 1), bends)


@given(st.integers(1, 40), st.booleans(), st.booleans())
def test_every_bend_once_from_the_ends_in(count: int, left: bool, right: bool) -> None:
    order = outside_in(of(count, left_hem=left, right_hem=right))
    assert sorted(order.sequence) == list(range(1, count + 1))
    hems = {n for n in (1, count) if of(count, left_hem=left, right_hem=right).bends[n - 1] is HEM}
    assert set(order.sequence[: len(hems)]) == hems
    depth = [min(n, count + 1 - n) for n in order.sequence]
    assert depth == sorted(depth)


@pytest.mark.parametrize(
    ("count", "expected"),
    [(1, (1,)), (2, (1, 2)), (3, (1, 3, 2)), (4, (1, 4, 3, 2)), (6, (1, 6, 5, 2, 3, 4))],
)
def test_each_level_starts_at_the_end_the_last_one_stopped(
    count: int, expected: tuple[int, ...]
) -> None:
    assert outside_in(of(count)).sequence == expected


def test_the_rule_proves_nothing_and_says_so() -> None:
    order = outside_in(of(4))
    assert not order.clear_on_paper
    assert "Clearance not checked" in order.words


def test_the_order_given_is_taken() -> None:
    from dataclasses import replace

    given_order = order_for(replace(of(3), order=(2, 1, 3)))
    assert given_order.sequence == (2, 1, 3)
    assert (given_order.rule, given_order.clear_on_paper) == ("given", False)


@pytest.mark.parametrize("order", [(1, 1, 2), (1, 2), (0, 1, 2), (1, 2, 3, 4), ()])
def test_an_order_that_misses_a_bend_is_refused(order: tuple[int, ...]) -> None:
    from dataclasses import replace

    with pytest.raises(InputError, match="1 to 3"):
        order_for(replace(of(3), order=order))
