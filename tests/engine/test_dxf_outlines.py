"""Outlines out of DXF drawings: every kind of line, units, placing, and every way to be wrong."""

from __future__ import annotations

import math
from typing import Any

import pytest
from dxf_drawings import DIE_CORNERS, Draw, by_hand, die, dxf, line, round_nosed_punch
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point, Polygon

from flangebook.bending.errors import OutlineError
from flangebook.bending.geometry.dxf_lines import MM_OF
from flangebook.bending.geometry.ring import Ring
from flangebook.bending.tools.outline_dxf import WITHIN_MM, Kind, Placing, outline_from_dxf

PUNCH, DIE = Placing("punch"), Placing("die")


def taken(draw: Draw, placing: Placing = PUNCH, units: int = 4) -> Ring:
    """The outline in what is drawn."""
    return outline_from_dxf(dxf(draw, units), placing).ring


def refused(data: bytes, placing: Placing = DIE, **how: Any) -> OutlineError:
    """The error that a file ends in."""
    with pytest.raises(OutlineError) as told:
        outline_from_dxf(data, placing, **how)
    return told.value


def test_a_die_stands_with_its_v_at_0_0_whatever_it_was_drawn_at() -> None:
    ring = taken(die, DIE)
    assert set(ring) == {(x - 130, y - 60) for x, y in DIE_CORNERS}
    assert Polygon(ring).exterior.is_ccw


def test_a_punch_of_loose_lines_and_an_arc_stands_on_its_tip() -> None:
    ring = taken(round_nosed_punch)
    assert Polygon(ring).bounds == pytest.approx((-10, 0, 10, 100), abs=1e-9)
    nose = [p for p in ring if p[1] < 10]
    assert len(nose) > 20
    assert all(math.dist(p, (0, 10)) == pytest.approx(10, abs=1e-9) for p in nose)


@pytest.mark.parametrize(
    ("units", "name"), [(1, "inch"), (2, "ft"), (4, "mm"), (5, "cm"), (6, "m")]
)
def test_units_come_from_the_header(units: int, name: Any) -> None:
    size = 50.0 / MM_OF[name]
    found = outline_from_dxf(dxf(lambda s: s.add_circle((0, 0), size / 2), units), PUNCH)
    left, _, right, top = Polygon(found.ring).bounds
    assert (right - left, top) == pytest.approx((50, 50), abs=2 * WITHIN_MM)
    assert (found.drawing.unit, found.drawing.asked) == (name, False)


@pytest.mark.parametrize("units", [0, 3, 13])
def test_a_header_without_a_unit_that_tools_have_is_asked_about(units: int) -> None:
    data = dxf(die, units)
    assert refused(data).code == "units-unknown"
    assert refused(data).where == "units"
    asked = outline_from_dxf(data, DIE, "inch")
    assert Polygon(asked.ring).bounds[3] == 0
    assert Polygon(asked.ring).bounds[1] == pytest.approx(-60 * 25.4)
    assert asked.drawing.asked


def test_a_file_without_a_header_is_asked_about_too() -> None:
    data = by_hand(line(0, 0, 20, 0), line(20, 0, 0, 30), line(0, 30, 0, 0))
    assert refused(data, PUNCH).code == "units-unknown"
    ring = outline_from_dxf(data, PUNCH, "mm").ring
    assert set(ring) == {(-10, 0), (10, 0), (-10, 30)}


@pytest.mark.slow
@settings(max_examples=40)
@given(st.floats(0.6, 280.0), st.floats(-400.0, 400.0), st.sampled_from([1, 4, 6]))
def test_arcs_are_chords_within_a_hundredth(radius: float, x: float, units: int) -> None:
    """Every point of the true circle, sampled densely, lies that near the outline."""
    scale = {1: 25.4, 4: 1.0, 6: 1000.0}[units]

    def draw(space: Any) -> None:
        space.add_arc((x / scale, 0), radius / scale, 10, 130)
        space.add_arc((x / scale, 0), radius / scale, 130, 10)

    ring = Polygon(taken(draw, Placing("punch", "drawn"), units)).exterior
    for i in range(720):
        a = math.radians(i / 2)
        at = Point(x + radius * math.cos(a), radius * math.sin(a))
        assert ring.distance(at) <= WITHIN_MM


