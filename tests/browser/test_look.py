"""Every screen in both sizes: nothing runs off sideways, nothing is too small to read or to hit."""

from __future__ import annotations

import pytest
from addresses import ADDRESSES
from browsing import show
from looks import unfit
from playwright.sync_api import Page


@pytest.mark.parametrize(("address", "ready"), ADDRESSES)
def test_a_screen_fits_and_can_be_read_and_hit(address: str, ready: str, page: Page, shop_server):
    show(page, f"{shop_server.url}{address}", ready)
    page.wait_for_load_state("networkidle")
    assert unfit(page) == []
