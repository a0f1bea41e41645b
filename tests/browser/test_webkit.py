"""The day's story in WebKit: what half of the phones in a shop run.

One session for all of it. A session that is driven keeps nothing on the disk, as a private window
does. WebKit reads no QR code by itself, so the app's own reader is the one that is tried.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from itertools import cycle, islice
from pathlib import Path

import pytest
from addresses import ADDRESSES
from browsing import WIDTHS, call
from shop_process import ShopProcess
from webkit import WebKit, screen

LOADS = 20  # in one tab, and again in two; tests/benchmarks/test_quick_loads.py has 300
TURNS = [("/c/STEP6BQ", "card"), ("/c/TRAY4CH/step/2", "step")]
CARD = "SHE7FA1"
LEAST_FIELD_PX = 16.0  # below it a phone zooms in on the field (common practice, no source)
FIELDS = "input:not([type=checkbox], [type=radio], [type=range], [type=file]), select, textarea"
SMALLEST = f"""
    return Math.min(...[...document.querySelectorAll({FIELDS!r})].map(
      (one) => parseFloat(getComputedStyle(one).fontSize)), {LEAST_FIELD_PX});
"""
READ = """
    const done = arguments[arguments.length - 1];
    const label = document.querySelector('[data-test="label-image-50x25"]');
    import("/app/scan/decoder.js")
      .then(async ({ openDecoder }) => {
        await label.decode();
        const decoder = await openDecoder();
        const [mark] = await decoder.read(label);
        return { own: decoder.own, text: mark?.rawValue };
      })
      .then(done, (error) => done({ text: String(error) }));
"""
# A write that does not come to an end, over all that the app keeps.
HOLD = """
    const done = arguments[0];
    indexedDB.open("flangebook").onsuccess = ({ target: { result: db } }) => {
      const write = db.transaction([...db.objectStoreNames], "readwrite");
      const ask = () => {
        if (window.letGo) return;
        write.objectStore("meta").get("cursor").onsuccess = ask;
      };
      write.oncomplete = () => db.close();
      ask();
      done();
    };
"""
CLEARED = """
    const gone = indexedDB.deleteDatabase("flangebook");
    gone.onsuccess = gone.onerror = arguments[0];
