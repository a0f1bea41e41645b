"""The cheapest order that can be made, or the proof that there is none.

Two passes over what is remembered of legs: a greedy one, deepest first with full backtracking,
finds some order soon or proves that there is none; then best first finds the cheapest. Both run
in slices, so that a deadline or a cancelled request ends them within milliseconds, and what was
best by then is the answer, and may not be the best.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

import numpy as np

from flangebook.bending.clearance.problem import AGAINST_LIMIT, SLIDES
from flangebook.bending.ordering.cost import BLOCKED, MOST, Cost, Scale
from flangebook.bending.ordering.frontier import (
    EMPTY,
    FOUND,
    GOAL,
    MOST_KINDS,
    NO_ROOM,
    POPPED,
    REMAINING,
    Rules,
    Table,
    begin,
)
from flangebook.bending.ordering.state_table import (
    UNSEEN,
    more_heap,
    more_keys,
    more_states,
    new_heap,
    new_keys,
    new_states,
)

SLICE = 500
"""States looked at between two looks at the clock."""

TOLD_EVERY_S = 0.1
MOST_BYTES = 600_000_000
"""What a search may remember before it gives up."""

ROOM = 1024
"""Sets that a search has room for at first; a power of two."""


Look = Callable[[Rules, Table, int, int], int]
"""Looks at states with ``frontier.advance``, working out steps as they are wanted: rules, table,
bound, until how many -> why it ended."""


@dataclass(frozen=True, slots=True)
class Move:
    """A step: bend and tool pair from 0, end LEFT or RIGHT at the gauge."""

    bend: int
    end: int
    pair: int


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a search is. bends_left: not yet placed in the deepest attempt. best: cost of the
    cheapest order found so far."""

    seconds: float
    looked_at: int
    bends_left: int
    best: Cost | None


@dataclass(frozen=True, slots=True)
class Found:
    """What a search found.

    status: "found": the cheapest order; "none": there is no order; "stopped": the deadline came,
    the search was cancelled or had too much to remember. sequence: the steps, first step first;
    when stopped the best so far, empty if none. codes: of each step, result bits of ``problem``;
    other than 0 only in a soft search. slides: whether part or punch goes in or out sideways.
    cost: of that sequence. certain: "found" and "none" are.
    """

    status: Literal["found", "none", "stopped"]
    sequence: tuple[Move, ...]
    codes: tuple[int, ...]
    slides: tuple[bool, ...]
    cost: Cost | None
    looked_at: int
    seconds: float

    @property
    def certain(self) -> bool:
        """Whether there is nothing cheaper, or nothing at all."""
        return self.status != "stopped"


@dataclass(frozen=True, slots=True)
class SearchLimits:
    """When a search ends before its end. deadline_s: seconds it may take."""

    deadline_s: float | None = None
    cancelled: Callable[[], bool] | None = None
    progress: Callable[[Progress], None] | None = None
    most_bytes: int = MOST_BYTES


def new_table(rules: Rules) -> Table:
    """Nothing met yet, with some room."""
    return Table(
        new_keys(ROOM),
        new_states(ROOM, len(rules.transition)),
        new_heap(ROOM + 2 * rules.bends),
        np.zeros(11, np.int64),
    )


class Search:
    """One search: its rules, what it has met, and the best order so far."""

    def __init__(self, rules: Rules, scale: Scale, look: Look, limits: SearchLimits) -> None:
        self.rules, self.scale, self.look, self.limits = rules, scale, look, limits
        self.began = self.told_at = time.monotonic()
        self.looked_at = 0
        self.left = rules.bends
        self.best: tuple[int, tuple[Move, ...], tuple[int, ...]] | None = None
        self.table = new_table(rules)

    def run(self) -> Found:
        """Search to the end or to a limit."""
        why = self._pass(self.rules, MOST)
        if why == EMPTY:
            return self._found("none")
        if why == FOUND:
            self._note_best()
            why = self._pass(self.rules._replace(greedy=False), self._bound())
            if why == FOUND:
                self._note_best()
        return self._found("stopped" if why not in (FOUND, EMPTY) else "found")

    def _pass(self, rules: Rules, bound: int) -> int:
        """Search one way from the finished part; FOUND, EMPTY, or anything else: a limit."""
        self._forget_ways()
        begin(rules, self.table)
        while True:
            why = self.look(rules, self.table, bound, int(self.table.told[POPPED]) + SLICE)
            if why in (FOUND, EMPTY):
                self.looked_at += int(self.table.told[POPPED])
                return why
            if why == NO_ROOM and not self._make_room():
                return why
            self.left = min(self.left, int(self.table.told[REMAINING]))
            if self._is_over():
                self.looked_at += int(self.table.told[POPPED])
                return why

    def _forget_ways(self) -> None:
        """Begin afresh."""
        states = self.table.states
        states.best.fill(UNSEEN)
        states.closed.fill(False)
        self.table.heap.used[0] = 0
        self.table.told.fill(0)

    def _make_room(self) -> bool:
        """Double the arrays that are nearly full; False when that is too much to remember."""
        keys, states, heap, told = self.table
        if sum(a.nbytes for part in self.table[:-1] for a in part) > self.limits.most_bytes // 2:
            return False
        if keys.used[0] + self.rules.bends > len(keys.keys):
            keys, states = more_keys(keys), more_states(states)
        if heap.used[0] + self.rules.bends + 2 > len(heap.rows):
            heap = more_heap(heap)
        self.table = Table(keys, states, heap, told)
        return True

    def _is_over(self) -> bool:
        """Tell how far it is, now and then; whether a limit says stop."""
        now = time.monotonic()
        limits = self.limits
        if limits.progress is not None and now - self.told_at >= TOLD_EVERY_S:
            self.told_at = now
            best = None if self.best is None else self.scale.cost(self.best[0])
            looked_at = self.looked_at + int(self.table.told[POPPED])
            limits.progress(Progress(now - self.began, looked_at, self.left, best))
        if limits.cancelled is not None and limits.cancelled():
            return True
        return limits.deadline_s is not None and now - self.began >= limits.deadline_s

    def _bound(self) -> int:
        return MOST if self.best is None else self.best[0]

    def _note_best(self) -> None:
        """Follow the way from the empty set that was reached to the finished part."""
        table, pairs = self.table, self.rules.pairs
        kinds = len(self.rules.transition)
        row, kind = divmod(int(table.told[GOAL]), kinds)
        cost, made = int(table.states.best[row, kind]), 0
        sequence, codes, wish = [], [], 0
        rows = {int(key): i for i, key in enumerate(table.keys.keys[: int(table.keys.used[0])])}
        for _ in range(self.rules.bends):
            bend, after = divmod(int(table.states.way[row, kind]), MOST_KINDS)
            move = Move(bend, kind // pairs % 2, kind % pairs)
            made |= 1 << bend
            codes.append(int(table.states.code[row, kind]) | wish)
            row = rows[made]
            sequence.append(move)
            forbidden = made.bit_count() < self.rules.bends and (
                self.rules.transition[kind, after] >= self.rules.units[BLOCKED]
            )
            wish = AGAINST_LIMIT if forbidden else 0
            kind = after
        self.left = 0
        self.best = (cost, tuple(sequence), tuple(codes))

    def _found(self, status: Literal["found", "none", "stopped"]) -> Found:
        cost, sequence, codes = self.best or (None, (), ())
        return Found(
            status,
            sequence,
            tuple(code & ~SLIDES for code in codes),
            tuple(bool(code & SLIDES) for code in codes),
            None if cost is None else self.scale.cost(cost),
            self.looked_at,
            time.monotonic() - self.began,
        )
