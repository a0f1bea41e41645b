"""OpenAPI from the schemas: how our fields and errors read in it."""

from __future__ import annotations

import threading
from collections.abc import Callable
from http import HTTPStatus
from typing import Any, TypeVar

import flask
import flask_smorest
import marshmallow as ma
from apispec.ext.marshmallow import MarshmallowPlugin
from flask import Flask, Response
from werkzeug.exceptions import HTTPException

from flangebook import __version__
from flangebook.api import problems
from flangebook.api.bodies import Arguments
from flangebook.schemas import fields
from flangebook.schemas.answers import Said, point, ring

VERSION = "3.1.0"
BINARY = {"type": "string", "format": "binary"}
IF_MATCH = {
    "in": "header",
    "name": "If-Match",
    "required": True,
    "schema": {"type": "string"},
    "description": "ETag of what the change was made from.",
}


View = TypeVar("View", bound=Callable[..., Response])


class WrongOutline(ma.Schema):
    """What is wrong with an outline, to be drawn: lines as understood, edges at fault (numbers
    from 1, of the first line), places, and a drawing's layers."""

    code = ma.fields.String(required=True)
    lines_mm = ma.fields.List(ring(), required=True)
    edges = ma.fields.List(ma.fields.Integer(), required=True)
    marks_mm = ma.fields.List(point(), required=True)
    layers = ma.fields.List(ma.fields.String(), required=True)


class Problem(ma.Schema):
    """An error, as RFC 9457 has it."""

    type = ma.fields.String(required=True)
    title = ma.fields.String(required=True)
    status = ma.fields.Integer(required=True)
    detail = ma.fields.String(required=True)
    errors = ma.fields.Dict(
        keys=ma.fields.String(),
        values=ma.fields.List(ma.fields.String()),
        metadata={"description": "What is wrong, field by field; lists are counted from 0."},
    )
    said = ma.fields.Nested(Said, metadata={"description": "The words, their numbers apart."})
    outline = ma.fields.Nested(WrongOutline)


class Blueprint(flask_smorest.Blueprint):  # type: ignore[misc]
    """A group of addresses; bodies are read strictly."""

    ARGUMENTS_PARSER = Arguments()

    # Typed, so that what is decorated keeps its type.

    def route(self, rule: str, **options: Any) -> Callable[[View], View]:
        """Register an address in app and document."""
        made: Callable[[View], View] = super().route(rule, **options)
        return made

    def arguments(self, schema: type[ma.Schema], **options: Any) -> Callable[[View], View]:
        """Read body or query by a schema, as the first argument."""
        # One instance for all requests: making it takes longer than reading most bodies.
        made: Callable[[View], View] = super().arguments(schema(), **options)
        return made

    def response(self, status: int, schema: Any = None, **options: Any) -> Callable[[View], View]:
        """Document the answer."""
        made: Callable[[View], View] = super().response(status, schema, **options)
        return made

    def alt_response(self, status: int, response: str, **options: Any) -> Callable[[View], View]:
        """Document another answer."""
        made: Callable[[View], View] = super().alt_response(status, response, **options)
        return made

    def doc(self, **described: Any) -> Callable[[View], View]:
        """Document something by hand."""
        made: Callable[[View], View] = super().doc(**described)
        return made


