"""How things get into the shop: read, checked, planned; for requests and the demo shop alike."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import marshmallow as ma

from flangebook.schemas.cards import CardEditSchema, NewCardSchema, ResultSchema
from flangebook.schemas.part import PartSchema
from flangebook.schemas.places import within
from flangebook.schemas.runs import RunEntrySchema
from flangebook.schemas.shop import DOCUMENTS
from flangebook.shop import cards, documents
from flangebook.shop.store import Store
from flangebook.shop.zeros import with_zeros
from flangebook.use_cases import card_changes, result_entry
from flangebook.use_cases.tool_outlines import outlines_of

JsonDict = dict[str, Any]
_DRAWN = {"punches": "punch", "dies": "die", "holders": "holder", "press": "press"}


def document(name: documents.Name, value: Any) -> Any:
    """A document, checked, in the form it is kept in.

    Raises ValidationError, and InputError for outlines that cannot be.
    """
    found = DOCUMENTS[name]().load({name: value})[name]
    if found is None:
        return None
    if name == "press":
        _drawn(name, found, "press")
        return with_zeros(found, None)
    _unlike_codes(name, found)
    for number, one in enumerate(found):
        if name in _DRAWN:
            _drawn(name, one, f"{name}.{number}")
    return found


def part(value: Any) -> Any:
    """A part, checked.

    Raises ValidationError.
    """
    return PartSchema().load(value)


def run_entry(value: Any) -> Any:
    """An entry of a run, checked.

    Raises ValidationError.
    """
    return RunEntrySchema().load(value)


def card(store: Store, request: Mapping[str, Any]) -> cards.Content:
    """A card's content with its plan.

    Raises ValidationError, InputError, NotAPartError, MissingToolError.
    """
    return card_changes.new_content(store, NewCardSchema().load(request))


def edit(store: Store, code: str, request: Mapping[str, Any]) -> None:
    """Change a card.

    Raises ValidationError, ShopError, and what planning raises.
    """
    asked = CardEditSchema().load(request)
    content, etag = cards.content_of(store, code)
    card_changes.keep(store, code, asked, content, etag)


def result(
    store: Store, code: str, request: Mapping[str, Any]
) -> tuple[JsonDict, JsonDict, JsonDict | None]:
    """A result, the correction it leads to, and what it is evidence of.

    Raises ValidationError, UnknownError.
    """
    asked = ResultSchema().load(request)
    return result_entry.checked(store, code, asked, asked["revision"])


def _unlike_codes(name: str, tools: Sequence[Mapping[str, Any]]) -> None:
    seen: set[str] = set()
    for number, one in enumerate(tools):
        key = str(one["code"]).casefold()
        if key in seen:
            raise ma.ValidationError(
                {name: {number: {"code": [f"The code {one['code']} is there twice."]}}}
            )
        seen.add(key)
        for place, opening in enumerate(_openings(one)):
            key = str(opening["code"]).casefold()
            if key in seen:
                words = [f"The code {opening['code']} is there twice."]
                raise ma.ValidationError({name: {number: {"openings": {place: {"code": words}}}}})
            seen.add(key)


def _openings(tool: Mapping[str, Any]) -> Sequence[Mapping[str, Any]]:
    return tool["openings"] if tool.get("shape") == "multi_v" else ()


def _drawn(name: str, value: Mapping[str, Any], place: str) -> None:
    within(place, lambda: outlines_of(_DRAWN[name], value))
