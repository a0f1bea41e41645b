"""Springback: how far a bend opens when the punch lifts.

:func:`springback` starts from the metal's usual springback of a square bend at V = 8 t and
scales it with the bend angle and with V/t, because the part of the sheet that springs is as
long as the V is wide. Where the punch is rounder than the sheet's own radius, what Gardiner's
formula says the rounder arc adds comes on top. Gardiner's own answer stands beside it.

    low      the lower of: the scaled lowest figure; Gardiner with the lowest yield strength
    nominal  the scaled nominal figure, plus Gardiner's difference for a rounder punch
    high     the higher of: the scaled highest figure, plus that difference with the highest
             tensile strength; Gardiner with the highest tensile strength

Gardiner's formula knows neither hardening nor the springing of the legs, so it is a lower
witness for an air bend. Sheet that is hardened by bending springs as if its yield were nearer
its tensile strength, which is why the high end uses that.

:func:`between_witnesses` puts the bend model and common practice together: the README of
``prediction`` says why neither of the two is taken alone.
"""

from __future__ import annotations

from math import hypot

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Metal
from flangebook.bending.requirements import need

HANDBOOK_V_OVER_T = 8.0


def springback_ratio_gardiner(
    yield_mpa: float, youngs_modulus_mpa: float, thickness_mm: float, loaded_radius_mm: float
) -> float:
    """Radius loaded over radius released [-]: 4 x^3 - 3 x + 1 with x = r Y / (E t).

    With the neutral length unchanged it is also bend angle released over bend angle loaded.

    Args:
        yield_mpa: yield strength Y [MPa].
        youngs_modulus_mpa: Young's modulus E [MPa].
        thickness_mm: sheet thickness t [mm].
        loaded_radius_mm: inside radius under load r [mm].

    Raises:
        InputError: a size is not above zero.
        RangeError: x of 0.5 or more, where the sheet springs back flat.

    Source: F. J. Gardiner, Trans. ASME 79 (1957), pp. 1-9. Elastic, perfectly plastic sheet.

    >>> round(springback_ratio_gardiner(275, 205_000, 1, 50), 4)
    0.8
    """
    need(
        yield_mpa=yield_mpa,
        youngs_modulus_mpa=youngs_modulus_mpa,
        thickness_mm=thickness_mm,
        loaded_radius_mm=loaded_radius_mm,
    )
    x = loaded_radius_mm * yield_mpa / (youngs_modulus_mpa * thickness_mm)
    if x >= 0.5:
        raise RangeError(
            "A radius of {radius_mm} is so large for {thickness_mm} sheet that it springs back "
            "flat.",
            "inside_radius_mm",
            "Use a smaller radius.",
            {"radius_mm": loaded_radius_mm, "thickness_mm": thickness_mm},
        )
    return 4.0 * x**3 - 3.0 * x + 1.0


def springback_gardiner(
    yield_mpa: float,
    youngs_modulus_mpa: float,
    thickness_mm: float,
    loaded_radius_mm: float,
    included_angle_deg: float,
) -> float:
    """Springback [deg] of a bend that is to come out at an included angle, by Gardiner's ratio.

    Args:
        yield_mpa: yield strength Y [MPa].
        youngs_modulus_mpa: Young's modulus E [MPa].
        thickness_mm: sheet thickness t [mm].
        loaded_radius_mm: inside radius under load r [mm].
        included_angle_deg: wanted angle between the flats [deg], 0 to under 180.

    Raises:
        InputError: a size is not above zero or the angle is no bend.
        RangeError: the sheet springs back flat.

    Source: as :func:`springback_ratio_gardiner`.

    >>> round(springback_gardiner(200, 207_000, 2, 2.56, 90), 2)
    0.34
    """
    need(included_angle_deg=included_angle_deg)
    ratio = springback_ratio_gardiner(yield_mpa, youngs_modulus_mpa, thickness_mm, loaded_radius_mm)
    return (180.0 - included_angle_deg) * (1.0 / ratio - 1.0)


