"""Which end of the part goes to the gauge in each step.

Room for the hands first, then fewest turns; a heavy side at the gauge and finished bends
between gauge and line cost a little. Costs as for the order of bends: turn over 3, turn end
for end 2, both 4.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from flangebook.bending.motion.gauging import Gauge
from flangebook.bending.ordering.cost import HAND_DISTANCE_MM
from flangebook.bending.part.part import Direction, End

TURN_OVER, TURN_END, TURN_BOTH = 3.0, 2.0, 4.0
HEAVY_SIDE, BEND_BETWEEN, ROUND_CONTACT = 1.5, 0.4, 1.0
NO_ROOM_FOR_HANDS = 4.0
NOTHING_TO_HOLD = 40.0
NO_GAUGE = 60.0
ENDS: tuple[End, End] = ("left", "right")


def end_cost(gauge: Gauge | None, share_behind: float, hand_room_mm: float) -> float:
    """What speaks against gauging at an end.

    gauge: the best place there, None without a reachable one. share_behind: of the blank's
    length that lies behind the bend line then [0 to 1]. hand_room_mm: what is left to hold in
    front of the die [mm].
    """
    short = max(0.0, 1.0 - max(hand_room_mm, 0.0) / HAND_DISTANCE_MM)
    short_cost = NO_ROOM_FOR_HANDS * short + (NOTHING_TO_HOLD if hand_room_mm <= 0.0 else 0.0)
    heavy = short_cost + HEAVY_SIDE * max(0.0, 2.0 * share_behind - 1.0)
    if gauge is None:
        return NO_GAUGE + heavy
    rounded = ROUND_CONTACT if gauge.rounded else 0.0
    return heavy + BEND_BETWEEN * gauge.bends_between + rounded


def choose_ends(directions: Sequence[Direction], costs: Sequence[Mapping[End, float]]) -> list[End]:
    """The end at the gauge for each step, of least total cost."""
    best: dict[End, tuple[float, list[End]]] = {e: (costs[0][e], [e]) for e in ENDS}
    for i in range(1, len(costs)):
        over = directions[i] != directions[i - 1]
        after: dict[End, tuple[float, list[End]]] = {}
        for end in ENDS:
            ways = ((best[e][0] + turn_cost(over=over, end=e != end), best[e][1]) for e in ENDS)
            least, path = min(ways, key=lambda way: way[0])
            after[end] = (least + costs[i][end], [*path, end])
        best = after
    return min(best.values(), key=lambda way: way[0])[1]


def turn_cost(*, over: bool, end: bool) -> float:
    """What turning the part costs between two steps."""
    if over and end:
        return TURN_BOTH
    return TURN_OVER if over else TURN_END if end else 0.0
