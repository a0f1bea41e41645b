"""A tray from the form to the press: typed, drawn flat and folded, kept, bent, put on paper."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from browsing import by_test, call, show, sideways, unfold, wait_ready
from playwright.sync_api import Page, expect
from test_order_panel import no_findings
from test_part import box, good

SIDES = ("left", "right", "front", "back")
WALL: dict[str, Any] = {
    "flats_mm": [30],
    "bends": [{"included_angle_deg": 90, "direction": "up"}],
}
TRAY: dict[str, Any] = {
    "title": "Parts tray",
    "metal": "mild-steel-cr",
    "thickness_mm": 1.5,
    "box": {"length_mm": 300, "width_mm": 200, "sides": dict.fromkeys(SIDES, WALL)},
}


def type_tray(page: Page, url: str) -> None:
    """A tray of four walls alike, as a person types it."""
    show(page, f"{url}/part", "part")
    page.locator('[data-test="shape"] input[value=box]').check(force=True)
    box(page, "title").fill(TRAY["title"])
    box(page, "metal").select_option(TRAY["metal"])
    box(page, "thickness_mm").fill("1.5")
    box(page, "box.length_mm").fill("300")
    box(page, "box.width_mm").fill("200")
    box(page, "box.sides.left.flats_mm.0").fill("30")
    good(page)


def card_of(url: str, part: dict[str, Any]) -> Any:
    """The part kept as a card, past the browser."""
    return call(f"{url}/api/v1/cards", "POST", {"part": part})


def request_of(page: Page, url: str) -> dict[str, Any]:
    """The part of the card on the screen, as the shop keeps it."""
    card: dict[str, Any] = call(f"{url}/api/v1/cards/{page.url.rsplit('/', 1)[1]}")
    return card


def test_a_tray_from_the_form_to_paper(page: Page, shop_server):
    url = shop_server.url
    type_tray(page, url)
    plan = call(f"{url}/api/v1/plan", "POST", TRAY)
    blank, steps = plan["blank"], plan["steps"]
    folded = by_test(page, "folded")
    expect(folded).to_be_visible()
    assert {"300", "200", "30"} <= set(folded.locator("text").all_text_contents())
    assert set(SIDES) <= set(folded.locator("text").all_text_contents())
    flat = page.locator("[data-test=plan] [data-test=blank]")
    expect(flat.locator(".badge")).to_have_count(4)
    expect(flat.locator("path.fold")).to_have_count(4)
    expect(by_test(page, "blank-length")).to_contain_text(f"{blank['length_mm']:.2f}")
    expect(page.locator("[data-test=steps] tbody tr")).to_have_count(4)
    unfold(page)
    names = page.locator("[data-test=sizes] li b:first-child").all_inner_texts()
    assert "The base, left to right" in names
    assert "The base, front to back" in names
    assert sideways(page) <= 0
    by_test(page, "save").click()
    wait_ready(page, "card")
    card = request_of(page, url)
    assert card["plan"]["blank"] == blank
    expect(by_test(page, "card-what")).to_contain_text("box 300 × 200 × 30 mm, 4 bends")
    expect(by_test(page, "folded").first).to_be_visible()
    by_test(page, "start").click()
    for step in steps:
        wait_ready(page, "step")
        stands = by_test(page, "box-step")
        expect(stands).to_contain_text(f"{step['bend_length_mm']:.1f}")
        expect(by_test(page, "step-folded").locator("path.marked-face")).to_have_count(1)
        expect(by_test(page, "lie")).to_contain_text(
            f"{step['gauged_side'].capitalize()} side to the gauge"
        )
        move = "quarter" if step["turn_quarter"] else None
        if move:
            expect(by_test(page, "lie")).to_have_attribute("data-move", move)
            expect(by_test(page, "lie")).to_contain_text("Turn it a quarter")
        clear = by_test(page, "clear-between")
        if step["clear_between_mm"] is None:
            expect(clear).to_have_count(0)
        else:
            expect(clear).to_contain_text(f"{step['clear_between_mm']:.1f}")
        expect(by_test(page, "gauge-x")).to_contain_text(f"{step['gauge_x_mm']:.1f}")
        assert sideways(page) <= 0
        by_test(page, "next").click()
    wait_ready(page, "result")
    show(page, f"{url}/c/{card['code']}/print", "print")
    sheet = by_test(page, "card-sheet")
    expect(sheet).to_contain_text("box 300 × 200 × 30 mm")
    expect(sheet.locator("[data-test=sheet-blank] .badge")).to_have_count(4)
    for step in steps:
        row = by_test(page, f"sheet-step-{step['number']}")
        expect(row).to_contain_text(f"bend {step['bend']} {step['side']} up")
    expect(sheet).to_contain_text("Corner reliefs round, ")


def test_sides_come_and_go_and_lips_turn(phone: Page, shop_server, root: Path):
    type_tray(phone, shop_server.url)
    by_test(phone, "kind-lips-out").click()
    expect(by_test(phone, "picture-words")).to_contain_text("Still to type: lip")
    box(phone, "box.sides.left.flats_mm.1").fill("15")
    good(phone)
    expect(phone.locator("[data-test=steps] tbody tr")).to_have_count(8)
    by_test(phone, "side-front").click()
    good(phone)
    expect(phone.locator("[data-test=steps] tbody tr")).to_have_count(6)
    phone.get_by_label("All sides alike").uncheck()
    box(phone, "box.sides.back.flats_mm.1").fill("20")
    good(phone)
    no_findings(phone, root)
    assert sideways(phone) <= 0
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    kept = request_of(phone, shop_server.url)["part"]["box"]["sides"]
    assert kept["front"] is None
    assert kept["back"]["flats_mm"] == [30, 20]
    assert kept["left"]["flats_mm"] == kept["right"]["flats_mm"] == [30, 15]
    assert [bend["direction"] for bend in kept["left"]["bends"]] == ["up", "down"]


def test_height_and_angle_of_a_side_have_their_labels_on_a_phone(phone: Page, shop_server):
    type_tray(phone, shop_server.url)
    for name in ("flats_mm.0", "bends.0.included_angle_deg"):
        label = phone.locator(f'label[for="box.sides.left.{name}"]')
        place = label.bounding_box()
        assert place is not None
        assert min(place["width"], place["height"]) >= 16, name


def test_what_is_wrong_with_a_box_stands_at_its_field(page: Page, shop_server, console):
    console.expect("422")
    type_tray(page, shop_server.url)
    box(page, "box.sides.left.flats_mm.0").fill("1")
    wrong = by_test(page, "wrong-box.sides.left.flats_mm.0")
    expect(wrong).to_contain_text("bends alone take")
    expect(by_test(page, "folded")).to_be_visible()  # the last good one, faint
    expect(by_test(page, "picture")).to_have_attribute("data-stale", "true")
    by_test(page, "save").click()
    expect(box(page, "box.sides.left.flats_mm.0")).to_be_focused()
    box(page, "box.sides.left.flats_mm.0").fill("30")
    good(page)
    unfold(page)
    box(page, "box.relief_mm").fill("250")
    expect(by_test(page, "wrong-box.relief_mm")).to_contain_text("does not fit the base")
    corners = by_test(page, "corners-fold")
    corners.evaluate("fold => { fold.open = false; }")
    box(page, "box.length_mm").fill("321")
    # What is wrong is never folded away.
    expect(by_test(page, "wrong-box.relief_mm")).to_be_visible()
    box(page, "box.relief_mm").fill("")
    good(page)


def test_walls_that_are_too_high_stop_and_say_what_would_help(page: Page, shop_server):
    type_tray(page, shop_server.url)
    box(page, "box.sides.left.flats_mm.0").fill("90")
    good(page)
    urgent = by_test(page, "urgent")
    expect(urgent.locator("[data-code=box-wall-holder]").first).to_contain_text("into the holder")
    expect(by_test(page, "blank-length")).to_be_visible()
    panel = by_test(page, "order-panel")
    expect(panel).to_have_attribute("data-level", "stop")
    expect(panel.locator(".flag").first).to_have_text("In the way")
    expect(by_test(page, "order-words")).to_contain_text("cannot be made like this")


def test_editing_a_box_loses_nothing_of_it(phone: Page, shop_server):
    """Radius and hem are there again, and go back as they came."""
    round_wall = {"included_angle_deg": 90, "direction": "up", "inside_radius_mm": 3}
    hem = {"included_angle_deg": 0, "direction": "up", "kind": "open_hem", "hem_gap_mm": 2}
    side = {"flats_mm": [40, 12], "bends": [round_wall, hem]}
    part = {
        **TRAY,
        "title": "Tray with a safe edge",
        "thickness_mm": 1,
        "box": {**TRAY["box"], "sides": {"left": side, "right": side}, "corner": "open"},
    }
    card = card_of(shop_server.url, part)
    for width_mm in (200, 210):  # kept by the shop, so that the form has its plans at once
        box_then = {**part["box"], "width_mm": width_mm}
        call(f"{shop_server.url}/api/v1/plan", "POST", {**part, "box": box_then})
    show(phone, f"{shop_server.url}/part?from={card['code']}", "part")
    good(phone)
    expect(by_test(phone, "chain-left")).to_contain_text("Open hem")
    expect(box(phone, "box.sides.left.bends.1.hem_gap_mm")).to_have_value("2")
    box(phone, "box.width_mm").fill("210")
    good(phone)
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    changed = request_of(phone, shop_server.url)
    assert changed["revision"] == 2
    before, after = card["part"]["box"], changed["part"]["box"]
    assert after == {**before, "width_mm": 210}


def test_limits_by_number_are_for_the_shape_they_were_made_for(phone: Page, shop_server):
    """A bend 1 of a section is no bend 1 of a box: the wish falls away, others stay."""
    show(phone, f"{shop_server.url}/part", "part")
    unfold(phone)
    by_test(phone, "order-limits").locator("summary").click()
    box(phone, "wishes.first").select_option("1")
    by_test(phone, "wishes.no_turn_over").check()
    expect(by_test(phone, "order-limits").locator("summary")).to_contain_text("bend 1 first")
    phone.locator('[data-test="shape"] input[value=box]').check(force=True)
    expect(by_test(phone, "order-limits").locator("summary")).not_to_contain_text("bend 1 first")
    expect(by_test(phone, "order-limits").locator("summary")).to_contain_text("never turned over")


def test_a_box_can_be_bent_front_and_back_first_in_an_order_of_ones_own(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    phone.locator('[data-test="shape"] input[value=box]').check(force=True)
    box(phone, "thickness_mm").fill("1.5")
    box(phone, "box.length_mm").fill("300")
    box(phone, "box.width_mm").fill("200")
    box(phone, "box.sides.left.flats_mm.0").fill("30")
    good(phone)
    unfold(phone)
    phone.locator('[data-test="box.first_pair"] input[value="front-back"]').check(force=True)
    good(phone)
    expect(by_test(phone, "order-panel").locator(".order-run .run")).to_have_attribute(
        "aria-label", re.compile("^bends [34], [34], [12], [12]$")
    )
    phone.locator("details.order summary").click()
    box(phone, "order").fill("4, 3, 1, 2")
    box(phone, "order").press("Tab")
    good(phone)
    expect(by_test(phone, "order-panel").locator(".order-run")).to_contain_text("Yours")
    # Back to left and right first: that order means nothing there and falls away.
    by_test(phone, "order-limits").locator("summary").click()
    expect(box(phone, "wishes.first").locator("option")).to_have_text(
        [
            "Any",
            "Bend 1: left wall",
            "Bend 2: right wall",
            "Bend 3: front wall",
            "Bend 4: back wall",
        ]
    )
    box(phone, "wishes.first").select_option("1")
    expect(
        by_test(phone, "plan-error").or_(by_test(phone, "wrong-wishes.first")).first
    ).to_contain_text("front and back are bent first")
    phone.locator('[data-test="box.first_pair"] input[value="left-right"]').check(force=True)
    good(phone)
    expect(phone.locator("details.order summary")).to_contain_text("found by the planner")
