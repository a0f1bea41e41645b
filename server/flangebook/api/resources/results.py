"""Results: what came out at the press, and what to set next."""

from __future__ import annotations

from typing import Any

from flask import Response

from flangebook.api.openapi import Blueprint
from flangebook.api.resources.cards import PATH_CODE, parsed
from flangebook.api.sending import sent, the_store
from flangebook.schemas import card_answers
from flangebook.schemas.cards import PageQuery, ResultSchema
from flangebook.shop import results
from flangebook.use_cases import learning, result_entry

blp = Blueprint("results", __name__, url_prefix="/api/v1", description="What the metal did.")


@blp.route("/cards/<code>/results", parameters=PATH_CODE)
@blp.arguments(PageQuery, location="query")
@blp.response(200, card_answers.Results)
@blp.alt_response(404, "NOT_FOUND")
def listed(asked: dict[str, Any], code: str) -> Response:
    """A card's results, newest first."""
    return sent(results.page(the_store(), parsed(code), asked["limit"], asked["offset"]))


@blp.route("/cards/<code>/results", methods=["POST"], parameters=PATH_CODE)
@blp.arguments(ResultSchema)
@blp.response(201, card_answers.ResultAnswer)
@blp.response(200, card_answers.ResultAnswer, description="It was kept before.")
@blp.alt_response(404, "NOT_FOUND")
@blp.alt_response(409, "CONFLICT")
def keep(asked: dict[str, Any], code: str) -> Response:
    """Keep a result and offer the next setting.

    The id is the device's: a resend gives the same answer with 200, and keeps nothing twice.
    """
    store, code = the_store(), parsed(code)
    number = result_entry.kept_with(store, code, asked["revision"], again=asked.pop("again", False))
    checked = result_entry.checked(store, code, asked, number)
    kept = results.add(store, code, *checked, revision=number)
    question = store.work(learning.question_about, asked["id"])
    return sent(result_entry.answer(kept, question), 201 if kept.new else 200)
