"""The compiled sweep against a general geometry library (``swept_oracle``), on random steps.

No step may be accepted that comes nearer to a tool or to itself than it may, at any moment; one
that is refused is within NEAR_MM of that. ``FLANGEBOOK_SWEEPS`` asks for another number of
random steps than the usual one (100000 take most of an hour).
"""

from __future__ import annotations

import math
import os
import random
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import pytest
import shapely
from bending_parts import DIE, GOOSENECK, HOLDER, PRESS, PUNCH, folded, part
from order_parts import ACUTE, DEEP, KNIFE, NARROW, TALL, problem_of
from quick_ones import but_for
from swept_oracle import LegKey, Oracle, Query, Slacks, batch_of, leg, motion_of, tools_of
from test_pose import sheet_during

from flangebook.bending.clearance import problem as bits
from flangebook.bending.clearance.approach import approaches
from flangebook.bending.clearance.legs import approach_code, leg_code
from flangebook.bending.clearance.problem import LEFT, RIGHT, Leg, Problem, leg_set
from flangebook.bending.clearance.sheet_on_sheet import legs_code
from flangebook.bending.clearance.sweeps import Sweeps, new_sweeps
from flangebook.bending.errors import FlangebookError
from flangebook.bending.motion.lying import Stroke, facing
from flangebook.bending.ordering.search import as_arrays
from flangebook.bending.part.part import Bend, End, Part
from flangebook.bending.part.section import straight_lengths_mm, strip_of
from flangebook.bending.tools.outline import die_outline
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

STEPS = int(os.environ.get("FLANGEBOOK_SWEEPS", "4000"))
BATCHES, PER_PART = 8, 40
NEAR_MM = 0.05
BIT = {
    "punch": bits.INTO_PUNCH, "holder": bits.INTO_HOLDER, "ram": bits.INTO_RAM,
    "die": bits.INTO_DIE, "bed": bits.INTO_BED, "floor": bits.INTO_FLOOR,
    "sheet": bits.INTO_SHEET,
}  # fmt: skip

WIDE = Die("W", "Wide V", 24.0, 84.0, 3.0, 50.0, 60.0, None, (500.0,))
CLAMPS = Holder(
    "C", "Clamps", 70.0, 26.0, 40.0, None, shape="clamps",
    clamp_height_mm=30.0, body_front_mm=15.0, body_back_mm=22.0,
)  # fmt: skip
NOSED = Holder(
    "O", "By points", 60.0, 0.0, 0.0, None, shape="points",
    points_mm=((-15.0, 0.0), (12.0, 0.0), (45.0, 25.0), (45.0, 60.0), (-15.0, 60.0)),
)  # fmt: skip
LOW = replace(PRESS, floor_below_die_mm=90.0, bed_width_mm=44.0)
RISER = replace(LOW, die_holder_height_mm=40.0, die_holder_width_mm=90.0, ram_width_mm=160.0)
SETS: tuple[tuple[Die, tuple[Punch, ...]], ...] = (
    (DIE, (PUNCH, GOOSENECK, DEEP, TALL, replace(DEEP, turned=True))),
    (WIDE, (PUNCH, GOOSENECK, TALL, replace(GOOSENECK, turned=True))),
    (ACUTE, (KNIFE,)),
)


@dataclass(frozen=True)
class Case:
    """A part and one set of tools, and what the oracle makes of them."""

    of: Part
    press: Press
    holder: Holder | None
    punch: Punch
    die: Die
    problem: Problem

    def oracle(self, margin_mm: float | None = None, cap_mm: float = 0.08) -> Oracle:
        margin = self.problem.margin if margin_mm is None else margin_mm
        tools = tools_of(self.press, self.holder, self.punch, self.die)
        return Oracle(self.problem._replace(margin=margin), [tools], cap_mm)


@dataclass(frozen=True)
class Step:
    """A bend, the bends finished before it as a set, and the end at the gauge."""

    bend: int
    made: int
    end: int
    bends: int

    def legs(self) -> tuple[LegKey, LegKey]:
        done = [b for b in range(self.bends) if self.made >> b & 1]
        return (
            (self.bend, LEFT, tuple(b for b in done if b < self.bend)),
            (self.bend, RIGHT, tuple(b for b in done if b > self.bend)),
        )


