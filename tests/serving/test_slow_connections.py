"""Connections that send or read next to nothing hold nobody up, and are cut after a while.

No time is asserted. Who holds a line open does so until the others were answered, and opens
another one as soon as one is cut.
"""

from __future__ import annotations

import socket
import ssl
import threading
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest
import requests

from serving.lan import Network, on_the_network
from serving.running import PATIENCE_S

pytestmark = pytest.mark.slow

SLOW = 30
EVERY_S = 0.2
Open = Callable[[], socket.socket]
HEAD = b"POST /api/v1/pair HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nContent-Type: application/json\r\n"


@pytest.fixture(scope="module")
def lan(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Network]:
    with on_the_network(tmp_path_factory.mktemp("slow") / "shop", "--empty") as network:
        yield network


@pytest.fixture(params=["loopback", "http", "https"])
def door(request: pytest.FixtureRequest, lan: Network) -> str:
    """The address of one door."""
    found: str = {"loopback": lan.server.address[:-1], "http": lan.http, "https": lan.https}[
        request.param
    ]
    return found


def port_of(door: str) -> int:
    return int(door.rpartition(":")[2])


def opened(door: str, authority: Path, small: bool = False) -> socket.socket:
    """A line to the door, after the handshake. small: takes little at a time."""
    line = socket.socket()
    if small:
        line.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 2048)
    line.settimeout(PATIENCE_S)
    line.connect(("127.0.0.1", port_of(door)))
    if door.startswith("https"):
        context = ssl.create_default_context(cafile=str(authority))
        return context.wrap_socket(line, server_hostname="127.0.0.1")
    return line


class Slow:
    """Lines that each do a little now and then; one that is cut is opened again."""

    def __init__(self, count: int, new: Open, again: Callable[[socket.socket], None]) -> None:
        self._new, self._again, self._count = new, again, count
        self._lines: list[socket.socket] = []
        self._stop = threading.Event()
        self._all_there = threading.Event()
        self._thread = threading.Thread(target=self._run, daemon=True)

    def __enter__(self) -> Slow:
        self._thread.start()
        assert self._all_there.wait(PATIENCE_S)
        return self

    def __exit__(self, *_: object) -> None:
        self._stop.set()
        self._thread.join(PATIENCE_S)

    def _run(self) -> None:
        while not self._stop.is_set():
            for _ in range(self._count - len(self._lines)):
                with suppress(OSError):
                    self._lines.append(self._new())
            for line in list(self._lines):
                try:
                    self._again(line)
                except OSError:
                    self._lines.remove(line)
                    line.close()
            self._all_there.set()
            self._stop.wait(EVERY_S)
        for line in self._lines:
            line.close()


@contextmanager
def answered(lan: Network, door: str) -> Iterator[Callable[[], None]]:
    """Asks the door for its health, on a new line each time."""

    def ask() -> None:
        answer = requests.get(
            f"{door}/api/v1/health", verify=str(lan.authority), timeout=PATIENCE_S
        )
        assert answer.status_code == 200

    yield ask


def starts(door: str) -> dict[str, bytes]:
    """How requests begin that then come a byte at a time."""
    head = HEAD % port_of(door)
    return {
        "a head": head + b"X-Slow: ",
        "a body": head + b"Content-Length: 5000\r\n\r\n",
        "a body without a length": head + b"Transfer-Encoding: chunked\r\n\r\n1000\r\n",
    }


@pytest.mark.parametrize("part", ["a head", "a body", "a body without a length"])
def test_slow_senders_hold_nobody_up(lan: Network, door: str, part: str):
    def new() -> socket.socket:
        line = opened(door, lan.authority)
        line.sendall(starts(door)[part])
        return line

    with Slow(SLOW, new, lambda line: line.sendall(b"x")), answered(lan, door) as ask:
        for _ in range(3):
            ask()


def test_slow_readers_hold_nobody_up(lan: Network, door: str):
    host = b"Host: 127.0.0.1:%d\r\n" % port_of(door)
    many = (b"GET /made/app.js HTTP/1.1\r\n" + host + b"\r\n") * 40

    def new() -> socket.socket:
        line = opened(door, lan.authority, small=True)
        line.sendall(many)
        return line

    with Slow(SLOW, new, lambda line: line.recv(1) and None), answered(lan, door) as ask:
        for _ in range(3):
            ask()


def last_words(door: str, lan: Network, start: bytes) -> bytes | None:
    """What is said to who sends a byte now and then, until the line is cut; None: it never is."""
    line = opened(door, lan.authority)
    until = time.monotonic() + PATIENCE_S
    line.sendall(start)
    line.settimeout(EVERY_S)
    said = b""
    with line:
        while time.monotonic() < until:
            try:
                line.sendall(b"x")
                piece = line.recv(4096)
            except TimeoutError:
                continue
            except OSError:
                return said
            if not piece:
                return said
            said += piece
    return None


def test_slow_senders_are_cut_and_hear_why(lan: Network, door: str):
    with ThreadPoolExecutor(3) as threads:
        words = list(threads.map(lambda start: last_words(door, lan, start), starts(door).values()))
    for said in words:
        assert said is not None, "a slow line is never cut"
        head, _, body = said.partition(b"\r\n\r\n")
        assert head.startswith(b"HTTP/1.1 408"), said
        assert b"application/problem+json" in head
        assert b"did not arrive" in body
