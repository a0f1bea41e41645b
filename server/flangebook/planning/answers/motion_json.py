"""A step's motion as the API gives it: two rigid outlines and where they lie in each frame."""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.clearance.taking_out import Place, TakingOut
from flangebook.bending.geometry.ring import Ring, bounds
from flangebook.bending.motion.lying import Closing
from flangebook.bending.motion.pose import StepDrawing
from flangebook.bending.motion.step_motion import (
    Frame,
    Placed,
    StepMotion,
    closing_motion,
    pressed_motion,
)
from flangebook.planning.answers.answer import JsonDict, maybe, number
from flangebook.planning.order.ways import Ways
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment, Fit

LEAST_LIFT_MM = 10.0
USUAL_LIFT_MM = 80.0  # where no press is known: enough to see it come down


def motion_json(
    step: PlannedStep, equipment: Equipment, ways: Ways | None = None
) -> JsonDict | None:
    """The motion of a step, with its ways in and out where the part is tilted on them; None where
    the step could not be drawn."""
    if step.drawing is None or step.drawing.moves is None:
        return None
    moves = step.drawing.moves
    if isinstance(moves, Closing):
        return _json(closing_motion(moves))
    if step.fit is None:
        return None
    gauge_x, back = (None, 0.0) if equipment.press is None else _gauge(step.drawing)
    return _json(
        pressed_motion(
            moves,
            released_deg=step.fit.wanted.included_angle_deg,
            lift_mm=_lift_mm(equipment, step.fit),
            gauge_x_mm=gauge_x,
            retract_mm=back,
            puts_in=_tilted(ways.into) if ways else (),
            takes_out=_tilted(ways.out) if ways else (),
        )
    )


def _tilted(taking: TakingOut) -> Sequence[Place]:
    return taking.places if taking.way == "swing" else ()


def _gauge(drawing: StepDrawing) -> tuple[float | None, float]:
    """Where the finger's face stands, as drawn, and how far it retracts [mm]."""
    if not drawing.gauge or drawing.gauge_point is None:
        return None, 0.0
    return drawing.gauge_point[0], bounds(drawing.gauge_after)[0] - bounds(drawing.gauge)[0]


def _lift_mm(equipment: Equipment, one: Fit) -> float:
    """How far the punch can rise from first touch, by open height and stroke of the press."""
    press = equipment.press
    if press is None:
        return USUAL_LIFT_MM
    room = equipment.opens_mm(one.punch, one.die, one.wanted.thickness_mm)
    return max(LEAST_LIFT_MM, min(room, press.stroke_mm))


def _json(motion: StepMotion) -> JsonDict:
    return {
        "thickness_mm": number(motion.thickness_mm, 3),
        "left": _ring(motion.left),
        "right": _ring(motion.right),
        "frames": [_frame(f) for f in motion.frames],
    }


def _frame(frame: Frame) -> JsonDict:
    return {
        "share": number(frame.share, 4),
        "phase": frame.phase,
        "included_angle_deg": number(frame.included_angle_deg, 3),
        "punch_y_mm": number(frame.punch_y_mm, 2),
        "left": _placed(frame.left),
        "right": _placed(frame.right),
        "inside_radius_mm": number(frame.inside_radius_mm, 2),
        "half_arc_mm": number(frame.half_arc_mm, 2),
        "gauge_x_mm": maybe(frame.gauge_x_mm, 2),
    }


def _placed(placed: Placed) -> list[float]:
    return [number(placed.x_mm, 2), number(placed.y_mm, 2), number(placed.turned_deg, 3)]


def _ring(points: Ring) -> list[list[float]]:
    return [[number(x, 2), number(y, 2)] for x, y in points]
