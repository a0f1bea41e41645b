"""What may go wrong in a step, with what to do about it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from flangebook.bending.checks import Check, Level, Sentence, joined
from flangebook.bending.handbook.hems import hem_checks
from flangebook.bending.motion.frames import FRAMES_CODE, reach_behind_mm
from flangebook.bending.motion.gauging import Gauge
from flangebook.bending.motion.handling import HANDS_CODE
from flangebook.bending.motion.holding import GAUGE_FINGERS_CODE
from flangebook.bending.motion.lying import Pressing
from flangebook.bending.part import bump_bends
from flangebook.bending.part.part import Part
from flangebook.bending.prediction.bend_checks import LARGE_TIP_OVER_V, flange_length
from flangebook.bending.tools.tooling import Press
from flangebook.planning.steps.deflection_checks import DEFLECTION_CODE, deflection_checks
from flangebook.planning.steps.drawing import not_drawn
from flangebook.planning.steps.hand_checks import hand_checks
from flangebook.planning.steps.operations import Operation
from flangebook.planning.steps.steps import PlannedStep, hem_end
from flangebook.planning.tools.fit import Equipment, Fit, said_by_results
from flangebook.planning.tools.press_fit import press_checks
from flangebook.planning.tools.stand_ins import assumed_checks
from flangebook.planning.tools.tool_choice import ToolChoice

MOST_NAMED = 4
NOTES = {FRAMES_CODE, HANDS_CODE, GAUGE_FINGERS_CODE, DEFLECTION_CODE}
"""Codes of findings that a step shows even where nothing is wrong: they say how to do it."""
FLANGE_CODES = ("flange-too-short", "flange-close")


@dataclass(frozen=True, slots=True)
class Flange:
    """The shorter straight run beside a bend line. beyond_mm: what a finished bend at its end adds
    to make up the flat as the part dimensions it [mm]."""

    run_mm: float
    beyond_mm: float = 0.0


def step_checks(step: PlannedStep, choice: ToolChoice, flange: Flange | None) -> tuple[Check, ...]:
    """Every finding of a step that is not plain "ok", and the notes on how to do it.

    flange: None when not known.
    """
    if step.operation.flattens:
        found: Iterable[Check] = (_flattening(),)
    else:
        found = _bending(step, choice, flange)
    operation = step.operation
    return tuple(c.at(step=operation.number, bend=operation.bend) for c in found if _said(c))


def _said(check: Check) -> bool:
    return check.level != "ok" or (check.code in NOTES and bool(check.do))


def _bending(step: PlannedStep, choice: ToolChoice, flange: Flange | None) -> Iterator[Check]:
    equipment, one = choice.equipment, step.fit
    assert one is not None
    yield from _missing(equipment)
    full = one.with_flange(flange.run_mm if flange is not None else None)
    for check in full.checks:
        if flange is not None and check.code in FLANGE_CODES:
            yield _naming_dies(check, step, choice, flange)
        else:
            yield check
    yield from assumed_checks(one.die, one.punch, None if one.bend is None else equipment.press)
    yield from press_checks(one, equipment, _behind_mm(step, equipment))
    yield from deflection_checks(one, equipment.press, step.operation.bumps is not None)
    yield from said_by_results(one, equipment)
    yield from _hem(step, choice.part)
    yield from _bumps(step, one)
    yield from _gauging(step, equipment)
    yield from _running_into(step)
    yield from hand_checks(step, equipment)


def _behind_mm(step: PlannedStep, equipment: Equipment) -> float | None:
    """How far a sheet longer than the space between the frames reaches behind the tools [mm]."""
    press, moves = equipment.press, step.drawing.moves if step.drawing else None
    if press is None or step.fit is None or not isinstance(moves, Pressing):
        return None
    between = press.between_frames_mm if press.knows("between_frames_mm") else 0.0
    if step.fit.wanted.bend_length_mm <= between:
        return None
    return reach_behind_mm(moves)


def _missing(equipment: Equipment) -> Iterator[Check]:
    for kind, owned in (("die", equipment.crib.dies), ("punch", equipment.crib.punches)):
        if not owned:
            plural = "dies" if kind == "die" else "punches"
            yield Check(
                "stop",
                f"no-{kind}",
                f"The crib has no {plural}: angle, depth and force cannot be given.",
                f"Enter the {plural} the shop owns.",
            )


def _naming_dies(check: Check, step: PlannedStep, choice: ToolChoice, flange: Flange) -> Check:
    """The finding on a flange, in the part's own dimension, naming the dies that would take it."""
    numbers = {name: mm + flange.beyond_mm for name, mm in check.numbers.items()}
    check = replace(check, numbers=numbers)
    fits = _would_do(choice, step.operation)
    level = {one.die.code: _flange_level(one, flange) for one in fits}
    fine = [one.die for one in fits if level[one.die.code] == "ok"]
    if check.level == "stop":
        fine = fine or [one.die for one in fits if level[one.die.code] != "stop"]
    codes = [die.code for die in sorted(fine, key=lambda d: (-d.v_opening_mm, d.code))]
    if codes:
        return replace(check, do=f"Die {' or '.join(codes[:MOST_NAMED])} would take it.")
    if check.level != "stop":
        do = "No die of the crib takes it better. Gauge exactly, and watch for a marked edge."
        return replace(check, do=do)
    least = least_flange_mm(choice, step.operation)
    if least is None:
        return check
    do = "No die of the crib takes it: make the flange {least_mm} or longer, or get a narrower V."
    return replace(check, do=do, numbers={**numbers, "least_mm": least + flange.beyond_mm})


