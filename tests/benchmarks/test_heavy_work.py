"""Heavy work beside everybody else's: four of the worst plans at once, and twenty after another.

Waiting is compared with the same requests asked before, in the same run.
"""

from __future__ import annotations

import json
import os
import signal
import statistics
import subprocess
import threading
import time
import urllib.request
from pathlib import Path
from typing import Any

import pytest
from heavy_parts import worst_box

from .conftest import PATIENCE_S, Figures, Shop, start
from .many_cards import MANY, add_cards, use

pytestmark = pytest.mark.benchmark
ASKED_S = float(os.environ.get("FLANGEBOOK_HEAVY_S", "15"))
BEND = {"metal": "mild-steel-cr", "thickness_mm": 2, "included_angle_deg": 90}


def six_bends(number: int) -> dict[str, Any]:
    bends = [{"included_angle_deg": 90, "direction": d} for d in ("up", "up", "down") * 2]
    flats = [40, 60, 30, 40 + number, 30, 60, 40]
    return {"title": "", "metal": "mild-steel-cr", "thickness_mm": 1.5, "bend_length_mm": 400,
            "flats_mm": flats, "bends": bends}  # fmt: skip


def posted(shop: Shop, path: str, body: dict[str, Any]) -> float:
    """How long the answer took [s]."""
    request = urllib.request.Request(
        f"{shop.address}/api/v1/{path}", json.dumps(body).encode(),
        {"Content-Type": "application/json"},
    )  # fmt: skip
    began = time.perf_counter()
    with urllib.request.urlopen(request, timeout=PATIENCE_S) as answer:
        answer.read()
    return time.perf_counter() - began


class Planning:
    """So many worst plans at once, one after another, until the block ends."""

    def __init__(self, shop: Shop, count: int) -> None:
        self._shop, self._over, self._number = shop, threading.Event(), 0
        self._threads = [threading.Thread(target=self._plan) for _ in range(count)]

    def _plan(self) -> None:
        while not self._over.is_set():
            self._number += 1
            posted(self._shop, "plan", worst_box(400 + self._number))

    def __enter__(self) -> None:
        for one in self._threads:
            one.start()
        time.sleep(1.0)

    def __exit__(self, *_: object) -> None:
        self._over.set()
        for one in self._threads:
            one.join()


def waits(shop: Shop, code: str) -> dict[str, list[float]]:
    """How long others wait [s], sorted, asked for some seconds."""
    took: dict[str, list[float]] = {"health": [], "a card": [], "a new bend": []}
    until, number = time.monotonic() + ASKED_S, 0
    while time.monotonic() < until:
        for what, path in (("health", "/api/v1/health"), ("a card", f"/api/v1/cards/{code}")):
            began = time.perf_counter()
            shop.get(path)
            took[what].append(time.perf_counter() - began)
        number += 1
        if number % 10 == 0:
            bend = {**BEND, "bend_length_mm": 300 + time.monotonic() % 1000}
            took["a new bend"].append(posted(shop, "bend", bend))
        time.sleep(0.01)
    return {what: sorted(times) for what, times in took.items()}


def p99_ms(times: list[float]) -> float:
    return times[int(len(times) * 0.99)] * 1000


def test_waiting_while_four_worst_plans_run(many: Shop, figures: Figures) -> None:
    code = many.get("/api/v1/cards?limit=1")["cards"][0]["code"]
    posted(many, "bend", {**BEND, "bend_length_mm": 1.5})
    alone = waits(many, code)
    with Planning(many, 4):
        beside = waits(many, code)
    for what in alone:
        before, after = p99_ms(alone[what]), p99_ms(beside[what])
        figures.add(
            f"four worst plans at once: {what}, 1 in 100 over",
            f"{after:.0f} ms ({after / before:.1f} times alone)",
            "250 ms" if what != "a new bend" else "",
        )


def workers_mb(shop: Shop) -> list[float]:
    """The memory of each process that the server started [MB]."""
    told = subprocess.run(
        ["ps", "-A", "-o", "ppid=,rss="], capture_output=True, text=True, check=True
    )
    rows = (line.split() for line in told.stdout.splitlines())
    return [int(rss) / 1024 for parent, rss in rows if int(parent) == shop.process.pid]


def test_memory_of_server_and_workers(root: Path, tmp_path: Path, figures: Figures) -> None:
    start(tmp_path).kill()
    add_cards(root, tmp_path, MANY)
    shop = start(tmp_path)
    try:
        use(shop)
        figures.add(f"memory with {MANY} cards in use, no plan yet", f"{shop.memory_mb():.0f} MB",
                    "120 MB")  # fmt: skip
        with Planning(shop, 4):
            server, workers = shop.memory_mb(), workers_mb(shop)
        figures.add(
            "while four worst plans run: server; each worker",
            f"{server:.0f} MB; {', '.join(f'{one:.0f}' for one in sorted(workers))} MB",
        )
        for number in range(20):
            posted(shop, "plan", worst_box(1400 + number))
        figures.add("after twenty worst plans: server", f"{shop.memory_mb():.0f} MB", "120 MB")
    finally:
        shop.kill()


def test_first_answers(tmp_path: Path, figures: Figures) -> None:
    """By a worker that is there already beside the server itself, asked in turns; and by one that
    has to be started first."""
    apart, alone = start(tmp_path / "apart"), start(tmp_path / "alone", "--one-process")
    try:
        for number in range(3):
            for shop in (apart, alone):
                posted(shop, "plan", six_bends(number))
        for what, path, body in (
            ("POST /plan, six bends, never asked", "plan", six_bends),
            ("POST /bend, another length", "bend", lambda n: {**BEND, "bend_length_mm": 70.5 + n}),
        ):
            both = [(posted(apart, path, body(n)), posted(alone, path, body(n)))
                    for n in range(10, 31)]  # fmt: skip
            here, there = (statistics.median(times) for times in zip(*both, strict=True))
            figures.add(
                f"{what}, by a worker that is there",
                f"{here * 1000:.0f} ms ({here / there:.1f} times the server itself)",
            )
        for one in _numbers(apart):
            os.kill(one, signal.SIGKILL)
        time.sleep(0.2)
        cold = posted(apart, "bend", {**BEND, "bend_length_mm": 1234.5})
        figures.add("POST /bend, no worker there yet", f"{cold:.1f} s")
    finally:
        apart.kill()
        alone.kill()


def _numbers(shop: Shop) -> list[int]:
    told = subprocess.run(
        ["ps", "-A", "-o", "ppid=,pid="], capture_output=True, text=True, check=True
    )
    rows = (line.split() for line in told.stdout.splitlines())
    return [int(pid) for parent, pid in rows if int(parent) == shop.process.pid]
