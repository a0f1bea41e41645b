"""The order search against all orders one by one, on tables of random steps."""

from __future__ import annotations

import tracemalloc

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from order_facts import Facts, all_sequences, cheapest, counted, random_facts, searched

from flangebook.bending.clearance.problem import AGAINST_LIMIT, BANNED
from flangebook.bending.ordering import best_first
from flangebook.bending.ordering import cost as costs
from flangebook.bending.ordering.best_first import Progress, SearchLimits

SIZES = [(1, 1), (1, 3), (2, 1), (2, 2), (2, 3), (3, 1), (3, 2), (4, 1)]


def compare(facts: Facts, *, soft: bool = False) -> str:
    """Hold the search against every order there is."""
    least = cheapest(facts, soft=soft)
    found = searched(facts, soft=soft)
    assert found.certain
    if least is None:
        assert (found.status, found.sequence, found.cost) == ("none", (), None)
        return "none"
    assert found.status == "found"
    assert counted(facts, found.sequence) == least
    assert found.cost == facts.scale.cost(facts.scale.packed(least))
    refused = [
        facts.steps[made, move.bend, move.end, move.pair][0]
        for made, move in zip(made_before(found.sequence), found.sequence, strict=True)
    ]
    assert [code & BANNED for code in found.codes] == refused
    if not soft:
        assert not any(found.codes)
    return "found"


def made_before(sequence) -> list[int]:
    """The set of bends made before each step."""
    return [sum(1 << m.bend for m in sequence[:i]) for i in range(len(sequence))]


