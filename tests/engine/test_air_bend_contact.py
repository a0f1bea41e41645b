"""Contact geometry of an air bend against a construction that knows none of its formulas.

The sheet's outer face is drawn as a chain of short chords (arc, then straight leg), lowered on
the die until its distance from the centre of the shoulder's rounding is the rounding's radius,
by bisection. Nothing of the closed form is used: only distances, measured by shapely.
"""

from __future__ import annotations

from math import cos, hypot, inf, radians, sin

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Point
from shapely.ops import nearest_points

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.geometry.air_bend_geometry import (
    angle_at_depth,
    contact_point,
    edge_rate_mm_per_mm,
    punch_depth_mm,
    shoulder_centre_x_mm,
    smallest_flange_mm,
)

CHORDS = 2000


def drawn_sheet(theta: float, outer_radius: float, leg: float) -> LineString:
    """Right half of the outer face, its lowest point at (0, 0)."""
    arc = [
        (outer_radius * sin(theta * i / CHORDS), outer_radius * (1 - cos(theta * i / CHORDS)))
        for i in range(CHORDS + 1)
    ]
    x, y = arc[-1]
    return LineString([*arc, (x + leg * cos(theta), y + leg * sin(theta))])


def shoulder_by_tangency(v: float, die_angle: float, rd: float) -> tuple[float, float]:
    """Centre of the rounding: as far from the flank as from the top face, found by bisection."""
    half = radians(die_angle / 2)
    flank = LineString([(v / 2, 0.0), (v / 2 - sin(half) * 50 * v, -cos(half) * 50 * v)])
    low, high = v / 2, v / 2 + 10 * (rd + 1)
    for _ in range(80):
        x = (low + high) / 2
        if Point(x, -rd).distance(flank) < rd:
            low = x
        else:
            high = x
    return (low + high) / 2, -rd


def lowered(theta, outer_radius, v, die_angle, rd):
    """Depth of the sheet's lowest point when it rests on the shoulder, and where it rests."""
    x, y = shoulder_by_tangency(v, die_angle, rd)
    sheet = drawn_sheet(theta, outer_radius, 40 * v)
    low, high = -10 * v, 40 * v  # depth: at the low end the sheet is clear, at the high end not
    for _ in range(80):
        depth = (low + high) / 2
        # Lowering the sheet is raising the shoulder.
        centre = Point(x, y + depth)
        if above(sheet, centre) and sheet.distance(centre) > rd:
            low = depth
        else:
            high = depth
    touch, _ = nearest_points(sheet, Point(x, y + depth))
    return depth, (touch.x, touch.y - depth)


def above(sheet: LineString, point: Point) -> bool:
    """Whether the point lies below the sheet's outer face."""
    crossing = LineString([(point.x, -1e5), (point.x, 1e5)]).intersection(sheet)
    return point.y < crossing.y


sizes = st.tuples(
    st.floats(30.0, 176.0),  # loaded angle
    st.floats(0.0, 12.0),  # inside radius
    st.floats(0.4, 8.0),  # thickness
    st.floats(6.0, 80.0),  # V
    st.floats(28.0, 90.0),  # die angle
    st.floats(0.3, 8.0),  # shoulder radius
)


def fits(size) -> bool:
    angle, r, t, v, die_angle, rd = size
    x_c = shoulder_centre_x_mm(v, die_angle, rd)
    return (r + t + rd) * sin(radians(180 - angle) / 2) < 0.98 * x_c


@settings(max_examples=60, deadline=None)
@given(sizes)
def test_depth_and_contact_agree_with_the_drawn_sheet(size):
    assume(fits(size))
    angle, r, t, v, die_angle, rd = size
    depth, touch = lowered(radians(180 - angle) / 2, r + t, v, die_angle, rd)
    # The chords of the arc lie at most a few nanometres off it; the bisection ends at 1e-9.
    assert punch_depth_mm(*size) == pytest.approx(depth, abs=2e-6)
    x, y = contact_point(angle, v, die_angle, rd)
    # Where it touches is softer: a deviation d of the face moves the foot by its square root.
    assert hypot(x - touch[0], y - touch[1]) < 2e-3


@pytest.mark.parametrize("die_angle", [30, 60, 86, 90])
@pytest.mark.parametrize("rd", [0.5, 2.0, 4.0])
def test_shoulder_centre_is_tangent_to_flank_and_top(die_angle, rd):
    x, _ = shoulder_by_tangency(16.0, die_angle, rd)
    assert shoulder_centre_x_mm(16.0, die_angle, rd) == pytest.approx(x, abs=1e-9)


@given(sizes)
def test_angle_at_depth_undoes_depth(size):
    assume(fits(size))
    assert angle_at_depth(punch_depth_mm(*size), *size[1:]) == pytest.approx(size[0], abs=1e-5)


@given(sizes, st.floats(0.1, 5.0))
def test_deeper_is_sharper(size, sharper_by):
    assume(fits(size))
    flatter = (min(size[0] + sharper_by, 179.9), *size[1:])
    assume(flatter[0] > size[0])
    assert punch_depth_mm(*flatter) < punch_depth_mm(*size)


