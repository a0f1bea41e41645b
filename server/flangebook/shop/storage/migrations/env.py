"""Alembic's entry: run the scripts on the connection that the shop gives."""

from __future__ import annotations

from alembic import context

from flangebook.shop.storage.tables import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
