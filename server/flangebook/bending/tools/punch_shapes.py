"""Outlines of punches from the few sizes a shop can measure: straight, gooseneck."""

from __future__ import annotations

import math

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import Point, Ring, arc, tidy
from flangebook.bending.tools.tooling import Punch


def straight(punch: Punch) -> Ring:
    """A symmetrical punch: nose, then a body as wide as given up to the seat.

    Raises:
        InputError: nose and body do not fit together.
    """
    tip = _tip(punch)
    half = punch.body_width_mm / 2.0
    shoulder = _flank_top(tip, half, punch)
    if shoulder >= punch.height_mm:
        raise InputError(
            "The nose is longer than the punch.",
            "height_mm",
            "With this nose and body the punch is more than {nose_mm} high.",
            {"nose_mm": shoulder},
        )
    top = punch.height_mm
    return tidy([*tip, (half, shoulder), (half, top), (-half, top), (-half, shoulder)])


def gooseneck(punch: Punch) -> Ring:
    """Nose, a neck set back by the relief, then forward to the seat at 45 degrees.

    The neck leans back along the nose's own flank, so that a leg bent as sharp as the nose
    clears it; where the punch is too short for that, at 45 degrees. Up there the throat begins
    to close at ``throat_top_mm``, or as high as it can.

    Raises:
        InputError: throat, neck and height do not fit together.
    """
    width, relief, top = punch.body_width_mm, punch.neck_relief_mm, punch.height_mm
    neck = width if punch.neck_width_mm is None else punch.neck_width_mm
    if neck <= 0.0:
        raise InputError("A neck has a thickness.", "neck_width_mm", "Give a number above 0.")
    if relief <= 0.0:
        raise InputError(
            "A gooseneck has a throat.", "neck_relief_mm", "Give how far it lies behind the tip."
        )
    tip = _tip(punch)
    _flank_top(tip, width / 2.0, punch)
    half, front = width / 2.0, max(width / 4.0, tip[-1][0])
    front_y = _flank_top(tip, front, punch)
    throat_high = _throat_top(punch, relief + half)
    seat_low = throat_high + relief + half
    throat_low, neck_low = _neck_starts(punch, throat_high, front, front_y, neck)
    # The neck's back runs over into the body; where it lies before the body's, the body bulges.
    back = [(front, front_y), (relief + neck, neck_low), (relief + neck, throat_high)]
    seat = [(half, seat_low), (half, top), (-half, top), (-half, seat_low)]
    throat = [(relief, throat_high), (relief, throat_low), (-front, front_y)]
    return tidy([*tip, *back, *seat, *throat])


def _throat_top(punch: Punch, rise: float) -> float:
    """Where the throat begins to close; it closes over ``rise`` and the seat stands above."""
    top = punch.height_mm
    if punch.throat_top_mm is None:
        return top - min(0.15 * top, punch.body_width_mm) - rise
    if punch.throat_top_mm + rise >= top:
        raise InputError(
            "The throat reaches too high for the punch.",
            "throat_top_mm",
            "Give less than {most_mm}, or a higher punch.",
            {"most_mm": max(top - rise, 0.0)},
        )
    return punch.throat_top_mm


def _neck_starts(
    punch: Punch, throat_high: float, front: float, front_y: float, neck: float
) -> tuple[float, float]:
    """How high the neck's front and back begin."""
    relief = punch.neck_relief_mm
    steep = 1.0 / math.tan(math.radians(punch.angle_deg) / 2.0)
    lowest = math.inf
    for rise in (max(steep, 1.0), 1.0):
        throat_low = front_y + rise * (relief + front)
        neck_low = front_y + rise * max(relief + neck - front, 0.0)
        if max(throat_low, neck_low) < throat_high:
            return throat_low, neck_low
        lowest = min(lowest, max(throat_low, neck_low))
    if punch.throat_top_mm is not None:
        raise InputError(
            "The throat is too deep for where it closes.",
            "throat_top_mm",
            "With this relief it closes above {lowest_mm}.",
            {"lowest_mm": lowest},
        )
    least = (lowest + relief + punch.body_width_mm / 2.0) / 0.85
    raise InputError(
        "The throat is too deep for the punch's height.",
        "neck_relief_mm",
        "With this relief the punch is more than {least_mm} high.",
        {"least_mm": least},
    )


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
            "Make the body at least {least_mm} wide, or the radius smaller.",
            {"least_mm": 2.0 * x},
        )
    return y + (half_width - x) / math.tan(math.radians(punch.angle_deg) / 2.0)
