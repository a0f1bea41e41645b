"""Two labels opened in turn, each as soon as the last one is shown: how many pages stay empty.

In Chromium and in WebKit, in one tab, in two, and while another tab fetches all cards for the first
time. What a page was writing when it is left may hold the next one up.
"""

from __future__ import annotations

import os
import shutil
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from .conftest import PATIENCE_S, Figures, Shop
from .many_cards import MANY

pytestmark = pytest.mark.benchmark
LOADS = int(os.environ.get("FLANGEBOOK_LOADS", "300"))
EMPTY_S = 30.0  # so long without a card on the screen
TURNS = [("/c/STEP6BQ", "card"), ("/c/TRAY4CH/step/2", "step")]
STATE = "{ ...document.documentElement.dataset }"
KEPT = """new Promise((done) => {
  indexedDB.open("flangebook").onsuccess = ({ target: { result: db } }) => {
    const read = db.transaction(["cards", "meta"]);
    const count = read.objectStore("cards").count();
    const more = read.objectStore("meta").get("more");
    read.oncomplete = () => done([count.result, more.result === false]);
    db.close();
  };
})"""
FORGET = """new Promise((done) => {
  indexedDB.open("flangebook").onsuccess = ({ target: { result: db } }) => {
    const write = db.transaction(["cards", "list", "meta"], "readwrite");
    for (const name of write.objectStoreNames) write.objectStore(name).clear();
    write.oncomplete = () => done(true);
    db.close();
  };
})"""


@dataclass
class Tabs:
    """A browser with some tabs: open an address in one, ask one what an expression comes to."""

    go: Callable[[int, str], Any]
    ask: Callable[[int, str], Any]


@pytest.fixture
def chromium(browser: Browser) -> Iterator[Tabs]:
    context = browser.new_context(viewport={"width": 390, "height": 844})
    context.set_default_timeout(PATIENCE_S * 1000)
    pages: list[Page] = [context.new_page(), context.new_page()]
    yield Tabs(
        lambda tab, address: pages[tab].goto(address),
        lambda tab, expression: pages[tab].evaluate(f"() => ({expression})"),
    )
    context.close()


@pytest.fixture
def webkit(tmp_path: Path) -> Iterator[Tabs]:
    if not sys.platform.startswith("linux") or not shutil.which("WebKitWebDriver"):
        pytest.fail("No WebKit that can be driven: only Linux brings one.")
    from webkit import WebKit, screen

    with ExitStack() as stack:
        phone = WebKit(stack.enter_context(screen(tmp_path / "home")))
        stack.callback(phone.close)
        handles = [phone.driver.current_window_handle]
        phone.driver.switch_to.new_window("tab")
        handles.append(phone.driver.current_window_handle)

        def go(tab: int, address: str) -> None:
            phone.driver.switch_to.window(handles[tab])
            phone.driver.get(address)

        def ask(tab: int, expression: str) -> Any:
            phone.driver.switch_to.window(handles[tab])
            script = f"const done = arguments[0]; Promise.resolve({expression}).then(done);"
            return phone.driver.execute_async_script(script)

        yield Tabs(go, ask)


@pytest.fixture(params=["chromium", "webkit"])
def tabs(request: pytest.FixtureRequest) -> tuple[str, Tabs]:
    return request.param, request.getfixturevalue(request.param)


def shown(tabs: Tabs, tab: int, address: str, ready: str) -> dict[str, Any]:
    """Open it; how the page stands once it is shown, or has been empty for too long."""
    tabs.go(tab, address)
    end = time.monotonic() + EMPTY_S
    while (state := tabs.ask(tab, STATE)).get("ready") != ready and time.monotonic() < end:
        time.sleep(0.01)
    return {**state, "empty": state.get("ready") != ready}


def words(states: list[dict[str, Any]]) -> str:
    """What came of the loads."""
    empty = sum(state["empty"] for state in states)
    silent = sum(bool(state.get("storage")) for state in states)
    return f"{empty} empty, {silent} with the shop's answer since storage kept still for a second"


@pytest.mark.parametrize("many_tabs", [1, 2])
def test_labels_in_turn(
    tabs: tuple[str, Tabs], shop: Shop, figures: Figures, many_tabs: int
) -> None:
    name, browser = tabs
    shown(browser, 0, shop.address, "home")
    began = time.monotonic()
    states = []
    for load in range(LOADS):
        path, ready = TURNS[(load // many_tabs) % 2]
        states.append(shown(browser, load % many_tabs, shop.address + path, ready))
    figures.add(
        f"{name}, {LOADS} loads in {many_tabs} tab{'s' * (many_tabs > 1)}",
        f"{words(states)}; {(time.monotonic() - began) / LOADS:.2f} s a load",
        "0 empty",
    )
    assert not any(state["empty"] for state in states)


def test_labels_in_turn_during_a_first_sync(
    tabs: tuple[str, Tabs], many: Shop, figures: Figures
) -> None:
    name, browser = tabs
    shown(browser, 1, many.address, "home")
    anew, kept = 0, 0
    states = []
    for load in range(LOADS):
        path, ready = TURNS[load % 2]
        states.append(shown(browser, 0, many.address + path, ready))
        if load % 10 == 9:
            kept, complete = browser.ask(1, KEPT)
            if complete and browser.ask(1, FORGET):
                anew += 1
    figures.add(
        f"{name}, {LOADS} loads during a first sync of {MANY}",
        f"{words(states)}; {kept} cards kept by then, begun anew {anew} times",
        "0 empty",
    )
    assert not any(state["empty"] for state in states)
    end = time.monotonic() + 600
    while not browser.ask(1, KEPT)[1] and time.monotonic() < end:
        time.sleep(1)
    assert browser.ask(1, KEPT)[0] >= MANY
