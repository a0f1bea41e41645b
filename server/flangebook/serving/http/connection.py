"""One connection, from its handshake to its end, on the event loop of its door.

The loop does all that waits for the other side: the handshake, the request until it is whole, the
answer until it is sent, each within its time. A thread has the request only in between.
"""

from __future__ import annotations

import asyncio
import io
import ssl
from contextlib import suppress
from dataclasses import dataclass, field
from functools import partial
from typing import Any, cast

from flangebook.api.caller import GONE_KEY
from flangebook.serving.http.answer import Answer, respond
from flangebook.serving.http.open_connections import OpenConnections
from flangebook.serving.http.request_body import BodyError, read_body
from flangebook.serving.http.request_head import MOST_HEAD_BYTES, Request
from flangebook.serving.http.spool import Spool, TooMuchUnderWayError
from flangebook.serving.log import log

HANDSHAKE_S = 10.0
IDLE_S = 10.0
REQUEST_S = 10.0  # and more for each byte of a body: request_body.BYTES_A_SECOND
PIECE_S = 13.0  # for each 64 KB of an answer
_PIECE = 65_536
_LINGER_S = 5.0
_MOST_LINGERED = 64_000_000
_GOODBYE_S = 2.0


@dataclass(slots=True)
class Exchange:
    """A request and its answer; the server library takes it for a connection."""

    wfile: Answer
    remote_addr: str
    remote_port: int
    ssl_env: dict[str, Any]
    rfile: Any = field(default_factory=io.BytesIO)


class Connection(asyncio.Protocol):
    """Requests one after another. idle: none has begun."""

    def __init__(self, door: OpenConnections) -> None:
        self._door = door
        self._loop = asyncio.get_running_loop()
        self._reader = asyncio.StreamReader(MOST_HEAD_BYTES)
        self._may_write = asyncio.Event()
        self._may_write.set()
        self._task: asyncio.Task[None] | None = None
        self._answer: Answer | None = None
        self._transport: asyncio.Transport
        self._peer = ("", 0)
        self._left = False
        self._environ: dict[str, Any] = {GONE_KEY: lambda: self._left}
        self.idle = True

    def connection_made(self, transport: asyncio.BaseTransport) -> None:
        """Begin."""
        self._transport = cast("asyncio.Transport", transport)
        self._peer = (transport.get_extra_info("peername") or self._peer)[:2]
        if self._door.tls:
            self._transport.pause_reading()  # the first bytes are the handshake's
        else:
            self._use(self._transport)
        self._task = self._loop.create_task(self._live())
        self._door.admit(self)

    def data_received(self, data: bytes) -> None:
        """Take bytes of a request."""
        self._reader.feed_data(data)

    def eof_received(self) -> bool:
        """Nothing more comes; who asked may still read."""
        self._left = True
        self._reader.feed_eof()
        return self._door.tls is None

    def connection_lost(self, exc: Exception | None) -> None:
        """Nobody is there any more."""
        self._left = True
        self._reader.feed_eof()
        self._may_write.set()
        if self._answer:
            self._answer.close()
        self._door.forget(self)  # one that was cut before it began does not do so itself

    def pause_writing(self) -> None:
        """Wait: the other side reads slower than is written."""
        self._may_write.clear()

    def resume_writing(self) -> None:
        """Go on: all was taken."""
        self._may_write.set()

    def cut(self) -> None:
        """End it now, whatever is under way."""
        if self._task:
            self._task.cancel()
        self._transport.abort()

    async def _live(self) -> None:
        try:
            if self._door.tls:
                await self._shake_hands(self._door.tls.context)
            while await self._one_request():
                pass
            self._transport.close()
        except OSError:  # gone, or too slow
            self._transport.abort()
        except Exception:
            log.exception("A connection failed.")
            self._transport.abort()
        finally:
            self._door.forget(self)

    async def _shake_hands(self, context: ssl.SSLContext) -> None:
        try:
            secure = await self._loop.start_tls(
                self._transport, self, context, server_side=True,
                ssl_handshake_timeout=HANDSHAKE_S, ssl_shutdown_timeout=_GOODBYE_S,
            )  # fmt: skip
        except OSError as error:  # SSLError is one: not TLS, not trusted, silent, or gone
            self._door.broken_handshakes.count(self._peer[0], error)
            raise
        if secure is None:
            raise ConnectionResetError
        self._environ |= {"wsgi.url_scheme": "https", "HTTPS": "on"}
        self._use(secure)

    def _use(self, transport: asyncio.Transport) -> None:
        self._transport = transport
        # A piece counts as sent only when the system has taken all of it. At 0 TLS pauses for ever.
        transport.set_write_buffer_limits(high=1, low=0)
        self._reader.set_transport(transport)

    async def _one_request(self) -> bool:
        """Read a request and have it answered; whether another may follow."""
        first = await self._first_byte()
        if not first:
            return False
        answer, body = Answer(self._loop), Spool()
        self._answer = answer
        request = Request(self._door.server, Exchange(answer, *self._peer, self._environ))
        whole = False
        try:
            whole = await self._is_whole(request, first, body)
            self._door.works(self)
            if whole:
                self._door.threads.run(partial(respond, request, answer, body))
            else:
                answer.finish()
            while piece := await answer.following():
                await self._send(piece)
            if answer.failed:
                raise ConnectionAbortedError
        finally:
            answer.close()
            if not whole:  # else the thread still reads it
                body.close()
        if request.unread:
            await self._linger()
        return not request.close_connection

    async def _first_byte(self) -> bytes:
        """Wait for the next request to begin; empty when none does."""
        self.idle = True
        self._door.waits(self)
        with suppress(TimeoutError):
            async with asyncio.timeout(IDLE_S):
                first = await self._reader.read(1)
                self.idle = False
                return first
        return b""

    async def _is_whole(self, request: Request, first: bytes, body: Spool) -> bool:
        """Read the rest; False when the request was refused."""
        try:
            async with asyncio.timeout(REQUEST_S) as limit:
                request.conn.rfile = io.BytesIO(first + await self._rest_of_head())
                request.parse_request()
                if not request.ready:
                    return False
                await self._send(request.conn.wfile.at_hand())  # that it may go on, if it asked
                await read_body(self._reader, request, body, limit)
                return True
        except TimeoutError:
            request.simple_response("408")
        except (BodyError, EOFError) as error:
            request.simple_response("400", str(error))
        except TooMuchUnderWayError:
            request.simple_response("503")
        except OSError:
            request.simple_response("507")
        return False

    async def _rest_of_head(self) -> bytes:
        """To the empty line, or as much as shows that it is too long."""
        try:
            return await self._reader.readuntil(b"\r\n\r\n")
        except asyncio.IncompleteReadError as error:
            return error.partial
        except asyncio.LimitOverrunError:
            return await self._reader.read(MOST_HEAD_BYTES + 1)

    async def _send(self, piece: bytes) -> None:
        """Send it and wait until the system has taken it. Raises OSError."""
        if not piece:
            return
        self._transport.write(piece)
        async with asyncio.timeout(PIECE_S):
            await self._may_write.wait()
        if self._transport.is_closing():
            raise ConnectionResetError

    async def _linger(self) -> None:
        """Read on and forget for a while: a connection closed with bytes unread takes the answer
        with it."""
        left = _MOST_LINGERED
        with suppress(TimeoutError):
            async with asyncio.timeout(_LINGER_S):
                if self._transport.can_write_eof():
                    self._transport.write_eof()
                while left > 0 and (piece := await self._reader.read(_PIECE)):
                    left -= len(piece)
