"""Moment and curvature of a wide sheet: the law that everything else of the bend follows from.

A sheet much wider than it is thick cannot strain along the bend line (plane strain). With von
Mises' yield condition and Swift's hardening, sigma = K (e0 + e)^n:

    E' = E / (1 - nu^2)           stiffness across the bend
    c  = 2 / sqrt(3)              plane-strain factor of von Mises
    eps_y = c Y / E'              surface strain at first yield
    stress(eps) = E' eps                               up to eps_y
                = c K (e0 + c p)^n                     beyond, p = eps - stress / E' plastic

Strain is linear through the thickness, eps = kappa y, the neutral line in the middle. With w the
strain energy per volume up to a strain and G its integral over strain, per unit of width:

    U(kappa) = 2 G(eps_s) / kappa                      energy per length, eps_s = kappa t / 2
    M(kappa) = dU/dkappa = 2 (eps_s w(eps_s) - G(eps_s)) / kappa^2
    W(kappa) = kappa M - U                             complementary energy, dW = kappa dM

both w and G closed powers of u = e0 + c p, which Newton's rule finds from the strain. Solving a
bend asks for this many thousand times, so it is compiled (``bending.compiled``): a ``Sheet`` is
the law as the compiled functions take it.

Sources: R. Hill, The Mathematical Theory of Plasticity, Oxford 1950, ch. XI (plane-strain bending);
H. W. Swift, J. Mech. Phys. Solids 1 (1952), pp. 1-18 (the hardening law).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import exp, log, sqrt
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from flangebook.bending.compiled import inlined_kernel, kernel
from flangebook.bending.errors import InputError
from flangebook.bending.requirements import need

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

PLANE_STRAIN = 2.0 / sqrt(3.0)
MOST_HARDENING = 1.0
MOST_STRENGTH_SHARE = 0.03
LEAST_PRESTRAIN = 1e-9
_NEWTON_ROUNDS = 60


@dataclass(frozen=True, slots=True)
class SheetLaw:
    """A sheet: thickness and how its metal resists. Made by :func:`sheet_law`.

    youngs_modulus_mpa, poisson: E [MPa], nu [-]. yield_mpa: Y [MPa]. k_mpa, n, prestrain:
    K [MPa], n [-], e0 [-] of sigma = K (e0 + e)^n. thickness_mm: t [mm].
    """

    youngs_modulus_mpa: float
    poisson: float
    yield_mpa: float
    k_mpa: float
    n: float
    prestrain: float
    thickness_mm: float

    @property
    def plane_strain_modulus_mpa(self) -> float:
        """E' = E / (1 - nu^2) [MPa]."""
        return self.youngs_modulus_mpa / (1.0 - self.poisson**2)

    @property
    def yield_strain(self) -> float:
        """Surface strain at first yield [-]."""
        return PLANE_STRAIN * self.yield_mpa / self.plane_strain_modulus_mpa

    @property
    def stiffness(self) -> float:
        """E' t^3 / 12, moment per curvature while elastic, per width [N mm]."""
        return self.plane_strain_modulus_mpa * self.thickness_mm**3 / 12.0


class Sheet(NamedTuple):
    """The law as the compiled functions take it; a row of :func:`sheet_rows`.

    e_mod: E' [MPa]. begin: e0^n [-], 1 without hardening. The rest as in :class:`SheetLaw`.
    """

    e_mod: float
    yield_strain: float
    k: float
    n: float
    prestrain: float
    begin: float
    thickness: float


def sheet_rows(law: SheetLaw, rows: int) -> Array:
    """The law, or one law a row, as an array with a row for each and a column for each figure."""
    table = np.empty((rows, len(Sheet._fields)))
    begin = np.where(np.equal(law.n, 0.0), 1.0, np.power(law.prestrain, law.n))
    sheet = Sheet(
        law.plane_strain_modulus_mpa, law.yield_strain, law.k_mpa, law.n, law.prestrain,
        begin, law.thickness_mm,  # type: ignore[arg-type]
    )  # fmt: skip
    for column, figure in enumerate(sheet):
        table[:, column] = figure
    return table


@inlined_kernel
def sheet_of(table: Array, row: int) -> Sheet:
    """One row of :func:`sheet_rows`."""
    at = table[row]
    return Sheet(at[0], at[1], at[2], at[3], at[4], at[5], at[6])


