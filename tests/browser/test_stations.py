"""Where the tools stand along the bed, and a punch that stands reversed: said wherever it is
set up by."""

from __future__ import annotations

import urllib.request
from typing import Any

import pytest
from browsing import by_test, call, show, sideways, visit
from playwright.sync_api import Page, expect
from shop_process import ShopProcess

UP = {"included_angle_deg": 90, "direction": "up"}
RAIL: dict[str, Any] = {
    "title": "Rail with a return",
    "metal": "mild-steel-cr",
    "thickness_mm": 1,
    "bend_length_mm": 300,
    "flats_mm": [10, 20, 60, 40],
    "bends": [UP, UP, UP],
}
"""The return is bent round a gooseneck that reaches the other way than it is kept; the last bend
is easier with a straight punch."""


def card_of(url: str) -> Any:
    """The rail as a card: two set-ups, the first with its punch reversed."""
    card = call(f"{url}/api/v1/cards", "POST", {"part": RAIL})
    first, second = card["plan"]["stations"]
    assert first["turned"] is True
    assert second["turned"] is False
    assert [step["punch_turned"] for step in card["plan"]["steps"]] == [
        step["number"] in first["steps"] for step in card["plan"]["steps"]
    ]
    return card


def of_one_height(server: ShopProcess, codes: set[str], height_mm: float) -> None:
    """Punches that close at one height can stand side by side."""
    address = f"{server.url}/api/v1/punches"
    with urllib.request.urlopen(address, timeout=20) as answer:
        etag = answer.headers["ETag"]
    kept = call(address)["punches"]
    changed = [{**p, "height_mm": height_mm} if p["code"] in codes else p for p in kept]
    sent = [{k: v for k, v in p.items() if k != "outline_mm"} for p in changed]
    call(address, "PUT", {"punches": sent}, etag)


def test_a_punch_reversed_is_said(page: Page, shop_server):
    card = card_of(shop_server.url)
    first, second = card["plan"]["stations"]
    show(page, f"{shop_server.url}/c/{card['code']}", "card")
    fetch = page.locator(f"[data-test=fetch] [data-code={first['punch']}]")
    expect(fetch).to_contain_text("reversed")
    expect(page.locator(f"[data-test=fetch] [data-code={second['punch']}]")).not_to_contain_text(
        "reversed"
    )
    stands = by_test(page, "stations").locator("li")
    expect(stands.nth(0)).to_contain_text(f"{first['punch']}, reversed, over {first['die']}")
    expect(stands.nth(1)).not_to_contain_text("reversed")
    assert sideways(page) <= 0
    for step in card["plan"]["steps"]:
        visit(page, f"{shop_server.url}/c/{card['code']}/step/{step['number']}", "step")
        count = int(step["punch_turned"])
        expect(by_test(page, "punch-turned")).to_have_count(count)
        expect(by_test(page, "tool-turned")).to_have_count(count)
        station = first if count else second
        expect(by_test(page, "step-station")).to_have_text(
            f"Station {station['number']}, in the middle"
        )
        assert sideways(page) <= 0
    show(page, f"{shop_server.url}/c/{card['code']}/print", "print")
    expect(by_test(page, "sheet-turned")).to_have_count(1)
    expect(by_test(page, "sheet-station").first).to_contain_text(f"{first['punch']} reversed")
    checks = {check["code"] for check in card["plan"]["checks"]}
    assert "tools-in-turn" in checks
    expect(by_test(page, "sheet-remarks")).to_contain_text("changed on the way")


def test_the_drawn_punch_is_reversed(wide: Page, shop_server):
    """Its neck reaches to the side away from the flange that is already up, as the API has it."""
    card = card_of(shop_server.url)
    steps = card["plan"]["steps"]
    turned = next(step for step in steps if step["punch_turned"])
    kept = call(f"{shop_server.url}/api/v1/punches")["punches"]
    outline = next(p for p in kept if p["code"] == turned["punch"])["outline_mm"]
    as_kept = [x for x, _ in outline]
    drawn = [x for x, _ in turned["drawing"]["before"]["punch"]]
    assert abs(min(as_kept) + max(as_kept)) > 1  # its neck reaches to one side
    assert min(drawn) == pytest.approx(-max(as_kept), abs=0.01)
    assert max(drawn) == pytest.approx(-min(as_kept), abs=0.01)
    show(wide, f"{shop_server.url}/c/{card['code']}/step/{turned['number']}", "step")
    expect(by_test(wide, "punch-turned")).to_have_text("punch reversed")


def test_tools_side_by_side(page: Page, crib_server: ShopProcess):
    of_one_height(crib_server, {"S85-1", "G85-1"}, 125)
    card = card_of(crib_server.url)
    stations = card["plan"]["stations"]
    centres = [station["centre_mm"] for station in stations]
    assert sorted(centres) == [-175, 175]  # 300 long each, 50 between
    words = {
        station[
            "number"
        ]: f"its middle 175 mm to the {'right' if station['centre_mm'] > 0 else 'left'}"
        " of the press's middle"
        for station in stations
    }
    show(page, f"{crib_server.url}/c/{card['code']}", "card")
    for station, line in zip(stations, by_test(page, "stations").locator("li").all(), strict=True):
        expect(line).to_contain_text(words[station["number"]])
    assert sideways(page) <= 0
    for station in stations:
        for number in station["steps"]:
            visit(page, f"{crib_server.url}/c/{card['code']}/step/{number}", "step")
            expect(by_test(page, "step-station")).to_have_text(
                f"Station {station['number']}, {words[station['number']]}"
            )
            assert sideways(page) <= 0
    show(page, f"{crib_server.url}/c/{card['code']}/print", "print")
    expect(by_test(page, "sheet-station")).to_have_count(len(card["plan"]["steps"]))
