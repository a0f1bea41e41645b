"""Starting, and the memory of a shop with many cards."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from flangebook.api import intake
from flangebook.shop import revisions
from flangebook.shop.store import open_store

from .conftest import Figures, Shop, start

pytestmark = pytest.mark.benchmark
MANY = 5000


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


def add_cards(root: Path, data: Path, count: int) -> None:
    """Copies of the demo shop's cards, each planned once and kept many times."""
    known = json.loads((root / "demo_data/parts.json").read_text("utf-8"))["cards"]
    store = open_store(data)
    contents = [intake.card(store, {"part": one["part"], "note": one["note"]}) for one in known]
    author = revisions.Author(by="benchmark", reason="many cards")
    for n in range(count):
        asked = {"part": known[n % len(known)]["part"]}
        revisions.create(store, contents[n % len(known)], author, asked=asked)
    store.close()


def use(shop: Shop) -> None:
    """What a day brings: lists, searches, cards, and a phone that fetches everything."""
    for offset in range(0, MANY, 500):
        listed = shop.get(f"/api/v1/cards?limit=100&offset={offset}")["cards"]
        for card in listed[:10]:
            shop.get(f"/api/v1/cards/{card['code']}")
    shop.get("/api/v1/cards?q=shelf&limit=50")
    cursor, more = "", True
    while more:
        page = shop.get(f"/api/v1/changes?since={cursor}" if cursor else "/api/v1/changes")
        cursor, more = page["cursor"], page["more"]
