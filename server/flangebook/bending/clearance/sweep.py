"""Whether a piece of the part keeps its distance from the tools through a whole motion.

The motion is cut in two where it must be. At each moment looked at the distance to the nearest
tool edge is known exactly; nothing can come nearer before it has had the time, so a stretch of
the motion is clear for certain, and nothing slips through between two moments. What would need
stretches finer than UNSURE_MM is taken as a hit.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import between_edges, boxes_apart
from flangebook.bending.clearance.motion import Motion, depth_at, placed, speed_bound
from flangebook.bending.clearance.problem import Floats, Ints
from flangebook.bending.compiled import kernel

UNSURE_MM = 0.01
BENDING, RISING = 0, 1
"""What moves: the bend is made (theta from ``low`` to ``high``), or the punch rises."""
_DEEPEST = 256


@kernel
def furthest_of(segments: Floats, count: int, motion: Motion) -> float:
    """The furthest that a piece lies from the bend line, drawn in or not [mm].

    Source: plane geometry.

    >>> still = Motion(0.5, 0.0, 0.0, 2.0, 8.0, 0.0, 1.0)
    >>> furthest_of(np.array([[0.0, 0.0, 3.0, 4.0]]), 1, still)
    5.0
    """
    most = 0.0
    for i in range(count):
        for j in (0, 2):
            x, y = segments[i, j], segments[i, j + 1]
            near = x - 0.5 * motion.allowance
            most = max(most, max(x * x, near * near) + y * y)
    return math.sqrt(most)


@kernel
def moved_edges(
    segments: Floats, count: int, mirror: float, theta: float, x: float, y: float, drawn: float,
    out: Floats, box: Floats,
) -> None:  # fmt: skip
    """The piece at one moment into ``out``, its bounds into ``box`` (left, bottom, right, top)."""
    cos, sin = math.cos(theta), math.sin(theta)
    box[0], box[1], box[2], box[3] = np.inf, np.inf, -np.inf, -np.inf
    for i in range(count):
        for j in (0, 2):
            qx, qy = segments[i, j] - drawn, segments[i, j + 1]
            px = mirror * (x + cos * qx - sin * qy)
            py = y + sin * qx + cos * qy
            out[i, j], out[i, j + 1] = px, py
            box[0], box[1] = min(box[0], px), min(box[1], py)
            box[2], box[3] = max(box[2], px), max(box[3], py)


@kernel
def swept_code(
    motion: Motion, mode: int, low: float, high: float, theta: float,
    segments: Floats, count: int, mirror: float,
    edges: Floats, edge_of: Ints, first: int, past: int, tools: int, in_press: bool, gap: float,
    moved: Floats, chosen: Ints,
) -> int:  # fmt: skip
    """A bit for the tool that comes nearer than ``gap``, 0 when none does.

    mode: BENDING, theta goes from low to high; RISING, the punch rises from low to high at
    theta. segments: the piece's edges in the wing's frame. mirror: -1.0 for the wing in front.
    tools: a bit for each tool to look at. moved, chosen: room to work in.
    """
    furthest = furthest_of(segments, count, motion)
    speed = 1.0 if mode == RISING else speed_bound(motion, furthest, in_press)
    box = np.empty(4)
    x, y, drawn = placed(motion, low if mode == BENDING else theta,
                         low if mode == RISING else 0.0, in_press)  # fmt: skip
    moved_edges(segments, 1, mirror, low if mode == BENDING else theta, x, y, drawn, moved, box)
    inside = _inside_of(moved[0, 0], moved[0, 1], edges, edge_of, first, past) & tools
    if inside:
        return inside & -inside
    near = _within_reach(
        motion, mode, low, high, theta, furthest, segments, count, mirror, edges,
        edge_of, first, past, tools, in_press, gap, moved, box, chosen,
    )  # fmt: skip
    if near == 0:
        return 0
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    lows[0], highs[0], open_ = low, high, 1
    while open_ > 0:
        open_ -= 1
        a, b = lows[open_], highs[open_]
        middle, half = 0.5 * (a + b), 0.5 * (b - a)
        now = middle if mode == BENDING else theta
        x, y, drawn = placed(motion, now, middle if mode == RISING else 0.0, in_press)
        moved_edges(segments, count, mirror, now, x, y, drawn, moved, box)
        wanted = gap + speed * half
        nearest, nearest_tool = wanted, 0
        for c in range(near):
            i = chosen[c]
            ax, ay, bx, by = edges[i, 0], edges[i, 1], edges[i, 2], edges[i, 3]
            if boxes_apart(ax, ay, bx, by, box[0], box[1], box[2], box[3], nearest):
                continue
            for k in range(count):
                cx, cy, dx, dy = moved[k, 0], moved[k, 1], moved[k, 2], moved[k, 3]
                if boxes_apart(
                    ax, ay, bx, by, min(cx, dx), min(cy, dy), max(cx, dx), max(cy, dy), nearest
                ):
                    continue
                apart = between_edges(ax, ay, bx, by, cx, cy, dx, dy)
                if apart < nearest or (nearest_tool == 0 and apart <= nearest):
                    nearest, nearest_tool = apart, 1 << edge_of[i]
                    if apart <= gap:
                        return int(nearest_tool)
        if nearest_tool == 0:
            continue
        if speed * half <= UNSURE_MM or open_ + 2 > _DEEPEST:
            return int(nearest_tool)
        safe = (nearest - gap) / speed
        lows[open_], highs[open_] = middle + safe, b
        lows[open_ + 1], highs[open_ + 1] = a, middle - safe
        open_ += 2
    return 0


@kernel
def _inside_of(x: float, y: float, edges: Floats, edge_of: Ints, first: int, past: int) -> int:
    """A bit for each tool that has the point inside (even-odd rule)."""
    inside = 0
    for i in range(first, past):
        ay, by = edges[i, 1], edges[i, 3]
        if (ay > y) != (by > y):
            ax, bx = edges[i, 0], edges[i, 2]
            if x < (bx - ax) * (y - ay) / (by - ay) + ax:
                inside ^= 1 << edge_of[i]
    return inside


@kernel
def _within_reach(
    motion: Motion, mode: int, low: float, high: float, theta: float, furthest: float,
    segments: Floats, count: int, mirror: float,
    edges: Floats, edge_of: Ints, first: int, past: int, tools: int, in_press: bool, gap: float,
    moved: Floats, box: Floats, chosen: Ints,
) -> int:  # fmt: skip
    """Put the numbers of the edges that the piece can come near to into ``chosen``.

    The box of all its moments is that of the first and the last, and as much more as a point's
    arc about the bend line bulges beyond its chord; shifts beside the turn count in full.
    """
    if mode == RISING:
        x, y, drawn = placed(motion, theta, low, in_press)
        moved_edges(segments, count, mirror, theta, x, y, drawn, moved, box)
        left, bottom, right, top = box[0], box[1] - (high - low), box[2], box[3]
        more = gap
    else:
        x, y, drawn = placed(motion, low, 0.0, in_press)
        moved_edges(segments, count, mirror, low, x, y, drawn, moved, box)
        left, bottom, right, top = box[0], box[1], box[2], box[3]
        x, y, drawn = placed(motion, high, 0.0, in_press)
        moved_edges(segments, count, mirror, high, x, y, drawn, moved, box)
        left, bottom = min(left, box[0]), min(bottom, box[1])
        right, top = max(right, box[2]), max(top, box[3])
        more = gap + furthest * (1.0 - math.cos(0.5 * (high - low)))
        more += motion.radius + 0.5 * motion.allowance
        if in_press:
            more += abs(depth_at(motion, high))
    near = 0
    for i in range(first, past):
        if not tools >> edge_of[i] & 1:
            continue
        ax, ay, bx, by = edges[i, 0], edges[i, 1], edges[i, 2], edges[i, 3]
        if boxes_apart(ax, ay, bx, by, left, bottom, right, top, more):
            continue
        chosen[near] = i
        near += 1
    return near
