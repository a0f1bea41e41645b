"""The Fabricator (trade journal): columns on the air-formed inside radius and on sharp bends.

"Predicting an air-formed sheet metal inside bend radius",
https://www.thefabricator.com/thefabricator/article/bending/how-to-predict-an-air-formed-inside-bend-radius-with-precision
"How to avoid a sharp bend",
https://www.thefabricator.com/article/bending/press-brake-bending-basics-how-to-avoid-a-sharp-bend
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from flangebook.bending.handbook.inside_radius import inside_radius
from flangebook.bending.part.metals import Figure
from flangebook.bending.prediction.bend_checks import crease

RULE_5052 = Figure(0.13, 0.14, 0.15, "13 to 15 percent of the die opening", "common practice")


@pytest.mark.parametrize(("v_mm", "printed_in"), [(16, 0.094), (50, 0.295)])
def test_share_of_the_opening_for_5052_h32(shipped, v_mm, printed_in):
    """5052-H32, 1 mm punch: "13 to 15 percent"; the printed radii are the 15 percent."""
    metal = replace(shipped["aluminium-5052-h32"], radius_over_v=RULE_5052)
    radius = inside_radius(metal, v_mm, 1.0)
    assert radius.high / 25.4 == pytest.approx(printed_in, abs=0.0006)


@pytest.mark.parametrize("v_mm", [16, 50])
def test_shipped_5052_agrees_with_the_column(shipped, v_mm):
    shipped_band = inside_radius(shipped["aluminium-5052-h32"], v_mm, 1.0)
    assert 0.13 * v_mm <= shipped_band.nominal <= 0.15 * v_mm


def test_measured_bend_that_broke_the_rule(shipped):
    """T .125 in, V 50 mm, 1 mm tip: by the rule 0.295 in, measured 0.109 in.

    The rule cannot see it; the caution on sharp tips must, and the band widens downwards.
    """
    t_mm, v_mm, tip_mm = 0.125 * 25.4, 50.0, 1.0
    found = crease(t_mm, tip_mm)
    assert found is not None
    assert found.level == "caution"
    metal = shipped["aluminium-5052-h32"]
    assert inside_radius(metal, v_mm, tip_mm, t_mm).low < inside_radius(metal, v_mm, tip_mm).low
    # Said openly: the measured radius lies under even the widened band.
    assert inside_radius(metal, v_mm, tip_mm, t_mm).low > 0.109 * 25.4


def test_strong_stainless_over_half_an_inch(shipped):
    """90 ksi stainless, V 0.500 in: a floated radius of about 0.117 in, 23.4 % of the V.

    The column scales 15.6 % (60 ksi) by 90/60; ordinary 304 is softer and stays under it.
    """
    radius = inside_radius(shipped["stainless-304"], 0.5 * 25.4, 0.062 * 25.4)
    assert radius.high / 25.4 == pytest.approx(0.117, rel=0.07)
    assert radius.high / 25.4 < 0.117
