"""Calculations on a shop that another process may do, and what is raised where it cannot.

WorkError
+-- BusyError      too many plans wait already
+-- StoppedError   the server is being stopped
+-- LostError      the process ended: killed, out of memory, or over its time
NotWantedError     nobody waits for the answer any more
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, Protocol


class Workers(Protocol):
    """Other processes that calculate."""

    def run(
        self, file: Path, function: Callable[..., Any], arguments: tuple[Any, ...], limits: Any
    ) -> Any:
        """What ``function(store, *arguments)`` gives or raises, with the store of that file, and
        ``limits`` as last argument where there are any. Raises WorkError, too."""

    def expect(self) -> None:
        """Somebody is about to ask: have one ready."""


class WorkError(Exception):
    """A calculation was not made. words: what happened, and what to do."""

    words = ""

    def __str__(self) -> str:
        return self.words


class BusyError(WorkError):
    """Too many plans wait already."""

    words = "The shop is planning as many parts as it can. Try again in a moment."


class StoppedError(WorkError):
    """The server is being stopped."""

    words = "The shop's server is being stopped. Nothing was lost; try again when it is back."


class LostError(WorkError):
    """The process that calculated has ended."""

    words = (
        "This could not be worked out: it took too much memory or time, or the process that "
        "worked on it was ended. Nothing was lost. Try again, or with a simpler part."
    )


class NotWantedError(Exception):
    """Nobody waits for the answer any more."""