@given(sizes, st.floats(0.05, 3.0))
def test_rounder_bend_needs_less_depth(size, more):
    rounder = (size[0], size[1] + more, *size[2:])
    assume(fits(size) and fits(rounder))
    assert punch_depth_mm(*rounder) < punch_depth_mm(*size)


@given(sizes)
def test_first_touch_is_flat(size):
    assert angle_at_depth(0.0, *size[1:]) == pytest.approx(180.0, abs=1e-5)
    assert punch_depth_mm(179.9999, *size[1:]) == pytest.approx(0.0, abs=1e-4)


@given(sizes)
def test_contact_lies_on_the_rounding(size):
    angle, _, _, v, die_angle, rd = size
    x, y = contact_point(angle, v, die_angle, rd)
    assert hypot(x - shoulder_centre_x_mm(v, die_angle, rd), y + rd) == pytest.approx(rd)
    assert y <= 0.0


@given(sizes, st.floats(0.5, 10.0))
def test_smallest_flange_grows_as_the_bend_sharpens(size, sharper_by):
    angle, _, _, v, die_angle, rd = size
    assume(angle - sharper_by > 25)
    flat = smallest_flange_mm(angle, v, die_angle, rd)
    assert smallest_flange_mm(angle - sharper_by, v, die_angle, rd) >= flat
    assert flat >= shoulder_centre_x_mm(v, die_angle, rd)


@settings(max_examples=40, deadline=None)
@given(sizes)
def test_smallest_flange_reaches_the_drawn_contact(size):
    """Measured on the drawing: from the mould line along the outer face to where it touches."""
    assume(fits(size))
    angle, r, t, v, die_angle, rd = size
    theta = radians(180 - angle) / 2
    depth, touch = lowered(theta, r + t, v, die_angle, rd)
    mould_y = -depth + (r + t) * (1 - 1 / cos(theta))
    measured = hypot(touch[0], touch[1] - mould_y)
    needed = max(measured, shoulder_centre_x_mm(v, die_angle, rd))
    assert smallest_flange_mm(angle, v, die_angle, rd) == pytest.approx(needed, abs=3e-3)


@pytest.mark.parametrize("deduction_mm", [0.0, 3.0, 9.0])
def test_flat_sheet_covers_the_rounding(deduction_mm):
    flange = smallest_flange_mm(170.0, 16.0, 86.0, 2.0, deduction_mm)
    assert flange >= shoulder_centre_x_mm(16.0, 86.0, 2.0) + deduction_mm / 2


@given(sizes)
def test_edge_rate_is_the_slope_of_the_stroke(size):
    assume(fits(size) and size[0] < 175)
    angle, *tool = size
    step = 1e-4
    travel = punch_depth_mm(angle - step, *tool) - punch_depth_mm(angle + step, *tool)
    swing = 100.0 * radians(step)  # each leg turns by half of the 2 steps
    assert edge_rate_mm_per_mm(angle, 100.0, *tool) == pytest.approx(swing / travel, rel=1e-4)


def test_a_radius_that_fills_the_v_is_refused():
    with pytest.raises(RangeError, match="fills a V") as error:
        punch_depth_mm(60, 12, 3, 16, 30, 2)
    assert "wider V" in error.value.right
    with pytest.raises(RangeError):
        angle_at_depth(200, 12, 3, 16, 30, 2)
    with pytest.raises(RangeError):
        edge_rate_mm_per_mm(60, 100, 12, 3, 16, 30, 2)


def test_depth_stops_where_the_sheet_fills_the_v():
    """Just inside the limit there is an answer, and it is the deepest one."""
    size = (6.0, 3.0, 16.0, 30.0, 2.0)
    x_c, radii = shoulder_centre_x_mm(16.0, 30.0, 2.0), 11.0
    assert radii > x_c
    deepest = radii - (radii**2 - x_c**2) ** 0.5
    angle = angle_at_depth(deepest - 1e-9, *size)
    assert sin(radians(180 - angle) / 2) == pytest.approx(x_c / radii, abs=1e-4)
    with pytest.raises(RangeError):
        angle_at_depth(deepest + 1e-6, *size)


@pytest.mark.parametrize("bad", [0.0, -5.0, 180.0, inf, float("nan")])
def test_refuses_a_die_that_is_no_v(bad):
    with pytest.raises(InputError):
        shoulder_centre_x_mm(16.0, bad, 1.0)


@pytest.mark.parametrize("angle", [180.0, -1.0, 0.0])
def test_refuses_angles_a_v_cannot_press(angle):
    with pytest.raises(InputError):
        smallest_flange_mm(angle, 16.0, 86.0, 1.0)
    with pytest.raises(InputError):
        punch_depth_mm(angle, 1.0, 1.0, 16.0, 86.0, 1.0)


def test_sharp_fold_in_a_sharp_v_is_a_triangle():
    """No radius, no thickness to speak of: depth is V/2 over tan of half the angle."""
    for angle in (30, 60, 90, 120, 150):
        expected = 8.0 / (sin(radians(angle / 2)) / cos(radians(angle / 2)))
        assert punch_depth_mm(angle, 0.0, 1e-12, 16.0, 20.0, 0.0) == pytest.approx(expected)
        assert angle_at_depth(expected, 0.0, 1e-12, 16.0, 20.0, 0.0) == pytest.approx(angle)
