"""A real Chromium on a real server. A test fails on any error in the browser's console."""

from __future__ import annotations

import functools
import json
import os
import re
import shutil
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from browsing import PHONE, SILENCE, WIDE, call, plain_angle, show
from crowd import busy
from playwright.sync_api import (
    Browser,
    BrowserContext,
    BrowserType,
    ConsoleMessage,
    Page,
    expect,
)
from secure import SecureShop, trusting
from shared_devices import Devices
from shop_process import Crib, ShopProcess, free_ports

# How long a busy machine may take; what is looked for, not how soon it comes, is tested.
expect.set_options(timeout=20_000)

# Only Linux brings a WebKit that can be driven.
collect_ignore = [] if sys.platform.startswith("linux") else ["test_webkit.py"]

DEMO = Path(__file__).resolve().parents[2] / "demo_data"
# What a browser does for its own user, who is nobody here. Playwright gives such a list too, but
# the last one holds: so this has Playwright's, and first the suggestions under the address bar,
# pages of their own that cost each new device more time than the shop's.
OFF = """
    WebUIOmniboxPopup WebUIOmniboxAimPopup WebUIOmniboxFullPopup
    AimEnabled AvoidCorsURLLoaderRestartOnRedirect AvoidUnnecessaryBeforeUnloadCheckSync
    DestroyProfileOnBrowserClose HttpsFirstBalancedModeAutoEnable HttpsUpgrades LensOverlay
    MediaRouter NetworkTimeServiceQuerying OptimizationHints PaintHolding PreconnectToSearch
    TcpPortRandomizationWin ThirdPartyStoragePartitioning
"""
FLAGS = [
    f"--disable-features={','.join(OFF.split())}",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    # A device's pages share a process: each page need not compile the whole app again.
    "--process-per-site",
]


@pytest.fixture(scope="session")
def browser_type_launch_args(browser_type_launch_args: dict[str, Any]) -> dict[str, Any]:
    """The machine's own Chromium, which talks to nobody but the test's server."""
    path = os.environ.get("CHROMIUM") or shutil.which("chromium") or shutil.which("google-chrome")
    if not path:
        pytest.fail("No Chromium found. Set CHROMIUM to its path.")
    return {
        **browser_type_launch_args,
        "executable_path": path,
        "chromium_sandbox": False,
        "args": FLAGS,
    }


@pytest.fixture(scope="session")
def ports() -> Callable[[str], int]:
    """Where the servers of one kind answer, one after the other, whichever file they are for: a
    device that has the app of one has it for the next."""
    return functools.cache(lambda kind: free_ports(3))


@pytest.fixture(scope="module")
def shop_server(
    demo_data: Path, tmp_path_factory: pytest.TempPathFactory, ports: Callable[[str], int]
) -> Iterator[ShopProcess]:
    """A server with the demo shop for a file's tests that leave it running.

    Another for each file: what one file's results teach the shop changes what others plan.
    """
    data = tmp_path_factory.mktemp("shared") / "shop"
    shutil.copytree(demo_data, data)
    server = ShopProcess(data, port=ports("shared")).start()
    yield server
    server.stop()


@pytest.fixture(scope="module")
def first_crib(shop_server: ShopProcess) -> Crib:
    """Press, tools and metals of the file's server before its tests change them."""
    return shop_server.crib()


@pytest.fixture
def crib_server(shop_server: ShopProcess, first_crib: Crib) -> ShopProcess:
    """The file's server with its first press, tools and metals; the test may change them."""
    shop_server.put_back(first_crib)
    return shop_server


@pytest.fixture
def own_server(
    demo_data: Path, tmp_path: Path, ports: Callable[[str], int]
) -> Iterator[ShopProcess]:
    """A server with the demo shop that the test may kill."""
    data = tmp_path / "shop"
    shutil.copytree(demo_data, data)
    server = ShopProcess(data, port=ports("own")).start()
    yield server
    server.stop()


@pytest.fixture(scope="module")
def empty_server(
    tmp_path_factory: pytest.TempPathFactory, ports: Callable[[str], int]
) -> Iterator[ShopProcess]:
    """A server on its first day, for a file's tests: no press, no tools, no cards."""
    data = tmp_path_factory.mktemp("first") / "empty"
    server = ShopProcess(data, "--empty", port=ports("empty")).start()
    yield server
    server.stop()


@pytest.fixture
def new_server(tmp_path: Path, ports: Callable[[str], int]) -> Iterator[ShopProcess]:
    """The same for one test, which may fill it."""
    server = ShopProcess(tmp_path / "new", "--empty", port=ports("new")).start()
    yield server
    server.stop()


@pytest.fixture
def demo_codes(shop_server: ShopProcess) -> dict[str, str]:
    """The demo cards' codes by title, without the cards that other tests have made."""
    demo = json.loads((DEMO / "parts.json").read_text("utf-8"))["cards"]
    titles = {card["part"]["title"] for card in demo}
    cards = call(f"{shop_server.url}/api/v1/cards?limit=200")["cards"]
    return {card["title"]: card["code"] for card in cards if card["title"] in titles}


