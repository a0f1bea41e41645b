"""Starting, and the memory of a shop with many cards."""

from __future__ import annotations

from pathlib import Path

import pytest

from .conftest import Figures, start
from .many_cards import MANY, add_cards, use

pytestmark = pytest.mark.benchmark


def test_starting(tmp_path: Path, figures: Figures) -> None:
    first = start(tmp_path)
    first.kill()
    again = [start(tmp_path) for _ in range(3)]
    for one in again:
        one.kill()
    figures.add("first start, demo shop loaded", f"{first.started_s:.1f} s")
    fastest = min(one.started_s for one in again)
    figures.add("every other start", f"{fastest:.1f} s", "well under 5 s")


def test_memory_with_many_cards(root: Path, tmp_path: Path, figures: Figures) -> None:
    start(tmp_path).kill()
    add_cards(root, tmp_path, MANY)
    shop = start(tmp_path)
    try:
        figures.add("memory after the start", f"{shop.memory_mb():.0f} MB")
        use(shop)
        assert shop.get("/api/v1/cards?limit=1")["total"] >= MANY
        figures.add(f"memory with {MANY} cards in use", f"{shop.memory_mb():.0f} MB", "150 MB")
    finally:
        shop.kill()
