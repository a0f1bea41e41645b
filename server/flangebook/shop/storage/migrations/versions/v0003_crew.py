"""The crew: paired devices, pairings on offer, and the shop's own switches."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the three tables, empty."""
    op.create_table(
        "devices",
        *[_text(n) for n in ("id", "token_hash", "name", "role", "way", "paired_at", "paired_by")],
        _text("seen_at"),
        sa.Column("revoked_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_devices"),
        sa.UniqueConstraint("token_hash", name="uq_devices_token_hash"),
    )
    op.create_table(
        "pairings",
        *[_text(n) for n in ("code_hash", "role", "name", "offered_at", "offered_by")],
        _text("expires_at"),
        sa.Column("device_id", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("code_hash", name="pk_pairings"),
        sa.ForeignKeyConstraint(["device_id"], ["devices.id"], name="fk_pairings_device_id"),
    )
    op.create_table(
        "options",
        *[_text(n) for n in ("name", "value")],
        sa.PrimaryKeyConstraint("name", name="pk_options"),
    )


def _text(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text(), nullable=False)
