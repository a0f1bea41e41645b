"""Tables that are saved with a step, read between their rows.

A phone without the shop reads them the same way (``web/app/results/saved_table.js``).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

SAME = 0.002
"""Saved tables are rounded to a thousandth: so far beyond an end is the end."""


@dataclass(frozen=True, slots=True)
class Line:
    """A figure by another one, from the saved table: straight between its rows, nothing beyond
    its ends."""

    rows: tuple[tuple[float, float], ...]

    @classmethod
    def of(cls, pairs: Iterable[tuple[float, float]]) -> Line:
        """The line through pairs, of which each abscissa counts once."""
        return cls(tuple(sorted(dict(pairs).items())))

    def at(self, x: float) -> float | None:
        """The figure there; None beyond the ends."""
        if not self.rows[0][0] - SAME <= x <= self.rows[-1][0] + SAME:
            return None
        low, high = self._around(x)
        share = (x - low[0]) / (high[0] - low[0])
        return low[1] + share * (high[1] - low[1])

    def between(self, start: float, end: float) -> float | None:
        """How much the figure grows from one place to another; None beyond the ends."""
        if start == end:
            return 0.0
        before, after = self.at(start), self.at(end)
        return None if before is None or after is None else after - before

    def slope(self, x: float) -> float:
        """How much the figure grows for one more there; beyond an end as at the end."""
        low, high = self._around(x)
        return (high[1] - low[1]) / (high[0] - low[0])

    def _around(self, x: float) -> tuple[tuple[float, float], tuple[float, float]]:
        after = next((i for i, row in enumerate(self.rows) if row[0] > x), len(self.rows))
        high = min(max(after, 1), len(self.rows) - 1)
        return self.rows[high - 1], self.rows[high]
