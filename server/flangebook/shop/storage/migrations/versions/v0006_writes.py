"""How often was written what answers rest on: counted by the tables themselves."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

_ADDED_TO = (
    "documents",
    "plans",
    "revisions",
    "trials",
    "evidence",
    "marks",
    "proposals",
    "settlements",
)


def upgrade() -> None:
    """Add the number and the triggers that count it on."""
    op.add_column("shop", sa.Column("writes", sa.Integer(), nullable=False, server_default="0"))
    counted = [(table, "insert") for table in _ADDED_TO]
    for table, verb in [*counted, *[("cards", v) for v in ("insert", "update", "delete")]]:
        op.execute(
            f"CREATE TRIGGER {table}_{verb}_counts AFTER {verb.upper()} ON {table} "
            f"BEGIN UPDATE shop SET writes = writes + 1; END"
        )
