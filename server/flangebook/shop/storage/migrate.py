"""Bring the shop's file to the form this release writes.

Alembic's scripts are in ``migrations``; they run on start, in one transaction. A file
that is up to date is recognised without loading Alembic.
"""

from __future__ import annotations

from pathlib import Path

import sqlalchemy as sa
from sqlalchemy.engine import Connection, Engine

from flangebook.shop.errors import ShopError
from flangebook.shop.storage.database import reading, writing

NEWEST = "0009"
_SCRIPTS = Path(__file__).parent / "migrations"


def upgrade(engine: Engine) -> None:
    """Run what migrations the file still needs.

    Raises ShopError when the file was written by a newer release.
    """
    with reading(engine) as connection:
        form = form_of(connection)
    if form == NEWEST:
        return
    if form is not None and form > NEWEST:
        raise ShopError(
            f"The shop's file has form {form}; this release knows forms up to {NEWEST}.",
            "Start the newer release that wrote it.",
        )
    with writing(engine) as connection:
        _run(connection)


def form_of(connection: Connection) -> str | None:
    """The form of the file, or None for a new one."""
    if not sa.inspect(connection).has_table("alembic_version"):
        return None
    form = connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
    return None if form is None else str(form)


def _run(connection: Connection) -> None:
    # Alembic takes a while to load and most starts do not need it.
    from alembic import command  # noqa: PLC0415
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(_SCRIPTS).replace("%", "%%"))
    config.attributes["connection"] = connection
    command.upgrade(config, "head")
