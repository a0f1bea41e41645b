"""Whether the rows of an export fit each other, so that no half of a card comes in.

An export as it was made always does; one that was edited by hand, or put together from two,
may not. Plans carry a digest of their text: a figure in a plan that was changed is refused,
since nobody calculated it.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from datetime import datetime
from typing import Any, Protocol

import marshmallow as ma
import sqlalchemy as sa

from flangebook.bending.errors import FlangebookError
from flangebook.labels import codes
from flangebook.shop import documents
from flangebook.shop.storage import tables
from flangebook.shop.storage.writing import json_text, text_digest
from flangebook.shop.transfer.export import TEXTS
from flangebook.shop.transfer.import_form import Exported, Faults, Row

_COUNTED = "counted from 1 without a gap"
_MOST_WORDS = 200
_GIVEN_BY_SHOP = ("code", "received_at", "change")
_OF_NEWEST = ("title", "archived", "worst")


class Validator(Protocol):
    """The same checks as for what comes in by itself over the network."""

    def document(self, name: documents.Name, value: Any) -> Any:
        """A document, checked."""

    def part(self, value: Any) -> Any:
        """A part, checked."""

    def run_entry(self, value: Any) -> Any:
        """An entry of a run, checked."""


def check(exported: Exported, validator: Validator) -> None:
    """See that everything refers to something that is there and says the same as it.

    Raises ImportRefusedError.
    """
    faults, rows = Faults(), exported.rows
    for name in TEXTS:
        _names(name, rows, faults)
        _moments(name, rows[name], faults)
    _documents(rows["documents"], validator, faults)
    _plans(rows["plans"], faults)
    faults.refuse()
    _revisions(rows["revisions"], validator, faults)
    _trials(rows["trials"], faults)
    faults.refuse()
    _cards(rows, faults)
    _evidence(rows, faults)
    _run_entries(rows["run_entries"], validator, faults)
    faults.refuse()


def _names(name: str, rows: Mapping[str, list[Row]], faults: Faults) -> None:
    """Nothing is there twice, nothing refers to what is not there."""
    table = tables.metadata.tables[name]
    unique = [tuple(table.primary_key.columns.keys())]
    for one in table.constraints:
        if isinstance(one, sa.UniqueConstraint):
            unique.append(tuple(one.columns.keys()))
    unique += [tuple(i.columns.keys()) for i in table.indexes if i.unique]
    for columns in unique:
        seen: set[tuple[Any, ...]] = set()
        for number, row in enumerate(rows[name]):
            key = tuple(row[c] for c in columns)
            if key in seen:
                faults.add(f"{name}.{number}.{columns[-1]}", f"{_said(key)} is there twice.")
            seen.add(key)
    for reference in table.foreign_key_constraints:
        other = reference.referred_table.name
        there = {tuple(r[e.column.name] for e in reference.elements) for r in rows[other]}
        for number, row in enumerate(rows[name]):
            key = tuple(row[c] for c in reference.column_keys)
            if None not in key and key not in there:
                place = f"{name}.{number}.{reference.column_keys[-1]}"
                faults.add(place, f"{_said(key)} is not among the {other}.")


def _said(key: Iterable[Any]) -> str:
    return ", ".join(str(value)[:60] for value in key)


def _moments(name: str, rows: list[Row], faults: Faults) -> None:
    for number, row in enumerate(rows):
        for field in ("at", "created_at", "updated_at"):
            if field in row and not _is_moment(row[field]):
                faults.add(
                    f"{name}.{number}.{field}",
                    "This is not a moment in UTC, like 2026-05-04T13:30:00.000Z.",
                )
        if row.get("change", 1) < 1:
            faults.add(f"{name}.{number}.change", "This is not a number from 1 up.")


def _is_moment(text: str) -> bool:
    try:
        datetime.fromisoformat(text)
    except ValueError:
        return False
    return text.endswith("Z")


def _documents(rows: list[Row], validator: Validator, faults: Faults) -> None:
    newest: dict[str, tuple[int, Row]] = {}
    for number, row in enumerate(rows):
        if row["name"] not in documents.NAMES:
            faults.add(f"documents.{number}.name", f"Give one of: {', '.join(documents.NAMES)}.")
        elif row["name"] not in newest or row["version"] > newest[row["name"]][1]["version"]:
            newest[row["name"]] = (number, row)
    _counted("documents", rows, "name", "version", faults)
    for name, (number, row) in newest.items():
        place = f"documents.{number}.body"
        _passes(lambda n=name, r=row: validator.document(n, r["body"]), place, faults)  # type: ignore[misc]


def _plans(rows: list[Row], faults: Faults) -> None:
    for number, row in enumerate(rows):
        body = row["body"]
        if not isinstance(body, dict) or not isinstance(body.get("steps"), list):
            faults.add(f"plans.{number}.body", "This is not a plan: it has no steps.")
        elif text_digest(json_text(body)) != row["digest"]:
            faults.add(f"plans.{number}.body", "This was changed: it is not as it was calculated.")


def _revisions(rows: list[Row], validator: Validator, faults: Faults) -> None:
    _counted("revisions", rows, "code", "revision", faults)
    for number, row in enumerate(rows):
        place = f"revisions.{number}"
        _passes(lambda r=row: validator.part(r["part"]), f"{place}.part", faults)  # type: ignore[misc]
        if isinstance(row["part"], dict) and row["part"].get("title") != row["title"]:
            faults.add(f"{place}.title", "The part has another title.")
        if not _texts(row["changes"]):
            faults.add(f"{place}.changes", "This is not a list of texts.")
        if not _steps(row["settings"]):
            faults.add(f"{place}.settings", "This is not a list of settings, each with its step.")


def _texts(value: Any) -> bool:
    return isinstance(value, list) and all(isinstance(one, str) for one in value)


def _steps(value: Any) -> bool:
    return isinstance(value, list) and all(
        isinstance(one, dict) and isinstance(one.get("step"), int) for one in value
    )


def _trials(rows: list[Row], faults: Faults) -> None:
    _counted("trials", rows, "code", "number", faults)
    for number, row in enumerate(rows):
        _agrees(row, row["body"], ("id", "number", "revision"), f"trials.{number}.body", faults)


def _cards(rows: Mapping[str, list[Row]], faults: Faults) -> None:
    newest: dict[str, Row] = {}
    for row in rows["revisions"]:
        if row["code"] not in newest or row["revision"] > newest[row["code"]]["revision"]:
            newest[row["code"]] = row
    trials: dict[str, int] = defaultdict(int)
    for row in rows["trials"]:
        trials[row["code"]] += 1
    for number, row in enumerate(rows["cards"]):
        place = f"cards.{number}"
        if not _is_code(row["code"]):
            faults.add(f"{place}.code", "This is not a card's code.")
            continue
        last = newest.get(row["code"])
        if last is None:
            faults.add(f"{place}.revision", f"Card {row['code']} has no revision.")
            continue
        part = last["part"]
        right = {
            "revision": last["revision"],
            "trials": trials[row["code"]],
            **{name: last[name] for name in _OF_NEWEST},
            "metal": part["metal"],
            "thickness_mm": part["thickness_mm"],
            "bends": len(part["bends"]),
        }
        for name, value in right.items():
            if row[name] != value:
                said = f"This is {_short(row[name])}; by its revisions and results it is"
                faults.add(f"{place}.{name}", f"{said} {_short(value)}.")


def _is_code(text: str) -> bool:
    try:
        return codes.parse(text) == text
    except FlangebookError:
        return False


def _evidence(rows: Mapping[str, list[Row]], faults: Faults) -> None:
    metal_of = {}
    for number, row in enumerate(rows["evidence"]):
        place = f"evidence.{number}"
        if row["kind"] not in ("test bend", "first piece"):
            faults.add(f"{place}.kind", "Give one of: test bend, first piece.")
        _agrees(row, row["body"], ("id", "metal"), f"{place}.body", faults)
        metal_of[row["id"]] = row["metal"]
    for number, row in enumerate(rows["marks"]):
        if row["mark"] not in ("forget", "remember", "confirm"):
            faults.add(f"marks.{number}.mark", "Give one of: forget, remember.")
        if row["metal"] != metal_of[row["evidence_id"]]:
            faults.add(f"marks.{number}.metal", "The evidence is of another metal.")


def _run_entries(rows: list[Row], validator: Validator, faults: Faults) -> None:
    for number, row in enumerate(rows):
        place, body = f"run_entries.{number}.body", row["body"]
        _agrees(row, body, ("id", "run_id", "kind", "code", "change"), place, faults)
        if not isinstance(body, dict):
            continue
        if not _is_moment(str(body.get("received_at"))):
            faults.add(f"{place}.received_at", "This is not a moment in UTC.")
        sent = {k: v for k, v in body.items() if k not in _GIVEN_BY_SHOP}
        _passes(lambda s=sent: validator.run_entry(s), place, faults)  # type: ignore[misc]


def _agrees(row: Row, body: Any, names: Iterable[str], place: str, faults: Faults) -> None:
    if not isinstance(body, dict):
        faults.add(place, "This is not an object.")
        return
    for name in names:
        if body.get(name) != row[name]:
            faults.add(f"{place}.{name}", f"This is not {_short(row[name])}, as its row says.")


def _short(value: Any) -> str:
    return str(value)[:60] or "empty"


def _counted(name: str, rows: list[Row], of: str, column: str, faults: Faults) -> None:
    numbers: dict[str, list[tuple[int, int]]] = defaultdict(list)
    for number, row in enumerate(rows):
        numbers[row[of]].append((row[column], number))
    for one, found in numbers.items():
        for wanted, (given, number) in enumerate(sorted(found), start=1):
            if given != wanted:
                words = f"Those of {one[:40]} are not {_COUNTED}: {wanted} is missing."
                faults.add(f"{name}.{number}.{column}", words)
                break


def _passes(look: Callable[[], Any], place: str, faults: Faults) -> None:
    try:
        look()
    except ma.ValidationError as error:
        for inner, words in _flat(error.messages):
            faults.add(f"{place}.{inner}".rstrip("."), words[:_MOST_WORDS])
    except FlangebookError as error:
        faults.add(f"{place}.{error.where}".rstrip("."), f"{error.what} {error.right}".strip())


def _flat(messages: Any, place: str = "") -> Iterable[tuple[str, str]]:
    if isinstance(messages, Mapping):
        for key, inner in messages.items():
            yield from _flat(inner, place if key == "_schema" else f"{place}.{key}".lstrip("."))
    elif isinstance(messages, list):
        for inner in messages:
            yield from _flat(inner, place)
    else:
        yield place, str(messages)
