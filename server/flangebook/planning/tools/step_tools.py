"""Why a step of a plan has the tools that it has, where they are not the usual ones."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from flangebook.bending.checks import Sentence
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order.search import (
    HANDLING_WORDS,
    Searched,
    handling_counts,
    in_words,
    with_pair,
)
from flangebook.planning.steps.operations import Operation
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Fit
from flangebook.planning.tools.tool_choice import ToolChoice, shorter_run_mm
from flangebook.planning.tools.unusual import KINDS, Chosen, Kind, why_unusual

SAVES_A_CHANGE = "one tool for several bends saves a change."


@dataclass(slots=True)
class ToolReasons:
    """The reasons of a plan's steps; steps alike share theirs."""

    choice: ToolChoice
    searched: Searched
    folded: Sequence[FoldedBend]
    limits: PlanLimits
    _of: dict[tuple[object, ...], Sentence] = field(default_factory=dict)

    def of(self, step: PlannedStep) -> Sentence:
        """One line; empty for usual tools, and where a step has none."""
        one, operation = step.fit, step.operation
        if one is None or not step.owned:
            return Sentence("")
        by_name = named_kinds(self.choice.part, operation.bend)
        run = shorter_run_mm(self.choice.part, self.folded, operation, one)
        key = (one.punch.code, one.die.code, operation.included_angle_deg, run, by_name)
        if key not in self._of:
            self._of[key] = why_unusual(
                Chosen(
                    one,
                    self.choice.for_step(operation),
                    by_name,
                    lambda f: shorter_run_mm(self.choice.part, self.folded, operation, f),
                    lambda f, called: (
                        "" if self.limits.over else self._passed_over(operation, f, called)
                    ),
                )
            )
        return self._of[key]

    def _passed_over(self, step: Operation, rival: Fit, called: str) -> str:
        """Why the search for the order did not take tools with no more against them."""
        searched = self.searched
        if rival.die.code in searched.no_order:
            return f"no order of the bends clears the tools with {called}."
        found = with_pair(searched, step.bend, (rival.punch.code, rival.die.code), self.limits)
        if found is None:
            used = searched.attempt.tools_used
            return SAVES_A_CHANGE if len(used) > 1 and len(set(used)) == 1 else ""
        if found.status == "none":
            return f"no order of the bends clears the tools with {called}."
        costs = found.cost, searched.found.cost if searched.found is not None else None
        if costs[0] is None or costs[1] is None:
            return ""
        if costs[0].held_close > costs[1].held_close:
            return f"with {called} the sheet is held nearer to the tools."
        mine, other = handling_counts(searched.found), handling_counts(found)
        more = [in_words(n, other[n] - mine[n]) for n in HANDLING_WORDS if other[n] > mine[n]]
        return f"with {called} it takes {', '.join(more)} more." if more else SAVES_A_CHANGE


def named_kinds(part: Part, bend: int) -> frozenset[Kind]:
    """Which of a bend's tools were asked for by name."""
    asked = dict(zip(reversed(KINDS), part.asked_for(bend), strict=True))
    return frozenset(kind for kind in KINDS if asked[kind])
