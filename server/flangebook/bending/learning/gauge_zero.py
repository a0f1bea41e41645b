"""The back gauge's zero, from the flanges of several parts.

A flange that the gauge set is off by the gauge's error and by half of what its bend's deduction is
out. ``learning.joint`` tells the two apart: what the flanges of all metals have in common is the
gauge's, what those of one metal have alone is that metal's deduction. With one metal and V alone
they cannot be told apart, and the doubt of both stays wide.
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.learning.joint import GAUGE, Solved

LEAST_FLANGES = 3
LEAST_ZERO_MM = 0.05
SURE = 2.0


@dataclass(frozen=True, slots=True)
class GaugeZero:
    """zero_mm: how much too far back the gauge stands [mm], sd_mm its doubt. flanges: how many."""

    zero_mm: float
    sd_mm: float
    flanges: int

    @property
    def systematic(self) -> bool:
        """Whether the zero is sure and large enough to be set."""
        enough = self.flanges >= LEAST_FLANGES and abs(self.zero_mm) >= LEAST_ZERO_MM
        return enough and abs(self.zero_mm) > SURE * self.sd_mm


def gauge_zero(solved: Solved | None, name: str) -> GaugeZero:
    """What measured flanges say of the gauge.

    Args:
        solved: all flanges and strips' lengths, solved together; None where there are none.
        name: of the setting of its zero that is in force.

    >>> gauge_zero(None, "").zero_mm
    0.0
    """
    if solved is None:
        return GaugeZero(0.0, GAUGE.sd_mm, 0)
    return GaugeZero(*solved.error(name), len(solved.telling(name)))