def _would_do(choice: ToolChoice, operation: Operation) -> list[Fit]:
    """The best tools of each die that makes the bend, flanges apart."""
    candidates = choice.for_step(operation)
    options = candidates.options(choice.dies(operation.included_angle_deg))
    return [one for _, one in options if one.bend is not None and not one.stops]


def _flange_level(one: Fit, flange: Flange) -> Level:
    assert one.bend is not None
    return flange_length(flange.run_mm, one.bend.min_flange_mm).level


def least_flange_mm(choice: ToolChoice, operation: Operation) -> float | None:
    """The shortest flange that a die of the crib takes for a step [mm]; None where none does."""
    mins = [one.bend.min_flange_mm for one in _would_do(choice, operation) if one.bend is not None]
    return min(mins, default=None)


def _hem(step: PlannedStep, part: Part) -> tuple[Check, ...]:
    operation = step.operation
    if operation.kind != "hem pre-bend":
        return ()
    flat = 0 if hem_end(part, operation.bend) == "left" else -1
    bend = part.bends[operation.bend - 1]
    angle = operation.included_angle_deg
    return hem_checks(bend, part.flats_mm[flat], part.thickness_mm, angle)


def _flattening() -> Check:
    return Check(
        "unknown",
        "hem-flattening",
        "Flattening the hem takes several times the bending force, and no flattening tool is "
        "kept in the crib: its load is not checked.",
        "Use a flattening tool within its own rating and the press's; never a V die's edge.",
    )


def _bumps(step: PlannedStep, one: Fit) -> Iterator[Check]:
    bumps, whole_mm = step.operation.bumps, one.wanted.bump_of_mm
    if bumps is None or whole_mm is None:
        return
    yield Check(
        "caution",
        "stepped-radius",
        f"The radius is larger than the tools give: it is made in {bumps.count} bumps, "
        "{pitch_mm} apart, {each_deg} each. Errors of the bumps add up.",
        "Try the angle of a few bumps on a scrap of the same sheet first. In one stroke a V of "
        "about {stroke_v_mm} would make it, or a punch with a tip of {whole_mm} in a V of "
        "{v_for_tip_mm} or more.",
        {
            "pitch_mm": bumps.pitch_mm,
            "each_deg": bumps.angle_each_deg,
            "whole_mm": whole_mm,
            "stroke_v_mm": whole_mm / one.wanted.metal.radius_over_v.nominal,
            "v_for_tip_mm": whole_mm / LARGE_TIP_OVER_V,
        },
    )
    yield from bump_bends.step_checks(bumps, one.die.v_opening_mm)


def _gauging(step: PlannedStep, equipment: Equipment) -> Iterator[Check]:
    if equipment.press is None:
        return
    if step.gauge is None:
        reason = joined(" ", step.no_gauge) if step.no_gauge else Sentence("")
        yield Check(
            "caution",
            "no-gauge",
            f"The back gauge cannot be used at either end here.{reason.template}",
            "Bend to a scribed line, or use another order.",
            reason.numbers,
        )
        return
    yield from _travel_unknown(step.gauge, equipment.press)
    lowest = min(step.bump_x_mm, default=step.gauge.x_mm)
    if lowest < equipment.press.gauge_x_min_mm:
        yield Check(
            "caution",
            "gauge-too-near",
            "The last hit needs the gauge at {x_mm}, nearer than its {least_mm}.",
            "Make the last bumps to a scribed line.",
            {"x_mm": lowest, "least_mm": equipment.press.gauge_x_min_mm},
        )
    if step.gauge.rounded:
        yield Check(
            "caution",
            "gauge-on-round",
            "The gauge stands against the round of a finished bend, which is less sure than an "
            "edge.",
            "Measure the first piece.",
        )


def _travel_unknown(gauge: Gauge, press: Press) -> Iterator[Check]:
    """Whether the back gauge goes where it is to stand, where its travel is not on record."""
    places = {
        "X {x_mm}": ("gauge_x_min_mm", "gauge_x_max_mm"),
        "R {r_mm}": ("gauge_r_min_mm", "gauge_r_max_mm"),
    }
    axes = [place for place, ends in places.items() if not press.knows(*ends)]
    if axes:
        yield Check(
            "unknown",
            "gauge-travel-unknown",
            "How far the back gauge goes is not on record: whether it reaches "
            f"{' and '.join(axes)} is not known.",
            "Look whether its fingers get there, by hand where it has no motor; else bend to a "
            "scribed line. To know it beforehand, measure the travel and enter it with the press.",
            {"x_mm": gauge.x_mm, "r_mm": gauge.r_mm},
        )


def _running_into(step: PlannedStep) -> Iterator[Check]:
    for name, pose in step.touches:
        when = "before the bend" if pose == "before" else "at the end of the bend"
        yield Check(
            "stop",
            f"runs-into-{name}",
            f"As drawn, the sheet runs into the {name} {when}.",
            "Try another order, a punch with more room behind its tip, or other tools.",
        )
    if step.refused:
        yield not_drawn(step.refused)
