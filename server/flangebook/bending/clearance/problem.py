"""The order problem as plain arrays, the one form that search, clearance and gauge rule share.

Bends and tool pairs are numbered from 0 here; a set of finished bends is an integer, bit i for
bend i. A *leg* is what lies on one side of the active bend: its folds are counted outwards from
the bend line, so the same leg has the same numbers whichever way the part is turned, and its
set of finished bends is an integer too, bit i for the i-th fold outwards.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from flangebook.bending.compiled import kernel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

LEFT, RIGHT = 0, 1
"""Ends of the part, and the legs towards them."""

PUNCH, HOLDER, RAM, DIE, BED, FLOOR = range(6)
"""What a tool edge belongs to (``Problem.edge_of``)."""

# Why a step cannot be made, one bit each; 0 is "it can".
INTO_PUNCH, INTO_HOLDER, INTO_RAM, INTO_DIE, INTO_BED, INTO_FLOOR = 1, 2, 4, 8, 16, 32
INTO_SHEET = 64  # the part runs into itself
NO_GAUGE = 128
SHORT_FLANGE = 256
TRAPPED = 512  # the punch cannot come and go straight, and the part cannot be slid out
WRONG_TOOL = 1024  # this pair of tools cannot make this bend
AGAINST_LIMIT = 2048
BANNED = 4096  # a closer look at the whole step refused it
SLIDES = 8192  # no refusal: part or punch goes in or out along the tools


class Problem(NamedTuple):
    """A part and its tools. n bends, P tool pairs, E tool edges; mm, radians, mm2.

    at: bend lines from the blank's left end, (n,). angle: finished bend angles, signed, "up"
    positive, (n,). radius, allowance: of the finished bends, (n,).
    strokes: what pair p does to bend b, (n, P, 4): half the sharpest loaded bend angle
    (over-bend and its band included), inside radius, allowance at that angle, punch depth there.
    least_run: straight sheet that bend b needs beside its line in pair p, (n, P).
    allowed: whether pair p can make bend b at all, (n, P). change: how many tools are changed
    from pair p to q, (P, P).
    edges: (E, 4) x1, y1, x2, y2 of the tools' outlines, run through counter-clockwise, +x to the
    back gauge; edge_of: what each belongs to, (E,). upper: first and one past the last edge of
    punch, holder and ram of pair p, tip at (0, 0), (P, 2). lower: likewise die, bed and floor,
    die's top face at y = 0, (P, 2).
    die: shoulder centre x_c, shoulder radius, half width of pair p's die, (P, 3).
    punch: lift_mm, how far the punch can rise from first touch, (P,).
    margin: clearance wanted. can_slide: whether the part can be slid out along the tools.
    finger: gauge X from, to, R from, to, finger height, depth, half width of the bed, die height
    of pair p apart from it (``die_height``, (P,)), (7,).
    gauge_variance: of the back gauge itself [mm2]; bend_variance: that each finished bend between
    contact and line adds, (n,).
    critical: whether flat i is to be gauged directly, (n + 1,).
    before: bends that must be finished before bend b, as a set, (n,).
    no_turn_over, no_turn_end, no_change: the user's limits.
    """

    thickness: float
    length: float
    at: Floats
    angle: Floats
    radius: Floats
    allowance: Floats
    strokes: Floats
    least_run: Floats
    allowed: Bools
    change: Ints
    edges: Floats
    edge_of: Ints
    upper: Ints
    lower: Ints
    die: Floats
    die_height: Floats
    lift: Floats
    margin: float
    can_slide: bool
    finger: Floats
    gauge_variance: float
    bend_variance: Floats
    critical: Bools
    before: Ints
    no_turn_over: bool
    no_turn_end: bool
    no_change: bool


class Leg(NamedTuple):
    """What lies on one side of a bend: its finished folds are a set, bit i for the i-th outwards;
    all bits (-1) where every one is finished."""

    bend: int
    side: int
    made: int


@kernel
def leg_count(bend: int, side: int, bends: int) -> int:
    """How many folds the leg on that side has."""
    return bend if side == LEFT else bends - 1 - bend


@kernel
def leg_fold(bend: int, side: int, i: int) -> int:
    """The bend that is the i-th fold (from 0) outwards on that side."""
    return bend - 1 - i if side == LEFT else bend + 1 + i


@kernel
def leg_set(made: int, bend: int, side: int, bends: int) -> int:
    """The finished bends of a leg, bit i for its i-th fold outwards."""
    if side == RIGHT:
        return made >> (bend + 1)
    found = 0
    for i in range(bend):
        if made >> (bend - 1 - i) & 1:
            found |= 1 << i
    return found


@kernel
def is_bent(made: int, k: int) -> bool:
    """Whether the k-th fold outwards (from 1) of a leg is finished; False for 0, the line."""
    return k > 0 and (made >> min(k - 1, 62)) & 1 == 1
