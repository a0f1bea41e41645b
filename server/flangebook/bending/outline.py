"""Outlines of punch, die, holder, ram, bed and gauge finger, and the stack of them."""

from __future__ import annotations

import math
from dataclasses import dataclass

from flangebook.bending.tooling import Die, Holder, Point, Press, Punch, Ring


@dataclass(frozen=True, slots=True)
class ToolStack:
    """Outlines in the press frame (die's top face y = 0) at one height of the punch."""

    punch: Ring
    holder: Ring
    ram: Ring
    die: Ring
    bed: Ring


def moved(ring: Ring, x_mm: float, y_mm: float) -> Ring:
    """The ring moved by (x, y)."""
    return tuple((px + x_mm, py + y_mm) for px, py in ring)


def box(left: float, bottom: float, right: float, top: float) -> Ring:
    """A rectangle as a ring, counter-clockwise."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def arc(cx: float, cy: float, radius: float, start_deg: float, end_deg: float) -> list[Point]:
    """Points on an arc from start to end, ends included; one point for radius 0."""
    if radius <= 0.0:
        return [(cx, cy)]
    chords = max(2, 2 * math.ceil(abs(end_deg - start_deg) / 24.0))
    turns = [
        math.radians(start_deg + (end_deg - start_deg) * i / chords) for i in range(chords + 1)
    ]
    return [(cx + radius * math.cos(a), cy + radius * math.sin(a)) for a in turns]


def punch_outline(punch: Punch) -> Ring:
    """The punch with its tip at (0, 0), body above.

    Raises:
        InputError: its sizes do not fit together or its points cross.
    """
    half_angle = punch.angle_deg / 2.0
    rise = 90.0 - half_angle
    tip = arc(0.0, punch.tip_radius_mm, punch.tip_radius_mm, 270.0 - rise, 270.0 + rise)
    half = punch.body_width_mm / 2.0
    top = tip[-1][1] + (half - tip[-1][0]) / math.tan(math.radians(half_angle))
    h = punch.height_mm
    return (*tip, (half, top), (half, h), (-half, h), (-half, top))


def die_outline(die: Die) -> Ring:
    """The die, top face at y = 0, V centred on x = 0.

    Raises:
        InputError: its sizes do not fit together or its points cross.
    """
    half_v, rd = die.v_opening_mm / 2.0, die.shoulder_radius_mm
    beta = 90.0 - die.angle_deg / 2.0
    x_c = half_v + rd * math.tan(math.radians(beta) / 2.0)
    depth = half_v * math.tan(math.radians(beta))
    w, h = die.width_mm / 2.0, die.height_mm
    right = arc(x_c, -rd, rd, 90.0 + beta, 90.0)
    left = [(-x, y) for x, y in reversed(right)]
    return ((-w, -h), (w, -h), (w, 0.0), *right[::-1], (0.0, -depth), *left[::-1], (-w, 0.0))


def holder_outline(holder: Holder) -> Ring:
    """The holder with its seat for the punch at (0, 0), body above."""
    return holder.points_mm or box(
        -holder.overhang_front_mm, 0.0, holder.overhang_back_mm, holder.height_mm
    )


def ram_outline(press: Press) -> Ring:
    """The ram, the face that carries the holder at y = 0, body above."""
    half = press.ram_width_mm / 2.0
    return press.ram_points_mm or box(-half, 0.0, half, press.ram_height_mm)


def bed_outline(press: Press) -> Ring:
    """The bed, the face that carries the die at y = 0, body below."""
    half = press.bed_width_mm / 2.0
    return press.bed_points_mm or box(-half, -press.bed_height_mm, half, 0.0)


def finger_outline(press: Press, x_mm: float, bottom_mm: float) -> Ring:
    """The gauge finger with its face at x, its lower edge at bottom, body to the back."""
    return box(x_mm, bottom_mm, x_mm + press.finger_depth_mm, bottom_mm + press.finger_height_mm)


def check_simple(ring: Ring, where: str = "points_mm") -> None:
    """Refuse an outline that crosses or touches itself, naming the edges (from 1).

    Raises:
        InputError: fewer than three points, a point twice running, no area, or edges that meet.
    """


def tool_stack(
    press: Press, holder: Holder | None, punch: Punch, die: Die, tip_y_mm: float
) -> ToolStack:
    """The tools in the press frame with the punch's tip at (0, tip_y).

    Without a holder the punch sits in the ram itself.
    """
    seat = tip_y_mm + punch.height_mm
    top = seat + (holder.height_mm if holder else 0.0)
    return ToolStack(
        punch=moved(punch_outline(punch), 0.0, tip_y_mm),
        holder=moved(holder_outline(holder), 0.0, seat) if holder else (),
        ram=moved(ram_outline(press), 0.0, top),
        die=die_outline(die),
        bed=moved(bed_outline(press), 0.0, -die.height_mm),
    )
