"""Hands and handling: mass, lifting, edges that swing up, hands near the punch.

These are reminders with numbers. They promise nothing and claim compliance with nothing: the
press's manual and guards, the shop's own rules, local codes and a trained person come first.

Thresholds without a source are the shop's own common sense and marked so.
"""

from __future__ import annotations

from math import asin, degrees, floor, radians, sin, sqrt, tan

from flangebook.bending.checks import Check
from flangebook.bending.geometry.air_bend_geometry import (
    contact_point,
    edge_rate_mm_per_mm,
    shoulder_centre_x_mm,
)
from flangebook.bending.motion.lifting import (
    FREQUENCY_MULTIPLIER,
    MOST_HORIZONTAL_CM,
    horizontal_of_width_cm,
    recommended_weight_kg,
)
from flangebook.bending.ordering.cost import HAND_DISTANCE_MM
from flangebook.bending.requirements import need
from flangebook.bending.tools.tooling import Die

LIGHT_KG = 3.0  # ISO 11228-1 does not count lighter objects as lifting; from memory
HANDS_CODE = "hand-distance"
LONG_PART_MM = 600.0  # own figure, no source: arms apart, each hand at an end of the part
HIGH_EDGE_MM = 300.0  # own figure, no source
FAST_EDGE_MM_S = 500.0  # own figure, no source
SMALL_SWING_MM = 100.0  # own figure, no source: below it no speed is asked for


def lifting(mass_kg: float, length_mm: float, width_mm: float) -> Check:
    """The blank's mass against what one and two people should lift.

    Taken as: held at the long sides, so that H follows from the shorter side; hands at 75 cm;
    raised by 50 cm; up to one lift in five minutes all day; a poor grip. The equation is for one
    person: two are taken as each carrying half, which it does not cover.

    Args:
        mass_kg: mass of the blank [kg].
        length_mm: one side of the blank [mm].
        width_mm: the other [mm].

    Raises:
        InputError: a size is not above zero.
    """
    need(mass_kg=mass_kg, length_mm=length_mm, width_mm=width_mm)
    numbers = {"mass_kg": mass_kg}
    if mass_kg <= LIGHT_KG:
        return Check("ok", "lifting", "The blank has {mass_kg}.", "", numbers)
    reach_cm = horizontal_of_width_cm(min(length_mm, width_mm) / 10.0)
    if reach_cm > MOST_HORIZONTAL_CM:
        return Check(
            "caution",
            "lifting-wide",
            "The blank has {mass_kg} and is too wide to be held close: the lifting equation "
            "allows one person no load at that reach.",
            "Two people, or a table, sheet supports or a hoist.",
            numbers,
        )
    limit = recommended_weight_kg(
        reach_cm, 75.0, 50.0, frequency_multiplier=FREQUENCY_MULTIPLIER[0.2][8], coupling="poor"
    )
    numbers |= {"limit_kg": limit, "two_people_kg": 2.0 * limit}
    if mass_kg <= limit:
        words = "The blank has {mass_kg}; one person should lift up to {limit_kg} of this size."
        return Check("ok", "lifting", words, "", numbers)
    words = "The blank has {mass_kg}, more than the {limit_kg} one person should lift of this size."
    if mass_kg <= 2.0 * limit:
        return Check("caution", "lifting-two", words, "Lift it with two people.", numbers)
    return Check(
        "caution",
        "lifting-hoist",
        f"{words} Two should not lift it by hand either ({{two_people_kg}}).",
        "Use a hoist, a table or sheet supports.",
        numbers,
    )


