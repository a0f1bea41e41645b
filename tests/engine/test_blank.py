"""The blank as numbers, as DXF read back by the library, and as SVG read back as XML."""

from __future__ import annotations

import io
from dataclasses import replace
from xml.etree import ElementTree as ET

import ezdxf
import pytest
from bending_parts import bend, folded, part

from flangebook.bending.part.blank import Blank, blank
from flangebook.bending.part.blank_dxf import blank_dxf
from flangebook.bending.part.blank_svg import blank_svg
from flangebook.bending.part.section import FoldedBend

CHANNEL = part((30.0, 80.0, 40.0), (bend(), bend(120.0, "down")))
SVG = "{http://www.w3.org/2000/svg}"


def channel() -> Blank:
    return blank(CHANNEL, folded(CHANNEL), 7850.0)


def test_length_is_dimensions_less_deductions() -> None:
    sheet = channel()
    deductions = sum(line.deduction_mm for line in sheet.bend_lines)
    assert sheet.length_mm == pytest.approx(150.0 - deductions)
    assert sheet.sum_check_mm < 1e-9


def test_mass_is_volume_times_density() -> None:
    sheet = channel()
    assert sheet.mass_kg == pytest.approx(sheet.length_mm * 500.0 * 2.0 / 1e9 * 7850.0)
    assert sheet.width_mm == 500.0


def test_band_of_the_length_is_the_sum_of_the_deductions_bands() -> None:
    exact = channel()
    assert (exact.length_low_mm, exact.length_high_mm) == (exact.length_mm, exact.length_mm)
    one, two = (line.deduction_mm for line in exact.bend_lines)
    bends = [
        replace(folded(CHANNEL)[0], deduction_low_mm=one - 0.3, deduction_high_mm=one + 0.1),
        replace(folded(CHANNEL)[1], deduction_low_mm=two - 0.2, deduction_high_mm=two + 0.4),
    ]
    sheet = blank(CHANNEL, bends, 7850.0)
    assert sheet.length_low_mm == pytest.approx(sheet.length_mm - 0.5)
    assert sheet.length_high_mm == pytest.approx(sheet.length_mm + 0.5)


def test_deduction_band_around_zero_counts() -> None:
    of = part((30.0, 30.0), (bend(150.0),), 1.0)
    bends = [FoldedBend(1.0, 1.0, deduction_low_mm=-0.1, deduction_high_mm=0.0)]
    sheet = blank(of, bends, 7850.0)
    assert sheet.length_high_mm > sheet.length_mm
    assert sheet.length_low_mm <= sheet.length_mm


def test_dxf_has_cut_and_bend_lines_on_their_layers() -> None:
    sheet = channel()
    drawing = ezdxf.read(io.StringIO(blank_dxf(sheet)))  # type: ignore[attr-defined]
    assert drawing.units == ezdxf.units.MM  # type: ignore[attr-defined]
    assert not drawing.audit().has_errors
    space = drawing.modelspace()
    (cut,) = space.query('LWPOLYLINE[layer=="CUT"]')
    assert cut.closed
    corners = [(x, y) for x, y, *_ in cut.get_points()]
    width, length = 500.0, pytest.approx(sheet.length_mm, abs=1e-4)
    assert corners == [(0.0, 0.0), (length, 0.0), (length, width), (0.0, width)]
    for layer, line in zip(("BEND_UP", "BEND_DOWN"), sheet.bend_lines, strict=True):
        (drawn,) = space.query(f'LINE[layer=="{layer}"]')
        assert drawn.dxf.start.x == drawn.dxf.end.x == pytest.approx(line.at_mm, abs=1e-4)
        assert (drawn.dxf.start.y, drawn.dxf.end.y) == (0.0, 500.0)
    assert len(space) == 3


def test_dxf_of_the_same_blank_is_the_same_text() -> None:
    first = blank_dxf(channel())
    assert first == blank_dxf(channel())
    assert first != blank_dxf(replace(channel(), length_mm=100.0))


@pytest.mark.parametrize("scale", [1.0, 0.5, 0.1])
def test_svg_is_to_scale(scale: float) -> None:
    sheet = channel()
    root = ET.fromstring(blank_svg(sheet, "Channel", scale))
    box = [float(v) for v in root.attrib["viewBox"].split()]
    assert root.attrib["width"] == f"{box[2]:.3f}mm"  # one unit is one mm on paper
    (cut,) = [r for r in root.iter(f"{SVG}rect") if r.attrib.get("class") == "cut"]
    assert float(cut.attrib["width"]) == pytest.approx(sheet.length_mm * scale, abs=1e-3)
    assert float(cut.attrib["height"]) == pytest.approx(500.0 * scale)
    drawn = [float(line.attrib["x1"]) for line in root.iter(f"{SVG}line")]
    assert drawn == pytest.approx([b.at_mm * scale for b in sheet.bend_lines], abs=1e-3)
    words = [t.text for t in root.iter(f"{SVG}text")]
    assert words[0] == f"1 up 90° at {sheet.bend_lines[0].at_mm:.2f}"
    assert f"drawn 1:{1 / scale:g}" in str(words[-1])


def test_svg_shows_a_title_harmlessly() -> None:
    text = blank_svg(channel(), '<script>alert("x")</script>')
    assert "<script" not in text
    ET.fromstring(text)
