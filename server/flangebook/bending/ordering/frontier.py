"""Best-first search backwards from the finished part, one slice at a time.

A state is a set of bends still to make and the kind of step that follows it. From the finished
part, whose set is all bends, each step that can be the last leads to the set without its bend,
and so on down to the empty set. Backwards, because the last bends bind: far fewer sets are met
than forwards (common experience with this search, no source).

What follows a set costs what it costs whatever goes before; a bound from below on what goes
before, which never falls by more than a step costs, makes the first way to the empty set the
cheapest (A*: P. E. Hart, N. J. Nilsson, B. Raphael, IEEE Trans. Systems Science and Cybernetics
4 (1968) 100-107).

Looking at a step closely costs far more than everything else here. So a step waits in the heap
at the least it can cost, and is looked at only when it would be the next; most never are.
"""

from __future__ import annotations

from typing import NamedTuple

from flangebook.bending.clearance.problem import Ints
from flangebook.bending.compiled import inlined_kernel, kernel
from flangebook.bending.ordering.cost import MOST, NO_WAY, TURN_OVER
from flangebook.bending.ordering.state_table import (
    FIRST,
    ITEM,
    SECOND,
    UNSEEN,
    Heap,
    Keys,
    States,
    pop,
    push,
    row_of,
)

OUT_OF_TIME, FOUND, EMPTY, NO_ROOM, NOT_KNOWN = range(5)
"""Why a slice ended."""

POPPED, REMAINING, GOAL, MADE, BEND, END, PAIR, STAGE, ANSWERED, CODE, COST = range(11)
"""What ``Table.told`` holds. Of the search: states looked at, bends left in the deepest of them,
the state of the empty set reached (row * kinds + kind). Of a step that is wanted: the set before
it, its bend, end and pair, how closely it was looked at. Of the answer: whether there is one, the
step's code (REFUSED: it cannot be made), what it costs by itself; STAGE then is how closely."""

GUESSED, HALF_KNOWN, KNOWN = range(3)
REFUSED = -1

MOST_KINDS = 1 << 10
"""How many kinds of step a search can tell apart: four for each tool pair."""
_AFTER, _BEND, _KIND, _ROW = 2, 12, 18, 28
"""From which bit on an item of the heap holds the kind of the step after, the bend, the kind of
the step, the row of the set; the stage comes first."""


class Rules(NamedTuple):
    """What does not change during a search.

    bends, pairs: how many. opposite: of the bends that go up, of those that go down, as sets,
    swapped: opposite[0] holds the bends that a step of direction 0 turns the part over for.
    units: of the packed cost. transition, no_better: by kinds of step. least: what a step costs
    at least. hint: what each bend costs at each end at least, (bends, 2). ways, way_cost: how
    each bend can be made before a step of each kind, and what that costs at least (``ways_for``).
    soft: blocked steps are allowed at a price. greedy: deepest first.
    """

    bends: int
    pairs: int
    opposite: Ints
    units: Ints
    transition: Ints
    no_better: Ints
    least: int
    hint: Ints
    ways: Ints
    way_cost: Ints
    soft: bool
    greedy: bool


class Table(NamedTuple):
    """Everything that a search has met so far."""

    keys: Keys
    states: States
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
    push(table.heap, 0, 0, _item(row, 0, 0, 0, KNOWN))


@kernel
def _item(row: int, kind: int, bend: int, after: int, stage: int) -> int:
    """A step in one number: the row of the set before it, its kind, its bend, the kind after."""
    return row << _ROW | kind << _KIND | bend << _BEND | after << _AFTER | stage


@inlined_kernel
def advance(rules: Rules, table: Table, bound: int, until: int) -> int:
    """Look at states until so many have been looked at; why it ended.

    bound: orders that cost this much or more are of no interest.
    """
    states, heap, told = table.states, table.heap, table.told
    while told[POPPED] < until:
        if heap.used[0] == 0:
            return EMPTY
        if _is_full(rules, table):
            return NO_ROOM
        guess = heap.rows[0, SECOND] if rules.greedy else heap.rows[0, FIRST]
        item = heap.rows[0, ITEM]
        stage, row, kind = item & 3, item >> _ROW, item >> _KIND & MOST_KINDS - 1
        made = table.keys.keys[row]
        if stage == KNOWN:
            pop(heap)
            if states.closed[row, kind] or _is_beaten(
                rules, states, row, kind, states.best[row, kind], True
            ):
                continue
            states.closed[row, kind] = True
            told[POPPED] += 1
            told[REMAINING] = min(told[REMAINING], how_many(made))
            if made == 0:
                told[GOAL] = row * len(rules.transition) + kind
                return FOUND
            _expand(rules, table, bound, row, kind)
            continue
        vain = _is_vain(rules, states, row, kind, guess - still_to_pay(rules, made, kind))
        if not (vain or told[ANSWERED]):
            told[MADE], told[BEND], told[STAGE] = made, item >> _BEND & 63, stage
            told[END], told[PAIR] = kind // rules.pairs % 2, kind % rules.pairs
            return NOT_KNOWN
        told[ANSWERED] = 0
        pop(heap)
        bend, after = item >> _BEND & 63, item >> _AFTER & MOST_KINDS - 1
        if stage == GUESSED:
            next_row = row_of(table.keys, made | 1 << bend)
            _put_next_way(rules, table, bound, next_row, after, row, bend, kind)
        if not vain and told[CODE] != REFUSED:
            _take_answer(rules, table, bound, item)
    return OUT_OF_TIME


