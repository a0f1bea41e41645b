"""The tables of the shop's one file.

Documents, plans, revisions, results, evidence, marks, proposals, settlements and entries of runs
are append-only: triggers refuse to change or delete a row. ``cards`` holds the newest state of
each card, small, for lists and searches.
Whatever is written takes the next number of ``shop.change``, so that a phone can ask for
everything since the number it has seen. Triggers count ``shop.writes`` on at every row of what
answers rest on, whoever writes it; the tables of ``ASIDE`` are not counted.
"""

from __future__ import annotations

from sqlalchemy import (
    Boolean,
    CheckConstraint,
    Column,
    Float,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
)

from flangebook.shop.storage.writing import sending_device


def _sending() -> str:
    return sending_device.get()


def _device() -> Column[str]:
    """The name of the paired device that sent the row, beside who was typed."""
    return Column("device", Text, nullable=False, server_default="", default=_sending)


metadata = MetaData(
    naming_convention={
        "pk": "pk_%(table_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_name)s",
        "ix": "ix_%(table_name)s_%(column_0_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
    }
)

shop = Table(
    "shop",
    metadata,
    Column("id", Integer, CheckConstraint("id = 1", name="one_row"), primary_key=True),
    Column("shop_id", Text, nullable=False),
    Column("change", Integer, nullable=False),
    Column("created_at", Text, nullable=False),
    Column("writes", Integer, nullable=False, server_default="0"),
)

