"""Whose device sent a row, beside who was typed; empty for rows from before and for the server."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

_SENT = ("documents", "revisions", "trials", "evidence", "marks", "proposals")


def upgrade() -> None:
    """Add the column."""
    for table in _SENT:
        op.add_column(table, sa.Column("device", sa.Text(), nullable=False, server_default=""))
