"""Scan a label: Chromium's pretended camera is shown labels from the real renderer.

This Chromium has no QR reader of its own, so the app's runs; a browser that has one is played
by a few lines put into the page.
"""

from __future__ import annotations

import urllib.request
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from browsing import PHONE, SILENCE, by_test, call, show, sideways, wait_ready
from camera_picture import Picture, beside, blotted, held, square, tilted, video
from looks import HIDE_MASTHEAD, LEAST_FLOOR_TARGET_PX, SMALL_TARGETS, SMALL_TEXTS
from playwright.sync_api import Browser, BrowserContext, BrowserType, Page, Route, expect
from shared_devices import Devices

from flangebook.labels import codes
from flangebook.labels.qr import card_address

CODE, TITLE = "SHE7FA1", "Shelf bracket, reading room"
ELSEWHERE = "https://other.home.arpa:8443"
STRANGER = codes.with_check("ZZZZZ7")  # no card of the demo shop
LEAST_FLOOR_TEXT_PX = 20.0
SIZES = [(390, 844), (844, 390), (1920, 1080)]
STREAMS = """
  window.streams = [];
  const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = async (wanted) => {
    window.wanted = wanted;
    const stream = await ask(wanted);
    window.streams.push(stream);
    return stream;
  };
"""
LIVE = "streams.flatMap((s) => s.getTracks()).filter((t) => t.readyState === 'live').length"
VENDORED = "performance.getEntriesByType('resource').filter((e) => /vendor.*(zxing|barcode)/.test(e.name)).length"  # noqa: E501

Camera = Callable[..., Page]


@pytest.fixture(scope="module")
def film(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What the camera sees: read each time that it is turned on, so a test puts its own there."""
    return video(tmp_path_factory.mktemp("camera") / "film.mjpeg", (held(square("no test")), 10))


@pytest.fixture(scope="module")
def launch(
    browser_type: BrowserType, browser_type_launch_args, film: Path
) -> Iterator[Callable[..., Devices]]:
    """Phones with a camera, of a browser with these flags more."""
    started: dict[tuple[str, ...], tuple[Browser, Devices]] = {}

    def phones(*flags: str) -> Devices:
        if flags not in started:
            camera = ["--use-fake-device-for-media-stream",
                      f"--use-file-for-fake-video-capture={film}"]  # fmt: skip
            args = [*browser_type_launch_args["args"], *camera, *flags]
            browser = browser_type.launch(**{**browser_type_launch_args, "args": args})
            started[flags] = (browser, Devices(browser))
        return started[flags][1]

    yield phones
    for browser, _ in started.values():
        browser.close()


@pytest.fixture
def camera(launch: Callable[..., Devices], film: Path, console) -> Iterator[Camera]:
    """A phone whose camera sees the given scenes: a page, to be sent somewhere."""
    taken: list[Devices] = []

    def phone(
        *scenes: tuple[Picture, int] | Picture,
        script: str = "",
        answer: str = "",
        **context: object,
    ) -> Page:
        video(film, *[scene if isinstance(scene, tuple) else (scene, 10) for scene in scenes])
        taken.append(launch(f"--use-fake-ui-for-media-stream{answer}"))
        allowed = [] if answer else ["camera"]
        page = taken[-1].take(viewport=PHONE, has_touch=True, permissions=allowed, **context)
        page.add_init_script(STREAMS + script)
        return console.watch(page)

    yield phone
    for devices in taken:
        devices.give_back()


def label_of(server, code: str = CODE, size: str = "50x25") -> bytes:
    """A card's label as the shop prints it."""
    address = f"{server.url}/api/v1/cards/{code}/label.png?size={size}"
    with urllib.request.urlopen(address, timeout=20) as answer:
        return bytes(answer.read())


def own_reader(text: str, *, formats: str = "qr_code", fault: str = "") -> str:
    """A browser with a reader of its own, which finds this text in the middle of each picture."""
    return f"""window.BarcodeDetector = class {{
      static getSupportedFormats() {{ return Promise.resolve(["{formats}"]); }}
      async detect(video) {{
        if ("{fault}") throw new DOMException("{fault}", "NotSupportedError");
        const box = new DOMRectReadOnly(video.videoWidth / 2 - 50, video.videoHeight / 2 - 50, 100, 100);
        return [{{ rawValue: "{text}", boundingBox: box, format: "qr_code", cornerPoints: [] }}];
      }}
    }};"""  # noqa: E501


def expect_card(page: Page, title: str = TITLE) -> None:
    wait_ready(page, "card")
    expect(by_test(page, "card-title")).to_have_text(title)


@pytest.mark.parametrize(
    "look",
    [held, lambda label: blotted(held(label)), lambda label: tilted(held(label))],
    ids=["clean", "blotted", "tilted"],
)  # fmt: skip
def test_a_label_opens_its_card(camera: Camera, shop_server, look):
    page = camera(look(label_of(shop_server)))
    show(page, shop_server.url, "home")
    by_test(page, "scan").click()
    expect_card(page)
    assert page.url.endswith(f"/c/{CODE}")
    assert page.evaluate(VENDORED) > 0
    assert page.evaluate("streams.length") == 1  # the same page all the time, and one camera
    assert page.evaluate("wanted.video.facingMode.ideal") == "environment"
    assert page.evaluate(LIVE) == 0
    page.go_back()  # not to the label that is still in view
    wait_ready(page, "home")


def test_a_large_label_carries_its_code_twice(camera: Camera, shop_server):
    page = camera(held(label_of(shop_server, size="100x50"), width=1000))
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)


