"""Storage that does not answer, refuses, is full or was cleared: no page stays empty, and nothing
that was typed is lost without a word.

``SWITCH`` stands in for the browser's storage: each of its requests waits while it is held.
A page that is cut off hears nothing of the shop, as with the server killed.
"""

from __future__ import annotations

from itertools import cycle, islice

import pytest
from browsing import PHONE, SILENCE, by_test, call, show, wait_ready
from playwright.sync_api import Page, expect

CARD = "SHE7FA1"
METAL = "Mild steel, cold-rolled"
TURNS = [("/c/STEP6BQ", "card"), ("/c/TRAY4CH/step/2", "step")]
LOADS = 24
API = "**/api/v1/**"
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
# A private window of a browser that keeps nothing there.
PRIVATE = """
    const no = () => { throw new DOMException("no", "SecurityError"); };
    IDBFactory.prototype.open = no;
    Object.defineProperty(window, "localStorage", { get: no });
    delete Navigator.prototype.serviceWorker;
"""
# A tab that was left in the middle of something and never comes to an end of it.
KEEP_THE_TURN = """
    () => new Promise((has) => navigator.locks.request("flangebook.writer", () => {
      has();
      return new Promise((end) => { window.endTurn = end; });
    }))
"""

# Until something holds of the turns that tabs have and wait for.
UNTIL = """async (holds) => {
  const test = new Function("{ held, pending }", `return ${holds}`);
  for (let asked = 0; !test(await navigator.locks.query()); asked += 1) {
    if (asked === 1000) throw new Error(`never: ${holds}`);
    await new Promise((next) => setTimeout(next, 20));
  }
}"""


