"""The steps that can be the last of a set of bends, and what each costs by itself."""

from __future__ import annotations

from typing import NamedTuple

from flangebook.bending.clearance.problem import (
    BANNED,
    LEFT,
    RIGHT,
    SLIDES,
    Ints,
    Problem,
    leg_count,
    leg_fold,
)
from flangebook.bending.compiled import inlined_kernel, kernel
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
    ANSWERED,
    BEND,
    CODE,
    COST,
    END,
    FOUND,
    GUESSED,
    HALF_KNOWN,
    KNOWN,
    MADE,
    NO_ROOM,
    NOT_KNOWN,
    PAIR,
    REFUSED,
    STAGE,
    Rules,
    Table,
    advance,
)
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE
from flangebook.bending.ordering.state_table import Keys, known_row
from flangebook.bending.ordering.step_facts import (
    KINDS,
    Bending,
    Memo,
    leg_row,
    reach_mm,
    step_facts,
)


class Prices(NamedTuple):
    """How a step is priced. variance_step_mm2, most_variance: see ``cost.Scale``.
    hand_distance_mm: how far hands should stay from the die. banned: steps that may not be,
    numbered by ``step_key``. answers: given so far in this search, a row for a step: its number
    plus 1, its code, its cost; a later step takes the place of an earlier one, (rows, 3).

    No kernel takes a number of another module as a constant: what is kept would not notice
    when it changes."""

    variance_step_mm2: float
    most_variance: int
    hand_distance_mm: float
    banned: Keys
    answers: Ints


@kernel
def step_key(bends: int, pairs: int, made: int, bend: int, end: int, pair: int) -> int:
    """A number for a step and what is made before it."""
    return ((made * bends + bend) * 2 + end) * pairs + pair


@kernel
def look(
    problem: Problem, memo: Memo, prices: Prices, rules: Rules, table: Table, bound: int, until: int
) -> int:
    """Look at states until so many have been looked at, answering for steps; why it ended.

    With ``until`` below 0: only answer for the step that is wanted.
    """
    while True:
        why = NOT_KNOWN if until < 0 else advance(rules, table, bound, until)
        if why != NOT_KNOWN:
            return int(why)
        legs = memo.legs.keys
        if legs.used[0] + 2 > len(legs.keys):
            return NO_ROOM
        _answer(problem, memo, prices, rules, table.told)
        if until < 0:
            return FOUND


@inlined_kernel
def _answer(problem: Problem, memo: Memo, prices: Prices, rules: Rules, told: Ints) -> None:
    """Say of the wanted step what it costs: first what takes no looking closely, then all."""
    made, bend, end, pair = told[MADE], told[BEND], told[END], told[PAIR]
    told[ANSWERED] = 1
    key = step_key(len(problem.at), len(problem.change), made, bend, end, pair) + 1
    place = (key ^ (key >> 16)) & (len(prices.answers) - 1)
    if prices.answers[place, 0] == key:
        told[STAGE] = KNOWN
        told[CODE], told[COST] = prices.answers[place, 1], prices.answers[place, 2]
        return
    left = leg_row(problem, memo.legs, made, bend, LEFT)
    right = leg_row(problem, memo.legs, made, bend, RIGHT)
    step = Bending(bend, end, pair, left, right)
    held_close = _is_held_close(problem, memo, prices, step)
    if told[STAGE] == GUESSED and held_close:
        told[STAGE], told[CODE] = HALF_KNOWN, 0
        told[COST] = rules.hint[bend, end] + rules.units[HELD_CLOSE]
        return
    code, contact = step_facts(problem, memo, made, step, rules.soft)
    if prices.banned.used[0] and known_row(prices.banned, key - 1) >= 0:
        code |= BANNED
    told[STAGE] = KNOWN
    told[CODE] = code if rules.soft or not code & ~SLIDES else REFUSED
    told[COST] = price(problem, prices, rules.units, made, step, code, contact)
    if held_close:
        told[COST] += rules.units[HELD_CLOSE]
    prices.answers[place, 0] = key
    prices.answers[place, 1], prices.answers[place, 2] = told[CODE], told[COST]


@kernel
def price(
    problem: Problem, prices: Prices, units: Ints, made: int, step: Bending, code: int, contact: int
) -> int:
    """What a step costs by itself, packed, but for how it is held.

    made: the bends finished before it. code, contact: what ``step_facts`` says of it.
    """
    bend, end = step.bend, step.end
    cost = _missed(problem, made, bend, end, contact) * units[CRITICAL]
    if code & ~SLIDES:
        cost += units[BLOCKED]
    if code & SLIDES:
        cost += units[SLIDE]
    variance = _variance_mm2(problem, made, bend, end, contact // KINDS)
    steps = round(variance / prices.variance_step_mm2)
    cost += min(steps, prices.most_variance) * units[VARIANCE]
    return int(cost + share(problem, bend, end) * units[SHARE])


@kernel
def share(problem: Problem, bend: int, end: int) -> int:
    """How much of the blank is at the gauge beyond half of it, in steps of SHARE_STEP."""
    at_gauge = problem.at[bend] / problem.length
    if end == RIGHT:
        at_gauge = 1.0 - at_gauge
    return int(max(0, round((at_gauge - 0.5) / SHARE_STEP)))


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
def _is_held_close(problem: Problem, memo: Memo, prices: Prices, step: Bending) -> bool:
    """Whether the operator holds the shorter side, and closer to the die than hands should be."""
    bend, end, pair, left, right = step
    to_left = reach_mm(problem, memo.legs, left, bend, LEFT)
    to_right = reach_mm(problem, memo.legs, right, bend, RIGHT)
    back, front = (to_left, to_right) if end == LEFT else (to_right, to_left)
    return bool(front < back and front - problem.die[pair, 2] < prices.hand_distance_mm)


@kernel
def _variance_mm2(problem: Problem, made: int, bend: int, end: int, between: int) -> float:
    """Variance of the gauged dimension: the gauge's own, and each finished bend's between."""
    variance = problem.gauge_variance
    for i in range(leg_count(bend, end, len(problem.at))):
        fold = leg_fold(bend, end, i)
        if between > 0 and made >> fold & 1:
            variance += problem.bend_variance[fold]
            between -= 1
    return float(variance)
