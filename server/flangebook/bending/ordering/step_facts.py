"""Whether one bend can be made next, and what that step costs by itself.

A step is made of two legs that hardly know of each other: what a leg meets depends only on
its own finished bends. There are 2 * 2**n legs and n * 2**n steps, so what is known of a leg
is remembered. Only the part against itself, leg against leg, needs both.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from flangebook.bending.clearance.legs import approach_code, leg_code
from flangebook.bending.clearance.motion import motion_of
from flangebook.bending.clearance.problem import (
    AGAINST_LIMIT,
    LEFT,
    RIGHT,
    SLIDES,
    TRAPPED,
    WRONG_TOOL,
    Floats,
    Leg,
    Problem,
    leg_count,
    leg_fold,
    leg_set,
)
from flangebook.bending.clearance.sheet_on_sheet import crossing_pieces, legs_code
from flangebook.bending.clearance.sweeps import (
    UNKNOWN,
    Sweeps,
    empty_sweeps,
    known_code,
    new_sweeps,
    note_code,
)
from flangebook.bending.compiled import inlined_kernel, kernel
from flangebook.bending.ordering.gauge_rule import gauge_contacts
from flangebook.bending.ordering.state_table import Keys, more_keys, new_keys, row_of

_KNOWN = 1 << 30
_CONTACT = 16
"""From this bit on ``Legs.gauge`` holds the contact: ``between * KINDS + kind``."""
KINDS = 4
NOWHERE = KINDS - 1
"""The contact of a step without one; what a finger can stand against has lower numbers."""
_ALL = (1 << 14) - 1
_SHIFT = 41
_OUTWARDS = (1 << _SHIFT) - 1
_MEETS = 1 << 16


class Legs(NamedTuple):
    """What is known of legs; a row for each bend, side and set of finished bends outwards.

    clear: result bits of the leg in front and at the back, by pair, (rows, pairs, 2); gauge:
    result bits of the gauge at it and its contact, by pair, (rows, pairs). Both
    with _KNOWN once looked at. crosses: may come over the bend's plane, by pair, (rows, pairs);
    0 is not known, 1 no, 2 yes. reach: how far it stands out from the bend line [mm], (rows,).
    """

    keys: Keys
    clear: NDArray[np.int32]
    gauge: NDArray[np.int32]
    crosses: NDArray[np.int8]
    reach: Floats


class Memo(NamedTuple):
    """What is known of one problem's legs and sweeps, whatever the limits and the search.

    meets: of both legs together, by bends made, bend and pair; a later one takes the place of
    an earlier one.
    """

    legs: Legs
    sweeps: Sweeps
    meets: Sweeps


class Bending(NamedTuple):
    """A bend with its end at the gauge, in a pair of tools, and the rows of the two legs that it
    has then (``leg_row``)."""

    bend: int
    end: int
    pair: int
    left: int
    right: int


def new_memo(problem: Problem, room: int) -> Memo:
    """Nothing known of this problem, room for that many legs (a power of two)."""
    meets = empty_sweeps(_MEETS)
    return Memo(new_legs(room, len(problem.change)), new_sweeps(problem), meets)


def new_legs(room: int, pairs: int) -> Legs:
    """No legs known, room for that many (a power of two)."""
    return Legs(
        new_keys(room),
        np.zeros((room, pairs, 2), np.int32),
        np.zeros((room, pairs), np.int32),
        np.zeros((room, pairs), np.int8),
        np.full(room, -1.0),
    )


def more_legs(legs: Legs) -> Legs:
    """The same legs with twice the room."""
    rooms = len(legs.reach)
    larger = new_legs(2 * rooms, legs.gauge.shape[1])
    larger.clear[:rooms], larger.gauge[:rooms] = legs.clear, legs.gauge
    larger.crosses[:rooms], larger.reach[:rooms] = legs.crosses, legs.reach
    return larger._replace(keys=more_keys(legs.keys))


@kernel
def leg_row(problem: Problem, legs: Legs, made: int, bend: int, side: int) -> int:
    """The row of the leg on that side of a bend, with the bends of ``made`` finished."""
    outwards = leg_set(made, bend, side, len(problem.at))
    return row_of(legs.keys, ((bend * 2 + side) << _SHIFT) | outwards)


@kernel
def reach_mm(problem: Problem, legs: Legs, row: int, bend: int, side: int) -> float:
    """How far a leg stands out from the bend line, sheet flat on the die [mm].

    Along the middle line, a finished bend an arc of its radius and allowance about its line;
    an arc that goes past upright is furthest out where it stands upright.

    Source: plane geometry.

    >>> from flangebook.bending.samples import smallest_problem
    >>> problem = smallest_problem()
    >>> reach_mm(problem, new_legs(2, 1), 0, 0, 1)  # unbent, to the edge 80 away
    80.0
    """
    if legs.reach[row] >= 0.0:
        return float(legs.reach[row])
    outwards = legs.keys.keys[row] & _OUTWARDS
    direction, x, most, done = 0.0, 0.0, 0.0, 0.0
    for i in range(leg_count(bend, side, len(problem.at))):
        if not outwards >> i & 1:
            continue
        fold = leg_fold(bend, side, i)
        half = 0.5 * problem.allowance[fold]
        line = abs(problem.at[fold] - problem.at[bend])
        x += (line - half - done) * np.cos(direction)
        most = max(most, x)
        middle = problem.radius[fold] + 0.5 * problem.thickness
        half_angle = 0.5 * problem.angle[fold]
        if np.cos(direction) > 0.0 > np.cos(direction + 2.0 * half_angle):
            most = max(most, x + middle * (1.0 - np.sign(half_angle) * np.sin(direction)))
        direction += half_angle
        x += 2.0 * middle * abs(np.sin(half_angle)) * np.cos(direction)
        most = max(most, x)
        direction += half_angle
        done = line + half
    edge = problem.at[bend] if side == LEFT else problem.length - problem.at[bend]
    x += (edge - done) * np.cos(direction)
    legs.reach[row] = max(most, x)
    return float(legs.reach[row])


@kernel
def clear_code(
    problem: Problem, memo: Memo, row: int, bend: int, side: int, at_back: int, pair: int
) -> int:
    """Result bits of one leg through the motion, SLIDES where the way is not straight."""
    known = memo.legs.clear[row, pair, at_back]
    if known & _KNOWN:
        return int(known & _ALL)
    outwards = memo.legs.keys.keys[row] & _OUTWARDS
    back, leg = at_back == 1, Leg(bend, side, outwards)
    code = leg_code(problem, leg, back, pair, memo.sweeps)
    if code == 0 and approach_code(problem, leg, back, pair, memo.sweeps):
        code = SLIDES if problem.can_slide else TRAPPED
    memo.legs.clear[row, pair, at_back] = _KNOWN | code
    return int(code)


@kernel
def gauge_facts(problem: Problem, memo: Memo, row: int, bend: int, end: int, pair: int) -> int:
    """Result bits of the gauge at that end, and from bit _CONTACT on what it stands against;
    NOWHERE when it cannot stand."""
    known = memo.legs.gauge[row, pair]
    if known & _KNOWN:
        return int(known & ~_KNOWN)
    outwards = memo.legs.keys.keys[row] & _OUTWARDS
    contacts = np.empty((len(problem.change), 3), np.int64)
    gauge_contacts(problem, bend, end, outwards, contacts)
    for other in range(len(contacts)):
        if problem.allowed[bend, other]:
            code, kind, between = contacts[other, 0], contacts[other, 1], contacts[other, 2]
            facts = code | (NOWHERE if code else between * KINDS + kind) << _CONTACT
            memo.legs.gauge[row, other] = _KNOWN | facts
    return int(memo.legs.gauge[row, pair] & ~_KNOWN)


@kernel
def may_cross(problem: Problem, memo: Memo, row: int, bend: int, side: int, pair: int) -> bool:
    """Whether any of the leg may come over the bend's plane, where the other leg is."""
    known = memo.legs.crosses[row, pair]
    if known == 0:
        outwards = memo.legs.keys.keys[row] & _OUTWARDS
        motion = motion_of(problem, bend, pair)
        crosses = crossing_pieces(problem, motion, Leg(bend, side, outwards), pair, memo.sweeps)
        known = 2 if crosses else 1
        memo.legs.crosses[row, pair] = known
    return bool(known == 2)


