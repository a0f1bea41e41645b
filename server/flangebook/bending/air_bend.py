"""One air bend in one die: everything predicted about it, with bands."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product

from flangebook.bending.air_bend_geometry import punch_depth_mm, smallest_flange_mm
from flangebook.bending.allowance import allowance_from_k, deduction, k_factor_band, setback_mm
from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.force import force_band
from flangebook.bending.inside_radius import inside_radius
from flangebook.bending.limits import need_bend, need_positive
from flangebook.bending.metals import Metal
from flangebook.bending.part import Dimension
from flangebook.bending.springback import springback
from flangebook.bending.tooling import Die

FIRST_BEND_DOUBT_DEG = 2.0  # before the first trial, whatever the arithmetic says


@dataclass(frozen=True, slots=True)
class AirBend:
    """What is predicted of one bend.

    set_angle_deg: included angle under load. min_flange_mm: in the part's own dimension.
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
    """Predict one air bend in this die with a punch of this tip radius [mm]."""
    need_positive(thickness_mm=thickness_mm, bend_length_mm=bend_length_mm)
    need_bend(included_angle_deg)
    v = die.v_opening_mm
    force = force_band(metal, thickness_mm, bend_length_mm, v, included_angle_deg)
    radius = inside_radius(metal, v, punch_radius_mm)
    spring = springback(metal, thickness_mm, v, radius.nominal, included_angle_deg)
    set_angle = _set_angle(included_angle_deg, spring)
    depth = _depth(set_angle, radius, thickness_mm, die)
    k_factor = k_factor_band(radius.nominal, thickness_mm)
    allowance, deducted = _flat(included_angle_deg, radius, thickness_mm, k_factor, dimension)
    flange = _min_flange(included_angle_deg, set_angle, radius, thickness_mm, die, dimension)
    return AirBend(
        v, force, radius, spring, set_angle, depth, allowance, deducted, k_factor, flange
    )


def _set_angle(included_angle_deg: float, spring: Estimate) -> Estimate:
    if included_angle_deg - spring.high <= 0.0:
        raise RangeError(
            "The bend would have to be pressed past closed to spring back to this angle.",
            "included_angle_deg",
            "Give a larger included angle, or make it as a hem.",
        )
    return spring.mapped(lambda s: included_angle_deg - s)


def _depth(set_angle: Estimate, radius: Estimate, thickness_mm: float, die: Die) -> Estimate:
    def depth(angle: float, r: float) -> float:
        return punch_depth_mm(
            angle, r, thickness_mm, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm
        )

    return Estimate(
        depth(min(set_angle.high + FIRST_BEND_DOUBT_DEG, 179.999), radius.high),
        depth(set_angle.nominal, radius.nominal),
        depth(set_angle.low, radius.low),
        "handbook",
        "contact geometry",
    )


def _flat(
    included_angle_deg: float,
    radius: Estimate,
    thickness_mm: float,
    k_factor: Estimate,
    dimension: Dimension,
) -> tuple[Estimate, Estimate]:
    taken: list[float] = []
    deducted: list[float] = []
    corners = product(
        (radius.nominal, radius.low, radius.high),
        (k_factor.nominal, k_factor.low, k_factor.high),
    )
    for r, k in corners:
        taken.append(allowance_from_k(included_angle_deg, r, thickness_mm, k))
        deducted.append(deduction(included_angle_deg, r, thickness_mm, taken[-1], dimension))
    return (
        Estimate(min(taken), taken[0], max(taken), k_factor.origin, k_factor.basis),
        Estimate(min(deducted), deducted[0], max(deducted), k_factor.origin, k_factor.basis),
    )


def _min_flange(
    included_angle_deg: float,
    set_angle: Estimate,
    radius: Estimate,
    thickness_mm: float,
    die: Die,
    dimension: Dimension,
) -> float:
    to_mould_line = smallest_flange_mm(
        set_angle.low, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm
    )
    mould = setback_mm(included_angle_deg, radius.nominal, thickness_mm, "mould_line")
    asked = setback_mm(included_angle_deg, radius.nominal, thickness_mm, dimension)
    return to_mould_line - mould + asked
