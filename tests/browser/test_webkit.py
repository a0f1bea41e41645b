"""The day's story in WebKit: what half of the phones in a shop run.

A session that is driven keeps nothing for the next, as a private window does. WebKit reads no QR
code by itself, so the app's own reader is the one that is tried.
"""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from browsing import call
from shop_process import ShopProcess
from webkit import WebKit, screen

# The whole measure is 300; the rest of the tests should not wait for it each time.
LOADS = int(os.environ.get("FLANGEBOOK_LOADS", "40"))
TURNS = [("/c/STEP6BQ", "card"), ("/c/TRAY4CH/step/2", "step")]
CARD = "SHE7FA1"
LEAST_FIELD_PX = 16.0  # below it a phone zooms in on the field (common practice, no source)
FIELDS = "input:not([type=checkbox], [type=radio], [type=range], [type=file]), select, textarea"
READ = """
    const done = arguments[arguments.length - 1];
    const label = document.querySelector('[data-test="label-image-50x25"]');
    import("/app/decoder.js")
      .then(async ({ openDecoder }) => {
        await label.decode();
        const decoder = await openDecoder();
        const [mark] = await decoder.read(label);
        return { own: decoder.own, text: mark?.rawValue };
      })
      .then(done, (error) => done({ text: String(error) }));
"""


@pytest.fixture(scope="module")
def display() -> Iterator[dict[str, str]]:
    with screen() as environment:
        yield environment


@pytest.fixture
def webkit(display: dict[str, str]) -> Iterator[WebKit]:
    made = WebKit(display)
    yield made
    made.close()


@pytest.mark.parametrize("tabs", [1, 2])
def test_a_page_opened_at_once_after_another_is_never_empty(webkit: WebKit, own_server, tabs):
    """Two labels scanned one after the other: what the page before was writing is in no one's way.

    Storage never had to be given up: a page left in the middle of a write lets go of its lock.
    """
    handles = [webkit.driver.current_window_handle]
    for _ in range(tabs - 1):
        webkit.driver.switch_to.new_window("tab")
        handles.append(webkit.driver.current_window_handle)
    for load in range(LOADS):
        webkit.driver.switch_to.window(handles[load % tabs])
        address, ready = TURNS[load // tabs % 2]
        webkit.show(f"{own_server.url}{address}", ready)
        assert webkit.state("storage") is None, f"load {load}"


def test_the_story(webkit: WebKit, own_server: ShopProcess):
    url = own_server.url
    webkit.show(url, "home")
    webkit.wait("document.documentElement.dataset.offlineReady === 'true'")
    webkit.wait("document.documentElement.dataset.reached === 'true'")
    the_label_is_read(webkit, url)
    nothing_is_too_wide_or_small(webkit, url)
    the_press_screen_follows(webkit, url)
    it_prints(webkit, url)
    own_server.kill()
    a_result_waits(webkit, url)
    own_server.start()
    webkit.show(url, "home")
    webkit.wait("document.documentElement.dataset.waiting === '0'")
    trials = call(f"{url}/api/v1/cards/{CARD}")["trials"]
    assert [one["measured_deg"] for one in trials].count(91.3) == 1
    two_edits_meet(webkit, url)


def the_label_is_read(webkit: WebKit, url: str) -> None:
    webkit.show(f"{url}/c/{CARD}/label", "label")
    read = webkit.driver.execute_async_script(READ)
    assert read == {"own": False, "text": f"{url}/c/{CARD}".upper()}


def nothing_is_too_wide_or_small(webkit: WebKit, url: str) -> None:
    screens = {
        "/bend": "bend",
        "/part": "part",
        f"/c/{CARD}/trial/1": "trial",
        "/settings": "settings",
    }
    for address, ready in screens.items():
        webkit.show(f"{url}{address}", ready)
        assert webkit.sideways() <= 0, address
        sizes = webkit.run(
            "return [...document.querySelectorAll(arguments[0])]"
            ".map((one) => parseFloat(getComputedStyle(one).fontSize))",
            FIELDS,
        )
        assert min(sizes, default=LEAST_FIELD_PX) >= LEAST_FIELD_PX, address


def the_press_screen_follows(webkit: WebKit, url: str) -> None:
    bench = f"{url}/api/v1/benches/Window"
    call(bench, "PUT", {"code": None, "step": 0})
    webkit.show(f"{url}/bench", "bench")
    webkit.press("take-bench")
    for step in (1, 2):
        call(bench, "PUT", {"code": "TRAY4CH", "step": step})
        webkit.wait(
            "document.querySelector('[data-test=\"step-number\"]')?.textContent"
            f".includes('{step} of ')"
        )


def it_prints(webkit: WebKit, url: str) -> None:
    webkit.show(f"{url}/c/{CARD}/print", "print")
    webkit.run("window.print = () => (document.documentElement.dataset.printed = 'yes')")
    webkit.press("print")
    assert webkit.state("printed") == "yes"
    # Its driver cannot print: the paper's own style is put on the screen instead.
    webkit.run(
        "for (const sheet of document.styleSheets) for (const rule of sheet.cssRules) {"
        " if (rule.media?.mediaText === 'print') rule.media.mediaText = 'all'; }"
    )
    webkit.wait("getComputedStyle(document.getElementById('masthead')).display === 'none'")
    assert "SHE-7FA1" in webkit.run("return document.getElementById('main').innerText")


def a_result_waits(webkit: WebKit, url: str) -> None:
    webkit.show(url, "home")
    assert "Not connected" in webkit.words("standing")
    webkit.show(f"{url}/c/TRAY4CH/step/2", "step")
    assert webkit.words("set-angle-value")
    webkit.show(f"{url}/c/{CARD}/trial/1", "trial")
    webkit.fill("measured_deg", "91.3")
    webkit.press("save")
    assert "Waiting" in webkit.words("waits")


def two_edits_meet(webkit: WebKit, url: str) -> None:
    """A note typed here, and another one in the shop meanwhile: both are kept, to be settled."""
    webkit.show(f"{url}/c/{CARD}/note", "note")
    webkit.fill("note", "typed in WebKit")
    card = call(f"{url}/api/v1/cards/{CARD}")
    call(f"{url}/api/v1/cards/{CARD}", "PUT", {"note": "typed in the shop"}, card["etag"])
    webkit.press("save")
    webkit.wait("document.documentElement.dataset.settle === '1'")
    card = call(f"{url}/api/v1/cards/{CARD}")
    assert card["note"] == "typed in the shop"
    assert [one["changes"]["note"] for one in card["proposals"]] == ["typed in WebKit"]
