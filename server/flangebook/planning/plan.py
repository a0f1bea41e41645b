"""From a part to its set-up on this press with this crib.

A part that can be described always gets an answer: the blank and the reasons stand even where
a finding forbids the bend. Order and clearance are not proven here, and the answer says so.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from flangebook import __version__
from flangebook.bending import handling, section
from flangebook.bending.bend_checks import air_bending_only
from flangebook.bending.blank import blank
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
from flangebook.planning.operations import Operation, folded_by_rule, folded_to, operations
from flangebook.planning.plan_json import (
    blank_json,
    part_json,
    section_json,
    step_json,
    tools_json,
)
from flangebook.planning.step_checks import step_checks
from flangebook.planning.steps import Bench, PlannedStep, planned_steps
from flangebook.planning.tool_choice import (
    TOUCH_COST,
    Pair,
    Trials,
    choose_tools,
    here_of,
    shorter_run_mm,
)

MOST_ATTEMPTS = 5


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
    """One way to make the part: steps and how the bends come out."""

    steps: tuple[PlannedStep, ...]
    folded: tuple[FoldedBend, ...]

    @property
    def touching(self) -> int:
        """How many steps run into a tool as drawn."""
        return sum(bool(step.touches) for step in self.steps)


def _best_attempt(trials: Trials, steps: Sequence[Operation]) -> _Attempt:
    """Tools and ends chosen anew while a step runs into a tool as drawn; the best try stands."""
    against_pair: dict[tuple[int, Pair], float] = {}
    against_end: dict[tuple[int, End], float] = {}
    best: _Attempt | None = None
    for _ in range(MOST_ATTEMPTS):
        attempt = _attempt(trials, steps, against_pair, against_end)
        if best is None or attempt.touching < best.touching:
            best = attempt
        if not attempt.touching:
            break
        _learn(trials, attempt, against_pair, against_end)
    assert best is not None
    return best


def _learn(
    trials: Trials,
    attempt: _Attempt,
    against_pair: dict[tuple[int, Pair], float],
    against_end: dict[tuple[int, End], float],
) -> None:
    """Hold it against an end, then against a punch, that a step runs into a tool."""
    for step in attempt.steps:
        if not step.touches or step.fit is None:
            continue
        number_, end = step.operation.number, step.end
        if (number_, end) not in against_end:
            against_end[number_, end] = TOUCH_COST
        other: End = "left" if end == "right" else "right"
        if (number_, other) in against_end:
            del against_end[number_, end], against_end[number_, other]
            punch = step.fit.punch.code
            for pair in trials.for_step(step.operation):
                if pair[0] == punch:
                    against_pair[number_, pair] = TOUCH_COST


def _attempt(
    trials: Trials,
    steps: Sequence[Operation],
    against_pair: Mapping[tuple[int, Pair], float],
    against_end: Mapping[tuple[int, End], float],
) -> _Attempt:
    part = trials.part
    rough = folded_by_rule(part, trials.metal)
    fits = choose_tools(trials, steps, rough, against_pair)
    folded = _folded(trials, steps, fits)
    if _falls_short(part, folded, steps, fits):
        fits = choose_tools(trials, steps, folded, against_pair)
        folded = _folded(trials, steps, fits)
    bench = Bench(part, folded, trials.equipment)
    return _Attempt(tuple(planned_steps(bench, steps, fits, against_end)), folded)


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
    part, equipment, folded = trials.part, trials.equipment, attempt.folded
    sheet = blank(part, folded, trials.metal.density_kg_m3.nominal)
    by_step = [step_checks(step, trials, _flange(part, folded, step)) for step in attempt.steps]
    whole = _whole_checks(trials, order, attempt, sheet.mass_kg, sheet.length_mm)
    findings = [*whole, *(check for checks in by_step for check in checks)]
    return {
        "title": part.title,
        "part": part_json(part),
        "blank_length_mm": number(sheet.length_mm),
        "blank_mass_kg": number(sheet.mass_kg),
        "bend_lines_mm": [number(line.at_mm) for line in sheet.bend_lines],
        "blank": blank_json(sheet, trials.metal),
        "section": section_json(part, folded),
        "tools": tools_json(attempt.steps, equipment, part.bend_length_mm),
        "order": {
            "sequence": list(order.sequence),
            "rule": order.rule,
            "proven": order.proven,
            "words": order.words,
        },
        "steps": [
            step_json(step, equipment, checks)
            for step, checks in zip(attempt.steps, by_step, strict=True)
        ],
        "checks": _gathered([*findings, air_bending_only(), *handling.general_cautions()]),
        "worst": worst(findings),
        "engine": __version__,
    }


def _flange(part: Part, folded: Sequence[FoldedBend], step: PlannedStep) -> float | None:
    if step.fit is None:
        return None
    return shorter_run_mm(part, folded, step.operation, step.fit)


def _whole_checks(
    trials: Trials, order: Order, attempt: _Attempt, mass_kg: float, length_mm: float
) -> list[Check]:
    """What is to be said of the part and its order as a whole."""
    part, folded = trials.part, attempt.folded
    found = [
        *section.section_checks(part, folded),
        *distortion_checks(part, folded),
        *_offsets(part, attempt),
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
    if not all(step.owned or step.operation.flattens for step in attempt.steps):
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
        lifting = handling.lifting(mass_kg, max(length_mm, 0.0), part.bend_length_mm)
    except InputError:
        return found
    return found if lifting.level == "ok" else [*found, lifting]


def _offsets(part: Part, attempt: _Attempt) -> tuple[Check, ...]:
    """Offsets whose web the chosen dies cannot take; nothing where a bend has no die."""
    flanges = {
        step.operation.bend: step.fit.bend.min_flange_mm
        for step in attempt.steps
        if step.fit is not None and step.fit.bend is not None
    }
    if len(flanges) < len(part.bends):
        return ()
    return offset_checks(part, attempt.folded, [flanges[n] for n in range(1, len(part.bends) + 1)])


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
    general = lambda c: c.code.startswith("general-")  # noqa: E731
    ordered = sorted(by_words.values(), key=lambda x: (general(x[0]), severity[x[0].level]))
    return [{**check_json(check), "steps": steps} for check, steps in ordered]
