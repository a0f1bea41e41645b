"""Enter a part by its section, see its plan, save it as a card, edit it later."""

from __future__ import annotations

import re
from typing import Any

import pytest
from browsing import by_test, call, plain_angle, show, sideways, unfold, wait_ready
from playwright.sync_api import Page, Route, expect

MARKUP = "<img src=x onerror=\"document.title='broken in'\"><script>alert(1)</script> & co"
HAT = {
    "title": "Hat rail",
    "metal": "mild-steel-cr",
    "thickness_mm": "1.5",
    "bend_length_mm": "400",
    "flats": ["20", "25", "60", "25", "20"],
    "bends": [("90", "up"), ("90", "down"), ("90", "down"), ("90", "up")],
}
# What a page's script types with: in a box as soon as it is there, at the bend of that number.
IN_PAGE = """
  const there = async (name) => {
    while (!document.getElementById(name)) await new Promise((drawn) => setTimeout(drawn));
    return document.getElementById(name);
  };
  const type = async (name, text) => {
    const box = await there(name);
    box.value = text;
    for (const kind of ["input", "change"]) box.dispatchEvent(new Event(kind, { bubbles: true }));
  };
  const turn = (bend, way) =>
    document.querySelector(`[data-test="bends.${bend}.direction"] input[value=${way}]`).click();
  const add = () => document.querySelector('[data-test="add-right"]').click();
"""
ENTER = f"""async (part) => {{
  {IN_PAGE}
  const plain = ["title", "metal", "thickness_mm", "bend_length_mm"];
  for (const name of plain) await type(name, part[name]);
  for (const [i, flat] of part.flats.entries()) {{
    if (i >= 2) add();
    await type(`flats_mm.${{i}}`, flat);
  }}
  for (const [i, [angle, way]] of part.bends.entries()) {{
    turn(i, way);
    await type(`bends.${{i}}.included_angle_deg`, angle);
  }}
}}"""
ANGLE = {**HAT, "title": "Angle", "flats": ["40", "60"], "bends": [("90", "up")]}


def settled(page: Page) -> None:
    """Wait until the plan belongs to what is typed."""
    expect(by_test(page, "part")).to_have_attribute("data-busy", "false")


def good(page: Page) -> None:
    """Wait for a plan that is neither stale nor refused."""
    settled(page)
    expect(by_test(page, "picture")).to_have_attribute("data-stale", "false")


def box(page: Page, name: str) -> Any:
    """A box by the name the API has for it."""
    return page.locator(f'[id="{name}"]')


def typed(page: Page, part: dict[str, Any]) -> None:
    """Type a part as a person does, adding bends at the right end."""
    box(page, "title").fill(part["title"])
    box(page, "metal").select_option(part["metal"])
    box(page, "thickness_mm").fill(part["thickness_mm"])
    box(page, "bend_length_mm").fill(part["bend_length_mm"])
    for i, flat in enumerate(part["flats"]):
        if i >= 2:
            by_test(page, "add-right").click()
        box(page, f"flats_mm.{i}").fill(flat)
    for i, (angle, direction) in enumerate(part["bends"]):
        turn(page, i, direction)
        box(page, f"bends.{i}.included_angle_deg").fill(angle)


def enter(page: Page, part: dict[str, Any]) -> None:
    """The same, typed in the page: a call for each box takes longer than what it brings about."""
    page.evaluate(ENTER, part)


def turn(page: Page, bend: int, direction: str) -> None:
    """Choose up or down for a bend, counted from 0."""
    page.locator(f'[data-test="bends.{bend}.direction"] input[value={direction}]').check(force=True)


def planned(url: str, part: dict[str, Any]) -> Any:
    """The same part planned past the browser."""
    bends = [{"included_angle_deg": float(a), "direction": d} for a, d in part["bends"]]
    asked = {k: part[k] for k in ("title", "metal", "thickness_mm", "bend_length_mm")}
    return call(f"{url}/api/v1/plan", "POST", {**asked, "flats_mm": part["flats"], "bends": bends})


def kept(page: Page) -> list[str]:
    """What this device keeps of unfinished parts."""
    keys = page.evaluate("Object.keys(localStorage)")
    return [key for key in keys if key.startswith("flangebook.part.")]


