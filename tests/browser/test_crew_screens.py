"""The screens of every device of the crew, as busy as they can be: axe finds nothing, and they fit.

Both in one pass, in both sizes and, for axe, both themes.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from crowd import states
from looks import SIZES, in_both_themes, unfit
from playwright.sync_api import BrowserContext
from secure import SecureShop


@pytest.mark.parametrize("size", SIZES)
def test_no_device_of_the_crew_shows_findings(
    size: str, axe: str, busy_shop: SecureShop, context_of: Callable[..., BrowserContext]
):
    width, height = SIZES[size]
    wrong: list[str] = []
    for state, page in states(busy_shop, lambda: context_of({"width": width, "height": height})):
        name = f"{state.who}: {state.address}"
        wrong += [f"{name}: {one}" for one in unfit(page)]
        wrong += in_both_themes(page, axe, name)
    assert not wrong, "\n".join(wrong)