def test_a_bulge_is_an_arc() -> None:
    def draw(space: Any) -> None:
        space.add_lwpolyline([(0, 0, 1), (20, 0, 0), (20, 50, 0), (0, 50, 0)], format="xyb",
                             close=True)  # fmt: skip

    ring = taken(draw)
    assert Polygon(ring).bounds == pytest.approx((-10, 0, 10, 60), abs=WITHIN_MM)
    assert all(math.dist(p, (0, 10)) == pytest.approx(10) for p in ring if p[1] < 9.9)


def test_old_polylines_ellipses_and_splines_are_taken() -> None:
    def old(space: Any) -> None:
        space.add_polyline2d([(0, 0, 1), (20, 0), (20, 50), (0, 50)], format="xyb", close=True)

    assert Polygon(taken(old)).area == pytest.approx(20 * 50 + math.pi * 50, rel=1e-3)
    ellipse = Polygon(taken(lambda s: s.add_ellipse((5, 5), (0, 40), 0.5)))
    assert ellipse.area == pytest.approx(math.pi * 40 * 20, rel=1e-3)

    def spline(space: Any) -> None:
        curve = space.add_open_spline([(0, 0), (60, 0), (60, 60), (0, 60)])
        space.add_line((0, 60), (0, 0))
        exact.extend(curve.construction_tool().points([i / 999 for i in range(1000)]))

    exact: list[Any] = []
    ring = Polygon(taken(spline, Placing("punch", "drawn"))).exterior
    assert max(ring.distance(Point(p.x, p.y)) for p in exact) <= WITHIN_MM


def test_a_mirrored_arc_lies_where_it_is_drawn() -> None:
    """An arc whose plane looks the other way (extrusion 0, 0, -1) is drawn mirrored in x."""

    def draw(space: Any) -> None:
        space.add_arc((-50, 20), 10, 180, 360, dxfattribs={"extrusion": (0, 0, -1)})
        space.add_line((40, 20), (40, 110))
        space.add_line((60, 20), (60, 110))
        space.add_line((40, 110), (60, 110))

    assert Polygon(taken(draw)).bounds == pytest.approx((-10, 0, 10, 100), abs=1e-6)


def test_blocks_in_blocks_are_taken_apart_and_layers_found() -> None:
    def draw(space: Any) -> None:
        inner = space.doc.blocks.new("INNER")
        round_nosed_punch(inner)
        outer = space.doc.blocks.new("OUTER")
        outer.add_blockref("INNER", (5, 5), dxfattribs={"rotation": 90})
        space.add_blockref("OUTER", (0, 0), dxfattribs={"layer": "TOOL"})
        space.add_text("a word")
        space.add_point((1, 1))

    found = outline_from_dxf(dxf(draw), Placing("punch", turn_deg=270))
    assert Polygon(found.ring).bounds == pytest.approx((-10, 0, 10, 100), abs=1e-6)
    assert found.drawing.layers == ("TOOL",)
    assert dict(found.drawing.left) == {"texts and dimensions": 1, "POINT": 1}


def test_hidden_layers_are_left_out_and_other_lines_wait_for_a_layer() -> None:
    def draw(space: Any) -> None:
        round_nosed_punch(space, "STEEL")
        space.doc.layers.add("SHADE").off()
        space.add_line((0, 0), (90, 90), dxfattribs={"layer": "SHADE"})
        space.add_line((50, 0), (50, 200), dxfattribs={"layer": "AXIS"})

    error = refused(dxf(draw), PUNCH)
    assert error.code == "open"
    assert error.layers == ("STEEL", "AXIS")
    assert {(50, 0), (50, 200)} == set(error.marks_mm)
    found = outline_from_dxf(dxf(draw), PUNCH, layer="STEEL")
    assert Polygon(found.ring).bounds == pytest.approx((-10, 0, 10, 100), abs=1e-6)


