"""A plan's parts as the API gives them: the part, the blank, the section, tools and steps."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from flangebook.bending.checks import Check
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.geometry.strip import bend_points, centre_line, outline
from flangebook.bending.part.blank import Blank
from flangebook.bending.part.dimension_lines import dimension_lines
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.order_limits import Wishes
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, strip_of
from flangebook.bending.prediction.correction import correction_table
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.tools.segments import segments_for
from flangebook.bending.tools.tooling import Die, Holder, Punch
from flangebook.planning.answers.answer import (
    N_PER_KN,
    JsonDict,
    banded,
    checks_json,
    maybe,
    number,
    ring_json,
    tools_reason_json,
)
from flangebook.planning.answers.bend_json import allowance_opinions, origins
from flangebook.planning.answers.motion_json import motion_json
from flangebook.planning.answers.order_json import Clearance, clearance_json
from flangebook.planning.answers.setting_json import limits_json, rows_json, setting_json, within
from flangebook.planning.order.ways import Ways
from flangebook.planning.results.gauged_flange import flange_json
from flangebook.planning.steps.dimensions import gauged_flat
from flangebook.planning.steps.drawing import drawing_json
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.stations import Station
from flangebook.planning.tools.step_tools import ToolReasons

SAME_ALLOWANCE_MM = 0.1
"""Sources that agree within this are one opinion [mm a bend]."""


def part_json(part: Part) -> JsonDict:
    """The part as understood, in the shape it was asked in."""
    return {
        "title": part.title,
        "metal": part.metal,
        "thickness_mm": part.thickness_mm,
        "bend_length_mm": part.bend_length_mm,
        "flats_mm": list(part.flats_mm),
        "bends": [
            {
                "included_angle_deg": bend.included_angle_deg,
                "direction": bend.direction,
                "inside_radius_mm": bend.inside_radius_mm,
                "kind": bend.kind,
                "hem_gap_mm": bend.hem_gap_mm,
                "die": bend.die,
                "punch": bend.punch,
            }
            for bend in part.bends
        ],
        "dimension": part.dimension,
        "order": list(part.order) if part.order is not None else None,
        "holes": [
            {"flat": h.flat, "position_mm": h.position_mm, "diameter_mm": h.diameter_mm}
            for h in part.holes
        ],
        "grain": part.grain,
        "wishes": wishes_json(part.wishes),
        "tools": {"die": part.die, "punch": part.punch},
        "box": None,
    }


def wishes_json(wishes: Wishes) -> JsonDict:
    """What is wished of the order."""
    return {
        "first": wishes.first,
        "last": wishes.last,
        "no_turn_over": wishes.no_turn_over,
        "no_turn_end": wishes.no_turn_end,
        "one_set_up": wishes.one_set_up,
        "critical_flats": list(wishes.critical_flats),
        "margin_mm": wishes.margin_mm,
    }


def blank_json(blank: Blank, metal: Metal, fits: Sequence[Fit | None]) -> JsonDict:
    """The blank and its bend lines, with the sources' opinions where they differ.

    fits: of its steps; they know which pieces of the metal the deductions rest on.
    """
    lines = []
    for line in blank.bend_lines:
        arc = math.radians(180.0 - line.included_angle_deg)
        k = (line.allowance_mm / arc - line.inside_radius_mm) / blank.thickness_mm
        lines.append(
            {
                "bend": line.bend,
                "at_mm": number(line.at_mm),
                "included_angle_deg": number(line.included_angle_deg),
                "direction": line.direction,
                "inside_radius_mm": number(line.inside_radius_mm),
                "bend_allowance_mm": number(line.allowance_mm),
                "bend_deduction_mm": number(line.deduction_mm),
                "k_factor": number(k),
                "opinions": _opinions(
                    metal,
                    line.included_angle_deg,
                    line.inside_radius_mm,
                    blank.thickness_mm,
                    line.allowance_mm,
                ),
            }
        )
    return {
        "length_mm": number(blank.length_mm),
        "length_mm_low": number(blank.length_low_mm),
        "length_mm_high": number(blank.length_high_mm),
        "width_mm": number(blank.width_mm),
        "mass_kg": number(blank.mass_kg),
        "sum_check_mm": number(blank.sum_check_mm, 6),
        "bend_lines": lines,
        "rests_on": _rests_on(fits),
    }


def _rests_on(fits: Iterable[Fit | None]) -> str:
    for one in fits:
        if one is not None and one.bend is not None:
            taken = one.bend.bend_deduction_mm
            if taken.origin == "your test bends":
                return taken.basis
    return ""


def _opinions(
    metal: Metal, angle_deg: float, radius_mm: float, thickness_mm: float, own_mm: float
) -> list[JsonDict]:
    """What the sources say, if any differs from the plan's allowance by more than a little."""
    if angle_deg <= 0.0:
        return []
    said = allowance_opinions(metal, angle_deg, radius_mm, thickness_mm)
    differs = any(abs(one["bend_allowance_mm"] - own_mm) > SAME_ALLOWANCE_MM for one in said)
    return said if differs else []


