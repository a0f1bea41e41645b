"""Fill an empty shop: the invented demo shop, or just the starter metals."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any, Literal, Protocol

from flangebook.labels.codes import with_check
from flangebook.shop import cards, documents, results, revisions
from flangebook.shop.storage import writing
from flangebook.shop.storage.database import reading
from flangebook.shop.store import Store, last_change

JsonDict = Mapping[str, Any]
STARTER_METALS = Path(__file__).parent / "starter_metals.json"
_AUTHOR = "demo shop"
_BEFORE_THE_FIRST_CARD = timedelta(days=1)


class Validator(Protocol):
    """How things get into the shop: the same checks as for a request over the network."""

    def document(self, name: documents.Name, value: Any) -> Any:
        """The document, checked, in the form it is kept in."""

    def card(self, store: Store, request: JsonDict) -> cards.Content:
        """The card's content with its plan, from ``{"part", "note"}``."""

    def edit(self, store: Store, code: str, request: JsonDict) -> None:
        """Change a card as a request for it does."""

    def result(
        self, store: Store, code: str, request: JsonDict
    ) -> tuple[dict[str, Any], dict[str, Any] | None, dict[str, Any] | None]:
        """The result, checked, the correction it leads to, and what it is evidence of."""


def is_empty(store: Store) -> bool:
    """Whether nothing was ever written to the shop."""
    with reading(store.engine) as connection:
        return last_change(connection) == 0


def load_starter_metals(store: Store, validator: Validator) -> None:
    """Give an empty shop its first metals."""
    value = json.loads(STARTER_METALS.read_text("utf-8"))["metals"]
    documents.write(store, "metals", validator.document("metals", value), if_match="*")


def load(store: Store, folder: Path, validator: Validator) -> list[str]:
    """Load the shop kept as JSON files in ``folder``; the codes of its cards.

    The folder holds press.json, punches.json, dies.json, holders.json, metals.json, each an
    object with the document under its name, and parts.json: ``{"cards": [{"body": the first
    six characters of its code, "part": a plan request, "note", "by", "made_at", "results",
    "changes"}]}``. A result names its bend, its step follows from the order planned. A change
    plans the card again and keeps the settings that the results named in ``keep`` led to.

    All of it is written in the order of its dates, so that each plan knows what was measured
    before it and nothing of later. The dates are moved by whole weeks, so that the last of them
    lies in the week before today. Loading twice is harmless.
    """
    made = _moved(_read(folder / "parts.json")["cards"])
    with writing.written_at(min(one.at for one in made) - _BEFORE_THE_FIRST_CARD):
        for name in documents.NAMES:
            value = _read(folder / f"{name}.json")[name]
            documents.write(store, name, validator.document(name, value), by=_AUTHOR, if_match="*")
    loading = _Loading(store, validator)
    for one in sorted(made, key=lambda one: one.at):
        with writing.written_at(one.at):
            loading.write(one)
    return [one.code for one in made if one.kind == "card"]


def _read(path: Path) -> dict[str, Any]:
    value: dict[str, Any] = json.loads(path.read_text("utf-8"))
    return value


@dataclass(frozen=True, slots=True)
class _Entry:
    """One thing that was written in the shop: when, to which card, and what."""

    at: datetime
    code: str
    kind: Literal["card", "result", "change"]
    body: JsonDict


def _moved(requests: Sequence[JsonDict]) -> list[_Entry]:
    """All that was written, with dates of the last weeks; the same days of the week."""
    entries = [one for request in requests for one in _entries(request)]
    last = max(one.at for one in entries)
    weeks = timedelta(weeks=(datetime.now(UTC) - last) // timedelta(weeks=1))
    return [replace(one, at=one.at + weeks) for one in entries]


def _entries(request: JsonDict) -> Iterator[_Entry]:
    code = with_check(request["body"])
    yield _entry(code, "card", request)
    for result in request.get("results", ()):
        yield _entry(code, "result", result)
    for change in request.get("changes", ()):
        yield _entry(code, "change", change)


def _entry(code: str, kind: Literal["card", "result", "change"], body: JsonDict) -> _Entry:
    return _Entry(datetime.fromisoformat(body["made_at"]), code, kind, body)


class _Loading:
    """Writes the entries, one after the other; knows what each result led to."""

    def __init__(self, store: Store, validator: Validator) -> None:
        self._store, self._validator = store, validator
        self._results: dict[str, JsonDict] = {}

    def write(self, entry: _Entry) -> None:
        write = {"card": self._card, "result": self._result, "change": self._change}[entry.kind]
        write(entry)

    def _card(self, entry: _Entry) -> None:
        asked = {"part": entry.body["part"], "note": entry.body.get("note", "")}
        author = revisions.Author(by=entry.body.get("by", _AUTHOR), reason="demo shop")
        card = self._validator.card(self._store, asked)
        revisions.create(self._store, card, author, code=entry.code, asked=asked)

    def _result(self, entry: _Entry) -> None:
        step = self._step_of(entry.code, entry.body["bend"])
        asked = {**entry.body, "step": step, "made_at": writing.utc_text(entry.at)}
        checked = self._validator.result(self._store, entry.code, asked)
        kept = results.add(self._store, entry.code, *checked)
        self._results[entry.body["id"]] = json.loads(kept.body)

    def _change(self, entry: _Entry) -> None:
        settings = [self._setting(entry.code, name) for name in entry.body["keep"]]
        plain = {name: entry.body[name] for name in ("id", "by", "reason")}
        asked = {**plain, "replan": True, "settings": settings}
        self._validator.edit(self._store, entry.code, asked)

    def _setting(self, code: str, result_id: str) -> JsonDict:
        result = self._results[result_id]
        return {
            "step": self._step_of(code, result["bend"]),
            "set_angle_deg": result["correction"]["set_angle_deg"],
            "punch_depth_mm": result["correction"]["punch_depth_mm"],
            "trial_id": result_id,
            "reason": f"Piece came out at {result['measured_deg']:.1f}°",
        }

    def _step_of(self, code: str, bend: int) -> int:
        content, _ = cards.content_of(self._store, code)
        return next(int(s["number"]) for s in content.plan_dict["steps"] if s["bend"] == bend)
