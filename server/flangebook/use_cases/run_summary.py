"""What the entries of a run add up to: pieces, scrap, set-up time, time per piece.

Times are those of the devices' clocks, but no entry is later than it came. They are times of the
run, for the next quote: nothing here says who made a piece or where.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

JsonDict = dict[str, Any]
Span = tuple[datetime, datetime]
_COUNTED = ("piece", "scrap")


def runs_of(entries: Iterable[JsonDict]) -> list[JsonDict]:
    """Each run of a card, the newest first. entries: of one card, in the order they came."""
    by_run: dict[str, list[JsonDict]] = defaultdict(list)
    for entry in entries:
        by_run[entry["run_id"]].append(entry)
    found = [run_of(run) for run in by_run.values()]
    return sorted(found, key=lambda run: str(run["begun_at"]), reverse=True)


def run_of(entries: Sequence[JsonDict]) -> JsonDict:
    """A run. entries: of it, in the order they came, one at least."""
    standing = _standing(entries)
    begun = next((e for e in standing if e["kind"] == "begun"), None)
    scrap = Counter(e["step"] for e in standing if e["kind"] == "scrap")
    return {
        "id": entries[0]["run_id"],
        "revision": (begun or entries[0])["revision"],
        "pieces": begun["pieces"] if begun else None,
        "state": _state(standing),
        "begun_at": (begun or min(entries, key=_at))["made_at"],
        "done": sum(e["kind"] == "piece" for e in standing),
        "scrapped": scrap.total(),
        "scrap": [{"step": step, "pieces": scrap[step]} for step in sorted(scrap)],
        **_times(sorted(standing, key=_at)),
    }


def _standing(entries: Sequence[JsonDict]) -> list[JsonDict]:
    """The entries that nobody took back."""
    undone = {e["undoes"] for e in entries if e["kind"] == "back"}
    return [e for e in entries if e["kind"] != "back" and e["id"] not in undone]


def _state(standing: Sequence[JsonDict]) -> str:
    """A run that was ended stays so, whatever comes late; else the last word on pauses counts."""
    kinds = [e["kind"] for e in standing if e["kind"] in ("paused", "resumed", "ended")]
    if "ended" in kinds:
        return "ended"
    return "paused" if kinds and kinds[-1] == "paused" else "open"


def _times(by_time: Sequence[JsonDict]) -> JsonDict:
    """Set-up time and time per piece. by_time: entries that stand, the earliest first."""
    pauses = _pauses(by_time)
    counted = [e for e in by_time if e["kind"] in _COUNTED]
    said = next((e for e in by_time if e["kind"] == "setup"), None)
    ready = said or (counted[0] if counted else None)
    paused_s = sum((end - start).total_seconds() for start, end in pauses)
    if ready is None:
        return {"setup_s": None, "setup_until": None, "run_s": None, "paused_s": paused_s,
                "seconds_per_piece": None}  # fmt: skip
    after = [e for e in counted if e is not ready and _at(e) >= _at(ready)]
    run_s = _working((_at(ready), _at(after[-1])), pauses) if after else None
    good = sum(e["kind"] == "piece" for e in after)
    return {
        "setup_s": _working((_at(by_time[0]), _at(ready)), pauses),
        "setup_until": "said" if said else "first piece",
        "run_s": run_s,
        "paused_s": paused_s,
        "seconds_per_piece": run_s / good if run_s is not None and good else None,
    }


def _pauses(by_time: Sequence[JsonDict]) -> list[Span]:
    """When the run stood still; the end of the run ends a pause."""
    found: list[Span] = []
    since: datetime | None = None
    for entry in by_time:
        if entry["kind"] == "paused":
            since = since or _at(entry)
        elif since is not None and entry["kind"] in ("resumed", "ended"):
            found.append((since, _at(entry)))
            since = None
    return found


def _working(span: Span, pauses: Iterable[Span]) -> float:
    """Seconds of a span without the pauses in it."""
    start, end = span
    still = sum(
        max(0.0, (min(end, until) - max(start, since)).total_seconds()) for since, until in pauses
    )
    return max(0.0, (end - start).total_seconds() - still)


def _at(entry: JsonDict) -> datetime:
    made, came = (datetime.fromisoformat(entry[name]) for name in ("made_at", "received_at"))
    return min(made, came)
