"""The back gauge's zero, and what is left to the deductions, from the flanges of several parts.

Each flange that the gauge set directly is off by e_i = z + d_g + noise: z how much too far back the
gauge stands whatever is bent, d_g half of what the deduction of its metal, thickness and V is out.
Both begin at nought with the spreads below; what all groups have in common falls to z, what only
one has to its d_g. With one group alone the two cannot be told apart: the share of z is then by the
spreads, and its doubt stays wide.

A linear model with normal errors, solved in closed form: with w = n/(n D + N) for a group of n
flanges with the mean m (D, N variances of d_g and of one flange), z has the precision 1/Z + sum w
and the mean (sum w m) over it; d_g is then n D/(n D + N) of what its mean leaves over z.
Source: Bayes' rule for the normal mean with known variances (Gelman et al., Bayesian Data Analysis,
section 5.4, from memory).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import sqrt
from statistics import fmean

ZERO_SD_MM, DEDUCTION_SD_MM, FLANGE_SD_MM = 0.2, 0.1, 0.1
"""Spread of a gauge's zero, of half a deduction, and of one measured flange (common practice)."""
LEAST_FLANGES = 3
LEAST_ZERO_MM = 0.05
SURE = 2.0


@dataclass(frozen=True, slots=True)
class GaugeZero:
    """zero_mm: how much too far back the gauge stands [mm], sd_mm its doubt. flanges: how many.
    deductions_mm: by group, how much its bend's deduction should be larger [mm]."""

    zero_mm: float
    sd_mm: float
    flanges: int
    deductions_mm: Mapping[str, float]

    @property
    def systematic(self) -> bool:
        """Whether the zero is sure and large enough to be set."""
        enough = self.flanges >= LEAST_FLANGES and abs(self.zero_mm) >= LEAST_ZERO_MM
        return enough and abs(self.zero_mm) > SURE * self.sd_mm


def gauge_zero(errors_mm: Mapping[str, Sequence[float]]) -> GaugeZero:
    """What measured flanges say of the gauge.

    Args:
        errors_mm: by group (metal, thickness and V), each flange's measured length less the
            expected one, less by how much the gauge stood back from its planned X [mm].

    >>> gauge_zero({}).zero_mm
    0.0
    """
    groups = {name: (len(found), fmean(found)) for name, found in errors_mm.items() if found}
    noise, own = FLANGE_SD_MM**2, DEDUCTION_SD_MM**2
    weights = {name: n / (n * own + noise) for name, (n, _) in groups.items()}
    precision = 1.0 / ZERO_SD_MM**2 + sum(weights.values())
    zero = sum(weights[name] * mean for name, (_, mean) in groups.items()) / precision
    return GaugeZero(
        zero,
        1.0 / sqrt(precision),
        sum(n for n, _ in groups.values()),
        {
            name: 2.0 * (mean - zero) * n * own / (n * own + noise)
            for name, (n, mean) in groups.items()
        },
    )
