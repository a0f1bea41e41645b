"""The shop's disk is full: the phone keeps what is typed, says why it waits, and sends it later."""

from __future__ import annotations

import sys

import pytest
from browsing import by_test, call, show
from playwright.sync_api import Page, expect
from shop_process import ShopProcess

pytestmark = pytest.mark.skipif(
    sys.platform != "linux", reason="only Linux limits a running process"
)
CODE = "SHE7FA1"


def test_a_result_waits_on_the_phone_and_says_why(phone: Page, own_server: ShopProcess, console):
    console.expect("507")
    card = f"{own_server.url}/c/{CODE}"
    before = len(call(f"{own_server.url}/api/v1/cards/{CODE}")["trials"])
    show(phone, f"{card}/result/1", "result")
    own_server.fill_disk()
    by_test(phone, "measured_deg").fill("91.2")
    by_test(phone, "save").click()
    expect(by_test(phone, "result-answer")).to_contain_text("Saved here, not yet in the shop")
    expect(by_test(phone, "waits")).to_contain_text("disk of the shop’s server is full")
    expect(by_test(phone, "standing")).to_contain_text("1 result waits to be sent")
    expect(by_test(phone, "standing")).to_contain_text("disk of the shop’s server is full")
    show(phone, f"{own_server.url}/settings", "settings")  # it outlives the page
    expect(by_test(phone, "waiting")).to_contain_text("disk of the shop’s server is full")
    by_test(phone, "send-now").click()
    expect(by_test(phone, "standing")).to_contain_text("disk of the shop’s server is full")
    own_server.free_disk()
    by_test(phone, "send-now").click()
    expect(by_test(phone, "nothing-waits")).to_be_visible()
    trials = call(f"{own_server.url}/api/v1/cards/{CODE}")["trials"]
    assert [one["measured_deg"] for one in trials[before:]] == [91.2]
