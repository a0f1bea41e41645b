"""How often something may be tried, so that a code can't be guessed."""

from __future__ import annotations

import threading
import time
from collections import OrderedDict, deque
from collections.abc import Callable

MOST_ASKERS = 10_000


class Attempts:
    """A bound on each asker's failed tries in a stretch of time [s].

    Nobody's tries stop anybody else. A try counts from its beginning, so that many at once gain
    nothing, until it is forgiven. Forgotten when the server stops; a restart takes longer than a
    stretch is worth.
    """

    def __init__(
        self, each: int, stretch_s: float, clock: Callable[[], float] = time.monotonic
    ) -> None:
        self._each = each
        self._stretch_s, self._clock = stretch_s, clock
        self._tries: OrderedDict[str, deque[float]] = OrderedDict()
        self._lock = threading.Lock()

    def wait_s(self, asker: str) -> float:
        """How long the asker has to wait [s]; 0 counts as a try."""
        with self._lock:
            moment = self._clock()
            own = self._tries.setdefault(asker, deque(maxlen=self._each))
            while own and own[0] <= moment - self._stretch_s:
                own.popleft()
            if len(own) >= self._each:
                return own[0] + self._stretch_s - moment
            own.append(moment)
            self._tries.move_to_end(asker)
            if len(self._tries) > MOST_ASKERS:
                self._tries.popitem(last=False)
            return 0.0

    def forgive(self, asker: str) -> None:
        """The asker's newest try was right."""
        with self._lock:
            if self._tries.get(asker):
                self._tries[asker].pop()
