"""The crew's devices: offered a pairing, paired, recognised, turned out.

A device proves who it is by a token of 256 random bits; the shop keeps its hash only. A token
dies when its device is turned out, or when it was not used for ``UNUSED_DAYS``.
"""

from __future__ import annotations

import hashlib
import json
import secrets
import threading
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any, Literal

import sqlalchemy as sa
from sqlalchemy.dialects import sqlite
from sqlalchemy.engine import Connection, Row
from sqlalchemy.exc import OperationalError

from flangebook.shop.errors import FullError, ShopError, UnknownError
from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import devices, options, pairings
from flangebook.shop.storage.writing import json_text, text_digest
from flangebook.shop.store import Store

Role = Literal["bench", "operator", "owner"]
ROLES: tuple[Role, ...] = ("bench", "operator", "owner")
UNUSED_DAYS = 180
SEEN_EVERY = timedelta(minutes=5)
MOST_DEVICES = 500
MOST_OFFERS = 50
_SALT = "pairing_salt"
_SCRYPT_N = 2**14  # 16 MB and some 50 ms a code
_HASHING = threading.Lock()
Clock = Callable[[], datetime]


class NotPairedError(ShopError):
    """The token opens nothing. ``reason``: "unknown", "revoked" or "expired"."""

    def __init__(self, reason: str) -> None:
        super().__init__(_WHY[reason], "Ask the owner for a pairing code.")
        self.reason = reason


class CodeError(ShopError):
    """A pairing code that cannot be taken. ``reason``: "unknown", "used" or "expired"."""

    def __init__(self, reason: str) -> None:
        super().__init__(_NOT_TAKEN[reason], "Ask the owner for a new code.")
        self.reason = reason


class PlainError(ShopError):
    """An owner's device that came over plain http, where anybody on the network reads along."""

    def __init__(self) -> None:
        super().__init__(
            "An owner's device is not paired over plain http.",
            "Open the shop's https address on it.",
        )


_WHY = {
    "unknown": "This device is not paired with the shop.",
    "revoked": "This device was taken off the shop's list.",
    "expired": f"This device was not used for {UNUSED_DAYS} days, so its pairing has ended.",
}
_NOT_TAKEN = {
    "unknown": "The shop has no such pairing code.",
    "used": "This pairing code was used already.",
    "expired": "This pairing code is too old.",
}


@dataclass(frozen=True, slots=True)
class Device:
    """A paired device. way: "https", "http" or "proxy", by which it came and is known."""

    id: str
    name: str
    role: Role
    way: str
    paired_at: str
    paired_by: str
    seen_at: str
    revoked_at: str | None


@dataclass(frozen=True, slots=True)
class Offer:
    """A pairing on offer: good once, until it expires."""

    role: Role
    name: str
    expires_at: str


def utc() -> datetime:
    """This moment."""
    return datetime.now(UTC)


def offer(
    store: Store, code: str, role: Role, name: str, by: str, lasts: timedelta, clock: Clock = utc
) -> Offer:
    """Put a pairing on offer under a code, of which only a slow hash is kept.

    Raises FullError when too many are open already.
    """
    moment = clock()
    made = Offer(role, name, _text(moment + lasts))
    code_hash = _code_hash(_salt(store), code)
    with writing(store.engine) as connection:
        still_open = pairings.c.device_id.is_(None) & (pairings.c.expires_at > _text(moment))
        count = sa.select(sa.func.count()).select_from(pairings).where(still_open)
        if connection.execute(count).scalar_one() >= MOST_OFFERS:
            raise FullError("Too many pairings are on offer.", "Wait until some have expired.")
        long_ago = _text(moment - timedelta(days=1))
        connection.execute(sa.delete(pairings).where(pairings.c.expires_at < long_ago))
        connection.execute(
            sa.insert(pairings).values(
                code_hash=code_hash, role=role, name=name, offered_at=_text(moment),
                offered_by=by, expires_at=made.expires_at,
            )
        )  # fmt: skip
    return made


def pair(store: Store, code: str, name: str, way: str, clock: Clock = utc) -> tuple[Device, str]:
    """Take a pairing: the device, and the token that only it will have.

    name: what the device calls itself; empty takes the offer's.
    Raises CodeError, PlainError, FullError.
    """
    moment, token = _text(clock()), secrets.token_urlsafe(32)
    # Codes that a release up to 0.3 offered are open still when the shop is opened by this one.
    hashes = (_code_hash(_salt(store), code), text_digest(code))
    with writing(store.engine) as connection:
        found = connection.execute(
            sa.select(pairings).where(pairings.c.code_hash.in_(hashes))
        ).one_or_none()
        if found is None:
            raise CodeError("unknown")
        if found.device_id is not None:
            raise CodeError("used")
        if found.expires_at <= moment:
            raise CodeError("expired")
        if found.role == "owner" and way == "http":
            raise PlainError
        if _in_use(connection) >= MOST_DEVICES:
            raise FullError("The shop knows as many devices as it may.", "Take some off the list.")
        made = Device(
            secrets.token_hex(8), name or found.name or found.role, found.role, way, moment,
            found.offered_by, moment, None,
        )  # fmt: skip
        connection.execute(
            sa.insert(devices).values(token_hash=text_digest(token), **_columns(made))
        )
        connection.execute(
            sa.update(pairings)
            .where(pairings.c.code_hash == found.code_hash)
            .values(device_id=made.id)
        )
    return made, token


