"""Benches: named places where a card is being bent, and the step that is shown there.

A bench stands empty (no card, step 0), at one of its card's steps, or one past the last,
which means that the card is done. The last one to move it wins; who names the version he
saw is refused when the bench was moved in between, so that two presses of "next" made at
the same moment do not skip a step.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Row

from flangebook.bending.errors import InputError
from flangebook.labels.codes import display
from flangebook.shop.errors import FullError, StaleError, UnknownError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import benches, cards, plans, revisions
from flangebook.shop.storage.writing import json_text, now
from flangebook.shop.store import Store, next_change

MOST_BENCHES = 100


@dataclass(frozen=True, slots=True)
class ShownStep:
    """Where a bench is to stand. code: of a card, None for an empty bench. step: from 1; 0 for
    an empty bench."""

    code: str | None
    step: int


@dataclass(frozen=True, slots=True)
class PressScreen:
    """A bench as the API sends it: JSON text and its ETag."""

    body: str
    etag: str


def listed(store: Store) -> str:
    """All benches by name, as JSON text."""
    with reading(store.engine) as connection:
        rows = connection.execute(sa.select(benches).order_by(benches.c.name)).all()
    return json_text({"press_screens": [row._asdict() for row in rows]})


def read(store: Store, name: str) -> PressScreen:
    """The bench as it stands; from memory while nothing at all is written, since screens ask
    every second.

    Raises UnknownError when there is none.
    """
    return store.cache.get_or_compute(
        f"bench {name}", lambda: _read(store, name), lambda b: len(b.body), moment=True
    )


def move(
    store: Store, name: str, place: ShownStep, *, by: str = "", if_match: str = ""
) -> PressScreen:
    """Make the bench or move it; where it stands there already nothing is written.

    if_match: the etag of the bench as it was seen, or nothing for "whatever it was".
    Raises StaleError when it was moved since, InputError for a card or a step that is not
    there, FullError for a bench too many.
    """
    with writing(store.engine) as connection:
        kept = _row(connection, name)
        if if_match and (kept is None or if_match not in ("*", _etag(store, kept.version))):
            raise _moved(store, name, kept)
        _check(connection, place)
        if kept is not None and (kept.code, kept.step) == (place.code, place.step):
            return _bench(store, kept)
        if kept is None:
            _room(connection)
        moved = {
            "code": place.code,
            "step": place.step,
            # The shop's own sequence, so that a bench made afresh under an old name does not
            # count from one again and pass for the one that screens have seen.
            "version": next_change(connection),
            "at": now(),
            "by": by,
        }
        if kept is None:
            connection.execute(sa.insert(benches).values(name=name, **moved))
        else:
            connection.execute(sa.update(benches).where(benches.c.name == name).values(**moved))
        row = _row(connection, name)
    if row is None:
        raise _unknown(name)
    return _bench(store, row)


def remove(store: Store, name: str) -> None:
    """Take the bench out.

    Raises UnknownError when there is none.
    """
    with writing(store.engine) as connection:
        taken = connection.execute(sa.delete(benches).where(benches.c.name == name))
        if taken.rowcount == 0:
            raise _unknown(name)


def _read(store: Store, name: str) -> PressScreen:
    with reading(store.engine) as connection:
        row = _row(connection, name)
    if row is None:
        raise _unknown(name)
    return _bench(store, row)


def _row(connection: Connection, name: str) -> Row[Any] | None:
    return connection.execute(sa.select(benches).where(benches.c.name == name)).first()


def _bench(store: Store, row: Row[Any]) -> PressScreen:
    return PressScreen(json_text(row._asdict()), _etag(store, row.version))


def _etag(store: Store, version: int) -> str:
    return f'"{version}.{store.shop_id[:6]}"'


def _check(connection: Connection, place: ShownStep) -> None:
    if place.code is None:
        if place.step:
            raise InputError("An empty bench has no step.", "step", "Give 0, or a card.")
        return
    steps = connection.execute(_STEPS, {"wanted": place.code}).scalar()
    if steps is None:
        raise InputError(
            f"There is no card {display(place.code)} in this shop.", "code", "Give one that is."
        )
    if not 1 <= place.step <= steps + 1:
        raise InputError(
            f"Card {display(place.code)} has no step {place.step}.",
            "step",
            f"Give 1 to {steps}, or {steps + 1} when the card is done.",
        )


def _room(connection: Connection) -> None:
    count = connection.execute(sa.select(sa.func.count()).select_from(benches)).scalar_one()
    if count >= MOST_BENCHES:
        raise FullError(f"The shop has {count} benches, the most there can be.", "Take one out.")


def _moved(store: Store, name: str, kept: Row[Any] | None) -> StaleError:
    etag = "" if kept is None else _etag(store, kept.version)
    return StaleError(f"Bench {name} was moved in between.", "Look where it stands now.", etag)


def _unknown(name: str) -> UnknownError:
    return UnknownError(f"There is no bench {name}.", "Choose one of the list, or make it.")


_STEPS = (
    sa.select(sa.func.json_array_length(plans.c.body, "$.steps"))
    .select_from(cards)
    .join(
        revisions, (revisions.c.code == cards.c.code) & (revisions.c.revision == cards.c.revision)
    )
    .join(plans, plans.c.id == revisions.c.plan_id)
    .where(cards.c.code == sa.bindparam("wanted"))
)
