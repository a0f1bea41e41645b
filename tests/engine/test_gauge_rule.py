"""The gauge rule against a construction of its own: shapely on the sheet as a polygon.

The rule in words: a finger, an upright edge as high as it is, comes from the back. What may stop
it is the cut edge, the outer face of a finished flat or the round of a bend, where it looks
straight back within the lean allowed. The shorter of finger and face lies fully against the
longer, heights tried in a fixed order; die and bed raise the finger. At its heights nothing of
the leg reaches further back, and punch, holder and ram are not there.
"""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import pytest
import shapely
from bending_parts import DIE, HOLDER, PRESS, PUNCH
from leg_by_hand import Leg, Slack, faces, polygons
from quick_ones import but_for
from shapely import LineString, Polygon
from shapely.affinity import translate

from flangebook.bending.clearance.problem import LEFT, NO_GAUGE, RIGHT, Problem
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE, ROUNDED, gauge_place
from flangebook.bending.ordering.tool_edges import edges_of
from flangebook.bending.samples import smallest_problem
from flangebook.bending.tools.outline import tool_stack

FAR = 5000.0
PITCH = 2.0
MOST_HEIGHTS = 40


@dataclass(frozen=True)
class Found:
    """A place: what against (EDGE, FLANGE, ROUNDED), bends between, X, R."""

    kind: int
    between: int
    x: float
    r: float


