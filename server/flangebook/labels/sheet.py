"""Sheets of labels to cut: A4 or Letter, with cut marks, skipping places already used."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor

from flangebook.bending.errors import InputError
from flangebook.labels.marks import Label

PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}  # ISO 216; ANSI/ASME Y14.1 size A
MARGIN_MM = 5.0  # common practice: what office printers leave white
_MARK_MM = 3.0

Line = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Placed:
    """A label on the sheet; x, y: of its top left corner. [mm]."""

    x: float
    y: float
    label: Label


@dataclass(frozen=True, slots=True)
class Page:
    """One sheet; cut_marks: short lines in the margins. [mm]."""

    width: float
    height: float
    name: str
    placed: tuple[Placed, ...]
    cut_marks: tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class Grid:
    """Places for labels of one size on one paper. [mm]."""

    paper: tuple[float, float]
    label: tuple[float, float]
    columns: int
    rows: int

    @property
    def places(self) -> int:
        """Labels on a sheet."""
        return self.columns * self.rows

    def corner(self, place: int) -> tuple[float, float]:
        """Top left corner of a place, counted from 0 along the rows."""
        row, column = divmod(place, self.columns)
        return self._xs[column], self._ys[row]

    @property
    def _xs(self) -> list[float]:
        return _starts(self.paper[0], self.label[0], self.columns)

    @property
    def _ys(self) -> list[float]:
        return _starts(self.paper[1], self.label[1], self.rows)

    def cut_marks(self) -> tuple[Line, ...]:
        """Lines in the margins that the edges of the labels run between: one cut parts two."""
        width, height = self.paper
        inset = MARGIN_MM - _MARK_MM - 1.0
        xs = [*self._xs, self._xs[-1] + self.label[0]]
        ys = [*self._ys, self._ys[-1] + self.label[1]]
        ends = (inset, inset + _MARK_MM)
        up_down = [(x, e[0], x, e[1]) for x in xs for e in (ends, _mirrored(ends, height))]
        across = [(e[0], y, e[1], y) for y in ys for e in (ends, _mirrored(ends, width))]
        return tuple(up_down + across)


def grid(paper: str, label: tuple[float, float]) -> Grid:
    """The places on a paper. Raises InputError for a paper that is not known.

    >>> grid("A4", (50.0, 25.0)).places
    44
    """
    if paper not in PAPERS:
        raise InputError(f"There is no paper {paper}.", "paper", f"One of {', '.join(PAPERS)}.")
    width, height = PAPERS[paper]
    return Grid(PAPERS[paper], label, _fit(width, label[0]), _fit(height, label[1]))


@dataclass(frozen=True, slots=True)
class Sheets:
    """Where so many labels of one size go. skip: places of the first sheet used already."""

    grid: Grid
    labels: int
    skip: int

    @property
    def count(self) -> int:
        """How many sheets they take."""
        return -(-(self.skip + self.labels) // self.grid.places)

    def on(self, number: int) -> range:
        """Which labels are on a sheet; both are counted from 0."""
        first = number * self.grid.places - self.skip
        return range(max(0, first), min(self.labels, first + self.grid.places))

    def page(self, number: int, labels: Sequence[Label]) -> Page:
        """A sheet, counted from 0, with the labels that are ``on`` it."""
        places = (self.skip + i - number * self.grid.places for i in self.on(number))
        placed = tuple(
            Placed(*self.grid.corner(place), one) for place, one in zip(places, labels, strict=True)
        )
        name = f"Sheet {number + 1} of {self.count}"
        return Page(*self.grid.paper, name, placed, self.grid.cut_marks())


def sheets(labels: int, size: tuple[float, float], paper: str = "A4", skip: int = 0) -> Sheets:
    """So many labels of a size [mm] on as many sheets as they need.

    Raises InputError when there is nothing to place, or skip is not 0 to one sheet less one.

    >>> sheets(100, (50.0, 25.0), skip=40).on(0)
    range(0, 4)
    """
    if not labels:
        raise InputError("No labels were asked for.", "codes", "Name at least one card.")
    places = grid(paper, size)
    if not 0 <= skip < places.places:
        raise InputError(
            f"{skip} places cannot be skipped.", "skip", f"0 to {places.places - 1} on {paper}."
        )
    return Sheets(places, labels, skip)


def _fit(paper: float, label: float) -> int:
    return floor((paper - 2 * MARGIN_MM) / label)


def _starts(paper: float, label: float, count: int) -> list[float]:
    """Left or top edges, the whole block in the middle of the paper."""
    first = (paper - count * label) / 2
    return [round(first + i * label, 3) for i in range(count)]


def _mirrored(ends: tuple[float, float], paper: float) -> tuple[float, float]:
    return paper - ends[1], paper - ends[0]
