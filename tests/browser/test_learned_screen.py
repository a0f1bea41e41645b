"""A result that no metal can show, asked about on the screen; the press shown apart from the metal;
how the press is set."""

from __future__ import annotations

import json
from typing import Any
from urllib.request import urlopen

import pytest
from browsing import by_test, call, plain_angle, show, sideways, unfold, wait_ready
from looks import unfit
from plan_reading import said_in
from playwright.sync_api import Page, expect

STRIP = {
    "thickness_mm": 2,
    "bend_length_mm": 100,
    "included_angle_deg": 90,
    "die": "V16",
    "punch": "S85-2",
}


@pytest.fixture
def metal(own_server) -> str:
    """A metal of the demo shop; the first pieces that came with it are marked wrong."""
    url = own_server.url
    for one in call(f"{url}/api/v1/metals")["metals"]:
        for row in call(f"{url}/api/v1/test-bends?metal={one['code']}")["evidence"]:
            call(f"{url}/api/v1/evidence/{row['id']}/forget", "POST", {})
    return "mild-steel-cr"


def bent(url: str, metal: str, measured_deg: float, number: int) -> Any:
    """A strip set as planned on a press that nothing is known of, and what came."""
    own_id = f"00000000-0000-4000-8000-00000000000{number}"
    sent = {**STRIP, "metal": metal, "id": own_id, "set_angle_deg": 88.3,
            "measured_deg": measured_deg}  # fmt: skip
    return call(f"{url}/api/v1/test-bends", "POST", sent)["test_bend"]


def test_ten_degrees_off_is_asked_about_and_counts_once_confirmed(
    page: Page, own_server, metal: str
):
    url = own_server.url
    bent(url, metal, 100.0, 1)
    show(page, f"{url}/shop/learned/{metal}", "learned")
    row = by_test(page, "evidence-row").first
    expect(row).to_contain_text("Does not count")
    for words in ("thickness", "die and punch", "zero of the depth", "which angle was read"):
        expect(by_test(row, "evidence-words")).to_contain_text(words)
    expect(by_test(page, "press-offset")).to_have_count(0)
    assert sideways(page) <= 0
    by_test(row, "confirm").click()
    expect(by_test(page, "notice")).to_contain_text("It counts now.")
    expect(row).not_to_contain_text("Does not count")
    (kept,) = [r for r in call(f"{url}/api/v1/test-bends?metal={metal}")["evidence"]
               if not r["forgotten"]]  # fmt: skip
    assert (kept["confirmed"], kept["teaches"]) == (True, True)
    expect(by_test(page, "press-offset")).to_be_visible()
    by_test(row, "forget").click()
    expect(row).to_have_attribute("data-forgotten", "true")


def test_a_wrong_reading_is_marked_wrong_with_one_touch(page: Page, own_server, metal: str):
    bent(own_server.url, metal, 100.0, 1)
    show(page, f"{own_server.url}/shop/learned/{metal}", "learned")
    row = by_test(page, "evidence-row").first
    expect(by_test(row, "forget")).to_have_text("It was wrong")
    by_test(row, "forget").click()
    expect(row).to_have_attribute("data-forgotten", "true")
    assert sideways(page) <= 0


def test_press_and_metal_stand_apart_and_a_strip_is_named(page: Page, own_server, metal: str):
    url = own_server.url
    for number, measured in enumerate((91.2, 91.3, 91.1)):
        bent(url, metal, measured, number)
    said = call(f"{url}/api/v1/learned?metal={metal}")
    press = said["press"]
    assert press["apart"] is False
    show(page, f"{url}/shop/learned/{metal}", "learned")
    panel = by_test(page, "press-learned")
    expect(panel).to_have_attribute("data-apart", "false")
    expect(panel).to_contain_text("set by angle")
    expect(by_test(page, "press-offset")).to_contain_text(
        f"{abs(press['offset_mm']['nominal']):.2f} mm"
    )
    for words in said_in(press):
        expect(panel).to_contain_text(words)
    factor = said["groups"][0]["factor"]
    expect(by_test(page, "factor").first).to_contain_text(f"{factor['nominal']:.2f} times")
    assert sideways(page) <= 0
    by_test(panel, "to-strip").click()
    wait_ready(page, "test-bend")
    expect(by_test(page, "metal")).to_have_value(metal)
    expect(by_test(page, "die")).to_have_value(press["strip"]["die"])


