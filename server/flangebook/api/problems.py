"""Every error as ``application/problem+json`` (RFC 9457), mapped once.

``type`` is "about:blank" and ``title`` the status in words, as the RFC asks for then;
``detail`` says what was wrong and what would be right; ``errors`` does so field by field,
dotted from the outside in, lists counted from 0.
"""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterable, Iterator, Mapping
from http import HTTPStatus
from typing import Any

import marshmallow as ma
from flask import Flask, Response
from sqlalchemy.exc import DatabaseError, OperationalError
from werkzeug.exceptions import HTTPException, MethodNotAllowed, RequestEntityTooLarge

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import FlangebookError, OutlineError
from flangebook.planning.answers.answer import sentence_json
from flangebook.shop.errors import (
    CopyError,
    FullError,
    ImportRefusedError,
    InUseError,
    ShopError,
    StaleError,
    TakenError,
    UnknownError,
)
from flangebook.shop.storage.writing import json_text
from flangebook.shop.work import BusyError, NotWantedError, WorkError

CONTENT_TYPE = "application/problem+json"
MOST_ERRORS = 50
PATIENCE_S = 10
"""When to ask again where plans wait already: half of the time that one may take."""
_log = logging.getLogger(__name__)
_DAMAGED = (
    "The shop's file is damaged. Start the server again: it says which copy brings the shop back."
)
# What SQLite says when the system takes no more: full, over a quota, a limit, or failing.
UNWRITTEN = ("SQLITE_FULL", "SQLITE_IOERR_WRITE", "SQLITE_IOERR_FSYNC", "SQLITE_IOERR_TRUNCATE",
             "SQLITE_IOERR_SHMSIZE")  # fmt: skip
Errors = Mapping[str, list[str]]

# marshmallow's own words, in ours.
_WORDS = {
    "Missing data for required field.": "This is needed.",
    "Field may not be null.": "This can't be null.",
    "Unknown field.": "There is no such field.",
    "Invalid input type.": "This is not an object.",
    "Invalid type.": "This is not an object.",
}
DETAILS = {
    404: "There is nothing at this address.",
    405: "This address does not take that method.",
    413: "The body is too large.",
    507: "The disk of the shop's server is full, or cannot be written. Nothing of this was kept; "
    "what was kept before is safe. Make room on it and try again.",
    500: "Something went wrong in the server. What was kept before is safe.",
}


class ProblemError(Exception):
    """An answer that says no."""

    def __init__(
        self,
        status: int,
        detail: str,
        errors: Errors | None = None,
        headers: Mapping[str, str] | None = None,
    ) -> None:
        super().__init__(status, detail)
        self.status = status
        self.detail = detail
        self.errors = errors
        self.headers = headers or {}


def answer(
    status: int,
    detail: str,
    errors: Errors | None = None,
    headers: Mapping[str, str] | None = None,
    outline: Mapping[str, Any] | None = None,
    sentence: Sentence | None = None,
) -> Response:
    """The problem as a response; ``outline`` draws what is wrong with one, ``sentence`` says it
    with its numbers apart."""
    body: dict[str, Any] = {
        "type": "about:blank",
        "title": HTTPStatus(status).phrase,
        "status": status,
        "detail": detail,
    }
    if errors:
        body["errors"] = errors
    if outline:
        body["outline"] = outline
    if sentence and sentence.numbers:
        body["said"] = sentence_json(sentence)
    text = json_text(body).encode("utf-8", "replace")
    made = Response(text, status, content_type=CONTENT_TYPE)
    made.headers["Cache-Control"] = "no-store"
    made.headers.update(headers or {})
    return made


def register(app: Flask) -> None:
    """Answer every exception of the app with a problem."""
    app.register_error_handler(ProblemError, _problem)
    app.register_error_handler(ma.ValidationError, _invalid)
    app.register_error_handler(FlangebookError, _unusable)
    app.register_error_handler(ShopError, _refused)
    app.register_error_handler(WorkError, _not_made)
    app.register_error_handler(NotWantedError, _not_wanted)
    app.register_error_handler(OperationalError, _busy)
    app.register_error_handler(DatabaseError, _damaged)
    app.register_error_handler(HTTPException, http_problem)
    app.register_error_handler(Exception, _broken)


