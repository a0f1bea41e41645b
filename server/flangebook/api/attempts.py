"""How often something may be tried, so that a code can't be guessed."""

from __future__ import annotations

import threading
import time
from collections import deque
from collections.abc import Callable


class Attempts:
    """A bound on failed tries in a stretch of time [s], by asker and in all.

    A try counts from its beginning, so that many at once gain nothing, until it is forgiven.
    Forgotten when the server stops; a restart takes longer than a stretch is worth.
    """

    def __init__(
        self,
        each: int,
        together: int,
        stretch_s: float,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._each, self._together = each, together
        self._stretch_s, self._clock = stretch_s, clock
        self._tries: deque[tuple[float, str]] = deque()
        self._lock = threading.Lock()

    def wait_s(self, asker: str) -> float:
        """How long the asker has to wait [s]; 0 counts as a try."""
        with self._lock:
            moment = self._clock()
            while self._tries and self._tries[0][0] <= moment - self._stretch_s:
                self._tries.popleft()
            own = [at for at, who in self._tries if who == asker]
            over = own if len(own) >= self._each else []
            if not over and len(self._tries) >= self._together:
                over = [at for at, _ in self._tries]
            if over:
                return over[0] + self._stretch_s - moment
            self._tries.append((moment, asker))
            return 0.0

    def forgive(self, asker: str) -> None:
        """The asker's newest try was right."""
        with self._lock:
            for place in range(len(self._tries) - 1, -1, -1):
                if self._tries[place][1] == asker:
                    del self._tries[place]
                    return
