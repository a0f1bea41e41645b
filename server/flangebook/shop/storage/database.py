"""The one SQLite file: how every connection is set up, and what a transaction is.

A write is acknowledged after it is on disk: write-ahead log, ``synchronous=FULL``, one
sync a commit. Writers take the lock when they begin, so that what they read is what
they change; readers see one moment of the shop and never wait.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Engine
from sqlalchemy.engine.interfaces import DBAPIConnection

BUSY_TIMEOUT_MS = 10_000
PRAGMAS = {
    "busy_timeout": BUSY_TIMEOUT_MS,
    "journal_mode": "wal",
    "synchronous": 2,  # FULL
    "foreign_keys": 1,
    "trusted_schema": 0,
    "cache_size": -1000,  # kB a connection; the system holds the file in memory anyway
}


def open_engine(path: Path) -> Engine:
    """An engine on the file at ``path``, made if it is not there."""
    engine = sa.create_engine(
        sa.URL.create("sqlite", database=str(path)),
        pool_size=8,
        max_overflow=24,
        connect_args={"check_same_thread": False},
    )
    sa.event.listen(engine, "connect", _set_up)
    sa.event.listen(engine, "begin", _begin)
    return engine


def _set_up(connection: DBAPIConnection, _record: Any) -> None:
    connection.isolation_level = None
    cursor = connection.cursor()
    for name, value in PRAGMAS.items():
        cursor.execute(f"PRAGMA {name}={value}")
    cursor.close()


def _begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


@contextmanager
def reading(engine: Engine) -> Iterator[Connection]:
    """A connection that sees one moment of the shop."""
    with engine.connect() as connection:
        yield connection


@contextmanager
def writing(engine: Engine) -> Iterator[Connection]:
    """A connection that holds the write lock; commits at the end, or nothing is kept."""
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        yield connection


def settings_of(connection: Connection) -> dict[str, Any]:
    """The pragmas as this connection has them, for tests and the durability check."""
    return {name: connection.exec_driver_sql(f"PRAGMA {name}").scalar() for name in PRAGMAS}
