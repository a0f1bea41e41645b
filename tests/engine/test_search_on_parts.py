"""The order search on parts with tools, against all orders (``all_orders``)."""

from __future__ import annotations

import random
from collections import Counter

import numpy as np
import pytest
from all_orders import Plain
from hypothesis import given, settings
from hypothesis import strategies as st
from order_parts import DEEP, GOOSENECK, NARROW, PUNCH, PUNCHES, problem_of, random_part
from quick_ones import but_for

from flangebook.bending.clearance.problem import AGAINST_LIMIT, BANNED, Problem
from flangebook.bending.ordering.explain import refused_steps
from flangebook.bending.ordering.search import Found, Known, Move, code_of, search

ORDERS_ONE_BY_ONE = 20_000
"""Where more orders than this can be made, the table of last moves alone says which is cheapest."""


def compare(plain: Plain, *, soft: bool = False) -> tuple[Found, bool]:
    """Hold the search against every order there is; whether they were gone through one by one."""
    answer = plain.by_last_moves(soft=soft)
    singly = answer.orders <= ORDERS_ONE_BY_ONE
    if singly:
        assert plain.one_by_one(soft=soft) == answer
    found = search(plain.problem, soft=soft, banned=plain.banned)
    assert found.certain
    if answer.least is None:
        assert (found.status, found.cost) == ("none", None)
        return found, singly
    assert found.status == "found"
    assert plain.counts(found.sequence) == answer.least
    assert found.cost == plain.scale.cost(plain.scale.packed(answer.least))
    return found, singly


def random_problem(seed: int, bends: int, pairs: int) -> Problem:
    """A random part with random tools and wishes."""
    rnd = random.Random(seed)
    problem = problem_of(
        random_part(rnd, bends, rnd.choice(("winding", "panel", "deck"))),
        rnd.sample((PUNCH, GOOSENECK, DEEP), pairs),
        holder=rnd.choice((NARROW, None)),
        can_slide=rnd.random() < 0.7,
    )
    return problem._replace(
        critical=np.array([rnd.random() < 0.3 for _ in range(bends + 1)]),
        before=np.array([rnd.choice([0, 0, 0, rnd.randrange(1 << b)]) for b in range(bends)]),
        no_turn_over=rnd.random() < 0.05,
        no_turn_end=rnd.random() < 0.1,
        no_change=rnd.random() < 0.2,
    )


def varied_problem(rnd: random.Random, kind: str, bends: int, pairs: int) -> Problem:
    """The same with more that can differ: which tools serve which bend, what a change of tools
    takes, how sure each finished bend is, limits on the order; half have no limit at all."""
    problem = problem_of(
        random_part(rnd, bends, kind),
        rnd.sample(PUNCHES, pairs),
        holder=rnd.choice((NARROW, None)),
        margin_mm=rnd.choice((0.5, 2.0, 4.0)),
        can_slide=rnd.random() < 0.7,
    )
    wished = rnd.random() < 0.5
    before = [
        rnd.randrange(1 << bends) & ~(1 << b) if wished and rnd.random() < 0.15 else 0
        for b in range(bends)
    ]
    return problem._replace(
        allowed=np.array([
            [p == 0 or rnd.random() < 0.9 for p in range(pairs)] for _ in range(bends)
        ]),
        change=np.array([
            [0 if p == q else rnd.choice((1, 1, 2)) for q in range(pairs)] for p in range(pairs)
        ]),
        bend_variance=np.array([rnd.uniform(0.0, 0.08) for _ in range(bends)]),
        critical=np.array([rnd.random() < rnd.choice((0.0, 0.3)) for _ in range(bends + 1)]),
        before=np.array(before),
        no_turn_over=wished and rnd.random() < 0.1,
        no_turn_end=wished and rnd.random() < 0.2,
        no_change=wished and rnd.random() < 0.3,
    )  # fmt: skip


KINDS = ("winding", "panel", "deck")
PARTS = 504
"""Of each number of bends from 1 to 6, with 1 punch and with 3, of each kind, equally many."""
_GROUPS = 12


