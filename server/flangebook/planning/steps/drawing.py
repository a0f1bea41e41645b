"""The section in the tools as rings of points, from the same numbers as the set-up."""

from __future__ import annotations

from dataclasses import replace

from flangebook.bending.checks import Check
from flangebook.bending.geometry.strip import Fold, Strip
from flangebook.bending.motion.gauging import Gauge
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.motion.pose import StepDrawing, step_drawing
from flangebook.bending.part.part import Bend, Direction
from flangebook.bending.part.section import FoldedBend, allowance_at
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.tools.outline import tool_stack
from flangebook.planning.answers.answer import JsonDict, number, ring_json
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.stand_ins import press_to_draw_with

LEG_OVER_FLANGE = 2.0
LEAST_LEG_MM = 25.0


def stroke_of(one: Fit, first: FirstHit | None = None) -> Stroke | None:
    """What the punch does in this fit, None when it could not be predicted.

    first: the first hit to show; None shows the expected setting, which a second hit goes to.
    """
    bend = one.bend
    if bend is None:
        return None
    loaded, depth = bend.set_angle_deg.nominal, bend.punch_depth_mm.nominal
    if first is not None:
        loaded, depth = first.set_angle_deg, first.punch_depth_mm
    radius = bend.inside_radius_mm.nominal
    folded = FoldedBend(radius, bend.bend_allowance_mm.nominal)
    released = Bend(one.wanted.included_angle_deg, "up")
    allowance = allowance_at(loaded, radius, released, folded, one.wanted.thickness_mm)
    return Stroke(loaded, radius, allowance, depth)


def drawn(
    strip: Strip,
    number_of_bend: int,
    direction: Direction,
    one: Fit,
    equipment: Equipment,
    gauge: Gauge | None,
    first: FirstHit | None = None,
) -> StepDrawing | None:
    """One step drawn; None when the bend could not be predicted in any tools. first: as for
    :func:`stroke_of`."""
    stroke = stroke_of(one, first)
    if stroke is None:
        return None
    return step_drawing(
        strip,
        number_of_bend,
        direction,
        stroke,
        press=press_to_draw_with(equipment.press),
        holder=equipment.holder,
        punch=one.punch,
        die=one.die,
        gauge=gauge,
    )


def with_punch(drawing: StepDrawing, one: Fit, equipment: Equipment) -> StepDrawing:
    """The same sheet and die under another punch of the same reach into the V."""
    press, holder = press_to_draw_with(equipment.press), equipment.holder
    stroke, t = stroke_of(one), one.wanted.thickness_mm
    assert stroke is not None
    up = tool_stack(press, holder, one.punch, one.die, t)
    down = tool_stack(press, holder, one.punch, one.die, t - stroke.punch_depth_mm)
    return replace(
        drawing,
        punch_before=up.punch,
        punch_after=down.punch,
        holder_before=up.holder,
        holder_after=down.holder,
        ram_before=up.ram,
        ram_after=down.ram,
    )


def not_drawn(why: str) -> Check:
    """The finding that a bend could not be drawn."""
    why = why.replace("{", "(").replace("}", ")")
    words = f"It could not be drawn: {why}"
    return Check("unknown", "not-drawn", words, "Mend the outline of the tool or the press.")


def simple_angle(one: Fit) -> tuple[Strip, int]:
    """A plain angle long enough to see how it lies in these tools, and its bend's number."""
    flange = one.bend.min_flange_mm if one.bend else one.die.v_opening_mm
    leg = max(LEAST_LEG_MM, LEG_OVER_FLANGE * flange)
    return Strip(one.wanted.thickness_mm, 2.0 * leg, (Fold(leg),)), 1


def drawing_json(
    drawing: StepDrawing | None, equipment: Equipment, one: Fit | None = None
) -> JsonDict | None:
    """The drawing as the API gives it.

    one: the fit drawn; its tools that are not the shop's stay empty rings. Without it tools by
    rule are shown, but never a press that is not there.
    """
    if drawing is None:
        return None
    press = equipment.press is not None
    punch = one is None or bool(one.punch.code)
    die = one is None or bool(one.die.code)

    def pose(sheet: str) -> JsonDict:
        return {
            "sheet": ring_json(getattr(drawing, f"sheet_{sheet}")),
            "punch": ring_json(getattr(drawing, f"punch_{sheet}")) if punch else [],
            "holder": ring_json(getattr(drawing, f"holder_{sheet}")) if press and punch else [],
            "ram": ring_json(getattr(drawing, f"ram_{sheet}")) if press and punch else [],
            "gauge": ring_json(drawing.gauge if sheet == "before" else drawing.gauge_after)
            if press
            else [],
        }

    answer = {
        "before": pose("before"),
        "after": pose("after"),
        "die": ring_json(drawing.die) if die else [],
        "bed": ring_json(drawing.bed) if press and die else [],
        "gauge_point": [number(v, 3) for v in drawing.gauge_point] if drawing.gauge_point else None,
    }
    answer["bounds"] = _bounds(answer)
    return answer


def _bounds(answer: JsonDict) -> list[float]:
    """The box around every ring that is shown."""
    rings = [*answer["before"].values(), *answer["after"].values(), answer["die"], answer["bed"]]
    xs = [p[0] for ring in rings for p in ring]
    ys = [p[1] for ring in rings for p in ring]
    return [min(xs), min(ys), max(xs), max(ys)]
