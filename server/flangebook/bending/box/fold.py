"""The folded box seen from its right front corner, from above: an isometric line drawing.

Each edge is cut where a face stands between it and the viewer, so what is hidden is known line
by line. Isometric axes as in ISO 5456-3: all three equally foreshortened, drawn to true scale
along the axes.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from flangebook.bending.box.box import ENDS_OF, PAIRS, SideName
from flangebook.bending.box.pieces import placed
from flangebook.bending.box.shape import BoxShape, Section, pair_of
from flangebook.bending.geometry.ring import Point, bounds
from flangebook.bending.geometry.strip import Arc, Straight

Space = tuple[float, float, float]
Kind = Literal["edge", "bend", "hidden"]
COS30, SIN30 = math.sqrt(3.0) / 2.0, 0.5
ARC_CHORDS = 4
NEARER_MM = 1e-3
LEAST_MM = 1e-3
ON_EDGE_MM2 = 1e-6


@dataclass(frozen=True, slots=True)
class FoldLine:
    """A line of the drawing [mm of the drawing]."""

    start: Point
    end: Point
    kind: Kind


@dataclass(frozen=True, slots=True)
class FoldedView:
    """The drawing and what may be written on it.

    size_mm: overall, outside: along x, y and z. faces: outline of every flat as drawn, its side
    ("base" for the base) and its number. dimensions: from where to where and how long [mm].
    """

    lines: tuple[FoldLine, ...]
    size_mm: Space
    faces: tuple[tuple[str, int, tuple[Point, ...]], ...]
    dimensions: tuple[tuple[str, Point, Point, float], ...]


@dataclass(frozen=True, slots=True)
class _Face:
    """A flat convex face in space, and how it is drawn: outline, twice its area (above 0 when it
    runs clockwise), its box, nearness over the drawing."""

    corners: tuple[Space, ...]
    ring: tuple[Point, ...]
    turn: float
    box: tuple[float, float, float, float]
    plane: tuple[float, float, float]

    @classmethod
    def of(cls, corners: tuple[Space, ...]) -> _Face:
        """The face with these corners."""
        ring = tuple(drawn_at(p) for p in corners)
        turn = _turn(ring)
        plane = _plane(corners) if abs(turn) >= ON_EDGE_MM2 else (0.0, 0.0, 0.0)
        return cls(corners, ring, turn, bounds(ring), plane)


def drawn_at(p: Space) -> Point:
    """Where a point in space is drawn [mm].

    >>> [round(v, 3) for v in drawn_at((10.0, 0.0, 0.0))]
    [8.66, -5.0]
    """
    x, y, z = p
    return ((x + y) * COS30, (y - x) * SIN30 + z)


def _nearness(p: Space) -> float:
    """How near a point is to the viewer [mm], up to a factor."""
    return p[0] - p[1] + p[2]


def folded_view(shape: BoxShape) -> FoldedView:
    """The finished box, isometric."""
    faces: list[_Face] = []
    edges: list[tuple[Space, Space, Kind]] = []
    shown: list[tuple[str, int, tuple[Point, ...]]] = []
    _base(shape, faces, edges, shown)
    for pair in PAIRS:
        section = shape.sections.get(pair)
        if section is not None:
            for side in ENDS_OF[pair]:
                if shape.box.side(side) is not None:
                    _side(shape, section, side, faces, edges, shown)
    lines = tuple(line for edge in edges for line in _seen(edge, faces))
    corners = [p for face in faces for p in face.corners]
    low, high = ([f(p[i] for p in corners) for i in range(3)] for f in (min, max))
    size = (high[0] - low[0], high[1] - low[1], high[2] - low[2])
    return FoldedView(lines, size, tuple(shown), tuple(_dimensions(low, high)))


def _dimensions(
    low: Sequence[float], high: Sequence[float]
) -> Iterator[tuple[str, Point, Point, float]]:
    """Overall sizes along the edges nearest to the viewer."""
    (x1, y1, z1), (x2, y2, z2) = low, high
    yield "length", drawn_at((x1, y1, z1)), drawn_at((x2, y1, z1)), x2 - x1
    yield "width", drawn_at((x2, y1, z1)), drawn_at((x2, y2, z1)), y2 - y1
    yield "height", drawn_at((x2, y2, z1)), drawn_at((x2, y2, z2)), z2 - z1


def _base(
    shape: BoxShape,
    faces: list[_Face],
    edges: list[tuple[Space, Space, Kind]],
    shown: list[tuple[str, int, tuple[Point, ...]]],
) -> None:
    t = shape.box.thickness_mm
    x, y = shape.base_mm["left-right"], shape.base_mm["front-back"]
    for z in (0.0, t):
        corners = ((0.0, 0.0, z), (x, 0.0, z), (x, y, z), (0.0, y, z))
        faces.append(_Face.of(corners))
        for name, a, b in zip(("front", "right", "back", "left"), corners,
                              (*corners[1:], corners[0]), strict=True):  # fmt: skip
            side: SideName = name  # type: ignore[assignment]
            kind: Kind = "edge" if shape.box.side(side) is None else "bend"
            edges.append((a, b, kind))
    shown.append(("base", 0, tuple(drawn_at(p) for p in faces[-1].corners)))
    for (ax, ay), (bx, by), name in (
        ((0.0, 0.0), (x, 0.0), "front"), ((x, 0.0), (x, y), "right"),
        ((x, y), (0.0, y), "back"), ((0.0, y), (0.0, 0.0), "left"),
    ):  # fmt: skip
        if shape.box.side(name) is None:  # type: ignore[arg-type]
            faces.append(_Face.of(((ax, ay, 0.0), (bx, by, 0.0), (bx, by, t), (ax, ay, t))))
            edges.append(((ax, ay, 0.0), (ax, ay, t), "edge"))
            edges.append(((bx, by, 0.0), (bx, by, t), "edge"))


def _side(
    shape: BoxShape,
    section: Section,
    side: SideName,
    faces: list[_Face],
    edges: list[tuple[Space, Space, Kind]],
    shown: list[tuple[str, int, tuple[Point, ...]]],
) -> None:
    straights, arcs = placed(section.strip, section.base)
    low = side == ENDS_OF[pair_of(side)][0]
    count = section.base if low else len(straights) - 1 - section.base
    for place in range(1, count + 1):
        i = section.base - place if low else section.base + place
        bent = arcs[i if low else i - 1]
        outermost = place == count
        if bent is not None:
            along = shape.along_mm(side, place, arc=True)
            _strip(_arc_lines(bent), along, side, faces, edges, None)
        along = shape.along_mm(side, place)
        flat = _flat_lines(straights[i], shape.box.thickness_mm, low=low)
        _strip(flat, along, side, faces, edges, outermost)
        corners = _wide(flat[0][0], flat[1][0], along, side)
        shown.append((side, place, tuple(drawn_at(p) for p in corners)))


def _flat_lines(flat: Straight, thickness_mm: float, *, low: bool) -> list[tuple[Point, Point]]:
    """Inner and outer point of a flat's two ends, the one nearer to the base first."""
    ends = []
    for x, y, h in (flat.end, flat.start) if low else (flat.start, flat.end):
        dx, dy = -math.sin(h) * thickness_mm / 2.0, math.cos(h) * thickness_mm / 2.0
        ends.append(((x + dx, y + dy), (x - dx, y - dy)))
    return ends


