"""Who holds a shop: a lock of the system on a file beside it.

Every server, and every command that opens the shop's file, holds it together with others;
putting a shop back from a copy needs it alone. The system lets go when the process ends,
however it ends, so that a lock left by a server that was killed stands in nobody's way. The
lock file itself stays and means nothing.

No library does that as strictly: portalocker shares a lock on Windows only with pywin32, and
filelock only through a transaction of a SQLite file (both read in November 2026).
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from flangebook.shop.errors import HeldError

LOCK_NAME = "flangebook.lock"
_PLACES = 64


@contextmanager
def held(folder: Path, *, alone: bool = False) -> Iterator[None]:
    """Hold the shop kept in ``folder`` for as long as the block runs.

    alone: nobody else may hold it meanwhile.
    Raises HeldError when that cannot be had now, OSError when the folder cannot be used.
    """
    folder.mkdir(parents=True, exist_ok=True)
    descriptor = os.open(folder / LOCK_NAME, os.O_RDWR | os.O_CREAT, 0o600)
    try:
        if not _taken(descriptor, alone):
            raise _said(folder, alone)
        yield
    finally:
        os.close(descriptor)  # lets go of the lock


def _said(folder: Path, alone: bool) -> HeldError:
    if alone:
        return HeldError(
            f"A Flangebook server, or another of its commands, holds the shop in {folder}.",
            "Stop it and run this again.",
        )
    return HeldError(
        f"The shop in {folder} is just being put back from a copy.", "Start again when it is done."
    )


def _taken(descriptor: int, alone: bool) -> bool:
    """Whether the lock could be had, without waiting."""
    if os.name == "nt":
        return _taken_on_windows(descriptor, alone)
    import fcntl  # noqa: PLC0415

    try:
        fcntl.flock(descriptor, (fcntl.LOCK_EX if alone else fcntl.LOCK_SH) | fcntl.LOCK_NB)
    except OSError:
        return False
    return True


def _taken_on_windows(descriptor: int, alone: bool) -> bool:
    # Windows has no shared locks there: each holder takes one place of many, whoever wants to
    # be alone takes them all.
    import msvcrt  # noqa: PLC0415

    def lock(start: int, count: int) -> bool:
        os.lseek(descriptor, start, os.SEEK_SET)
        try:
            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, count)  # type: ignore[attr-defined,unused-ignore]
        except OSError:
            return False
        return True

    if alone:
        return lock(0, _PLACES)
    return any(lock(place, 1) for place in range(_PLACES))
