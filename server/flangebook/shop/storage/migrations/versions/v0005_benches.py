"""Benches: which step of which card is shown where."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table."""
    op.create_table(
        "benches",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), nullable=True),
        *[sa.Column(n, sa.Integer(), nullable=False) for n in ("step", "version")],
        *[sa.Column(n, sa.Text(), nullable=False) for n in ("at", "by")],
        sa.PrimaryKeyConstraint("name", name="pk_benches"),
        sa.ForeignKeyConstraint(["code"], ["cards.code"], name="fk_benches_code"),
    )
