"""TLS for the listener, with handshakes that hold nobody up.

As the web server library has it, the handshake runs in the thread that accepts: a phone that
lost its network in the middle of one would freeze every other. Here one thread of its own
goes on with each handshake as its bytes come, and gives up after a while; a connection
reaches the workers only when it is done.
"""

from __future__ import annotations

import selectors
import socket
import ssl
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any

from cheroot.ssl.builtin import BuiltinSSLAdapter

HANDSHAKE_S = 10.0
_POLL_S = 0.5
_MOST = 1000  # handshakes under way at once; the oldest gives way to a new one


class Tls(BuiltinSSLAdapter):
    """The library's adapter, leaving the handshake to ``Handshakes``."""

    def __init__(self, certificate: Path, key: Path) -> None:
        super().__init__(str(certificate), str(key))
        self.context.minimum_version = ssl.TLSVersion.TLSv1_2

    def wrap(self, sock: socket.socket) -> tuple[ssl.SSLSocket, dict[str, Any]]:
        """The socket, not yet shaken hands with."""
        wrapped = self.context.wrap_socket(sock, server_side=True, do_handshake_on_connect=False)
        return wrapped, {"wsgi.url_scheme": "https", "HTTPS": "on"}

    def renew(self, certificate: Path, key: Path) -> None:
        """Show another certificate from the next handshake on."""
        self.context.load_cert_chain(str(certificate), str(key))


class Handshakes(threading.Thread):
    """Handshakes under way; each is handed on when it is done, or dropped."""

    def __init__(self, done: Callable[[Any], None]) -> None:
        super().__init__(name="handshakes", daemon=True)
        self._done = done
        self._selector = selectors.DefaultSelector()
        self._lock = threading.Lock()
        self._new: list[Any] = []
        self._under_way: dict[Any, float] = {}
        self._wake, self._woken = socket.socketpair()
        self._woken.setblocking(False)
        self._selector.register(self._woken, selectors.EVENT_READ)
        self._stopping = False

    def begin(self, connection: Any) -> None:
        """Take a new connection."""
        connection.socket.setblocking(False)
        with self._lock:
            self._new.append(connection)
        with suppress(OSError):
            self._wake.send(b".")

    def stop(self) -> None:
        """Drop what is under way."""
        self._stopping = True
        with suppress(OSError):
            self._wake.send(b".")

    def run(self) -> None:
        """Until ``stop``."""
        while not self._stopping:
            for key, _ in self._selector.select(_POLL_S):
                if key.data is None:
                    self._take()
                else:
                    self._go_on(key.data)
            self._drop_old(time.monotonic() - HANDSHAKE_S)
        for connection in list(self._under_way):
            self._drop(connection)
        self._selector.close()
        self._wake.close()
        self._woken.close()

    def _take(self) -> None:
        with suppress(BlockingIOError):
            self._woken.recv(4096)
        with self._lock:
            new, self._new = self._new, []
        for connection in new:
            if len(self._under_way) >= _MOST:
                self._drop(next(iter(self._under_way)))
            self._under_way[connection] = time.monotonic()
            self._selector.register(connection.socket, selectors.EVENT_READ, connection)

    def _go_on(self, connection: Any) -> None:
        try:
            connection.socket.do_handshake()
        except ssl.SSLWantReadError:
            self._selector.modify(connection.socket, selectors.EVENT_READ, connection)
        except ssl.SSLWantWriteError:
            self._selector.modify(connection.socket, selectors.EVENT_WRITE, connection)
        except (OSError, ValueError):  # SSLError is one: not TLS, not trusted, or gone
            self._drop(connection)
        else:
            self._forget(connection)
            self._done(connection)

    def _drop_old(self, before: float) -> None:
        for connection, since in list(self._under_way.items()):
            if since > before:
                break  # in the order they came
            self._drop(connection)

    def _drop(self, connection: Any) -> None:
        self._forget(connection)
        with suppress(OSError):
            connection.close()

    def _forget(self, connection: Any) -> None:
        self._under_way.pop(connection, None)
        with suppress(KeyError, ValueError):
            self._selector.unregister(connection.socket)
