"""Quantities as people type them; every spelling that is not on the list is refused."""

from __future__ import annotations

import json
import math
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from flangebook.bending.errors import InputError
from flangebook.schemas.quantities import (
    ANGLE,
    DENSITY,
    FORCE,
    FORCE_PER_LENGTH,
    KINDS,
    LENGTH,
    RATIO,
    SPEED,
    STRESS,
    Kind,
    SheetGauge,
    read,
    read_thickness,
)

# Exact by definition: inch 25.4 mm and pound 0.45359237 kg (international yard and pound
# agreement, 1959), standard gravity 9.80665 m/s2 (CGPM 1901).
LBF_N = 0.45359237 * 9.80665


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("3", LENGTH, 3.0),
        (" 3 mm ", LENGTH, 3.0),
        ("3mm", LENGTH, 3.0),
        ("3.", LENGTH, 3.0),
        (".5", LENGTH, 0.5),
        ("+2", LENGTH, 2.0),
        ("-2 mm", LENGTH, -2.0),
        ("12 cm", LENGTH, 120.0),
        ("1.6 m", LENGTH, 1600.0),
        ("0.125 in", LENGTH, 3.175),
        ("1/8 in", LENGTH, 3.175),
        ('1/8"', LENGTH, 3.175),
        ('1 "', LENGTH, 25.4),
        ("1 1/2 inch", LENGTH, 38.1),
        ("1-1/2 in", LENGTH, 38.1),
        ("2 ft", LENGTH, 609.6),
        ("3 MM", LENGTH, 3.0),
        ("400", FORCE, 400.0),
        ("400 kN", FORCE, 400.0),
        ("500 N", FORCE, 0.5),
        ("1 short ton", FORCE, 2 * LBF_N),
        ("45 us tons", FORCE, 90 * LBF_N),
        ("25 t", FORCE, 25 * 9.80665),
        ("25 tonnes", FORCE, 25 * 9.80665),
        ("25 metric tons", FORCE, 25 * 9.80665),
        ("25 tf", FORCE, 25 * 9.80665),
        ("12 t/m", FORCE_PER_LENGTH, 12 * 9.80665),
        ("12 metric tons/m", FORCE_PER_LENGTH, 12 * 9.80665),
        ("1000 lbf", FORCE, LBF_N),
        ("800 kN/m", FORCE_PER_LENGTH, 800.0),
        ("800 N/mm", FORCE_PER_LENGTH, 800.0),
        ("20 short tons/ft", FORCE_PER_LENGTH, 40 * LBF_N / 0.3048),
        ("340 MPa", STRESS, 340.0),
        ("210 GPa", STRESS, 210_000.0),
        ("340 N/mm2", STRESS, 340.0),
        ("60 ksi", STRESS, 60_000 * LBF_N / 25.4**2),
        ("30000 psi", STRESS, 30_000 * LBF_N / 25.4**2),
        ("29 msi", STRESS, 29e6 * LBF_N / 25.4**2),
        ("7.85 g/cm3", DENSITY, 7850.0),
        ("7850 kg/m³", DENSITY, 7850.0),
        ("0.3 lb/in3", DENSITY, 0.3 * 0.45359237 / 0.0254**3),
        ("90", ANGLE, 90.0),
        ("90°", ANGLE, 90.0),
        ("90 deg", ANGLE, 90.0),
        ("9 mm/s", SPEED, 9.0),
        ("1 in/s", SPEED, 25.4),
        ("0.3", RATIO, 0.3),
    ],
)
def test_spellings_that_are_known(text: str, kind: Kind, value: float):
    assert read(text, kind) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("", LENGTH),
        ("mm", LENGTH),
        ("three", LENGTH),
        ("nan", LENGTH),
        ("inf", LENGTH),
        ("-inf mm", LENGTH),
        ("1e3", LENGTH),
        ("0x10", LENGTH),
        ("1,200 mm", LENGTH),
        ("1,", LENGTH),
        ("1.5.2", LENGTH),
        ("3 4", LENGTH),
        ("٣ mm", LENGTH),
        ("1/8", LENGTH),
        ("1/0 in", LENGTH),
        ("1 1/2", LENGTH),
        ("16 ga", LENGTH),
        ("5'", LENGTH),
        ("1 Nm", LENGTH),
        ("3 mm2", LENGTH),
        ("3 mm mm", LENGTH),
        ("3 kN", LENGTH),
        ("3 parsec", LENGTH),
        ("3 µm", LENGTH),
        ("40 tons", FORCE),
        ("40 tonf", FORCE),
        ("40 long tons", FORCE),
        ("12 tons/m", FORCE_PER_LENGTH),
        ("1 kNm", FORCE),
        ("1 kg", FORCE),
        ("3 mm", FORCE),
        ("800 kN", FORCE_PER_LENGTH),
        ("12 tons/ft", FORCE_PER_LENGTH),
        ("3 bar", STRESS),
        ("3 Pa", STRESS),
        ("1.57 rad", ANGLE),
        ("100 gon", ANGLE),
        ("90'", ANGLE),
        ('90"', ANGLE),
        ("5 m/min", SPEED),
        ("60 in/min", SPEED),
        ("0.3 mm", RATIO),
        ("30 %", RATIO),
        ("<script>alert(1)</script>", LENGTH),
        ("__import__('os')", LENGTH),
        ("9" * 41, LENGTH),
        ("3 mm" + " " * 40 + "x", LENGTH),
    ],
)
def test_what_could_be_misread_is_refused_with_what_would_be_right(text: str, kind: Kind):
    with pytest.raises(InputError) as caught:
        read(text, kind)
    assert caught.value.right
    assert len(str(caught.value)) < 300


