"""Servers as processes of their own, forked from one that has the program loaded already.

To load it takes longer than most tests ask of a server. tests/serving/forked.py does the same for
tests/api and tests/serving; where the start itself is tested it is a shop's, from nothing.
"""

from __future__ import annotations

import functools
import multiprocessing
import os
import sys
from multiprocessing import forkserver
from multiprocessing.connection import Connection
from multiprocessing.context import BaseContext
from pathlib import Path
from unittest.mock import patch

from flangebook.api import plan_stream
from flangebook.serving.command import main

FORKED = "forkserver" in multiprocessing.get_all_start_methods()  # not on Windows
LOADED = "loaded_server"


@functools.cache
def loaded_context() -> BaseContext:
    """How processes are made. The first asked for starts the one that they are forked from."""
    if not FORKED:
        return multiprocessing.get_context("spawn")
    context = multiprocessing.get_context("forkserver")
    context.set_forkserver_preload([LOADED])
    # Python 3.11 does not tell it where modules are found.
    with patch.dict(os.environ, PYTHONPATH=str(Path(__file__).parent)):
        forkserver.ensure_running()
    return context


class ServerChild:
    """A server that has begun to start. said_first: its first line, "" if it ended without one."""

    def __init__(self, arguments: list[str], log: Path, search_s: float | None = None) -> None:
        context = loaded_context()
        said, says = context.Pipe(duplex=False)
        self._said = said
        self._process = context.Process(target=_serve, args=(arguments, says, log, search_s))
        self._process.start()
        says.close()
        with os.fdopen(said.fileno(), closefd=False) as lines:
            self.said_first = lines.readline()

    @property
    def running(self) -> bool:
        """Whether it has not ended."""
        return self._process.is_alive()

    @property
    def pid(self) -> int:
        """Its number in the system."""
        return self._process.pid or 0

    def send(self, signal: int) -> None:
        """Send it a signal."""
        os.kill(self.pid, signal)

    def wait(self, seconds: float) -> None:
        """Wait for its end. Raises TimeoutError."""
        self._process.join(seconds)
        if self.running:
            raise TimeoutError(f"the server did not end within {seconds} s")
        self._said.close()


def _serve(arguments: list[str], says: Connection, log: Path, search_s: float | None) -> None:
    """Be the program `flangebook` with these arguments."""
    assert not FORKED or LOADED in sys.modules
    if search_s is not None:
        plan_stream.DEADLINE_S = search_s
    os.dup2(says.fileno(), sys.stdout.fileno())
    with log.open("a") as file:
        os.dup2(file.fileno(), sys.stderr.fileno())
    sys.exit(main(arguments))
