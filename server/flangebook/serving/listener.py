"""The doors of the server: cheroot with threads, each bound to one address and port.

A door marks what comes through it with its way, so that the app knows whether the owner sits
at the machine or somebody asks over the network. All stop by one signal, SIGINT or SIGTERM
(Ctrl-Break on Windows), after the answers under way are finished.
"""

from __future__ import annotations

import signal
import socket
import threading
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from types import FrameType
from typing import Any
from urllib.parse import urlsplit
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from cheroot import wsgi
from cheroot.connections import ConnectionManager
from cheroot.server import HTTPConnection

from flangebook.api.caller import WAY_KEY, Way
from flangebook.serving.request_head import MOST_HEAD_BYTES, MOST_WAITING, Connection
from flangebook.serving.tls import Handshakes, Tls

LOOPBACK = "127.0.0.1"
EVERYWHERE = "0.0.0.0"
_THREADS = 24
_MOST_OPEN = 500  # connections kept for the next request; more would come near the file limit
_LONGEST_STOP_S = 5
_MOST_BODY = 64_000_000  # the app refuses far less, in its own words; this bounds the memory
_POLL_S = 0.5  # Windows does not interrupt a wait without end by Ctrl-C


class ListenError(Exception):
    """The port cannot be had; the message says what to do."""


class _PatientConnections(ConnectionManager):
    """Gives a new connection to a thread only when it has said something.

    As the library has it, each new connection takes a thread until it speaks or times out: a
    few that a browser opened in advance, or that lost their network, would hold up all others.
    """

    def __init__(self, server: _Server) -> None:
        super().__init__(server)
        self._handshakes = Handshakes(self._shaken) if server.ssl_adapter else None
        if self._handshakes:
            self._handshakes.start()

    def put(self, conn: HTTPConnection) -> None:
        # What TLS has read ahead of us would not wake the selector.
        if self._handshakes and conn.socket.pending():
            self.server.process_conn(conn)
        else:
            super().put(conn)

    def close(self) -> None:
        if self._handshakes:
            self._handshakes.stop()
        super().close()

    def _from_server_socket(self, server_socket: socket.socket) -> HTTPConnection | None:
        connection = super()._from_server_socket(server_socket)  # type: ignore[misc]
        if connection is None:
            return None
        if self._handshakes:
            self._handshakes.begin(connection)
        else:
            self.put(connection)
        return None

    def _shaken(self, connection: HTTPConnection) -> None:
        connection.socket.settimeout(self.server.timeout)
        self.put(connection)


class _Server(wsgi.Server):
    ConnectionClass = Connection
    request_queue_size = MOST_WAITING
    max_request_header_size = MOST_HEAD_BYTES
    _connections: ConnectionManager

    def prepare(self) -> None:
        super().prepare()
        self._connections.close()
        self._connections = _PatientConnections(self)

    def error_log(self, msg: str = "", level: int = 20, traceback: bool = False) -> None:
        """A device that lost its network in the middle of an answer is nothing to report."""
        if traceback or level > 20:
            super().error_log(msg, level, traceback)


class Listener:
    """A server bound to its port, not yet answering.

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
        self._server = _Server(
            (host, port), _not_yet, numthreads=_THREADS, server_name="Flangebook"
        )
        self._server.ssl_adapter = tls
        self._server.keep_alive_conn_limit = _MOST_OPEN
        self._server.shutdown_timeout = _LONGEST_STOP_S
        self._server.max_request_body_size = _MOST_BODY
        try:
            self._server.prepare()
        except OSError as error:
            raise ListenError(
                f"Port {port} on {host} cannot be had: another program, or another "
                "Flangebook, is using it. Stop that one, or choose another with --port N."
            ) from error

    @property
    def port(self) -> int:
        """The port it has."""
        return int(self._server.bind_addr[1])

    @property
    def address(self) -> str:
        """What to open in a browser on this machine."""
        scheme = "https" if self._server.ssl_adapter else "http"
        return f"{scheme}://{LOOPBACK}:{self.port}/"

    def begin(self, app: WSGIApplication) -> threading.Thread:
        """Answer from now on, in a thread of its own."""
        self._server.wsgi_app = _door(app, self._way, self._public)
        thread = threading.Thread(target=self._server.serve, name=f"door {self._way}", daemon=True)
        thread.start()
        return thread

    def close(self) -> None:
        """Let go of the port."""
        self._server.stop()


def serve(listeners: Sequence[Listener], app: WSGIApplication, ready: Callable[[], None]) -> None:
    """Answer requests until a signal says stop; ``ready`` is called once they are."""
    with _stop_signal() as stop:
        threads = [one.begin(app) for one in listeners]
        ready()
        while all(t.is_alive() for t in threads) and not stop.wait(_POLL_S):
            pass
        for one in listeners:
            one.close()
        for thread in threads:
            thread.join(_LONGEST_STOP_S)


def _door(app: WSGIApplication, way: Way, public: str) -> WSGIApplication:
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


def _not_yet(_environ: object, _start: object) -> list[bytes]:
    raise RuntimeError("the listener was asked before it had an app")


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
