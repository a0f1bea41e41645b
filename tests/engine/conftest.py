"""The metals that a new shop starts with, for the tests of the calculations."""

from __future__ import annotations

import json
from dataclasses import fields
from importlib.resources import files

import pytest
from hypothesis import settings

from flangebook.bending.metals import Figure, Metal

# A loaded machine is slow, not wrong: no time limit for a single example.
settings.register_profile("no deadline", deadline=None)
settings.load_profile("no deadline")


@pytest.fixture(scope="session")
def shipped_metals() -> dict[str, Metal]:
    """By code."""
    text = files("flangebook.shop").joinpath("starter_metals.json").read_text("utf-8")
    known = {f.name for f in fields(Metal)}
    return {
        row["code"]: Metal(
            **{
                name: Figure(**value) if isinstance(value, dict) else value
                for name, value in row.items()
                if name in known
            }
        )
        for row in json.loads(text)["metals"]
    }
