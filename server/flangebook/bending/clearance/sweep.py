"""Whether a piece of the part keeps its distance from the tools through a whole motion.

The motion is cut in two where it must be. At each moment looked at the distance to the nearest
tool edge is known exactly; nothing can come nearer before it has had the time, so a stretch of
the motion is clear for certain, and nothing slips through between two moments. What would need
stretches finer than UNSURE_MM is taken as a collision.
"""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np

from flangebook.bending.clearance.distance import (
    Bounds,
    between_edges,
    bounds_of,
    edge_at,
    is_beyond,
)
from flangebook.bending.clearance.motion import Motion, Turned, depth_at, speed_bound, turned
from flangebook.bending.clearance.problem import Floats, Ints
from flangebook.bending.compiled import kernel

UNSURE_MM = 0.01
_DEEPEST = 256


class Course(NamedTuple):
    """What moves: the bend is made, theta from low to high [rad]; or the punch rises from low to
    high [mm] at theta. in_press: seen from die and bed, else from the punch."""

    motion: Motion
    rises: bool
    theta: float
    low: float
    high: float
    in_press: bool


class Obstacles(NamedTuple):
    """The edges, from first to before past, of the tools to keep ``gap`` [mm] from; tools: a bit
    for each."""

    edges: Floats
    edge_of: Ints
    first: int
    past: int
    tools: int
    gap: float


class Room(NamedTuple):
    """Room to work in: for a piece's edges, for the same where it has moved, and for the numbers
    of the tools' edges that it can come near to."""

    segments: Floats
    moved: Floats
    chosen: Ints


@kernel
def at_moment(course: Course, moment: float) -> Turned:
    """Where the leg is at one moment of a course, from its low to its high."""
    if course.rises:
        return turned(course.motion, course.theta, moment, course.in_press)
    return turned(course.motion, moment, 0.0, course.in_press)


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
def moved_edges(segments: Floats, count: int, mirror: float, at: Turned, out: Floats) -> Bounds:
    """The piece at one moment into ``out``, and what it lies in."""
    cos, sin = math.cos(at.theta), math.sin(at.theta)
    left, bottom, right, top = np.inf, np.inf, -np.inf, -np.inf
    for i in range(count):
        for j in (0, 2):
            qx, qy = segments[i, j] - at.drawn_in, segments[i, j + 1]
            px = mirror * (at.x + cos * qx - sin * qy)
            py = at.y + sin * qx + cos * qy
            out[i, j], out[i, j + 1] = px, py
            left, bottom = min(left, px), min(bottom, py)
            right, top = max(right, px), max(top, py)
    return Bounds(left, bottom, right, top)


@kernel
def swept_code(course: Course, obstacles: Obstacles, room: Room, count: int, mirror: float) -> int:
    """A bit for the tool that comes too near, 0 when none does.

    room: holds the piece's edges in the leg's frame, so many. mirror: -1.0 for the leg in front.
    """
    motion, gap, (segments, moved, chosen) = course.motion, obstacles.gap, room
    edges, edge_of = obstacles.edges, obstacles.edge_of
    furthest = furthest_of(segments, count, motion)
    speed = 1.0 if course.rises else speed_bound(motion, furthest, course.in_press)
    moved_edges(segments, 1, mirror, at_moment(course, course.low), moved)
    inside = _inside_of(moved[0, 0], moved[0, 1], obstacles) & obstacles.tools
    if inside:
        return inside & -inside
    near = _within_reach(course, obstacles, room, count, mirror, furthest)
    if near == 0:
        return 0
    lows, highs = np.empty(_DEEPEST), np.empty(_DEEPEST)
    lows[0], highs[0], open_ = course.low, course.high, 1
    while open_ > 0:
        open_ -= 1
        a, b = lows[open_], highs[open_]
        middle, half = 0.5 * (a + b), 0.5 * (b - a)
        bounds = moved_edges(segments, count, mirror, at_moment(course, middle), moved)
        wanted = gap + speed * half
        nearest, nearest_tool = wanted, 0
        for c in range(near):
            i = chosen[c]
            edge = edge_at(edges, i)
            if is_beyond(edge, bounds, nearest):
                continue
            for k in range(count):
                own = edge_at(moved, k)
                if is_beyond(edge, bounds_of(own), nearest):
                    continue
                apart = between_edges(edge, own)
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
def _inside_of(x: float, y: float, obstacles: Obstacles) -> int:
    """A bit for each tool that has the point inside (even-odd rule)."""
    inside = 0
    for i in range(obstacles.first, obstacles.past):
        ax, ay, bx, by = edge_at(obstacles.edges, i)
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside ^= 1 << obstacles.edge_of[i]
    return inside


@kernel
def _within_reach(
    course: Course, obstacles: Obstacles, room: Room, count: int, mirror: float, furthest: float
) -> int:
    """Put the numbers of the edges that the piece can come near to into ``room.chosen``.

    The box of all its moments is that of the first and the last, and as much more as a point's
    arc about the bend line bulges beyond its chord; shifts beside the turn count in full.
    """
    motion, low, high = course.motion, course.low, course.high
    start = moved_edges(room.segments, count, mirror, at_moment(course, low), room.moved)
    end = moved_edges(room.segments, count, mirror, at_moment(course, high), room.moved)
    bounds = Bounds(
        min(start.left, end.left), min(start.bottom, end.bottom),
        max(start.right, end.right), max(start.top, end.top),
    )  # fmt: skip
    more = obstacles.gap
    if not course.rises:
        more += furthest * (1.0 - math.cos(0.5 * (high - low)))
        more += motion.radius + 0.5 * motion.allowance
        if course.in_press:
            more += abs(depth_at(motion, high))
    near = 0
    for i in range(obstacles.first, obstacles.past):
        if not obstacles.tools >> obstacles.edge_of[i] & 1:
            continue
        if is_beyond(edge_at(obstacles.edges, i), bounds, more):
            continue
        room.chosen[near] = i
        near += 1
    return near
