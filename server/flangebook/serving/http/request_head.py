"""A request's first lines, bounded: what is too long, or in doubt, is refused as the app refuses.

The server library reads these lines and runs the app; what it reads them from and what it writes
to is a ``Line``, never a socket. By itself it would read a line of any length, keep the last of
two lengths of a body, and answer in plain text.
"""

from __future__ import annotations

import re
from http import HTTPStatus
from typing import Any, Protocol

from cheroot import errors
from cheroot.server import HeaderReader, HTTPRequest

from flangebook.api import problems
from flangebook.api.bodies import most_bytes

MOST_HEAD_BYTES = 65_536
MOST_HEADERS = 100
_WORDS = {
    408: "The request did not arrive in time. Send it again.",
    414: f"The address is too long. All lines before the body have at most {MOST_HEAD_BYTES} "
    "bytes together.",
    431: f"Too many or too long headers. Send at most {MOST_HEADERS}, of {MOST_HEAD_BYTES} bytes "
    "together.",
    500: "Something went wrong in the server. What was kept before is safe.",
    503: "The server has too much under way. Try again in a minute.",
    507: problems.DETAILS[507],
}


class Line(Protocol):
    """What the library takes for a connection."""

    rfile: Any
    wfile: Any
    remote_addr: str
    remote_port: int
    ssl_env: dict[str, Any]


class BoundedHeaders(HeaderReader):
    """Reads headers, so many and no more, and none that leave the body's length in doubt."""

    def __call__(self, rfile: Any, hdict: dict[bytes, bytes] | None = None) -> dict[bytes, bytes]:
        """The headers. Raises ValueError, MaxSizeExceeded."""
        counted = _CountedLines(rfile)
        found: dict[bytes, bytes] = super().__call__(counted, hdict)
        length = found.get(b"Content-Length")
        if length is not None and not re.fullmatch(rb"[0-9]{1,15}", length):
            raise ValueError("The header Content-Length is not a number of bytes.")
        if length is not None and b"Transfer-Encoding" in found:
            raise ValueError("Send Content-Length or Transfer-Encoding, not both.")
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
    """A request whose refusals look as all others do.

    ready: whether its head is in order. unread: whether more of it may come than is read.
    """

    header_reader = BoundedHeaders()
    conn: Line
    unread = False

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

    @property
    def length(self) -> int | None:
        """Bytes of the body; None: told piece by piece."""
        return None if self.chunked_read else int(self.inheaders.get(b"Content-Length", 0))

    @property
    def most(self) -> int:
        """The most bytes of a body that the app takes at this address."""
        return most_bytes(self.path.decode("latin-1"))

    def with_body(self, body: Any, length: int, whole: bool) -> None:
        """The body as it came. whole: False where the app is to refuse it for its length."""
        self.conn.rfile = body
        if self.chunked_read:
            self.chunked_read = False
            self.inheaders.pop(b"Transfer-Encoding", None)
            self.inheaders[b"Content-Length"] = str(length).encode()
        self.unread = not whole
        self.close_connection = self.close_connection or not whole

    def simple_response(self, status: str | int, msg: str | bytes = "") -> None:
        """Say no as problem+json."""
        number = int(str(status)[:3])
        words = msg if isinstance(msg, str) else msg.decode("latin-1")
        detail = _WORDS.get(number) or words or HTTPStatus(number).phrase
        body = problems.answer(number, detail).get_data()
        head = (
            f"HTTP/1.1 {number} {HTTPStatus(number).phrase}\r\n"
            f"Content-Type: {problems.CONTENT_TYPE}\r\nContent-Length: {len(body)}\r\n"
            "Cache-Control: no-store\r\nConnection: close\r\n\r\n"
        )
        self.close_connection = self.sent_headers = self.unread = True
        self.conn.wfile.write(head.encode("latin-1") + body)
