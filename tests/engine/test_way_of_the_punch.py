"""How far the punch rises past a finished bend: its lift, and as far as it had gone down.

A channel of short web, 24 mm, its flanges 60 mm: at the bottom the first flange leans over the
nose of a deep gooseneck (``test_classic_orders``), and the rising nose comes to it from below. How
far it can rise is counted here with a general geometry library (shapely), on the sheet as
``bending.pose`` draws it.
"""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from bending_parts import DIE, HOLDER, PRESS, bend, folded, part, stroke
from order_parts import DEEP, problem_of

from flangebook.bending.clearance.legs import approach_code
from flangebook.bending.clearance.problem import INTO_PUNCH, LEFT, Leg, Problem
from flangebook.bending.clearance.sweeps import new_sweeps
from flangebook.bending.motion.lying import facing
from flangebook.bending.motion.pose import sheet_after
from flangebook.bending.ordering.search import as_arrays
from flangebook.bending.part.section import strip_of
from flangebook.bending.tools.outline import tool_stack

CHANNEL = part((60.0, 24.0, 60.0), [bend(90.0, "up"), bend(90.0, "up")])
MARGIN_MM = 2.0


def _free_rise_mm() -> float:
    """How far the punch rises from the bottom before it is MARGIN_MM from the finished flange."""
    bends = folded(CHANNEL)
    step = stroke(CHANNEL, bends, 2)
    faced, number = facing(strip_of(CHANNEL, bends, [1]), 2, "up", "right")
    sheet = shapely.Polygon(sheet_after(faced, number, step))
    # The finished flange is what leans over: above the web, and not the other flange behind.
    over = shapely.box(-200.0, 25.0, 200.0, 200.0)
    behind = shapely.LineString([(2.0, 0.0), (90.0, 93.0)]).buffer(12.0)
    flange = sheet.intersection(over).difference(behind)
    bottom = CHANNEL.thickness_mm - step.punch_depth_mm
    punch = shapely.Polygon(tool_stack(PRESS, HOLDER, DEEP, DIE, bottom).punch)
    rises = np.arange(0.0, 60.0, 0.02)
    risen = [shapely.transform(punch, lambda p, r=r: p + np.array([0.0, r])) for r in rises]
    apart = shapely.distance(flange, risen)
    return float(rises[int(np.argmax(apart < MARGIN_MM))])


def _code(lift_mm: float) -> int:
    problem: Problem = as_arrays(problem_of(CHANNEL, (DEEP,), margin_mm=MARGIN_MM))
    problem = problem._replace(lift=np.full(1, lift_mm))
    return approach_code(problem, Leg(1, LEFT, 1), False, 0, new_sweeps(problem))


@pytest.mark.parametrize(("beside_mm", "expected"), [(-0.3, 0), (0.3, INTO_PUNCH)])
def test_the_punch_rises_by_its_lift_and_by_the_depth_of_the_bend(
    beside_mm: float, expected: int
) -> None:
    free = _free_rise_mm()
    depth = stroke(CHANNEL, folded(CHANNEL), 2).punch_depth_mm
    assert depth > 5.0
    assert free > depth + 1.0
    assert _code(free - depth + beside_mm) == expected
