"""What a wing meets while its bend is made, and while the punch comes and goes.

What a piece meets depends on the finished folds up to it, not on those further out, so it is
remembered by them: one blocked piece blocks every wing that begins like that. Nothing is
concluded from one set of finished bends to a larger one: a further bend can lift a flange out
of the way.

Contact is part of bending, so what distance is wanted depends on what meets what:

- the straight sheet from the bend line to the first finished fold lies on the die and on the
  punch: against the die it is not looked at; against the punch it may touch;
- the first finished fold and its flat, bent up, may rest on the die;
- the part may touch itself;
- everything else keeps the margin.
"""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np

from flangebook.bending.clearance.distance import between_edges
from flangebook.bending.clearance.motion import Motion, motion_of, placed, speed_bound
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    fold_angle,
    piece_outline,
    pose_after,
)
from flangebook.bending.clearance.sweep import (
    BENDING,
    RISING,
    UNSURE_MM,
    furthest_of,
    moved_edges,
    swept_code,
)
from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.problem import (
    BED,
    DIE,
    FLOOR,
    HITS_SHEET,
    HOLDER,
    LEFT,
    PUNCH,
    RAM,
    RIGHT,
    SHORT_FLANGE,
    Floats,
    Ints,
    Problem,
    wing_count,
    wing_set,
)

TOUCH_MM = 0.03
"""How far a face is drawn in where touching is allowed: chords, rounding and 0.02 mm slack."""
_ROOM = 1 << 17
_SHIFT = 40
_UPPER = 1 << PUNCH | 1 << HOLDER | 1 << RAM
_LOWER = 1 << DIE | 1 << BED | 1 << FLOOR
_CROSSES = 1 << 15


class Sweeps(NamedTuple):
    """What is known of pieces, by key; where two keys fall on one place the later one stays.

    keys: 0 is empty. codes: result bits.
    """

    keys: Ints
    codes: Ints


def new_sweeps(problem: Problem) -> Sweeps:
    """Nothing known yet."""
    room = 1 << 10
    while room < _ROOM and room < 64 << len(problem.at):
        room <<= 1
    return Sweeps(np.zeros(room, np.int64), np.zeros(room, np.int64))


@kernel
def _place_of(sweeps: Sweeps, key: int) -> int:
    mixed = key ^ (key >> 31)
    mixed = (mixed * 668265263) ^ (key >> 17)
    mixed ^= mixed >> 23
    return int(mixed & (len(sweeps.keys) - 1))


@kernel
def wing_code(
    problem: Problem, bend: int, side: int, at_back: bool, pair: int, made: int, sweeps: Sweeps
) -> int:
    """Result bits of a wing through the bend; 0 when it clears everything.

    side: which wing, LEFT or RIGHT. at_back: it is the one at the gauge. made: its finished
    folds, bit i for the i-th outwards. The bits name the tool of the first piece that hits one.
    """
    return _walk(problem, bend, side, at_back, pair, made, sweeps, False)


@kernel
def approach_code(
    problem: Problem, bend: int, side: int, at_back: bool, pair: int, made: int, sweeps: Sweeps
) -> int:
    """Result bits of what keeps the punch from coming or rising straight; 0 when nothing does."""
    return _walk(problem, bend, side, at_back, pair, made, sweeps, True)


@kernel
def _walk(
    problem: Problem, bend: int, side: int, at_back: bool, pair: int, made: int, sweeps: Sweeps,
    rising: bool,
) -> int:  # fmt: skip
    """The pieces outwards until one is blocked."""
    count = wing_count(bend, side, len(problem.at))
    motion = motion_of(problem, bend, pair)
    key0 = ((bend * 2 + side) * 2 + at_back) * len(problem.change) + pair
    x, y, heading, first = 0.0, 0.0, 0.0, 0
    segments, moved = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    chosen = np.empty(len(problem.edges), np.int64)
    if not rising and _run(problem, bend, side, made) < problem.least_run[bend, pair]:
        return SHORT_FLANGE
    for k in range(count + 1):
        bent = k > 0 and (made >> (k - 1)) & 1 == 1
        if bent and first == 0:
            first = k
        prefix = made & ((1 << k) - 1)
        key = (((key0 * 64 + k) * 2 + rising) << _SHIFT | prefix) + 1
        place = _place_of(sweeps, key)
        if sweeps.keys[place] == key:
            code = sweeps.codes[place]
        elif rising:
            code = _rise_code(problem, motion, bend, side, at_back, pair, k, bent, first,
                              x, y, heading, segments, moved, chosen)  # fmt: skip
        else:
            code = _piece_code(problem, motion, bend, side, at_back, pair, k, bent, first,
                               x, y, heading, made, segments, moved, chosen)  # fmt: skip
            if code == 0:
                code = _self_known(problem, bend, side, k, bent, x, y, heading, made, segments,
                                   moved, sweeps)  # fmt: skip
        sweeps.keys[place], sweeps.codes[place] = key, code
        if code:
            return int(code)
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
    return 0