@pytest.fixture
def new_card(shop_server: ShopProcess) -> Callable[[str], str]:
    """Makes a plain angle with a title; its code. What the shop's tests measured before is marked
    wrong, so that its plan is the same whichever test ran first."""

    def make(title: str) -> str:
        for metal in call(f"{shop_server.url}/api/v1/metals")["metals"]:
            path = f"{shop_server.url}/api/v1/test-bends?metal={metal['code']}"
            for row in call(path)["evidence"]:
                if not row["forgotten"]:
                    call(f"{shop_server.url}/api/v1/evidence/{row['id']}/forget", "POST", {})
        body = {"part": plain_angle(title)}
        return str(call(f"{shop_server.url}/api/v1/cards", "POST", body)["code"])

    return make


@pytest.fixture(scope="session")
def axe(root: Path) -> str:
    """The checker's source. It goes in past the page's security policy, as a debugger does."""
    file = root / "tests/web_tools/node_modules/axe-core/axe.min.js"
    if not file.exists():
        pytest.fail("axe-core is not installed: run tests/run, or npm ci in tests/web_tools.")
    return file.read_text("utf-8")


class Watched:
    """What went wrong in the browser while a test ran, except for what the test expects."""

    def __init__(self) -> None:
        self.faults: list[str] = []
        self._expected: list[re.Pattern[str]] = []

    def expect(self, words: str) -> None:
        """Faults with these words belong to the test, such as a killed server's silence."""
        self._expected.append(re.compile(words))

    def watch(self, page: Page) -> Page:
        """Listen to a page's console and to what it throws."""
        page.on("console", self._hear)
        page.on("pageerror", lambda error: self.faults.append(f"thrown: {error}"))
        return page

    def unexpected(self) -> list[str]:
        """What nobody expected."""
        return [f for f in self.faults if not any(e.search(f) for e in self._expected)]

    def _hear(self, message: ConsoleMessage) -> None:
        if message.type in ("error", "warning"):
            self.faults.append(f"{message.type}: {message.text} ({message.location.get('url')})")


@pytest.fixture
def console() -> Iterator[Watched]:
    """The browser's faults of this test; the test fails if one was not expected."""
    watched = Watched()
    yield watched
    assert watched.unexpected() == []


@pytest.fixture(scope="session")
def all_devices(browser: Browser) -> Iterator[Devices]:
    """The devices that tests share."""
    devices = Devices(browser)
    yield devices
    devices.close()


@pytest.fixture
def devices(all_devices: Devices) -> Iterator[Devices]:
    """The same, for one test: nothing of the tests before is on them, but the app may be."""
    yield all_devices
    all_devices.give_back()


@pytest.fixture
def context_of(browser: Browser) -> Iterator[Callable[..., BrowserContext]]:
    """A fresh device: its own storage, closed after the test."""
    made: list[BrowserContext] = []

    def new(viewport: dict[str, int], **more: Any) -> BrowserContext:
        made.append(browser.new_context(viewport=viewport, locale="en-GB", **more))
        made[-1].set_default_timeout(60_000)  # a busy machine may take long
        return made[-1]

    yield new
    for context in made:
        context.close()


@pytest.fixture(scope="module")
def secure_shop(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[SecureShop]:
    """A server on the shop's network, for a file's tests."""
    data = tmp_path_factory.mktemp("secure") / "shop"
    shutil.copytree(demo_data, data)
    shop = SecureShop(data)
    shop.start()
    yield shop
    shop.stop()


@pytest.fixture(scope="module")
def busy_shop(secure_shop: SecureShop) -> SecureShop:
    """The same with benches at work and something to settle."""
    return busy(secure_shop)


@pytest.fixture(scope="module")
def secure_browser(
    browser_type: BrowserType, secure_shop: SecureShop, browser_type_launch_args: dict[str, Any],
    tmp_path_factory: pytest.TempPathFactory,
) -> Iterator[Browser]:  # fmt: skip
    """A browser that trusts its authority."""
    home = tmp_path_factory.mktemp("home")
    with trusting(browser_type, home, secure_shop.authority, browser_type_launch_args) as browser:
        yield browser


@pytest.fixture
def device(secure_browser: Browser, console: Watched) -> Iterator[Callable[..., Page]]:
    """A device with a profile of its own."""
    made: list[BrowserContext] = []

    def new(viewport: dict[str, int] = PHONE) -> Page:
        made.append(secure_browser.new_context(viewport=viewport, locale="en-GB"))
        made[-1].set_default_timeout(20_000)
        return console.watch(made[-1].new_page())

    yield new
    for context in made:
        context.close()


@pytest.fixture
def phone(devices: Devices, console: Watched) -> Page:
    """A page on a phone."""
    return console.watch(devices.take(viewport=PHONE, has_touch=True))


@pytest.fixture
def kept(phone: Page, own_server: ShopProcess, console: Watched) -> Page:
    """A phone that has been in the shop once: app and cards are on it. The shop may be killed."""
    console.expect(SILENCE)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    return phone


@pytest.fixture
def wide(devices: Devices, console: Watched) -> Page:
    """A page on a wide screen."""
    return console.watch(devices.take(viewport=WIDE))


@pytest.fixture(params=["phone", "wide"])
def page(request: pytest.FixtureRequest) -> Page:
    """The test runs on a phone and on a wide screen."""
    chosen: Page = request.getfixturevalue(request.param)
    return chosen
