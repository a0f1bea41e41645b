"""How the browser tests move about: open a screen, wait for it, ask the API past the browser."""

from __future__ import annotations

import json
import urllib.request
from typing import Any

from playwright.sync_api import Locator, Page

PHONE = {"width": 390, "height": 844}
WIDE = {"width": 1920, "height": 1080}
# What a browser's console says of a server that was killed, maybe in the middle of an answer.
SILENCE = (
    "net::ERR_(CONNECTION_(REFUSED|RESET|CLOSED|ABORTED)|SOCKET_NOT_CONNECTED|EMPTY_RESPONSE"
    "|CONTENT_LENGTH_MISMATCH|INCOMPLETE_CHUNKED_ENCODING)"
)


def show(page: Page, address: str, ready: str) -> Page:
    """Open an address of the app and wait until its data is on the screen."""
    page.goto(address)
    return wait_ready(page, ready)


def wait_ready(page: Page, name: str) -> Page:
    """Wait until a screen says that its data is shown."""
    page.wait_for_selector(f"html[data-ready={name}]")
    return page


def by_test(page: Page | Locator, name: str) -> Locator:
    """The element a screen names for tests."""
    return page.locator(f'[data-test="{name}"]')


def call(url: str, method: str = "GET", body: Any = None, etag: str = "") -> Any:
    """Ask the API directly, past the browser."""
    headers = {"Content-Type": "application/json", **({"If-Match": etag} if etag else {})}
    data = None if body is None else json.dumps(body).encode()
    asked = urllib.request.Request(url, data=data, headers=headers, method=method)
    with urllib.request.urlopen(asked, timeout=20) as answer:
        return json.load(answer)


def sideways(page: Page) -> float:
    """How far the page is wider than the screen [px]."""
    return float(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