def test_without_network(camera: Camera, own_server, console):
    console.expect(SILENCE)
    page = camera(tilted(held(label_of(own_server))))
    show(page, own_server.url, "home")
    page.wait_for_selector("html[data-offline-ready=true]")
    own_server.kill()
    page.goto(own_server.url)
    wait_ready(page, "home")
    by_test(page, "scan").click()
    expect_card(page)
    assert page.evaluate(VENDORED) > 0
    show(page, f"{own_server.url}/scan", "card")  # as from the phone's home screen


def test_a_card_that_only_the_shop_has_is_fetched(camera: Camera, shop_server, new_card, console):
    console.expect("ERR_FAILED")
    code = new_card("Only just made")
    page = camera(held(label_of(shop_server, code)))
    page.route("**/api/v1/changes*", lambda route: route.abort())
    page.goto(f"{shop_server.url}/scan")
    expect_card(page, "Only just made")


@pytest.mark.parametrize("text", [card_address(ELSEWHERE, CODE), "she-7fa1"])
def test_any_host_and_the_bare_code_open_the_card(camera: Camera, shop_server, text: str):
    page = camera(held(square(text), width=400))
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)


def test_a_foreign_square_is_named_and_the_label_after_it_opens(camera: Camera, shop_server):
    foreign = held(square("https://example.org/c/about/us"), width=400)
    page = camera((foreign, 300), (held(label_of(shop_server)), 300))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("Not a card’s label")
    expect(by_test(page, "says")).to_contain_text("leads to example.org")
    assert page.evaluate(LIVE) == 1
    expect_card(page)


def test_a_foreign_square_on_the_same_bin_is_passed_over(camera: Camera, shop_server):
    both = beside(
        [(square("ARTICLE 4711"), (520, 520), 220), (label_of(shop_server), (640, 220), 500)]
    )
    page = camera(both)
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)


def test_of_two_labels_the_one_in_the_frame_is_meant(camera: Camera, shop_server, new_card):
    other = label_of(shop_server, new_card("The bin beside it"))
    page = camera(
        beside([(label_of(shop_server), (790, 360), 420), (other, (640, 70), 220)]),
    )
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)


def test_two_labels_in_the_frame_open_neither(camera: Camera, shop_server, new_card):
    other = label_of(shop_server, new_card("The bin beside it"))
    page = camera(beside([(label_of(shop_server), (700, 250), 380), (other, (700, 470), 380)]))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("More than one label")
    assert page.url.endswith("/scan")


def test_a_wrong_check_character_is_told_at_once(camera: Camera, shop_server):
    page = camera(held(square(card_address(shop_server.url, "SHE7FA2")), width=400))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("SHE-7FA2 is not a card code")
    expect(by_test(page, "says")).to_contain_text("check character")
    assert page.evaluate(LIVE) == 1


def test_another_shops_label_is_told_by_its_code(camera: Camera, shop_server, console):
    console.expect("404")
    page = camera(held(square(card_address(ELSEWHERE, STRANGER)), width=400))
    asked: list[str] = []
    page.on("request", lambda sent: asked.append(sent.url) if STRANGER in sent.url else None)
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("ZZZ-ZZ7")
    expect(by_test(page, "says")).to_contain_text("another shop’s label")
    page.wait_for_timeout(1000)  # the same label in picture after picture
    assert len(asked) == 1
    assert page.evaluate(LIVE) == 1


