"""Runs of a card: what happened, entry by entry. Kept as it came, never changed.

A run is the entries with its id; how many pieces are done is how many entries say so. Devices
that were offline add up without loss that way, in whatever order their entries come, and an entry
that is sent again is the same entry. What was a mistake is taken back by another entry.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.labels.codes import display
from flangebook.shop.cards import head_of
from flangebook.shop.errors import FullError, TakenError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import run_entries
from flangebook.shop.storage.writing import digest, json_text, now
from flangebook.shop.store import Store, next_change

JsonDict = dict[str, Any]
KINDS = ("begun", "setup", "piece", "scrap", "back", "paused", "resumed", "ended")
MOST_ENTRIES = 100_000


@dataclass(frozen=True, slots=True)
class StoredEntry:
    """An entry as the store has it. body: its JSON text. new: False for one that was there."""

    body: str
    new: bool


def add(store: Store, code: str, entry: JsonDict) -> StoredEntry:
    """Keep an entry of a run.

    entry: checked, with the ``id`` its device made and the ``run_id``. The same again is harmless.
    Raises UnknownError for a card that is not there, TakenError when the id is there with other
    content, FullError.
    """
    wanted = digest(entry)
    with writing(store.engine) as connection:
        head_of(connection, code)
        query = sa.select(run_entries).where(run_entries.c.id == entry["id"])
        there = connection.execute(query).first()
        if there is not None:
            if (there.code, there.digest) == (code, wanted):
                return StoredEntry(there.body, False)
            raise TakenError(f"Entry {entry['id']} is kept already, with other content.")
        _need_room(connection, code)
        return StoredEntry(_insert(connection, code, entry, wanted), True)


def entries(store: Store, code: str, run_id: str = "") -> list[JsonDict]:
    """All entries of a card's runs, or of one of them, in the order they came.

    Raises UnknownError.
    """
    query = sa.select(run_entries.c.body).where(run_entries.c.code == code)
    if run_id:
        query = query.where(run_entries.c.run_id == run_id)
    with reading(store.engine) as connection:
        head_of(connection, code)
        bodies = connection.execute(query.order_by(run_entries.c.change)).scalars()
        return [json.loads(body) for body in bodies]


def changed(connection: Connection, since: int, most: int) -> list[tuple[str, int]]:
    """The next entries after a change, as JSON text, with the number of each; at most ``most``."""
    query = sa.select(run_entries.c.body, run_entries.c.change).where(run_entries.c.change > since)
    rows = connection.execute(query.order_by(run_entries.c.change).limit(most))
    return [(row.body, row.change) for row in rows]


def _insert(connection: Connection, code: str, entry: JsonDict, wanted: str) -> str:
    at, change = now(), next_change(connection)
    body = json_text({**entry, "code": code, "received_at": at, "change": change})
    connection.execute(
        sa.insert(run_entries).values(
            id=entry["id"],
            code=code,
            run_id=entry["run_id"],
            kind=entry["kind"],
            digest=wanted,
            at=at,
            body=body,
            change=change,
        )
    )
    return body


def _need_room(connection: Connection, code: str) -> None:
    count = sa.select(sa.func.count()).select_from(run_entries).where(run_entries.c.code == code)
    if connection.execute(count).scalar_one() >= MOST_ENTRIES:
        raise FullError(f"The runs of card {display(code)} have {MOST_ENTRIES} entries already.")
