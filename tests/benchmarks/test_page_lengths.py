"""How long the pages are on a phone of 390 x 844, as they open on the demo shop."""

from __future__ import annotations

from typing import Any

import pytest

from .conftest import Figures, Shop

pytestmark = pytest.mark.benchmark
BEND = "/bend?metal=mild-steel-cr&thickness=2+mm&length=300+mm&angle=90"
PAGES = [
    ("check a bend", BEND, "bend", 1700),
    ("part with six bends", "/part?from=STEP6BQ", "part", 4000),
    ("tray", "/part?from=TRAY4CH", "part", 4000),
    ("card with six bends", "/c/STEP6BQ", "card", 2600),
    ("shop", "/shop", "shop", 2000),
    ("press", "/shop/press", "press", 2000),
]


@pytest.mark.parametrize(("what", "address", "ready", "goal"), PAGES)
def test_length(shop: Shop, phone: Any, figures: Figures, what, address, ready, goal) -> None:
    phone.set_viewport_size({"width": 390, "height": 844})
    phone.goto(shop.address.rstrip("/") + address)
    phone.wait_for_selector(f"html[data-ready={ready}]")
    phone.wait_for_timeout(1500)
    high = phone.evaluate("document.documentElement.scrollHeight")
    met = "" if high <= goal else ", not met"
    figures.add(f"length of a page: {what}", f"{high:,} px", f"{goal:,} px{met}")
