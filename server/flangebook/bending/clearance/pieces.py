"""A leg as pieces outwards from the bend line, and the outline of each.

Piece 0 is the sheet from the bend line to the first fold; piece k is fold k (its arc when it is
finished, as much straight sheet when not) and the flat behind it. A piece depends only on the
folds up to its own, never on those further out, so what is found for it holds for every leg
that begins alike.

Leg frame: the sheet's middle line leaves the bend line along +x, +y is the side of the punch.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from flangebook.bending.clearance.problem import (
    LEFT,
    Floats,
    Leg,
    Problem,
    is_bent,
    leg_count,
    leg_fold,
)
from flangebook.bending.compiled import kernel

MOST_SEGMENTS = 128
CHORD_ERROR_MM = 0.01
MOST_CHORDS = 56


class PieceStart(NamedTuple):
    """Which piece of a leg, from 0 outwards, and where its middle line begins [mm, rad]."""

    k: int
    x: float
    y: float
    heading: float


@kernel
def piece_end(problem: Problem, bend: int, side: int, k: int) -> float:
    """Developed length from the bend line to where piece k ends [mm], arcs taking their allowance.

    Source: definition.

    >>> from flangebook.bending.samples import smallest_problem
    >>> piece_end(smallest_problem(), 0, 1, 0)  # lines 40 apart, half an allowance of 3 before it
    38.5
    """
    edge = problem.at[bend] if side == LEFT else problem.length - problem.at[bend]
    if k >= leg_count(bend, side, len(problem.at)):
        return float(edge)
    fold = leg_fold(bend, side, k)
    return float(abs(problem.at[fold] - problem.at[bend]) - 0.5 * problem.allowance[fold])


@kernel
def fold_angle(problem: Problem, bend: int, side: int, k: int) -> float:
    """How far fold k (from 1) of the leg is bent when finished [rad], towards the punch > 0.

    Source: definition.

    >>> from flangebook.bending.samples import smallest_problem
    >>> math.degrees(fold_angle(smallest_problem(), 0, 1, 1))
    -90.0
    """
    fold = leg_fold(bend, side, k - 1)
    return float(problem.angle[fold] if problem.angle[bend] > 0.0 else -problem.angle[fold])


@kernel
def may_rest(problem: Problem, bend: int, side: int, first: int, folds: int) -> bool:
    """Whether what lies behind so many finished folds, of which fold ``first`` (from 1) is the
    innermost, may rest on the die: the first flange, bent up."""
    return folds == 1 and fold_angle(problem, bend, side, first) > 0.0


@kernel
def next_piece(problem: Problem, leg: Leg, start: PieceStart) -> PieceStart:
    """Where the piece after this one begins: at its end.

    Source: plane geometry.

    >>> from flangebook.bending.samples import smallest_problem
    >>> tuple(next_piece(smallest_problem(), Leg(0, 1, 0), PieceStart(0, 0.0, 0.0, 0.0)))
    (1, 38.5, 0.0, 0.0)
    """
    bend, side, made = leg
    k, x, y, heading = start
    length = piece_end(problem, bend, side, k)
    if k > 0:
        fold = leg_fold(bend, side, k - 1)
        taken = problem.allowance[fold]
        length -= piece_end(problem, bend, side, k - 1)
        if is_bent(made, k):
            angle = fold_angle(problem, bend, side, k)
            radius = math.copysign(problem.radius[fold] + 0.5 * problem.thickness, angle)
            x += radius * (math.sin(heading + angle) - math.sin(heading))
            y += radius * (math.cos(heading) - math.cos(heading + angle))
            heading += angle
            length -= taken
    length = max(length, 0.0)
    x, y = x + length * math.cos(heading), y + length * math.sin(heading)
    return PieceStart(k + 1, x, y, heading)


@kernel
def piece_outline(
    problem: Problem, leg: Leg, start: PieceStart, thinner: float, out: Floats
) -> int:
    """Put the edges of a piece into ``out`` (x1, y1, x2, y2), and say how many.

    Both faces, and at the sheet's end the cut edge. Arcs are chords that enclose the sheet.
    thinner: how much each face is drawn in, where touching is allowed [mm].
    """
    bend, side, made = leg
    k, x, y, heading = start
    half = 0.5 * problem.thickness - thinner
    count = 0
    length = piece_end(problem, bend, side, k)
    if k > 0:
        fold = leg_fold(bend, side, k - 1)
        length -= piece_end(problem, bend, side, k - 1)
        if is_bent(made, k):
            length -= problem.allowance[fold]
            angle = fold_angle(problem, bend, side, k)
            middle = problem.radius[fold] + 0.5 * problem.thickness
            turn = 1.0 if angle > 0.0 else -1.0
            cx, cy = x - turn * middle * math.sin(heading), y + turn * middle * math.cos(heading)
            inner, outer = max(middle - half, 0.0), middle + half
            each = 2.0 * math.acos(outer / (outer + CHORD_ERROR_MM))
            chords = min(max(math.ceil(abs(angle) / each), 1), MOST_CHORDS)
            beyond = outer / math.cos(0.5 * abs(angle) / chords)
            sa, ca = math.sin(heading), math.cos(heading)
            turn_sin, turn_cos = math.sin(angle / chords), math.cos(angle / chords)
            for _ in range(chords):
                sb, cb = sa * turn_cos + ca * turn_sin, ca * turn_cos - sa * turn_sin
                for r in (inner, beyond):
                    out[count, 0] = cx + turn * r * sa
                    out[count, 1] = cy - turn * r * ca
                    out[count, 2] = cx + turn * r * sb
                    out[count, 3] = cy - turn * r * cb
                    count += 1
                sa, ca = sb, cb
            x, y, heading = (
                cx + turn * middle * math.sin(heading + angle),
                (cy - turn * middle * math.cos(heading + angle)),
                heading + angle,
            )
    length = max(length, 0.0)
    cos, sin = math.cos(heading), math.sin(heading)
    last = k == leg_count(bend, side, len(problem.at))
    if last:
        length -= thinner
    for v in (half, -half):
        out[count, 0], out[count, 1] = x - v * sin, y + v * cos
        out[count, 2], out[count, 3] = x + length * cos - v * sin, y + length * sin + v * cos
        count += 1
    if last:
        out[count, 0], out[count, 1] = out[count - 1, 2], out[count - 1, 3]
        out[count, 2], out[count, 3] = out[count - 2, 2], out[count - 2, 3]
        count += 1
    return count
