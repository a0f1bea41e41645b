"""Plain tools by rule, for what the shop has not entered: counted with, never called owned.

Everything here is common practice without a source and is marked as assumed in the findings.
A stand-in has no code and no rating.
"""

from __future__ import annotations

import math

from flangebook.bending.checks import Check
from flangebook.bending.handbook.inside_radius import SHARP_TIP_OVER_T
from flangebook.bending.handbook.v_opening import assumed_die, nearest_nominal_v_mm, preferred_v_mm
from flangebook.bending.tools.tooling import Die, Press, Punch

USUAL_NOSE_DEG = 86.0
ACUTE_NOSE_DEG = 28.0
SHARPEST_NOSE_DEG = 20.0
SPARE_DEG = 6.0  # how much sharper than the finished bend its tools should be


def nose_for(included_angle_deg: float) -> float:
    """The tool angle to count with for a bend of this included angle [deg]."""
    if included_angle_deg >= USUAL_NOSE_DEG + 2.0:
        return USUAL_NOSE_DEG
    return max(min(ACUTE_NOSE_DEG, included_angle_deg - SPARE_DEG), SHARPEST_NOSE_DEG)


def punch_by_rule(
    thickness_mm: float, included_angle_deg: float, tip_radius_mm: float | None = None
) -> Punch:
    """A straight punch whose tip does not crease the sheet."""
    least = math.ceil(SHARP_TIP_OVER_T * thickness_mm * 10.0) / 10.0
    tip = least if tip_radius_mm is None else tip_radius_mm
    return Punch(
        code="",
        name="assumed",
        angle_deg=nose_for(included_angle_deg),
        tip_radius_mm=tip,
        height_mm=max(100.0, 4.0 * tip),
        body_width_mm=max(20.0, 2.5 * tip),
        rating_kn_per_m=None,
        segments_mm=(),
    )


def die_by_rule(
    thickness_mm: float, included_angle_deg: float, v_opening_mm: float | None = None
) -> Die:
    """A plain V of the opening given, or of the nominal one nearest to 8 t."""
    v = v_opening_mm
    if v is None:
        nominal, wanted = nearest_nominal_v_mm(thickness_mm), preferred_v_mm(thickness_mm)
        v = nominal if 0.7 < nominal / wanted < 1.4 else wanted
    die = assumed_die(v, nose_for(included_angle_deg))
    flank = math.radians(90.0 - die.angle_deg / 2.0)
    height = max(60.0, 1.3 * v / 2.0 * math.tan(flank) + 10.0)
    return Die(
        "", die.name, v, die.angle_deg, die.shoulder_radius_mm, height, 1.3 * v + 20.0, None, ()
    )


def press_to_draw_with(press: Press | None) -> Press:
    """The press, or a plain one whose outline is not shown and whose gauge reaches anywhere."""
    if press is not None:
        return press
    far = 1.0e5
    return Press("", 1.0, far, far, 400.0, 200.0, 200.0, -far, far, -far, far, 12.0, 40.0)


def assumed_checks(die: Die | None, punch: Punch | None, press: Press | None) -> tuple[Check, ...]:
    """What was counted with because the shop has not entered it.

    die, punch: the tools counted with, None when there are none to speak of.
    """
    found = []
    if press is None:
        found.append(
            Check("unknown", "press-unknown", "No press is entered: its load is not checked.",
                  "Enter the press with the figures on its plate.")
        )  # fmt: skip
    if die is not None and not die.code:
        found.append(
            Check("unknown", "die-assumed",
                  "No die of the crib is used: counted with a plain V of {v_opening_mm}, "
                  "{die_angle_deg}, shoulders {shoulder_mm}.",
                  "Enter the die that will be used; its real shoulder radius changes the depth.",
                  {"v_opening_mm": die.v_opening_mm, "die_angle_deg": die.angle_deg,
                   "shoulder_mm": die.shoulder_radius_mm})
        )  # fmt: skip
    if punch is not None and not punch.code:
        found.append(
            Check("unknown", "punch-assumed",
                  "No punch of the crib is used: counted with a tip of {tip_mm}.",
                  "Enter the punch that will be used.", {"tip_mm": punch.tip_radius_mm})
        )  # fmt: skip
    return tuple(found)
