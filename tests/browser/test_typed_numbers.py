"""A number that can be read in two ways is asked back about; forms and shop read alike."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from browsing import by_test, show
from playwright.sync_api import Page, expect

from flangebook.api.quantities import LENGTH, read
from flangebook.bending.errors import InputError

TYPED = json.loads((Path(__file__).parents[1] / "api/typed_lengths.json").read_text("utf-8"))
READ = """async ([typed, unit]) => {
  const { meanings, typedLength } = await import("/app/units.js");
  return [typedLength(typed, unit), meanings(typed, unit)];
}"""


def read_or_none(text: str) -> float | None:
    """As the shop reads what a form sends."""
    try:
        return read(text, LENGTH)
    except InputError:
        return None


def test_forms_read_what_the_shop_reads(phone: Page, shop_server):
    """tests/api/test_quantities.py holds the shop to the same rows."""
    show(phone, f"{shop_server.url}/settings", "settings")
    for row in TYPED:
        for unit, right in (("mm", row["on_mm_device"]), ("in", row["on_inch_device"])):
            sent, may_mean = phone.evaluate(READ, [row["typed"], unit])
            expected = None if right is None else pytest.approx(right, rel=1e-12)
            assert read_or_none(sent) == expected, (row, unit, sent)
            assert may_mean == ([] if right is not None else row["may_mean"]), (row, unit)


def test_twelve_hundred_with_a_comma_is_asked_back(page: Page, shop_server, console):
    """1,200 was read as 1.2 mm without a word, and the bend was ok."""
    console.expect("422")
    show(page, f"{shop_server.url}/bend?metal=mild-steel-cr&thickness=2 mm&angle=90", "bend")
    by_test(page, "bend_length_mm").fill("1,200")
    expect(by_test(page, "wrong-bend_length_mm")).to_contain_text("can be 1.2 or 1200")
    expect(by_test(page, "answer")).not_to_contain_text("Allow for")
    meant = by_test(page, "may-mean-bend_length_mm")
    expect(meant).to_have_text(["1.2", "1200"])
    assert min((one.bounding_box() or {})["height"] for one in meant.all()) >= 44
    meant.last.click()
    expect(by_test(page, "bend_length_mm")).to_have_value("1200")
    expect(by_test(page, "answer")).to_contain_text("Allow for")
    expect(meant).to_have_count(0)


def test_an_eighth_without_a_unit_is_no_millimetre(page: Page, shop_server, console):
    """1/8 was read as 0.125 mm on a device in mm."""
    console.expect("422")
    show(page, f"{shop_server.url}/bend?metal=mild-steel-cr&length=300 mm&angle=90", "bend")
    by_test(page, "thickness_mm").fill("1/8")
    expect(by_test(page, "wrong-thickness_mm")).to_contain_text("without a unit")
    by_test(page, "may-mean-thickness_mm").click()
    expect(by_test(page, "thickness_mm")).to_have_value("1/8 in")
    expect(by_test(page, "answer")).to_contain_text("Allow for")
