"""A real server in a process of its own, as the command starts it."""

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

READY = re.compile(r"^Flangebook is ready at (http://127\.0\.0\.1:(\d+)/) ")
PATIENCE_S = 60


@dataclass
class Running:
    """A server that said it is ready."""

    process: subprocess.Popen[str]
    line: str
    address: str
    port: int

    def get(self, path: str) -> requests.Response:
        return requests.get(self.address + path.lstrip("/"), timeout=PATIENCE_S)

    def stop(self, number: int = signal.SIGTERM) -> tuple[int, str, str]:
        """Send the signal; exit code and what else it said on stdout and stderr."""
        self.process.send_signal(number)
        out, err = self.process.communicate(timeout=PATIENCE_S)
        return self.process.returncode, out, err


def command(data: Path, *more: str, port: int = 0) -> list[str]:
    start = [sys.executable, "-m", "flangebook", "serve"]
    return [*start, "--port", str(port), "--data", str(data), *more]


def run(arguments: Sequence[str]) -> subprocess.CompletedProcess[str]:
    """Run a command that is expected to end by itself."""
    return subprocess.run(
        arguments, capture_output=True, text=True, timeout=PATIENCE_S, check=False
    )


@contextmanager
def serving(data: Path, *more: str, port: int = 0) -> Iterator[Running]:
    """A server, killed at the end if the test did not stop it."""
    process = subprocess.Popen(
        command(data, *more, port=port), stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )
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


def _errors(process: subprocess.Popen[str], alive: bool) -> str:
    if alive:
        process.kill()
    assert process.stderr is not None
    return process.stderr.read()
