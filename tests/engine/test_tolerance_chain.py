"""Expected errors against a thousand parts made with everything off at once, at random.

The parts are made by hand (``leg_by_hand``): in each step the sheet, as it has come out so far,
is pushed against a finger that stands a little beside its place, and the bend takes a little
more or less than was counted on. What a rule would read on the flats is compared in its spread.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import pytest
from bending_parts import bend, folded, part
from leg_by_hand import Leg, Slack, faces
from numpy.typing import NDArray
from order_parts import problem_of, random_part

from flangebook.bending.clearance.problem import LEFT, RIGHT, Problem, leg_set
from flangebook.bending.motion.tolerance import SIGMAS, expected_errors_mm
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE, ROUNDED, gauge_place
from flangebook.bending.ordering.search import Move
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import setbacks_mm

MADE = 1500
SPREAD = 5.0 / math.sqrt(2.0 * MADE)
"""Five standard deviations of the spread of so many parts."""
FINGER = 4

Floats = NDArray[np.float64]


@dataclass
class Sheet:
    """A sheet being made into a part: bend lines, what each bend takes, inside radii [mm]."""

    lines: Floats
    taken: Floats
    radii: Floats


def leg(problem: Problem, sheet: Sheet, done: set[int], move: Move) -> Leg:
    """What lies behind the active bend, the end of ``move`` to the back and its inside up."""
    line, thickness = sheet.lines[move.bend], problem.thickness
    beyond = range(move.bend + 1, len(sheet.lines))
    if move.end == LEFT:
        beyond = range(move.bend - 1, -1, -1)
    runs, bends, start = [], [], 0.0
    for n in beyond:
        if n in done:
            half = sheet.taken[n] / 2.0
            runs.append(abs(sheet.lines[n] - line) - half - start)
            start = abs(sheet.lines[n] - line) + half
            same = math.copysign(1.0, problem.angle[n] * problem.angle[move.bend])
            bends.append((same * abs(problem.angle[n]), sheet.radii[n]))
    edge = problem.length - line if move.end == RIGHT else line
    return Leg(thickness, (*runs, edge - start), tuple(bends))


def reach(of: Leg, kind: int, between: int, bottom: float, top: float) -> float:
    """X of that face at the finger's heights."""
    for what, count, near, far in faces(of, Slack()):
        if (what, count) == (kind, between):
            ends = sorted((near, far), key=lambda p: p.imag)
            low, high = max(bottom, ends[0].imag), min(top, ends[1].imag)
            if kind == ROUNDED or low > high:
                return max(near.real, far.real)
            across = (ends[1].real - ends[0].real) / max(ends[1].imag - ends[0].imag, 1e-12)
            return max(ends[0].real + across * (y - ends[0].imag) for y in (low, high))
    raise AssertionError("the face is gone")


def made(problem: Problem, moves: Sequence[Move], sheet: Sheet, gauge_off: Floats) -> None:
    """Bend line by bend line, each where the finger lets it lie."""
    done: set[int] = set()
    nominal = problem.at.copy()
    for move in moves:
        finished = sum(1 << n for n in done)
        outwards = int(leg_set(finished, move.bend, move.end, len(nominal)))
        code, kind, x, _, between, bottom = gauge_place(
            problem, move.bend, move.end, move.pair, outwards
        )
        assert code == 0
        top = bottom + problem.finger[FINGER]
        sheet.lines[move.bend] = nominal[move.bend]
        for _ in range(2):  # moving the sheet moves the face by as much
            behind = reach(leg(problem, sheet, done, move), kind, between, bottom, top)
            beyond = behind - x - gauge_off[move.bend]
            sheet.lines[move.bend] += beyond if move.end == RIGHT else -beyond
        done.add(move.bend)


def read(of: Part, problem: Problem, sheet: Sheet) -> Floats:
    """The outside dimensions, by a rule laid on the flats."""
    ends = np.concatenate([[0.0], sheet.lines, [problem.length]])
    setback = sheet.radii - problem.radius + np.array(setbacks_mm(of, folded(of)))
    deduct = np.concatenate([[0.0], 2.0 * setback - sheet.taken, [0.0]])
    return np.diff(ends) + (deduct[:-1] + deduct[1:]) / 2.0


