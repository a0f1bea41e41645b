"""Answers that do not arrive whole, or are not the shop's: nothing counts as saved that may not be.

The shop has done what was asked; its answer breaks off halfway, as when its plug is pulled in the
middle, or a hotspot's sign-in page comes in its place.
"""

from __future__ import annotations

import socket
import threading
from collections.abc import Callable, Iterator
from contextlib import suppress

import pytest
from browsing import by_test, call, plain_angle, show, wait_ready
from playwright.sync_api import Error, Page, Route, expect

CARD = "SHE7FA1"
SIGN_IN = "<!doctype html><title>Guest network</title><p>Sign in to go on."
TITLE = "Asked for and cut off"


class BreakingLine:
    """Whoever asks here gets the first half of an answer, then the line breaks."""

    def __init__(self) -> None:
        self._answer = b""
        self._listening = socket.create_server(("127.0.0.1", 0))
        self._url = f"http://127.0.0.1:{self._listening.getsockname()[1]}/"
        self.torn: list[int] = []
        threading.Thread(target=self._answer_all, daemon=True).start()

    def first(self, method: str) -> Callable[[Route], None]:
        """A handler that tears the answer to the first call made so, and lets others through."""

        def handle(route: Route) -> None:
            if route.request.method == method and not self.torn:
                self.tear(route)
            else:
                route.continue_()

        return handle

    def tear(self, route: Route) -> None:
        """The shop answers; half of that reaches the page."""
        answer = route.fetch()
        body = answer.body()
        head = [f"HTTP/1.1 {answer.status} {answer.status_text}"]
        head += ["Content-Type: application/json", f"Content-Length: {len(body)}"]
        self._answer = "\r\n".join([*head, "", ""]).encode() + body[: len(body) // 2]
        self.torn.append(answer.status)
        with suppress(Error):  # the page gave up waiting
            route.continue_(url=self._url)

    def close(self) -> None:
        self._listening.close()

    def _answer_all(self) -> None:
        with suppress(OSError):  # closed at the end of the test
            while True:
                line = self._listening.accept()[0]
                line.settimeout(1.0)
                with line, suppress(OSError):
                    _read_request(line)
                    line.sendall(self._answer)


def _read_request(line: socket.socket) -> None:
    """To its end: a line closed with something unread is reset, and the half would not arrive."""
    got = b""
    while b"\r\n\r\n" not in got:
        got += line.recv(65536)
    head, _, body = got.partition(b"\r\n\r\n")
    (length,) = [
        int(row.split(b":")[1])
        for row in head.lower().split(b"\r\n")
        if row.startswith(b"content-length:")
    ] or [0]
    while len(body) < length:
        body += line.recv(65536)


@pytest.fixture
def breaking() -> Iterator[BreakingLine]:
    line = BreakingLine()
    yield line
    line.close()


def test_a_note_whose_answer_was_torn_is_there_once(kept: Page, own_server, breaking):
    show(kept, f"{own_server.url}/c/{CARD}/note", "note")
    before = call(f"{own_server.url}/api/v1/cards/{CARD}")["revision"]
    kept.route(f"**/api/v1/cards/{CARD}", breaking.first("PUT"))
    by_test(kept, "note").fill("half an answer")
    by_test(kept, "save").click()
    wait_ready(kept, "card")
    expect(by_test(kept, "card-note")).to_have_text("half an answer")
    assert breaking.torn == [200]
    kept.wait_for_selector("html[data-waiting='0']")
    card = call(f"{own_server.url}/api/v1/cards/{CARD}")
    assert (card["note"], card["revision"]) == ("half an answer", before + 1)
    assert card["proposals_total"] == 0


def test_a_result_whose_answer_was_torn_is_there_once(kept: Page, own_server, breaking):
    show(kept, f"{own_server.url}/c/{CARD}/result/1", "result")
    kept.route("**/results", breaking.first("POST"))
    by_test(kept, "measured_deg").fill("89.3")
    by_test(kept, "save").click()
    expect(by_test(kept, "waits")).to_be_visible()
    assert breaking.torn == [201]
    kept.wait_for_selector("html[data-waiting='0']")
    trials = call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]
    assert [t.get("measured_deg") for t in trials].count(89.3) == 1


@pytest.mark.parametrize("status", [200, 403, 404, 511])
def test_a_hotspots_page_in_the_shops_place_is_no_answer(
    kept: Page, own_server, console, status: int
):
    """What was typed is neither saved nor refused: it waits, and goes once the shop answers."""
    console.expect(f"status of {status}")

    def sign_in(route: Route) -> None:
        route.fulfill(status=status, body=SIGN_IN, content_type="text/html")

    kept.route("**/api/v1/**", sign_in)
    show(kept, f"{own_server.url}/c/{CARD}/result/1", "result")
    by_test(kept, "measured_deg").fill("88.8")
    by_test(kept, "save").click()
    expect(by_test(kept, "waits")).to_contain_text("Waiting")
    expect(by_test(kept, "standing")).to_contain_text("Not connected")
    show(kept, f"{own_server.url}/c/ZRA2CKX/note", "note")
    by_test(kept, "note").fill("typed behind a hotspot")
    by_test(kept, "save").click()
    wait_ready(kept, "card")
    expect(by_test(kept, "saved-here")).to_contain_text("Saved here, not yet in the shop")
    kept.unroute("**/api/v1/**")
    show(kept, own_server.url, "home")
    kept.wait_for_selector("html[data-waiting='0']")
    trials = call(f"{own_server.url}/api/v1/cards/{CARD}")["trials"]
    assert [t.get("measured_deg") for t in trials].count(88.8) == 1
    other = call(f"{own_server.url}/api/v1/cards/ZRA2CKX")
    assert other["note"] == "typed behind a hotspot"


def test_a_card_that_came_half_is_not_opened_and_not_kept(
    kept: Page, own_server, breaking, console
):
    console.expect("ERR_FAILED")  # the feed, which this test cuts off
    kept.route("**/api/v1/changes*", lambda route: route.abort())
    made = call(f"{own_server.url}/api/v1/cards", "POST", {"part": plain_angle(TITLE)})
    kept.route(f"**/api/v1/cards/{made['code']}", breaking.first("GET"))
    show(kept, f"{own_server.url}/c/{made['code']}", "card")
    expect(by_test(kept, "not-kept")).to_contain_text("not on this device")
    assert breaking.torn == [200]
    show(kept, f"{own_server.url}/c/{made['code']}", "card")
    expect(by_test(kept, "card-title")).to_have_text(TITLE)


def test_a_torn_page_of_the_feed_is_fetched_again(kept: Page, own_server, breaking):
    kept.route("**/api/v1/changes*", breaking.tear)
    made = call(f"{own_server.url}/api/v1/cards", "POST", {"part": plain_angle(TITLE)})
    show(kept, own_server.url, "home")
    kept.evaluate("() => import('/app/sync/sync.js').then((all) => all.sync())")  # to its end
    assert breaking.torn
    expect(kept.locator(f"[data-code='{made['code']}']")).to_have_count(0)
    kept.unroute("**/api/v1/changes*")
    show(kept, own_server.url, "home")
    expect(kept.locator(f"[data-code='{made['code']}']")).to_be_visible()
