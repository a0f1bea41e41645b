"""The changes feed: everything a phone needs to be complete without the network.

A cursor names the shop and the newest write seen. A cursor of another shop, or of a file
that was put back to an earlier day, starts again from the beginning and says so.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Sequence
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Row

from flangebook.shop import documents
from flangebook.shop.cards import TRIALS_SHOWN, WHOLE, compose
from flangebook.shop.database import reading
from flangebook.shop.store import Store, last_change
from flangebook.shop.tables import cards, trials
from flangebook.shop.writing import json_text

Shown = Callable[[documents.Document], str]


def page(store: Store, cursor: str, limit: int, shown: Shown) -> str:
    """The next cards that changed since the cursor, whole, as JSON text.

    shown: a document as the API gives it, JSON text. ``shop`` in the answer holds press, crib
    and metals when any of them changed. ``more``: ask again with the new cursor. ``reset``:
    what was fetched before this page is of another shop.
    """
    with reading(store.engine) as connection:
        newest = last_change(connection)
        since, reset = _since(store, cursor, newest)
        rows = connection.execute(
            WHOLE.where(cards.c.change > since).order_by(cards.c.change).limit(limit + 1)
        ).all()
        more, rows = len(rows) > limit, rows[:limit]
        seen = rows[-1].change if more else newest
        tried = _tried(connection, [row.code for row in rows if row.trials])
        whole = ",".join(compose(row, tried[row.code]) for row in rows)
        shop = _shop(store, connection, since, shown)
    head = json_text({"cursor": f"{store.shop_id}.{seen}", "more": more, "reset": reset})
    return f'{head[:-1]},"shop":{shop},"cards":[{whole}]}}'


def _since(store: Store, cursor: str, newest: int) -> tuple[int, bool]:
    if not cursor:
        return 0, False
    shop_id, _, number = cursor.rpartition(".")
    if shop_id == store.shop_id and number.isascii() and number.isdigit():
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


def _tried(connection: Connection, codes: Sequence[str]) -> dict[str, list[str]]:
    """The newest trials of each card, oldest first."""
    found: dict[str, list[str]] = defaultdict(list)
    if not codes:
        return found
    rank = sa.func.row_number().over(partition_by=trials.c.code, order_by=trials.c.number.desc())
    ranked = (
        sa.select(trials.c.code, trials.c.number, trials.c.body, rank.label("rank"))
        .where(trials.c.code.in_(codes))
        .subquery()
    )
    newest: Sequence[Row[Any]] = connection.execute(
        sa.select(ranked).where(ranked.c.rank <= TRIALS_SHOWN).order_by(ranked.c.number)
    ).all()
    for row in newest:
        found[row.code].append(row.body)
    return found
