"""Every screen in both sizes: nothing runs off sideways, nothing is too small to read or to hit,
and axe-core finds nothing to complain about, in both themes.

axe-core, https://github.com/dequelabs/axe-core, an independent checker of WCAG 2.2.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from addresses import ADDRESSES
from browsing import Traffic, go_to, show
from looks import COVERED, SIZES, findings, in_both_themes, unfit
from playwright.sync_api import Page
from shared_devices import Devices

LIES = "bar => getComputedStyle(bar).position === 'static'"


@pytest.mark.parametrize("size", SIZES)
def test_no_screen_has_findings_and_all_fit(size: str, axe: str, shop_server, devices: Devices):
    width, height = SIZES[size]
    page = devices.take(viewport={"width": width, "height": height})
    traffic = Traffic(page)
    wrong: list[str] = []
    show(page, shop_server.url, "home")
    for address, ready in ADDRESSES:
        go_to(page, address, ready)
        traffic.wait_quiet()
        wrong += [f"{address}: {one}" for one in unfit(page)]
        wrong += in_both_themes(page, axe, address)
    assert not wrong, "\n".join(wrong)


def test_the_dark_theme_changes_colours_and_nothing_else(root: Path):
    style = root / "web/style"
    themed = {p.name for p in style.glob("*.css") if "data-theme" in p.read_text("utf-8")}
    assert themed == {"tokens.css", "print.css"}  # paper has one theme
    block = re.search(r'\[data-theme="shop"\] \{([^}]*)\}', (style / "tokens.css").read_text())
    assert block
    lines = [line.strip() for line in block[1].strip().splitlines()]
    assert len(lines) > 10
    colour = re.compile(r"--[a-z-]+: #[0-9a-f]{6};|color-scheme: dark;")
    assert [line for line in lines if not colour.fullmatch(line)] == []


def test_the_checker_would_find_a_colour_too_faint(axe: str, wide: Page, shop_server):
    show(wide, f"{shop_server.url}/settings", "settings")
    wide.evaluate("document.documentElement.style.setProperty('--ink', '#eeeeee')")
    found = in_both_themes(wide, axe, "settings")
    assert any(line.startswith("settings, day: color-contrast:") for line in found)
    wide.evaluate("document.documentElement.style.setProperty('--ink', '#102a52')")
    found = in_both_themes(wide, axe, "settings")
    assert any(line.startswith("settings, shop: color-contrast:") for line in found)


def test_the_checker_would_find_something(axe: str, wide: Page, shop_server):
    show(wide, f"{shop_server.url}/settings", "settings")
    wide.evaluate("document.querySelector('label[for=name]').remove()")
    wide.evaluate(axe)
    assert any(line.startswith("label:") for line in findings(wide))


@pytest.mark.parametrize(
    "high", [844, 420], ids=["keyboard over the page", "page above the keyboard"]
)
def test_no_box_is_under_a_bar_while_somebody_types(phone: Page, shop_server, high: int):
    """Phones either lay the keyboard over the page, or give the page what height is left.

    Only here: WebKit's driver has no window in front, so nothing in it has the focus.
    """
    assert phone.evaluate("matchMedia('(pointer: coarse)').matches")
    phone.set_viewport_size({"width": 390, "height": high})
    covered = {}
    for address, ready in (("/c/SHE7FA1/result/1", "result"), ("/part", "part"), ("/", "home")):
        show(phone, f"{shop_server.url}{address}", ready)
        covered[address] = phone.evaluate(COVERED)
        box = phone.locator("main :is(input:not([type]), input[inputmode], textarea)").first
        box.focus()
        bars = phone.locator(":is(.save-bar, .card-start, .step-nav, .home-scan)")
        for bar in bars.all():
            covered[address] += [] if bar.evaluate(LIES) else ["the bar stays at the foot"]
    assert covered == {address: [] for address in covered}
