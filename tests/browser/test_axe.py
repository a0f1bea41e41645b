"""axe-core finds nothing to complain about, on every screen, in both sizes and both themes.

axe-core, https://github.com/dequelabs/axe-core, an independent checker of WCAG 2.2.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from addresses import ADDRESSES
from browsing import show
from looks import SIZES, findings, in_both_themes
from playwright.sync_api import BrowserContext, Page


@pytest.mark.parametrize("size", SIZES)
def test_no_screen_has_findings(
    size: str, axe: str, shop_server, context_of: Callable[..., BrowserContext]
):
    width, height = SIZES[size]
    page = context_of({"width": width, "height": height}).new_page()
    wrong: list[str] = []
    for address, ready in ADDRESSES:
        show(page, f"{shop_server.url}{address}", ready)
        page.wait_for_load_state("networkidle")
        wrong += in_both_themes(page, axe, address)
    assert not wrong, "\n".join(wrong)


def test_the_checker_would_find_something(axe: str, wide: Page, shop_server):
    show(wide, f"{shop_server.url}/settings", "settings")
    wide.evaluate("document.querySelector('label[for=name]').remove()")
    wide.evaluate(axe)
    assert any(line.startswith("label:") for line in findings(wide))
