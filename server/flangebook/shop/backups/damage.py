"""A shop's file that is damaged is not served: what is wrong, and what brings the shop back.

At start SQLite's quick check looks at every page, which takes milliseconds for a small shop;
while the shop is served, the full check also holds indexes and references against the rows.
"""

from __future__ import annotations

import logging
import shlex
import sqlite3
from contextlib import closing
from pathlib import Path

from flangebook.shop.backups import schedule
from flangebook.shop.backups.copies import look_through
from flangebook.shop.errors import ShopError
from flangebook.shop.store import FILE_NAME

_log = logging.getLogger(__name__)
_MOST_WORDS = 160


class DamagedError(ShopError):
    """The shop's file cannot be relied on."""


def need_undamaged(data: Path) -> None:
    """Look at the file of the shop kept in ``data``, if there is one.

    Raises DamagedError, with the command that brings back the newest good copy.
    """
    file = data / FILE_NAME
    if not file.exists():
        return
    why = "it is empty" if file.stat().st_size == 0 else _first_fault(file, "quick_check")
    if why:
        raise DamagedError(
            f"The shop's file {file} is damaged and is not served ({why[:_MOST_WORDS]}).",
            what_helps(data),
        )


def full_check(data: Path) -> str:
    """What the full check finds wrong in the shop kept in ``data``, and what helps; else empty."""
    file = data / FILE_NAME
    why = _first_fault(file, "integrity_check") or _first_fault(file, "foreign_key_check")
    if not why:
        return ""
    _log.error("The shop's file %s is damaged: %s", file, why)
    return f"The shop's file is damaged ({why[:_MOST_WORDS]}). {what_helps(data)}"


def what_helps(data: Path) -> str:
    """The command that brings back the newest copy that is whole."""
    for copy in schedule.kept(data):
        try:
            look_through(copy.path)
        except ShopError:
            continue
        command = f"flangebook restore {shlex.quote(str(copy.path))}"
        return (
            f"Bring back its newest good copy, of {copy.at:%Y-%m-%d %H:%M} UTC, with: "
            f"{command} --data {shlex.quote(str(data))}"
        )
    return (
        f"There is no good copy in {data / schedule.FOLDER}. Bring one back with: "
        f"flangebook restore FILE --data {shlex.quote(str(data))}"
    )


def _first_fault(file: Path, check: str) -> str:
    # Not read as a copy is: what the last writer left in its log belongs to the shop.
    address = f"{file.resolve().as_uri()}?mode=ro"
    limit = "" if check == "foreign_key_check" else "(1)"
    try:
        with closing(sqlite3.connect(address, uri=True)) as shop:
            found = shop.execute(f"PRAGMA {check}{limit}").fetchone()
    except sqlite3.DatabaseError as error:
        return "" if _is_passing(error) else str(error)
    if found is None or found[0] == "ok":
        return ""
    return " ".join(" ".join(map(str, found)).split())


def _is_passing(error: sqlite3.DatabaseError) -> bool:
    """Whether the file was busy or could not be read, as on a full disk: opening it says so."""
    name = getattr(error, "sqlite_errorname", "")
    return not name.startswith(("SQLITE_CORRUPT", "SQLITE_NOTADB"))
