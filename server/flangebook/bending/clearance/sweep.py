"""Whether a piece of the part keeps its distance from the tools through a whole motion.

The motion is cut in two where it must be. At each moment looked at the distance to the nearest
tool edge is known exactly; nothing can come nearer before it has had the time, so a stretch of
the motion is clear for certain, and nothing slips through between two moments. What would need
stretches finer than UNSURE_MM is taken as a hit.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import between_edges, is_inside
from flangebook.bending.clearance.motion import Motion, placed, speed_bound
from flangebook.bending.compiled import kernel
from flangebook.bending.ordering.problem import Floats, Ints

UNSURE_MM = 0.01
BENDING, RISING = 0, 1
"""What moves: the bend is made (theta from ``low`` to ``high``), or the punch rises."""
_DEEPEST = 256
_TOOLS = 6


@kernel
def furthest_of(segments: Floats, count: int, motion: Motion) -> float:
    """The furthest that a piece lies from the bend line, drawn in or not [mm]."""
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
    near = _within_reach(motion, mode, high, furthest, edges, edge_of, first, past, tools,
                         in_press, gap, chosen)  # fmt: skip
    if near == 0:
        return 0
    x, y, drawn = placed(motion, low if mode == BENDING else theta,
                         low if mode == RISING else 0.0, in_press)  # fmt: skip
    moved_edges(segments, 1, mirror, low if mode == BENDING else theta, x, y, drawn, moved, box)
    for tool in range(_TOOLS):
        if tools >> tool & 1 and is_inside(
            moved[0, 0], moved[0, 1], edges, edge_of, first, past, tool
        ):
            return 1 << tool
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
            if (
                min(ax, bx) - box[2] > nearest or box[0] - max(ax, bx) > nearest
                or min(ay, by) - box[3] > nearest or box[1] - max(ay, by) > nearest
            ):  # fmt: skip
                continue
            for k in range(count):
                cx, cy, dx, dy = moved[k, 0], moved[k, 1], moved[k, 2], moved[k, 3]
                if (
                    min(ax, bx) - max(cx, dx) > nearest or min(cx, dx) - max(ax, bx) > nearest
                    or min(ay, by) - max(cy, dy) > nearest or min(cy, dy) - max(ay, by) > nearest
                ):  # fmt: skip
                    continue
                apart = between_edges(ax, ay, bx, by, cx, cy, dx, dy)
                if apart < nearest or (nearest_tool == 0 and apart <= nearest):
                    nearest, nearest_tool = apart, 1 << edge_of[i]
                    if apart <= gap:
                        return nearest_tool
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
def _within_reach(
    motion: Motion, mode: int, high: float, furthest: float, edges: Floats, edge_of: Ints,
    first: int, past: int, tools: int, in_press: bool, gap: float, chosen: Ints,
) -> int:  # fmt: skip
    """Put the numbers of the edges that the piece can come near to into ``chosen``."""
    reach = furthest + 2.0 * motion.radius + gap + motion.thickness
    if mode == RISING:
        reach += high
    elif in_press:
        _, y, _ = placed(motion, high, 0.0, True)
        reach += abs(y) + 2.0 * motion.thickness
    count = 0
    for i in range(first, past):
        if not tools >> edge_of[i] & 1:
            continue
        ax, ay, bx, by = edges[i, 0], edges[i, 1], edges[i, 2], edges[i, 3]
        if (
            min(ax, bx) > reach or max(ax, bx) < -reach
            or min(ay, by) > reach or max(ay, by) < -reach
        ):  # fmt: skip
            continue
        chosen[count] = i
        count += 1
    return count
