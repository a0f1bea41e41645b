"""How near a leg comes to a tool through a bend, and when: for the numbers and the picture."""

from __future__ import annotations

import numpy as np

from flangebook.bending.clearance.distance import Bounds, between_edges, edge_at, is_beyond
from flangebook.bending.clearance.motion import Turned, motion_of, speed_bound, turned
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    PieceStart,
    may_rest,
    next_piece,
    piece_outline,
)
from flangebook.bending.clearance.problem import (
    BED,
    DIE,
    FLOOR,
    PUNCH,
    Floats,
    Leg,
    Problem,
    is_bent,
    leg_count,
)
from flangebook.bending.clearance.sweep import Obstacles, furthest_of, moved_edges
from flangebook.bending.compiled import kernel

GOOD_ENOUGH_MM = 0.01
_DEEPEST = 256


@kernel
def nearest(
    problem: Problem, leg: Leg, at_back: bool, pair: int, tool: int
) -> tuple[float, float, int]:
    """Smallest distance of a leg to a tool [mm], theta [rad] and piece there; inf if never near.

    Left out are the straight sheet beside the line against punch and die, which it lies on, and
    a first flange that stands up against the die, which it may rest on. The distance is within
    GOOD_ENOUGH_MM; 0 where they run into one another.

    Source: own method: halving the stroke, with a bound on speed.

    >>> from flangebook.bending.samples import smallest_problem
    >>> distance, theta, piece = nearest(smallest_problem(), Leg(0, 1, 1), True, 0, PUNCH)
    >>> round(distance, 1), piece
    (19.2, 1)
    """
    bend, side, made = leg
    motion = motion_of(problem, bend, pair)
    in_press = tool in (DIE, BED, FLOOR)
    first = problem.lower[pair, 0] if in_press else problem.upper[pair, 0]
    past = problem.lower[pair, 1] if in_press else problem.upper[pair, 1]
    edges = Obstacles(problem.edges, problem.edge_of, first, past, 1 << tool, 0.0)
    mirror = 1.0 if at_back else -1.0
    segments, moved = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    best, best_theta, best_piece = np.inf, 0.0, -1
    start, first_fold, folds = PieceStart(0, 0.0, 0.0, 0.0), 0, 0
    for k in range(leg_count(bend, side, len(problem.at)) + 1):
        bent = is_bent(made, k)
        folds += bent
        if bent and first_fold == 0:
            first_fold = k
        count = piece_outline(problem, leg, start, 0.0, segments)
        start = next_piece(problem, leg, start)
        if folds == 0 and tool in (PUNCH, DIE):
            continue
        if tool == DIE and may_rest(problem, bend, side, first_fold, folds):
            continue
        speed = speed_bound(motion, furthest_of(segments, count, motion), in_press)
        lows[0], highs[0], open_ = 0.0, motion.theta_max, 1
        while open_ > 0:
            open_ -= 1
            middle, half = 0.5 * (lows[open_] + highs[open_]), 0.5 * (highs[open_] - lows[open_])
            at = turned(motion, middle, 0.0, in_press)
            bounds = moved_edges(segments, count, mirror, at, moved)
            now = _apart(edges, moved, count, bounds, best + speed * half)
            if now < best:
                best, best_theta, best_piece = now, middle, k
            if now - speed * half >= best - GOOD_ENOUGH_MM or best <= 0.0:
                continue
            if open_ + 2 <= _DEEPEST:
                a, b = lows[open_], highs[open_]
                lows[open_], highs[open_] = middle, b
                lows[open_ + 1], highs[open_ + 1] = a, middle
                open_ += 2
    return best, best_theta, best_piece


@kernel
def _apart(obstacles: Obstacles, moved: Floats, count: int, bounds: Bounds, worth: float) -> float:
    """Distance of a piece at one moment to a tool; ``worth`` or more where it does not matter."""
    least = worth
    for i in range(obstacles.first, obstacles.past):
        if not obstacles.tools >> obstacles.edge_of[i] & 1:
            continue
        edge = edge_at(obstacles.edges, i)
        if is_beyond(edge, bounds, least):
            continue
        for k in range(count):
            least = min(least, between_edges(edge, edge_at(moved, k)))
    return least


@kernel
def piece_at(problem: Problem, leg: Leg, piece: int, at: Turned, mirror: float, out: Floats) -> int:
    """The edges of one piece at a moment into ``out``, in the frame of that; how many.

    mirror: -1.0 for the leg in front.
    """
    segments, start = np.empty((MOST_SEGMENTS, 4)), PieceStart(0, 0.0, 0.0, 0.0)
    for _ in range(piece):
        start = next_piece(problem, leg, start)
    count = piece_outline(problem, leg, start, 0.0, segments)
    moved_edges(segments, count, mirror, at, out)
    return count
