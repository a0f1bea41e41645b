"""The shop's store: one file, opened and brought up to date."""

from __future__ import annotations

import secrets
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Engine

from flangebook.shop import migrate, tables
from flangebook.shop.database import open_engine, writing
from flangebook.shop.memory import Memory
from flangebook.shop.writing import now

FILE_NAME = "flangebook.sqlite"


@dataclass(frozen=True)
class Store:
    """An open shop.

    engine: on the shop's file. shop_id: drawn when the file was made; tells a phone
    that the shop it knows is another one.
    memory: what is held while nothing is written.
    """

    engine: Engine
    shop_id: str
    memory: Memory

    def close(self) -> None:
        """Close the file."""
        self.memory.close()
        self.engine.dispose()


@contextmanager
def opened(folder: Path) -> Iterator[Store]:
    """The shop kept in ``folder``, for as long as the block runs."""
    store = open_store(folder)
    try:
        yield store
    finally:
        store.close()


def open_store(folder: Path) -> Store:
    """Open the shop kept in ``folder``, making both if they are not there.

    Raises ShopError when the file was written by a newer release.
    """
    folder.mkdir(parents=True, exist_ok=True)
    engine = open_engine(folder / FILE_NAME)
    try:
        migrate.upgrade(engine)
        with writing(engine) as connection:
            shop_id = _shop_id(connection)
    except BaseException:
        engine.dispose()
        raise
    return Store(engine, shop_id, Memory(folder / FILE_NAME))


def next_change(connection: Connection) -> int:
    """Take the next number of the shop's sequence; the write lock keeps them in order."""
    changed = connection.execute(
        sa.update(tables.shop)
        .values(change=tables.shop.c.change + 1)
        .returning(tables.shop.c.change)
    )
    return int(changed.scalar_one())


def last_change(connection: Connection) -> int:
    """The number of the newest write."""
    return int(connection.execute(sa.select(tables.shop.c.change)).scalar_one())


def _shop_id(connection: Connection) -> str:
    kept = connection.execute(sa.select(tables.shop.c.shop_id)).scalar()
    if kept is not None:
        return str(kept)
    shop_id = secrets.token_hex(8)
    connection.execute(
        sa.insert(tables.shop).values(id=1, shop_id=shop_id, change=0, created_at=now())
    )
    return shop_id
