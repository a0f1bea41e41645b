"""Where the back gauge goes for a bend: X, R, which end, against what.

The sheet lies on the die with its active bend flat. Whatever faces the back, nearly upright,
can stop the finger: the sheet's edge, the outer face of a finished flange, the round of a
bend that is past square. The finger has a height and a depth; at each height it would meet
whatever of the sheet reaches furthest back there, so a place counts only where that is the
face meant. Places are put in order by a rule of the trade (common practice, no source): the
fewest finished bends between, an edge before a flange, the shorter wing at the gauge so that
the operator holds the heavy side. Which end to take is the plan's to say, since turning the
part costs too.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from flangebook.bending.errors import RangeError
from flangebook.bending.faces import Against, Face, faces
from flangebook.bending.outline import bed_outline, die_outline, punch_outline
from flangebook.bending.part import Direction
from flangebook.bending.pose import End, Stroke, facing, lying, sheet_during
from flangebook.bending.ring import TOUCH_MM, bounds, furthest_x, moved
from flangebook.bending.strip import Strip, outline, trace
from flangebook.bending.tooling import Die, Point, Press, Punch, Ring

SAME_MM = 0.02
POSES = 6
SLIDE_MM = 0.2
DRAW_BACK_CLEARANCE_MM = 2.0


@dataclass(frozen=True, slots=True)
class Gauge:
    """A place for the gauge finger at one end of the part, before the bend.

    x_mm: from the tools' centre line to the finger's face [mm]. r_mm: height of the contact
    above the die's top face [mm]. contact: that point, on the sheet's outline.
    end: which end of the part is at the gauge. reachable: the finger can stand there;
    reason: in words, why or why not. bends_between: finished bends between the contact and
    the active bend; each adds its own error. finger_bottom_mm: lower edge of the finger [mm].
    rounded: the contact lies on the round of a bend, less sure than a flat face.
    draw_back_mm: how far the finger must draw back during the bend [mm]: from a few poses
    of the stroke, not a proof of clearance.
    """

    x_mm: float
    r_mm: float
    end: End
    against: Against
    reachable: bool
    reason: str
    contact: Point
    bends_between: int = 0
    finger_bottom_mm: float = 0.0
    rounded: bool = False
    draw_back_mm: float = 0.0


def gauge_options(
    strip: Strip,
    number: int,
    direction: Direction,
    press: Press,
    die: Die,
    *,
    punch: Punch | None = None,
) -> tuple[Gauge, ...]:
    """Places for the finger at both ends, best first; unreachable ones last with the reason.

    strip: part frame, earlier bends made. number: the active bend, from 1.
    punch: if given, the finger must clear it at first touch.
    """
    ends: tuple[End, ...] = ("right", "left")
    found = [g for end in ends for g in _places(strip, number, direction, end, press, die, punch)]
    return tuple(sorted(found, key=_rank))


def _rank(gauge: Gauge) -> tuple[bool, bool, int, bool, float]:
    return (
        not gauge.reachable,
        gauge.rounded,
        gauge.bends_between,
        gauge.against == "finished flange",
        gauge.x_mm,
    )


def draw_back_mm(
    gauge: Gauge,
    strip: Strip,
    number: int,
    direction: Direction,
    *,
    stroke: Stroke,
    press: Press,
    die: Die,
    punch: Punch | None = None,
) -> float:
    """How far the finger must draw back before the wing or the punch comes to it [mm].

    Looks at POSES poses of the stroke and adds a clearance; what lies between two poses is
    not looked at, so this is no proof of clearance.
    """
    faced, n = facing(strip, number, direction, gauge.end)
    low, high = gauge.finger_bottom_mm, gauge.finger_bottom_mm + press.finger_height_mm
    rings: list[Ring] = []
    for i in range(1, POSES + 1):
        try:
            rings.append(sheet_during(faced, n, stroke, die, i / POSES))
        except RangeError:
            break  # the radius fills the V; the bend's own check says so
    if punch is not None:
        tip = strip.thickness_mm - stroke.punch_depth_mm
        rings.append(moved(punch_outline(punch), 0.0, tip))
    reached = [hit[0] for ring in rings if (hit := furthest_x(ring, low, high)) is not None]
    past = max(reached, default=-math.inf) - gauge.x_mm
    return past + DRAW_BACK_CLEARANCE_MM if past > SLIDE_MM else 0.0


def _places(
    strip: Strip,
    number: int,
    direction: Direction,
    end: End,
    press: Press,
    die: Die,
    punch: Punch | None,
) -> Iterator[Gauge]:
    """One place for each face at this end, reachable or with the reason why not."""
    faced, n = facing(strip, number, direction, end)
    flat, start = lying(faced, n)
    ring = outline(flat, start)
    straights, arcs = trace(flat, start)
    tip: Ring = ()
    if punch is not None:
        tip = moved(punch_outline(punch), 0.0, strip.thickness_mm)
    for face in faces(straights, arcs, n, strip.thickness_mm / 2.0):
        tried = [_place(face, ring, bottom, end, press, die, tip)
                 for bottom in _bottoms(face, press, die)]  # fmt: skip
        yield min(tried, key=lambda g: not g.reachable)


def _bottoms(face: Face, press: Press, die: Die) -> list[float]:
    """Heights for the finger's lower edge at this face, nearest the active bend first."""
    height = press.finger_height_mm
    middle = (face.low + face.high) / 2.0
    centres = [middle]
    if face.high - face.low > height:
        rise = math.copysign(height / 2.0, face.far[1] - face.near[1])
        centres = [face.near[1] + rise, middle, face.far[1] - rise]
    floor = _floor(face.reach(face.low, face.high), press, die)
    return [max(c - height / 2.0, floor) for c in centres]