@kernel
def _run(problem: Problem, bend: int, side: int, made: int) -> float:
    """Straight sheet from the bend line to the first finished fold or the edge [mm]."""
    for k in range(wing_count(bend, side, len(problem.at))):
        if made >> k & 1:
            fold = bend - 1 - k if side == LEFT else bend + 1 + k
            return float(abs(problem.at[fold] - problem.at[bend]) - 0.5 * problem.allowance[fold])
    return float(problem.at[bend] if side == LEFT else problem.length - problem.at[bend])


@kernel
def _piece_code(
    problem: Problem, motion: Motion, bend: int, side: int, at_back: bool, pair: int,
    k: int, bent: bool, first: int, x: float, y: float, heading: float, made: int,
    segments: Floats, moved: Floats, chosen: Ints,
) -> int:  # fmt: skip
    """Result bits of one piece through the bend."""
    mirror = 1.0 if at_back else -1.0
    top, margin = motion.theta_max, problem.margin
    edges, of = problem.edges, problem.edge_of
    up0, up1 = problem.upper[pair, 0], problem.upper[pair, 1]
    low0, low1 = problem.lower[pair, 0], problem.lower[pair, 1]
    above, below = _UPPER, _LOWER
    on_run = first == 0
    rests = first > 0 and fold_angle(problem, bend, side, first) > 0.0 and (
        made >> (first - 1) & ((1 << (k - first + 1)) - 1)
    ) == 1  # fmt: skip
    if on_run or rests:
        count = piece_outline(problem, bend, side, k, bent, x, y, heading, TOUCH_MM, segments)
        if on_run:
            above, below = _UPPER & ~(1 << PUNCH), _LOWER & ~(1 << DIE)
            _drawn_in(motion, segments, count)
            code = swept_code(motion, BENDING, 0.0, top, 0.0, segments, count, mirror, edges, of,
                              up0, up1, 1 << PUNCH, False, 0.0, moved, chosen)  # fmt: skip
        else:
            below = _LOWER & ~(1 << DIE)
            code = swept_code(motion, BENDING, 0.0, top, 0.0, segments, count, mirror, edges, of,
                              low0, low1, 1 << DIE, True, 0.0, moved, chosen)  # fmt: skip
        if code:
            return int(code)
    count = piece_outline(problem, bend, side, k, bent, x, y, heading, 0.0, segments)
    code = swept_code(motion, BENDING, 0.0, top, 0.0, segments, count, mirror, edges, of,
                      up0, up1, above, False, margin, moved, chosen)  # fmt: skip
    if code:
        return int(code)
    code = swept_code(motion, BENDING, 0.0, top, 0.0, segments, count, mirror, edges, of,
                      low0, low1, below, True, margin, moved, chosen)  # fmt: skip
    if code:
        return int(code)
    return 0


@kernel
def _self_known(
    problem: Problem, bend: int, side: int, k: int, bent: bool, x: float, y: float, heading: float,
    made: int, segments: Floats, moved: Floats, sweeps: Sweeps,
) -> int:  # fmt: skip
    """As ``_self_code``, which is the same for all tools and either way round."""
    key = (1 << 60 | ((bend * 2 + side) * 64 + k) << _SHIFT | made & ((1 << k) - 1)) + 1
    place = _place_of(sweeps, key)
    if sweeps.keys[place] != key:
        code = _self_code(problem, bend, side, k, bent, x, y, heading, made, segments, moved)
        sweeps.keys[place], sweeps.codes[place] = key, code
    return int(sweeps.codes[place])


