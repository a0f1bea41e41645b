"""Outlines of the tools: the sizes asked for, measured by shapely, and what is refused."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from bending_parts import DIE, GOOSENECK, HOLDER, PRESS, PUNCH
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LinearRing, LineString, Point, Polygon, box

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import Ring, area, check_simple, counter_clockwise, furthest_x
from flangebook.bending.tools import outline
from flangebook.bending.tools.tooling import Die, Punch


def drawn(make: Callable[[Any], Ring], tool: object) -> Ring | None:
    """The outline, or None when it is refused."""
    try:
        return make(tool)
    except InputError:
        return None


def width_at(ring: Ring, y: float) -> tuple[float, float]:
    cut = Polygon(ring).intersection(LineString([(-500, y), (500, y)]))
    return cut.bounds[0], cut.bounds[2]


def test_straight_punch_has_the_sizes_asked_for() -> None:
    ring = outline.punch_outline(PUNCH)
    shape = Polygon(ring)
    assert shape.is_valid
    assert shape.bounds == pytest.approx((-10.0, 0.0, 10.0, 110.0))
    assert pytest.approx(min(ring, key=lambda p: p[1]), abs=1e-12) == (0.0, 0.0)
    low, high = width_at(ring, 4.0), width_at(ring, 6.0)
    flank = math.degrees(math.atan2(high[1] - low[1], 2.0))
    assert flank == pytest.approx(43.0, abs=1e-6)


def test_tip_of_the_punch_is_round() -> None:
    punch = replace(PUNCH, tip_radius_mm=4.0)
    tip = [p for p in outline.punch_outline(punch) if p[1] < 4.0 * (1 - math.sin(math.radians(43)))]
    assert len(tip) > 4
    for p in tip:
        assert math.dist(p, (0.0, 4.0)) == pytest.approx(4.0, abs=1e-9)


def test_gooseneck_opens_to_the_operator() -> None:
    ring = outline.punch_outline(GOOSENECK)
    assert Polygon(ring).is_valid
    assert width_at(ring, 70.0) == pytest.approx((25.0, 45.0))
    assert width_at(ring, 149.0) == pytest.approx((-10.0, 10.0))
    assert min(p[1] for p in ring) == pytest.approx(0.0, abs=1e-12)


@settings(max_examples=100, deadline=None)
@given(st.floats(26, 95), st.floats(0, 3), st.floats(60, 250), st.floats(10, 40), st.floats(0, 50))
def test_a_punch_is_drawn_whole_or_refused(
    angle: float, tip: float, height: float, body: float, relief: float
) -> None:
    shape = "gooseneck" if relief > 1.0 else "straight"
    punch = Punch(
        "P", "P", angle, tip, height, body, None, (), shape=shape, neck_relief_mm=relief
    )  # fmt: skip
    ring = drawn(outline.punch_outline, punch)
    if ring is None:
        return
    assert LinearRing(ring).is_simple
    assert area(ring) > 0
    assert Polygon(ring).bounds[1] == pytest.approx(0.0, abs=1e-9)
    assert Polygon(ring).bounds[3] == pytest.approx(height)


def test_die_has_the_sizes_asked_for() -> None:
    ring = outline.die_outline(DIE)
    shape = Polygon(ring)
    assert shape.is_valid
    assert shape.bounds == pytest.approx((-25.0, -60.0, 25.0, 0.0))
    # The flanks, drawn on to the top face, meet it 16 mm apart: measured well below the round.
    a, b = half_v(ring, -3.0), half_v(ring, -6.0)
    at_top = a + (a - b)
    assert 2.0 * at_top == pytest.approx(16.0, abs=1e-6)
    assert math.degrees(math.atan2(a - b, 3.0)) == pytest.approx(43.0, abs=1e-6)


def half_v(ring: Ring, y: float) -> float:
    """Half the width of the V at height y, from what the die leaves open."""
    body = Polygon(ring)
    gap = LineString([(-25, y), (25, y)]).difference(body)
    return float(gap.bounds[2])


def test_die_shoulders_are_round_and_touch_face_and_flank() -> None:
    die = replace(DIE, shoulder_radius_mm=3.0)
    beta = math.radians(90.0 - 43.0)
    x_c = 8.0 + 3.0 * math.tan(beta / 2.0)
    round_part = [
        p for p in outline.die_outline(die) if -2.99 < p[1] < -1e-6 and p[0] > 0 and p[0] < x_c
    ]
    assert round_part
    for p in round_part:
        assert math.dist(p, (x_c, -3.0)) == pytest.approx(3.0, abs=1e-9)
    disc = Point(x_c, -3.0).buffer(2.99, quad_segs=64)
    assert Polygon(outline.die_outline(die)).contains(disc)


@settings(max_examples=100, deadline=None)
@given(
    st.floats(4, 60), st.floats(26, 95), st.floats(0, 10), st.floats(20, 120), st.floats(10, 120)
)
def test_a_die_is_drawn_whole_or_refused(
    v: float, angle: float, radius: float, height: float, width: float
) -> None:
    die = Die("D", "D", v, angle, radius, height, width, None, ())
    ring = drawn(outline.die_outline, die)
    if ring is None:
        return
    assert LinearRing(ring).is_simple
    assert area(ring) > 0
    assert Polygon(ring).area < height * width


@pytest.mark.parametrize(
    ("tool", "where"),
    [
        (replace(PUNCH, body_width_mm=300.0), "height_mm"),
        (replace(PUNCH, tip_radius_mm=30.0), "tip_radius_mm"),
        (replace(PUNCH, height_mm=0.0), "height_mm"),
        (replace(PUNCH, angle_deg=180.0), "angle_deg"),
        (replace(GOOSENECK, neck_relief_mm=0.0), "neck_relief_mm"),
        (replace(GOOSENECK, neck_relief_mm=90.0), "neck_relief_mm"),
        (replace(DIE, width_mm=12.0), "width_mm"),
        (replace(DIE, height_mm=8.0), "height_mm"),
        (replace(DIE, shoulder_radius_mm=30.0, width_mm=80.0), "shoulder_radius_mm"),
        (replace(DIE, v_opening_mm=float("nan")), "v_opening_mm"),
        (replace(HOLDER, overhang_back_mm=-1.0), "overhang_back_mm"),
    ],
)
def test_sizes_that_do_not_fit_are_refused(tool: object, where: str) -> None:
    make = {Punch: outline.punch_outline, Die: outline.die_outline}.get(
        type(tool),
        outline.holder_outline,  # type: ignore[arg-type]
    )
    with pytest.raises(InputError) as caught:
        make(tool)  # type: ignore[operator]
    assert caught.value.where == where
    assert caught.value.right


def test_outline_by_points_is_taken_as_it_is_but_counter_clockwise() -> None:
    clockwise = ((0.0, 0.0), (-5.0, 60.0), (5.0, 60.0))
    punch = replace(PUNCH, shape="points", points_mm=clockwise)
    assert outline.punch_outline(punch) == clockwise[::-1]
    assert outline.ram_outline(replace(PRESS, ram_points_mm=clockwise)) == clockwise[::-1]
    assert outline.bed_outline(replace(PRESS, bed_points_mm=clockwise)) == clockwise[::-1]


CROSSING: dict[str, tuple[Ring, str]] = {
    "bow tie": (((0, 0), (10, 10), (10, 0), (0, 10)), "Edge 1 meets edge 3"),
    "touching corner": (((0, 0), (10, 0), (5, 0), (5, 5)), "Edge 1 meets edge 2"),
    "two points": (((0, 0), (1, 1)), "2 points"),
    "repeated": (((0, 0), (0, 0), (1, 1)), "Points 1 and 2 are the same"),
    "closed": (((0, 0), (5, 0), (5, 5), (0, 0)), "Points 4 and 1 are the same"),
    "a line": (((0, 0), (5, 0), (10, 0)), "meets"),
    "not a number": (((0, 0), (5, float("nan")), (1, 1)), "not a number"),
    "corner on an edge": (
        ((0, 0), (10, 0), (10, 10), (5, 0), (0, 10)),
        "Edge 1 meets edge 3",
    ),
}


@pytest.mark.parametrize(("ring", "words"), CROSSING.values(), ids=CROSSING)
def test_outlines_that_cross_are_refused_by_the_edge(ring: Ring, words: str) -> None:
    with pytest.raises(InputError, match=words):
        check_simple(ring)


grid = st.tuples(st.integers(0, 6).map(float), st.integers(0, 6).map(float))


@settings(max_examples=400, deadline=None)
@given(st.lists(grid, min_size=3, max_size=7, unique=True))
def test_simple_is_what_shapely_calls_simple(points: list[tuple[float, float]]) -> None:
    ring = tuple(points)
    assume(abs(area(ring)) > 1e-9)
    try:
        check_simple(ring)
        found = True
    except InputError:
        found = False
    assert found == LinearRing(ring).is_simple


@given(st.lists(grid, min_size=3, max_size=7, unique=True), st.floats(-1, 7), st.floats(0.1, 5))
def test_furthest_x_is_what_shapely_finds_in_the_band(
    points: list[tuple[float, float]], low: float, height: float
) -> None:
    ring = counter_clockwise(tuple(points))
    cut = LinearRing(ring).intersection(box(-100.0, low, 100.0, low + height))
    hit = furthest_x(ring, low, low + height)
    if cut.is_empty:
        assert hit is None
    else:
        assert hit is not None
        assert hit[0] == pytest.approx(cut.bounds[2], abs=1e-6)
        assert low - 1e-9 <= hit[1] <= hit[2] <= low + height + 1e-9


def test_stack_stands_one_on_the_other() -> None:
    stack = outline.tool_stack(PRESS, HOLDER, PUNCH, DIE, 2.0)
    assert Polygon(stack.punch).bounds[1] == pytest.approx(2.0)
    assert Polygon(stack.holder).bounds == pytest.approx((-30.0, 112.0, 35.0, 192.0))
    assert Polygon(stack.ram).bounds == pytest.approx((-40.0, 192.0, 40.0, 392.0))
    assert Polygon(stack.die).bounds[3] == 0.0
    assert Polygon(stack.bed).bounds == pytest.approx((-50.0, -260.0, 50.0, -60.0))
    bare = outline.tool_stack(PRESS, None, PUNCH, DIE, 2.0)
    assert bare.holder == ()
    assert Polygon(bare.ram).bounds[1] == pytest.approx(112.0)


@pytest.mark.parametrize("punch", [PUNCH, GOOSENECK], ids=lambda punch: punch.code)
def test_a_punch_reversed_is_the_mirror_image_and_runs_the_same_way(punch: Punch) -> None:
    turned = outline.punch_outline(replace(punch, turned=True))
    assert {(round(-x, 9), round(y, 9)) for x, y in turned} == {
        (round(x, 9), round(y, 9)) for x, y in outline.punch_outline(punch)
    }
    assert area(turned) == pytest.approx(area(outline.punch_outline(punch)))
    assert area(turned) > 0
