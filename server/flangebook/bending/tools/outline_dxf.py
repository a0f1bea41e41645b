"""A tool's outline out of a DXF drawing: the one closed line in it, placed where tools stand.

Ends within ``JOIN_MM`` belong together. Arcs and curves become chords within ``WITHIN_MM``. The
rules for where (0, 0) lies are stated in ``RULES``; the user may choose otherwise.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.errors import OutlineError
from flangebook.bending.geometry.dxf_lines import (
    CURVE_ERROR_MM,
    Drawing,
    DrawnLine,
    Unit,
    read_lines,
)
from flangebook.bending.geometry.join_lines import joined
from flangebook.bending.geometry.ring import (
    Point,
    Ring,
    area,
    bounds,
    check_simple,
    counter_clockwise,
    mirrored,
    moved,
)
from flangebook.bending.tools.v_notch import LEVEL_MM, middle, widest_mouth

Kind = Literal["punch", "die", "holder", "ram", "bed", "die_holder"]
Origin = Literal["rule", "drawn", "point"]
WITHIN_MM = 0.01
MOST_POINTS = 400
LARGEST_MM, SMALLEST_MM = 5_000.0, 1.0
RULES: dict[Kind, str] = {
    "punch": "The tip is the middle of the lowest points.",
    "die": "The V is the widest opening in the top face; its middle is x 0, the top face y 0.",
    "holder": "The punch's seat is the lowest level; its middle is x 0.",
    "ram": "The face that carries the holder is the lowest level; its middle is x 0.",
    "bed": "The face that carries the die is the highest level; its middle is x 0.",
    "die_holder": "The face that carries the die is the highest level; its middle is x 0.",
}


@dataclass(frozen=True, slots=True)
class Taken:
    """An outline taken from a drawing. moved_mm: how far the drawing was moved to place it,
    after turning. words: by which rule."""

    ring: Ring
    drawing: Drawing
    moved_mm: Point
    words: str


@dataclass(frozen=True, slots=True)
class Placing:
    """How an outline is to lie. turn_deg: a multiple of 90, counter-clockwise. point: number,
    from 1, of the point that is to be (0, 0)."""

    kind: Kind
    origin: Origin = "rule"
    point: int | None = None
    turn_deg: int = 0
    mirror: bool = False


def outline_from_dxf(
    data: bytes, placing: Placing, unit: Unit | None = None, layer: str | None = None
) -> Taken:
    """The outline in a DXF drawing.

    Args:
        data: the file.
        placing: where its (0, 0) is.
        unit: what one unit of the drawing is; None: as its header says.
        layer: take only what lies on it.

    Raises:
        OutlineError: broken file, unknown unit, no outline, open, crossing, a hole, more than one,
            too large or too many points; with what was understood of it.
    """
    drawing = read_lines(data, unit)
    try:
        ring = _one_ring([p for p in drawing.pieces if layer in (None, p.layer)])
    except OutlineError as error:
        error.layers = drawing.layers
        raise
    ring = _turned(ring, placing)
    origin, words = _origin(ring, placing)
    shift = (0.0 - origin[0], 0.0 - origin[1])
    return Taken(moved(ring, *shift), drawing, shift, words)


def _one_ring(pieces: Sequence[DrawnLine]) -> Ring:
    rings = sorted(joined([p.points for p in pieces]), key=lambda r: -abs(area(r)))
    if not rings:
        raise OutlineError(
            "There is no line in the drawing that could be an outline.", "",
            "Draw the section with lines, arcs or polylines.", code="no-outline",
        )  # fmt: skip
    if len(rings) > 1:
        raise _several(rings)
    ring = _fewer(counter_clockwise(rings[0]))
    left, low, right, high = bounds(ring)
    longest, shortest = max(right - left, high - low), min(right - left, high - low)
    if longest > LARGEST_MM:
        raise OutlineError(
            "The outline is {across_mm} across.", "units",
            "No tool is that large: check the drawing's units.",
            numbers={"across_mm": longest}, code="too-large", lines_mm=(ring,),
        )  # fmt: skip
    if shortest < SMALLEST_MM:
        raise OutlineError(
            "The outline is only {across_mm} across.", "units",
            "No tool is that small: check the drawing's units.",
            numbers={"across_mm": shortest}, code="too-small", lines_mm=(ring,),
        )  # fmt: skip
    if len(ring) > MOST_POINTS:
        raise OutlineError(
            f"The outline needs {len(ring)} points.", "",
            f"At most {MOST_POINTS}: leave out what does not matter for clearance.",
            code="too-many-points", lines_mm=(ring[:: math.ceil(len(ring) / MOST_POINTS)],),
        )  # fmt: skip
    check_simple(ring, "")
    return ring


def _several(rings: Sequence[Ring]) -> OutlineError:
    """Holes in one outline, or several outlines."""
    drawn = tuple(_fewer(r)[:MOST_POINTS] for r in rings[:20])
    marks = tuple(ring[0] for ring in drawn[1:])
    if all(_inside(ring[0], rings[0]) for ring in rings[1:]):
        return OutlineError(
            f"The outline has {'a hole' if len(rings) == 2 else f'{len(rings) - 1} holes'} in it.",
            "", "Leave holes out, or choose the outline's own layer.",
            code="hole", lines_mm=drawn, marks_mm=marks,
        )  # fmt: skip
    return OutlineError(
        f"There are {len(rings)} outlines in the drawing.", "",
        "Save one tool by itself, or choose its layer.",
        code="more-than-one", lines_mm=drawn, marks_mm=marks,
    )  # fmt: skip


def _inside(point: Point, ring: Ring) -> bool:
    """Whether a point lies in the ring, by the edges that a line to the right crosses."""
    x, y = point
    crossed = 0
    for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True):
        if (ay > y) != (by > y) and x < ax + (y - ay) * (bx - ax) / (by - ay):
            crossed += 1
    return crossed % 2 == 1


def _fewer(ring: Ring) -> Ring:
    """The ring without points that lie on its line within what the chords leave of WITHIN_MM;
    a point of an arc's chords lies further off than that."""
    first = min(range(len(ring)), key=lambda i: ring[i])
    ring = (*ring[first:], *ring[:first])
    far = max(range(len(ring)), key=lambda i: math.dist(ring[0], ring[i]))
    there, back = ring[: far + 1], (*ring[far:], ring[0])
    return (*_thinned(there)[:-1], *_thinned(back)[:-1])


