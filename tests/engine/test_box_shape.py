"""Corners of a box, worked by hand: t 2, every bend radius 2, allowance pi/2 (2 + 0.8) = 4.398."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from boxes import UP, shaped, tray, wall
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from flangebook.bending.box.blank import BoxBlank, box_blank
from flangebook.bending.box.box import (
    Box,
    Corner,
    ReliefShape,
    Side,
    check_box,
    flat_name,
    names_in_box,
    place_of,
    section_of,
)
from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend

ALLOWANCE = math.pi / 2 * 2.8
SETBACK = 4.0


def test_a_plain_tray() -> None:
    """Base straight 300 - 2 x 4; wall straight 30 - 4; blank = 292 + 2 (4.398 + 26)."""
    blank = box_blank(shaped(tray(*[wall(30.0)] * 4)))
    assert blank.length_mm == pytest.approx(292 + 2 * (ALLOWANCE + 26))
    assert blank.width_mm == pytest.approx(192 + 2 * (ALLOWANCE + 26))
    left = next(line for line in blank.lines if line.side == "left")
    assert left.at_mm == pytest.approx(26 + ALLOWANCE / 2)
    assert [line.side for line in blank.lines] == ["left", "right", "front", "back"]
    assert [line.bend for line in blank.lines] == [1, 2, 3, 4]


def test_closed_corner() -> None:
    """Left and right reach the outer face of front and back, 4 beyond the tangent line; front and
    back end a gap of 0.2 before the inner face, 2 beyond it, so 1.8."""
    shape = shaped(tray(*[wall(30.0)] * 4))
    assert shape.gap_mm == 0.2
    assert shape.ends["left", "front"].flats_mm == (-4.0,)
    assert shape.ends["front", "left"].flats_mm == pytest.approx((-1.8,))
    assert shape.along_mm("left", 1) == pytest.approx((-4.0, 196.0))


def test_front_and_back_stay_behind_the_neighbours_bend_line() -> None:
    """Radius 12: the inner face is 12 out, the middle of the bend only 10.05 of flat sheet."""
    shape = shaped(tray(*[wall(40.0)] * 4), 12.0)
    half = math.pi / 2 * 12.8 / 2
    assert shape.ends["front", "left"].flats_mm == pytest.approx((-half,))


def test_open_corner_ends_at_the_tangent_lines() -> None:
    shape = shaped(tray(*[wall(30.0)] * 4, corner="open"))
    assert {end.flats_mm for end in shape.ends.values()} == {(0.0,)}


@pytest.mark.parametrize("relief", ["round", "square"])
def test_relief_by_rule(relief: str) -> None:
    """2 mm: twice the radius is 4, the least is 3/16 in, 4.7625 mm."""
    shape = shaped(tray(*[wall(30.0)] * 4, relief=relief))
    assert shape.relief_mm == pytest.approx(4.7625, abs=1e-3)
    line = box_blank(shape).lines[0]
    if relief == "square":
        assert line.length_mm == pytest.approx(192 - shape.relief_mm)
    else:  # the circle at the height of the bend line, 2.199 from the tangent line
        inside = math.sqrt((shape.relief_mm / 2) ** 2 - (ALLOWANCE / 2) ** 2)
        assert line.length_mm == pytest.approx(192 - 2 * inside)


def test_area_by_hand() -> None:
    """No relief, open corners: a cross of the base and four rectangles."""
    blank = box_blank(shaped(tray(*[wall(30.0)] * 4, relief="none", corner="open")))
    out = ALLOWANCE + 26
    assert blank.area_mm2 == pytest.approx(292 * 192 + 2 * out * (292 + 192))
    assert blank.mass_kg(7850.0) == pytest.approx(blank.area_mm2 * 2 * 7850e-9)


def test_area_of_the_reliefs() -> None:
    """Round ones at open corners: each takes a quarter circle of the base and two halves of a
    circle segment's rest beside it, cut off at the wall's root (4.398 beyond the tangent)."""
    none = box_blank(shaped(tray(*[wall(30.0)] * 4, relief="none", corner="open")))
    cut = box_blank(shaped(tray(*[wall(30.0)] * 4, relief="round", corner="open", relief_mm=6.0)))
    assert none.area_mm2 - cut.area_mm2 == pytest.approx(4 * 0.75 * math.pi * 9.0)


def test_lips_of_the_second_pair_stand_back_behind_those_of_the_first() -> None:
    """A lip of 10 reaches 10 - 4 = 6 in from the tangent line; the other keeps the gap of 0.2."""
    shape = shaped(tray(*[wall(30.0, 10.0)] * 4))
    assert shape.ends["front", "left"].flats_mm == pytest.approx((-1.8, 6.2))
    assert shape.ends["left", "front"].flats_mm == pytest.approx((-4.0, -4.0))
    assert not shape.meetings


def test_lips_over_a_plain_wall_leave_room_for_its_swing() -> None:
    """Left's lip may not stand where the front wall, over-bent by 2 degrees, passes."""
    straight = shaped(tray(wall(30.0, 10.0), wall(30.0, 10.0), wall(), wall()), over_deg=0.0)
    over = shaped(tray(wall(30.0, 10.0), wall(30.0, 10.0), wall(), wall()), over_deg=2.0)
    assert straight.ends["left", "front"].flats_mm[1] == pytest.approx(-2.0 + 0.2, abs=0.02)
    more = over.ends["left", "front"].flats_mm[1] - straight.ends["left", "front"].flats_mm[1]
    assert more == pytest.approx(28 * math.sin(math.radians(2.0)), abs=0.12)