def _floor(x_mm: float, press: Press, die: Die) -> float:
    """How low the finger may go at this X: above the die, above the bed, or anywhere."""
    if x_mm < bounds(die_outline(die))[2]:
        return 0.0
    return -die.height_mm if x_mm < bounds(bed_outline(press))[2] else -math.inf


def _place(
    face: Face, ring: Ring, bottom: float, end: End, press: Press, die: Die, tip: Ring
) -> Gauge:
    """The finger at this height: where it touches, and what stands in its way."""
    top = bottom + press.finger_height_mm
    low, high = max(bottom, face.low), min(top, face.high)
    wanted = face.reach(low, high) if low <= high else face.reach(face.low, face.high)
    hit = furthest_x(ring, bottom, top) if low <= high else None
    x, r = (wanted, (face.low + face.high) / 2.0) if hit is None else (hit[0], hit[1])
    if face.upright and abs(x - wanted) < TOUCH_MM:
        r = (low + high) / 2.0
    free = low <= high and bottom >= _floor(x, press, die)
    blocked = _blocked(face, x, r, wanted, free=free, press=press)
    if not blocked and tip:
        punch_hit = furthest_x(tip, bottom, top)
        if punch_hit is not None and punch_hit[0] > x:
            blocked = "The punch is in the finger's place at first touch."
    what = "the round of a finished bend" if face.rounded else f"the {face.against}"
    reason = blocked or f"Against {what}."
    return Gauge(
        x, r, end, face.against, not blocked, reason, (x, r), face.bends_between, bottom,
        face.rounded,
    )  # fmt: skip


def _blocked(face: Face, x: float, r: float, wanted: float, *, free: bool, press: Press) -> str:
    """Why the finger can't stand there, in words; empty when it can."""
    if not free:
        return "The finger would have to stand inside the die or the bed."
    if abs(x - wanted) > SAME_MM:
        return f"The sheet itself is in the way of the {face.against}."
    if x <= 0.0:
        return "The contact lies on the operator's side of the bend line."
    if not press.gauge_x_min_mm <= x <= press.gauge_x_max_mm:
        return (
            f"X {x:.1f} mm is outside the gauge's travel, "
            f"{press.gauge_x_min_mm:g} to {press.gauge_x_max_mm:g} mm."
        )
    if not press.gauge_r_min_mm <= r <= press.gauge_r_max_mm:
        return (
            f"R {r:.1f} mm is outside the gauge's travel, "
            f"{press.gauge_r_min_mm:g} to {press.gauge_r_max_mm:g} mm."
        )
    return ""
