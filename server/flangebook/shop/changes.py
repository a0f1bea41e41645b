"""The changes feed: everything a phone needs to be complete without the network.

A cursor names the shop and the newest write seen. A cursor of another shop, or from before
the shop was put back from a copy, starts again from the beginning and says so.
"""

from __future__ import annotations

from collections.abc import Callable

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.shop import documents, runs
from flangebook.shop.cards import WHOLE_CARD, whole
from flangebook.shop.storage import identity
from flangebook.shop.storage.database import reading
from flangebook.shop.storage.tables import cards
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store, last_change

MOST_CHARACTERS = 1_000_000
MOST_ENTRIES = 1_000
Shown = Callable[[documents.Document], str]


def page(store: Store, cursor: str, limit: int, shown: Shown) -> str:
    """The next cards that changed since the cursor, whole, and what came in of runs, as JSON text.

    shown: a document as the API gives it, JSON text. ``shop`` in the answer holds press, crib
    and metals when any of them changed. ``more``: ask again with the new cursor. ``reset``:
    what was fetched before this page is of another shop.
    """
    with reading(store.engine) as connection:
        newest, shop_id = last_change(connection), identity.id_of(connection)
        since, reset = _since(shop_id, cursor, newest)
        entries = runs.changed(connection, since, MOST_ENTRIES)
        until = entries[-1][1] if len(entries) == MOST_ENTRIES else newest
        found, seen = _cards(connection, since, until, limit)
        last = seen or until
        shop = _shop(store, connection, since, shown)
    head = json_text({"cursor": f"{shop_id}.{last}", "more": last < newest, "reset": reset})
    run_entries = ",".join(body for body, change in entries if change <= last)
    return f'{head[:-1]},"shop":{shop},"cards":[{",".join(found)}],"run_entries":[{run_entries}]}}'


def _cards(
    connection: Connection, since: int, until: int, limit: int
) -> tuple[list[str], int | None]:
    """Cards that changed from one number to another, as JSON text, as many as a page holds, and
    the number of the last of them where there are more."""
    changed = sa.select(cards.c.code, cards.c.change).where(
        cards.c.change > since, cards.c.change <= until
    )
    rows = connection.execute(changed.order_by(cards.c.change).limit(limit + 1)).all()
    found: list[str] = []
    room = MOST_CHARACTERS
    for number, (code, _) in enumerate(rows):
        if number == limit or room <= 0:
            return found, rows[number - 1].change
        row = connection.execute(WHOLE_CARD, {"wanted": code}).one()
        found.append(whole(connection, row))
        room -= len(found[-1])
    return found, None


def _since(shop_id: str, cursor: str, newest: int) -> tuple[int, bool]:
    if not cursor:
        return 0, False
    theirs, _, number = cursor.rpartition(".")
    if theirs == shop_id and number.isascii() and number.isdigit():
        seen = int(number[:18])
        if seen <= newest:
            return seen, False
    return 0, True


def _shop(store: Store, connection: Connection, since: int, shown: Shown) -> str:
    # On the first page of a run the documents come first; a write of theirs while later
    # pages are fetched has a higher number than the cursor and comes on the last one.
    if since and not documents.changed_since(connection, since):
        return "null"
    kept = documents.all_newest(store, connection)
    etags = json_text({name: one.etag for name, one in kept.items()})
    bodies = ",".join(f'"{name}":{shown(one)}' for name, one in kept.items())
    return f'{{{bodies},"etags":{etags}}}'
