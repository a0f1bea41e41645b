"""Fill a shop from its document, whole or not at all.

Ids, numbers, moments and authors stay as they are. A shop that has something in it is
replaced only when that is asked for, and is copied first, inside the same write, so that the
copy holds exactly what is replaced. The tables' triggers that keep history are lifted inside
that write and are back before it ends.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection
from sqlalchemy.exc import IntegrityError

from flangebook.shop.backups import copies, schedule
from flangebook.shop.cards import Content
from flangebook.shop.errors import ImportRefusedError, InUseError
from flangebook.shop.revisions import searched
from flangebook.shop.storage import identity, tables
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store
from flangebook.shop.transfer import import_checks, import_form
from flangebook.shop.transfer.export import TEXTS
from flangebook.shop.transfer.import_checks import Validator
from flangebook.shop.transfer.import_form import Exported, Row

_AT_ONCE = 200


@dataclass(frozen=True, slots=True)
class Holdings:
    """How much is in a shop or a document. press: its name, empty for none."""

    press: str
    tools: int
    metals: int
    cards: int
    revisions: int
    trials: int
    test_bends: int


@dataclass(frozen=True, slots=True)
class Imported:
    """What a document holds and what is, or was, here. replaced: where the copy is of what was
    here, None where nothing was to be kept."""

    made_by: str
    exported_at: str
    holds: Holdings
    here: Holdings
    untouched: bool
    replaced: Path | None = None


def look(store: Store, data: bytes, validator: Validator) -> Imported:
    """What would be imported, in place of what; nothing is changed.

    Raises ImportRefusedError.
    """
    exported = _checked(data, validator)
    with reading(store.engine) as connection:
        return _told(exported, connection)


def take(
    store: Store, data: bytes, validator: Validator, *, replace: bool, folder: Path, now: datetime
) -> Imported:
    """Import the document. folder: that the shop is kept in.

    Raises ImportRefusedError; InUseError for a shop with something in it that is not to be
    replaced; CopyError when what is replaced could not be copied. Nothing is changed then.
    """
    exported = _checked(data, validator)
    with writing(store.engine) as connection:
        told = _told(exported, connection)
        replaced = None
        if not told.untouched:
            if not replace:
                raise InUseError(
                    f"The shop has something in it already: {told.here.cards} cards.",
                    "Import into an empty shop, or ask to replace what is there.",
                )
            replaced = schedule.place_for(folder, "replaced", now)
            copies.make_copy(folder, replaced)
        try:
            with _history_lifted(connection):
                _fill(connection, exported)
        except IntegrityError as error:
            why = str(error.orig)
            raise ImportRefusedError(f"The document does not fit together: {why}.") from error
        identity.renew(connection)
    return Imported(told.made_by, told.exported_at, told.holds, told.here, told.untouched, replaced)


def _checked(data: bytes, validator: Validator) -> Exported:
    exported = import_form.read(data)
    import_checks.check(exported, validator)
    return exported


def _told(exported: Exported, connection: Connection) -> Imported:
    here = {name: _newest_body(connection, name) for name in ("press", "metals", *_TOOLS)}
    counts = {name: _count(connection, name) for name in ("cards", "revisions", "trials")}
    bends = sa.select(sa.func.count()).where(tables.evidence.c.kind == "test bend")
    return Imported(
        exported.head["made_by"],
        exported.head["exported_at"],
        _of(exported),
        _holdings(here, counts, connection.execute(bends).scalar_one()),
        _is_untouched(connection),
    )


_TOOLS = ("punches", "dies", "holders")


def _of(exported: Exported) -> Holdings:
    newest: dict[str, Any] = {}
    for row in sorted(exported.rows["documents"], key=lambda r: int(r["version"])):
        newest[row["name"]] = row["body"]
    counts = {name: len(exported.rows[name]) for name in ("cards", "revisions", "trials")}
    bends = sum(row["kind"] == "test bend" for row in exported.rows["evidence"])
    return _holdings(newest, counts, bends)


def _holdings(newest: Mapping[str, Any], counts: Mapping[str, int], bends: int) -> Holdings:
    return Holdings(
        press=str((newest.get("press") or {}).get("name", "")),
        tools=sum(len(newest.get(name) or ()) for name in _TOOLS),
        metals=len(newest.get("metals") or ()),
        test_bends=bends,
        **counts,
    )


def _newest_body(connection: Connection, name: str) -> Any:
    kept = tables.documents.c
    query = sa.select(kept.body).where(kept.name == name).order_by(kept.version.desc()).limit(1)
    body = connection.execute(query).scalar()
    return None if body is None else json.loads(body)


def _count(connection: Connection, name: str) -> int:
    table = tables.metadata.tables[name]
    return int(connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one())


def _is_untouched(connection: Connection) -> bool:
    """Whether there is nothing here but the metals that an empty shop begins with."""
    if any(_count(connection, name) for name in TEXTS if name != "documents"):
        return False
    kept = connection.execute(sa.select(tables.documents)).all()
    return not kept or [(d.name, d.version, d.by, d.change) for d in kept] == [("metals", 1, "", 1)]


@contextmanager
def _history_lifted(connection: Connection) -> Iterator[None]:
    """The triggers away, for as long as the block runs."""
    query = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger'"
    triggers = connection.exec_driver_sql(query).all()
    for name, _ in triggers:
        connection.exec_driver_sql(f'DROP TRIGGER "{name}"')
    yield
    for _, sql in triggers:
        connection.exec_driver_sql(sql)


def _fill(connection: Connection, exported: Exported) -> None:
    connection.exec_driver_sql("PRAGMA defer_foreign_keys = 1")
    newest = {(r["code"], r["revision"]): r for r in exported.rows["revisions"]}
    for name, texts in TEXTS.items():
        table = tables.metadata.tables[name]
        connection.execute(sa.delete(table))
        rows = exported.rows[name]
        for start in range(0, len(rows), _AT_ONCE):
            made = [_kept(row, texts) for row in rows[start : start + _AT_ONCE]]
            if name == "cards":
                made = [row | _again(row, newest[row["code"], row["revision"]]) for row in made]
            connection.execute(sa.insert(table), made)
    change = max((r["change"] for rows in exported.rows.values() for r in rows if "change" in r),
                 default=0)  # fmt: skip
    values: dict[str, Any] = {"change": change}
    if isinstance(exported.head["created_at"], str):
        values["created_at"] = exported.head["created_at"]
    connection.execute(sa.update(tables.shop).values(**values))


def _kept(row: Row, texts: set[str]) -> Row:
    return {name: json_text(value) if name in texts else value for name, value in row.items()}


def _again(card: Row, newest: Row) -> Row:
    """What a card's row holds that can be made again; its stamp is drawn with the new line."""
    content = Content(newest["title"], newest["note"], newest["part"], "", newest["worst"])
    return {"searched": searched(card["code"], content, card["updated_by"]), "stamp": ""}