@pytest.mark.slow
def test_five_hundred_fixed_tables() -> None:
    outcomes = []
    for seed in range(500):
        bends, pairs = SIZES[seed % len(SIZES)]
        feasible = (0.3, 0.5, 0.8, 1.0)[seed // len(SIZES) % 4]
        order_limits = (0, 0, 1, 2, 4, 7)[seed % 6]
        outcomes.append(compare(random_facts(seed, bends, pairs, feasible, order_limits)))
    assert outcomes.count("none") > 50
    assert outcomes.count("found") > 300


def test_fixed_tables_of_five_and_six_bends() -> None:
    """All orders of six bends are 46,080 sequences; a few tables of them."""
    for seed, bends in ((1, 5), (2, 5), (3, 5), (4, 6)):
        compare(random_facts(seed, bends, 1, 0.5))


@settings(max_examples=60, deadline=None)
@given(
    seed=st.integers(0, 2**32),
    size=st.sampled_from(SIZES),
    feasible=st.floats(0.1, 1.0),
    order_limits=st.integers(0, 7),
    soft=st.booleans(),
)
def test_any_table(
    seed: int, size: tuple[int, int], feasible: float, order_limits: int, soft: bool
) -> None:
    compare(random_facts(seed, *size, feasible, order_limits), soft=soft)


@settings(max_examples=200, deadline=None)
@given(
    bends=st.integers(1, 40),
    most=st.integers(0, 3),
    one=st.lists(st.integers(0, 39), min_size=9, max_size=9),
    other=st.lists(st.integers(0, 39), min_size=9, max_size=9),
)
def test_packed_costs_compare_as_their_counts_do(
    bends: int, most: int, one: list[int], other: list[int]
) -> None:
    scale = costs.scale_for(bends, np.full((2, 2), most, np.int64))
    tops = [2 * bends, bends + 1, bends, bends, bends, bends * most, bends,
            bends * scale.most_variance, 10 * bends]  # fmt: skip
    a, b = (
        tuple(min(n, top) if i % 2 else top - min(n, top)
              for i, (n, top) in enumerate(zip(counts, tops, strict=True)))
        for counts in (one, other)
    )  # fmt: skip
    assert scale.counts(scale.packed(a)) == a
    assert (scale.packed(a) < scale.packed(b)) == (a < b)
    assert scale.packed(tuple(tops)) < costs.MOST
    assert scale.most_variance * scale.variance_step_mm2 >= 0.5


@pytest.mark.parametrize("blocked", [None, 10**6])
def test_the_rules_for_a_hundred_tools_take_little_memory(blocked: int | None) -> None:
    """A table of kinds of step by kinds of step is 1.3 MB; one more dimension is half a GB."""
    change = 1 - np.eye(100, dtype=np.int64)
    table = costs.transitions(
        costs.scale_for(4, change), change, turn=False, end=False, tools=False
    )
    tracemalloc.start()
    costs.no_better(table, blocked)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 10 * table.nbytes


def test_what_blocks_is_named_in_a_soft_search() -> None:
    """Where no order can be made, the soft search gives the one with the fewest refusals."""
    facts = random_facts(5, 4, 1, 0.15)
    assert searched(facts).status == "none"
    found = searched(facts, soft=True)
    assert found.cost is not None
    assert found.cost.blocked == sum(code == BANNED for code in found.codes) > 0


def test_a_step_against_a_limit_is_marked() -> None:
    facts = random_facts(5, 3, 1, 1.0, order_limits=1)
    facts.up = (True, False, True)
    assert searched(facts).status == "none"
    found = searched(facts, soft=True)
    assert [code for code in found.codes if code] == [AGAINST_LIMIT]


@pytest.fixture
def short_slices(monkeypatch: pytest.MonkeyPatch) -> None:
    """A look at the clock after every few states, so that small tables have many slices."""
    monkeypatch.setattr("flangebook.bending.ordering.best_first.SLICE", 5)
    monkeypatch.setattr("flangebook.bending.ordering.best_first.TOLD_EVERY_S", 0.0)


@pytest.mark.usefixtures("short_slices")
@pytest.mark.parametrize("feasible", [1.0, 0.7])
def test_a_deadline_gives_the_best_so_far(feasible: float) -> None:
    """Cut off after the greedy pass, there is an order that can be made, dear or not."""
    facts = random_facts(3, 9, 2, feasible)
    whole = searched(facts)
    assert whole.cost is not None

    looks = iter(range(10**9))
    cut = searched(facts, limits=SearchLimits(cancelled=lambda: next(looks) >= 3))
    assert cut.status == "stopped"
    assert not cut.certain
    assert cut.sequence
    counts = counted(facts, cut.sequence)
    assert counts[costs.BLOCKED] == 0
    assert cut.cost == facts.scale.cost(facts.scale.packed(counts))
    assert counts >= counted(facts, whole.sequence)


@pytest.mark.usefixtures("short_slices")
def test_a_deadline_of_nothing_ends_at_the_first_look_at_the_clock() -> None:
    facts = random_facts(4, 10, 1, 0.9)
    found = searched(facts, limits=SearchLimits(deadline_s=0.0))
    assert found.status == "stopped"
    assert found.looked_at <= best_first.SLICE < searched(facts).looked_at


@pytest.mark.usefixtures("short_slices")
def test_progress_is_told_and_ends_at_the_truth() -> None:
    told: list[Progress] = []
    facts = random_facts(6, 9, 2, 0.9)
    found = searched(facts, limits=SearchLimits(progress=told.append))
    assert len(told) > 1
    assert [p.looked_at for p in told] == sorted(p.looked_at for p in told)
    assert told[-1].looked_at <= found.looked_at
    assert told[-1].best is not None
    assert told[-1].bends_left == 0


@pytest.mark.usefixtures("little_room")
def test_a_search_that_may_remember_little_stops() -> None:
    facts = random_facts(7, 9, 2, 0.6)
    found = searched(facts, limits=SearchLimits(most_bytes=0))
    assert found.status == "stopped"


@pytest.mark.usefixtures("little_room", "short_slices")
def test_arrays_that_grow_on_the_way_change_nothing() -> None:
    compare(random_facts(5, 5, 1, 0.7))
    facts = random_facts(7, 9, 2, 0.6)
    found = searched(facts)
    assert counted(facts, found.sequence)[costs.BLOCKED] == 0
    assert found.looked_at > 40


@pytest.fixture
def little_room(monkeypatch: pytest.MonkeyPatch) -> None:
    """Arrays that have to grow soon."""
    monkeypatch.setattr("flangebook.bending.ordering.best_first.ROOM", 2)


def test_all_sequences_are_all() -> None:
    """The plain way itself: 3 bends, 2 pairs make 3! (2 * 2)**3 sequences."""
    assert len(set(all_sequences(random_facts(0, 3, 2, 1.0)))) == 6 * 64