def test_another_shops_label_without_network(camera: Camera, own_server, console):
    console.expect(SILENCE)
    page = camera(held(square(card_address(ELSEWHERE, STRANGER)), width=400))
    show(page, own_server.url, "home")
    page.wait_for_selector("html[data-offline-ready=true]")
    own_server.kill()
    show(page, f"{own_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text(
        f"{codes.display(STRANGER)} is not on this device"
    )
    expect(by_test(page, "says")).to_contain_text("does not answer")


def test_the_browsers_own_reader_goes_first(camera: Camera, shop_server):
    blank = held(square("never read"), width=1)
    page = camera(blank, script=own_reader(card_address(ELSEWHERE, CODE)))
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)
    assert page.evaluate(VENDORED) == 0


@pytest.mark.parametrize(
    "own",
    [
        own_reader(STRANGER, formats="ean_13"),
        own_reader(STRANGER, fault="Barcode detection service unavailable."),
    ],
    ids=["no QR codes", "nothing behind it"],
)
def test_a_browsers_reader_that_cannot_is_replaced(camera: Camera, shop_server, own: str):
    page = camera(held(label_of(shop_server)), script=own)
    page.goto(f"{shop_server.url}/scan")
    expect_card(page)
    assert page.evaluate(VENDORED) > 0


def test_the_camera_rests_while_nobody_looks(camera: Camera, shop_server):
    page = camera(held(square("no label"), width=400))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("no label")
    assert page.evaluate(LIVE) == 1
    turned = """(hidden) => {
      Object.defineProperty(document, "hidden", { value: hidden, configurable: true });
      document.dispatchEvent(new Event("visibilitychange"));
    }"""
    page.evaluate(turned, True)
    assert page.evaluate(LIVE) == 0
    page.evaluate(turned, False)
    expect(by_test(page, "scan-screen")).to_have_attribute("data-says", "wrong")
    assert page.evaluate(LIVE) == 1
    page.locator("#masthead .name").click()
    wait_ready(page, "home")
    assert page.evaluate(LIVE) == 0


def test_the_lamp(camera: Camera, shop_server):
    lamp = """
      MediaStreamTrack.prototype.getCapabilities = () => ({ torch: true });
      window.lamps = [];
      MediaStreamTrack.prototype.applyConstraints = async (asked) => lamps.push(asked.advanced[0].torch);
    """  # noqa: E501
    page = camera(held(square("no label"), width=400), script=lamp)
    show(page, f"{shop_server.url}/scan", "scan")
    button = by_test(page, "lamp")
    expect(button).to_have_attribute("aria-pressed", "false")
    button.click()
    expect(button).to_have_attribute("aria-pressed", "true")
    button.click()
    expect(button).to_have_attribute("aria-pressed", "false")
    assert page.evaluate("lamps") == [True, False]


def test_a_camera_without_a_lamp_offers_none(camera: Camera, shop_server):
    page = camera(held(square("no label"), width=400))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "lamp")).to_have_count(0)


def test_the_picture_and_the_form_fit_the_screen(camera: Camera, shop_server):
    page = camera(held(square("no label"), width=400))
    show(page, f"{shop_server.url}/scan", "scan")
    expect(by_test(page, "says")).to_contain_text("no label")
    page.evaluate(HIDE_MASTHEAD)
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        assert sideways(page) <= 0
        for part in (page.locator(".scan-frame"), by_test(page, "says"), by_test(page, "open")):
            expect(part).to_be_in_viewport(ratio=1)
        assert page.evaluate(SMALL_TEXTS, LEAST_FLOOR_TEXT_PX) == []
        assert page.evaluate(SMALL_TARGETS, LEAST_FLOOR_TARGET_PX) == []


def fault(page: Page, kind: str) -> None:
    """The screen names what is missing, and offers the code to type instead."""
    wait_ready(page, "scan")
    expect(by_test(page, "scan-fault")).to_have_attribute("data-fault", kind)
    by_test(page, "code").fill("she-7fa1")
    by_test(page, "open").click()
    expect_card(page)


def test_the_camera_is_refused(camera: Camera, shop_server):
    page = camera(held(label_of(shop_server)), answer="=deny")
    page.goto(f"{shop_server.url}/scan")
    wait_ready(page, "scan")
    expect(by_test(page, "scan-fault")).to_contain_text("not allowed")
    fault(page, "refused")


