"""Expected errors of outside dimensions, against parts made again with one thing off at a time.

The parts are made with the strip and the gauge rule of ``bending``: each bend line goes where the
finger, set to the X that was planned, lets it go. No compiled function is asked here.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass, replace

import pytest
from bending_parts import DIE, PRESS, PUNCH, bend, folded, part
from order_parts import problem_of, random_part

from flangebook.bending.clearance.problem import LEFT, RIGHT, Problem
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.motion.gauging import Gauge, gauge_options
from flangebook.bending.motion.tolerance import SIGMAS, expected_errors_mm
from flangebook.bending.ordering.search import Move, search
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import strip_of

OFF_MM = 0.05


def sigma(problem: Problem, bend_: int = 0) -> float:
    return math.sqrt(float(problem.bend_variance[bend_]))


def test_each_flange_of_a_channel_gauged_at_its_edge() -> None:
    """Flat 1 = line 1 + half a deduction; flat 2 = line 2 - line 1 + two halves of deductions."""
    problem = problem_of(part((40.0, 60.0, 30.0), [bend(), bend()]))
    gauge, one = math.sqrt(problem.gauge_variance), sigma(problem)
    found = expected_errors_mm(problem, [Move(0, LEFT, 0), Move(1, RIGHT, 0)])
    end = SIGMAS * math.hypot(gauge, one / 2.0)
    web = SIGMAS * math.sqrt(2.0 * gauge**2 + 2.0 * (one / 2.0) ** 2)
    assert found == pytest.approx((end, web, end), rel=1e-6)


def test_a_web_gauged_at_the_finished_flange_is_as_good_as_an_edge() -> None:
    """The finger on flat 1's face: flat 2 is off by the gauge and half its own bend only; what
    both lines are off by is left to the last flat."""
    problem = problem_of(part((40.0, 60.0, 30.0), [bend(), bend()]))
    gauge, one = math.sqrt(problem.gauge_variance), sigma(problem)
    found = expected_errors_mm(problem, [Move(0, LEFT, 0), Move(1, LEFT, 0)])
    direct = SIGMAS * math.hypot(gauge, one / 2.0)
    # line 1 = g1; line 2 = line 1 + g2 - e1 / 2; flat 3 = -line 2 + e2 / 2
    last = SIGMAS * math.sqrt(2.0 * gauge**2 + (one / 2.0) ** 2 + (one / 2.0) ** 2)
    assert found == pytest.approx((direct, direct, last), rel=1e-6)


@dataclass(frozen=True)
class Made:
    """A part made: straight length of each flat, and where the finger stood in each step."""

    straights_mm: tuple[float, ...]
    places: tuple[Gauge, ...]


def made(
    of: Part, moves: Sequence[Move], gauge_off: list[float], bent_off: list[float],
    planned: Made | None,
) -> Made:  # fmt: skip
    """The part, each gauge and each bend's deduction off by so much from what was planned."""
    bends = folded(of)
    whole = strip_of(of, bends).folds
    lines = [fold.at_mm for fold in whole]
    allowances = [f.allowance_mm - off for f, off in zip(whole, bent_off, strict=True)]
    done: set[int] = set()
    places = []
    for step, move in enumerate(moves):
        flat = strip_of(of, bends, {n + 1 for n in done})

        def strip(line: float, at: int = move.bend, flat: Strip = flat) -> Strip:
            folds = list(flat.folds)
            for n in done:
                folds[n] = replace(whole[n], at_mm=lines[n], allowance_mm=allowances[n])
            folds[at] = replace(folds[at], at_mm=line)
            return replace(flat, folds=tuple(folds))

        if planned is not None:
            alike = planned.places[step]
            wanted = alike.x_mm + gauge_off[move.bend]
            line = lines[move.bend]
            here = place(of, strip(line), move, alike).x_mm
            slope = (place(of, strip(line + 0.01), move, alike).x_mm - here) / 0.01
            lines[move.bend] = line + (wanted - here) / slope
            assert place(of, strip(lines[move.bend]), move, alike).x_mm == pytest.approx(wanted)
        places.append(
            place(of, strip(lines[move.bend]), move, planned.places[step] if planned else None)
        )
        done.add(move.bend)
    ends = [0.0, *lines, strip_of(of, bends).length_mm]
    half = [0.0, *(a / 2.0 for a in allowances), 0.0]
    straights = tuple(
        ends[i + 1] - ends[i] - half[i] - half[i + 1] for i in range(len(of.flats_mm))
    )
    return Made(straights, tuple(places))


def place(of: Part, strip: Strip, move: Move, alike: Gauge | None) -> Gauge:
    """The best place at that end, or the one on the same face as before."""
    end = "left" if move.end == LEFT else "right"
    direction = of.bends[move.bend].direction
    options = gauge_options(strip, move.bend + 1, direction, PRESS, DIE, punch=PUNCH)
    mine = [g for g in options if g.end == end and g.reachable]
    if alike is None:
        return mine[0]
    same = (alike.against, alike.bends_between, alike.rounded)
    return next(g for g in mine if (g.against, g.bends_between, g.rounded) == same)


def test_nothing_is_said_where_nothing_can_be_gauged() -> None:
    problem = problem_of(part((40.0, 60.0), [bend()]))
    short = problem._replace(finger=problem.finger.copy())
    short.finger[0], short.finger[1] = 900.0, 901.0
    assert expected_errors_mm(short, [Move(0, LEFT, 0)]) is None


@pytest.mark.parametrize("seed", range(16))
def test_errors_add_up_as_in_parts_made_with_one_thing_off(seed: int) -> None:
    rng = random.Random(f"tolerance {seed}")
    while True:
        of = random_part(rng, rng.randint(2, 5))
        problem = problem_of(of)
        found = search(problem)
        if found.status == "found":
            break
    said = expected_errors_mm(problem, found.sequence)
    assert said is not None
    bends = len(of.bends)
    true = made(of, found.sequence, [0.0] * bends, [0.0] * bends, None)
    squares = [0.0] * (bends + 1)
    for i in range(bends):
        alone = [OFF_MM if k == i else 0.0 for k in range(bends)]
        none = [0.0] * bends
        for gauge, bent, variance in (
            (alone, none, problem.gauge_variance),
            (none, alone, float(problem.bend_variance[i])),
        ):
            off = made(of, found.sequence, gauge, bent, true)
            for flat, (a, b) in enumerate(zip(off.straights_mm, true.straights_mm, strict=True)):
                squares[flat] += ((a - b) / OFF_MM) ** 2 * variance
    assert said == pytest.approx([SIGMAS * math.sqrt(s) for s in squares], rel=0.01, abs=1e-3)
