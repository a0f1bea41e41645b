"""What a device prefers, what waits to be sent, and whether everything is on it."""

from __future__ import annotations

import json
import uuid
from typing import Any

from browsing import SILENCE, by_test, call, show
from playwright.sync_api import Page, expect


def queued(page: Page, code: str, result: dict[str, Any]) -> None:
    """A result written into this device's outbox, as the result screen writes it."""
    page.evaluate(
        """async ([code, body]) => {
          const { writeDown } = await import("/app/sync/outbox.js");
          await writeDown({ id: body.id, kind: "trial", code, body });
        }""",
        [code, result],
    )


def impossible() -> dict[str, Any]:
    """A result the shop will refuse: the card has no such step."""
    return {"id": str(uuid.uuid4()), "revision": 1, "step": 40, "bend": 1, "measured_deg": 91.5}


def test_units_theme_paper_and_name_are_kept(page: Page, shop_server):
    show(page, f"{shop_server.url}/settings", "settings")
    expect(by_test(page, "inches")).to_have_count(0)
    by_test(page, "units").get_by_label("inch and tons").check()
    by_test(page, "inches").get_by_label("nearest 1/64").check()
    by_test(page, "theme").get_by_label("Shop").check()
    by_test(page, "paper").get_by_label("Letter").check()
    by_test(page, "name").fill("at the bench")
    assert page.evaluate("document.documentElement.dataset.theme") == "shop"
    page.reload()
    page.wait_for_selector("html[data-ready=settings]")
    assert page.evaluate("document.documentElement.dataset.theme") == "shop"
    expect(by_test(page, "name")).to_have_value("at the bench")
    expect(by_test(page, "inches").get_by_label("nearest 1/64")).to_be_checked()
    kept = json.loads(page.evaluate("localStorage.getItem('flangebook.settings')"))
    assert kept == {"units": "inch", "inches": "fraction", "theme": "shop",
                    "name": "at the bench", "paper": "Letter"}  # fmt: skip
    show(page, f"{shop_server.url}/shop/dies", "tools")
    expect(by_test(page, "row-V16")).to_contain_text("24 tons/ft")


def test_the_theme_follows_the_system_until_it_is_chosen(phone: Page, shop_server):
    root = phone.locator("html")
    show(phone, f"{shop_server.url}/settings", "settings")
    expect(root).to_have_attribute("data-theme", "day")
    phone.emulate_media(color_scheme="dark")
    expect(root).to_have_attribute("data-theme", "shop")
    show(phone, shop_server.url, "home")
    expect(root).to_have_attribute("data-theme", "shop")
    show(phone, f"{shop_server.url}/settings", "settings")
    by_test(phone, "theme").get_by_label("Day").check()
    expect(root).to_have_attribute("data-theme", "day")
    phone.emulate_media(color_scheme="light")
    by_test(phone, "theme").get_by_label("Shop").check()
    expect(root).to_have_attribute("data-theme", "shop")
    by_test(phone, "theme").get_by_label("As the device").check()
    expect(root).to_have_attribute("data-theme", "day")


def test_the_name_goes_with_a_change(wide: Page, own_server):
    show(wide, f"{own_server.url}/settings", "settings")
    by_test(wide, "name").fill("Night shift")
    show(wide, f"{own_server.url}/c/SHE7FA1/result/1", "result")
    by_test(wide, "measured_deg").fill("90.6")
    by_test(wide, "save").click()
    expect(by_test(wide, "sent")).to_be_visible()
    trials = call(f"{own_server.url}/api/v1/cards/SHE7FA1")["trials"]
    assert trials[-1]["by"] == "Night shift"


def test_everything_is_here(page: Page, own_server, console):
    console.expect(SILENCE)
    total = call(f"{own_server.url}/api/v1/cards?limit=1")["total"]
    show(page, f"{own_server.url}/settings", "settings")
    page.wait_for_selector("html[data-offline-ready=true]")
    expect(by_test(page, "kept-cards")).to_have_text(f"{total} of {total}")
    expect(by_test(page, "complete")).to_contain_text("Every card is here")
    expect(by_test(page, "kept-how-long")).to_contain_text("seven days")
    expect(by_test(page, "last-contact")).to_contain_text("20")
    by_test(page, "check-now").click()
    expect(by_test(page, "app-kept")).to_contain_text("opens without network")
    own_server.kill()
    by_test(page, "check-now").click()
    expect(by_test(page, "complete")).to_contain_text("Not connected")
    page.reload()
    page.wait_for_selector("html[data-ready=settings]")
    expect(by_test(page, "kept-cards")).to_have_text(str(total))
    expect(by_test(page, "complete")).to_contain_text("no answer from the shop")


def test_a_refused_result_waits_for_a_decision(page: Page, own_server, console):
    console.expect("422")
    show(page, f"{own_server.url}/settings", "settings")
    expect(by_test(page, "nothing-waits")).to_be_visible()
    queued(page, "SHE7FA1", {**impossible(), "note": "<i>odd</i>"})
    by_test(page, "check-now").click()
    waiting = by_test(page, "waiting")
    expect(by_test(page, "refused")).to_contain_text("Refused")
    expect(by_test(page, "refused")).to_contain_text("step")  # the server's own reason
    expect(waiting).to_contain_text("91.5°")
    expect(waiting).to_contain_text("<i>odd</i>")
    by_test(page, "try-again").click()
    expect(by_test(page, "refused")).to_be_visible()  # refused again
    page.once("dialog", lambda question: question.dismiss())
    by_test(page, "throw-away").click()
    expect(by_test(page, "refused")).to_be_visible()
    asked: list[str] = []
    page.once("dialog", lambda question: (asked.append(question.message), question.accept()))
    by_test(page, "throw-away").click()
    expect(by_test(page, "nothing-waits")).to_be_visible()
    assert "cannot be brought back" in asked[0]
    page.reload()
    page.wait_for_selector("html[data-ready=settings]")
    expect(by_test(page, "nothing-waits")).to_be_visible()


def test_what_waits_goes_when_it_is_told_to(wide: Page, own_server, console):
    console.expect(SILENCE)
    show(wide, f"{own_server.url}/settings", "settings")
    wide.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    wide.evaluate("() => import('/app/sync/outbox.js').then(() => null)")  # while it can be had
    own_server.kill()
    mine = {**impossible(), "step": 1, "measured_deg": 90.4}
    queued(wide, "SHE7FA1", mine)
    by_test(wide, "check-now").click()
    expect(by_test(wide, "waiting")).to_contain_text("It is sent when")
    own_server.start()
    by_test(wide, "send-now").click()
    expect(by_test(wide, "nothing-waits")).to_be_visible()
    trials = call(f"{own_server.url}/api/v1/cards/SHE7FA1")["trials"]
    assert [t["measured_deg"] for t in trials if t["id"] == mine["id"]] == [90.4]
