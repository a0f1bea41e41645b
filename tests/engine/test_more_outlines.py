"""Holders with clamps, die holders, gooseneck necks; outlines that stand where they should not."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from bending_parts import DIE, GOOSENECK, HOLDER, PRESS, PUNCH
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon, box, union_all

from flangebook.bending.errors import InputError, OutlineError
from flangebook.bending.geometry.ring import Ring, check_simple, moved
from flangebook.bending.tools.outline import (
    bed_outline,
    die_holder_outline,
    die_outline,
    holder_outline,
    punch_outline,
    tool_stack,
)
from flangebook.bending.tools.outline_checks import (
    die_checks,
    holder_checks,
    press_checks,
    punch_checks,
    taller_than_the_press,
)
from flangebook.bending.tools.ratings import ratings
from flangebook.bending.tools.tooling import Press

CLAMPS = replace(
    HOLDER, shape="clamps", clamp_height_mm=30.0, body_front_mm=15.0, body_back_mm=20.0
)


def test_clamps_stick_out_below_and_the_body_above_is_its_own_width() -> None:
    shape = Polygon(holder_outline(CLAMPS))
    wanted = union_all([box(-30, 0, 35, 30), box(-15, 0, 20, 80)])
    assert shape.symmetric_difference(wanted).area == pytest.approx(0)
    assert shape.exterior.is_ccw


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"clamp_height_mm": None}, "clamp_height_mm"),
        ({"clamp_height_mm": 80.0}, "clamp_height_mm"),
        ({"body_front_mm": None}, "body_front_mm"),
        ({"shape": "points"}, "points_mm"),
    ],
)
def test_clamps_that_do_not_go_together_are_refused(change: dict[str, Any], where: str) -> None:
    with pytest.raises(InputError) as told:
        holder_outline(replace(CLAMPS, **change))
    assert told.value.where == where


def test_a_holder_kept_before_there_were_shapes_keeps_its_points() -> None:
    ring = ((-10.0, 0.0), (10.0, 0.0), (10.0, 80.0), (-10.0, 80.0))
    assert holder_outline(replace(HOLDER, points_mm=ring)) == ring


@given(st.floats(5.0, 400.0), st.floats(5.0, 300.0))
def test_a_riser_and_the_bed_are_one_outline(width: float, height: float) -> None:
    press = replace(PRESS, die_holder_height_mm=height, die_holder_width_mm=width)
    shape = Polygon(bed_outline(press))
    riser = box(-width / 2, -height, width / 2, 0)
    bed = box(-50, -height - PRESS.bed_height_mm, 50, -height)
    assert shape.is_valid
    assert shape.symmetric_difference(union_all([riser, bed])).area == pytest.approx(0, abs=1e-6)


def test_a_die_holder_by_points_stands_on_a_bed_by_points() -> None:
    holder = ((-20.0, -50.0), (30.0, -50.0), (40.0, -20.0), (40.0, 5.0), (25.0, 5.0), (25.0, 0.0),
              (-20.0, 0.0))  # fmt: skip
    bed = ((-60.0, -300.0), (60.0, -300.0), (60.0, 0.0), (25.0, 0.0), (-60.0, 0.0))
    press = replace(
        PRESS, die_holder_height_mm=50.0, die_holder_points_mm=holder, bed_points_mm=bed
    )
    assert die_holder_outline(press) == holder
    shape = Polygon(bed_outline(press))
    wanted = union_all([Polygon(holder), Polygon(moved(bed, 0, -50))])
    assert shape.symmetric_difference(wanted).area == pytest.approx(0, abs=1e-6)


def test_a_die_holder_that_does_not_reach_the_bed_is_refused() -> None:
    ring = ((-20.0, -40.0), (20.0, -40.0), (20.0, 0.0), (-20.0, 0.0))
    press = replace(PRESS, die_holder_height_mm=50.0, die_holder_points_mm=ring)
    with pytest.raises(OutlineError) as told:
        bed_outline(press)
    assert (told.value.code, told.value.where) == ("no-seat", "die_holder_points_mm")
    with pytest.raises(InputError):
        bed_outline(replace(PRESS, die_holder_height_mm=50.0))


def test_in_the_stack_the_riser_lies_under_the_die() -> None:
    press = replace(PRESS, die_holder_height_mm=80.0, die_holder_width_mm=60.0)
    bed = Polygon(tool_stack(press, HOLDER, PUNCH, DIE, 0.0).bed)
    assert bed.bounds == pytest.approx((-50, -60 - 80 - PRESS.bed_height_mm, 50, -60))


def test_a_die_holder_is_rated_like_everything_that_bears() -> None:
    plain = {r.what for r in ratings(1000.0, 100.0, PRESS)}
    assert "die holder" not in plain
    press = replace(PRESS, die_holder_height_mm=80.0, die_holder_width_mm=60.0)
    row = next(r for r in ratings(40_000.0, 100.0, press) if r.what == "die holder")
    assert (row.load, row.level) == (400.0, "unknown")
    rated = replace(press, die_holder_rating_kn_per_m=300.0)
    row = next(r for r in ratings(40_000.0, 100.0, rated) if r.what == "die holder")
    assert row.check().level == "stop"


def cut(ring: Ring, y: float) -> tuple[float, float]:
    found = Polygon(ring).intersection(LineString([(-500, y), (500, y)]))
    return found.bounds[0], found.bounds[2]


def test_a_gooseneck_has_the_neck_and_throat_that_were_measured() -> None:
    ring = punch_outline(replace(GOOSENECK, neck_width_mm=14.0, throat_top_mm=90.0))
    assert Polygon(ring).is_valid
    assert cut(ring, 80.0) == pytest.approx((25.0, 39.0))
    assert cut(ring, 89.9) == pytest.approx((25.0, 39.0))
    assert cut(ring, 100.0)[0] == pytest.approx(15.0)  # closing at 45 degrees
    assert cut(ring, 140.0) == pytest.approx((-10.0, 10.0))


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"throat_top_mm": 120.0}, "throat_top_mm"),
        ({"throat_top_mm": 20.0}, "throat_top_mm"),
        ({"neck_width_mm": 200.0}, "neck_relief_mm"),
        ({"neck_width_mm": 0.0}, "neck_width_mm"),
    ],
)
def test_a_gooseneck_that_cannot_be_is_refused(change: dict[str, Any], where: str) -> None:
    with pytest.raises(InputError) as told:
        punch_outline(replace(GOOSENECK, **change))
    assert told.value.where == where


@given(
    st.floats(40.0, 250.0), st.floats(8.0, 60.0), st.floats(1.0, 90.0), st.floats(25.0, 95.0),
    st.none() | st.floats(4.0, 80.0), st.none() | st.floats(10.0, 240.0),
)  # fmt: skip
def test_a_gooseneck_is_sound_or_refused(
    height: float, body: float, relief: float, angle: float, neck: float | None, top: float | None
) -> None:
    punch = replace(
        GOOSENECK, height_mm=height, body_width_mm=body, neck_relief_mm=relief, angle_deg=angle,
        neck_width_mm=neck, throat_top_mm=top,
    )  # fmt: skip
    try:
        ring = punch_outline(punch)
    except InputError:
        return
    assert Polygon(ring).is_valid
    assert Polygon(ring).exterior.is_ccw
    check_simple(ring)
    assert Polygon(ring).bounds[1::2] == pytest.approx((0.0, height))


def by_points(x: float = 0.0, y: float = 0.0) -> Ring:
    """A punch by points, 110 high, moved by (x, y)."""
    points = ((0.0, 0.0), (8.0, 20.0), (8.0, 110.0), (-8.0, 110.0), (-8.0, 20.0))
    return moved(points, x, y)


@pytest.mark.parametrize(
    ("ring", "codes"),
    [
        (by_points(), set()),
        (by_points(0.05, -0.05), set()),
        (by_points(0.0, 3.0), {"punch-low", "punch-height"}),
        (by_points(5.0), {"punch-beside"}),
        ((*by_points()[:2], (8.0, 100.0), (-8.0, 100.0), (-8.0, 20.0)), {"punch-height"}),
    ],
)
def test_a_punch_by_points_stands_on_its_tip(ring: Ring, codes: set[str]) -> None:
    found = punch_checks(replace(PUNCH, shape="points", points_mm=ring))
    assert {c.code for c in found} == codes
    assert all(c.level == "caution" and c.do for c in found)


def test_outlines_by_sizes_always_stand_right() -> None:
    assert punch_checks(PUNCH) == punch_checks(GOOSENECK) == die_checks(DIE) == ()
    assert holder_checks(HOLDER) == holder_checks(CLAMPS) == ()
    drawn = replace(DIE, shape="points", points_mm=die_outline(DIE))
    assert die_checks(drawn) == ()


@pytest.mark.parametrize(
    ("dx", "dy", "codes"),
    [
        (0.0, 2.0, {"die-top", "die-height"}),
        (3.0, 0.0, {"die-beside"}),
        (30.0, 0.0, {"die-no-v"}),
    ],
)
def test_a_die_by_points_has_its_v_at_0_0(dx: float, dy: float, codes: set[str]) -> None:
    ring = moved(die_outline(DIE), dx, dy)
    found = die_checks(replace(DIE, shape="points", points_mm=ring))
    assert {c.code for c in found} == codes


def test_a_holder_by_points_has_its_height_and_its_seat() -> None:
    right = replace(HOLDER, points_mm=holder_outline(HOLDER))
    assert holder_checks(right) == ()
    low_clamps = ((-30.0, -15.0), (-12.0, -15.0), (-12.0, 0.0), (12.0, 0.0), (12.0, 80.0),
                  (-30.0, 80.0))  # fmt: skip
    assert holder_checks(replace(HOLDER, points_mm=low_clamps)) == ()
    beside = replace(HOLDER, points_mm=moved(holder_outline(HOLDER), 100.0, 0.0))
    assert {c.code for c in holder_checks(beside)} == {"holder-beside"}
    short = replace(right, height_mm=95.0)
    assert {c.code for c in holder_checks(short)} == {"holder-height"}


def test_a_broken_outline_is_not_the_checks_to_tell() -> None:
    crossing = ((0.0, 0.0), (8.0, 20.0), (-8.0, 20.0), (8.0, 0.0))
    assert punch_checks(replace(PUNCH, shape="points", points_mm=crossing)) == ()


@pytest.mark.parametrize("tool", [PUNCH, DIE, HOLDER], ids=lambda tool: type(tool).__name__)
def test_a_tool_as_tall_as_the_press_opens_is_a_stop(tool: Any) -> None:
    assert taller_than_the_press(tool, PRESS) is None
    check = taller_than_the_press(replace(tool, height_mm=PRESS.open_height_mm), PRESS)
    assert check is not None
    assert (check.level, check.code) == ("stop", "tool-too-tall")
    assert type(tool).__name__.lower() in check.words
    risen = replace(PRESS, die_holder_height_mm=PRESS.open_height_mm - tool.height_mm)
    assert taller_than_the_press(tool, risen) is not None


def test_a_die_holder_as_tall_as_the_press_opens_is_a_stop() -> None:
    assert press_checks(PRESS) == ()
    tall: Press = replace(PRESS, die_holder_height_mm=400.0, die_holder_width_mm=60.0)
    assert [c.level for c in press_checks(tall)] == ["stop"]


def test_where_edges_cross_is_told_with_the_error() -> None:
    with pytest.raises(OutlineError) as told:
        check_simple(((0.0, 0.0), (10.0, 10.0), (10.0, 0.0), (0.0, 10.0)))
    assert (told.value.code, told.value.edges) == ("crossing", (1, 3))
    assert told.value.marks_mm == (pytest.approx((5.0, 5.0)),)
    with pytest.raises(OutlineError) as told:  # the third edge runs back on the second
        check_simple(((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (10.0, 4.0), (0.0, 4.0)))
    assert told.value.edges == (2, 3)
    assert told.value.marks_mm == (pytest.approx((10.0, 7.0)),)
