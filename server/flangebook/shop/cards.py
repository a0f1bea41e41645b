"""Cards: a saved set-up, its newest state and the revisions it came through."""

from __future__ import annotations

import json
import secrets
import uuid
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Row

from flangebook.labels.codes import display, new_code
from flangebook.shop.database import reading, writing
from flangebook.shop.errors import FullError, StaleError, TakenError, UnknownError
from flangebook.shop.store import Store, next_change
from flangebook.shop.tables import cards, plans, revisions, trials
from flangebook.shop.writing import digest, json_text, now, text_digest

JsonDict = dict[str, Any]
MOST_CARDS = 50_000
MOST_REVISIONS = 2_000
TRIALS_SHOWN = 100
_TRIES = 20


@dataclass(frozen=True, slots=True)
class Content:
    """What a revision holds: the part as understood, its plan, note and settings.

    part: the plan request, metric; its title is the card's. plan: the answer, a dict or, to
    keep one that is kept already, its JSON text.
    """

    title: str
    note: str
    part: JsonDict
    plan: JsonDict | str
    worst: str
    settings: Sequence[JsonDict] = ()
    archived: bool = False


@dataclass(frozen=True, slots=True)
class Author:
    """Who wrote a revision and why. id: made by the device, so that a resend is harmless."""

    by: str = ""
    reason: str = ""
    id: str = field(default_factory=lambda: str(uuid.uuid4()))


@dataclass(frozen=True, slots=True)
class CardText:
    """A card as the API sends it: JSON text and its ETag."""

    body: str
    etag: str


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
        if code and _taken(connection, code):
            if _first_digest(connection, code) == wanted:
                return code, False
            raise TakenError(f"Card {display(code)} exists already.", "Take a new code.")
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
    asked: Any = None,
) -> bool:
    """Keep a new revision; whether it was new.

    if_match: ETag of the card it was made from. asked: as for ``create``; the same
    revision id again with the same request is harmless.
    Raises UnknownError, StaleError, and TakenError when the id is kept with other content.
    """
    wanted = digest(asked)
    with writing(store.engine) as connection:
        if already_kept(connection, code, author.id, wanted):
            return False
        head = _head(connection, code)
        if if_match not in ("*", etag_of(head)):
            raise stale(code, etag_of(head))
        if head.revision >= MOST_REVISIONS:
            raise FullError(f"Card {display(code)} has {MOST_REVISIONS} revisions already.")
        number = head.revision + 1
        _insert_revision(connection, code, number, content, author, changes, wanted)
        connection.execute(
            sa.update(cards)
            .where(cards.c.code == code)
            .values(**_summary(connection, code, content, author), revision=number)
        )
    return True


def stale(code: str, newest: str) -> StaleError:
    """The refusal of an edit that was made from an older state."""
    return StaleError(
        f"Card {display(code)} was changed in between.",
        "Fetch it again and make your change on that.",
        newest,
    )


def already_kept(connection: Connection, code: str, revision_id: str, wanted: str) -> bool:
    """Whether a revision with this id is there, with the same request.

    Raises TakenError when it is there with another one.
    """
    kept = connection.execute(
        sa.select(revisions.c.code, revisions.c.digest).where(revisions.c.id == revision_id)
    ).first()
    if kept is None:
        return False
    if (kept.code, kept.digest) == (code, wanted):
        return True
    raise TakenError(f"Revision id {revision_id} is kept already, with other content.")


def read(store: Store, code: str) -> CardText:
    """The card as it stands.

    Raises UnknownError when there is none.
    """
    with reading(store.engine) as connection:
        row = connection.execute(_WHOLE, {"wanted": code}).first()
        if row is None:
            raise unknown(code)
        tried: Iterable[str] = ()
        if row.trials:
            tried = reversed(connection.execute(_TRIALS, {"wanted": code}).scalars().all())
        return CardText(compose(row, tried), etag_of(row))


