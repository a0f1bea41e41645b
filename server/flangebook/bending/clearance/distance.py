"""Distances between edges."""

from __future__ import annotations

import math
from typing import NamedTuple

from flangebook.bending.clearance.problem import Floats
from flangebook.bending.compiled import kernel


class Edge(NamedTuple):
    """A straight edge from a to b [mm]."""

    ax: float
    ay: float
    bx: float
    by: float


class Bounds(NamedTuple):
    """The upright rectangle that something lies in [mm]."""

    left: float
    bottom: float
    right: float
    top: float


@kernel
def edge_at(edges: Floats, i: int) -> Edge:
    """Row i of an array of edges."""
    return Edge(edges[i, 0], edges[i, 1], edges[i, 2], edges[i, 3])


@kernel
def stretch_at(points: Floats, i: int) -> Edge:
    """From point i of a line to the one after it."""
    return Edge(points[i, 0], points[i, 1], points[i + 1, 0], points[i + 1, 1])


@kernel
def to_edge2(px: float, py: float, edge: Edge) -> float:
    """Squared distance of a point to an edge [mm2].

    Source: plane geometry.

    >>> to_edge2(5.0, 3.0, Edge(0.0, 0.0, 10.0, 0.0))
    9.0
    """
    ax, ay, bx, by = edge
    dx, dy = bx - ax, by - ay
    length2 = dx * dx + dy * dy
    share = 0.0
    if length2 > 0.0:
        share = min(1.0, max(0.0, ((px - ax) * dx + (py - ay) * dy) / length2))
    ex, ey = px - ax - share * dx, py - ay - share * dy
    return ex * ex + ey * ey


@kernel
def between_edges(one: Edge, two: Edge) -> float:
    """Distance between two edges [mm]; 0 where they cross.

    Source: plane geometry.

    >>> between_edges(Edge(0.0, 0.0, 10.0, 0.0), Edge(4.0, 3.0, 4.0, 9.0))
    3.0
    >>> between_edges(Edge(0.0, 0.0, 10.0, 0.0), Edge(4.0, -3.0, 4.0, 9.0))
    0.0
    """
    ax, ay, bx, by = one
    cx, cy, dx, dy = two
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    wx, wy = cx - ax, cy - ay
    across = ux * vy - uy * vx
    if across != 0.0:
        s, t = (wx * vy - wy * vx) / across, (wx * uy - wy * ux) / across
        if 0.0 <= s <= 1.0 and 0.0 <= t <= 1.0:
            return 0.0
    from_one = min(to_edge2(ax, ay, two), to_edge2(bx, by, two))
    from_two = min(to_edge2(cx, cy, one), to_edge2(dx, dy, one))
    return math.sqrt(min(from_one, from_two))


@kernel
def is_beyond(edge: Edge, bounds: Bounds, gap: float) -> bool:
    """Whether an edge's own bounds are further than ``gap`` from others: then it is, too."""
    ax, ay, bx, by = edge
    return (
        min(ax, bx) - bounds.right > gap or bounds.left - max(ax, bx) > gap
        or min(ay, by) - bounds.top > gap or bounds.bottom - max(ay, by) > gap
    )  # fmt: skip


@kernel
def bounds_of(edge: Edge) -> Bounds:
    """What an edge lies in."""
    ax, ay, bx, by = edge
    return Bounds(min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