def test_a_line_drawn_twice_and_gaps_of_a_hair_do_no_harm() -> None:
    def draw(space: Any) -> None:
        die(space)
        space.add_line((100, 0), (160, 0))
        space.add_line((160.01, 0.005), (100, 0.01))
        space.add_line((160, 0), (160.001, 0))

    assert set(taken(draw, DIE)) == {(x - 130, y - 60) for x, y in DIE_CORNERS}


KINDS: list[tuple[Kind, tuple[float, float, float, float]]] = [
    ("punch", (-30, 0, 30, 60)),
    ("holder", (-30, 0, 30, 60)),
    ("ram", (-30, 0, 30, 60)),
    ("bed", (-30, -60, 30, 0)),
    ("die_holder", (-30, -60, 30, 0)),
]


@pytest.mark.parametrize(("kind", "box"), KINDS)
def test_each_kind_has_its_rule(kind: Kind, box: tuple[float, ...]) -> None:
    def draw(space: Any) -> None:
        space.add_lwpolyline([(100, 0), (160, 0), (160, 60), (100, 60)], close=True)

    found = outline_from_dxf(dxf(draw), Placing(kind))
    assert Polygon(found.ring).bounds == pytest.approx(box)
    assert found.words


def test_the_origin_can_be_chosen() -> None:
    assert set(taken(die, Placing("die", "drawn"))) == set(DIE_CORNERS)
    ring = taken(die, Placing("die", "drawn"))
    for number, (x, y) in enumerate(ring, 1):
        chosen = taken(die, Placing("die", "point", number))
        assert set(chosen) == {(a - x, b - y) for a, b in DIE_CORNERS}
    for number in (None, 0, 8):
        assert refused(dxf(die), Placing("die", "point", number)).code == "no-such-point"


def test_it_can_be_turned_and_mirrored() -> None:
    upside_down = taken(die, Placing("die", "drawn", turn_deg=180))
    assert set(upside_down) == {(-x, -y) for x, y in DIE_CORNERS}
    mirrored = taken(die, Placing("die", "drawn", mirror=True))
    assert set(mirrored) == {(-x, y) for x, y in DIE_CORNERS}
    assert Polygon(mirrored).exterior.is_ccw
    assert refused(dxf(die), Placing("die", turn_deg=180)).code == "no-v"


def zigzag(space: Any) -> None:
    """More corners than an outline may have."""
    space.add_lwpolyline(
        [((20 + i % 2) * math.cos(i / 250 * math.pi), 20 * math.sin(i / 250 * math.pi))
         for i in range(500)], close=True,
    )  # fmt: skip


def with_hole(space: Any) -> None:
    die(space)
    space.add_circle((110, 20), 4)


def two(space: Any) -> None:
    die(space)
    space.add_circle((300, 20), 4)


