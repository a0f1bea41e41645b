"""Tools named on a part's form, and why unusual ones were chosen."""

from __future__ import annotations

import re
from pathlib import Path

from browsing import by_test, call, show, sideways, unfold, wait_ready
from playwright.sync_api import Page, expect
from test_order_panel import ZED, no_findings
from test_part import box, enter, good

SHORT_WEB = {**ZED, "title": "Short web", "flats": ["40", "20", "40"]}


def test_tools_named_for_part_and_bend_are_kept_and_come_back(phone: Page, shop_server, root: Path):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ZED)
    good(phone)
    unfold(phone)
    by_test(phone, "tools").locator("summary").click()
    box(phone, "tools.die").fill("V16")
    expect(by_test(phone, "limit-costs").locator("[data-limit='tools.die']")).to_be_visible()
    phone.locator("[data-bend='2'] details.bend-more summary").click()
    box(phone, "bends.1.punch").fill("S85-1")
    expect(by_test(phone, "limit-costs").locator("[data-limit='bends.1.punch']")).to_be_visible()
    good(phone)
    expect(by_test(phone, "tools").locator("summary")).to_contain_text("die V16")
    reasons = by_test(phone, "tools-reason")
    expect(reasons.first).to_contain_text("Die V16 was asked for by name.")
    assert sideways(phone) <= 0
    no_findings(phone, root)
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    code = phone.url.rsplit("/", 1)[1]
    card = call(f"{shop_server.url}/api/v1/cards/{code}")
    assert card["part"]["tools"] == {"die": "V16", "punch": None}
    assert [bend["punch"] for bend in card["part"]["bends"]] == [None, "S85-1"]
    show(phone, f"{shop_server.url}/part?from={code}", "part")
    expect(box(phone, "tools.die")).to_have_value("V16")
    expect(box(phone, "bends.1.punch")).to_have_value("S85-1")


def test_a_code_that_is_not_there_is_refused_at_its_box(phone: Page, shop_server, console):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ZED)
    good(phone)
    unfold(phone)
    by_test(phone, "tools").locator("summary").click()
    console.expect("422")
    box(phone, "tools.die").fill("V99")
    expect(by_test(phone, "wrong-tools.die")).to_contain_text("There is no die 'V99'")


def test_an_unusual_choice_says_why_on_plan_and_bend(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, {**SHORT_WEB, "thickness_mm": "1.5"})
    good(page)
    expect(by_test(page, "tools-reason").first).to_contain_text("not V12: no order")
    asked = "metal=mild-steel-cr&thickness=1.5&length=600&angle=90&die=V6"
    show(page, f"{shop_server.url}/bend?{asked}", "bend")
    expect(by_test(page, "tools-reason")).to_have_text("Die V6 was asked for by name.")


def test_an_inch_reader_reads_no_millimetre_in_a_reason(phone: Page, shop_server):
    """Seen: why a die stands where it does said mm to a device set to inches."""
    phone.add_init_script("localStorage['flangebook.settings'] = '{\"units\": \"inch\"}'")
    show(phone, f"{shop_server.url}/part", "part")
    typed = {
        "thickness_mm": "1.5 mm",
        "bend_length_mm": "600 mm",
        "flats": ["40 mm", "20 mm", "40 mm"],
    }
    enter(phone, {**SHORT_WEB, **typed})
    good(phone)
    reason = by_test(phone, "tools-reason").first
    expect(reason).to_contain_text("V of 0.")
    said = [reason.text_content() or ""]
    asked = "metal=mild-steel-cr&thickness=1.5+mm&length=1400+mm&angle=90"
    show(phone, f"{shop_server.url}/bend?{asked}", "bend")
    options = by_test(phone, "options").locator("[data-die] .more")
    unfold(phone)
    expect(options.first).to_be_visible()
    said += options.all_text_contents()
    assert not [words for words in said if re.search(r"\d\s?(mm|kN)\b", words)]
    assert any(re.search(r"\d\s?in\b", words) for words in said[1:])