def _arc_lines(bent: Arc) -> list[tuple[Point, Point]]:
    found = []
    for i in range(ARC_CHORDS + 1):
        inner, outer = (bent.point(i / ARC_CHORDS, r) for r in (bent.inside_mm, bent.outside_mm))
        found.append((inner, outer) if bent.sign > 0 else (outer, inner))
    return found


def _in_space(p: Point, along: float, side: SideName) -> Space:
    """A point of a section, drawn out to this place along the bend line."""
    return (p[0], along, p[1]) if pair_of(side) == "left-right" else (along, p[0], p[1])


def _wide(a: Point, b: Point, along: tuple[float, float], side: SideName) -> tuple[Space, ...]:
    start, end = along
    return (_in_space(a, start, side), _in_space(a, end, side), _in_space(b, end, side),
            _in_space(b, start, side))  # fmt: skip


def _strip(
    stations: list[tuple[Point, Point]],
    along: tuple[float, float],
    side: SideName,
    faces: list[_Face],
    edges: list[tuple[Space, Space, Kind]],
    outermost: bool | None,
) -> None:
    """Faces and edges of a flat or an arc (outermost None) between its stations."""
    for (a, a2), (b, b2) in pairwise(stations):
        for one, two in ((a, b), (a2, b2)):
            faces.append(_Face.of(_wide(one, two, along, side)))
            for end in along:
                edges.append((_in_space(one, end, side), _in_space(two, end, side), "edge"))
        for end in along:
            faces.append(_Face.of(tuple(_in_space(p, end, side) for p in (a, b, b2, a2))))
    if outermost is None:
        edges.extend(_silhouettes(stations, along, side))
        return
    ends = ((stations[0], "bend"), (stations[-1], "edge" if outermost else "bend"))
    for station, kind in ends:
        for p in station:
            known: Kind = "edge" if kind == "edge" else "bend"
            edges.append((_in_space(p, along[0], side), _in_space(p, along[1], side), known))
        for end in along:
            inner, outer = station
            edges.append((_in_space(inner, end, side), _in_space(outer, end, side), "edge"))
    if outermost:
        faces.append(_Face.of(_wide(*stations[-1], along, side)))


def _silhouettes(
    stations: list[tuple[Point, Point]], along: tuple[float, float], side: SideName
) -> Iterator[tuple[Space, Space, Kind]]:
    """Where an arc turns away from the viewer."""
    for line in zip(*stations, strict=True):
        turns = [_turn([drawn_at(p) for p in _wide(a, b, along, side)])
                 for a, b in pairwise(line)]  # fmt: skip
        for p, before, after in zip(line[1:], turns, turns[1:], strict=False):
            if before * after < 0.0:
                yield _in_space(p, along[0], side), _in_space(p, along[1], side), "edge"


