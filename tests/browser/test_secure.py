"""Over the shop's own https: what a browser allows only there, and who is let in."""

from __future__ import annotations

import io
import shutil
import ssl
from collections.abc import Callable
from pathlib import Path
from typing import Any
from urllib.error import HTTPError
from urllib.request import urlopen

import pytest
import zxingcpp
from browsing import PHONE, SILENCE, WIDE, by_test, call, show, sideways, wait_ready
from PIL import Image
from playwright.sync_api import Browser, BrowserType, Page, Route, expect
from secure import SecureShop, pair, trusting

CARD = "SHE7FA1"
PROBLEM = "application/problem+json"


def test_a_browser_that_does_not_trust_the_authority_refuses(
    browser: Browser, secure_shop: SecureShop
):
    page = browser.new_context().new_page()
    with pytest.raises(Exception, match="ERR_CERT_AUTHORITY_INVALID"):
        page.goto(f"https://127.0.0.1:{secure_shop.port + 1}/")
    page.context.close()


def test_over_https_the_app_can_be_installed_and_works_without_the_server(
    device: Callable[..., Page], demo_data: Path, tmp_path: Path, console,
    browser_type: BrowserType, browser_type_launch_args: dict[str, Any],
):  # fmt: skip
    console.expect(f"{SILENCE}|401|Failed to load resource")
    data = tmp_path / "shop"
    shutil.copytree(demo_data, data)
    shop = SecureShop(data)
    shop.start()
    with trusting(browser_type, tmp_path / "home", shop.authority, browser_type_launch_args) as own:
        page = own.new_context(viewport=PHONE).new_page()
        page.set_default_timeout(20_000)
        pair(page, shop, "operator", "Ann's phone")
        page.wait_for_selector("html[data-offline-ready=true]")
        assert page.evaluate("isSecureContext && Boolean(navigator.mediaDevices?.getUserMedia)")
        client = page.context.new_cdp_session(page)
        errors = client.send("Page.getInstallabilityErrors")["installabilityErrors"]
        # A profile that leaves no trace can't install; nothing else may be wrong.
        assert {one["errorId"] for one in errors} <= {"in-incognito"}
        assert client.send("Page.getAppManifest")["errors"] == []
        shop.kill()
        show(page, f"{shop.https}/c/{CARD}", "card")
        expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
        show(page, f"{shop.https}/c/{CARD}/step/1", "step")


def test_a_device_that_is_not_paired_sees_how_to_be_and_nothing_else(
    device: Callable[..., Page], secure_shop: SecureShop, console
):
    console.expect("401")
    page = device()
    for path in ("/", f"/c/{CARD}", "/shop", "/crew", "/settings"):
        page.goto(f"{secure_shop.https}{path}")
        wait_ready(page, "pair")
        expect(by_test(page, "why")).to_contain_text("does not know this device")
        assert "Shelf bracket" not in page.content()
        assert sideways(page) <= 0


def test_the_owners_screen_shows_a_code_that_a_camera_reads(
    device: Callable[..., Page], secure_shop: SecureShop, wide: Page, console
):
    console.expect("401")
    show(wide, f"{secure_shop.url}/crew", "crew")
    wide.locator("[data-test=role] label", has_text="Press screen").click()
    by_test(wide, "device-name").fill("Screen at the press")
    by_test(wide, "show-code").click()
    picture = Image.open(io.BytesIO(by_test(wide, "offer-qr").screenshot()))
    (read,) = zxingcpp.read_barcodes(picture)
    assert read.text.startswith(f"{secure_shop.https}/pair#")
    assert read.text.endswith(by_test(wide, "offer-code").inner_text().replace("-", ""))
    phone = device(WIDE)
    phone.goto(read.text)
    wait_ready(phone, "pair")
    assert "#" not in phone.url
    by_test(phone, "pair").click()
    wait_ready(phone, "home")
    expect(by_test(wide, "came")).to_contain_text("Screen at the press is in, as press screen")
    expect(by_test(wide, "device").filter(has_text="Screen at the press")).to_be_visible()


def test_a_code_is_good_once_and_a_wrong_one_is_said(
    device: Callable[..., Page], secure_shop: SecureShop, console
):
    console.expect("401|404|410")
    first, second = device(), device()
    code = secure_shop.code("operator")
    for page, name in ((first, "wait"), (second, "late")):
        page.goto(f"{secure_shop.https}/c/{CARD}")
        wait_ready(page, "pair")
        by_test(page, "pair-code").fill("AAAA-AAAA" if name == "wait" else code)
        if name == "wait":
            by_test(page, "pair").click()
            expect(by_test(page, "wrong-pair-code")).to_contain_text("no such pairing code")
            by_test(page, "pair-code").fill(code)
        by_test(page, "pair").click()
        if name == "wait":
            wait_ready(page, "card")  # what was scanned opens once the door does
            expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
        else:
            expect(by_test(page, "wrong-pair-code")).to_contain_text("used already")