@kernel
def _drawn_in(motion: Motion, segments: Floats, count: int) -> None:
    """Begin the run's first piece behind the arc, which bears on the punch by right."""
    for i in range(count):
        if segments[i, 0] < 0.5 * motion.allowance <= segments[i, 2]:
            segments[i, 0] = 0.5 * motion.allowance


@kernel
def _rise_code(
    problem: Problem, motion: Motion, bend: int, side: int, at_back: bool, pair: int,
    k: int, bent: bool, first: int, x: float, y: float, heading: float,
    segments: Floats, moved: Floats, chosen: Ints,
) -> int:  # fmt: skip
    """Result bits of one piece while the punch comes to the flat sheet and leaves the bend."""
    if first == 0:
        return 0
    mirror = 1.0 if at_back else -1.0
    count = piece_outline(problem, bend, side, k, bent, x, y, heading, 0.0, segments)
    for theta in (0.0, motion.theta_max):
        code = swept_code(
            motion, RISING, 0.0, problem.lift[pair], theta, segments, count, mirror,
            problem.edges, problem.edge_of, problem.upper[pair, 0], problem.upper[pair, 1],
            _UPPER, False, problem.margin, moved, chosen,
        )  # fmt: skip
        if code:
            return int(code)
    return 0


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
        was_bent = j > 0 and (made >> (j - 1)) & 1 == 1
        nx, ny, after = pose_after(problem, bend, side, j, was_bent, px, py, turned)
        # Its middle line goes from one end to the other, an arc further out by less than this.
        wide = problem.thickness
        if was_bent:
            fold = bend - j if side == LEFT else bend + j
            wide += 2.0 * (problem.radius[fold] + problem.thickness)
        far = (
            min(px, nx) - wide > right or max(px, nx) + wide < left
            or min(py, ny) - wide > top or max(py, ny) + wide < bottom
        )  # fmt: skip
        ax, ay, before = px, py, turned
        px, py, turned = nx, ny, after
        if far or (made & ((1 << (k - 1)) - 1) >> j == 0 and not bent):
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
        bent = k > 0 and (left >> (k - 1)) & 1 == 1
        count = piece_outline(problem, bend, LEFT, k, bent, x, y, heading, TOUCH_MM, one)
        x, y, heading = pose_after(problem, bend, LEFT, k, bent, x, y, heading)
        if over_right == 0 and not over_left >> k & 1:
            continue
        u, v, turned = 0.0, 0.0, 0.0
        for m in range(wing_count(bend, RIGHT, n) + 1):
            other = m > 0 and (right >> (m - 1)) & 1 == 1
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
    key = ((((bend * 2 + side) * len(problem.change) + pair) * 64 + 63) << _SHIFT | made) + 1
    place = _place_of(sweeps, key)
    if sweeps.keys[place] == key:
        return int(sweeps.codes[place])
    found = 0
    x, y, heading, nearest = 0.0, 0.0, 0.0, np.inf
    away = motion.radius + motion.allowance
    for k in range(wing_count(bend, side, len(problem.at)) + 1):
        bent = k > 0 and (made >> (k - 1)) & 1 == 1
        if bent:
            # No point of an arc or flat reaches further over than its corners by more than this.
            fold = bend - k if side == LEFT else bend + k
            away = max(
                away, motion.radius + motion.allowance + problem.radius[fold] + problem.thickness
            )
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
        before, nearest = nearest, _least_x(motion, x, y)
        # Only what rises above the sheet can come over; the run itself cannot.
        if min(before, nearest) - problem.thickness < away and made & ((1 << k) - 1):
            found |= 1 << k
    sweeps.keys[place], sweeps.codes[place] = key, found
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
    lows, highs = np.empty(256), np.empty(256)
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
        if speed * half <= UNSURE_MM or open_ + 2 > 256:
            return True
        safe = nearest / speed
        lows[open_], highs[open_] = middle + safe, b
        lows[open_ + 1], highs[open_ + 1] = a, middle - safe
        open_ += 2
    return False
