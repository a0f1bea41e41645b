"""How long a plan may take, one deadline for all that it does."""

from __future__ import annotations

import math
import time
from collections.abc import Callable
from dataclasses import dataclass, replace

from flangebook.bending.ordering.search import Progress

DEADLINE_S = 20.0
LEAST_S = 0.05


@dataclass(frozen=True, slots=True)
class PlanLimits:
    """How long a plan may take, whether it is still wanted, and who is told how far it is.

    explain: where there is no order, look for the one with the fewest steps refused. ends_at:
    when the time is up, by the monotonic clock; None before ``begun``."""

    deadline_s: float = DEADLINE_S
    cancelled: Callable[[], bool] | None = None
    progress: Callable[[Progress], None] | None = None
    explain: bool = True
    ends_at: float | None = None

    def begun(self) -> PlanLimits:
        """The same with the clock running: one deadline for all searches of a plan."""
        if self.ends_at is not None:
            return self
        return replace(self, ends_at=time.monotonic() + self.deadline_s)

    def for_half(self) -> PlanLimits:
        """The same for the first of two plans: half of the time that is left."""
        begun = self.begun()
        return replace(begun, ends_at=time.monotonic() + begun.left_s() / 2.0)

    @property
    def over(self) -> bool:
        """Whether the time is up."""
        return self.ends_at is not None and time.monotonic() >= self.ends_at

    def heed(self) -> None:
        """Between two pieces of work: raises what ``cancelled`` raises where nobody waits."""
        if self.cancelled is not None:
            self.cancelled()

    def left_s(self, most_s: float = math.inf) -> float:
        """Seconds that are left, at most so many; always enough for a small part."""
        ends_at = self.ends_at or time.monotonic() + self.deadline_s
        return min(max(ends_at - time.monotonic(), LEAST_S), most_s)
