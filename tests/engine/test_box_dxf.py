"""The DXF of a box's blank, read back by the library and measured."""

from __future__ import annotations

import io
import itertools
import math

import ezdxf
import pytest
from boxes import shaped, tray, wall
from ezdxf import path as dxf_path
from shapely.geometry import LineString, Polygon

from flangebook.bending.box.blank import BoxBlank, box_blank
from flangebook.bending.box.dxf import box_dxf
from flangebook.bending.box.svg import box_svg

SIDES = (wall(30.0, 12.0), wall(30.0, -12.0), wall(25.0), wall(25.0))
BLANKS = [
    box_blank(shaped(tray(*SIDES, relief=relief, corner=corner)))
    for relief, corner in itertools.product(("round", "square", "none"), ("closed", "open"))
]


def read(blank: BoxBlank) -> ezdxf.document.Drawing:
    drawing = ezdxf.read(io.StringIO(box_dxf(blank)))
    assert not drawing.audit().errors
    return drawing


@pytest.mark.parametrize("blank", BLANKS)
def test_the_cut_line_encloses_the_blank(blank: BoxBlank) -> None:
    drawing = read(blank)
    assert drawing.units == 4  # mm
    (cut,) = drawing.modelspace().query('*[layer=="CUT"]')
    assert cut.dxftype() == "LWPOLYLINE"
    assert cut.closed
    flat = Polygon([(p.x, p.y) for p in dxf_path.make_path(cut).flattening(0.001)])
    assert flat.is_valid
    assert flat.area == pytest.approx(blank.area_mm2, rel=1e-6)
    assert flat.bounds == pytest.approx((0, 0, blank.length_mm, blank.width_mm), abs=1e-3)
    assert flat.symmetric_difference(Polygon(blank.outline)).area < 0.5


@pytest.mark.parametrize("blank", BLANKS)
def test_bend_lines_lie_on_their_layers(blank: BoxBlank) -> None:
    space = read(blank).modelspace()
    sheet = Polygon(blank.outline).buffer(0.02)
    for way in ("up", "down"):
        drawn = space.query(f'LINE[layer=="BEND_{way.upper()}"]')
        wanted = [line for line in blank.lines if line.direction == way]
        assert len(drawn) == len(wanted) > 0
        ends = sorted(((e.dxf.start.x, e.dxf.start.y), (e.dxf.end.x, e.dxf.end.y)) for e in drawn)
        said = sorted(((b.x1_mm, b.y1_mm), (b.x2_mm, b.y2_mm)) for b in wanted)
        for one, two in zip(ends, said, strict=True):
            assert math.dist(one[0], two[0]) < 1e-3
            assert math.dist(one[1], two[1]) < 1e-3
            assert sheet.covers(LineString(one))
    assert {e.dxf.layer for e in space} == {"CUT", "BEND_UP", "BEND_DOWN"}


def test_round_reliefs_are_true_arcs() -> None:
    (cut,) = read(BLANKS[0]).modelspace().query("LWPOLYLINE")
    bulges = [b for *_, b in cut.get_points("xyb") if b]
    assert len(bulges) == 4
    assert all(b < 0 for b in bulges)


def test_the_same_blank_gives_the_same_text() -> None:
    assert box_dxf(BLANKS[0]) == box_dxf(BLANKS[0])


def test_the_svg_draws_every_line_with_its_number() -> None:
    blank = BLANKS[0]
    drawn = box_svg(blank, {"blank": {"mass_kg": 1.5}}, "Tray <1>", 0.5)
    assert drawn.count('class="bend-up"') == sum(b.direction == "up" for b in blank.lines)
    assert drawn.count('class="bend-down"') == sum(b.direction == "down" for b in blank.lines)
    assert "Tray &lt;1&gt;" in drawn
    assert "1:2" in drawn
    assert "1.50 kg" in drawn
    for line in blank.lines:
        assert f"{line.bend}  {line.side}" in drawn
