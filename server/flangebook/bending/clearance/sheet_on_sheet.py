"""Where the part runs into itself: a half-made wing into its own pieces, one wing into the other.

Touching is allowed, so the faces are drawn in by TOUCH_MM first.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import between_edges
from flangebook.bending.clearance.motion import Motion, motion_of, placed, speed_bound
from flangebook.bending.clearance.pieces import MOST_SEGMENTS, piece_outline, pose_after
from flangebook.bending.clearance.problem import (
    HITS_SHEET,
    LEFT,
    RIGHT,
    Floats,
    Problem,
    is_bent,
    wing_count,
    wing_fold,
    wing_set,
)
from flangebook.bending.clearance.sweep import UNSURE_MM, furthest_of, moved_edges
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
    problem: Problem, bend: int, side: int, k: int, bent: bool, x: float, y: float, heading: float,
    made: int, segments: Floats, moved: Floats, sweeps: Sweeps,
) -> int:  # fmt: skip
    """As ``_self_code``, which is the same for all tools and either way round."""
    key = key_of(ON_ITSELF, (bend * 2 + side) * 64 + k, made & ((1 << k) - 1))
    code = known_code(sweeps, key)
    if code == UNKNOWN:
        code = _self_code(problem, bend, side, k, bent, x, y, heading, made, segments, moved)
        note_code(sweeps, key, code)
    return int(code)


@kernel
def _self_code(
    problem: Problem, bend: int, side: int, k: int, bent: bool, x: float, y: float, heading: float,
    made: int, segments: Floats, others: Floats,
) -> int:  # fmt: skip
    """HITS_SHEET when piece k runs into a piece before the one it hangs on."""
    count = piece_outline(problem, bend, side, k, bent, x, y, heading, TOUCH_MM, segments)
    left, bottom, right, top = _bounds(segments, count)
    px, py, turned = 0.0, 0.0, 0.0
    for j in range(k - 1):
        was_bent = is_bent(made, j)
        nx, ny, after = pose_after(problem, bend, side, j, was_bent, px, py, turned)
        # Its middle line goes from one end to the other, an arc further out by less than this.
        wide = problem.thickness
        if was_bent:
            fold = wing_fold(bend, side, j - 1)
            wide += 2.0 * (problem.radius[fold] + problem.thickness)
        far = (
            min(px, nx) - wide > right or max(px, nx) + wide < left
            or min(py, ny) - wide > top or max(py, ny) + wide < bottom
        )  # fmt: skip
        ax, ay, before = px, py, turned
        px, py, turned = nx, ny, after
        between = (made & ((1 << (k - 1)) - 1)) >> j  # finished folds from the one to the other
        if far or (between == 0 and not bent):
            continue  # or in one line with it
        there = piece_outline(problem, bend, side, j, was_bent, ax, ay, before, TOUCH_MM, others)
        a, b, c, d = _bounds(others, there)
        if a > right or c < left or b > top or d < bottom:
            continue
        for i in range(count):
            for m in range(there):
                if between_edges(
                    segments[i, 0], segments[i, 1], segments[i, 2], segments[i, 3],
                    others[m, 0], others[m, 1], others[m, 2], others[m, 3],
                ) <= 0.0:  # fmt: skip
                    return HITS_SHEET
    return 0


@kernel
def _bounds(segments: Floats, count: int) -> tuple[float, float, float, float]:
    left, bottom, right, top = np.inf, np.inf, -np.inf, -np.inf
    for i in range(count):
        left = min(left, segments[i, 0], segments[i, 2])
        right = max(right, segments[i, 0], segments[i, 2])
        bottom = min(bottom, segments[i, 1], segments[i, 3])
        top = max(top, segments[i, 1], segments[i, 3])
    return left, bottom, right, top


@kernel
def wings_code(problem: Problem, bend: int, pair: int, made: int, sweeps: Sweeps) -> int:
    """HITS_SHEET when one wing runs into the other while the bend closes.

    Only looked at when one of them crosses the plane of the bend.
    """
    n = len(problem.at)
    motion = motion_of(problem, bend, pair)
    left, right = wing_set(made, bend, LEFT, n), wing_set(made, bend, RIGHT, n)
    over_left = crossing_pieces(problem, motion, bend, LEFT, pair, left, sweeps)
    over_right = crossing_pieces(problem, motion, bend, RIGHT, pair, right, sweeps)
    if over_left == 0 and over_right == 0:
        return 0
    one, two = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    moved_one, moved_two = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    x, y, heading = 0.0, 0.0, 0.0
    for k in range(wing_count(bend, LEFT, n) + 1):
        bent = is_bent(left, k)
        count = piece_outline(problem, bend, LEFT, k, bent, x, y, heading, TOUCH_MM, one)
        x, y, heading = pose_after(problem, bend, LEFT, k, bent, x, y, heading)
        if over_right == 0 and not over_left >> k & 1:
            continue
        u, v, turned = 0.0, 0.0, 0.0
        for m in range(wing_count(bend, RIGHT, n) + 1):
            other = is_bent(right, m)
            u0, v0, before = u, v, turned
            u, v, turned = pose_after(problem, bend, RIGHT, m, other, u, v, turned)
            # Two pieces that both stay on their own sides of the plane cannot meet.
            if not (over_left >> k | over_right >> m) & 1 or (k + m < 2 and not (bent or other)):
                continue
            there = piece_outline(problem, bend, RIGHT, m, other, u0, v0, before, TOUCH_MM, two)
            if _meet(motion, one, count, two, there, moved_one, moved_two):
                return HITS_SHEET
    return 0


@kernel
def crossing_pieces(
    problem: Problem, motion: Motion, bend: int, side: int, pair: int, made: int, sweeps: Sweeps
) -> int:
    """The pieces of a wing of which any point may come over the bend's plane, bit k for piece k."""
    key = key_of(CROSSING, (bend * 2 + side) * len(problem.change) + pair, made)
    found = known_code(sweeps, key)
    if found != UNKNOWN:
        return int(found)
    found = 0
    x, y, heading, nearest = 0.0, 0.0, 0.0, np.inf
    away = motion.radius + motion.allowance
    for k in range(wing_count(bend, side, len(problem.at)) + 1):
        bent = is_bent(made, k)
        if bent:
            # No point of an arc or flat reaches further over than its corners by more than this.
            fold = wing_fold(bend, side, k - 1)
            away = max(
                away, motion.radius + motion.allowance + problem.radius[fold] + problem.thickness
            )
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
        before, nearest = nearest, _least_x(motion, x, y)
        # Only what rises above the sheet can come over; the run itself cannot.
        if min(before, nearest) - problem.thickness < away and made & ((1 << k) - 1):
            found |= 1 << k
    note_code(sweeps, key, found)
    return found


