"""Cards: a saved set-up, its newest state and the revisions it came through."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Row

from flangebook.labels.codes import display
from flangebook.shop.errors import StaleError, UnknownError
from flangebook.shop.storage.database import reading
from flangebook.shop.storage.tables import cards, plans, proposals, revisions, settlements, trials
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store

JsonDict = dict[str, Any]
TRIALS_SHOWN = 100


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

    @property
    def plan_dict(self) -> JsonDict:
        """The plan, taken apart."""
        if not isinstance(self.plan, str):
            return self.plan
        plan: JsonDict = json.loads(self.plan)
        return plan


@dataclass(frozen=True, slots=True)
class CardText:
    """A card as the API sends it: JSON in UTF-8 and its ETag."""

    body: bytes
    etag: str


def stale(code: str, newest: str) -> StaleError:
    """The refusal of an edit that was made from an older state."""
    return StaleError(
        f"Card {display(code)} was changed in between.",
        "Fetch it again and make your change on that.",
        newest,
    )


def need(store: Store, code: str) -> str:
    """The code, of a card that is there.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        return str(head_of(connection, code).code)


def newest_revision(store: Store, code: str) -> int:
    """The number of the newest revision of a card.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        return int(head_of(connection, code).revision)


def read(store: Store, code: str) -> CardText:
    """The card as it stands.

    Raises UnknownError when there is none.
    """
    return store.cache.get_or_compute(
        f"card {code}", lambda: _read(store, code), lambda c: len(c.body)
    )


def _read(store: Store, code: str) -> CardText:
    with reading(store.engine) as connection:
        row = connection.execute(WHOLE_CARD, {"wanted": code}).first()
        if row is None:
            raise unknown(code)
        return CardText(whole(connection, row).encode(), etag_of(row))


def whole(connection: Connection, row: Row[Any]) -> str:
    """A card's JSON. row: a card joined with its newest revision and plan."""
    return _composed(row, _tried(connection, row), _proposed(connection, row))


def _proposed(connection: Connection, row: Row[Any]) -> list[str]:
    """What is proposed and not settled, oldest first, as JSON texts."""
    if not row.proposals_total:
        return []
    return list(connection.execute(_OPEN, {"wanted": row.code}).scalars())


def _tried(connection: Connection, row: Row[Any]) -> list[str]:
    """The newest results of a card, oldest first, as JSON texts."""
    if not row.trials:
        return []
    newest = connection.execute(_TRIALS, {"wanted": row.code}).scalars().all()
    return list(reversed(newest))


def content_of(store: Store, code: str, revision: int = 0) -> tuple[Content, str]:
    """What a revision holds (0: the newest) and the ETag of the card.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        head = head_of(connection, code)
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
    """The strong ETag of a card: its revision, its results, and a stamp of this shop's."""
    return f'"{head.revision}.{head.trials}.{head.stamp}"'


def _composed(row: Row[Any], trials_texts: Iterable[str], proposed: Iterable[str]) -> str:
    """The card's JSON from texts kept as JSON, without taking them apart."""
    head = {
        "code": row.code,
        "display_code": display(row.code),
        "url": f"/c/{row.code}",
        "etag": etag_of(row),
        "revision": row.revision,
        "revision_id": row.revision_id,
        "title": row.title,
        "note": row.note,
        "archived": row.archived,
        "worst": row.worst,
        "created_at": row.created_at,
        "created_by": row.created_by,
        "updated_at": row.updated_at,
        "updated_by": row.updated_by,
        "trials_total": row.trials,
        "proposals_total": row.proposals_total,
    }
    return (
        f'{json_text(head)[:-1]},"settings":{row.settings},"part":{row.part},'
        f'"plan":{row.plan},"trials":[{",".join(trials_texts)}],'
        f'"proposals":[{",".join(proposed)}]}}'
    )


WHOLE_CARD = (
    sa.select(
        cards,
        revisions.c.id.label("revision_id"),
        revisions.c.note,
        revisions.c.part,
        revisions.c.settings,
        plans.c.body.label("plan"),
        sa.select(sa.func.count())
        .select_from(proposals)
        .where(proposals.c.code == cards.c.code)
        .scalar_subquery()
        .label("proposals_total"),
    )
    .join(
        revisions, (revisions.c.code == cards.c.code) & (revisions.c.revision == cards.c.revision)
    )
    .join(plans, plans.c.id == revisions.c.plan_id)
    .where(cards.c.code == sa.bindparam("wanted"))
)
_TRIALS = (
    sa.select(trials.c.body)
    .where(trials.c.code == sa.bindparam("wanted"))
    .order_by(trials.c.number.desc())
    .limit(TRIALS_SHOWN)
)
_SETTLED = sa.exists().where(settlements.c.proposal_id == proposals.c.id)
_ARRIVED = sa.exists().where(revisions.c.id == proposals.c.id)
_OPEN = (
    sa.select(proposals.c.body)
    .where(proposals.c.code == sa.bindparam("wanted"), ~_SETTLED, ~_ARRIVED)
    .order_by(proposals.c.change)
)
_HEAD = sa.select(cards).where(cards.c.code == sa.bindparam("wanted"))


def head_of(connection: Connection, code: str) -> Row[Any]:
    """The card's row, without its content.

    Raises UnknownError.
    """
    row = connection.execute(_HEAD, {"wanted": code}).first()
    if row is None:
        raise unknown(code)
    return row