def random_case(rnd: random.Random) -> Case:
    """A random section, mostly square, with random tools of every kind there is."""
    while True:
        die, punches = rnd.choice(SETS)
        angles = (90.0, 90.0, 90.0, 120.0, 135.0, 160.0)
        angles = (*angles, 45.0, 60.0) if die is ACUTE else angles
        count = rnd.randint(1, 6)
        made = [Bend(rnd.choice(angles), rnd.choice(("up", "down"))) for _ in range(count)]
        flats = [rnd.uniform(10.0, rnd.choice((30.0, 60.0, 150.0))) for _ in range(count + 1)]
        of = part(flats, made, rnd.choice((1.0, 1.5, 2.0, 3.0)))
        press, punch = rnd.choice((PRESS, LOW, RISER)), rnd.choice(punches)
        holder = rnd.choice((HOLDER, NARROW, CLAMPS, NOSED, None))
        try:
            if min(straight_lengths_mm(of, folded(of))) < 1.0:
                continue
            made_problem = problem_of(
                of, (punch,), press=press, holder=holder, die=die,
                margin_mm=rnd.choice((0.5, 2.0, 4.0)),
            )  # fmt: skip
        except FlangebookError:
            continue  # the sheet does not fit this V
        problem = as_arrays(made_problem)
        none = problem.least_run * 0.0  # how short a flange may be is another question
        return Case(of, press, holder, punch, die, problem._replace(least_run=none))


def random_step(rnd: random.Random, case: Case) -> Step:
    count = len(case.of.bends)
    bend = rnd.randrange(count)
    return Step(bend, rnd.randrange(1 << count) & ~(1 << bend), rnd.choice((LEFT, RIGHT)), count)


def compiled(case: Case, step: Step, sweeps: Sweeps) -> tuple[int, int]:
    """What the compiled functions say of the two legs through the bend, and of leg on leg."""
    code = 0
    for side in (LEFT, RIGHT):
        made = leg_set(step.made, step.bend, side, step.bends)
        code |= leg_code(case.problem, Leg(step.bend, side, made), side == step.end, 0, sweeps)
    return code, legs_code(case.problem, step.bend, 0, step.made, sweeps)


def clear_legs(case: Case, step: Step, sweeps: Sweeps) -> list[LegKey]:
    """The legs that clear the bend; only of these the punch's way is asked."""
    return [
        at
        for at in step.legs()
        if leg_code(case.problem, leg_of(step, at[1]), at[1] == step.end, 0, sweeps) == 0
    ]


def leg_of(step: Step, side: int) -> Leg:
    return Leg(step.bend, side, leg_set(step.made, step.bend, side, step.bends))


def look_at_ways(case: Case, steps: Sequence[Step], sweeps: Sweeps, oracle: Oracle) -> None:
    """Have the oracle look at all the ways that will be judged at once, which is quicker."""
    looks = [(at, at[1] == s.end, 0) for s in steps for at in clear_legs(case, s, sweeps)]
    oracle.look(looks, rising=True)


def judge_way(case: Case, step: Step, sweeps: Sweeps, oracle: Oracle, seen: Counter[str]) -> None:
    """The punch's way down and up past a leg."""
    for at in clear_legs(case, step, sweeps):
        back, made = at[1] == step.end, leg_set(step.made, step.bend, at[1], step.bends)
        code = approach_code(case.problem, Leg(step.bend, at[1], made), back, 0, sweeps)
        slack = min(oracle.slacks(at, back, 0, rising=True).values())
        judge("way", code, slack, seen, (case.of, case.punch, case.die, step))


def worst(oracle: Oracle, step: Step) -> Slacks:
    found: Slacks = {}
    for at in step.legs():
        for name, slack in oracle.slacks(at, at[1] == step.end, 0).items():
            found[name] = min(found.get(name, math.inf), slack)
    return found


