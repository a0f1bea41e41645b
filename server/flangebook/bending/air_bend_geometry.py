"""Geometry of an air bend: punch depth, angle and where the sheet bears on the die.

The sheet's outer arc (radius r + t) and the die's rounded shoulder share a tangent line.
"""

from __future__ import annotations

from math import acos, atan2, cos, degrees, hypot, radians, sin, tan

from flangebook.bending.errors import RangeError
from flangebook.bending.limits import need_bend, need_not_negative, need_positive


def shoulder_centre_x_mm(
    v_opening_mm: float, die_angle_deg: float, shoulder_radius_mm: float
) -> float:
    """Distance [mm] from the die's centre line to the centre of a shoulder's rounding."""
    need_positive(v_opening_mm=v_opening_mm)
    need_not_negative(shoulder_radius_mm=shoulder_radius_mm)
    flank = radians(90.0 - die_angle_deg / 2.0)
    return v_opening_mm / 2.0 + shoulder_radius_mm * tan(flank / 2.0)


def punch_depth_mm(
    loaded_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
) -> float:
    """Punch travel [mm] from first touch of the flat sheet to the loaded included angle."""
    need_bend(loaded_angle_deg)
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    radii = inside_radius_mm + thickness_mm + shoulder_radius_mm
    if x_c < radii * sin(theta):
        raise RangeError(
            "The bend's radius fills the V before this angle is reached.",
            "inside_radius_mm",
            "Use a wider V opening or a smaller punch radius.",
        )
    return x_c * tan(theta) - radii * (1.0 / cos(theta) - 1.0)


def angle_at_depth(
    depth_mm: float,
    inside_radius_mm: float,
    thickness_mm: float,
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
) -> float:
    """Loaded included angle [deg] at a punch depth; the inverse of punch_depth_mm."""
    need_not_negative(depth_mm=depth_mm)
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    radii = inside_radius_mm + thickness_mm + shoulder_radius_mm
    reach = hypot(x_c, radii - depth_mm)
    if radii > reach:
        raise RangeError(
            f"A depth of {depth_mm} mm cannot be reached in this V.",
            "punch_depth_mm",
            "Use a wider V opening.",
        )
    theta = atan2(x_c, radii - depth_mm) - acos(radii / reach)
    return 180.0 - 2.0 * degrees(theta)


def contact_point(
    loaded_angle_deg: float, v_opening_mm: float, die_angle_deg: float, shoulder_radius_mm: float
) -> tuple[float, float]:
    """Where the sheet bears on the back shoulder, (x, y) [mm] in the press frame."""
    need_bend(loaded_angle_deg)
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    return (
        x_c - shoulder_radius_mm * sin(theta),
        shoulder_radius_mm * (cos(theta) - 1.0),
    )


def smallest_flange_mm(
    loaded_angle_deg: float,
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
    bend_deduction_mm: float = 0.0,
) -> float:
    """Shortest flange [mm], outside to the mould line, that still bears on the shoulder."""
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x, _ = contact_point(loaded_angle_deg, v_opening_mm, die_angle_deg, shoulder_radius_mm)
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    return max(x / cos(theta), x_c + bend_deduction_mm / 2.0)
