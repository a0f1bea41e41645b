"""The metals that a new shop starts with, for the tests of the calculations."""

from __future__ import annotations

import json
from importlib.resources import files

import pytest
from hypothesis import settings

from flangebook.bending.metals import Metal
from flangebook.shop.crib import metal_from

# A loaded machine is slow, not wrong: no time limit for a single example.
settings.register_profile("no deadline", deadline=None)
settings.load_profile("no deadline")


@pytest.fixture(scope="session")
def shipped_metals() -> dict[str, Metal]:
    """By code."""
    text = files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    return {row["code"]: metal_from(row) for row in json.loads(text)["metals"]}
