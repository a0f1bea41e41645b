"""Labels, QR codes and sheets of labels."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from flask import Response, current_app, request

from flangebook.api.openapi import BINARY, Blueprint
from flangebook.api.resources.cards import PATH_CODE, parsed
from flangebook.api.sending import file, sent, the_store
from flangebook.bending.errors import InputError
from flangebook.labels import draw_png, draw_svg
from flangebook.labels.facts import facts_of_card
from flangebook.labels.label import dimensions, label
from flangebook.labels.marks import Label
from flangebook.labels.qr import card_address
from flangebook.labels.sheet import Page, Sheets, sheets
from flangebook.schemas import card_answers
from flangebook.schemas.labels import LabelQuery, SheetQuery
from flangebook.shop import cards, documents

blp = Blueprint("labels", __name__, url_prefix="/api/v1", description="What goes on the bin.")
SVG = "image/svg+xml"
PNG = "image/png"


def _address(code: str) -> str:
    base = current_app.extensions["flangebook.config"].address or request.host_url
    return card_address(base, code)


def _label(code: str, asked: dict[str, Any]) -> tuple[Label, str]:
    kept = cards.read(the_store(), code)
    facts = facts_of_card(json.loads(kept.body), asked["units"], _metal_names())
    return label(facts, _address(code), asked["size"]), kept.etag


def _metal_names() -> dict[str, str]:
    metals = json.loads(documents.read(the_store(), "metals").body) or []
    return {metal["code"]: metal["name"] for metal in metals}


@blp.route("/cards/<code>/label.svg", parameters=PATH_CODE)
@blp.arguments(LabelQuery, location="query")
@blp.response(200, BINARY, content_type=SVG)
@blp.alt_response(404, "NOT_FOUND")
def label_svg(asked: dict[str, Any], code: str) -> Response:
    """The label as SVG, in millimetres."""
    made, _ = _label(parsed(code), asked)
    return file(draw_svg.label_svg(made), SVG)


@blp.route("/cards/<code>/label.png", parameters=PATH_CODE)
@blp.arguments(LabelQuery, location="query")
@blp.response(200, BINARY, content_type=PNG)
@blp.alt_response(404, "NOT_FOUND")
def label_png(asked: dict[str, Any], code: str) -> Response:
    """The label as PNG."""
    made, _ = _label(parsed(code), asked)
    return file(draw_png.label_png(made, asked["dpi"]), PNG)


@blp.route("/cards/<code>/qr.svg", parameters=PATH_CODE)
@blp.response(200, BINARY, content_type=SVG)
@blp.alt_response(404, "NOT_FOUND")
def qr_svg(code: str) -> Response:
    """The QR code alone: it holds the card's address."""
    known = cards.need(the_store(), parsed(code))
    return file(draw_svg.qr_svg(_address(known)), SVG)


@blp.route("/labels/sheet.json")
@blp.arguments(SheetQuery, location="query")
@blp.response(200, card_answers.SheetCount)
@blp.alt_response(404, "NOT_FOUND")
def sheet_json(asked: dict[str, Any]) -> Response:
    """How many sheets these labels take."""
    for code in set(asked["codes"]):
        cards.need(the_store(), code)
    return sent({"pages": _sheets(asked).count})


@blp.route("/labels/sheet.svg")
@blp.arguments(SheetQuery, location="query")
@blp.response(200, BINARY, content_type=SVG)
@blp.alt_response(404, "NOT_FOUND")
def sheet_svg(asked: dict[str, Any]) -> Response:
    """One sheet of labels as SVG, in millimetres."""
    return file(_page(asked, draw_svg.page_svg), SVG)


@blp.route("/labels/sheet.png")
@blp.arguments(SheetQuery, location="query")
@blp.response(200, BINARY, content_type=PNG)
@blp.alt_response(404, "NOT_FOUND")
def sheet_png(asked: dict[str, Any]) -> Response:
    """One sheet of labels as PNG."""
    return file(_page(asked, lambda page: draw_png.page_png(page, asked["dpi"])), PNG)


def _sheets(asked: dict[str, Any]) -> Sheets:
    return sheets(len(asked["codes"]), dimensions(asked["size"]), asked["paper"], asked["skip"])


def _page(asked: dict[str, Any], drawn: Callable[[Page], Any]) -> Any:
    """One sheet, drawn; only the labels on it are made."""
    places, number = _sheets(asked), asked["page"] - 1
    if number >= places.count:
        raise InputError(f"There is no sheet {number + 1}.", "page", f"There are {places.count}.")
    labels = [_label(asked["codes"][i], asked)[0] for i in places.on(number)]
    return drawn(places.page(number, labels))
