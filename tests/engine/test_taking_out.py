"""The way of a part in and out, each move held against a general geometry library (shapely).

The part is put together again from the equations of motion (``swept_oracle``), with the arc of the
bend; its places are walked through in small moves, and at each the distance to every tool is
shapely's. A way that is found has to clear; that none was found is no proof that there is none,
but where the part closes round the punch none may be found.
"""

from __future__ import annotations

import math
import random
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import pytest
import shapely
from bending_parts import DIE, HOLDER, PRESS, PUNCH, bend, part
from order_parts import DEEP, problem_of
from swept_oracle import TOUCH_MM, Tools, leg, motion_of, tools_of
from test_swept_oracle import random_case

from flangebook.bending.clearance.problem import LEFT, NO_GAUGE, RIGHT, SHORT_FLANGE, Problem
from flangebook.bending.clearance.sweeps import new_sweeps
from flangebook.bending.clearance.taking_out import (
    Place,
    Step,
    TakingOut,
    step_passes,
    way_in,
    way_out,
)
from flangebook.bending.ordering.search import Known, Move, as_arrays, code_of
from flangebook.bending.part.part import Part
from flangebook.bending.tools.tooling import Punch

CASES, STRAIGHT_CHECKED = 400, 10
NEAR_MM = 0.05
FAR_MM = 5.0
MOVE_MM = 1.5
ARC_POINTS = 40


@dataclass(frozen=True)
class Sheet:
    """A piece of the part in the press's frame. lies: it is the run or the bend's arc, which lie
    on punch and die; rests: it may rest on the die."""

    ring: np.ndarray
    lies: bool
    rests: bool


def sheets(problem: Problem, step: Step, theta: float) -> list[Sheet]:
    """The part with half of the bend done by theta."""
    motion = motion_of(problem, step.bend, step.pair)
    cos, sin = math.cos(theta), math.sin(theta)
    base = motion.thickness / 2.0 - float(motion.depth(np.array(theta)))
    found = []
    for side in (LEFT, RIGHT):
        done = [b for b in range(len(problem.at)) if step.made >> b & 1]
        mine = [b for b in done if (b < step.bend) == (side == LEFT)]
        mirror = 1.0 if side == step.end else -1.0
        for piece in leg(problem, step.bend, side, mine):
            lies = piece.group == 0
            ring = (piece.thin if lies or piece.resting else piece.ring).copy()
            ring[:, 0] -= motion.take * theta / motion.theta / 2.0
            if lies:
                ring[:, 0] = np.maximum(ring[:, 0], 0.0)
            x = mirror * (motion.radius * sin + cos * ring[:, 0] - sin * ring[:, 1])
            y = base + motion.radius * (1.0 - cos) + sin * ring[:, 0] + cos * ring[:, 1]
            found.append(Sheet(np.stack([x, y], axis=-1), lies, piece.resting))
    if theta > 0.0:
        half = motion.thickness / 2.0 - TOUCH_MM
        at = np.linspace(-theta, theta, ARC_POINTS)
        out, back = (
            np.stack([r * np.sin(at), base + motion.radius - r * np.cos(at)], axis=-1)
            for r in (motion.radius + half, max(motion.radius - half, 1e-6))
        )
        found.append(Sheet(np.concatenate([out, back[::-1]]), True, False))
    return found


def at_places(ring: np.ndarray, places: Sequence[Place]) -> np.ndarray:
    """The ring at each of the places."""
    x, y, tilt = np.array(places).T[:, :, None]
    cos, sin = np.cos(tilt), np.sin(tilt)
    return np.stack(
        [x + cos * ring[:, 0] - sin * ring[:, 1], y + sin * ring[:, 0] + cos * ring[:, 1]], axis=-1
    )


def walked(part_sheets: Sequence[Sheet], one: Place, two: Place) -> Iterator[Place]:
    """Places evenly between two, no point of the part moved by more than MOVE_MM from the last."""
    far = max(float(np.hypot(*s.ring.T).max()) for s in part_sheets)
    moved = math.dist(one[:2], two[:2]) + far * abs(two[2] - one[2])
    count = max(1, math.ceil(moved / MOVE_MM))
    for i in range(count + 1):
        x, y, tilt = (a + (b - a) * i / count for a, b in zip(one, two, strict=True))
        yield x, y, tilt


