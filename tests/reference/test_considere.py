"""Hardening from strengths: A. Considere, Annales des Ponts et Chaussees 9 (1885), pp. 574-775.

K and n of Groover, Fundamentals of Modern Manufacturing (tables of tensile and flow properties),
are the outside figures. Groover's own K and n do not go through his own tensile strength better
than within 10 to 20 %, as no two textbooks do, which is what the wide band is for.
"""

from __future__ import annotations

import json
from importlib.resources import files
from math import e, exp, log

import pytest

from flangebook.bending.errors import InputError
from flangebook.bending.sheet_model.hardening_from_strength import (
    hardening_from_strength,
    hardening_of,
    k_from_tensile,
    law_of,
    n_from_strengths,
    n_from_uniform_elongation,
    tensile_of_curve,
)

GROOVER = {  # Y, R_m, E, K, n
    "low-carbon steel, annealed": (175, 300, 209_000, 500, 0.25),
    "austenitic stainless, annealed": (275, 650, 206_000, 1200, 0.40),
}


@pytest.mark.parametrize("n", [0.05, 0.2, 0.45])
def test_bar_necks_where_the_load_stops_rising(n):
    """Load = K e^n exp(-e) is greatest at e = n, and is R_m there."""
    k = k_from_tensile(400.0, n)

    def load(strain):
        return k * strain**n * exp(-strain)

    assert load(n) == pytest.approx(400.0)
    assert load(n) > load(0.99 * n)
    assert load(n) > load(1.01 * n)
    assert tensile_of_curve(k, n, 0.0) == pytest.approx(400.0)
    assert n_from_uniform_elongation(exp(n) - 1.0) == pytest.approx(n)


@pytest.mark.parametrize("name", GROOVER)
def test_groover_lies_in_the_band(name):
    yield_mpa, tensile, modulus, k, n = GROOVER[name]
    found = hardening_from_strength(yield_mpa, tensile, modulus)
    assert found.n.low <= n * 1.25  # Groover's n lies at or above the top of the band
    assert found.n.high >= 0.85 * n
    assert found.k_mpa.low <= k <= found.k_mpa.high


def test_curve_goes_through_both_strengths():
    n = n_from_strengths(280, 450, 207_000)
    k = k_from_tensile(450, n)
    assert k * (0.002 + 280 / 207_000) ** n == pytest.approx(280)


def test_metal_that_necks_as_it_yields_hardly_hardens():
    """With Y = R_m the curve's top is at the proof stress: n = e (0.002 + Y/E)."""
    assert n_from_strengths(300, 300, 70_000) == pytest.approx(e * (0.002 + 300 / 70_000))
    assert k_from_tensile(300, 0.0) == 300


def test_tensile_under_yield_is_refused():
    with pytest.raises(InputError, match="under the yield strength"):
        n_from_strengths(400, 300, 207_000)


def test_elongation_in_percent_is_refused():
    with pytest.raises(InputError, match=r"0\.22 for 22 %"):
        n_from_uniform_elongation(22)


STARTER_METALS = [
    row["code"]
    for row in json.loads(
        files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    )["metals"]
]


@pytest.mark.parametrize("code", STARTER_METALS)
def test_one_row_is_one_metal(shipped, code):
    """The curve that a bend is calculated with has the row's own tensile strength.

    Within 2 %, by Considere on Swift's curve, K n^n exp(e0 - n); and within 5 % by the plain
    K n^n exp(-n) of the textbooks, which leaves out the strain at first yield.
    """
    metal = shipped[code]
    law = law_of(metal, 2.0)
    tensile = metal.tensile_mpa.nominal
    assert tensile_of_curve(law.k_mpa, law.n, law.prestrain) == pytest.approx(tensile, rel=0.02)
    assert law.k_mpa * law.n**law.n * exp(-law.n) == pytest.approx(tensile, rel=0.05)
    if metal.hardening_k_mpa is not None:  # and it is the row's K, not one put in its place
        assert law.k_mpa == metal.hardening_k_mpa.nominal


@pytest.mark.parametrize("code", STARTER_METALS)
def test_yield_strength_lies_on_or_above_the_start_of_the_curve(shipped, code):
    """No row starts so far along its curve that it would neck before it bends."""
    law = law_of(shipped[code], 2.0)
    assert law.prestrain < 0.5 * law.n


def test_metal_without_k_and_n_has_the_wider_band(shipped):
    derived, own = hardening_of(shipped["stainless-316"]), hardening_of(shipped["stainless-304"])
    assert (derived.n.high - derived.n.low) / derived.n.nominal > (
        own.n.high - own.n.low
    ) / own.n.nominal
    assert "Considere" in derived.n.source


def test_relation_in_numbers():
    assert log(1.25) == pytest.approx(n_from_uniform_elongation(0.25))
    assert k_from_tensile(300, 0.25) == pytest.approx(300 * (e / 0.25) ** 0.25)