def http_problem(error: HTTPException) -> Response:
    """What the framework refuses, with the headers that belong to it."""
    status = error.code or 500
    headers = {}
    if isinstance(error, MethodNotAllowed) and error.valid_methods:
        headers["Allow"] = ", ".join(sorted(error.valid_methods))
    if isinstance(error, RequestEntityTooLarge):
        headers["Connection"] = "close"
    detail = DETAILS.get(status) or error.description or HTTPStatus(status).phrase
    return answer(status, detail, headers=headers)


def said(error: Exception) -> Response:
    """The problem that an exception is answered with, where no request waits for it any more."""
    answers: tuple[tuple[type[Exception], Callable[[Any], Response]], ...] = (
        (ProblemError, _problem),
        (ma.ValidationError, _invalid),
        (FlangebookError, _unusable),
        (ShopError, _refused),
        (WorkError, _not_made),
        (OperationalError, _busy),
        (DatabaseError, _damaged),
    )
    return next((make for kind, make in answers if isinstance(error, kind)), _broken)(error)


def _problem(error: ProblemError) -> Response:
    return answer(error.status, error.detail, error.errors, error.headers)


def _invalid(error: ma.ValidationError) -> Response:
    errors: dict[str, list[str]] = {}
    for place, words in _flat(error.messages):
        if len(errors) >= MOST_ERRORS:
            errors["..."] = ["There are more."]
            break
        errors.setdefault(place, []).append(_WORDS.get(words, words))
    first = next(iter(errors))
    where = "" if first == "_schema" else f"{first}: "
    return answer(422, f"{where}{errors[first][0]}", errors)


def _flat(messages: Any, place: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(messages, Mapping):
        for key, inner in messages.items():
            own = key == "_schema" and place
            yield from _flat(inner, place if own else f"{place}.{key}".lstrip("."))
    elif isinstance(messages, list):
        for inner in messages:
            yield from _flat(inner, place)
    else:
        yield place or "_schema", str(messages)


def _unusable(error: FlangebookError) -> Response:
    words = f"{error.what} {error.right}".strip()
    errors = {error.where: [words]} if error.where else None
    drawn = _outline(error) if isinstance(error, OutlineError) else None
    return answer(422, str(error), errors, outline=drawn, sentence=error.said)


def _outline(error: OutlineError) -> dict[str, Any]:
    def rounded(points: Iterable[tuple[float, float]]) -> list[list[float]]:
        return [[round(x, 3) + 0.0, round(y, 3) + 0.0] for x, y in points]

    return {
        "code": error.code,
        "lines_mm": [rounded(line) for line in error.lines_mm],
        "edges": list(error.edges),
        "marks_mm": rounded(error.marks_mm),
        "layers": list(error.layers),
    }


def _refused(error: ShopError) -> Response:
    if isinstance(error, StaleError):
        return answer(412, str(error), headers={"ETag": error.etag} if error.etag else None)
    if isinstance(error, ImportRefusedError):
        return answer(422, str(error), error.wrong)
    known: dict[type[ShopError], int] = {
        UnknownError: 404,
        TakenError: 409,
        FullError: 409,
        InUseError: 409,
        CopyError: 507,
    }
    return answer(known.get(type(error), 500), str(error))


def _not_made(error: WorkError) -> Response:
    _log.warning("A calculation was not made: %s", error)
    after = PATIENCE_S if isinstance(error, BusyError) else 1
    return answer(503, str(error), headers={"Retry-After": str(after)})


def _not_wanted(_error: NotWantedError) -> Response:
    return answer(503, "The connection was closed before the answer was there.")


def _busy(error: OperationalError) -> Response:
    name = getattr(error.orig, "sqlite_errorname", "")
    if name in UNWRITTEN:
        _log.error("The shop's disk took no more: %s", error.orig)
        return answer(507, DETAILS[507])
    if "locked" not in str(error.orig):
        return _broken(error)
    return answer(503, "The shop is busy. Try again.", headers={"Retry-After": "1"})


def _damaged(error: DatabaseError) -> Response:
    if getattr(error.orig, "sqlite_errorname", "") not in ("SQLITE_CORRUPT", "SQLITE_NOTADB"):
        return _broken(error)
    _log.error("The shop's file is damaged: %s", error.orig)
    return answer(500, _DAMAGED)


def _broken(error: Exception) -> Response:
    _log.error("A request failed.", exc_info=error)
    return answer(500, DETAILS[500])
