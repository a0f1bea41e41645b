"""A real server in a process of its own, and the program's other commands."""

from __future__ import annotations

import re
import signal
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import requests
from server_child import FORKED

from . import forked

READY = re.compile(r"^Flangebook is ready at (http://127\.0\.0\.1:(\d+)/) ")
PATIENCE_S = 60


@dataclass
class Running:
    """A server that said it is ready."""

    process: subprocess.Popen[str] | forked.Program
    line: str
    address: str
    port: int

    def get(self, path: str) -> requests.Response:
        return requests.get(self.address + path.lstrip("/"), timeout=PATIENCE_S)

    def stop(self, number: int = signal.SIGTERM) -> tuple[int, str, str]:
        """Send the signal; exit code and what else it said on stdout and stderr."""
        self.process.send_signal(number)
        out, err = self.process.communicate(timeout=PATIENCE_S)
        code = self.process.returncode
        assert code is not None
        return code, out, err


PROGRAM = [sys.executable, "-m", "flangebook"]


def command(data: Path, *more: str, port: int = 0) -> list[str]:
    return [*PROGRAM, "serve", "--port", str(port), "--data", str(data), *more]


def run(arguments: Sequence[str]) -> subprocess.CompletedProcess[str]:
    """Run a command that is expected to end by itself."""
    if FORKED and list(arguments[: len(PROGRAM)]) == PROGRAM:
        return forked.run(arguments[len(PROGRAM) :], PATIENCE_S)
    return subprocess.run(
        arguments, capture_output=True, text=True, timeout=PATIENCE_S, check=False
    )


@contextmanager
def serving(data: Path, *more: str, port: int = 0, from_nothing: bool = False) -> Iterator[Running]:
    """A server, killed at the end if the test did not stop it.

    from_nothing: as a shop starts it, not from a process that has the program loaded already. One
    of those has no workers, which would have to load it again.
    """
    if FORKED and not from_nothing:
        more = (*more, "--one-process")
    arguments = command(data, *more, port=port)
    process = started(arguments, from_nothing=from_nothing or not FORKED)
    try:
        assert process.stdout is not None
        line = process.stdout.readline()
        ready = READY.match(line)
        assert ready, (line, process.poll(), _errors(process, bool(line)))
        yield Running(process, line, ready[1], int(ready[2]))
    finally:
        if process.poll() is None:
            process.kill()
        process.communicate()


def started(
    arguments: list[str], *, from_nothing: bool = not FORKED
) -> subprocess.Popen[str] | forked.Program:
    """The program with these arguments, begun."""
    if not from_nothing:
        return forked.Program(arguments[len(PROGRAM) :])
    pipe = subprocess.PIPE
    return subprocess.Popen(arguments, stdout=pipe, stderr=pipe, text=True)


def _errors(process: subprocess.Popen[str] | forked.Program, alive: bool) -> str:
    if alive:
        process.kill()
    assert process.stderr is not None
    return process.stderr.read()
