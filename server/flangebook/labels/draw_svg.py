"""Labels and sheets as SVG in mm: text as outlines, so that no printer swaps the typeface.

The words are also in ``desc``, escaped, for readers and for search.
"""

from __future__ import annotations

from collections.abc import Iterable
from html import escape

from flangebook.labels.marks import Frame, Label, Mark, QrMark, Sign, Text
from flangebook.labels.qr import QUIET_MODULES, Level, qr_code
from flangebook.labels.sheet import Page
from flangebook.labels.typeface import face, outline


class _Drawing:
    """Collects the outlines of the characters used, each written once."""

    def __init__(self) -> None:
        self.outlines: dict[tuple[bool, str], str] = {}

    def mark(self, mark: Mark) -> str:
        """One mark as SVG."""
        match mark:
            case Text():
                return self._text(mark)
            case QrMark():
                return _qr(mark)
            case Frame():
                return _frame(mark)
            case Sign():
                return _sign(mark)

    def label(self, label: Label) -> str:
        """All marks of a label."""
        return "".join(self.mark(m) for m in label.marks)

    def definitions(self) -> str:
        """The outlines, in font units with y down."""
        paths = (
            f'<path id="{_glyph_id(bold, character)}" d="{path}"/>'
            for (bold, character), path in self.outlines.items()
        )
        return f"<defs>{''.join(paths)}</defs>"

    def _text(self, text: Text) -> str:
        weight = face(text.bold)
        scale = text.size / weight.units_per_em
        x, uses = 0.0, []
        for character in text.words:
            if not character.isspace():
                self.outlines[text.bold, character] = outline(character, text.bold)
                name = _glyph_id(text.bold, character)
                uses.append(f'<use href="#{name}" x="{x * weight.units_per_em:g}"/>')
            x += weight.advances[character]
        place = f"translate({text.x:.4g} {text.y:.5g}) scale({scale:.6g} {-scale:.6g})"
        return f'<g transform="{place}">{"".join(uses)}</g>'


def label_svg(label: Label) -> str:
    """A label as an SVG document."""
    drawing = _Drawing()
    body = drawing.label(label)
    return _document(
        label.width, label.height, label.name, label.words, drawing.definitions() + body
    )


def page_svg(page: Page) -> str:
    """A sheet of labels as an SVG document."""
    drawing = _Drawing()
    labels = "".join(
        f'<g transform="translate({p.x:g} {p.y:g})">{drawing.label(p.label)}</g>'
        for p in page.placed
    )
    lines = "".join(
        f'<path d="M{x0:g} {y0:g}L{x1:g} {y1:g}" stroke="#000" stroke-width="0.1"/>'
        for x0, y0, x1, y1 in page.cut_marks
    )
    words = [word for p in page.placed for word in (p.label.name, *p.label.words)]
    body = drawing.definitions() + lines + labels
    return _document(page.width, page.height, page.name, words, body)


def qr_svg(address: str, level: Level = "H", side: float = 30.0) -> str:
    """A QR code alone, quiet zone included; side: of the square [mm]."""
    mark = QrMark(0.0, 0.0, side, qr_code(address, level))
    return _document(side, side, f"QR code of {address}", [address], _qr(mark))


def _document(width: float, height: float, name: str, words: Iterable[str], body: str) -> str:
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}mm" height="{height:g}mm" '
        f'viewBox="0 0 {width:g} {height:g}" role="img">'
        f"<title>{escape(name)}</title><desc>{escape(chr(10).join(words))}</desc>"
        f'<rect width="{width:g}" height="{height:g}" fill="#fff"/>'
        f"{body}</svg>\n"
    )


def _glyph_id(bold: bool, character: str) -> str:
    return f"{'b' if bold else 'r'}{ord(character):x}"


def _qr(mark: QrMark) -> str:
    """Dark runs of each row, on a grid of one unit a module."""
    scale = mark.side / mark.code.modules
    runs = "".join(
        f"M{QUIET_MODULES + start} {QUIET_MODULES + y}h{length}v1h-{length}z"
        for y, row in enumerate(mark.code.rows)
        for start, length in _dark_runs(row)
    )
    place = f"translate({mark.x:g} {mark.y:g}) scale({scale:.6g})"
    return f'<path transform="{place}" shape-rendering="crispEdges" d="{runs}"/>'


def _dark_runs(row: Iterable[bool]) -> list[tuple[int, int]]:
    runs: list[tuple[int, int]] = []
    for x, dark in enumerate(row):
        if dark and runs and sum(runs[-1]) == x:
            runs[-1] = (runs[-1][0], runs[-1][1] + 1)
        elif dark:
            runs.append((x, 1))
    return runs


def _frame(frame: Frame) -> str:
    half = frame.line / 2
    return (
        f'<rect x="{frame.x + half:g}" y="{frame.y + half:g}" '
        f'width="{frame.width - frame.line:g}" height="{frame.height - frame.line:g}" '
        f'fill="none" stroke="#000" stroke-width="{frame.line:g}"/>'
    )


def _sign(sign: Sign) -> str:
    paths = "".join(
        f"M{' '.join(f'{x:.4g} {y:.4g}' for x, y in line)}" for line in sign.lines()
    )  # fmt: skip
    return (
        f'<path class="{sign.level}" d="{paths}" fill="none" stroke="#000" '
        f'stroke-width="{sign.stroke:.3g}" stroke-linejoin="round"/>'
    )
