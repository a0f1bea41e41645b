"""Outlines of punch, die, holder, ram, bed and gauge finger, and the stack of them.

Plain geometry from the few sizes a shop can measure, or the points it gives. Each outline
is computed once and remembered: tools are frozen, so the same tool has the same outline.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from flangebook.bending.errors import InputError, OutlineError
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.geometry.ring import (
    Ring,
    arc,
    box,
    check_simple,
    counter_clockwise,
    mirrored,
    moved,
    tidy,
)
from flangebook.bending.tools.punch_shapes import gooseneck, straight
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

SEAM_MM = 0.01  # how level a die holder's foot and the bed's seat have to be


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
    front face lies ``neck_relief_mm`` behind the tip. A punch that is turned is the mirror
    image, whatever its shape.

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
    return gooseneck(punch) if punch.shape == "gooseneck" else straight(punch)


@lru_cache(maxsize=512)
def die_outline(die: Die) -> Ring:
    """The die, top face at y = 0, V centred on x = 0.

    The V's flanks and the top face meet ``v_opening_mm`` apart; each corner is rounded by
    the shoulder radius, whose centre lies V/2 + rd tan(beta/2) from the middle with
    beta = 90 - angle/2. A V of a block has the whole block's outline, by points.

    Raises:
        InputError: its sizes do not fit together, or its points are no simple outline.
    """
    if die.turned:
        return mirrored(die_outline(replace(die, turned=False)))
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
            "The V does not fit on the die.",
            "width_mm",
            "Make it at least {least_mm}.",
            {"least_mm": 2.0 * centre},
        )
    if depth >= height:
        raise InputError(
            "The V is deeper than the die.",
            "height_mm",
            "Make it more than {deep_mm}.",
            {"deep_mm": depth},
        )
    right = arc((centre, -rd), rd, 90.0, 90.0 + beta)
    if right[-1][1] < -depth:
        raise InputError(
            "The shoulders are rounder than the V is deep.",
            "shoulder_radius_mm",
            "Make the shoulder radius smaller.",
        )
    left = [(-x, y) for x, y in reversed(right)]
    return tidy([(-half, -height), (half, -height), (half, 0.0), *right, (0.0, -depth), *left,
                  (-half, 0.0)])  # fmt: skip


@lru_cache(maxsize=256)
def holder_outline(holder: Holder) -> Ring:
    """The holder with its seat for the punch at (0, 0), body above.

    A plain block, or clamps of the overhangs' width with a body of its own width above them.

    Raises:
        InputError: its sizes do not fit together, or its points are no simple outline.
    """
    if holder.points_mm and holder.shape != "clamps":
        return by_points(holder.points_mm)
    if holder.shape == "points":
        raise OutlineError(
            "The outline has no points.", "points_mm", "Give at least three.", code="too-few-points"
        )
    _positive(holder, ("height_mm", "overhang_front_mm", "overhang_back_mm"))
    front, back, top = holder.overhang_front_mm, holder.overhang_back_mm, holder.height_mm
    if holder.shape == "block":
        return box(-front, 0.0, back, top)
    _positive(holder, ("clamp_height_mm", "body_front_mm", "body_back_mm"))
    up, body_front, body_back = (
        float(value or 0.0)
        for value in (holder.clamp_height_mm, holder.body_front_mm, holder.body_back_mm)
    )
    if up >= top:
        raise InputError(
            "The clamps are taller than the holder.",
            "clamp_height_mm",
            "Give less than {top_mm}; a plain block has none.",
            {"top_mm": top},
        )
    return tidy([(-front, 0.0), (back, 0.0), (back, up), (body_back, up), (body_back, top),
                 (-body_front, top), (-body_front, up), (-front, up)])  # fmt: skip


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
    """What the die stands on, the face that carries it at y = 0: the bed, and on it the riser or
    die holder if there is one.

    Raises:
        InputError: a size is not above 0, or points are no simple outline.
    """
    if press.bed_points_mm:
        bed = by_points(press.bed_points_mm, "bed_points_mm")
    else:
        _positive(press, ("bed_width_mm", "bed_height_mm"))
        half = press.bed_width_mm / 2.0
        bed = box(-half, -press.bed_height_mm, half, 0.0)
    if press.die_holder_height_mm <= 0.0:
        return bed
    return _stood_on(die_holder_outline(press), moved(bed, 0.0, -press.die_holder_height_mm),
                     -press.die_holder_height_mm)  # fmt: skip


@lru_cache(maxsize=32)
def die_holder_outline(press: Press) -> Ring:
    """The riser or die holder, the face that carries the die at y = 0, body below.

    Raises:
        InputError: there is none, a size is not above 0, or points are no simple outline.
    """
    if press.die_holder_points_mm:
        return by_points(press.die_holder_points_mm, "die_holder_points_mm")
    _positive(press, ("die_holder_height_mm", "die_holder_width_mm"))
    half = (press.die_holder_width_mm or 0.0) / 2.0
    return box(-half, -press.die_holder_height_mm, half, 0.0)


def _stood_on(upper: Ring, lower: Ring, seam_mm: float) -> Ring:
    """One outline of two that meet on a level seam."""
    upper, lower = _without_level_points(upper), _without_level_points(lower)
    foot = _level_edge(upper, seam_mm, rightwards=True)
    seat = _level_edge(lower, seam_mm, rightwards=False)
    if foot is None or seat is None:
        raise OutlineError(
            "The die holder does not stand on the bed.",
            "die_holder_points_mm" if foot is None else "bed_points_mm",
            "Its foot and the bed's seat are level, {below_mm} below the die's seat.",
            numbers={"below_mm": -seam_mm},
            code="no-seat",
            lines_mm=(upper, lower),
        )
    over = [upper[(foot + 1 + i) % len(upper)] for i in range(len(upper))]
    under = [lower[(seat + 1 + i) % len(lower)] for i in range(len(lower))]
    ring = tidy([*over, *under])
    check_simple(ring, "die_holder_points_mm")
    return ring


def _without_level_points(ring: Ring) -> Ring:
    """The ring without points in the middle of a level stretch."""
    around = zip((ring[-1], *ring[:-1]), ring, (*ring[1:], ring[0]), strict=True)
    return tuple(
        b for a, b, c in around if not (a[1] == b[1] == c[1] and (b[0] - a[0]) * (c[0] - b[0]) > 0)
    )


def _level_edge(ring: Ring, y_mm: float, *, rightwards: bool) -> int | None:
    """The longest level edge at that height and in that direction, by its first point."""
    best, length = None, 0.0
    for i, (ax, ay) in enumerate(ring):
        bx, by = ring[(i + 1) % len(ring)]
        run = bx - ax if rightwards else ax - bx
        if max(abs(ay - y_mm), abs(by - y_mm)) <= SEAM_MM and run > length:
            best, length = i, run
    return best


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
        if value is None:
            raise InputError("This size is missing.", name, "Give a number above 0.")
        if not (math.isfinite(value) and value > 0.0):
            raise InputError(f"{value:g} is no size.", name, "Give a number above 0.")
