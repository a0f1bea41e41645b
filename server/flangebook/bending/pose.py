"""The section in the tools, before and after a bend, in the press frame.

Press frame: x = 0 is the tools' centre line, +x towards the back gauge, the die's top face
is y = 0. The sheet lies on it from y = 0 to y = t; after the bend the inside faces up and
both wings have risen by half the loaded bend angle.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from flangebook.bending import outline, section
from flangebook.bending.gauging import Gauge
from flangebook.bending.section import Strip
from flangebook.bending.tooling import Die, Holder, Point, Press, Punch, Ring

End = Literal["left", "right"]


@dataclass(frozen=True, slots=True)
class Stroke:
    """What the punch does to the active bend.

    included_angle_deg: loaded, at the bottom of the stroke. inside_radius_mm: [mm].
    allowance_mm: developed length of the arc at that angle [mm].
    punch_depth_mm: travel from first touch [mm].
    """

    included_angle_deg: float
    inside_radius_mm: float
    allowance_mm: float
    punch_depth_mm: float


@dataclass(frozen=True, slots=True)
class StepDrawing:
    """Outlines of one step in the press frame [mm]; a ring is empty where there is no tool.

    gauge_after is drawn back where the wing would sweep through the finger.
    gauge_point: where finger and sheet touch before the bend, None without a gauge.
    bounds: smallest x, smallest y, largest x, largest y of all of it.
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


def facing(
    strip: Strip, number: int, direction: Literal["up", "down"], gauged_end: End
) -> tuple[Strip, int]:
    """The strip as it lies in the press, and the number of the active bend there.

    The gauged end comes to the right, the inside of the active bend up.
    """
    if direction == "down":
        strip = strip.flipped()
    if gauged_end == "left":
        return strip.reversed(), len(strip.folds) + 1 - number
    return strip, number


def sheet_before(strip: Strip, number: int) -> Ring:
    """The sheet lying on the die, active bend ``number`` flat on x = 0 (strip faced already)."""
    flat = strip.flattened(number)
    return section.outline(flat, section.start_for(flat, number, (0.0, flat.thickness_mm / 2, 0.0)))


def sheet_after(strip: Strip, number: int, stroke: Stroke) -> Ring:
    """The sheet at the bottom of the stroke (strip faced already)."""
    bent = strip.with_fold(
        number, 180.0 - stroke.included_angle_deg, stroke.inside_radius_mm, stroke.allowance_mm
    )
    middle = strip.thickness_mm / 2.0 - stroke.punch_depth_mm
    return section.outline(bent, section.start_for(bent, number, (0.0, middle, 0.0)))


def step_drawing(
    strip: Strip,
    number: int,
    direction: Literal["up", "down"],
    stroke: Stroke,
    *,
    press: Press,
    holder: Holder | None,
    punch: Punch,
    die: Die,
    gauge: Gauge | None,
) -> StepDrawing:
    """One step drawn: ``strip`` in part frame with the earlier bends made, bend ``number``."""
    faced, n = facing(strip, number, direction, gauge.end if gauge else "right")
    t = strip.thickness_mm
    up = outline.tool_stack(press, holder, punch, die, t)
    down = outline.tool_stack(press, holder, punch, die, t - stroke.punch_depth_mm)
    finger: Ring = ()
    drawn_back: Ring = ()
    if gauge is not None:
        finger = outline.finger_outline(press, gauge.x_mm, gauge.finger_bottom_mm)
        drawn_back = outline.moved(finger, gauge.draw_back_mm, 0.0)
    before, after = sheet_before(faced, n), sheet_after(faced, n, stroke)
    rings = (
        before,
        after,
        up.punch,
        up.holder,
        down.punch,
        down.holder,
        up.ram,
        up.die,
        up.bed,
        finger,
        drawn_back,
    )
    return StepDrawing(
        before,
        after,
        up.punch,
        down.punch,
        up.holder,
        down.holder,
        up.ram,
        down.ram,
        up.die,
        up.bed,
        finger,
        drawn_back,
        gauge.contact if gauge else None,
        section.bounds(tuple(p for ring in rings for p in ring)),
    )
