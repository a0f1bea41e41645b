"""Fill an empty shop: the invented demo shop, or just the starter metals."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any, Protocol

from flangebook.labels.codes import with_check
from flangebook.shop import cards, documents, results, revisions
from flangebook.shop.storage.database import reading
from flangebook.shop.store import Store, last_change

JsonDict = Mapping[str, Any]
STARTER_METALS = Path(__file__).parent / "starter_metals.json"
_AUTHOR = "demo shop"


class Door(Protocol):
    """How things get into the shop: the same checks as for a request over the network."""

    def document(self, name: documents.Name, value: Any) -> Any:
        """The document, checked, in the form it is kept in."""

    def card(self, store: Store, request: JsonDict) -> cards.Content:
        """The card's content with its plan, from ``{"part", "note"}``."""

    def trial(
        self, store: Store, code: str, request: JsonDict
    ) -> tuple[dict[str, Any], dict[str, Any] | None, dict[str, Any] | None]:
        """The trial, checked, the correction it leads to, and what it is evidence of."""


def is_empty(store: Store) -> bool:
    """Whether nothing was ever written to the shop."""
    with reading(store.engine) as connection:
        return last_change(connection) == 0


def load_starter_metals(store: Store, door: Door) -> None:
    """Give an empty shop its first metals."""
    value = json.loads(STARTER_METALS.read_text("utf-8"))["metals"]
    documents.write(store, "metals", door.document("metals", value), if_match="*")


def load(store: Store, folder: Path, door: Door) -> list[str]:
    """Load the shop kept as JSON files in ``folder``; the codes of its cards.

    The folder holds press.json, punches.json, dies.json, holders.json, metals.json, each an
    object with the document under its name, and parts.json: ``{"cards": [{"body": the first
    six characters of its code, "part": a plan request, "note", "by", "trials"}]}``; a trial
    names its bend, its step follows from the order planned. Loading twice is harmless.
    """
    for name in documents.NAMES:
        value = _read(folder / f"{name}.json")[name]
        documents.write(store, name, door.document(name, value), by=_AUTHOR, if_match="*")
    return [_load_card(store, one, door) for one in _read(folder / "parts.json")["cards"]]


def _read(path: Path) -> dict[str, Any]:
    value: dict[str, Any] = json.loads(path.read_text("utf-8"))
    return value


def _load_card(store: Store, request: JsonDict, door: Door) -> str:
    code = with_check(request["body"])
    asked = {"part": request["part"], "note": request.get("note", "")}
    author = revisions.Author(by=request.get("by", _AUTHOR), reason="demo shop")
    card = door.card(store, asked)
    revisions.create(store, card, author, code=code, asked=asked)
    plan = json.loads(card.plan) if isinstance(card.plan, str) else card.plan
    step_of = {step["bend"]: step["number"] for step in plan["steps"]}
    for one in request.get("trials", ()):
        trial = {**one, "step": step_of[one["bend"]]}
        results.add(store, code, *door.trial(store, code, trial))
    return code