def section_json(part: Part, folded: Sequence[FoldedBend]) -> JsonDict:
    """The finished section, part frame."""
    strip = strip_of(part, folded)
    ring = outline(strip)
    left, bottom, right, top = bounds(ring)
    return {
        "outline": ring_json(ring),
        "centre_line": ring_json(centre_line(strip)),
        "bend_points": ring_json(bend_points(strip)),
        "dimensions": [ring_json(line) for line in dimension_lines(part, folded)],
        "width_mm": number(right - left),
        "height_mm": number(top - bottom),
    }


def tools_json(
    steps: Sequence[PlannedStep], equipment: Equipment, bend_length_mm: float
) -> list[JsonDict]:
    """Every tool to fetch: where it lies, which pieces of it, for which steps."""
    used: dict[tuple[str, str], tuple[Punch | Die | Holder, list[int]]] = {}
    for step in steps:
        if step.fit is None or not step.owned:
            continue
        wanted: list[tuple[str, Punch | Die | Holder | None]] = [
            ("punch", step.fit.punch),
            ("die", step.fit.die),
            ("holder", equipment.holder),
        ]
        for kind, tool in wanted:
            if tool is not None and tool.code:
                used.setdefault((kind, tool.code), (tool, []))[1].append(step.operation.number)
    return [
        _tool(kind, tool, numbers, bend_length_mm) for (kind, _), (tool, numbers) in used.items()
    ]


def _tool(
    kind: str, tool: Punch | Die | Holder, steps: list[int], bend_length_mm: float
) -> JsonDict:
    pieces: tuple[float, ...] = ()
    if not isinstance(tool, Holder):
        pieces = segments_for(tool.segments_mm, bend_length_mm) or ()
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
        "steps": steps,
    }


def steps_json(
    part: Part,
    steps: Sequence[PlannedStep],
    equipment: Equipment,
    checks: Sequence[Iterable[Check]],
    clear: Sequence[Clearance | None],
    standing: Sequence[Station],
    reasons: ToolReasons,
) -> list[JsonDict]:
    """All steps; steps with the same tools and angle share their table of corrections."""
    tables: dict[int, list[JsonDict]] = {}
    found = []
    for step, said, clearance in zip(steps, checks, clear, strict=True):
        if id(step.fit) not in tables:
            tables[id(step.fit)] = corrections_json(step)
        ways = clearance.ways if clearance else None
        one = step_json(step, equipment, said, tables[id(step.fit)], ways)
        one |= tools_reason_json(reasons.of(step))
        one["gauged_flange"] = flange_json(part, step, equipment, tables[id(step.fit)])
        station = next((s for s in standing if step.operation.number in s.steps), None)
        found.append(
            {**one, "clearance": clearance_json(clearance), **_standing(part, step, station)}
        )
    return found


