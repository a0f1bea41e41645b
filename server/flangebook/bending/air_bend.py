"""One air bend in one die: everything predicted about it, each figure with its band.

Everything that planning asks about a bend goes through :func:`air_bend`, so a better model
replaces the insides here and nothing else.

    figure          low / nominal / high
    --------------  ---------------------------------------------------------------------
    force           as ``force.force_band``
    inside radius   as ``inside_radius.inside_radius``
    springback      as ``springback.springback``
    set angle       wanted angle less the high / nominal / low springback
    punch depth     nominal geometry at nominal set angle and radius; the ends add 2 degrees
                    either way to the set angle's band and take the radius that is against it
    allowance,      lowest / nominal / highest over the ends of the radius and of the K-factor
    deduction
    K-factor        as ``k_factor.k_factor_band`` at the nominal radius
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.air_bend_geometry import punch_depth_mm, smallest_flange_mm
from flangebook.bending.allowance import allowance_from_k, setback_mm
from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.force import force_band
from flangebook.bending.inside_radius import inside_radius
from flangebook.bending.k_factor import k_factor_band
from flangebook.bending.limits import need_bend, need_positive
from flangebook.bending.metals import Metal
from flangebook.bending.part import Dimension
from flangebook.bending.springback import springback
from flangebook.bending.tooling import Die

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


def air_bend(
    metal: Metal,
    thickness_mm: float,
    bend_length_mm: float,
    included_angle_deg: float,
    die: Die,
    punch_radius_mm: float,
    dimension: Dimension = "din6935",
) -> AirBend:
    """Predict one air bend in one die.

    Args:
        metal: the sheet's metal.
        thickness_mm: sheet thickness [mm].
        bend_length_mm: length of the bend [mm].
        included_angle_deg: wanted angle between the flats after release [deg].
        die: the V die; its opening, angle and shoulder radius count here.
        punch_radius_mm: punch tip radius [mm].
        dimension: how the part's flats are measured.

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: the sheet cannot be air bent to that angle in this die with this punch;
            the words say why and what would do.
    """
    need_positive(thickness_mm=thickness_mm, bend_length_mm=bend_length_mm)
    need_bend(included_angle_deg)
    v = die.v_opening_mm
    radius = inside_radius(metal, v, punch_radius_mm, thickness_mm)
    spring = springback(metal, thickness_mm, v, radius.nominal, included_angle_deg)
    set_angle = _set_angle(included_angle_deg, spring)
    k_factor = k_factor_band(radius.nominal, thickness_mm, metal.gauge_family)
    allowance, deducted = _flat(included_angle_deg, radius, thickness_mm, k_factor, dimension)
    return AirBend(
        v_opening_mm=v,
        force_n=force_band(metal, thickness_mm, bend_length_mm, v, included_angle_deg),
        inside_radius_mm=radius,
        springback_deg=spring,
        set_angle_deg=set_angle,
        punch_depth_mm=_depth(set_angle, radius, thickness_mm, die),
        bend_allowance_mm=allowance,
        bend_deduction_mm=deducted,
        k_factor=k_factor,
        min_flange_mm=_min_flange(
            included_angle_deg, set_angle.low, radius.nominal, allowance.nominal,
            thickness_mm, die, dimension,
        ),
    )  # fmt: skip


def _set_angle(included_angle_deg: float, spring: Estimate) -> Estimate:
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


def _depth(set_angle: Estimate, radius: Estimate, thickness_mm: float, die: Die) -> Estimate:
    tool = (thickness_mm, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    flattest = set_angle.high + FIRST_BEND_DOUBT_DEG
    # A bend so flat that the doubt reaches 180 degrees may need no more than the first touch.
    least = 0.0 if flattest >= 180.0 else punch_depth_mm(flattest, radius.high, *tool)
    return Estimate(
        least,
        punch_depth_mm(set_angle.nominal, radius.nominal, *tool),
        punch_depth_mm(set_angle.low - FIRST_BEND_DOUBT_DEG, radius.low, *tool),
        "handbook",
        "contact geometry of sheet, punch tip and die shoulders, with 2 degrees of doubt",
    )


def _flat(
    included_angle_deg: float,
    radius: Estimate,
    thickness_mm: float,
    k_factor: Estimate,
    dimension: Dimension,
) -> tuple[Estimate, Estimate]:
    # Both are monotone in K and in r, so the extremes are at the corners of the two bands.
    taken, deducted = [], []
    for r in (radius.nominal, radius.low, radius.high):
        setbacks = 2.0 * setback_mm(included_angle_deg, r, thickness_mm, dimension)
        for k in (k_factor.nominal, k_factor.low, k_factor.high):
            arc = allowance_from_k(included_angle_deg, r, thickness_mm, k)
            taken.append(arc)
            deducted.append(setbacks - arc)
    return (
        Estimate(min(taken), taken[0], max(taken), "handbook", k_factor.basis),
        Estimate(min(deducted), deducted[0], max(deducted), "handbook", k_factor.basis),
    )


def _min_flange(
    included_angle_deg: float,
    sharpest_deg: float,
    radius_mm: float,
    bend_allowance_mm: float,
    thickness_mm: float,
    die: Die,
    dimension: Dimension,
) -> float:
    bend = (included_angle_deg, radius_mm, thickness_mm)
    to_mould_line = setback_mm(*bend, "mould_line")
    least = smallest_flange_mm(
        sharpest_deg,
        die.v_opening_mm,
        die.angle_deg,
        die.shoulder_radius_mm,
        2.0 * to_mould_line - bend_allowance_mm,
    )
    return least - to_mould_line + setback_mm(*bend, dimension)
