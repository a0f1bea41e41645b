"""What must not lose anything: the shop put back to an earlier day, an app that is brought up to
date while something waits, a device that is full or keeps nothing, a clock that is wrong.
"""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import Any, cast

import pytest
from browsing import PHONE, SILENCE, by_test, call, plain_angle, show, wait_ready
from playwright.sync_api import BrowserContext, Page, expect

QUIET = f"{SILENCE}|ERR_FAILED"
CARD = "SHE7FA1"
TITLE = "Made after the backup"
OLD_APP = """async () => {
  await new Promise((done, fail) => {
    const gone = indexedDB.deleteDatabase("flangebook");
    gone.onsuccess = done; gone.onerror = fail;
  });
  const db = await new Promise((done, fail) => {
    const asked = indexedDB.open("flangebook", 1);
    asked.onupgradeneeded = () => {
      const byCode = { keyPath: "code" };
      for (const name of ["cards", "list"]) asked.result.createObjectStore(name, byCode);
      asked.result.createObjectStore("meta");
      asked.result.createObjectStore("outbox", { keyPath: "id" });
    };
    asked.onsuccess = () => done(asked.result); asked.onerror = fail;
  });
  const change = db.transaction(["outbox", "meta"], "readwrite");
  ["11111111", "22222222"].forEach((start, place) => {
    const id = `${start}-28b1-4a5f-9d0c-6b6f4f1d2a10`;
    const note = `from the old app ${place}`;
    const trial = { id, revision: 1, step: 1, measured_deg: 91 + place, note };
    const queued_at = `2026-05-04T08:0${place}:00Z`;
    change.objectStore("outbox").put({ id, code: "SHE7FA1", trial, queued_at });
  });
  change.objectStore("meta").put("gone.7", "cursor");
  await new Promise((done) => (change.oncomplete = done));
  db.close();
}"""
FULL = """() => {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (...all) {
    if (this.name === "outbox") throw new DOMException("no room", "QuotaExceededError");
    return put.apply(this, all);
  };
}"""


@pytest.fixture
def phone(context_of: Callable[..., BrowserContext], console: Any) -> Page:
    """A phone that nobody else has: one never had this app, another's clock is wrong."""
    return cast(Page, console.watch(context_of(PHONE, has_touch=True).new_page()))


@pytest.fixture
def kept(kept: Page, console: Any) -> Page:
    """The same, whose calls may also fail in the page."""
    console.expect(QUIET)
    return kept


def type_result(page: Page, url: str, angle: str) -> None:
    show(page, f"{url}/c/{CARD}/result/1", "result")
    by_test(page, "measured_deg").fill(angle)
    by_test(page, "save").click()


def put_back(data: Path, earlier: Path) -> None:
    """A backup in place of the shop, and a name of its own: the feed then says reset."""
    shutil.rmtree(data)
    shutil.copytree(earlier, data)
    with closing(sqlite3.connect(data / "flangebook.sqlite")) as file:
        file.execute("UPDATE shop SET shop_id = 'put-back'")
        file.commit()


