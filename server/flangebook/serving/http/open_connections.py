"""The connections of one door that are open, and what they share: settings, threads, TLS."""

from __future__ import annotations

from typing import Protocol

from cheroot import wsgi

from flangebook.serving.http.request_head import MOST_HEAD_BYTES
from flangebook.serving.http.threads import Threads
from flangebook.serving.http.tls import BrokenHandshakes, Tls
from flangebook.serving.log import log

THREADS = 24
MOST_OPEN = 600


class OneConnection(Protocol):
    """What is asked of a connection. idle: no request has begun."""

    idle: bool

    def cut(self) -> None:
        """End it."""


class Server(wsgi.Server):
    """What the server library reads its settings from; it opens nothing."""

    stopping = False
    max_request_header_size = MOST_HEAD_BYTES
    max_request_body_size = 0  # bounded while it is read
    software = "Flangebook"

    @property
    def can_add_keepalive_connection(self) -> bool:
        """Whether a connection may stay open after an answer."""
        return not self.stopping

    def error_log(self, msg: str = "", level: int = 20, traceback: bool = False) -> None:
        """Log what is worse than a device that lost its network."""
        if traceback or level > 20:
            log.log(level, msg, exc_info=traceback)


class OpenConnections:
    """Which are open, and which of them wait for a whole request, the oldest first."""

    def __init__(self, server: Server, name: str, tls: Tls | None) -> None:
        self.server = server
        self.tls = tls
        self.threads = Threads(THREADS, name)
        self.broken_handshakes = BrokenHandshakes()
        self.open: set[OneConnection] = set()
        self.waiting: dict[OneConnection, None] = {}

    def admit(self, connection: OneConnection) -> None:
        """Count a new connection; where there are too many, the longest without a request goes."""
        self.open.add(connection)
        if len(self.open) > MOST_OPEN:
            next(iter(self.waiting), connection).cut()
        self.waiting[connection] = None

    def waits(self, connection: OneConnection) -> None:
        """Note that a connection has no whole request."""
        self.waiting.pop(connection, None)
        self.waiting[connection] = None
        if self.server.stopping:
            connection.cut()

    def works(self, connection: OneConnection) -> None:
        """Note that a thread has its request now."""
        self.waiting.pop(connection, None)

    def forget(self, connection: OneConnection) -> None:
        """Note its end."""
        self.open.discard(connection)
        self.waiting.pop(connection, None)
