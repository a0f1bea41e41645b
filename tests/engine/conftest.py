"""The metals that a new shop starts with, for the tests of the calculations."""

from __future__ import annotations

import json
from importlib.resources import files

import pytest

from flangebook.bending.part.metals import Metal
from flangebook.shop.crib import metal_from


@pytest.fixture(scope="session")
def shipped_metals() -> dict[str, Metal]:
    """By code."""
    text = files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    return {row["code"]: metal_from(row) for row in json.loads(text)["metals"]}
