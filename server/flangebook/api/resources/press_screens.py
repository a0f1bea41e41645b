"""Benches: which step of which card is shown at which press."""

from __future__ import annotations

from typing import Any

import marshmallow as ma
from flask import Response, request

from flangebook.api.openapi import IF_MATCH, Blueprint
from flangebook.api.sending import sent, the_store
from flangebook.schemas import press_screens as schemas
from flangebook.shop import press_screens

blp = Blueprint(
    "press_screens",
    __name__,
    url_prefix="/api/v1",
    description="What the screens at the presses show.",
)
_PATH_NAME = [
    {
        "in": "path",
        "name": "name",
        "required": True,
        "schema": {"type": "string", "minLength": 1, "maxLength": schemas.MOST_NAME},
        "description": "What the bench is called.",
    }
]
_IF_SEEN = {
    **IF_MATCH,
    "required": False,
    "description": "ETag of the bench as it was seen: refused when it was moved since.",
}
_NAME = schemas.PressScreenName()


def _named(name: str) -> str:
    try:
        read: str = _NAME.deserialize(name)
    except ma.ValidationError as error:
        raise ma.ValidationError({"name": error.messages}) from None
    return read


@blp.route("/press-screens")
@blp.response(200, schemas.PressScreens)
def listed() -> Response:
    """All benches by name, and where each stands."""
    return sent(press_screens.listed(the_store()))


@blp.route("/press-screens/<name>", parameters=_PATH_NAME)
@blp.response(200, schemas.PressScreen)
@blp.alt_response(404, "NOT_FOUND")
def read(name: str) -> Response:
    """Where a bench stands.

    Ask every second or two, with If-None-Match: 304 while nothing was moved.
    """
    kept = press_screens.read(the_store(), _named(name))
    return sent(kept.body, etag=kept.etag)


@blp.route("/press-screens/<name>", methods=["PUT"], parameters=_PATH_NAME)
@blp.arguments(schemas.PressScreenSchema)
@blp.response(200, schemas.PressScreen)
@blp.alt_response(409, "CONFLICT")
@blp.alt_response(412, "PRECONDITION_FAILED")
@blp.doc(parameters=[_IF_SEEN])
def move(asked: dict[str, Any], name: str) -> Response:
    """Make a bench, or show another step there. The last one wins.

    ``code`` null and ``step`` 0 for an empty bench; one past the last step when the card is
    done. With If-Match two presses of "next" at one moment do not skip a step.
    """
    place = press_screens.ShownStep(asked["code"], asked["step"])
    seen = request.headers.get("If-Match", "").strip()
    kept = press_screens.move(the_store(), _named(name), place, by=asked["by"], if_match=seen)
    return sent(kept.body, etag=kept.etag)


@blp.route("/press-screens/<name>", methods=["DELETE"], parameters=_PATH_NAME)
@blp.response(204)
@blp.alt_response(404, "NOT_FOUND")
def remove(name: str) -> Response:
    """Take a bench out."""
    press_screens.remove(the_store(), _named(name))
    return Response(status=204)