def content_of(store: Store, code: str, revision: int = 0) -> tuple[Content, str]:
    """What a revision holds (0: the newest) and the ETag of the card.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        head = _head(connection, code)
        row = connection.execute(
            sa.select(revisions, plans.c.body.label("plan"))
            .join(plans, plans.c.id == revisions.c.plan_id)
            .where(revisions.c.code == code, revisions.c.revision == (revision or head.revision))
        ).first()
    if row is None:
        raise UnknownError(f"Card {display(code)} has no revision {revision}.")
    return content_from(row), etag_of(head)


def content_from(row: Row[Any]) -> Content:
    """A revision's content from its row; the plan stays text."""
    return Content(
        title=row.title,
        note=row.note,
        part=json.loads(row.part),
        plan=row.plan,
        worst=row.worst,
        settings=json.loads(row.settings),
        archived=row.archived,
    )


def unknown(code: str) -> UnknownError:
    """There is no such card."""
    return UnknownError(
        f"There is no card {display(code)} in this shop.", "Read the code on the label again."
    )


def etag_of(head: Row[Any]) -> str:
    """The strong ETag of a card: its revision, its trials, and a stamp of this shop's."""
    return f'"{head.revision}.{head.trials}.{head.stamp}"'


def compose(row: Row[Any], tried: Iterable[str]) -> str:
    """The card's JSON from texts kept as JSON, without taking them apart.

    row: a card joined with its newest revision and plan. tried: trials, oldest first.
    """
    head = {
        "code": row.code,
        "display_code": display(row.code),
        "url": f"/c/{row.code}",
        "etag": etag_of(row),
        "revision": row.revision,
        "title": row.title,
        "note": row.note,
        "archived": row.archived,
        "worst": row.worst,
        "created_at": row.created_at,
        "created_by": row.created_by,
        "updated_at": row.updated_at,
        "updated_by": row.updated_by,
        "trials_total": row.trials,
    }
    return (
        f'{json_text(head)[:-1]},"settings":{row.settings},"part":{row.part},'
        f'"plan":{row.plan},"trials":[{",".join(tried)}]}}'
    )


WHOLE = (
    sa.select(
        cards, revisions.c.note, revisions.c.part, revisions.c.settings, plans.c.body.label("plan")
    )
    .join(
        revisions, (revisions.c.code == cards.c.code) & (revisions.c.revision == cards.c.revision)
    )
    .join(plans, plans.c.id == revisions.c.plan_id)
)
_WHOLE = WHOLE.where(cards.c.code == sa.bindparam("wanted"))
_TRIALS = (
    sa.select(trials.c.body)
    .where(trials.c.code == sa.bindparam("wanted"))
    .order_by(trials.c.number.desc())
    .limit(TRIALS_SHOWN)
)
_HEAD = sa.select(cards).where(cards.c.code == sa.bindparam("wanted"))


def _head(connection: Connection, code: str) -> Row[Any]:
    row = connection.execute(_HEAD, {"wanted": code}).first()
    if row is None:
        raise unknown(code)
    return row


def _taken(connection: Connection, code: str) -> bool:
    return connection.execute(_HEAD, {"wanted": code}).first() is not None


def _first_digest(connection: Connection, code: str) -> str:
    kept = sa.select(revisions.c.digest).where(revisions.c.code == code, revisions.c.revision == 1)
    return str(connection.execute(kept).scalar_one())


def _free_code(connection: Connection) -> str:
    for _ in range(_TRIES):
        code = new_code()
        if not _taken(connection, code):
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
    words = (code, content.title, str(part.get("metal", "")), content.note, author.by)
    return {
        "stamp": secrets.token_hex(4),
        "archived": content.archived,
        "title": content.title,
        "metal": str(part.get("metal", "")),
        "thickness_mm": float(part.get("thickness_mm", 0.0)),
        "bends": len(part.get("bends", ())),
        "worst": content.worst,
        "searched": " ".join(words).casefold(),
        "updated_at": now(),
        "updated_by": author.by,
        "change": next_change(connection),
    }


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
            id=author.id,
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
