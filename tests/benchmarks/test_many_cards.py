"""A hundred thousand cards: start, open, search, list, and the feed a phone fills itself from.

Each figure is a ratio to the request that does nothing, asked in the same run.
"""

from __future__ import annotations

import os
import statistics
import time
import urllib.parse
from collections.abc import Iterator
from pathlib import Path

import pytest

from .conftest import Figures, Shop, start
from .many_cards import add_cards

pytestmark = pytest.mark.benchmark
CARDS = int(os.environ.get("FLANGEBOOK_CARDS", "100000"))
TIMES = 15


@pytest.fixture(scope="module")
def many(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Shop, Path]]:
    """A server on a shop with that many cards."""
    data = tmp_path_factory.mktemp("many")
    start(data).kill()
    add_cards(root, data, CARDS)
    shop = start(data)
    yield shop, data
    shop.kill()


def median_s(shop: Shop, path: str, times: int = TIMES) -> float:
    """How long a GET takes, the middle of some."""
    took = []
    for _ in range(times):
        began = time.perf_counter()
        shop.get(path)
        took.append(time.perf_counter() - began)
    return statistics.median(took)


def test_a_hundred_thousand_cards(many: tuple[Shop, Path], figures: Figures) -> None:
    shop, data = many
    listed = shop.get("/api/v1/cards?limit=50")
    assert listed["total"] >= CARDS
    nothing = median_s(shop, "/api/v1/health")
    code = listed["cards"][7]["code"]
    asked = {
        "open one": f"/api/v1/cards/{code}",
        "the newest fifty": "/api/v1/cards?limit=50",
        "search, one word": "/api/v1/cards?limit=50&q=bracket",
        "search, none found": "/api/v1/cards?limit=50&q=" + urllib.parse.quote("no such thing"),
        "a page of the feed": "/api/v1/changes?since=",
    }
    for what, path in asked.items():
        took = median_s(shop, path)
        ratio = f"{took / nothing:.0f} times nothing ({took * 1000:.1f} ms)"
        figures.add(f"{CARDS} cards: {what}", ratio)
    newest = shop.get("/api/v1/changes?since=")["cursor"].rpartition(".")[0]
    cursor = f"{newest}.{CARDS}"
    figures.add(
        f"{CARDS} cards: what is new since then",
        f"{median_s(shop, f'/api/v1/changes?since={cursor}') / nothing:.0f} times nothing",
    )
    size = sum(file.stat().st_size for file in data.glob("flangebook.sqlite*"))
    figures.add(f"{CARDS} cards: file, memory", f"{size / 1e6:.0f} MB, {shop.memory_mb():.0f} MB")


def test_starting_with_a_hundred_thousand(many: tuple[Shop, Path], figures: Figures) -> None:
    _, data = many
    again = start(data)
    again.kill()
    figures.add(f"{CARDS} cards: start", f"{again.started_s:.1f} s", "5 s")
