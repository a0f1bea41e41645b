"""The one family of errors for input that cannot be used.

    FlangebookError
    +-- InputError        a value is outside what the calculation means anything for
    |   +-- RangeError    ... because it leaves a formula's published range
    |   +-- OutlineError  an outline crosses itself, is open, has a hole, ...
    +-- NotAPartError          the section cannot exist (crosses itself, no flats, ...)
    +-- MissingToolError       a tool, metal or press named does not exist

Every error says what was wrong, where, and what would be right, and builds its
sentence only when shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Self

from flangebook.bending.checks import Names, Sentence, fill, with_names

Lines = tuple[tuple[tuple[float, float], ...], ...]


class FlangebookError(Exception):
    """Something given cannot be used.

    what: what was wrong, in the user's words.
    where: the field or place, dotted from the outside in ("bends.2.included_angle_deg").
    right: what would be right.
    numbers: figures by name that stand in what and right as ``{name_mm}``, as a finding has them,
        so that a screen may show them in the reader's own units.
    """

    def __init__(
        self,
        what: str,
        where: str = "",
        right: str = "",
        numbers: Mapping[str, float] | None = None,
    ) -> None:
        super().__init__(what, where, right, *([numbers] if numbers else []))
        self.template = what
        self.where = where
        self.do = right
        self.numbers = numbers or {}

    @property
    def what(self) -> str:
        """What was wrong, metric."""
        return fill(self.template, self.numbers)

    @property
    def right(self) -> str:
        """What would be right, metric."""
        return fill(self.do, self.numbers)

    @property
    def said(self) -> Sentence:
        """What was wrong and what would be right, its numbers apart."""
        return Sentence(f"{self.template} {self.do}".strip(), self.numbers)

    def call(self, names: Names) -> None:
        """Put flats and bends into the words, by these names."""
        self.template, self.do = (
            with_names(words, self.numbers, names) for words in (self.template, self.do)
        )

    def again(self) -> Self:
        """The same, to be raised anew: one that was kept would gather the places it was raised."""
        return type(self)(self.template, self.where, self.do, self.numbers)

    def __str__(self) -> str:
        place = f"{self.where}: " if self.where else ""
        remedy = f" {self.right}" if self.right else ""
        return f"{place}{self.what}{remedy}"


class InputError(FlangebookError):
    """A value is outside what the calculation means anything for."""


class RangeError(InputError):
    """A value leaves the range a published formula was given for."""


class OutlineError(InputError):
    """An outline, or a drawing with one, cannot be used.

    code: stable name for programs, such as "crossing". lines_mm: what was understood of it,
    each a list of points. edges: numbers of the edges at fault, from 1. marks_mm: the places.
    layers: of a drawing, those that hold lines.
    """

    def __init__(
        self,
        what: str,
        where: str = "",
        right: str = "",
        *,
        numbers: Mapping[str, float] | None = None,
        code: str = "",
        lines_mm: Lines = (),
        edges: tuple[int, ...] = (),
        marks_mm: tuple[tuple[float, float], ...] = (),
        layers: tuple[str, ...] = (),
    ) -> None:
        super().__init__(what, where, right, numbers)
        self.code = code
        self.lines_mm = lines_mm
        self.edges = edges
        self.marks_mm = marks_mm
        self.layers = layers


class NotAPartError(FlangebookError):
    """The section described cannot exist."""


class MissingToolError(FlangebookError):
    """A tool, metal or press that was named does not exist."""
