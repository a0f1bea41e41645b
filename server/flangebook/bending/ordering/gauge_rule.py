"""Where the back gauge can stand for a bend: the rule itself, for the search and for the plan.

Whatever faces the back, nearly upright, can stop the finger: the edge, a finished flange, the
round of a bend past square. It counts where the finger can stand at it (``finger_place``): at a
height where nothing else of the leg reaches further back, clear of die, bed and punch, within
the gauge's travel. The best place has the fewest finished bends between, an edge before a
flange, the nearer before the farther; the round of a bend comes last.

Only the leg at the gauge is looked at: for the other one to reach past it, it would have to go
through the tools. ``bending.gauging`` puts in words what is found here.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import Edge
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    PieceStart,
    fold_angle,
    next_piece,
    piece_end,
    piece_outline,
)
from flangebook.bending.clearance.problem import (
    NO_GAUGE,
    Floats,
    Ints,
    Leg,
    Problem,
    is_bent,
    leg_count,
    leg_fold,
)
from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.finger_place import CAN_STAND, OF_PIECE, TIE_MM, note_piece, stand

MOST_LEAN = math.radians(10.0)
"""A face that leans more is none."""
ROUND = math.radians(5.0)
"""How much of a bend's round there must be on either side of where it faces straight back."""

EDGE, FLANGE, ROUNDED = range(3)
"""What the finger stands against."""
WHY, KIND, X, R, BETWEEN, BOTTOM, X0, Y0, X1, Y1 = range(10)
COLUMNS = 10
"""Of a place: CAN_STAND or why not, what it stands against, X, R, finished bends between contact
and line, the finger's lower edge, the face from its end nearer the bend to the other [mm]."""
_UNTRIED = -1


@kernel
def gauge_place(
    problem: Problem, bend: int, side: int, pair: int, made: int
) -> tuple[int, int, float, float, int, float]:
    """The best place for the finger at that end: result bits, what it stands against, X, R,
    finished bends between contact and line, lower edge of the finger [mm].

    side: the end at the gauge. made: the finished folds of that leg, bit i for the i-th
    outwards. The bits are NO_GAUGE when there is no place; the rest means nothing then.

    Source: common practice, no source.

    >>> from flangebook.bending.samples import smallest_problem
    >>> why, against, x, r, between, bottom = gauge_place(smallest_problem(), 0, 1, 0, 0)
    >>> round(x, 2), round(r, 2), between
    (80.0, 1.0, 0)
    """
    count, leg = leg_count(bend, side, len(problem.at)), Leg(bend, side, made)
    places = np.empty((2 * count + 2, COLUMNS))
    sheet, pieces = _room_for_sheet(count, made)
    faces = _faces(problem, leg, places)
    _sheet(problem, leg, sheet, pieces)
    return _best_place(problem, pair, sheet, pieces, places, faces)


@kernel
def gauge_contacts(problem: Problem, bend: int, side: int, made: int, contacts: Ints) -> None:
    """As ``gauge_place`` for all pairs that can make the bend, the sheet laid out once.

    contacts: result bits, what the finger stands against, finished bends between, (pairs, 3).
    """
    count, leg = leg_count(bend, side, len(problem.at)), Leg(bend, side, made)
    places = np.empty((2 * count + 2, COLUMNS))
    sheet, pieces = _room_for_sheet(count, made)
    faces = _faces(problem, leg, places)
    _sheet(problem, leg, sheet, pieces)
    for pair in range(len(contacts)):
        if problem.allowed[bend, pair]:
            for i in range(faces):
                places[i, WHY] = _UNTRIED
            code, kind, _, _, between, _ = _best_place(problem, pair, sheet, pieces, places, faces)
            contacts[pair, 0], contacts[pair, 1], contacts[pair, 2] = code, kind, between


@kernel
def _best_place(
    problem: Problem, pair: int, sheet: Floats, pieces: Floats, places: Floats, faces: int
) -> tuple[int, int, float, float, int, float]:
    """The best of these faces that the finger can stand at, tried in the order of the rule."""
    for _ in range(faces):
        best = -1
        for i in range(faces):
            if places[i, WHY] == _UNTRIED and (best < 0 or is_better(places[i], places[best])):
                best = i
        _try(problem, pair, sheet, pieces, places[best])
        if places[best, WHY] == CAN_STAND:
            kind, between = int(places[best, KIND]), int(places[best, BETWEEN])
            return 0, kind, places[best, X], places[best, R], between, places[best, BOTTOM]
    return NO_GAUGE, 0, 0.0, 0.0, 0, 0.0


@kernel
def is_better(one: Floats, other: Floats) -> bool:
    """Whether a place is better than another, if the finger can stand at both.

    No two of a leg are of one kind and have as many bends between.
    """
    if (one[KIND] == ROUNDED) != (other[KIND] == ROUNDED):
        return bool(other[KIND] == ROUNDED)
    if one[BETWEEN] != other[BETWEEN]:
        return bool(one[BETWEEN] < other[BETWEEN])
    return bool(one[KIND] == EDGE)


