"""The server under attack: started, killed with its workers, its disk filled, its memory seen."""

from __future__ import annotations

import os
import re
import resource
import signal
import subprocess
import sys
import threading
import time
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

READY = re.compile(r"http://[\w.]+:\d+")
READY_S = 300.0
_LOOK_EVERY_S = 1.0


@dataclass
class Memory:
    """The most that was resident [MB]."""

    server: float = 0.0
    with_workers: float = 0.0


class Shop:
    """One shop's server, on the same three ports each time it is started."""

    def __init__(self, data: Path, port: int) -> None:
        self.data, self.port = data, port
        self.memory = Memory()
        self.server_kills = self.worker_kills = 0
        self.last_words = ""
        self._process: subprocess.Popen[str] | None = None
        self._log = (data.parent / "stderr.txt").open("a+")
        threading.Thread(target=self._watch, daemon=True).start()

    def start(self) -> None:
        """Start it and wait until it is ready."""
        command = [sys.executable, "-m", "flangebook", "serve", "--lan", "--port", str(self.port),
                   "--data", str(self.data)]  # fmt: skip
        # Its words go to a file: nobody reads a pipe after the first line.
        words = (self.data.parent / "stdout.txt").open("w+")
        self._process = subprocess.Popen(command, stdout=words, stderr=self._log, text=True)
        until = time.monotonic() + READY_S
        while not READY.search((self.data.parent / "stdout.txt").read_text()):
            assert self._process.poll() is None, self.log()
            assert time.monotonic() < until, "the server does not start"
            time.sleep(0.05)

    def kill(self) -> None:
        """Kill -9, and start it again."""
        assert self._process
        self._process.kill()
        self._process.wait()
        self.server_kills += 1
        self.start()

    def kill_worker(self) -> bool:
        """Kill -9 for one of its children; whether there was one."""
        for child in self._children():
            with suppress(ProcessLookupError):
                os.kill(child, signal.SIGKILL)
                self.worker_kills += 1
                return True
        return False

    def limit_files(self, most: int) -> None:
        """No file of the server grows past so many bytes: 4096 is a full disk, -1 a free one."""
        assert self._process
        limits = (most, resource.RLIM_INFINITY)
        resource.prlimit(self._process.pid, resource.RLIMIT_FSIZE, limits)

    def stop(self) -> float:
        """Stop it as its owner does; how long that took [s]."""
        assert self._process
        began = time.monotonic()
        self._process.terminate()
        self._process.wait(READY_S)
        return time.monotonic() - began

    def end(self) -> None:
        """Kill it, if it still runs."""
        if self._process:
            self._process.kill()
            self._process.wait()

    def log(self) -> str:
        """What it wrote to stderr."""
        self._log.flush()
        return Path(self._log.name).read_text()

    def _children(self) -> list[int]:
        pid = self._process.pid if self._process else 0
        with suppress(OSError):
            tasks = Path(f"/proc/{pid}/task").glob("*/children")
            return [int(child) for task in tasks for child in task.read_text().split()]
        return []

    def _watch(self) -> None:
        while True:
            time.sleep(_LOOK_EVERY_S)
            if self._process:
                own = resident_mb(self._process.pid)
                workers = sum(resident_mb(child) for child in self._children())
                self.memory.server = max(self.memory.server, own)
                self.memory.with_workers = max(self.memory.with_workers, own + workers)


def resident_mb(pid: int) -> float:
    """Resident memory of a process; 0 when it is gone."""
    with suppress(OSError, IndexError, ValueError):
        status = Path(f"/proc/{pid}/status").read_text()
        return int(status.partition("VmRSS:")[2].split()[0]) / 1024
    return 0.0
