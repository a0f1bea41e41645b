"""Lists of cards and of a card's revisions: small, paged, never the whole shop."""

from __future__ import annotations

import json
from typing import Any, Literal

import sqlalchemy as sa
from sqlalchemy.engine import Row

from flangebook.labels.codes import display
from flangebook.shop.cards import etag_of, unknown
from flangebook.shop.errors import UnknownError
from flangebook.shop.storage.database import reading
from flangebook.shop.storage.tables import cards, plans, revisions
from flangebook.shop.store import Store

JsonDict = dict[str, Any]
Archived = Literal["no", "yes", "all"]
MOST_WORDS = 10


def find(
    store: Store, query: str, archived: Archived, limit: int, offset: int
) -> tuple[list[JsonDict], int]:
    """Cards whose code, title, metal, note or author holds every word asked for.

    Newest first; a page of summaries and how many there are in all.
    """
    wanted = [_holds(word) for word in query.casefold().split()[:MOST_WORDS]]
    if archived != "all":
        wanted.append(cards.c.archived == (archived == "yes"))
    newest = sa.select(cards).where(*wanted).order_by(cards.c.updated_at.desc(), cards.c.code)
    with reading(store.engine) as connection:
        rows = connection.execute(newest.limit(limit).offset(offset)).all()
        total = connection.execute(
            sa.select(sa.func.count()).select_from(cards).where(*wanted)
        ).scalar_one()
    return [_summary(row) for row in rows], total


def plans_of(
    store: Store, metal: str, thickness_mm: tuple[float, float], most: int
) -> tuple[list[tuple[str, str, str]], bool]:
    """Code, title and plan (JSON text) of the cards of a metal, those changed last first.

    thickness_mm: from and to. Not those put away. Also whether there are more than ``most``.
    """
    query = (
        sa.select(cards.c.code, cards.c.title, plans.c.body)
        .join(
            revisions,
            (revisions.c.code == cards.c.code) & (revisions.c.revision == cards.c.revision),
        )
        .join(plans, plans.c.id == revisions.c.plan_id)
        .where(
            cards.c.metal == metal,
            cards.c.archived.is_(False),
            cards.c.thickness_mm.between(*thickness_mm),
        )
        .order_by(cards.c.updated_at.desc(), cards.c.code)
        .limit(most + 1)
    )
    with reading(store.engine) as connection:
        found = [(row.code, row.title, row.body) for row in connection.execute(query)]
    return found[:most], len(found) > most


def history(store: Store, code: str, limit: int, offset: int) -> tuple[list[JsonDict], int]:
    """A card's revisions, newest first.

    Raises UnknownError.
    """
    one = revisions.c
    with reading(store.engine) as connection:
        total = connection.execute(sa.select(cards.c.revision).where(cards.c.code == code)).scalar()
        if total is None:
            raise unknown(code)
        rows = connection.execute(
            sa.select(
                one.revision, one.at, one.by, one.device, one.reason, one.title, one.changes,
                one.worst, one.archived,
            )
            .where(one.code == code)
            .order_by(one.revision.desc())
            .limit(limit)
            .offset(offset)
        ).all()  # fmt: skip
    return [{**row._asdict(), "changes": json.loads(row.changes)} for row in rows], total


def snapshot(store: Store, code: str, number: int) -> str:
    """One revision, whole, as JSON text.

    Raises UnknownError for a card or revision that is not there.
    """
    with reading(store.engine) as connection:
        row = connection.execute(
            sa.select(revisions, plans.c.body.label("plan"))
            .join(plans, plans.c.id == revisions.c.plan_id)
            .where(revisions.c.code == code, revisions.c.revision == number)
        ).first()
        if row is None:
            known = connection.execute(sa.select(cards.c.code).where(cards.c.code == code)).first()
            if known is None:
                raise unknown(code)
            raise UnknownError(f"Card {display(code)} has no revision {number}.")
    return revision_text(row)


def revision_text(row: Row[Any]) -> str:
    """A revision's JSON from texts kept as JSON. row: a revision joined with its plan."""
    head = {
        "code": row.code,
        "display_code": display(row.code),
        "revision": row.revision,
        "id": row.id,
        "at": row.at,
        "by": row.by,
        "device": row.device,
        "reason": row.reason,
        "title": row.title,
        "note": row.note,
        "archived": row.archived,
        "worst": row.worst,
    }
    text = json.dumps(head, ensure_ascii=False, separators=(",", ":"))
    return (
        f'{text[:-1]},"changes":{row.changes},"settings":{row.settings},'
        f'"part":{row.part},"plan":{row.plan}}}'
    )


def _holds(word: str) -> sa.ColumnElement[bool]:
    escaped = word.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_")
    return cards.c.searched.like(f"%{escaped}%", escape="\\")


def _summary(row: Row[Any]) -> JsonDict:
    return {
        "code": row.code,
        "display_code": display(row.code),
        "title": row.title,
        "metal": row.metal,
        "thickness_mm": row.thickness_mm,
        "bends": row.bends,
        "revision": row.revision,
        "trials": row.trials,
        "worst": row.worst,
        "archived": row.archived,
        "created_at": row.created_at,
        "created_by": row.created_by,
        "updated_at": row.updated_at,
        "updated_by": row.updated_by,
        "etag": etag_of(row),
        "url": f"/c/{row.code}",
    }
