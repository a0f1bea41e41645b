"""Threads that answer requests, begun when they are needed, so many and no more."""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Callable


class Threads:
    """Runs jobs in the order they come. A thread stays for the next job.

    The standard library's pool waits at the program's end for a job that does not end; these
    threads end with the program.
    """

    def __init__(self, most: int, name: str) -> None:
        self._most, self._name = most, name
        self._jobs: deque[Callable[[], None]] = deque()
        self._changed = threading.Condition()
        self._idle = 0
        self._count = 0

    def run(self, job: Callable[[], None]) -> None:
        """Run the job, which raises nothing, as soon as a thread is free."""
        with self._changed:
            self._jobs.append(job)
            # Idle threads that are woken but have not begun yet are as many as the jobs before.
            if len(self._jobs) <= self._idle:
                self._changed.notify()
            elif self._count < self._most:
                self._count += 1
                name = f"{self._name} {self._count}"
                threading.Thread(target=self._work, name=name, daemon=True).start()

    def _work(self) -> None:
        while True:
            job = self._next()
            job()
            del job  # or the last request stays in memory until the next one

    def _next(self) -> Callable[[], None]:
        with self._changed:
            self._idle += 1
            self._changed.wait_for(lambda: self._jobs)
            self._idle -= 1
            return self._jobs.popleft()
