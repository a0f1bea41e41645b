"""A card is run: pieces are counted after the last step, offline and on several devices alike."""

from __future__ import annotations

import csv
import time
from collections.abc import Callable
from typing import Any

import pytest
from browsing import PHONE, SILENCE, WIDE, Traffic, by_test, call, losing, show, unfold
from looks import in_both_themes, unfit
from playwright.sync_api import Page, expect
from shop_process import ShopProcess

NEXT_TAP_MS = 800  # later than a bouncing tap
PATIENCE_S = 30.0


def two_bends(title: str) -> dict[str, Any]:
    """A part of two steps."""
    return {
        "title": title,
        "metal": "mild-steel-cr",
        "thickness_mm": 2,
        "bend_length_mm": 200,
        "flats_mm": [40, 80, 40],
        "bends": [{"included_angle_deg": 90, "direction": "up"}] * 2,
    }


@pytest.fixture
def channel(shop_server: ShopProcess) -> str:
    """A new card of two steps; its code."""
    body = {"part": two_bends("Run channel")}
    return str(call(f"{shop_server.url}/api/v1/cards", "POST", body)["code"])


def runs(server: ShopProcess, code: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = call(f"{server.url}/api/v1/cards/{code}/runs")["runs"]
    return found


def come_to(server: ShopProcess, code: str, **wanted: Any) -> dict[str, Any]:
    """Until the shop's one run of the card is so."""
    until = time.monotonic() + PATIENCE_S
    while True:
        run = (runs(server, code) or [{}])[0]
        if all(run.get(name) == value for name, value in wanted.items()):
            assert len(runs(server, code)) == 1
            return run
        assert time.monotonic() < until, run
        time.sleep(0.1)


def begin(page: Page, server: ShopProcess, code: str, pieces: str) -> None:
    """Begin a run on the card: the first step is shown."""
    show(page, f"{server.url}/c/{code}", "card")
    by_test(page, "run-open").click()
    by_test(page, "run_pieces").fill(pieces)
    by_test(page, "begin-run").click()
    on_step(page, 1)


def on_step(page: Page, step: int) -> None:
    page.wait_for_url(f"**/step/{step}")
    expect(by_test(page, "step-number")).to_contain_text(f"Step {step} of")


def one_piece(page: Page, button: str = "next-piece") -> None:
    """From the first step of two to the next piece."""
    on_step(page, 1)
    page.wait_for_timeout(NEXT_TAP_MS)
    by_test(page, "next").click()
    on_step(page, 2)
    by_test(page, button).click()


def piece(page: Page) -> Any:
    return expect(by_test(page, "run-piece"))


def test_without_a_run_all_is_as_ever(page: Page, shop_server: ShopProcess, channel: str):
    show(page, f"{shop_server.url}/c/{channel}", "card")
    expect(by_test(page, "start")).to_contain_text("Start")
    expect(by_test(page, "run-panel")).to_have_count(0)
    show(page, f"{shop_server.url}/c/{channel}/step/2", "step")
    expect(by_test(page, "run-bar")).to_have_count(0)
    expect(by_test(page, "next")).to_contain_text("Type the result")
    expect(by_test(page, "next-piece")).to_have_count(0)


def test_pieces_are_counted_to_the_last(page: Page, shop_server: ShopProcess, channel: str):
    begin(page, shop_server, channel, "3")
    piece(page).to_contain_text("Piece 1 of 3")
    by_test(page, "next").click()
    on_step(page, 2)
    expect(by_test(page, "next-piece")).to_contain_text("piece 2 of 3")
    expect(by_test(page, "came-out")).to_be_visible()
    by_test(page, "next-piece").click()
    piece(page).to_contain_text("Piece 2 of 3")
    one_piece(page)
    piece(page).to_contain_text("Piece 3 of 3")
    on_step(page, 1)
    page.wait_for_timeout(NEXT_TAP_MS)
    by_test(page, "next").click()
    expect(by_test(page, "next-piece")).to_contain_text("Piece done")
    by_test(page, "next-piece").click()
    page.wait_for_url(f"**/c/{channel}")
    expect(by_test(page, "run-stands")).to_have_text("All pieces done")
    by_test(page, "run-end").click()
    expect(by_test(page, "run-going")).to_have_count(0)
    come_to(shop_server, channel, state="ended", pieces=3, done=3, scrapped=0, revision=1)
    unfold(page)
    expect(by_test(page, "run")).to_contain_text("3 of 3 done, none scrapped")
    expect(by_test(page, "run")).not_to_contain_text("goes on")
    expect(by_test(page, "run")).to_contain_text("a piece")
    by_test(page, "run-open").click()
    expect(by_test(page, "run_pieces")).to_have_value("3")


def test_a_bouncing_tap_counts_one_piece(phone: Page, shop_server: ShopProcess, new_card: Any):
    """A part with one step stays on it, so the second tap meets the same button."""
    code = new_card("Run angle")
    begin(phone, shop_server, code, "20")
    by_test(phone, "next-piece").dblclick()
    piece(phone).to_contain_text("Piece 2 of 20")
    phone.wait_for_timeout(NEXT_TAP_MS)
    by_test(phone, "next-piece").click()
    piece(phone).to_contain_text("Piece 3 of 20")
    come_to(shop_server, code, done=2)


def test_what_is_no_number_of_pieces_is_asked_again(
    phone: Page, shop_server: ShopProcess, channel: str
):
    show(phone, f"{shop_server.url}/c/{channel}", "card")
    by_test(phone, "run-open").click()
    expect(by_test(phone, "run_pieces")).to_be_focused()
    for typed in ("", "0", "2.5", "twenty", "9999999"):
        by_test(phone, "run_pieces").fill(typed)
        by_test(phone, "begin-run").click()
        expect(by_test(phone, "wrong-run_pieces")).to_contain_text("whole number")
    assert runs(shop_server, channel) == []


def test_a_slip_is_taken_back(page: Page, shop_server: ShopProcess, channel: str):
    begin(page, shop_server, channel, "5")
    one_piece(page)
    piece(page).to_contain_text("Piece 2 of 5")
    expect(by_test(page, "notice")).to_contain_text("Piece 1 counted.")
    by_test(page, "notice").get_by_role("button", name="Undo").click()
    on_step(page, 2)
    piece(page).to_contain_text("Piece 1 of 5")
    come_to(shop_server, channel, done=0)


def test_a_spoilt_piece_counts_as_scrap_and_not_as_done(
    page: Page, shop_server: ShopProcess, channel: str
):
    begin(page, shop_server, channel, "5")
    by_test(page, "next").click()
    on_step(page, 2)
    by_test(page, "run-scrap").click()
    on_step(page, 1)
    piece(page).to_contain_text("Piece 1 of 5")
    expect(by_test(page, "run-scrapped")).to_have_text("1 scrapped")
    run = come_to(shop_server, channel, scrapped=1)
    assert run["scrap"] == [{"step": 2, "pieces": 1}]
    by_test(page, "notice").get_by_role("button", name="Undo").click()
    on_step(page, 2)
    expect(by_test(page, "run-scrapped")).to_have_count(0)
    come_to(shop_server, channel, scrapped=0)


def test_set_up_pause_and_going_on_elsewhere(
    phone: Page, wide: Page, shop_server: ShopProcess, channel: str
):
    begin(phone, shop_server, channel, "4")
    by_test(phone, "run-ready").click()
    expect(by_test(phone, "run-ready")).to_have_count(0)
    one_piece(phone)
    piece(phone).to_contain_text("Piece 2 of 4")
    by_test(phone, "run-pause").click()
    expect(by_test(phone, "run-paused")).to_be_visible()
    come_to(shop_server, channel, state="paused", setup_until="said", done=1)
    show(phone, f"{shop_server.url}/c/{channel}/step/2", "step")
    expect(by_test(phone, "next-piece")).to_have_count(0)
    show(wide, f"{shop_server.url}/c/{channel}", "card")
    expect(by_test(wide, "run-stands")).to_have_text("Piece 2 of 4")
    by_test(wide, "run-resume").click()
    expect(by_test(wide, "start")).to_contain_text("piece 2 of 4")
    by_test(wide, "start").click()
    one_piece(wide)
    piece(wide).to_contain_text("Piece 3 of 4")
    come_to(shop_server, channel, state="open", done=2)
    show(wide, f"{shop_server.url}/c/{channel}", "card")
    by_test(wide, "run-back").click()
    expect(by_test(wide, "run-stands")).to_have_text("Piece 2 of 4")
    show(phone, f"{shop_server.url}/c/{channel}/step/1", "step")
    piece(phone).to_contain_text("Piece 2 of 4")


def test_the_table_is_there_for_the_next_quote(phone: Page, shop_server: ShopProcess, channel: str):
    begin(phone, shop_server, channel, "2")
    one_piece(phone)
    come_to(shop_server, channel, done=1)
    show(phone, f"{shop_server.url}/c/{channel}", "card")
    unfold(phone)
    with phone.expect_download() as waited:
        by_test(phone, "runs-csv").click()
    rows = list(csv.DictReader(waited.value.path().read_text("utf-8").splitlines()))
    assert [(row["pieces_wanted"], row["pieces_done"]) for row in rows] == [("2", "1")]


def test_a_part_with_a_stop_is_not_run(phone: Page, shop_server: ShopProcess):
    part = {**two_bends("Too thick"), "thickness_mm": 12, "bend_length_mm": 3000}
    code = call(f"{shop_server.url}/api/v1/cards", "POST", {"part": part})["code"]
    show(phone, f"{shop_server.url}/c/{code}", "card")
    expect(phone.locator(".card-stops")).to_be_visible()
    expect(by_test(phone, "run-open")).to_have_count(0)


# Offline ----------------------------------------------------------------------------------


def offline(page: Page, server: ShopProcess) -> Page:
    """A device that has been in the shop."""
    show(page, server.url, "home")
    page.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    return page


@pytest.fixture
def own_channel(own_server: ShopProcess) -> str:
    body = {"part": two_bends("Run channel")}
    return str(call(f"{own_server.url}/api/v1/cards", "POST", body)["code"])


def test_two_devices_offline_add_up(
    phone: Page, wide: Page, own_server: ShopProcess, own_channel: str, console: Any
):
    """Both work on the same run away from the shop; later the shop and both have all of it."""
    console.expect(SILENCE)
    both = (offline(phone, own_server), offline(wide, own_server))
    begin(phone, own_server, own_channel, "20")
    come_to(own_server, own_channel, pieces=20)
    show(wide, f"{own_server.url}/c/{own_channel}/step/1", "step")
    piece(wide).to_contain_text("Piece 1 of 20")
    own_server.kill()
    for page, many in zip(both, (2, 3), strict=True):
        for number in range(many):
            one_piece(page)
            piece(page).to_contain_text(f"Piece {number + 2} of 20")
    by_test(phone, "run-scrap").click()
    expect(by_test(phone, "run-scrapped")).to_have_text("1 scrapped")
    show(phone, f"{own_server.url}/c/{own_channel}/step/1", "step")  # loaded afresh, still offline
    piece(phone).to_contain_text("Piece 3 of 20")
    show(phone, own_server.url, "home")
    expect(by_test(phone, "standing")).to_contain_text("counts wait")
    own_server.start()
    for page in both:
        show(page, own_server.url, "home")
        page.wait_for_selector("html[data-waiting='0']")
    come_to(own_server, own_channel, done=5, scrapped=1, state="open")
    for page in both:
        show(page, f"{own_server.url}/c/{own_channel}/step/1", "step")
        piece(page).to_contain_text("Piece 6 of 20")


def test_a_lost_answer_counts_nothing_twice(
    phone: Page, own_server: ShopProcess, own_channel: str, losing_runs: Callable[[Page], list[int]]
):
    offline(phone, own_server)
    begin(phone, own_server, own_channel, "20")
    come_to(own_server, own_channel, pieces=20)
    lost = losing_runs(phone)
    one_piece(phone)
    piece(phone).to_contain_text("Piece 2 of 20")
    while not lost:
        phone.wait_for_timeout(100)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-waiting='0']")
    assert lost == [201]
    come_to(own_server, own_channel, done=1)
    show(phone, f"{own_server.url}/c/{own_channel}/step/1", "step")
    piece(phone).to_contain_text("Piece 2 of 20")


