"""Edits that met another one: kept as proposals, and which revision settled them."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the two tables and the triggers that keep them as they were written."""
    op.create_table(
        "proposals",
        *[_text(n) for n in ("id", "code", "digest", "at", "by", "body")],
        _integer("change"),
        sa.PrimaryKeyConstraint("id", name="pk_proposals"),
        sa.ForeignKeyConstraint(["code"], ["cards.code"], name="fk_proposals_code"),
    )
    op.create_index("ix_proposals_code", "proposals", ["code", "change"])
    op.create_table(
        "settlements",
        *[_text(n) for n in ("proposal_id", "code")],
        _integer("revision"),
        sa.PrimaryKeyConstraint("proposal_id", name="pk_settlements"),
        sa.ForeignKeyConstraint(
            ["code", "revision"],
            ["revisions.code", "revisions.revision"],
            name="fk_settlements_code",
        ),
    )
    for table in ("proposals", "settlements"):
        for verb in ("update", "delete"):
            op.execute(
                f"CREATE TRIGGER {table}_no_{verb} BEFORE {verb.upper()} ON {table} "
                f"BEGIN SELECT RAISE(ABORT, '{table} are append-only'); END"
            )


def _text(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text(), nullable=False)


def _integer(name: str) -> sa.Column[int]:
    return sa.Column(name, sa.Integer(), nullable=False)
