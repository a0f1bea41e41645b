"""Where the gauge finger can stand at one face of the sheet: heights tried, what is in its way.

The finger is an upright edge of a certain height that comes from the back, so at its heights
nothing of the sheet may reach further back than the face meant. The shorter of face and finger
lies fully against the longer: a face taller than the finger is tried from the end nearer the
bend outwards, at a lower one the finger stands in its middle, else as little higher or lower as
will do.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import Edge, edge_at
from flangebook.bending.clearance.problem import Floats, Problem
from flangebook.bending.compiled import kernel

SAME_MM = 0.02
"""A face is met where the sheet reaches no further back than this beyond it."""
TIE_MM = 1e-6
"""Lengths nearer than this are equal, so that a part turned end for end gets the same answer."""
SCAN_MM = 2.0
_MOST_HEIGHTS = 40

FIRST, PAST, LOW, HIGH, BACK = range(5)
OF_PIECE = 5
"""Of a piece of the sheet: its first edge and one past its last, its least and greatest height,
how far back it reaches [mm]."""

CAN_STAND, INSIDE_TOOLS, SHEET_IN_WAY, IN_FRONT, X_RANGE, R_RANGE, TOOL_IN_WAY = range(7)
"""Whether the finger can stand there, and if not, why."""


@kernel
def stand(
    problem: Problem, pair: int, sheet: Floats, pieces: Floats, face: Edge
) -> tuple[int, float, float, float]:
    """CAN_STAND or why not at the height tried first; X, R and the finger's lower edge [mm].

    face: from its end nearer the bend to the other. sheet: the leg's edges as it lies
    on the die. pieces: which of them are of one piece, and where that is (``note_piece``).

    Source: common practice, no source.

    >>> from flangebook.bending.samples import smallest_problem
    >>> sheet, pieces = np.array([[60.0, 0.0, 60.0, 2.0]]), np.empty((1, OF_PIECE))
    >>> note_piece(sheet, 0, 1, pieces[0])
    >>> face = Edge(60.0, 0.0, 60.0, 2.0)
    >>> why, x, r, _ = stand(smallest_problem(), 0, sheet, pieces, face)
    >>> why == CAN_STAND, x, r
    (True, 60.0, 1.0)
    """
    low, high = min(face.ay, face.by), max(face.ay, face.by)
    height = problem.finger[4]
    lowest = _floor(problem, pair, _reach(face, low, high))
    first_why, first_x, first_r, first_bottom, before = -1, 0.0, 0.0, 0.0, -np.inf
    for i in range(_heights(low, high, height)):
        bottom = max(_bottom(i, face, height), lowest)
        if i > 0 and bottom == before:
            continue
        before = bottom
        why, x, r = _fits(problem, pair, sheet, pieces, face, bottom)
        if why == CAN_STAND:
            return why, x, r, bottom
        if first_why < 0:
            first_why, first_x, first_r, first_bottom = why, x, r, bottom
    return first_why, first_x, first_r, first_bottom


@kernel
def _heights(low: float, high: float, height: float) -> int:
    """How many heights are tried."""
    room = high - low - height
    if room > TIE_MM:
        return int(min(math.ceil(room / SCAN_MM), _MOST_HEIGHTS)) + 1
    return 2 * int(min(math.ceil(max(-room, 0.0) / (2.0 * SCAN_MM)), _MOST_HEIGHTS // 2)) + 1


@kernel
def _bottom(i: int, face: Edge, height: float) -> float:
    """The finger's lower edge at the i-th height tried."""
    _, y0, _, y1 = face
    low, high = min(y0, y1), max(y0, y1)
    room, count = high - low - height, _heights(low, high, height)
    if room > TIE_MM:
        share = i / (count - 1)
        return low + room * (share if y1 > y0 else 1.0 - share)
    if count == 1:
        return low + 0.5 * room
    step = (i + 1) // 2 / (count // 2)
    return low + 0.5 * room * (1.0 + (step if i % 2 == 0 else -step))


