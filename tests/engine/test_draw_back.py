"""The gauge's draw-back against a dense look at the stroke by a general geometry library."""

from __future__ import annotations

import math
import random

import pytest
from bending_parts import DIE, HOLDER, PRESS, PUNCH, folded, stroke
from order_parts import random_part
from quick_ones import but_for
from shapely import LinearRing, box

from flangebook.bending import gauging, pose
from flangebook.bending.outline import tool_stack
from flangebook.bending.section import strip_of

POSES = 250
FINE_MM = 0.02


def furthest(ring: LinearRing, low: float, high: float) -> float:
    cut = ring.intersection(box(-5000.0, low, 5000.0, high))
    return -math.inf if cut.is_empty else float(cut.bounds[2])


@pytest.mark.parametrize("seed", but_for([3], range(6)))
def test_the_finger_is_drawn_back_by_what_comes_to_it(seed: int) -> None:
    """Never less than the furthest of 250 moments needs, nor more than can be between two."""
    rnd = random.Random(5_300 + seed)
    drawn = stays = 0
    while drawn < 3 or stays < 2:
        of = random_part(rnd, rnd.randint(1, 4))
        bends, number = folded(of), rnd.randint(1, len(of.bends))
        done = {n for n in range(1, len(of.bends) + 1) if n != number and rnd.random() < 0.6}
        strip, way = strip_of(of, bends, done), of.bends[number - 1].direction
        options = gauging.gauge_options(strip, number, way, PRESS, DIE, punch=PUNCH, holder=HOLDER)
        reachable = [g for g in options if g.reachable]
        if not reachable:
            continue
        gauge, step = rnd.choice(reachable), stroke(of, bends, number)
        back = gauging.draw_back_mm(
            gauge, strip, number, way, stroke=step, press=PRESS, die=DIE, punch=PUNCH,
            holder=HOLDER,
        )  # fmt: skip
        faced, n = pose.facing(strip, number, way, gauge.end)
        low, high = gauge.finger_bottom_mm, gauge.finger_bottom_mm + PRESS.finger_height_mm
        rings = [LinearRing(pose.sheet_during(faced, n, step, DIE, i / POSES))
                 for i in range(1, POSES + 1)]  # fmt: skip
        t, tools = of.thickness_mm, tool_stack(PRESS, HOLDER, PUNCH, DIE, 0.0)
        above = [LinearRing(ring) for ring in (tools.punch, tools.holder, tools.ram)]
        come = [furthest(ring, low - t, high - t + step.punch_depth_mm) for ring in above]
        # Between two moments no point goes further than this.
        near = FINE_MM + strip.length_mm * math.pi / 4.0 / POSES
        past = max(*come, *(furthest(ring, low, high) for ring in rings)) - gauge.x_mm
        if past > gauging.SLIDE_MM:
            drawn += 1
            assert back >= past + gauging.DRAW_BACK_CLEARANCE_MM - 1e-3
            assert back <= past + gauging.DRAW_BACK_CLEARANCE_MM + near
        elif past < gauging.SLIDE_MM - near:
            stays += 1
            assert back == 0.0
