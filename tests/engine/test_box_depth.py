"""Finished sides beside the punch, against the bend drawn again and again.

The check draws the section with the formula of ``test_pose.sheet_during`` anew: base and leg are
turned by hand about the middle of the bend, shapely measures the distance at many angles.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from boxes import UP, shaped, tray, wall
from hypothesis import given
from hypothesis import strategies as st
from planning_shop import CRIB, HOLDER, PRESS, STRAIGHT
from shapely.geometry import Polygon

from flangebook.bending.box.depth import WallStep, clear_length_mm, nearest_approaches, standing
from flangebook.bending.box.shape import BoxShape
from flangebook.bending.clearance.rings import apart
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.tools.outline import tool_stack

DIE = next(d for d in CRIB.dies if d.code == "V16-84")
LOADED, RADIUS, T = 87.0, 2.0, 2.0
ALLOWANCE = math.radians(93.0) * 2.8
DEPTH = punch_depth_mm(LOADED, RADIUS, T, 16.0, 84.0, DIE.shoulder_radius_mm)
STROKE = Stroke(LOADED, RADIUS, ALLOWANCE, DEPTH)
FRONT = WallStep(1, "up", "right", frozenset(), STROKE)


def drawn(shape: BoxShape, height: float, angle: float, *, back: bool) -> Polygon:
    """The plain left wall's rectangle, the front bend at this loaded angle.

    From the bend line the base runs to the back (+x) or front, turned up by half the bend angle
    about the middle of the arc, whose mid-line lies at t/2 - depth.
    """
    share = (180.0 - angle) / (180.0 - LOADED)
    theta = math.radians(180.0 - angle) / 2
    depth = 0.0
    if share > 0:
        depth = punch_depth_mm(angle, RADIUS, T, 16.0, 84.0, DIE.shoulder_radius_mm)
    middle_radius = RADIUS + T / 2
    # Where the base's straight begins: half an arc from the middle, on the mid-line.
    start = np.array([middle_radius * math.sin(theta),
                      T / 2 - depth + middle_radius * (1 - math.cos(theta))])  # fmt: skip
    along = np.array([math.cos(theta), math.sin(theta)])
    normal = np.array([-math.sin(theta), math.cos(theta)])
    finished_half, now_half = math.pi / 4 * 2.8, ALLOWANCE * share / 2
    corners = []
    y1, y2 = shape.along_mm("left", 1)
    for y, z in ((y1, 0.0), (y2, 0.0), (y2, height), (y1, height)):
        # y counts from the finished bend's tangent line, the straight begins where it is now.
        developed = y + finished_half - now_half
        flat_from = 2 * T if z == 0.0 else z
        p = start + along * developed + normal * (flat_from - T / 2)
        corners.append((p[0] if back else -p[0], p[1]))
    return Polygon(corners)


@pytest.mark.slow
@given(st.floats(25.0, 120.0), st.floats(80.0, 300.0), st.booleans())
def test_least_distance_against_many_drawings(height: float, width: float, back: bool) -> None:
    shape = shaped(tray(wall(height), wall(height), wall(), wall(), width_mm=width))
    step = replace(FRONT, gauged_end="right" if back else "left")
    punch = replace(STRAIGHT, height_mm=150.0)
    found = {
        one.tool: one
        for one in nearest_approaches(
            shape, step, press=PRESS, holder=HOLDER, punch=punch, die=DIE, tools=("holder", "ram")
        )
        if one.side == "left"
    }
    for tool in ("holder", "ram"):
        least = math.inf
        for angle in np.linspace(180.0, LOADED, 300):
            depth = 0.0
            if angle < 180.0:
                depth = punch_depth_mm(angle, RADIUS, T, 16.0, 84.0, DIE.shoulder_radius_mm)
            ring = getattr(tool_stack(PRESS, HOLDER, punch, DIE, T - depth), tool)
            placed = drawn(shape, height, float(angle), back=back)
            least = min(least, placed.distance(Polygon(ring)))
        said = found[tool].distance_mm
        if least > 0.0:
            assert said <= least + 1e-6, "never more room than there is"
            assert said == pytest.approx(least, abs=0.6)
        else:
            assert said <= 0.0


def test_clear_length_between_plain_walls() -> None:
    """300 outside less two sheets of 2 mm and the inside radii of 2 mm at the walls' feet, on
    which no tool may press: 292."""
    shape = shaped(tray(*[wall()] * 4))
    assert clear_length_mm(shape, "up") == pytest.approx(292.0, abs=0.05)
    assert clear_length_mm(shape, "down") is None, "nothing hangs below the base"


def test_clear_length_between_lips() -> None:
    """300 less two lips of 10."""
    shape = shaped(tray(*[wall(30.0, 10.0)] * 4))
    assert clear_length_mm(shape, "up") == pytest.approx(280.0, abs=0.02)


def test_one_side_alone_leaves_the_other_end_free() -> None:
    shape = shaped(tray(wall(), None, wall(), wall()))
    assert clear_length_mm(shape, "up") is None
    assert {one.side for one in standing(shape)} == {"left"}


def test_a_higher_wall_comes_nearer_and_a_taller_punch_helps() -> None:
    def least(height: float, punch_mm: float) -> float:
        shape = shaped(tray(wall(height), wall(height), wall(), wall()))
        punch = replace(STRAIGHT, height_mm=punch_mm)
        near = nearest_approaches(
            shape, FRONT, press=PRESS, holder=HOLDER, punch=punch, die=DIE, tools=("holder",)
        )
        return min(one.distance_mm for one in near)

    assert least(30.0, 150.0) > least(60.0, 150.0) > 0.0 > least(120.0, 150.0)
    assert least(120.0, 240.0) > 0.0


def test_a_wall_that_hangs_below_is_looked_at_under_the_die() -> None:
    down = replace(wall(80.0), bends=(replace(UP, direction="down"),))
    shape = shaped(tray(down, down, wall(), wall()))
    near = nearest_approaches(shape, FRONT, press=PRESS, holder=HOLDER, punch=STRAIGHT, die=DIE)
    by_tool = {one.tool: one.distance_mm for one in near}
    assert by_tool["bed"] < 0.0, "80 below a sheet on a die of 60"
    assert by_tool["holder"] > 20.0
    assert clear_length_mm(shape, "down") == pytest.approx(292.0, abs=0.05)


def test_apart() -> None:
    square = np.array([(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)])

    def from_one_at(x: float, y: float) -> float:
        return float(apart(square, square + np.array([x, y])))

    assert from_one_at(5.0, 0.0) == pytest.approx(3.0)
    assert from_one_at(5.0, 6.0) == pytest.approx(5.0)
    assert from_one_at(1.5, 0.25) == pytest.approx(-0.25)
    assert from_one_at(2.0, 0.0) == 0.0