def sheet_law(
    youngs_modulus_mpa: float,
    yield_mpa: float,
    k_mpa: float,
    n: float,
    thickness_mm: float,
    poisson: float = 0.3,
    prestrain: float | None = None,
) -> SheetLaw:
    """A sheet from its metal's figures.

    With n = 0 the metal does not harden: K is not used, the sheet yields at Y whatever the
    strain. Without e0 the curve starts at the yield strength, e0 = (Y/K)^(1/n); with e0 the
    yield strength is where the curve starts, K e0^n, and Y is not used.

    Args:
        youngs_modulus_mpa: E [MPa].
        yield_mpa: Y [MPa].
        k_mpa: K [MPa].
        n: hardening exponent [-], 0 to 1.
        thickness_mm: t [mm].
        poisson: nu [-], 0 to under 0.5.
        prestrain: e0 [-], or None.

    Raises:
        InputError: a figure is unusable, K is not above Y, or Y would be no small strain.
    """
    need(
        youngs_modulus_mpa=youngs_modulus_mpa,
        yield_mpa=yield_mpa,
        thickness_mm=thickness_mm,
        hardening_n=n,
        poisson=poisson,
    )
    if n > MOST_HARDENING:
        raise InputError(f"A hardening exponent of {n:g} is no sheet metal.", "hardening_n",
                         "Give n between 0 and 1.")  # fmt: skip
    if poisson >= 0.5:
        raise InputError(f"A Poisson's ratio of {poisson:g} is no metal.", "poisson",
                         "Give a value under 0.5; 0.3 is usual.")  # fmt: skip
    start, yield_at, k = _start_of_curve(yield_mpa, k_mpa, n, prestrain)
    for where, strength in (("yield_mpa", yield_at), ("hardening_k_mpa", k)):
        if strength > MOST_STRENGTH_SHARE * youngs_modulus_mpa:
            raise InputError(
                f"{strength:g} MPa against E of {youngs_modulus_mpa:g} MPa is no sheet metal.",
                where,
                "Give both in MPa: steel has E near 207000.",
            )
    return SheetLaw(youngs_modulus_mpa, poisson, yield_at, k, n, start, thickness_mm)


def _start_of_curve(
    yield_mpa: float, k_mpa: float, n: float, prestrain: float | None
) -> tuple[float, float, float]:
    """e0, the yield strength it stands for, and K."""
    if n == 0.0:
        return 0.0, yield_mpa, yield_mpa
    need(hardening_k_mpa=k_mpa)
    if prestrain is not None and prestrain > 0.0:
        need(prestrain=prestrain)
        return prestrain, k_mpa * prestrain**n, k_mpa
    if k_mpa <= yield_mpa:
        raise InputError(
            f"K of {k_mpa:g} MPa is not above the yield strength of {yield_mpa:g} MPa, but with "
            f"n = {n:g} the metal is said to harden.",
            "hardening_k_mpa",
            "Give a larger K, or n = 0 for a metal that does not harden.",
        )
    start = (yield_mpa / k_mpa) ** (1.0 / n)
    if start < LEAST_PRESTRAIN:
        raise InputError(
            f"K of {k_mpa:g} MPa is too far above the yield strength of {yield_mpa:g} MPa for a "
            f"hardening exponent as small as {n:g}.",
            "hardening_k_mpa",
            f"Give a K of at most {yield_mpa * LEAST_PRESTRAIN**-n:.4g} MPa, or a larger n.",
        )
    return start, yield_mpa, k_mpa


@kernel
def hardened(sheet: Sheet, strain: float) -> float:
    """Find u = e0 + c p [-] at a strain: the root of (E'/c) u + c K u^n = E' (eps + e0/c).

    In log(u) the left side is convex and never flatter than n, so Newton's rule runs straight in
    from the far side, where it starts by leaving the growth of the elastic strain out.

    Source: H. W. Swift, J. Mech. Phys. Solids 1 (1952), for the law; Newton's rule.

    >>> sheet = sheet_of(sheet_rows(sheet_law(207_000, 200, 530, 0.22, 2.0), 1), 0)
    >>> hardened(sheet, 0.0) == sheet.prestrain
    True
    >>> round(hardened(sheet, 0.1), 4)
    0.1254
    """
    if strain <= sheet.yield_strain:
        return sheet.prestrain
    straight = sheet.prestrain + PLANE_STRAIN * (strain - sheet.yield_strain)
    if sheet.n == 0.0:
        return straight
    total = sheet.e_mod * (strain + sheet.prestrain / PLANE_STRAIN)
    y = log(straight)
    for _ in range(_NEWTON_ROUNDS):
        elastic = sheet.e_mod / PLANE_STRAIN * exp(y)
        plastic = PLANE_STRAIN * sheet.k * exp(sheet.n * y)
        both = elastic + plastic
        step = log(both / total) * both / (elastic + sheet.n * plastic)
        y -= step
        if abs(step) < 1e-7:  # the next step would be its square
            break
    return exp(y)


