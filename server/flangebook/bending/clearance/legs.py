"""What a leg meets while its bend is made, and while the punch comes and goes.

What a piece meets depends on the finished folds up to it, not on those further out, so it is
remembered by them: one blocked piece blocks every leg that begins like that. Nothing is
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

import numpy as np

from flangebook.bending.clearance.motion import Motion, depth_at, motion_of, released
from flangebook.bending.clearance.pieces import (
    MOST_SEGMENTS,
    PieceStart,
    fold_angle,
    next_piece,
    piece_outline,
)
from flangebook.bending.clearance.problem import (
    BED,
    DIE,
    FLOOR,
    HOLDER,
    LEFT,
    PUNCH,
    RAM,
    SHORT_FLANGE,
    Floats,
    Leg,
    Problem,
    leg_count,
    leg_fold,
)
from flangebook.bending.clearance.sheet_on_sheet import TOUCH_MM, on_itself_code
from flangebook.bending.clearance.sweep import Course, Obstacles, Room, swept_code
from flangebook.bending.clearance.sweeps import (
    PAST_PUNCH,
    THROUGH_BEND,
    UNKNOWN,
    Sweeps,
    key_of,
    known_code,
    note_code,
)
from flangebook.bending.compiled import kernel

_UPPER = 1 << PUNCH | 1 << HOLDER | 1 << RAM
_LOWER = 1 << DIE | 1 << BED | 1 << FLOOR


@kernel
def leg_code(problem: Problem, leg: Leg, at_back: bool, pair: int, sweeps: Sweeps) -> int:
    """Result bits of a leg through the bend; 0 when it clears everything.

    at_back: it is the one at the gauge. The bits name the tool that a piece runs into first.
    """
    return _walk(problem, leg, at_back, pair, sweeps, False)


@kernel
def approach_code(problem: Problem, leg: Leg, at_back: bool, pair: int, sweeps: Sweeps) -> int:
    """Result bits of what keeps the punch from coming or rising straight; 0 when nothing does."""
    return _walk(problem, leg, at_back, pair, sweeps, True)


@kernel
def _walk(
    problem: Problem, leg: Leg, at_back: bool, pair: int, sweeps: Sweeps, rising: bool
) -> int:
    """The pieces outwards until one is blocked."""
    bend, side, made = leg
    if not rising and _run(problem, bend, side, made) < problem.least_run[bend, pair]:
        return SHORT_FLANGE
    count = leg_count(bend, side, len(problem.at))
    kind = PAST_PUNCH if rising else THROUGH_BEND
    key0 = (((bend * 2 + side) * 2 + at_back) * len(problem.change) + pair) * 64
    clear, code = _known_clear(sweeps, kind, key0, count, made)
    if code or clear == count:
        return code
    motion = motion_of(problem, bend, pair)
    start = PieceStart(0, 0.0, 0.0, 0.0)
    room = Room(
        np.empty((MOST_SEGMENTS, 4)),
        np.empty((MOST_SEGMENTS, 4)),
        np.empty(len(problem.edges), np.int64),
    )
    for k in range(count + 1):
        key = key_of(kind, key0 + k, made & ((1 << k) - 1))
        if k > clear:
            code = known_code(sweeps, key)
        if code != UNKNOWN:
            pass
        elif rising:
            code = _rise_code(problem, motion, leg, at_back, pair, start, room)
        else:
            code = _piece_code(problem, motion, leg, at_back, pair, start, room)
            if code == 0:
                code = on_itself_code(problem, leg, start, room, sweeps)
        if k > clear:
            note_code(sweeps, key, code)
        if code:
            return int(code)
        start = next_piece(problem, leg, start)
    return 0


@kernel
def _known_clear(sweeps: Sweeps, kind: int, key0: int, count: int, made: int) -> tuple[int, int]:
    """The last piece of a leg that is known to be clear, -1 if none is; or what blocks the leg.

    A piece is looked at only when all before it are clear, so what is known of it says that of
    all before it: the last known is found by halving. One forgotten since only hides those after.
    """
    clear, unknown = -1, count + 1
    while unknown - clear > 1:
        k = (clear + unknown) // 2
        code = known_code(sweeps, key_of(kind, key0 + k, made & ((1 << k) - 1)))
        if code > 0:
            return clear, code
        if code == UNKNOWN:
            unknown = k
        else:
            clear = k
    return clear, 0


@kernel
def _run(problem: Problem, bend: int, side: int, made: int) -> float:
    """Straight sheet from the bend line to the first finished fold or the edge [mm]."""
    for k in range(leg_count(bend, side, len(problem.at))):
        if made >> k & 1:
            fold = leg_fold(bend, side, k)
            return float(abs(problem.at[fold] - problem.at[bend]) - 0.5 * problem.allowance[fold])
    return float(problem.at[bend] if side == LEFT else problem.length - problem.at[bend])


@kernel
def _piece_code(
    problem: Problem, motion: Motion, leg: Leg, at_back: bool, pair: int, start: PieceStart,
    room: Room,
) -> int:  # fmt: skip
    """Result bits of one piece through the bend."""
    mirror = 1.0 if at_back else -1.0
    from_punch = Course(motion, False, 0.0, 0.0, motion.theta_max, False)
    from_die = Course(motion, False, 0.0, 0.0, motion.theta_max, True)
    above, below = _UPPER, _LOWER
    folds = leg.made & ((1 << start.k) - 1)  # the finished ones from the bend to here
    on_run = folds == 0
    rests = not on_run and folds & (folds - 1) == 0 and (
        fold_angle(problem, leg.bend, leg.side, _first_fold(folds)) > 0.0
    )  # fmt: skip
    if on_run or rests:
        count = piece_outline(problem, leg, start, TOUCH_MM, room.segments)
        below = _LOWER & ~(1 << DIE)
        if on_run:
            above = _UPPER & ~(1 << PUNCH)
            _drawn_in(motion, room.segments, count)
            punch = _upper(problem, pair, 1 << PUNCH, 0.0)
            code = swept_code(from_punch, punch, room, count, mirror)
        else:
            die = _lower(problem, pair, 1 << DIE, 0.0)
            code = swept_code(from_die, die, room, count, mirror)
        if code:
            return int(code)
    count = piece_outline(problem, leg, start, 0.0, room.segments)
    upper = _upper(problem, pair, above, problem.margin)
    code = swept_code(from_punch, upper, room, count, mirror)
    if code:
        return int(code)
    lower = _lower(problem, pair, below, problem.margin)
    return int(swept_code(from_die, lower, room, count, mirror))


@kernel
def _first_fold(folds: int) -> int:
    """The number, from 1, of the innermost of them."""
    first = 1
    while not folds & 1:
        folds >>= 1
        first += 1
    return first


@kernel
def _upper(problem: Problem, pair: int, tools: int, gap: float) -> Obstacles:
    """Punch, holder and ram of a pair."""
    first, past = problem.upper[pair, 0], problem.upper[pair, 1]
    return Obstacles(problem.edges, problem.edge_of, first, past, tools, gap)


@kernel
def _lower(problem: Problem, pair: int, tools: int, gap: float) -> Obstacles:
    """Die, bed and floor of a pair."""
    first, past = problem.lower[pair, 0], problem.lower[pair, 1]
    return Obstacles(problem.edges, problem.edge_of, first, past, tools, gap)


@kernel
def _drawn_in(motion: Motion, segments: Floats, count: int) -> None:
    """Begin the run's first piece behind the arc, which bears on the punch by right."""
    for i in range(count):
        if segments[i, 0] < 0.5 * motion.allowance <= segments[i, 2]:
            segments[i, 0] = 0.5 * motion.allowance


@kernel
def _rise_code(
    problem: Problem, motion: Motion, leg: Leg, at_back: bool, pair: int, start: PieceStart,
    room: Room,
) -> int:  # fmt: skip
    """Result bits of one piece while the punch comes to the flat sheet and leaves the bend.

    It leaves a bend that springs back: looked at as it is loaded, and as it stays; it rises as far
    as it had gone down, and by its lift.
    """
    if not leg.made & ((1 << start.k) - 1):
        return 0
    mirror = 1.0 if at_back else -1.0
    count = piece_outline(problem, leg, start, 0.0, room.segments)
    upper = _upper(problem, pair, _UPPER, problem.margin)
    for theta in (0.0, motion.theta_max, released(problem, motion, leg.bend)):
        rise = problem.lift[pair] + depth_at(motion, theta)
        course = Course(motion, True, theta, 0.0, rise, False)
        code = swept_code(course, upper, room, count, mirror)
        if code:
            return int(code)
    return 0
