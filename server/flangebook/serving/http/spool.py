"""Bytes on their way between a connection and the app: a little in memory, the rest in a file.

So neither who sends slowly nor who reads slowly holds a thread, or much memory. Where the disk is
full, the rest stays in memory: a shop whose disk is full is still read.
"""

from __future__ import annotations

import io
import threading
from tempfile import TemporaryFile

IN_MEMORY = 65_536
MOST_IN_FILES = 512_000_000
MOST_MORE_IN_MEMORY = 64_000_000


class TooMuchUnderWayError(Exception):
    """More is under way on all connections together than the server keeps."""


class _Room:
    """What all spools together may keep in one way."""

    def __init__(self, most: int) -> None:
        self._left = most
        self._lock = threading.Lock()

    def take(self, count: int) -> None:
        with self._lock:
            if count > self._left:
                raise TooMuchUnderWayError
            self._left -= count

    def give(self, count: int) -> None:
        with self._lock:
            self._left += count


_files = _Room(MOST_IN_FILES)
_memory = _Room(MOST_MORE_IN_MEMORY)


class Spool:
    """First in, first out; one thread may put while another takes."""

    def __init__(self) -> None:
        self._file: io.RawIOBase | io.BytesIO = io.BytesIO()
        self._lock = threading.Lock()
        self._room = _files
        self._taken = self._end = self._charged = 0

    def put(self, data: bytes) -> None:
        """Keep these bytes. Raises TooMuchUnderWayError, and ValueError once it is closed."""
        with self._lock:
            end = self._end + len(data)
            self._charge(end)
            if end > IN_MEMORY and self._room is _files and isinstance(self._file, io.BytesIO):
                try:
                    self._go_on_in_a_file()
                except OSError:
                    self._charge_memory(end)
            try:
                _write_at(self._file, self._end, data)
            except OSError:
                self._charge_memory(end)
                self._go_on_in_memory()
                _write_at(self._file, self._end, data)
            self._end = end

    def _charge(self, end: int) -> None:
        if end > max(IN_MEMORY, self._charged):
            self._room.take(end - self._charged)
            self._charged = end

    def _go_on_in_a_file(self) -> None:
        file = TemporaryFile(buffering=0)  # noqa: SIM115
        try:
            _write_at(file, 0, _read_at(self._file, 0, self._end))
        except OSError:
            file.close()
            raise
        self._file = file

    def _go_on_in_memory(self) -> None:
        kept = _read_at(self._file, 0, self._end)
        self._file.close()
        self._file = io.BytesIO(kept)

    def _charge_memory(self, end: int) -> None:
        """Count as memory what was to be in a file: the disk is full."""
        _memory.take(end)
        _files.give(self._charged)
        self._room, self._charged = _memory, end

    def take(self, most: int = -1) -> bytes:
        """The next bytes, all or so many; empty when there are none."""
        with self._lock:
            if self._file.closed:
                return b""
            left = self._end - self._taken
            data = _read_at(self._file, self._taken, left if most < 0 else min(most, left))
            self._taken += len(data)
            if self._taken == self._end:
                self._taken = self._end = 0
            return data

    @property
    def file(self) -> io.RawIOBase | io.BytesIO:
        """What was put, from its start, once nothing more is."""
        self._file.seek(0)
        return self._file

    def close(self) -> None:
        """Forget what is left."""
        with self._lock:
            self._room.give(self._charged)
            self._charged = 0
            self._file.close()


def _write_at(file: io.RawIOBase | io.BytesIO, place: int, data: bytes) -> None:
    file.seek(place)
    rest = memoryview(data)
    while rest:
        rest = rest[file.write(rest) or 0 :]


def _read_at(file: io.RawIOBase | io.BytesIO, place: int, count: int) -> bytes:
    file.seek(place)
    return file.read(count) or b""