documents = Table(
    "documents",
    metadata,
    Column("name", Text, primary_key=True),
    Column("version", Integer, primary_key=True),
    Column("body", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("change", Integer, nullable=False),
)

plans = Table(
    "plans",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("digest", Text, nullable=False, unique=True),
    Column("body", Text, nullable=False),
)

cards = Table(
    "cards",
    metadata,
    Column("code", Text, primary_key=True),
    Column("revision", Integer, nullable=False),
    Column("trials", Integer, nullable=False),
    Column("stamp", Text, nullable=False),
    Column("archived", Boolean(name="archived_is_yes_or_no"), nullable=False),
    Column("title", Text, nullable=False),
    Column("metal", Text, nullable=False),
    Column("thickness_mm", Float, nullable=False),
    Column("bends", Integer, nullable=False),
    Column("worst", Text, nullable=False),
    Column("searched", Text, nullable=False),
    Column("created_at", Text, nullable=False),
    Column("created_by", Text, nullable=False),
    Column("updated_at", Text, nullable=False),
    Column("updated_by", Text, nullable=False),
    Column("change", Integer, nullable=False, unique=True),
)
Index("ix_cards_updated_at", cards.c.archived, cards.c.updated_at)

revisions = Table(
    "revisions",
    metadata,
    Column("code", Text, ForeignKey("cards.code"), primary_key=True),
    Column("revision", Integer, primary_key=True),
    Column("id", Text, nullable=False, unique=True),
    Column("digest", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("reason", Text, nullable=False),
    Column("changes", Text, nullable=False),
    Column("title", Text, nullable=False),
    Column("note", Text, nullable=False),
    Column("archived", Boolean(name="archived_is_yes_or_no"), nullable=False),
    Column("worst", Text, nullable=False),
    Column("part", Text, nullable=False),
    Column("settings", Text, nullable=False),
    Column("plan_id", Integer, ForeignKey("plans.id"), nullable=False),
)

trials = Table(
    "trials",
    metadata,
    Column("id", Text, primary_key=True),
    Column("code", Text, nullable=False),
    Column("number", Integer, nullable=False),
    Column("revision", Integer, nullable=False),
    Column("digest", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("body", Text, nullable=False),
    ForeignKeyConstraint(["code", "revision"], ["revisions.code", "revisions.revision"]),
)
Index("uq_trials_code", trials.c.code, trials.c.number, unique=True)

# What teaches the figures of a metal: test bends, and first pieces of cards under the id of
# their result. The body holds the set-up as it was then, so that a die entered afresh later
# does not change what was learned.
evidence = Table(
    "evidence",
    metadata,
    Column("id", Text, primary_key=True),
    Column("kind", Text, nullable=False),
    Column("code", Text, ForeignKey("cards.code")),
    Column("metal", Text, nullable=False),
    Column("digest", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("body", Text, nullable=False),
    Column("change", Integer, nullable=False),
)
Index("ix_evidence_metal", evidence.c.metal, evidence.c.change)

# "forget", "remember" and "confirm": the newest of a piece of evidence says whether it counts.
marks = Table(
    "marks",
    metadata,
    Column("number", Integer, primary_key=True),
    Column("evidence_id", Text, ForeignKey("evidence.id"), nullable=False),
    Column("metal", Text, nullable=False),
    Column("mark", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("reason", Text, nullable=False),
    Column("change", Integer, nullable=False),
)
Index("ix_marks_evidence_id", marks.c.evidence_id, marks.c.number)
Index("ix_marks_metal", marks.c.metal, marks.c.change)

# A device is known by the hash of its token; the token itself is only on the device. ``way``
# says how it came: a token that went over plain http is never taken over https.
devices = Table(
    "devices",
    metadata,
    Column("id", Text, primary_key=True),
    Column("token_hash", Text, nullable=False, unique=True),
    Column("name", Text, nullable=False),
    Column("role", Text, nullable=False),
    Column("way", Text, nullable=False),
    Column("paired_at", Text, nullable=False),
    Column("paired_by", Text, nullable=False),
    Column("seen_at", Text, nullable=False),
    Column("revoked_at", Text),
)

# Codes on offer, hashed, and the device that took each.
pairings = Table(
    "pairings",
    metadata,
    Column("code_hash", Text, primary_key=True),
    Column("role", Text, nullable=False),
    Column("name", Text, nullable=False),
    Column("offered_at", Text, nullable=False),
    Column("offered_by", Text, nullable=False),
    Column("expires_at", Text, nullable=False),
    Column("device_id", Text, ForeignKey("devices.id")),
)

# The shop's own switches: a name and a JSON value.
options = Table(
    "options",
    metadata,
    Column("name", Text, primary_key=True),
    Column("value", Text, nullable=False),
)

# Edits that met another one, as they were typed; and the revisions that settled them. A
# settlement may come before its proposal: after a backup was put back, each device sends
# again what it has.
proposals = Table(
    "proposals",
    metadata,
    Column("id", Text, primary_key=True),
    Column("code", Text, ForeignKey("cards.code"), nullable=False),
    Column("digest", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    _device(),
    Column("body", Text, nullable=False),
    Column("change", Integer, nullable=False),
)
Index("ix_proposals_code", proposals.c.code, proposals.c.change)

settlements = Table(
    "settlements",
    metadata,
    Column("proposal_id", Text, primary_key=True),
    Column("code", Text, nullable=False),
    Column("revision", Integer, nullable=False),
    ForeignKeyConstraint(["code", "revision"], ["revisions.code", "revisions.revision"]),
)

# Where a card is being bent, and at which step. Rows are moved and taken out: the table says
# what is on the screens now, and keeps no history.
benches = Table(
    "benches",
    metadata,
    Column("name", Text, primary_key=True),
    Column("code", Text, ForeignKey("cards.code")),
    Column("step", Integer, nullable=False),
    Column("version", Integer, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
)

# What happened in the runs of a card, entry by entry; a run is its entries, and there is no
# row of its own. Neither a name nor a device stands here: nothing of it measures a person.
run_entries = Table(
    "run_entries",
    metadata,
    Column("id", Text, primary_key=True),
    Column("code", Text, ForeignKey("cards.code"), nullable=False),
    Column("run_id", Text, nullable=False),
    Column("kind", Text, nullable=False),
    Column("digest", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("body", Text, nullable=False),
    Column("change", Integer, nullable=False),
)
Index("ix_run_entries_code", run_entries.c.code, run_entries.c.change)
Index("ix_run_entries_change", run_entries.c.change)

# No calculated answer rests on these: where the benches stand, whose devices may ask, and how
# many pieces were made.
ASIDE = frozenset({"shop", "benches", "devices", "pairings", "options", "run_entries"})

APPEND_ONLY = (
    "documents",
    "plans",
    "revisions",
    "trials",
    "evidence",
    "marks",
    "proposals",
    "settlements",
    "run_entries",
)
