"""What is printed: the wall chart, the card on a sheet, labels. One sheet each on A4 and Letter,
black on white whatever the theme; the label's QR read by a decoder that did not make it."""

from __future__ import annotations

import io
import json
import re
import unicodedata
from collections.abc import Callable
from typing import Any

import pytest
import zxingcpp
from addresses import CARD
from browsing import SILENCE, Traffic, by_test, call, go_to, show, wait_ready
from PIL import Image
from playwright.sync_api import Page, expect
from pypdf import PdfReader
from shared_devices import Devices

# ISO 216 A4 and ANSI/ASME Y14.1 size A, upright [mm].
PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
MM_PER_POINT = 25.4 / 72

# Colours of everything that is seen, with the element that has it; grey counts as ink.
COLOURED = """() => {
  const names = ["color", "backgroundColor", "borderTopColor", "fill", "stroke"];
  const grey = (colour) => {
    const [red, green, blue, alpha] = (colour.match(/[\\d.]+/g) ?? []).map(Number);
    if (!colour.startsWith("rgb") || alpha === 0) return true;
    return Math.max(red, green, blue) - Math.min(red, green, blue) <= 2;
  };
  const found = [];
  for (const element of document.querySelectorAll("main, main *, body")) {
    if (!element.checkVisibility()) continue;
    const style = getComputedStyle(element);
    for (const name of names.filter((one) => !grey(style[one]))) {
      found.push(`${name} ${style[name]} ${element.outerHTML.slice(0, 80)}`);
    }
  }
  return found;
}"""

# What stands in each cell of a chart's rows. In the page: a call for each takes longer.
CELLS = """rows => rows.map((row) => [...row.querySelectorAll("td[data-die]")].map((cell) => {
  const all = (name) => [...cell.querySelectorAll(name)];
  const texts = (name) => all(name).map((one) => one.innerText);
  return {
    die: cell.dataset.die, level: cell.dataset.level, text: cell.innerText,
    force: texts(".force"), expected: texts(".expected"),
    flags: all(".flag").map((one) => [[...one.classList], one.innerText]),
  };
}))"""


@pytest.fixture
def printer(devices: Devices, console) -> Callable[..., Page]:
    """A page on a device that prefers a paper, in the theme that is furthest from paper."""

    def make(paper: str, **more: Any) -> Page:
        page = console.watch(devices.take(viewport={"width": 1280, "height": 900}))
        wanted = json.dumps({"paper": paper, "theme": "shop", **more})
        page.add_init_script(f"localStorage.setItem('flangebook.settings', {wanted!r})")
        return page

    return make


def printed(page: Page) -> PdfReader:
    """The page as it goes to the printer, on the paper it asks for."""
    page.wait_for_load_state("networkidle")
    return PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True)))


def size_mm(pdf: PdfReader, number: int = 0) -> tuple[float, float]:
    """Width and height of a page [mm]."""
    box = pdf.pages[number].mediabox
    return float(box.width) * MM_PER_POINT, float(box.height) * MM_PER_POINT


def words(pdf: PdfReader) -> str:
    """All text of the document, in one line."""
    text = " ".join(page.extract_text() for page in pdf.pages)
    return " ".join(unicodedata.normalize("NFKC", text).split())  # without ligatures


def shown(value: float | None, digits: int) -> str:
    """A number as the sheet shows it; a dash where there is none, as when a hem is flattened."""
    return "–" if value is None else f"{value:.{digits}f}".replace("-", "−")


@pytest.mark.parametrize("paper", PAPERS)
def test_a_card_on_one_sheet(paper: str, printer, shop_server, demo_codes):
    page = printer(paper)
    traffic = Traffic(page)
    show(page, shop_server.url, "home")
    for title, code in demo_codes.items():
        card = call(f"{shop_server.url}/api/v1/cards/{code}")
        go_to(page, f"/c/{code}/print", "print")
        traffic.wait_quiet()
        pdf = printed(page)
        assert len(pdf.pages) == 1, title
        assert size_mm(pdf) == pytest.approx(PAPERS[paper], abs=0.5)
        text = words(pdf)
        assert title in text
        assert card["display_code"] in text
        for step in card["plan"]["steps"]:
            row = by_test(page, f"sheet-step-{step['number']}")
            expect(row).to_contain_text(f"X {shown(step['gauge_x_mm'], 1)}")
            expect(row).to_contain_text(f"depth {shown(step['punch_depth_mm'], 2)}")
        for tool in card["plan"]["tools"]:
            assert f"{tool['kind']} {tool['code']}" in text
        assert "Check the first piece" in text  # the last line: nothing is cut off
        assert page.evaluate(COLOURED) != []  # on the screen the theme shows


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("metal", ["mild-steel-cr", "stainless-304"])
def test_the_wall_chart_on_one_sheet(paper: str, metal: str, printer, shop_server):
    page = printer(paper)
    show(page, f"{shop_server.url}/chart?metal={metal}", "chart")
    pdf = printed(page)
    assert len(pdf.pages) == 1
    assert size_mm(pdf) == pytest.approx(PAPERS[paper][::-1], abs=0.5)
    chart = call(f"{shop_server.url}/api/v1/chart?metal={metal}")
    text = words(pdf)
    assert chart["metal"]["name"] in text
    assert chart["words"][-1] in text  # the last line: nothing is cut off