def test_outward_lips_need_no_room() -> None:
    shape = shaped(tray(*[wall(30.0, -10.0)] * 4))
    assert {min(end.flats_mm) == max(end.flats_mm) for end in shape.ends.values()} == {True}


@pytest.mark.slow
@given(
    st.lists(st.floats(16.0, 60.0), min_size=4, max_size=4),
    st.lists(st.sampled_from([(), (10.0,), (-8.0,), (12.0, 6.0)]), min_size=4, max_size=4),
    st.sampled_from(["closed", "open"]),
    st.sampled_from(["round", "square", "none"]),
)
def test_front_and_back_first_is_the_box_seen_from_its_side(
    walls: list[float], lips: list[tuple[float, ...]], corner: Corner, relief: ReliefShape
) -> None:
    """Length and width, left and front, right and back changed about: the same blank, on end."""
    sides = [wall(one, *two) for one, two in zip(walls, lips, strict=True)]
    left, right, front, back = sides
    box = tray(*sides, corner=corner, relief=relief, first_pair="front-back")
    seen = tray(
        front, back, left, right, corner=corner, relief=relief, length_mm=200.0, width_mm=300.0
    )
    one, two = blank_or_none(box), blank_or_none(seen)
    if one is None or two is None:
        assert one is two
        return
    assert (one.length_mm, one.width_mm) == pytest.approx((two.width_mm, two.length_mm))
    across = Polygon([(y, x) for x, y in two.outline])
    assert Polygon(one.outline).symmetric_difference(across).area < 1e-3
    turned = {"left": "front", "right": "back", "front": "left", "back": "right"}
    lines = {(line.side, line.place): line for line in two.lines}
    for line in one.lines:
        other = lines[turned[line.side], line.place]
        assert line.at_mm == pytest.approx(other.at_mm)
        assert line.length_mm == pytest.approx(other.length_mm)


def blank_or_none(box: Box) -> BoxBlank | None:
    """The blank; None where there can be none."""
    try:
        return box_blank(shaped(box))
    except NotAPartError:
        return None


def test_order_and_limits_go_to_the_sections_they_speak_of() -> None:
    """Left wall and lip are bends 2 and 1, right 3; front 4, back 5 and its lip 6. Flats: left
    lip 1, wall 2, base 3, right 4; front 5, base 6, back 7, lip 8."""
    order_limits = OrderLimits(first=1, last=4, critical_flats=(2, 8), no_turn_over=True)
    box = tray(wall(30.0, 10.0), wall(), wall(), wall(30.0, 10.0),
               order=(1, 3, 2, 6, 5, 4), order_limits=order_limits)  # fmt: skip
    check_box(box)
    across, along = section_of(box, "left-right"), section_of(box, "front-back")
    assert across is not None
    assert along is not None
    assert (across.order, along.order) == ((1, 3, 2), (3, 2, 1))
    assert (across.order_limits.first, across.order_limits.last) == (1, None)
    assert (along.order_limits.first, along.order_limits.last) == (None, 1)
    assert (across.order_limits.critical_flats, along.order_limits.critical_flats) == ((2,), (4,))
    assert across.order_limits.no_turn_over
    assert along.order_limits.no_turn_over
    assert (across.walled, along.walled) == (False, True)


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"order": (1, 2, 3)}, "order"),
        ({"order": (1, 2, 3, 3)}, "order"),
        ({"order": (1, 3, 2, 4)}, "order"),
        ({"order": (3, 4, 1, 2)}, "order"),
        ({"order": (1, 2, 3, 4), "first_pair": "front-back"}, "order"),
        ({"order_limits": OrderLimits(first=3)}, "wishes.first"),
        ({"order_limits": OrderLimits(first=5)}, "wishes.first"),
        ({"order_limits": OrderLimits(last=2)}, "wishes.last"),
        ({"order_limits": OrderLimits(first=1), "first_pair": "front-back"}, "wishes.first"),
        ({"order_limits": OrderLimits(critical_flats=(6, 7))}, "wishes.critical_flats.1"),
    ],
)
def test_an_order_that_no_box_has(change: dict[str, Any], where: str) -> None:
    with pytest.raises(InputError) as caught:
        check_box(tray(*[wall()] * 4, **change))
    assert caught.value.where == where