def boxes_apart(low: np.ndarray, high: np.ndarray, tool: shapely.Polygon) -> np.ndarray:
    """How far apart each box and the tool's are at least: two shapes are no nearer."""
    bounds = np.array(tool.bounds)
    gaps = np.maximum(np.maximum(bounds[:2] - high, low - bounds[2:]), 0.0)
    return np.asarray(np.hypot(*gaps.T))


def least_slack(
    problem: Problem, tools: Tools, part_sheets: Sequence[Sheet], places: Sequence[Place],
    up_mm: float | None, lies_on: str = "",
) -> float:  # fmt: skip
    """The least distance beyond what is wanted, at all these places; FAR_MM where it is more.

    up_mm: the punch's tip above the die's top face; None for the lower tools alone. lies_on: the
    tool that the part is being moved off.
    """
    around = list(tools.lower)
    if up_mm is not None:
        around += [
            (name, shapely.transform(shape, lambda p: p + np.array([0.0, up_mm])))
            for name, shape in tools.upper
        ]
    least = FAR_MM
    for sheet in part_sheets:
        rings = at_places(sheet.ring, places)
        shapes, corners = shapely.polygons(rings), (rings.min(axis=1), rings.max(axis=1))
        for name, tool in around:
            touches = (sheet.lies and name in ("punch", "die")) or (sheet.rests and name == "die")
            if touches and name == lies_on:
                continue
            wanted = 0.0 if touches else float(problem.margin)
            near = shapes[boxes_apart(*corners, tool) - wanted < least]
            apart = shapely.distance(near, tool)
            if touches:
                meets = near[apart <= 0.0]
                runs_in = shapely.area(shapely.intersection(meets, tool)) > 1e-6
                apart = np.array([-1.0 if runs_in.any() else 0.0])
            least = min(least, float(apart.min(initial=math.inf)) - wanted)
    return least


def check(problem: Problem, tools: Tools, step: Step, theta: float, found: TakingOut) -> None:
    """Every move of a way keeps clear, and at its end the part can be drawn to the front."""
    part_sheets = sheets(problem, step, theta)
    motion = motion_of(problem, step.bend, step.pair)
    up = float(problem.thickness + problem.lift[step.pair])
    first, *rest = found.places
    rise = float(problem.lift[step.pair]) + float(motion.depth(np.array(theta)))
    if found.rides_up:
        assert first == pytest.approx((0.0, rise, 0.0))
        on_its_way = list(walked(part_sheets, (0.0, 0.0, 0.0), first))
        assert least_slack(problem, tools, part_sheets, on_its_way, None, "die") > -NEAR_MM
    else:
        assert first == (0.0, 0.0, 0.0)
    off = list(walked(part_sheets, first, rest[0]))
    lies_on = "punch" if found.rides_up else "die"
    assert least_slack(problem, tools, part_sheets, off, up, lies_on) > -NEAR_MM
    for one, two in pairwise(rest):
        between = list(walked(part_sheets, one, two))
        assert least_slack(problem, tools, part_sheets, between, up) > -NEAR_MM
    x, y, tilt = rest[-1]
    drawn_out = [(x - away, y, tilt) for away in np.arange(0.0, 900.0, 2.0)]
    assert least_slack(problem, tools, part_sheets, drawn_out, up) > -NEAR_MM
    assert max(at_places(s.ring, drawn_out[-1:])[..., 0].max() for s in part_sheets) < -100.0


def released(problem: Problem, step: Step) -> float:
    return min(
        abs(float(problem.angle[step.bend])) / 2.0, float(problem.strokes[step.bend, step.pair, 0])
    )


def ways(problem: Problem, step: Step, *, can_slide: bool = True) -> tuple[TakingOut, TakingOut]:
    passes = step_passes(problem, step, new_sweeps(problem))
    return (
        way_in(problem, step, passes=passes, can_slide=can_slide),
        way_out(problem, step, passes=passes, can_slide=can_slide),
    )


