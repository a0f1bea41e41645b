"""What happened in the runs of a card: pieces made and scrapped, set-up, pauses."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

_TEXTS = ("id", "code", "run_id", "kind", "digest", "at", "body")


def upgrade() -> None:
    """Make the table and the triggers that keep it as it was written."""
    op.create_table(
        "run_entries",
        *[sa.Column(name, sa.Text(), nullable=False) for name in _TEXTS],
        sa.Column("change", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_run_entries"),
        sa.ForeignKeyConstraint(["code"], ["cards.code"], name="fk_run_entries_code"),
    )
    op.create_index("ix_run_entries_code", "run_entries", ["code", "change"])
    op.create_index("ix_run_entries_change", "run_entries", ["change"])
    for verb in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER run_entries_no_{verb} BEFORE {verb.upper()} ON run_entries "
            f"BEGIN SELECT RAISE(ABORT, 'run_entries are append-only'); END"
        )
