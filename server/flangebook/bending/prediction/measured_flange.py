"""What a measured flange says of the back gauge.

A flange that the gauge sets directly runs from the finger's face to the mould line of the bend, so
it is as much too long as the gauge stands too far back: next X = X less the error. The length that
belongs to a gauge place depends a little on the angle that came out, since a sharper bend takes
up more of the sheet: by half the deduction at that angle. That is taken out first, so that an
open bend does not move the gauge.
"""

from __future__ import annotations

from flangebook.bending.geometry.setback import Dimension, setback_mm
from flangebook.bending.handbook.allowance import allowance_from_k
from flangebook.bending.requirements import need

LEAST_ASK_BACK_MM, MOST_ASK_BACK_MM = 0.6, 2.0
ASK_BACK_SHARE = 0.75
"""A flange further off than this share of t was more likely read wrong than gauged wrong: the
inside face instead of the outside one makes a whole t (common practice, no source)."""


def flange_at_angle_mm(
    wanted_mm: float,
    wanted_deg: float,
    measured_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    k_factor: float,
    dimension: Dimension = "din6935",
) -> float:
    """How long a flange [mm] comes out that was gauged right, at another angle than was wanted.

    wanted + (setback - allowance/2) at the measured angle - the same at the wanted one.

    Args:
        wanted_mm: the flange, in the part's dimension [mm].
        wanted_deg: included angle wanted [deg].
        measured_deg: included angle that came [deg].
        inside_radius_mm: r [mm].
        thickness_mm: t [mm].
        k_factor: neutral line's depth over thickness [-].
        dimension: what flats are measured to.

    Raises:
        InputError: a size is unusable or an angle is no bend.

    Source: own derivation, as at the top of the module.

    >>> flange_at_angle_mm(30.0, 90.0, 90.0, 2.0, 2.0, 0.4)
    30.0
    >>> round(flange_at_angle_mm(30.0, 90.0, 92.0, 2.0, 2.0, 0.4), 3)
    29.912
    """
    sheet = (inside_radius_mm, thickness_mm)

    def half_deduction(angle_deg: float) -> float:
        arc = allowance_from_k(angle_deg, *sheet, k_factor)
        return setback_mm(angle_deg, *sheet, dimension) - arc / 2.0

    return wanted_mm + half_deduction(measured_deg) - half_deduction(wanted_deg)


def most_error_mm(thickness_mm: float) -> float:
    """The largest error of a flange [mm] that a gauge is corrected by; beyond it, measure again.

    Args:
        thickness_mm: t [mm].

    Raises:
        InputError: the thickness is not above zero.

    Source: common practice, no source.

    >>> most_error_mm(1.0), most_error_mm(2.0), most_error_mm(6.0)
    (0.75, 1.5, 2.0)
    """
    need(thickness_mm=thickness_mm)
    return min(max(ASK_BACK_SHARE * thickness_mm, LEAST_ASK_BACK_MM), MOST_ASK_BACK_MM)
