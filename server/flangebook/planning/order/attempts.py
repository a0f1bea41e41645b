"""Ways to make a part: tools and ends tried, and tried otherwise while a step is in trouble.

A step is in trouble when the sheet runs into a tool as drawn, or when nothing can be gauged.
The order of the bends stays as it is: changing it is the search's work, not this one's.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from flangebook.bending.handbook.hems import hem
from flangebook.bending.part.part import End, Part
from flangebook.bending.part.section import FoldedBend
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.steps.gauge_choice import ENDS
from flangebook.planning.steps.operations import Operation, folded_by_rule, folded_to
from flangebook.planning.steps.steps import StepMaker, chosen_ends
from flangebook.planning.tools.candidates import Pair
from flangebook.planning.tools.fit import Fit
from flangebook.planning.tools.tool_choice import ToolChoice, choose_tools, here_of, shorter_run_mm

MOST_ATTEMPTS = 4
MOST_TRIED = 6


@dataclass(frozen=True, slots=True)
class Attempt:
    """One way to make the part: the tools of each step and the end at the gauge."""

    maker: StepMaker
    steps: tuple[Operation, ...]
    fits: tuple[Fit | None, ...]
    ends: tuple[End, ...]

    @property
    def tools_used(self) -> tuple[Pair, ...]:
        """Punch and die of each step that needs them."""
        return tuple((one.punch.code, one.die.code) for one in self.fits if one is not None)

    @property
    def troubled(self) -> dict[int, float]:
        """The steps that run into a tool as drawn or cannot be gauged, with what it weighs."""
        found = {}
        for step, one, end in zip(self.steps, self.fits, self.ends, strict=True):
            if one is not None and one.bend is not None:
                cost = self.maker.trouble_cost(step, one, end)
                if cost:
                    found[step.number] = cost
        return found


def best_attempt(choice: ToolChoice, steps: Sequence[Operation], limits: PlanLimits) -> Attempt:
    """Tools and ends chosen anew while steps are in trouble and there is time; the best try
    stands."""
    against: dict[tuple[int, Pair], float] = {}
    doubtful: set[int] = set()
    makers: dict[tuple[FoldedBend, ...], StepMaker] = {}
    best: tuple[float, Attempt] | None = None
    for _ in range(MOST_ATTEMPTS):
        attempt = _attempt(choice, steps, against, doubtful, makers)
        troubled = attempt.troubled
        weight = sum(troubled.values())
        if best is None or weight < best[0]:
            best = (weight, attempt)
        new = set(troubled) - doubtful
        limits.heed()
        if not new or limits.over:
            break
        doubtful |= new
        for step, one in zip(steps, attempt.fits, strict=True):
            if step.number in new and one is not None:
                _hold_against(choice, attempt.maker, step, one, against)
    assert best is not None
    return best[1]


def _hold_against(
    choice: ToolChoice,
    maker: StepMaker,
    step: Operation,
    chosen: Fit,
    against: dict[tuple[int, Pair], float],
) -> None:
    """Hold against punches and dies what trouble they make in a step, whichever end is back.

    Of each kind the likeliest are tried, the other kind staying as chosen, up to the first
    one without trouble.
    """
    candidates, pairs = choice.for_step(step), choice.pairs(step)
    touched = {name for end in ENDS for name, _ in maker.pose(step, chosen, end).touches}
    for which, code, other in (
        (0, chosen.punch.code, chosen.die.code),
        (1, chosen.die.code, chosen.punch.code),
    ):
        below = {"die", "bed"}
        if not (touched & below if which == 1 else touched - below or not touched):
            continue
        alike = sorted((candidates.costs[p][0], p) for p in pairs if p[1 - which] == other)
        for _, pair in alike[:MOST_TRIED]:
            one = candidates.fit(pair)
            if one.bend is None or (one.stops and pair[which] != code):
                continue
            least = min(maker.trouble_cost(step, one, end) for end in ENDS)
            for held in (p for p in pairs if p[which] == pair[which]):
                against[step.number, held] = against.get((step.number, held), 0.0) + least
            if not least:
                break


def _attempt(
    choice: ToolChoice,
    steps: Sequence[Operation],
    against: Mapping[tuple[int, Pair], float],
    doubtful: Collection[int],
    makers: dict[tuple[FoldedBend, ...], StepMaker],
) -> Attempt:
    part = choice.part
    fits = choose_tools(choice, steps, folded_by_rule(part, choice.metal), against)
    folded = folded_in(choice, steps, fits)
    if _falls_short(part, folded, steps, fits):
        fits = choose_tools(choice, steps, folded, against)
        folded = folded_in(choice, steps, fits)
    maker = makers.setdefault(folded, StepMaker(part, folded, choice.equipment))
    ends = chosen_ends(maker, steps, fits, doubtful)
    return Attempt(maker, tuple(steps), tuple(fits), tuple(ends))


def _falls_short(
    part: Part, folded: Sequence[FoldedBend], steps: Sequence[Operation], fits: Sequence[Fit | None]
) -> bool:
    """Whether a flange is too short with the radii the chosen tools give."""
    for step, one in zip(steps, fits, strict=True):
        if one is not None and one.bend is not None:
            run = shorter_run_mm(part, folded, step, one)
            if run is not None and run < one.bend.min_flange_mm:
                return True
    return False


def folded_in(
    choice: ToolChoice, steps: Sequence[Operation], fits: Sequence[Fit | None]
) -> tuple[FoldedBend, ...]:
    """How each bend comes out of the tools chosen; by rule where none could be predicted."""
    part = choice.part
    folded = list(folded_by_rule(part, choice.metal))
    for step, one in zip(steps, fits, strict=True):
        bend = part.bends[step.bend - 1]
        if bend.kind != "bend":
            folded[step.bend - 1] = hem(bend, part.thickness_mm).folded
        elif step.bumps is not None and bend.inside_radius_mm:
            folded[step.bend - 1] = folded_to(part, bend, choice.metal, bend.inside_radius_mm)
        elif one is not None and one.bend is not None:
            folded[step.bend - 1] = here_of(one)
    return tuple(folded)