@kernel
def gauge_places(
    problem: Problem, bend: int, side: int, pair: int, made: int, places: Floats
) -> int:
    """Every face at that end outwards, reachable or not, into ``places``; how many.

    made: as for ``gauge_place``; all bits set (-1) where every fold of the leg is finished.
    """
    leg = Leg(bend, side, made)
    sheet, pieces = _room_for_sheet(leg_count(bend, side, len(problem.at)), made)
    faces = _faces(problem, leg, places)
    _sheet(problem, leg, sheet, pieces)
    for i in range(faces):
        _try(problem, pair, sheet, pieces, places[i])
    return faces


@kernel
def _try(problem: Problem, pair: int, sheet: Floats, pieces: Floats, place: Floats) -> None:
    """Note whether the finger can stand at a face, and where."""
    face = Edge(place[X0], place[Y0], place[X1], place[Y1])
    why, x, r, bottom = stand(problem, pair, sheet, pieces, face)
    place[WHY], place[X], place[R], place[BOTTOM] = why, x, r, bottom


@kernel
def _faces(problem: Problem, leg: Leg, places: Floats) -> int:
    """Every face at that end outwards into ``places``, the finger not tried at any; how many."""
    bend, side, made = leg
    count = leg_count(bend, side, len(problem.at))
    half = 0.5 * problem.thickness
    start, between, found = PieceStart(0, 0.0, half, 0.0), 0, 0
    for k in range(count + 1):
        bent = is_bent(made, k)
        if bent:
            between += 1
            faces, cx, cy = _round(problem, leg, start)
            if faces:
                _note(places[found], ROUNDED, between, cx, cy, cx, cy)
                found += 1
        start = next_piece(problem, leg, start)
        _, x, y, heading = start
        if not bent or abs(math.sin(heading)) < math.cos(MOST_LEAN):
            continue
        length = piece_end(problem, bend, side, k) - piece_end(problem, bend, side, k - 1)
        length = max(length - problem.allowance[leg_fold(bend, side, k - 1)], 0.0)
        x0, y0 = x - length * math.cos(heading), y - length * math.sin(heading)
        x1, y1 = _flat_end(problem, leg, start)
        if abs(y1 - y0) <= TIE_MM:
            continue
        back = half if math.sin(heading) > 0.0 else -half  # its outer face looks to the back
        dx, dy = back * math.sin(heading), -back * math.cos(heading)
        _note(places[found], FLANGE, between, x0 + dx, y0 + dy, x1 + dx, y1 + dy)
        found += 1
    if math.cos(heading) >= math.cos(MOST_LEAN):
        dx, dy = half * math.sin(heading), half * math.cos(heading)
        _note(places[found], EDGE, between, x + dx, y - dy, x - dx, y + dy)
        found += 1
    return found


@kernel
def _note(
    place: Floats, kind: int, between: int, x0: float, y0: float, x1: float, y1: float
) -> None:
    place[WHY], place[KIND], place[BETWEEN] = _UNTRIED, kind, between
    place[X0], place[Y0], place[X1], place[Y1] = x0, y0, x1, y1


@kernel
def _round(problem: Problem, leg: Leg, start: PieceStart) -> tuple[bool, float, float]:
    """Whether the outside of the arc that a piece begins with faces straight back somewhere, and
    that point."""
    bend, side, _ = leg
    k, x, y, heading = start
    fold, angle = leg_fold(bend, side, k - 1), fold_angle(problem, bend, side, k)
    turn = 1.0 if angle > 0.0 else -1.0
    to_back = turn * 0.5 * math.pi - heading
    to_back -= 2.0 * math.pi * round(to_back / (2.0 * math.pi))
    share, margin = to_back / angle, ROUND / abs(angle)
    middle = problem.radius[fold] + 0.5 * problem.thickness
    cx = x - turn * middle * math.sin(heading) + middle + 0.5 * problem.thickness
    cy = y + turn * middle * math.cos(heading)
    return margin < share < 1.0 - margin, cx, cy


@kernel
def _room_for_sheet(count: int, made: int) -> tuple[Floats, Floats]:
    """Room for the edges of a leg of that many folds, and for its pieces."""
    ones = 0
    for k in range(1, count + 1):
        ones += is_bent(made, k)
    return np.empty(((count + 1) * 4 + MOST_SEGMENTS * ones, 4)), np.empty((count + 1, OF_PIECE))


@kernel
def _sheet(problem: Problem, leg: Leg, edges: Floats, pieces: Floats) -> None:
    """The leg as it lies on the die, press frame, into ``edges``, piece by piece."""
    start, used = PieceStart(0, 0.0, 0.5 * problem.thickness, 0.0), 0
    for k in range(len(pieces)):
        count = piece_outline(problem, leg, start, 0.0, edges[used:])
        note_piece(edges, used, used + count, pieces[k])
        used += count
        start = next_piece(problem, leg, start)


@kernel
def _flat_end(problem: Problem, leg: Leg, start: PieceStart) -> tuple[float, float]:
    """Where the flat ends that goes on in this piece, over folds not made yet."""
    for k in range(start.k, leg_count(leg.bend, leg.side, len(problem.at)) + 1):
        if is_bent(leg.made, k):
            break
        start = next_piece(problem, leg, start)
    return start.x, start.y
