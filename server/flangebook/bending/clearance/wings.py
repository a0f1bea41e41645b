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

import numpy as np

from flangebook.bending.clearance.motion import Motion, depth_at, motion_of, released
from flangebook.bending.clearance.pieces import MOST_SEGMENTS, fold_angle, piece_outline, pose_after
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
    Ints,
    Problem,
    is_bent,
    wing_count,
    wing_fold,
)
from flangebook.bending.clearance.sheet_on_sheet import TOUCH_MM, on_itself_code
from flangebook.bending.clearance.sweep import BENDING, RISING, swept_code
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
    if not rising and _run(problem, bend, side, made) < problem.least_run[bend, pair]:
        return SHORT_FLANGE
    count = wing_count(bend, side, len(problem.at))
    kind = PAST_PUNCH if rising else THROUGH_BEND
    key0 = (((bend * 2 + side) * 2 + at_back) * len(problem.change) + pair) * 64
    clear, code = _known_clear(sweeps, kind, key0, count, made)
    if code or clear == count:
        return code
    motion = motion_of(problem, bend, pair)
    x, y, heading, first = 0.0, 0.0, 0.0, 0
    segments, moved = np.empty((MOST_SEGMENTS, 4)), np.empty((MOST_SEGMENTS, 4))
    chosen = np.empty(len(problem.edges), np.int64)
    for k in range(count + 1):
        bent = is_bent(made, k)
        if bent and first == 0:
            first = k
        key = key_of(kind, key0 + k, made & ((1 << k) - 1))
        if k > clear:
            code = known_code(sweeps, key)
        if code != UNKNOWN:
            pass
        elif rising:
            code = _rise_code(problem, motion, bend, side, at_back, pair, k, bent, first,
                              x, y, heading, segments, moved, chosen)  # fmt: skip
        else:
            code = _piece_code(problem, motion, bend, side, at_back, pair, k, bent, first,
                               x, y, heading, made, segments, moved, chosen)  # fmt: skip
            if code == 0:
                code = on_itself_code(problem, bend, side, k, bent, x, y, heading, made, segments,
                                      moved, sweeps)  # fmt: skip
        if k > clear:
            note_code(sweeps, key, code)
        if code:
            return int(code)
        x, y, heading = pose_after(problem, bend, side, k, bent, x, y, heading)
    return 0


@kernel
def _known_clear(sweeps: Sweeps, kind: int, key0: int, count: int, made: int) -> tuple[int, int]:
    """The last piece of a wing that is known to be clear, -1 if none is; or what blocks the wing.

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
    for k in range(wing_count(bend, side, len(problem.at))):
        if made >> k & 1:
            fold = wing_fold(bend, side, k)
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
    return int(code)


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
    """Result bits of one piece while the punch comes to the flat sheet and leaves the bend.

    It leaves a bend that springs back: looked at as it is loaded, and as it stays; it rises as far
    as it had gone down, and by its lift.
    """
    if first == 0:
        return 0
    mirror = 1.0 if at_back else -1.0
    count = piece_outline(problem, bend, side, k, bent, x, y, heading, 0.0, segments)
    for theta in (0.0, motion.theta_max, released(problem, motion, bend)):
        rise = problem.lift[pair] + depth_at(motion, theta)
        code = swept_code(
            motion, RISING, 0.0, rise, theta, segments, count, mirror,
            problem.edges, problem.edge_of, problem.upper[pair, 0], problem.upper[pair, 1],
            _UPPER, False, problem.margin, moved, chosen,
        )  # fmt: skip
        if code:
            return int(code)
    return 0
