"""Outlines as they are entered: by sizes, as blocks, by points with what is wrong marked, out of a
DXF file; drawn while they are typed."""

from __future__ import annotations

import io
from typing import Any

import ezdxf
import pytest
from browsing import by_test, call, show, sideways, wait_ready
from looks import UNSTUCK, findings
from playwright.sync_api import Page, expect
from test_shop_forms import kept

CORNERS = [(100, 0), (160, 0), (160, 60), (138, 60), (130, 50), (122, 60), (100, 60)]


def dxf(units: int = 4, *, gap: float = 0.0, hole: bool = False) -> dict[str, Any]:
    """A real DXF file of a die 60 by 60, as a browser is given it."""
    document: Any = ezdxf.new("R2010", units=units)  # type: ignore[attr-defined]
    space = document.modelspace()
    corners = CORNERS if not gap else [*CORNERS, (100, gap)]
    space.add_lwpolyline(corners, close=not gap, dxfattribs={"layer": "STEEL"})
    if hole:
        space.add_circle((110, 20), 4, dxfattribs={"layer": "HOLES"})
    stream = io.StringIO()
    document.write(stream)
    return {"name": "die.dxf", "mimeType": "image/vnd.dxf", "buffer": stream.getvalue().encode()}


def new_die(page: Page, server: Any, **more: str) -> None:
    """A new die with the boxes filled that every one has."""
    show(page, f"{server.url}/shop/dies/+", "tool")
    by_test(page, "all-sizes").click()
    for name, typed in {"code": "NEW", "name": "New", "segments_mm": "500, 100", **more}.items():
        by_test(page, name).fill(typed)


def clean(page: Page, checker: str) -> None:
    """Nothing for axe to complain about, nothing off the screen."""
    page.evaluate(checker)
    page.evaluate(UNSTUCK)
    assert findings(page) == []
    assert sideways(page) <= 0


def test_a_block_is_entered_v_by_v_and_each_is_a_die(page: Page, crib_server, axe: str):
    new_die(page, crib_server, height_mm="60", width_mm="80", rating_kn_per_m="900")
    by_test(page, "shape").select_option("multi_v")
    expect(by_test(page, "v_opening_mm")).to_have_count(0)
    rows = [("16", "88", "2", "top", "-20"), ("1/2 in", "88", "1", "top", "20"),
            ("30", "85", "3", "bottom", "")]  # fmt: skip
    for number, (v, angle, radius, face, centre) in enumerate(rows, 1):
        if number > 1:
            by_test(page, "add-opening").click()
        by_test(page, f"opening-{number}-v").fill(v)
        by_test(page, f"opening-{number}-angle").fill(angle)
        by_test(page, f"opening-{number}-radius").fill(radius)
        by_test(page, f"opening-{number}-face").select_option(face)
        by_test(page, f"opening-{number}-centre").fill(centre)
    by_test(page, "opening-3-code").fill("NEW-30")
    expect(by_test(page, "outline")).to_have_attribute(
        "aria-label", "Outline to scale, 80 mm wide, 60 mm high"
    )
    first = page.locator(".outline .tool").get_attribute("d")
    by_test(page, "up-2").check()
    expect(page.locator(".outline .tool")).not_to_have_attribute("d", first or "")
    clean(page, axe)
    by_test(page, "save").click()
    wait_ready(page, "tools")
    expect(by_test(page, "row-NEW")).to_contain_text("NEW.1: V 16.0 mm, NEW.2: V 12.7 mm, NEW-30")
    block = kept(crib_server, "dies", "NEW")
    assert [o["v_opening_mm"] for o in block["openings"]] == [16, 12.7, 30]
    assert [o["face"] for o in block["openings"]] == ["top", "top", "bottom"]
    assert (block["up"], block["v_opening_mm"]) == (2, 12.7)
    asked = {"metal": "mild-steel-cr", "thickness_mm": 2, "bend_length_mm": 500,
             "included_angle_deg": 90, "die": "NEW.1"}  # fmt: skip
    assert call(f"{crib_server.url}/api/v1/bend", "POST", asked)["v_opening_mm"] == 16
    # What was not touched stays as it was kept.
    show(page, f"{crib_server.url}/shop/dies/NEW", "tool")
    by_test(page, "tray").fill("Q")
    by_test(page, "save").click()
    wait_ready(page, "tools")
    assert kept(crib_server, "dies", "NEW") == {**block, "tray": "Q"}


