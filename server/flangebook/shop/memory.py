"""What is held in memory while the shop's file does not change.

SQLite counts, for each connection, the commits that others made (``PRAGMA data_version``).
A connection that never writes therefore sees every change, whoever made it, in a few
microseconds; after one, everything held is forgotten.
"""

from __future__ import annotations

import sqlite3
import threading
from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

MOST_BYTES = 8_000_000
T = TypeVar("T")


class Memory:
    """Answers held by name, the least used forgotten first."""

    def __init__(self, path: Path, most_bytes: int = MOST_BYTES) -> None:
        """path: of the shop's file, which is there already."""
        self._watch = sqlite3.connect(path, check_same_thread=False, isolation_level=None)
        self._lock = threading.Lock()
        self._held: OrderedDict[str, tuple[Any, int]] = OrderedDict()
        self._bytes = 0
        self._most = most_bytes
        self._seen = -1

    def hold(self, name: str, make: Callable[[], T], weigh: Callable[[T], int]) -> T:
        """What ``make`` gives, from memory while nothing was written since.

        weigh: how many bytes it takes.
        """
        with self._lock:
            seen = self._look()
            if name in self._held:
                self._held.move_to_end(name)
                found: T = self._held[name][0]
                return found
        made = make()
        with self._lock:
            # Read at ``seen`` or later: kept under ``seen``, the next look throws out what
            # a write in between has made old.
            if self._seen == seen and name not in self._held:
                self._keep(name, made, weigh(made))
        return made

    def close(self) -> None:
        """Let go of the file."""
        with self._lock:
            self._watch.close()

    def _look(self) -> int:
        (version,) = self._watch.execute("PRAGMA data_version").fetchone()
        if version != self._seen:
            self._held.clear()
            self._bytes = 0
            self._seen = version
        return int(version)

    def _keep(self, name: str, made: Any, weight: int) -> None:
        if weight > self._most // 4:
            return
        self._held[name] = (made, weight)
        self._bytes += weight
        while self._bytes > self._most:
            _, (_, dropped) = self._held.popitem(last=False)
            self._bytes -= dropped
