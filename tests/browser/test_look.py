"""Every screen in both sizes: nothing runs off sideways, nothing is too small to read or to hit."""

from __future__ import annotations

import pytest
from addresses import ADDRESSES
from browsing import show, sideways
from playwright.sync_api import Page

LEAST_TEXT_PX = 16.0
LEAST_TARGET_PX = 44.0  # style.css tokens: 44 on the desk, 64 on the floor
LEAST_FLOOR_TARGET_PX = 64.0

# Texts that are seen, with the size they really have: drawings scale their own.
SMALL_TEXTS = """least => {
  const found = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const text = walk.currentNode.data.trim();
    const element = walk.currentNode.parentElement;
    const seen = {visibilityProperty: true, opacityProperty: true};
    if (!text || !element.checkVisibility(seen)) continue;
    if (element.closest("noscript, script, style, title, .unseen, option")) continue;
    const drawn = element.closest("text, tspan");
    const scale = drawn ? Math.hypot(drawn.getScreenCTM().a, drawn.getScreenCTM().b) : 1;
    const size = parseFloat(getComputedStyle(element).fontSize) * scale;
    if (size < least - 0.05) found.push(`${size.toFixed(1)} px: ${text.slice(0, 50)}`);
  }
  return [...new Set(found)];
}"""

# What is hit with a finger. A link inside a sentence may be as low as its line (WCAG 2.5.8).
SMALL_TARGETS = """least => {
  const found = [];
  for (const element of document.querySelectorAll("a, button, input, select, textarea, summary")) {
    if (!element.checkVisibility({visibilityProperty: true})) continue;
    if (element.matches(".skip") || element.closest(".sheet-frame, .unseen")) continue;
    const inLine = element.matches("a") && getComputedStyle(element).display === "inline";
    if (inLine) continue;
    const hit = element.matches("input[type=radio], input[type=checkbox]")
      ? element.closest("label") : element;
    const height = hit.getBoundingClientRect().height;
    if (height && height < least - 0.5) {
      found.push(`${height.toFixed(1)} px: ${hit.outerHTML.slice(0, 90)}`);
    }
  }
  return [...new Set(found)];
}"""


@pytest.mark.parametrize(("address", "ready"), ADDRESSES)
def test_a_screen_fits_and_can_be_read_and_hit(address: str, ready: str, page: Page, shop_server):
    show(page, f"{shop_server.url}{address}", ready)
    page.wait_for_load_state("networkidle")
    assert sideways(page) <= 0
    assert page.evaluate(SMALL_TEXTS, LEAST_TEXT_PX) == []
    floor = page.evaluate("document.documentElement.hasAttribute('data-floor')")
    least = LEAST_FLOOR_TARGET_PX if floor else LEAST_TARGET_PX
    masthead = page.evaluate(SMALL_TARGETS, LEAST_TARGET_PX)
    assert masthead == []
    if floor:
        own = f"document.querySelector('header#masthead').remove(), ({SMALL_TARGETS})({least})"
        assert page.evaluate(own) == []
