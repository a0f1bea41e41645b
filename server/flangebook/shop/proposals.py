"""Proposals: edits that met another one on their way. Kept beside the card until it is settled
which holds, so that neither side is lost with the phone it was typed on.

A proposal is settled by a revision that names it. One whose id is a revision's needs no
settling: it did arrive as that revision.
"""

from __future__ import annotations

import secrets
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.labels.codes import display
from flangebook.shop.cards import head_of, unknown
from flangebook.shop.errors import FullError, TakenError, UnknownError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import cards, proposals, revisions, settlements
from flangebook.shop.storage.writing import digest, json_text, now, sending_device
from flangebook.shop.store import Store, next_change

JsonDict = dict[str, Any]
MOST_OPEN = 50
MOST_PROPOSALS = 2_000


@dataclass(frozen=True, slots=True)
class Proposal:
    """A proposal as kept. body: JSON text. settled_by: number of the revision that settled
    it, 0 while it is open."""

    id: str
    by: str
    body: str
    settled_by: int


def propose(store: Store, code: str, asked: JsonDict) -> bool:
    """Keep a proposal; whether it was new.

    asked: checked, with the ``id`` its device made and ``changes``. The same again is
    harmless, and so is one that arrived as a revision.
    Raises UnknownError for a card that is not there, TakenError when the id is kept with
    other content, FullError.
    """
    wanted = digest(asked)
    with writing(store.engine) as connection:
        head_of(connection, code)
        if _is_revision(connection, code, asked["id"]) or _kept(connection, code, asked, wanted):
            return False
        _need_room(connection, code)
        at, change = now(), next_change(connection)
        connection.execute(
            sa.insert(proposals).values(
                id=asked["id"],
                code=code,
                digest=wanted,
                at=at,
                by=asked["by"],
                body=json_text({**asked, "device": sending_device.get(), "received_at": at}),
                change=change,
            )
        )
        # The card is sent with what is proposed: it changed, and its ETag with it.
        stamp = secrets.token_hex(4)
        connection.execute(
            sa.update(cards).where(cards.c.code == code).values(stamp=stamp, change=change)
        )
    return True


def settle(connection: Connection, code: str, number: int, ids: Sequence[str]) -> None:
    """Write down that a revision settled these, inside the write that keeps the revision.

    One that has not come yet, as after a backup was put back, is settled when it comes.
    Raises UnknownError for one of another card.
    """
    for proposal_id in dict.fromkeys(ids):
        found = sa.select(proposals.c.code).where(proposals.c.id == proposal_id)
        if connection.execute(found).scalar() not in (None, code):
            raise UnknownError(f"Card {display(code)} has no proposal {proposal_id}.")
        known = sa.select(settlements).where(settlements.c.proposal_id == proposal_id)
        if connection.execute(known).first() is None:
            connection.execute(
                sa.insert(settlements).values(proposal_id=proposal_id, code=code, revision=number)
            )


def named(store: Store, code: str, ids: Sequence[str]) -> list[Proposal]:
    """The proposals of a card with these ids, as far as they are there, in the order they came."""
    return [one for one in _found(store, code) if one.id in ids]


def page(store: Store, code: str) -> str:
    """All proposals of a card, newest first, each with the revision that settled it, as JSON
    text.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        known = connection.execute(sa.select(cards.c.code).where(cards.c.code == code)).first()
    if known is None:
        raise unknown(code)
    found = list(reversed(_found(store, code)))
    texts = [f'{one.body[:-1]},"settled_by":{one.settled_by or "null"}}}' for one in found]
    return f'{{"proposals":[{",".join(texts)}]}}'


def _found(store: Store, code: str) -> list[Proposal]:
    by = sa.func.coalesce(settlements.c.revision, revisions.c.revision, 0).label("settled_by")
    query = (
        sa.select(proposals.c.id, proposals.c.by, proposals.c.body, by)
        .outerjoin(settlements, settlements.c.proposal_id == proposals.c.id)
        .outerjoin(revisions, revisions.c.id == proposals.c.id)
        .where(proposals.c.code == code)
        .order_by(proposals.c.change)
    )
    with reading(store.engine) as connection:
        return [Proposal(*row) for row in connection.execute(query)]


def _is_revision(connection: Connection, code: str, proposal_id: str) -> bool:
    found = sa.select(revisions.c.code).where(revisions.c.id == proposal_id)
    of = connection.execute(found).scalar()
    if of not in (None, code):
        raise TakenError(f"The id {proposal_id} is kept already, with other content.")
    return of is not None


def _kept(connection: Connection, code: str, asked: JsonDict, wanted: str) -> bool:
    kept = connection.execute(
        sa.select(proposals.c.code, proposals.c.digest).where(proposals.c.id == asked["id"])
    ).first()
    if kept is not None and (kept.code, kept.digest) != (code, wanted):
        raise TakenError(f"Proposal {asked['id']} is kept already, with other content.")
    return kept is not None


def _need_room(connection: Connection, code: str) -> None:
    count = sa.select(sa.func.count()).select_from(proposals).where(proposals.c.code == code)
    settled = (
        sa.select(sa.func.count())
        .select_from(proposals)
        .join(settlements, settlements.c.proposal_id == proposals.c.id)
        .where(proposals.c.code == code)
    )
    total = connection.execute(count).scalar_one()
    if total >= MOST_PROPOSALS or total - connection.execute(settled).scalar_one() >= MOST_OPEN:
        raise FullError(f"Card {display(code)} has too many changes to settle. Settle them first.")