def test_the_chart_marks_what_is_over_and_what_is_not_known(page: Page, shop_server):
    show(page, f"{shop_server.url}/chart?metal=stainless-304", "chart")
    chart = call(f"{shop_server.url}/api/v1/chart?metal=stainless-304")
    rows = by_test(page, "chart").locator("tbody tr")
    expect(rows).to_have_count(len(chart["rows"]))
    seen = set()
    for row, cells in zip(chart["rows"], rows.evaluate_all(CELLS), strict=True):
        for cell in row["cells"]:
            (shown,) = (one for one in cells if one["die"] == cell["die"])
            if not cell["usable"]:
                assert shown["level"] == "none"
                continue
            (force,) = shown["force"]
            assert 0.0 <= float(force) - cell["force_kn_per_m_high"] < 1.0  # never rounded down
            assert len(shown["expected"]) == (0 if cell["level"] == "stop" else 1)
            if cell["level"] != "stop":
                assert float(shown["expected"][0]) == pytest.approx(
                    cell["force_kn_per_m"], abs=0.51
                )
            assert shown["level"] == cell["level"]
            flags = [text for classes, text in shown["flags"] if cell["level"] in classes]
            seen.add(cell["level"])
            if cell["level"] == "ok":
                assert flags == []
                continue
            (flag,) = flags
            if cell["level"] == "unknown":
                assert "rating?" in flag
            else:
                what, share = re.fullmatch(r"(\w+) (\d+) %", flag.strip()).groups()
                assert what == cell["limit"]
                assert float(share) == pytest.approx(cell["share_percent"], abs=0.51)
        for cell in (one for one in row["cells"] if one["usable"] and one["level"] != "stop"):
            (text,) = (one["text"] for one in cells if one["die"] == cell["die"])
            flange, radius = re.search(r"([\d.]+) · R ([\d.]+)", text).groups()
            assert float(flange) == pytest.approx(cell["min_flange_mm"], abs=0.051)
            assert float(radius) == pytest.approx(cell["inside_radius_mm"], abs=0.051)
    assert seen == {"ok", "unknown", "caution", "stop"}