@kernel
def _take_answer(rules: Rules, table: Table, bound: int, item: int) -> None:
    """Put a step back into the heap at what is known of its cost now."""
    states, told = table.states, table.told
    row, kind = item >> _ROW, item >> _KIND & MOST_KINDS - 1
    bend, after = item >> _BEND & 63, item >> _AFTER & MOST_KINDS - 1
    made = table.keys.keys[row]
    next_row = row_of(table.keys, made | 1 << bend)
    cost = states.best[next_row, after] + told[COST] + _going(rules, table, next_row, kind, after)
    guess = cost + still_to_pay(rules, made, kind)
    if guess >= bound or _is_vain(rules, states, row, kind, cost):
        return
    if told[STAGE] == KNOWN:
        states.best[row, kind] = cost
        states.way[row, kind] = bend * MOST_KINDS + after
        states.code[row, kind] = told[CODE]
    _put(rules, table, made, guess, _item(row, kind, bend, after, told[STAGE]))


@kernel
def _put(rules: Rules, table: Table, made: int, guess: int, item: int) -> None:
    """Put a step into the heap: deepest first when greedy, else the lowest guess first."""
    if rules.greedy:
        push(table.heap, how_many(made), guess, item)
    else:
        push(table.heap, guess, how_many(made), item)


@kernel
def _going(rules: Rules, table: Table, row: int, before: int, after: int) -> int:
    """What it costs to go from a step to the one after it, of which this is the set before."""
    if table.keys.keys[row] == (1 << rules.bends) - 1:
        return 0
    return int(rules.transition[before, after])


@inlined_kernel
def _expand(rules: Rules, table: Table, bound: int, row: int, kind: int) -> None:
    """Put each step that may be the last of this set into the heap, at the least it can cost."""
    made = table.keys.keys[row]
    for bend in range(rules.bends):
        if made >> bend & 1:
            to = row_of(table.keys, made ^ (1 << bend))
            _put_next_way(rules, table, bound, row, kind, to, bend, -1)


@kernel
def _put_next_way(
    rules: Rules, table: Table, bound: int, row: int, after: int, to: int, bend: int, tried: int
) -> None:
    """Put the next way to make a bend last in a set into the heap, at the least it can cost.

    row, after: the set with the bend and the kind of step that follows. to: the set without it.
    tried: the kind put there before this one, -1 for none; the ways come in order of their cost.
    """
    states, ways = table.states, 2 * rules.pairs
    is_last = table.keys.keys[row] == (1 << rules.bends) - 1
    next_kind = len(rules.transition) if is_last else after
    place = 0
    while tried >= 0 and place < ways:
        place += 1
        if rules.ways[bend, next_kind, place - 1] == tried:
            break
    rest = table.keys.keys[to]
    best = states.best[row, after]
    follows = best + still_to_pay(rules, rest, kind_of(rules, bend * ways))
    for i in range(place, ways):
        kind, cost = rules.ways[bend, next_kind, i], rules.way_cost[bend, next_kind, i]
        if cost >= NO_WAY or follows + cost >= bound:
            return
        if not _is_vain(rules, states, to, kind, best + cost):
            _put(rules, table, rest, follows + cost, _item(to, kind, bend, after, GUESSED))
            return


@kernel
def _is_vain(rules: Rules, states: States, row: int, kind: int, cost: int) -> bool:
    """Whether a step of that kind after that set, at that cost or more, leads to nothing better.

    A greedy search wants each set once only, however it is reached.
    """
    worth = MOST - 1 if rules.greedy else cost
    return bool(
        states.best[row, kind] <= worth or _is_beaten(rules, states, row, kind, worth, False)
    )


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
    return bool(
        table.keys.used[0] + rules.bends > len(table.keys.keys)
        or table.heap.used[0] + rules.bends + 2 > len(table.heap.rows)
    )
