"""Distances between edges."""

from __future__ import annotations

import math

from flangebook.bending.compiled import kernel


@kernel
def to_edge2(px: float, py: float, ax: float, ay: float, bx: float, by: float) -> float:
    """Squared distance of a point to an edge [mm2].

    Source: plane geometry.

    >>> to_edge2(5.0, 3.0, 0.0, 0.0, 10.0, 0.0)
    9.0
    """
    dx, dy = bx - ax, by - ay
    length2 = dx * dx + dy * dy
    share = 0.0
    if length2 > 0.0:
        share = min(1.0, max(0.0, ((px - ax) * dx + (py - ay) * dy) / length2))
    ex, ey = px - ax - share * dx, py - ay - share * dy
    return ex * ex + ey * ey


@kernel
def between_edges(
    ax: float, ay: float, bx: float, by: float, cx: float, cy: float, dx: float, dy: float
) -> float:
    """Distance between two edges [mm]; 0 where they cross.

    Source: plane geometry.

    >>> between_edges(0.0, 0.0, 10.0, 0.0, 4.0, 3.0, 4.0, 9.0)
    3.0
    >>> between_edges(0.0, 0.0, 10.0, 0.0, 4.0, -3.0, 4.0, 9.0)
    0.0
    """
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    wx, wy = cx - ax, cy - ay
    across = ux * vy - uy * vx
    if across != 0.0:
        s, t = (wx * vy - wy * vx) / across, (wx * uy - wy * ux) / across
        if 0.0 <= s <= 1.0 and 0.0 <= t <= 1.0:
            return 0.0
    one = min(to_edge2(ax, ay, cx, cy, dx, dy), to_edge2(bx, by, cx, cy, dx, dy))
    two = min(to_edge2(cx, cy, ax, ay, bx, by), to_edge2(dx, dy, ax, ay, bx, by))
    return math.sqrt(min(one, two))


@kernel
def boxes_apart(
    ax: float, ay: float, bx: float, by: float,
    left: float, bottom: float, right: float, top: float, gap: float,
) -> bool:  # fmt: skip
    """Whether an edge's own box is further than ``gap`` from another box: then the two are, too."""
    return (
        min(ax, bx) - right > gap or left - max(ax, bx) > gap
        or min(ay, by) - top > gap or bottom - max(ay, by) > gap
    )  # fmt: skip
