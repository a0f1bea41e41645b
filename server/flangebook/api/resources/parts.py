"""Parts planned, and the drawings of their blanks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flask import Response, request

from flangebook.api import plan_stream
from flangebook.api.blanks import dxf_of, svg_of
from flangebook.api.openapi import BINARY, Blueprint
from flangebook.api.resources.cards import PATH_CODE, parsed
from flangebook.api.sending import file, sent, the_store
from flangebook.schemas import plan_answers
from flangebook.schemas.part import PartSchema
from flangebook.shop import cards
from flangebook.shop.store import Store
from flangebook.use_cases.planner import plan_of

blp = Blueprint("parts", __name__, url_prefix="/api/v1", description="From a part to its set-up.")
DXF = "image/vnd.dxf"
SVG = "image/svg+xml"


@blp.route("/plan", methods=["POST"])
@blp.arguments(PartSchema)
@blp.response(200, plan_answers.Plan)
@blp.doc(
    responses={
        200: {
            "content": {
                plan_stream.CONTENT_TYPE: {
                    "schema": {"type": "string"},
                    "example": '{"progress":{"seconds":0.6,"deadline_s":20.0,"looked_at":5000,'
                    '"bends_left":3,"best":null}}\n{"plan":{}}\n',
                }
            }
        }
    }
)
def plan(asked: dict[str, Any]) -> Response:
    """A part's set-up on this press with this crib: blank, tools, steps, findings.

    What can be described always gets an answer; where a finding says stop, the blank and the
    reasons stand all the same. An asker that accepts application/x-ndjson is told line by line
    how far the search for the order is, and the plan or the problem last; hanging up ends it.
    """
    store = the_store()
    if plan_stream.wanted(request):
        return plan_stream.streamed(lambda limits: plan_of(store, asked, limits=limits))
    return sent(plan_of(store, asked))


@blp.route("/blank.svg", methods=["POST"])
@blp.arguments(PartSchema)
@blp.response(200, BINARY, content_type=SVG)
def drawn_blank(asked: dict[str, Any]) -> Response:
    """The blank of a part that is not saved, as SVG."""
    return _svg(plan_of(the_store(), asked), asked["title"], "")


@blp.route("/blank.dxf", methods=["POST"])
@blp.arguments(PartSchema)
@blp.response(200, BINARY, content_type=DXF)
def cut_blank(asked: dict[str, Any]) -> Response:
    """The blank of a part that is not saved, as DXF: cut line and bend lines on their layers."""
    return _dxf(plan_of(the_store(), asked), "blank.dxf")


@blp.route("/cards/<code>/blank.svg", parameters=PATH_CODE)
@blp.response(200, BINARY, content_type=SVG)
@blp.alt_response(404, "NOT_FOUND")
def card_blank_svg(code: str) -> Response:
    """The blank of a card, as saved, as SVG."""
    content, etag = cards.content_of(the_store(), parsed(code))
    return _svg(content.plan_dict, content.title, etag)


@blp.route("/cards/<code>/blank.dxf", parameters=PATH_CODE)
@blp.response(200, BINARY, content_type=DXF)
@blp.alt_response(404, "NOT_FOUND")
def card_blank_dxf(code: str) -> Response:
    """The blank of a card, as saved, as DXF."""
    known = parsed(code)
    content, etag = cards.content_of(the_store(), known)
    return _dxf(content.plan_dict, f"{known}.dxf", etag)


def _svg(planned: Mapping[str, Any], title: str, etag: str) -> Response:
    return file(svg_of(planned, title), SVG, etag=etag)


def _dxf(planned: Mapping[str, Any], name: str, etag: str = "") -> Response:
    return file(the_store().work(_drawn_dxf, planned), DXF, name, etag=etag)


def _drawn_dxf(_store: Store, planned: Mapping[str, Any]) -> str:
    return dxf_of(planned)
