"""Outlines of the shop's tools, worked out from what is kept."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any

from flangebook.bending import outline
from flangebook.bending.checks import Check
from flangebook.bending.errors import FlangebookError
from flangebook.bending.tooling import Ring
from flangebook.shop import crib
from flangebook.shop.documents import Document
from flangebook.shop.store import Store
from flangebook.shop.writing import json_text

JsonDict = dict[str, Any]
_ONE = {"punches": "punch", "dies": "die", "holders": "holder", "press": "press"}


def outlines_of(kind: str, kept: Mapping[str, Any]) -> JsonDict:
    """``outline_mm`` of a tool, or ``ram`` and ``bed`` of a press.

    Raises InputError when sizes do not fit together or points cross.
    """
    if kind == "press":
        press = crib.press_from(kept)
        return {"ram": _ring(outline.ram_outline(press)), "bed": _ring(outline.bed_outline(press))}
    ring = {
        "punch": lambda: outline.punch_outline(crib.punch_from(kept)),
        "die": lambda: outline.die_outline(crib.die_from(kept)),
        "holder": lambda: outline.holder_outline(crib.holder_from(kept)),
    }[kind]()
    return {"outline_mm": _ring(ring)}


def tool_checks(kind: str, kept: Mapping[str, Any]) -> list[Check]:
    """What is missing on a tool or a press before its loads can be checked."""
    found = []
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
                "caution",
                f"{kind}-no-segments",
                f"No lengths of this {kind} are given: it cannot be made up to a bend length.",
                "Enter the pieces the shop owns.",
            )
        )
    return found


def shown(store: Store, document: Document) -> str:
    """A document as the API gives it: with its outlines."""
    if document.name not in _ONE or document.version == 0:
        return document.body
    name = f"shown {document.name} {document.version}"
    return store.memory.hold(name, lambda: _shown(document), len)


def _shown(document: Document) -> str:
    value = json.loads(document.body)
    kind = _ONE[document.name]
    if isinstance(value, list):
        return json_text([_with_outline(kind, one) for one in value])
    return json_text(_with_outline(kind, value))


def _with_outline(kind: str, kept: JsonDict | None) -> JsonDict | None:
    if kept is None:
        return None
    try:
        found = outlines_of(kind, kept)
    except FlangebookError:  # kept by an older release that drew it otherwise
        found = {}
    return {**kept, "outlines_mm": found} if kind == "press" else {**kept, **found}


def _ring(points: Iterable[tuple[float, float]] | Ring) -> list[list[float]]:
    return [[round(x, 3) + 0.0, round(y, 3) + 0.0] for x, y in points]
