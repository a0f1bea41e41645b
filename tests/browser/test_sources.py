"""The app as it is written, one file for each module: how who changes it sees it.

All other files take it as one script, as devices do.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path

from addresses import ADDRESSES
from browsing import PHONE, SILENCE, by_test, go_to, show
from playwright.sync_api import BrowserContext, expect
from shop_process import ShopProcess

LOADED = "performance.getEntriesByType('resource').map((one) => new URL(one.name).pathname)"


def test_every_screen_shows_and_a_card_opens_without_the_shop(
    demo_data: Path, tmp_path: Path, context_of: Callable[..., BrowserContext], console
):
    console.expect(SILENCE)
    shutil.copytree(demo_data, tmp_path / "shop")
    server = ShopProcess(tmp_path / "shop", "--sources").start()
    try:
        page = console.watch(context_of(PHONE).new_page())
        show(page, server.url, "home")
        loaded = page.evaluate(LOADED)
        assert "/app/main.js" in loaded
        assert [name for name in loaded if name.startswith("/made/")] == []
        for ready, address in {ready: address for address, ready in reversed(ADDRESSES)}.items():
            go_to(page, address, ready)
        page.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
        server.kill()
        show(page, f"{server.url}/c/SHE7FA1", "card")
        expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
    finally:
        server.kill()
