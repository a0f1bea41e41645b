"""How near a wing comes to a tool through a bend, and when: for the numbers and the picture."""

from __future__ import annotations

import numpy as np

from flangebook.bending.clearance.distance import between_edges, boxes_apart
from flangebook.bending.clearance.motion import motion_of, placed, speed_bound
from flangebook.bending.clearance.pieces import MOST_SEGMENTS, may_rest, piece_outline, pose_after
from flangebook.bending.clearance.problem import (
    BED,
    DIE,
    FLOOR,
    PUNCH,
    Floats,
    Ints,
    Problem,
    is_bent,
    wing_count,
)
from flangebook.bending.clearance.sweep import furthest_of, moved_edges
from flangebook.bending.compiled import kernel

GOOD_ENOUGH_MM = 0.01
_DEEPEST = 256


@kernel
def nearest(
    problem: Problem, bend: int, side: int, at_back: bool, pair: int, made: int, tool: int
) -> tuple[float, float, int]:
    """Smallest distance of a wing to a tool [mm], theta [rad] and piece there; inf if never near.

    Left out are the straight sheet beside the line against punch and die, which it lies on, and
    a first flange that stands up against the die, which it may rest on. The distance is within
    GOOD_ENOUGH_MM; 0 where they run into one another.

    Source: own method: halving the stroke, with a bound on speed.

    >>> from flangebook.bending.samples import smallest_problem
    >>> distance, theta, piece = nearest(smallest_problem(), 0, 1, True, 0, 1, PUNCH)
    >>> round(distance, 1), piece
    (19.2, 1)
    """
    motion = motion_of(problem, bend, pair)
    in_press = tool in (DIE, BED, FLOOR)
    first = problem.lower[pair, 0] if in_press else problem.upper[pair, 0]
    past = problem.lower[pair, 1] if in_press else problem.upper[pair, 1]
    mirror = 1.0 if at_back else -1.0
    segments, moved = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    box, lows, highs = np.empty(4), np.empty(_DEEPEST), np.empty(_DEEPEST)
    best, best_theta, best_piece = np.inf, 0.0, -1
    x, y, heading, first_fold, folds = 0.0, 0.0, 0.0, 0, 0
    for k in range(wing_count(bend, side, len(problem.at)) + 1):
        bent = is_bent(made, k)
        folds += bent
        if bent and first_fold == 0:
            first_fold = k
        count = piece_outline(problem, bend, side, k, bent, x, y, heading, 0.0, segments)
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
        if folds == 0 and tool in (PUNCH, DIE):
            continue
        if tool == DIE and may_rest(problem, bend, side, first_fold, folds):
            continue
        speed = speed_bound(motion, furthest_of(segments, count, motion), in_press)
        lows[0], highs[0], open_ = 0.0, motion.theta_max, 1
        while open_ > 0:
            open_ -= 1
            middle, half = 0.5 * (lows[open_] + highs[open_]), 0.5 * (highs[open_] - lows[open_])
            sx, sy, drawn = placed(motion, middle, 0.0, in_press)
            moved_edges(segments, count, mirror, middle, sx, sy, drawn, moved, box)
            now = _apart(problem.edges, problem.edge_of, first, past, tool, moved, count, box,
                         best + speed * half)  # fmt: skip
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
def _apart(
    edges: Floats, edge_of: Ints, first: int, past: int, tool: int, moved: Floats, count: int,
    box: Floats, worth: float,
) -> float:  # fmt: skip
    """Distance of a piece at one moment to a tool; ``worth`` or more where it does not matter."""
    least = worth
    for i in range(first, past):
        if edge_of[i] != tool:
            continue
        ax, ay, bx, by = edges[i, 0], edges[i, 1], edges[i, 2], edges[i, 3]
        if boxes_apart(ax, ay, bx, by, box[0], box[1], box[2], box[3], least):
            continue
        for k in range(count):
            apart = between_edges(
                ax, ay, bx, by, moved[k, 0], moved[k, 1], moved[k, 2], moved[k, 3]
            )
            least = min(least, apart)
    return least


@kernel
def piece_at(
    problem: Problem, bend: int, side: int, at_back: bool, pair: int, made: int, piece: int,
    theta: float, in_press: bool, out: Floats,
) -> int:  # fmt: skip
    """The edges of one piece at theta into ``out``, punch frame or press frame; how many."""
    motion = motion_of(problem, bend, pair)
    segments, box = np.empty((MOST_SEGMENTS, 4)), np.empty(4)
    x, y, heading = 0.0, 0.0, 0.0
    for k in range(piece):
        bent = is_bent(made, k)
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
    bent = is_bent(made, piece)
    count = piece_outline(problem, bend, side, piece, bent, x, y, heading, 0.0, segments)
    sx, sy, drawn = placed(motion, theta, 0.0, in_press)
    moved_edges(segments, count, 1.0 if at_back else -1.0, theta, sx, sy, drawn, out, box)
    return count
