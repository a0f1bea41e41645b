"""The processes that calculate for the server: started when asked for, a few, gone when idle.

Plans, charts, drawings read and what results teach are worked out in them, so that the server
itself stays small, answers others meanwhile, and outlives whatever happens to a calculation. What
asks for work names a function and gives its arguments; the process opens the shop's file itself.

Standard library: ``ProcessPoolExecutor`` gives up all of its work when one process dies and cannot
end what has begun, nor can loky; Pebble can, but keeps its processes and knows no idle time.
"""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any

from flangebook.planning.deadline import PlanLimits
from flangebook.serving.workers.worker import Worker
from flangebook.shop.work import BusyError, LostError, StoppedError

MOST = 3
MOST_PLANS = 2
"""So many long calculations at once: one process is left for what takes milliseconds."""
MOST_WAITING = 8
IDLE_S = 300.0
SPARE_S = 1.0
_LOOK_EVERY_S = 0.2


class Processes:
    """Workers of one server. Threads ask; each has a worker to itself until it has its answer."""

    def __init__(self) -> None:
        self._changed = threading.Condition()
        self._all: list[Worker] = []
        self._idle: list[Worker] = []
        self._plans = self._waiting = 0
        self._stopped = self._watched = False

    def run(
        self, file: Path, function: Callable[..., Any], arguments: tuple[Any, ...], limits: Any
    ) -> Any:
        """As ``work.Workers`` says."""
        worker = self._taken(limits)
        spare = threading.Timer(SPARE_S, self._spare)
        spare.daemon = True
        try:
            if limits is not None:
                spare.start()
            return worker.run(file, function, arguments, limits)
        except LostError:
            raise (StoppedError if self._stopped else LostError) from None
        finally:
            spare.cancel()
            self._give_back(worker, limits)

    def expect(self) -> None:
        """Have one ready."""
        with self._changed:
            if not (self._all or self._stopped):
                self._idle.append(self._started(expected=True))

    def _spare(self) -> None:
        """A plan takes long: have a worker ready for others."""
        with self._changed:
            if not (self._idle or self._stopped) and len(self._all) < MOST:
                self._idle.append(self._started(expected=True))

    def let_go(self) -> None:
        """Close the shop's file in all of them, nobody asking: it is going to be moved."""
        for worker in self._idle:
            with suppress(LostError):
                worker.let_go()

    def stop(self) -> None:
        """End all of them, whatever they are at, and start no others."""
        with self._changed:
            self._stopped = True
            ending = list(self._all)
            for worker in ending:
                worker.kill()
            self._changed.notify_all()
        for worker in ending:
            worker.wait()

    @property
    def numbers(self) -> list[int]:
        """The processes that there are."""
        with self._changed:
            return [worker.number for worker in self._all]

    def _taken(self, limits: PlanLimits | None) -> Worker:
        long = limits is not None
        with self._changed:
            worker = self._free(long)
            if worker is None and long and self._waiting >= MOST_WAITING:
                raise BusyError
            self._waiting += long
            try:
                while worker is None:
                    self._changed.wait(_LOOK_EVERY_S)
                    if limits is not None:
                        limits.heed()
                    worker = self._free(long)
            finally:
                self._waiting -= long
            self._plans += long
            return worker

    def _free(self, long: bool) -> Worker | None:
        if self._stopped:
            raise StoppedError
        if long and self._plans >= MOST_PLANS:
            return None
        while self._idle:
            worker = self._idle.pop()
            if worker.alive:
                return worker
            self._all.remove(worker)
        return self._started() if len(self._all) < MOST else None

    def _started(self, *, expected: bool = False) -> Worker:
        worker = Worker(expected=expected)
        self._all.append(worker)
        if not self._watched:
            self._watched = True
            threading.Thread(target=self._watch, name="idle workers", daemon=True).start()
        return worker

    def _give_back(self, worker: Worker, limits: PlanLimits | None) -> None:
        with self._changed:
            self._plans -= limits is not None
            if worker.alive:
                self._idle.append(worker)
            else:
                self._all.remove(worker)
            self._changed.notify_all()

    def _watch(self) -> None:
        """End those that nobody asked for long."""
        while True:
            time.sleep(min(IDLE_S, 10.0))
            with self._changed:
                for worker in [w for w in self._idle if w.idle_s > IDLE_S or not w.alive]:
                    self._idle.remove(worker)
                    self._all.remove(worker)
                    worker.kill()
                if not self._all:
                    self._watched = False
                    return
