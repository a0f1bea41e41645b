"""The runs of a card as a table for the next quote: comma-separated, a run a line."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from typing import Any

JsonDict = dict[str, Any]
HEAD = (
    "card", "revision", "begun_at", "state", "pieces_wanted", "pieces_done", "pieces_scrapped",
    "scrap_by_step", "setup_minutes", "setup_until", "run_minutes", "paused_minutes",
    "minutes_per_piece",
)  # fmt: skip


def csv_of(code: str, runs: Iterable[JsonDict]) -> str:
    """The table. code: of the card, as it is written on the label. runs: as ``runs_of`` has them.

    It holds numbers and fixed words only, nothing that somebody typed and a spreadsheet could
    take for a formula.
    """
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(HEAD)
    for run in runs:
        writer.writerow(_row(code, run))
    return text.getvalue()


def _row(code: str, run: JsonDict) -> list[Any]:
    scrap = "; ".join(f"step {one['step']}: {one['pieces']}" for one in run["scrap"])
    return [
        code, run["revision"], run["begun_at"], run["state"], run["pieces"], run["done"],
        run["scrapped"], scrap, _minutes(run["setup_s"]), run["setup_until"],
        _minutes(run["run_s"]), _minutes(run["paused_s"]), _minutes(run["seconds_per_piece"]),
    ]  # fmt: skip


def _minutes(seconds: float | None) -> float | None:
    return None if seconds is None else round(seconds / 60, 2)
