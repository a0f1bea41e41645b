"""Peak force of an air bend, from published relations.

    relation            c in F = c R_m L t^2 / V      source
    ------------------  ----------------------------  ------------------------------------------
    force_textbook      1.33                          Groover, eq. 20.? / 19.6
    force_lange         1 + 4 t / V                   Lange (from memory)
    force_us_chart      1.597                         575 t^2/V tons a foot at 60 ksi (from memory)

The band of :func:`force_band`:

    low      lowest of the three with the metal's lowest tensile strength
    nominal  middle one of the three with the nominal strength
    high     highest of the three with the highest strength; safety checks use this one
"""

from __future__ import annotations

from flangebook.bending.estimate import Estimate
from flangebook.bending.limits import need_bend, need_positive
from flangebook.bending.metals import Metal

US_CHART_TENSILE_MPA = 413.685  # 60 000 psi
_US_CHART_C = 575 * 8896.443 / (12 * 25.4**2) / US_CHART_TENSILE_MPA


def force_textbook(
    tensile_mpa: float,
    bend_length_mm: float,
    thickness_mm: float,
    v_opening_mm: float,
    die_factor: float = 1.33,
) -> float:
    """Force [N]: die_factor * R_m * L * t^2 / V."""
    need_positive(
        tensile_mpa=tensile_mpa,
        bend_length_mm=bend_length_mm,
        thickness_mm=thickness_mm,
        v_opening_mm=v_opening_mm,
    )
    return die_factor * tensile_mpa * bend_length_mm * thickness_mm**2 / v_opening_mm


def force_lange(
    tensile_mpa: float, bend_length_mm: float, thickness_mm: float, v_opening_mm: float
) -> float:
    """Force [N]: (1 + 4 t / V) * R_m * L * t^2 / V."""
    need_positive(v_opening_mm=v_opening_mm)
    factor = 1.0 + 4.0 * thickness_mm / v_opening_mm
    return force_textbook(tensile_mpa, bend_length_mm, thickness_mm, v_opening_mm, factor)


def force_us_chart(
    tensile_mpa: float, bend_length_mm: float, thickness_mm: float, v_opening_mm: float
) -> float:
    """Force [N]: 575 t^2/V short tons a foot (t, V in inches) for 60 ksi, scaled by R_m."""
    return force_textbook(tensile_mpa, bend_length_mm, thickness_mm, v_opening_mm, _US_CHART_C)


def force_band(
    metal: Metal,
    thickness_mm: float,
    bend_length_mm: float,
    v_opening_mm: float,
    included_angle_deg: float,
) -> Estimate:
    """Peak force [N] of the stroke with its band; see the table of the module."""
    need_bend(included_angle_deg)
    size = (bend_length_mm, thickness_mm, v_opening_mm)
    at_one_mpa = sorted(f(1.0, *size) for f in (force_textbook, force_lange, force_us_chart))
    low, middle, high = at_one_mpa
    tensile = metal.tensile_mpa
    return Estimate(
        low * tensile.low,
        middle * tensile.nominal,
        high * tensile.high,
        "handbook",
        "highest, middle and lowest of three published relations over the metal's strength",
    )
