"""What is predicted of one air bend, and what follows from radius and springback alone.

The handbook (``handbook_bend``) and the bend model (``air_bend``) find radius and springback each
in its own way; what these mean for the flat sheet, the angle to set and the shortest flange is
the same geometry for both.

    set angle       wanted angle less the high / nominal / low springback
    allowance,      lowest / nominal / highest over the ends of the radius and of the K-factor
    deduction
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm, smallest_flange_mm
from flangebook.bending.geometry.setback import setback_mm
from flangebook.bending.handbook.allowance import allowance_from_k
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.modelled_bend import ModelledBend

# What the tools' real radii, the sheet's real thickness and the depth's zero are worth before a
# first bend has been measured. Common practice; a model run varied them one at a time.
FIRST_BEND_DOUBT_DEG = 2.0


@dataclass(frozen=True, slots=True)
class AirBend:
    """What is predicted of one bend.

    v_opening_mm: V [mm]. force_n: peak force [N]. inside_radius_mm, springback_deg: after and
    on release. set_angle_deg: included angle under load, the wanted one less the springback.
    punch_depth_mm: from first touch of the flat sheet. bend_allowance_mm, bend_deduction_mm,
    k_factor: at the wanted angle, the deduction in the part's own dimension. min_flange_mm:
    shortest flange, in the part's own dimension.
    model: the bend model's own solution, None where it does not hold; why_no_model says why.
    handbook: what the handbook relations say of the same bend, None where they say nothing or
    where this is the handbook's own prediction. press_short_mm, press_short_deg: how much less
    deep, and so more open, the press comes out than it shows; in set angle and depth already.
    """

    v_opening_mm: float
    force_n: Estimate
    inside_radius_mm: Estimate
    springback_deg: Estimate
    set_angle_deg: Estimate
    punch_depth_mm: Estimate
    bend_allowance_mm: Estimate
    bend_deduction_mm: Estimate
    k_factor: Estimate
    min_flange_mm: float
    model: ModelledBend | None = None
    handbook: AirBend | None = None
    why_no_model: str = ""
    press_short_mm: float = 0.0
    press_short_deg: float = 0.0


def set_angle(included_angle_deg: float, spring: Estimate) -> Estimate:
    """The included angle under load [deg] that springs back to the wanted one.

    Raises:
        RangeError: the bend would have to be pressed shut.

    Source: definition of springback.

    >>> loaded = set_angle(90.0, Estimate(0.5, 1.25, 2.0))
    >>> loaded.low, loaded.nominal, loaded.high
    (88.0, 88.75, 89.5)
    """
    if included_angle_deg - spring.high - FIRST_BEND_DOUBT_DEG <= 0.0:
        raise RangeError(
            f"To spring back to {included_angle_deg:.3g} degrees the bend would have to be "
            "pressed shut.",
            "included_angle_deg",
            "Give a larger included angle, use a narrower V, or make it as a hem.",
        )
    return Estimate(
        included_angle_deg - spring.high,
        included_angle_deg - spring.nominal,
        included_angle_deg - spring.low,
        spring.origin,
        f"wanted angle less springback; {spring.basis}",
    )


def depth_at_mm(bend: AirBend, case: BendCase, loaded_angle_deg: float) -> float:
    """Expected depth [mm] at a loaded angle near the expected one, along the contact geometry.

    Args:
        bend: the expectation; its nominal depth and set angle are the anchor.
        case: what was predicted; thickness and die count.
        loaded_angle_deg: included angle under load [deg].

    Raises:
        RangeError: the sheet fills the V before that angle.

    Source: ``air_bend_geometry.punch_depth_mm``.

    >>> from flangebook.bending.samples import CASE
    >>> from flangebook.bending.prediction.air_bend import air_bend
    >>> bend = air_bend(CASE)
    >>> sharper = bend.set_angle_deg.nominal - 1.0
    >>> round(depth_at_mm(bend, CASE, sharper) - bend.punch_depth_mm.nominal, 3)
    0.078
    """
    tool = (bend.inside_radius_mm.nominal, case.thickness_mm, *case.v)
    anchor = punch_depth_mm(bend.set_angle_deg.nominal, *tool)
    return bend.punch_depth_mm.nominal + punch_depth_mm(loaded_angle_deg, *tool) - anchor


def flat(case: BendCase, radius: Estimate, k_factor: Estimate) -> tuple[Estimate, Estimate]:
    """Bend allowance and bend deduction [mm], the deduction in the part's own dimension.

    Source: definition of allowance and deduction.

    >>> from flangebook.bending.samples import CASE
    >>> taken, deducted = flat(CASE, Estimate.exact(2.0), Estimate.exact(0.4))
    >>> round(taken.nominal, 3), round(deducted.nominal, 3)  # together twice the setback of 4
    (4.398, 3.602)
    """
    angle, t = case.included_angle_deg, case.thickness_mm
    # Both are monotone in K and in r, so the extremes are at the corners of the two bands.
    taken, deducted = [], []
    for r in (radius.nominal, radius.low, radius.high):
        setbacks = 2.0 * setback_mm(angle, r, t, case.dimension)
        for k in (k_factor.nominal, k_factor.low, k_factor.high):
            arc = allowance_from_k(angle, r, t, k)
            taken.append(arc)
            deducted.append(setbacks - arc)
    return (
        Estimate(min(taken), taken[0], max(taken), k_factor.origin, k_factor.basis),
        Estimate(min(deducted), deducted[0], max(deducted), k_factor.origin, k_factor.basis),
    )


def shortest_flange_mm(
    case: BendCase, sharpest_deg: float, radius_mm: float, bend_allowance_mm: float
) -> float:
    """Shortest flange [mm] in the part's own dimension, at the sharpest loaded angle.

    Source: own derivation, as ``air_bend_geometry.smallest_flange_mm``.

    >>> from flangebook.bending.samples import CASE
    >>> round(shortest_flange_mm(CASE, 88.0, 2.5, 5.2), 2)
    10.77
    """
    bend = (case.included_angle_deg, radius_mm, case.thickness_mm)
    to_mould_line = setback_mm(*bend, "mould_line")
    least = smallest_flange_mm(sharpest_deg, *case.v, 2.0 * to_mould_line - bend_allowance_mm)
    return least - to_mould_line + setback_mm(*bend, case.dimension)
