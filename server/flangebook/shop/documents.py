"""Press, punches, dies, holders and metals: five documents, every version kept."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, get_args

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.shop.errors import StaleError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import documents
from flangebook.shop.storage.writing import json_text, now
from flangebook.shop.store import Store, next_change

Name = Literal["press", "punches", "dies", "holders", "metals"]
NAMES: tuple[Name, ...] = get_args(Name)


@dataclass(frozen=True, slots=True)
class Document:
    """One document as kept. body: JSON text. version: 0 when never written."""

    name: Name
    version: int
    body: str
    etag: str


def read(store: Store, name: Name) -> Document:
    """The newest version; an empty one when nothing was written yet."""
    with reading(store.engine) as connection:
        return _newest(store, connection, name)


def write(store: Store, name: Name, value: Any, *, by: str = "", if_match: str = "") -> Document:
    """Keep a new version; the same content again is not kept twice.

    value: the document, JSON-ready and checked. if_match: the etag of the version it was
    made from.
    Raises StaleError when that is not the newest.
    """
    with writing(store.engine) as connection:
        kept = _newest(store, connection, name)
        if if_match not in (kept.etag, "*"):
            raise StaleError(
                f"Someone else changed the {name} in between.",
                "Fetch them again and make your change on that.",
                kept.etag,
            )
        body = json_text(value)
        if body == kept.body:
            return kept
        version = kept.version + 1
        connection.execute(
            sa.insert(documents).values(
                name=name,
                version=version,
                body=body,
                at=now(),
                by=by,
                change=next_change(connection),
            )
        )
    return Document(name, version, body, etag_of(store, version))


def all_newest(store: Store, connection: Connection) -> dict[Name, Document]:
    """Every document as it stands."""
    return {name: _newest(store, connection, name) for name in NAMES}


def changed_since(connection: Connection, change: int) -> bool:
    """Whether any document was written after that number of the sequence."""
    found = connection.execute(
        sa.select(documents.c.name).where(documents.c.change > change).limit(1)
    )
    return found.first() is not None


def etag_of(store: Store, version: int) -> str:
    """The strong ETag of a version."""
    return f'"{version}.{store.shop_id[:6]}"'


_NEWEST = (
    sa.select(documents.c.version, documents.c.body)
    .where(documents.c.name == sa.bindparam("wanted"))
    .order_by(documents.c.version.desc())
    .limit(1)
)


def _newest(store: Store, connection: Connection, name: Name) -> Document:
    row = connection.execute(_NEWEST, {"wanted": name}).first()
    if row is None:
        return Document(name, 0, "null" if name == "press" else "[]", etag_of(store, 0))
    return Document(name, row.version, row.body, etag_of(store, row.version))
