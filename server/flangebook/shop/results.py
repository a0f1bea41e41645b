"""Results: what the metal really did. Kept as they came, never changed."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook.labels.codes import display
from flangebook.shop import evidence
from flangebook.shop.cards import etag_of, unknown
from flangebook.shop.errors import FullError, TakenError, UnknownError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import cards, revisions, trials
from flangebook.shop.storage.writing import digest, json_text, now, sending_device
from flangebook.shop.store import Store, next_change

JsonDict = dict[str, Any]
MOST_TRIALS = 5_000
MOST_PIECES = 50
# Fields that results did not have from the first: one that leaves them out is the same as ever,
# so that a device may send it again after the server was brought up to date.
LATER = (
    "lot", "loaded_deg", "flat_length_mm", "flange_left_mm", "flange_right_mm", "gauge_x_mm",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class StoredResult:
    """A result as kept. body: its JSON text. new: False for one that was there already."""

    body: str
    new: bool
    card_etag: str


@dataclass(frozen=True, slots=True)
class StepResult:
    """A result of a step with what was to be set then. settings: of its card's revision."""

    result: JsonDict
    settings: list[JsonDict]


def add(
    store: Store,
    code: str,
    result: JsonDict,
    correction: JsonDict | None,
    teaches: JsonDict | None = None,
    *,
    revision: int = 0,
) -> StoredResult:
    """Keep a result with the correction that was offered.

    result: checked, with the ``id`` its device made, ``revision``, ``by``. teaches: what it is
    evidence of, with its set-up; None where it is none. revision: the one it is kept with where
    that is not its own. The same result again is harmless.
    Raises UnknownError for a card or revision that is not there, TakenError when the id is
    kept with other content.
    """
    wanted = digest({k: v for k, v in result.items() if v or k not in LATER})
    with writing(store.engine) as connection:
        card = connection.execute(sa.select(cards).where(cards.c.code == code)).first()
        if card is None:
            raise unknown(code)
        kept = _kept(connection, str(result["id"]))
        if kept is not None:
            if (kept.code, kept.digest) == (code, wanted):
                return StoredResult(kept.body, False, etag_of(card))
            raise TakenError(f"Result {result['id']} is kept already, with other content.")
        if card.trials >= MOST_TRIALS:
            raise FullError(f"Card {display(code)} has {MOST_TRIALS} results already.")
        number = revision or int(result["revision"])
        if not _has_revision(connection, code, number):
            raise UnknownError(f"Card {display(code)} has no revision {number}.")
        body = _insert(connection, card, result, number, correction, wanted)
        if teaches is not None:
            evidence.insert(connection, "first piece", code, teaches, wanted)
        card = connection.execute(
            sa.update(cards)
            .where(cards.c.code == code)
            .values(trials=card.trials + 1, change=next_change(connection))
            .returning(cards)
        ).one()
        return StoredResult(body, True, etag_of(card))


def pieces(store: Store, code: str, revision: int, step: int) -> list[StepResult]:
    """Earlier pieces of a step, the newest few in the order they came.

    Of every revision that has the same plan; not those that were marked wrong.
    """
    plan = (
        sa.select(revisions.c.plan_id)
        .where(revisions.c.code == code, revisions.c.revision == revision)
        .scalar_subquery()
    )
    query = (
        sa.select(trials.c.id, trials.c.body, revisions.c.settings)
        .join(
            revisions,
            (revisions.c.code == trials.c.code) & (revisions.c.revision == trials.c.revision),
        )
        .where(
            trials.c.code == code,
            revisions.c.plan_id == plan,
            sa.func.json_extract(trials.c.body, "$.step") == step,
        )
        .order_by(trials.c.number.desc())
        .limit(MOST_PIECES)
    )
    with reading(store.engine) as connection:
        rows = connection.execute(query).all()
        wrong = evidence.forgotten_of(connection, [row.id for row in rows])
    return [
        StepResult(json.loads(row.body), json.loads(row.settings))
        for row in reversed(rows)
        if row.id not in wrong
    ]


def page(store: Store, code: str, limit: int, offset: int) -> str:
    """A card's results, newest first, as JSON text.

    Raises UnknownError.
    """
    with reading(store.engine) as connection:
        total = connection.execute(sa.select(cards.c.trials).where(cards.c.code == code)).scalar()
        if total is None:
            raise unknown(code)
        bodies = connection.execute(
            sa.select(trials.c.body)
            .where(trials.c.code == code)
            .order_by(trials.c.number.desc())
            .limit(limit)
            .offset(offset)
        ).scalars()
        return f'{{"results":[{",".join(bodies)}],"total":{total}}}'


def _kept(connection: Connection, result_id: str) -> sa.Row[Any] | None:
    return connection.execute(sa.select(trials).where(trials.c.id == result_id)).first()


def _has_revision(connection: Connection, code: str, number: int) -> bool:
    found = sa.select(revisions.c.revision).where(
        revisions.c.code == code, revisions.c.revision == number
    )
    return connection.execute(found).first() is not None


def _insert(
    connection: Connection,
    card: sa.Row[Any],
    result: JsonDict,
    revision: int,
    correction: JsonDict | None,
    wanted: str,
) -> str:
    at = now()
    number = card.trials + 1
    body = json_text(
        {
            **result,
            "device": sending_device.get(),
            "number": number,
            "received_at": at,
            "correction": correction,
        }
    )
    connection.execute(
        sa.insert(trials).values(
            id=str(result["id"]),
            code=card.code,
            number=number,
            revision=revision,
            digest=wanted,
            at=at,
            by=result.get("by") or "",
            body=body,
        )
    )
    return body
