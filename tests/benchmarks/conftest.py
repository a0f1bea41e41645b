"""Measurements: a real server and a real Chromium; a table at the end, no verdict on time."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser

from .many_cards import MANY, add_cards

PATIENCE_S = 120


@dataclass
class Figures:
    """What was measured: what, the figure, the goal."""

    rows: list[tuple[str, str, str]] = field(default_factory=list)

    def add(self, what: str, figure: str, goal: str = "") -> None:
        self.rows.append((what, figure, goal))


_FIGURES = Figures()


@pytest.fixture(scope="session")
def figures() -> Figures:
    """Where measurements are put down; the table is printed at the end."""
    return _FIGURES


@pytest.hookimpl(tryfirst=True)
def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print the table, as the README shows it."""
    if not _FIGURES.rows:
        return
    terminalreporter.section("measurements")
    rows = [("what", "figure", "goal"), *_FIGURES.rows]
    widths = [max(len(row[i]) for row in rows) for i in range(3)]
    rows.insert(1, ("-" * widths[0], "-" * widths[1], "-" * widths[2]))
    for row in rows:
        cells = (cell.ljust(width) for cell, width in zip(row, widths, strict=True))
        terminalreporter.write_line(f"| {' | '.join(cells)} |")


@dataclass
class Shop:
    """A server in a process of its own."""

    process: subprocess.Popen[str]
    address: str
    started_s: float

    def get(self, path: str) -> Any:
        with urllib.request.urlopen(self.address + path, timeout=PATIENCE_S) as answer:
            return json.load(answer)

    def memory_mb(self) -> float:
        """Resident memory [MB]."""
        told = subprocess.run(
            ["ps", "-o", "rss=", "-p", str(self.process.pid)],
            capture_output=True, text=True, check=True,
        )  # fmt: skip
        return int(told.stdout) / 1024

    def kill(self) -> None:
        if self.process.poll() is None:
            self.process.kill()
            self.process.communicate()


def start(data: Path, *more: str) -> Shop:
    """Start a server on that folder and wait until it is ready."""
    command = [sys.executable, "-m", "flangebook", "serve", "--port", "0", "--data", str(data),
               *more]  # fmt: skip
    began = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    line = process.stdout.readline()
    took = time.perf_counter() - began
    found = re.search(r"http://[\d.]+:\d+", line)
    assert found, line
    return Shop(process, found[0], took)


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Shop]:
    """A server with the demo shop."""
    running = start(tmp_path_factory.mktemp("shop"))
    yield running
    running.kill()


@pytest.fixture(scope="module")
def many(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Shop]:
    """A server on a shop of 5,000 cards, with no worker yet."""
    data = tmp_path_factory.mktemp("many")
    start(data).kill()
    add_cards(root, data, MANY)
    running = start(data)
    yield running
    running.kill()


@pytest.fixture(scope="session")
def browser_type_launch_args(browser_type_launch_args: dict[str, Any]) -> dict[str, Any]:
    """The machine's own Chromium."""
    path = os.environ.get("CHROMIUM") or shutil.which("chromium")
    return {**browser_type_launch_args, "executable_path": path, "chromium_sandbox": False}


@pytest.fixture
def phone(browser: Browser) -> Iterator[Any]:
    """A fresh phone."""
    context = browser.new_context(viewport={"width": 390, "height": 844})
    context.set_default_timeout(PATIENCE_S * 1000)
    yield context.new_page()
    context.close()
