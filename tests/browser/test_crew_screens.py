"""The screens of every device of the crew, as busy as they can be: axe finds nothing, and they fit.

Both in one pass, in both sizes and, for axe, both themes.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from crowd import Crew
from looks import SIZES, in_both_themes, unfit
from playwright.sync_api import Browser, BrowserContext
from secure import SecureShop


@pytest.fixture(scope="module")
def crew(browser: Browser, busy_shop: SecureShop) -> Iterator[Crew]:
    """The devices, each with a profile of its own."""
    made: list[BrowserContext] = []

    def device() -> BrowserContext:
        made.append(browser.new_context(locale="en-GB"))
        made[-1].set_default_timeout(60_000)  # a busy machine may take long
        return made[-1]

    yield Crew(busy_shop, device)
    for context in made:
        context.close()


@pytest.mark.parametrize("size", SIZES)
def test_no_device_of_the_crew_shows_findings(size: str, axe: str, crew: Crew):
    wrong: list[str] = []
    for state, page in crew.states(SIZES[size]):
        name = f"{state.who}: {state.address}"
        wrong += [f"{name}: {one}" for one in unfit(page)]
        wrong += in_both_themes(page, axe, name)
    assert not wrong, "\n".join(wrong)
