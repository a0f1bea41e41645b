"""The two labels: 50 x 25 mm for a bin, 100 x 50 mm for a shelf or a door.

The small one carries a QR code of level H, for it gets dirty. The large one carries a
coarse code of level Q to scan from afar, and a second one of level H: a spoilt corner
pattern beats every level, and then the other code or the plain text helps.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal, get_args

from flangebook.bending.errors import InputError
from flangebook.labels.facts import LabelFacts, StepFact
from flangebook.labels.marks import (
    LEAST_SIZE,
    Column,
    Frame,
    Label,
    Mark,
    QrMark,
    Text,
    line_height,
    signed_line,
)
from flangebook.labels.qr import qr_code
from flangebook.labels.typeface import face, printable, wrapped

Size = Literal["50x25", "100x50"]
SIZES: tuple[Size, ...] = get_args(Size)


def dimensions(size: str) -> tuple[float, float]:
    """Width and height of a label [mm].

    >>> dimensions("50x25")
    (50.0, 25.0)
    """
    width, height = size.split("x")
    return float(width), float(height)


def label(facts: LabelFacts, address: str, size: str = "50x25") -> Label:
    """The label of a card.

    address: what the QR code holds, see ``card_address``. size: "50x25" or "100x50" [mm].
    Raises InputError for another size.
    """
    makers: dict[str, Callable[[LabelFacts, str], Label]] = {"50x25": _small, "100x50": _large}
    if size not in makers:
        raise InputError(
            f"There is no label of size {size}.", "size", f"One of {', '.join(SIZES)}."
        )
    return makers[size](facts, address)


def _small(facts: LabelFacts, address: str) -> Label:
    column = Column(x=25.2, y=0.7, width=23.9, bottom=24.5)
    marks: list[Mark] = [QrMark(0.0, 0.0, 25.0, qr_code(address, "H"))]
    marks += column.line(facts.shown_code, 4.6, bold=True)
    marks += _title(column, facts.title, 2.5, most=2)
    marks += column.line(_sheet_metal(facts, column.width), 2.1)
    marks += column.line(facts.tools, 2.1)
    marks += column.line(facts.blank, 2.1)
    press = f"Allow for {facts.allow_for}" if facts.allow_for else facts.bends
    marks += column.line(f"{press} · rev {facts.revision}", 2.1)
    if facts.warning:
        marks += signed_line(column, facts.worst, facts.warning, 2.1)
    else:
        marks += signed_line(column, "unknown", facts.order_warning, 2.1)
    return Label(50.0, 25.0, _name(facts), tuple(marks))


def _large(facts: LabelFacts, address: str) -> Label:
    left = Column(x=2.0, y=36.6, width=34.0, bottom=48.6)
    right = Column(x=37.0, y=1.6, width=61.4, bottom=48.4)
    marks: list[Mark] = [
        QrMark(0.0, 0.0, 36.0, qr_code(address, "Q")),
        QrMark(80.0, 30.0, 20.0, qr_code(address, "H")),
    ]
    marks += left.line(facts.shown_code, 6.6, bold=True)
    marks += left.line(f"{facts.bends} · revision {facts.revision}", 2.3)
    marks += _title(right, facts.title, 4.2, most=2)
    marks += right.line(f"{facts.thickness}  {facts.metal}", 3.0)
    marks += right.line(facts.blank, 3.0)
    marks += right.line(facts.tools, 3.0)
    marks += _force(right, facts)
    marks += _warning(right, facts)
    right.width = 43.0
    marks += _steps(right, facts)
    return Label(100.0, 50.0, _name(facts), tuple(marks))


def _name(facts: LabelFacts) -> str:
    return f"Label of card {facts.shown_code}: {printable(facts.title)}"


def _sheet_metal(facts: LabelFacts, width: float) -> str:
    """Thickness and metal; without the gauge number where that makes the metal fit."""
    whole = f"{facts.thickness} {facts.metal}"
    if face(False).width(printable(whole)) * LEAST_SIZE <= width:
        return whole
    return f"{facts.thickness.partition(' (')[0]} {facts.metal}"


def _title(column: Column, title: str, size: float, most: int) -> list[Mark]:
    lines = wrapped(printable(title), column.width, size, True, most)
    return [mark for line in lines for mark in column.line(line, size, bold=True)]


def _force(column: Column, facts: LabelFacts) -> list[Mark]:
    """The force to set the press by, and smaller beside it what is expected."""
    if not facts.allow_for:
        return []
    marks = column.line(f"Allow for {facts.allow_for}", 3.0, bold=True)
    for line in [m for m in marks if isinstance(m, Text)]:
        x = line.x + line.width + 1.5
        beside = Column(x, line.y - face(False).ascent * 2.2, column.x + column.width - x, 100.0)
        marks = marks + beside.line(f"expected {facts.expected}", 2.2)
    return marks


def _warning(column: Column, facts: LabelFacts) -> list[Mark]:
    """The worst finding in a box of its own."""
    size, pad = 2.8, 0.7
    if not facts.warning:
        return []
    top = column.y + 0.5
    height = line_height(size) + 2 * pad
    inner = Column(column.x + 1.2, top + pad, column.width - 2.4, column.bottom)
    text = signed_line(inner, facts.worst, facts.warning, size)
    column.y = top + height + 0.5
    return [Frame(column.x, top, column.width, height), *text]


def _steps(column: Column, facts: LabelFacts) -> list[Mark]:
    """A line for each step in columns; what does not fit is counted in the last line."""
    size = 2.4
    room = int((column.bottom - column.y + 1e-9) / line_height(size))
    if facts.order_warning:
        room -= 1
    shown = facts.steps if len(facts.steps) <= room else facts.steps[: max(0, room - 1)]
    marks = _table(column, shown, size)
    left_out = len(facts.steps) - len(shown)
    if left_out:
        marks += column.line(f"and {left_out} more: open the card", size, bold=True)
    return marks + signed_line(column, "unknown", facts.order_warning, size)


def _table(column: Column, steps: tuple[StepFact, ...], size: float) -> list[Mark]:
    """Steps in columns that line up, made smaller until they fit; at the least size the last
    columns, tools and moves, are cut: the numbers to set never are.
    """
    rows = [[printable(c) for c in (s.name, s.setting, s.gauge, s.tools, s.moves)] for s in steps]
    gap = 1.5
    bold = [False, True, True, False, False]
    natural = [
        max((face(bold[i]).width(row[i]) for row in rows), default=0.0) for i in range(len(bold))
    ]
    gaps = gap * sum(1 for width in natural[1:] if width)
    total = sum(natural)
    fitted = max(LEAST_SIZE, min(size, (column.width - gaps) / total)) if total else size
    return [mark for row in rows for mark in _row(column, row, natural, fitted, size, gap, bold)]


def _row(
    column: Column,
    row: list[str],
    natural: list[float],
    fitted: float,
    size: float,
    gap: float,
    bold: list[bool],
) -> list[Mark]:
    marks: list[Mark] = []
    x = column.x
    for words, width, heavy in zip(row, natural, bold, strict=True):
        room = min(width * fitted + 1e-9, column.x + column.width - x)
        cell = Column(x, column.y, room, column.bottom, least=fitted)
        if words and room > fitted:
            marks += [m for m in cell.line(words, fitted, heavy) if isinstance(m, Text)]
        x += width * fitted + (gap if width else 0.0)
    column.y += line_height(size)
    return marks
