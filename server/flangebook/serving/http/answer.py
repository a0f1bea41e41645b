"""An answer on its way: a thread writes it, the event loop sends it as fast as it is taken."""

from __future__ import annotations

import asyncio
from contextlib import suppress

from flangebook.serving.http.request_head import Request
from flangebook.serving.http.spool import Spool
from flangebook.serving.log import log

_PIECE = 65_536


class GoneError(ConnectionError):
    """Who asked is not there any more."""


class Answer:
    """What the server library writes to. Writing waits for nobody.

    failed: it broke off; the connection has to end in a way that shows it.
    """

    def __init__(self, loop: asyncio.AbstractEventLoop) -> None:
        self._loop = loop
        self._spool = Spool()
        self._more = asyncio.Event()
        self._finished = self.gone = self.failed = False

    def write(self, data: bytes) -> int:
        """Send this when its turn comes. Raises GoneError."""
        if self.gone:
            raise GoneError
        try:
            self._spool.put(data)
        except ValueError:  # closed meanwhile
            raise GoneError from None
        self._wake()
        return len(data)

    def finish(self) -> None:
        """Nothing more comes."""
        self._finished = True
        self._wake()

    def _wake(self) -> None:
        with suppress(RuntimeError):  # the loop is gone
            self._loop.call_soon_threadsafe(self._more.set)

    def at_hand(self) -> bytes:
        """What was written up to now."""
        return self._spool.take()

    async def following(self) -> bytes:
        """The next piece; empty at the end."""
        while True:
            self._more.clear()
            finished = self._finished  # looked at first: what was written before it is there
            data = self._spool.take(_PIECE)
            if data or finished:
                return data
            await self._more.wait()

    def close(self) -> None:
        """Forget what was not sent, and refuse what comes."""
        self.gone = True
        self._spool.close()


def respond(request: Request, answer: Answer, body: Spool) -> None:
    """Let the app answer; runs in a thread."""
    try:
        if not answer.gone:
            request.respond()
    except GoneError:
        pass
    except Exception:
        log.exception("A request could not be answered.")
        answer.failed = request.sent_headers
        with suppress(GoneError):
            if not request.sent_headers:
                request.simple_response("500")
    finally:
        body.close()
        answer.finish()
