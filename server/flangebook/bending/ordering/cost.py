"""What an order costs: handling first, then care for what is made, as one whole number.

An order is better than another when it has less of the first thing in which they differ, in
the order of ``NAMES``. So that the search can add and compare, all counts are packed into one
64-bit integer, each in units larger than anything the counts behind it can come to.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import prod

import numpy as np

from flangebook.bending.clearance.problem import Bools, Ints

NAMES = (
    "blocked",  # steps that cannot be made or are against a limit; 0 in an order that can
    "critical",  # critical dimensions that are not gauged directly
    "turn_overs",  # consecutive bends in opposite directions
    "held_close",  # the operator holds the short side, closer to the die than hands should be
    "turn_ends",  # consecutive bends gauged at opposite ends
    "tool_changes",
    "slides",  # steps whose part or punch goes in or out sideways, along the tools
    "variance",  # of the gauging, in steps of ``variance_step_mm2``
    "share",  # of the blank at the gauge beyond half of it, in steps of SHARE_STEP
)
BLOCKED, CRITICAL, TURN_OVER, HELD_CLOSE, TURN_END, CHANGE, SLIDE, VARIANCE, SHARE = range(9)

HAND_DISTANCE_MM = 102.0  # 4 in, OSHA CPL 02-01-025 as quoted by SMACNA's employers' manual
SHARE_STEP = 0.05
VARIANCE_STEPS_MM2 = (1e-4, 1e-3, 1e-2)
MOST = 2**61
"""No order costs as much, so that two costs may be added without a look."""
NO_WAY = 2**62
"""The cost of what may not be."""

_SHARES = round(0.5 / SHARE_STEP)
_VARIANCE_MM2 = 0.5  # of one step, up to which variances are told apart


@dataclass(frozen=True, slots=True)
class Scale:
    """How counts are packed for a part of ``bends`` bends.

    units: of each count, in the order of NAMES. most_variance: of one step, in steps; more
    counts as that. variance_step_mm2: the finest step that fits, coarser for very many bends.
    """

    bends: int
    units: tuple[int, ...]
    most_variance: int
    variance_step_mm2: float

    def packed(self, counts: tuple[int, ...]) -> int:
        """The one number for these counts."""
        return sum(count * unit for count, unit in zip(counts, self.units, strict=True))

    def counts(self, packed: int) -> tuple[int, ...]:
        """The counts that were packed into that number."""
        found = []
        for unit in self.units:
            count, packed = divmod(packed, unit)
            found.append(count)
        return tuple(found)

    def cost(self, packed: int) -> Cost:
        """The counts by name."""
        counts = self.counts(packed)
        return Cost(
            blocked=counts[BLOCKED],
            critical=counts[CRITICAL],
            turn_overs=counts[TURN_OVER],
            held_close=counts[HELD_CLOSE],
            turn_ends=counts[TURN_END],
            tool_changes=counts[CHANGE],
            slides=counts[SLIDE],
            gauging_variance_mm2=counts[VARIANCE] * self.variance_step_mm2,
            share_beyond_half=counts[SHARE] * SHARE_STEP,
        )


@dataclass(frozen=True, slots=True)
class Cost:
    """What an order costs, dearest first; NAMES says what each is."""

    blocked: int
    critical: int
    turn_overs: int
    held_close: int
    turn_ends: int
    tool_changes: int
    slides: int
    gauging_variance_mm2: float
    share_beyond_half: float


def scale_for(bends: int, change: Ints) -> Scale:
    """The packing for that many bends.

    change: how many tools are changed from one tool pair to another.

    >>> scale_for(2, np.zeros((1, 1), np.int64)).units[-2:]
    (21, 1)
    """
    counts = [2 * bends, bends + 1, bends, bends, bends, bends * int(change.max(initial=0)), bends]
    shares = _SHARES * bends + 1
    most = (MOST // (prod(top + 1 for top in counts) * shares) - 1) // max(bends, 1)
    fine = [step for step in VARIANCE_STEPS_MM2 if most * step >= _VARIANCE_MM2]
    step = fine[0] if fine else VARIANCE_STEPS_MM2[-1]
    units, unit = [1], shares
    for radix in (most * bends + 1, *(top + 1 for top in reversed(counts))):
        units.append(unit)
        unit *= radix
    return Scale(bends, tuple(reversed(units)), most, step)


def transitions(scale: Scale, change: Ints, *, turn: bool, end: bool, tools: bool) -> Ints:
    """What it costs to go from one kind of step to the next, by kind before and kind after.

    The kind of a step is its direction, its gauged end and its tool pair; ``kind_of`` numbers
    them. turn, end, tools: the user forbids turning over, turning ends, changing tools; a step
    that would need it is blocked.
    """
    directions, ends, pairs = np.unravel_index(np.arange(4 * len(change)), (2, 2, len(change)))
    over = directions[:, None] != directions
    turned = ends[:, None] != ends
    changed = change[pairs[:, None], pairs]
    forbidden = (turn & over) | (end & turned) | (tools & (changed > 0))
    return np.asarray(
        over * scale.units[TURN_OVER]
        + turned * scale.units[TURN_END]
        + changed * scale.units[CHANGE]
        + forbidden * scale.units[BLOCKED],
        np.int64,
    )


def no_better(transition: Ints, blocked: int | None) -> Ints:
    """By how much a step of one kind can be worse placed than one of another, at most.

    Where a set of bends is reached with a step of kind i after it, and also with one of kind k,
    the first is not needed if it costs at least the second plus this [i, k]: whatever goes
    before can go before the other at no more. blocked: cost of a blocked step where such steps
    are no way out; None where they are.
    """
    worse = np.full_like(transition, -MOST)
    for costs in transition:  # one kind before at a time: all at once take gigabytes for 100 tools
        gap = costs - costs[:, None]  # by i, k
        if blocked is not None:
            gap[:, costs >= blocked] = MOST
            gap[costs >= blocked] = -MOST
        np.maximum(worse, gap, out=worse)
    worse[worse == -MOST] = 0
    same = np.arange(len(transition))
    worse[same, same] = np.maximum(worse[same, same], 0)
    return np.ascontiguousarray(worse, np.int64)


def ways_for(transition: Ints, hint: Ints, upward: Bools, blocked: int | None) -> tuple[Ints, Ints]:
    """The ways to make each bend before a step of each kind, cheapest first, and their costs.

    hint: what each bend costs at each end at least, (bends, 2). upward: which bends go up. blocked:
    as in ``no_better``. -> kinds of step, and the least that each costs with what it takes to go
    on, NO_WAY where it may not be: both (bends, kinds + 1, ways), the last of the kinds for a step
    that nothing follows.
    """
    kinds = len(transition)
    ways, pairs = kinds // 2, kinds // 4
    before = np.where(upward, 0, ways)[:, None] + np.arange(ways)
    going = np.append(transition, np.zeros((kinds, 1), np.int64), axis=1)
    cost = going[before].transpose(0, 2, 1)
    least = cost + np.repeat(hint, pairs, axis=1)[:, None, :]
    if blocked is not None:
        least[cost >= blocked] = NO_WAY
    order = np.argsort(least, axis=2, kind="stable")
    kind = np.take_along_axis(np.broadcast_to(before[:, None, :], least.shape), order, axis=2)
    cost = np.take_along_axis(least, order, axis=2)
    return np.ascontiguousarray(kind, np.int64), np.ascontiguousarray(cost, np.int64)
