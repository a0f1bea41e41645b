"""Where the back gauge can stand for a bend: the rule itself, for the search and for the plan.

Whatever faces the back, nearly upright, can stop the finger: the edge, a finished flange, the
round of a bend past square. It counts where the finger can stand at it (``finger_place``): at a
height where nothing else of the wing reaches further back, clear of die, bed and punch, within
the gauge's travel. The best place has the fewest finished bends between, an edge before a
flange, the nearer before the farther; the round of a bend comes last.

Only the wing at the gauge is looked at: for the other one to reach past it, it would have to go
through the tools. ``bending.gauging`` puts in words what is found here.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    fold_angle,
    piece_end,
    piece_outline,
    pose_after,
)
from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.finger_place import CAN_STAND, TIE_MM, stand
from flangebook.bending.ordering.problem import (
    NO_GAUGE,
    Floats,
    Problem,
    is_bent,
    wing_count,
    wing_fold,
)

MOST_LEAN = math.radians(10.0)
"""A face that leans more is none."""
ROUND = math.radians(5.0)
"""How much of a bend's round there must be on either side of where it faces straight back."""

EDGE, FLANGE, ROUNDED = range(3)
"""What the finger stands against."""
WHY, KIND, X, R, BETWEEN, BOTTOM = range(6)
COLUMNS = 6
"""Of a place: CAN_STAND or why not, what it stands against, X, R, finished bends between contact
and line, the finger's lower edge [mm]."""


@kernel
def gauge_place(
    problem: Problem, bend: int, side: int, pair: int, made: int
) -> tuple[int, int, float, float, int, float]:
    """The best place for the finger at that end: result bits, what it stands against, X, R,
    finished bends between contact and line, lower edge of the finger [mm].

    side: the end at the gauge. made: the finished folds of that wing, bit i for the i-th
    outwards. The bits are NO_GAUGE when there is no place; the rest means nothing then.
    """
    places = np.empty((2 * wing_count(bend, side, len(problem.at)) + 2, COLUMNS))
    best = -1
    for i in range(gauge_places(problem, bend, side, pair, made, places)):
        if places[i, WHY] == CAN_STAND and (best < 0 or is_better(places[i], places[best])):
            best = i
    if best < 0:
        return NO_GAUGE, 0, 0.0, 0.0, 0, 0.0
    kind, between = int(places[best, KIND]), int(places[best, BETWEEN])
    return 0, kind, places[best, X], places[best, R], between, places[best, BOTTOM]


@kernel
def is_better(one: Floats, other: Floats) -> bool:
    """Whether a place is better than another; False where they are equal."""
    if (one[KIND] == ROUNDED) != (other[KIND] == ROUNDED):
        return bool(other[KIND] == ROUNDED)
    if one[BETWEEN] != other[BETWEEN]:
        return bool(one[BETWEEN] < other[BETWEEN])
    if one[KIND] != other[KIND]:
        return bool(one[KIND] == EDGE)
    return bool(one[X] < other[X] - TIE_MM)


@kernel
def gauge_places(
    problem: Problem, bend: int, side: int, pair: int, made: int, places: Floats
) -> int:
    """Every face at that end outwards, reachable or not, into ``places``; how many.

    made: as for ``gauge_place``; all bits set (-1) where every fold of the wing is finished.
    """
    count = wing_count(bend, side, len(problem.at))
    ones = 0
    for k in range(1, count + 1):
        ones += is_bent(made, k)
    sheet = np.empty(((count + 1) * 4 + MOST_SEGMENTS * ones, 4))
    edges = _sheet(problem, bend, side, made, sheet)
    half = 0.5 * problem.thickness
    x, y, heading, between, found = 0.0, half, 0.0, 0, 0
    for k in range(count + 1):
        bent = is_bent(made, k)
        if bent:
            between += 1
            faces, cx, cy = _round(problem, bend, side, k, x, y, heading)
            if faces:
                why, fx, fr, bottom = stand(problem, pair, sheet, edges, cx, cy, cx, cy)
                _note(places[found], why, ROUNDED, fx, fr, between, bottom)
                found += 1
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
        if not bent or abs(math.sin(heading)) < math.cos(MOST_LEAN):
            continue
        length = piece_end(problem, bend, side, k) - piece_end(problem, bend, side, k - 1)
        length = max(length - problem.allowance[wing_fold(bend, side, k - 1)], 0.0)
        x0, y0 = x - length * math.cos(heading), y - length * math.sin(heading)
        x1, y1 = _flat_end(problem, bend, side, k, count, made, x, y, heading)
        if abs(y1 - y0) <= TIE_MM:
            continue
        back = half if math.sin(heading) > 0.0 else -half  # its outer face looks to the back
        dx, dy = back * math.sin(heading), -back * math.cos(heading)
        why, fx, fr, bottom = stand(problem, pair, sheet, edges, x0 + dx, y0 + dy, x1 + dx, y1 + dy)
        _note(places[found], why, FLANGE, fx, fr, between, bottom)
        found += 1
    if math.cos(heading) >= math.cos(MOST_LEAN):
        dx, dy = half * math.sin(heading), half * math.cos(heading)
        why, fx, fr, bottom = stand(problem, pair, sheet, edges, x + dx, y - dy, x - dx, y + dy)
        _note(places[found], why, EDGE, fx, fr, between, bottom)
        found += 1
    return found


@kernel
def _note(
    place: Floats, why: int, kind: int, x: float, r: float, between: int, bottom: float
) -> None:
    place[WHY], place[KIND], place[X], place[R] = why, kind, x, r
    place[BETWEEN], place[BOTTOM] = between, bottom


@kernel
def _round(
    problem: Problem, bend: int, side: int, k: int, x: float, y: float, heading: float
) -> tuple[bool, float, float]:
    """Whether the outside of fold k's arc faces straight back somewhere, and that point."""
    fold, angle = wing_fold(bend, side, k - 1), fold_angle(problem, bend, side, k)
    turn = 1.0 if angle > 0.0 else -1.0
    to_back = turn * 0.5 * math.pi - heading
    to_back -= 2.0 * math.pi * round(to_back / (2.0 * math.pi))
    share, margin = to_back / angle, ROUND / abs(angle)
    middle = problem.radius[fold] + 0.5 * problem.thickness
    cx = x - turn * middle * math.sin(heading) + middle + 0.5 * problem.thickness
    cy = y + turn * middle * math.cos(heading)
    return margin < share < 1.0 - margin, cx, cy


@kernel
def _sheet(problem: Problem, bend: int, side: int, made: int, out: Floats) -> int:
    """The wing's edges as it lies on the die, press frame, into ``out``; how many."""
    x, y, heading, used = 0.0, 0.5 * problem.thickness, 0.0, 0
    for k in range(wing_count(bend, side, len(problem.at)) + 1):
        bent = is_bent(made, k)
        used += piece_outline(problem, bend, side, k, bent, x, y, heading, 0.0, out[used:])
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
    return used


@kernel
def _flat_end(
    problem: Problem, bend: int, side: int, k: int, count: int, made: int,
    x: float, y: float, heading: float,
) -> tuple[float, float]:  # fmt: skip
    """Where the flat that piece k begins ends, over folds not made yet."""
    for j in range(k + 1, count + 1):
        if is_bent(made, j):
            break
        x, y, heading = pose_after(problem, bend, side, j, False, x, y, heading)
    return x, y
