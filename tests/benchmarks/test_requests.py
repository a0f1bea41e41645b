"""How long the server takes to answer, as a ratio to a request that does nothing."""

from __future__ import annotations

import http.client
import json
import statistics
import time
import urllib.request
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

import pytest

from .conftest import Figures, Shop

pytestmark = pytest.mark.benchmark
ROUNDS = 40
BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 800,
        "included_angle_deg": 90}  # fmt: skip


def six_bends(root: Path) -> dict[str, object]:
    """The part of the demo shop with six bends."""
    cards = json.loads((root / "demo_data/parts.json").read_text("utf-8"))["cards"]
    (part,) = [card["part"] for card in cards if len(card["part"].get("bends", ())) == 6]
    return dict(part)


def asking(shop: Shop, method: str, path: str, body: object = None) -> Callable[[], float]:
    """A function that asks once on a connection that stays open, and says how long [ms]."""
    parts = urlsplit(shop.address)
    connection = http.client.HTTPConnection(parts.hostname or "", parts.port, timeout=60)
    sent = None if body is None else json.dumps(body)
    headers = {"Content-Type": "application/json"} if sent else {}

    def ask() -> float:
        began = time.perf_counter()
        connection.request(method, path, sent, headers)
        answer = connection.getresponse()
        answer.read()
        took = (time.perf_counter() - began) * 1000
        assert answer.status == 200, (path, answer.status)
        return took

    return ask


def test_answers(root: Path, shop: Shop, figures: Figures) -> None:
    code = shop.get("/api/v1/cards?limit=100")["cards"][0]["code"]
    asked = {
        "GET /health": asking(shop, "GET", "/api/v1/health"),
        "POST /bend": asking(shop, "POST", "/api/v1/bend", BEND),
        "POST /plan, asked before": asking(shop, "POST", "/api/v1/plan", six_bends(root)),
        "GET /cards/CODE": asking(shop, "GET", f"/api/v1/cards/{code}"),
        "GET /chart": asking(shop, "GET", "/api/v1/chart?metal=stainless-304"),
        "POST /stroke": asking(shop, "POST", "/api/v1/stroke", BEND),
    }
    goals = {"POST /bend": "3 times", "GET /chart": "40 times", "GET /cards/CODE": "1.5 times"}
    took: dict[str, list[float]] = {name: [] for name in asked}
    for ask in asked.values():
        ask()
    # In turns, so that whatever else the machine does weighs on all alike.
    for _ in range(ROUNDS):
        for name, ask in asked.items():
            took[name].append(ask())
    median = {name: statistics.median(times) for name, times in took.items()}
    nothing = median["GET /health"]
    for name, time_ms in median.items():
        figure = f"{time_ms:.2f} ms, {time_ms / nothing:.1f} times /health"
        figures.add(name, figure, goals.get(name, ""))


def test_answers_about_bends_never_seen_before(root: Path, shop: Shop, figures: Figures) -> None:
    """Each request asks for another thickness, so nothing that was kept helps it."""
    nothing = statistics.median(asking(shop, "GET", "/api/v1/health")() for _ in range(ROUNDS))
    took = [
        asking(shop, "POST", "/api/v1/bend", {**BEND, "thickness_mm": 1.5 + i / 1000})()
        for i in range(5)
    ]
    time_ms = statistics.median(took)
    figures.add("POST /bend, cold", f"{time_ms:.0f} ms, {time_ms / nothing:.0f} times /health")
    other_length = [
        asking(shop, "POST", "/api/v1/bend", {**BEND, "thickness_mm": 1.5, "bend_length_mm": i})()
        for i in range(300, 300 + ROUNDS)
    ]
    time_ms = statistics.median(other_length)
    figures.add(
        "POST /bend, another length", f"{time_ms:.1f} ms, {time_ms / nothing:.1f} times /health"
    )
    took = [
        asking(shop, "POST", "/api/v1/plan", {**six_bends(root), "bend_length_mm": i})()
        for i in range(300, 300 + ROUNDS)
    ]
    figures.add("POST /plan, six bends", f"{statistics.median(took):.0f} ms", "50 ms")
    time_ms = asking(shop, "GET", "/api/v1/chart?metal=aluminium-5052-h32")()
    figures.add("GET /chart, cold", f"{time_ms:.0f} ms, {time_ms / nothing:.0f} times /health")


def added(shop: Shop, part: dict[str, object]) -> str:
    """The code of a new card."""
    body = json.dumps({"part": part}).encode()
    headers = {"Content-Type": "application/json"}
    asked = urllib.request.Request(f"{shop.address}/api/v1/cards", body, headers)
    with urllib.request.urlopen(asked, timeout=60) as answer:
        return str(json.load(answer)["code"])


def test_sheets_with_a_label_of_each_of_200_cards(shop: Shop, figures: Figures) -> None:
    part = {
        "metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 300,
        "flats_mm": [40, 60], "bends": [{"included_angle_deg": 90, "direction": "up"}],
    }  # fmt: skip
    made = [added(shop, {**part, "title": str(number)}) for number in range(200)]
    codes = ",".join(made)
    nothing = statistics.median(asking(shop, "GET", "/api/v1/health")() for _ in range(ROUNDS))
    for size in ("50x25", "100x50"):
        query = f"codes={codes}&size={size}"
        pages = shop.get(f"/api/v1/labels/sheet.json?{query}")["pages"]
        took = [
            asking(shop, "GET", f"/api/v1/labels/sheet.svg?{query}&page={page}")()
            for page in range(1, pages + 1)
        ]
        time_ms = sum(took)
        figure = f"{time_ms:.0f} ms, {time_ms / nothing:.0f} times /health"
        figures.add(f"200 labels of {size}, {pages} sheets", figure, "1 s")
