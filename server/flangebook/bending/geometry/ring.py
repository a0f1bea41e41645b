"""Closed rings of points: moving, measuring, checking that they do not cross themselves."""

from __future__ import annotations

import math
from collections.abc import Iterable

from flangebook.bending.errors import OutlineError

Point = tuple[float, float]
Ring = tuple[Point, ...]
CHORD_ERROR_MM = 0.005
TOUCH_MM = 1e-6


def moved(ring: Ring, x_mm: float, y_mm: float) -> Ring:
    """The ring moved by (x, y).

    >>> moved(((0.0, 0.0), (1.0, 0.0), (1.0, 1.0)), 2.0, -1.0)
    ((2.0, -1.0), (3.0, -1.0), (3.0, 0.0))
    """
    return tuple((px + x_mm, py + y_mm) for px, py in ring)


def mirrored(ring: Ring) -> Ring:
    """The ring mirrored in x, running the same way round.

    >>> mirrored(((0.0, 0.0), (1.0, 0.0), (1.0, 1.0)))
    ((-1.0, 1.0), (-1.0, 0.0), (0.0, 0.0))
    """
    return tuple((0.0 - x, y) for x, y in reversed(ring))


def box(left: float, bottom: float, right: float, top: float) -> Ring:
    """A rectangle as a ring, counter-clockwise."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def bounds(ring: Ring) -> tuple[float, float, float, float]:
    """Smallest x, smallest y, largest x, largest y of the points [mm].

    Source: definition.

    >>> bounds(((0.0, 0.0), (4.0, 0.0), (4.0, 2.0)))
    (0.0, 0.0, 4.0, 2.0)
    """
    xs, ys = [p[0] for p in ring], [p[1] for p in ring]
    return (min(xs), min(ys), max(xs), max(ys))


def area(ring: Ring) -> float:
    """Area inside the ring [mm2], negative when it runs clockwise.

    Source: Gauss's area formula (from memory).

    >>> area(((0.0, 0.0), (4.0, 0.0), (4.0, 2.0)))
    4.0
    """
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return sum(ax * by - bx * ay for (ax, ay), (bx, by) in pairs) / 2.0


def centre(ring: Ring) -> Point:
    """Centre of the area inside the ring [mm].

    >>> centre(box(0.0, 0.0, 2.0, 4.0))
    (1.0, 2.0)
    """
    x = y = twice = 0.0
    for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True):
        cross = ax * by - bx * ay
        x, y, twice = x + (ax + bx) * cross, y + (ay + by) * cross, twice + cross
    return x / (3.0 * twice), y / (3.0 * twice)


def counter_clockwise(ring: Ring) -> Ring:
    """The same ring, running counter-clockwise."""
    return ring if area(ring) > 0 else ring[::-1]


def chords(radius_mm: float, sweep_deg: float, error_mm: float = CHORD_ERROR_MM) -> int:
    """How many chords follow an arc to within ``error_mm``; even, so its middle is a point."""
    if radius_mm <= error_mm:
        return 2
    each = 2.0 * math.acos(1.0 - error_mm / radius_mm)
    return 2 * max(1, math.ceil(math.radians(abs(sweep_deg)) / each / 2.0))


def arc(centre: Point, radius_mm: float, start_deg: float, end_deg: float) -> list[Point]:
    """Points on an arc, both ends included; the centre alone for radius 0."""
    if radius_mm <= 0.0:
        return [centre]
    count = chords(radius_mm, end_deg - start_deg)
    turns = [math.radians(start_deg + (end_deg - start_deg) * i / count) for i in range(count + 1)]
    return [
        (centre[0] + radius_mm * math.cos(a), centre[1] + radius_mm * math.sin(a)) for a in turns
    ]


def tidy(points: Iterable[Point]) -> Ring:
    """The points as a ring, without repeats."""
    kept: list[Point] = []
    for p in points:
        if not kept or math.dist(p, kept[-1]) > 1e-9:
            kept.append(p)
    if len(kept) > 1 and math.dist(kept[0], kept[-1]) <= 1e-9:
        kept.pop()
    return tuple(kept)


def furthest_x(ring: Ring, low_mm: float, high_mm: float) -> tuple[float, float, float] | None:
    """The largest x of the ring at heights from low to high, its lowest and highest place [mm].

    None when the ring has nothing there.

    Source: plane geometry.

    >>> furthest_x(box(0.0, 0.0, 5.0, 2.0), 1.0, 9.0)
    (5.0, 1.0, 2.0)
    """
    best, lowest, highest = -math.inf, 0.0, 0.0
    bx, by = ring[-1]
    for ax, ay in ring:
        low, high = (ay, by) if ay < by else (by, ay)
        if high >= low_mm and low <= high_mm and max(ax, bx) >= best - TOUCH_MM:
            for x, y in _clipped(ax, ay, bx, by, low_mm, high_mm):
                if x > best + TOUCH_MM:
                    best, lowest, highest = x, y, y
                elif x > best - TOUCH_MM:
                    lowest, highest = min(lowest, y), max(highest, y)
        bx, by = ax, ay
    return None if best == -math.inf else (best, lowest, highest)


def _clipped(
    ax: float, ay: float, bx: float, by: float, low: float, high: float
) -> tuple[Point, Point]:
    """Both ends of a segment after cutting it to heights from low to high."""
    if ay == by:
        return ((ax, ay), (bx, by))
    slope = (bx - ax) / (by - ay)
    y1, y2 = min(max(ay, low), high), min(max(by, low), high)
    return ((ax + slope * (y1 - ay), y1), (ax + slope * (y2 - ay), y2))


def check_simple(ring: Ring, where: str = "points_mm") -> None:
    """Refuse an outline that crosses or touches itself, naming the edges.

    Edge n runs from point n to the next, counted from 1; the last closes the outline.

    Raises:
        OutlineError: fewer than three points, a point twice running, no area, edges that meet.
    """
    if len(ring) < 3:
        raise OutlineError(
            f"An outline of {len(ring)} points encloses nothing.", where, "Give at least three.",
            code="too-few-points", lines_mm=(ring,) if ring else (),
        )  # fmt: skip
    if not all(math.isfinite(c) for p in ring for c in p):
        raise OutlineError(
            "A point is not a number.", where, "Give x and y in mm.", code="not-a-number"
        )
    count = len(ring)
    for i in range(count):
        if math.dist(ring[i], ring[(i + 1) % count]) <= TOUCH_MM:
            raise OutlineError(
                f"Points {i + 1} and {(i + 1) % count + 1} are the same.",
                where,
                "Leave one out; the last point need not repeat the first.",
                code="same-point",
                lines_mm=(ring,),
                edges=(i + 1,),
                marks_mm=(ring[i],),
            )
    crossing = first_crossing(ring)
    if crossing is not None:
        raise OutlineError(
            f"Edge {crossing[0]} meets edge {crossing[1]}.",
            where,
            "Go round the outline in order so that no edge meets another but its neighbours.",
            code="crossing",
            lines_mm=(ring,),
            edges=crossing,
            marks_mm=(_meeting(ring, *crossing),),
        )
    if abs(area(ring)) <= TOUCH_MM:
        raise OutlineError(
            "The outline encloses no area.", where, "Go once round the tool.",
            code="no-area", lines_mm=(ring,),
        )  # fmt: skip


def first_crossing(ring: Ring) -> tuple[int, int] | None:
    """Numbers, from 1, of the first two edges that meet where they should not.

    >>> first_crossing(((0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0)))
    (1, 3)
    """
    edges = list(zip(ring, (*ring[1:], ring[0]), strict=True))
    count = len(edges)
    for i in range(count):
        for j in range(i + 1, count):
            if j == i + 1 or (i == 0 and j == count - 1):
                if _folds_back(edges[i], edges[j], last_first=i == 0 and j == count - 1 > 1):
                    return (i + 1, j + 1)
            elif _segments_meet(*edges[i], *edges[j]):
                return (i + 1, j + 1)
    return None


def _meeting(ring: Ring, one: int, other: int) -> Point:
    """Where two edges meet; where they lie on each other, the middle of what they share."""
    a, b = ring[one - 1], ring[one % len(ring)]
    c, d = ring[other - 1], ring[other % len(ring)]
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]
    cross = ux * vy - uy * vx
    if abs(cross) > 1e-9 * math.hypot(ux, uy) * math.hypot(vx, vy):
        share = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / cross
        return (a[0] + share * ux, a[1] + share * uy)
    along = sorted((a, b, c, d), key=lambda p: (p[0] - a[0]) * ux + (p[1] - a[1]) * uy)
    return ((along[1][0] + along[2][0]) / 2.0, (along[1][1] + along[2][1]) / 2.0)


def _folds_back(one: tuple[Point, Point], two: tuple[Point, Point], *, last_first: bool) -> bool:
    """Whether the second of two neighbouring edges runs back along the first."""
    if last_first:
        one, two = two, one
    (a, b), (_, c) = one, two
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]
    size = math.hypot(ux, uy) * math.hypot(vx, vy)
    return abs(ux * vy - uy * vx) <= 1e-9 * size and ux * vx + uy * vy < 0


def _segments_meet(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether segments a-b and c-d share a point."""
    if max(a[0], b[0]) < min(c[0], d[0]) or max(c[0], d[0]) < min(a[0], b[0]):
        return False
    if max(a[1], b[1]) < min(c[1], d[1]) or max(c[1], d[1]) < min(a[1], b[1]):
        return False
    return _side(a, b, c) * _side(a, b, d) <= 0 and _side(c, d, a) * _side(c, d, b) <= 0


def _side(a: Point, b: Point, p: Point) -> float:
    """Which side of the line a-b the point lies on: -1, 0 or 1."""
    cross = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
    return 0.0 if abs(cross) <= 1e-9 * (1 + math.dist(a, b)) else math.copysign(1.0, cross)