def heights(near: float, far: float, finger: float) -> list[float]:
    """The finger's lower edge, heights in the order they are tried."""
    low, high = min(near, far), max(near, far)
    room = high - low - finger
    if room > 1e-6:
        count = min(math.ceil(room / PITCH), MOST_HEIGHTS) + 1
        tried = np.linspace(low, high - finger, count)
        return list(tried if far > near else tried[::-1])
    count = min(math.ceil(-room / 2.0 / PITCH - 1e-12), MOST_HEIGHTS // 2)
    middle = (low + high - finger) / 2.0
    if count == 0:
        return [middle]
    steps = np.linspace(0.0, -room / 2.0, count + 1)[1:]
    return [middle, *(middle + way * step for step in steps for way in (-1.0, 1.0))]


def band(shape: Any, low: float, high: float) -> Any:
    return shapely.intersection(shape, shapely.box(-FAR, low, FAR, high))


def by_hand(leg: Leg, problem: Problem, above: shapely.Geometry, slack: Slack) -> Found | None:
    """The best place by constructing the finger at every height."""
    x_min, x_max, r_min, r_max, finger, _, half_bed = problem.finger
    die_top = [(problem.die[0, 2], 0.0), (half_bed, -problem.die_height[0])]
    sheet, best = polygons(leg), None
    for kind, between, near, far in faces(leg, slack):
        face = LineString([(near.real, near.imag), (far.real, far.imag)])
        if kind == ROUNDED:
            face = shapely.Point(near.real, near.imag)
        lowest = max((top for right, top in die_top if right > face.bounds[2]), default=-FAR)
        for tried in heights(near.imag, far.imag, finger):
            bottom = max(tried, lowest)
            touched = band(face, bottom - 1e-6, bottom + finger + 1e-6)
            if touched.is_empty:
                continue
            x = touched.bounds[2]
            reach = float(np.nanmax(shapely.bounds(band(sheet, bottom, bottom + finger))[:, 2]))
            if abs(reach - x) > slack.same:
                continue
            if any(right > reach and top > bottom + 1e-6 for right, top in die_top):
                continue
            corners = [p for p in shapely.get_coordinates(touched) if p[0] > x - 1e-7]
            r = sum(p[1] for p in corners) / len(corners)
            if x <= 0.0 or not x_min - slack.travel <= x <= x_max + slack.travel:
                continue
            if not r_min - slack.travel <= r <= r_max + slack.travel:
                continue
            room = shapely.box(x, bottom, FAR, bottom + finger)
            if above.intersection(room).area > 1e-5:
                continue
            here = Found(kind, between, x, r)
            if best is None or order(here) < order(best):
                best = here
            break
    return best


def order(place: Found) -> tuple[bool, int, bool, float]:
    return place.kind == ROUNDED, place.between, place.kind != EDGE, round(place.x, 6)


def random_leg(rnd: random.Random) -> tuple[Problem, int, int, Leg, shapely.Geometry]:
    """A problem of one bend to make and a leg behind it: problem, side, made, the leg, what
    hangs above."""
    thickness = rnd.choice((1.0, 2.0, 3.0))
    side, count = rnd.choice((LEFT, RIGHT)), rnd.randint(0, 5)
    made = rnd.getrandbits(count) if count else 0
    wanted = (90.0, -90.0, 90.0, -90.0, 85.0, -95.0, 60.0, -135.0, 45.0, 100.0)
    angles = [math.radians(rnd.choice(wanted) + rnd.uniform(-3.0, 3.0) * (rnd.random() < 0.5))
              for _ in range(count)]  # fmt: skip
    radii = [rnd.uniform(0.5, 4.0) for _ in range(count)]
    takes = [abs(a) * (r + 0.4 * thickness) for a, r in zip(angles, radii, strict=True)]
    clear = [rnd.choice((3.0, 8.0, 15.0, 30.0, 60.0)) * rnd.uniform(0.8, 1.2)
             for _ in range(count + 1)]  # fmt: skip
    lines, reached = [], 0.0
    for i in range(count):
        reached += clear[i] + (takes[i - 1] / 2.0 if i else 0.0) + takes[i] / 2.0
        lines.append(reached)
    length = reached + clear[-1] + (takes[-1] / 2.0 if count else 0.0)

    runs, bends, start = [], [], 0.0
    for i in range(count):
        if made >> i & 1:
            runs.append(lines[i] - takes[i] / 2.0 - start)
            bends.append((angles[i], radii[i]))
            start = lines[i] + takes[i] / 2.0
    leg = Leg(thickness, (*runs, length - start), tuple(bends))

    direction = rnd.choice((1.0, -1.0))
    front = 50.0
    if side == RIGHT:
        at, folds = [front, *(front + x for x in lines)], [direction * math.pi / 2.0, *(
            direction * a for a in angles)]  # fmt: skip
        radius, taken = [1.0, *radii], [2.0, *takes]
    else:
        at = [*(length - x for x in lines[::-1]), length]
        folds = [*(direction * a for a in angles[::-1]), direction * math.pi / 2.0]
        radius, taken = [*radii[::-1], 1.0], [*takes[::-1], 2.0]
    press = replace(PRESS, bed_width_mm=rnd.choice((60.0, 100.0, 160.0)))
    edges, edge_of, upper = edges_of(press, HOLDER, PUNCH, DIE)
    low, high = rnd.choice(((-60.0, 150.0), (-10.0, 40.0), (0.0, 200.0), (-200.0, 300.0)))
    problem = smallest_problem()._replace(
        thickness=thickness,
        length=length + front,
        at=np.array(at),
        angle=np.array(folds),
        radius=np.array(radius),
        allowance=np.array(taken),
        edges=edges,
        edge_of=edge_of,
        upper=np.array([[0, upper]]),
        lower=np.array([[upper, len(edges)]]),
        die=np.array([[8.0, 2.0, DIE.width_mm / 2.0]]),
        die_height=np.array([rnd.choice((15.0, 60.0))]),
        finger=np.array([rnd.choice((5.0, 20.0)), rnd.choice((60.0, 600.0)), low, high,
                         rnd.choice((4.0, 12.0, 25.0)), 40.0, press.bed_width_mm / 2.0]),
    )  # fmt: skip
    stack = tool_stack(press, HOLDER, PUNCH, DIE, 0.0)
    hung = shapely.union_all([Polygon(r) for r in (stack.punch, stack.holder, stack.ram)])
    return problem, side, made, leg, translate(hung, 0.0, thickness)


SLACKS = [
    Slack(same, travel, lean)
    for same in (0.02, 0.008, 0.032)
    for travel in (0.0, 1e-4, -1e-4)
    for lean in (0.0, 1e-9, -1e-9)
]


def agree(code: int, kind: int, x: float, r: float, between: int, by: Found | None) -> bool:
    if by is None or code:
        return by is None and code == NO_GAUGE
    same = (kind, between) == (by.kind, by.between)
    return same and abs(x - by.x) < 1e-4 and abs(r - by.r) < 1e-3


@pytest.mark.parametrize("seed", but_for([0], range(4)))
def test_the_rule_against_a_construction_by_polygons(seed: int) -> None:
    """1,000 random legs each: the same place, or none; what differs is within a tie."""
    rnd = random.Random(40_000 + seed)
    ties, kinds = 0, {EDGE: 0, FLANGE: 0, ROUNDED: 0, None: 0}
    for _ in range(1000):
        problem, side, made, leg, above = random_leg(rnd)
        bend_number = 0 if side == RIGHT else len(problem.at) - 1
        code, kind, x, r, between, _ = gauge_place(problem, bend_number, side, 0, made)
        kinds[None if code else kind] += 1
        for i, slack in enumerate(SLACKS):
            by = by_hand(leg, problem, above, slack)
            if agree(code, kind, x, r, between, by):
                ties += i > 0
                break
        else:
            pytest.fail(f"{leg} side {side}: {(code, kind, x, r, between)} but by hand {by}")
    assert ties <= 10
    assert min(kinds.values()) >= 20  # every kind of answer was among them
