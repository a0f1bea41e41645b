"""Test bends and first pieces: what they are, what they teach, and taking them back."""

from __future__ import annotations

from typing import Any

from flask import Response

from flangebook.api.openapi import Blueprint
from flangebook.api.sending import sent, the_store
from flangebook.schemas import evidence as schemas
from flangebook.shop import evidence as kept
from flangebook.use_cases import evidence, learning

blp = Blueprint("evidence", __name__, url_prefix="/api/v1", description="What the metal teaches.")
PATH_ID = [
    {
        "in": "path",
        "name": "evidence_id",
        "required": True,
        "schema": {"type": "string"},
        "description": "Of a test bend, or of a card's result.",
    }
]


@blp.route("/test-bends", methods=["POST"])
@blp.arguments(schemas.TestBendSchema)
@blp.response(201, schemas.TestBendAnswer)
@blp.response(200, schemas.TestBendAnswer, description="It was kept before.")
@blp.alt_response(409, "CONFLICT")
def keep(asked: dict[str, Any]) -> Response:
    """Keep a test bend; what it changed.

    The id is the device's: a resend is harmless. A test bend that cannot be is kept, with
    words that say why it teaches nothing.
    """
    store = the_store()
    record = kept.add_test_bend(store, evidence.test_bend(store, asked))
    body = {"test_bend": _row(record), **store.work(learning.what_changed, record)}
    return sent(body, 201 if record.new else 200)


@blp.route("/test-bends")
@blp.arguments(schemas.EvidenceQuery, location="query")
@blp.response(200, schemas.EvidenceList)
def listed(asked: dict[str, Any]) -> Response:
    """All evidence of a metal, test bends and first pieces, newest first."""
    return sent(the_store().work(learning.listed, asked))


@blp.route("/evidence/<evidence_id>/forget", methods=["POST"], parameters=PATH_ID)
@blp.arguments(schemas.MarkSchema)
@blp.response(200, schemas.MarkAnswer)
@blp.alt_response(404, "NOT_FOUND")
def forget(asked: dict[str, Any], evidence_id: str) -> Response:
    """Mark a piece of evidence wrong: it stays on record and no longer counts."""
    return _marked(evidence_id, "forget", asked)


@blp.route("/evidence/<evidence_id>/remember", methods=["POST"], parameters=PATH_ID)
@blp.arguments(schemas.MarkSchema)
@blp.response(200, schemas.MarkAnswer)
@blp.alt_response(404, "NOT_FOUND")
def remember(asked: dict[str, Any], evidence_id: str) -> Response:
    """Let a piece of evidence that was marked wrong count again."""
    return _marked(evidence_id, "remember", asked)


@blp.route("/evidence/<evidence_id>/confirm", methods=["POST"], parameters=PATH_ID)
@blp.arguments(schemas.MarkSchema)
@blp.response(200, schemas.MarkAnswer)
@blp.alt_response(404, "NOT_FOUND")
def confirm(asked: dict[str, Any], evidence_id: str) -> Response:
    """Say that a piece of evidence beyond what its metal can do was measured right: it counts."""
    return _marked(evidence_id, "confirm", asked)


@blp.route("/learned")
@blp.arguments(schemas.LearnedQuery, location="query")
@blp.response(200, schemas.Learned)
def learned(asked: dict[str, Any]) -> Response:
    """What the evidence makes of a metal's figures, by thickness, V opening and lot."""
    return sent(the_store().work(learning.learned_of, asked["metal"]))


def _marked(evidence_id: str, wanted: kept.Mark, asked: dict[str, Any]) -> Response:
    store = the_store()
    record = kept.mark(store, evidence_id.lower(), wanted, asked["by"], asked["reason"])
    return sent({"evidence": _row(record), **store.work(learning.what_changed, record)})


def _row(record: kept.Record) -> dict[str, Any]:
    return the_store().work(learning.row_of, record)
