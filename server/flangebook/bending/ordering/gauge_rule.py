"""Where the back gauge can stand for a bend, as the search needs it.

The same rule as ``bending.gauging``, which words it: whatever faces the back, nearly upright,
can stop the finger (the edge, a finished flange, the round of a bend past square), at a height
where nothing else of the sheet reaches further back, clear of die, bed and punch, within the
gauge's travel. The best place has the fewest finished bends between, an edge before a flange.
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
from flangebook.bending.ordering.problem import (
    NO_GAUGE,
    PUNCH,
    Floats,
    Problem,
    wing_count,
    wing_fold,
)

SAME_MM = 0.02
MOST_LEAN = math.radians(10.0)
ROUND = math.radians(5.0)
EDGE, FLANGE, ROUNDED = range(3)
"""What the finger stands against."""


@kernel
def gauge_place(
    problem: Problem, bend: int, side: int, pair: int, made: int
) -> tuple[int, int, float, float, int, float]:
    """The best place for the finger at that end: result bits, what it stands against, X, R,
    finished bends between contact and line, lower edge of the finger [mm].

    side: the end at the gauge. made: the finished folds of that wing, bit i for the i-th
    outwards. The bits are NO_GAUGE when there is no place; the rest means nothing then.
    """
    count = wing_count(bend, side, len(problem.at))
    sheet = np.empty(((count + 1) * 4 + MOST_SEGMENTS * _ones(made), 4))
    edges = _sheet(problem, bend, side, made, sheet)
    half = 0.5 * problem.thickness
    best_kind, best_x, best_r, best_between, best_bottom = -1, 0.0, 0.0, 0, 0.0
    x, y, heading, between = 0.0, half, 0.0, 0
    for k in range(count + 1):
        if k > 0 and made >> (k - 1) & 1:
            between += 1
            fold = wing_fold(bend, side, k - 1)
            angle = fold_angle(problem, bend, side, k)
            turn = 1.0 if angle > 0.0 else -1.0
            middle = problem.radius[fold] + half
            to_back = turn * 0.5 * math.pi - heading
            to_back -= 2.0 * math.pi * round(to_back / (2.0 * math.pi))
            away = to_back / angle
            if ROUND / abs(angle) < away < 1.0 - ROUND / abs(angle):
                cx = x - turn * middle * math.sin(heading) + middle + half
                cy = y + turn * middle * math.cos(heading)
                found, fx, fr, bottom = _place(problem, pair, sheet, edges, cx, cy, cx, cy, False)
                if found and (
                    best_kind < 0
                    or (best_kind == ROUNDED and (between, fx) < (best_between, best_x))
                ):
                    best_kind, best_x, best_r = ROUNDED, fx, fr
                    best_between, best_bottom = between, bottom
        starts = k == 0 or made >> (k - 1) & 1
        x0, y0 = x, y
        x, y, heading = pose_after(problem, bend, side, k, made >> (k - 1) & 1 if k else 0,
                                   x, y, heading)  # fmt: skip
        if not starts:
            continue
        if k > 0:  # the flat begins behind the arc
            length = piece_end(problem, bend, side, k) - piece_end(problem, bend, side, k - 1)
            length = max(length - problem.allowance[wing_fold(bend, side, k - 1)], 0.0)
            x0, y0 = x - length * math.cos(heading), y - length * math.sin(heading)
        if abs(math.sin(heading)) < math.cos(MOST_LEAN):
            continue
        x1, y1 = _flat_end(problem, bend, side, k, count, made, x, y, heading)
        lean = half if math.sin(heading) > 0.0 else -half
        dx, dy = lean * math.sin(heading), -lean * math.cos(heading)
        found, fx, fr, bottom = _place(
            problem, pair, sheet, edges, x0 + dx, y0 + dy, x1 + dx, y1 + dy, True
        )
        if found and (
            best_kind < 0
            or best_kind == ROUNDED
            or (between, fx) < (best_between, best_x)
        ):
            best_kind, best_x, best_r, best_between = FLANGE, fx, fr, between
            best_bottom = bottom
    if math.cos(heading) >= math.cos(MOST_LEAN):
        dx, dy = half * math.sin(heading), half * math.cos(heading)
        found, fx, fr, bottom = _place(
            problem, pair, sheet, edges, x + dx, y - dy, x - dx, y + dy, True
        )
        if found and (best_kind < 0 or best_kind == ROUNDED or between <= best_between):
            best_kind, best_x, best_r, best_between = EDGE, fx, fr, between
            best_bottom = bottom
    code = 0 if best_kind >= 0 else NO_GAUGE
    return code, best_kind, best_x, best_r, best_between, best_bottom


@kernel
def _ones(made: int) -> int:
    found = 0
    while made:
        made &= made - 1
        found += 1
    return found


@kernel
def _sheet(problem: Problem, bend: int, side: int, made: int, out: Floats) -> int:
    """The wing's edges as it lies on the die, press frame, into ``out``; how many."""
    x, y, heading, used = 0.0, 0.5 * problem.thickness, 0.0, 0
    for k in range(wing_count(bend, side, len(problem.at)) + 1):
        bent = k > 0 and (made >> (k - 1)) & 1 == 1
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
        if made >> (j - 1) & 1:
            break
        x, y, heading = pose_after(problem, bend, side, j, 0, x, y, heading)
    return x, y


