"""An export as it comes in: JSON read strictly, every row held against its table.

What is found here has the right names and kinds of values; whether they fit each other,
``import_checks`` says.
"""

from __future__ import annotations

import json
import math
import re
import unicodedata
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, NoReturn

import sqlalchemy as sa

from flangebook.shop.errors import ImportRefusedError
from flangebook.shop.storage import tables
from flangebook.shop.storage.writing import json_text
from flangebook.shop.transfer.export import FORMAT, FORMAT_VERSION, LEFT_OUT, TEXTS

MOST_FAULTS = 50
_HEAD = {"format", "format_version", "made_by", "exported_at", "shop_id", "created_at"}
# Tables that exports of the first release have; later ones may be missing and are empty then.
_FIRST = ("documents", "plans", "cards", "revisions", "trials", "evidence", "marks")
_MOST_WHOLE = 2**63 - 1
# Characters of a text, as the API takes them; any other text at most as a note.
_MOST_TEXT = {"title": 200, "reason": 200, "by": 80, "created_by": 80, "updated_by": 80}
_MOST_NOTE = 2000
_HALF = re.compile(r"[-+.eE\d]*|t|tr|tru|f|fa|fal|fals|n|nu|nul")
_RIGHT = "Take the file as it was exported, or export the shop again."
Row = dict[str, Any]


@dataclass
class Faults:
    """What is wrong with a document, place by place: dotted, lists counted from 0."""

    found: dict[str, list[str]] = field(default_factory=dict)

    def add(self, place: str, words: str) -> None:
        """One more; after the first fifty they are only counted as such."""
        if place in self.found or len(self.found) < MOST_FAULTS:
            self.found.setdefault(place, []).append(words)
        else:
            self.found.setdefault("...", ["There are more."])

    def refuse(self) -> None:
        """Raises ImportRefusedError when there is something wrong."""
        if not self.found:
            return
        place, words = next(iter(self.found.items()))
        raise ImportRefusedError(f"{place}: {words[0]}", _RIGHT, self.found)


@dataclass(frozen=True)
class Exported:
    """A document in order: what its head says, and the rows of each table.

    What is kept as JSON text is a value here, under its column's name.
    """

    head: Mapping[str, Any]
    rows: Mapping[str, list[Row]]


def read(data: bytes) -> Exported:
    """The document.

    Raises ImportRefusedError, with what is wrong and where.
    """
    document = _parsed(data)
    if not isinstance(document, dict) or document.get("format") != FORMAT:
        raise ImportRefusedError(
            f"This is not an export of a shop: it does not begin with the format {FORMAT}.",
            "Give a file that Flangebook exported.",
        )
    _need_version(document.get("format_version"))
    faults = Faults()
    for name in document.keys() - _HEAD - TEXTS.keys():
        faults.add(name, "There is no such list in a shop.")
    for name in ("exported_at", "made_by"):
        if not isinstance(document.get(name), str):
            faults.add(name, "This is needed, a text.")
    rows = {name: list(_rows(name, document, faults)) for name in TEXTS}
    faults.refuse()
    return Exported({name: document.get(name) for name in _HEAD}, rows)


def _need_version(version: Any) -> None:
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        raise ImportRefusedError("format_version: This is not a whole number from 1 up.", _RIGHT)
    if version > FORMAT_VERSION:
        raise ImportRefusedError(
            f"The export has form {version}; this release reads forms up to {FORMAT_VERSION}.",
            "Import it with the newer release that made it.",
        )


