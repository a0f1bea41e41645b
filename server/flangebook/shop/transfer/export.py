"""The whole shop as one open JSON document, written as it is read: never all in memory."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import IO

import sqlalchemy as sa
from sqlalchemy.engine import Connection

from flangebook import __version__
from flangebook.shop.storage import tables
from flangebook.shop.storage.database import reading
from flangebook.shop.storage.whole_file import unwritable
from flangebook.shop.storage.writing import json_text, now
from flangebook.shop.store import Store

FORMAT = "flangebook-shop"
FORMAT_VERSION = 1
_IN_MEMORY = 4_000_000
TEXTS = {
    "documents": {"body"},
    "plans": {"body"},
    "cards": set(),
    "revisions": {"changes", "part", "settings"},
    "trials": {"body"},
    "evidence": {"body"},
    "marks": set(),
    "proposals": {"body"},
    "settlements": set(),
    "benches": set(),
    "run_entries": {"body"},
}
# Made again when a shop is read back: a card's words from the rest, its stamp anew.
LEFT_OUT = {"cards": {"searched", "stamp"}}
# Of this server, not of the shop's work: its own row, and who may use it.
NOT_EXPORTED = frozenset({"shop", "devices", "pairings", "options"})


def pieces(store: Store) -> Iterator[str]:
    """The document, piece by piece, all of one moment.

    One list a table, each row an object by the table's own names, nothing left out that
    cannot be made again; what is kept as JSON text stands as JSON.
    """
    with reading(store.engine) as connection:
        yield json_text(_head(connection))[:-1]
        for name, texts in TEXTS.items():
            yield f',"{name}":['
            table = tables.metadata.tables[name]
            columns = [c for c in table.columns if c.name not in LEFT_OUT.get(name, ())]
            query = sa.select(*columns).order_by(*table.primary_key.columns)
            rows = connection.execution_options(yield_per=50).execute(query)
            for number, row in enumerate(rows):
                yield ("," if number else "") + _row_text(row._asdict(), texts)
            yield "]"
    yield "}\n"


def whole(store: Store) -> IO[bytes]:
    """The document in a file without a name, in memory while short; who asked closes it.

    Raises CopyError where there is no room for it.
    """
    file = tempfile.SpooledTemporaryFile(max_size=_IN_MEMORY)  # noqa: SIM115
    try:
        for piece in pieces(store):
            file.write(piece.encode())
    except OSError as error:
        file.close()
        raise unwritable(Path(tempfile.gettempdir()) / "export", error) from error
    except BaseException:
        file.close()
        raise
    return file


def _head(connection: Connection) -> dict[str, object]:
    shop = connection.execute(sa.select(tables.shop)).one()
    return {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "made_by": f"flangebook {__version__}",
        "exported_at": now(),
        "shop_id": shop.shop_id,
        "created_at": shop.created_at,
    }


def _row_text(row: dict[str, object], texts: set[str]) -> str:
    plain = json_text({k: v for k, v in row.items() if k not in texts})
    raw = "".join(f',"{name}":{row[name]}' for name in row if name in texts)
    return f"{plain[:-1]}{raw}}}"