@pytest.mark.slow
def test_every_move_of_a_way_that_is_found_keeps_clear() -> None:
    rnd = random.Random(20261128)
    seen: Counter[str] = Counter()
    cases = 0
    while cases < CASES:
        case = random_case(rnd)
        problem = case.problem
        bends = len(problem.at)
        active = rnd.randrange(bends)
        made = rnd.getrandbits(bends) & ~(1 << active)
        step = Step(made, active, rnd.randrange(2), 0)
        known = Known(problem)
        code = code_of(problem, made, Move(active, step.end, 0), known)
        if code & ~(NO_GAUGE | SHORT_FLANGE):
            continue
        cases += 1
        tools = tools_of(case.press, case.holder, case.punch, case.die)
        for theta, found in zip((0.0, released(problem, step)), ways(problem, step), strict=True):
            kind = found.way + (", rides up" if found.rides_up else "")
            seen[kind] += 1
            easy = kind == "straight" and seen[kind] % STRAIGHT_CHECKED
            if found.places and not easy:
                check(problem, tools, step, theta, found)
    assert seen["straight"] > CASES
    assert min(seen["swing"], seen["swing, rides up"], seen["slide"]) > 0, seen


def last_bend(of: Part, made: int, bend_at: int, end: int, punch: Punch = PUNCH) -> TakingOut:
    """The way out after a bend with all others of ``made`` finished, no room to slide."""
    problem = as_arrays(problem_of(of, (punch,)))
    step = Step(made, bend_at, end, 0)
    found = ways(problem, step, can_slide=False)[1]
    if found.places:
        check(problem, tools_of(PRESS, HOLDER, punch, DIE), step, released(problem, step), found)
    return found


def test_an_angle_is_drawn_out_level() -> None:
    found = last_bend(part([50.0, 60.0], [bend()]), 0, 0, RIGHT)
    assert (found.way, found.rides_up) == ("straight", False)


def test_a_channel_that_reaches_over_a_gooseneck_s_nose_is_unhooked() -> None:
    """As in ``test_way_of_the_punch``: the punch cannot rise straight past its flange."""
    of = part((60.0, 24.0, 60.0), [bend(), bend()])
    found = last_bend(of, 0b01, 1, RIGHT, DEEP)
    assert (found.way, found.rides_up) == ("swing", True)


TOE = Punch(
    "T", "Toe", 86.0, 1.0, 110.0, 40.0, None, (500.0,), shape="points",
    points_mm=((0.0, 0.0), (20.0, 21.5), (20.0, 32.0), (3.0, 34.0), (3.0, 110.0), (-3.0, 110.0),
               (-3.0, 34.0), (-20.0, 32.0), (-20.0, 21.5)),
)  # fmt: skip


def least_width(shape: shapely.Polygon) -> float:
    """Of all directions the least width; it is square to a side of the hull."""
    corners = np.array(shape.convex_hull.exterior.coords)
    found = []
    for one, two in pairwise(corners):
        along = (two - one) / np.hypot(*(two - one))
        found.append(float(np.ptp(corners @ np.array([-along[1], along[0]]))))
    return min(found)


def test_out_of_a_section_that_closes_over_a_toe_no_way_is_found() -> None:
    """The gap between its lips is narrower than the toe, whichever way that is turned."""
    of = part([38.0, 50.0, 50.0, 38.0], [bend()] * 3)
    problem = as_arrays(problem_of(of, (TOE,), margin_mm=0.5))
    step = Step(0b101, 1, RIGHT, 0)
    assert code_of(problem, step.made, Move(1, RIGHT, 0)) & ~NO_GAUGE == 0
    closed = sheets(problem, step, released(problem, step))
    front, back = (
        shapely.union_all([shapely.Polygon(s.ring) for s in closed if keep(s.ring[:, 0].mean())])
        for keep in (lambda x: x < -1.0, lambda x: x > 1.0)
    )
    lips = [side.intersection(shapely.box(-200.0, 40.0, 200.0, 200.0)) for side in (front, back)]
    gap = lips[0].distance(lips[1])
    toe = shapely.Polygon(TOE.points_mm).intersection(shapely.box(-50.0, 0.0, 50.0, 34.0))
    assert 6.0 < gap < least_width(toe)
    for can_slide, way in ((False, "unknown"), (True, "slide")):
        assert ways(problem, step, can_slide=can_slide)[1] == TakingOut(way)


def test_the_way_is_as_good_whichever_end_is_called_left() -> None:
    """The same part numbered from its other end."""
    one = last_bend(part((60.0, 24.0, 70.0), [bend(), bend()]), 0b01, 1, RIGHT, DEEP)
    two = last_bend(part((70.0, 24.0, 60.0), [bend(), bend()]), 0b10, 0, LEFT, DEEP)
    assert (one.way, one.rides_up) == (two.way, two.rides_up)
    assert np.allclose(one.places, two.places)
