"""One day in the shop, from a bend that is only thought of to a result typed in a dead spot.

Each screen has tests of its own; this one goes through them in the order people do, in one
browser, with nothing put in past the screen.
"""

from __future__ import annotations

import io
from typing import Any

import zxingcpp
from browsing import SILENCE, by_test, call, show, wait_ready
from PIL import Image
from playwright.sync_api import Page, expect
from test_part import enter, good

CLIP = {
    "title": "Clip for a picture rail",
    "metal": "mild-steel-cr",
    "thickness_mm": "16 ga",
    "bend_length_mm": "120",
    "flats": ["25", "40", "18"],
    "bends": [("90", "up"), ("90", "down")],
}


def test_a_day_in_the_shop(phone: Page, own_server, console):
    console.expect(SILENCE)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true]")
    check_one_bend(phone)
    card = keep_a_part(phone, own_server.url)
    address = the_label_s_address(phone)
    assert address == f"{own_server.url}/c/{card['code']}".upper()
    show(phone, address, "card")
    expect(by_test(phone, "card-title")).to_have_text(CLIP["title"])
    work_it(phone, card["plan"]["steps"])
    card = keep_what_came_out(phone, f"{own_server.url}/api/v1/cards/{card['code']}")
    show(phone, f"{own_server.url}/c/{card['code']}", "card")
    expect(by_test(phone, "card")).to_have_attribute("data-revision", "2")
    own_server.kill()
    work_in_a_dead_spot(phone, own_server.url, card, address)
    own_server.start()
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-waiting='0']")
    trials = call(f"{own_server.url}/api/v1/cards/{card['code']}")["trials"]
    assert sorted(one["measured_deg"] for one in trials) == [90.2, 91.0]


def check_one_bend(phone: Page) -> None:
    phone.get_by_role("link", name="Check a bend").click()
    wait_ready(phone, "bend")
    phone.locator("#thickness_mm").fill("16 ga")
    phone.locator("#bend_length_mm").fill("120")
    phone.locator("#included_angle_deg").fill("90")
    expect(by_test(phone, "set_angle_deg")).to_contain_text("°")
    expect(by_test(phone, "options")).to_contain_text("Best:")


def keep_a_part(phone: Page, url: str) -> Any:
    phone.get_by_role("link", name="Part", exact=True).click()
    wait_ready(phone, "part")
    enter(phone, CLIP)
    good(phone)
    by_test(phone, "save").click()
    wait_ready(phone, "card")
    return call(f"{url}/api/v1/cards/{phone.url.rsplit('/', 1)[1]}")


def the_label_s_address(phone: Page) -> str:
    """What a decoder that did not make it reads from the label as it is on the screen."""
    by_test(phone, "label").click()
    wait_ready(phone, "label")
    picture = by_test(phone, "label-image-50x25")
    picture.evaluate("image => image.decode()")
    seen = Image.open(io.BytesIO(picture.screenshot()))
    (read,) = zxingcpp.read_barcodes(seen.resize((seen.width * 3, seen.height * 3)))
    return read.text


def work_it(phone: Page, steps: list[Any]) -> None:
    """Bend by bend to the question what came out."""
    by_test(phone, "start").click()
    for step in steps:
        expect(by_test(phone, "step-number")).to_contain_text(f"{step['number']} of {len(steps)}")
        expect(by_test(phone, "gauge-x-value")).to_contain_text(f"{step['gauge_x_mm']:.1f}")
        expect(by_test(phone, "sheet")).to_be_visible()
        by_test(phone, "next").click()
    wait_ready(phone, "result")


def keep_what_came_out(phone: Page, api: str) -> Any:
    by_test(phone, "measured_deg").fill("91")
    by_test(phone, "save").click()
    by_test(phone, "keep").click()
    expect(by_test(phone, "kept")).to_be_visible()
    card = call(api)
    assert card["revision"] == 2
    assert [one["step"] for one in card["settings"]] == [len(card["plan"]["steps"])]
    return card


def work_in_a_dead_spot(phone: Page, url: str, card: Any, address: str) -> None:
    """The card opens from its label with the setting it was given; a result waits."""
    show(phone, address, "card")
    show(phone, f"{url}/c/{card['code']}/step/{len(card['plan']['steps'])}", "step")
    setting = card["settings"][0]["set_angle_deg"]
    expect(by_test(phone, "set-angle-value")).to_contain_text(f"{setting:.1f}")
    show(phone, f"{url}/c/{card['code']}/result/1", "result")
    by_test(phone, "measured_deg").fill("90.2")
    by_test(phone, "save").click()
    expect(by_test(phone, "waits")).to_be_visible()
