"""A door: one address and port, its event loop, its threads, and the connections it has open."""

from __future__ import annotations

import asyncio
import socket
from contextlib import suppress
from typing import Any

from flangebook.serving.http.connection import Connection
from flangebook.serving.http.open_connections import OpenConnections, Server
from flangebook.serving.http.tls import Tls
from flangebook.serving.log import log

MOST_WAITING = 512  # connections that the system holds until they are taken
LONGEST_STOP_S = 2.0


class Door:
    """Connections are served from ``run`` to ``stop``."""

    def __init__(self, bound: socket.socket, app: Any, name: str, tls: Tls | None) -> None:
        server = Server(bound.getsockname()[:2], app, server_name="Flangebook")
        self._connections = OpenConnections(server, name, tls)
        self._bound = bound
        self._loop = asyncio.new_event_loop()
        self._stop = asyncio.Event()

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
            lambda: Connection(self._connections), sock=self._bound, backlog=MOST_WAITING
        )
        await self._stop.wait()
        self._connections.server.stopping = True
        listening.close()
        for one in [one for one in self._connections.waiting if one.idle]:
            one.cut()
        end = self._loop.time() + LONGEST_STOP_S
        while self._connections.open and self._loop.time() < end:
            await asyncio.sleep(0.02)
        for one in list(self._connections.open):
            one.cut()
        await asyncio.sleep(0)  # what was cut ends


def _log_failure(_loop: asyncio.AbstractEventLoop, context: dict[str, Any]) -> None:
    log.error("%s", context.get("message"), exc_info=context.get("exception"))
