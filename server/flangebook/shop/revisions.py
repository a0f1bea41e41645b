"""Writing cards: a new one, and every revision after it."""

from __future__ import annotations

import secrets
import uuid
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Row

from flangebook.labels.codes import display, new_code
from flangebook.shop import proposals
from flangebook.shop.cards import Content, JsonDict, etag_of, head_of, stale
from flangebook.shop.errors import FullError, TakenError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import cards, plans, revisions
from flangebook.shop.storage.writing import digest, json_text, now, text_digest
from flangebook.shop.store import Store, next_change

MOST_CARDS = 200_000
MOST_REVISIONS = 2_000
_TRIES = 20


@dataclass(frozen=True, slots=True)
class Author:
    """Who wrote a revision and why. id: made by the device, so that a resend is harmless;
    empty to draw one."""

    by: str = ""
    reason: str = ""
    id: str = ""


def create(
    store: Store, content: Content, author: Author, *, code: str = "", asked: Any = None
) -> tuple[str, bool]:
    """Keep a new card; its code and whether it is new.

    code: made by the device, or empty to draw one. asked: what the device asked for; the
    same code with the same request again is the card that is there already.
    Raises TakenError when the code is kept with other content.
    """
    wanted = digest(asked)
    with writing(store.engine) as connection:
        if _made(connection, code, wanted):
            return code, False
        if connection.execute(sa.select(sa.func.count()).select_from(cards)).scalar_one() >= (
            MOST_CARDS
        ):
            raise FullError(f"The shop holds {MOST_CARDS} cards, as many as it may.")
        code = code or _free_code(connection)
        _insert_card(connection, code, content, author)
        _insert_revision(connection, code, 1, content, author, ("card made",), wanted)
    return code, True


def revise(
    store: Store,
    code: str,
    content: Content,
    author: Author,
    changes: Sequence[str],
    *,
    if_match: str,
    after: str = "",
    settles: Sequence[str] = (),
    asked: Any = None,
) -> bool:
    """Keep a new revision; whether it was new.

    if_match: ETag of the card it was made from. after: id of the revision it was made on,
    or empty: what came to the card since, such as results, does not stand in its way.
    settles: ids of proposals. asked: as for ``create``; the same revision id again with the
    same request is harmless.
    Raises UnknownError, StaleError, and TakenError when the id is kept with other content.
    """
    wanted = digest(asked)
    with writing(store.engine) as connection:
        if _kept(connection, code, author.id, wanted):
            return False
        head = head_of(connection, code)
        if if_match not in ("*", etag_of(head)):
            raise stale(code, etag_of(head))
        _need_newest(connection, head, after)
        if head.revision >= MOST_REVISIONS:
            raise FullError(f"Card {display(code)} has {MOST_REVISIONS} revisions already.")
        number = head.revision + 1
        _insert_revision(connection, code, number, content, author, changes, wanted)
        connection.execute(
            sa.update(cards)
            .where(cards.c.code == code)
            .values(**_summary(connection, code, content, author), revision=number)
        )
        proposals.settle(connection, code, number, settles)
    return True


def need_newest(store: Store, code: str, after: str) -> None:
    """Refuse a change that was not made on the newest revision; empty: not said.

    after: the revision's id. Raises UnknownError, StaleError.
    """
    with reading(store.engine) as connection:
        _need_newest(connection, head_of(connection, code), after)


def _need_newest(connection: Connection, head: Row[Any], after: str) -> None:
    newest = sa.select(revisions.c.id).where(
        revisions.c.code == head.code, revisions.c.revision == head.revision
    )
    if after and connection.execute(newest).scalar_one() != after:
        raise stale(head.code, etag_of(head))


def is_made(store: Store, code: str, asked: Any) -> bool:
    """Whether the card is there already, from the same request.

    Raises TakenError when it is there from another one.
    """
    with reading(store.engine) as connection:
        return _made(connection, code, digest(asked))


def is_kept(store: Store, code: str, revision_id: str, asked: Any) -> bool:
    """Whether a revision with this id is there already, from the same request.

    Raises TakenError when it is there from another one.
    """
    with reading(store.engine) as connection:
        return _kept(connection, code, revision_id, digest(asked))


def _made(connection: Connection, code: str, wanted: str) -> bool:
    first = sa.select(revisions.c.digest).where(revisions.c.code == code, revisions.c.revision == 1)
    kept = connection.execute(first).scalar() if code else None
    if kept not in (None, wanted):
        raise TakenError(f"Card {display(code)} exists already.", "Take a new code.")
    return kept is not None


def _kept(connection: Connection, code: str, revision_id: str, wanted: str) -> bool:
    row = connection.execute(
        sa.select(revisions.c.code, revisions.c.digest).where(revisions.c.id == revision_id)
    ).first()
    if row is None:
        return False
    if (row.code, row.digest) == (code, wanted):
        return True
    raise TakenError(f"Revision id {revision_id} is kept already, with other content.")


def _free_code(connection: Connection) -> str:
    for _ in range(_TRIES):
        code = new_code()
        taken = sa.select(cards.c.code).where(cards.c.code == code)
        if connection.execute(taken).first() is None:
            return code
    raise FullError("No free card code was found.")


def _insert_card(connection: Connection, code: str, content: Content, author: Author) -> None:
    summary = _summary(connection, code, content, author)
    connection.execute(
        sa.insert(cards).values(
            code=code,
            revision=1,
            trials=0,
            created_at=summary["updated_at"],
            created_by=author.by,
            **summary,
        )
    )


def _summary(
    connection: Connection, code: str, content: Content, author: Author
) -> Mapping[str, Any]:
    part = content.part
    return {
        "stamp": secrets.token_hex(4),
        "archived": content.archived,
        "title": content.title,
        "metal": str(part.get("metal", "")),
        "thickness_mm": float(part.get("thickness_mm", 0.0)),
        "bends": len(part.get("bends", ())),
        "worst": content.worst,
        "searched": searched(code, content, author.by),
        "updated_at": now(),
        "updated_by": author.by,
        "change": next_change(connection),
    }


def searched(code: str, content: Content, by: str) -> str:
    """What words are looked for in."""
    words = (code, content.title, str(content.part.get("metal", "")), content.note, by)
    return " ".join(words).casefold()


def _insert_revision(
    connection: Connection,
    code: str,
    number: int,
    content: Content,
    author: Author,
    changes: Sequence[str],
    asked: str,
) -> None:
    connection.execute(
        sa.insert(revisions).values(
            code=code,
            revision=number,
            id=author.id or str(uuid.uuid4()),
            digest=asked,
            at=now(),
            by=author.by,
            reason=author.reason,
            changes=json_text(list(changes)),
            title=content.title,
            note=content.note,
            archived=content.archived,
            worst=content.worst,
            part=json_text({"title": ""} | content.part | {"title": content.title}),
            settings=json_text(list(content.settings)),
            plan_id=_plan_id(connection, content.plan),
        )
    )


def _plan_id(connection: Connection, plan: JsonDict | str) -> int:
    """The plan's row; a plan that is kept already is not kept twice."""
    body = plan if isinstance(plan, str) else json_text(plan)
    key = text_digest(body)
    kept = connection.execute(sa.select(plans.c.id).where(plans.c.digest == key)).scalar()
    if kept is None:
        insert = sa.insert(plans).values(digest=key, body=body).returning(plans.c.id)
        kept = connection.execute(insert).scalar_one()
    return int(kept)
