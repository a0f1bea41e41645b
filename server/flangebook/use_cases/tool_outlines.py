"""Outlines of the shop's tools, worked out from what is kept."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any

import marshmallow as ma

from flangebook.bending.checks import Check
from flangebook.bending.errors import FlangebookError
from flangebook.bending.geometry.ring import Ring
from flangebook.bending.tools import outline, outline_checks
from flangebook.bending.tools.tooling import Press
from flangebook.schemas.shop import DieSchema, HolderSchema, PressSchema, PunchSchema
from flangebook.shop import crib
from flangebook.shop.documents import Document
from flangebook.shop.storage.writing import json_text
from flangebook.shop.store import Store

JsonDict = dict[str, Any]
_ONE = {"punches": "punch", "dies": "die", "holders": "holder", "press": "press"}
_SCHEMAS = {"punch": PunchSchema, "die": DieSchema, "holder": HolderSchema, "press": PressSchema}


def outlines_of(kind: str, kept: Mapping[str, Any]) -> JsonDict:
    """``outline_mm`` of a tool, or ``ram`` and ``bed`` of a press; the bed with what stands on it.

    Raises InputError when sizes do not fit together or points cross.
    """
    if kind == "press":
        press = crib.press_from(kept)
        return {"ram": _ring(outline.ram_outline(press)), "bed": _ring(outline.bed_outline(press))}
    ring = {
        "punch": lambda: outline.punch_outline(crib.punch_from(kept)),
        "die": lambda: outline.die_outline(crib.dies_from(kept)[kept.get("up", 1) - 1]),
        "holder": lambda: outline.holder_outline(crib.holder_from(kept)),
    }[kind]()
    return {"outline_mm": _ring(ring)}


def tool_checks(kind: str, kept: Mapping[str, Any], press: Press | None = None) -> list[Check]:
    """What is missing on a tool or a press before its loads can be checked, and whether its
    outline stands where it is looked for and goes into the press."""
    found = _about_outline(kind, kept, press)
    rating = "force_per_m_limit_kn_per_m" if kind == "press" else "rating_kn_per_m"
    if kept.get(rating) is None:
        found.append(
            Check(
                "unknown",
                f"{kind}-rating-unknown",
                f"No force per metre is given for this {kind}: its load cannot be checked.",
                "Read it on the plate or in the maker's list; leave it empty if it is not known.",
            )
        )
    if "segments_mm" in kept and not kept["segments_mm"]:
        found.append(
            Check(
                "unknown",
                f"{kind}-no-segments",
                f"No lengths of this {kind} are given: counted with one piece as long as needed.",
                "Enter the pieces the shop owns.",
            )
        )
    return found


def _about_outline(kind: str, kept: Mapping[str, Any], press: Press | None) -> list[Check]:
    if kind == "press":
        return list(outline_checks.press_checks(crib.press_from(kept)))
    if kind == "punch":
        punch = crib.punch_from(kept)
        found, tall = outline_checks.punch_checks(punch), _tall(punch, press)
    elif kind == "die":
        die = crib.die_from(kept)
        found, tall = outline_checks.die_checks(die), _tall(die, press)
    else:
        holder = crib.holder_from(kept)
        found, tall = outline_checks.holder_checks(holder), _tall(holder, press)
    return [*tall, *found]


def _tall(tool: outline_checks.Tool, press: Press | None) -> list[Check]:
    check = outline_checks.taller_than_the_press(tool, press) if press else None
    return [check] if check else []


def shown(store: Store, document: Document) -> str:
    """A document as the API gives it: with its outlines."""
    if document.name not in _ONE or document.version == 0:
        return document.body
    name = f"shown {document.name} {document.version}"
    return store.cache.get_or_compute(name, lambda: _shown(document), len)


def _shown(document: Document) -> str:
    value = json.loads(document.body)
    kind = _ONE[document.name]
    if isinstance(value, list):
        return json_text([_with_outline(kind, one) for one in value])
    return json_text(_with_outline(kind, value))


def _with_outline(kind: str, kept: JsonDict | None) -> JsonDict | None:
    if kept is None:
        return None
    kept = _filled(kind, kept)
    try:
        found = outlines_of(kind, kept)
    except FlangebookError:  # kept by an older release that drew it otherwise
        found = {}
    return {**kept, "outlines_mm": found} if kind == "press" else {**kept, **found}


def _filled(kind: str, kept: JsonDict) -> JsonDict:
    """With the usual values of fields that there were none of when it was kept."""
    usual = {
        name: field.load_default() if callable(field.load_default) else field.load_default
        for name, field in _SCHEMAS[kind]().fields.items()
        if name not in kept and field.load_default is not ma.missing
    }
    if "shape" in usual and kept.get("points_mm"):
        usual["shape"] = "points"
    return {**kept, **usual}


def _ring(points: Iterable[tuple[float, float]] | Ring) -> list[list[float]]:
    return [[round(x, 3) + 0.0, round(y, 3) + 0.0] for x, y in points]