@kernel
def _floor(problem: Problem, pair: int, x: float) -> float:
    """How low the finger may go at this X: above the die, above the bed, or anywhere."""
    if x < problem.die[pair, 2]:
        return 0.0
    return float(-problem.die_height[pair] if x < problem.finger[6] else -np.inf)


@kernel
def _reach(x0: float, y0: float, x1: float, y1: float, low: float, high: float) -> float:
    """The largest x of a face at heights from low to high."""
    if y0 == y1:
        return max(x0, x1)
    slope = (x1 - x0) / (y1 - y0)
    bottom, top = max(low, min(y0, y1)), min(high, max(y0, y1))
    return max(x0 + slope * (bottom - y0), x0 + slope * (top - y0))


@kernel
def _place(
    problem: Problem, pair: int, sheet: Floats, edges: int,
    x0: float, y0: float, x1: float, y1: float, flat: bool,
) -> tuple[bool, float, float, float]:  # fmt: skip
    """Whether the finger can stand at a face from its near to its far end; X, R and its bottom."""
    height = problem.finger[4]
    low_face, high_face = min(y0, y1), max(y0, y1)
    middle = 0.5 * (y0 + y1)
    heights = 3 if high_face - low_face > height else 1
    rise = 0.5 * height if y1 > y0 else -0.5 * height
    lowest = _floor(problem, pair, _reach(x0, y0, x1, y1, low_face, high_face))
    for i in range(heights):
        centre = middle
        if heights == 3 and i == 0:
            centre = y0 + rise
        elif heights == 3 and i == 2:
            centre = y1 - rise
        bottom = max(centre - 0.5 * height, lowest)
        top = bottom + height
        low, high = max(bottom, low_face), min(top, high_face)
        if low > high:
            continue
        wanted = _reach(x0, y0, x1, y1, low, high)
        x, r = _furthest(sheet, 0, edges, 0.0, bottom, top)
        if abs(x - wanted) > SAME_MM or x <= 0.0 or bottom < _floor(problem, pair, x):
            continue
        if flat and abs(x0 - x1) < 1e-6:
            r = 0.5 * (low + high)
        finger = problem.finger
        if not (finger[0] <= x <= finger[1] and finger[2] <= r <= finger[3]):
            continue
        if _punch_furthest(problem, pair, bottom, top) > x:
            continue
        return True, x, r, bottom
    return False, 0.0, 0.0, 0.0


@kernel
def _punch_furthest(problem: Problem, pair: int, low: float, high: float) -> float:
    """The largest x of the punch at first touch at these heights; -inf when it is not there."""
    most = -np.inf
    for i in range(problem.upper[pair, 0], problem.upper[pair, 1]):
        if problem.edge_of[i] == PUNCH:
            x, _ = _furthest(problem.edges, i, i + 1, problem.thickness, low, high)
            most = max(most, x)
    return float(most)


@kernel
def _furthest(
    edges: Floats, first: int, past: int, lift: float, low: float, high: float
) -> tuple[float, float]:
    """The largest x of edges, lifted, at heights from low to high, and its lowest height."""
    most, at = -np.inf, 0.0
    for i in range(first, past):
        ax, ay, bx, by = edges[i, 0], edges[i, 1] + lift, edges[i, 2], edges[i, 3] + lift
        if max(ay, by) < low or min(ay, by) > high:
            continue
        for end in range(2):
            x, y = (ax, ay) if end == 0 else (bx, by)
            if ay != by:
                y = min(max(y, low), high)
                x = ax + (bx - ax) * (y - ay) / (by - ay)
            if x > most + 1e-6:
                most, at = x, y
            elif x > most - 1e-6:
                at = min(at, y)
    return most, at