"""


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """All that the browser keeps."""
    return tmp_path_factory.mktemp("webkit")


@pytest.fixture(scope="module")
def server(demo_data: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopProcess]:
    """A shop for the file; its tests leave it running."""
    data = tmp_path_factory.mktemp("shop") / "shop"
    shutil.copytree(demo_data, data)
    running = ShopProcess(data).start()
    yield running
    running.stop()


@pytest.fixture(scope="module")
def webkit(home: Path, server: ShopProcess) -> Iterator[WebKit]:
    """A phone that was in the shop once."""
    with screen(home) as environment:
        phone = WebKit(environment)
        phone.show(server.url, "home")
        phone.wait("document.documentElement.dataset.offlineReady === 'true'")
        phone.wait("document.documentElement.dataset.reached === 'true'")
        yield phone
        phone.close()


@pytest.fixture
def other_tab(webkit: WebKit) -> Iterator[str]:
    """Another tab of it, closed after the test; the first one is in front."""
    first = webkit.driver.current_window_handle
    webkit.driver.switch_to.new_window("tab")
    second = webkit.driver.current_window_handle
    webkit.driver.switch_to.window(first)
    yield second
    webkit.driver.switch_to.window(second)
    webkit.driver.close()
    webkit.driver.switch_to.window(first)


def test_a_private_window_has_the_app_and_leaves_nothing_on_the_disk(webkit: WebKit, home: Path):
    assert webkit.run("return navigator.serviceWorker.controller !== null")
    assert "Shelf bracket" in webkit.run("return document.getElementById('main').innerText")
    names = [str(file).casefold() for file in home.rglob("*")]
    assert not [name for name in names if "indexeddb" in name or "serviceworker" in name]


def test_a_storage_cleared_under_the_page_is_filled_again(webkit: WebKit, server: ShopProcess):
    """As a system does that is short of room."""
    webkit.show(f"{server.url}/c/{CARD}/result/1", "result")
    webkit.fill("measured_deg", "90.8")
    webkit.driver.execute_async_script(CLEARED)
    webkit.press("save")
    assert "Saved in the shop" in webkit.words("sent")
    webkit.show(server.url, "home")
    webkit.wait("document.documentElement.dataset.reached === 'true'")
    assert "Shelf bracket" in webkit.run("return document.getElementById('main').innerText")


def test_a_page_opened_at_once_after_another_is_never_empty(
    webkit: WebKit, server: ShopProcess, other_tab: str
):
    """Two labels scanned one after the other: what the page before was writing is in no one's way.

    A lock left behind would keep storage silent for good.
    """
    first = webkit.driver.current_window_handle
    for tabs, labels in (([first], TURNS), ([first, other_tab], TURNS + TURNS[::-1])):
        for tab, (address, ready) in islice(zip(cycle(tabs), cycle(labels)), LOADS):
            webkit.driver.switch_to.window(tab)
            webkit.show(f"{server.url}{address}", ready)
            assert "mm" in webkit.run("return document.getElementById('main').innerText")
            webkit.wait("document.documentElement.dataset.storage !== 'silent'")
    webkit.driver.switch_to.window(first)


def test_a_tab_that_holds_the_storage_hides_no_card(
    webkit: WebKit, server: ShopProcess, other_tab: str
):
    first = webkit.driver.current_window_handle
    webkit.driver.switch_to.window(other_tab)
    webkit.show(server.url, "home")
    webkit.driver.execute_async_script(HOLD)
    webkit.driver.switch_to.window(first)
    webkit.show(f"{server.url}/c/{CARD}/result/1", "result")
    assert "storage does not answer" in webkit.words("silent-storage")
    webkit.fill("measured_deg", "90.9")
    webkit.press("save")
    assert "Saved in the shop" in webkit.words("sent")
    webkit.driver.switch_to.window(other_tab)
    webkit.run("window.letGo = true")
    webkit.driver.switch_to.window(first)
    webkit.wait("document.documentElement.dataset.storage === 'answers'")
    webkit.wait("document.querySelector('[data-test=\"silent-storage\"]') === null")


def test_every_screen_fits_and_can_be_typed_into(webkit: WebKit, server: ShopProcess):
    """On phones and tablets: nothing runs off sideways, no field makes the phone zoom in."""
    wrong: list[object] = []
    webkit.show(server.url, "home")
    for address, ready in ADDRESSES:
        webkit.go_to(address, ready)
        webkit.run("for (const more of document.querySelectorAll('details')) more.open = true;")
        for width in WIDTHS:
            webkit.size(width)
            wrong += [(address, width, off)] if (off := webkit.sideways()) > 0 else []
        small = webkit.run(SMALLEST)
        wrong += [(address, small)] if small < LEAST_FIELD_PX else []
    assert wrong == []


def test_the_story(webkit: WebKit, server: ShopProcess):
    url = server.url
    webkit.show(url, "home")
    the_label_is_read(webkit, url)
    the_press_screen_follows(webkit, url)
    it_prints(webkit, url)
    server.kill()
    a_result_waits(webkit, url)
    server.start()
    webkit.show(url, "home")
    webkit.wait("document.documentElement.dataset.waiting === '0'")
    trials = call(f"{url}/api/v1/cards/{CARD}")["trials"]
    assert [one["measured_deg"] for one in trials].count(91.3) == 1
    two_edits_meet(webkit, url)


def the_label_is_read(webkit: WebKit, url: str) -> None:
    webkit.show(f"{url}/c/{CARD}/label", "label")
    read = webkit.driver.execute_async_script(READ)
    assert read == {"own": False, "text": f"{url}/c/{CARD}".upper()}


def the_press_screen_follows(webkit: WebKit, url: str) -> None:
    bench = f"{url}/api/v1/press-screens/Window"
    call(bench, "PUT", {"code": None, "step": 0})
    webkit.show(f"{url}/press-screen", "press-screen")
    assert webkit.run("return document.querySelector('[data-test=\"may-go-dark\"]') === null")
    webkit.press("take-press-screen")
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
    webkit.show(f"{url}/c/{CARD}/result/1", "result")
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
    webkit.wait("document.documentElement.dataset.resolve === '1'")
    card = call(f"{url}/api/v1/cards/{CARD}")
    assert card["note"] == "typed in the shop"
    assert [one["changes"]["note"] for one in card["proposals"]] == ["typed in WebKit"]
