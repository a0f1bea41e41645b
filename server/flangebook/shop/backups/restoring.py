"""Put a shop back from a copy of its file.

The copy is looked through, copied beside the shop and made the beginning of a new line
(``lineage``); the shop it replaces is kept among the copies under its date. Only then does it
take the shop's name, in one step. A device that was shut out since the copy was made stays
shut out.
"""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from flangebook.shop.backups import copies, schedule
from flangebook.shop.backups.copies import CopyFacts
from flangebook.shop.errors import CopyError, ShopError
from flangebook.shop.storage import identity
from flangebook.shop.storage.file_lock import held
from flangebook.shop.storage.whole_file import unfinished, unwritable
from flangebook.shop.store import FILE_NAME

_LOGS = ("-wal", "-shm", "-journal")


@dataclass(frozen=True, slots=True)
class Restored:
    """What was put back. replaced: where the shop is that was there, None if there was none.
    whole: whether that one was found whole. devices: how many may use the shop now."""

    facts: CopyFacts
    replaced: Path | None
    whole: bool
    devices: int


def restore(copy: Path, data: Path, now: datetime) -> Restored:
    """Put the shop in the folder ``data`` back from the file ``copy``.

    Raises CopyError for a file that is not a whole shop's, or a newer release's; HeldError
    while a server holds the shop. Nothing is changed then.
    """
    target = data / FILE_NAME
    if target.exists() and copy.exists() and target.samefile(copy):
        raise CopyError(f"{copy} is the shop itself.", "Give the file of a copy.")
    copies.look_through(copy)
    with held(data, alone=True), unfinished(target) as made:
        copies.copy_file(copy, made)
        facts = copies.look_through(made, str(copy))
        devices = _begin_again(made, target)
        replaced, whole = _keep(data, target, now)
        _drop_logs(target)
    return Restored(facts, replaced, whole, devices)


def _begin_again(made: Path, old: Path) -> int:
    """Make the copy a new line's beginning; how many devices may use it."""
    gone = _shut_out(old)
    try:
        with closing(sqlite3.connect(made)) as file, file:
            identity.renew_copy(file)
            if not _has_devices(file):
                return 0
            file.execute("DELETE FROM pairings WHERE device_id IS NULL")
            file.executemany(
                "UPDATE devices SET revoked_at = ? WHERE id = ? AND revoked_at IS NULL", gone
            )
            query = "SELECT count(*) FROM devices WHERE revoked_at IS NULL"
            return int(file.execute(query).fetchone()[0])
    except sqlite3.Error as error:
        raise CopyError(f"The copy could not be put in {made.parent}: {error}.") from error


def _shut_out(old: Path) -> list[tuple[str, str]]:
    """When which device was shut out, in the shop that is replaced, as far as it can be read."""
    if not old.exists():
        return []
    with suppress(sqlite3.Error), copies.reading_copy(old) as file:
        if _has_devices(file):
            query = "SELECT revoked_at, id FROM devices WHERE revoked_at IS NOT NULL"
            return file.execute(query).fetchall()
    return []


def _has_devices(file: sqlite3.Connection) -> bool:
    query = "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'devices'"
    return file.execute(query).fetchone() is not None


def _keep(data: Path, target: Path, now: datetime) -> tuple[Path | None, bool]:
    """Keep the shop that is replaced; where, and whether it was whole."""
    if not target.exists():
        return None, True
    place = schedule.place_for(data, "replaced", now)
    try:
        copies.make_copy(data, place)
        return place, True
    except ShopError:
        pass
    # It is not whole: kept as it lies, with its log, for whoever wants to look into it.
    try:
        for end in ("", *_LOGS):
            if (found := target.with_name(target.name + end)).exists():
                shutil.copy2(found, place.with_name(place.name + end))
                place.with_name(place.name + end).chmod(0o600)
    except OSError as error:
        raise unwritable(place, error) from error
    return place, False


def _drop_logs(target: Path) -> None:
    """Nothing of the old file's log may be taken for the new one's: it is in the kept copy."""
    with suppress(sqlite3.Error), closing(sqlite3.connect(target)) as file:
        if target.exists():
            file.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    for end in _LOGS:
        target.with_name(target.name + end).unlink(missing_ok=True)