def usual_springback(
    metal: Metal, thickness_mm: float, v_opening_mm: float, included_angle_deg: float
) -> Estimate:
    """The metal's usual springback [deg], scaled to a bend by its bend angle and V/t.

    Args:
        metal: gives the usual springback of a square bend at V = 8 t.
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        included_angle_deg: wanted angle between the flats [deg], 0 to under 180.

    Raises:
        InputError: a size is not above zero or the angle is no bend.

    Source: common practice, no source; the metal's own record says where its figure comes from.

    >>> from flangebook.bending.samples import STEEL
    >>> usual = usual_springback(STEEL, 2.0, 16.0, 135.0)
    >>> usual.low, usual.nominal, usual.high
    (0.25, 0.6, 0.85)
    """
    need(
        thickness_mm=thickness_mm, v_opening_mm=v_opening_mm, included_angle_deg=included_angle_deg
    )
    usual = metal.springback_at_90_deg
    scale = (180.0 - included_angle_deg) / 90.0 * v_opening_mm / (HANDBOOK_V_OVER_T * thickness_mm)
    return Estimate(
        scale * usual.low, scale * usual.nominal, scale * usual.high, "handbook",
        "the metal's usual springback at V = 8 t scaled to this bend",
    )  # fmt: skip


def springback(
    metal: Metal,
    thickness_mm: float,
    v_opening_mm: float,
    inside_radius_mm: float,
    included_angle_deg: float,
) -> Estimate:
    """Springback [deg] with its band; the module's table says what the ends are.

    Args:
        metal: gives the usual springback, Y, E and R_m.
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        inside_radius_mm: predicted inside radius [mm].
        included_angle_deg: wanted angle between the flats [deg], 0 to under 180.

    Raises:
        InputError: a size is not above zero or the angle is no bend.
        RangeError: the radius is so large that the sheet may spring back flat.

    Source: common practice, no source, beside F. J. Gardiner, Trans. ASME 79 (1957), pp. 1-9.

    >>> from flangebook.bending.samples import STEEL
    >>> spring = springback(STEEL, 2.0, 16.0, 2.56, 90.0)
    >>> round(spring.low, 2), round(spring.nominal, 2), round(spring.high, 2)
    (0.3, 1.2, 1.7)
    """
    usual = usual_springback(metal, thickness_mm, v_opening_mm, included_angle_deg)
    own_radius = min(inside_radius_mm, metal.radius_over_v.nominal * v_opening_mm)

    def gardiner(stress_mpa: float, radius_mm: float) -> float:
        return springback_gardiner(
            stress_mpa,
            metal.youngs_modulus_mpa.nominal,
            thickness_mm,
            radius_mm,
            included_angle_deg,
        )

    def rounder(stress_mpa: float) -> float:
        if own_radius == inside_radius_mm:
            return 0.0
        return gardiner(stress_mpa, inside_radius_mm) - gardiner(stress_mpa, own_radius)

    nominal = usual.nominal + rounder(metal.yield_mpa.nominal)
    hardest = metal.tensile_mpa.high
    return Estimate(
        min(nominal, usual.low, gardiner(metal.yield_mpa.low, inside_radius_mm)),
        nominal,
        max(
            nominal,
            usual.high + rounder(hardest),
            gardiner(hardest, inside_radius_mm),
        ),
        "handbook",
        "the metal's usual springback at V = 8 t scaled to this bend; Gardiner 1957 beside it",
    )


def between_witnesses(model: Estimate, practice: Estimate) -> Estimate:
    """Springback [deg] from two witnesses that disagree: the bend model and common practice.

    The nominal is the mean of the two, each weighted by how sure it is on the side of the other
    (the inverse square of that side of its band), as two readings of one quantity are put together.
    The low end is practice's own, because sheet that springs that little is delivered. Above the
    nominal, which of the two is right and how strong the sheet is add up as a root of squares.

    Args:
        model: what the bend model expects.
        practice: what is usual for the metal, scaled to the bend.

    Source: the weighted mean of two measurements, as in any text on errors of measurement. That
    the band keeps practice's ends and the model's nominal is an own rule: the two disagree.

    >>> found = between_witnesses(Estimate(0.9, 1.9, 2.5), Estimate(0.5, 1.1, 1.6))
    >>> found.low, round(found.nominal, 2), round(found.high, 2)
    (0.5, 1.26, 2.14)
    """
    apart = model.nominal - practice.nominal
    if apart >= 0.0:
        of_model, of_practice = model.nominal - model.low, practice.high - practice.nominal
    else:
        of_model, of_practice = model.high - model.nominal, practice.nominal - practice.low
    both = of_model**2 + of_practice**2
    above = max(0.0, apart * of_model**2 / both) if both > 0.0 else 0.0
    nominal = practice.nominal + (apart * of_practice**2 / both if both > 0.0 else 0.0)
    return Estimate(
        min(practice.low, nominal),
        nominal,
        max(practice.high, model.nominal, nominal + hypot(above, model.high - model.nominal)),
        "model",
        f"{model.basis}; {practice.basis}",
    )
