"""What is held in memory while the shop's file does not change.

SQLite counts, for each connection, the commits that others made (``PRAGMA data_version``).
A connection that never writes therefore sees every change, whoever made it, in a few
microseconds. After one it looks which it was: the tables' own triggers count
``shop.writes`` on, but not where a bench was moved or a device was seen
(``tables.ASIDE``). Such a change makes nothing old but what is of the moment; after any
other everything held is forgotten.
"""

from __future__ import annotations

import sqlite3
import threading
from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

MOST_BYTES = 8_000_000
# An import lifts the triggers; it draws a new id.
_WRITTEN = "SELECT shop_id, created_at, writes FROM shop"
T = TypeVar("T")


class Cache:
    """Answers held by name, the least used forgotten first."""

    def __init__(self, path: Path, most_bytes: int = MOST_BYTES) -> None:
        """path: of the shop's file, which is there already."""
        self._watch = sqlite3.connect(path, check_same_thread=False, isolation_level=None)
        self._lock = threading.Lock()
        self._held: OrderedDict[str, tuple[Any, int]] = OrderedDict()
        self._of_the_moment: set[str] = set()
        self._bytes = 0
        self._most = most_bytes
        self._commits = -1
        self._written: object = None

    def get_or_compute(
        self, name: str, make: Callable[[], T], weigh: Callable[[T], int], *, moment: bool = False
    ) -> T:
        """What ``make`` gives, from memory while nothing was written that it could rest on.

        weigh: how many bytes it takes. moment: it rests on a table of ``tables.ASIDE``, so
        that any commit makes it old.
        """
        with self._lock:
            seen = self._look(moment)
            if name in self._held:
                self._held.move_to_end(name)
                found: T = self._held[name][0]
                return found
        made = make()
        with self._lock:
            # Read at ``seen`` or later: kept under ``seen``, the next look throws out what
            # a write in between has made old.
            if self._stands(moment) == seen and name not in self._held:
                self._keep(name, made, weigh(made))
                if moment:
                    self._of_the_moment.add(name)
        return made

    def close(self) -> None:
        """Let go of the file."""
        with self._lock:
            self._watch.close()

    def _look(self, moment: bool) -> object:
        [(commits,)] = self._watch.execute("PRAGMA data_version").fetchall()
        if commits != self._commits:
            self._commits = commits
            # The row is read after the count: it may be newer, and is then looked at once more.
            written = self._watch.execute(_WRITTEN).fetchall()
            if written != self._written:
                self._written = written
                self._held.clear()
                self._bytes = 0
            for name in self._of_the_moment & self._held.keys():
                self._bytes -= self._held.pop(name)[1]
            self._of_the_moment.clear()
        return self._stands(moment)

    def _stands(self, moment: bool) -> object:
        return self._commits if moment else self._written

    def _keep(self, name: str, made: Any, weight: int) -> None:
        if weight > self._most // 4:
            return
        self._held[name] = (made, weight)
        self._bytes += weight
        while self._bytes > self._most:
            _, (_, dropped) = self._held.popitem(last=False)
            self._bytes -= dropped
