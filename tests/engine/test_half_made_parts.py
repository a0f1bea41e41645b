"""Half-made parts that run into themselves: some do, though the finished part does not."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest
from bending_parts import bend, folded, part
from order_parts import ACUTE, KNIFE, fits, problem_of

from flangebook.bending.clearance.legs import leg_code
from flangebook.bending.clearance.problem import INTO_SHEET, LEFT, RIGHT, Leg, leg_set
from flangebook.bending.clearance.sheet_on_sheet import legs_code
from flangebook.bending.clearance.sweeps import new_sweeps
from flangebook.bending.geometry.crossing import meeting
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.ordering.search import as_arrays
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import strip_of

THINNER_MM = 0.14
"""More than the sweep allows as touching."""


def thinner(strip: Strip) -> Strip:
    """The same middle line, the sheet a little thinner."""
    folds = [replace(f, inside_radius_mm=f.inside_radius_mm + THINNER_MM / 2) for f in strip.folds]
    return Strip(strip.thickness_mm - THINNER_MM, strip.length_mm, tuple(folds))


def code_of(of: Part, number: int, made: int) -> int:
    """What the sweeps say of both legs and of leg on leg, short flanges let pass."""
    problem = as_arrays(problem_of(of, (KNIFE,), die=ACUTE))
    problem = problem._replace(least_run=problem.least_run * 0.0)
    sweeps, count = new_sweeps(problem), len(of.bends)
    code = legs_code(problem, number, 0, made, sweeps)
    for side in (LEFT, RIGHT):
        leg = leg_set(made, number, side, count)
        code |= leg_code(problem, Leg(number, side, leg), side == RIGHT, 0, sweeps)
    return code


def tight(rnd: random.Random) -> Part:
    """A part of short flats and sharp bends that does not meet itself when it is finished."""
    while True:
        count = rnd.randint(3, 6)
        ways = [rnd.choice(("up", "up", "up", "down")) for _ in range(count)]
        bends = [bend(rnd.choice((90.0, 60.0, 60.0, 120.0)), way) for way in ways]
        of = part([rnd.uniform(14.0, 60.0) for _ in range(count + 1)], bends)
        if fits(of):
            return of


def test_an_end_that_comes_back_through_the_sheet_it_came_from() -> None:
    """Bends 4 and 5 turn 135 and 90 degrees, so what is behind them comes back down: 34 mm of it,
    on to flat sheet 10 mm before bend 4. Bends 2, 3 and 6 are still flat, so that what is crossed
    and what crosses it are each a flat with a bend line in it.
    """
    ways = ("down", "up", "up", "down", "down", "up")
    angles = (60.0, 90.0, 135.0, 45.0, 90.0, 120.0)
    curl = part(
        (11.8, 113.4, 32.0, 56.8, 23.3, 24.8, 12.7),
        [bend(a, w) for a, w in zip(angles, ways, strict=True)],
    )
    assert meeting(strip_of(curl, folded(curl))) is None
    assert meeting(thinner(strip_of(curl, folded(curl), [4, 5]))) is not None
    assert code_of(curl, 0, 0b011000) & INTO_SHEET


@pytest.mark.slow
def test_no_half_made_part_that_meets_itself_is_taken() -> None:
    rnd = random.Random(58)
    met = 0
    for _ in range(2500):
        of = tight(rnd)
        count = len(of.bends)
        number = rnd.randrange(count)
        made = rnd.randrange(1 << count) & ~(1 << number)
        done = [b + 1 for b in range(count) if made >> b & 1]
        if meeting(thinner(strip_of(of, folded(of), done))) is None:
            continue
        met += 1
        assert code_of(of, number, made), (of.flats_mm, of.bends, number, done)
    assert met > 30