@pytest.mark.parametrize("way", ["angle", "depth", "stop"])
def test_the_press_form_asks_how_it_is_set(page: Page, own_server, way: str):
    show(page, f"{own_server.url}/shop/press", "press")
    unfold(page)
    by_test(page, "set_by").select_option(way)
    by_test(page, "save").click()
    expect(by_test(page, "notice")).to_be_visible()
    assert call(f"{own_server.url}/api/v1/press")["press"]["set_by"] == way
    assert sideways(page) <= 0


def test_a_press_set_by_depth_asks_for_the_depth(page: Page, own_server, metal: str):
    url = own_server.url
    kept, etag = _press(url)
    call(f"{url}/api/v1/press", "PUT", {"press": {**kept, "set_by": "depth"}}, etag)
    part = plain_angle("Angle by depth")
    card = call(f"{url}/api/v1/cards", "POST", {"part": part})
    step = card["plan"]["steps"][0]
    show(page, f"{url}/c/{card['code']}", "card")
    page.wait_for_selector("html[data-offline-ready]")
    show(page, f"{url}/c/{card['code']}/result/1", "result")
    expect(by_test(page, "set_angle_deg")).to_have_count(0)
    box = by_test(page, "punch_depth_mm")
    expect(box).to_have_attribute("placeholder", f"{step['punch_depth_mm']:.2f}")
    by_test(page, "measured_deg").fill("90.6")
    box.fill(f"{step['punch_depth_mm'] - 0.1:.2f}")
    assert sideways(page) <= 0
    by_test(page, "save").click()
    expect(by_test(page, "sent")).to_be_visible()
    (row,) = [r for r in call(f"{url}/api/v1/test-bends?metal={metal}")["evidence"]
              if r["code"] == card["code"]]  # fmt: skip
    assert row["set_angle_deg"] is None
    assert row["punch_depth_mm"] == pytest.approx(step["punch_depth_mm"] - 0.1, abs=0.006)
    assert row["teaches"] is True


def _press(url: str) -> tuple[Any, str]:
    """The press as kept, and its ETag."""
    with urlopen(f"{url}/api/v1/press") as answer:
        return json.loads(answer.read())["press"], answer.headers["ETag"]


def test_a_cards_result_that_no_metal_shows_is_asked_about(page: Page, own_server, metal: str):
    url = own_server.url
    card = call(f"{url}/api/v1/cards", "POST", {"part": plain_angle("Angle misread")})
    show(page, f"{url}/c/{card['code']}/result/1", "result")
    by_test(page, "measured_deg").fill("100")
    by_test(page, "save").click()
    expect(by_test(page, "question")).to_contain_text("Was it measured right?")
    assert sideways(page) <= 0
    by_test(page, "question").locator("a").click()
    wait_ready(page, "learned")
    expect(by_test(page, "evidence-row").first).to_contain_text("Does not count")


def test_a_zero_set_anew_is_said_on_the_press_screen(page: Page, own_server, metal: str):
    """What results taught of the press's error holds no longer; what they taught of the metal
    does."""
    url = own_server.url
    for number, came in enumerate((90.9, 91.0, 91.1), 1):
        bent(url, metal, came, number)
    show(page, f"{url}/shop/learned/{metal}", "learned")
    expect(by_test(page, "press-offset")).to_contain_text("3 results")
    factor = by_test(page, "factor").inner_text()
    page.get_by_role("link", name="Was its zero set").click()
    expect(by_test(page, "zero")).to_be_visible()
    assert unfit(page) == []
    by_test(page, "depth-zero-set").click()
    expect(by_test(page, "notice")).to_contain_text("measured anew")
    show(page, f"{url}/shop/learned/{metal}", "learned")
    expect(by_test(page, "press-offset")).to_have_count(0)
    assert by_test(page, "factor").inner_text() == factor
    body = {**STRIP, "metal": metal}
    assert call(f"{url}/api/v1/bend", "POST", body)["first_hit"]


def test_another_bed_length_is_another_press(page: Page, own_server, metal: str):
    url = own_server.url
    bent(url, metal, 91.0, 1)
    show(page, f"{url}/shop/press", "press")
    by_test(page, "bed_length_mm").fill("2000")
    by_test(page, "save").click()
    expect(by_test(page, "notice")).to_contain_text("measured anew")
    assert call(f"{url}/api/v1/learned?metal={metal}")["press"]["results"] == 0
