"""A request's first lines, bounded: what is too long, or in doubt, is refused as the app refuses.

The server library would read a line of any length into memory, keep the last of two lengths of
a body, and answer in plain text.
"""

from __future__ import annotations

import socket
import time
from contextlib import suppress
from http import HTTPStatus
from typing import Any

from cheroot import errors
from cheroot.server import HeaderReader, HTTPConnection, HTTPRequest

from flangebook.api import problems

MOST_HEAD_BYTES = 65_536
MOST_HEADERS = 100
MOST_WAITING = 512  # connections that the system holds until they are taken
_MOST_DRAINED = 64_000_000
_LONGEST_DRAIN_S = 5.0
_CHUNK = 65_536
_WORDS = {
    413: "The body is too large.",
    414: f"The address is too long. All lines before the body have at most {MOST_HEAD_BYTES} "
    "bytes together.",
    431: f"Too many or too long headers. Send at most {MOST_HEADERS}, of {MOST_HEAD_BYTES} bytes "
    "together.",
    500: "Something went wrong in the server. What was kept before is safe.",
}


class BoundedHeaders(HeaderReader):
    """Reads headers, so many and no more, and not two that say how long the body is."""

    def __call__(self, rfile: Any, hdict: dict[bytes, bytes] | None = None) -> dict[bytes, bytes]:
        """The headers. Raises ValueError, MaxSizeExceeded."""
        counted = _CountedLines(rfile)
        found: dict[bytes, bytes] = super().__call__(counted, hdict)
        return found


class _CountedLines:
    """The lines of a head, as the library reads them."""

    def __init__(self, rfile: Any) -> None:
        self._rfile = rfile
        self._count = 0
        self._lengths = 0

    def readline(self) -> bytes:
        line: bytes = self._rfile.readline()
        self._count += 1
        if self._count > MOST_HEADERS + 1:  # and the empty line after them
            raise errors.MaxSizeExceeded
        self._lengths += line.partition(b":")[0].strip().lower() == b"content-length"
        if self._lengths > 1:
            raise ValueError("Two headers say how long the body is. Send one Content-Length.")
        return line


class Request(HTTPRequest):
    """A request whose refusals look as all others do."""

    header_reader = BoundedHeaders()

    def read_request_line(self) -> bool:
        """Read the first line; whether it is in order."""
        try:
            return bool(super().read_request_line())  # type: ignore[no-untyped-call]
        except ValueError:  # an address that is none
            self.simple_response("400", "The first line of the request can't be read.")
            return False

    def read_request_headers(self) -> bool:
        """Read the headers; whether they are in order."""
        try:
            return bool(super().read_request_headers())  # type: ignore[no-untyped-call]
        except errors.MaxSizeExceeded:
            self.simple_response("431", "")
            return False

    def simple_response(self, status: str | int, msg: str | bytes = "") -> None:
        """Say no as problem+json, and let the asker read it before the connection goes."""
        number = int(str(status)[:3])
        words = msg if isinstance(msg, str) else msg.decode("latin-1")
        detail = _WORDS.get(number) or words or HTTPStatus(number).phrase
        body = problems.answer(number, detail).get_data()
        head = (
            f"HTTP/1.1 {number} {HTTPStatus(number).phrase}\r\n"
            f"Content-Type: {problems.CONTENT_TYPE}\r\nContent-Length: {len(body)}\r\n"
            "Cache-Control: no-store\r\nConnection: close\r\n\r\n"
        )
        self.close_connection = True
        with suppress(OSError):
            self.conn.wfile.write(head.encode("latin-1") + body)
            self._drain()

    def _drain(self) -> None:
        """Read on and forget for a while: a connection closed with bytes unread takes the
        answer with it."""
        line = self.conn.socket
        if self.server.ssl_adapter is None:
            line.shutdown(socket.SHUT_WR)
        line.settimeout(1.0)
        end, left = time.monotonic() + _LONGEST_DRAIN_S, _MOST_DRAINED
        while left > 0 and time.monotonic() < end:
            piece = line.recv(_CHUNK)
            if not piece:
                return
            left -= len(piece)


class Connection(HTTPConnection):
    """A connection that carries such requests."""

    RequestHandlerClass = Request
