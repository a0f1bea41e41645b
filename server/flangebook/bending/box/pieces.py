"""The folded sides of a box as convex pieces, and whether two of them run into one another.

A piece of a side is a convex outline in its section, drawn out along the bend line. Two such
pieces, one drawn out along x and one along y, share room exactly if there is a height at which
the first reaches far enough in x and the second far enough in y: so two plane clippings decide.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending.geometry.ring import Point, Ring, chords
from flangebook.bending.geometry.strip import Arc, Pose, Straight, Strip, trace

CHORD_ERROR_MM = 0.02
LEAST_OVERLAP_MM = 1e-6


@dataclass(frozen=True, slots=True)
class FoldedPiece:
    """A flat or an arc of a folded section. flat: 0 for the base, from 1 outwards, negative
    towards the section's left end. arc: whether it is the bend between that flat and the one
    before it. ring: convex, in the section [mm], the base's inside up."""

    flat: int
    arc: bool
    ring: Ring


def placed(strip: Strip, base: int, at_mm: float = 0.0) -> tuple[list[Straight], list[Arc | None]]:
    """The strip with its base along +x, underside on y = 0, the base's straight from x = at_mm.

    base: index of the base among the flats.
    """
    straights, _ = trace(strip)
    x, y, h = straights[base].start
    cos, sin = math.cos(h), math.sin(h)
    start: Pose = (at_mm - (x * cos + y * sin), strip.thickness_mm / 2 - (y * cos - x * sin), -h)
    lying, arcs = trace(strip, start)
    return list(lying), list(arcs)


def pieces(strip: Strip, base: int, at_mm: float = 0.0) -> tuple[FoldedPiece, ...]:
    """All flats and arcs of a folded section, the base lying from x = at_mm."""
    straights, arcs = placed(strip, base, at_mm)
    half = strip.thickness_mm / 2.0
    found: list[FoldedPiece] = []
    for i, flat in enumerate(straights):
        if flat.length_mm > LEAST_OVERLAP_MM:
            found.append(FoldedPiece(i - base, False, _flat(flat, half)))
    for i, bent in enumerate(arcs):
        if bent is not None:
            number = i - base if i < base else i + 1 - base
            found.append(FoldedPiece(number, True, _arc(bent)))
    return tuple(found)


def _flat(flat: Straight, half: float) -> Ring:
    (x, y, h), (x2, y2, _) = flat.start, flat.end
    dx, dy = -half * math.sin(h), half * math.cos(h)
    return ((x - dx, y - dy), (x2 - dx, y2 - dy), (x2 + dx, y2 + dy), (x + dx, y + dy))


def _arc(bent: Arc) -> Ring:
    """The arc with its hollow side filled: a little more than is there."""
    count = chords(bent.outside_mm, math.degrees(bent.sweep), CHORD_ERROR_MM)
    outer = [bent.point(i / count, bent.outside_mm) for i in range(count + 1)]
    return (*outer, bent.point(1.0, bent.inside_mm), bent.point(0.0, bent.inside_mm))


def clipped(ring: Sequence[Point], axis: int, least: float | None, most: float | None) -> Ring:
    """The part of a convex outline where coordinate ``axis`` lies between the two."""
    kept = tuple(ring)
    if least is not None:
        kept = _half(kept, axis, least, 1.0)
    if most is not None:
        kept = _half(kept, axis, most, -1.0)
    return kept


def _half(ring: Ring, axis: int, limit: float, sign: float) -> Ring:
    found: list[Point] = []
    for one, two in zip(ring, (*ring[1:], *ring[:1]), strict=True):
        a, b = sign * (one[axis] - limit), sign * (two[axis] - limit)
        if a >= 0.0:
            found.append(one)
        if (a > 0.0 > b) or (a < 0.0 < b):
            share = a / (a - b)
            found.append((one[0] + share * (two[0] - one[0]), one[1] + share * (two[1] - one[1])))
    return tuple(found)


def reach(piece: Ring, piece_from_mm: float, other: Ring) -> float | None:
    """How far a piece reaches inwards where one of the neighbouring side is in its way [mm].

    piece, other: outlines in their own sections, their first coordinate inwards from the corner.
    piece_from_mm: where along the other's first coordinate the piece, drawn out, begins. The
    two stay apart when the other begins at least here along the piece's first coordinate.
    None where they can never meet.

    Source: plane geometry.

    >>> lip = ((0.0, 10.0), (8.0, 10.0), (8.0, 12.0), (0.0, 12.0))
    >>> wall = ((0.0, 0.0), (2.0, 0.0), (2.0, 30.0), (0.0, 30.0))
    >>> reach(lip, 1.0, wall)
    8.0
    >>> reach(lip, 5.0, wall) is None
    True
    """
    met = clipped(other, 0, piece_from_mm + LEAST_OVERLAP_MM, None)
    if not met:
        return None
    low, high = min(p[1] for p in met), max(p[1] for p in met)
    if high - low <= LEAST_OVERLAP_MM:
        return None
    there = clipped(piece, 1, low + LEAST_OVERLAP_MM, high - LEAST_OVERLAP_MM)
    return max((p[0] for p in there), default=None)
