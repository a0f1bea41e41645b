"""A plan as calculated: what stands between the calculation and its JSON."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.box.blank import BoxBlank
from flangebook.bending.box.box import Box, Pair, SideName
from flangebook.bending.box.depth import Approach
from flangebook.bending.box.fold import FoldedView
from flangebook.bending.box.shape import BoxShape
from flangebook.bending.checks import PLAIN, SEVERITY, Check, Level, Names, Sentence, worst
from flangebook.bending.part.blank import Blank
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend
from flangebook.planning.answers.setting_json import Setting, setting_of
from flangebook.planning.order.said import Clearance, OrderPlan
from flangebook.planning.steps.dimensions import Dimension
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.stations import Station


@dataclass(frozen=True, slots=True)
class Section:
    """A section as planned: its bends as they come out, its blank. fits: the tools of its steps.
    pair: of a box's sides, None for a plain part."""

    part: Part
    folded: tuple[FoldedBend, ...]
    sheet: Blank
    fits: tuple[Fit | None, ...]
    pair: Pair | None = None


@dataclass(frozen=True, slots=True)
class BesideSides:
    """A step of a box. quarter_turn: before it. clear_mm: between the finished sides, None where
    none stand. near: what those come near to."""

    side: SideName
    gauged_side: SideName
    quarter_turn: bool
    clear_mm: float | None
    near: tuple[Approach, ...]


@dataclass(frozen=True, slots=True)
class StepPlan:
    """A step with what is said of it.

    step: as its section has it; names: what it is called in the whole part. length_mm: of its
    bend. punch_mm, die_mm: the pieces of its tools. reason: why they are unusual ones, empty
    where they are not. station: where they stand, None without tools of the shop's own.
    """

    step: PlannedStep
    part: Part
    length_mm: float
    checks: tuple[Check, ...]
    clearance: Clearance | None
    reason: Sentence
    station: int | None
    punch_mm: tuple[float, ...] = ()
    die_mm: tuple[float, ...] = ()
    names: Names = PLAIN
    beside: BesideSides | None = None

    @property
    def number(self) -> int:
        """Its number in the whole part."""
        return self.names.step(self.step.operation.number)

    @property
    def bend(self) -> int:
        """The number of its bend in the whole part."""
        return self.names.bend(self.step.operation.bend)

    @property
    def fit(self) -> Fit | None:
        """The shop's own tools and what they give, None without."""
        return self.step.fit if self.step.owned else None

    @property
    def setting(self) -> Setting | None:
        """What to set; None without tools, or where they do not reach it."""
        one = self.fit
        return setting_of(one.bend, one.limits, self.step.first_hit) if one else None


@dataclass(frozen=True, slots=True)
class Finding:
    """A finding and the steps it was made in."""

    check: Check
    steps: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class BoxForm:
    """What a box has besides its sections."""

    box: Box
    shape: BoxShape
    blank: BoxBlank
    view: FoldedView


@dataclass(frozen=True, slots=True)
class Plan:
    """The set-up of a part. sections: one, or those of a box's pairs of sides in the order they
    are bent in. findings: the most serious first."""

    metal: Metal
    equipment: Equipment
    sections: tuple[Section, ...]
    steps: tuple[StepPlan, ...]
    order: OrderPlan
    stations: tuple[Station, ...]
    dimensions: tuple[Dimension, ...]
    findings: tuple[Finding, ...]
    form: BoxForm | None = None

    @property
    def worst(self) -> Level:
        """The most serious level."""
        return worst(one.check for one in self.findings)


def gathered(found: Iterable[tuple[Check, Sequence[int]]]) -> tuple[Finding, ...]:
    """Findings with their steps, the most serious first; what several steps share stands once."""
    by_words: dict[tuple[str, str], Finding] = {}
    for check, steps in found:
        key = (check.code, check.words)
        one = by_words.setdefault(key, Finding(check))
        by_words[key] = replace(one, steps=tuple(dict.fromkeys((*one.steps, *steps))))
    return tuple(sorted(by_words.values(), key=lambda one: -SEVERITY[one.check.level]))
