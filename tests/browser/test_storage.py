"""Storage that does not answer, refuses, is full or was cleared: no page stays empty, and nothing
that was typed is lost without a word.

``SWITCH`` stands in for the browser's storage: each of its requests waits while it is held.
"""

from __future__ import annotations

import pytest
from browsing import SILENCE, by_test, call, show, wait_ready
from playwright.sync_api import Page, expect

CARD = "SHE7FA1"
# Requests reach the database, and their answers wait until storage is let go again.
SWITCH = """
    let held = sessionStorage.getItem("held") === "yes";
    const waiting = [];
    const answers = EventTarget.prototype.addEventListener;
    IDBRequest.prototype.addEventListener = function (name, listener, ...more) {
      const later = (event) => (held ? waiting.push(() => listener.call(this, event))
        : listener.call(this, event));
      answers.call(this, name, later, ...more);
    };
    window.hold = () => { held = true; sessionStorage.setItem("held", "yes"); };
    window.letGo = () => {
      held = false;
      sessionStorage.removeItem("held");
      waiting.splice(0).forEach((answer) => answer());
    };
"""
REFUSED = "IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); };"
FULL = """
    IDBObjectStore.prototype.put = () => { throw new DOMException('no', 'QuotaExceededError'); };
"""


@pytest.fixture
def silent(kept: Page) -> Page:
    """A phone that was in the shop once, and whose storage does not answer any more."""
    kept.add_init_script(SWITCH)
    show(kept, kept.url, "home")
    kept.evaluate("hold()")
    return kept


@pytest.mark.parametrize(
    ("address", "ready"),
    [("/c/SHE7FA1", "card"), ("/c/SHE7FA1/step/1", "step"), ("/", "home")],
)
def test_a_silent_storage_shows_the_shop_s_answer(silent: Page, own_server, address, ready):
    show(silent, f"{own_server.url}{address}", ready)
    expect(by_test(silent, "silent-storage")).to_contain_text("storage does not answer")
    expect(silent.locator("#main")).to_contain_text("Shelf bracket")
    silent.evaluate("letGo()")
    silent.wait_for_selector("html[data-storage=answers]")
    expect(by_test(silent, "silent-storage")).to_have_count(0)


@pytest.mark.parametrize("address", ["/c/SHE7FA1", "/c/SHE7FA1/step/1", "/c/SHE7FA1/trial/1"])
def test_neither_answers_says_so_and_goes_on_by_itself(silent: Page, own_server, address, console):
    console.expect("storage does not answer")
    own_server.kill()
    show(silent, f"{own_server.url}{address}", "failed")
    expect(by_test(silent, "storage-silent")).to_contain_text("storage does not answer")
    expect(by_test(silent, "storage-silent").get_by_role("button")).to_have_count(1)
    silent.evaluate("letGo()")
    wait_ready(silent, address.strip("/").split("/")[2] if address.count("/") > 2 else "card")
    expect(silent.locator("#main")).to_contain_text("Shelf bracket")


def test_what_is_typed_is_held_until_the_storage_answers(silent: Page, own_server):
    show(silent, f"{own_server.url}/c/{CARD}/trial/1", "trial")
    own_server.kill()
    by_test(silent, "measured_deg").fill("90.7")
    by_test(silent, "save").click()
    expect(by_test(silent, "held")).to_contain_text("held in this window only")
    expect(by_test(silent, "measured_deg")).to_have_value("90.7")
    silent.evaluate("letGo()")
    expect(by_test(silent, "waits")).to_be_visible()
    own_server.start()
    show(silent, own_server.url, "home")
    silent.wait_for_selector("html[data-waiting='0']")
    trials = call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]
    assert [one["measured_deg"] for one in trials].count(90.7) == 1


def test_what_is_typed_is_held_until_the_shop_answers(silent: Page, own_server):
    show(silent, f"{own_server.url}/c/{CARD}/trial/1", "trial")
    own_server.kill()
    by_test(silent, "measured_deg").fill("90.6")
    by_test(silent, "save").click()
    expect(by_test(silent, "held")).to_be_visible()
    own_server.start()
    expect(by_test(silent, "held")).to_have_count(0)
    expect(by_test(silent, "new-angle-value")).to_be_visible()
    trials = call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]
    assert [one["measured_deg"] for one in trials].count(90.6) == 1


@pytest.mark.parametrize("fault", [REFUSED, FULL], ids=["refused", "full"])
def test_a_storage_that_fails_leaves_the_shop(phone: Page, own_server, console, fault):
    """Cards come from the shop, and so does what is typed go there."""
    console.expect(f"changes feed|{SILENCE}")
    phone.add_init_script(fault)
    show(phone, own_server.url, "home")
    expect(phone.locator("#main")).to_contain_text("Shelf bracket")
    show(phone, f"{own_server.url}/c/{CARD}/trial/1", "trial")
    by_test(phone, "measured_deg").fill("90.5")
    by_test(phone, "save").click()
    expect(by_test(phone, "new-angle-value")).to_be_visible()
    trials = call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]
    assert [one["measured_deg"] for one in trials].count(90.5) == 1
    show(phone, f"{own_server.url}/c/{CARD}/trial/1", "trial")
    own_server.kill()
    by_test(phone, "measured_deg").fill("90.4")
    by_test(phone, "save").click()
    expect(by_test(phone, "wrong")).to_contain_text("still on this screen and nowhere else")
    expect(by_test(phone, "measured_deg")).to_have_value("90.4")


def test_a_storage_cleared_under_the_page_is_filled_again(kept: Page, own_server):
    """As a system does that is short of room, or after seven days without a visit."""
    session = kept.context.new_cdp_session(kept)
    session.send(
        "Storage.clearDataForOrigin",
        {"origin": own_server.url, "storageTypes": "indexeddb,local_storage"},
    )
    show(kept, f"{own_server.url}/c/{CARD}", "card")
    kept.wait_for_selector("html[data-reached=true]")
    own_server.kill()
    show(kept, own_server.url, "home")
    expect(kept.locator("#main")).to_contain_text("Shelf bracket")
    show(kept, f"{own_server.url}/c/TRAY4CH/step/2", "step")
