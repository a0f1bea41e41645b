"""The program ``flangebook`` as a process of its own, forked from one that has it loaded already.

To load it takes longer than most tests ask of it. What a start from nothing is like is tested with
``subprocess`` (test_serve.py, tests/durability).
"""

from __future__ import annotations

import os
import subprocess
import sys
import threading
from collections.abc import Sequence
from multiprocessing.connection import Connection
from pathlib import Path
from typing import TextIO

from server_child import loaded_context

from flangebook.serving.command import main


class Program:
    """What tests use of ``subprocess.Popen``; only where ``server_child.FORKED``."""

    def __init__(self, arguments: Sequence[str | Path]) -> None:
        context = loaded_context()
        pipes = [context.Pipe(duplex=False) for _ in range(2)]
        here = (dict(os.environ), os.getcwd())
        self._process = context.Process(
            target=_be, args=([*map(str, arguments)], *here, *(says for _, says in pipes))
        )
        self._process.start()
        for _, says in pipes:
            says.close()
        self._said: list[str] | None = None
        self.stdout, self.stderr = (_text(read) for read, _ in pipes)

    @property
    def pid(self) -> int:
        return self._process.pid or 0

    @property
    def returncode(self) -> int | None:
        return self.poll()

    def poll(self) -> int | None:
        code: int | None = self._process.exitcode
        return code

    def wait(self, timeout: float | None = None) -> int:
        self._process.join(timeout)
        code = self.poll()
        if code is None:
            raise subprocess.TimeoutExpired("flangebook", timeout or 0.0)
        return code

    def send_signal(self, number: int) -> None:
        if self.poll() is None:
            os.kill(self.pid, number)

    def kill(self) -> None:
        if self.poll() is None:
            self._process.kill()

    def communicate(self, timeout: float | None = None) -> tuple[str, str]:
        """Wait for its end; what else it says till then on stdout and stderr."""
        if self._said is None:
            said = ["", ""]
            readers = [
                threading.Thread(target=_read, args=(file, said, i), daemon=True)
                for i, file in enumerate((self.stdout, self.stderr))
            ]
            for reader in readers:
                reader.start()
            self.wait(timeout)
            for reader in readers:
                reader.join()
            self._said = said
            return said[0], said[1]
        return "", ""


def run(arguments: Sequence[str | Path], timeout: float) -> subprocess.CompletedProcess[str]:
    """Run a command of the program that is expected to end by itself."""
    program = Program(arguments)
    try:
        out, err = program.communicate(timeout)
    finally:
        program.kill()
    return subprocess.CompletedProcess(list(arguments), program.wait(), out, err)


def _text(read: Connection) -> TextIO:
    """The lines of a pipe's end, which is left to the file."""
    file = os.fdopen(os.dup(read.fileno()), encoding="utf-8", errors="replace")
    read.close()
    return file


def _read(file: TextIO, said: list[str], at: int) -> None:
    with file:
        said[at] = file.read()


def _be(
    arguments: list[str], environment: dict[str, str], folder: str, out: Connection, err: Connection
) -> None:
    """Be the program with these arguments, in the surroundings of who asked for it."""
    os.environ.clear()
    os.environ.update(environment)
    os.chdir(folder)
    os.dup2(out.fileno(), 1)
    os.dup2(err.fileno(), 2)
    out.close()
    err.close()
    # Those that are there have their place in what they wrote to before.
    sys.stdout, sys.stderr = (os.fdopen(n, "w", encoding="utf-8", closefd=False) for n in (1, 2))
    sys.exit(main(arguments))