def _turn(ring: Sequence[Point]) -> float:
    """Twice the area of an outline, above 0 when it runs clockwise."""
    return sum(
        (b[0] - a[0]) * (b[1] + a[1]) for a, b in zip(ring, (*ring[1:], ring[0]), strict=True)
    )


def _seen(edge: tuple[Space, Space, Kind], faces: Sequence[_Face]) -> Iterator[FoldLine]:
    """An edge in stretches, those behind a face marked hidden; hidden bend lines left out."""
    one, two, kind = edge
    start, end = drawn_at(one), drawn_at(two)
    if math.dist(start, end) < LEAST_MM:
        return
    hidden = _joined([h for face in faces if (h := _behind(one, two, face)) is not None])
    stretches: list[tuple[float, float, Kind]] = []
    at = 0.0
    for a, b in hidden:
        stretches += [(at, a, kind), (a, b, "hidden")]
        at = b
    stretches.append((at, 1.0, kind))
    length = math.dist(start, end)
    for a, b, what in stretches:
        if (b - a) * length > LEAST_MM and not (what == "hidden" and kind == "bend"):
            yield FoldLine(_between(start, end, a), _between(start, end, b), what)


def _between(one: Point, two: Point, share: float) -> Point:
    return (one[0] + (two[0] - one[0]) * share, one[1] + (two[1] - one[1]) * share)


def _joined(stretches: list[tuple[float, float]]) -> list[tuple[float, float]]:
    found: list[tuple[float, float]] = []
    for a, b in sorted(stretches):
        if found and a <= found[-1][1] + 1e-9:
            found[-1] = (found[-1][0], max(found[-1][1], b))
        else:
            found.append((a, b))
    return found


def _behind(one: Space, two: Space, face: _Face) -> tuple[float, float] | None:
    """The stretch of an edge, in shares of it, that lies behind a face."""
    ring, turn = face.ring, face.turn
    if abs(turn) < ON_EDGE_MM2:
        return None
    start, end = drawn_at(one), drawn_at(two)
    left, bottom, right, top = face.box
    if (
        max(start[0], end[0]) <= left
        or min(start[0], end[0]) >= right
        or max(start[1], end[1]) <= bottom
        or min(start[1], end[1]) >= top
    ):
        return None
    low, high = 0.0, 1.0
    for a, b in zip(ring, (*ring[1:], ring[0]), strict=True):
        nx, ny = (b[1] - a[1], a[0] - b[0]) if turn > 0 else (a[1] - b[1], b[0] - a[0])
        size = math.hypot(nx, ny)
        if size < 1e-9:
            continue
        # Inside is where the distance is above the tolerance; linear along the edge.
        at0 = ((start[0] - a[0]) * nx + (start[1] - a[1]) * ny) / size - NEARER_MM
        at1 = ((end[0] - a[0]) * nx + (end[1] - a[1]) * ny) / size - NEARER_MM
        low, high = _clip(low, high, at0, at1)
        if low >= high:
            return None
    gaps = [_depth(face.plane, drawn_at(p)) - _nearness(p) - NEARER_MM for p in (one, two)]
    low, high = _clip(low, high, gaps[0], gaps[1])
    return (low, high) if low < high else None


def _clip(low: float, high: float, at0: float, at1: float) -> tuple[float, float]:
    """The stretch where a value that goes straight from at0 to at1 is above 0."""
    if at0 <= 0.0 and at1 <= 0.0:
        return 1.0, 0.0
    if at0 > 0.0 and at1 > 0.0:
        return low, high
    crossing = at0 / (at0 - at1)
    return (low, min(high, crossing)) if at0 > 0.0 else (max(low, crossing), high)


def _plane(corners: Sequence[Space]) -> tuple[float, float, float]:
    """Nearness over the drawing: a u + b v + c."""
    points = [(*drawn_at(p), _nearness(p)) for p in corners]
    (u0, v0, w0), *others = points
    best = max(
        (
            ((u1 - u0) * (v2 - v0) - (v1 - v0) * (u2 - u0), (u1, v1, w1), (u2, v2, w2))
            for i, (u1, v1, w1) in enumerate(others)
            for u2, v2, w2 in others[i + 1 :]
        ),
        key=lambda one: abs(one[0]),
    )
    size, (u1, v1, w1), (u2, v2, w2) = best
    a = ((w1 - w0) * (v2 - v0) - (w2 - w0) * (v1 - v0)) / size
    b = ((u1 - u0) * (w2 - w0) - (u2 - u0) * (w1 - w0)) / size
    return a, b, w0 - a * u0 - b * v0


def _depth(plane: tuple[float, float, float], p: Point) -> float:
    return plane[0] * p[0] + plane[1] * p[1] + plane[2]