def test_a_shop_put_back_gets_again_what_it_had(
    kept: Page, own_server: Any, tmp_path: Path, console: Any
):
    console.expect("404")  # the result of a card that the shop lost
    own_server.stop()
    shutil.copytree(own_server.data, tmp_path / "earlier")
    own_server.start()
    made = call(
        f"{own_server.url}/api/v1/cards", "POST", {"part": plain_angle(TITLE), "note": "kept here"}
    )
    type_result(kept, own_server.url, "90.93")
    expect(by_test(kept, "sent")).to_contain_text("Saved in the shop")
    show(kept, f"{own_server.url}/c/{CARD}/note", "note")
    by_test(kept, "note").fill("after the backup")
    by_test(kept, "save").click()
    wait_ready(kept, "card")
    for number, code in enumerate((CARD, made["code"])):  # by another device
        other = {
            "id": f"7d1a1f7e-28b1-4a5f-9d0c-6b6f4f1d2a1{number}",
            "revision": 1,
            "step": 1,
            "measured_deg": 92.2,
        }
        call(f"{own_server.url}/api/v1/cards/{code}/results", "POST", other)
    for code in (CARD, made["code"]):  # nobody but this phone has them when the shop is put back
        show(kept, f"{own_server.url}/c/{code}", "card")
        expect(by_test(kept, "result").filter(has_text="92.2°")).to_have_count(1)
    own_server.kill()
    type_result(kept, own_server.url, "90.17")
    expect(by_test(kept, "waits")).to_be_visible()
    put_back(own_server.data, tmp_path / "earlier")
    own_server.start()

    show(kept, own_server.url, "home")
    kept.wait_for_selector("html[data-waiting='0']")
    card = call(f"{own_server.url}/api/v1/cards/{CARD}")
    assert card["note"] == "after the backup"
    found = [t["measured_deg"] for t in card["trials"]]
    assert [found.count(angle) for angle in (90.93, 90.17, 92.2)] == [1, 1, 1]

    # A card nobody's outbox knows is offered, not made by itself: it may be another shop.
    expect(by_test(kept, "lost-count")).to_contain_text("1 card is not in the shop any more")
    show(kept, f"{own_server.url}/settings", "settings")
    expect(by_test(kept, "lost")).to_contain_text("Made after the backup")
    by_test(kept, "put-back").click()
    expect(by_test(kept, "lost")).to_have_count(0)
    kept.wait_for_selector("html[data-waiting='0']")
    back = call(f"{own_server.url}/api/v1/cards/{made['code']}")
    assert (back["title"], back["note"]) == (TITLE, "kept here")
    assert [t["measured_deg"] for t in back["trials"]] == [92.2]


def test_what_waits_survives_the_new_app(phone: Page, own_server: Any, console: Any):
    """Two results, typed into the app's first form, which knew nothing but results."""
    console.expect(QUIET)
    blank = f"{own_server.url}/blank"  # the app's own address, without the app
    phone.route(blank, lambda route: route.fulfill(body="<p>old", content_type="text/html"))
    phone.goto(blank)
    phone.evaluate(OLD_APP)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-waiting='0']")
    notes = [t["note"] for t in call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]]
    assert notes[-2:] == ["from the old app 0", "from the old app 1"]


def test_a_full_device_says_so_and_keeps_what_is_typed_on_the_screen(kept: Page, own_server: Any):
    show(kept, f"{own_server.url}/c/{CARD}/note", "note")
    kept.evaluate(FULL)
    own_server.kill()
    by_test(kept, "note").fill("no room for this")
    by_test(kept, "save").click()
    expect(by_test(kept, "held")).to_contain_text("device is full")
    expect(by_test(kept, "note")).to_have_value("no room for this")
    # With the shop in reach it does not matter that the device is full.
    own_server.start()
    wait_ready(kept, "card")
    assert call(f"{own_server.url}/api/v1/cards/{CARD}")["note"] == "no room for this"


def test_a_wrong_clock_is_shown_as_the_devices(kept: Page, own_server: Any):
    kept.clock.install(time="2031-01-02T03:04:05Z")
    type_result(kept, own_server.url, "91.2")
    expect(by_test(kept, "sent")).to_be_visible()
    show(kept, f"{own_server.url}/c/{CARD}", "card")
    expect(by_test(kept, "result").first).to_contain_text("2 Jan 2031")
    expect(by_test(kept, "result").first).to_contain_text("by the device’s clock")
    # What it sent is still kept to be sent again: the shop's clock says how old it is.
    sent = kept.evaluate(
        "() => import('/app/sync/database.js').then(m => m.database())"
        ".then(db => db.getAll('sent'))"
    )
    assert len(sent) == 1
    assert sent[0]["sent_at"] < "2031"
