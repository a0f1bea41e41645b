"""A shop's server as its own process: started, killed, started again on the same port and data."""

from __future__ import annotations

import json
import re
import secrets
import signal
import socket
import time
import urllib.request
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path
from typing import Any

from browsing import call
from server_child import ServerChild

READY_S = 30.0
CRIB = ("press", "punches", "dies", "holders", "metals")
Crib = dict[str, Any]


class ShopProcess:
    """The real server on a port of its own, keeping everything in ``data``."""

    def __init__(
        self, data: Path, *more: str, port: int = 0, search_s: float | None = None
    ) -> None:
        """search_s: how long it searches for an order that a page waits for; None: as always."""
        self.data = data
        self.port = port or free_ports(3)  # with --lan the two after it are taken too
        self.url = ""
        self._more = more
        self._search_s = search_s
        self._process: ServerChild | None = None

    def start(self) -> ShopProcess:
        """Start, and wait for the line that says it is ready. The port stays the same."""
        arguments = ["serve", "--port", str(self.port), "--data", str(self.data), "--one-process"]
        self._process = ServerChild(
            [*arguments, *self._more], self.data.parent / f"{self.data.name}.log", self._search_s
        )
        line = self._process.said_first
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
        self._process.send(signal.SIGSTOP)

    def thaw(self) -> None:
        """Answer again."""
        assert self._process
        self._process.send(signal.SIGCONT)

    def fill_disk(self) -> None:
        """From now on no file of the server can grow past its first page, as on a full disk."""
        self._limit_files(4096)

    def free_disk(self) -> None:
        """Files may grow again."""
        self._limit_files(-1)

    def _limit_files(self, most: int) -> None:
        import resource

        assert self._process
        hard = resource.RLIM_INFINITY
        resource.prlimit(self._process.pid, resource.RLIMIT_FSIZE, (most, hard))

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
        return {name: self.document(name)[0] for name in CRIB}

    def put_back(self, crib: Crib) -> None:
        """Make press, tools and metals what they were."""
        for name, before in crib.items():
            now, etag = self.document(name)
            if now != before:
                call(f"{self.url}/api/v1/{name}", "PUT", {name: before}, etag)
        assert self.crib() == crib

    def document(self, name: str) -> tuple[Any, str]:
        """The press, or a list of tools or metals, and its ETag."""
        with urllib.request.urlopen(f"{self.url}/api/v1/{name}", timeout=20) as answer:
            return json.load(answer)[name], answer.headers["ETag"]

    def _dies(self, code: str, change: dict[str, Any]) -> dict[str, Any]:
        dies, etag = self.document("dies")
        die = next(d for d in dies if d["code"] == code)
        before = dict(die)
        die.update(change)
        sent = [{k: v for k, v in d.items() if k != "outline_mm"} for d in dies]
        call(f"{self.url}/api/v1/dies", "PUT", {"dies": sent}, etag)
        return before

    def _end(self, how: signal.Signals) -> None:
        if self._process and self._process.running:
            self._process.send(how)
            self._process.wait(READY_S)
        time.sleep(0.05)


def free_ports(count: int) -> int:
    """The first of some ports in a row that nobody has just now.

    Not of those that the system gives to whoever asks for any: between two servers on a port
    somebody else would be given it.
    """
    while True:
        first = 12_000 + secrets.randbelow(20_000)
        with ExitStack() as taken, suppress(OSError):
            for port in range(first, first + count):
                taken.enter_context(socket.socket()).bind(("127.0.0.1", port))
            return first
