"""A request's body, read whole before a thread of the server sees the request."""

from __future__ import annotations

import asyncio
import re

from flangebook.serving.http.request_head import Request
from flangebook.serving.http.spool import Spool

BYTES_A_SECOND = 20_000  # who sends slower than this for long is cut
_PIECE = 65_536
_MOST_TRAILERS = 100


class BodyError(Exception):
    """The body is not in order, or broke off."""


async def read_body(
    reader: asyncio.StreamReader, request: Request, body: Spool, limit: asyncio.Timeout
) -> None:
    """Put the body into the spool and give it to the request; each byte puts off the limit.

    A body that the app refuses for its length is not read to its end. Raises BodyError,
    IncompleteReadError, and what the spool raises.
    """
    taken = _Taken(reader, body, limit, request.most)
    length = request.length
    if length is None:
        await _chunks(reader, taken)
        length = taken.count
    elif length <= request.most:
        await taken.take(length)
    request.with_body(body.file, length, whole=length <= request.most)


class _Taken:
    """Counts what comes in, and moves the limit by it."""

    def __init__(
        self, reader: asyncio.StreamReader, body: Spool, limit: asyncio.Timeout, most: int
    ) -> None:
        self._reader, self._body, self._limit, self._most = reader, body, limit, most
        self.count = 0

    async def take(self, count: int) -> None:
        """Take so many bytes, or one more than the app would."""
        end = min(self.count + count, self._most + 1)
        while self.count < end:
            piece = await self._reader.read(min(_PIECE, end - self.count))
            if not piece:
                raise BodyError("The body broke off.")
            self._body.put(piece)
            self.count += len(piece)
            when = self._limit.when()
            if when is not None:
                self._limit.reschedule(when + len(piece) / BYTES_A_SECOND)

    @property
    def too_long(self) -> bool:
        return self.count > self._most


async def _chunks(reader: asyncio.StreamReader, taken: _Taken) -> None:
    """Pieces with their lengths, as RFC 9112, 7.1 has them."""
    while size := await _size(reader):
        await taken.take(size)
        if taken.too_long:
            return
        if await reader.readexactly(2) != b"\r\n":
            raise BodyError("A piece of the body is longer than it says.")
    for _ in range(_MOST_TRAILERS):
        if await _line(reader) == b"\r\n":
            return
    raise BodyError("Too many lines follow the body.")


async def _size(reader: asyncio.StreamReader) -> int:
    digits = (await _line(reader)).partition(b";")[0].strip()
    if not re.fullmatch(rb"[0-9A-Fa-f]{1,12}", digits):
        raise BodyError("A piece of the body does not say how long it is.")
    return int(digits, 16)


async def _line(reader: asyncio.StreamReader) -> bytes:
    try:
        return await reader.readuntil(b"\r\n")
    except asyncio.LimitOverrunError:
        raise BodyError("A line within the body is too long.") from None