@pytest.fixture
def losing_runs(console: Any) -> Callable[[Page], list[int]]:
    """Makes a page lose the shop's answer to the next thing it counts."""
    console.expect(SILENCE)

    def lose(page: Page) -> list[int]:
        lost: list[int] = []
        page.route("**/runs", losing("POST", lost))
        return lost

    return lose


# The press screen -------------------------------------------------------------------------


def test_the_press_screen_shows_piece_and_step(
    phone: Page, wide: Page, shop_server: ShopProcess, channel: str
):
    call(f"{shop_server.url}/api/v1/press-screens/7", "PUT", {"code": None, "step": 0})
    show(wide, f"{shop_server.url}/press-screen", "press-screen")
    wide.get_by_role("button", name="Press screen 7", exact=True).click()
    begin(phone, shop_server, channel, "3")
    by_test(phone, "put-on-press-screen").click()
    expect(by_test(wide, "press-screen-step")).to_have_attribute("data-step", "1")
    piece(wide).to_contain_text("Piece 1 of 3")
    one_piece(phone)
    expect(by_test(wide, "press-screen-step")).to_have_attribute("data-step", "1")
    piece(wide).to_contain_text("Piece 2 of 3")
    # Its own pedal counts too, where the display may count.
    for _ in range(2):
        wide.wait_for_timeout(NEXT_TAP_MS)
        wide.keyboard.press("PageDown")
    piece(wide).to_contain_text("Piece 3 of 3")
    come_to(shop_server, channel, done=2)
    on_step(phone, 1)
    piece(phone).to_contain_text("Piece 3 of 3")
    show(phone, f"{shop_server.url}/c/{channel}", "card")
    expect(by_test(phone, "run-where")).to_have_text("Press screen 7: step 1.")


# Looks ------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", [PHONE, WIDE], ids=["phone", "wide"])
def test_the_run_fits_and_axe_finds_nothing(
    size: dict[str, int], axe: str, devices: Any, shop_server: ShopProcess, channel: str
):
    page = devices.take(viewport=size)
    traffic = Traffic(page)
    begin(page, shop_server, channel, "2000")
    wrong = []
    for address, ready in (("/step/1", "step"), ("/step/2", "step"), ("", "card")):
        show(page, f"{shop_server.url}/c/{channel}{address}", ready)
        expect(by_test(page, "run-panel" if ready == "card" else "run-bar")).to_be_visible()
        traffic.wait_quiet()
        wrong += [f"{address}: {one}" for one in unfit(page)]
        wrong += in_both_themes(page, axe, address)
    assert not wrong, "\n".join(wrong)
    # What is to be set stays in sight under the run's line.
    show(page, f"{shop_server.url}/c/{channel}/step/1", "step")
    expect(by_test(page, "set-angle-value")).to_be_in_viewport(ratio=0.99)
