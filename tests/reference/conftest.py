"""Metals for the reference tests: one made to a book's figures, and those that are shipped."""

from __future__ import annotations

import json
from collections.abc import Callable
from importlib.resources import files

import pytest

from flangebook.bending.part.metals import Figure, Metal
from flangebook.shop.crib import metal_from


def exactly(value: float) -> Figure:
    """A figure without a band, as a book's example gives it."""
    return Figure(value, value, value, "the example", "typical")


@pytest.fixture
def steel() -> Callable[[float], Metal]:
    """A steel of exactly this tensile strength [MPa]; its other figures do not matter here."""

    def make(tensile_mpa: float) -> Metal:
        return Metal(
            code="example-steel",
            name="Steel of the example",
            youngs_modulus_mpa=exactly(207_000),
            yield_mpa=exactly(0.6 * tensile_mpa),
            tensile_mpa=exactly(tensile_mpa),
            density_kg_m3=exactly(7850),
            radius_over_v=exactly(0.16),
            springback_at_90_deg=exactly(1.0),
        )

    return make


@pytest.fixture(scope="session")
def shipped() -> dict[str, Metal]:
    """The metals that a new shop starts with, by code."""
    text = files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    return {row["code"]: metal_from(row) for row in json.loads(text)["metals"]}
