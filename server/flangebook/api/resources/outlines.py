"""Outlines out of drawings."""

from __future__ import annotations

from typing import Any

from flask import Response, request

from flangebook.api.bodies import read_file
from flangebook.api.leaving import limits_of_request
from flangebook.api.openapi import BINARY, Blueprint
from flangebook.api.sending import sent, the_store
from flangebook.bending.geometry.dxf_lines import Unit
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.tools.outline_dxf import WITHIN_MM, Placing, Taken, outline_from_dxf
from flangebook.planning.deadline import PlanLimits
from flangebook.schemas.outlines import DxfOutline, DxfQuery
from flangebook.shop.store import Store

blp = Blueprint("outlines", __name__, url_prefix="/api/v1", description="Outlines of tools.")
KINDS = ("image/vnd.dxf", "application/dxf", "application/octet-stream")
_BODY = {"required": True, "content": {kind: {"schema": BINARY} for kind in KINDS}}


@blp.route("/outlines/dxf", methods=["POST"])
@blp.arguments(DxfQuery, location="query")
@blp.response(200, DxfOutline)
@blp.alt_response(413, "REQUEST_ENTITY_TOO_LARGE")
@blp.alt_response(415, "UNSUPPORTED_MEDIA_TYPE")
@blp.alt_response(422, "UNPROCESSABLE_ENTITY")
@blp.doc(requestBody=_BODY)
def from_dxf(asked: dict[str, Any]) -> Response:
    """The outline in a DXF drawing, its tip, V or seat placed at (0, 0)."""
    data = read_file(request, KINDS, "a DXF file")
    placing = Placing(
        asked["kind"],
        asked["origin"],
        asked["point"],
        int(asked["turn_deg"]),
        asked["mirror"] == "yes",
    )
    return sent(
        the_store().work(
            _read, data, placing, asked["units"], asked["layer"], limits=limits_of_request()
        )
    )


def _read(
    _store: Store,
    data: bytes,
    placing: Placing,
    units: Unit | None,
    layer: str | None,
    _limits: PlanLimits,
) -> dict[str, Any]:
    return _json(outline_from_dxf(data, placing, units, layer))


def _json(taken: Taken) -> dict[str, Any]:
    left, low, right, high = bounds(taken.ring)
    return {
        "points_mm": [[round(x, 4) + 0.0, round(y, 4) + 0.0] for x, y in taken.ring],
        "units": taken.drawing.unit,
        "units_asked": taken.drawing.asked,
        "rule": taken.words,
        "moved_mm": [round(c, 4) + 0.0 for c in taken.moved_mm],
        "width_mm": round(right - left, 4),
        "height_mm": round(high - low, 4),
        "within_mm": WITHIN_MM,
        "layers": list(taken.drawing.layers),
        "left_out": [{"kind": kind, "count": count} for kind, count in taken.drawing.left],
    }