def _parsed(data: bytes) -> Any:
    try:
        text = data.decode("utf-8-sig")
        found = json.loads(
            text, parse_constant=_not_a_number, parse_float=_finite, object_pairs_hook=_once
        )
        if "\\ud" in text or "\\uD" in text:
            json_text(found).encode()
        return found
    except UnicodeEncodeError:
        raise _unreadable("it holds half a character (\\ud800 to \\udfff)") from None
    except UnicodeDecodeError as error:
        raise _unreadable(f"byte {error.start + 1} is not UTF-8") from None
    except RecursionError:
        raise _unreadable("it is nested too deep") from None
    except json.JSONDecodeError as error:
        # Of a text that never ends, the position is where it begins; half a number or half of
        # true, false or null may be all that follows it.
        rest = error.doc[error.pos :].strip()
        end = error.msg.startswith("Unterminated") or _HALF.fullmatch(rest)
        why = "it breaks off" if end else error.msg.removesuffix(" at")
        raise _unreadable(f"{why} at line {error.lineno}, column {error.colno}") from None
    except ValueError as error:
        raise _unreadable(str(error)) from None


def _unreadable(why: str) -> ImportRefusedError:
    return ImportRefusedError(f"The file cannot be read as JSON: {why}.", _RIGHT)


def _not_a_number(name: str) -> NoReturn:
    raise ValueError(f"{name} is not a number")


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise ValueError(f"the number {text[:40]} is too large")
    return value


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        raise ValueError(f"the name {twice[:40]} is there twice in one object")
    return found


def _rows(name: str, document: Row, faults: Faults) -> Iterator[Row]:
    given = document.get(name, None if name in _FIRST else [])
    if not isinstance(given, list):
        faults.add(name, "This is needed, a list.")
        return
    table = tables.metadata.tables[name]
    made_again = LEFT_OUT.get(name, set())
    columns = {c.name: c for c in table.columns if c.name not in made_again}
    for number, row in enumerate(given):
        place = f"{name}.{number}"
        if not isinstance(row, dict):
            faults.add(place, "This is not an object.")
            continue
        if "device" in columns:
            row.setdefault("device", "")  # releases up to 0.3 did not record it
        for unknown in row.keys() - columns.keys() - made_again:
            faults.add(f"{place}.{unknown[:40]}", "There is no such field.")
        for column in columns.values():
            _look_at(column, row, f"{place}.{column.name}", name, faults)
        yield {key: value for key, value in row.items() if key in columns}


def _look_at(column: sa.Column[Any], row: Row, place: str, table: str, faults: Faults) -> None:
    if column.name not in row:
        faults.add(place, "This is needed.")
        return
    value = row[column.name]
    if value is None and column.nullable:
        return
    most = _MOST_TEXT.get(column.name, _MOST_NOTE)
    is_json = column.name in TEXTS[table]
    words = (not is_json and _KINDS[type(column.type)](value)) or _texts(value, most)
    if words:
        faults.add(place, words)


def _texts(value: Any, most: int = _MOST_NOTE) -> str:
    """What is wrong with the first text in a value that the API would refuse; else empty."""
    if isinstance(value, str):
        if len(value) > most:
            return f"A text is too long. At most {most} characters."
        # What can be printed holds no control character, and most texts can be.
        if not value.isprintable() and any(
            unicodedata.category(c) == "Cc" and c not in "\n\t" for c in value
        ):
            return "A text holds characters that can't be shown."
    elif isinstance(value, dict):
        inner = (
            _texts(one) or _texts(value[one], _MOST_TEXT.get(one, _MOST_NOTE)) for one in value
        )
        return next(filter(None, inner), "")
    elif isinstance(value, list):
        return next(filter(None, map(_texts, value)), "")
    return ""


def _whole(value: Any) -> str:
    right = isinstance(value, int) and not isinstance(value, bool) and abs(value) <= _MOST_WHOLE
    return "" if right else "This is not a whole number."


def _number(value: Any) -> str:
    right = isinstance(value, int | float) and not isinstance(value, bool) and abs(value) < 1e15
    return "" if right else "This is not a number."


def _yes_no(value: Any) -> str:
    return "" if isinstance(value, bool) else "This is neither true nor false."


def _text(value: Any) -> str:
    return "" if isinstance(value, str) else "This is not a text."


_KINDS = {sa.Integer: _whole, sa.Float: _number, sa.Boolean: _yes_no, sa.Text: _text}
