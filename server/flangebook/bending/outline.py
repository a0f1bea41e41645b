"""Outlines of punch, die, holder, ram, bed and gauge finger, and the stack of them.

Plain geometry from the few sizes a shop can measure, or the points it gives. Each outline
is computed once and remembered: tools are frozen, so the same tool has the same outline.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from flangebook.bending.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.errors import InputError
from flangebook.bending.ring import arc, box, check_simple, counter_clockwise, mirrored, moved
from flangebook.bending.tooling import Die, Holder, Point, Press, Punch, Ring


@dataclass(frozen=True, slots=True)
class ToolStack:
    """Outlines in the press frame (die's top face y = 0) at one height of the punch."""

    punch: Ring
    holder: Ring
    ram: Ring
    die: Ring
    bed: Ring


def by_points(points: Ring, where: str = "points_mm") -> Ring:
    """An outline the shop gave by points, checked, counter-clockwise.

    Raises:
        InputError: the points are no simple outline.
    """
    check_simple(points, where)
    return counter_clockwise(points)


@lru_cache(maxsize=512)
def punch_outline(punch: Punch) -> Ring:
    """The punch with its tip at (0, 0), body above.

    A straight punch is symmetrical. A gooseneck's throat opens to the operator (-x): its
    front face lies ``neck_relief_mm`` behind the tip, its neck is as thick as the body. A
    punch that is turned is the mirror image, whatever its shape.

    Raises:
        InputError: its sizes do not fit together, or its points are no simple outline.
    """
    if punch.turned:
        return mirrored(punch_outline(replace(punch, turned=False)))
    if punch.shape == "points":
        return by_points(punch.points_mm)
    _positive(punch, ("angle_deg", "height_mm", "body_width_mm"))
    if punch.angle_deg >= 180.0:
        raise InputError(
            "A punch's nose is sharper than 180°.", "angle_deg", "Give the angle of its nose."
        )
    return _gooseneck(punch) if punch.shape == "gooseneck" else _straight(punch)


def _tip(punch: Punch) -> list[Point]:
    """The rounded tip from the front flank's tangent to the back flank's."""
    rise = 90.0 - punch.angle_deg / 2.0
    radius = max(punch.tip_radius_mm, 0.0)
    return arc((0.0, radius), radius, 270.0 - rise, 270.0 + rise)


def _flank_top(tip: list[Point], half_width: float, punch: Punch) -> float:
    """Height at which the back flank reaches ``half_width`` from the middle."""
    x, y = tip[-1]
    if x > half_width + 1e-9:
        raise InputError(
            "The tip is rounder than the body is wide.",
            "tip_radius_mm",
            f"Make the body at least {2.0 * x:.1f} mm wide, or the radius smaller.",
        )
    return y + (half_width - x) / math.tan(math.radians(punch.angle_deg) / 2.0)


def _straight(punch: Punch) -> Ring:
    tip = _tip(punch)
    half = punch.body_width_mm / 2.0
    shoulder = _flank_top(tip, half, punch)
    if shoulder >= punch.height_mm:
        raise InputError(
            "The nose is longer than the punch.",
            "height_mm",
            f"With this nose and body the punch is more than {shoulder:.1f} mm high.",
        )
    top = punch.height_mm
    return _tidy([*tip, (half, shoulder), (half, top), (-half, top), (-half, shoulder)])


def _gooseneck(punch: Punch) -> Ring:
    """Nose, a neck set back by the relief, then forward to the seat.

    The neck leans back along the nose's own flank, so that a wing bent as sharp as the nose
    clears it; where the punch is too short for that, at 45 degrees.
    """
    tip = _tip(punch)
    width, relief, top = punch.body_width_mm, punch.neck_relief_mm, punch.height_mm
    if relief <= 0.0:
        raise InputError(
            "A gooseneck has a throat.", "neck_relief_mm", "Give how far it lies behind the tip."
        )
    _flank_top(tip, width / 2.0, punch)
    half, front = width / 2.0, max(width / 4.0, tip[-1][0])
    front_y = _flank_top(tip, front, punch)
    seat_low = top - min(0.15 * top, width)
    throat_high = seat_low - (relief + half)
    steep = 1.0 / math.tan(math.radians(punch.angle_deg) / 2.0)
    for rise in (max(steep, 1.0), 1.0):
        throat_low = front_y + rise * (relief + front)
        neck_low = front_y + rise * (relief + width - front)
        if max(throat_low, neck_low) < throat_high:
            break
    else:
        least = (max(throat_low, neck_low) + relief + half) / 0.85
        raise InputError(
            "The throat is too deep for the punch's height.",
            "neck_relief_mm",
            f"With this relief the punch is more than {least:.0f} mm high.",
        )
    back = [(front, front_y), (relief + width, neck_low), (relief + width, throat_high)]
    seat = [(half, seat_low), (half, top), (-half, top), (-half, seat_low)]
    throat = [(relief, throat_high), (relief, throat_low), (-front, front_y)]
    return _tidy([*tip, *back, *seat, *throat])


@lru_cache(maxsize=512)
def die_outline(die: Die) -> Ring:
    """The die, top face at y = 0, V centred on x = 0.

    The V's flanks and the top face meet ``v_opening_mm`` apart; each corner is rounded by
    the shoulder radius, whose centre lies V/2 + rd tan(beta/2) from the middle with
    beta = 90 - angle/2.

    Raises:
        InputError: its sizes do not fit together, or its points are no simple outline.
    """
    if die.shape == "points":
        return by_points(die.points_mm)
    _positive(die, ("v_opening_mm", "angle_deg", "height_mm", "width_mm"))
    if die.angle_deg >= 180.0:
        raise InputError("A V is sharper than 180°.", "angle_deg", "Give the angle of the V.")
    rd = die.shoulder_radius_mm
    centre = shoulder_centre_x_mm(die.v_opening_mm, die.angle_deg, rd)
    beta = 90.0 - die.angle_deg / 2.0
    depth = die.v_opening_mm / 2.0 * math.tan(math.radians(beta))
    half, height = die.width_mm / 2.0, die.height_mm
    if centre > half:
        raise InputError(
            "The V does not fit on the die.", "width_mm", f"Make it at least {2 * centre:.1f} mm."
        )
    if depth >= height:
        raise InputError(
            "The V is deeper than the die.", "height_mm", f"Make it more than {depth:.1f} mm."
        )
    right = arc((centre, -rd), rd, 90.0, 90.0 + beta)
    if right[-1][1] < -depth:
        raise InputError(
            "The shoulders are rounder than the V is deep.",
            "shoulder_radius_mm",
            "Make the shoulder radius smaller.",
        )
    left = [(-x, y) for x, y in reversed(right)]
    return _tidy([(-half, -height), (half, -height), (half, 0.0), *right, (0.0, -depth), *left,
                  (-half, 0.0)])  # fmt: skip


@lru_cache(maxsize=256)
def holder_outline(holder: Holder) -> Ring:
    """The holder with its seat for the punch at (0, 0), body above.

    Raises:
        InputError: its sizes do not fit together, or its points are no simple outline.
    """
    if holder.points_mm:
        return by_points(holder.points_mm)
    _positive(holder, ("height_mm", "overhang_front_mm", "overhang_back_mm"))
    return box(-holder.overhang_front_mm, 0.0, holder.overhang_back_mm, holder.height_mm)


@lru_cache(maxsize=32)
def ram_outline(press: Press) -> Ring:
    """The ram, the face that carries the holder at y = 0, body above.

    Raises:
        InputError: a size is not above 0, or its points are no simple outline.
    """
    if press.ram_points_mm:
        return by_points(press.ram_points_mm, "ram_points_mm")
    _positive(press, ("ram_width_mm", "ram_height_mm"))
    half = press.ram_width_mm / 2.0
    return box(-half, 0.0, half, press.ram_height_mm)


@lru_cache(maxsize=32)
def bed_outline(press: Press) -> Ring:
    """The bed, the face that carries the die at y = 0, body below.

    Raises:
        InputError: a size is not above 0, or its points are no simple outline.
    """
    if press.bed_points_mm:
        return by_points(press.bed_points_mm, "bed_points_mm")
    _positive(press, ("bed_width_mm", "bed_height_mm"))
    half = press.bed_width_mm / 2.0
    return box(-half, -press.bed_height_mm, half, 0.0)


def finger_outline(press: Press, x_mm: float, bottom_mm: float) -> Ring:
    """The gauge finger with its face at x, its lower edge at bottom, body to the back."""
    top = bottom_mm + press.finger_height_mm
    return box(x_mm, bottom_mm, x_mm + press.finger_depth_mm, top)


def tool_stack(
    press: Press, holder: Holder | None, punch: Punch, die: Die, tip_y_mm: float
) -> ToolStack:
    """The tools in the press frame with the punch's tip at (0, tip_y).

    Without a holder the punch sits in the ram itself.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
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


def _positive(thing: object, names: tuple[str, ...]) -> None:
    for name in names:
        value = getattr(thing, name)
        if not (math.isfinite(value) and value > 0.0):
            raise InputError(f"{value:g} is no size.", name, "Give a number above 0.")


def _tidy(points: list[Point]) -> Ring:
    """The points without repeats, as a ring."""
    kept: list[Point] = []
    for p in points:
        if not kept or math.dist(p, kept[-1]) > 1e-9:
            kept.append(p)
    if math.dist(kept[0], kept[-1]) <= 1e-9:
        kept.pop()
    return tuple(kept)
