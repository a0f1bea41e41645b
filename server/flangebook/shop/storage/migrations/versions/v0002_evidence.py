"""Evidence of what the metal does: test bends, set-ups of first pieces, and marks on both.

Trials kept before have no set-up of their own time and stay what they were: records.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the two tables and the triggers that keep them as they were written."""
    _evidence()
    _marks()
    for table in ("evidence", "marks"):
        for verb in ("update", "delete"):
            op.execute(
                f"CREATE TRIGGER {table}_no_{verb} BEFORE {verb.upper()} ON {table} "
                f"BEGIN SELECT RAISE(ABORT, '{table} are append-only'); END"
            )


def _text(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text(), nullable=False)


def _integer(name: str) -> sa.Column[int]:
    return sa.Column(name, sa.Integer(), nullable=False)


def _evidence() -> None:
    op.create_table(
        "evidence",
        *[_text(n) for n in ("id", "kind")],
        sa.Column("code", sa.Text(), nullable=True),
        *[_text(n) for n in ("metal", "digest", "at", "by", "body")],
        _integer("change"),
        sa.PrimaryKeyConstraint("id", name="pk_evidence"),
        sa.ForeignKeyConstraint(["code"], ["cards.code"], name="fk_evidence_code"),
    )
    op.create_index("ix_evidence_metal", "evidence", ["metal", "change"])


def _marks() -> None:
    op.create_table(
        "marks",
        _integer("number"),
        *[_text(n) for n in ("evidence_id", "metal", "mark", "at", "by", "reason")],
        _integer("change"),
        sa.PrimaryKeyConstraint("number", name="pk_marks"),
        sa.ForeignKeyConstraint(["evidence_id"], ["evidence.id"], name="fk_marks_evidence_id"),
    )
    op.create_index("ix_marks_evidence_id", "marks", ["evidence_id", "number"])
    op.create_index("ix_marks_metal", "marks", ["metal", "change"])
