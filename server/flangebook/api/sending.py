"""Answers: JSON that is text already, ETags, drawings and files."""

from __future__ import annotations

import gzip
from collections.abc import Mapping
from typing import Any

from flask import Response, current_app, request

from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store

_WORTH_COMPRESSING = 20_000


def the_store() -> Store:
    """The shop this app serves."""
    store: Store = current_app.extensions["flangebook.store"]
    return store


def sent(
    body: str | bytes | Mapping[str, Any],
    status: int = 200,
    *,
    etag: str = "",
    headers: Mapping[str, str] | None = None,
) -> Response:
    """JSON, from text as it is kept or from an object; 304 where the asker has it already."""
    text = body if isinstance(body, str | bytes) else json_text(body)
    made = Response(text, status, content_type="application/json")
    made.headers["Cache-Control"] = "no-cache"
    if headers:
        made.headers.update(headers)
    if etag:
        made.headers["ETag"] = etag
        if request.method == "GET" and "If-None-Match" in request.headers:
            made.make_conditional(request)
    return made


def sent_compressed(body: str) -> Response:
    """A long JSON text, compressed for askers that can read it so."""
    text = body.encode()
    if len(text) < _WORTH_COMPRESSING or not request.accept_encodings["gzip"]:
        return sent(body)
    made = sent("")
    made.set_data(gzip.compress(text, 5))
    made.headers["Content-Encoding"] = "gzip"
    made.headers["Vary"] = "Accept-Encoding"
    return made


def file(body: str | bytes, content_type: str, name: str = "", *, etag: str = "") -> Response:
    """A drawing or a file. name: to save it under; empty to show it."""
    made = Response(body, content_type=content_type)
    made.headers["Cache-Control"] = "no-cache"
    if name:
        made.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    if etag:
        made.headers["ETag"] = etag
        made.make_conditional(request)
    return made
