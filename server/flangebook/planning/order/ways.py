"""How the part comes between the tools and out again at each step of an order."""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.clearance.taking_out import Step, TakingOut, step_passes, way_in, way_out
from flangebook.bending.ordering.search import Known, Move
from flangebook.bending.part.part import Part

STRAIGHT = TakingOut("straight")


@dataclass(frozen=True, slots=True)
class Ways:
    """A step's way in and way out."""

    into: TakingOut
    out: TakingOut

    @property
    def found(self) -> bool:
        """Whether there is a way in and one out."""
        return "unknown" not in (self.into.way, self.out.way)


def ways_of(known: Known, part: Part, made: int, move: Move, *, can_slide: bool) -> Ways:
    """The ways of a step that clears the tools. made: bends finished before it, as a set.

    A box has sides that its section does not show: it is only said whether the punch lifts
    straight off, which the search has made sure of; the sides have checks of their own.
    """
    if part.walled:
        return Ways(STRAIGHT, STRAIGHT)
    step, passes = _step(known, made, move)
    return Ways(
        way_in(known.problem, step, passes=passes, can_slide=can_slide),
        way_out(known.problem, step, passes=passes, can_slide=can_slide),
    )


def comes_off(known: Known, part: Part, made: int, move: Move) -> bool:
    """Whether a part that cannot slide gets off the punch: the punch rises straight past it, or a
    way is found."""
    _, passes = _step(known, made, move)
    return passes or ways_of(known, part, made, move, can_slide=False).found


def _step(known: Known, made: int, move: Move) -> tuple[Step, bool]:
    """The step, and whether the punch passes the part straight."""
    step = Step(made, move.bend, move.end, move.pair)
    return step, step_passes(known.problem, step, known.memo.sweeps)
