"""What a result's measurements amount to, one formula each.

The last digit of a measurement limits what a result can teach. How far readings scatter (a
protractor in two positions, a radius gauge, a calliper over two flanges and a strip, the
press's own display) and how far bends of one sheet scatter, readings included, is common
practice, no source.
"""

from __future__ import annotations

from math import radians

from flangebook.bending.geometry.setback import Dimension, setback_mm
from flangebook.bending.requirements import need

# Standard deviations from bend to bend of one sheet, the reading included.
SPRINGBACK_DEG = 0.3
RADIUS_SHARE = 0.08
LENGTHS_MM = 0.15
FLANGE_MM = 0.1  # one flange, the gauge's coming back included
DEPTH_MM = 0.05


def springback_measured(released_deg: float, loaded_deg: float) -> float:
    """Springback [deg]: included angle after release less the one under load.

    Args:
        released_deg: included angle after release [deg].
        loaded_deg: included angle under load, or the one set [deg].

    Raises:
        InputError: an angle is no bend.

    Source: definition.

    >>> springback_measured(91.5, 89.0)
    2.5
    """
    need(measured_deg=released_deg, loaded_deg=loaded_deg)
    return released_deg - loaded_deg


def deduction_measured(
    flat_length_mm: float, flange_left_mm: float, flange_right_mm: float
) -> float:
    """Bend deduction [mm]: both flanges after the bend less the flat length before it.

    Args:
        flat_length_mm: length of the strip across the bend line, before [mm].
        flange_left_mm: one flange after the bend [mm].
        flange_right_mm: the other [mm].

    Raises:
        InputError: a length is not above zero.

    Source: definition of the bend deduction.

    >>> round(deduction_measured(100.0, 50.0, 53.9), 3)
    3.9
    """
    need(
        flat_length_mm=flat_length_mm,
        flange_left_mm=flange_left_mm,
        flange_right_mm=flange_right_mm,
    )
    return flange_left_mm + flange_right_mm - flat_length_mm


def k_factor_from_deduction(
    bend_deduction_mm: float,
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """K-factor [-] that a deduction amounts to: ((2 setback - deduction) / b - r) / t.

    Args:
        bend_deduction_mm: [mm].
        included_angle_deg: angle between the flats [deg], b is 180 less this, in radians.
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness t [mm].
        dimension: how the flanges are measured.

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: Groover's allowance b (r + K t), solved for K.

    >>> round(k_factor_from_deduction(3.602, 90, 2, 2), 3)  # of 2 setbacks of 4 mm
    0.4
    """
    setbacks = 2.0 * setback_mm(included_angle_deg, inside_radius_mm, thickness_mm, dimension)
    arc = radians(180.0 - included_angle_deg)
    return ((setbacks - bend_deduction_mm) / arc - inside_radius_mm) / thickness_mm
