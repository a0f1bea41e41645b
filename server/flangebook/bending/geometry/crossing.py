"""Whether a section runs into itself: thickness counted, arcs as fine pieces.

The sheet is cut into convex pieces: one rectangle a flat, narrow wedges along each arc. Two
pieces that are no neighbours may neither overlap nor touch. Neighbours are a flat and its
bend; the two flats of one bend never meet, since their angle opens away from it (a closed
hem's lie on one another, as they should). Pieces up to three apart can share a corner when a
flat has no straight left, so for those only a true overlap counts.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from flangebook.bending.checks import Sentence, joined
from flangebook.bending.geometry.ring import Point, Ring
from flangebook.bending.geometry.strip import Arc, Straight, Strip, trace

TOUCH_MM = 1e-3
OVERLAP_MM = 1e-3
WEDGE_DEG = 5.0


@dataclass(frozen=True, slots=True)
class Meeting:
    """Two places of a section that meet. flat: number from 1 of the first flat concerned."""

    flat: int
    said: Sentence


@dataclass(frozen=True, slots=True)
class _Piece:
    """One flat or arc: its convex parts and their common bounds. index: 0 for flat 1, 1 for
    bend 1, 2 for flat 2 and so on."""

    index: int
    parts: tuple[Ring, ...]
    bounds: tuple[float, float, float, float]

    def named(self, *, first: bool = False) -> Sentence:
        number = self.index // 2 + 1
        if self.index % 2:
            return Sentence(f"{'Bend' if first else 'bend'} {{bend}}", {"bend": number})
        return Sentence("{Flat}" if first else "{flat}", {"flat": number})


def meeting(strip: Strip) -> Meeting | None:
    """The first two places of the section that overlap or touch, or None."""
    pieces = _pieces(strip)
    found: list[tuple[bool, bool, _Piece, _Piece]] = []
    for i, one in enumerate(pieces):
        for two in pieces[i + 1 :]:
            apart = two.index - one.index
            if apart == 1 or (apart == 2 and one.index % 2 == 0):
                continue
            limit = -OVERLAP_MM if apart <= 3 else TOUCH_MM
            gap = _gap(one, two, limit)
            if gap < limit:
                bend_named = bool(one.index % 2 or two.index % 2)
                found.append((bend_named, gap > -OVERLAP_MM, one, two))
    if not found:
        return None
    _, touching, one, two = min(found, key=lambda f: (f[0], f[1], f[2].index, f[3].index))
    verb = "touches" if touching else "runs into"
    said = joined(one.named(first=True), f" {verb} ", two.named())
    return Meeting(one.index // 2 + 1, said)


def _pieces(strip: Strip) -> list[_Piece]:
    straights, arcs = trace(strip)
    half = strip.thickness_mm / 2.0
    pieces = []
    for i, flat in enumerate(straights):
        if flat.length_mm > OVERLAP_MM:
            pieces.append(_piece(2 * i, (_rectangle(flat, half),)))
        if i < len(arcs):
            bent = arcs[i]
            if bent is not None:
                pieces.append(_piece(2 * i + 1, _wedges(bent)))
    return pieces


def _piece(index: int, parts: tuple[Ring, ...]) -> _Piece:
    xs = [p[0] for ring in parts for p in ring]
    ys = [p[1] for ring in parts for p in ring]
    return _Piece(index, parts, (min(xs), min(ys), max(xs), max(ys)))


def _rectangle(flat: Straight, half: float) -> Ring:
    (x1, y1, h), (x2, y2, _) = flat.start, flat.end
    dx, dy = half * math.sin(h), half * math.cos(h)
    return ((x1 + dx, y1 - dy), (x2 + dx, y2 - dy), (x2 - dx, y2 + dy), (x1 - dx, y1 + dy))


def _wedges(bent: Arc) -> tuple[Ring, ...]:
    count = max(1, math.ceil(math.degrees(abs(bent.sweep)) / WEDGE_DEG))
    rings = []
    for i in range(count):
        a, b = i / count, (i + 1) / count
        rings.append(
            (
                bent.point(a, bent.outside_mm),
                bent.point(b, bent.outside_mm),
                bent.point(b, bent.inside_mm),
                bent.point(a, bent.inside_mm),
            )
        )
    return tuple(rings)


def _gap(one: _Piece, two: _Piece, limit: float) -> float:
    """The smallest gap between the pieces' parts; inf when more than ``limit`` by bounds."""
    if _bounds_gap(one.bounds, two.bounds) > limit:
        return math.inf
    return min(_ring_gap(a, b, limit) for a in one.parts for b in two.parts)


def _bounds_gap(
    a: tuple[float, float, float, float], b: tuple[float, float, float, float]
) -> float:
    return max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3])


def _ring_gap(one: Ring, two: Ring, limit: float) -> float:
    """Gap between two convex rings along the best of their faces' normals [mm].

    Below 0 it is how far they overlap; above 0 it is at most their distance.
    """
    best = -math.inf
    for ring in (one, two):
        bx, by = ring[-1]
        for ax, ay in ring:
            nx, ny = ay - by, bx - ax
            size = math.hypot(nx, ny)
            bx, by = ax, ay
            if size < 1e-9:
                continue
            gap = _gap_along((nx / size, ny / size), one, two)
            if gap > limit:
                return gap
            best = max(best, gap)
    return best


def _gap_along(normal: Point, one: Ring, two: Ring) -> float:
    nx, ny = normal
    a = [nx * x + ny * y for x, y in one]
    b = [nx * x + ny * y for x, y in two]
    return max(min(b) - max(a), min(a) - max(b))
