"""A process that calculates for the server: one thing at a time, told by its standard input.

    python -m flangebook.serving.workers.worker_process [expected]

Messages are pickled, one after another. In: ``(number, file, function, arguments, limits)``,
without a file to close the one that is open; a number alone cancels that job. Out: ``(word,
value)``, the word "ready", "progress", "done" or "failed". It ends when its input does, whatever
it is at: so it never outlives its server, not even one that was killed. It loads what it is asked
for when it is asked; where it is expected to be asked, all of it before.
"""

from __future__ import annotations

import os
import pickle
import queue
import signal
import sys
import threading
import traceback
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any, BinaryIO

from flangebook.shop.work import NotWantedError

if TYPE_CHECKING:
    from flangebook.shop.store import Store

MOST_BYTES = 1_500_000_000
"""So much memory it may have. A search keeps to 600 MB, the program loaded takes 290."""


class _Calculator:
    """What is done here. asked: the jobs, in order."""

    def __init__(self, said: BinaryIO) -> None:
        self._said = said
        self._store: tuple[Path, Store] | None = None
        self._at = self._unwanted = 0
        self.asked: queue.SimpleQueue[Any] = queue.SimpleQueue()

    def listen(self, told: BinaryIO) -> None:
        """Take what is asked, until there is nobody to ask."""
        try:
            while True:
                message = pickle.load(told)
                if isinstance(message, int):
                    self._unwanted = message
                else:
                    self.asked.put(message)
        except (EOFError, OSError):
            os._exit(0)
        except BaseException:  # a job that cannot be read: whoever asked is told that it is lost
            traceback.print_exc()
            os._exit(1)

    def say(self, kind: str, value: Any = None) -> None:
        """Tell the server; where it was killed, there is nobody to work for."""
        try:
            pickle.dump((kind, value), self._said, pickle.HIGHEST_PROTOCOL)
            self._said.flush()
        except BrokenPipeError:
            os._exit(0)

    def work(self) -> None:
        """Do what is asked, one after another."""
        while True:
            self._at, *job = self.asked.get()
            try:
                said = "done", self._done(*job)
            except MemoryError:
                os._exit(1)  # what is left of this process is of no use
            except Exception as error:
                said = "failed", _as_told(error)
            self.say(*said)

    def _done(self, file: Path | None, function: Any, arguments: Any, limits: Any) -> Any:
        if file is None:
            return self._let_go()
        store = self._open(file)
        if limits is None:
            return function(store, *arguments)
        here = replace(limits, cancelled=self._heed, progress=self._progress)
        return function(store, *arguments, here)

    def _heed(self) -> bool:
        if self._unwanted == self._at:
            raise NotWantedError
        return False

    def _progress(self, told: Any) -> None:
        self.say("progress", told)

    def _open(self, file: Path) -> Store:
        from flangebook.shop.store import opened_again  # noqa: PLC0415

        if self._store is None or self._store[0] != file:
            self._let_go()
            self._store = file, opened_again(file)
        return self._store[1]

    def _let_go(self) -> None:
        if self._store is not None:
            self._store[1].close()
            self._store = None


def _as_told(error: Exception) -> Exception:
    """The error as it can be sent, with what led to it."""
    try:
        pickle.loads(pickle.dumps(error))
    except Exception:
        error = RuntimeError(repr(error))
    if not isinstance(error, NotWantedError):
        error.add_note("In the worker:\n" + traceback.format_exc())
    return error


def main() -> None:
    """Be such a process."""
    for name in ("SIGINT", "SIGBREAK"):  # of the terminal: the server says when to end
        if hasattr(signal, name):
            signal.signal(getattr(signal, name), signal.SIG_IGN)
    told, said = os.fdopen(os.dup(0), "rb"), os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # whatever is printed is no message
    here = _Calculator(said)
    threading.Thread(target=here.listen, args=(told,), name="listen", daemon=True).start()
    _bound_memory()
    here.say("ready")
    if sys.argv[1:]:
        _load()
    here.work()


def _bound_memory() -> None:
    """As far as the system does it: Linux. Elsewhere the search keeps to its own bound."""
    if sys.platform == "linux":
        import resource  # noqa: PLC0415

        resource.setrlimit(resource.RLIMIT_DATA, (MOST_BYTES, MOST_BYTES))


def _load() -> None:
    """All that is asked of it, and the compiled functions, before anybody waits."""
    import flangebook.use_cases.learning  # noqa: F401, PLC0415
    from flangebook.planning.warm_up import warm_up  # noqa: PLC0415

    warm_up()


if __name__ == "__main__":
    main()
