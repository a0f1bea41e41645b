"""A shop's server as its own process: started, killed, started again on the same port and data."""

from __future__ import annotations

import json
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
CRIB = ("press", "punches", "dies", "holders", "metals")
Crib = dict[str, Any]


class ShopProcess:
    """The real server on a port of its own, keeping everything in ``data``."""

    def __init__(self, data: Path, *more: str, port: int = 0) -> None:
        self.data = data
        self.port = port or free_ports(3)  # with --lan the two after it are taken too
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

    def crib(self) -> Crib:
        """The press and each list of tools and metals."""
        return {name: self._document(name)[0] for name in CRIB}

    def put_back(self, crib: Crib) -> None:
        """Make press, tools and metals what they were."""
        for name, before in crib.items():
            now, etag = self._document(name)
            if now != before:
                call(f"{self.url}/api/v1/{name}", "PUT", {name: before}, etag)
        assert self.crib() == crib

    def _document(self, name: str) -> tuple[Any, str]:
        with urllib.request.urlopen(f"{self.url}/api/v1/{name}", timeout=20) as answer:
            return json.load(answer)[name], answer.headers["ETag"]

    def _dies(self, code: str, change: dict[str, Any]) -> dict[str, Any]:
        dies, etag = self._document("dies")
        die = next(d for d in dies if d["code"] == code)
        before = dict(die)
        die.update(change)
        sent = [{k: v for k, v in d.items() if k != "outline_mm"} for d in dies]
        call(f"{self.url}/api/v1/dies", "PUT", {"dies": sent}, etag)
        return before

    def _end(self, how: signal.Signals) -> None:
        if self._process and self._process.poll() is None:
            self._process.send_signal(how)
            self._process.wait(READY_S)
        if self._process and self._process.stdout:
            self._process.stdout.close()
        time.sleep(0.05)


def free_ports(count: int) -> int:
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
