"""What is said of limits on the order where the part cannot be made as asked, or not at all."""

from __future__ import annotations

from dataclasses import replace

from plan_reading import words_of
from planning_shop import CHANNEL, CRIB, GOOSENECK, METALS, PRESS, STRAIGHT, UP, part

from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan

SMALL_CRIB = replace(CRIB, punches=(STRAIGHT, GOOSENECK), dies=CRIB.dies[2:4])
TUBE = part((30.0, 60.0, 60.0, 60.0, 29.0), UP, UP, UP, UP)
"""Closed on itself but for a slit: no punch comes out of it."""


def said_of(of: Part, crib: Crib = SMALL_CRIB) -> tuple[JsonDict, dict[str, str]]:
    answer = plan(of, PRESS, crib, METALS)
    return answer, {one["wish"]: words_of(one) for one in answer["order"]["wishes"]}


def test_of_a_part_that_cannot_be_made_a_limit_is_not_said_to_make_no_difference() -> None:
    answer, said = said_of(replace(TUBE, order_limits=OrderLimits(last=4), order=None))
    assert not answer["order"]["proven"]
    assert said == {"last": "Bend 4 last: cannot be made, neither with it nor without."}


def test_the_given_order_of_such_a_part_neither() -> None:
    _, said = said_of(replace(TUBE, order=(1, 2, 3, 4)))
    assert said == {"order": "The given order: cannot be made, neither with it nor without."}


def test_a_limit_that_alone_stands_in_the_way_cannot_be_had() -> None:
    """A channel's two flanges want either end at the gauge: the other end would be 80 mm away."""
    short_gauge = replace(PRESS, gauge_x_max_mm=60.0)
    wished = replace(CHANNEL, order_limits=OrderLimits(no_turn_end=True))
    answer = plan(wished, short_gauge, SMALL_CRIB, METALS)
    (one,) = answer["order"]["wishes"]
    assert words_of(one) == "No turning end for end: cannot be had."
    assert "no_turn_end" in {r["kind"] for r in answer["order"]["remedies"]}
    assert plan(CHANNEL, short_gauge, SMALL_CRIB, METALS)["order"]["proven"]


def test_a_limit_that_costs_nothing_is_said_to() -> None:
    _, said = said_of(replace(CHANNEL, order_limits=OrderLimits(no_turn_over=True)))
    assert said == {"no_turn_over": "No turning over: costs nothing."}
