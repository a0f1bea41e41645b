"""One bend checked, and the wall chart."""

from __future__ import annotations

from typing import Any

from flask import Response

from flangebook.api.openapi import Blueprint
from flangebook.api.planner import bend_of
from flangebook.api.schemas import bend_answers
from flangebook.api.schemas.part import OneBendSchema
from flangebook.api.sending import sent, the_store

blp = Blueprint("bends", __name__, url_prefix="/api/v1", description="Bends and the wall chart.")


@blp.route("/bend", methods=["POST"])
@blp.arguments(OneBendSchema)
@blp.response(200, bend_answers.OneBend)
def bend(asked: dict[str, Any]) -> Response:
    """One bend: tools, force against ratings, radius, angle to set, and every other die."""
    return sent(bend_of(the_store(), asked))
