"""A shop with many cards, and what a day brings it."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

from flangebook.shop import revisions
from flangebook.shop.store import open_store
from flangebook.use_cases import intake

if TYPE_CHECKING:
    from .conftest import Shop

MANY = 5000


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
