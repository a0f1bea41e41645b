"""Where the part runs into itself: a half-made leg into its own pieces, one leg into the other.

Touching is allowed, so the faces are drawn in by TOUCH_MM first.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import Bounds, between_edges, edge_at
from flangebook.bending.clearance.motion import Motion, motion_of, speed_bound, turned
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    PieceStart,
    next_piece,
    piece_outline,
)
from flangebook.bending.clearance.problem import (
    INTO_SHEET,
    LEFT,
    RIGHT,
    Floats,
    Leg,
    Problem,
    is_bent,
    leg_count,
    leg_fold,
    leg_set,
)
from flangebook.bending.clearance.sweep import UNSURE_MM, Room, furthest_of, moved_edges
from flangebook.bending.clearance.sweeps import (
    CROSSING,
    ON_ITSELF,
    UNKNOWN,
    Sweeps,
    key_of,
    known_code,
    note_code,
)
from flangebook.bending.compiled import kernel

TOUCH_MM = 0.03
"""How far a face is drawn in where touching is allowed: chords, rounding and 0.02 mm slack."""
_DEEPEST = 256


@kernel
def on_itself_code(
    problem: Problem, leg: Leg, start: PieceStart, room: Room, sweeps: Sweeps
) -> int:
    """As ``_self_code``, which is the same for all tools and either way round."""
    what = (leg.bend * 2 + leg.side) * 64 + start.k
    key = key_of(ON_ITSELF, what, leg.made & ((1 << start.k) - 1))
    code = known_code(sweeps, key)
    if code == UNKNOWN:
        code = _self_code(problem, leg, start, room.segments, room.moved)
        note_code(sweeps, key, code)
    return int(code)


@kernel
def _self_code(
    problem: Problem, leg: Leg, start: PieceStart, segments: Floats, others: Floats
) -> int:
    """INTO_SHEET when a piece runs into a piece before the one it hangs on."""
    k, bent = start.k, is_bent(leg.made, start.k)
    count = piece_outline(problem, leg, start, TOUCH_MM, segments)
    left, bottom, right, top = _bounds(segments, count)
    after = PieceStart(0, 0.0, 0.0, 0.0)
    for j in range(k - 1):
        other = after
        after = next_piece(problem, leg, other)
        # Its middle line goes from one end to the other, an arc further out by less than this.
        wide = problem.thickness
        if is_bent(leg.made, j):
            fold = leg_fold(leg.bend, leg.side, j - 1)
            wide += 2.0 * (problem.radius[fold] + problem.thickness)
        far = (
            min(other.x, after.x) - wide > right or max(other.x, after.x) + wide < left
            or min(other.y, after.y) - wide > top or max(other.y, after.y) + wide < bottom
        )  # fmt: skip
        between = (leg.made & ((1 << (k - 1)) - 1)) >> j  # finished folds from one to the other
        if far or (between == 0 and not bent):
            continue  # or in one line with it
        there = piece_outline(problem, leg, other, TOUCH_MM, others)
        a, b, c, d = _bounds(others, there)
        if a > right or c < left or b > top or d < bottom:
            continue
        for i in range(count):
            for m in range(there):
                if between_edges(edge_at(segments, i), edge_at(others, m)) <= 0.0:
                    return INTO_SHEET
    return 0


@kernel
def _bounds(segments: Floats, count: int) -> Bounds:
    left, bottom, right, top = np.inf, np.inf, -np.inf, -np.inf
    for i in range(count):
        left = min(left, segments[i, 0], segments[i, 2])
        right = max(right, segments[i, 0], segments[i, 2])
        bottom = min(bottom, segments[i, 1], segments[i, 3])
        top = max(top, segments[i, 1], segments[i, 3])
    return Bounds(left, bottom, right, top)


@kernel
def legs_code(problem: Problem, bend: int, pair: int, made: int, sweeps: Sweeps) -> int:
    """INTO_SHEET when one leg runs into the other while the bend closes.

    Only looked at when one of them crosses the plane of the bend.
    """
    n = len(problem.at)
    motion = motion_of(problem, bend, pair)
    left = Leg(bend, LEFT, leg_set(made, bend, LEFT, n))
    right = Leg(bend, RIGHT, leg_set(made, bend, RIGHT, n))
    over_left = crossing_pieces(problem, motion, left, pair, sweeps)
    over_right = crossing_pieces(problem, motion, right, pair, sweeps)
    if over_left == 0 and over_right == 0:
        return 0
    one, two = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    moved_one, moved_two = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    start = PieceStart(0, 0.0, 0.0, 0.0)
    for k in range(leg_count(bend, LEFT, n) + 1):
        bent = is_bent(left.made, k)
        count = piece_outline(problem, left, start, TOUCH_MM, one)
        start = next_piece(problem, left, start)
        if over_right == 0 and not over_left >> k & 1:
            continue
        after = PieceStart(0, 0.0, 0.0, 0.0)
        for m in range(leg_count(bend, RIGHT, n) + 1):
            other, also_bent = after, is_bent(right.made, m)
            after = next_piece(problem, right, other)
            # Two pieces that both stay on their own sides of the plane cannot meet.
            if not (over_left >> k | over_right >> m) & 1:
                continue
            if k + m < 2 and not (bent or also_bent):
                continue
            there = piece_outline(problem, right, other, TOUCH_MM, two)
            if _meet(motion, one, count, two, there, moved_one, moved_two):
                return INTO_SHEET
    return 0


@kernel
def crossing_pieces(problem: Problem, motion: Motion, leg: Leg, pair: int, sweeps: Sweeps) -> int:
    """The pieces of a leg of which any point may come over the bend's plane, bit k for piece k."""
    bend, side, made = leg
    key = key_of(CROSSING, (bend * 2 + side) * len(problem.change) + pair, made)
    found = known_code(sweeps, key)
    if found != UNKNOWN:
        return int(found)
    found = 0
    start, nearest = PieceStart(0, 0.0, 0.0, 0.0), np.inf
    away = motion.radius + motion.allowance
    for k in range(leg_count(bend, side, len(problem.at)) + 1):
        if is_bent(made, k):
            # No point of an arc or flat reaches further over than its corners by more than this.
            fold = leg_fold(bend, side, k - 1)
            away = max(
                away, motion.radius + motion.allowance + problem.radius[fold] + problem.thickness
            )
        start = next_piece(problem, leg, start)
        before, nearest = nearest, _least_x(motion, start.x, start.y)
        # Only what rises above the sheet can come over; the run itself cannot.
        if min(before, nearest) - problem.thickness < away and made & ((1 << k) - 1):
            found |= 1 << k
    note_code(sweeps, key, found)
    return found


