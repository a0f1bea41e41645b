"""The shop's own switches, by name."""

from __future__ import annotations

import json
from typing import Any

import sqlalchemy as sa

from flangebook.shop.storage.database import reading, writing
from flangebook.shop.storage.tables import options
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store

LABELS_OPEN = "labels_open"  # cards can be read without pairing


def option(store: Store, name: str, otherwise: Any) -> Any:
    """What a switch is set to."""
    with reading(store.engine) as connection:
        found = connection.execute(sa.select(options.c.value).where(options.c.name == name))
        value = found.scalar_one_or_none()
    return otherwise if value is None else json.loads(value)


def set_option(store: Store, name: str, value: Any) -> None:
    """Set a switch."""
    with writing(store.engine) as connection:
        connection.execute(sa.delete(options).where(options.c.name == name))
        connection.execute(sa.insert(options).values(name=name, value=json_text(value)))
