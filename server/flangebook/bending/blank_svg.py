"""The blank as a printable SVG drawing to scale."""

from __future__ import annotations

from flangebook.bending.blank import Blank


def blank_svg(blank: Blank, title: str = "", scale: float = 1.0) -> str:
    """SVG whose millimetres are the blank's times ``scale``."""
    lines = "".join(
        f'<line x1="{b.at_mm:.3f}" y1="0" x2="{b.at_mm:.3f}" y2="{blank.width_mm:.3f}"/>'
        for b in blank.bend_lines
    )
    w, h = blank.length_mm, blank.width_mm
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{w * scale:.3f}mm" '
        f'height="{h * scale:.3f}mm" viewBox="0 0 {w:.3f} {h:.3f}" fill="none" stroke="#000" '
        f'stroke-width="0.3"><rect width="{w:.3f}" height="{h:.3f}"/>{lines}</svg>\n'
    )
