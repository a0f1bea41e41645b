"""From a part to its set-up on this press with this crib.

A part that can be described always gets an answer: the blank and the reasons stand even where
a finding forbids the bend. Order and clearance are not proven here, and the answer says so.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from flangebook import __version__
from flangebook.bending import handling, section
from flangebook.bending.bend_checks import air_bending_only
from flangebook.bending.blank import Blank, blank
from flangebook.bending.checks import Check, worst
from flangebook.bending.distortion import distortion_checks
from flangebook.bending.errors import InputError, MissingToolError
from flangebook.bending.gauging import End
from flangebook.bending.hems import hem
from flangebook.bending.metals import Metal
from flangebook.bending.offsets import offset_checks
from flangebook.bending.order import Order, order_for
from flangebook.bending.part import Part
from flangebook.bending.section import FoldedBend
from flangebook.bending.tooling import Crib, Press
from flangebook.planning.answer import JsonDict, check_json, number
from flangebook.planning.fit import Equipment, Fit
from flangebook.planning.gauge_choice import ENDS
from flangebook.planning.operations import Operation, folded_by_rule, folded_to, operations
from flangebook.planning.plan_json import (
    blank_json,
    part_json,
    section_json,
    steps_json,
    tools_json,
)
from flangebook.planning.step_checks import step_checks
from flangebook.planning.steps import Bench, PlannedStep, chosen_ends, planned_steps
from flangebook.planning.tool_choice import (
    Pair,
    Trials,
    choose_tools,
    here_of,
    shorter_run_mm,
)

MOST_ATTEMPTS = 4
MOST_TRIED = 6


def plan(part: Part, press: Press | None, crib: Crib, metals: Mapping[str, Metal]) -> JsonDict:
    """The set-up of a part, in the shape of ``POST /api/v1/plan``.

    Raises:
        InputError, NotAPartError: the part cannot be read or cannot exist.
        MissingToolError: there is no metal of that code.
    """
    section.check_part(part)
    metal = find_metal(metals, part.metal)
    order = order_for(part)
    trials = Trials(part, metal, Equipment(press, crib))
    steps = operations(part, metal, crib, order.sequence, trials.largest_radius_mm())
    return _answer(trials, order, _best_attempt(trials, steps))


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


@dataclass(frozen=True, slots=True)
class _Attempt:
    """One way to make the part: the tools of each step and the end at the gauge."""

    bench: Bench
    steps: tuple[Operation, ...]
    fits: tuple[Fit | None, ...]
    ends: tuple[End, ...]

    @property
    def troubled(self) -> dict[int, float]:
        """The steps that run into a tool as drawn or cannot be gauged, with what it weighs."""
        found = {}
        for step, one, end in zip(self.steps, self.fits, self.ends, strict=True):
            if one is not None and one.bend is not None:
                cost = self.bench.trouble_cost(step, one, end)
                if cost:
                    found[step.number] = cost
        return found


def _best_attempt(trials: Trials, steps: Sequence[Operation]) -> _Attempt:
    """Tools and ends chosen anew while steps are in trouble; the best try stands."""
    against: dict[tuple[int, Pair], float] = {}
    doubtful: set[int] = set()
    benches: dict[tuple[FoldedBend, ...], Bench] = {}
    best: tuple[float, _Attempt] | None = None
    for _ in range(MOST_ATTEMPTS):
        attempt = _attempt(trials, steps, against, doubtful, benches)
        troubled = attempt.troubled
        weight = sum(troubled.values())
        if best is None or weight < best[0]:
            best = (weight, attempt)
        new = set(troubled) - doubtful
        if not new:
            break
        doubtful |= new
        for step, one in zip(steps, attempt.fits, strict=True):
            if step.number in new and one is not None:
                _hold_against(trials, attempt.bench, step, one, against)
    assert best is not None
    return best[1]


def _hold_against(
    trials: Trials,
    bench: Bench,
    step: Operation,
    chosen: Fit,
    against: dict[tuple[int, Pair], float],
) -> None:
    """Hold against punches and dies what trouble they make in a step, whichever end is back.

    Of each kind the likeliest are tried, the other kind staying as chosen, up to the first
    one without trouble.
    """
    fits = trials.for_step(step)
    touched = {name for end in ENDS for name, _ in bench.pose(step, chosen, end).touches}
    for which, code, other in (
        (0, chosen.punch.code, chosen.die.code),
        (1, chosen.die.code, chosen.punch.code),
    ):
        below = {"die", "bed"}
        if not (touched & below if which == 1 else touched - below or not touched):
            continue
        alike = sorted((fits[p][0], p) for p in fits if p[1 - which] == other)
        for _, pair in alike[:MOST_TRIED]:
            one = fits[pair][1]
            if one.bend is None or (one.stops and pair[which] != code):
                continue
            least = min(bench.trouble_cost(step, one, end) for end in ENDS)
            for held in (p for p in fits if p[which] == pair[which]):
                against[step.number, held] = against.get((step.number, held), 0.0) + least
            if not least:
                break


def _attempt(
    trials: Trials,
    steps: Sequence[Operation],
    against: Mapping[tuple[int, Pair], float],
    doubtful: Collection[int],
    benches: dict[tuple[FoldedBend, ...], Bench],
) -> _Attempt:
    part = trials.part
    fits = choose_tools(trials, steps, folded_by_rule(part, trials.metal), against)
    folded = _folded(trials, steps, fits)
    if _falls_short(part, folded, steps, fits):
        fits = choose_tools(trials, steps, folded, against)
        folded = _folded(trials, steps, fits)
    bench = benches.setdefault(folded, Bench(part, folded, trials.equipment))
    ends = chosen_ends(bench, steps, fits, doubtful)
    return _Attempt(bench, tuple(steps), tuple(fits), tuple(ends))


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


def _folded(
    trials: Trials, steps: Sequence[Operation], fits: Sequence[Fit | None]
) -> tuple[FoldedBend, ...]:
    """How each bend comes out of the tools chosen; by rule where none could be predicted."""
    part = trials.part
    folded = list(folded_by_rule(part, trials.metal))
    for step, one in zip(steps, fits, strict=True):
        bend = part.bends[step.bend - 1]
        if bend.kind != "bend":
            folded[step.bend - 1] = hem(bend, part.thickness_mm).folded
        elif step.hits is not None and bend.inside_radius_mm:
            folded[step.bend - 1] = folded_to(part, bend, trials.metal, bend.inside_radius_mm)
        elif one is not None and one.bend is not None:
            folded[step.bend - 1] = here_of(one)
    return tuple(folded)


def _answer(trials: Trials, order: Order, attempt: _Attempt) -> JsonDict:
    part, equipment, folded = trials.part, trials.equipment, attempt.bench.folded
    steps = planned_steps(attempt.bench, attempt.steps, attempt.fits, attempt.ends)
    sheet = blank(part, folded, trials.metal.density_kg_m3.nominal)
    by_step = [step_checks(step, trials, _flange(part, folded, step)) for step in steps]
    whole = _whole_checks(trials, order, folded, steps, sheet)
    findings = [*whole, *(check for checks in by_step for check in checks)]
    return {
        "title": part.title,
        "part": part_json(part),
        "blank_length_mm": number(sheet.length_mm),
        "blank_mass_kg": number(sheet.mass_kg),
        "bend_lines_mm": [number(line.at_mm) for line in sheet.bend_lines],
        "blank": blank_json(sheet, trials.metal),
        "section": section_json(part, folded),
        "tools": tools_json(steps, equipment, part.bend_length_mm),
        "order": {
            "sequence": list(order.sequence),
            "rule": order.rule,
            "proven": order.proven,
            "words": order.words,
        },
        "steps": steps_json(steps, equipment, by_step),
        "checks": _gathered([*findings, air_bending_only(), *handling.general_cautions()]),
        "worst": worst(findings),
        "engine": __version__,
    }


def _flange(part: Part, folded: Sequence[FoldedBend], step: PlannedStep) -> float | None:
    if step.fit is None:
        return None
    return shorter_run_mm(part, folded, step.operation, step.fit)


def _whole_checks(
    trials: Trials,
    order: Order,
    folded: Sequence[FoldedBend],
    steps: Sequence[PlannedStep],
    sheet: Blank,
) -> list[Check]:
    """What is to be said of the part and its order as a whole."""
    part = trials.part
    found = [
        *section.section_checks(part, folded),
        *distortion_checks(part, folded),
        *_offsets(part, folded, steps),
    ]
    if not order.proven:
        found.append(
            Check(
                "caution",
                "clearance-not-checked",
                "Clearance is not checked: whether the part clears punch, holder, ram, die and "
                "gauge through every stroke is for you to see.",
                "Walk through the steps with the drawings, then with a scrap piece, slowly.",
            )
        )
    if not all(step.owned or step.operation.flattens for step in steps):
        found.append(
            Check(
                "unknown",
                "blank-by-rule",
                "Where no tools are chosen, the blank is counted with the inside radius of the "
                "nominal V nearest to 8 t.",
                "Plan again when the tools are entered: the blank will change.",
            )
        )
    try:
        lifting = handling.lifting(sheet.mass_kg, sheet.length_mm, part.bend_length_mm)
    except InputError:
        return found
    return found if lifting.level == "ok" else [*found, lifting]


def _offsets(
    part: Part, folded: Sequence[FoldedBend], steps: Sequence[PlannedStep]
) -> tuple[Check, ...]:
    """Offsets whose web the chosen dies cannot take; nothing where a bend has no die."""
    flanges = {
        step.operation.bend: step.fit.bend.min_flange_mm
        for step in steps
        if step.fit is not None and step.fit.bend is not None
    }
    if len(flanges) < len(part.bends):
        return ()
    return offset_checks(part, folded, [flanges[n] for n in range(1, len(part.bends) + 1)])


def _gathered(checks: Sequence[Check]) -> list[JsonDict]:
    """All findings, the most serious first; what several steps share is said once.

    ``steps`` lists every step a finding was made in.
    """
    severity = {"stop": 0, "caution": 1, "unknown": 2, "ok": 3}
    by_words: dict[tuple[str, str], tuple[Check, list[int]]] = {}
    for check in checks:
        key = (check.code, check.words)
        first, steps = by_words.setdefault(key, (check, []))
        if check.step is not None:
            steps.append(check.step)
        by_words[key] = (first, steps)
    ordered = sorted(
        by_words.values(), key=lambda x: (x[0].code.startswith("general-"), severity[x[0].level])
    )
    return [{**check_json(check), "steps": steps} for check, steps in ordered]
