"""Copies of the shop's file: made while it is in use, and looked through before they count.

A copy is one self-contained SQLite file, made by SQLite's own backup of one moment of the
shop; writers go on meanwhile. It gets its name only when it was opened again, read-only, and
found whole.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from flangebook.shop.errors import CopyError, ShopError
from flangebook.shop.storage.migrate import NEWEST
from flangebook.shop.storage.whole_file import no_room, unfinished
from flangebook.shop.store import FILE_NAME

_HEAD = b"SQLite format 3\x00"
_TABLES = {"alembic_version", "shop", "documents", "plans", "cards", "revisions", "trials"}
_MOST_FAULTS = 3


@dataclass(frozen=True, slots=True)
class CopyFacts:
    """What a copy holds. form: of its tables. change: number of its newest write.
    size_bytes: of the file."""

    form: str
    shop_id: str
    change: int
    cards: int
    trials: int
    size_bytes: int


def make_copy(data: Path, target: Path) -> CopyFacts:
    """Copy the shop kept in ``data`` to the file ``target``; what the copy holds.

    A file that had the name before is replaced only by a copy that was found whole.
    Raises UnknownError where there is no shop, CopyError.
    """
    source = shop_file(data)
    if target.exists() and target.resolve() == source.resolve():
        raise CopyError(f"{target} is the shop itself.", "Give the copy another name.")
    with unfinished(target) as made:
        _copy_shop(source, made)
        return look_through(made, f"The shop in {data}")


def shop_file(data: Path) -> Path:
    """The file of the shop kept in ``data``.

    Raises CopyError where there is none.
    """
    source = data / FILE_NAME
    if not source.is_file():
        raise CopyError(f"There is no shop in {data}.", "Give its folder with --data.")
    return source


def look_through(path: Path, called: str = "") -> CopyFacts:
    """Open a copy read-only and see that it is a shop of ours, not newer than this release,
    and whole.

    called: how it is named in an error; empty for its path.

    Raises CopyError.
    """
    called = called or str(path)
    try:
        with path.open("rb") as file:
            head = file.read(len(_HEAD))
    except OSError as error:
        why = error.strerror or error
        raise CopyError(f"{called} cannot be read: {why}.", "Give the file of a copy.") from error
    if head != _HEAD:
        raise CopyError(f"{called} is not a copy of a shop.", "Give a file that `backup` made.")
    try:
        with reading_copy(path) as file:
            return _facts(file, path, called)
    except sqlite3.Error as error:
        raise _damaged(called, str(error)) from error


@contextmanager
def reading_copy(path: Path) -> Iterator[sqlite3.Connection]:
    """A connection that cannot write to the file. Raises sqlite3.Error."""
    # Without a log beside it the file is complete by itself, and can be read even where no
    # file may be made beside it.
    alone = "" if path.with_name(path.name + "-wal").exists() else "&immutable=1"
    address = f"{path.resolve().as_uri()}?mode=ro{alone}"
    with closing(sqlite3.connect(address, uri=True, isolation_level=None)) as file:
        file.execute("PRAGMA trusted_schema = 0")
        yield file


def copy_file(source: Path, made: Path) -> None:
    """Copy a copy. Raises CopyError."""
    with _said(source, made), reading_copy(source) as file:
        _backed_up(file, made)


def _copy_shop(source: Path, made: Path) -> None:
    # Not as a copy is read: a server may begin to write to it at any moment.
    address = f"{source.resolve().as_uri()}?mode=ro"
    with _said(source, made), closing(sqlite3.connect(address, uri=True)) as shop:
        _backed_up(shop, made)


def _backed_up(source: sqlite3.Connection, made: Path) -> None:
    with closing(sqlite3.connect(made, isolation_level=None)) as copy:
        source.backup(copy)  # in one step: one moment of the shop, whoever writes meanwhile
        copy.execute("PRAGMA journal_mode = DELETE")  # one file, nothing beside it


@contextmanager
def _said(source: Path, made: Path) -> Iterator[None]:
    try:
        yield
    except sqlite3.Error as error:
        if getattr(error, "sqlite_errorname", "") == "SQLITE_FULL":
            raise no_room(made.parent) from error
        raise CopyError(
            f"{source} could not be copied to {made.parent}: {error}.",
            "See that it is whole, and that the disk has room and can be written.",
        ) from error


def _facts(file: sqlite3.Connection, path: Path, called: str) -> CopyFacts:
    names = {name for (name,) in file.execute("SELECT name FROM sqlite_master WHERE type='table'")}
    if not names >= _TABLES:
        raise CopyError(
            f"{called} is a database, but not a shop's.", "Give a file that `backup` made."
        )
    form = str(_one(file, "SELECT version_num FROM alembic_version"))
    if form > NEWEST:
        raise CopyError(
            f"{called} has form {form}; this release knows forms up to {NEWEST}.",
            "Use the newer release that made it.",
        )
    faults = [str(row[0]) for row in file.execute("PRAGMA integrity_check")]
    if faults != ["ok"]:
        raise _damaged(called, "; ".join(faults[:_MOST_FAULTS]))
    if lost := file.execute("PRAGMA foreign_key_check").fetchone():
        raise _damaged(called, f"a row of {lost[0]} refers to one of {lost[2]} that is not there")
    shop_id, change = file.execute("SELECT shop_id, change FROM shop").fetchone() or ("", 0)
    if not shop_id:
        raise _damaged(called, "it does not say which shop it is")
    return CopyFacts(
        form,
        shop_id,
        change,
        _one(file, "SELECT count(*) FROM cards"),
        _one(file, "SELECT count(*) FROM trials"),
        path.stat().st_size,
    )


def _one(file: sqlite3.Connection, query: str) -> Any:
    row = file.execute(query).fetchone()
    return row[0] if row else ""


def _damaged(called: str, why: str) -> ShopError:
    return CopyError(f"{called} is damaged: {why}.", "Take another copy.")
