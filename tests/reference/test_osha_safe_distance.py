"""OSHA CPL 02-01-025 (14 February 1997): guarding power press brakes by safe distance.

"the safe distance has been defined as 4 inches from the exterior point of contact of the press
brake die closest to the employee": Press Brake Safety Compliance Kit, employers' reference
manual, SMACNA, quoted in https://www.snipsmag.com/articles/87037-safety-program-elements-for-press-brake-operators
The directive allows it only where guards and devices are not feasible, on conditions.
"""

from __future__ import annotations

import pytest

from flangebook.bending.motion.handling import hand_distance


@pytest.mark.parametrize(
    ("held_edge_mm", "level"), [(30 + 102, "ok"), (30 + 101.5, "caution"), (20, "caution")]
)
def test_four_inches_from_the_front_of_the_die(held_edge_mm, level):
    assert hand_distance(held_edge_mm, die_width_mm=60).level == level


def test_four_inches_is_not_rounded_down():
    assert hand_distance(30 + 4 * 25.4 - 0.1, die_width_mm=60).level == "caution"


def test_never_with_fingers():
    found = hand_distance(60, die_width_mm=60)
    assert "never with fingers" in found.do
    assert found.numbers["room_mm"] == 30