class Api(flask_smorest.Api):  # type: ignore[misc]
    """flask-smorest's, with our errors, and a document that is written when it is asked for:
    writing it takes most of the time that an app takes to make."""

    ERROR_SCHEMA = Problem

    def __init__(self, **options: Any) -> None:
        super().__init__(**options)
        self._unwritten: list[Blueprint] = []
        self._writing = threading.Lock()

    def register_blueprint(self, blp: Blueprint) -> None:
        """Register the addresses now, their documentation later."""
        self._app.extensions["flask-smorest"]["blp_name_to_api"][blp.name] = self
        self._app.register_blueprint(blp)
        self._unwritten.append(blp)

    def handle_http_exception(self, error: HTTPException) -> Response:
        """Keep the headers that belong to an error, Allow above all."""
        return problems.http_problem(error)

    def _register_responses(self) -> None:
        for status in HTTPStatus:
            described: dict[str, Any] = {"description": status.phrase}
            if status >= 400:
                described["content"] = {problems.CONTENT_TYPE: {"schema": Problem}}
            self.spec.components.response(status.name, described, lazy=True)
        default = {
            "description": "What went wrong, and what would be right.",
            "content": {problems.CONTENT_TYPE: {"schema": Problem}},
        }
        self.spec.components.response(self.DEFAULT_ERROR_RESPONSE_NAME, default, lazy=True)

    def _write(self) -> None:
        with self._writing:
            while self._unwritten:
                blp = self._unwritten.pop(0)
                blp.register_views_in_doc(
                    self, self._app, self.spec, name=blp.name, parameters=None
                )
                self.spec.tag({"name": blp.name, "description": blp.description})

    def _openapi_json(self) -> Response:
        self._write()
        made = Response(flask.json.dumps(self.spec.to_dict()), content_type="application/json")
        made.headers["Cache-Control"] = "no-cache"
        return made


def make_api(app: Flask) -> Api:
    """The API of an app, before its addresses are registered."""
    app.config.update(
        API_TITLE="Flangebook",
        API_VERSION=__version__,
        OPENAPI_VERSION=VERSION,
        OPENAPI_URL_PREFIX="/api",
        OPENAPI_JSON_PATH="openapi.json",
        API_SPEC_OPTIONS={
            "info": {
                "description": "Set-ups for the press brake. Everything is in mm, kN, MPa, "
                "degrees and kg, with the unit at the end of a field's name; quantities may "
                "also be given as texts with a unit. Nothing here replaces the press's and the "
                "tools' plates and manuals, local codes or training."
            }
        },
    )
    plugin = MarshmallowPlugin(schema_name_resolver=_schema_name)
    api = Api(spec_kwargs={"marshmallow_plugin": plugin})
    api.init_app(app)
    api.ma_plugin.converter.add_attribute_function(_described)
    return api


def _schema_name(schema: Any) -> str:
    kind = schema if isinstance(schema, type) else type(schema)
    name = kind.__name__.lstrip("_")
    return f"{name.removesuffix('Schema')}Input" if name.endswith("Schema") else name


def _described(_converter: Any, field: ma.fields.Field[Any], **_: Any) -> dict[str, Any]:
    """What our own fields take."""
    for kind, describe in _DESCRIBERS.items():
        if isinstance(field, kind):
            return describe(field)
    return {}


def _many(field: fields.Many) -> dict[str, Any]:
    return {"minItems": field.least, "maxItems": field.most}


def _quantity(field: fields.Quantity) -> dict[str, Any]:
    number = {"type": "number", "minimum": field.low, "maximum": field.high}
    unit = field.kind.unit or "a plain number"
    text = {"type": "string", "maxLength": 40, "description": f"With a unit, else {unit}."}
    return {"anyOf": [number, text, *([{"type": "null"}] if field.allow_none else [])]}


_FORMATS: dict[type, dict[str, Any]] = {
    fields.ToolCode: {"pattern": fields.TOOL_CODE},
    fields.DeviceId: {"format": "uuid"},
    fields.Moment: {"format": "date-time"},
    fields.CardCode: {"description": "Seven characters, the last a check character."},
}


def _text(field: fields.Text) -> dict[str, Any]:
    described = {"maxLength": field.most, **_FORMATS.get(type(field), {})}
    if field.least:
        described["minLength"] = field.least
    return described


_DESCRIBERS: dict[type, Callable[[Any], dict[str, Any]]] = {
    fields.Quantity: _quantity,
    fields.Many: _many,
    fields.Text: _text,
}
