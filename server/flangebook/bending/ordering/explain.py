"""Why there is no order: which steps are refused, by which tools, and how far one gets.

Two views, both facts and no guesses: the order with the fewest refused steps, each with all its
reasons; and the dead ends, sets of bends the finished part can be taken back to, where every
step that could come last is refused.
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.ordering.best_first import Found, Move
from flangebook.bending.ordering.problem import (
    AGAINST_WISH,
    BANNED,
    HITS_BED,
    HITS_DIE,
    HITS_FLOOR,
    HITS_HOLDER,
    HITS_PUNCH,
    HITS_RAM,
    HITS_SHEET,
    NO_GAUGE,
    SHORT_FLANGE,
    TRAPPED,
    WRONG_TOOL,
    Problem,
)
from flangebook.bending.ordering.search import Known, codes_of

REASONS = {
    HITS_PUNCH: "punch",
    HITS_HOLDER: "holder",
    HITS_RAM: "ram",
    HITS_DIE: "die",
    HITS_BED: "bed",
    HITS_FLOOR: "floor",
    HITS_SHEET: "sheet",
    NO_GAUGE: "gauge",
    SHORT_FLANGE: "short flange",
    TRAPPED: "trapped",
    WRONG_TOOL: "wrong tool",
    AGAINST_WISH: "wish",
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


@dataclass(frozen=True, slots=True)
class DeadEnd:
    """Bends still in the part, none of which can have been made last.

    bends: which, from 0. refused: for each of them its least refused step, fewest reasons first.
    """

    bends: tuple[int, ...]
    refused: tuple[Refused, ...]


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


def dead_ends(problem: Problem, found: Found, known: Known | None = None) -> tuple[DeadEnd, ...]:
    """The dead ends of a search that found no order, with the reasons at each."""
    known = known or Known(problem)
    return tuple(_dead_end(problem, made, known) for made in found.dead_ends)


def _dead_end(problem: Problem, made: int, known: Known) -> DeadEnd:
    bends = tuple(b for b in range(len(problem.at)) if made >> b & 1)
    steps = [
        Refused(move, made ^ (1 << move.bend), code, reasons(code))
        for move, code in codes_of(problem, made, known).items()
    ]
    nearest = [min((s for s in steps if s.move.bend == b), key=_how_refused) for b in bends]
    return DeadEnd(bends, tuple(sorted(nearest, key=_how_refused)))


def _how_refused(refused: Refused) -> tuple[int, int]:
    return refused.code.bit_count(), refused.code
