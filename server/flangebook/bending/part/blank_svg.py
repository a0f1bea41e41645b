"""The blank as a printable SVG drawing to scale."""

from __future__ import annotations

from html import escape

from flangebook.bending.part.blank import BendLine, Blank

_MARGIN_MM = 12.0
_TEXT_MM = 3.5
_GAP_MM = 1.2
_WORDS_MM = 36.0


def blank_svg(blank: Blank, title: str = "", scale: float = 1.0) -> str:
    """The blank drawn so that a millimetre of it is ``scale`` mm on paper.

    Up bends are long dashes, down bends dots and dashes; each carries its number, its way,
    its angle and its place from the left end. Black on white, no colour needed.
    """
    length, width = blank.length_mm * scale, blank.width_mm * scale
    whole = _size(blank, scale)
    lines = "".join(
        _line(line, width, scale, len(blank.bend_lines) - line.bend) for line in blank.bend_lines
    )
    foot = (
        f"{blank.length_mm:.2f} x {blank.width_mm:g} x {blank.thickness_mm:g} mm, "
        f"{blank.mass_kg:.2f} kg, drawn {ratio(scale)}"
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{whole[0]:.3f}mm" '
        f'height="{whole[1]:.3f}mm" viewBox="0 0 {whole[0]:.3f} {whole[1]:.3f}">'
        f"<title>{escape(title or 'Blank')}</title>"
        f'<rect width="100%" height="100%" fill="#fff"/>'
        f'<g transform="translate({_MARGIN_MM:g} {_head(blank):g})" stroke="#000" fill="none" '
        f'stroke-width="0.25" font-family="sans-serif" font-size="{_TEXT_MM}">'
        f'<rect class="cut" width="{length:.3f}" height="{width:.3f}"/>{lines}'
        f'<text class="foot" y="{width + 2 * _TEXT_MM:.3f}" stroke="none" fill="#000">'
        f"{escape(f'{title}: {foot}' if title else foot)}</text></g></svg>\n"
    )


def _head(blank: Blank) -> float:
    """Room above the blank for the bend lines' words, one row a bend.

    The leftmost bend has the topmost row, so that no line runs through another's words.
    """
    return _MARGIN_MM + len(blank.bend_lines) * (_TEXT_MM + _GAP_MM)


def _size(blank: Blank, scale: float) -> tuple[float, float]:
    """Width and height of the drawing on paper [mm]."""
    wide = max(blank.length_mm * scale + _WORDS_MM, 90.0) + 2.0 * _MARGIN_MM
    return wide, _head(blank) + blank.width_mm * scale + _MARGIN_MM + _TEXT_MM


def _line(line: BendLine, width: float, scale: float, row: int) -> str:
    x = line.at_mm * scale
    up = line.direction == "up"
    top = -_GAP_MM - row * (_TEXT_MM + _GAP_MM)
    words = f"{line.bend} {line.direction} {line.included_angle_deg:g}° at {line.at_mm:.2f}"
    dashes = "6 2" if up else "6 1.5 0.5 1.5"
    name = "bend-up" if up else "bend-down"
    return (
        f'<line class="{name}" x1="{x:.3f}" y1="{top:.3f}" x2="{x:.3f}" y2="{width:.3f}" '
        f'stroke-dasharray="{dashes}"/>'
        f'<text x="{x + 0.8:.3f}" y="{top:.3f}" stroke="none" fill="#000">{escape(words)}</text>'
    )


def ratio(scale: float) -> str:
    """A scale as drawings write it: 1:2, 1:1, 2:1."""
    return f"1:{1.0 / scale:g}" if scale <= 1.0 else f"{scale:g}:1"