@inlined_kernel
def step_facts(
    problem: Problem, memo: Memo, made: int, step: Bending, full: bool
) -> tuple[int, int]:
    """Result bits of a step, and its contact: finished bends between it and the line times KINDS,
    plus what the finger stands against; NOWHERE where it is not known that it stands at all.

    made: the bends finished before it. full: look at everything, even when the first refusal
    decides, so that every tool that is run into is named.
    """
    bend, end, pair, left, right = step
    if not problem.allowed[bend, pair]:
        return WRONG_TOOL, NOWHERE
    code = AGAINST_LIMIT if problem.before[bend] & ~made else 0
    if code and not full:
        return code, NOWHERE
    back, front = (left, right) if end == LEFT else (right, left)
    gauge = gauge_facts(problem, memo, back, bend, end, pair)
    code |= gauge & _ALL
    if code and not full:
        return code, NOWHERE
    code |= clear_code(problem, memo, back, bend, end, 1, pair)
    if code & ~SLIDES and not full:
        return code, NOWHERE
    code |= clear_code(problem, memo, front, bend, 1 - end, 0, pair)
    if code & ~SLIDES and not full:
        return code, NOWHERE
    crosses = may_cross(problem, memo, left, bend, LEFT, pair)
    if crosses or may_cross(problem, memo, right, bend, RIGHT, pair):
        code |= meet_code(problem, memo, made, bend, pair)
    return code, gauge >> _CONTACT


@kernel
def meet_code(problem: Problem, memo: Memo, made: int, bend: int, pair: int) -> int:
    """Result bits of one leg against the other."""
    pairs = len(problem.change)
    key = (made * len(problem.at) + bend) * pairs + pair + 1
    code = known_code(memo.meets, key)
    if code == UNKNOWN:
        code = legs_code(problem, bend, pair, made, memo.sweeps)
        note_code(memo.meets, key, code)
    return int(code)
