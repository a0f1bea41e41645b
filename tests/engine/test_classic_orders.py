"""Classic sections and the answer worked by hand.

All in 2 mm sheet, square bends taken to 88 degrees (theta 46 degrees, cos 0.695, sin 0.719), so
that a corner at (x, y) on a leg swings to (0.695 x - 0.719 y, 0.719 x + 0.695 y). The straight
punch is 20 mm wide and 110 mm high; the holder above it stands out 30 mm in front, 35 behind.
"""

from __future__ import annotations

from collections.abc import Sequence

from bending_parts import GOOSENECK, PUNCH, bend, part
from order_parts import DEEP, NARROW, TALL, problem_of

from flangebook.bending.ordering.best_first import Found
from flangebook.bending.ordering.explain import refused_steps
from flangebook.bending.ordering.search import search
from flangebook.bending.part.part import Direction
from flangebook.bending.tools.tooling import Holder, Punch

UP: Direction = "up"
DOWN: Direction = "down"
ALL = (PUNCH, GOOSENECK, DEEP, TALL)


def found(
    flats: Sequence[float], ways: Sequence[Direction], punches: Sequence[Punch] = (PUNCH,),
    *, soft: bool = False, **others: Holder | None,
) -> Found:  # fmt: skip
    made = part(flats, [bend(90.0, way) for way in ways])
    return search(problem_of(made, punches, **others), soft=soft)  # type: ignore[arg-type]


def hits(flats: Sequence[float], ways: Sequence[Direction], punch: Punch = PUNCH) -> set[str]:
    """What the order with the fewest refused steps runs into."""
    steps = refused_steps(found(flats, ways, (punch,), soft=True))
    return {reason for step in steps for reason in step.reasons}


def test_a_wide_channel_needs_one_end_turn_and_a_straight_punch() -> None:
    """The flange's end swings to (0.695 80 - 0.719 40, ..) = (27, ..): past the punch's 10."""
    order = found((40.0, 80.0, 40.0), (UP, UP))
    assert order.status == "found"
    assert order.cost is not None
    assert (order.cost.turn_overs, order.cost.turn_ends, order.cost.tool_changes) == (0, 1, 0)


def test_a_channel_with_a_short_web_swings_into_a_straight_punch() -> None:
    """Its flange's end swings to (0.695 24 - 0.719 60, ..) = (-26, ..): through the punch.

    A gooseneck whose throat lies 45 mm behind its tip leaves room for 26 mm and the margin.
    """
    short = (60.0, 24.0, 60.0)
    assert found(short, (UP, UP)).status == "none"
    assert hits(short, (UP, UP)) == {"punch"}
    order = found(short, (UP, UP), (PUNCH, DEEP))
    assert order.status == "found"
    assert order.sequence[-1].pair == 1
    assert order.slides[-1]  # the flange reaches over the nose: the punch cannot rise straight


def test_a_zed_is_turned_over_once() -> None:
    """Two directions are two faces up: once over, and no fewer. It clears on every side."""
    order = found((40.0, 40.0, 40.0), (UP, DOWN))
    assert order.status == "found"
    assert order.cost is not None
    assert order.cost.turn_overs == 1


def test_a_hat_is_turned_over_once_its_brims_together() -> None:
    """Bends 1 and 4 go up, 2 and 3 down: both of a face together is one turn-over."""
    order = found((25.0, 40.0, 60.0, 40.0, 25.0), (UP, DOWN, DOWN, UP))
    assert order.status == "found"
    assert order.cost is not None
    assert order.cost.turn_overs == 1
    first, second = ({m.bend for m in order.sequence[i : i + 2]} for i in (0, 2))
    assert {frozenset(first), frozenset(second)} == {frozenset({0, 3}), frozenset({1, 2})}


def test_a_lipped_channel_begins_with_its_lips() -> None:
    """Flats 15, 40, 80, 40, 15: a lip has to be there before the bend at the web beside it.

    With that web bend made first, the web's far corner, at (40, 80) from the lip's line, would
    swing to (0.695 40 - 0.719 80, ..) = (-30, ..), through the punch. The other way round the
    lip's edge, at (80 - 15, 40) in the last bend, swings to (16, ..): past the punch's 10 and the
    margin of 2, so the straight punch makes it.
    """
    order = found((15.0, 40.0, 80.0, 40.0, 15.0), (UP, UP, UP, UP))
    assert order.status == "found"
    made = [move.bend for move in order.sequence]
    assert made.index(0) < made.index(1)
    assert made.index(3) < made.index(2)


def test_a_deep_lipped_channel_needs_a_gooseneck() -> None:
    """Flats 12, 115, 90, 115, 12. In the last bend the far flange's lip, its edge at (90 - 12,
    115), swings to (54.2 - 82.7, 56.1 + 79.9) = (-28, 136): right across a straight punch, low or
    tall, and the low one's holder. The deep gooseneck's front face lies 45 mm behind its tip up to
    122 mm and 32 mm at 136. Its back reaches 67 mm out; the lip of the near flange, at (115, 12),
    swings to (71, 91) and passes it.
    """
    deep, ways = (12.0, 115.0, 90.0, 115.0, 12.0), (UP, UP, UP, UP)
    assert found(deep, ways, (PUNCH, TALL)).status == "none"
    order = found(deep, ways, (PUNCH, TALL, DEEP))
    assert order.status == "found"
    assert order.sequence[-1].pair == 2


def test_a_closed_box_section_cannot_be_made() -> None:
    """Whatever bend is last, a leg of two more sides closes round the punch."""
    tube = (30.0, 60.0, 60.0, 60.0, 29.0)
    order = found(tube, (UP, UP, UP, UP), ALL)
    assert order.status == "none"
    assert order.certain
    assert order.sequence == ()


def test_a_flange_against_the_overhanging_holder() -> None:
    """Web 110 and flange 90: the end swings to (12, 142), the other flange, 60, to (33, 121).

    Both are under the holder (30 or 35 mm out, from 110 mm up), so it cannot be made. A punch
    180 mm high and 16 wide under a narrow holder ends above them.
    """
    section = (90.0, 110.0, 60.0)
    assert found(section, (UP, UP)).status == "none"
    assert "holder" in hits(section, (UP, UP))
    assert found(section, (UP, UP), (TALL,), holder=NARROW).status == "found"


def test_a_spiral_is_wound_from_the_inside() -> None:
    """Every leg that is left outside must still be flat sheet when an inner bend is made.

    Flats 20, 30, 45 and 65: made from the outside, the long flats would stand round the short
    ones before those are bent, and the punch would have to come down inside them.
    """
    order = found((20.0, 30.0, 45.0, 65.0), (UP, UP, UP), ALL)
    assert order.status == "found"
    assert order.sequence[0].bend == 0
    assert order.sequence[-1].bend == 2