def _thinned(line: Ring) -> list[Point]:
    """Douglas and Peucker's rule (Cartographica 10 (1973) 112-122), without recursion."""
    allowed = WITHIN_MM - CURVE_ERROR_MM - 0.001
    keep = {0, len(line) - 1}
    spans = [(0, len(line) - 1)]
    while spans:
        i, j = spans.pop()
        worst, at = 0.0, 0
        for k in range(i + 1, j):
            off = _off_line(line[k], line[i], line[j])
            if off > worst:
                worst, at = off, k
        if worst > allowed:
            keep.add(at)
            spans += [(i, at), (at, j)]
    return [line[k] for k in sorted(keep)]


def _off_line(p: Point, a: Point, b: Point) -> float:
    """How far a point lies from the segment a-b."""
    ux, uy = b[0] - a[0], b[1] - a[1]
    size = ux * ux + uy * uy
    share = ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / size if size else 0.0
    share = min(max(share, 0.0), 1.0)
    return math.dist(p, (a[0] + share * ux, a[1] + share * uy))


def _turned(ring: Ring, placing: Placing) -> Ring:
    for _ in range(placing.turn_deg // 90 % 4):
        ring = tuple((0.0 - y, x) for x, y in ring)
    return mirrored(ring) if placing.mirror else ring


def _origin(ring: Ring, placing: Placing) -> tuple[Point, str]:
    """The point that is to be (0, 0), and by what rule."""
    if placing.origin == "drawn":
        return (0.0, 0.0), "As drawn: (0, 0) of the drawing."
    if placing.origin == "point":
        number = placing.point or 0
        if not 1 <= number <= len(ring):
            raise OutlineError(
                f"The outline has points 1 to {len(ring)}.", "point", "Give one of them.",
                code="no-such-point", lines_mm=(ring,),
            )  # fmt: skip
        return ring[number - 1], f"Point {number} was chosen."
    _, low, _, high = bounds(ring)
    if placing.kind == "die":
        found = widest_mouth(ring)
        if found is None:
            raise OutlineError(
                "There is no V in the outline's top face.", "origin",
                "Turn the drawing so that the V is up, or choose the point that is 0, 0.",
                code="no-v", lines_mm=(ring,),
            )  # fmt: skip
        return ((found[0] + found[1]) / 2.0, high), RULES["die"]
    if placing.kind in ("bed", "die_holder"):
        xs = [x for x, y in ring if y >= high - LEVEL_MM]
        return ((min(xs) + max(xs)) / 2.0, high), RULES[placing.kind]
    return (middle(ring), low), RULES[placing.kind]