@kernel
def _least_x(motion: Motion, x: float, y: float) -> float:
    """The least x of a point of the leg while it turns, shifts beside the turn left out."""
    far, angle = math.hypot(x, y), math.atan2(y, x)
    if angle <= -math.pi / 2:
        return -far
    return min(x, far * math.cos(min(angle + motion.theta_max, math.pi)))


@kernel
def _meet(
    motion: Motion, one: Floats, count: int, two: Floats, there: int, moved_one: Floats,
    moved_two: Floats,
) -> bool:  # fmt: skip
    """Whether a piece of the left leg and one of the right run into one another."""
    speed = speed_bound(motion, furthest_of(one, count, motion), False) + speed_bound(
        motion, furthest_of(two, there, motion), False
    )
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    lows[0], highs[0], open_ = 0.0, motion.theta_max, 1
    while open_ > 0:
        open_ -= 1
        a, b = lows[open_], highs[open_]
        middle, half = 0.5 * (a + b), 0.5 * (b - a)
        at = turned(motion, middle, 0.0, False)
        here = moved_edges(one, count, -1.0, at, moved_one)
        bounds = moved_edges(two, there, 1.0, at, moved_two)
        nearest = speed * half
        if (
            here.left - bounds.right > nearest or bounds.left - here.right > nearest
            or here.bottom - bounds.top > nearest or bounds.bottom - here.top > nearest
        ):  # fmt: skip
            continue
        met = False
        for i in range(count):
            for k in range(there):
                apart = between_edges(edge_at(moved_one, i), edge_at(moved_two, k))
                if apart <= 0.0:
                    return True
                if apart <= nearest:
                    nearest, met = apart, True
        if not met:
            continue
        if speed * half <= UNSURE_MM or open_ + 2 > _DEEPEST:
            return True
        safe = nearest / speed
        lows[open_], highs[open_] = middle + safe, b
        lows[open_ + 1], highs[open_ + 1] = a, middle - safe
        open_ += 2
    return False
