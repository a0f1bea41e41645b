"""The first release: shop, documents, plans, cards, revisions, trials.

The tables are written out here, not taken from ``tables``: a migration stays as it was.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables and the triggers that keep history as it was written."""
    _shop()
    _cards()
    _history()
    _triggers()


def _text(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text(), nullable=False)


def _integer(name: str) -> sa.Column[int]:
    return sa.Column(name, sa.Integer(), nullable=False)


def _shop() -> None:
    op.create_table(
        "shop",
        sa.Column("id", sa.Integer(), nullable=False),
        _text("shop_id"),
        _integer("change"),
        _text("created_at"),
        sa.PrimaryKeyConstraint("id", name="pk_shop"),
        sa.CheckConstraint("id = 1", name="ck_shop_one_row"),
    )
    op.create_table(
        "documents",
        _text("name"),
        _integer("version"),
        *[_text(n) for n in ("body", "at", "by")],
        _integer("change"),
        sa.PrimaryKeyConstraint("name", "version", name="pk_documents"),
    )
    op.create_table(
        "plans",
        sa.Column("id", sa.Integer(), nullable=False),
        _text("digest"),
        _text("body"),
        sa.PrimaryKeyConstraint("id", name="pk_plans"),
        sa.UniqueConstraint("digest", name="uq_plans_digest"),
    )


def _cards() -> None:
    op.create_table(
        "cards",
        _text("code"),
        _integer("revision"),
        _integer("trials"),
        _text("stamp"),
        sa.Column("archived", sa.Boolean(), nullable=False),
        _text("title"),
        _text("metal"),
        sa.Column("thickness_mm", sa.Float(), nullable=False),
        _integer("bends"),
        *[_text(n) for n in ("worst", "searched")],
        *[_text(n) for n in ("created_at", "created_by", "updated_at", "updated_by")],
        _integer("change"),
        sa.PrimaryKeyConstraint("code", name="pk_cards"),
        sa.UniqueConstraint("change", name="uq_cards_change"),
    )
    op.create_index("ix_cards_updated_at", "cards", ["archived", "updated_at"])


def _history() -> None:
    op.create_table(
        "revisions",
        _text("code"),
        _integer("revision"),
        *[_text(n) for n in ("id", "digest", "at", "by", "reason", "changes", "title", "note")],
        sa.Column("archived", sa.Boolean(), nullable=False),
        *[_text(n) for n in ("worst", "part", "settings")],
        _integer("plan_id"),
        sa.PrimaryKeyConstraint("code", "revision", name="pk_revisions"),
        sa.ForeignKeyConstraint(["code"], ["cards.code"], name="fk_revisions_code"),
        sa.ForeignKeyConstraint(["plan_id"], ["plans.id"], name="fk_revisions_plan_id"),
        sa.UniqueConstraint("id", name="uq_revisions_id"),
    )
    op.create_table(
        "trials",
        *[_text(n) for n in ("id", "code")],
        *[_integer(n) for n in ("number", "revision")],
        *[_text(n) for n in ("digest", "at", "by", "body")],
        sa.PrimaryKeyConstraint("id", name="pk_trials"),
        sa.ForeignKeyConstraint(
            ["code", "revision"], ["revisions.code", "revisions.revision"], name="fk_trials_code"
        ),
    )
    op.create_index("uq_trials_code", "trials", ["code", "number"], unique=True)


def _triggers() -> None:
    for table in ("documents", "plans", "revisions", "trials"):
        for verb in ("update", "delete"):
            op.execute(
                f"CREATE TRIGGER {table}_no_{verb} BEFORE {verb.upper()} ON {table} "
                f"BEGIN SELECT RAISE(ABORT, '{table} are append-only'); END"
            )
