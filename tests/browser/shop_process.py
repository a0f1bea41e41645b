"""A shop's server as its own process: started, killed, started again on the same port and data."""

from __future__ import annotations

import re
import signal
import socket
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Any

from browsing import call

READY_S = 30.0


class ShopProcess:
    """The real server on a port of its own, keeping everything in ``data``."""

    def __init__(self, data: Path, *more: str) -> None:
        self.data = data
        self.port = _free_ports(3)  # with --lan the two after it are taken too
        self.url = ""
        self._more = more
        self._process: subprocess.Popen[str] | None = None

    def start(self) -> ShopProcess:
        """Start, and wait for the line that says it is ready. The port stays the same."""
        command = [sys.executable, "-m", "flangebook", "serve", "--port", str(self.port),
                   "--data", str(self.data), *self._more]  # fmt: skip
        log = (self.data.parent / f"{self.data.name}.log").open("a")
        self._process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=log, text=True)
        assert self._process.stdout
        line = self._process.stdout.readline()
        found = re.search(r"http://[\w.]+:\d+", line)
        assert found, f"the server did not say that it is ready: {line!r}"
        self.url = found[0]
        return self

    def kill(self) -> None:
        """As when the plug is pulled."""
        self._end(signal.SIGKILL)

    def stop(self) -> None:
        """As its owner stops it."""
        self._end(signal.SIGTERM)

    def freeze(self) -> None:
        """Connections still open, nothing is ever answered."""
        assert self._process
        self._process.send_signal(signal.SIGSTOP)

    def thaw(self) -> None:
        """Answer again."""
        assert self._process
        self._process.send_signal(signal.SIGCONT)

    @contextmanager
    def changed_die(self, code: str, **change: Any) -> Iterator[None]:
        """The crib with one die changed, for as long as the block runs."""
        before = self._dies(code, change)
        try:
            yield
        finally:
            self._dies(code, {name: before[name] for name in change})

    def _dies(self, code: str, change: dict[str, Any]) -> dict[str, Any]:
        address = f"{self.url}/api/v1/dies"
        with urllib.request.urlopen(address, timeout=20) as answer:
            etag = answer.headers["ETag"]
        dies = call(address)["dies"]
        die = next(d for d in dies if d["code"] == code)
        before = dict(die)
        die.update(change)
        sent = [{k: v for k, v in d.items() if k != "outline_mm"} for d in dies]
        call(address, "PUT", {"dies": sent}, etag)
        return before

    def _end(self, how: signal.Signals) -> None:
        if self._process and self._process.poll() is None:
            self._process.send_signal(how)
            self._process.wait(READY_S)
        if self._process and self._process.stdout:
            self._process.stdout.close()
        time.sleep(0.05)


def _free_ports(count: int) -> int:
    """The first of some ports in a row that nobody has just now. Named, not left to the server:
    one that the server draws itself is not free again for some time after it was killed."""
    while True:
        with ExitStack() as taken:
            try:
                first = _bound(taken, 0)
                for more in range(1, count):
                    _bound(taken, first + more)
            except (OSError, OverflowError):
                continue
            return first


def _bound(taken: ExitStack, port: int) -> int:
    one = taken.enter_context(socket.socket())
    one.bind(("127.0.0.1", port))
    return int(one.getsockname()[1])
