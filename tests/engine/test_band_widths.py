"""The contributors' table of band widths is what the code gives."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from sheet_metals import die

from flangebook.bending import prediction
from flangebook.bending.prediction.air_bend import BendCase, air_bend

PAGE = Path(prediction.__path__[0]) / "README.md"
ROWS = {
    "mild steel, cold-rolled": "mild-steel-cr",
    "mild steel, hot-rolled": "mild-steel-hr",
    "stainless 304": "stainless-304",
    "stainless 316, no K and n": "stainless-316",
    "aluminium 5052-H32": "aluminium-5052-h32",
}


def printed(name: str) -> list[list[float]]:
    """Nominal, low and high end of each figure, as the page has them."""
    line = next(x for x in PAGE.read_text("utf-8").splitlines() if x.startswith(f"| {name} |"))
    cells = line.strip("| ").split("|")[1:]
    return [[float(x) for x in re.findall(r"[-+]?\d+(?:\.\d+)?", cell)] for cell in cells]


@pytest.mark.parametrize("name", ROWS)
def test_the_table_is_true(name, shipped_metals):
    metal = shipped_metals[ROWS[name]]
    bend = air_bend(BendCase(metal, 2.0, 1.0, 90.0, die(16.0, 80.0, 2.4), 1.5))
    force, spring, radius, depth = printed(name)
    for shown, band, digit in (
        (force, bend.force_n, 0.5),
        (spring, bend.springback_deg, 0.05),
        (radius, bend.inside_radius_mm, 0.05),
    ):
        assert shown[0] == pytest.approx(band.nominal, abs=1.01 * digit)
        ends = [100 * (end / band.nominal - 1) for end in (band.low, band.high)]
        assert shown[1:] == pytest.approx(ends, abs=0.51)
    band = bend.punch_depth_mm
    ends = [band.nominal, band.low - band.nominal, band.high - band.nominal]
    assert depth == pytest.approx(ends, abs=0.0051)