def judge(what: str, code: int, slack: float, seen: Counter[str], words: object) -> None:
    """No wrong yes; a wrong no only where it is nearly a no."""
    seen[f"{what} {'refused' if code else 'accepted'}"] += 1
    if code == 0:
        assert slack > 0.0, f"{what} accepted, {slack:.4f} mm: {words}"
    else:
        assert slack < NEAR_MM, f"{what} refused, {slack:.4f} mm: {words}"
        seen[f"{what} refused though clear"] += slack > 0.0


def judge_legs(bend: int, meet: int, slack: float, seen: Counter[str], words: object) -> None:
    """Leg on leg: no step is accepted in which they meet, by this or by what it runs into besides.

    What comes over the bend's plane may meet no more of the other leg than the half of the
    bend's own arc. That lies between punch and die, so nothing gets there but past a tool or
    through its own leg, and the bend's code says that.
    """
    if meet == 0 and bend != 0 and slack <= 0.0:
        seen["wings meet in a bend refused"] += 1
        return
    judge("wings", meet, slack, seen, words)


@pytest.mark.parametrize("batch", but_for([6], range(BATCHES)))
def test_random_steps(batch: int) -> None:
    rnd = random.Random(4100 + batch)
    seen: Counter[str] = Counter()
    for _ in range(math.ceil(STEPS / BATCHES / PER_PART)):
        case = random_case(rnd)
        steps = [random_step(rnd, case) for _ in range(PER_PART)]
        oracle, sweeps = case.oracle(), new_sweeps(case.problem)
        oracle.look([(w, w[1] == s.end, 0) for s in steps for w in s.legs()])
        look_at_ways(case, steps, sweeps, oracle)
        for step in steps:
            words = (case.of.flats_mm, case.of.bends, case.punch.code, case.die.code, step)
            bend, meet = compiled(case, step, sweeps)
            slacks = worst(oracle, step)
            judge("bend", bend, min(slacks.values()), seen, words)
            for name, bit in BIT.items():
                if bend & bit:
                    assert slacks[name] < NEAR_MM, f"{name} named: {slacks[name]:.4f} mm {words}"
            judge_way(case, step, sweeps, oracle, seen)
            judge_legs(bend, meet, oracle.meeting_slack(*step.legs(), 0), seen, words)
    print(dict(seen))
    for what in ("bend accepted", "bend refused", "way accepted", "wings accepted"):
        assert seen[what] > STEPS / BATCHES / 20, what


@pytest.mark.slow
def test_legs_that_meet_and_ways_that_are_blocked() -> None:
    """Both are rare among random steps: here are steps that have them."""
    rnd = random.Random(77)
    seen: Counter[str] = Counter()
    while seen["wings refused"] < 6 or seen["way refused"] < 12:
        case = random_case(rnd)
        oracle, sweeps = case.oracle(), new_sweeps(case.problem)
        steps = [random_step(rnd, case) for _ in range(20)]
        look_at_ways(case, steps, sweeps, oracle)
        for step in steps:
            bend, meet = compiled(case, step, sweeps)
            judge_legs(bend, meet, oracle.meeting_slack(*step.legs(), 0), seen, step)
            judge_way(case, step, sweeps, oracle, seen)
    print(dict(seen))


def test_a_flange_that_reaches_the_other_half_of_the_bend_meets_it() -> None:
    """A flange comes back under the bend being made, just over its plane: nothing of the other
    leg is there but the bend's own arc."""
    flats = (13.609, 57.960, 53.358, 11.839, 51.738, 51.766, 33.891)
    ways = (
        (90.0, "down"),
        (90.0, "up"),
        (45.0, "down"),
        (90.0, "down"),
        (60.0, "up"),
        (60.0, "up"),
    )
    of = part(flats, [Bend(angle, way) for angle, way in ways], 1.0)
    problem = as_arrays(problem_of(of, (KNIFE,), die=ACUTE))
    case = Case(of, PRESS, HOLDER, KNIFE, ACUTE, problem)
    for made in (28, 29):
        step = Step(1, made, LEFT, 6)
        assert legs_code(problem, 1, 0, made, new_sweeps(problem)) == bits.INTO_SHEET
        assert case.oracle().meeting_slack(*step.legs(), 0) < 0.0


