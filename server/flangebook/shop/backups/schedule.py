"""The copies a shop keeps of itself: where they are, which are due, which are let go.

A night's copy is due when none was made since the last 3 o'clock in the morning. Kept are the
newest of each of the last seven days and of each of the last four weeks that have one; copies
made by hand and shops that were replaced are never let go by themselves.
"""

from __future__ import annotations

import logging
import re
import shutil
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Literal

from flangebook.shop.backups.copies import make_copy, shop_file
from flangebook.shop.errors import CopyError, ShopError
from flangebook.shop.storage.whole_file import no_room, sweep

FOLDER = "copies"
DAYS = 7
WEEKS = 4
NIGHT_HOUR = 3
_ROOM = 1.2
_STAMP = "%Y-%m-%dT%H%M%SZ"
_NAME = re.compile(r"(night|by-hand|replaced)-(\d{4}-\d\d-\d\dT\d{6}Z)(?:-\d+)?\.sqlite")
_log = logging.getLogger(__name__)
Kind = Literal["night", "by-hand", "replaced"]


@dataclass(frozen=True, slots=True)
class Backup:
    """A copy in the shop's own folder. at: when it was made, UTC."""

    path: Path
    kind: Kind
    at: datetime
    size_bytes: int


def kept(data: Path) -> list[Backup]:
    """Every copy in the shop's own folder, newest first."""
    found = []
    for path in (data / FOLDER).glob("*.sqlite"):
        named = _NAME.fullmatch(path.name)
        if not named:
            continue
        try:
            at = datetime.strptime(named[2], _STAMP).replace(tzinfo=UTC)
            size = path.stat().st_size
        except (OSError, ValueError):  # let go meanwhile, or no such day
            continue
        found.append(Backup(path, named[1], at, size))  # type: ignore[arg-type]
    return sorted(found, key=lambda one: (one.at, one.path.name), reverse=True)


def place_for(data: Path, kind: Kind, now: datetime) -> Path:
    """A free name for a copy made at ``now``."""
    (data / FOLDER).mkdir(mode=0o700, parents=True, exist_ok=True)
    stamp = now.astimezone(UTC).strftime(_STAMP)
    for number in range(1, 1000):
        more = "" if number == 1 else f"-{number}"
        path = data / FOLDER / f"{kind}-{stamp}{more}.sqlite"
        if not path.exists():
            return path
    raise CopyError(f"There are too many copies of that second in {data / FOLDER}.")


def by_hand(data: Path) -> Path:
    """Where a copy goes that is made by hand and given no name."""
    return place_for(data, "by-hand", datetime.now(UTC))


def is_due(copies: Iterable[Backup], now: datetime) -> bool:
    """Whether a night's copy is to be made. now: with its offset from UTC, the shop's own."""
    night = now.replace(hour=NIGHT_HOUR, minute=0, second=0, microsecond=0)
    if night > now:
        night -= timedelta(days=1)
    # One from a day to come was made while the clock was wrong: it stands for nothing.
    return not any(one.kind == "night" and night <= one.at <= now for one in copies)


def make_nights_copy(data: Path, now: datetime) -> Backup:
    """Make a night's copy, and only then let the oldest go.

    Raises ShopError when it could not be made or was not found whole; nothing is let go then.
    """
    folder = data / FOLDER
    sweep(folder)
    _need_room(data)
    target = place_for(data, "night", now)
    facts = make_copy(data, target)
    for old in let_go(kept(data)):
        old.path.unlink(missing_ok=True)
    return Backup(target, "night", now.astimezone(UTC), facts.size_bytes)


def let_go(copies: Iterable[Backup]) -> list[Backup]:
    """The nights' copies that need not be kept."""
    nights = sorted((c for c in copies if c.kind == "night"), key=lambda c: c.at, reverse=True)
    days: dict[object, Backup] = {}
    weeks: dict[object, Backup] = {}
    for one in nights:
        days.setdefault(one.at.date(), one)
        weeks.setdefault(one.at.isocalendar()[:2], one)
    stay = {one.path for one in [*list(days.values())[:DAYS], *list(weeks.values())[:WEEKS]]}
    return [one for one in nights if one.path not in stay]


def free_bytes(folder: Path) -> int:
    """Room on the disk that ``folder`` is on."""
    return shutil.disk_usage(folder).free


def _need_room(data: Path) -> None:
    size = shop_file(data).stat().st_size
    if free_bytes(data) < size * _ROOM:
        raise no_room(data / FOLDER)


class Keeper:
    """Makes the nights' copies of a shop while it is served, and knows what went wrong."""

    def __init__(self, data: Path) -> None:
        self.data = data
        self.trouble: tuple[datetime, str] | None = None
        self.damage: tuple[datetime, str] | None = None

    def look(self, now: datetime) -> None:
        """Make a copy if one is due. now: with its offset from UTC, the shop's own."""
        try:
            if is_due(kept(self.data), now):
                make_nights_copy(self.data, now)
        except (ShopError, OSError) as error:
            if self.trouble is None or self.trouble[1] != str(error):
                _log.error("The night's copy of the shop could not be made. %s", error)
            self.trouble = (now.astimezone(UTC), str(error))
        else:
            self.trouble = None

    def standing_in_the_way(self, now: datetime) -> tuple[datetime, str] | None:
        """What is wrong with the shop, or keeps a copy from being made; and since when."""
        if self.damage or self.trouble:
            return self.damage or self.trouble
        try:
            _need_room(self.data)
        except (ShopError, OSError) as error:
            return now.astimezone(UTC), str(error)
        return None
