"""The whole story over the shop's https: let in, scan in a dead spot, work, measure, turned out,
wiped and put back. Two browsers with profiles of their own, and the owner at the server."""

from __future__ import annotations

import io
import shutil
import subprocess
import sys
import urllib.request
from pathlib import Path
from typing import Any

import zxingcpp
from browsing import PHONE, SILENCE, WIDE, by_test, call, show, wait_ready
from camera_picture import blotted, held, tilted, video
from PIL import Image
from playwright.sync_api import BrowserType, Page, expect
from secure import SecureShop, pair, trusting

CARD = "STEP6BQ"
STEPS = 6
QUIET = f"{SILENCE}|ERR_CONNECTION_CLOSED"
CAMERA = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"]


def test_a_day_on_the_shop_floor(
    demo_data: Path, tmp_path: Path, wide: Page, console, browser_type: BrowserType,
    browser_type_launch_args: dict[str, Any],
):  # fmt: skip
    console.expect(f"{QUIET}|401|Failed to load resource")
    data = tmp_path / "shop"
    shutil.copytree(demo_data, data)
    shop = SecureShop(data)
    shop.start()
    film = dirty_label(shop, tmp_path)
    launch = (shop.authority, browser_type_launch_args)
    camera = [*CAMERA, f"--use-file-for-fake-video-capture={film}"]
    with (
        trusting(browser_type, tmp_path / "phone", *launch, *camera) as pocket,
        trusting(browser_type, tmp_path / "screen", *launch) as machine,
    ):
        phone = console.watch(pocket.new_context(viewport=PHONE, has_touch=True).new_page())
        display = console.watch(machine.new_context(viewport=WIDE).new_page())
        for page in (phone, display):
            page.set_default_timeout(60_000)
        the_owner_lets_in(wide, shop, phone)
        pair(display, shop, "bench", "Screen at the press")
        scan_with_the_server_stopped(phone, shop)
        measure(phone, 1, "91")
        shop.start()
        phone.wait_for_selector("html[data-waiting='0']", timeout=60_000)
        the_owner_sees(wide, shop, "91")
        step_through(phone, display, shop)
        turn_out(wide, shop, phone)
        lose_everything_and_put_it_back(shop, tmp_path)
        shop.start()
        assert the_result(shop) == [91.0]
        devices = call(f"{shop.url}/api/v1/devices")["devices"]
        assert {one["name"]: bool(one["revoked_at"]) for one in devices} == {
            "Ann's phone": True, "Screen at the press": False,
        }  # fmt: skip
        show(display, f"{shop.https}/c/{CARD}", "card")
        display.wait_for_selector("html[data-reached=true]")
    shop.stop()


def dirty_label(shop: SecureShop, folder: Path) -> Path:
    """A film of the card's label, blotted and held askew."""
    with urllib.request.urlopen(f"{shop.url}/api/v1/cards/{CARD}/label.png", timeout=20) as sent:
        picture = tilted(blotted(held(bytes(sent.read()), width=800)), degrees=15, lean=0.1)
    return video(folder / "label.mjpeg", (picture, 10))


def the_owner_lets_in(owner: Page, shop: SecureShop, phone: Page) -> None:
    """By the code on the owner's screen, read as the phone's own camera reads it."""
    show(owner, f"{shop.url}/crew", "crew")
    by_test(owner, "device-name").fill("Ann's phone")
    by_test(owner, "show-code").click()
    seen = Image.open(io.BytesIO(by_test(owner, "offer-qr").screenshot()))
    (read,) = zxingcpp.read_barcodes(seen)
    phone.goto(read.text)
    wait_ready(phone, "pair")
    by_test(phone, "pair-name").fill("Ann's phone")
    by_test(phone, "pair").click()
    wait_ready(phone, "home")
    expect(by_test(owner, "came")).to_contain_text("Ann's phone is in, as operator")
    phone.wait_for_selector("html[data-offline-ready=true]")
    expect(by_test(phone, "card").first).to_be_visible()


def scan_with_the_server_stopped(phone: Page, shop: SecureShop) -> None:
    shop.stop()
    phone.goto(f"{shop.https}/")
    wait_ready(phone, "home")
    by_test(phone, "scan").click()
    wait_ready(phone, "card")
    assert phone.url == f"{shop.https}/c/{CARD}"
    phone.goto(f"{shop.https}/c/{CARD}/step/1")
    wait_ready(phone, "step")


def measure(phone: Page, step: int, came_out: str) -> None:
    phone.goto(f"{phone.url.partition('/c/')[0]}/c/{CARD}/result/{step}")
    wait_ready(phone, "result")
    phone.locator("#measured_deg").fill(came_out)
    by_test(phone, "save").click()
    expect(by_test(phone, "result-answer")).to_have_attribute("data-waits", "true")


def the_result(shop: SecureShop) -> list[float]:
    kept = call(f"{shop.url}/api/v1/cards/{CARD}")["trials"]
    return [one["measured_deg"] for one in kept if one["measured_deg"] == 91]


def the_owner_sees(owner: Page, shop: SecureShop, came_out: str) -> None:
    assert the_result(shop) == [91.0]
    show(owner, f"{shop.url}/c/{CARD}", "card")
    expect(owner.locator("main")).to_contain_text(f"{came_out}")


def step_through(phone: Page, display: Page, shop: SecureShop) -> None:
    """Every step that the phone chooses stands on the display."""
    show(display, f"{shop.https}/press-screen", "press-screen")
    by_test(display, "press-screen").fill("1")
    by_test(display, "make-press-screen").click()
    expect(by_test(display, "press-screen-idle")).to_be_visible()
    show(phone, f"{shop.https}/c/{CARD}/step/1", "step")
    by_test(phone, "put-on-press-screen").click()
    for step in range(1, STEPS + 1):
        shown = by_test(display, "press-screen-step")
        expect(shown).to_have_attribute("data-step", str(step), timeout=60_000)
        expect(shown).to_have_attribute("data-code", CARD)
        if step < STEPS:
            by_test(phone, "next").click()


def turn_out(owner: Page, shop: SecureShop, phone: Page) -> None:
    show(owner, f"{shop.url}/crew", "crew")
    owner.once("dialog", lambda question: question.accept())
    line = by_test(owner, "device").filter(has_text="Ann's phone")
    by_test(line, "revoke").click()
    expect(line).to_contain_text("removed")
    phone.goto(f"{shop.https}/c/{CARD}")
    wait_ready(phone, "pair")
    expect(by_test(phone, "why")).to_contain_text("taken off the shop's list")


def lose_everything_and_put_it_back(shop: SecureShop, folder: Path) -> None:
    """backup, wipe, restore: the commands as somebody types them."""
    copy = folder / "copy.sqlite"
    command = [sys.executable, "-m", "flangebook"]
    place = ["--data", str(shop.data)]
    subprocess.run([*command, "backup", *place, "--to", str(copy)], check=True)
    shop.stop()
    kept = folder / "certificates"
    shutil.copytree(shop.data / "https", kept)  # a backup holds the shop, not the host's keys
    shutil.rmtree(shop.data)
    subprocess.run([*command, "restore", str(copy), *place], check=True)
    shutil.copytree(kept, shop.data / "https")
