"""The gauge's draw-back against a dense look at the stroke by a general geometry library.

Of 500 moments only those are drawn in which the sheet can come further than in those
drawn already; the first part of each test has all of them drawn, and they must not differ.
"""

from __future__ import annotations

import math
import random
from collections.abc import Callable
from functools import cache

import pytest
from bending_parts import DIE, HOLDER, PRESS, PUNCH, folded, stroke
from order_parts import random_part
from quick_ones import but_for
from shapely import LinearRing, clip_by_rect
from test_pose import sheet_during

from flangebook.bending.geometry.strip import Strip
from flangebook.bending.motion import gauging, pose
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.part.section import strip_of
from flangebook.bending.tools.outline import tool_stack

POSES = 500
FINE_MM = 0.02


def furthest(ring: LinearRing, low: float, high: float) -> float:
    cut = clip_by_rect(ring, -5000.0, low, 5000.0, high)
    return -math.inf if cut.is_empty else float(cut.bounds[2])


def furthest_of_all(
    ring_at: Callable[[int], LinearRing], low: float, high: float, *, near: float, above: float
) -> float:
    """The furthest of all moments; ``above`` where none is further.

    No point is further than ``near`` from where it is at the nearest moment, so a stretch of
    moments is passed over when from its ends nothing can come further than is known already.
    """
    best = max(above, *(furthest(ring_at(i), low, high) for i in (1, POSES)))
    stretches = [(1, POSES)]
    while stretches:
        first, last = stretches.pop()
        moves = near * (last - first)
        ends = (furthest(ring_at(i), low - moves, high + moves) for i in (first, last))
        if last - first > 1 and max(ends) + moves > best:
            middle = (first + last) // 2
            best = max(best, furthest(ring_at(middle), low, high))
            stretches += [(middle, last), (first, middle)]
    return best


@pytest.mark.parametrize("seed", but_for([3], range(6)))
def test_the_finger_is_drawn_back_by_what_comes_to_it(seed: int) -> None:
    """Never less than the furthest of 500 moments needs, nor more than can be between two."""
    rnd = random.Random(5_300 + seed)
    drawn = stays = 0
    all_looked_at = False
    while drawn < 12 or stays < 4:
        of = random_part(rnd, rnd.randint(1, 4))
        bends, number = folded(of), rnd.randint(1, len(of.bends))
        done = {n for n in range(1, len(of.bends) + 1) if n != number and rnd.random() < 0.6}
        strip, way = strip_of(of, bends, done), of.bends[number - 1].direction
        options = gauging.gauge_options(strip, number, way, PRESS, DIE, punch=PUNCH, holder=HOLDER)
        reachable = [g for g in options if g.reachable]
        if not reachable:
            continue
        gauge, step = rnd.choice(reachable), stroke(of, bends, number)
        back = gauging.retract_mm(
            gauge, strip, number, way, stroke=step, press=PRESS, die=DIE, punch=PUNCH,
            holder=HOLDER,
        )  # fmt: skip
        faced, n = pose.facing(strip, number, way, gauge.end)
        low, high = gauge.finger_bottom_mm, gauge.finger_bottom_mm + PRESS.finger_height_mm

        @cache
        def ring_at(i: int, faced: Strip = faced, n: int = n, step: Stroke = step) -> LinearRing:
            return LinearRing(sheet_during(faced, n, step, DIE, i / POSES))

        t, tools = of.thickness_mm, tool_stack(PRESS, HOLDER, PUNCH, DIE, 0.0)
        upper = [LinearRing(ring) for ring in (tools.punch, tools.holder, tools.ram)]
        come = [furthest(ring, low - t, high - t + step.punch_depth_mm) for ring in upper]
        # Between two moments no point goes further than this.
        near = FINE_MM + strip.length_mm * math.pi / 4.0 / POSES
        least = gauge.x_mm + gauging.SLIDE_MM - 2.0 * near  # what is less far has to be 0
        above = max(*come, least)
        furthest_mm = furthest_of_all(ring_at, low, high, near=near, above=above)
        if not all_looked_at:
            each = [furthest(ring_at(i), low, high) for i in range(1, POSES + 1)]
            assert furthest_mm == max(above, *each)
            all_looked_at = True
        past = furthest_mm - gauge.x_mm
        if past > gauging.SLIDE_MM:
            drawn += 1
            assert back >= past + gauging.RETRACT_CLEARANCE_MM - 1e-3
            assert back <= past + gauging.RETRACT_CLEARANCE_MM + near
        elif past < gauging.SLIDE_MM - near:
            stays += 1
            assert back == 0.0
    print(drawn, stays)
