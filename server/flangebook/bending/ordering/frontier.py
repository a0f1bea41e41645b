"""Best-first search backwards from the finished part, one slice at a time.

A state is a set of bends still to make and the kind of step that follows it. From the finished
part, whose set is all bends, each step that can be the last leads to the set without its bend,
and so on down to the empty set. Backwards, because the last bends bind: far fewer sets are met
than forwards (common experience with this search, no source).

What follows a set costs what it costs whatever goes before; a bound from below on what goes
before, which never falls by more than a step costs, makes the first way to the empty set the
cheapest (A*: P. E. Hart, N. J. Nilsson, B. Raphael, IEEE Trans. Systems Science and Cybernetics
4 (1968) 100-107).
"""

from __future__ import annotations

from typing import NamedTuple

from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.cost import BLOCKED, MOST, TURN_OVER
from flangebook.bending.ordering.problem import Ints
from flangebook.bending.ordering.state_table import (
    UNSEEN,
    Heap,
    Keys,
    Moves,
    States,
    pop,
    push,
    row_of,
)

OUT_OF_TIME, FOUND, EMPTY, NO_ROOM, NO_MOVES = range(5)
"""Why a slice ended."""

POPPED, REMAINING, GOAL, WANTED, WANTED_KIND = range(5)
"""What ``Table.told`` holds: states looked at, bends left in the deepest of them, the item of
the empty set reached, the row whose moves are wanted and the kind of step that follows it."""


class Rules(NamedTuple):
    """What does not change during a search.

    bends, pairs: how many. opposite: of the bends that go up, of those that go down, as sets,
    swapped: opposite[0] holds the bends that a step of direction 0 turns the part over for.
    units: of the packed cost. transition, no_better: by kinds of step. least: cost that a step
    has at least. soft: blocked steps are allowed at a price. greedy: deepest first.
    """

    bends: int
    pairs: int
    opposite: Ints
    units: Ints
    transition: Ints
    no_better: Ints
    least: int
    soft: bool
    greedy: bool


class Table(NamedTuple):
    """Everything that a search has met so far."""

    keys: Keys
    states: States
    moves: Moves
    heap: Heap
    told: Ints


@kernel
def kind_of(rules: Rules, step: int) -> int:
    """The kind of a step: its direction, end and pair; step is (bend * 2 + end) * pairs + pair."""
    bend = step // (2 * rules.pairs)
    up = rules.opposite[1] >> bend & 1
    return int((1 - up) * 2 * rules.pairs + step % (2 * rules.pairs))


@kernel
def how_many(made: int) -> int:
    """How many bends are in that set."""
    count = 0
    while made:
        made &= made - 1
        count += 1
    return count


@kernel
def still_to_pay(rules: Rules, made: int, kind: int) -> int:
    """What the bends in the set cost at least, with a step of that kind after them."""
    direction = kind // (2 * rules.pairs)
    turn = rules.units[TURN_OVER] if made & rules.opposite[direction] else 0
    return how_many(made) * rules.least + turn


@kernel
def begin(rules: Rules, table: Table) -> None:
    """Put the finished part into an empty table."""
    row = row_of(table.keys, (1 << rules.bends) - 1)
    table.states.best[row, 0] = 0
    table.told[REMAINING] = rules.bends
    push(table.heap, 0, 0, row * len(rules.transition))


@kernel
def advance(rules: Rules, table: Table, bound: int, until: int) -> int:
    """Look at states until so many have been looked at; why it ended.

    bound: orders that cost this much or more are of no interest.
    """
    kinds = len(rules.transition)
    states, heap = table.states, table.heap
    while table.told[POPPED] < until:
        if heap.used[0] == 0:
            return EMPTY
        if _is_full(rules, table):
            return NO_ROOM
        row, kind = heap.item[0] // kinds, heap.item[0] % kinds
        made = table.keys.keys[row]
        cost = states.best[row, kind]
        if states.closed[row, kind] or _is_beaten(rules, states, row, kind, cost, True):
            pop(heap)
            continue
        if states.moves_from[row] < 0 and made:
            table.told[WANTED], table.told[WANTED_KIND] = row, kind
            return NO_MOVES
        pop(heap)
        states.closed[row, kind] = True
        table.told[POPPED] += 1
        table.told[REMAINING] = min(table.told[REMAINING], how_many(made))
        if made == 0:
            table.told[GOAL] = row * kinds + kind
            return FOUND
        _expand(rules, table, bound, row, kind)
    return OUT_OF_TIME


@kernel
def _expand(rules: Rules, table: Table, bound: int, row: int, kind: int) -> None:
    """Put the sets before each step that can be the last of this one into the heap."""
    states, moves = table.states, table.moves
    kinds = len(rules.transition)
    made = table.keys.keys[row]
    is_last = made == (1 << rules.bends) - 1
    for i in range(states.moves_from[row], states.moves_to[row]):
        step = moves.step[i]
        before = kind_of(rules, step)
        cost = states.best[row, kind] + moves.cost[i]
        if not is_last:
            going = rules.transition[before, kind]
            if going >= rules.units[BLOCKED] and not rules.soft:
                continue
            cost += going
        bend = step // (2 * rules.pairs)
        rest = made ^ (1 << bend)
        guess = cost + still_to_pay(rules, rest, before)
        if guess >= bound:
            continue
        to = row_of(table.keys, rest)
        if cost >= states.best[to, before] or (
            rules.greedy and is_needless(rules, states, to, before)
        ):
            continue
        if _is_beaten(rules, states, to, before, cost, False):
            continue
        states.best[to, before] = cost
        states.way[to, before] = bend * 256 + kind
        left = how_many(rest)
        if rules.greedy:
            push(table.heap, left, guess, to * kinds + before)
        else:
            push(table.heap, guess, left, to * kinds + before)


@kernel
def is_needless(rules: Rules, states: States, row: int, kind: int) -> bool:
    """Whether a set was reached already in a way from which the same steps can go before it."""
    reached = states.best[row, kind] < UNSEEN
    return bool(reached or _is_beaten(rules, states, row, kind, MOST - 1, False))


@kernel
def _is_beaten(
    rules: Rules, states: States, row: int, kind: int, cost: int, only_closed: bool
) -> bool:
    """Whether another kind of step after the same set makes this one needless."""
    for other in range(len(rules.transition)):
        if other == kind or (only_closed and not states.closed[row, other]):
            continue
        best = states.best[row, other]
        if best < UNSEEN and best + rules.no_better[kind, other] <= cost:
            return True
    return False


@kernel
def _is_full(rules: Rules, table: Table) -> bool:
    """Whether looking at one more state could need more room than there is."""
    steps = rules.bends * 2 * rules.pairs
    return bool(
        table.keys.used[0] + rules.bends > len(table.keys.keys)
        or table.moves.used[0] + steps > len(table.moves.step)
        or table.heap.used[0] + steps > len(table.heap.item)
    )
