"""Springback factors of a German metal-trade tables book against bending by a moment alone.

https://de.scribd.com/document/401383818: k_R = bend angle after / bend angle in the tool =
(r1 + s/2) / (r2 + s/2), r1 loaded, r2 released. The values were read, the heads of the columns,
r2/s, are from memory, and it is a design table, not raw test data. Figures of the metals: Groover,
Fundamentals of Modern Manufacturing, annealed low-carbon steel, austenitic stainless, copper.

Only the soft steel's row fits figures that go with its name. The book's stainless row behaves like
sheet rolled to some 800 MPa and its copper row like 280 MPa (the row is named for R20, hard):
annealed figures miss them, and the tests say in which direction. The two aluminium rows ask for
a yield strength of 17 to 70 MPa, under any sheet of that name, and are left out.
"""

from __future__ import annotations

import numpy as np
import pytest
from test_sheet_limits import ratio_released

from flangebook.bending.sheet_model.moment_curvature import sheet_law
from flangebook.bending.sheet_model.roots import roots

HEADS_FROM_MEMORY = (1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100)
DC04 = (0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83)
STAINLESS = (0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63)
COPPER = (0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.90, 0.85, 0.79, 0.72, 0.60)


def factor(law, released_over_t):
    """k_R [-] of sheet 1 mm thick that is to keep this inside radius."""

    def miss(loaded):
        return np.array([loaded[0] / ratio_released(law, loaded[0]) - released_over_t - 0.5])

    loaded = roots(miss, np.array([0.4]), np.array([released_over_t + 0.5]))
    return ratio_released(law, float(loaded[0]))


def rows(printed):
    return list(zip(HEADS_FROM_MEMORY, printed, strict=False))


@pytest.mark.parametrize(("head", "printed"), rows(DC04))
def test_soft_steel(head, printed):
    """Within 0.03 up to r/s 63; at 100 the model springs 0.05 more than the table."""
    law = sheet_law(209_000, 175, 500, 0.25, 1.0)
    assert factor(law, head) == pytest.approx(printed, abs=0.03 if head <= 63 else 0.05)


@pytest.mark.parametrize(("head", "printed"), rows(STAINLESS))
def test_stainless_is_rolled_hard(head, printed):
    """Sheet rolled to 800 MPa is within 0.03 of the row, 0.05 at r/s 40."""
    hard = sheet_law(200_000, 800, 1300, 0.15, 1.0)
    assert factor(hard, head) == pytest.approx(printed, abs=0.03 if head < 40 else 0.05)


@pytest.mark.parametrize(("head", "printed"), rows(STAINLESS)[4:])
def test_annealed_stainless_springs_less_than_the_row(head, printed):
    assert factor(sheet_law(193_000, 275, 1200, 0.40, 1.0), head) > printed + 0.02


@pytest.mark.parametrize(("head", "printed"), rows(COPPER)[2:])
def test_annealed_copper_springs_less_than_the_row(head, printed):
    assert factor(sheet_law(110_000, 70, 300, 0.50, 1.0), head) > printed + 0.01
