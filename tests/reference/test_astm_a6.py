"""ASTM A6/A6M, appendix X4: suggested minimum inside radii for cold bending of rolled steel.

Table X4.2, group A (A36 among others), up to 20 mm and 20 to 25 mm: 1.5 t. Note A: "Values are
for bend lines perpendicular to the direction of final rolling. [...] If bend lines are parallel
to the direction of final rolling, multiply values by 1.5." Read in a public copy,
https://www.scribd.com/document/178096402/ASTM-A-6
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
STARTER = json.loads((ROOT / "server/flangebook/shop/starter_metals.json").read_text("utf-8"))


def hot_rolled() -> dict[str, Any]:
    return next(m for m in STARTER["metals"] if m["code"] == "mild-steel-hr")


@pytest.mark.parametrize("end", ["low", "nominal", "high"])
def test_along_the_grain_needs_half_as_much_again(end: str) -> None:
    metal = hot_rolled()
    across, along = metal["min_radius_over_t_across"], metal["min_radius_over_t_with"]
    assert along[end] == pytest.approx(1.5 * across[end])


def test_the_table_s_own_figure_lies_within_the_band() -> None:
    assert hot_rolled()["min_radius_over_t_across"]["high"] == 1.5
