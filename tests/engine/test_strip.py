"""The outline of a folded sheet, against shapely's own offset of the mid-line."""

from __future__ import annotations

import math

import pytest
from bending_parts import bend, folded, folded_parts, part
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon
from shapely.affinity import affine_transform, rotate, scale, translate

from flangebook.bending.geometry import strip as strips
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.geometry.strip import Fold, Strip
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, strip_of

Made = tuple[Part, list[FoldedBend]]
FINE = 1e-4


def polygon(strip: Strip, start: strips.Pose = strips.START) -> Polygon:
    return Polygon(strips.outline(strip, start, FINE))


def far_apart(one: Polygon, two: Polygon) -> float:
    """Area that only one of the two covers, per mm of outline: a mean gap in mm."""
    return one.symmetric_difference(two).area / one.length


def test_flat_sheet_is_a_rectangle_running_counter_clockwise() -> None:
    assert strips.outline(Strip(2.0, 100.0, (Fold(40.0),))) == (
        (0.0, -1.0),
        (100.0, -1.0),
        (100.0, 1.0),
        (0.0, 1.0),
    )


def test_channel_has_its_outside_size() -> None:
    of = part((30.0, 60.0, 40.0), (bend(), bend()))
    ring = strips.outline(strip_of(of, folded(of)))
    assert bounds(ring) == pytest.approx((-10.0, -1.0, 30.0, 59.0))


@settings(max_examples=50, deadline=None)
@given(folded_parts(most_bends=5, least_radius_mm=0.2))
def test_outline_is_the_mid_line_offset_by_half_the_thickness(made: Made) -> None:
    of, bends = made
    strip = strip_of(of, bends)
    mine = polygon(strip)
    assume(mine.is_valid)
    line = LineString(fine_centre_line(strip))
    theirs = line.buffer(of.thickness_mm / 2.0, cap_style="flat", join_style="round", quad_segs=64)
    assert far_apart(mine, theirs) < 2e-3
    assert mine.area == pytest.approx(line.length * of.thickness_mm, rel=1e-4)


def fine_centre_line(strip: Strip) -> list[tuple[float, float]]:
    """The mid-line in steps of half a degree, walked without the engine's arcs."""
    x, y, heading, reached = 0.0, 0.0, 0.0, 0.0
    points = [(x, y)]
    for fold in strip.folds:
        length = fold.at_mm - fold.allowance_mm / 2.0 - reached
        reached = fold.at_mm + fold.allowance_mm / 2.0
        x, y = x + length * math.cos(heading), y + length * math.sin(heading)
        points.append((x, y))
        count = max(2, math.ceil(abs(fold.bend_angle_deg) * 2))
        turn = math.radians(fold.bend_angle_deg) / count
        chord = 2.0 * (fold.inside_radius_mm + strip.thickness_mm / 2.0) * math.sin(abs(turn) / 2)
        for _ in range(count):
            heading += turn / 2.0
            x, y = x + chord * math.cos(heading), y + chord * math.sin(heading)
            heading += turn / 2.0
            points.append((x, y))
    length = strip.length_mm - reached
    points.append((x + length * math.cos(heading), y + length * math.sin(heading)))
    return points


@settings(max_examples=30, deadline=None)
@given(folded_parts(), st.floats(-50, 50), st.floats(-50, 50), st.floats(-4, 4))
def test_moving_the_start_moves_the_whole_outline(
    made: Made, x: float, y: float, turn: float
) -> None:
    strip = strip_of(*made)
    moved = strips.outline(strip, (x, y, turn), FINE)
    there = translate(
        rotate(
            LineString(strips.outline(strip, strips.START, FINE)), turn, (0, 0), use_radians=True
        ),
        x,
        y,
    )
    assert len(moved) == len(there.coords)
    for a, b in zip(moved, there.coords, strict=True):
        assert a == pytest.approx(b, abs=1e-6)


@settings(max_examples=30, deadline=None)
@given(folded_parts())
def test_flipped_strip_is_the_mirror_image(made: Made) -> None:
    strip = strip_of(*made)
    mirrored = scale(LineString(strips.outline(strip)), 1.0, -1.0, origin=(0, 0))
    assert LineString(strips.outline(strip.flipped())).hausdorff_distance(mirrored) < 1e-6


