"""The server's listening ports, each bound to one address.

A listener marks what comes through it with its way, so that the app knows whether the owner sits
at the machine or somebody asks over the network. All stop by one signal, SIGINT or SIGTERM
(Ctrl-Break on Windows), after the answers under way are finished.
"""

from __future__ import annotations

import signal
import socket
import sys
import threading
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from types import FrameType
from typing import Any
from urllib.parse import urlsplit
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from flangebook.api.caller import WAY_KEY, Way
from flangebook.serving.http.door import LONGEST_STOP_S, MOST_WAITING, Door
from flangebook.serving.http.tls import Tls

LOOPBACK = "127.0.0.1"
EVERYWHERE = "0.0.0.0"
_MOST_FILES = 4096
_POLL_S = 0.5  # Windows does not interrupt a wait without end by Ctrl-C


class ListenError(Exception):
    """The port cannot be had; the message says what to do."""


class Listener:
    """A port that is taken, not yet answering.

    tls: what it shows, None for plain http. public: on the way "proxy", the address that
    devices use, such as "https://bend.example".
    """

    def __init__(
        self, port: int, way: Way = "loopback", *, host: str = LOOPBACK, tls: Tls | None = None,
        public: str = "",
    ) -> None:  # fmt: skip
        """Take the port, 0 for any free one. Raises ListenError."""
        self._way: Way = way
        self._public = public
        self._tls = tls
        self._door: Door | None = None
        try:
            self._bound = socket.create_server((host, port), backlog=MOST_WAITING)
        except OSError as error:
            raise ListenError(
                f"Port {port} on {host} cannot be had: another program, or another "
                "Flangebook, is using it. Stop that one, or choose another with --port N."
            ) from error

    @property
    def port(self) -> int:
        """The port it has."""
        return int(self._bound.getsockname()[1])

    @property
    def address(self) -> str:
        """What to open in a browser on this machine."""
        scheme = "https" if self._tls else "http"
        return f"{scheme}://{LOOPBACK}:{self.port}/"

    def begin(self, app: WSGIApplication) -> threading.Thread:
        """Answer from now on, in a thread of its own."""
        name = f"door {self._way}"
        self._door = Door(self._bound, _marked(app, self._way, self._public), name, self._tls)
        thread = threading.Thread(target=self._door.run, name=name, daemon=True)
        thread.start()
        return thread

    def close(self) -> None:
        """Let go of the port; answers under way are finished by the thread of ``begin``."""
        if self._door:
            self._door.stop()
        else:
            self._bound.close()


def serve(
    listeners: Sequence[Listener],
    app: WSGIApplication,
    ready: Callable[[], None],
    stopping: Callable[[], None],
) -> None:
    """Answer requests until a signal says stop. ready: called once they are answered; stopping:
    before the answers under way are waited for."""
    _allow_open_files()
    with _stop_signal() as stop:
        threads = [one.begin(app) for one in listeners]
        ready()
        while all(t.is_alive() for t in threads) and not stop.wait(_POLL_S):
            pass
        stopping()
        for one in listeners:
            one.close()
        for thread in threads:
            thread.join(LONGEST_STOP_S + 1)


def _allow_open_files() -> None:
    """Ask for as many open files as the connections of all doors take."""
    if sys.platform == "win32":
        return
    import resource  # noqa: PLC0415

    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    wanted = _MOST_FILES if hard == resource.RLIM_INFINITY else min(_MOST_FILES, hard)
    if soft != resource.RLIM_INFINITY and soft < wanted:
        resource.setrlimit(resource.RLIMIT_NOFILE, (wanted, hard))


def _marked(app: WSGIApplication, way: Way, public: str) -> WSGIApplication:
    """The app as it is reached through one door."""
    outside = urlsplit(public)
    port = str(outside.port or 443)

    def through(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        environ[WAY_KEY] = way
        if way == "proxy":
            environ["wsgi.url_scheme"], environ["SERVER_PORT"] = "https", port
            told = environ.get("HTTP_X_FORWARDED_FOR", "").rpartition(",")[2].strip()
            environ["REMOTE_ADDR"] = told or environ.get("REMOTE_ADDR", "")
        return app(environ, start)

    return through


@contextmanager
def _stop_signal() -> Iterator[threading.Event]:
    """An event that SIGINT and SIGTERM set."""
    event = threading.Event()

    def stop(_number: int, _frame: FrameType | None) -> None:
        event.set()

    names = ("SIGINT", "SIGTERM", "SIGBREAK")
    numbers = [getattr(signal, name) for name in names if hasattr(signal, name)]
    before: list[tuple[int, Any]] = [(number, signal.signal(number, stop)) for number in numbers]
    try:
        yield event
    finally:
        for number, handler in before:
            signal.signal(number, handler)