def test_a_v_that_does_not_fit_says_so_at_its_box(wide: Page, crib_server, console):
    console.expect("422")
    new_die(wide, crib_server, height_mm="60", width_mm="60")
    by_test(wide, "shape").select_option("multi_v")
    for name, typed in {"v": "16", "angle": "88", "radius": "2", "centre": "40"}.items():
        by_test(wide, f"opening-1-{name}").fill(typed)
    expect(by_test(wide, "outline-wrong")).to_contain_text("does not fit on its face")
    by_test(wide, "save").click()
    expect(by_test(wide, "wrong-opening-1-centre")).to_contain_text("does not fit on its face")
    by_test(wide, "opening-1-centre").fill("")
    by_test(wide, "add-opening").click()
    by_test(wide, "save").click()
    expect(by_test(wide, "wrong-opening-2-v")).to_have_text("This is needed.")
    by_test(wide, "drop-2").click()
    by_test(wide, "save").click()
    wait_ready(wide, "tools")
    assert len(kept(crib_server, "dies", "NEW")["openings"]) == 1


def test_a_dxf_file_becomes_the_outline(page: Page, crib_server, axe: str):
    new_die(page, crib_server, v_opening_mm="16", angle_deg="78", shoulder_radius_mm="0",
            width_mm="60", rating_kn_per_m="500")  # fmt: skip
    by_test(page, "shape").select_option("points")
    by_test(page, "dxf-points_mm-file").set_input_files(dxf())
    expect(by_test(page, "dxf-points_mm-read")).to_contain_text("read in mm: 60.00 mm wide")
    expect(by_test(page, "dxf-points_mm-read")).to_contain_text("widest opening")
    expect(by_test(page, "height_mm")).to_have_value("60")  # none was typed
    expect(by_test(page, "points_mm")).to_have_value(
        "-30, -60\n30, -60\n30, 0\n8, 0\n0, -10\n-8, 0\n-30, 0"
    )
    expect(by_test(page, "outline")).to_have_attribute(
        "aria-label", "Outline to scale, 60 mm wide, 60 mm high"
    )
    by_test(page, "dxf-points_mm-origin").select_option("drawn")
    expect(by_test(page, "points_mm")).to_have_value("100, 0\n160, 0\n160, 60\n138, 60\n130, 50"
                                                     "\n122, 60\n100, 60")  # fmt: skip
    expect(by_test(page, "outline-view")).to_contain_text("looked for at height 0")
    by_test(page, "dxf-points_mm-origin").select_option("rule")
    expect(by_test(page, "outline-view")).not_to_contain_text("looked for at height 0")
    clean(page, axe)
    by_test(page, "save").click()
    wait_ready(page, "tools")
    die = kept(crib_server, "dies", "NEW")
    assert {tuple(p) for p in die["outline_mm"]} == {(x - 130, y - 60) for x, y in CORNERS}