@kernel
def strain_at(sheet: Sheet, u: float) -> tuple[float, float]:
    """Strain [-] at u, what ``hardened`` is asked with, and its growth with log(u) [-].

    Source: H. W. Swift, J. Mech. Phys. Solids 1 (1952), for the law.

    >>> sheet = sheet_of(sheet_rows(sheet_law(207_000, 200, 530, 0.22, 2.0), 1), 0)
    >>> round(strain_at(sheet, hardened(sheet, 0.1))[0], 6)
    0.1
    """
    elastic = PLANE_STRAIN * sheet.k * u**sheet.n / sheet.e_mod
    return (u - sheet.prestrain) / PLANE_STRAIN + elastic, u / PLANE_STRAIN + sheet.n * elastic


@kernel
def bent_at(sheet: Sheet, curvature: float, u: float) -> tuple[float, float, float, float]:
    """The figures of :class:`Bent` [N, N/mm] at a curvature [1/mm] where u of the surface is known.

    Source: R. Hill, The Mathematical Theory of Plasticity, Oxford 1950, ch. XI; H. W. Swift 1952,
    as at the top of the module.

    >>> sheet = sheet_of(sheet_rows(sheet_law(207_000, 200, 530, 0.22, 2.0), 1), 0)
    >>> moment, _, energy, complementary = bent_at(sheet, 1e-4, sheet.prestrain)
    >>> round(moment, 2), round(energy / complementary, 6)  # elastic: E' t³/12 times the curvature
    (15.16, 1.0)
    """
    t, e_mod, n, k, e0, start = (
        sheet.thickness, sheet.e_mod, sheet.n, sheet.k, sheet.prestrain, sheet.begin,
    )  # fmt: skip
    surface = curvature * t / 2.0
    if surface <= sheet.yield_strain:
        elastic = e_mod * t**3 / 12.0 * curvature
        return elastic, elastic, 0.5 * elastic * curvature, 0.5 * elastic * curvature
    power = u**n
    sigma = PLANE_STRAIN * k * power
    double = (u * power * power - e0 * start * start) / (2.0 * n + 1.0)  # integral of u^2n
    per_volume = sigma * sigma / (2.0 * e_mod) + k / (n + 1.0) * (u * power - e0 * start)
    by_elastic = PLANE_STRAIN * k * (n * double - e0 * start * (power - start)) / e_mod
    by_plastic = (
        (u * u * power - e0 * e0 * start) / (n + 2.0) - e0 * start * (u - e0)
    ) / PLANE_STRAIN
    integral = (
        sigma**3 / (6.0 * e_mod * e_mod)
        + k / (n + 1.0) * (by_elastic + by_plastic)
        + PLANE_STRAIN * k * k * double / (2.0 * e_mod)
    )
    moment = 2.0 * (surface * per_volume - integral) / (curvature * curvature)
    energy = 2.0 * integral / curvature
    return moment, 0.5 * t * t * sigma - 2.0 * moment, energy, curvature * moment - energy


@kernel
def bent_each(sheets: Array, curvature: Array, found: Array) -> None:
    """u, and the figures of :class:`Bent`, for each row: into the columns of ``found``."""
    for i in range(len(curvature)):
        sheet = sheet_of(sheets, i)
        u = hardened(sheet, curvature[i] * sheet.thickness / 2.0)
        found[i, 0] = u
        found[i, 1], found[i, 2], found[i, 3], found[i, 4] = bent_at(sheet, curvature[i], u)


def _bent_each(law: SheetLaw, curvature: Array) -> Array:
    """The columns of ``bent_each``, as rows."""
    found = np.empty((len(curvature), 5))
    bent_each(sheet_rows(law, len(curvature)), np.ascontiguousarray(curvature), found)
    return found.T


@dataclass(frozen=True, slots=True)
class Bent:
    """The sheet at given curvatures, all per unit of width.

    moment: M [N]. slope: dM/dkappa times kappa [N]. energy: U [N/mm]. complementary: W [N/mm].
    """

    moment: Array
    slope: Array
    energy: Array
    complementary: Array


def bent(law: SheetLaw, curvature: Array) -> Bent:
    """Moment and energies at curvatures [1/mm] above 0; the module's formulas.

    >>> law = sheet_law(207_000, 200, 530, 0.22, 2.0)
    >>> round(float(bent(law, np.array([1e-4])).moment[0]), 4)  # elastic: E' t^3/12 kappa
    15.1648
    """
    return Bent(*_bent_each(law, curvature)[1:])


def moment(law: SheetLaw, curvature: Array) -> Array:
    """Bending moment per width [N] at curvatures [1/mm] above 0."""
    return bent(law, curvature).moment


def curvature_released(law: SheetLaw, curvature: Array) -> Array:
    """Curvature left [1/mm] when the moment is taken off: kappa - M / (E' t^3/12)."""
    return curvature - moment(law, curvature) / law.stiffness