def test_sides_that_are_not_there() -> None:
    blank = box_blank(shaped(tray(wall(), None, None, None)))
    assert blank.width_mm == 200.0
    assert blank.length_mm == pytest.approx(300 - SETBACK + ALLOWANCE + 26)
    assert blank.lines[0].length_mm == 200.0


def test_names() -> None:
    box = tray(wall(30.0, 10.0), wall(), None, wall())
    assert [flat_name(box, "left-right", n) for n in range(1, 5)] == [
        "left flat 2", "left flat 1", "the base", "right flat 1"]  # fmt: skip
    said = Sentence("{Flat} and bend {bend}.", {"flat": 2, "bend": 1})
    assert said.called(names_in_box(box, "front-back")) == Sentence("Back flat 1 and bend 4.")
    assert place_of(box, "left-right", "flats_mm.0") == "box.sides.left.flats_mm.1"
    assert place_of(box, "left-right", "flats_mm.2") == "box.length_mm"
    assert place_of(box, "left-right", "flats_mm.3") == "box.sides.right.flats_mm.0"
    assert place_of(box, "left-right", "bends.0.included_angle_deg") == (
        "box.sides.left.bends.1.included_angle_deg")  # fmt: skip
    assert place_of(box, "front-back", "bends.0") == "box.sides.back.bends.0"


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"left": None, "right": None, "front": None, "back": None}, "box.sides"),
        ({"left": Side((30.0, 10.0), (UP,))}, "box.sides.left.flats_mm"),
        ({"left": Side((), ())}, "box.sides.left.flats_mm"),
        ({"left": Side((10.0,) * 7, (UP,) * 7)}, "box.sides.left.bends"),
        ({"left": Side((1.5,), (UP,))}, "box.sides.left.flats_mm.0"),
        ({"front": Side((30.0,), (Bend(181.0, "up"),))}, "box.sides.front.bends.0"),
        ({"length_mm": 3.0}, "box.length_mm"),
        ({"length_mm": -3.0}, "box.length_mm"),
        ({"relief_mm": -1.0}, "box.relief_mm"),
        ({"gap_mm": 500.0}, "box.gap_mm"),
        ({"thickness_mm": 0.0}, "thickness_mm"),
    ],
)
def test_no_box(change: dict[str, object], where: str) -> None:
    with pytest.raises((InputError, NotAPartError)) as caught:
        check_box(replace(tray(*[wall()] * 4), **change))  # type: ignore[arg-type]
    assert caught.value.where.startswith(where)
    assert caught.value.right


def test_walls_that_meet_over_the_base_are_no_box() -> None:
    """Lips of 160 from both sides over a base of 300."""
    with pytest.raises(NotAPartError, match=r"[Ll]eft flat 2"):
        check_box(tray(wall(30.0, 160.0), wall(30.0, 160.0), None, None))


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"relief_mm": 195.0}, "box.relief_mm"),
        ({"length_mm": 8.0, "width_mm": 200.0}, "box.length_mm"),
    ],
)
def test_nothing_left(change: dict[str, float], where: str) -> None:
    with pytest.raises(NotAPartError) as caught:
        shaped(tray(*[wall(30.0)] * 4, **change))
    assert caught.value.where == where


def test_a_lip_cut_back_to_nothing_is_said() -> None:
    """Left's and right's lips of 149.9 close nearly the whole top: nothing is left for front's."""
    deep = wall(30.0, 149.9)
    with pytest.raises(NotAPartError, match="front flat 2"):
        shaped(tray(deep, deep, wall(30.0, 10.0), None))


def test_leaning_walls_are_cut_back_to_clear() -> None:
    """Two neighbours that lean in over the base (60 degrees) meet: the second one gives way. One
    alone does not reach the other, which ends at the tangent line."""
    leaning = Side((40.0,), (Bend(60.0, "up"),))
    alone = shaped(tray(leaning, None, wall(), None))
    assert alone.ends["front", "left"].flats_mm == (0.0,)
    both = shaped(tray(leaning, None, leaning, None))
    assert both.ends["front", "left"].flats_mm[0] > 5.0
    assert not both.meetings