@pytest.mark.parametrize(
    ("text", "number"), [("16 ga", 16), ("16ga", 16), ("7 Gauge", 7), ("22 gage", 22), ("9 ga.", 9)]
)
def test_gauge_numbers_are_read_for_a_thickness_only(text: str, number: int):
    assert read_thickness(text) == SheetGauge(number)
    with pytest.raises(InputError):
        read(text, LENGTH)


@pytest.mark.parametrize("text", ["1.5 ga", "-3 ga", "100 ga", "ga", "16 gas", "16 g"])
def test_gauge_numbers_that_are_none(text: str):
    with pytest.raises(InputError):
        read_thickness(text)


TYPED = json.loads((Path(__file__).parent / "typed_lengths.json").read_text("utf-8"))


@pytest.mark.parametrize("row", TYPED, ids=[row["typed"] for row in TYPED])
def test_what_the_forms_and_the_shop_read_alike(row):
    """tests/browser/test_typed_numbers.py holds the forms to the same rows."""
    if row["on_mm_device"] is not None:
        assert read(row["typed"], LENGTH) == pytest.approx(row["on_mm_device"], rel=1e-12)
        return
    with pytest.raises(InputError) as caught:
        read(row["typed"], LENGTH)
    for meaning in row["may_mean"]:
        assert meaning in caught.value.right
        read(meaning, LENGTH)


@given(st.floats(-1e6, 1e6, allow_subnormal=False).map(lambda x: round(x, 4)))
def test_inches_round_trip(inches: float):
    text = f"{inches:.4f} in"
    assert read(text, LENGTH) == pytest.approx(inches * 25.4, rel=1e-12, abs=1e-12)


@given(st.integers(0, 999), st.integers(1, 63), st.sampled_from([2, 4, 8, 16, 32, 64]))
def test_fractions_of_an_inch_are_exact(whole: int, top: int, bottom: int):
    exact = (whole + Fraction(top, bottom)) * Fraction(254, 10)
    assert read(f"{whole} {top}/{bottom} in", LENGTH) == float(exact)


@given(st.sampled_from(KINDS), st.text(max_size=60))
def test_no_text_does_anything_but_read_or_be_refused(kind: Kind, text: str):
    try:
        said: object = read(text, kind)
    except InputError as error:
        said = error.right
    assert said if isinstance(said, str) else math.isfinite(float(str(said)))


@given(st.sampled_from(KINDS), st.data())
def test_every_spelling_converts_in_proportion(kind: Kind, data: st.DataObject):
    if not kind.spellings:
        return
    unit = data.draw(st.sampled_from(sorted(kind.spellings)))
    one, many = read(f"1 {unit}", kind), read(f"250 {unit}", kind)
    assert many == pytest.approx(250 * one, rel=1e-12)
    assert one > 0