def distances(oracle: Oracle, step: Step) -> Slacks:
    found: Slacks = {}
    for at in step.legs():
        for name, apart in oracle.distances(at, at[1] == step.end, 0).items():
            found[name] = min(found.get(name, math.inf), apart)
    return found


@pytest.mark.slow
def test_a_step_is_clear_up_to_its_least_distance_and_no_further() -> None:
    """Whatever the margin asked for, it is kept to NEAR_MM: the distance itself is found first."""
    rnd = random.Random(51)
    tried = 0
    while tried < 60:
        case = random_case(rnd)
        oracle = case.oracle(margin_mm=0.0, cap_mm=12.0)
        bare = replace(case, problem=case.problem._replace(margin=0.1))
        bare_sweeps = new_sweeps(bare.problem)
        steps = [random_step(rnd, case) for _ in range(6)]
        steps = [step for step in steps if compiled(bare, step, bare_sweeps)[0] == 0]
        oracle.look([(at, at[1] == step.end, 0) for step in steps for at in step.legs()])
        for step in steps:
            apart = min(distances(oracle, step).values())
            if not 0.3 < apart < 11.9:
                continue
            tried += 1
            for margin, wanted in ((apart - NEAR_MM, True), (apart + 0.005, False)):
                problem = case.problem._replace(margin=margin)
                code = compiled(replace(case, problem=problem), step, new_sweeps(problem))[0]
                assert (code == 0) == wanted, (apart, margin, case.of, case.punch.code, step)


@pytest.mark.slow
def test_the_closest_approach_is_the_oracle_s() -> None:
    """The number that the picture shows: distance, and two points that far apart."""
    rnd = random.Random(52)
    tried = 0
    while tried < 60:
        case = random_case(rnd)
        oracle = case.oracle(margin_mm=0.0, cap_mm=30.0)
        step = random_step(rnd, case)
        found = distances(oracle, step)
        for near in approaches(case.problem, step.made, step.bend, step.end, 0):
            if not 0.1 < near.distance_mm < 29.0:
                continue
            tried += 1
            assert near.distance_mm == pytest.approx(found[near.tool], abs=0.02)
            apart = math.dist(near.on_sheet, near.on_tool)
            assert apart == pytest.approx(near.distance_mm, abs=0.02)


def test_the_oracle_s_legs_are_the_sheet_as_it_is_drawn() -> None:
    """Its equations give at every moment what folding the strip gives, the active arc apart."""
    rnd = random.Random(53)
    compared = 0
    while compared < 60:
        case = random_case(rnd)
        step = random_step(rnd, case)
        done = [b + 1 for b in range(step.bends) if step.made >> b & 1]
        strip = strip_of(case.of, folded(case.of), done)
        end: End = "left" if step.end == LEFT else "right"
        way = case.of.bends[step.bend].direction
        faced, n = facing(strip, step.bend + 1, way, end)
        theta, radius, take, depth = case.problem.strokes[step.bend, 0]
        stroke = Stroke(180.0 - math.degrees(2.0 * theta), radius, take, depth)
        share = rnd.random()
        drawn = shapely.Polygon(sheet_during(faced, n, stroke, case.die, share))
        if not drawn.is_valid:
            continue  # the part runs into itself: no simple outline to compare with
        compared += 1
        motion = motion_of(case.problem, step.bend, 0)
        die = shapely.Polygon(die_outline(case.die))
        for at in step.legs():
            for piece in leg(case.problem, *at):
                query = Query(piece, motion, at[1] == step.end, die, False, 0.0, False)
                ring = batch_of([query], 0.0).at(np.array([0]), np.array([theta * share]))[0]
                outside = shapely.difference(shapely.Polygon(ring), drawn.buffer(0.12)).area
                assert outside < 1e-6, (case.of, step, piece.key)