def said_to_a_stranger(shop: SecureShop) -> bytes:
    """What the shop answers to who asks for its cards without a pairing."""
    trusts = ssl.create_default_context(cafile=str(shop.authority))
    with pytest.raises(HTTPError, match="401") as no:
        urlopen(f"https://127.0.0.1:{shop.port + 1}/api/v1/changes", timeout=20, context=trusts)
    return bytes(no.value.read())


def test_a_no_from_before_the_pairing_turns_nobody_away(
    device: Callable[..., Page], secure_shop: SecureShop, console
):
    """The feed was asked for by a stranger, and its answer comes when the device is paired."""
    console.expect("401")
    page = device()
    late: list[Route] = []

    def hold(asked: Route) -> None:
        late.append(asked)

    page.route("**/api/v1/changes*", hold, times=1)
    page.goto(f"{secure_shop.https}/pair")
    wait_ready(page, "pair")
    by_test(page, "pair-code").fill(secure_shop.code("operator"))
    by_test(page, "pair").click()
    page.wait_for_selector("html[data-screen=home]")
    late[0].fulfill(status=401, body=said_to_a_stranger(secure_shop), content_type=PROBLEM)
    wait_ready(page, "home")
    expect(by_test(page, "card").first).to_be_visible()


def test_who_is_turned_out_loses_the_cards_but_not_what_waits(
    device: Callable[..., Page], secure_shop: SecureShop, wide: Page, console
):
    console.expect("401|Failed to load resource")
    page = pair(device(), secure_shop, "operator", "Ben's phone")
    page.evaluate(
        """async () => {
          const { newId, writeDown } = await import("/app/sync/outbox.js");
          const id = newId();
          const body = { id, revision: 999, step: 1, measured_deg: 91 };
          await writeDown({ id, kind: "trial", code: "SHE7FA1", body });
        }"""
    )
    show(wide, f"{secure_shop.url}/crew", "crew")
    wide.on("dialog", lambda dialog: dialog.accept())
    line = by_test(wide, "device").filter(has_text="Ben's phone")
    by_test(line, "revoke").click()
    expect(line).to_contain_text("removed")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    wait_ready(page, "pair")
    expect(by_test(page, "why")).to_contain_text("taken off the shop's list")
    expect(by_test(page, "waits")).to_contain_text("1 result")
    kept = page.evaluate(
        """async () => {
          const { database } = await import("/app/sync/database.js");
          const open = await database();
          return [await open.count("cards"), await open.count("list"), await open.count("outbox")];
        }"""
    )
    assert kept == [0, 0, 1]


def test_labels_left_open_show_the_card_and_nothing_else(
    device: Callable[..., Page], secure_shop: SecureShop, console
):
    console.expect("401")
    call(f"{secure_shop.url}/api/v1/crew-options", "PUT", {"labels_open": True})
    try:
        page = device()
        show(page, f"{secure_shop.https}/c/{CARD}", "card")
        expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
        page.goto(f"{secure_shop.https}/")
        wait_ready(page, "pair")
    finally:
        call(f"{secure_shop.url}/api/v1/crew-options", "PUT", {"labels_open": False})


def test_over_plain_http_it_works_and_says_what_is_missing(
    secure_shop: SecureShop, device: Callable[..., Page], console
):
    console.expect("401")
    page = device()
    page.goto(f"{secure_shop.http}/")
    wait_ready(page, "pair")
    expect(by_test(page, "plain-http")).to_contain_text("Not encrypted")
    by_test(page, "pair-code").fill(secure_shop.code("operator"))
    by_test(page, "pair").click()
    wait_ready(page, "home")
    expect(by_test(page, "not-secure")).to_contain_text("keeps no cards")
    show(page, f"{secure_shop.http}/c/{CARD}", "card")
    expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")


def test_the_page_that_helps_to_join_knows_when_the_device_trusts_the_shop(
    secure_shop: SecureShop, device: Callable[..., Page], phone: Page, console
):
    console.expect("ERR_CERT|ERR_NAME_NOT_RESOLVED|401|net::ERR")
    trusts = device()
    trusts.goto(f"{secure_shop.http}/join")
    trusts.wait_for_selector("html[data-trusted]")
    assert trusts.locator("html").get_attribute("data-trusted") == secure_shop.https
    shown = trusts.locator("#fingerprint").inner_text().replace(" ", "")
    assert shown == call(f"{secure_shop.url}/api/v1/join")["fingerprint"]
    assert sideways(trusts) <= 0
    does_not = phone
    does_not.goto(f"http://127.0.0.1:{secure_shop.port + 2}/join")
    does_not.wait_for_selector("html[data-trusted]")
    assert does_not.locator("html").get_attribute("data-trusted") == ""
    trusts.get_by_role("link", name=secure_shop.https).click()
    wait_ready(trusts, "pair")