@kernel
def _least_x(motion: Motion, x: float, y: float) -> float:
    """The least x of a point of the wing while it turns, shifts beside the turn left out."""
    far, angle = math.hypot(x, y), math.atan2(y, x)
    if angle <= -math.pi / 2:
        return -far
    return min(x, far * math.cos(min(angle + motion.theta_max, math.pi)))


@kernel
def _meet(
    motion: Motion, one: Floats, count: int, two: Floats, there: int, moved_one: Floats,
    moved_two: Floats,
) -> bool:  # fmt: skip
    """Whether a piece of the left wing and one of the right run into one another."""
    speed = speed_bound(motion, furthest_of(one, count, motion), False) + speed_bound(
        motion, furthest_of(two, there, motion), False
    )
    box_one, box_two = np.empty(4), np.empty(4)
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    lows[0], highs[0], open_ = 0.0, motion.theta_max, 1
    while open_ > 0:
        open_ -= 1
        a, b = lows[open_], highs[open_]
        middle, half = 0.5 * (a + b), 0.5 * (b - a)
        x, y, drawn = placed(motion, middle, 0.0, False)
        moved_edges(one, count, -1.0, middle, x, y, drawn, moved_one, box_one)
        moved_edges(two, there, 1.0, middle, x, y, drawn, moved_two, box_two)
        nearest = speed * half
        if (
            box_one[0] - box_two[2] > nearest or box_two[0] - box_one[2] > nearest
            or box_one[1] - box_two[3] > nearest or box_two[1] - box_one[3] > nearest
        ):  # fmt: skip
            continue
        met = False
        for i in range(count):
            for k in range(there):
                apart = between_edges(
                    moved_one[i, 0], moved_one[i, 1], moved_one[i, 2], moved_one[i, 3],
                    moved_two[k, 0], moved_two[k, 1], moved_two[k, 2], moved_two[k, 3],
                )  # fmt: skip
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
