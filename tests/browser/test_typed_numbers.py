"""A number that can be read in two ways is asked back about; forms and shop read alike."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from browsing import by_test, call, show, unfold, wait_ready
from hypothesis import given, settings
from hypothesis import strategies as st
from playwright.sync_api import Page, expect

from flangebook.bending.errors import InputError
from flangebook.schemas.quantities import FORCE, FORCE_PER_LENGTH, LENGTH, read

TYPED = json.loads((Path(__file__).parents[1] / "api/typed_lengths.json").read_text("utf-8"))
READ = """async ([typed, unit]) => {
  const { meanings, typedLength } = await import("/app/shell/units.js");
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


TON_KN = 8.896443230521  # 2000 lbf
TONNE_KN = 9.80665  # 1000 kg under standard gravity (CGPM 1901)
INCH = "localStorage.setItem('flangebook.settings', '{\"units\":\"inch\"}')"


def save(page: Page, ready: str) -> None:
    by_test(page, "save").click()
    wait_ready(page, ready)


@pytest.mark.parametrize(
    ("typed", "kn", "shown_again"),
    [
        ("25", 25 * TON_KN, "25"),
        ("25 tons", 25 * TON_KN, "25"),
        ("25 short tons", 25 * TON_KN, "25"),
        ("22,5", 22.5 * TON_KN, "22.5"),
        ("25 t", 25 * TONNE_KN, "27.5578"),
        ("25 tonnes", 25 * TONNE_KN, "27.5578"),
        ("25 metric tons", 25 * TONNE_KN, "27.5578"),
        ("250 kN", 250, "28.1011"),
    ],
)
def test_forces_in_inch_and_tons(phone: Page, crib_server, typed: str, kn: float, shown_again: str):
    """Every box of force is in tons there; what was not touched stays as it was kept."""
    url = crib_server.url
    before = call(f"{url}/api/v1/press")["press"]
    show(phone, f"{url}/settings", "settings")
    phone.evaluate(INCH)
    show(phone, f"{url}/shop/press", "press")
    expect(phone.locator("label[for=force_kn]")).to_contain_text("(tons)")
    expect(phone.locator("label[for=force_per_m_limit_kn_per_m]")).to_contain_text("(tons/ft)")
    by_test(phone, "force_kn").fill(typed)
    save(phone, "shop")
    after = call(f"{url}/api/v1/press")["press"]
    assert after["force_kn"] == pytest.approx(kn, rel=1e-9)
    changed = {name for name in before if before[name] != after[name]}
    assert changed <= {
        "force_kn",
        "depth_zeroed_at",
        "gauge_zeroed_at",
    }  # another force: another press
    show(phone, f"{url}/shop/press", "press")
    expect(by_test(phone, "force_kn")).to_have_value(shown_again)


def test_ratings_in_inch_and_tons_come_back_as_printed(phone: Page, crib_server):
    """24 tons/ft, as the list prints it, can be typed."""
    url = crib_server.url
    show(phone, f"{url}/settings", "settings")
    phone.evaluate(INCH)
    for typed, per_m in (
        ("24 tons/ft", 24 * TON_KN / 0.3048),
        ("24", 24 * TON_KN / 0.3048),
        ("80 t/m", 80 * TONNE_KN),
    ):
        show(phone, f"{url}/shop/dies/V16", "tool")
        by_test(phone, "rating_kn_per_m").fill(typed)
        save(phone, "tools")
        die = next(d for d in call(f"{url}/api/v1/dies")["dies"] if d["code"] == "V16")
        assert die["rating_kn_per_m"] == pytest.approx(per_m, rel=1e-9)


def test_tons_on_a_device_in_mm_are_metric_and_it_says_so(phone: Page, crib_server):
    url = crib_server.url
    show(phone, f"{url}/shop/press", "press")
    by_test(phone, "force_kn").fill("25 tons")
    expect(phone.locator("#force_kn-more")).to_contain_text("metric tons: 245 kN")
    save(phone, "shop")
    assert call(f"{url}/api/v1/press")["press"]["force_kn"] == pytest.approx(25 * TONNE_KN)


def test_a_rating_of_twelve_hundred_with_a_comma_is_asked_back(phone: Page, crib_server, console):
    console.expect("422")
    show(phone, f"{crib_server.url}/shop/dies/V16", "tool")
    by_test(phone, "rating_kn_per_m").fill("1,200")
    by_test(phone, "save").click()
    by_test(phone, "may-mean-rating_kn_per_m").last.click()
    save(phone, "tools")
    dies = call(f"{crib_server.url}/api/v1/dies")["dies"]
    assert next(d for d in dies if d["code"] == "V16")["rating_kn_per_m"] == 1200


VALUE = """async (rows) => {
  const { valueOf } = await import("/app/shell/understood.js");
  return rows.map(([typed, unit]) => valueOf(typed, unit));
}"""


@pytest.mark.parametrize("units", ["mm", "inch"])
def test_a_box_understands_what_the_shop_reads(phone: Page, shop_server, units: str):
    """The same rows as forms and shop are held to: nothing else is said to be understood."""
    phone.add_init_script(f"localStorage['flangebook.settings'] = '{{\"units\": \"{units}\"}}'")
    show(phone, f"{shop_server.url}/settings", "settings")
    unit = "mm" if units == "mm" else "in"
    found = phone.evaluate(VALUE, [[row["typed"], unit] for row in TYPED])
    for row, value in zip(TYPED, found, strict=True):
        right = row["on_mm_device" if unit == "mm" else "on_inch_device"]
        assert value == (None if right is None else pytest.approx(right, rel=1e-9)), row


def test_each_box_says_what_it_understood_in_both_units(page: Page, shop_server):
    show(page, f"{shop_server.url}/bend", "bend")
    for typed, said in (
        ("2", "2 mm = 0.0787 in"), ("1/8 in", "3.175 mm = 0.125 in"), ("2 cm", "20 mm = 0.7874 in"),
    ):  # fmt: skip
        by_test(page, "bend_length_mm").fill(typed)
        expect(by_test(page, "read-bend_length_mm")).to_have_text(said)
    by_test(page, "bend_length_mm").fill("1/8")
    expect(by_test(page, "read-bend_length_mm")).to_have_count(0)
    show(page, f"{shop_server.url}/shop/dies/V16", "tool")
    by_test(page, "rating_kn_per_m").fill("80 t/m")
    expect(by_test(page, "read-rating_kn_per_m")).to_have_text("784.5 kN/m = 26.9 short tons/ft")


def test_bending_speed_is_in_inch_where_the_device_is(phone: Page, crib_server):
    url = crib_server.url
    show(phone, f"{url}/settings", "settings")
    phone.evaluate(INCH)
    show(phone, f"{url}/shop/press", "press")
    unfold(phone)
    speed = by_test(phone, "bending_speed_mm_s")
    expect(speed).to_have_value("0.3543")
    speed.fill("0.5")
    expect(by_test(phone, "read-bending_speed_mm_s")).to_have_text("12.7 mm/s = 0.5 in/s")
    save(phone, "shop")
    assert call(f"{url}/api/v1/press")["press"]["bending_speed_mm_s"] == pytest.approx(12.7)


SHOWN = """async ([kind, values]) => {
  const units = await import("/app/shell/units.js");
  const { valueOf } = await import("/app/shell/understood.js");
  const { length, force, forcePerLength, words, inSentence, typedLength, typedForce } = units;
  const shows = {
    length: (mm) => [length(mm), length(mm, { digits: 2 }), length(mm, { digits: 0 })],
    force: (kn) => [force(kn)],
    rating: (kn) => [forcePerLength(kn)],
  }[kind];
  const unit = { length: units.lengthUnit(), force: units.forceUnit().unit,
    rating: units.ratingUnit().unit }[kind];
  const send = { length: typedLength, force: (t) => typedForce(t, { unit }),
    rating: (t) => typedForce(t, { unit }) }[kind];
  return values.flatMap((value) => shows(value).flatMap((shown) =>
    [words(shown), inSentence(shown), shown.text].map((text) => [value, text, send(text),
      valueOf(text, unit)])));
}"""
# Half of the last digit that is shown, in mm, kN or kN/m; a 64th of an inch shows the nearest.
COARSEST = {
    ("mm", "length"): 0.5, ("inch", "length"): 0.01 * 25.4 / 2, ("fraction", "length"): 25.4 / 128,
    ("mm", "force"): 0.5, ("inch", "force"): TON_KN / 2, ("fraction", "force"): TON_KN / 2,
    ("mm", "rating"): 0.5, ("inch", "rating"): TON_KN / 0.3048 / 2,
    ("fraction", "rating"): TON_KN / 0.3048 / 2,
}  # fmt: skip
KINDS = {"length": LENGTH, "force": FORCE, "rating": FORCE_PER_LENGTH}


@pytest.mark.parametrize("units", ["mm", "inch", "fraction"])
def test_what_is_shown_can_be_typed_back_and_means_the_same(phone: Page, shop_server, units: str):
    """Property: any figure of a screen or print, in each unit system, by the form to the shop."""
    kept = {"units": "mm" if units == "mm" else "inch",
            "inches": "fraction" if units == "fraction" else "decimal"}  # fmt: skip
    phone.add_init_script(f"localStorage['flangebook.settings'] = '{json.dumps(kept)}'")
    show(phone, f"{shop_server.url}/settings", "settings")

    @settings(max_examples=30, deadline=None)
    @given(st.sampled_from(sorted(KINDS)), st.lists(st.floats(-5e3, 5e3), min_size=20, max_size=60))
    def holds(kind: str, values: list[float]) -> None:
        signed = values if kind == "length" else [abs(value) for value in values]
        for value, text, sent, understood in phone.evaluate(SHOWN, [kind, signed]):
            back = read(sent, KINDS[kind])
            assert back == pytest.approx(understood, rel=1e-9, abs=1e-9), (text, sent)
            assert abs(back - value) <= COARSEST[units, kind] + 1e-6, (value, text, sent)

    holds()
