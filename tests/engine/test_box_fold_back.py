"""Folding a box's blank by its own numbers gives the box back, and nothing runs into anything.

The folding here shares no code with the engine: it walks each chain in space from the cut line,
the bend lines and their radius, allowance, angle and way.
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from boxes import DOWN, UP, Slab, overlap_mm, shaped, slabs, tray, wall
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from flangebook.bending.box.blank import BoxBlank, box_blank
from flangebook.bending.box.box import Box, Side
from flangebook.bending.errors import FlangebookError
from flangebook.bending.part.part import Bend

SAME_MM = 1e-6

lengths = st.floats(60.0, 400.0)


@st.composite
def chains(draw: st.DrawFn, *, square: bool) -> Side | None:
    count = draw(st.integers(0, 3))
    if count == 0:
        return None
    first = UP if square else Bend(draw(st.floats(70.0, 150.0)), "up")
    rest = [draw(st.sampled_from((UP, DOWN))) for _ in range(count - 1)]
    flats = [draw(st.floats(12.0, 50.0)), *(draw(st.floats(8.0, 20.0)) for _ in rest)]
    return Side(tuple(flats), (first, *rest))


@st.composite
def blanks(draw: st.DrawFn, *, square: bool = True) -> tuple[Box, BoxBlank]:
    box = tray(
        *(draw(chains(square=square)) for _ in range(4)),
        length_mm=draw(lengths),
        width_mm=draw(lengths),
        thickness_mm=draw(st.floats(0.6, 3.0)),
        relief=draw(st.sampled_from(("round", "square", "none"))),
        corner=draw(st.sampled_from(("closed", "open"))),
    )
    radius = draw(st.floats(0.5, 1.5)) * box.thickness_mm
    try:
        shape = shaped(box, radius, draw(st.floats(0.3, 0.5)), draw(st.floats(0.0, 4.0)))
        blank = box_blank(shape)
    except FlangebookError:
        assume(False)
    assume(not shape.meetings)
    return box, blank


def reach(found: list[Slab], side: str, axis: int, sign: float) -> float:
    return max(float((sign * s.corners[:, axis]).max()) for s in found if s.side == side)


@pytest.mark.slow
@given(blanks())
def test_the_folded_blank_measures_what_was_asked_for(made: tuple[Box, BoxBlank]) -> None:
    """Walls square: outside measures are simply the furthest points of the first flats."""
    box, blank = made
    found = [s for s in slabs(blank) if s.flat <= 1]
    for low, high, axis, wanted in (("left", "right", 0, box.length_mm),
                                    ("front", "back", 1, box.width_mm)):  # fmt: skip
        base = next(s for s in found if s.side == "base")
        ends = []
        for side, sign in ((low, -1.0), (high, 1.0)):
            there = [s for s in found if s.side == side] or [base]
            ends.append(reach(there, there[0].side, axis, sign))
        assert sum(ends) == pytest.approx(wanted, abs=SAME_MM)
    for name in ("left", "right", "front", "back"):
        side = box.side(name)  # type: ignore[arg-type]
        if side is not None and len(side.flats_mm) == 1:
            assert reach(found, name, 2, 1.0) == pytest.approx(side.flats_mm[0], abs=SAME_MM)
    assert blank.sum_check_mm < SAME_MM


@given(blanks())
def test_lips_come_out_as_long_as_asked_for(made: tuple[Box, BoxBlank]) -> None:
    """A lip's outside length runs from the outer face of its wall to its edge."""
    box, blank = made
    found = slabs(blank)
    for name, axis, sign in (("left", 0, -1.0), ("right", 0, 1.0), ("front", 1, -1.0),
                             ("back", 1, 1.0)):  # fmt: skip
        side = box.side(name)  # type: ignore[arg-type]
        if side is None or len(side.flats_mm) != 2:
            continue
        first, lip = ([s for s in found if s.side == name and s.flat == n] for n in (1, 2))
        inwards = side.bends[1].direction == "up"
        way = -sign if inwards else sign
        # From the wall's face on the far side of the lip to the lip's edge.
        start = reach(first, name, axis, -way)
        assert reach(lip, name, axis, way) + start == pytest.approx(side.flats_mm[1], abs=SAME_MM)


@pytest.mark.slow
@given(blanks())
def test_no_two_sides_share_room_when_folded(made: tuple[Box, BoxBlank]) -> None:
    _, blank = made
    for one, two in itertools.combinations(slabs(blank), 2):
        if {one.side, two.side} & {"base"} or one.side == two.side:
            continue
        if {one.side, two.side} in ({"left", "right"}, {"front", "back"}):
            continue  # one section: what its plan looks at
        assert overlap_mm(one, two) < 0.02, (one.side, one.flat, two.side, two.flat)


@pytest.mark.slow
@given(blanks(square=False))
def test_leaning_walls_do_not_share_room_either(made: tuple[Box, BoxBlank]) -> None:
    _, blank = made
    found = [s for s in slabs(blank) if s.side != "base"]
    for one, two in itertools.combinations(found, 2):
        if {one.side, two.side} & {"left", "right"} and {one.side, two.side} & {"front", "back"}:
            assert overlap_mm(one, two) < 0.02, (one.side, one.flat, two.side, two.flat)


@pytest.mark.slow
@given(blanks(square=False))
def test_the_cut_line_is_one_sound_outline_with_every_bend_line_on_it(
    made: tuple[Box, BoxBlank],
) -> None:
    _, blank = made
    sheet = Polygon(blank.outline)
    assert sheet.is_valid
    assert sheet.exterior.is_ccw
    assert sheet.bounds == pytest.approx((0.0, 0.0, blank.length_mm, blank.width_mm), abs=1e-6)
    assert blank.area_mm2 == pytest.approx(sheet.area, rel=1e-4)
    for line in blank.lines:
        drawn = LineString([(line.x1_mm, line.y1_mm), (line.x2_mm, line.y2_mm)])
        assert drawn.length == pytest.approx(line.length_mm)
        assert sheet.buffer(0.02).covers(drawn), line
        # It ends at the cut line: no sheet is bent beyond it.
        for x, y in drawn.coords:
            assert sheet.exterior.distance(LineString([(x, y), (x, y + 1e-9)])) < 0.02, line


def test_slabs_find_a_run_in() -> None:
    """The check above can fail: a lip moved into its neighbour is seen."""
    found = slabs(box_blank(shaped(tray(wall(), wall(), wall(), wall()))))
    left = next(s for s in found if s.side == "left")
    front = next(s for s in found if s.side == "front")
    assert overlap_mm(left, front) < 0.0
    moved = Slab("left", 1, left.middle + np.array([3.0, 0.0, 0.0]), left.axes, left.half)
    assert overlap_mm(moved, front) > 0.5
