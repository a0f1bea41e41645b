"""What is looked at on a screen that is shown: what axe says of it, and whether it fits."""

from __future__ import annotations

from browsing import sideways, unfold
from playwright.sync_api import Page

SIZES = {"phone": (390, 844), "wide": (1920, 1080)}
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
# A bar that stays at the foot covers what can be scrolled from under it: axe would take that for
# a target too small to hit, so each bar lies where it stands in the page.
UNSTUCK = """() => {
  for (const element of document.querySelectorAll("main *")) {
    if (getComputedStyle(element).position === "sticky") element.style.position = "static";
  }
}"""

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

# The strip on top has the sizes of the other screens. Hidden, not taken away: it keeps its place,
# and the app may draw it again at any moment.
HIDE_MASTHEAD = """document.querySelectorAll("#masthead, .skip").forEach((one) => {
  one.style.visibility = "hidden";
})"""
SHOW_MASTHEAD = HIDE_MASTHEAD.replace('"hidden"', '""')

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
    const { width, height } = hit.getBoundingClientRect();
    if (height && Math.min(width, height) < least - 0.5) {
      found.push(`${width.toFixed(1)} x ${height.toFixed(1)} px: ${hit.outerHTML.slice(0, 90)}`);
    }
  }
  return [...new Set(found)];
}"""

# Boxes that something else lies over while they are typed into.
COVERED = """() => {
  const found = [];
  const picked = "[type=radio], [type=checkbox], [type=range], [type=file]";
  for (const box of document.querySelectorAll("main input, main textarea")) {
    if (!box.checkVisibility() || box.disabled || box.matches(picked)) continue;
    box.focus();
    const { left, right, top, bottom } = box.getBoundingClientRect();
    for (const y of [top + 4, bottom - 4]) {
      const on = document.elementFromPoint((left + right) / 2, y);
      if (on !== box) found.push(`${box.dataset.test}: ${on?.className ?? "outside"}`);
    }
  }
  document.activeElement?.blur();
  return found;
}"""


def findings(page: Page, category: str = "") -> list[str]:
    """What axe finds wrong with the page as it stands, one line each.

    category: one of axe's, such as "cat.color", to hear of that only.
    """
    asked = """async ([tags, category]) => {
      const rules = axe.getRules(tags).filter((rule) => rule.tags.includes(category));
      const runOnly = category
        ? {type: "rule", values: rules.map((rule) => rule.ruleId)}
        : {type: "tag", values: tags};
      // What holds is not asked for: to name each of its places takes longer than to find them.
      return (await axe.run(document, {runOnly, resultTypes: ["violations"]})).violations;
    }"""
    found = page.evaluate(asked, [RULES, category])
    return [
        f"{rule['id']}: {rule['help']}: {node['html'][:160]} {node['failureSummary'][:300]}"
        for rule in found
        for node in rule["nodes"]
    ]


def in_both_themes(page: Page, axe: str, name: str) -> list[str]:
    """What axe finds in either theme. The dark one changes colours and nothing else, which
    test_axe.py makes sure of: there axe looks at colours."""
    unfold(page)
    if not page.evaluate("'axe' in window"):
        page.evaluate(axe)
    page.evaluate(UNSTUCK)
    wrong: list[str] = []
    for theme, category in (("day", ""), ("shop", "cat.color")):
        page.evaluate("theme => { document.documentElement.dataset.theme = theme; }", theme)
        wrong += [f"{name}, {theme}: {line}" for line in findings(page, category)]
    return wrong


def unfit(page: Page) -> list[str]:
    """What runs off sideways, or is too small to read or to hit."""
    unfold(page)
    wide = sideways(page)
    wrong = [f"{wide} px wider than the screen"] if wide > 0 else []
    wrong += page.evaluate(SMALL_TEXTS, LEAST_TEXT_PX)
    wrong += page.evaluate(SMALL_TARGETS, LEAST_TARGET_PX)
    if page.evaluate("document.documentElement.hasAttribute('data-floor')"):
        page.evaluate(HIDE_MASTHEAD)
        wrong += page.evaluate(SMALL_TARGETS, LEAST_FLOOR_TARGET_PX)
        page.evaluate(SHOW_MASTHEAD)
    return wrong
