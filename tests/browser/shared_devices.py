"""Devices that tests share: the app stays on them, all else goes before each test.

A device's first visit fetches the whole app into it, which takes longer than most tests. So the
first test on a device sees the app arrive, and the others find it there. What is tested of a
first visit takes a device of its own.
"""

from __future__ import annotations

from typing import Any

from playwright.sync_api import Browser, BrowserContext, Page

# What an app can keep, but for its own files (service worker and cache).
KEPT = "cookies,file_systems,indexeddb,local_storage,websql"


class Devices:
    """The devices of one browser, made when they are first asked for."""

    def __init__(self, browser: Browser) -> None:
        self._browser = browser
        self._free: list[tuple[dict[str, Any], BrowserContext]] = []
        self._in_use: list[tuple[dict[str, Any], BrowserContext]] = []

    def take(self, **kind: Any) -> Page:
        """A page on a device of this kind that nobody else in the test has."""
        device = next((free for free in self._free if free[0] == kind), None)
        if device:
            self._free.remove(device)
        else:
            device = (kind, _started(self._browser, kind))
        self._in_use.append(device)
        return _emptied(_opened(device[1]))

    def give_back(self) -> None:
        """When the test is over: close what is open on the devices."""
        for _, context in self._in_use:
            context.unroute_all(behavior="ignoreErrors")
            for page in context.pages[1:]:
                page.close()
        self._free += self._in_use
        self._in_use.clear()

    def close(self) -> None:
        """When all tests are over."""
        for _, context in self._free:
            context.close()


def _started(browser: Browser, kind: dict[str, Any]) -> BrowserContext:
    """A device with an empty page that stays open.

    It is of the shop's site, so the process that has read and compiled the app stays, too.
    """
    context = browser.new_context(**{"locale": "en-GB", **kind})
    context.set_default_timeout(60_000)  # a busy machine may take long
    stays = context.new_page()
    stays.route("**", lambda route: route.fulfill(body="", content_type="text/html"))
    stays.goto("http://127.0.0.1/")
    return context


def _opened(context: BrowserContext) -> Page:
    """A new page, opened from the one that stays: else it begins in a process of its own, which
    is thrown away as soon as the page shows the shop."""
    stays = context.pages[0]
    with stays.expect_popup() as opened:
        stays.evaluate("() => { open('about:blank').opener = null; }")
    return opened.value


def _emptied(page: Page) -> Page:
    session = page.context.new_cdp_session(page)
    session.send("Storage.clearDataForOrigin", {"origin": "*", "storageTypes": KEPT})
    session.send("Network.clearBrowserCache")
    session.detach()
    page.context.clear_cookies()
    return page
