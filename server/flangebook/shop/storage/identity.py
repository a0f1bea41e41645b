"""Which line of history the shop's file goes on from.

The shop's id is drawn when its file is made, and again whenever it is put back from a copy or
filled from a document. What a device knew before names the old id and is told to start again:
otherwise a shop put back to an earlier day, and written to since, could have grown past the
number such a device has seen, and what was written in between would never reach it. Cards get
new stamps for the same reason: an edit made from a card as it was before must be refused, even
when revision and results have come to the same numbers again.
"""

from __future__ import annotations

import secrets
import sqlite3

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.shop.storage import tables

_NEW_STAMPS = "UPDATE cards SET stamp = lower(hex(randomblob(4)))"


def new_id() -> str:
    """An id that no shop had before."""
    return secrets.token_hex(8)


def id_of(connection: Connection) -> str:
    """The shop's id, as of the moment this connection sees."""
    return str(connection.execute(sa.select(tables.shop.c.shop_id)).scalar_one())


def renew(connection: Connection) -> None:
    """Begin a new line, inside a write that is under way."""
    connection.execute(sa.update(tables.shop).values(shop_id=new_id()))
    connection.exec_driver_sql(_NEW_STAMPS)


def renew_copy(file: sqlite3.Connection) -> None:
    """Begin a new line in a file of any form that is not in use yet."""
    file.execute("UPDATE shop SET shop_id = ?", (new_id(),))
    file.execute(_NEW_STAMPS)
