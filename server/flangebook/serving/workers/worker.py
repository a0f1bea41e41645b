"""One process that calculates, as the server sees it: given a job, heard, cancelled, ended."""

from __future__ import annotations

import pickle
import queue
import subprocess
import sys
import threading
import time
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import Any

from flangebook.planning.deadline import PlanLimits
from flangebook.shop.work import LostError

LONGEST_S = 90.0
"""A job that has not ended by then never will: a plan ends by itself after 20 s."""
LONGEST_FIRST_S = 300.0
"""So long for a worker's first job: all may have to be compiled for it, on a slow machine."""
CANCEL_S = 0.5
_LOOK_EVERY_S = 0.1
_DEATH_S = 1.0
_PROCESS = "flangebook.serving.workers.worker_process"
# A group of its own: Ctrl-C in the terminal is for the server, which then says when to end.
_APART: dict[str, Any] = (
    {"creationflags": 0x200}  # CREATE_NEW_PROCESS_GROUP
    if sys.platform == "win32"
    else {"process_group": 0}
)
_BROKEN = (EOFError, OSError, ValueError, pickle.UnpicklingError)


class Worker:
    """A process that was started; it may still be loading what it needs.

    expected: nobody asks yet, so that it loads all there is meanwhile.
    """

    def __init__(self, *, expected: bool = False) -> None:
        command = [sys.executable, "-m", _PROCESS, *(["expected"] if expected else [])]
        self._process = subprocess.Popen(
            command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, **_APART
        )
        self._said: queue.SimpleQueue[tuple[str, Any]] = queue.SimpleQueue()
        self._loaded = self._ended = False
        self._jobs = 0
        self._free_since = time.monotonic()
        threading.Thread(target=self._listen, name="worker", daemon=True).start()

    @property
    def number(self) -> int:
        """The system's number of the process."""
        return self._process.pid

    @property
    def alive(self) -> bool:
        """Whether it can be given a job."""
        return not self._ended

    @property
    def idle_s(self) -> float:
        """How long it has had nothing to do [s]."""
        return time.monotonic() - self._free_since

    def run(
        self,
        file: Path | None,
        function: Any,
        arguments: tuple[Any, ...],
        limits: PlanLimits | None,
    ) -> Any:
        """What the job gives or raises. Raises LostError where the process ends."""
        self._jobs += 1
        try:
            while not self._loaded:  # not wanted any more: it goes on loading, for the next
                _heed(limits)
                self._loaded = self._heard()[0] == "ready"
            self._tell((self._jobs, file, function, arguments, _bare(limits)))
            return self._answer(limits)
        finally:
            self._free_since = time.monotonic()

    def let_go(self) -> None:
        """Have the shop's file closed. Raises LostError."""
        self.run(None, None, (), None)

    def kill(self) -> None:
        """End it, whatever it is at."""
        self._ended = True
        self._process.kill()

    def wait(self) -> None:
        """Until it has ended, after ``kill``: the shop's file is closed then."""
        with suppress(subprocess.TimeoutExpired):
            self._process.wait(_DEATH_S)

    def _answer(self, limits: PlanLimits | None) -> Any:
        began = time.monotonic()
        longest = LONGEST_S if self._jobs > 1 else LONGEST_FIRST_S
        while time.monotonic() - began < longest:
            try:
                _heed(limits)
            except BaseException:
                self._cancel()
                raise
            kind, value = self._heard()
            if kind == "done":
                return value
            if kind == "failed":
                raise value
            if kind == "progress" and limits is not None and limits.progress is not None:
                limits.progress(value)
        self.kill()
        raise LostError

    def _cancel(self) -> None:
        """Have it give the job up; where it does not soon, end it."""
        asked = time.monotonic()
        with suppress(LostError):
            self._tell(self._jobs)
            while time.monotonic() - asked < CANCEL_S:
                if self._heard()[0] in ("done", "failed"):
                    return
        self.kill()

    def _heard(self) -> tuple[str, Any]:
        """What it says next, or nothing for a moment. Raises LostError."""
        try:
            kind, value = self._said.get(timeout=_LOOK_EVERY_S)
        except queue.Empty:
            return "nothing", None
        if kind == "ended":
            raise LostError
        return kind, value

    def _tell(self, message: Any) -> None:
        told = self._process.stdin
        assert told is not None
        text = pickle.dumps(message, pickle.HIGHEST_PROTOCOL)
        try:
            told.write(text)
            told.flush()
        except OSError:
            self.kill()
            raise LostError from None

    def _listen(self) -> None:
        said = self._process.stdout
        assert said is not None
        with suppress(*_BROKEN):
            while True:
                self._said.put(pickle.load(said))
        self.kill()
        self._said.put(("ended", None))
        self._process.wait()


def _bare(limits: Any) -> Any:
    """The limits as they can be sent: who calls and who is told stays here."""
    return None if limits is None else replace(limits, cancelled=None, progress=None)


def _heed(limits: PlanLimits | None) -> None:
    if limits is not None:
        limits.heed()