@pytest.mark.parametrize("group", but_for([3], range(_GROUPS)))
def test_random_parts_of_up_to_six_bends(group: int) -> None:
    """A group has one number of bends and of punches."""
    bends, pairs = group % 6 + 1, (1, 3)[group // 6]
    outcomes: Counter[str] = Counter()
    for i in range(PARTS // _GROUPS):
        rnd = random.Random(10_000 * group + i)
        plain = Plain(varied_problem(rnd, KINDS[i % 3], bends, pairs))
        found, singly = compare(plain, soft=i % 7 == 6)
        outcomes[found.status] += 1
        outcomes["one by one"] += singly
    print(bends, pairs, dict(outcomes))
    assert outcomes["found"] > 10
    assert outcomes["one by one"] > 10
    assert outcomes["none"] > 0 or bends < 3


@settings(max_examples=60, deadline=None)
@given(
    seed=st.integers(0, 2**32),
    kind=st.sampled_from(KINDS),
    bends=st.integers(1, 6),
    pairs=st.sampled_from((1, 3)),
    soft=st.booleans(),
)
def test_any_part(seed: int, kind: str, bends: int, pairs: int, soft: bool) -> None:
    compare(Plain(varied_problem(random.Random(seed), kind, bends, pairs)), soft=soft)


def test_banned_steps_are_not_taken() -> None:
    """The step that the cheapest order begins with is banned, again and again."""
    problem = problem_of(random_part(random.Random(1), 3, "deck"), (PUNCH, GOOSENECK))
    banned: frozenset[tuple[int, Move]] = frozenset()
    costs_so_far = []
    for _ in range(6):
        found, _ = compare(Plain(problem, banned))
        if found.cost is None:
            break
        costs_so_far.append(found.cost)
        assert (0, found.sequence[0]) not in banned
        banned |= {(0, found.sequence[0])}
    assert len(costs_so_far) > 1
    soft = search(problem, soft=True, banned=[(0, Move(b, e, p)) for b in range(3)
                                              for e in range(2) for p in range(2)])  # fmt: skip
    assert soft.codes[0] & BANNED


def test_what_is_known_serves_the_next_search() -> None:
    """Another limit on the same part: same answer with and without what was learned."""
    problem = random_problem(31, 4, 2)._replace(before=np.zeros(4, np.int64))
    known = Known(problem)
    for wish in ({}, {"no_change": True}, {"before": np.array([0, 1, 0, 0])}):
        wished = problem._replace(**wish)
        alone, with_known = search(wished), search(wished, known=known)
        assert alone.status == with_known.status
        assert alone.cost == with_known.cost


def test_the_fields_may_be_of_any_kind_of_number() -> None:
    """Whole numbers where others are meant compile nothing anew and give the same."""
    problem = random_problem(3, 3, 1)
    loose = problem._replace(
        thickness=2,
        margin=2,
        before=problem.before.astype(np.int32),
        at=list(problem.at),
        can_slide=np.bool_(problem.can_slide),
    )
    assert search(loose).cost == search(problem).cost


def test_an_impossible_limit_is_named() -> None:
    """Each bend before the other: nothing can come first."""
    problem = random_problem(2, 2, 1)._replace(before=np.array([2, 1]))
    assert search(problem).status == "none"
    soft = search(problem, soft=True)
    assert any("wish" in refused.reasons for refused in refused_steps(soft))
    assert any(code & AGAINST_LIMIT for code in soft.codes)


def test_a_refused_step_has_every_reason_that_the_step_alone_has() -> None:
    for seed in range(200):
        problem = random_problem(seed, 4, 1)
        if search(problem).status == "none":
            break
    else:
        pytest.fail("no part without an order among these")
    refused = refused_steps(search(problem, soft=True))
    assert refused
    for step in refused:
        assert step.reasons
        assert code_of(problem, step.made, step.move) == step.code


@pytest.mark.slow
def test_more_tools_than_anybody_has() -> None:
    """A crib of 100 punches, all alike: the same answer as with one of them, and it ends."""
    ended: Counter[str] = Counter()
    for seed in range(12):
        made = random_part(random.Random(seed), 4, ("winding", "panel", "deck")[seed % 3])
        one, many = (search(problem_of(made, (GOOSENECK,) * n, holder=NARROW)) for n in (1, 100))
        assert (many.status, many.cost) == (one.status, one.cost)
        ended[one.status] += 1
    assert ended["found"] >= 3
    assert ended["none"] >= 1
