"""The thread that keeps the nights' copies of the shop that is served."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime

from flangebook.shop.backups.damage import full_check
from flangebook.shop.backups.schedule import Keeper

_LOOK_EVERY_S = 600.0
_LONGEST_STOP_S = 1.0


@contextmanager
def keeping_copies(keeper: Keeper) -> Iterator[None]:
    """Look the whole file through once, and whether a copy is due, at once and every ten minutes,
    while the block runs."""
    stop = threading.Event()

    def watch() -> None:
        now = datetime.now().astimezone()
        if wrong := full_check(keeper.data):
            keeper.damage = (now.astimezone(UTC), wrong)
        while True:
            keeper.look(datetime.now().astimezone())
            if stop.wait(_LOOK_EVERY_S):
                return

    thread = threading.Thread(target=watch, name="copies", daemon=True)
    thread.start()
    try:
        yield
    finally:
        stop.set()
        thread.join(_LONGEST_STOP_S)
