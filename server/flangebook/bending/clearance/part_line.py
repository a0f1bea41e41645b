"""The whole part at one moment as the middle line of its sheet, for moving it about by hand.

The sheet is what lies within half a thickness of the line; at its two ends that is half a
thickness too much, never too little. Arcs are chords, SAGITTA_SHARE of their radius off at most.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.motion import depth_at, motion_of, turned
from flangebook.bending.clearance.pieces import PieceStart, fold_angle, may_rest, next_piece
from flangebook.bending.clearance.problem import (
    Floats,
    Ints,
    Leg,
    Problem,
    is_bent,
    leg_count,
    leg_fold,
    leg_set,
)
from flangebook.bending.compiled import kernel

RUN, RESTS, OTHER = range(3)
"""What a stretch of the line may touch: the straight sheet beside the bend line and the bend
itself lie on punch and die; a first flange bent up may rest on the die; the rest keeps clear."""
CHORD_RAD = math.radians(6.0)
SAGITTA_SHARE = 1.0 - math.cos(CHORD_RAD / 2.0)


@kernel
def leg_line(
    problem: Problem, leg: Leg, mirror: float, pair: int, theta: float, points: Floats, kinds: Ints
) -> int:
    """Put the middle line of a leg into ``points``, from the bend's plane outwards, press frame;
    say how many. mirror: -1.0 for the leg in front. kinds: of the stretch that ends at each
    point."""
    bend, side, made = leg
    motion = motion_of(problem, bend, pair)
    _, px, py, drawn = turned(motion, theta, 0.0, True)
    cos, sin = math.cos(theta), math.sin(theta)
    chords = max(1, math.ceil(theta / CHORD_RAD))
    count = 0
    for i in range(chords + 1):
        at = theta * i / chords
        points[count, 0] = mirror * motion.radius * math.sin(at)
        points[count, 1] = py - motion.radius * (math.cos(at) - math.cos(theta))
        kinds[count] = RUN
        count += 1
    start, first, folds = PieceStart(0, 0.0, 0.0, 0.0), 0, 0
    for k in range(leg_count(bend, side, len(problem.at)) + 1):
        bent = is_bent(made, k)
        folds += bent
        if bent and first == 0:
            first = k
        kind = OTHER
        if first == 0:
            kind = RUN
        elif may_rest(problem, bend, side, first, folds):
            kind = RESTS
        if bent:
            angle = fold_angle(problem, bend, side, k)
            fold = leg_fold(bend, side, k - 1)
            radius = math.copysign(problem.radius[fold] + 0.5 * problem.thickness, angle)
            chords = max(1, math.ceil(abs(angle) / CHORD_RAD))
            _, x, y, heading = start
            for i in range(1, chords + 1):
                at = heading + angle * i / chords
                qx = x + radius * (math.sin(at) - math.sin(heading)) - drawn
                qy = y + radius * (math.cos(heading) - math.cos(at))
                points[count, 0] = mirror * (px + cos * qx - sin * qy)
                points[count, 1] = py + sin * qx + cos * qy
                kinds[count] = kind
                count += 1
        start = next_piece(problem, leg, start)
        _, x, y, _ = start
        points[count, 0] = mirror * (px + cos * (x - drawn) - sin * y)
        points[count, 1] = py + sin * (x - drawn) + cos * y
        kinds[count] = kind
        count += 1
    return count


@kernel
def punch_travel(problem: Problem, bend: int, pair: int, theta: float) -> float:
    """How deep the punch is at theta, from first touch [mm].

    Source: own derivation, as ``air_bend_geometry.punch_depth_mm``.

    >>> from flangebook.bending.samples import smallest_problem
    >>> round(punch_travel(smallest_problem(), 0, 0, math.pi / 4.0), 3)  # the stroke's own depth
    5.0
    """
    return depth_at(motion_of(problem, bend, pair), theta)


def part_line(
    problem: Problem, made: int, bend: int, end: int, pair: int, theta: float
) -> tuple[Floats, Ints]:
    """The part's middle line from its front edge to its back edge, and what each stretch is.

    made: bends finished before, as a set. end: at the gauge. theta: half the bend so far [rad].
    Points (m, 2) in the press frame [mm], kinds (m - 1,) of RUN, RESTS, OTHER.
    """
    chords = math.ceil(math.pi / CHORD_RAD) + 2
    room = chords * (len(problem.at) + 2)
    lines, kinds = [], []
    for side in (1 - end, end):
        points, of = np.empty((room, 2)), np.empty(room, np.int64)
        leg = Leg(bend, side, int(leg_set(made, bend, side, len(problem.at))))
        mirror = 1.0 if side == end else -1.0
        count = leg_line(problem, leg, mirror, pair, theta, points, of)
        lines.append(points[:count])
        kinds.append(of[1:count])
    front, back = lines
    return np.concatenate([front[::-1], back[1:]]), np.concatenate([kinds[0][::-1], kinds[1]])