def _standing(part: Part, step: PlannedStep, station: Station | None) -> JsonDict:
    """Where the tools of a step stand, and of which pieces."""
    return {
        "station": station.number if station else None,
        "punch_turned": bool(step.owned and step.fit and step.fit.punch.turned),
        "segments_mm": {
            "punch": [number(x) for x in station.punch_segments_mm] if station else [],
            "die": [number(x) for x in station.die_segments_mm] if station else [],
        },
        "gauges_flat": gauged_flat(part, step),
    }


def step_json(
    step: PlannedStep,
    equipment: Equipment,
    checks: Iterable[Check],
    corrections: list[JsonDict],
    ways: Ways | None = None,
) -> JsonDict:
    """One step; what needs tools is null where the shop has none for it."""
    operation, one, gauge = step.operation, step.fit, step.gauge
    owned = step.owned
    fit = one if owned else None
    bend = fit.bend if fit is not None else None
    limits = fit.limits if fit is not None else None
    shown = operation.flattens or (one is not None and within(one.bend, one.limits))
    length = one.wanted.bend_length_mm if one is not None else 1.0
    holder = equipment.holder
    return {
        "number": operation.number,
        "bend": operation.bend,
        "operation": operation.kind,
        "direction": operation.direction,
        "included_angle_deg": number(operation.included_angle_deg),
        "punch": fit.punch.code if fit else None,
        "punch_name": fit.punch.name if fit else None,
        "die": fit.die.code if fit else None,
        "die_name": fit.die.name if fit else None,
        "holder": holder.code if holder and fit else None,
        "v_opening_mm": number(fit.die.v_opening_mm) if fit else None,
        "gauge_x_mm": maybe(gauge.x_mm if gauge else None, 3),
        "gauge_r_mm": maybe(gauge.r_mm if gauge else None, 3),
        "gauge_draw_back_mm": maybe(gauge.draw_back_mm if gauge else None, 3),
        "gauged_end": step.end,
        "gauged_against": gauge.against if gauge else None,
        "inside_face": operation.direction,
        "turn_over": step.turn_over,
        "turn_end": step.turn_end,
        **setting_json(bend, limits, first_hit_of(step)),
        "limits": limits_json(limits),
        **banded("springback_deg", bend.springback_deg if bend else None),
        **banded("force_kn", bend.force_n if bend else None, 1.0 / N_PER_KN),
        **banded("force_kn_per_m", bend.force_n if bend else None, 1.0 / length),
        **banded("inside_radius_mm", bend.inside_radius_mm if bend else None),
        "min_flange_mm": maybe(bend.min_flange_mm if bend else None),
        "origin": origins(bend),
        "hits": _hits(step),
        "corrections": corrections,
        # What drawing and motion show is the setting: without one there are none.
        "drawing": drawing_json(step.drawing, equipment, one) if shown else None,
        "motion": motion_json(step, equipment, ways) if shown else None,
        "checks": checks_json(checks),
    }


def first_hit_of(step: PlannedStep) -> FirstHit | None:
    """The first hit of a step, where it leads.

    A hem's acute bend is flattened after it, and a hem too open buckles; of a radius made of many
    bumps each bump's error adds up: both are set as expected.
    """
    if step.fit is None or not step.owned or step.operation.kind != "bend":
        return None
    return step.fit.first_hit


def _hits(step: PlannedStep) -> JsonDict | None:
    hits = step.operation.hits
    if hits is None:
        return None
    return {
        "count": hits.count,
        "pitch_mm": number(hits.pitch_mm),
        "chord_error_mm": number(hits.chord_error_mm),
        "angle_each_deg": number(hits.angle_each_deg),
        "gauge_x_mm": [number(x, 3) for x in step.hit_x_mm],
    }


def corrections_json(step: PlannedStep) -> list[JsonDict]:
    """What to set after each angle that may be measured on the first piece."""
    one = step.fit
    if one is None or one.bend is None or not step.owned or step.operation.hits is not None:
        return []
    wanted = step.operation.included_angle_deg
    if one.limits is None or not within(one.bend, one.limits):
        return []
    rows = correction_table(
        one.bend, wanted, one.wanted.thickness_mm, one.die, one.limits, start=first_hit_of(step)
    )
    return rows_json(rows)
