"""A card's history: who changed what; an older state looked at and brought back."""

from __future__ import annotations

from browsing import by_test, call, show, sideways, wait_ready
from playwright.sync_api import Page, expect


def revised(shop_server, code: str) -> None:
    """Revision 2 of a card: another title and note, by somebody."""
    card = call(f"{shop_server.url}/api/v1/cards/{code}")
    change = {"title": "Longer now", "note": "new note", "by": "layout", "reason": "asked for"}
    call(f"{shop_server.url}/api/v1/cards/{code}", "PUT", change, card["etag"])


def test_who_when_why_and_what(page: Page, shop_server, new_card):
    code = new_card("Shorter before")
    revised(shop_server, code)
    show(page, f"{shop_server.url}/c/{code}", "card")
    by_test(page, "history").click()
    wait_ready(page, "history")
    lines = by_test(page, "revision")
    expect(lines).to_have_count(2)
    newest = lines.first
    expect(newest).to_contain_text("Revision 2, as it is now")
    expect(newest).to_contain_text("by layout")
    expect(by_test(newest, "reason")).to_have_text("asked for")
    expect(by_test(newest, "changes")).to_contain_text("Longer now")
    expect(by_test(newest, "bring-back")).to_have_count(0)
    assert sideways(page) <= 0


def test_look_at_an_older_one_and_bring_it_back(page: Page, shop_server, new_card):
    code = new_card("Shorter before")
    revised(shop_server, code)
    show(page, f"{shop_server.url}/c/{code}/history", "history")
    older = page.locator("[data-revision='1']")
    by_test(older, "look").click()
    expect(by_test(page, "snapshot")).to_contain_text("Shorter before")
    expect(by_test(page, "snapshot").locator("[data-step='1']")).to_be_visible()
    assert sideways(page) <= 0
    by_test(older, "bring-back").click()
    expect(by_test(page, "revision")).to_have_count(3)
    card = call(f"{shop_server.url}/api/v1/cards/{code}")
    assert (card["revision"], card["title"]) == (3, "Shorter before")
    expect(page.locator("[data-revision='3']")).to_contain_text("Revision 1 brought back")


def test_results_in_time(page: Page, shop_server):
    trials = call(f"{shop_server.url}/api/v1/cards/SHE7FA1")["trials"]
    show(page, f"{shop_server.url}/c/SHE7FA1/history", "history")
    expect(by_test(page, "result")).to_have_count(len(trials))
    expect(by_test(page, "result").first).to_contain_text(f"{trials[-1]['measured_deg']:.1f}°")
