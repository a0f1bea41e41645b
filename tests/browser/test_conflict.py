"""Two devices change one card: nothing is lost, both sides are seen, one button settles it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest
from browsing import PHONE, SILENCE, WIDE, by_test, call, go_to, losing, show, sideways, wait_ready
from playwright.sync_api import Page, expect
from shared_devices import Devices

NAMED = "name => localStorage.setItem('flangebook.settings', JSON.stringify({ name }))"
QUIET = f"{SILENCE}|ERR_INTERNET|ERR_FAILED"
CARD = "SHE7FA1"
# The round that comes every ten seconds, now, to its end.
A_ROUND = """() => new Promise((ended) => {
  const asked = new Date().toISOString();
  document.addEventListener("sync", function hear({ detail }) {
    if (!(detail.at > asked)) return;
    document.removeEventListener("sync", hear);
    ended();
  });
  document.dispatchEvent(new Event("visibilitychange"));
})"""


@dataclass
class Crew:
    """Two devices in one shop."""

    server: Any
    ana: Page
    ben: Page

    def card(self, rest: str = "") -> Any:
        """Asked of the shop, past both devices."""
        return call(f"{self.server.url}/api/v1/cards/{CARD}{rest}")

    def open(self, page: Page, rest: str = "", ready: str = "card") -> None:
        show(page, f"{self.server.url}/c/{CARD}{rest}", ready)

    def write(self, page: Page, note: str, title: str = "") -> None:
        """Type a note, and a title where one is given, and save."""
        go_to(page, f"/c/{CARD}/note", "note")
        by_test(page, "note").fill(note)
        if title:
            by_test(page, "title").fill(title)
        by_test(page, "save").click()


@pytest.fixture(params=[PHONE, WIDE], ids=["phone", "wide"])
def crew(
    request: pytest.FixtureRequest,
    devices: Devices,
    own_server: Any,
    console: Any,
) -> Crew:
    """Ana at the size of the test, Ben on a phone; both have been in the shop once."""
    console.expect(QUIET)
    console.expect("412")
    pages = []
    for name, size in (("Ana", request.param), ("Ben", PHONE)):
        page = console.watch(devices.take(viewport=size))
        show(page, own_server.url, "home")
        page.evaluate(NAMED, name)
        page.wait_for_selector("html[data-offline-ready=true]")
        pages.append(page)
    return Crew(own_server, *pages)


def cut(page: Page) -> None:
    """The dead spot: no call of this device reaches the shop."""
    page.context.route("**/api/v1/**", lambda route: route.abort())


def join(page: Page) -> None:
    """Out of the dead spot again."""
    page.context.unroute("**/api/v1/**")


def both_changed(crew: Crew) -> None:
    """Ana writes in a dead spot, Ben meanwhile; then Ana is back."""
    crew.open(crew.ana)
    cut(crew.ana)
    crew.write(crew.ana, "Ana: left end at the gauge", "Shelf bracket, Ana")
    wait_ready(crew.ana, "card")
    expect(by_test(crew.ana, "saved-here")).to_contain_text("Saved here, not yet in the shop")
    expect(by_test(crew.ana, "card-note")).to_have_text("Ana: left end at the gauge")
    crew.write(crew.ben, "Ben: new stop at 40")
    wait_ready(crew.ben, "card")
    expect(by_test(crew.ben, "saved-here")).to_have_count(0)
    join(crew.ana)
    crew.open(crew.ana)


def test_two_devices_change_one_card(crew: Crew):
    both_changed(crew)
    ana, ben = crew.ana, crew.ben
    expect(by_test(ana, "resolve-count")).to_have_text("1 to resolve")
    expect(by_test(ana, "to-resolve")).to_contain_text("Both are kept")
    expect(by_test(ana, "card-note")).to_have_text("Ben: new stop at 40")
    show(ana, crew.server.url, "home")
    expect(ana.locator(f"[data-code='{CARD}']")).to_contain_text("1 to resolve")

    # It is not on Ana's device alone: Ben sees it too, and could settle it.
    crew.open(ben)
    expect(by_test(ben, "to-resolve")).to_be_visible()
    crew.open(ben, "/resolve", "resolve")
    expect(by_test(ben, "why")).to_contain_text("Ana changed this card")

    crew.open(ana, "/resolve", "resolve")
    expect(by_test(ana, "why")).to_contain_text("You changed this card")
    expect(by_test(ana, "differs")).to_have_count(2)
    note = ana.locator("[data-field=note]")
    expect(by_test(note, "shop")).to_contain_text("Ben: new stop at 40")
    expect(by_test(note, "yours")).to_contain_text("Ana: left end at the gauge")
    assert sideways(ana) <= 0
    shop, yours = by_test(note, "shop").bounding_box(), by_test(note, "yours").bounding_box()
    if ana.viewport_size == PHONE:
        assert yours["y"] >= shop["y"] + shop["height"]
    else:
        assert yours["x"] >= shop["x"] + shop["width"]
    expect(by_test(ana, "keep")).to_be_disabled()
    by_test(ana.locator("[data-field=title]"), "yours").click()
    expect(by_test(ana, "keep")).to_contain_text("1 still to choose")
    by_test(note, "shop").click()
    by_test(ana, "keep").click()
    expect(by_test(ana, "resolved")).to_be_visible()

    card = crew.card()
    assert (card["title"], card["note"]) == ("Shelf bracket, Ana", "Ben: new stop at 40")
    assert card["proposals"] == []
    (kept,) = crew.card("/proposals")["proposals"]
    assert kept["changes"]["note"] == "Ana: left end at the gauge"
    assert kept["settled_by"] == card["revision"]
    crew.open(ana, "/history", "history")
    expect(by_test(ana, "proposal")).to_contain_text("Ana: left end at the gauge")
    expect(by_test(ana, "revision").first).to_contain_text("settled 1 proposed change of Ana")
    show(ben, crew.server.url, "home")
    expect(by_test(ben, "resolve-count")).to_have_count(0)
    ben.wait_for_selector("html[data-resolve='0']")


def test_all_of_one_side_and_settled_without_the_shop(crew: Crew):
    both_changed(crew)
    crew.open(crew.ana, "/resolve", "resolve")
    expect(by_test(crew.ana, "differs")).to_have_count(2)
    crew.server.kill()
    by_test(crew.ana, "all-yours").click()
    by_test(crew.ana, "keep").click()
    expect(by_test(crew.ana, "resolved")).to_be_visible()
    crew.open(crew.ana)
    expect(by_test(crew.ana, "card-title")).to_have_text("Shelf bracket, Ana")
    expect(by_test(crew.ana, "saved-here")).to_be_visible()
    expect(by_test(crew.ana, "to-resolve")).to_have_count(0)
    crew.server.start()
    crew.open(crew.ana)
    crew.ana.wait_for_selector("html[data-waiting='0']")
    card = crew.card()
    assert (card["title"], card["note"]) == ("Shelf bracket, Ana", "Ana: left end at the gauge")
    assert card["proposals"] == []


def test_only_later_edits_of_that_card_wait(crew: Crew):
    """Behind the conflict: a second note on the card. Beside it: a result, and another card."""
    ana = crew.ana
    crew.open(ana)
    cut(ana)
    crew.write(ana, "Ana: first")
    wait_ready(ana, "card")
    crew.write(ana, "Ana: second")
    wait_ready(ana, "card")
    expect(by_test(ana, "card-note")).to_have_text("Ana: second")
    crew.open(ana, "/result/1", "result")
    by_test(ana, "measured_deg").fill("90.7")
    by_test(ana, "save").click()
    expect(by_test(ana, "waits")).to_be_visible()
    show(ana, f"{crew.server.url}/c/ZRA2CKX/note", "note")
    by_test(ana, "note").fill("Ana: on the other card")
    by_test(ana, "save").click()
    wait_ready(ana, "card")
    crew.write(crew.ben, "Ben: meanwhile")
    wait_ready(crew.ben, "card")
    join(ana)
    crew.open(ana)
    ana.wait_for_selector("html[data-waiting='1']")
    assert crew.card()["trials"][-1]["measured_deg"] == 90.7
    other = call(f"{crew.server.url}/api/v1/cards/ZRA2CKX")
    assert other["note"] == "Ana: on the other card"
    assert [p["changes"] for p in crew.card()["proposals"]] == [{"note": "Ana: first"}]

    # Settled for hers: the second note goes on from there by itself.
    crew.open(ana, "/resolve", "resolve")
    by_test(ana, "all-yours").click()
    by_test(ana, "keep").click()
    ana.wait_for_selector("html[data-waiting='0']")
    card = crew.card()
    assert (card["note"], card["proposals"]) == ("Ana: second", [])


def test_a_lost_answer_is_no_conflict(crew: Crew):
    """The shop has the edit, the device never heard; Ben's result came in between."""
    ana = crew.ana
    lost: list[int] = []
    crew.open(ana)
    ana.context.route(f"**/api/v1/cards/{CARD}", losing("PUT", lost, times=2))
    crew.open(ana, "/note", "note")
    by_test(ana, "note").fill("written once")
    before = crew.card()["revision"]
    by_test(ana, "save").click()
    wait_ready(ana, "card")
    ana.wait_for_selector("html[data-waiting='0']")
    assert lost
    card = crew.card()
    assert (card["note"], card["revision"]) == ("written once", before + 1)
    assert card["proposals_total"] == 0


