"""Blocks with several V's: the outline with each of them up, and the dies they make."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, affinity

from flangebook.bending.errors import InputError
from flangebook.bending.tools.outline import die_outline
from flangebook.bending.tools.tooling import Die
from flangebook.bending.tools.v_block import Block, Face, Opening, block_outline, die_of
from flangebook.bending.tools.v_notch import mouth, mouths

LIKE = Die("B", "Block", 16.0, 88.0, 2.0, 60.0, 80.0, 900.0, (500.0, 100.0))
OPENINGS = (
    Opening("B.1", "V 16", 16.0, 88.0, 2.0, "top", -20.0, 700.0),
    Opening("B.2", "V 8", 8.0, 88.0, 1.0, "top", 20.0),
    Opening("B.3", "V 30", 30.0, 85.0, 3.0, "bottom", 5.0),
    Opening("B.4", "V 12", 12.0, 60.0, 1.0, "back", 10.0),
    Opening("B.5", "V 10", 10.0, 88.0, 1.0, "front", -8.0),
)
BLOCK = Block(LIKE, OPENINGS)


def v_area(o: Opening) -> float:
    """What a V takes out of the block: the triangle, and what the round shoulders take beside it,
    two kites less two sectors."""
    half, beta = o.v_opening_mm / 2.0, math.radians(90.0 - o.angle_deg / 2.0)
    triangle = half * half * math.tan(beta)
    kite = o.shoulder_radius_mm**2 * math.tan(beta / 2.0)
    sector = o.shoulder_radius_mm**2 * beta / 2.0
    return triangle + 2.0 * (kite - sector)


@pytest.mark.parametrize("number", range(1, 6))
def test_whichever_v_is_up_it_is_the_same_block(number: int) -> None:
    ring = block_outline(BLOCK, number)
    shape, first = Polygon(ring), Polygon(block_outline(BLOCK, 1))
    assert shape.is_valid
    assert shape.exterior.is_ccw
    assert shape.area == pytest.approx(80 * 60 - sum(map(v_area, OPENINGS)), rel=1e-4)
    turn = {"top": 0, "back": 90, "bottom": 180, "front": 270}[OPENINGS[number - 1].face]
    back = affinity.rotate(shape, -turn, origin=(0, 0))
    dx, dy = (first.bounds[0] - back.bounds[0], first.bounds[1] - back.bounds[1])
    moved = affinity.translate(back, dx, dy)
    assert moved.symmetric_difference(first).area == pytest.approx(0, abs=1e-6)


def test_the_v_that_is_up_lies_on_the_centre_line_and_the_others_beside_it() -> None:
    boxes = {
        1: (-20, -60, 60, 0),
        2: (-60, -60, 20, 0),
        3: (-45, -60, 35, 0),
        4: (-40, -80, 20, 0),  # on its side: 60 wide, 80 high
        5: (-22, -80, 38, 0),
    }
    for number, box in boxes.items():
        ring = block_outline(BLOCK, number)
        assert Polygon(ring).bounds == pytest.approx(box)
        found = mouth(ring, 0.0)
        assert found is not None
        assert found[0] == pytest.approx(-found[1])
    assert len(mouths(block_outline(BLOCK, 1))) == 2
    assert mouth(block_outline(BLOCK, 1), 40.0) is not None


def test_each_v_is_a_die_of_its_own_with_the_block_around_it() -> None:
    one, two = die_of(BLOCK, 1), die_of(BLOCK, 2)
    assert (one.code, one.v_opening_mm, one.shoulder_radius_mm) == ("B.1", 16.0, 2.0)
    assert (two.code, two.v_opening_mm, two.rating_kn_per_m) == ("B.2", 8.0, None)
    assert one.rating_kn_per_m == 700.0
    assert one.block == two.block == "B"
    assert one.segments_mm == LIKE.segments_mm
    assert (die_of(BLOCK, 4).height_mm, one.height_mm) == (80.0, 60.0)
    assert die_outline(one) == block_outline(BLOCK, 1)
    assert one.width_mm == 2 * 60  # to the farther side, for the hands' sake
    turned = Polygon(die_outline(replace(one, turned=True)))
    assert turned.bounds == pytest.approx((-60, -60, 20, 0))
    assert mouth(die_outline(replace(one, turned=True)), 0.0) is not None


def test_near_its_own_v_a_block_is_like_a_single_die() -> None:
    """Between the shoulders a block's V and a single V of the same sizes are the same points."""
    single = die_outline(Die("V", "V", 16.0, 88.0, 2.0, 60.0, 80.0, None, ()))
    ours = {
        (round(x, 9), round(y, 9)) for x, y in block_outline(BLOCK, 1) if abs(x) < 9.0 and y > -20.0
    }
    assert ours == {(round(x, 9), round(y, 9)) for x, y in single if abs(x) < 9.0 and y > -20.0}


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"v_opening_mm": 60.0, "centre_mm": 0.0}, "openings.1.v_opening_mm"),
        ({"centre_mm": 35.0}, "openings.0.centre_mm"),
        ({"centre_mm": 12.0}, "openings.1.v_opening_mm"),
        ({"shoulder_radius_mm": 40.0, "centre_mm": 0.0}, "openings.0.shoulder_radius_mm"),
        ({"v_opening_mm": 37.0, "angle_deg": 40.0, "centre_mm": -10.0}, "openings.2.v_opening_mm"),
        ({"angle_deg": 180.0}, "openings.0.angle_deg"),
        ({"v_opening_mm": 40.0, "angle_deg": 30.0, "centre_mm": 0.0}, "openings.0.v_opening_mm"),
    ],
)
def test_vs_that_do_not_fit_are_refused_by_name(change: dict[str, Any], where: str) -> None:
    block = Block(LIKE, (replace(OPENINGS[0], **change), *OPENINGS[1:]))
    with pytest.raises(InputError) as told:
        block_outline(block, 1)
    assert told.value.where == where, told.value


@given(st.data())
def test_a_block_is_drawn_soundly_or_refused(data: st.DataObject) -> None:
    sizes = st.floats(20.0, 120.0)
    faces: st.SearchStrategy[Face] = st.sampled_from(("top", "back", "bottom", "front"))
    openings = tuple(
        Opening(str(n), "V", data.draw(st.floats(4.0, 60.0)), data.draw(st.floats(20.0, 120.0)),
                data.draw(st.floats(0.0, 6.0)), data.draw(faces), data.draw(st.floats(-40.0, 40.0)))
        for n in range(data.draw(st.integers(1, 5)))
    )  # fmt: skip
    block = Block(replace(LIKE, width_mm=data.draw(sizes), height_mm=data.draw(sizes)), openings)
    try:
        rings = [block_outline(block, n) for n in range(1, len(openings) + 1)]
    except InputError:
        return
    area = block.like.width_mm * block.like.height_mm - sum(map(v_area, openings))
    for ring in rings:
        shape = Polygon(ring)
        assert shape.is_valid
        assert shape.area == pytest.approx(area, rel=2e-3)
        assert shape.bounds[3] == pytest.approx(0.0, abs=1e-9)
