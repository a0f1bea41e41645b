"""The whole shop: its health, what changed, and all of it in one document."""

from __future__ import annotations

from os import SEEK_END
from typing import Any
from wsgiref.util import FileWrapper

from flask import Response

from flangebook import __version__
from flangebook.api.openapi import Blueprint
from flangebook.api.sending import sent, sent_compressed, the_store
from flangebook.schemas import answers, card_answers
from flangebook.schemas.cards import ChangesQuery
from flangebook.shop import changes
from flangebook.shop.storage.writing import json_text
from flangebook.shop.transfer import export
from flangebook.use_cases.tool_outlines import shown

blp = Blueprint("feed", __name__, url_prefix="/api/v1", description="The shop as a whole.")
_HEALTH = json_text({"status": "ok", "version": __version__})


@blp.route("/health")
@blp.response(200, answers.Health)
def health() -> Response:
    """Whether the server answers."""
    return sent(_HEALTH)


@blp.route("/changes")
@blp.arguments(ChangesQuery, location="query")
@blp.response(200, card_answers.Changes)
def changed(asked: dict[str, Any]) -> Response:
    """Everything a phone needs to be complete without the network, since a cursor.

    Begin without one. ``more`` asks for another round with the new cursor; ``reset`` says
    that what was fetched before is of another shop.
    """
    store = the_store()
    page = changes.page(store, asked["since"], asked["limit"], lambda one: shown(store, one))
    return sent_compressed(page)


@blp.route("/export")
@blp.response(200, card_answers.Export)
def exported() -> Response:
    """The whole shop as one open JSON document.

    It is whole before its first byte is sent: what goes wrong on the way is an error, not a file
    that breaks off.
    """
    whole = export.whole(the_store())
    made = Response(FileWrapper(whole), content_type="application/json")
    made.call_on_close(whole.close)
    made.content_length = whole.seek(0, SEEK_END)
    whole.seek(0)
    made.headers["Cache-Control"] = "no-store"
    made.headers["Content-Disposition"] = 'attachment; filename="flangebook-shop.json"'
    return made
