"""A door: one address and port, its event loop, its threads, and the connections it has open."""

from __future__ import annotations

import asyncio
import socket
from contextlib import suppress
from typing import Any

from cheroot import wsgi

from flangebook.serving.http.connection import Connection
from flangebook.serving.http.request_head import MOST_HEAD_BYTES
from flangebook.serving.http.threads import Threads
from flangebook.serving.http.tls import BrokenHandshakes, Tls
from flangebook.serving.log import log

THREADS = 24
MOST_OPEN = 600
MOST_WAITING = 512  # connections that the system holds until they are taken
LONGEST_STOP_S = 2.0


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


class Door:
    """Connections are served from ``run`` to ``stop``."""

    def __init__(self, bound: socket.socket, app: Any, name: str, tls: Tls | None) -> None:
        self.server = Server(bound.getsockname()[:2], app, server_name="Flangebook")
        self.tls = tls
        self.threads = Threads(THREADS, name)
        self.broken_handshakes = BrokenHandshakes()
        self._bound = bound
        self._open: set[Connection] = set()
        self._waiting: dict[Connection, None] = {}  # without a whole request; the oldest first
        self._loop = asyncio.new_event_loop()
        self._stop = asyncio.Event()

    @property
    def stopping(self) -> bool:
        """Whether no new request is taken."""
        return bool(self.server.stopping)

    def run(self) -> None:
        """Serve until ``stop``, in the thread that calls this."""
        asyncio.set_event_loop(self._loop)
        self._loop.set_exception_handler(_log_failure)
        try:
            self._loop.run_until_complete(self._serve())
        finally:
            self._loop.close()

    def stop(self) -> None:
        """Take no more, let what is under way end for a while, then cut it; returns at once."""
        with suppress(RuntimeError):  # it has ended already
            self._loop.call_soon_threadsafe(self._stop.set)

    async def _serve(self) -> None:
        listening = await self._loop.create_server(
            lambda: Connection(self), sock=self._bound, backlog=MOST_WAITING
        )
        await self._stop.wait()
        self.server.stopping = True
        listening.close()
        for one in [one for one in self._waiting if one.idle]:
            one.cut()
        end = self._loop.time() + LONGEST_STOP_S
        while self._open and self._loop.time() < end:
            await asyncio.sleep(0.02)
        for one in list(self._open):
            one.cut()
        await asyncio.sleep(0)  # what was cut ends

    def admit(self, connection: Connection) -> None:
        """Count a new connection; where there are too many, the longest without a request goes."""
        self._open.add(connection)
        if len(self._open) > MOST_OPEN:
            next(iter(self._waiting), connection).cut()
        self._waiting[connection] = None

    def waits(self, connection: Connection) -> None:
        """Note that a connection has no whole request."""
        self._waiting.pop(connection, None)
        self._waiting[connection] = None
        if self.stopping:
            connection.cut()

    def works(self, connection: Connection) -> None:
        """Note that a thread has its request now."""
        self._waiting.pop(connection, None)

    def forget(self, connection: Connection) -> None:
        """Note its end."""
        self._open.discard(connection)
        self._waiting.pop(connection, None)


def _log_failure(_loop: asyncio.AbstractEventLoop, context: dict[str, Any]) -> None:
    log.error("%s", context.get("message"), exc_info=context.get("exception"))