def test_from_nothing_to_a_card(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    expect(by_test(page, "picture-words")).to_contain_text("Still to type: thickness, length")
    typed(page, HAT)
    good(page)
    plan = planned(shop_server.url, HAT)
    blank = plan["blank"]
    expect(by_test(page, "blank-length")).to_contain_text(f"{blank['length_mm']:.2f}")
    at = [f"{line['at_mm']:.2f}" for line in blank["bend_lines"]]
    unfold(page)
    assert by_test(page, "line-at").all_inner_texts() == at
    rows = page.locator("[data-test=steps] tbody tr")
    expect(rows).to_have_count(len(plan["steps"]))
    for row, step in zip(rows.all(), plan["steps"], strict=True):
        expect(by_test(row, "gauge-x")).to_contain_text(f"{step['gauge_x_mm']:.2f}")
        expect(by_test(row, "gauge-r")).to_contain_text(f"{abs(step['gauge_r_mm']):.2f}")
        expect(by_test(row, "set-angle")).to_contain_text(f"{step['set_angle_deg']:.1f}")
        expect(by_test(row, "depth")).to_contain_text(f"{step['punch_depth_mm']:.2f}")
        expect(by_test(row, "force")).to_have_text(re.compile(r"\s*[\d.]+ kN\s*expected [\d.]+ kN"))
        turned = step["turn_over"] or step["turn_end"]
        expect(by_test(row, "turn")).to_have_count(int(turned))
        if turned:
            expect(by_test(row, "turn")).to_have_attribute(
                "data-over", str(step["turn_over"]).lower()
            )
            expect(by_test(row, "turn")).to_have_attribute(
                "data-end", str(step["turn_end"]).lower()
            )
            expect(by_test(row, "turn")).to_contain_text("Turn it")
    expect(page.locator(".step-drawing [data-test=pose]")).to_have_count(3 * len(plan["steps"]))
    for tool in plan["tools"]:
        expect(page.locator(f"[data-test=tools] [data-code={tool['code']}]")).to_be_visible()
    assert sideways(page) <= 0
    by_test(page, "save").click()
    wait_ready(page, "card")
    code = page.url.rsplit("/", 1)[1]
    card = call(f"{shop_server.url}/api/v1/cards/{code}")
    assert card["title"] == "Hat rail"
    assert card["part"]["flats_mm"] == [20, 25, 60, 25, 20]
    assert card["plan"]["blank"]["length_mm"] == blank["length_mm"]
    assert kept(page) == []


def test_the_drawing_grows_with_the_section(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    badges = phone.locator("[data-test=section] .badge")
    expect(badges).to_have_count(1)
    by_test(phone, "add-right").click()
    expect(by_test(phone, "picture-words")).to_have_text("Still to type: flat 3.")
    expect(by_test(phone, "picture")).to_have_attribute("data-stale", "true")
    expect(badges).to_have_count(1)  # the last good one stays
    expect(box(phone, "flats_mm.2")).to_be_focused()
    phone.keyboard.type("30")
    good(phone)
    expect(badges).to_have_count(2)
    by_test(phone, "add-left").click()
    phone.keyboard.type("15")
    good(phone)
    expect(badges).to_have_count(3)
    phone.locator("[data-bend='2'] summary").click()
    by_test(phone, "remove-bend-2").click()
    good(phone)
    expect(badges).to_have_count(2)
    phone.locator("[data-test=notice] button").click()  # put it back
    good(phone)
    expect(badges).to_have_count(3)
    assert sideways(phone) <= 0


def test_the_section_s_dimensions_are_what_was_typed(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/part", "part")
    enter(wide, {**ANGLE, "flats": ["41.5", "63"]})
    good(wide)
    texts = wide.locator("[data-test=section] text").all_text_contents()
    assert {"41.5", "63", "90°", "1"} <= set(texts)
    label = by_test(wide, "section").get_attribute("aria-label") or ""
    assert "flat 1: 41.5 mm, bend 1: 90° up; flat 2: 63.0 mm" in label


def test_a_section_that_crosses_itself_is_refused_at_its_flat(page: Page, shop_server, console):
    console.expect("422")
    show(page, f"{shop_server.url}/part", "part")
    ring = {**HAT, "flats": ["50", "30", "60", "80"], "bends": [("90", "up")] * 3}
    enter(page, ring)
    good(page)
    box(page, "flats_mm.2").fill("40")  # now flat 4 comes down through flat 1
    expect(page_wrong(page, "flats_mm.0")).to_contain_text("runs into flat 4")
    expect(box(page, "flats_mm.0")).to_have_attribute("aria-invalid", "true")
    expect(by_test(page, "picture-words")).to_contain_text("Flat 1 runs into flat 4")
    expect(by_test(page, "picture")).to_have_attribute("data-stale", "true")
    expect(by_test(page, "section")).to_be_visible()  # the last good one, faint
    by_test(page, "save").click()
    expect(by_test(page, "error-summary")).to_contain_text("runs into flat 4")
    expect(box(page, "flats_mm.0")).to_be_focused()
    assert page.url.endswith("/part")
    box(page, "flats_mm.2").fill("60")
    good(page)
    expect(by_test(page, "error-summary")).to_have_count(0)


def test_too_short_a_flange_stops_but_the_blank_stands(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, {**ANGLE, "thickness_mm": "3", "flats": ["60", "4.5"]})
    good(page)
    first = page.locator("[data-test=urgent] [data-level]").first
    expect(first).to_have_attribute("data-level", "stop")
    expect(by_test(page, "blank-length")).to_contain_text(re.compile(r"\d"))
    unfold(page)
    expect(by_test(page, "blank")).to_be_visible()
    expect(by_test(page, "picture-words")).to_contain_text("Stop")
    why = first.locator(".say").first.inner_text().partition(". ")[2]  # after the step it is at
    expect(by_test(page, "picture-words")).to_contain_text(why.partition("\n")[0].strip())


def test_blank_tools_force_and_order_stand_beside_the_drawing(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, HAT)
    good(page)
    line = by_test(page, "picture-words").inner_text()
    said = re.match(r"Blank [\d.]+ mm · (\S+) on (\S+) · [\d.]+ kN · order ([\d ]+)", line)
    assert said is not None, line
    fetch = by_test(page, "tools")
    for code in said.group(1), said.group(2):
        expect(fetch.locator(f"[data-code='{code}']")).to_be_visible()
    assert sorted(said.group(3).split()) == [str(i + 1) for i in range(len(HAT["bends"]))]


WRONG = [
    ("thickness_mm", "0", "0.05 or more"),
    ("thickness_mm", "NaN", "not a length"),
    ("bend_length_mm", "-5", "0.1 or more"),
    ("bend_length_mm", "1000000000", "at most"),
    ("flats_mm.1", "0", "0.1 or more"),
    ("flats_mm.0", "sixty", "not a length"),
    ("bends.0.included_angle_deg", "NaN", "degrees"),
    ("bends.0.included_angle_deg", "200", "at most"),
]


def test_what_is_wrong_stands_at_its_box(phone: Page, shop_server, console):
    console.expect("422")
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    for name, typed, words in WRONG:
        right = box(phone, name).input_value()
        box(phone, name).fill(typed)
        expect(page_wrong(phone, name)).to_contain_text(words)
        expect(box(phone, name)).to_have_attribute("aria-invalid", "true")
        expect(by_test(phone, "plan")).to_have_class(re.compile("stale"))
        box(phone, name).fill(right)
        good(phone)


def page_wrong(page: Page, name: str) -> Any:
    """The words beside a box."""
    return page.locator(f'[data-test="wrong-{name}"]')


def test_a_gauge_number_means_what_the_metal_says(phone: Page, shop_server, console):
    console.expect("422")
    metals = call(f"{shop_server.url}/api/v1/metals")["metals"]
    plain = next(metal["code"] for metal in metals if metal["gauge_family"] is None)
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, {**ANGLE, "thickness_mm": "16 ga"})
    good(phone)
    box(phone, "metal").select_option(plain)
    expect(page_wrong(phone, "thickness_mm")).to_contain_text("gauge")


def test_markup_is_only_text(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, {**ANGLE, "title": MARKUP})
    unfold(phone)
    box(phone, "note").fill(MARKUP)
    good(phone)
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    expect(phone.locator("h1")).to_have_text(MARKUP)
    expect(phone.locator("main img, main script")).to_have_count(0)
    show(phone, f"{shop_server.url}/part?from={phone.url.rsplit('/', 1)[1]}", "part")
    expect(box(phone, "title")).to_have_value(MARKUP)
    expect(phone.locator("main img, main script")).to_have_count(0)


def test_saving_too_early_leads_to_the_gap(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    box(phone, "flats_mm.1").fill("")
    by_test(phone, "save").click()
    expect(box(phone, "flats_mm.1")).to_be_focused()
    assert phone.url.endswith("/part")


def test_a_reload_loses_nothing(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, HAT)
    unfold(phone)
    box(phone, "note").fill("Film side up")
    phone.reload()
    wait_ready(phone, "part")
    good(phone)
    expect(by_test(phone, "restored")).to_be_visible()
    expect(box(phone, "flats_mm.4")).to_have_value("20")
    expect(box(phone, "note")).to_have_value("Film side up")
    by_test(phone, "start-over").click()
    expect(box(phone, "flats_mm.0")).to_have_value("")
    phone.locator("[data-test=notice] button").click()
    expect(box(phone, "flats_mm.4")).to_have_value("20")


def test_a_draft_keeps_its_unit(phone: Page, shop_server):
    """Sixty millimetres typed before the device went over to inches stay sixty millimetres."""
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    blank = planned(shop_server.url, ANGLE)["blank"]["length_mm"]
    phone.evaluate("localStorage.setItem('flangebook.settings', '{\"units\":\"inch\"}')")
    phone.reload()
    wait_ready(phone, "part")
    good(phone)
    expect(by_test(phone, "blank-length")).to_contain_text(f"{blank / 25.4:.4f}")


def test_a_dead_server_loses_nothing(phone: Page, own_server, console):
    console.expect("Failed to fetch|ERR_CONNECTION|net::")
    show(phone, f"{own_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    phone.wait_for_selector("html[data-offline-ready]")  # else the worker's start is cut off too
    own_server.kill()
    by_test(phone, "save").click()
    expect(by_test(phone, "not-saved")).to_contain_text("stays on this device")
    own_server.start()
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    found = call(f"{own_server.url}/api/v1/cards?q=Angle")
    assert found["total"] == 1


def test_a_lost_answer_makes_one_card(phone: Page, shop_server, console):
    console.expect("Failed to load|net::")
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, {**ANGLE, "title": "Lost on the way"})
    good(phone)

    def lose(route: Route) -> None:
        route.fetch()  # the server has it, the phone never hears
        route.abort()

    phone.route("**/api/v1/cards", lose, times=1)
    by_test(phone, "save").click()
    expect(by_test(phone, "not-saved")).to_be_visible()
    phone.reload()
    wait_ready(phone, "part")
    good(phone)
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    assert call(f"{shop_server.url}/api/v1/cards?q=Lost+way")["total"] == 1


def edit(page: Page, url: str, code: str) -> None:
    """Open a card's part for editing."""
    show(page, f"{url}/part?from={code}", "part")
    good(page)


@pytest.fixture
def card(shop_server) -> Any:
    """A card of this test alone."""
    body = {"part": plain_angle("Bracket"), "note": "as drawn"}
    return call(f"{shop_server.url}/api/v1/cards", "POST", body)


def test_editing_a_card_makes_its_next_revision(page: Page, shop_server, card: Any):
    edit(page, shop_server.url, card["code"])
    expect(box(page, "title")).to_have_value("Bracket")
    expect(box(page, "note")).to_have_value("as drawn")
    box(page, "flats_mm.1").fill("65")
    box(page, "reason").fill("catches on the shelf")
    good(page)
    by_test(page, "save").click()
    wait_ready(page, "card")
    history = call(f"{shop_server.url}/api/v1/cards/{card['code']}/revisions")["revisions"]
    assert history[0]["reason"] == "catches on the shelf"
    after = call(f"{shop_server.url}/api/v1/cards/{card['code']}")
    assert after["revision"] == 2
    assert after["part"]["flats_mm"] == [40, 65]
    assert kept(page) == []
    first = call(f"{shop_server.url}/api/v1/cards/{card['code']}/revisions/1")
    assert first["part"]["flats_mm"] == [40, 60]


def change_past_the_browser(url: str, code: str, flats: list[float]) -> None:
    """Somebody else saves the same card."""
    card = call(f"{url}/api/v1/cards/{code}")
    part = {**card["part"], "flats_mm": flats}
    call(f"{url}/api/v1/cards/{code}", "PUT", {"part": part, "by": "Mo"}, card["etag"])


@pytest.mark.parametrize("choice", ["save-mine", "take-theirs", "save-as-new"])
def test_two_who_edit_one_card(page: Page, shop_server, card: Any, console, choice: str):
    console.expect("412")
    url, code = shop_server.url, card["code"]
    edit(page, url, code)
    box(page, "flats_mm.1").fill("65")
    good(page)
    change_past_the_browser(url, code, [40, 72])
    by_test(page, "save").click()
    clash = by_test(page, "clash")
    expect(clash).to_contain_text("Mo saved revision 2")
    row = clash.locator("tbody tr", has_text="Flat 2")
    expect(row).to_contain_text("72")
    expect(row).to_contain_text("65")
    expect(by_test(page, "theirs-section")).to_be_visible()
    expect(box(page, "flats_mm.1")).to_have_value("65")
    assert sideways(page) <= 0
    by_test(page, choice).click()
    if choice == "take-theirs":
        expect(box(page, "flats_mm.1")).to_have_value("72")
        page.locator("[data-test=notice] button").click()  # mine is not lost
        expect(box(page, "flats_mm.1")).to_have_value("65")
        by_test(page, "save").click()
    wait_ready(page, "card")
    kept_card = call(f"{url}/api/v1/cards/{code}")
    if choice == "save-as-new":
        assert kept_card["part"]["flats_mm"] == [40, 72]
        mine = call(f"{url}/api/v1/cards/{page.url.rsplit('/', 1)[1]}")
        assert mine["part"]["flats_mm"] == [40, 65]
    else:
        assert kept_card["part"]["flats_mm"] == [40, 65]
        assert kept_card["revision"] == 3


def test_hems_holes_radius_and_a_pinned_order(page: Page, shop_server):
    show(page, f"{shop_server.url}/part", "part")
    enter(page, {**HAT, "thickness_mm": "1", "flats": ["12", "60", "40"],
                 "bends": [("90", "up"), ("90", "up")]})  # fmt: skip
    good(page)
    page.locator("[data-bend='1'] summary").click()
    box(page, "bends.0.kind").select_option("closed_hem")
    page.locator("[data-bend='2'] summary").click()
    box(page, "bends.1.inside_radius_mm").fill("2")
    unfold(page)
    page.locator("details.holes summary").click()
    by_test(page, "add-hole").click()
    box(page, "holes.0.flat").fill("3")
    box(page, "holes.0.position_mm").fill("4")
    box(page, "holes.0.diameter_mm").fill("5")
    good(page)
    expect(page.locator("[data-test=steps]")).to_contain_text("hem flatten")
    expect(by_test(page, "plan")).to_contain_text("Hole 1 reaches")
    page.locator("details.order summary").click()
    page.locator("#order-2-earlier").click()
    expect(page.locator("#order")).to_have_value("2, 1")
    good(page)
    by_test(page, "save").click()
    wait_ready(page, "card")
    part = call(f"{shop_server.url}/api/v1/cards/{page.url.rsplit('/', 1)[1]}")["part"]
    assert part["bends"][0]["kind"] == "closed_hem"
    assert part["bends"][1]["inside_radius_mm"] == 2
    assert part["order"] == [2, 1]
    assert part["holes"] == [{"flat": 3, "position_mm": 4, "diameter_mm": 5}]


def test_how_flats_are_measured_changes_the_blank(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    outside = by_test(phone, "blank-length").inner_text()
    unfold(phone)
    phone.locator("details.convention summary").click()
    by_test(phone, "dimension-inside").check()
    settled(phone)
    expect(by_test(phone, "blank-length")).not_to_have_text(outside)


def test_the_blank_as_svg_and_dxf(phone: Page, shop_server):
    show(phone, f"{shop_server.url}/part", "part")
    enter(phone, ANGLE)
    good(phone)
    unfold(phone)
    for kind, mark in (("svg", "<svg"), ("dxf", "BEND_UP")):
        with phone.expect_download() as coming:
            by_test(phone, f"blank-{kind}").click()
        assert coming.value.suggested_filename == f"Angle.{kind}"
        assert mark in coming.value.path().read_text()


def test_by_keyboard_alone(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/part", "part")
    wide.locator("#title").focus()
    for key in ("Angle", "", "2", "300"):
        wide.keyboard.type(key)
        wide.keyboard.press("Tab")
    for _ in range(4):
        wide.keyboard.press("Tab")
        if wide.evaluate("document.activeElement.id") == "flats_mm.0":
            break
    wide.keyboard.type("40")
    for _ in range(4):
        wide.keyboard.press("Tab")
        if wide.evaluate("document.activeElement.type") == "radio":
            break
    wide.keyboard.press("ArrowRight")
    expect(wide.locator('[data-test="bends.0.direction"] input[value=down]')).to_be_checked()
    for _ in range(4):
        wide.keyboard.press("Tab")
        if wide.evaluate("document.activeElement.id") == "flats_mm.1":
            break
    wide.keyboard.type("60")
    good(wide)
    wide.keyboard.press("Enter")  # goes on, never saves by a slip
    expect(box(wide, "note")).to_be_focused()
    wide.keyboard.press("Tab")
    wide.keyboard.press("Enter")
    wait_ready(wide, "card")
    code = wide.url.rsplit("/", 1)[1]
    part = call(f"{shop_server.url}/api/v1/cards/{code}")["part"]
    assert part["bends"][0]["direction"] == "down"
    assert part["flats_mm"] == [40, 60]
