"""What the tests of the workers have them do: another process finds it by its name."""

from __future__ import annotations

import os
import time
from typing import Any

from flangebook.bending.errors import OutlineError
from flangebook.planning.deadline import PlanLimits
from flangebook.shop.store import Store


def number(_store: Store) -> int:
    """Of the process."""
    return os.getpid()


def shop_id(store: Store) -> str:
    """Of the shop whose file the process opened."""
    return store.shop_id


def slow(_store: Store, seconds: float) -> float:
    """Take so long."""
    time.sleep(seconds)
    return seconds


def refused(_store: Store) -> None:
    """An error that keeps more than its words."""
    raise OutlineError("It crosses itself.", "points_mm", code="crossing", edges=(3, 5))


def hog(_store: Store, most_bytes: int) -> None:
    """Take all the memory there is, and a little more than allowed."""
    kept = []
    while sum(map(len, kept)) < 2 * most_bytes:
        kept.append(bytearray(50_000_000))


def heeding(_store: Store, limits: PlanLimits) -> None:
    """A plan without end, that asks whether it is still wanted."""
    assert limits.cancelled
    assert limits.progress
    limits.progress(os.getpid())
    while not limits.cancelled():
        time.sleep(0.01)


def deaf(_store: Store, limits: PlanLimits) -> Any:
    """A plan without end, that asks nothing."""
    assert limits.progress
    limits.progress(os.getpid())
    while True:
        sum(range(100_000))
