"""The shop's store: one file, opened and brought up to date."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any, TypeVar

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Engine

from flangebook.shop.storage import identity, migrate, tables
from flangebook.shop.storage.cache import Cache
from flangebook.shop.storage.database import open_engine, reading, writing
from flangebook.shop.storage.permissions import make_private
from flangebook.shop.storage.writing import now
from flangebook.shop.work import Workers

FILE_NAME = "flangebook.sqlite"
T = TypeVar("T")


@dataclass(frozen=True)
class Store:
    """An open shop.

    engine: on the shop's file. cache: what is held while nothing is written. workers: who does
    the long calculations; None: whoever asks, in this process.
    """

    engine: Engine
    cache: Cache
    workers: Workers | None = None

    @property
    def shop_id(self) -> str:
        """Tells a phone that the shop it knows is another one; ``lineage`` says when it is
        drawn anew, which may be while the shop is open."""
        return self.cache.get_or_compute("shop id", self._read_id, len)

    def work(self, function: Callable[..., T], *arguments: Any, limits: Any = None) -> T:
        """What ``function(store, *arguments)`` gives, ``limits`` last where there are any: of this
        shop, worked out by the workers where there are some.

        function: of a module, since it is named to another process. Raises WorkError.
        """
        if self.workers is None:
            return function(self, *arguments, *([] if limits is None else [limits]))
        file = Path(self.engine.url.database or "")
        done: T = self.workers.run(file, function, arguments, limits)
        return done

    def expect_work(self) -> None:
        """Somebody is about to ask for a long calculation."""
        if self.workers is not None:
            self.workers.expect()

    def close(self) -> None:
        """Close the file."""
        self.cache.close()
        self.engine.dispose()

    def _read_id(self) -> str:
        with reading(self.engine) as connection:
            return identity.id_of(connection)


@contextmanager
def opened(folder: Path) -> Iterator[Store]:
    """The shop kept in ``folder``, for as long as the block runs."""
    store = open_store(folder)
    try:
        yield store
    finally:
        store.close()


def open_store(folder: Path, workers: Workers | None = None) -> Store:
    """Open the shop kept in ``folder``, making both if they are not there.

    Raises ShopError when the file was written by a newer release.
    """
    make_private(folder, folder / FILE_NAME)
    engine = open_engine(folder / FILE_NAME)
    try:
        migrate.upgrade(engine)
        with writing(engine) as connection:
            _need_id(connection)
    except BaseException:
        engine.dispose()
        raise
    return Store(engine, Cache(folder / FILE_NAME), workers)


def opened_again(file: Path) -> Store:
    """A shop's file that another process has opened, and brought up to date, to read in it."""
    return Store(open_engine(file), Cache(file))


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


def _need_id(connection: Connection) -> None:
    if connection.execute(sa.select(tables.shop.c.shop_id)).first() is None:
        connection.execute(
            sa.insert(tables.shop).values(
                id=1, shop_id=identity.new_id(), change=0, created_at=now()
            )
        )
