"""The section in the tools, before and after a bend, in the press frame.

Press frame: x = 0 is the tools' centre line, +x towards the back gauge, the die's top face
is y = 0. The sheet lies on it from y = 0 to y = t; after the bend the inside faces up and
both legs have risen by half the loaded bend angle. The middle of the bend's arc stays on
x = 0, so the developed length to either end never changes.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from flangebook.bending.geometry.ring import Point, Ring, bounds, moved
from flangebook.bending.geometry.strip import Strip, outline, start_for, trace
from flangebook.bending.motion.lying import Closing, Pressing, Stroke, facing, lying
from flangebook.bending.part.part import Direction, End
from flangebook.bending.tools.outline import finger_outline, tool_stack
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

if TYPE_CHECKING:
    from flangebook.bending.motion.gauging import Gauge


@dataclass(frozen=True, slots=True)
class StepDrawing:
    """Outlines of one step in the press frame [mm]; a ring is empty where there is no tool.

    gauge_after is retracted where the leg would sweep through the finger.
    gauge_point: where finger and sheet touch before the bend, None without a gauge.
    bounds: smallest x, smallest y, largest x, largest y of sheet, punch, die and gauge; the
    ram, its holder and the bed run on beyond it. moves: what its motion follows from.
    """

    sheet_before: Ring
    sheet_after: Ring
    punch_before: Ring
    punch_after: Ring
    holder_before: Ring
    holder_after: Ring
    ram_before: Ring
    ram_after: Ring
    die: Ring
    bed: Ring
    gauge: Ring
    gauge_after: Ring
    gauge_point: Point | None
    bounds: tuple[float, float, float, float]
    moves: Pressing | Closing | None = None


def sheet_before(strip: Strip, number: int) -> Ring:
    """The sheet lying on the die, active bend ``number`` flat on x = 0 (strip faced already)."""
    flat, start = lying(strip, number)
    return outline(flat, start)


def sheet_after(strip: Strip, number: int, stroke: Stroke) -> Ring:
    """The sheet at the bottom of the stroke (strip faced already)."""
    bent = strip.with_fold(
        number, 180.0 - stroke.included_angle_deg, stroke.inside_radius_mm, stroke.allowance_mm
    )
    middle = strip.thickness_mm / 2.0 - stroke.punch_depth_mm
    return outline(bent, start_for(bent, number, (0.0, middle, 0.0)))


def step_drawing(
    strip: Strip,
    number: int,
    direction: Direction,
    stroke: Stroke,
    *,
    press: Press,
    holder: Holder | None,
    punch: Punch,
    die: Die,
    gauge: Gauge | None,
) -> StepDrawing:
    """One step drawn.

    strip: the part as it is before this step, part frame, earlier bends made.
    number, direction: the active bend. Without a gauge the right end lies to the back.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
    """
    faced, n = facing(strip, number, direction, gauge.end if gauge else "right")
    t = strip.thickness_mm
    up = tool_stack(press, holder, punch, die, t)
    down = tool_stack(press, holder, punch, die, t - stroke.punch_depth_mm)
    finger: Ring = ()
    retracted: Ring = ()
    if gauge is not None:
        finger = finger_outline(press, gauge.x_mm, gauge.finger_bottom_mm)
        retracted = moved(finger, gauge.retract_mm, 0.0)
    before, after = sheet_before(faced, n), sheet_after(faced, n, stroke)
    shown = (*before, *after, *up.punch, *down.punch, *up.die, *finger, *retracted)
    return StepDrawing(
        sheet_before=before,
        sheet_after=after,
        punch_before=up.punch,
        punch_after=down.punch,
        holder_before=up.holder,
        holder_after=down.holder,
        ram_before=up.ram,
        ram_after=down.ram,
        die=up.die,
        bed=up.bed,
        gauge=finger,
        gauge_after=retracted,
        gauge_point=gauge.contact if gauge else None,
        bounds=bounds(shown),
        moves=Pressing(faced, n, stroke, die),
    )


def flatten_drawing(
    strip: Strip,
    number: int,
    direction: Direction,
    *,
    acute: tuple[float, float, float],
    closed: tuple[float, float, float],
    hem_end: End,
) -> StepDrawing:
    """The flattening of a hem: the sheet alone, flat on y = 0, its hem over x = 0.

    acute, closed: included angle [deg], inside radius [mm] and allowance [mm] of the fold
    before and after. hem_end: the end of the part the hem is at. No tool is drawn, since
    the shop's flattening tool is not known.
    """
    faced, n = facing(strip, number, direction, hem_end)
    rings = []
    for included, radius, taken in (acute, closed):
        bent = faced.with_fold(n, 180.0 - included, radius, taken)
        straights, _ = trace(bent)
        x, y, heading = straights[n - 1].end
        cos, sin = math.cos(heading), math.sin(heading)
        to_x, to_y = straights[n].length_mm / 2.0, strip.thickness_mm / 2.0
        start = (to_x - (cos * x + sin * y), to_y - (cos * y - sin * x), -heading)
        rings.append(outline(bent, start))
    before, after = rings
    empty: Ring = ()
    return StepDrawing(
        sheet_before=before,
        sheet_after=after,
        punch_before=empty,
        punch_after=empty,
        holder_before=empty,
        holder_after=empty,
        ram_before=empty,
        ram_after=empty,
        die=empty,
        bed=empty,
        gauge=empty,
        gauge_after=empty,
        gauge_point=None,
        bounds=bounds((*before, *after)),
        moves=Closing(faced, n, acute, closed),
    )