def test_what_is_on_its_way_is_not_sent_by_a_round_too(crew: Crew):
    """The note's answer takes long, and the round that comes every ten seconds comes meanwhile."""
    ana = crew.ana
    held: list[Any] = []

    def hold(route: Any) -> None:
        if route.request.method == "PUT":
            held.append(route)
        else:
            route.continue_()

    crew.open(ana, "/note", "note")
    ana.context.route(f"**/api/v1/cards/{CARD}", hold)
    by_test(ana, "note").fill("sent once")
    with ana.expect_request(lambda sent: sent.method == "PUT"):
        by_test(ana, "save").click()
    for _ in range(2):  # the first may have been under way before
        ana.evaluate(A_ROUND)
    assert len(held) == 1
    held[0].continue_()
    wait_ready(ana, "card")
    expect(by_test(ana, "saved-here")).to_have_count(0)
    assert crew.card()["note"] == "sent once"


def test_the_same_change_twice_needs_no_resolving(crew: Crew):
    crew.open(crew.ana)
    cut(crew.ana)
    crew.write(crew.ana, "use the narrow die")
    wait_ready(crew.ana, "card")
    crew.write(crew.ben, "use the narrow die")
    wait_ready(crew.ben, "card")
    join(crew.ana)
    crew.open(crew.ana)
    crew.ana.wait_for_selector("html[data-waiting='0']")
    assert crew.card()["proposals_total"] == 0
