"""From a part to its set-up on this press with this crib.

A part that can be described always gets an answer: the blank and the reasons stand even where
a finding forbids the bend. The order is searched for with the shop's own press and tools, and
what is not shown to be clear is said to be so.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError, MissingToolError
from flangebook.bending.motion import handling
from flangebook.bending.part import section
from flangebook.bending.part.blank import Blank, blank
from flangebook.bending.part.holes import distortion_checks
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.offsets import offset_checks, offsets_in
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, setbacks_mm
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.answers.plan_json import plan_json
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order.said import (
    Clearance,
    clearance_checks,
    clearances,
    order_checks,
    order_plan,
)
from flangebook.planning.order.search import Searched, searched_order
from flangebook.planning.planned import Plan, Section, StepPlan, gathered
from flangebook.planning.results.evidence import Evidence
from flangebook.planning.steps.dimensions import dimension_checks, dimensions
from flangebook.planning.steps.operations import beyond_run_mm
from flangebook.planning.steps.step_checks import Flange, least_flange_mm, step_checks
from flangebook.planning.steps.steps import PlannedStep, planned_steps
from flangebook.planning.tools.assumed_sizes import assumed_clearance, assumed_outlines
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.named_tools import need_tools, without_tools_left_out
from flangebook.planning.tools.sound_tools import sound_crib
from flangebook.planning.tools.stations import Station, station_checks, stations
from flangebook.planning.tools.step_tools import ToolReasons
from flangebook.planning.tools.tool_choice import ToolChoice, shorter_run_mm


def plan(
    part: Part,
    press: Press | None,
    crib: Crib,
    metals: Mapping[str, Metal],
    evidence: Evidence | None = None,
    limits: PlanLimits | None = None,
) -> JsonDict:
    """The set-up of a part, in the shape of ``POST /api/v1/plan``; raises as ``planned``."""
    return plan_json(planned(part, press, crib, metals, evidence, limits))


def planned(
    part: Part,
    press: Press | None,
    crib: Crib,
    metals: Mapping[str, Metal],
    evidence: Evidence | None = None,
    limits: PlanLimits | None = None,
) -> Plan:
    """The set-up of a part.

    evidence: of the part's metal; None where the shop has none. limits: how long the search for
    the order may take, and whether it is still wanted.

    Raises:
        InputError, NotAPartError: the part cannot be read or cannot exist.
        MissingToolError: there is no metal of that code.
    """
    section.check_part(part)
    metal = find_metal(metals, part.metal)
    part.order_limits.check(len(part.bends))
    need_tools(part, crib)
    sound, left_out = sound_crib(crib)
    part = without_tools_left_out(part, sound)
    choice = ToolChoice(part, metal, Equipment(press, sound, evidence, left_out))
    limits = (limits or PlanLimits()).begun()
    return _planned(choice, searched_order(choice, part.order_limits, limits), limits)


def find_metal(metals: Mapping[str, Metal], code: str, where: str = "metal") -> Metal:
    """The metal of that code.

    Raises:
        MissingToolError: there is none.
    """
    if code in metals:
        return metals[code]
    known = ", ".join(list(metals)[:20])
    right = f"Use one of: {known}." if known else "Enter a metal first."
    raise MissingToolError(f"There is no metal {code!r}.", where, right)


def _planned(choice: ToolChoice, searched: Searched, limits: PlanLimits) -> Plan:
    attempt = searched.attempt
    part, equipment, folded = choice.part, choice.equipment, attempt.maker.folded
    steps = planned_steps(attempt.maker, attempt.steps, attempt.fits, attempt.ends)
    sheet = blank(part, folded, choice.metal.density_kg_m3.nominal)
    order = order_plan(choice, searched, limits)
    clear = clearances(part, searched, steps)
    standing = tuple(stations(steps, equipment, part.bend_length_mm))
    reasons = ToolReasons(choice, searched, folded, limits)
    made = tuple(
        _step(step, choice, folded, said, standing, reasons)
        for step, said in zip(steps, clear, strict=True)
    )
    sizes = dimensions(part, equipment.press, searched, steps)
    whole = [
        *order_checks(searched, order),
        *_assumed(clear, attempt.fits, equipment),
        *equipment.left_out,
        *_whole_checks(choice, folded, steps, sheet),
        *station_checks(standing),
        *dimension_checks(sizes),
    ]
    findings = gathered(
        [
            *((check, ()) for check in whole),
            *((check, (one.number,)) for one in made for check in one.checks),
        ]
    )
    section = Section(part, tuple(folded), sheet, tuple(attempt.fits))
    return Plan(choice.metal, equipment, (section,), made, order, standing, sizes, findings)


def _assumed(
    clear: Sequence[Clearance | None], fits: Sequence[Fit | None], equipment: Equipment
) -> list[Check]:
    """What clearance is counted with and nobody has measured, where it was looked at."""
    looked = any(clear)
    return assumed_clearance(assumed_outlines(fits, equipment)) if looked else []


def _step(
    step: PlannedStep,
    choice: ToolChoice,
    folded: Sequence[FoldedBend],
    clearance: Clearance | None,
    standing: Sequence[Station],
    reasons: ToolReasons,
) -> StepPlan:
    part, operation = choice.part, step.operation
    checks = (
        *step_checks(step, choice, _flange(part, folded, step)),
        *(
            check.at(step=operation.number, bend=operation.bend)
            for check in clearance_checks(clearance, step)
        ),
    )
    station = next((s for s in standing if operation.number in s.steps), None)
    return StepPlan(
        step,
        part,
        part.bend_length_mm,
        checks,
        clearance,
        reasons.of(step),
        station.number if station else None,
        station.punch_segments_mm if station else (),
        station.die_segments_mm if station else (),
    )


def _flange(part: Part, folded: Sequence[FoldedBend], step: PlannedStep) -> Flange | None:
    if step.fit is None:
        return None
    run = shorter_run_mm(part, folded, step.operation, step.fit)
    return None if run is None else Flange(run, beyond_run_mm(part, folded, step.operation))


def _whole_checks(
    choice: ToolChoice,
    folded: Sequence[FoldedBend],
    steps: Sequence[PlannedStep],
    sheet: Blank,
) -> list[Check]:
    """What is to be said of the part and its order as a whole."""
    part = choice.part
    found = [
        *section.section_checks(part, folded),
        *distortion_checks(part, folded),
        *_offsets(choice, folded, steps),
    ]
    if not all(step.owned or step.operation.flattens for step in steps):
        found.append(
            Check(
                "unknown",
                "blank-by-rule",
                "Where no tools are chosen, the blank is counted with the inside radius of the "
                "nominal V nearest to 8 times the thickness.",
                "Plan again when the tools are entered: the blank will change.",
            )
        )
    try:
        lifting = handling.lifting(sheet.mass_kg, sheet.length_mm, part.bend_length_mm)
    except InputError:
        return found
    return found if lifting.level == "ok" else [*found, lifting]


def _offsets(
    choice: ToolChoice, folded: Sequence[FoldedBend], steps: Sequence[PlannedStep]
) -> tuple[Check, ...]:
    """Offsets whose web no die of the crib can take; nothing where a bend has no die.

    The bend made first takes up the end of the web, as in the finding on the flange.
    """
    part = choice.part
    takes = setbacks_mm(part, folded)
    if _tools_take_the_webs(part, folded, steps, takes):
        return ()
    webs: dict[int, float] = {}
    for step in steps:
        least = least_flange_mm(choice, step.operation) if step.owned else None
        if least is not None:
            webs[step.operation.bend] = least + takes[step.operation.bend - 1]
    if len(webs) < len(part.bends):
        return ()
    return offset_checks(part, folded, [webs[n] for n in range(1, len(part.bends) + 1)])


def _tools_take_the_webs(
    part: Part, folded: Sequence[FoldedBend], steps: Sequence[PlannedStep], takes: Sequence[float]
) -> bool:
    """Whether the tools chosen take each offset's web; then no other die has to be tried."""
    offsets = offsets_in(part, folded)
    bends = {n for offset in offsets for n in (offset.bend, offset.bend + 1)}
    least = {
        step.operation.bend: step.fit.bend.min_flange_mm + takes[step.operation.bend - 1]
        for step in steps
        if step.operation.bend in bends and step.fit and step.fit.bend and not step.fit.stops
    }
    return least.keys() == bends and all(
        part.flats_mm[offset.bend] >= max(least[offset.bend], least[offset.bend + 1])
        for offset in offsets
    )
