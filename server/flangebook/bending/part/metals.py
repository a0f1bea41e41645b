"""A metal's figures, each with its source and how far it can be trusted."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

Standing = Literal["guaranteed minimum", "typical", "measured", "common practice", "from memory"]
GaugeFamily = Literal["steel", "galvanised", "stainless", "aluminium"]


Three = tuple[float, float, float]
"""Low, nominal, high."""


class MetalFigures(NamedTuple):
    """A metal's bare numbers, in the fields' units: all that a predicted bend depends on."""

    youngs_modulus_mpa: Three
    yield_mpa: Three
    tensile_mpa: Three
    radius_over_v: Three
    springback_at_90_deg: Three
    poisson: float
    hardening_k_mpa: Three | None
    hardening_n: Three | None
    prestrain: float | None
    gauge_family: GaugeFamily | None


@dataclass(frozen=True, slots=True)
class Figure:
    """One property: low, nominal, high in the field's unit, its source and its standing."""

    low: float
    nominal: float
    high: float
    source: str
    standing: Standing

    @property
    def three(self) -> Three:
        """Low, nominal, high."""
        return self.low, self.nominal, self.high


@dataclass(frozen=True, slots=True)
class Metal:
    """A sheet metal.

    youngs_modulus_mpa, yield_mpa, tensile_mpa: E, Y, R_m [MPa]. Safety checks use
        ``tensile_mpa.high``: real sheet is stronger than its minimum.
    density_kg_m3: [kg/m3]. poisson: [-].
    hardening_k_mpa, hardening_n, prestrain: K [MPa], n, e0 of sigma = K (e0 + e)^n, or None.
    radius_over_v: inside radius of an air bend over V opening [-].
    springback_at_90_deg: angle a 90 degree bend opens by when V is 8 t [deg].
    min_radius_over_t_across, ..._with: smallest inside radius over thickness, bend line
        across or with the rolling direction [-], or None when unknown.
    gauge_family: which table a gauge number means, or None.
    """

    code: str
    name: str
    youngs_modulus_mpa: Figure
    yield_mpa: Figure
    tensile_mpa: Figure
    density_kg_m3: Figure
    radius_over_v: Figure
    springback_at_90_deg: Figure
    poisson: float = 0.3
    hardening_k_mpa: Figure | None = None
    hardening_n: Figure | None = None
    prestrain: float | None = None
    min_radius_over_t_across: Figure | None = None
    min_radius_over_t_with: Figure | None = None
    gauge_family: GaugeFamily | None = None
    note: str = ""

    @property
    def figures(self) -> MetalFigures:
        """The bare numbers; what is kept of a metal's bends goes by them."""
        k, n = self.hardening_k_mpa, self.hardening_n
        return MetalFigures(
            self.youngs_modulus_mpa.three,
            self.yield_mpa.three,
            self.tensile_mpa.three,
            self.radius_over_v.three,
            self.springback_at_90_deg.three,
            self.poisson,
            None if k is None else k.three,
            None if n is None else n.three,
            self.prestrain,
            self.gauge_family,
        )


def metal_of(figures: MetalFigures) -> Metal:
    """A nameless metal of these numbers, for the calculations of a bend; its density is none."""

    def figure(three: Three) -> Figure:
        return Figure(*three, "", "typical")

    k, n = figures.hardening_k_mpa, figures.hardening_n
    return Metal(
        code="",
        name="",
        youngs_modulus_mpa=figure(figures.youngs_modulus_mpa),
        yield_mpa=figure(figures.yield_mpa),
        tensile_mpa=figure(figures.tensile_mpa),
        density_kg_m3=figure((0.0, 0.0, 0.0)),
        radius_over_v=figure(figures.radius_over_v),
        springback_at_90_deg=figure(figures.springback_at_90_deg),
        poisson=figures.poisson,
        hardening_k_mpa=None if k is None else figure(k),
        hardening_n=None if n is None else figure(n),
        prestrain=figures.prestrain,
        gauge_family=figures.gauge_family,
    )
