"""Press, punches, dies, holders, metals, and what a tool would look like."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import marshmallow as ma
from flask import Response, request

from flangebook.api.bodies import read_json, wanted_etag
from flangebook.api.openapi import IF_MATCH, Blueprint
from flangebook.api.sending import sent, the_store
from flangebook.planning.answers.answer import checks_json
from flangebook.planning.plan import find_metal
from flangebook.planning.results.strip_test import strip_test
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.planning.tools.named_tools import find_die, find_punch
from flangebook.schemas import answers
from flangebook.schemas.measured_press import GaugeFound, StripTest, StripTestSchema
from flangebook.schemas.shop import DOCUMENTS, OUTLINED
from flangebook.shop import documents
from flangebook.shop.crib import tooling
from flangebook.shop.store import Store
from flangebook.shop.zeros import with_zeros
from flangebook.use_cases import intake
from flangebook.use_cases.gauge_zero import gauge_answer
from flangebook.use_cases.tool_outlines import outlines_of, shown, tool_checks

blp = Blueprint("shop", __name__, url_prefix="/api/v1", description="What the shop has.")
_TITLES = {
    "press": "The press",
    "punches": "The punches",
    "dies": "The dies",
    "holders": "The holders",
    "metals": "The metals",
}


def _reader(name: documents.Name) -> Callable[[], Response]:
    def read() -> Response:
        if name == "metals":  # who looks for metals plans something next
            the_store().expect_work()
        return _sent(documents.read(the_store(), name))

    read.__doc__ = f"{_TITLES[name]}, with the ETag that a change has to name."
    documented: Callable[[], Response] = blp.response(200, answers.SHOP[name])(read)
    return documented


def _writer(name: documents.Name) -> Callable[[], Response]:
    def write(asked: dict[str, Any]) -> Response:
        value, etag = asked[name], wanted_etag()
        if name == "press" and value is not None:
            value = with_zeros(value, json.loads(documents.read(the_store(), name).body))
        value = intake.document(name, value)
        return _sent(documents.write(the_store(), name, value, by=asked["by"], if_match=etag))

    write.__doc__ = f"Keep {_TITLES[name].lower()} as sent, whole."
    made: Any = blp.arguments(DOCUMENTS[name])(write)
    made = blp.response(200, answers.SHOP[name])(made)
    for status in ("PRECONDITION_FAILED", "PRECONDITION_REQUIRED"):
        made = blp.alt_response(412 if "FAILED" in status else 428, status)(made)
    documented: Callable[[], Response] = blp.doc(parameters=[IF_MATCH])(made)
    return documented


def _sent(kept: documents.Document) -> Response:
    return sent(f'{{"{kept.name}":{shown(the_store(), kept)}}}', etag=kept.etag)


for _name in documents.NAMES:
    blp.add_url_rule(f"/{_name}", f"read_{_name}", _reader(_name), methods=["GET"])
    blp.add_url_rule(f"/{_name}", f"write_{_name}", _writer(_name), methods=["PUT"])


_OUTLINE_BODY = {
    "required": True,
    "content": {"application/json": {"schema": {"oneOf": list(OUTLINED.values())}}},
}


@blp.route("/outline", methods=["POST"])
@blp.response(200, answers.Outline)
@blp.alt_response(422, "UNPROCESSABLE_ENTITY")
@blp.doc(requestBody=_OUTLINE_BODY)
def outline() -> Response:
    """What a tool or a press looks like, while it is being typed."""
    body = read_json(request)
    kind = body.get("kind") if isinstance(body, dict) else None
    if not isinstance(kind, str) or kind not in OUTLINED:
        raise ma.ValidationError({"kind": [f"Give one of: {', '.join(OUTLINED)}."]})
    value = OUTLINED[kind]().load(body)
    found = outlines_of(kind, value)
    checks = tool_checks(kind, value, tooling(the_store()).press)
    assumed = {name: value[name] for name in value.get("assumed", ())}
    return sent({**found, "checks": checks_json(checks), "assumed_mm": assumed})


@blp.route("/press/strip-test", methods=["POST"])
@blp.arguments(StripTestSchema)
@blp.response(200, StripTest)
@blp.alt_response(422, "UNPROCESSABLE_ENTITY")
def strips(asked: dict[str, Any]) -> Response:
    """The press's deflection from three short bends along the bed; nothing is kept."""
    return sent(the_store().work(_deflection, asked))


def _deflection(store: Store, asked: dict[str, Any]) -> dict[str, Any]:
    shop = tooling(store)
    metal = find_metal(shop.metals, asked["metal"])
    sizes = (asked[name] for name in ("thickness_mm", "strip_length_mm", "included_angle_deg"))
    return strip_test(
        Wanted(metal, *sizes),
        find_die(shop.crib, asked["die"]),
        find_punch(shop.crib, asked["punch"]),
        Equipment(shop.press, shop.crib),
        asked["end_mm"],
        (asked["left_deg"], asked["middle_deg"], asked["right_deg"]),
    )


@blp.route("/press/gauge")
@blp.response(200, GaugeFound)
def gauge() -> Response:
    """What measured flanges say of the back gauge's zero and of the deductions; a proposal."""
    return sent(the_store().work(gauge_answer))
