"""A metal's figures, each with its source and how far it can be trusted."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Standing = Literal["guaranteed minimum", "typical", "measured", "common practice", "from memory"]
GaugeFamily = Literal["steel", "galvanised", "stainless", "aluminium"]


@dataclass(frozen=True, slots=True)
class Figure:
    """One property: low, nominal, high in the field's unit, its source and its standing."""

    low: float
    nominal: float
    high: float
    source: str
    standing: Standing


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
