"""The shop's press, tools and metals: looked at, changed, added, taken out, and kept from being
undone by somebody else's save."""

from __future__ import annotations

import urllib.request
from typing import Any

import pytest
from browsing import PHONE, SILENCE, by_test, call, show, sideways, unfold, wait_ready
from playwright.sync_api import Page, expect

LISTS = ("punches", "dies", "holders", "metals")


def kept(server: Any, kind: str, code: str) -> dict[str, Any]:
    """One entry as the server has it."""
    found: dict[str, Any] = next(t for t in all_of(server, kind) if t["code"] == code)
    return found


def all_of(server: Any, kind: str) -> list[dict[str, Any]]:
    """A whole list as the server has it."""
    found: list[dict[str, Any]] = call(f"{server.url}/api/v1/{kind}")[kind]
    return found


def changed_elsewhere(server: Any, kind: str, code: str, **change: Any) -> None:
    """Somebody on another device saves the list with one entry changed."""
    with urllib.request.urlopen(f"{server.url}/api/v1/{kind}", timeout=20) as answer:
        etag = answer.headers["ETag"]
    items = [{**t, **change} if t["code"] == code else t for t in all_of(server, kind)]
    call(f"{server.url}/api/v1/{kind}", "PUT", {kind: items}, etag)


def save(page: Page, ready: str) -> Page:
    """Press the button and wait for the screen after it."""
    by_test(page, "save").click()
    return wait_ready(page, ready)


def test_what_the_shop_has(page: Page, shop_server):
    show(page, f"{shop_server.url}/shop", "shop")
    press = call(f"{shop_server.url}/api/v1/press")["press"]
    expect(by_test(page, "panel-press")).to_contain_text(press["name"])
    expect(by_test(page, "panel-press")).to_contain_text(f"{press['force_kn']:.0f} kN")
    for kind in ("punches", "dies", "holders"):
        tools = all_of(shop_server, kind)
        unrated = sum(t["rating_kn_per_m"] is None for t in tools)
        panel = by_test(page, f"panel-{kind}")
        expect(panel.locator(".rack li")).to_have_count(len(tools))
        expect(panel.locator(".rack svg")).to_have_count(len(tools))
        if unrated:
            expect(panel).to_contain_text(f"{unrated} without a rating")
    expect(by_test(page, "panel-metals").locator("li")).to_have_count(
        len(all_of(shop_server, "metals"))
    )
    expect(by_test(page, "to-backups")).to_be_visible()
    assert sideways(page) <= 0


@pytest.mark.parametrize("kind", LISTS)
def test_a_list_says_where_it_lies_and_what_is_not_known(kind: str, wide: Page, shop_server):
    show(wide, f"{shop_server.url}/shop/{kind}", "tools")
    items = all_of(shop_server, kind)
    expect(by_test(wide, "list").locator("li")).to_have_count(len(items))
    for item in items:
        row = by_test(wide, f"row-{item['code']}")
        expect(row).to_contain_text(item["name"])
        if kind == "metals":
            continue
        if item["rating_kn_per_m"] is None:
            expect(row).to_contain_text("Unknown")
        else:
            expect(row).to_contain_text(f"{item['rating_kn_per_m']:.0f} kN/m")
        if item["slot"]:
            expect(row).to_contain_text(f"Tray {item['tray']}, slot {item['slot']}")


def test_a_rating_can_be_unknown_and_says_so(page: Page, crib_server):
    show(page, f"{crib_server.url}/shop/dies/V16", "tool")
    by_test(page, "rating_kn_per_m").fill("")
    expect(page.locator("form")).to_contain_text("Rating unknown")
    by_test(page, "condition").select_option("worn")
    by_test(page, "condition_note").fill("<b>front</b> shoulder")
    save(page, "tools")
    expect(by_test(page, "row-V16")).to_contain_text("Unknown")
    expect(by_test(page, "row-V16")).to_contain_text("<b>front</b> shoulder")
    die = kept(crib_server, "dies", "V16")
    assert (die["rating_kn_per_m"], die["condition"]) == (None, "worn")
    # A plan that uses it says unknown too, never OK.
    asked = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
             "included_angle_deg": 90, "die": "V16"}  # fmt: skip
    ratings = call(f"{crib_server.url}/api/v1/bend", "POST", asked)["ratings"]
    assert [r["level"] for r in ratings if r["what"] == "die"] == ["unknown"]


