"""Order problems that are tables of random numbers, and the plain way to solve them.

The search only ever asks: can this step be the last of this set, and what does it cost? Here a
table answers, so what is tested is the search and nothing else.
"""

from __future__ import annotations

import itertools
import random
from collections.abc import Iterator
from dataclasses import dataclass, field

import numpy as np

from flangebook.bending.clearance.problem import BANNED, SLIDES
from flangebook.bending.ordering import cost as costs
from flangebook.bending.ordering.best_first import Found, Move, Search, SearchLimits
from flangebook.bending.ordering.frontier import (
    ANSWERED,
    BEND,
    CODE,
    COST,
    END,
    GUESSED,
    HALF_KNOWN,
    KNOWN,
    MADE,
    NOT_KNOWN,
    PAIR,
    REFUSED,
    STAGE,
    Rules,
    Table,
    advance,
)

Counts = tuple[int, ...]


@dataclass
class Facts:
    """A random answer for every step: (made before, bend, end, pair) -> code and counts."""

    bends: int
    pairs: int
    up: tuple[bool, ...]
    change: np.ndarray
    steps: dict[tuple[int, int, int, int], tuple[int, Counts]]
    no_turn: bool = False
    no_end: bool = False
    no_change: bool = False
    least: int = 0
    scale: costs.Scale = field(init=False)

    def __post_init__(self) -> None:
        self.scale = costs.scale_for(self.bends, self.change)


def random_facts(
    seed: int, bends: int, pairs: int, feasible: float, order_limits: int = 0
) -> Facts:
    """A table in which that share of the steps can be made. order_limits: what is forbidden."""
    rnd = random.Random(seed)
    least = rnd.choice([0, 3])
    change = np.zeros((pairs, pairs), np.int64)
    for p, q in itertools.combinations(range(pairs), 2):
        change[p, q] = change[q, p] = rnd.choice([1, 1, 2])
    steps = {}
    for made in range(1 << bends):
        for b, e, p in itertools.product(range(bends), range(2), range(pairs)):
            if made >> b & 1:
                continue
            code = 0 if rnd.random() < feasible else BANNED
            counts = [0] * len(costs.NAMES)
            counts[costs.CRITICAL] = int(rnd.random() < 0.1)
            counts[costs.HELD_CLOSE] = int(rnd.random() < 0.2)
            counts[costs.SLIDE] = int(rnd.random() < 0.2)
            counts[costs.VARIANCE] = least + rnd.randrange(5)
            counts[costs.SHARE] = rnd.randrange(10)
            steps[made, b, e, p] = (code, tuple(counts))
    up = tuple(rnd.random() < 0.5 for _ in range(bends))
    turn, end, tools = (bool(order_limits >> i & 1) for i in range(3))
    return Facts(bends, pairs, up, change, steps, turn, end, tools, least)


def searched(facts: Facts, *, soft: bool = False, limits: SearchLimits | None = None) -> Found:
    """What the search finds, steps looked up in the table as it wants them."""
    transition = costs.transitions(
        facts.scale, facts.change, turn=facts.no_turn, end=facts.no_end, tools=facts.no_change
    )
    blocked = None if soft else facts.scale.units[costs.BLOCKED]
    hint = np.full((facts.bends, 2), facts.least * facts.scale.units[costs.VARIANCE])
    up = sum(1 << b for b, is_up in enumerate(facts.up) if is_up)
    rules = Rules(
        facts.bends,
        facts.pairs,
        np.array([(1 << facts.bends) - 1 - up, up], np.int64),
        np.array(facts.scale.units, np.int64),
        transition,
        costs.no_better(transition, blocked),
        facts.least * facts.scale.units[costs.VARIANCE],
        hint,
        *costs.ways_for(transition, hint, np.array(facts.up), blocked),
        soft,
        True,
    )

    def look(rules: Rules, table: Table, bound: int, steps: int) -> int:
        while True:
            why = advance(rules, table, bound, steps)
            if why != NOT_KNOWN:
                return why
            answer(facts, table, soft)

    return Search(rules, facts.scale, look, limits or SearchLimits()).run()


def answer(facts: Facts, table: Table, soft: bool) -> None:
    """What the table says of the wanted step, put where the search looks for it.

    As with real steps, what takes no looking closely comes first.
    """
    told = table.told
    made, bend, end, pair = (int(told[i]) for i in (MADE, BEND, END, PAIR))
    code, counts = facts.steps[made, bend, end, pair]
    told[ANSWERED] = 1
    if told[STAGE] == GUESSED and counts[costs.HELD_CLOSE]:
        units = facts.scale.units
        told[STAGE], told[CODE] = HALF_KNOWN, 0
        told[COST] = units[costs.HELD_CLOSE] + facts.least * units[costs.VARIANCE]
        return
    told[STAGE] = KNOWN
    slide = SLIDES if counts[costs.SLIDE] else 0
    told[CODE] = REFUSED if code and not soft else code | slide
    told[COST] = facts.scale.packed((int(code != 0), *counts[1:]))


def counted(facts: Facts, sequence: tuple[Move, ...]) -> Counts:
    """What a sequence costs, dearest first, added up step by step."""
    total = [0] * len(costs.NAMES)
    made = 0
    before: Move | None = None
    for move in sequence:
        code, counts = facts.steps[made, move.bend, move.end, move.pair]
        total = [a + b for a, b in zip(total, counts, strict=True)]
        total[costs.BLOCKED] += code != 0
        if before is not None:
            turn = facts.up[before.bend] != facts.up[move.bend]
            end = before.end != move.end
            changed = int(facts.change[before.pair, move.pair])
            total[costs.TURN_OVER] += turn
            total[costs.TURN_END] += end
            total[costs.CHANGE] += changed
            against = (facts.no_turn and turn, facts.no_end and end, facts.no_change and changed)
            total[costs.BLOCKED] += any(against)
        made |= 1 << move.bend
        before = move
    return tuple(total)


def all_sequences(facts: Facts) -> Iterator[tuple[Move, ...]]:
    """Every order with every choice of ends and tools."""
    choices = [(e, p) for e in range(2) for p in range(facts.pairs)]
    for order in itertools.permutations(range(facts.bends)):
        for chosen in itertools.product(choices, repeat=facts.bends):
            yield tuple(Move(b, e, p) for b, (e, p) in zip(order, chosen, strict=True))


def cheapest(facts: Facts, *, soft: bool = False) -> Counts | None:
    """The least that any order costs; None if none can be made."""
    least: Counts | None = None
    for sequence in all_sequences(facts):
        counts = counted(facts, sequence)
        if (soft or counts[costs.BLOCKED] == 0) and (least is None or counts < least):
            least = counts
    return least