def recognised(store: Store, token: str, way: str, clock: Clock = utc) -> Device:
    """The device that has this token, seen now. Raises NotPairedError."""
    with reading(store.engine) as connection:
        row = connection.execute(
            sa.select(devices).where(devices.c.token_hash == text_digest(token))
        ).one_or_none()
    if row is None or row.way != way:
        raise NotPairedError("unknown")
    if row.revoked_at is not None:
        raise NotPairedError("revoked")
    moment, seen = clock(), datetime.fromisoformat(row.seen_at)
    if moment - seen > timedelta(days=UNUSED_DAYS):
        raise NotPairedError("expired")
    if moment - seen > SEEN_EVERY:
        # On a full disk reading goes on: when a device was seen is worth no refusal.
        with suppress(OperationalError), writing(store.engine) as connection:
            connection.execute(
                sa.update(devices).where(devices.c.id == row.id).values(seen_at=_text(moment))
            )
    return _device(row)


def listed(store: Store) -> list[Device]:
    """All devices, those in use first, newest seen first."""
    with reading(store.engine) as connection:
        rows = connection.execute(
            sa.select(devices).order_by(
                devices.c.revoked_at.is_not(None), devices.c.seen_at.desc(), devices.c.id
            )
        ).all()
    return [_device(row) for row in rows]


def has_owner(store: Store) -> bool:
    """Whether a device of an owner is paired."""
    return any(one.role == "owner" and one.revoked_at is None for one in listed(store))


def change(store: Store, device_id: str, **changed: Any) -> Device:
    """Another ``name`` or ``role``. Raises UnknownError, PlainError."""
    with writing(store.engine) as connection:
        if changed.get("role") == "owner" and _one(connection, device_id).way == "http":
            raise PlainError
        connection.execute(sa.update(devices).where(devices.c.id == device_id).values(**changed))
        return _one(connection, device_id)


def revoke(store: Store, device_id: str, clock: Clock = utc) -> Device:
    """Turn a device out: its token opens nothing from now on. Raises UnknownError."""
    with writing(store.engine) as connection:
        connection.execute(
            sa.update(devices)
            .where(devices.c.id == device_id, devices.c.revoked_at.is_(None))
            .values(revoked_at=_text(clock()))
        )
        return _one(connection, device_id)


def _salt(store: Store) -> bytes:
    """This shop's own, so that no table of hashes made beforehand is of use; made when needed."""
    drawn = secrets.token_hex(16)
    with writing(store.engine) as connection:
        connection.execute(
            sqlite.insert(options)
            .values(name=_SALT, value=json_text(drawn))
            .on_conflict_do_nothing()
        )
        kept = connection.execute(sa.select(options.c.value).where(options.c.name == _SALT))
        return bytes.fromhex(json.loads(kept.scalar_one()))


def _code_hash(salt: bytes, code: str) -> str:
    """A hash that takes long to work out, so that 40 bits are not guessed from a stolen file.

    One at a time: many wrong codes at once wait for each other, and for nothing else.
    """
    with _HASHING:
        made = hashlib.scrypt(code.encode(), salt=salt, n=_SCRYPT_N, r=8, p=1, dklen=32)
    return f"scrypt:{made.hex()}"


def _one(connection: Connection, device_id: str) -> Device:
    row = connection.execute(sa.select(devices).where(devices.c.id == device_id)).one_or_none()
    if row is None:
        raise UnknownError("There is no such device.")
    return _device(row)


def _in_use(connection: Connection) -> int:
    count = sa.select(sa.func.count()).select_from(devices).where(devices.c.revoked_at.is_(None))
    return int(connection.execute(count).scalar_one())


def _columns(device: Device) -> dict[str, Any]:
    return {name: getattr(device, name) for name in Device.__slots__}


def _device(row: Row[Any]) -> Device:
    return Device(**{name: getattr(row, name) for name in Device.__slots__})


def _text(moment: datetime) -> str:
    return moment.isoformat(timespec="milliseconds").replace("+00:00", "Z")
