"""Why there is no order: the steps of the one with the fewest refusals, each with its reasons."""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.clearance.problem import (
    AGAINST_LIMIT,
    BANNED,
    INTO_BED,
    INTO_DIE,
    INTO_FLOOR,
    INTO_HOLDER,
    INTO_PUNCH,
    INTO_RAM,
    INTO_SHEET,
    NO_GAUGE,
    SHORT_FLANGE,
    TRAPPED,
    WRONG_TOOL,
)
from flangebook.bending.ordering.best_first import Found, Move

REASONS = {
    INTO_PUNCH: "punch",
    INTO_HOLDER: "holder",
    INTO_RAM: "ram",
    INTO_DIE: "die",
    INTO_BED: "bed",
    INTO_FLOOR: "floor",
    INTO_SHEET: "sheet",
    NO_GAUGE: "gauge",
    SHORT_FLANGE: "short flange",
    TRAPPED: "trapped",
    WRONG_TOOL: "wrong tool",
    AGAINST_LIMIT: "wish",
    BANNED: "closer look",
}
"""The name of each result bit; the first six are what the part would run into."""


@dataclass(frozen=True, slots=True)
class Refused:
    """A step that cannot be made. made: bends finished before it, as a set; reasons: names."""

    move: Move
    made: int
    code: int
    reasons: tuple[str, ...]


def reasons(code: int) -> tuple[str, ...]:
    """The names of the bits that are set.

    >>> reasons(5)
    ('punch', 'ram')
    """
    return tuple(name for bit, name in REASONS.items() if code & bit)


def refused_steps(found: Found) -> tuple[Refused, ...]:
    """The steps of a soft search's order that cannot be made."""
    refused = []
    made = 0
    for move, code in zip(found.sequence, found.codes, strict=True):
        if code:
            refused.append(Refused(move, made, code, reasons(code)))
        made |= 1 << move.bend
    return tuple(refused)
