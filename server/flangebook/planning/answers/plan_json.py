"""A plan as the API gives it: the whole, its tools and its steps."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field

from flangebook import __version__
from flangebook.bending.prediction.correction import correction_table
from flangebook.bending.tools.tooling import Die, Holder, Punch
from flangebook.planning.answers.answer import (
    N_PER_KN,
    JsonDict,
    always_said,
    banded,
    check_json,
    checks_json,
    gauge_text,
    maybe,
    number,
    tools_reason_json,
)
from flangebook.planning.answers.bend_json import origins
from flangebook.planning.answers.blank_json import blank_json, section_json
from flangebook.planning.answers.box_json import beside_json, box_blank_json, folded_json
from flangebook.planning.answers.motion_json import motion_json
from flangebook.planning.answers.order_json import clearance_json, order_json
from flangebook.planning.answers.part_json import box_part_json, flat_names, part_json
from flangebook.planning.answers.setting_json import limits_json, rows_json, setting_json, within
from flangebook.planning.planned import Plan, StepPlan
from flangebook.planning.results.gauged_flange import flange_json
from flangebook.planning.steps.dimensions import dimensions_json, gauged_flat
from flangebook.planning.steps.drawing import drawing_json
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment
from flangebook.planning.tools.stations import stations_json


def plan_json(plan: Plan) -> JsonDict:
    """A plan, in the shape of ``POST /api/v1/plan``."""
    form, section = plan.form, plan.sections[0]
    sheet = blank_json(section, plan.metal) if form is None else box_blank_json(plan, form)
    checks = [{**check_json(one.check), "steps": list(one.steps)} for one in plan.findings]
    answer = {
        "title": section.part.title,
        "thickness_gauge": gauge_text(plan.metal, section.part.thickness_mm),
        "part": part_json(section.part) if form is None else box_part_json(form.box),
        "blank_length_mm": sheet["length_mm"],
        "blank_mass_kg": sheet["mass_kg"],
        "bend_lines_mm": [line["at_mm"] for line in sheet["bend_lines"]],
        "blank": sheet,
        "section": section_json(section),
        "tools": tools_json(plan.steps, plan.equipment),
        "order": order_json(plan.order),
        "stations": stations_json(plan.stations),
        "dimensions": dimensions_json(plan.dimensions),
        "steps": steps_json(plan.steps, plan.equipment),
        "checks": [*checks, *({**one, "steps": []} for one in always_said())],
        "worst": plan.worst,
        "engine": __version__,
    }
    if form is not None:
        answer["sections"] = [{"pair": one.pair, **section_json(one)} for one in plan.sections]
        answer["folded"] = folded_json(form.view)
        answer["flat_names"] = flat_names(form.box)
    return answer


def tools_json(steps: Sequence[StepPlan], equipment: Equipment) -> list[JsonDict]:
    """Every tool to fetch: where it lies, all pieces that the steps need of it, for which."""
    used: dict[tuple[str, str], _Used] = {}
    for step in steps:
        if step.fit is None:
            continue
        wanted: list[tuple[str, Punch | Die | Holder | None, Sequence[float]]] = [
            ("punch", step.fit.punch, step.punch_mm),
            ("die", step.fit.die, step.die_mm),
            ("holder", equipment.holder, ()),
        ]
        for kind, tool, pieces in wanted:
            if tool is not None and tool.code:
                one = used.setdefault((kind, tool.code), _Used(tool))
                one.pieces |= Counter(pieces)
                one.steps.append(step.number)
    return [_tool(kind, one) for (kind, _), one in used.items()]


@dataclass(slots=True)
class _Used:
    """A tool, the pieces of it that are needed together, and by which steps."""

    tool: Punch | Die | Holder
    pieces: Counter[float] = field(default_factory=Counter)
    steps: list[int] = field(default_factory=list)


def _tool(kind: str, used: _Used) -> JsonDict:
    tool, pieces = used.tool, sorted(used.pieces.elements(), reverse=True)
    return {
        "kind": kind,
        "code": tool.code,
        "name": tool.name,
        "tray": tool.place.tray,
        "slot": tool.place.slot,
        "condition": tool.condition,
        "condition_note": tool.condition_note,
        "segments_mm": [number(p) for p in pieces],
        "segments_total_mm": number(math.fsum(pieces)),
        "rating_kn_per_m": maybe(tool.rating_kn_per_m),
        "steps": used.steps,
    }


def steps_json(steps: Sequence[StepPlan], equipment: Equipment) -> list[JsonDict]:
    """All steps; steps with the same tools and angle share their table of corrections."""
    tables: dict[int, list[JsonDict]] = {}
    for one in steps:
        if id(one.step.fit) not in tables:
            tables[id(one.step.fit)] = corrections_json(one.step)
    return [step_json(one, equipment, tables[id(one.step.fit)]) for one in steps]


def step_json(one: StepPlan, equipment: Equipment, corrections: list[JsonDict]) -> JsonDict:
    """One step; what needs tools is null where the shop has none for it."""
    step, fit, names, holder = one.step, one.fit, one.names, equipment.holder
    operation, gauge, part = step.operation, step.gauge, one.part
    bend = fit.bend if fit is not None else None
    limits = fit.limits if fit is not None else None
    drawn = step.fit
    shown = operation.flattens or (drawn is not None and within(drawn.bend, drawn.limits))
    force = fit.force_n(one.length_mm) if fit is not None else None
    ways = one.clearance.ways if one.clearance else None
    flat = gauged_flat(part, step)
    return {
        "number": one.number,
        "bend": one.bend,
        "operation": operation.kind,
        "direction": operation.direction,
        "included_angle_deg": number(operation.included_angle_deg),
        "punch": fit.punch.code if fit else None,
        "punch_name": fit.punch.name if fit else None,
        "punch_turned": bool(fit and fit.punch.turned),
        "die": fit.die.code if fit else None,
        "die_name": fit.die.name if fit else None,
        "holder": holder.code if holder and fit else None,
        "v_opening_mm": number(fit.die.v_opening_mm) if fit else None,
        "station": one.station,
        "segments_mm": {
            "punch": [number(x) for x in one.punch_mm],
            "die": [number(x) for x in one.die_mm],
        },
        "gauge_x_mm": maybe(gauge.x_mm if gauge else None, 3),
        "gauge_r_mm": maybe(gauge.r_mm if gauge else None, 3),
        "gauge_draw_back_mm": maybe(gauge.retract_mm if gauge else None, 3),
        "gauged_end": step.end,
        "gauged_against": gauge.against if gauge else None,
        "gauges_flat": names.flat_number(flat) if flat is not None else None,
        "gauged_flange": flange_json(part, step, equipment, corrections),
        "inside_face": operation.direction,
        "turn_over": step.turn_over,
        "turn_end": step.turn_end,
        **setting_json(bend, limits, step.first_hit),
        "limits": limits_json(limits),
        **banded("springback_deg", bend.springback_deg if bend else None),
        **banded("force_kn", force, 1.0 / N_PER_KN),
        **banded("force_kn_per_m", force, 1.0 / one.length_mm),
        **banded("inside_radius_mm", bend.inside_radius_mm if bend else None),
        "min_flange_mm": maybe(bend.min_flange_mm if bend else None),
        "origin": origins(bend),
        "hits": _bumps(step),
        "corrections": corrections,
        **tools_reason_json(one.reason),
        # What drawing and motion show is the setting: without one there are none.
        "drawing": drawing_json(step.drawing, equipment, drawn) if shown else None,
        "motion": motion_json(step, equipment, ways) if shown else None,
        "clearance": clearance_json(one.clearance, names),
        "checks": checks_json(one.checks),
        **(beside_json(one.beside, one.length_mm) if one.beside else {}),
    }


def _bumps(step: PlannedStep) -> JsonDict | None:
    bumps = step.operation.bumps
    if bumps is None:
        return None
    return {
        "count": bumps.count,
        "pitch_mm": number(bumps.pitch_mm),
        "chord_error_mm": number(bumps.chord_error_mm),
        "angle_each_deg": number(bumps.angle_each_deg),
        "gauge_x_mm": [number(x, 3) for x in step.bump_x_mm],
    }


def corrections_json(step: PlannedStep) -> list[JsonDict]:
    """What to set after each angle that may be measured on the first piece."""
    one = step.fit
    if one is None or one.bend is None or not step.owned or step.operation.bumps is not None:
        return []
    if one.limits is None or not within(one.bend, one.limits):
        return []
    return rows_json(correction_table(one.bend, one.case, one.limits, start=step.first_hit))