def test_a_new_punch_by_points_drawn_as_it_is_typed(page: Page, crib_server, console):
    console.expect("422")
    show(page, f"{crib_server.url}/shop/punches/+", "tool")
    by_test(page, "all-sizes").click()
    for name, typed in {
        "code": "P-99", "name": "Nose by points", "angle_deg": "60", "tip_radius_mm": "1/32 in",
        "height_mm": "90", "body_width_mm": "2 cm", "segments_mm": "300, 100, 100",
        "tray": "E", "slot": "7",
    }.items():  # fmt: skip
        by_test(page, name).fill(typed)
    expect(by_test(page, "outline")).to_be_visible()  # straight, by its sizes
    by_test(page, "shape").select_option("points")
    by_test(page, "points_mm").fill("0, 0\n10, 30\n-10, 30\n10, 0")
    expect(by_test(page, "outline-wrong")).to_be_visible()  # it crosses itself
    by_test(page, "points_mm").fill("0, 0\n8, 20\n8, 90\n-8, 90\n-8, 20")
    expect(by_test(page, "outline-wrong")).to_have_count(0)
    expect(by_test(page, "outline")).to_have_attribute(
        "aria-label", "Outline to scale, 16 mm wide, 90 mm high"
    )
    save(page, "tools")
    punch = kept(crib_server, "punches", "P-99")
    assert punch["tip_radius_mm"] == 25.4 / 32
    assert (punch["body_width_mm"], punch["rating_kn_per_m"]) == (20, None)
    assert punch["segments_mm"] == [300, 100, 100]
    assert len(punch["points_mm"]) == 5
    expect(by_test(page, "row-P-99")).to_contain_text("Tray E, slot 7")


def test_what_cannot_be_read_is_told_at_its_box_and_nothing_is_saved(
    page: Page, crib_server, console
):
    console.expect("422")
    before = kept(crib_server, "punches", "S85-1")
    show(page, f"{crib_server.url}/shop/punches/S85-1", "tool")
    by_test(page, "tip_radius_mm").fill("wide")
    by_test(page, "height_mm").fill("")
    by_test(page, "segments_mm").fill("500, -3")
    by_test(page, "save").click()
    expect(by_test(page, "wrong-tip_radius_mm")).to_contain_text('"wide" is not a length')
    expect(by_test(page, "wrong-height_mm")).to_have_text("This is needed.")
    expect(by_test(page, "wrong-segments_mm")).to_contain_text("Number 2")
    expect(by_test(page, "tip_radius_mm")).to_have_value("wide")
    assert kept(crib_server, "punches", "S85-1") == before


def test_somebody_else_saved_another_tool_meanwhile(page: Page, crib_server, console):
    console.expect("412")
    show(page, f"{crib_server.url}/shop/dies/V16", "tool")
    by_test(page, "tray").fill("Z")
    changed_elsewhere(crib_server, "dies", "V20", slot="99")
    by_test(page, "save").click()
    expect(by_test(page, "clash")).to_contain_text("others in the list")
    expect(by_test(page, "tray")).to_have_value("Z")
    by_test(page, "save-mine").click()
    wait_ready(page, "tools")
    assert kept(crib_server, "dies", "V16")["tray"] == "Z"
    assert kept(crib_server, "dies", "V20")["slot"] == "99"


def test_somebody_else_saved_the_same_tool_meanwhile(page: Page, crib_server, console):
    console.expect("412")
    show(page, f"{crib_server.url}/shop/dies/V16", "tool")
    by_test(page, "tray").fill("mine")
    changed_elsewhere(crib_server, "dies", "V16", tray="theirs")
    by_test(page, "save").click()
    clash = by_test(page, "clash")
    expect(clash.locator("tbody tr")).to_have_count(1)
    expect(clash.locator("tbody")).to_contain_text("theirs")
    expect(clash.locator("tbody")).to_contain_text("mine")
    assert kept(crib_server, "dies", "V16")["tray"] == "theirs"
    by_test(page, "take-theirs").click()
    expect(by_test(page, "tray")).to_have_value("theirs")
    by_test(page, "tray").fill("mine after all")
    save(page, "tools")
    assert kept(crib_server, "dies", "V16")["tray"] == "mine after all"


