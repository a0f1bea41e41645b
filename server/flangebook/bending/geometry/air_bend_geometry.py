"""Geometry of an air bend: punch depth, angle, and where the sheet bears on the die.

Section across the bend, in the press frame: x = 0 the tools' centre line, y = 0 the die's top
face. The flat sheet lies from y = 0 to y = t. At a loaded included angle A both legs have
risen by theta = (180 - A) / 2. The sheet's outer arc (radius r + t) goes over into a straight
leg, and the leg touches the die's rounded shoulder (radius rd). The leg is the tangent line
that arc and shoulder share, which gives the punch depth in closed form:

    depth = x_c tan(theta) - (r + t + rd) (1 / cos(theta) - 1)

with x_c the distance from the centre line to the centre of the shoulder's rounding. It holds
as long as the arc ends before the shoulder: x_c >= (r + t + rd) sin(theta).

Own derivation from elementary geometry, no source; checked in the tests by an independent
numerical construction.
"""

from __future__ import annotations

from math import acos, atan2, cos, degrees, hypot, radians, sin, tan

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.requirements import need


def shoulder_centre_x_mm(
    v_opening_mm: float, die_angle_deg: float, shoulder_radius_mm: float
) -> float:
    """Distance [mm] from the centre line to the centre of a shoulder's rounding, x_c.

    Args:
        v_opening_mm: V [mm], between the sharp corners of top face and flanks.
        die_angle_deg: angle of the V [deg], above 0 to under 180.
        shoulder_radius_mm: rounding of those corners [mm]; 0 is sharp.

    Raises:
        InputError: a size is unusable.

    Source: own derivation from plane geometry, as at the top of the module.

    >>> shoulder_centre_x_mm(16, 86, 0)
    8.0
    """
    need(
        v_opening_mm=v_opening_mm,
        die_angle_deg=die_angle_deg,
        shoulder_radius_mm=shoulder_radius_mm,
    )
    if die_angle_deg >= 180.0:
        raise InputError(f"{die_angle_deg} degrees is no V.", "angle_deg", "Give less than 180.")
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
    """Punch travel [mm] from first touch of the flat sheet to a loaded included angle.

    Args:
        loaded_angle_deg: angle between the legs under load [deg], above 0 to under 180.
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        die_angle_deg: angle of the V [deg].
        shoulder_radius_mm: die shoulder radius rd [mm].

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: the bend's radius fills the V before the angle is reached.

    Source: own derivation from plane geometry, as at the top of the module.

    >>> round(punch_depth_mm(90, 0, 1e-9, 16, 86, 0), 6)  # a sharp fold: V/2
    8.0
    """
    need(
        included_angle_deg=loaded_angle_deg,
        inside_radius_mm=inside_radius_mm,
        thickness_mm=thickness_mm,
    )
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    radii = inside_radius_mm + thickness_mm + shoulder_radius_mm
    if loaded_angle_deg == 0.0 or x_c < radii * sin(theta):
        raise RangeError(
            "With an inside radius of {radius_mm} the sheet fills a V of {v_mm} before it reaches "
            "{angle_deg}.",
            "v_opening_mm",
            "Use a wider V or a punch with a smaller tip.",
            {"radius_mm": inside_radius_mm, "v_mm": v_opening_mm, "angle_deg": loaded_angle_deg},
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
    """Loaded included angle [deg] at a punch depth: the inverse of :func:`punch_depth_mm`.

    Args:
        depth_mm: punch travel from first touch [mm]; 0 is flat.
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        die_angle_deg: angle of the V [deg].
        shoulder_radius_mm: die shoulder radius rd [mm].

    Raises:
        InputError: a size is unusable.
        RangeError: deeper than the sheet can follow in this V.

    Source: own derivation: the closed form of the module solved for the angle.

    >>> round(angle_at_depth(8, 0, 1e-9, 16, 86, 0), 6)
    90.0
    """
    need(depth_mm=depth_mm, inside_radius_mm=inside_radius_mm, thickness_mm=thickness_mm)
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    radii = inside_radius_mm + thickness_mm + shoulder_radius_mm
    # depth = x_c tan(theta) - radii (1/cos(theta) - 1) is one cosine of a shifted angle.
    reach = hypot(x_c, radii - depth_mm)
    # Where the radii fill the V there is a deepest point; the root beyond it is no bend.
    if radii > reach or (radii > x_c and depth_mm > radii):
        raise RangeError(
            "The sheet cannot follow the punch {depth_mm} into a V of {v_mm} with an inside radius "
            "of {radius_mm}.",
            "punch_depth_mm",
            "Use a wider V or less depth.",
            {"depth_mm": depth_mm, "v_mm": v_opening_mm, "radius_mm": inside_radius_mm},
        )
    theta = atan2(x_c, radii - depth_mm) - acos(radii / reach)
    return 180.0 - 2.0 * degrees(theta)


def contact_point(
    loaded_angle_deg: float, v_opening_mm: float, die_angle_deg: float, shoulder_radius_mm: float
) -> tuple[float, float]:
    """Where the sheet bears on the shoulder at the back, (x, y) [mm] in the press frame.

    Args:
        loaded_angle_deg: angle between the legs under load [deg].
        v_opening_mm: die opening V [mm].
        die_angle_deg: angle of the V [deg].
        shoulder_radius_mm: die shoulder radius rd [mm].

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: own derivation from plane geometry, as at the top of the module.

    >>> contact_point(90, 16, 86, 0)
    (8.0, 0.0)
    """
    need(included_angle_deg=loaded_angle_deg)
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    return x_c - shoulder_radius_mm * sin(theta), -shoulder_radius_mm * (1.0 - cos(theta))


def smallest_flange_mm(
    loaded_angle_deg: float,
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
    bend_deduction_mm: float = 0.0,
) -> float:
    """Shortest flange [mm] that still bears on the die, outside to the mould line.

    The larger of two needs: at the sharpest loaded angle the leg still reaches the point where
    it bears on the shoulder; flat, before the bend, the sheet covers the shoulder's rounding.
    Published charts print 0.7 V for a square bend, which is the first need on a sharp shoulder.

    Args:
        loaded_angle_deg: sharpest angle under load [deg], above 0 to under 180.
        v_opening_mm: die opening V [mm].
        die_angle_deg: angle of the V [deg].
        shoulder_radius_mm: die shoulder radius rd [mm].
        bend_deduction_mm: deduction to the mould line [mm]; a flat sheet reaches that much
            less, half of it on either side of the bend line.

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: own derivation from plane geometry, as at the top of the module.

    >>> round(smallest_flange_mm(90, 16, 86, 0) / 16, 3)
    0.707
    """
    if loaded_angle_deg == 0.0:
        raise InputError(
            "A V die cannot press a bend closed.", "included_angle_deg", "Make it as a hem."
        )
    x, _ = contact_point(loaded_angle_deg, v_opening_mm, die_angle_deg, shoulder_radius_mm)
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    return max(x / cos(theta), x_c + bend_deduction_mm / 2.0)


def edge_rate_mm_per_mm(
    loaded_angle_deg: float,
    edge_mm: float,
    inside_radius_mm: float,
    thickness_mm: float,
    v_opening_mm: float,
    die_angle_deg: float,
    shoulder_radius_mm: float,
) -> float:
    """How far a leg's edge swings for each mm of punch travel [mm/mm] at a loaded angle.

    Args:
        loaded_angle_deg: angle between the legs under load [deg]; 180 is the first touch.
        edge_mm: distance of the edge from the mould line along the leg [mm].
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        die_angle_deg: angle of the V [deg].
        shoulder_radius_mm: die shoulder radius rd [mm].

    Raises:
        RangeError: the bend's radius fills the V at this angle.

    Source: own derivation: the slope of :func:`punch_depth_mm`.

    >>> round(edge_rate_mm_per_mm(180, 100, 0, 1e-9, 16, 86, 0), 6)  # 100 / (V/2)
    12.5
    """
    theta = radians(180.0 - loaded_angle_deg) / 2.0
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    slack = x_c - (inside_radius_mm + thickness_mm + shoulder_radius_mm) * sin(theta)
    if slack <= 0.0:
        raise RangeError(
            "The sheet fills a V of {v_mm} at {angle_deg}.",
            "v_opening_mm",
            "Use a wider V.",
            {"v_mm": v_opening_mm, "angle_deg": loaded_angle_deg},
        )
    return edge_mm * cos(theta) ** 2 / slack
