"""The screens of every device of the crew, as busy as they can be: axe finds nothing, and they fit.

Both in one pass, in both sizes and, for axe, both themes.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from addresses import CARD
from browsing import by_test
from crowd import Crew
from looks import SIZES, in_both_themes, unfit
from playwright.sync_api import Browser, BrowserContext, expect
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


def test_a_press_screen_shows_the_piece_and_leaves_the_counting_to_the_phone(crew: Crew):
    """It may step, and may not count: past the last step it goes no further by itself."""
    display = crew.screen("bench", "/press-screen", "press-screen")
    display.get_by_role("button", name="Press screen 2", exact=True).click()
    expect(by_test(display, "press-screen-done")).to_have_attribute("data-step", "7")
    expect(by_test(display, "run-piece")).to_contain_text("Piece 2 of 2000")
    expect(by_test(display, "count-on-phone")).to_be_visible()
    expect(by_test(display, "next")).to_have_count(0)
    display.keyboard.press("PageDown")
    by_test(display, "back").click()
    expect(by_test(display, "press-screen-step")).to_have_attribute("data-step", "6")
    expect(by_test(display, "next")).to_contain_text("Done")
    step = crew.screen("bench", f"/c/{CARD}/step/3", "step")
    expect(by_test(step, "run-piece")).to_be_visible()
    expect(by_test(step, "run-scrap")).to_have_count(0)