@kernel
def _fits(
    problem: Problem, pair: int, sheet: Floats, pieces: Floats, face: Edge, bottom: float
) -> tuple[int, float, float]:
    """Whether the finger can stand at a face with its lower edge at this height; X and R."""
    x0, y0, x1, y1 = face
    finger, low_face, high_face = problem.finger, min(y0, y1), max(y0, y1)
    top = bottom + finger[4]
    low, high = max(bottom, low_face), min(top, high_face)
    if low > high + TIE_MM:
        return INSIDE_TOOLS, _reach(face, low_face, high_face), 0.5 * (y0 + y1)
    x = _reach(face, low, high)
    met, r = _furthest_of_pieces(sheet, pieces, bottom, top)
    if bottom < _floor(problem, pair, met) - TIE_MM:
        return INSIDE_TOOLS, met, r
    if abs(met - x) > SAME_MM:
        return SHEET_IN_WAY, met, r
    r = 0.5 * (low + high)  # the finger lies flat on an upright face
    if high_face - low_face > TIE_MM and abs(x0 - x1) >= TIE_MM:
        r = low if (x0 > x1) == (y0 < y1) else high
    why = CAN_STAND
    if x <= TIE_MM:
        why = IN_FRONT
    elif not finger[0] - TIE_MM <= x <= finger[1] + TIE_MM:
        why = X_RANGE
    elif not finger[2] - TIE_MM <= r <= finger[3] + TIE_MM:
        why = R_RANGE
    else:
        reached, _ = furthest(problem.edges, problem.upper[pair, 0], problem.upper[pair, 1],
                              problem.thickness, bottom, top)  # fmt: skip
        if reached > x + TIE_MM:
            why = TOOL_IN_WAY
    return why, x, r


@kernel
def _floor(problem: Problem, pair: int, x: float) -> float:
    """How low the finger may go at this X: above the die, above the bed, or anywhere."""
    if x < problem.die[pair, 2] - TIE_MM:
        return 0.0
    return float(-problem.die_height[pair] if x < problem.finger[6] - TIE_MM else -np.inf)


@kernel
def _reach(face: Edge, low: float, high: float) -> float:
    """The largest x of a face at heights from low to high."""
    x0, y0, x1, y1 = face
    if y0 == y1:
        return max(x0, x1)
    slope = (x1 - x0) / (y1 - y0)
    bottom, top = max(low, min(y0, y1)), min(high, max(y0, y1))
    return max(x0 + slope * (bottom - y0), x0 + slope * (top - y0))


@kernel
def furthest(
    edges: Floats, first: int, past: int, lift: float, low: float, high: float
) -> tuple[float, float]:
    """The largest x of edges, lifted, at heights from low to high, and its lowest height [mm].

    -inf where there is nothing at these heights.

    Source: plane geometry.

    >>> furthest(np.array([[0.0, 0.0, 6.0, 6.0]]), 0, 1, 0.0, 1.0, 4.0)
    (4.0, 4.0)
    """
    most, at = -np.inf, 0.0
    for i in range(first, past):
        most, at = _further(edge_at(edges, i), lift, low, high, most, at)
    return most, at


@kernel
def note_piece(edges: Floats, first: int, past: int, piece: Floats) -> None:
    """Put down which edges a piece has, and where it is."""
    low, high, back = np.inf, -np.inf, -np.inf
    for i in range(first, past):
        low, high = min(low, edges[i, 1], edges[i, 3]), max(high, edges[i, 1], edges[i, 3])
        back = max(back, edges[i, 0], edges[i, 2])
    piece[FIRST], piece[PAST], piece[LOW], piece[HIGH], piece[BACK] = first, past, low, high, back


@kernel
def _furthest_of_pieces(
    edges: Floats, pieces: Floats, low: float, high: float
) -> tuple[float, float]:
    """As ``furthest`` of the whole sheet, passing over pieces that have nothing to say."""
    most, at = -np.inf, 0.0
    for k in range(len(pieces)):
        if pieces[k, HIGH] < low or pieces[k, LOW] > high or pieces[k, BACK] < most - TIE_MM:
            continue
        for i in range(int(pieces[k, FIRST]), int(pieces[k, PAST])):
            most, at = _further(edge_at(edges, i), 0.0, low, high, most, at)
    return most, at


@kernel
def _further(
    edge: Edge, lift: float, low: float, high: float, most: float, at: float
) -> tuple[float, float]:
    """As ``furthest``, with what was furthest of other edges before."""
    ax, ay, bx, by = edge.ax, edge.ay + lift, edge.bx, edge.by + lift
    if max(ay, by) < low or min(ay, by) > high or max(ax, bx) < most - TIE_MM:
        return most, at
    for end in range(2):
        x, y = (ax, ay) if end == 0 else (bx, by)
        if ay != by:
            y = min(max(y, low), high)
            x = ax + (bx - ax) * (y - ay) / (by - ay)
        if x > most + TIE_MM:
            most, at = x, y
        elif x > most - TIE_MM:
            at = min(at, y)
    return most, at
