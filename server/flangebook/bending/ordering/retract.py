"""How far the back gauge has to retract while the bend is made.

From first touch on the sheet is held by the punch and the finger may go. What comes to where it
stood is looked for over the whole motion, as the clearance is: at each moment the reach is known
exactly, no point goes further between two moments than its speed allows, and where the two leave
a doubt the stretch is halved. What is left in doubt at the finest counts as reached.
"""

from __future__ import annotations

import numpy as np

from flangebook.bending.clearance.motion import motion_of, speed_bound, turned
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    PieceStart,
    next_piece,
    piece_outline,
)
from flangebook.bending.clearance.problem import Leg, Problem, leg_count
from flangebook.bending.clearance.sweep import furthest_of, moved_edges
from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.finger_place import furthest

FINE_MM = 0.01
"""The reach is known to so much, never less than it is."""
_DEEPEST = 128


@kernel
def reach_through_bend(
    problem: Problem, bend: int, side: int, pair: int, made: int, bottom: float, top: float
) -> float:
    """The furthest back [mm] that the leg at the gauge, the punch or what holds it comes.

    At heights from bottom to top above the die, from first touch to the end of the stroke; -inf
    when nothing comes there. made: as for ``gauge_places``.

    Source: own method: halving the stroke, with a bound on speed.

    >>> from flangebook.bending.samples import smallest_problem
    >>> round(reach_through_bend(smallest_problem(), 0, 1, 0, 0, -5.0, 50.0), 1)
    80.0
    """
    motion = motion_of(problem, bend, pair)
    depth = problem.strokes[bend, pair, 3]
    # The punch goes down by its depth: whatever of it is above comes to these heights.
    best, _ = furthest(problem.edges, problem.upper[pair, 0], problem.upper[pair, 1],
                       problem.thickness, bottom, top + depth)  # fmt: skip
    segments, moved = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    leg, start = Leg(bend, side, made), PieceStart(0, 0.0, 0.0, 0.0)
    for _ in range(leg_count(bend, side, len(problem.at)) + 1):
        count = piece_outline(problem, leg, start, 0.0, segments)
        start = next_piece(problem, leg, start)
        speed = speed_bound(motion, furthest_of(segments, count, motion), True)
        lows[0], highs[0], open_ = 0.0, motion.theta_max, 1
        while open_ > 0:
            open_ -= 1
            middle, half = 0.5 * (lows[open_] + highs[open_]), 0.5 * (highs[open_] - lows[open_])
            moved_edges(segments, count, 1.0, turned(motion, middle, 0.0, True), moved)
            now, _ = furthest(moved, 0, count, 0.0, bottom, top)
            best = max(best, now)
            moves = speed * half
            near, _ = furthest(moved, 0, count, 0.0, bottom - moves, top + moves)
            if near + moves <= best + FINE_MM:
                continue
            if moves <= 0.5 * FINE_MM or open_ + 2 > _DEEPEST:
                best = near + moves
                continue
            a, b = lows[open_], highs[open_]
            lows[open_], highs[open_] = middle, b
            lows[open_ + 1], highs[open_ + 1] = a, middle
            open_ += 2
    return float(best + FINE_MM)
