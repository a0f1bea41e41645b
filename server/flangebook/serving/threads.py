"""Threads that answer requests, begun when they are needed, so many and no more."""

from __future__ import annotations

import threading
from collections.abc import Callable
from queue import Empty, SimpleQueue


class Threads:
    """Runs jobs in the order they come. A thread stays for the next job.

    The standard library's pool waits at the program's end for a job that does not end; these
    threads end with the program.
    """

    def __init__(self, most: int, name: str) -> None:
        self._most, self._name = most, name
        self._jobs: SimpleQueue[Callable[[], None]] = SimpleQueue()
        self._idle = threading.Semaphore(0)
        self._count = 0

    def run(self, job: Callable[[], None]) -> None:
        """Run the job, which raises nothing, as soon as a thread is free. One thread calls this."""
        self._jobs.put(job)
        if not self._idle.acquire(blocking=False) and self._count < self._most:
            self._count += 1
            name = f"{self._name} {self._count}"
            threading.Thread(target=self._work, name=name, daemon=True).start()

    def _work(self) -> None:
        while True:
            try:
                job = self._jobs.get_nowait()
            except Empty:
                self._idle.release()
                job = self._jobs.get()
            job()
            del job  # or the last request stays in memory until the next one
