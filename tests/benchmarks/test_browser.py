"""What the first visit weighs, and how soon a card opens without network on a slow phone."""

from __future__ import annotations

import statistics
import urllib.request
from typing import Any

import pytest

from .conftest import Figures, Shop

pytestmark = pytest.mark.benchmark
SLOWER = 4


def test_first_visit(shop: Shop, phone: Any, figures: Figures) -> None:
    protocol = phone.context.new_cdp_session(phone)
    protocol.send("Network.enable")
    bytes_of: dict[str, float] = {}
    address: dict[str, str] = {}
    protocol.on(
        "Network.requestWillBeSent", lambda e: address.update({e["requestId"]: e["request"]["url"]})
    )
    protocol.on(
        "Network.loadingFinished",
        lambda e: bytes_of.update({e["requestId"]: e["encodedDataLength"]}),
    )
    phone.goto(shop.address)
    phone.wait_for_selector("html[data-ready=home]")
    phone.wait_for_timeout(1500)
    app = sum(size for name, size in bytes_of.items() if "/api/" not in address.get(name, ""))
    data = sum(size for name, size in bytes_of.items() if "/api/" in address.get(name, ""))
    figures.add("first visit, page until it shows", f"{app / 1000:.0f} KB compressed", "150 KB")
    figures.add("first visit, the shop's cards", f"{data / 1000:.0f} KB compressed")
    whole = shell_bytes(shop, phone)
    figures.add("the whole app, kept for offline", f"{whole / 1000:.0f} KB compressed")


def shell_bytes(shop: Shop, phone: Any) -> int:
    """All files that the service worker keeps, as they come over the network."""
    files = phone.evaluate(
        "fetch('/shell-files.js').then(r => r.text()).then(t => "
        "JSON.parse(t.replace(/^self.SHELL = /, '').replace(/;\\s*$/, '')).files)"
    )
    total = 0
    for file in files:
        asked = urllib.request.Request(shop.address + file, headers={"Accept-Encoding": "gzip"})
        with urllib.request.urlopen(asked, timeout=30) as answer:
            total += len(answer.read())
    return total


def test_a_card_without_network_on_a_slow_phone(shop: Shop, phone: Any, figures: Figures) -> None:
    code = shop.get("/api/v1/cards?limit=100")["cards"][0]["code"]
    phone.goto(shop.address)
    phone.wait_for_selector("html[data-offline-ready=true]")
    shop.kill()
    protocol = phone.context.new_cdp_session(phone)
    protocol.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    # The moment when the card is shown, by the page's own clock from the start of the visit.
    phone.add_init_script(
        "new MutationObserver(() => { if (document.documentElement.dataset.ready === 'card') "
        "window.shownAt ??= performance.now(); })"
        ".observe(document, { attributes: true, subtree: true, attributeFilter: ['data-ready'] });"
    )
    took = []
    for _ in range(7):
        phone.goto("about:blank")
        phone.goto(f"{shop.address}/c/{code}")
        phone.wait_for_selector("html[data-ready=card]")
        took.append(phone.evaluate("window.shownAt"))
    figures.add(
        f"card without network, {SLOWER} times slower",
        f"{statistics.median(took):.0f} ms",
        "300 ms",
    )
