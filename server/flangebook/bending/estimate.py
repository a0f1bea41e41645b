"""A predicted value with its band and where it comes from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

NINE_IN_TEN = 1.645
"""Standard deviations of a normal error to either side that hold nine in ten, as bands do."""
Origin = Literal["model", "handbook", "your test bends", "given"]


@dataclass(frozen=True, slots=True)
class Estimate:
    """A value with the band it is expected to fall in.

    low, nominal, high: same unit, ``low <= nominal <= high``.
    origin: "model", "handbook", "your test bends" or "given".
    basis: one line naming the source or the rule.
    """

    low: float
    nominal: float
    high: float
    origin: Origin = "handbook"
    basis: str = ""

    def __post_init__(self) -> None:
        if not self.low <= self.nominal <= self.high:
            raise ValueError(f"band out of order: {self.low}, {self.nominal}, {self.high}")

    @classmethod
    def exact(cls, value: float, basis: str = "given") -> Estimate:
        """A value that was given, not predicted."""
        return cls(value, value, value, "given", basis)

    def mapped(self, function: Callable[[float], float]) -> Estimate:
        """The band after a monotone function of the value, rising or falling."""
        ends = sorted((function(self.low), function(self.high)))
        return Estimate(ends[0], function(self.nominal), ends[1], self.origin, self.basis)
