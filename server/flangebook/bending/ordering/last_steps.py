"""The steps that can be the last of a set of bends, and what each costs by itself."""

from __future__ import annotations

from typing import NamedTuple

from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.cost import (
    BLOCKED,
    CRITICAL,
    HELD_CLOSE,
    SHARE,
    SHARE_STEP,
    SLIDE,
    VARIANCE,
)
from flangebook.bending.ordering.frontier import (
    NO_MOVES,
    NO_ROOM,
    WANTED,
    WANTED_KIND,
    Rules,
    Table,
    advance,
    is_needless,
    kind_of,
)
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE
from flangebook.bending.ordering.problem import (
    BANNED,
    LEFT,
    RIGHT,
    SLIDES,
    Ints,
    Problem,
    wing_count,
    wing_fold,
)
from flangebook.bending.ordering.state_table import Keys, known_row
from flangebook.bending.ordering.step_facts import KINDS, Memo, reach_mm, step_facts, wing_row


class Prices(NamedTuple):
    """How a step is priced. variance_step_mm2, most_variance: see ``cost.Scale``.
    hand_distance_mm: how far hands should stay from the die. banned: steps that may not be,
    numbered by ``step_key``. soft: steps that cannot be made are allowed. wishes: some turns or
    changes are forbidden, so that it matters how a bend is made even where only whether counts.

    No kernel takes a number of another module as a constant: what is kept would not notice
    when it changes."""

    variance_step_mm2: float
    most_variance: int
    hand_distance_mm: float
    banned: Keys
    soft: bool
    wishes: bool


@kernel
def step_key(bends: int, pairs: int, made: int, bend: int, end: int, pair: int) -> int:
    """A number for a step and what is made before it."""
    return ((made * bends + bend) * 2 + end) * pairs + pair


@kernel
def look(
    problem: Problem, memo: Memo, prices: Prices, rules: Rules, table: Table, bound: int, until: int
) -> int:
    """Look at states until so many have been looked at, working out steps; why it ended."""
    while True:
        why = advance(rules, table, bound, until)
        if why != NO_MOVES:
            return int(why)
        wings = memo.wings.keys
        if wings.used[0] + 2 * rules.bends > len(wings.keys):
            return NO_ROOM
        _work_out(problem, memo, prices, rules, table)


@kernel
def _work_out(problem: Problem, memo: Memo, prices: Prices, rules: Rules, table: Table) -> None:
    """Put the steps that can be the last of the wanted set into the table."""
    row, kind = table.told[WANTED], table.told[WANTED_KIND]
    made = table.keys.keys[row]
    skim = rules.greedy and not rules.soft
    table.states.moves_from[row] = table.moves.used[0]
    for bend in range(rules.bends):
        if not made >> bend & 1:
            continue
        before = made ^ (1 << bend)
        left = wing_row(problem, memo.wings, before, bend, LEFT)
        right = wing_row(problem, memo.wings, before, bend, RIGHT)
        reached = known_row(table.keys, before) if skim else -1
        # The step's end and tools as they are after it come first: the least handling.
        for i in range(2 * rules.pairs):
            way = (kind + i) % (2 * rules.pairs)
            end, pair = way // rules.pairs, way % rules.pairs
            step = bend * 2 * rules.pairs + way
            if reached >= 0 and is_needless(rules, table.states, reached, kind_of(rules, step)):
                continue
            code, contact = step_facts(
                problem, memo, before, left, right, bend, end, pair, prices.soft
            )
            if _is_banned(problem, prices, before, bend, end, pair):
                code |= BANNED
            if code & ~SLIDES and not prices.soft:
                continue
            at = table.moves.used[0]
            table.moves.step[at], table.moves.code[at] = step, code
            table.moves.cost[at] = price(problem, memo, prices, rules.units, before, left, right,
                                         bend, end, pair, code, contact)  # fmt: skip
            table.moves.used[0] = at + 1
            if skim and not prices.wishes:
                break  # any other way to make this bend leads to the same set
    table.states.moves_to[row] = table.moves.used[0]


@kernel
def _is_banned(problem: Problem, prices: Prices, made: int, bend: int, end: int, pair: int) -> bool:
    """Whether that step is among the banned ones."""
    if prices.banned.used[0] == 0:
        return False
    key = step_key(len(problem.at), len(problem.change), made, bend, end, pair)
    return bool(known_row(prices.banned, key) >= 0)


@kernel
def price(
    problem: Problem, memo: Memo, prices: Prices, units: Ints,
    made: int, left: int, right: int, bend: int, end: int, pair: int, code: int, contact: int,
) -> int:  # fmt: skip
    """What a step costs by itself, packed.

    made: the bends finished before it. left, right: rows of its wings. code, contact: what
    ``step_facts`` says of it.
    """
    cost = _missed(problem, made, bend, end, contact) * units[CRITICAL]
    if code & ~SLIDES:
        cost += units[BLOCKED]
    if code & SLIDES:
        cost += units[SLIDE]
    if _is_held_close(problem, memo, prices, left, right, bend, end, pair):
        cost += units[HELD_CLOSE]
    variance = _variance_mm2(problem, made, bend, end, contact // KINDS)
    steps = round(variance / prices.variance_step_mm2)
    cost += min(steps, prices.most_variance) * units[VARIANCE]
    at_gauge = problem.at[bend] / problem.length
    if end == RIGHT:
        at_gauge = 1.0 - at_gauge
    cost += max(0, round((at_gauge - 0.5) / SHARE_STEP)) * units[SHARE]
    return int(cost)


@kernel
def _missed(problem: Problem, made: int, bend: int, end: int, contact: int) -> int:
    """How many critical flats beside the bend get their size in this step, but not directly.

    A flat gets its size from the later of its two bends. It is gauged directly when the finger
    stands at its other end: at the sheet's edge, or at the finished flange next to it.
    """
    direct = contact in (EDGE, KINDS + FLANGE)
    missed = 0
    for side in range(2):
        neighbour = bend - 1 if side == LEFT else bend + 1
        is_end_flat = neighbour < 0 or neighbour >= len(problem.at)
        if not problem.critical[bend + side] or not (is_end_flat or made >> neighbour & 1):
            continue
        if side != end or not direct:
            missed += 1
    return missed


@kernel
def _is_held_close(
    problem: Problem,
    memo: Memo,
    prices: Prices,
    left: int,
    right: int,
    bend: int,
    end: int,
    pair: int,
) -> bool:
    """Whether the operator holds the shorter side, and closer to the die than hands should be."""
    to_left = reach_mm(problem, memo.wings, left, bend, LEFT)
    to_right = reach_mm(problem, memo.wings, right, bend, RIGHT)
    back, front = (to_left, to_right) if end == LEFT else (to_right, to_left)
    return bool(front < back and front - problem.die[pair, 2] < prices.hand_distance_mm)


@kernel
def _variance_mm2(problem: Problem, made: int, bend: int, end: int, between: int) -> float:
    """Variance of the gauged dimension: the gauge's own, and each finished bend's between."""
    variance = problem.gauge_variance
    for i in range(wing_count(bend, end, len(problem.at))):
        fold = wing_fold(bend, end, i)
        if between > 0 and made >> fold & 1:
            variance += problem.bend_variance[fold]
            between -= 1
    return float(variance)
