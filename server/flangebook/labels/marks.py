"""What a label is made of: marks in mm, from which SVG and PNG are both drawn.

x to the right, y down, from the label's top left corner.
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.labels.qr import QrCode
from flangebook.labels.signs import LINES, SQUARE, STROKE, Line
from flangebook.labels.typeface import face, printable, shortened, size_that_fits

LEAST_SIZE = 1.7  # [mm] of the em: below this, print is not read at a bin


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text; x, y: left end of its baseline; size: the em. [mm]."""

    x: float
    y: float
    size: float
    words: str
    bold: bool = False

    @property
    def width(self) -> float:
        """How far it reaches to the right of x. [mm]."""
        return face(self.bold).width(self.words) * self.size

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, top, right, bottom of the line, ascenders and descenders included. [mm]."""
        weight = face(self.bold)
        top, bottom = self.y - weight.ascent * self.size, self.y + weight.descent * self.size
        return self.x, top, self.x + self.width, bottom


@dataclass(frozen=True, slots=True)
class QrMark:
    """A QR code; x, y, side: of its square with the quiet zone. [mm]."""

    x: float
    y: float
    side: float
    code: QrCode


@dataclass(frozen=True, slots=True)
class Frame:
    """An outlined box, drawn inside its bounds. [mm]."""

    x: float
    y: float
    width: float
    height: float
    line: float = 0.3


@dataclass(frozen=True, slots=True)
class Sign:
    """The sign of a finding's level; x, y, side: of its square. [mm]. level: of ``signs.LINES``."""

    x: float
    y: float
    side: float
    level: str

    def lines(self) -> tuple[Line, ...]:
        """Its lines on the label. [mm]."""
        scale = self.side / SQUARE
        return tuple(
            tuple((self.x + a * scale, self.y + b * scale) for a, b in line)
            for line in LINES[self.level]
        )

    @property
    def stroke(self) -> float:
        """How wide its lines are. [mm]."""
        return self.side / SQUARE * STROKE


Mark = Text | QrMark | Frame | Sign


@dataclass(frozen=True, slots=True)
class Label:
    """A label ready to draw. name: what it is, for readers who cannot see it."""

    width: float
    height: float
    name: str
    marks: tuple[Mark, ...]

    @property
    def words(self) -> tuple[str, ...]:
        """Its lines in reading order."""
        return tuple(m.words for m in self.marks if isinstance(m, Text))


@dataclass(slots=True)
class Column:
    """A column of text that is filled from the top; nothing leaves its box. [mm]."""

    x: float
    y: float
    width: float
    bottom: float
    least: float = LEAST_SIZE

    def room_for(self, size: float) -> bool:
        """Whether another line of that size fits above the bottom."""
        return self.y + line_height(size) <= self.bottom + 1e-9

    def line(self, words: str, size: float, bold: bool = False, gap: float = 0.0) -> list[Mark]:
        """One line: made smaller if too wide, then cut with an ellipsis; none if no room."""
        clean = printable(words)
        if not clean or not self.room_for(size):
            return []
        fitted = size_that_fits((clean,), self.width, size, min(self.least, size), bold)
        shown = shortened(clean, self.width, fitted, bold)
        baseline = self.y + face(bold).ascent * size
        self.y += line_height(size) + gap
        return [Text(self.x, baseline, fitted, shown, bold)]


def signed_line(column: Column, level: str, words: str, size: float) -> list[Mark]:
    """A line with the sign of its level before it; without words nothing."""
    side, top = 1.05 * size, column.y
    beside = Column(
        column.x + side + 0.25 * size, top, column.width - side - 0.25 * size, column.bottom
    )
    text = beside.line(words, size, bold=True)
    if not text:
        return []
    column.y = beside.y
    return [Sign(column.x, top + 0.5 * (line_height(size) - side), side, level), *text]


def line_height(size: float) -> float:
    """Height of a line of text. [mm]."""
    weight = face(True)
    return (weight.ascent + weight.descent) * size
