"""JSON text, times and digests as they are kept."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from datetime import UTC, datetime
from typing import Any

# The paired device whose request is under way; empty at the server's own screen.
sending_device: ContextVar[str] = ContextVar("sending_device", default="")
_moment: ContextVar[datetime | None] = ContextVar("moment", default=None)


def json_text(value: Any) -> str:
    """Compact JSON; raises ValueError for a number that is not finite.

    >>> json_text({"title": "Bügel", "flats_mm": [20, 30.5]})
    '{"title":"Bügel","flats_mm":[20,30.5]}'
    """
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), allow_nan=False)


def digest(value: Any) -> str:
    """The same for the same content, whatever the order of its keys.

    >>> digest({"a": 1, "b": 2}) == digest({"b": 2, "a": 1})
    True
    """
    text = json.dumps(value, sort_keys=True, separators=(",", ":"), default=str)
    return text_digest(text)


def text_digest(text: str) -> str:
    """SHA-256 of a text, in hexadecimal."""
    return hashlib.sha256(text.encode()).hexdigest()


def now() -> str:
    """This moment, UTC, to a millisecond."""
    return utc_text(_moment.get() or datetime.now(UTC))


def utc_text(moment: datetime) -> str:
    """A moment in UTC as it is kept.

    >>> utc_text(datetime(2026, 5, 4, 13, 30, tzinfo=UTC))
    '2026-05-04T13:30:00.000Z'
    """
    return moment.isoformat(timespec="milliseconds").replace("+00:00", "Z")


@contextmanager
def written_at(moment: datetime) -> Iterator[None]:
    """What is written in the block is written down as of that moment, in UTC."""
    token = _moment.set(moment)
    try:
        yield
    finally:
        _moment.reset(token)
