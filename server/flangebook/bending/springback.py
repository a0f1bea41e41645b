"""Springback: how far a bend opens when the punch lifts."""

from __future__ import annotations

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.limits import need_bend, need_not_negative, need_positive
from flangebook.bending.metals import Metal


def springback_ratio_gardiner(
    yield_mpa: float, youngs_modulus_mpa: float, thickness_mm: float, loaded_radius_mm: float
) -> float:
    """Bend angle after release over bend angle loaded [-]: 4 x^3 - 3 x + 1, x = r Y / (E t)."""
    need_positive(
        yield_mpa=yield_mpa, youngs_modulus_mpa=youngs_modulus_mpa, thickness_mm=thickness_mm
    )
    need_not_negative(loaded_radius_mm=loaded_radius_mm)
    x = loaded_radius_mm * yield_mpa / (youngs_modulus_mpa * thickness_mm)
    if x >= 0.5:
        raise RangeError(
            "The radius is so large for this thickness that the sheet springs back flat.",
            "inside_radius_mm",
            "Use a smaller radius.",
        )
    return 4.0 * x**3 - 3.0 * x + 1.0


def springback_gardiner(
    yield_mpa: float,
    youngs_modulus_mpa: float,
    thickness_mm: float,
    loaded_radius_mm: float,
    included_angle_deg: float,
) -> float:
    """Springback [deg] of a bend that is to end at included_angle_deg, by Gardiner."""
    need_bend(included_angle_deg)
    ratio = springback_ratio_gardiner(yield_mpa, youngs_modulus_mpa, thickness_mm, loaded_radius_mm)
    return (180.0 - included_angle_deg) * (1.0 / ratio - 1.0)


def springback(
    metal: Metal,
    thickness_mm: float,
    v_opening_mm: float,
    inside_radius_mm: float,
    included_angle_deg: float,
) -> Estimate:
    """Springback [deg] with its band."""
    need_positive(thickness_mm=thickness_mm, v_opening_mm=v_opening_mm)
    need_bend(included_angle_deg)
    scale = (180.0 - included_angle_deg) / 90.0 * v_opening_mm / (8.0 * thickness_mm)
    figure = metal.springback_at_90_deg
    gardiner = springback_gardiner(
        metal.yield_mpa.nominal,
        metal.youngs_modulus_mpa.nominal,
        thickness_mm,
        inside_radius_mm,
        included_angle_deg,
    )
    nominal = scale * figure.nominal
    return Estimate(
        min(scale * figure.low, gardiner, nominal),
        nominal,
        max(scale * figure.high, gardiner, nominal),
        "handbook",
        "the metal's usual springback at V = 8 t, scaled",
    )
