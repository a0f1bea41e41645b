"""Bend allowance and deduction: how much sheet a bend takes up.

The allowance is an arc of the neutral line, which lies K t outside the inside radius; what the
sources make of K is in ``k_factor``. One function for each source, and :func:`opinions` for
all of them side by side.

DIN 6935 takes the deduction of bends flatter than 165 degrees as nothing.
Blanks use the arc all the way, because the bend must unfold to the length it was folded from.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass
from math import radians

from flangebook.bending.errors import RangeError
from flangebook.bending.geometry.setback import Dimension, setback_mm
from flangebook.bending.handbook.k_factor import (
    HANDBOOK_GROUPS,
    HANDBOOK_T_FACTOR,
    HandbookGroup,
    k_factor_band,
    k_factor_din6935,
    k_factor_groover,
)
from flangebook.bending.part.metals import GaugeFamily
from flangebook.bending.requirements import need

__all__ = [
    "Opinion",
    "allowance_din6935",
    "allowance_from_k",
    "allowance_groover",
    "allowance_machinerys_handbook",
    "allowance_navy",
    "deduction",
    "k_factor_band",
    "k_factor_din6935",
    "k_factor_groover",
    "opinions",
]


@dataclass(frozen=True, slots=True)
class Opinion:
    """One published source's word on an allowance [mm] and the K-factor [-] it amounts to."""

    name: str
    source: str
    bend_allowance_mm: float
    k_factor: float


def allowance_from_k(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float, k_factor: float
) -> float:
    """Bend allowance [mm]: bend angle in radians times (r + K t).

    Args:
        included_angle_deg: angle between the flats [deg], 0 to under 180.
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness t [mm].
        k_factor: neutral line's depth over thickness K [-], 0 to 0.5 in practice.

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: definition of the K-factor; Groover, Fundamentals of Modern Manufacturing.

    >>> round(allowance_from_k(120, 4.75, 3.2, 0.33), 2)  # Groover's worked example: 6.08
    6.08
    """
    need(
        included_angle_deg=included_angle_deg,
        inside_radius_mm=inside_radius_mm,
        k_factor=k_factor,
        thickness_mm=thickness_mm,
    )
    return radians(180.0 - included_angle_deg) * (inside_radius_mm + k_factor * thickness_mm)


def allowance_din6935(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm] with DIN 6935's K-factor: the arc in its deduction v.

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: r/s of about 0.05 or less.

    Source: DIN 6935, as :func:`k_factor_din6935`.

    >>> round(allowance_din6935(90, 2.5, 2.5), 3)
    5.203
    """
    k_factor = k_factor_din6935(inside_radius_mm, thickness_mm)
    return allowance_from_k(included_angle_deg, inside_radius_mm, thickness_mm, k_factor)


def allowance_machinerys_handbook(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float, group: HandbookGroup
) -> float:
    """Bend allowance [mm]: (c T + 1.57 R) times bend angle over 90.

    Args:
        included_angle_deg: angle between the flats [deg], 0 to under 180.
        inside_radius_mm: inside radius R [mm].
        thickness_mm: sheet thickness T [mm].
        group: c is 0.55 for soft copper and soft brass; 0.64 for half-hard copper and brass,
            soft steel and aluminium; 0.71 for bronze, hard copper, cold-rolled and spring steel.

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: Machinery's Handbook, 26th ed., bending sheet metal (formulas from memory).

    >>> round(allowance_machinerys_handbook(90, 2, 2, "soft steel and aluminium"), 2)
    4.42
    """
    need(
        included_angle_deg=included_angle_deg,
        inside_radius_mm=inside_radius_mm,
        thickness_mm=thickness_mm,
    )
    square = HANDBOOK_T_FACTOR[group] * thickness_mm + 1.57 * inside_radius_mm
    return square * (180.0 - included_angle_deg) / 90.0


def allowance_groover(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm]: 2 pi (bend angle / 360) (R + K t), K as :func:`k_factor_groover`.

    Raises:
        InputError: a size is unusable or the angle is no bend.

    Source: Groover, Fundamentals of Modern Manufacturing, 4th ed., ch. 20.

    >>> round(allowance_groover(90, 3 / 16, 5 / 32), 4)  # problem 20.11, inches: 0.3756
    0.3755
    """
    k_factor = k_factor_groover(inside_radius_mm, thickness_mm)
    return allowance_from_k(included_angle_deg, inside_radius_mm, thickness_mm, k_factor)


def allowance_navy(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm]: N (0.0173 R + 0.0078 T) with N the bend angle in degrees.

    Args:
        included_angle_deg: angle between the flats [deg], 0 to 179 (N is 1 to 180).
        inside_radius_mm: inside radius R [mm].
        thickness_mm: sheet thickness T [mm].

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: N below 1 degree.

    Source: US Navy aviation training manual, sheet metal, "Computing Bend Allowance".

    >>> round(allowance_navy(90, 0.16, 0.040), 4)  # inches
    0.2772
    """
    need(
        included_angle_deg=included_angle_deg,
        inside_radius_mm=inside_radius_mm,
        thickness_mm=thickness_mm,
    )
    if included_angle_deg > 179.0:
        raise RangeError(
            "The Navy formula is given for bends of 1 to 180 degrees.",
            "included_angle_deg",
            "Use another source.",
        )
    return (180.0 - included_angle_deg) * (0.0173 * inside_radius_mm + 0.0078 * thickness_mm)


def deduction(
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    bend_allowance_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """Bend deduction [mm]: two setbacks less the allowance; blank = sum of flats - deductions.

    Raises:
        InputError, RangeError: as ``setback_mm``.

    Source: definition of the bend deduction.

    >>> round(deduction(90, 1, 1, 2.081), 3)
    1.919
    """
    setback = setback_mm(included_angle_deg, inside_radius_mm, thickness_mm, dimension)
    return 2.0 * setback - bend_allowance_mm


def opinions(
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    family: GaugeFamily | None = None,
) -> tuple[Opinion, ...]:
    """What each source makes of the bend; one that is out of its range is left out."""
    bend = (included_angle_deg, inside_radius_mm, thickness_mm)
    said: list[tuple[str, str, float]] = []
    with suppress(RangeError):
        said.append(("DIN 6935", "DIN 6935", allowance_din6935(*bend)))
    for group in HANDBOOK_GROUPS[family]:
        value = allowance_machinerys_handbook(*bend, group)
        said.append((f"Machinery's Handbook, {group}", "Machinery's Handbook, 26th ed.", value))
    said.append(("Groover", "Fundamentals of Modern Manufacturing", allowance_groover(*bend)))
    with suppress(RangeError):
        said.append(("US Navy", "US Navy training manual", allowance_navy(*bend)))
    arc = radians(180.0 - included_angle_deg)
    return tuple(
        Opinion(name, source, value, (value / arc - inside_radius_mm) / thickness_mm)
        for name, source, value in said
    )
