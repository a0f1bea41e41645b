"""One bend checked, its stroke, and the wall chart."""

from __future__ import annotations

from typing import Any

from flask import Response

from flangebook.api.openapi import Blueprint
from flangebook.api.sending import sent, sent_compressed, the_store
from flangebook.schemas import bend_answers
from flangebook.schemas.part import ChartQuery, OneBendSchema
from flangebook.use_cases.planner import bend_text, chart_text, stroke_text

blp = Blueprint("bends", __name__, url_prefix="/api/v1", description="Bends and the wall chart.")


@blp.route("/bend", methods=["POST"])
@blp.arguments(OneBendSchema)
@blp.response(200, bend_answers.OneBend)
def bend(asked: dict[str, Any]) -> Response:
    """One bend: tools, force against ratings, radius, angle to set, and every other die."""
    return sent(bend_text(the_store(), asked))


@blp.route("/stroke", methods=["POST"])
@blp.arguments(OneBendSchema)
@blp.response(200, bend_answers.StrokeOfBend)
def stroke(asked: dict[str, Any]) -> Response:
    """One bend over its stroke: force and angles against punch depth, limits beside."""
    return sent(stroke_text(the_store(), asked))


@blp.route("/chart")
@blp.arguments(ChartQuery, location="query")
@blp.response(200, bend_answers.Chart)
def chart(asked: dict[str, Any]) -> Response:
    """The wall chart of this press and crib for one metal: thickness against die."""
    return sent_compressed(chart_text(the_store(), asked["metal"], asked["bend_length_mm"]))
