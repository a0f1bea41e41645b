"""The contributors' table of published figures is what ``published_figures`` gives.

Nine in ten published figures lie inside the band, those that the code was tuned on and those that
it was not, and the force to allow for reaches them.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from published_figures import Row, table

PAGE = (Path(__file__).parents[2] / "README.md").read_text("utf-8")
ROWS = table()


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.figures)
def test_the_table_is_true(row: Row):
    assert row.line() in PAGE.splitlines(), row.line()


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.figures)
def test_nine_in_ten_lie_inside(row: Row):
    assert row.inside >= 0.9 * len(row.found)
    assert row.covered >= 0.9 * len(row.found)


def test_figures_the_code_was_not_tuned_on_are_as_many():
    unseen = [one for row in ROWS for one in row.found if not row.tuned_on]
    assert len(unseen) >= 60
