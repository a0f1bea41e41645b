"""Bend allowance and deduction: how much sheet a bend takes up."""

from __future__ import annotations

from dataclasses import dataclass
from math import log10, pi, radians, tan
from typing import Literal

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.limits import need_bend, need_not_negative, need_positive
from flangebook.bending.part import Dimension

HandbookGroup = Literal["soft copper and brass", "soft steel and aluminium", "hard"]
_HANDBOOK_C: dict[HandbookGroup, float] = {
    "soft copper and brass": 0.55,
    "soft steel and aluminium": 0.64,
    "hard": 0.71,
}


@dataclass(frozen=True, slots=True)
class Opinion:
    """One published source's word on an allowance [mm] and its K-factor [-]."""

    name: str
    source: str
    bend_allowance_mm: float
    k_factor: float


def allowance_from_k(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float, k_factor: float
) -> float:
    """Bend allowance [mm]: bend angle in radians * (r + K t)."""
    need_bend(included_angle_deg)
    need_not_negative(inside_radius_mm=inside_radius_mm)
    need_positive(thickness_mm=thickness_mm)
    return radians(180.0 - included_angle_deg) * (inside_radius_mm + k_factor * thickness_mm)


def k_factor_din6935(inside_radius_mm: float, thickness_mm: float) -> float:
    """K-factor [-], half of DIN 6935's k = 0.65 + 0.5 lg(r/s), k = 1 above r/s = 5."""
    need_not_negative(inside_radius_mm=inside_radius_mm)
    need_positive(thickness_mm=thickness_mm)
    ratio = inside_radius_mm / thickness_mm
    if ratio > 5.0:
        return 0.5
    k = 0.65 + 0.5 * log10(ratio) if ratio > 0.0 else -1.0
    if k < 0.0:
        raise RangeError(
            "DIN 6935 gives no K-factor for a radius below 0.05 t.",
            "inside_radius_mm",
            "Use a larger radius or another source of the K-factor.",
        )
    return k / 2.0


def allowance_din6935(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm] with DIN 6935's K-factor."""
    k_factor = k_factor_din6935(inside_radius_mm, thickness_mm)
    return allowance_from_k(included_angle_deg, inside_radius_mm, thickness_mm, k_factor)


def allowance_machinerys_handbook(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float, group: HandbookGroup
) -> float:
    """Bend allowance [mm]: (c T + 1.57 R) * bend angle / 90."""
    need_bend(included_angle_deg)
    return (
        (_HANDBOOK_C[group] * thickness_mm + 1.57 * inside_radius_mm)
        * (180.0 - included_angle_deg)
        / 90.0
    )


def allowance_groover(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm] with K 0.33 for R < 2 t, 0.50 from there up."""
    need_positive(thickness_mm=thickness_mm)
    k_factor = 0.33 if inside_radius_mm < 2.0 * thickness_mm else 0.50
    return allowance_from_k(included_angle_deg, inside_radius_mm, thickness_mm, k_factor)


def allowance_navy(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Bend allowance [mm]: N (0.0173 R + 0.0078 T), N the bend angle in degrees."""
    need_bend(included_angle_deg)
    return (180.0 - included_angle_deg) * (0.0173 * inside_radius_mm + 0.0078 * thickness_mm)


def setback_mm(
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """What one side's dimension loses to the bend [mm], up to the start of the arc."""
    need_bend(included_angle_deg)
    if dimension == "din6935" and included_angle_deg < 90.0:
        return inside_radius_mm + thickness_mm
    if included_angle_deg == 0.0:
        raise RangeError(
            "A fold of 0 degrees has no mould line.",
            "dimension",
            "Dimension it to the outermost tangent (din6935).",
        )
    reach = inside_radius_mm + (0.0 if dimension == "inside" else thickness_mm)
    return reach * tan(radians(180.0 - included_angle_deg) / 2.0)


def deduction(
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    bend_allowance_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """Bend deduction [mm]: two setbacks less the allowance."""
    setback = setback_mm(included_angle_deg, inside_radius_mm, thickness_mm, dimension)
    return 2.0 * setback - bend_allowance_mm


def opinions(
    included_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> tuple[Opinion, ...]:
    """What each published source makes of the bend; a source out of its range is left out."""
    size = (included_angle_deg, inside_radius_mm, thickness_mm)
    arc = radians(180.0 - included_angle_deg)
    values = [
        ("Groover", "Groover, Fundamentals of Modern Manufacturing", allowance_groover(*size)),
        ("US Navy", "US Navy training manual", allowance_navy(*size)),
    ]
    return tuple(
        Opinion(name, source, value, (value / arc - inside_radius_mm) / thickness_mm)
        for name, source, value in values
    )


def k_factor_band(inside_radius_mm: float, thickness_mm: float) -> Estimate:
    """K-factor [-] with the spread of the published sources."""
    try:
        nominal = k_factor_din6935(inside_radius_mm, thickness_mm)
        basis = "DIN 6935"
    except RangeError:
        nominal, basis = 0.33, "Groover (radius below 0.05 t, where DIN 6935 gives none)"
    return Estimate(min(nominal, 0.33), nominal, max(nominal, 2 * 0.71 / pi), "handbook", basis)