def test_there_is_no_camera(context_of: Callable[..., BrowserContext], console, shop_server):
    page = console.watch(context_of(PHONE, permissions=["camera"]).new_page())
    page.goto(f"{shop_server.url}/scan")
    fault(page, "none")


def test_the_camera_is_busy_and_then_free(camera: Camera, shop_server):
    busy = """
      const really = navigator.mediaDevices.getUserMedia;
      window.taken = true;
      navigator.mediaDevices.getUserMedia = (wanted) =>
        taken ? Promise.reject(new DOMException("in use", "NotReadableError")) : really(wanted);
    """
    page = camera(held(label_of(shop_server)), script=busy)
    page.goto(f"{shop_server.url}/scan")
    wait_ready(page, "scan")
    expect(by_test(page, "scan-fault")).to_have_attribute("data-fault", "busy")
    page.evaluate("window.taken = false")
    by_test(page, "again").click()
    expect_card(page)


def test_over_plain_http_it_says_what_is_missing(
    context_of: Callable[..., BrowserContext], console, shop_server
):
    """A name that is not this machine's, without https: browsers take the camera away."""
    console.expect("Cross-Origin-Opener-Policy|ERR_NAME_NOT_RESOLVED")
    context = context_of(PHONE)

    def passed_on(route: Route) -> None:
        path = route.request.url.removeprefix("http://shop.home.arpa")
        route.fulfill(response=route.fetch(url=f"{shop_server.url}{path}"))

    context.route("http://shop.home.arpa/**", passed_on)
    page = console.watch(context.new_page())
    page.goto("http://shop.home.arpa/scan")
    wait_ready(page, "scan")
    assert page.evaluate("navigator.mediaDevices === undefined && !isSecureContext")
    expect(by_test(page, "scan-fault")).to_contain_text("https")
    expect(by_test(page, "scan-fault")).to_contain_text("camera app")
    expect(by_test(page, "again")).to_have_count(0)
    fault(page, "insecure")
    context.unroute_all(behavior="ignoreErrors")


def test_the_reader_could_not_be_loaded(camera: Camera, shop_server, console):
    console.expect("wasm|zxing-exported|Worker registration blocked|could not be kept")
    page = camera(held(label_of(shop_server)), service_workers="block")
    page.route("**/zxing_reader.wasm", lambda route: route.abort())
    page.goto(f"{shop_server.url}/scan")
    wait_ready(page, "scan")
    expect(by_test(page, "scan-fault")).to_have_attribute("data-fault", "no-decoder")
    assert page.evaluate(LIVE) == 0
    page.unroute("**/zxing_reader.wasm")
    by_test(page, "again").click()
    expect_card(page)


def test_what_a_square_may_hold(phone: Page, shop_server):
    held_by = {
        "HTTP://127.0.0.1:8417/C/SHE7FA1": "card",
        "https://shop.home.arpa/c/she7fa1/": "card",
        "https://shop.home.arpa/c/SHE-7FA1?from=bin": "card",
        "SHE7FA1": "card",
        " she-7fa1 ": "card",
        "SHE7FAl": "other",
        "no label": "other",
        "https://shop.home.arpa/c/SHE7FA2": "slip",
        "https://shop.home.arpa/c/SHE7FA": "slip",
        "https://shop.home.arpa/c/SHE7FA12": "slip",
        "https://shop.home.arpa/c/%zz": "slip",
        "SHE7FA2": "slip",
        "https://shop.home.arpa/c/SHE7FA1/step/2": "other",
        "https://shop.home.arpa/cards/SHE7FA1": "other",
        "ftp://shop.home.arpa/c/SHE7FA1": "other",
        "javascript:alert(1)//c/SHE7FA1": "other",
        "WIFI:T:WPA;S:shop;P:secret;;": "other",
        "SHE7FU1": "other",
        "": "other",
    }
    show(phone, shop_server.url, "home")
    read = phone.evaluate(
        """async (texts) => {
          const { readScan } = await import("/app/scan/scanned_text.js");
          return texts.map((text) => readScan(text));
        }""",
        list(held_by),
    )
    assert {t: r["kind"] for t, r in zip(held_by, read, strict=True)} == held_by
    for one in read:
        assert one["code"] == (CODE if one["kind"] == "card" else "")
        assert bool(one["words"]) == (one["kind"] != "card")


def test_the_demo_card_is_there(shop_server):
    """The codes above: one is a card of the shop, the other is not."""
    known = {card["code"] for card in call(f"{shop_server.url}/api/v1/cards?limit=200")["cards"]}
    assert CODE in known
    assert STRANGER not in known
