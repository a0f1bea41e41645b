"""The web server: cheroot with threads, on the loopback address, stopped by a signal.

It prints one line when it is ready and stops on SIGINT or SIGTERM (Ctrl-Break on Windows)
after the answers under way are finished.
"""

from __future__ import annotations

import signal
import socket
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from types import FrameType
from wsgiref.types import WSGIApplication

from cheroot import wsgi
from cheroot.connections import ConnectionManager
from cheroot.server import HTTPConnection

LOOPBACK = "127.0.0.1"
_THREADS = 24
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

    def _from_server_socket(self, server_socket: socket.socket) -> HTTPConnection | None:
        connection = super()._from_server_socket(server_socket)  # type: ignore[misc]
        if connection is not None:
            self.put(connection)
        return None


class _Server(wsgi.Server):
    _connections: ConnectionManager

    def prepare(self) -> None:
        super().prepare()
        self._connections.close()
        self._connections = _PatientConnections(self)


class Listener:
    """A server bound to its port, not yet answering."""

    def __init__(self, port: int) -> None:
        """Take the port, 0 for any free one. Raises ListenError."""
        self._server = _Server(
            (LOOPBACK, port), _not_yet, numthreads=_THREADS, server_name="Flangebook"
        )
        self._server.shutdown_timeout = _LONGEST_STOP_S
        self._server.max_request_body_size = _MOST_BODY
        try:
            self._server.prepare()
        except OSError as error:
            raise ListenError(
                f"Port {port} on {LOOPBACK} cannot be had: another program, or another "
                "Flangebook, is using it. Stop that one, or choose another with --port N."
            ) from error

    @property
    def address(self) -> str:
        """What to open in a browser."""
        return f"http://{LOOPBACK}:{self._server.bind_addr[1]}/"

    def serve(self, app: WSGIApplication, ready: Callable[[], None]) -> None:
        """Answer requests until a signal says stop; ``ready`` is called once they are."""
        self._server.wsgi_app = app
        with _stop_signal() as stop:
            thread = threading.Thread(target=self._server.serve, name="listener", daemon=True)
            thread.start()
            ready()
            while thread.is_alive() and not stop.wait(_POLL_S):
                pass
            self.close()
            thread.join(_LONGEST_STOP_S)

    def close(self) -> None:
        """Let go of the port."""
        self._server.stop()


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
    before = [(number, signal.signal(number, stop)) for number in numbers]
    try:
        yield event
    finally:
        for number, handler in before:
            signal.signal(number, handler)