def swing_up(
    flange_mm: float,
    loaded_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    die: Die,
    bending_speed_mm_s: float | None,
) -> Check:
    """How high and how fast the edge in front of the press swings up during the bend.

    Args:
        flange_mm: from the mould line to the edge on the operator's side [mm].
        loaded_angle_deg: sharpest included angle under load [deg].
        inside_radius_mm: inside radius [mm].
        thickness_mm: sheet thickness [mm].
        die: the die.
        bending_speed_mm_s: ram speed while bending [mm/s], None is unknown.

    Raises:
        InputError: a size is unusable.
        RangeError: the angle cannot be reached in this die.
    """
    need(flange_mm=flange_mm, thickness_mm=thickness_mm)
    tool = (die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x, y = contact_point(loaded_angle_deg, *tool)
    height = y - x * tan(theta) + flange_mm * sin(theta)
    numbers = {"edge_height_mm": max(height, 0.0), "flange_mm": flange_mm}
    words = "The edge in front swings up to {edge_height_mm} above the die"
    if bending_speed_mm_s is None:
        if height <= SMALL_SWING_MM:
            return Check("ok", "swing-up", f"{words}.", "", numbers)
        return Check(
            "caution" if height > HIGH_EDGE_MM else "unknown",
            "swing-up",
            f"{words}; how fast is not known, because the bending speed is not on record.",
            "Keep face and hands out of its way; enter the press's bending speed.",
            numbers,
        )
    need(bending_speed_mm_s=bending_speed_mm_s)
    rate = _fastest_rate(flange_mm, loaded_angle_deg, inside_radius_mm, thickness_mm, die)
    numbers["edge_speed_mm_s"] = rate * bending_speed_mm_s
    words += ", at up to {edge_speed_mm_s}."
    if height <= HIGH_EDGE_MM and numbers["edge_speed_mm_s"] <= FAST_EDGE_MM_S:
        return Check("ok", "swing-up", words, "", numbers)
    return Check(
        "caution",
        "swing-up",
        words,
        "Stand to the side of its way, follow it with flat hands from below or use a sheet "
        "support, and bend slowly.",
        numbers,
    )


def _fastest_rate(
    flange_mm: float,
    loaded_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    die: Die,
) -> float:
    """Largest swing of the edge for each mm of punch travel [mm/mm] up to the loaded angle."""
    tool = (die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    x_c = shoulder_centre_x_mm(*tool)
    radii = inside_radius_mm + thickness_mm + die.shoulder_radius_mm
    # The rate cos^2 / (x_c - radii sin) has one peak, where radii (1 + sin^2) = 2 x_c sin;
    # the stroke may end before it.
    peak = (x_c - sqrt(max(x_c**2 - radii**2, 0.0))) / radii
    fastest_deg = max(loaded_angle_deg, 180.0 - 2.0 * degrees(asin(peak)))
    return edge_rate_mm_per_mm(fastest_deg, flange_mm, inside_radius_mm, thickness_mm, *tool)


def hand_distance(
    held_edge_mm: float,
    die_width_mm: float,
    bend_length_mm: float = 0.0,
    away_mm: float = 0.0,
) -> Check:
    """Room for the hands on the operator's side when the sheet lies against the gauge.

    A note on where to hold where the sheet offers a hold outside the safe distance or is long
    enough to be held at its two ends; a caution where it does not.

    Args:
        held_edge_mm: from the tools' centre line to the edge that is held [mm].
        die_width_mm: width of the die [mm]; its front face is where the hands must stay off.
        bend_length_mm: length of the part along the bend [mm].
        away_mm: from the die's front edge to the place of the sheet in front that is furthest
            from it, such as the edge of a flange that stands up [mm].

    Raises:
        InputError: a size is unusable.

    Source: a safe distance of 4 in (102 mm) from the front of the die, OSHA CPL 02-01-025
    (1997) as quoted in SMACNA, Press Brake Safety Compliance Kit, employers' manual. It is for
    cases where guards cannot be used, on conditions; it is no permission.
    """
    need(
        held_edge_mm=held_edge_mm,
        die_width_mm=die_width_mm,
        along_mm=bend_length_mm,
        away_mm=away_mm,
    )
    room = held_edge_mm - die_width_mm / 2.0
    # Whole mm, rounded down: "only 102 mm, keep 102 mm away" is never said.
    numbers = {"room_mm": float(floor(max(room, 0.0))), "safe_mm": HAND_DISTANCE_MM}
    if room >= HAND_DISTANCE_MM:
        words = "{room_mm} to hold in front of the die."
        return Check("ok", HANDS_CODE, words, "", numbers)
    words = "Only {room_mm} to hold in front of the die. Keep hands {safe_mm} away."
    if away_mm >= HAND_DISTANCE_MM:
        numbers["away_mm"] = away_mm
        do = "Hold it by the flange that stands up, at its far edge {away_mm} from the die."
        return Check("ok", HANDS_CODE, words, do, numbers)
    if bend_length_mm >= LONG_PART_MM:
        do = (
            "Hold this long part at its two ends, with the hands outside the tools. Where an end "
            "cannot be held from outside, use tongs or a magnet."
        )
        return Check("ok", HANDS_CODE, words, do, numbers)
    return Check(
        "caution",
        HANDS_CODE,
        words,
        "Hold it with tongs, a magnet or a longer piece, never with fingers. If guards cannot be "
        "used on a piece this small, do not bend it on the press brake.",
        numbers,
    )


def nothing_to_hold(held_edge_mm: float, die_width_mm: float) -> Check | None:
    """A stop when the sheet ends above the die, so that nothing stands in front to be held.

    Args:
        held_edge_mm: from the tools' centre line to the edge on the operator's side [mm].
        die_width_mm: width of the die [mm].
    """
    inside = die_width_mm / 2.0 - held_edge_mm
    if inside < 0.0:
        return None
    return Check(
        "stop",
        "nothing-to-hold",
        "The sheet ends above the die, {inside_mm} behind its front face: there is nothing to "
        "hold.",
        "Gauge the other end, bend the part the other way round, or use a narrower die.",
        {"inside_mm": inside},
    )


def hanging_flange(below_die_top_mm: float, die_height_mm: float) -> Check | None:
    """A caution when a finished flange hangs in front of or behind the die; None if none does.

    Args:
        below_die_top_mm: how far it hangs below the die's top face [mm]; 0 or less is none.
        die_height_mm: height of the die [mm].
    """
    if below_die_top_mm <= 0.0:
        return None
    numbers = {"hangs_mm": below_die_top_mm, "die_height_mm": die_height_mm}
    words = "A finished flange hangs {hangs_mm} below the die's top"
    words += ", past the die and beside the bed." if below_die_top_mm > die_height_mm else "."
    return Check(
        "caution",
        "hanging-flange",
        words,
        "Set the sheet down from above, keep fingers from between flange and die, and make sure "
        "it clears the bed.",
        numbers,
    )


_GENERAL = (
    (
        "general-guards",
        "Guards and light curtains protect your hands.",
        "Check that they are fitted, set and working before the first stroke; never bypass one.",
    ),
    (
        "general-hands",
        "Punch and die close with far more force than a hand can bear.",
        "Never reach between the tools, nor between part and gauge. Hold the sheet from the "
        "outside, thumbs out of the bend.",
    ),
    (
        "general-pedal",
        "A foot left on the pedal bends when nobody means to.",
        "Take the foot off between strokes; with two people at the press, agree who has the pedal.",
    ),
    (
        "general-edges",
        "Sheet edges and burrs cut, and wings swing up during the bend.",
        "Wear gloves for carrying as the shop's rules say, and eye protection; stand clear of "
        "the wings' way.",
    ),
    (
        "general-load",
        "A tool loaded past its rating can burst.",
        "Keep to the plates of press and tools. Use no damaged, mixed or unmarked tool.",
    ),
    (
        "general-authority",
        "These are predictions for planning, not a safety assessment.",
        "The press's manual, the tools' papers, local codes and a trained, authorised person "
        "come first. Try every set-up on a test piece.",
    ),
)


def general_cautions() -> tuple[Check, ...]:
    """Cautions that are true of every bend.

    They are level "caution" and never change; keep them out of the worst level of a plan, or
    that level says nothing any more.
    """
    return tuple(Check("caution", code, words, do) for code, words, do in _GENERAL)
