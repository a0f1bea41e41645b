"""The section in the tools: it touches what it should, and its length never changes."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Literal

import pytest
from bending_parts import DIE, GOOSENECK, HOLDER, PRESS, PUNCH, bend, folded, part, stroke
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm, shoulder_centre_x_mm
from flangebook.bending.geometry.ring import Ring
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.handbook.hems import hem
from flangebook.bending.motion import pose
from flangebook.bending.motion.gauging import gauge_options, retract_mm
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.part.part import Bend, Direction, End
from flangebook.bending.part.section import allowance_at, strip_of
from flangebook.bending.tools.tooling import Die

L_PART = part((30.0, 70.0), (bend(),))


def sheet_during(strip: Strip, number: int, stroke: Stroke, die: Die, share: float) -> Ring:
    """The sheet when ``share`` (0 to 1) of the bend angle is reached (strip faced already).

    The radius is taken as it is at the bottom of the stroke.
    """
    included = 180.0 - (180.0 - stroke.included_angle_deg) * share
    depth = punch_depth_mm(
        included,
        stroke.inside_radius_mm,
        strip.thickness_mm,
        die.v_opening_mm,
        die.angle_deg,
        die.shoulder_radius_mm,
    )
    part_way = Stroke(included, stroke.inside_radius_mm, stroke.allowance_mm * share, depth)
    return pose.sheet_after(strip, number, part_way)


@settings(max_examples=80, deadline=None)
@given(
    st.floats(60.0, 170.0),
    st.floats(1.0, 4.0),
    st.sampled_from((0.5, 1.0, 2.0, 3.0)),
    st.floats(12.0, 30.0),
    st.floats(0.5, 3.0),
)
def test_after_the_bend_the_sheet_touches_punch_and_both_shoulders(
    loaded: float, radius: float, thickness: float, v: float, shoulder: float
) -> None:
    half = math.radians(180.0 - loaded) / 2.0
    fills = (radius + thickness + shoulder) * math.sin(half) > shoulder_centre_x_mm(
        v, 50.0, shoulder
    )
    assume(not fills)  # a bend that fills the V is refused before it is drawn
    die = Die("D", "D", v, 50.0, shoulder, 80.0, 60.0, None, ())
    punch = replace(PUNCH, angle_deg=45.0, tip_radius_mm=1.0)
    of = part((60.0, 80.0), (bend(loaded),), thickness)
    strip = strip_of(of, folded(of, radius), ())
    depth = punch_depth_mm(loaded, radius, thickness, v, 50.0, shoulder)
    taken = math.radians(180.0 - loaded) * (radius + 0.4 * thickness)
    drawing = pose.step_drawing(
        strip, 1, "up", Stroke(loaded, radius, taken, depth),
        press=PRESS, holder=HOLDER, punch=punch, die=die, gauge=None,
    )  # fmt: skip
    sheet, tip = Polygon(drawing.sheet_after), Polygon(drawing.punch_after)
    x_c = shoulder_centre_x_mm(v, 50.0, shoulder)
    for x in (-x_c, x_c):
        assert sheet.distance(Point(x, -shoulder)) == pytest.approx(shoulder, abs=0.015)
    assert sheet.distance(tip) < 0.001
    assert sheet.intersection(tip).area < 0.02
    assert sheet.intersection(Polygon(drawing.die)).area < 0.05
    bottom = max(y for x, y in drawing.sheet_after if abs(x) < 1e-9)
    assert bottom == pytest.approx(thickness - depth, abs=1e-9)


def test_before_the_bend_the_sheet_lies_on_the_die_under_the_punch() -> None:
    of, bends = L_PART, folded(L_PART)
    drawing = pose.step_drawing(
        strip_of(of, bends, ()), 1, "up", stroke(of, bends, 1),
        press=PRESS, holder=HOLDER, punch=PUNCH, die=DIE, gauge=None,
    )  # fmt: skip
    sheet = Polygon(drawing.sheet_before)
    assert sheet.bounds[1::2] == pytest.approx((0.0, 2.0))
    assert sheet.distance(Polygon(drawing.punch_before)) == pytest.approx(0.0, abs=1e-9)
    assert sheet.distance(Polygon(drawing.die)) == pytest.approx(0.0, abs=1e-9)
    assert sheet.bounds[2] - sheet.bounds[0] == pytest.approx(strip_of(of, bends, ()).length_mm)


def turned(ring: Ring, x: float, y: float) -> LineString:
    return LineString([(x * px, y * py) for px, py in (*ring, ring[0])])


@pytest.mark.parametrize(
    ("direction", "end", "x", "y"),
    [("up", "right", 1, 1), ("up", "left", -1, 1), ("down", "right", 1, -1),
     ("down", "left", -1, -1)],
)  # fmt: skip
def test_the_part_is_turned_as_the_step_says(
    direction: Direction, end: End, x: int, y: int
) -> None:
    """Mirrored in x for the left end, in y for a down bend, by the same bent-before part."""
    way: Direction = direction
    of = part((20.0, 50.0, 35.0), (bend(120.0, "up"), bend(90.0, way)))
    bends = folded(of)
    strip = strip_of(of, bends, {1})
    faced, number = pose.facing(strip, 2, way, end)
    ring = pose.sheet_before(faced, number)
    plain = pose.sheet_before(strip, 2)  # as drawn, bend 2 at x = 0, sheet from 0 to t
    mirrored = turned(tuple((px, py - 1.0) for px, py in plain), x, y)
    mine = turned(tuple((px, py - 1.0) for px, py in ring), 1, 1)
    assert mine.hausdorff_distance(mirrored) < 1e-6
    bent = faced.with_fold(number, 90.0, 2.5, 5.0)
    assert bent.folds[number - 1].bend_angle_deg == 90.0
    made = strip_of(of, bends)
    up, n = pose.facing(made, 2, way, end)
    assert up.folds[n - 1].bend_angle_deg > 0


@settings(max_examples=60, deadline=None)
@given(st.sets(st.integers(1, 4)), st.integers(1, 4), st.sampled_from(("left", "right")))
def test_bending_keeps_the_length_to_either_end(
    made: set[int], number: int, end: Literal["left", "right"]
) -> None:
    of = part(
        (25.0, 40.0, 80.0, 45.0, 30.0),
        (bend(90.0, "up"), bend(120.0, "down"), bend(75.0, "up"), bend(90.0, "down")),
    )
    bends = folded(of)
    strip = strip_of(of, bends, made - {number})
    step = stroke(of, bends, number)
    faced, n = pose.facing(strip, number, of.bends[number - 1].direction, end)
    before, after = Polygon(pose.sheet_before(faced, n)), Polygon(pose.sheet_after(faced, n, step))
    # Area is thickness times mid-line: what the arc gives to the mid-line over its allowance.
    bent = math.radians(180.0 - step.included_angle_deg) * (step.inside_radius_mm + 1.0)
    assert after.area - before.area == pytest.approx(2.0 * (bent - step.allowance_mm), abs=0.05)


def test_the_part_before_and_after_differ_only_by_the_bend() -> None:
    of = part((25.0, 60.0, 40.0), (bend(90.0), bend(90.0)))
    bends = folded(of)
    strip = strip_of(of, bends, {1})
    step = stroke(of, bends, 2)
    after = pose.sheet_after(strip, 2, step)
    # The short leg's end: as far along the tangent of the bend as on the flat sheet.
    half = math.radians(180.0 - step.included_angle_deg) / 2.0
    end = max(after, key=lambda p: p[0])
    straight = strip.length_mm - strip.folds[1].at_mm - step.allowance_mm / 2.0
    r = step.inside_radius_mm + 2.0
    x = r * math.sin(half) + straight * math.cos(half)
    assert end[0] == pytest.approx(x, abs=1e-6)


def test_drawing_shows_the_gauge_where_it_stands() -> None:
    of = part((15.0, 40.0, 60.0), (bend(90.0, "down"), bend(90.0, "up")))
    bends = folded(of)
    strip, step = strip_of(of, bends, {1}), stroke(of, bends, 2)
    gauge = gauge_options(strip, 2, "up", PRESS, DIE, punch=PUNCH)[-1]
    assert gauge.reachable
    back = retract_mm(gauge, strip, 2, "up", stroke=step, press=PRESS, die=DIE, punch=PUNCH)
    assert back > 2.0
    gauge = replace(gauge, retract_mm=back)
    drawing = pose.step_drawing(
        strip, 2, "up", step, press=PRESS, holder=HOLDER, punch=GOOSENECK, die=DIE, gauge=gauge
    )
    finger, gone = Polygon(drawing.gauge), Polygon(drawing.gauge_after)
    assert finger.bounds[0] == pytest.approx(gauge.x_mm)
    assert gone.bounds[0] - finger.bounds[0] == pytest.approx(gauge.retract_mm)
    assert drawing.gauge_point == gauge.contact
    x0, y0, x1, y1 = drawing.bounds
    for ring in (drawing.sheet_before, drawing.sheet_after, drawing.die, drawing.gauge):
        for x, y in ring:
            assert x0 <= x <= x1
            assert y0 <= y <= y1


@pytest.mark.parametrize("hem_end", ["left", "right"])
def test_a_hem_is_flattened_onto_the_sheet(hem_end: End) -> None:
    fold = Bend(0.0, "up", kind="closed_hem")
    flats, kinds = [12.0, 60.0, 30.0], [fold, bend()]
    bends = [hem(fold, 2.0).folded, folded(part((1.0, 1.0), (bend(),)))[0]]
    number = 1
    if hem_end == "right":
        flats, kinds, bends, number = flats[::-1], kinds[::-1], bends[::-1], 2
    of = part(flats, kinds)
    strip = strip_of(of, bends, ())
    acute = (30.0, 2.0, allowance_at(30.0, 2.0, fold, bends[number - 1], 2.0))
    closed = (0.0, 0.0, bends[number - 1].allowance_mm)
    drawing = pose.flatten_drawing(strip, number, "up", acute=acute, closed=closed, hem_end=hem_end)
    shut, open_ = Polygon(drawing.sheet_after), Polygon(drawing.sheet_before)
    assert shut.bounds[1] == pytest.approx(0.0, abs=1e-9)
    assert shut.bounds[3] == pytest.approx(4.0, abs=1e-6)
    assert open_.bounds[1] == pytest.approx(0.0, abs=1e-9)
    assert open_.bounds[3] > 8.0
    # The hem is 12 mm long from the outermost tangent, the body lies to the operator.
    top = [p[0] for p in drawing.sheet_after if p[1] > 3.9]
    assert shut.bounds[2] - min(top) == pytest.approx(12.0, abs=1e-6)
    assert shut.bounds[0] < -50.0
    assert drawing.die == ()