def test_what_is_wrong_in_a_file_is_said_and_drawn(
    page: Page, shop_server, console, axe: str
):  # fmt: skip
    console.expect("422")
    new_die(page, shop_server, v_opening_mm="16", angle_deg="78", shoulder_radius_mm="0",
            width_mm="60", height_mm="60")  # fmt: skip
    by_test(page, "shape").select_option("points")
    upload, wrong = by_test(page, "dxf-points_mm-file"), by_test(page, "dxf-points_mm-wrong")
    upload.set_input_files(dxf(gap=3.0))
    expect(wrong).to_contain_text("The outline is open: 2 ends meet no other line")
    expect(wrong).to_contain_text("3 mm away")
    expect(by_test(page, "fault-mark")).to_have_count(2)
    clean(page, axe)
    upload.set_input_files(dxf(hole=True))
    expect(wrong).to_contain_text("has a hole in it")
    by_test(page, "dxf-points_mm-layer").select_option("STEEL")
    expect(by_test(page, "dxf-points_mm-read")).to_be_visible()
    expect(by_test(page, "points_mm")).to_have_value(
        "-30, -60\n30, -60\n30, 0\n8, 0\n0, -10\n-8, 0\n-30, 0"
    )
    upload.set_input_files(dxf(units=0))
    expect(wrong).to_contain_text("does not say what unit")
    by_test(page, "dxf-points_mm-units").select_option("cm")
    expect(by_test(page, "dxf-points_mm-read")).to_contain_text("600.00 mm high")
    upload.set_input_files({"name": "x.dxf", "mimeType": "", "buffer": b"no drawing at all"})
    expect(wrong).to_contain_text("no DXF file that can be used")


def test_where_typed_edges_cross_is_marked_on_the_drawing(
    page: Page, shop_server, console, axe: str
):  # fmt: skip
    console.expect("422")
    show(page, f"{shop_server.url}/shop/punches/+", "tool")
    by_test(page, "all-sizes").click()
    for name, typed in {"angle_deg": "60", "tip_radius_mm": "1", "height_mm": "30",
                        "body_width_mm": "20"}.items():  # fmt: skip
        by_test(page, name).fill(typed)
    by_test(page, "shape").select_option("points")
    by_test(page, "points_mm").fill("0, 0\n10, 30\n-10, 30\n10, 4")
    expect(by_test(page, "outline-wrong")).to_contain_text("Edge 1 meets edge 3")
    fault = by_test(page, "outline-fault")
    expect(fault.locator(".fault-edge")).to_have_count(2)
    expect(by_test(page, "fault-mark")).to_have_count(1)
    assert fault.locator(".fault-number").all_text_contents() == ["1", "2", "3", "4"]
    clean(page, axe)
    by_test(page, "points_mm").fill("0, 0\n10, 4\n10, 30\n-10, 30")
    expect(fault).to_have_count(0)
    expect(by_test(page, "outline")).to_be_visible()


def test_clamps_a_riser_and_a_tool_too_tall(wide: Page, crib_server):
    show(wide, f"{crib_server.url}/shop/holders/QH1", "tool")
    by_test(wide, "shape").select_option("clamps")
    for name, typed in {
        "clamp_height_mm": "40",
        "body_front_mm": "25",
        "body_back_mm": "25",
    }.items():
        by_test(wide, name).fill(typed)
    by_test(wide, "save").click()
    wait_ready(wide, "tools")
    assert len(kept(crib_server, "holders", "QH1")["outline_mm"]) == 8
    show(wide, f"{crib_server.url}/shop/press", "press")
    expect(by_test(wide, "die_holder_width_mm")).to_have_count(0)
    by_test(wide, "die_holder_height_mm").fill("60")
    by_test(wide, "die_holder_width_mm").fill("50")
    expect(wide.locator("form").first).to_contain_text("Rating of the die holder unknown")
    by_test(wide, "floor_below_die_mm").fill("33 in")
    by_test(wide, "save").click()
    wait_ready(wide, "shop")
    press = call(f"{crib_server.url}/api/v1/press")["press"]
    assert (press["die_holder_height_mm"], press["die_holder_rating_kn_per_m"]) == (60, None)
    assert press["floor_below_die_mm"] == pytest.approx(838.2)
    assert len(press["outlines_mm"]["bed"]) == 8
    show(wide, f"{crib_server.url}/shop/punches/G85-1", "tool")
    by_test(wide, "height_mm").fill("400")
    expect(by_test(wide, "outline-view")).to_contain_text("The punch is 400 mm tall")
    by_test(wide, "height_mm").fill("125")
    by_test(wide, "turned").select_option("yes")
    by_test(wide, "save").click()
    wait_ready(wide, "tools")
    assert kept(crib_server, "punches", "G85-1")["turned"] is True
