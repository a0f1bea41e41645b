"""The tools as the sheet meets them: die shoulders, punch tip, and the friction between.

Section across the bend, x = 0 the tools' centre line, y = 0 the die's top face, theta half the
bend angle under load. The sheet's middle line is at half a thickness from the shoulder it bears
on, so it meets the shoulder's normal at

    x = x_c - (rd + t/2) sin(theta),   y = -rd + (rd + t/2) cos(theta)

and wraps the punch tip on a radius rp + t/2.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, pi, radians

import numpy as np

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.requirements import need

LEAST_V_OVER_T, MOST_V_OVER_T = 4.0, 40.0
MOST_FRICTION = 0.5


@dataclass(frozen=True, slots=True)
class Tools:
    """Die and punch. Made by :func:`tools`, which checks them.

    v_opening_mm: between the sharp corners of top face and flanks. die_angle_deg: of the V.
    shoulder_radius_mm, punch_radius_mm: roundings. friction: coefficient at the shoulders [-].
    """

    v_opening_mm: float
    die_angle_deg: float
    shoulder_radius_mm: float
    punch_radius_mm: float
    friction: float = 0.0

    @property
    def shoulder_x_mm(self) -> float:
        """Distance [mm] of the shoulder's centre from the tools' centre line."""
        flank = np.radians(90.0 - self.die_angle_deg / 2.0)
        half: float = self.v_opening_mm / 2.0 + self.shoulder_radius_mm * np.tan(flank / 2.0)
        return half

    @property
    def friction_angle_rad(self) -> float:
        """Angle between the shoulder's force and its normal while the sheet slides in [rad]."""
        angle: float = np.arctan(self.friction)
        return angle


def tools(
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
    punch_radius_mm: float,
    friction: float = 0.0,
) -> Tools:
    """Die and punch, checked.

    Args:
        v_opening_mm: V [mm].
        die_angle_deg: angle of the V [deg], above 0 to under 180.
        shoulder_radius_mm: die shoulder radius rd [mm], at most half the opening.
        punch_radius_mm: punch tip radius rp [mm], at most half the opening; 0 is sharp.
        friction: coefficient of friction at the shoulders [-], 0 to 0.5.

    Raises:
        InputError: a size is unusable or the punch or shoulders do not fit the opening.
    """
    need(
        v_opening_mm=v_opening_mm,
        shoulder_radius_mm=shoulder_radius_mm,
        punch_radius_mm=punch_radius_mm,
        friction=friction,
    )
    shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    half = v_opening_mm / 2.0
    if shoulder_radius_mm > half:
        raise InputError(
            "Shoulders rounded by {rounded_mm} are wider than the die's opening of {v_mm}.",
            "shoulder_radius_mm",
            "Give a shoulder radius of at most {half_mm}, half the opening.",
            {"rounded_mm": shoulder_radius_mm, "v_mm": v_opening_mm, "half_mm": half},
        )
    if punch_radius_mm > half:
        raise InputError(
            "A punch tip of {tip_mm} radius does not go into an opening of {v_mm}.",
            "punch_radius_mm",
            "Use a tip of at most {half_mm}, half the opening, or a wider die.",
            {"tip_mm": punch_radius_mm, "v_mm": v_opening_mm, "half_mm": half},
        )
    if friction > MOST_FRICTION:
        raise InputError(f"A friction coefficient of {friction:g} is no sheet on a die.",
                         "friction", "Give a value between 0 and 0.5; 0.1 is usual.")  # fmt: skip
    return Tools(v_opening_mm, die_angle_deg, shoulder_radius_mm, punch_radius_mm, friction)


def need_model_range(thickness_mm: float, die_and_punch: Tools) -> None:
    """Refuse an opening the model was not made for: V from 4 t to 40 t.

    Raises:
        RangeError: saying which opening would do.
    """
    v, t = die_and_punch.v_opening_mm, thickness_mm
    if not LEAST_V_OVER_T * (1 - 1e-9) <= v / t <= MOST_V_OVER_T * (1 + 1e-9):
        raise RangeError(
            f"The bend model holds for openings of 4 t to 40 t; this one is {v / t:.3g} t.",
            "v_opening_mm",
            "Use an opening between {least_mm} and {most_mm}.",
            {"least_mm": LEAST_V_OVER_T * t, "most_mm": MOST_V_OVER_T * t},
        )


def steepest_half_angle(thickness_mm: float, die_and_punch: Tools) -> float:
    """Half the largest bend angle under load [rad] the tools allow.

    The leg lies on the die's flank, or the sheet round the punch tip fills the opening; a
    thousandth of an angle before that.

    Source: plane geometry.

    >>> degrees = 180.0 / pi
    >>> round(steepest_half_angle(2.0, tools(16.0, 86.0, 2.0, 1.0)) * degrees, 6)  # the die's flank
    47.0
    """
    flank = pi / 2.0 - radians(die_and_punch.die_angle_deg) / 2.0
    radii = die_and_punch.punch_radius_mm + thickness_mm + die_and_punch.shoulder_radius_mm
    fill = asin(min(1.0, die_and_punch.shoulder_x_mm / radii))
    return min(flank, 0.999 * fill)
