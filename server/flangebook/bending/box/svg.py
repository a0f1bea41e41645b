"""The blank of a box as a printable SVG drawing to scale."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from typing import Any

from flangebook.bending.box.blank import BoxBlank, BoxLine
from flangebook.bending.box.shape import pair_of
from flangebook.bending.part.blank_svg import ratio

_MARGIN_MM = 12.0
_TEXT_MM = 3.5
_ROW_MM = 4.7


def box_svg(blank: BoxBlank, plan: Mapping[str, Any], title: str = "", scale: float = 1.0) -> str:
    """The blank drawn so that a millimetre of it is ``scale`` mm on paper.

    Up bends are long dashes, down bends dots and dashes; each carries its number; the list below
    gives its side, way, angle and place. Black on white, no colour needed.
    """
    length, width = blank.length_mm * scale, blank.width_mm * scale
    rows = len(blank.lines) + 2
    wide = max(length, 110.0) + 2.0 * _MARGIN_MM
    tall = width + 2.0 * _MARGIN_MM + rows * _ROW_MM + _TEXT_MM
    path = _path(blank, width, scale)
    lines = "".join(_line(line, width, scale) for line in blank.lines)
    foot = (
        f"{blank.length_mm:.2f} x {blank.width_mm:.2f} x {blank.thickness_mm:g} mm, "
        f"{plan['blank']['mass_kg']:.2f} kg, drawn {ratio(scale)}, inside of the box up"
    )
    texts = [f"{title}: {foot}" if title else foot, *(_words(line) for line in blank.lines)]
    said = "".join(
        f'<text y="{width + (i + 2) * _ROW_MM:.3f}" stroke="none" fill="#000">{escape(t)}</text>'
        for i, t in enumerate(texts)
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:.3f}mm" height="{tall:.3f}mm" '
        f'viewBox="0 0 {wide:.3f} {tall:.3f}"><title>{escape(title or "Blank")}</title>'
        f'<rect width="100%" height="100%" fill="#fff"/>'
        f'<g transform="translate({_MARGIN_MM:g} {_MARGIN_MM:g})" stroke="#000" fill="none" '
        f'stroke-width="0.25" font-family="sans-serif" font-size="{_TEXT_MM}">'
        f'<path class="cut" d="{path}"/>{lines}{said}</g></svg>\n'
    )


def _path(blank: BoxBlank, width: float, scale: float) -> str:
    """The cut line, y turned over."""
    points = [f"{x * scale:.3f} {width - y * scale:.3f}" for x, y in blank.outline]
    return f"M{'L'.join(points)}Z"


def _line(line: BoxLine, width: float, scale: float) -> str:
    up = line.direction == "up"
    dashes = "6 2" if up else "6 1.5 0.5 1.5"
    x1, x2 = line.x1_mm * scale, line.x2_mm * scale
    y1, y2 = width - line.y1_mm * scale, width - line.y2_mm * scale
    x, y = (x1 + x2) / 2.0, (y1 + y2) / 2.0
    return (
        f'<line class="bend-{line.direction}" x1="{x1:.3f}" y1="{y1:.3f}" x2="{x2:.3f}" '
        f'y2="{y2:.3f}" stroke-dasharray="{dashes}"/>'
        f'<circle cx="{x:.3f}" cy="{y:.3f}" r="2.6" fill="#fff"/>'
        f'<text x="{x:.3f}" y="{y + 1.25:.3f}" text-anchor="middle" stroke="none" fill="#000">'
        f"{line.bend}</text>"
    )


def _words(line: BoxLine) -> str:
    end = "left" if pair_of(line.side) == "left-right" else "front"
    return (
        f"{line.bend}  {line.side}, {line.direction} {line.included_angle_deg:g}°, "
        f"{line.at_mm:.2f} from the {end} end, {line.length_mm:.2f} long"
    )
