"""The order of the bends on the form, on its plan and on a card."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from browsing import by_test, call, show, sideways, unfold, wait_ready
from looks import in_both_themes
from plan_reading import words_of
from playwright.sync_api import Page, expect
from test_part import HAT, box, enter, good

ZED = {**HAT, "title": "Zed", "flats": ["30", "40", "60"], "bends": [("90", "up"), ("90", "down")]}
DEEP = {
    **HAT,
    "title": "Deep channel",
    "flats": ["90", "30", "90"],
    "bends": [("90", "up"), ("90", "up")],
}


def planned(url: str, part: dict[str, Any], **more: Any) -> Any:
    """The part planned past the browser."""
    return call(f"{url}/api/v1/plan", "POST", {**asked(part), **more})


def asked(part: dict[str, Any]) -> dict[str, Any]:
    """The part as the API takes it."""
    plain = {k: part[k] for k in ("title", "metal", "thickness_mm", "bend_length_mm")}
    bends = [{"included_angle_deg": float(a), "direction": d} for a, d in part["bends"]]
    return {**plain, "flats_mm": part["flats"], "bends": bends}


def open_wishes(page: Page) -> None:
    unfold(page)
    by_test(page, "order-limits").locator("summary").click()


def no_findings(page: Page, root: Path) -> None:
    """Axe has nothing to say about the page, in either theme."""
    axe = (root / "tests/web_tools/node_modules/axe-core/axe.min.js").read_text("utf-8")
    assert in_both_themes(page, axe, page.url) == []


def test_a_limit_is_kept_and_its_cost_is_said(page: Page, shop_server, root: Path):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, ZED)
    good(page)
    expect(by_test(page, "order-panel")).to_have_attribute("data-level", "ok")
    expect(by_test(page, "limit-costs")).to_have_count(0)
    unfold(page)
    open_wishes(page)
    box(page, "wishes.first").select_option("2")
    page.get_by_label("Flat 3", exact=True).last.check()
    expect(by_test(page, "limit-costs").locator("[data-limit=first]")).to_be_visible()
    good(page)
    plan = planned(shop_server.url, ZED, wishes={"first": 2, "critical_flats": [3]})
    costs = [words_of(wish) for wish in plan["order"]["wishes"]]
    assert len(costs) == 2
    assert by_test(page, "limit-costs").locator("li").all_inner_texts() == costs
    expect(by_test(page, "order-words")).to_have_text(plan["order"]["words"])
    expect(by_test(page, "order-limits").locator("summary")).to_contain_text(
        "bend 2 first, flat 3 gauged"
    )
    no_findings(page, root)
    assert sideways(page) <= 0
    page.reload()
    wait_ready(page, "part")
    expect(box(page, "wishes.first")).to_have_value("2")
    by_test(page, "save").click()
    wait_ready(page, "card")
    card = call(f"{shop_server.url}/api/v1/cards/{page.url.rsplit('/', 1)[1]}")
    assert card["part"]["wishes"]["first"] == 2
    assert card["part"]["wishes"]["critical_flats"] == [3]
    unfold(page)
    assert by_test(page, "limit-costs").locator("li").all_inner_texts() == costs


def test_what_blocks_a_part_and_what_would_help(page: Page, shop_server, root: Path):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, DEEP)
    good(page)
    order = planned(shop_server.url, DEEP)["order"]
    assert order["blocked"]
    assert order["remedies"]
    panel = by_test(page, "order-panel")
    expect(panel).to_have_attribute("data-level", "stop")
    expect(panel.locator(".flag").first).to_have_text("No order")
    blocked = [f"Bend {one['bend']} {one['words']}" for one in order["blocked"]]
    assert by_test(page, "blocked").locator("li").all_inner_texts() == blocked
    helps = by_test(page, "remedies").locator("li")
    expect(helps).to_have_count(len(order["remedies"]))
    expect(helps.first).to_contain_text(re.compile(r"\d+(\.\d)? mm"))
    assert "{" not in helps.first.inner_text()
    no_findings(page, root)
    assert sideways(page) <= 0


def test_another_order_is_pinned_and_let_go(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, HAT)
    good(page)
    first, *_ = planned(shop_server.url, HAT)["order"]["alternatives"]
    unfold(page)
    by_test(page, "use-order").first.click()
    expect(by_test(page, "let-it-choose")).to_be_visible()
    good(page)
    expect(box(page, "order")).to_have_value(", ".join(map(str, first["sequence"])))
    expect(page.locator(".order-run .run").first).to_have_attribute(
        "aria-label", f"bends {', '.join(map(str, first['sequence']))}"
    )
    by_test(page, "let-it-choose").click()
    expect(by_test(page, "let-it-choose")).to_have_count(0)
    good(page)
    expect(box(page, "order")).to_have_value("")


def test_a_card_offers_the_other_order_on_its_form(phone: Page, shop_server, root: Path):
    card = call(f"{shop_server.url}/api/v1/cards", "POST", {"part": asked(HAT)})
    show(phone, f"{shop_server.url}/c/{card['code']}", "card")
    wanted = card["plan"]["order"]["alternatives"][0]["sequence"]
    unfold(phone)
    no_findings(phone, root)
    by_test(phone, "use-order").first.click()
    wait_ready(phone, "part")
    good(phone)
    expect(box(phone, "order")).to_have_value(", ".join(map(str, wanted)))
    assert "order=" not in phone.url
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    saved = call(f"{shop_server.url}/api/v1/cards/{card['code']}")
    assert (saved["revision"], saved["part"]["order"]) == (2, wanted)
    unfold(phone)
    expect(by_test(phone, "let-it-choose")).to_be_visible()


def test_limits_follow_their_bends(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, HAT)
    open_wishes(phone)
    box(phone, "wishes.last").select_option("3")
    by_test(phone, "add-left").click()
    expect(box(phone, "wishes.last")).to_have_value("4")
    phone.locator('[data-bend="1"] .bend-more summary').click()
    by_test(phone, "remove-bend-1").click()
    expect(box(phone, "wishes.last")).to_have_value("3")


def test_an_impossible_clearance_is_refused_at_its_box(phone: Page, shop_server, console):
    console.expect("422")
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ZED)
    open_wishes(phone)
    box(phone, "wishes.margin_mm").fill("900")
    expect(by_test(phone, "wrong-wishes.margin_mm")).to_contain_text("50")


def test_cards_from_before_show_no_panel(phone: Page, shop_server, new_card):
    code = new_card("Saved long ago")

    def older(route: Any) -> None:
        answer = route.fetch()
        card = answer.json()
        old = ("sequence", "rule", "proven", "words")
        card["plan"]["order"] = {k: card["plan"]["order"][k] for k in old}
        del card["plan"]["stations"]
        route.fulfill(response=answer, json=card)

    phone.context.route(f"**/api/v1/cards/{code}", older)
    show(phone, f"{shop_server.url}/c/{code}", "card")
    expect(by_test(phone, "order")).to_be_visible()
    expect(by_test(phone, "order-panel")).to_have_count(0)
