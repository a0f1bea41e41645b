"""The labels' own typeface: widths to lay text out by, and outlines to draw it with.

One font file serves the layout, the SVG (as outlines) and the PNG, so that they agree and
a label looks the same on every machine.
"""

from __future__ import annotations

import threading
import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from fontTools.pens.svgPathPen import SVGPathPen
from fontTools.ttLib import TTFont

FOLDER = Path(__file__).parent / "font"
_NO_GLYPH = "□"
_ELLIPSIS = "…"
# The font is read piece by piece when first drawn from, which two threads must not do at once.
_reading = threading.Lock()


@dataclass(frozen=True)
class Face:
    """One weight. Everything per em: multiply by the size in mm to get mm."""

    file: Path
    units_per_em: int
    ascent: float
    descent: float
    advances: dict[str, float]
    glyphs: dict[str, str]
    font: TTFont

    def width(self, text: str) -> float:
        """Width of the text at size 1. It has to be cleaned by ``printable`` first."""
        return sum(self.advances[c] for c in text)


@cache
def face(bold: bool) -> Face:
    """The regular or the bold weight."""
    file = FOLDER / ("bold.ttf" if bold else "regular.ttf")
    font = TTFont(file)
    em = font["head"].unitsPerEm
    glyphs = {chr(code): name for code, name in font.getBestCmap().items()}
    advances = {c: font["hmtx"][name][0] / em for c, name in glyphs.items()}
    head = font["hhea"]
    return Face(file, em, head.ascent / em, -head.descent / em, advances, glyphs, font)


@cache
def outline(character: str, bold: bool) -> str:
    """SVG path of one character in font units, y up."""
    weight = face(bold)
    with _reading:
        glyphs = weight.font.getGlyphSet()
        pen = SVGPathPen(glyphs, ntos=lambda v: f"{v:g}")
        glyphs[weight.glyphs[character]].draw(pen)
        return str(pen.getCommands())


def printable(text: str) -> str:
    """The text as it can be printed: one line, and a box for what the font does not have.

    >>> printable("Halter  5\\n")
    'Halter 5'
    >>> printable("棚 A")
    '□ A'
    """
    known = face(False).advances
    composed = unicodedata.normalize("NFC", text)
    shown = "".join(c for c in composed if c.isspace() or unicodedata.category(c)[0] != "C")
    line = " ".join(shown.split())
    return "".join(c if c in known else _NO_GLYPH for c in line)


def shortened(text: str, width: float, size: float, bold: bool) -> str:
    """The text, or as much of it as fits into the width with an ellipsis. [mm]."""
    weight = face(bold)
    if weight.width(text) * size <= width + 1e-6:
        return text
    kept = text
    while kept and weight.width(kept.rstrip() + _ELLIPSIS) * size > width:
        kept = kept[:-1]
    return kept.rstrip() + _ELLIPSIS


def wrapped(text: str, width: float, size: float, bold: bool, most: int) -> tuple[str, ...]:
    """The text over at most ``most`` lines, broken at spaces where it can be. [mm]."""
    lines: list[str] = []
    rest = text.split()
    while rest and len(lines) < most - 1:
        taken = _longest_start(rest, width, size, bold)
        if taken == 0:
            break
        lines.append(" ".join(rest[:taken]))
        rest = rest[taken:]
    if rest:
        lines.append(shortened(" ".join(rest), width, size, bold))
    return tuple(lines)


def _longest_start(words: list[str], width: float, size: float, bold: bool) -> int:
    """How many of the words fit on one line."""
    weight = face(bold)
    taken = 0
    while taken < len(words):
        if weight.width(" ".join(words[: taken + 1])) * size > width:
            return taken
        taken += 1
    return taken


def size_that_fits(
    texts: Iterable[str], width: float, size: float, least: float, bold: bool
) -> float:
    """The size, or a smaller one down to ``least``, at which every text fits. [mm]."""
    widest = max((face(bold).width(t) for t in texts), default=0.0)
    return size if widest * size <= width else max(least, width / widest)
