"""Screens that need something to have happened, or somebody else's device, to be as they can be."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from urllib.parse import urljoin

from addresses import CARD
from browsing import Traffic, by_test, call, go_to, show
from playwright.sync_api import BrowserContext, Page
from secure import SecureShop

BENCHES = {"1": (CARD, 3), "2": (CARD, 7), "Big press": (None, 0)}  # a step, done, nothing yet

RUN_ID = "2f6f5a1c-6a52-4d77-9d1c-5b0a5b4e9a01"
RUN_AT = "2026-01-05T08:00:00Z"
RUN = ({"kind": "begun", "pieces": 2000}, {"kind": "piece"}, {"kind": "scrap", "step": 2})

JOIN = "/join"  # a page by itself, no screen of the app


@dataclass(frozen=True)
class State:
    """A screen on somebody's device. click: pressed first, by its name for tests."""

    who: str
    address: str
    ready: str
    click: str = ""


STATES = [
    State("owner", "/crew", "crew", "show-code"),
    State("owner", "/pair", "pair"),
    State("owner", "/shop", "shop"),
    State("owner", f"/c/{CARD}", "card"),
    State("owner", f"/c/{CARD}/step/3", "step"),
    State("owner", f"/c/{CARD}/resolve", "resolve"),
    State("owner", f"/c/{CARD}/history", "history"),
    State("owner", "/press-screen", "press-screen"),
    *[State(f"bench {name}", "/press-screen", "press-screen") for name in BENCHES],
    State("stranger", "/", "pair"),
    State("newcomer", JOIN, "join"),
    State("operator", "/crew", "not-yours"),
    State("operator", f"/c/{CARD}/note", "note"),
    State("operator", f"/c/{CARD}/result/3", "result"),
    State("operator", "/shop/dies/V32", "tool"),
    State("operator", "/shop/metals/stainless-304", "tool"),
    State("operator", "/shop/press", "press"),
    State("operator", "/part", "part"),
    State("operator", "/settings", "settings"),
]


def busy(shop: SecureShop) -> SecureShop:
    """Benches at work, a run under way, and two changes of a card that met."""
    api = f"{shop.url}/api/v1"
    for name, (code, step) in BENCHES.items():
        call(f"{api}/press-screens/{name.replace(' ', '%20')}", "PUT", {"code": code, "step": step})
    card = call(f"{api}/cards/{CARD}")
    proposal = {
        "id": "6f1d2c3b-8a4e-4f5a-9b6c-7d8e9f0a1b2c", "revision": card["revision"], "by": "Ann",
        "changes": {"note": "Oil the die.", "title": "Book display"},
        "before": {"note": "", "title": card["title"]}, "made_at": "2026-01-05T08:00:00Z",
    }  # fmt: skip
    call(f"{api}/cards/{CARD}/proposals", "POST", proposal)
    for number, what in enumerate(RUN):
        entry = {"id": f"00000000-0000-4000-8000-{number:012d}", "run_id": RUN_ID, "revision": 1}
        call(f"{api}/cards/{CARD}/runs", "POST", {**entry, "made_at": RUN_AT, **what})
    return shop


class Crew:
    """Everybody's device, by plain http, where a paired device is known by its cookie too."""

    def __init__(self, shop: SecureShop, device: Callable[[], BrowserContext]) -> None:
        self._shop = shop
        self._device = device
        self._pages: dict[str, tuple[Page, Traffic]] = {}

    def states(self, size: tuple[int, int]) -> Iterator[tuple[State, Page]]:
        """Each state on its device, in a window of this size [px]."""
        for state in STATES:
            page, traffic = self._page(state.who)
            page.set_viewport_size({"width": size[0], "height": size[1]})
            if state.address == JOIN:
                show(page, urljoin(page.url, JOIN), state.ready)
            else:
                go_to(page, state.address, state.ready)
            if state.click:
                by_test(page, state.click).click()
                by_test(page, state.click).wait_for(state="detached")
            traffic.wait_quiet()
            yield state, page

    def screen(self, who: str, address: str, ready: str) -> Page:
        """A screen on somebody's device."""
        return go_to(self._page(who)[0], address, ready)

    def _page(self, who: str) -> tuple[Page, Traffic]:
        if who not in self._pages:
            page = self._device().new_page()
            traffic = Traffic(page)
            page.goto(_door(self._shop, who, page))
            page.wait_for_selector("html[data-ready]")
            self._pages[who] = page, traffic
        return self._pages[who]


def _door(shop: SecureShop, who: str, page: Page) -> str:
    """Where a device comes in, which by then is who it says."""
    if who == "owner":
        return shop.url
    if who.startswith("bench "):
        page.goto(shop.url)
        here = "name => localStorage.setItem('flangebook.bench.here', JSON.stringify({name}))"
        page.evaluate(here, who.removeprefix("bench "))
        return shop.url
    door = f"http://127.0.0.1:{shop.port + 2}"
    if who not in ("stranger", "newcomer"):
        show(page, door, "pair")
        by_test(page, "pair-code").fill(shop.code(who))
        by_test(page, "pair").click()
        page.wait_for_selector("html[data-ready=home]")
    return door
