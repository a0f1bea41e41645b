"""The one family of errors for input that cannot be used.

    FlangebookError
    +-- InputError        a value is outside what the calculation means anything for
    |   +-- RangeError    ... because it leaves a formula's published range
    +-- NotAPartError          the section cannot exist (crosses itself, no flats, ...)
    +-- MissingToolError       a tool, metal or press named does not exist

Every error says what was wrong, where, and what would be right, and builds its
sentence only when shown.
"""

from __future__ import annotations


class FlangebookError(Exception):
    """Something given cannot be used.

    what: what was wrong, in the user's words.
    where: the field or place, dotted from the outside in ("bends.2.included_angle_deg").
    right: what would be right.
    """

    def __init__(self, what: str, where: str = "", right: str = "") -> None:
        super().__init__(what, where, right)
        self.what = what
        self.where = where
        self.right = right

    def __str__(self) -> str:
        place = f"{self.where}: " if self.where else ""
        remedy = f" {self.right}" if self.right else ""
        return f"{place}{self.what}{remedy}"


class InputError(FlangebookError):
    """A value is outside what the calculation means anything for."""


class RangeError(InputError):
    """A value leaves the range a published formula was given for."""


class NotAPartError(FlangebookError):
    """The section described cannot exist."""


class MissingToolError(FlangebookError):
    """A tool, metal or press that was named does not exist."""