WRONG: list[tuple[str, Draw]] = [
    ("open", lambda s: s.add_lwpolyline(DIE_CORNERS)),
    ("open", lambda s: s.add_line((0, 0), (5, 5))),
    ("open", lambda s: (die(s), s.add_line((100, 0), (100, -30)))),
    ("branching", lambda s: (die(s), s.add_line((100, 0), (160, 60)))),
    ("crossing", lambda s: s.add_lwpolyline([(0, 0), (40, 40), (40, 0), (0, 40)], close=True)),
    ("hole", with_hole),
    ("more-than-one", two),
    ("no-outline", lambda s: s.add_text("nothing")),
    ("no-outline", lambda s: None),
    ("no-outline", lambda s: s.add_lwpolyline([(1, 1), (1, 1)], close=True)),
    ("too-large", lambda s: s.add_lwpolyline([(0, 0), (9000, 0), (0, 50)], close=True)),
    ("too-large", lambda s: s.add_circle((0, 0), 1e9)),
    ("too-large", lambda s: s.add_line((0, 0), (1e300, 0))),
    ("too-large", lambda s: s.add_ellipse((0, 0), (1e12, 0), 0.5)),
    ("too-large", lambda s: s.add_open_spline([(0, 0), (1e12, 20), (0, 40), (9, 9)])),
    ("too-small", lambda s: s.add_lwpolyline([(0, 0), (0.3, 0), (0.3, 0.3)], close=True)),
    ("too-many-points", zigzag),
    ("too-many-lines", lambda s: [s.add_line((i, 0), (i, 9)) for i in range(5001)]),
    ("not-flat", lambda s: s.add_line((0, 0, 0), (5, 5, 9))),
]


@pytest.mark.parametrize(
    ("code", "draw"), WRONG, ids=[f"{n}-{c}" for n, (c, _) in enumerate(WRONG)]
)
def test_what_is_no_outline_says_why(code: str, draw: Draw) -> None:
    error = refused(dxf(draw))
    assert error.code == code
    assert error.what.endswith(".")
    assert error.right.endswith(".")


def test_the_places_at_fault_are_marked() -> None:
    crossing = refused(dxf(WRONG[4][1]))
    assert crossing.edges in ((1, 3), (2, 4))
    assert crossing.marks_mm == ((20, 20),)
    opened = refused(dxf(WRONG[0][1]))
    assert set(opened.marks_mm) == {(100, 0), (100, 60)}
    assert "60 mm away" in opened.what
    hole = refused(dxf(with_hole))
    assert len(hole.lines_mm) == 2
    assert math.dist(hole.marks_mm[0], (110, 20)) == pytest.approx(4)


GOOD = dxf(die)
DRAWINGS = (GOOD, dxf(round_nosed_punch), dxf(with_hole))
BROKEN = [
    b"",
    b"hello\nworld\n",
    b"\x00\xff" * 500,
    b'{"a": 1}',
    b"0\nEOF\n",
    b"ENTITIES and some words\nEOF",
    GOOD[: len(GOOD) // 2],
    GOOD[:-20],
    GOOD.replace(b"\n", b"\n\n"),
    b"A Binary DXF\r\n\x1a\x00" + GOOD,
]


@pytest.mark.parametrize("data", BROKEN)
def test_a_broken_file_is_an_error_of_ours(data: bytes) -> None:
    assert refused(data, unit="mm").code == "broken"


def test_windows_line_ends_do_no_harm() -> None:
    windows = GOOD.replace(b"\n", b"\r\n")
    assert outline_from_dxf(windows, DIE).ring == outline_from_dxf(GOOD, DIE).ring


@pytest.mark.slow
@settings(max_examples=300)
@given(st.data())
def test_no_damage_to_a_file_breaks_the_reader(data: st.DataObject) -> None:
    """Bytes overwritten, cut out or put in anywhere: an outline or an error of ours."""
    source = bytearray(data.draw(st.sampled_from(DRAWINGS)))
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(source) - 1))
        piece = data.draw(st.binary(max_size=6))
        source[at : at + data.draw(st.integers(0, 6))] = piece
    try:
        ring = outline_from_dxf(bytes(source), DIE).ring
    except OutlineError:
        return
    assert Polygon(ring).is_valid


def test_a_block_that_holds_itself_comes_to_an_end() -> None:
    def draw(space: Any) -> None:
        for n in range(6):
            block = space.doc.blocks.new(f"B{n}")
            for _ in range(20):
                block.add_blockref(f"B{n + 1}", (1, 1))
            block.add_line((0, 0), (1, 1))
        space.doc.blocks.new("B6").add_line((0, 0), (3, 3))
        space.add_blockref("B0", (0, 0))

    assert refused(dxf(draw)).code == "too-many-lines"
