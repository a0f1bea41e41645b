"""Hands and handling: mass, lifting, rising edges, hands near the punch."""

from __future__ import annotations

from flangebook.bending.checks import Check
from flangebook.bending.limits import need_positive


def blank_mass_kg(
    length_mm: float, width_mm: float, thickness_mm: float, density_kg_m3: float
) -> float:
    """Mass [kg] of a flat blank."""
    need_positive(
        length_mm=length_mm,
        width_mm=width_mm,
        thickness_mm=thickness_mm,
        density_kg_m3=density_kg_m3,
    )
    return length_mm * width_mm * thickness_mm * density_kg_m3 * 1e-9


def general_cautions() -> tuple[Check, ...]:
    """Cautions true of every bend; keep them out of the worst level of a plan."""
    return (
        Check(
            "caution",
            "general-hands",
            "Keep hands out from between punch and die.",
            "Hold the sheet from the outside.",
        ),
    )