def spreads(of: Part, problem: Problem, moves: Sequence[Move], radius_mm: float) -> Floats:
    """Standard deviation of each flat over many parts.

    radius_mm: by how much the radii vary too, the deductions staying what they are.
    """
    rng = np.random.default_rng(71)
    bends, sizes = len(problem.at), []
    for _ in range(MADE):
        radii_off = rng.normal(0.0, radius_mm, bends) if radius_mm else np.zeros(bends)
        deduct_off = rng.normal(0.0, np.sqrt(problem.bend_variance))
        taken = problem.allowance + 2.0 * radii_off - deduct_off
        sheet = Sheet(problem.at.copy(), taken, problem.radius + radii_off)
        made(problem, moves, sheet, rng.normal(0.0, math.sqrt(problem.gauge_variance), bends))
        sizes.append(read(of, problem, sheet))
    assert np.mean(sizes, axis=0) == pytest.approx(np.array(of.flats_mm), abs=0.05)
    return np.std(sizes, axis=0)


def place(problem: Problem, finished: int, n: int, end: int) -> tuple[int, int, int]:
    """Whether bend n can be gauged at that end (0), what against and past how many bends."""
    outwards = int(leg_set(finished, n, end, len(problem.at)))
    code, kind, _, _, between, _ = gauge_place(problem, n, end, 0, outwards)
    return code, kind, between


def any_order(rnd: random.Random, problem: Problem) -> list[Move] | None:
    """Bends in any order that can be gauged, clear of the tools or not; past many bends if it
    can be, since that is the harder sum."""
    bends = list(range(len(problem.at)))
    rnd.shuffle(bends)
    moves, finished = [], 0
    for n in bends:
        places = {end: place(problem, finished, n, end) for end in (LEFT, RIGHT)}
        ends = [end for end, (code, _, _) in places.items() if code == 0]
        if not ends:
            return None
        moves.append(Move(n, max(ends, key=lambda end: places[end][2]), 0))
        finished |= 1 << n
    return moves


def case(seed: int) -> tuple[Part, Problem, list[Move]]:
    """A part, its problem with variances of its own, and an order.

    Winding parts, corrugated sheets (edges behind blunt bends), flanges that stand up only after
    two blunt bends.
    """
    rnd = random.Random(9_100 + seed)
    while True:
        of = random_part(rnd, rnd.randint(3, 6), "deck" if seed % 3 == 1 else "winding")
        if seed % 3 == 2:
            flats = [rnd.uniform(25.0, 70.0) for _ in range(5)]
            blunt = [bend(135.0), bend(135.0)]
            of = part(flats, [bend(), *blunt, bend(90.0, "down")])
        problem = problem_of(of)._replace(
            gauge_variance=rnd.uniform(0.02, 0.1) ** 2,
            bend_variance=np.array([rnd.uniform(0.02, 0.15) ** 2 for _ in of.bends]),
        )
        moves = any_order(rnd, problem)
        if moves and expected_errors_mm(problem, moves):
            return of, problem, moves


@pytest.mark.parametrize("seed", range(10))
def test_the_spread_of_parts_made_at_random(seed: int) -> None:
    of, problem, moves = case(seed)
    said = expected_errors_mm(problem, moves)
    found = spreads(of, problem, moves, 0.0)
    assert np.array(said) / SIGMAS == pytest.approx(found, rel=SPREAD)


def test_square_bends_may_come_out_rounder_too() -> None:
    """Where the deduction stays, radii move no outside face: a hat gauged over its bends."""
    of = part((20.0, 30.0, 50.0, 30.0, 20.0), [bend(90.0, w) for w in ("up", "down", "down", "up")])  # type: ignore[arg-type]
    problem = problem_of(of)._replace(
        gauge_variance=0.03**2, bend_variance=np.array([0.05, 0.1, 0.02, 0.08]) ** 2
    )
    moves = [Move(0, LEFT, 0), Move(3, RIGHT, 0), Move(1, LEFT, 0), Move(2, LEFT, 0)]
    said = expected_errors_mm(problem, moves)
    assert said is not None
    found = spreads(of, problem, moves, 0.2)
    assert np.array(said) / SIGMAS == pytest.approx(found, rel=SPREAD)


def test_the_orders_looked_at_gauge_at_every_kind_of_place() -> None:
    """What the parts above stand on: contacts past several bends are among them."""
    seen = set()
    for seed in range(10):
        _, problem, moves = case(seed)
        finished = 0
        for move in moves:
            _, kind, between = place(problem, finished, move.bend, move.end)
            seen.add((kind, min(between, 2)))
            finished |= 1 << move.bend
    assert {(EDGE, 0), (EDGE, 2), (FLANGE, 1), (FLANGE, 2), (ROUNDED, 2)} <= seen