@settings(max_examples=30, deadline=None)
@given(folded_parts(), st.data())
def test_reversed_strip_is_the_mirror_image(made: Made, data: st.DataObject) -> None:
    strip = strip_of(*made)
    count = len(strip.folds)
    number = data.draw(st.integers(1, count))
    target = (0.0, 0.0, 0.0)
    there = strips.outline(strip, strips.start_for(strip, number, target))
    back = strip.reversed()
    here = strips.outline(back, strips.start_for(back, count + 1 - number, target))
    mirrored = affine_transform(LineString(there), [-1, 0, 0, 1, 0, 0])
    assert LineString(here).hausdorff_distance(mirrored) < 0.02  # ends of the open line differ
    assert Polygon(here).area == pytest.approx(Polygon(there).area, rel=1e-9)


@given(folded_parts())
def test_turning_twice_changes_nothing(made: Made) -> None:
    strip = strip_of(*made)
    assert strip.flipped().flipped() == strip
    again = strip.reversed().reversed()
    for one, two in zip(strip.folds, again.folds, strict=True):
        assert one.at_mm == pytest.approx(two.at_mm)
        assert one.bend_angle_deg == two.bend_angle_deg


@settings(max_examples=30, deadline=None)
@given(folded_parts(), st.data())
def test_start_for_puts_the_bend_where_it_is_asked(made: Made, data: st.DataObject) -> None:
    strip = strip_of(*made)
    number = data.draw(st.integers(0, len(strip.folds) + 1))
    target = (3.0, -4.0, 0.5)
    assert strips.pose_at(strip, number, strips.start_for(strip, number, target)) == pytest.approx(
        target, abs=1e-7
    )


@given(folded_parts(most_bends=8), st.data())
def test_any_state_of_bends_keeps_the_developed_length(made: Made, data: st.DataObject) -> None:
    of, bends = made
    numbers = range(1, len(of.bends) + 1)
    some = data.draw(st.sets(st.sampled_from(numbers)))
    strip = strip_of(of, bends, some)
    straights, _ = strips.trace(strip)
    taken = sum(fold.allowance_mm for fold in strip.folds)
    blank_length = strip_of(of, bends, ()).length_mm
    assert sum(s.length_mm for s in straights) + taken == pytest.approx(blank_length, abs=1e-9)
    assert {n for n in numbers if strip.folds[n - 1].bend_angle_deg} == some


@pytest.mark.parametrize("count", [1, 6, 20, 40])
def test_outline_stays_small_enough_to_send(count: int) -> None:
    flats = [30.0] * (count + 1)
    of = part(flats, [bend(90.0, "up" if i % 4 < 2 else "down") for i in range(count)])
    ring = strips.outline(strip_of(of, folded(of)))
    assert len(ring) <= 330
    if count <= 6:
        exact = Polygon(strips.outline(strip_of(of, folded(of)), strips.START, 1e-5))
        assert Polygon(ring).hausdorff_distance(exact) <= strips.CHORD_ERROR_MM + 1e-6


def test_middle_of_the_arc_is_a_point_of_the_outline() -> None:
    of = part((40.0, 40.0), (bend(73.0),))
    strip = strip_of(of, folded(of))
    ring = strips.outline(strip, strips.start_for(strip, 1, (0.0, 1.0, 0.0)))
    assert min(math.dist(p, (0.0, 2.0)) for p in ring) < 1e-9
    assert min(math.dist(p, (0.0, 0.0)) for p in ring) < 1e-9


def test_centre_line_and_bend_points_follow_the_sheet() -> None:
    of = part((30.0, 60.0, 40.0), (bend(), bend(120.0, "down")))
    strip = strip_of(of, folded(of))
    line = LineString(strips.centre_line(strip))
    assert line.hausdorff_distance(LineString(fine_centre_line(strip))) < 0.02
    for point in strips.bend_points(strip):
        assert line.distance(LineString([point, point]).centroid) < 0.02
