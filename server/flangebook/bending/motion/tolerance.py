"""How far each outside dimension may be off: what the gauging chain of an order leaves.

Two things go wrong by themselves in each step: the gauge stops a little beside where it was set,
and the bend takes a little more or less of the sheet than was counted on. Where a bend is gauged
past finished bends, their errors come in as well, and what a bend line is off by, the flats on
both its sides are. Each is small and knows nothing of the others, so their squares add up (root
sum of squares; the blank's own length and edges are taken as true, and so are the angles, which
are corrected on the first piece).
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from flangebook.bending.clearance.problem import Floats, Problem, leg_count, leg_fold, leg_set
from flangebook.bending.ordering.best_first import Move
from flangebook.bending.ordering.gauge_rule import gauge_place
from flangebook.bending.tools.tooling import Press

SIGMAS = 2.0
"""Standard deviations in an expected error: about 19 of 20 pieces lie within (normal law)."""
USUAL_REPEATABILITY_MM = 0.1
"""Of a back gauge whose own is not known, either way (common practice, no source)."""
SMALL_MM = 0.01


def repeatability_mm(press: Press) -> tuple[float, bool]:
    """How well the back gauge comes back to a place, either way, SIGMAS standard deviations [mm];
    and whether that is the press's own figure, not the usual one."""
    own = press.gauge_repeatability_mm
    return (USUAL_REPEATABILITY_MM, False) if own is None else (own, True)


def gauge_variance_mm2(press: Press) -> float:
    """Variance of the place where the back gauge stops [mm2].

    Source: definition of variance; what is usual is common practice, no source.

    >>> from flangebook.bending.samples import BRAKE
    >>> round(gauge_variance_mm2(BRAKE), 6)  # 0.1 mm are two standard deviations
    0.0025
    """
    return (repeatability_mm(press)[0] / SIGMAS) ** 2


def root_sum_square(sensitivities: Floats, variances: Floats) -> float:
    """Standard deviation [mm] of a length that depends on several figures, to first order.

    The figures are independent of one another.

    u = sqrt(sum c_i^2 u_i^2), c_i how much the result changes with figure i, u_i^2 its variance.

    Source: JCGM 100:2008 (GUM), equations 10 and 11a.

    >>> root_sum_square(np.array([1.0, -1.0]), np.array([9.0, 16.0]))
    5.0
    """
    return math.sqrt(float(sensitivities**2 @ variances))


def expected_errors_mm(problem: Problem, moves: Sequence[Move]) -> tuple[float, ...] | None:
    """By how much each flat's outside dimension is expected to be off, either way [mm].

    SIGMAS standard deviations each. moves: the order, first step first. problem: with its gauge's
    and bends' variances. None where a step cannot be gauged, or at a place that is lost when
    anything is the least bit off.

    Source: own derivation of the chain; JCGM 100:2008 (GUM) for the sum, as
    :func:`root_sum_square`.

    >>> from flangebook.bending.samples import smallest_problem
    >>> from flangebook.bending.clearance.problem import LEFT
    >>> order = [Move(0, LEFT, 0), Move(1, LEFT, 0)]
    >>> [round(error, 2) for error in expected_errors_mm(smallest_problem(), order)]
    [0.22, 0.22, 0.32]
    """
    bends = len(problem.at)
    lines: Floats = np.zeros((bends, 2 * bends))  # each bend line, by gauge and bend errors
    made = 0
    for move in moves:
        chain = _chain(problem, made, move)
        if chain is None:
            return None
        own, others = chain
        off = np.zeros(2 * bends)
        off[move.bend] = 1.0
        for fold, by_line, by_allowance in others:
            off -= by_line * lines[fold]
            off[bends + fold] += by_allowance
        lines[move.bend] = off / own
        made |= 1 << move.bend
    variances = np.concatenate([np.full(bends, problem.gauge_variance), problem.bend_variance])
    sums = (root_sum_square(_flat(lines, i), variances) for i in range(bends + 1))
    return tuple(SIGMAS * u for u in sums)


def _flat(lines: Floats, i: int) -> Floats:
    """A flat's dimension by all errors: its bend lines' and half its bends' deductions."""
    bends = len(lines)
    by: Floats = np.zeros(2 * bends)
    if i < bends:
        by += lines[i]
        by[bends + i] += 0.5
    if i > 0:
        by -= lines[i - 1]
        by[bends + i - 1] += 0.5
    return by


_Chain = tuple[float, list[tuple[int, float, float]]]
_Place = tuple[int, int, float]


def _chain(problem: Problem, made: int, move: Move) -> _Chain | None:
    """How gauge X goes with the line of the bend itself, and with each finished bend behind it:
    its number, by its line, by its allowance. None without a (lasting) place for the gauge."""
    bends = len(problem.at)
    leg = int(leg_set(made, move.bend, move.end, bends))
    here = _place(problem, move, leg)
    if here is None:
        return None
    own = _slope(problem, move, leg, here, "at", move.bend)
    if own is None:
        return None
    others = []
    for i in range(int(leg_count(move.bend, move.end, bends))):
        if leg >> i & 1:
            fold = int(leg_fold(move.bend, move.end, i))
            by_line = _slope(problem, move, leg, here, "at", fold)
            by_allowance = _slope(problem, move, leg, here, "allowance", fold)
            if by_line is None or by_allowance is None:
                return None
            others.append((fold, by_line, by_allowance))
    return own, others


def _place(problem: Problem, move: Move, leg: int) -> _Place | None:
    """What the finger stands against, finished bends between, X; None without a place."""
    code, kind, x, _, between, _ = gauge_place(problem, move.bend, move.end, move.pair, leg)
    return None if code else (int(kind), int(between), float(x))


def _slope(
    problem: Problem, move: Move, leg: int, here: _Place, field: str, bend: int
) -> float | None:
    """How fast gauge X goes with one figure of a bend, the contact staying what it is; None where
    it does not stay."""
    for step in (SMALL_MM, -SMALL_MM):
        moved = getattr(problem, field).copy()
        moved[bend] += step
        there = _place(problem._replace(**{field: moved}), move, leg)
        if there is not None and there[:2] == here[:2]:
            return (there[2] - here[2]) / step
    return None
