"""Hardening of a metal whose K and n nobody has given, from what a certificate prints.

Two textbook relations, both for sigma = K e^n:

    with the uniform elongation A_g    n = ln(1 + A_g): a tensile bar necks when the true strain
    (Considere)                        reaches n; and then R_m = K (n / e)^n, so K = R_m (e / n)^n

    with Y and R_m only                the curve also goes through the proof stress,
    (Considere and proof stress)       Y = K (0.002 + Y/E)^n; n is the root of
                                       Y / R_m = ((0.002 + Y/E) e / n)^n

A total elongation (A50, A80) is not a uniform one: it holds the neck too. What share is uniform
is common practice, no source: about 0.6 for steel and aluminium sheet.

Source: A. Considere, Annales des Ponts et Chaussees 9 (1885), pp. 574-775; in textbooks e.g.
W. F. Hosford and R. M. Caddell, Metal Forming, ch. on strain hardening and instability.

The band is wide: three textbooks' K and n for one named metal differ by 15 to 20 %, and for a
metal known only by its strengths it is wider than that.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import e, exp, log

import numpy as np

from flangebook.bending.errors import InputError
from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.requirements import need
from flangebook.bending.sheet_model.moment_curvature import SheetLaw, sheet_law
from flangebook.bending.sheet_model.roots import roots

SPREAD_OF_N = 0.30
SPREAD_OF_N_FROM_STRENGTHS = 0.45
SPREAD_OF_K = 0.15
MOST_N = 0.6
PROOF_STRAIN = 0.002


@dataclass(frozen=True, slots=True)
class Hardening:
    """K [MPa] and n [-], each with its band and where it comes from."""

    k_mpa: Figure
    n: Figure


def n_from_uniform_elongation(uniform_elongation: float) -> float:
    """Hardening exponent [-] from the uniform elongation [-]: n = ln(1 + A_g).

    Args:
        uniform_elongation: strain at the greatest load [-], 0.22 for 22 %.

    Raises:
        InputError: not between 0 and 1.

    Source: Considère 1885, as at the top of the module.

    >>> round(n_from_uniform_elongation(0.25), 3)
    0.223
    """
    if not 0.0 < uniform_elongation < 1.0:
        raise InputError(
            f"A uniform elongation of {uniform_elongation:g} cannot be used.",
            "uniform_elongation",
            "Give it as a share: 0.22 for 22 %.",
        )
    return log(1.0 + uniform_elongation)


def k_from_tensile(tensile_mpa: float, n: float) -> float:
    """Strength coefficient [MPa]: K = R_m (e / n)^n.

    Args:
        tensile_mpa: R_m [MPa].
        n: hardening exponent [-]; 0 gives R_m.

    Raises:
        InputError: a figure is unusable.

    Source: Considère 1885, as at the top of the module.

    >>> round(k_from_tensile(300, 0.25))  # annealed low-carbon steel, R_m 300, n 0.25
    545
    """
    need(tensile_mpa=tensile_mpa)
    return tensile_mpa * (e / n) ** n if n > 0.0 else tensile_mpa


@lru_cache(maxsize=256)
def n_from_strengths(yield_mpa: float, tensile_mpa: float, youngs_modulus_mpa: float) -> float:
    """Hardening exponent [-] of the curve through proof stress and tensile strength.

    Args:
        yield_mpa: Y [MPa], 0.2 % proof stress.
        tensile_mpa: R_m [MPa], at least Y.
        youngs_modulus_mpa: E [MPa].

    Raises:
        InputError: a figure is unusable, or R_m is under Y.

    Source: Considère 1885, as at the top of the module.

    >>> round(n_from_strengths(175, 300, 209_000), 3)
    0.173
    """
    need(yield_mpa=yield_mpa, tensile_mpa=tensile_mpa, youngs_modulus_mpa=youngs_modulus_mpa)
    if tensile_mpa < yield_mpa:
        raise InputError(
            f"A tensile strength of {tensile_mpa:g} MPa is under the yield strength of "
            f"{yield_mpa:g} MPa.",
            "tensile_mpa",
            "Give a tensile strength above the yield strength.",
        )
    proof = PROOF_STRAIN + yield_mpa / youngs_modulus_mpa
    ratio = log(yield_mpa / tensile_mpa)
    least = e * proof  # there Y = R_m
    if ratio >= 0.0 or least >= MOST_N:
        return min(least, MOST_N)
    if log(proof * e / MOST_N) * MOST_N >= ratio:
        return MOST_N

    def miss(n: np.ndarray) -> np.ndarray:
        return n * np.log(proof * e / n) - ratio

    return float(roots(miss, np.array([least]), np.array([MOST_N]))[0])


def hardening_from_strength(
    yield_mpa: float,
    tensile_mpa: float,
    youngs_modulus_mpa: float,
    uniform_elongation: float | None = None,
) -> Hardening:
    """K and n with their bands, by Considere's relation.

    Args:
        yield_mpa: Y [MPa].
        tensile_mpa: R_m [MPa].
        youngs_modulus_mpa: E [MPa].
        uniform_elongation: A_g [-], or None: then from both strengths.

    Raises:
        InputError: a figure is unusable, or R_m is under Y.
    """
    from_strengths = n_from_strengths(yield_mpa, tensile_mpa, youngs_modulus_mpa)
    if uniform_elongation is None:
        n, spread = from_strengths, SPREAD_OF_N_FROM_STRENGTHS
        source = "Considere, through the proof stress and the tensile strength"
    else:
        n, spread = n_from_uniform_elongation(uniform_elongation), SPREAD_OF_N
        source = "Considere, n = ln(1 + uniform elongation), K = R_m (e/n)^n"
    k = k_from_tensile(tensile_mpa, n)
    return Hardening(
        Figure(k * (1.0 - SPREAD_OF_K), k, k * (1.0 + SPREAD_OF_K), source, "typical"),
        Figure(n * (1.0 - spread), n, n * (1.0 + spread), source, "typical"),
    )


def tensile_of_curve(k_mpa: float, n: float, prestrain: float) -> float:
    """Tensile strength [MPa] that K (e0 + e)^n itself has: the greatest load of a tensile bar.

    R_m = K n^n exp(e0 - n), or the yield strength K e0^n where e0 is above n.

    Args:
        k_mpa: K [MPa].
        n: hardening exponent [-].
        prestrain: e0 [-].

    Source: Considere's condition on Swift's curve, as above.

    >>> round(tensile_of_curve(530, 0.22, 0.012))
    309
    """
    if prestrain >= n:
        return float(k_mpa * prestrain**n)
    return float(k_mpa * n**n * exp(prestrain - n))


def hardening_of(metal: Metal, uniform_elongation: float | None = None) -> Hardening:
    """A metal's own K and n, or those from its strengths.

    A record's K and n are passed over, n kept, where their curve has a tensile strength outside
    the record's own: they are a textbook's for another condition of the metal, and the tensile
    strength is the firmer figure.

    Raises:
        InputError: a figure is unusable.
    """
    own_k, own_n, tensile = metal.hardening_k_mpa, metal.hardening_n, metal.tensile_mpa
    if own_k is None or own_n is None:
        return hardening_from_strength(
            metal.yield_mpa.nominal,
            tensile.nominal,
            metal.youngs_modulus_mpa.nominal,
            uniform_elongation,
        )
    if own_n.nominal == 0.0:
        return Hardening(own_k, own_n)
    yields, k, n = metal.yield_mpa.nominal, own_k.nominal, own_n.nominal
    start = metal.prestrain or (yields / k) ** (1.0 / n)
    if k > yields and tensile.low <= tensile_of_curve(k, n, start) <= tensile.high:
        return Hardening(own_k, own_n)
    k = k_from_tensile(tensile.nominal, n)
    spread = Figure(
        k * (1.0 - SPREAD_OF_K), k, k * (1.0 + SPREAD_OF_K),
        "Considere, K = R_m (e/n)^n: the K given belongs to another tensile strength", "typical",
    )  # fmt: skip
    return Hardening(spread, own_n)


def law_of(metal: Metal, thickness_mm: float, uniform_elongation: float | None = None) -> SheetLaw:
    """The sheet of a metal at its nominal figures.

    Args:
        metal: gives E, nu, Y, and K, n, e0 or R_m.
        thickness_mm: t [mm].
        uniform_elongation: A_g [-] where known; only used without K and n.

    Raises:
        InputError: a figure is unusable.
    """
    hardening = hardening_of(metal, uniform_elongation)
    return sheet_law(
        metal.youngs_modulus_mpa.nominal,
        metal.yield_mpa.nominal,
        hardening.k_mpa.nominal,
        hardening.n.nominal,
        thickness_mm,
        metal.poisson,
        metal.prestrain if hardening.k_mpa is metal.hardening_k_mpa else None,
    )
