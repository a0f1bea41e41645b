"""What teaches the figures of a metal: test bends and first pieces, and marks on them.

A piece of evidence is kept once and never changed. "forget", "remember" and "confirm" are
marks, added one after the other; the newest says whether it counts: "forget" that it was wrong,
"confirm" that it was measured right although no metal does that.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any, Literal

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.shop.errors import FullError, TakenError, UnknownError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import evidence, marks
from flangebook.shop.storage.writing import digest, json_text, now
from flangebook.shop.store import Store, next_change

JsonDict = dict[str, Any]
Kind = Literal["test bend", "first piece"]
Mark = Literal["forget", "remember", "confirm"]
MOST_EVIDENCE = 100_000
MOST_COUNTED = 300
"""So many pieces of evidence of a metal, the newest, are counted."""


@dataclass(frozen=True, slots=True)
class Record:
    """A piece of evidence as kept. body: its set-up and what was measured. new: False for one
    that was there already."""

    id: str
    kind: Kind
    code: str | None
    metal: str
    at: str
    by: str
    device: str
    body: JsonDict
    forgotten: bool = False
    confirmed: bool = False
    new: bool = False


def add_test_bend(store: Store, body: JsonDict) -> Record:
    """Keep a test bend: what was sent, checked, with its set-up.

    The same one again is harmless.
    Raises TakenError when the id is kept with other content, FullError.
    """
    wanted = digest(body["sent"])
    with writing(store.engine) as connection:
        kept = _find(connection, str(body["id"]))
        if kept is not None:
            _need_same(kept, wanted)
            return _record(kept, marks_of(connection, [kept.id]))
        insert(connection, "test bend", None, body, wanted)
        row = _find(connection, str(body["id"]))
        assert row is not None
        return _record(row, {}, new=True)


def insert(
    connection: Connection, kind: Kind, code: str | None, body: JsonDict, wanted: str
) -> None:
    """Keep a piece of evidence inside a write that is under way.

    Raises FullError, and TakenError for an id that is there.
    """
    if _find(connection, str(body["id"])) is not None:
        raise TakenError(f"The id {body['id']} is kept already, with other content.")
    if connection.execute(sa.select(sa.func.count()).select_from(evidence)).scalar_one() >= (
        MOST_EVIDENCE
    ):
        raise FullError(f"The shop holds {MOST_EVIDENCE} test bends and first pieces already.")
    connection.execute(
        sa.insert(evidence).values(
            id=str(body["id"]),
            kind=kind,
            code=code,
            metal=body["metal"],
            digest=wanted,
            at=now(),
            by=body.get("by") or "",
            body=json_text({k: v for k, v in body.items() if k != "sent"}),
            change=next_change(connection),
        )
    )


def mark(store: Store, evidence_id: str, wanted: Mark, by: str = "", reason: str = "") -> Record:
    """Say whether a piece of evidence counts; saying the same again is harmless.

    Raises UnknownError.
    """
    with writing(store.engine) as connection:
        row = _find(connection, evidence_id)
        if row is None:
            raise UnknownError(f"There is no test bend or first piece {evidence_id}.")
        was = marks_of(connection, [row.id]).get(row.id, "remember")
        if was != wanted:
            connection.execute(
                sa.insert(marks).values(
                    evidence_id=row.id,
                    metal=row.metal,
                    mark=wanted,
                    at=now(),
                    by=by,
                    reason=reason,
                    change=next_change(connection),
                )
            )
        return _record(row, {row.id: wanted}, new=True)


def of_id(store: Store, evidence_id: str) -> Record | None:
    """The piece of evidence of that id; None where there is none."""
    with reading(store.engine) as connection:
        row = _find(connection, evidence_id)
        return None if row is None else _record(row, marks_of(connection, [row.id]))


def counter(store: Store, metal: str) -> int:
    """A number that grows whenever the evidence of a metal changes; 0 while there is none."""
    with reading(store.engine) as connection:
        newest: list[int] = [
            connection.execute(
                sa.select(sa.func.coalesce(sa.func.max(table.c.change), 0)).where(
                    table.c.metal == metal
                )
            ).scalar_one()
            for table in (evidence, marks)
        ]
    return max(newest)


def counted(store: Store, metal: str) -> list[Record]:
    """The newest evidence of a metal that is not forgotten, as much as is counted, oldest
    first."""
    last = (
        sa.select(marks.c.mark)
        .where(marks.c.evidence_id == evidence.c.id)
        .order_by(marks.c.number.desc())
        .limit(1)
        .scalar_subquery()
    )
    query = (
        sa.select(evidence)
        .where(evidence.c.metal == metal, sa.func.coalesce(last, "remember") != "forget")
        .order_by(evidence.c.change.desc())
        .limit(MOST_COUNTED)
    )
    with reading(store.engine) as connection:
        rows = connection.execute(query).all()
        said = marks_of(connection, [row.id for row in rows])
    return [_record(row, said) for row in reversed(rows)]


def metals_with_evidence(store: Store) -> list[str]:
    """Codes of the metals that there is evidence of."""
    with reading(store.engine) as connection:
        query = sa.select(evidence.c.metal).distinct().order_by(evidence.c.metal)
        return list(connection.execute(query).scalars())


def page(store: Store, metal: str, limit: int, offset: int) -> tuple[list[Record], int]:
    """All evidence of a metal, newest first, a page of it, and how much there is."""
    with reading(store.engine) as connection:
        total = connection.execute(
            sa.select(sa.func.count()).select_from(evidence).where(evidence.c.metal == metal)
        ).scalar_one()
        rows = connection.execute(
            sa.select(evidence)
            .where(evidence.c.metal == metal)
            .order_by(evidence.c.change.desc())
            .limit(limit)
            .offset(offset)
        ).all()
        said = marks_of(connection, [row.id for row in rows])
    return [_record(row, said) for row in rows], total


def marks_of(connection: Connection, ids: list[str]) -> dict[str, str]:
    """The newest mark of each of these that has one."""
    if not ids:
        return {}
    rows = connection.execute(
        sa.select(marks.c.evidence_id, marks.c.mark)
        .where(marks.c.evidence_id.in_(ids))
        .order_by(marks.c.number)
    )
    return {row.evidence_id: row.mark for row in rows}


def forgotten_of(connection: Connection, ids: list[str]) -> set[str]:
    """Which of these do not count."""
    return {name for name, said in marks_of(connection, ids).items() if said == "forget"}


def _need_same(kept: sa.Row[Any], wanted: str) -> None:
    """Refuse other content under an id that is kept.

    Raises TakenError.
    """
    if (kept.kind, kept.digest) != ("test bend", wanted):
        raise TakenError(f"Test bend {kept.id} is kept already, with other content.")


def _find(connection: Connection, evidence_id: str) -> sa.Row[Any] | None:
    return connection.execute(sa.select(evidence).where(evidence.c.id == evidence_id)).first()


def _record(row: sa.Row[Any], said: dict[str, str], *, new: bool = False) -> Record:
    body: JsonDict = json.loads(row.body)
    mark = said.get(row.id)
    return Record(
        row.id, row.kind, row.code, row.metal, row.at, row.by, row.device, body, mark == "forget",
        mark == "confirm", new,
    )  # fmt: skip
