"""Where the back gauge goes for a bend: X, R, which end, against what.

The sheet lies on the die with its active bend flat. Which faces of it can stop the finger, at
what height and which is the best is said by one compiled rule, the same for a plan as for the
search for its order (``ordering.gauge_rule``); here it is asked for one step and put in words,
and X and R are measured on the outline that is drawn. The order of the places is common practice
without a source: the fewest finished bends between, an edge before a flange, the shorter leg at
the gauge so that the operator holds the heavy side. Which end to take is the plan's to say,
since turning the part costs too.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cmp_to_key

import numpy as np

from flangebook.bending.checks import Sentence
from flangebook.bending.clearance.problem import RIGHT, Floats
from flangebook.bending.geometry.faces import Against
from flangebook.bending.geometry.ring import Point, Ring, furthest_x
from flangebook.bending.geometry.strip import Strip, outline
from flangebook.bending.motion.lying import Stroke, facing, lying
from flangebook.bending.ordering.finger_place import (
    CAN_STAND,
    IN_FRONT,
    INSIDE_TOOLS,
    R_RANGE,
    SAME_MM,
    SHEET_IN_WAY,
    TIE_MM,
    TOOL_IN_WAY,
)
from flangebook.bending.ordering.gauge_rule import (
    BETWEEN,
    BOTTOM,
    COLUMNS,
    EDGE,
    KIND,
    ROUNDED,
    WHY,
    R,
    X,
    gauge_places,
)
from flangebook.bending.ordering.one_leg import ALL_MADE, BEND, back_leg
from flangebook.bending.ordering.retract import reach_through_bend
from flangebook.bending.part.part import Direction, End
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

SLIDE_MM = 0.2
"""The sheet may slide by so much on the finger before it has to go."""
RETRACT_CLEARANCE_MM = 2.0


@dataclass(frozen=True, slots=True)
class Gauge:
    """A place for the gauge finger at one end of the part, before the bend.

    x_mm: from the tools' centre line to the finger's face [mm]. r_mm: height of the contact
    above the die's top face [mm]. contact: that point, on the sheet's outline.
    end: which end of the part is at the gauge. reachable: the finger can stand there;
    reason: why or why not. bends_between: finished bends between the contact and
    the active bend; each adds its own error. finger_bottom_mm: lower edge of the finger [mm].
    rounded: the contact lies on the round of a bend, less sure than a flat face.
    retract_mm: how far the finger must retract during the bend [mm], a clearance included.
    """

    x_mm: float
    r_mm: float
    end: End
    against: Against
    reachable: bool
    reason: Sentence
    contact: Point
    bends_between: int = 0
    finger_bottom_mm: float = 0.0
    rounded: bool = False
    retract_mm: float = 0.0


def gauge_options(
    strip: Strip,
    number: int,
    direction: Direction,
    press: Press,
    die: Die,
    *,
    punch: Punch | None = None,
    holder: Holder | None = None,
) -> tuple[Gauge, ...]:
    """Places for the finger at both ends, best first; unreachable ones last with the reason.

    strip: part frame, earlier bends made. number: the active bend, from 1.
    punch: if given, the finger must clear it at first touch, and holder and ram above it.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
    """
    ends: tuple[End, ...] = ("right", "left")
    found = [
        gauge
        for end in ends
        for gauge in _places(*facing(strip, number, direction, end), end, press, die, holder, punch)
    ]
    return tuple(sorted(found, key=cmp_to_key(_compared)))


def _compared(one: Gauge, other: Gauge) -> int:
    """Below 0 when the first is the better; what differs by rounding alone is equal."""
    first, second = _rank(one), _rank(other)
    if first != second:
        return -1 if first < second else 1
    apart = one.x_mm - other.x_mm
    return 0 if abs(apart) <= TIE_MM else int(math.copysign(1.0, apart))


def _rank(gauge: Gauge) -> tuple[bool, bool, int, bool]:
    return (
        not gauge.reachable,
        gauge.rounded,
        gauge.bends_between,
        gauge.against == "finished flange",
    )


def retract_mm(
    gauge: Gauge,
    strip: Strip,
    number: int,
    direction: Direction,
    *,
    stroke: Stroke,
    press: Press,
    die: Die,
    punch: Punch | None = None,
    holder: Holder | None = None,
) -> float:
    """How far the finger must retract before the leg or the punch comes to it [mm].

    The whole stroke is looked at, and a clearance added. 0 where nothing comes to it.

    Source: own method; the clearance is common practice, no source.

    >>> from flangebook.bending.samples import BRAKE, V16, Z_STRIP
    >>> gauges = gauge_options(Z_STRIP, 1, "up", BRAKE, V16)
    >>> at_flange = next(one for one in gauges if one.against == "finished flange")
    >>> how = {"stroke": Stroke(88.0, 2.0, 4.1, 6.4), "press": BRAKE, "die": V16}
    >>> round(retract_mm(at_flange, Z_STRIP, 1, "up", **how), 1)
    8.3
    """
    faced, n = facing(strip, number, direction, gauge.end)
    theta = math.radians(180.0 - stroke.included_angle_deg) / 2.0
    motion = (theta, stroke.inside_radius_mm, stroke.allowance_mm, stroke.punch_depth_mm)
    leg = back_leg(faced, n, press, die, holder=holder, punch=punch, motion=motion)
    low, high = gauge.finger_bottom_mm, gauge.finger_bottom_mm + press.finger_height_mm
    past = reach_through_bend(leg, BEND, RIGHT, 0, ALL_MADE, low, high) - gauge.x_mm
    return past + RETRACT_CLEARANCE_MM if past > SLIDE_MM else 0.0


def _places(
    faced: Strip,
    number: int,
    end: End,
    press: Press,
    die: Die,
    holder: Holder | None,
    punch: Punch | None,
) -> Iterator[Gauge]:
    """One place for each face at this end, reachable or with the reason why not."""
    leg = back_leg(faced, number, press, die, holder=holder, punch=punch)
    places = np.empty((2 * len(leg.at), COLUMNS))
    count = gauge_places(leg, BEND, RIGHT, 0, ALL_MADE, places)
    ring = outline(*lying(faced, number))
    for place in places[:count]:
        yield _gauge(place, ring, end, press)


def _gauge(place: Floats, ring: Ring, end: End, press: Press) -> Gauge:
    """A place as measured on the sheet's outline, in words."""
    why, kind, between = int(place[WHY]), int(place[KIND]), int(place[BETWEEN])
    x, r, bottom = float(place[X]), float(place[R]), float(place[BOTTOM])
    if why == CAN_STAND:
        met = furthest_x(ring, bottom, bottom + press.finger_height_mm)
        if met is None or met[0] > x + SAME_MM:
            why = SHEET_IN_WAY  # the other leg
        elif kind == ROUNDED or abs(met[0] - x) > TIE_MM:
            x, r = met[0], met[1]
    against: Against = "flat edge" if kind == EDGE else "finished flange"
    what = "the round of a finished bend" if kind == ROUNDED else f"the {against}"
    stands = Sentence(f"Against {what}.")
    reason = stands if why == CAN_STAND else _blocked(why, against, x, r, press)
    return Gauge(
        x, r, end, against, why == CAN_STAND, reason, (x, r), between, bottom, kind == ROUNDED
    )


def _blocked(why: int, against: Against, x: float, r: float, press: Press) -> Sentence:
    """Why the finger can't stand there."""
    if why == INSIDE_TOOLS:
        return Sentence("The finger would have to stand inside the die or the bed.")
    if why == SHEET_IN_WAY:
        return Sentence(f"The sheet itself is in the way of the {against}.")
    if why == IN_FRONT:
        return Sentence("The contact lies on the operator's side of the bend line.")
    if why == TOOL_IN_WAY:
        return Sentence("The punch or what holds it is in the finger's place at first touch.")
    name, at, low, high = "X", x, press.gauge_x_min_mm, press.gauge_x_max_mm
    if why == R_RANGE:
        name, at, low, high = "R", r, press.gauge_r_min_mm, press.gauge_r_max_mm
    return Sentence(
        f"{name} {{at_mm}} is outside the gauge's travel, {{least_mm}} to {{most_mm}}.",
        {"at_mm": at, "least_mm": low, "most_mm": high},
    )
