"""A phone of a released version, with what it had queued, and a shop of that version."""

from __future__ import annotations

import json
import lzma
from collections.abc import Iterator
from pathlib import Path

import pytest
from browsing import by_test, call, show
from playwright.sync_api import Page, expect
from shop_process import ShopProcess

RELEASED = Path(__file__).parents[1] / "api/released/0.3.0"
QUEUED = json.loads((RELEASED / "queued.json").read_text("utf-8"))
CODE = QUEUED[0]["code"]
# The device's storage as 0.3.0 made it: form 2.
WRITE_DOWN = """queued => new Promise((done, fail) => {
  const asked = indexedDB.open("flangebook", 2);
  asked.onupgradeneeded = () => {
    const db = asked.result;
    db.createObjectStore("cards", { keyPath: "code" });
    const list = db.createObjectStore("list", { keyPath: "code" });
    db.createObjectStore("meta");
    db.createObjectStore("outbox", { keyPath: "id" });
    db.createObjectStore("sent", { keyPath: "id" });
    db.createObjectStore("lost", { keyPath: "code" });
    list.createIndex("settle", "settle");
  };
  asked.onerror = () => fail(asked.error);
  asked.onsuccess = () => {
    const write = asked.result.transaction(["outbox", "meta"], "readwrite");
    for (const entry of queued) write.objectStore("outbox").put(entry);
    write.objectStore("meta").put(queued.at(-1).number, "number");
    write.oncomplete = () => { asked.result.close(); done(); };
  };
})"""


@pytest.fixture
def released(tmp_path: Path) -> Iterator[ShopProcess]:
    """The version's shop, served by this one."""
    data = tmp_path / "shop"
    data.mkdir()
    packed = (RELEASED / "flangebook.sqlite.xz").read_bytes()
    (data / "flangebook.sqlite").write_bytes(lzma.decompress(packed))
    server = ShopProcess(data).start()
    yield server
    server.stop()


def test_what_it_had_queued_arrives_and_the_card_opens_and_prints(phone: Page, released):
    phone.goto(f"{released.url}/manifest.webmanifest")  # the site without the app
    phone.evaluate(WRITE_DOWN, QUEUED)
    show(phone, released.url, "home")
    phone.wait_for_selector("html[data-reached=true][data-waiting='0']")
    card = call(f"{released.url}/api/v1/cards/{CODE}")
    assert card["note"] == QUEUED[1]["body"]["note"]
    (newest, *_) = call(f"{released.url}/api/v1/cards/{CODE}/results")["results"]
    assert (newest["id"], newest["measured_deg"]) == (QUEUED[0]["id"], 90.3)

    show(phone, f"{released.url}/c/{CODE}", "card")
    expect(phone.locator("#main")).to_contain_text("Deburr first")
    show(phone, f"{released.url}/c/{CODE}/step/1", "step")
    expect(phone.locator("#main")).to_contain_text("86.5")  # the setting it was kept with
    show(phone, f"{released.url}/c/{CODE}/print", "print")
    expect(phone.locator("#main")).to_contain_text("86.5")
    show(phone, f"{released.url}/c/{CODE}/label", "label")
    expect(by_test(phone, "label-image-50x25")).to_be_visible()