def test_the_chart_follows_metal_length_and_units(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/chart", "chart")
    by_test(wide, "metal").select_option("aluminium-5052-h32")
    expect(by_test(wide, "chart")).to_contain_text("Aluminium 5052-H32")
    by_test(wide, "bend_length").fill("20 in")
    expect(by_test(wide, "chart")).to_contain_text("bend length of 508 mm")
    assert "metal=aluminium-5052-h32" in wide.url
    show(wide, f"{shop_server.url}/settings", "settings")
    by_test(wide, "units").get_by_label("inch and tons").check()
    show(wide, f"{shop_server.url}/chart?metal=mild-steel-cr", "chart")
    expect(by_test(wide, "chart")).to_contain_text("tons/ft")


@pytest.mark.parametrize(
    ("address", "ready"),
    [(f"/c/{CARD}/print", "print"), ("/chart?metal=stainless-304", "chart"),
     (f"/labels?codes={CARD}", "labels"), (f"/c/{CARD}/label", "label")],
)  # fmt: skip
def test_paper_is_black_on_white_in_every_theme(address: str, ready: str, printer, shop_server):
    page = printer("A4")
    show(page, f"{shop_server.url}{address}", ready)
    page.emulate_media(media="print")
    assert page.evaluate(COLOURED) == []
    ground = page.evaluate("getComputedStyle(document.documentElement).backgroundColor")
    assert ground == "rgb(255, 255, 255)"


@pytest.mark.parametrize("size", ["50x25", "100x50"])
def test_the_label_read_by_a_foreign_decoder_opens_exactly_that_card(
    size: str, page: Page, shop_server, demo_codes
):
    code = demo_codes["Shelf bracket, reading room"]
    show(page, f"{shop_server.url}/c/{code}/label", "label")
    label = by_test(page, f"label-image-{size}")
    label.evaluate("image => image.decode()")
    picture = Image.open(io.BytesIO(label.screenshot()))
    found = {read.text for read in zxingcpp.read_barcodes(picture)}
    assert len(found) == 1
    address = found.pop()
    assert address.upper() == f"{shop_server.url}/c/{code}".upper()
    page.goto(address)
    wait_ready(page, "card")
    expect(by_test(page, "card-title")).to_have_text("Shelf bracket, reading room")
    assert page.evaluate("location.pathname").upper() == f"/C/{code}"


@pytest.mark.parametrize(("size", "wide_mm", "high_mm"), [("50x25", 50, 25), ("100x50", 100, 50)])
def test_one_label_prints_at_true_size(
    size: str, wide_mm: float, high_mm: float, wide: Page, shop_server
):
    show(wide, f"{shop_server.url}/c/{CARD}/label", "label")
    wide.evaluate("window.print = () => { window.printed = true; }")
    by_test(wide, f"print-{size}").click()
    wide.wait_for_function("window.printed")
    pdf = printed(wide)
    assert len(pdf.pages) == 1
    assert size_mm(pdf) == pytest.approx((wide_mm, high_mm), abs=0.3)
    picture = wide.locator(".label-print")
    wide.emulate_media(media="print")
    box = picture.bounding_box()
    assert box["width"] * 25.4 / 96 == pytest.approx(wide_mm, abs=0.05)


def test_a_label_can_be_kept_as_svg_and_png(wide: Page, shop_server):
    show(wide, f"{shop_server.url}/c/{CARD}/label", "label")
    with wide.expect_download() as svg:
        by_test(wide, "svg-50x25").click()
    assert svg.value.suggested_filename == f"label-{CARD}-50x25.svg"
    assert b"<svg" in svg.value.path().read_bytes()[:200]
    with wide.expect_download() as png:
        by_test(wide, "png-100x50").click()
    picture = Image.open(png.value.path())
    assert picture.width == pytest.approx(picture.height * 2, abs=2)
    assert any(CARD in read.text.upper() for read in zxingcpp.read_barcodes(picture))


@pytest.mark.parametrize("paper", PAPERS)
def test_labels_on_a_sheet(paper: str, printer, shop_server, demo_codes):
    page = printer(paper)
    show(page, f"{shop_server.url}/labels", "labels")
    expect(by_test(page, "no-sheet")).to_be_visible()
    for code in demo_codes.values():
        by_test(page, f"pick-{code}").check()
    expect(by_test(page, "sheet-1")).to_be_visible()
    pdf = printed(page)
    assert len(pdf.pages) == 1
    assert size_mm(pdf) == pytest.approx(PAPERS[paper], abs=0.5)
    image = by_test(page, "sheet-1")
    image.evaluate("image => image.decode()")
    with page.expect_download() as saved:
        by_test(page, "sheet-png-1").click()
    found = zxingcpp.read_barcodes(Image.open(saved.value.path()))
    assert {read.text.upper().rsplit("/", 1)[1] for read in found} == set(demo_codes.values())


def test_used_places_are_skipped_and_the_sheets_counted(
    wide: Page, own_server, demo_codes, console
):
    console.expect("422")
    show(wide, f"{own_server.url}/labels", "labels")
    by_test(wide, "all").click()
    expect(by_test(wide, "picked")).to_have_text(f"{len(demo_codes)} of {len(demo_codes)}")
    by_test(wide, "size").get_by_label("100 × 50 mm").check()
    expect(by_test(wide, "sheet-2")).to_be_visible()  # ten to an A4 sheet
    by_test(wide, "skip").fill("9")
    expect(by_test(wide, "sheet-3")).to_be_visible()
    by_test(wide, "skip").fill("400")
    expect(by_test(wide, "no-sheet")).to_contain_text("cannot be skipped")
    by_test(wide, "skip").fill("0")
    by_test(wide, "none").click()
    by_test(wide, f"pick-{CARD}").check()
    expect(by_test(wide, "sheet-1")).to_be_visible()
    expect(by_test(wide, "sheet-2")).to_have_count(0)


def test_a_kept_card_prints_without_the_server(phone: Page, own_server, console):
    console.expect(SILENCE)
    show(phone, own_server.url, "home")
    phone.wait_for_selector("html[data-offline-ready=true][data-reached=true]")
    card = call(f"{own_server.url}/api/v1/cards/{CARD}")
    own_server.kill()
    show(phone, f"{own_server.url}/c/{CARD}/print", "print")
    expect(by_test(phone, "sheet-code")).to_have_text(card["display_code"])
    expect(by_test(phone, "sheet-qr")).to_be_hidden()
    expect(by_test(phone, "sheet-blank")).to_be_visible()
    pdf = printed(phone)
    assert len(pdf.pages) == 1
    assert card["title"] in words(pdf)
