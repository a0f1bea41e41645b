"""How the browser tests move about: open a screen, wait for it, ask the API past the browser."""

from __future__ import annotations

import json
import time
import urllib.request
from collections.abc import Callable
from contextlib import suppress
from typing import Any
from urllib.parse import urlsplit

from playwright.sync_api import Error, Locator, Page, Request, Route

PHONE = {"width": 390, "height": 844}
WIDE = {"width": 1920, "height": 1080}
# Small and large phones, half a tablet's screen and all of it [px].
WIDTHS = (320, 360, 390, 500, 768)
# What a browser's console says of a server that was killed, maybe in the middle of an answer.
SILENCE = (
    "net::ERR_(CONNECTION_(REFUSED|RESET|CLOSED|ABORTED)|SOCKET_NOT_CONNECTED|EMPTY_RESPONSE"
    "|CONTENT_LENGTH_MISMATCH|INCOMPLETE_CHUNKED_ENCODING)"
)
QUIET_S = 0.5
# Another screen of the app that is open, as Back shows it.
GO = """path => {
  history.pushState(null, "", path);
  dispatchEvent(new PopStateEvent("popstate"));
}"""


def plain_angle(title: str) -> dict[str, Any]:
    """The plainest part that can be a card."""
    return {
        "title": title,
        "metal": "mild-steel-cr",
        "thickness_mm": 2,
        "bend_length_mm": 200,
        "flats_mm": [40, 60],
        "bends": [{"included_angle_deg": 90, "direction": "up"}],
    }


def losing(method: str, lost: list[int], times: int = 1) -> Callable[[Route], None]:
    """A handler of routes: the first calls made so are answered, and the page never hears it.

    ``lost`` gets the status of each such answer; all other calls go through.
    """

    def lose(route: Route) -> None:
        if route.request.method != method or len(lost) == times:
            route.continue_()
            return
        lost.append(route.fetch().status)
        with suppress(Error):  # the page gave up waiting
            route.abort("connectionreset")

    return lose


def show(page: Page, address: str, ready: str) -> Page:
    """Open an address of the app and wait until its data is on the screen."""
    page.goto(address)
    return wait_ready(page, ready)


def unfold(page: Page | Locator) -> None:
    """Open what a phone folds away."""
    page.locator("details.fold").evaluate_all("all => all.forEach(one => { one.open = true; })")


def visit(page: Page, address: str, ready: str) -> Page:
    """Open an address in the app that the page has open already, if it has one of that shop's."""
    to, here = urlsplit(address), urlsplit(page.url)
    if to.netloc != here.netloc:
        return show(page, address, ready)
    return go_to(page, f"{to.path}?{to.query}" if to.query else to.path, ready)


def go_to(page: Page, path: str, ready: str) -> Page:
    """Show another screen of the app that is open, as Back does: no page is loaded again."""
    page.evaluate(GO, path)
    return wait_ready(page, ready)


class Traffic:
    """What a page has asked for and not got yet."""

    def __init__(self, page: Page) -> None:
        self._page = page
        self._on_its_way: set[Request] = set()
        self._last = time.monotonic()
        page.on("request", self._asked)
        page.on("requestfinished", self._over)
        page.on("requestfailed", self._over)

    def wait_quiet(self) -> None:
        """Wait until nothing was on its way for half a second, as "networkidle" does for a page
        that is loaded."""
        self._last = time.monotonic()
        while self._on_its_way or time.monotonic() - self._last < QUIET_S:
            self._page.wait_for_timeout(100)

    def _asked(self, request: Request) -> None:
        self._on_its_way.add(request)
        self._last = time.monotonic()

    def _over(self, request: Request) -> None:
        self._on_its_way.discard(request)
        self._last = time.monotonic()


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
    """How far the page is wider than the screen [px]; a phone's, than any phone's or tablet's."""
    size = page.viewport_size
    if size != PHONE:
        return _wider(page)
    worst = -1.0
    for width in WIDTHS:
        page.set_viewport_size({**PHONE, "width": width})
        worst = max(worst, _wider(page))
    page.set_viewport_size(PHONE)
    return worst


def _wider(page: Page) -> float:
    return float(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
