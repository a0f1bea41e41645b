"""QR codes against ISO/IEC 18004 and against a reader that did not make them.

Figures of the standard: side = 17 + 4 x version, quiet zone of 4 modules, alphanumeric
capacity of version 3 level H 35, version 4 level H 50 and level Q 67 characters (the first
table of capacities; also printed on the inventor's own pages).
"""

from __future__ import annotations

import io
import re

import numpy as np
import pytest
import zxingcpp
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageFilter
from qrcode import util

from flangebook.bending.errors import InputError
from flangebook.labels.draw_png import label_png
from flangebook.labels.draw_svg import qr_svg
from flangebook.labels.facts import facts_of_card
from flangebook.labels.label import SIZES, label
from flangebook.labels.marks import QrMark
from flangebook.labels.qr import QUIET_MODULES, Level, _sized, card_address, qr_code
from flangebook.labels.qr_mask import MASKS, best_masked, penalties

from .cards import card

ADDRESS = card_address("https://shop.home.arpa:8443", "SHE7FA1")
LOOPBACK = card_address("http://127.0.0.1:8417", "SHE7FA1")


def read(image: Image.Image) -> list[str]:
    return sorted(code.text for code in zxingcpp.read_barcodes(image))


def drawn(size: str, dpi: int, address: str = ADDRESS) -> Image.Image:
    png = label_png(label(facts_of_card(card(steps=4)), address, size), dpi)
    return Image.open(io.BytesIO(png))


@pytest.mark.parametrize("address", [ADDRESS, LOOPBACK])
@pytest.mark.parametrize("dpi", [203, 300, 600])
@pytest.mark.parametrize("size", SIZES)
def test_a_foreign_reader_gets_exactly_the_address(size: str, dpi: int, address: str) -> None:
    codes = 1 if size == "50x25" else 2
    assert read(drawn(size, dpi, address)) == [address] * codes


@pytest.mark.parametrize("dpi", [203, 300])
@pytest.mark.parametrize("degrees", [7, 45, 90, 180, 200])
@pytest.mark.parametrize("size", SIZES)
def test_it_reads_turned_and_blurred(size: str, degrees: int, dpi: int) -> None:
    image = drawn(size, dpi).rotate(degrees, Image.Resampling.BICUBIC, expand=True, fillcolor=255)
    assert ADDRESS in read(image.filter(ImageFilter.GaussianBlur(dpi / 150)))


@pytest.mark.parametrize("size", SIZES)
def test_it_reads_with_a_blot_over_the_data(size: str) -> None:
    image = drawn(size, 300)
    image.paste(0, (165, 165, 200, 200))
    assert ADDRESS in read(image)


def test_with_one_corner_pattern_gone_the_second_code_still_reads() -> None:
    image = drawn("100x50", 300)
    image.paste(255, (0, 0, 160, 160))
    assert read(image) == [ADDRESS]


def test_capitals_and_digits_keep_the_code_coarse() -> None:
    assert qr_code("A" * 35, "H").version == 3
    assert qr_code("A" * 36, "H").version == 4
    assert qr_code("A" * 50, "H").version == 4
    assert qr_code("A" * 51, "H").version == 5
    assert qr_code("A" * 67, "Q").version == 4
    assert qr_code("A" * 68, "Q").version == 5


def test_the_demo_addresses_fit_version_4() -> None:
    assert qr_code(ADDRESS, "H").version == 4
    assert qr_code(LOOPBACK, "H").version == 3


@pytest.mark.parametrize("level", ["H", "Q"])
def test_side_and_quiet_zone_are_the_standards(level: str) -> None:
    code = qr_code(ADDRESS, level)  # type: ignore[arg-type]
    assert len(code.rows) == 17 + 4 * code.version
    assert all(len(row) == len(code.rows) for row in code.rows)
    assert code.modules == len(code.rows) + 8
    assert QUIET_MODULES == 4


def test_the_level_drawn_is_the_level_asked_for() -> None:
    for level in ("H", "Q"):
        side = qr_code(ADDRESS, level).modules * 8  # type: ignore[arg-type]
        image = Image.new("L", (side, side), 255)
        for y, row in enumerate(qr_code(ADDRESS, level).rows):  # type: ignore[arg-type]
            for x, dark in enumerate(row):
                if dark:
                    corner = (x + 4) * 8, (y + 4) * 8
                    image.paste(0, (*corner, corner[0] + 8, corner[1] + 8))
        (code,) = zxingcpp.read_barcodes(image)
        assert code.text == ADDRESS
        assert code.ec_level == level


def test_a_better_level_is_taken_where_it_costs_no_modules() -> None:
    assert qr_code("A" * 35, "Q").level == "H"  # both version 3
    assert qr_code("A" * 36, "Q").level == "Q"  # H would take version 4
    assert qr_code("A" * 36, "Q").version == 3


def test_the_small_label_is_for_dirt_the_large_one_for_distance_and_dirt() -> None:
    levels = {
        size: [
            m.code.level
            for m in label(facts_of_card(card()), ADDRESS, size).marks
            if isinstance(m, QrMark)
        ]
        for size in SIZES
    }
    assert levels == {"50x25": ["H"], "100x50": ["Q", "H"]}


def test_modules_are_coarse_enough_for_a_label_printer() -> None:
    """At 203 dots per inch a dot is 0.125 mm: three dots and more a module."""
    for size in SIZES:
        for mark in label(facts_of_card(card()), ADDRESS, size).marks:
            if isinstance(mark, QrMark):
                assert mark.side / mark.code.modules >= 3 * 25.4 / 203


def test_an_address_is_written_in_capitals() -> None:
    assert card_address("http://Shop.local", "SHE7FA1") == "HTTP://SHOP.LOCAL/C/SHE7FA1"


@pytest.mark.parametrize("address", ["", "A" * 201])
def test_an_address_that_no_label_can_carry_is_refused(address: str) -> None:
    with pytest.raises(InputError, match="characters"):
        qr_code(address)


@settings(max_examples=60, deadline=None)
@given(st.text("ABCXYZ0123456789:/.-", min_size=1, max_size=90), st.sampled_from("HQ"))
def test_it_is_the_code_that_the_library_makes(text: str, level: Level) -> None:
    """The library draws and rates each mask by itself, in another way."""
    code = _sized(text, level)
    taken = best_masked(code).tolist()
    code.make(fit=True)
    assert taken == code.get_matrix()
    drawn = []
    for mask in MASKS:
        code.makeImpl(False, mask)
        drawn.append([[bool(module) for module in row] for row in code.modules])
    assert penalties(np.array(drawn)).tolist() == [util.lost_point(one) for one in drawn]


def test_the_code_alone_as_svg_has_the_size_asked_for() -> None:
    svg = qr_svg(ADDRESS, "H", 42.0)
    assert 'width="42mm" height="42mm"' in svg
    dark = sum(sum(row) for row in qr_code(ADDRESS, "H").rows)
    assert sum(int(n) for n in re.findall(r"h(\d+)v1", svg)) == dark
