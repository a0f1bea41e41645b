"""The flange that a step's gauge sets directly: what it comes to, and how far the gauge may go.

It is saved with the step, so that the shop and a phone without network read the same figures.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import bounds, furthest_x
from flangebook.bending.motion.gauging import Gauge
from flangebook.bending.part.part import Part
from flangebook.bending.prediction.measured_flange import flange_at_angle_mm, most_error_mm
from flangebook.bending.tools.outline import tool_stack
from flangebook.bending.tools.tooling import Press
from flangebook.planning.answers.answer import JsonDict, number, sentence_json
from flangebook.planning.results.saved_table import Line
from flangebook.planning.steps.dimensions import gauged_flat
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.steps.touching import UPPER
from flangebook.planning.tools.fit import Equipment, Fit

SAME_MM = 1e-3


def flange_json(
    part: Part, step: PlannedStep, equipment: Equipment, corrections: Sequence[JsonDict]
) -> JsonDict | None:
    """The flange as a step carries it; None where the gauge sets none directly, or where a
    radius is made in bumps, or without a table of corrections.

    deduction_mm: of the bend, as planned. rows: the flange to expect of a gauge that stands
    right, at each angle of the table.
    """
    flat, press, gauge = gauged_flat(part, step), equipment.press, step.gauge
    if flat is None or press is None or gauge is None or step.fit is None or not corrections:
        return None
    assert step.fit.bend is not None  # a step with a table has one
    if step.operation.bumps is not None or step.operation.kind != "bend":
        return None
    low, high = _reach_mm(gauge, step.fit, equipment, press)
    wanted = part.flats_mm[flat - 1]
    return {
        "flat": flat,
        "wanted_mm": number(wanted),
        "x_low_mm": number(low),
        "x_high_mm": number(high),
        "most_error_mm": number(most_error_mm(part.thickness_mm)),
        "deduction_mm": number(step.fit.bend.bend_deduction_mm.nominal),
        "rows": _rows(part, step.fit, wanted, step.operation.included_angle_deg, corrections),
    }


def _rows(
    part: Part, fit: Fit, wanted_mm: float, wanted_deg: float, corrections: Sequence[JsonDict]
) -> list[JsonDict]:
    bend = fit.bend
    assert bend is not None  # a step with a table has one
    sheet = (bend.inside_radius_mm.nominal, part.thickness_mm, bend.k_factor.nominal)
    return [
        {
            "measured_deg": row["measured_deg"],
            "flange_mm": number(
                flange_at_angle_mm(
                    wanted_mm, wanted_deg, row["measured_deg"], *sheet, part.dimension
                )
            ),
        }
        for row in corrections
    ]


def _reach_mm(gauge: Gauge, fit: Fit, equipment: Equipment, press: Press) -> tuple[float, float]:
    """The least and the greatest X [mm] at the gauge's height: its travel, and clear of the tools
    as ``ordering.finger_place`` has it: above the die or beside it, behind punch and holder."""
    bottom = gauge.finger_bottom_mm
    top = bottom + press.finger_height_mm
    least = press.gauge_x_min_mm
    try:
        stack = tool_stack(press, equipment.holder, fit.punch, fit.die, fit.wanted.thickness_mm)
    except InputError:  # an outline that cannot be drawn is a finding of its own
        return gauge.x_mm, gauge.x_mm
    for name in UPPER:
        ring = getattr(stack, name)
        met = furthest_x(ring, bottom, top) if ring else None
        least = least if met is None else max(least, met[0])
    for name, face in (("die", 0.0), ("bed", -fit.die.height_mm)):
        if bottom < face - SAME_MM:
            least = max(least, bounds(getattr(stack, name))[2])
    # A place that was planned stands, whatever rounding makes of the tool beside it.
    return min(least, gauge.x_mm), press.gauge_x_max_mm


Given = Mapping[str, Any]
EVEN_MM = 0.05
"""A flange within this of what was expected is as wanted [mm]: no gauge is set finer."""
TO_CHECK = (
    "Measure again, to the face that the card's dimension goes to.",
    "Check which flange was measured.",
    "Read the gauge: did it stand at the X of the card, and the sheet against it?",
)


def next_gauge(
    step: Given, result: Given, measured_deg: float, setting: Given | None = None
) -> JsonDict | None:
    """What a measured flange makes of the gauge; None where none was measured.

    gauge_x_mm is null, and it is said why, where the flange is too far off to be the gauge's, the
    gauge does not reach, or the step has no flange that its gauge sets.
    """
    measured = result.get("flange_mm")
    if measured is None:
        return None
    flange = step.get("gauged_flange")
    if not flange:
        return _none_from(measured, _why_no_flange(step))
    expected = _expected_mm(flange, measured_deg)
    if expected is None:
        return _none_from(measured, "The angle is too far off: mend that before the gauge.")
    return _from_error(step, flange, result, setting, measured, expected)


def deduction_of_flange_mm(step: Given, flange: Given | None) -> float | None:
    """The bend deduction that a flange amounts to if the gauge's zero is right [mm].

    A flange has half of its bend's deduction in it. flange: as :func:`next_gauge` answers; None
    where it says nothing of the gauge, or the card was planned before this was saved with it.
    """
    planned = step.get("gauged_flange") or {}
    if not flange or flange["off_plan_mm"] is None or planned.get("deduction_mm") is None:
        return None
    by_angle = float(flange["expected_mm"]) - float(planned["wanted_mm"])
    return float(planned["deduction_mm"]) + 2.0 * (float(flange["off_plan_mm"]) + by_angle)


def _from_error(
    step: Given,
    flange: Given,
    result: Given,
    setting: Given | None,
    measured: float,
    expected: float,
) -> JsonDict:
    error = measured - expected
    said = {
        "flat": flange["flat"],
        "measured_mm": number(measured),
        "expected_mm": number(expected),
        "error_mm": number(error),
        "gauge_x_mm": None,
        "off_plan_mm": None,
        "v_opening_mm": step.get("v_opening_mm"),
        "to_check": [],
    }
    how = f"Flange {{off_mm}} too {'long' if error > 0 else 'short'}."
    numbers = {"off_mm": abs(error)}
    if abs(error) > flange["most_error_mm"]:
        said["to_check"] = list(TO_CHECK)
        far = "No gauge is that far off: no new X before it is checked."
        return said | _said(f"{how} {far}", numbers)
    x = _x_set(step, result, setting)
    said["off_plan_mm"] = number(error - (x - float(step["gauge_x_mm"])))
    even = abs(error) <= EVEN_MM
    x = x if even else x - error
    if not gauge_reaches(step, x):
        numbers["end_mm"] = flange["x_low_mm" if x < flange["x_low_mm"] else "x_high_mm"]
        return said | _said(f"{how} The gauge ends at {{end_mm}} here and cannot mend it.", numbers)
    if even:
        return said | {"gauge_x_mm": number(x)} | _said("Flange as wanted: leave the gauge.", {})
    return said | {"gauge_x_mm": number(x)} | _said(how, numbers)


def _said(template: str, numbers: Mapping[str, float]) -> JsonDict:
    return {"said": sentence_json(Sentence(template, numbers))}


def gauge_reaches(step: Given, x_mm: float) -> bool:
    """Whether a step's gauge may stand at an X; not where the step does not say how far it goes."""
    flange = step.get("gauged_flange")
    return flange is not None and bool(flange["x_low_mm"] <= x_mm <= flange["x_high_mm"])


def _x_set(step: Given, result: Given, setting: Given | None) -> float:
    """The X that the piece was gauged at [mm]: as its result says, else the one in force."""
    for holder in (result, setting or {}, step):
        if holder.get("gauge_x_mm") is not None:
            return float(holder["gauge_x_mm"])
    raise AssertionError("a step with a gauged flange has an X")


def _expected_mm(flange: Given, measured_deg: float) -> float | None:
    """The flange to expect at an angle, between two rows; None beyond them."""
    line = Line.of((row["measured_deg"], row["flange_mm"]) for row in flange["rows"])
    return line.at(measured_deg) if len(line.rows) > 1 else None


def _why_no_flange(step: Given) -> str:
    if "gauged_flange" not in step:
        return "This card was planned before flanges moved the gauge: plan it again for that."
    return "The gauge of this step sets no flange directly: its X stays."


def _none_from(measured_mm: float, why: str) -> JsonDict:
    return {
        "flat": None,
        "measured_mm": number(measured_mm),
        "expected_mm": None,
        "error_mm": None,
        "gauge_x_mm": None,
        "off_plan_mm": None,
        "v_opening_mm": None,
        "to_check": [],
        **_said(why, {}),
    }
