"""Addresses and fields by the names of 0.3, for apps of that time.

A phone that was off for weeks may still hold such an app, with results in its queue, and a display
may still ask for its bench. What they ask at the old addresses is answered as it was then; nothing
else has the old names. Taken until 0.6; the address of a page (``/bench``) stands in the app.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from flask import Flask, Response, request

from flangebook.shop.storage.writing import json_text

if TYPE_CHECKING:
    from _typeshed.wsgi import StartResponse, WSGIApplication, WSGIEnvironment

_ASKED = "flangebook.names_of_0_3"  # in the environ: fields of the answer, new name by old
_OLD: tuple[tuple[re.Pattern[str], str, Mapping[str, str]], ...] = (
    (
        re.compile(r"(/api/v1/cards/[^/]+)/trials"),
        r"\1/results",
        {"results": "trials", "result": "trial"},
    ),
    (re.compile(r"(/api/v1)/benches"), r"\1/press-screens", {"press_screens": "benches"}),
    (re.compile(r"(/api/v1)/benches(/.*)"), r"\1/press-screens\2", {}),
    (re.compile(r"(/api/v1)/copies"), r"\1/backups", {"backups": "copies"}),
)


def register(app: Flask) -> None:
    """Take the old addresses for the new ones, and answer there with the old names."""
    app.wsgi_app = _at_new_address(app.wsgi_app)  # type: ignore[method-assign, assignment]

    @app.after_request
    def _named(response: Response) -> Response:
        names: Mapping[str, str] = request.environ.get(_ASKED, {})
        if names and response.status_code in (200, 201) and response.is_json:
            said = json.loads(response.get_data())
            response.set_data(json_text({names.get(name, name): said[name] for name in said}))
        return response


def new_address(path: str) -> tuple[str, Mapping[str, str]]:
    """The address of today for one of 0.3, and the old names of what is answered.

    >>> new_address("/api/v1/cards/SHE7FA1/trials")[0]
    '/api/v1/cards/SHE7FA1/results'
    >>> new_address("/api/v1/cards/SHE7FA1")
    ('/api/v1/cards/SHE7FA1', {})
    """
    for old, new, names in _OLD:
        if old.fullmatch(path):
            return old.sub(new, path), names
    return path, {}


def _at_new_address(app: WSGIApplication) -> WSGIApplication:
    def taken(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        environ["PATH_INFO"], environ[_ASKED] = new_address(environ["PATH_INFO"])
        return app(environ, start)

    return taken