def test_taking_out_asks_first(wide: Page, crib_server):
    show(wide, f"{crib_server.url}/shop/holders/NH1", "tool")
    wide.once("dialog", lambda question: question.dismiss())
    by_test(wide, "take-out").click()
    assert kept(crib_server, "holders", "NH1")
    asked: list[str] = []
    wide.once("dialog", lambda question: (asked.append(question.message), question.accept()))
    by_test(wide, "take-out").click()
    wait_ready(wide, "tools")
    assert "NH1" in asked[0]
    assert [t["code"] for t in all_of(crib_server, "holders")] == ["QH1"]


def test_leaving_with_something_typed_asks_first(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/shop/dies/V12", "tool")
    by_test(wide, "tray").fill("not saved")
    wide.once("dialog", lambda question: question.dismiss())
    wide.get_by_role("link", name="Back to the list").click()
    expect(by_test(wide, "tray")).to_have_value("not saved")
    wide.once("dialog", lambda question: question.accept())
    wide.get_by_role("link", name="Back to the list").click()
    wait_ready(wide, "tools")
    assert kept(shop_server, "dies", "V12")["tray"] != "not saved"


def test_an_inch_device_changes_no_length_it_did_not_touch(wide: Page, crib_server):
    before = kept(crib_server, "punches", "G85-1")
    show(wide, f"{crib_server.url}/settings", "settings")
    by_test(wide, "units").get_by_label("inch and tons").check()
    show(wide, f"{crib_server.url}/shop/punches/G85-1", "tool")
    expect(by_test(wide, "height_mm")).to_have_value("4.9213")
    by_test(wide, "name").fill("Renamed in inches")
    by_test(wide, "neck_relief_mm").fill("7/8")
    save(wide, "tools")
    after = kept(crib_server, "punches", "G85-1")
    assert after["neck_relief_mm"] == 22.225
    changed = {k for k in before if before[k] != after[k]}
    assert changed == {"name", "neck_relief_mm", "outline_mm"}


def test_the_press_and_its_unknowns(page: Page, crib_server, console):
    console.expect("422")
    show(page, f"{crib_server.url}/shop/press", "press")
    unfold(page)
    expect(by_test(page, "outline")).to_have_count(2)
    by_test(page, "force_kn").fill("45 short tons")
    by_test(page, "force_per_m_limit_kn_per_m").fill("")
    by_test(page, "off_centre_mm").fill("")
    by_test(page, "gauge_x_max_mm").fill("2")
    by_test(page, "save").click()
    expect(by_test(page, "wrong-gauge_x_max_mm")).to_contain_text("ends before it begins")
    by_test(page, "gauge_x_max_mm").fill("500")
    by_test(page, "ram_width_mm").fill("75")
    by_test(page, "bed_width_mm").fill("")
    expect(by_test(page, "outline-view")).to_contain_text("Bed, usual size assumed")
    save(page, "shop")
    press = call(f"{crib_server.url}/api/v1/press")["press"]
    assert press["force_kn"] == pytest.approx(45 * 8.896443230521)  # 2000 lbf each
    assert (press["force_per_m_limit_kn_per_m"], press["off_centre_mm"]) == (None, None)
    assert (press["ram_width_mm"], press["gauge_x_max_mm"]) == (75, 500)
    assert press["bed_width_mm"] is None


def test_a_kept_press_is_short_on_a_phone_and_whole_where_there_is_room(page: Page, crib_server):
    """Name, force and bed length first; the rest is a tap away."""
    show(page, f"{crib_server.url}/shop/press", "press")
    expect(by_test(page, "bed_length_mm")).to_be_visible()
    if page.viewport_size != PHONE:
        expect(by_test(page, "stroke_mm")).to_be_visible()
        return
    expect(by_test(page, "stroke_mm")).to_be_hidden()
    assert page.evaluate("document.documentElement.scrollHeight") <= 2000
    by_test(page, "more-figures").locator("summary").first.click()
    by_test(page, "stroke_mm").fill("")
    expect(by_test(page, "stroke_mm")).to_be_visible()


def test_what_is_wrong_with_a_press_is_never_folded_away(phone: Page, crib_server, console):
    console.expect("422")
    show(phone, f"{crib_server.url}/shop/press", "press")
    unfold(phone)
    by_test(phone, "gauge_x_max_mm").fill("2")
    by_test(phone, "more-figures").locator("summary").first.click()
    by_test(phone, "save").click()
    expect(by_test(phone, "wrong-gauge_x_max_mm")).to_be_visible()
    by_test(phone, "gauge_x_max_mm").press_sequentially("0")
    expect(by_test(phone, "gauge_x_max_mm")).to_be_visible()


@pytest.mark.parametrize("at", ["zero", "floor_below_die_mm"])
def test_an_address_with_an_anchor_opens_what_it_points_to(phone: Page, crib_server, at: str):
    show(phone, f"{crib_server.url}/shop", "shop")
    show(phone, f"{crib_server.url}/shop/press#{at}", "press")
    expect(phone.locator(f"#{at}")).to_be_in_viewport()


def test_a_reload_keeps_what_was_typed_of_a_press(phone: Page, crib_server):
    address = f"{crib_server.url}/shop/press"
    show(phone, address, "press")
    unfold(phone)
    by_test(phone, "name").fill("The long one")
    by_test(phone, "stroke_mm").fill("170")
    show(phone, address, "press")
    expect(by_test(phone, "restored")).to_contain_text("What you typed before is back.")
    expect(by_test(phone, "stroke_mm")).to_have_value("170")
    by_test(phone, "start-over").click()
    expect(by_test(phone, "stroke_mm")).to_have_value("150")
    by_test(phone, "notice").locator("button").click()
    expect(by_test(phone, "name")).to_have_value("The long one")
    save(phone, "shop")
    assert call(f"{crib_server.url}/api/v1/press")["press"]["stroke_mm"] == 170
    show(phone, address, "press")
    expect(by_test(phone, "restored")).to_have_count(0)


def test_a_press_changed_since_it_was_typed_is_not_overwritten(phone: Page, crib_server, console):
    console.expect("412")
    address = f"{crib_server.url}/shop/press"
    show(phone, address, "press")
    by_test(phone, "name").fill("The long one")
    with urllib.request.urlopen(f"{crib_server.url}/api/v1/press", timeout=20) as answer:
        etag = answer.headers["ETag"]
    press = {**call(f"{crib_server.url}/api/v1/press")["press"], "stroke_mm": 180}
    press.pop("outlines_mm", None)
    call(f"{crib_server.url}/api/v1/press", "PUT", {"press": press}, etag)
    show(phone, address, "press")
    expect(by_test(phone, "restored")).to_be_visible()
    by_test(phone, "save").click()
    expect(by_test(phone, "clash")).to_be_visible()
    kept_now = call(f"{crib_server.url}/api/v1/press")["press"]
    assert (kept_now["stroke_mm"], kept_now["name"]) == (180, press["name"])


def test_a_shop_without_a_press_says_so(wide: Page, crib_server):
    with urllib.request.urlopen(f"{crib_server.url}/api/v1/press", timeout=20) as answer:
        etag = answer.headers["ETag"]
    call(f"{crib_server.url}/api/v1/press", "PUT", {"press": None}, etag)
    show(wide, f"{crib_server.url}/shop", "shop")
    expect(by_test(wide, "panel-press")).to_contain_text("No press yet")
    wide.get_by_role("link", name="Enter the press").click()
    wait_ready(wide, "press")
    expect(by_test(wide, "force_kn")).to_have_value("")
    expect(by_test(wide, "outline-view")).to_contain_text("appears as you type")


def test_a_metal_with_its_sources(page: Page, crib_server, console):
    console.expect("422")
    show(page, f"{crib_server.url}/shop/metals/mild-steel-cr", "tool")
    by_test(page, "tensile_mpa.high").fill("300")  # below its nominal
    by_test(page, "save").click()
    expect(by_test(page, "wrong-tensile_mpa.nominal")).to_contain_text("rising")
    by_test(page, "tensile_mpa.high").fill("70 ksi")
    by_test(page, "tensile_mpa.source").fill("coupon, own test")
    by_test(page, "tensile_mpa.standing").select_option("measured")
    for part in ("low", "nominal", "high", "source"):
        by_test(page, f"min_radius_over_t_across.{part}").fill("")
    expect(by_test(page, "figure-min_radius_over_t_across")).to_contain_text("Not known")
    save(page, "tools")
    metal = kept(crib_server, "metals", "mild-steel-cr")
    assert metal["tensile_mpa"]["high"] == pytest.approx(70 * 6.894757, rel=1e-6)
    assert metal["tensile_mpa"]["source"] == "coupon, own test"
    assert metal["tensile_mpa"]["standing"] == "measured"
    assert metal["min_radius_over_t_across"] is None


def test_the_box_found_wrong_has_the_focus_before_somebody_types_on(
    phone: Page, crib_server, console
):
    """A busy phone draws its next picture late: by then another box may be typed into."""
    console.expect("422")
    show(phone, f"{crib_server.url}/shop/metals/mild-steel-cr", "tool")
    phone.evaluate("() => { requestAnimationFrame = (draw) => setTimeout(draw, 2000); }")
    by_test(phone, "tensile_mpa.high").fill("300")
    by_test(phone, "save").click()
    expect(by_test(phone, "wrong-tensile_mpa.nominal")).to_contain_text("rising")
    assert phone.evaluate("document.activeElement.id") == "tensile_mpa.nominal"


def test_a_new_metal_needs_its_figures(wide: Page, crib_server, console):
    console.expect("422")
    show(wide, f"{crib_server.url}/shop/metals/+", "tool")
    by_test(wide, "code").fill("mild-steel-cr")
    expect(by_test(wide, "wrong-code")).to_contain_text("in use")
    expect(by_test(wide, "save")).to_be_disabled()
    by_test(wide, "code").fill("zinc-sheet")
    by_test(wide, "name").fill("Zinc sheet")
    by_test(wide, "save").click()
    expect(by_test(wide, "wrong-tensile_mpa.low")).to_have_text("This is needed.")
    for name, value in {
        "tensile_mpa": "150", "yield_mpa": "100", "youngs_modulus_mpa": "90000",
        "density_kg_m3": "7140", "radius_over_v": "0.16", "springback_at_90_deg": "1",
    }.items():  # fmt: skip
        for part in ("low", "nominal", "high"):
            by_test(wide, f"{name}.{part}").fill(value)
    save(wide, "tools")
    assert kept(crib_server, "metals", "zinc-sheet")["hardening_n"] is None


def test_without_the_server_the_crib_can_still_be_read(phone: Page, own_server, console):
    console.expect(SILENCE)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    own_server.kill()
    show(phone, f"{own_server.url}/shop", "shop")
    expect(by_test(phone, "kept")).to_contain_text("last saw")
    show(phone, f"{own_server.url}/shop/dies", "tools")
    expect(by_test(phone, "row-V16")).to_contain_text("Tray")
    expect(by_test(phone, "add")).to_have_count(0)


def test_typed_things_stay_when_the_server_dies_before_the_save(wide: Page, own_server, console):
    console.expect(SILENCE)
    show(wide, f"{own_server.url}/shop/dies/V16", "tool")
    by_test(wide, "tray").fill("kept here")
    wide.wait_for_selector("html[data-offline-ready]")  # else the worker's start is cut off too
    own_server.kill()
    by_test(wide, "save").click()
    expect(by_test(wide, "not-saved")).to_contain_text("still here")
    expect(by_test(wide, "tray")).to_have_value("kept here")
    own_server.start()
    save(wide, "tools")
    assert kept(own_server, "dies", "V16")["tray"] == "kept here"
