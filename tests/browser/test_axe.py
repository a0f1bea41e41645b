"""axe-core finds nothing to complain about, on every screen, in both sizes and both themes.

axe-core, https://github.com/dequelabs/axe-core, an independent checker of WCAG 2.2.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from addresses import ADDRESSES
from browsing import show
from playwright.sync_api import BrowserContext, Page

RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
# A bar that stays at the foot covers what can be scrolled from under it: axe would take that for
# a target too small to hit, so each bar lies where it stands in the page.
UNSTUCK = """() => {
  for (const element of document.querySelectorAll("main *")) {
    if (getComputedStyle(element).position === "sticky") element.style.position = "static";
  }
}"""
SIZES = {"phone": (390, 844), "wide": (1920, 1080)}


@pytest.fixture(scope="session")
def axe(root: Path) -> str:
    """The checker's source. It goes in past the page's security policy, as a debugger does."""
    file = root / "tests/web_tools/node_modules/axe-core/axe.min.js"
    if not file.exists():
        pytest.fail("axe-core is not installed: run tests/run, or npm ci in tests/web_tools.")
    return file.read_text("utf-8")


def findings(page: Page) -> list[str]:
    """What axe finds wrong with the page as it stands, one line each."""
    asked = "rules => axe.run(document, {runOnly: {type: 'tag', values: rules}})"
    found = page.evaluate(asked, RULES)["violations"]
    return [
        f"{rule['id']}: {rule['help']}: {node['html'][:160]} {node['failureSummary'][:300]}"
        for rule in found
        for node in rule["nodes"]
    ]


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
        page.evaluate(axe)
        page.evaluate(UNSTUCK)
        for theme in ("day", "shop"):
            page.evaluate("theme => { document.documentElement.dataset.theme = theme; }", theme)
            wrong += [f"{address}, {theme}: {line}" for line in findings(page)]
    assert not wrong, "\n".join(wrong)


def test_the_checker_would_find_something(axe: str, wide: Page, shop_server):
    show(wide, f"{shop_server.url}/settings", "settings")
    wide.evaluate("document.querySelector('label[for=name]').remove()")
    wide.evaluate(axe)
    assert any(line.startswith("label:") for line in findings(wide))