@pytest.fixture
def kept(phone: Page, shop_server, console) -> Page:
    """A phone that has been in the shop once."""
    console.expect(SILENCE)
    show(phone, shop_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    return phone


@pytest.fixture
def silent(kept: Page, shop_server) -> Page:
    """The same, and its storage does not answer any more."""
    kept.add_init_script(SWITCH)
    show(kept, shop_server.url, "home")
    kept.evaluate("hold()")
    return kept


def cut_off(page: Page) -> None:
    """From now on the shop does not answer this page."""
    page.route(API, lambda route: route.abort("connectionrefused"))


def back(page: Page) -> None:
    """The shop answers again."""
    page.unroute(API)


def results(url: str, degrees: float) -> int:
    """How often the shop has a result."""
    trials = call(f"{url}/api/v1/cards/{CARD}")["trials"]
    return [one["measured_deg"] for one in trials].count(degrees)


def type_result(page: Page, degrees: str) -> None:
    """Into the form that is open, and save it."""
    by_test(page, "measured_deg").fill(degrees)
    by_test(page, "save").click()


def test_a_silent_storage_shows_the_shop_s_answer(silent: Page, shop_server):
    for path, ready in (("/c/SHE7FA1", "card"), ("/c/SHE7FA1/step/1", "step"), ("/", "home")):
        show(silent, f"{shop_server.url}{path}", ready)
        expect(by_test(silent, "silent-storage")).to_contain_text("storage does not answer")
        expect(silent.locator("#main")).to_contain_text("Shelf bracket")
        if ready != "step":
            expect(silent.locator("#main")).to_contain_text(METAL)
    silent.evaluate("letGo()")
    silent.wait_for_selector("html[data-storage=answers]")
    expect(by_test(silent, "silent-storage")).to_have_count(0)


def test_neither_answers_says_so_and_goes_on_by_itself(silent: Page, shop_server, console):
    console.expect("storage does not answer")
    cut_off(silent)
    for path, ready in (
        ("/c/SHE7FA1", "card"), ("/c/SHE7FA1/step/1", "step"), ("/c/SHE7FA1/result/1", "result"),
    ):  # fmt: skip
        silent.evaluate("hold()")
        show(silent, f"{shop_server.url}{path}", "failed")
        expect(by_test(silent, "storage-silent")).to_contain_text("storage does not answer")
        expect(silent.get_by_role("button")).to_have_count(1)
        expect(by_test(silent, "silent-storage")).not_to_contain_text("come from the shop")
        silent.evaluate("letGo()")
        wait_ready(silent, ready)
        expect(silent.locator("#main")).to_contain_text("Shelf bracket")


def test_what_is_typed_is_held_until_the_storage_or_the_shop_answers(silent: Page, shop_server):
    form = f"{shop_server.url}/c/{CARD}/result/1"
    show(silent, form, "result")
    cut_off(silent)
    type_result(silent, "90.7")
    expect(by_test(silent, "held")).to_contain_text("held in this window only")
    expect(by_test(silent, "held")).to_contain_text("storage does not answer")
    expect(by_test(silent, "measured_deg")).to_have_value("90.7")
    silent.evaluate("letGo()")
    expect(by_test(silent, "waits")).to_be_visible()
    expect(by_test(silent, "held")).to_have_count(0)
    assert results(shop_server.url, 90.7) == 0

    back(silent)
    silent.evaluate("hold()")
    show(silent, form, "result")
    cut_off(silent)
    type_result(silent, "90.6")
    expect(by_test(silent, "held")).to_be_visible()
    back(silent)
    expect(by_test(silent, "new-angle-value")).to_be_visible()
    expect(by_test(silent, "held")).to_have_count(0)
    assert results(shop_server.url, 90.6) == 1
    silent.evaluate("letGo()")
    show(silent, shop_server.url, "home")
    silent.wait_for_selector("html[data-waiting='0']")
    assert results(shop_server.url, 90.7) == 1


def test_a_private_window_leaves_the_shop(phone: Page, shop_server, console):
    """Cards come from the shop, and so does what is typed go there, now or once it answers."""
    console.expect(f"changes feed|{SILENCE}")
    phone.add_init_script(PRIVATE)
    show(phone, shop_server.url, "home")
    expect(phone.locator("#main")).to_contain_text("Shelf bracket")
    holds_what_is_typed(phone, shop_server.url, "lets nothing be kept here", (90.5, 90.4))


def test_a_private_window_asks_for_what_the_press_is_set_by(phone: Page, crib_server, console):
    """The press comes from the shop, like the cards."""
    console.expect("changes feed")
    press, etag = crib_server.document("press")
    url = f"{crib_server.url}/api/v1/press"
    call(url, "PUT", {"press": {**press, "set_by": "depth"}}, etag)
    phone.add_init_script(PRIVATE)
    show(phone, f"{crib_server.url}/c/{CARD}/result/1", "result")
    expect(phone.locator("#main")).to_contain_text("Depth that was set")
    show(phone, crib_server.url, "home")
    expect(phone.locator("#main")).to_contain_text(METAL)


def test_a_private_window_makes_one_setting_after_another_the_card_s(
    phone: Page, shop_server, console
):
    """The second is made on the first, and has nothing to settle with it."""
    console.expect("changes feed")
    phone.add_init_script(PRIVATE)
    show(phone, f"{shop_server.url}/c/{CARD}/result/1", "result")
    before = call(f"{shop_server.url}/api/v1/cards/{CARD}")
    for number, degrees in enumerate(("91", "90.6"), 1):
        type_result(phone, degrees)
        by_test(phone, "keep").click()
        revision = before["revision"] + number
        expect(by_test(phone, "kept")).to_contain_text(f"Revision {revision} of the card has it")
        by_test(phone, "again").click()
    assert call(f"{shop_server.url}/api/v1/cards/{CARD}")["proposals"] == before["proposals"]


def test_a_private_window_finds_no_card_by_a_note_that_it_was_not_told(
    phone: Page, shop_server, console
):
    """The shop's list has no notes; a word that stands nowhere is on no card."""
    console.expect("changes feed")
    phone.add_init_script(PRIVATE)
    show(phone, shop_server.url, "home")
    by_test(phone, "search").fill("undefined")
    expect(by_test(phone, "count")).to_contain_text("None of the")
    by_test(phone, "search").fill("bracket")
    expect(by_test(phone, "count")).to_contain_text(" of ")
    expect(phone.locator("#main")).to_contain_text("Shelf bracket")


def test_a_full_device_leaves_the_shop(context_of, shop_server, console):
    """The browser itself says that there is no room, once all of a change was asked for.

    A device of its own: Chromium looks for a smaller room only after half a minute.
    """
    console.expect(f"changes feed|could not be kept on this device|{SILENCE}")
    context = context_of(PHONE)
    page = console.watch(context.new_page())
    session = context.new_cdp_session(page)
    limit = {"origin": shop_server.url, "quotaSize": 1}
    session.send("Storage.overrideQuotaForOrigin", limit)
    show(page, shop_server.url, "home")
    expect(page.locator("#main")).to_contain_text("Shelf bracket")
    holds_what_is_typed(page, shop_server.url, "device is full", (90.3, 90.2))
    show(page, f"{shop_server.url}/c/{CARD}/result/1", "result")
    cut_off(page)
    type_result(page, "90.1")
    expect(by_test(page, "held")).to_contain_text("device is full")
    session.send("Storage.overrideQuotaForOrigin", {"origin": shop_server.url})
    expect(by_test(page, "waits")).to_be_visible()
    expect(by_test(page, "held")).to_have_count(0)


def holds_what_is_typed(page: Page, url: str, why: str, degrees: tuple[float, float]) -> None:
    """Nothing can be written down: the shop gets the first at once, the second when it answers."""
    at_once, later = degrees
    show(page, f"{url}/c/{CARD}/result/1", "result")
    type_result(page, str(at_once))
    expect(by_test(page, "new-angle-value")).to_be_visible()
    assert results(url, at_once) == 1
    show(page, f"{url}/c/{CARD}/result/1", "result")
    cut_off(page)
    type_result(page, str(later))
    expect(by_test(page, "held")).to_contain_text(why)
    expect(by_test(page, "held")).to_contain_text("held in this window only")
    expect(by_test(page, "measured_deg")).to_have_value(str(later))
    back(page)
    expect(by_test(page, "new-angle-value")).to_be_visible()
    expect(by_test(page, "held")).to_have_count(0)
    assert results(url, later) == 1


@pytest.mark.parametrize("by", ["the system", "the app's own database deleted"])
def test_a_storage_cleared_under_the_page_is_filled_again(kept: Page, console, shop_server, by):
    """As a system does that is short of room, or after seven days without a visit."""
    console.expect("changes feed: .*Force close delete origin")  # a round was under way
    show(kept, f"{shop_server.url}/c/{CARD}/result/1", "result")
    by_test(kept, "measured_deg").fill("90.8")
    if by == "the system":
        session = kept.context.new_cdp_session(kept)
        kinds = {"origin": shop_server.url, "storageTypes": "indexeddb,local_storage"}
        session.send("Storage.clearDataForOrigin", kinds)
    else:
        kept.evaluate(
            "new Promise((gone, fail) => Object.assign(indexedDB.deleteDatabase('flangebook'),"
            " { onsuccess: gone, onerror: fail }))"
        )
    cut_off(kept)
    by_test(kept, "save").click()
    expect(by_test(kept, "waits")).to_be_visible()
    before = results(shop_server.url, 90.8)
    back(kept)
    show(kept, f"{shop_server.url}/c/{CARD}", "card")
    kept.wait_for_selector("html[data-reached=true][data-waiting='0']")
    assert results(shop_server.url, 90.8) == before + 1
    cut_off(kept)
    show(kept, shop_server.url, "home")
    expect(kept.locator("#main")).to_contain_text("Shelf bracket")
    show(kept, f"{shop_server.url}/c/TRAY4CH/step/2", "step")


def test_a_tab_that_keeps_its_turn_holds_nobody_up(kept: Page, shop_server):
    """Reading needs no turn, and a turn that does not come is no reason not to write."""
    other = kept.context.new_page()
    show(other, shop_server.url, "home")
    other.evaluate(KEEP_THE_TURN)
    show(kept, f"{shop_server.url}/c/{CARD}/result/1", "result")
    cut_off(kept)
    type_result(kept, "91.1")
    expect(by_test(kept, "waits")).to_be_visible()
    expect(by_test(kept, "silent-storage")).to_have_count(0)


def test_a_writer_waits_its_turn_and_a_reader_does_not(kept: Page, shop_server):
    """A page of the feed comes while another tab writes: cards open, and show it afterwards."""
    kept.add_init_script("AbortSignal.timeout = () => new AbortController().signal;")
    other = kept.context.new_page()
    show(other, shop_server.url, "home")
    show(kept, shop_server.url, "home")
    kept.wait_for_selector("html[data-reached=true]")
    other.evaluate(KEEP_THE_TURN)
    card = call(f"{shop_server.url}/api/v1/cards/{CARD}")
    note = {"note": "said while another tab writes"}
    call(f"{shop_server.url}/api/v1/cards/{CARD}", "PUT", note, card["etag"])
    kept.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    kept.evaluate(UNTIL, "pending.some(({ name }) => name === 'flangebook.writer')")
    cut_off(kept)
    kept.get_by_role("link", name="Shelf bracket").click()
    wait_ready(kept, "card")
    expect(kept.locator("#main")).not_to_contain_text(note["note"])
    other.evaluate("endTurn()")
    kept.evaluate(UNTIL, "held.length + pending.length === 0")
    show(kept, f"{shop_server.url}/c/{CARD}", "card")
    expect(kept.locator("#main")).to_contain_text(note["note"])


def test_a_page_opened_at_once_after_another_is_never_empty(kept: Page, shop_server):
    """Two labels in turn, each as soon as the last is shown, in two tabs (test_webkit.py)."""
    tabs = [kept, kept.context.new_page()]
    for page, (path, ready) in islice(zip(cycle(tabs), cycle(TURNS + TURNS[::-1])), LOADS):
        show(page, f"{shop_server.url}{path}", ready)
        expect(page.locator("#main")).to_contain_text("mm")
        expect(by_test(page, "silent-storage")).to_have_count(0)
