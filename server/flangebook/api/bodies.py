"""Reading a request's JSON strictly, and its parameters."""

from __future__ import annotations

import json
import math
from collections.abc import Collection
from typing import Any, NoReturn

import marshmallow as ma
from flask import Flask, Request, request
from webargs.flaskparser import FlaskParser

from flangebook.api.problems import ProblemError

MOST_BYTES = 2_000_000
MOST_IMPORTED = 60_000_000
IMPORT = "/api/v1/import"


def read_json(taken: Request) -> Any:
    """The body as JSON.

    Refuses another content type (415), a body over the bound (413), and (400) what is not
    JSON: NaN and Infinity, numbers that no machine holds, a name twice in one object,
    nesting without end, texts that are not Unicode.
    """
    if taken.mimetype != "application/json":
        raise ProblemError(415, "Send JSON, with the content type application/json.")
    text = _body(taken)
    try:
        return json.loads(
            text.decode("utf-8"),
            parse_constant=_not_a_number,
            parse_float=_finite,
            object_pairs_hook=_once,
        )
    except UnicodeDecodeError:
        raise ProblemError(400, "The body is not UTF-8.") from None
    except RecursionError:
        raise ProblemError(400, "The body is nested too deep.") from None
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise ProblemError(400, f"The body is not JSON: {error.msg} at {where}.") from None
    except ValueError as error:  # an integer of thousands of digits
        raise ProblemError(400, f"The body is not JSON that can be used: {error}.") from None


def read_file(taken: Request, kinds: Collection[str], called: str, most: int = MOST_BYTES) -> bytes:
    """The body as it is. most: bytes.

    Refuses another content type (415), a body over the bound (413).
    """
    if taken.mimetype not in kinds:
        raise ProblemError(415, f"Send {called}, with the content type {' or '.join(kinds)}.")
    return _body(taken, most)


def register(app: Flask) -> None:
    """Refuse a body over the bound at any address, before anything reads it."""

    @app.before_request
    def _bounded() -> None:
        most = most_bytes(request.path)
        if (request.content_length or 0) > most:
            _too_large(most)


def most_bytes(path: str) -> int:
    """The longest body that is taken at an address."""
    return MOST_IMPORTED if path == IMPORT else MOST_BYTES


def _body(taken: Request, most: int = MOST_BYTES) -> bytes:
    try:
        text: bytes = taken.stream.read(most + 1)  # it may come without a length
    except (OSError, ValueError):
        raise ProblemError(400, "The body broke off or is not in order.") from None
    if len(text) > most:
        _too_large(most)
    return text


def _too_large(most: int) -> NoReturn:
    longer = " `flangebook import` takes longer ones." if most == MOST_IMPORTED else ""
    raise ProblemError(413, f"The body is over {most // 1_000_000} MB.{longer}")


def _not_a_number(name: str) -> NoReturn:
    raise ProblemError(400, f"The body is not JSON: {name} is not a number.")


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise ProblemError(400, f"The number {text[:40]} is too large.")
    return value


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        raise ProblemError(400, "The body has the same name twice in one object.")
    return found


class Arguments(FlaskParser):
    """webargs with our JSON and our errors; what no schema names is refused everywhere."""

    DEFAULT_UNKNOWN_BY_LOCATION = {"json": ma.RAISE, "query": ma.RAISE}  # noqa: RUF012

    def load_json(self, req: Request, schema: ma.Schema) -> Any:
        """The body, read strictly."""
        return read_json(req)

    def handle_error(self, error: ma.ValidationError, *args: Any, **kwargs: Any) -> NoReturn:
        """Say no, without the location that webargs puts around the messages."""
        inner = error.messages
        if isinstance(inner, dict) and len(inner) == 1:
            inner = next(iter(inner.values()))
        raise ma.ValidationError(inner) from None


def wanted_etag() -> str:
    """The If-Match header; 428 without one."""
    given = request.headers.get("If-Match", "").strip()
    if not given:
        raise ProblemError(
            428, "Send If-Match with the ETag of what you changed, so that no one's work is lost."
        )
    return given
