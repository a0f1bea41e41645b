"""Moving a part by hand between tools that stand still: shifted and tilted in their section.

The part is its middle line (``part_line``). A move is shown to clear as everywhere here: at each
moment looked at the distance to what it must keep from is known, and nothing can come nearer
before it has had the time. The way is searched for on a lattice of places and tilts, cheapest
first: a way that is found is shown to clear; that none is found on the lattice is no proof that
there is none.
"""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np

from flangebook.bending.clearance.distance import (
    Bounds,
    Edge,
    between_edges,
    bounds_of,
    edge_at,
    is_beyond,
    stretch_at,
)
from flangebook.bending.clearance.problem import Floats, Ints
from flangebook.bending.compiled import kernel

CELL_MM, TILT_RAD = 6.0, math.radians(6.0)
IN_FRONT, BEHIND, DOWN, UP, TILTS = 50, 20, 20, 60, 15
"""How many cells the lattice goes each way from where the part lies, and how many tilts."""
TILT_COST = 1.5
"""What a tilt costs, shifts one each."""
MOST_PLACES = 4000
UNSURE_MM = 0.02
NO_WAY = 0
_ROOM = 8 * MOST_PLACES


class Shift(NamedTuple):
    """How far the part is from where it lay at the bend: shift [mm], and tilt [rad] about (0, 0)
    before it."""

    x: float
    y: float
    tilt: float


class Scene(NamedTuple):
    """A part, held between tools that stand still.

    line: its middle line, (m, 2); far: how far the furthest of its points lies from (0, 0) [mm].
    edges, of: the tools' outlines and kinds. wanted: distance of each stretch from each kind of
    tool, (m - 1, tools); most: the largest of them. moved: room for the line elsewhere, (m, 2).
    """

    line: Floats
    far: float
    edges: Floats
    of: Ints
    wanted: Floats
    most: float
    moved: Floats


def scene_of(line: Floats, edges: Floats, of: Ints, wanted: Floats) -> Scene:
    """A part and tools, with what follows from them."""
    far, most = float(np.hypot(line[:, 0], line[:, 1]).max()), float(wanted.max())
    return Scene(line, far, edges, of, wanted, most, np.empty_like(line))


@kernel
def slack_at(scene: Scene, at: Shift, worth: float) -> float:
    """How much further away than it must the part keeps at one place [mm]; ``worth`` if more.

    Source: plane geometry.

    >>> line, edges = np.array([[0.0, 0.0], [10.0, 0.0]]), np.array([[0.0, 5.0, 10.0, 5.0]])
    >>> scene = scene_of(line, edges, np.array([0]), wanted=np.array([[2.0]]))
    >>> slack_at(scene, Shift(0.0, 0.0, 0.0), 99.0)
    3.0
    """
    edges, moved = scene.edges, scene.moved
    _put_at(scene.line, at, moved)
    left, bottom, right, top = np.inf, np.inf, -np.inf, -np.inf
    for i in range(len(moved)):
        left, right = min(left, moved[i, 0]), max(right, moved[i, 0])
        bottom, top = min(bottom, moved[i, 1]), max(top, moved[i, 1])
    bounds, least = Bounds(left, bottom, right, top), worth
    for e in range(len(edges)):
        edge = edge_at(edges, e)
        if is_beyond(edge, bounds, scene.most + least):
            continue
        for i in range(len(moved) - 1):
            keep, stretch = scene.wanted[i, scene.of[e]], stretch_at(moved, i)
            if not is_beyond(edge, bounds_of(stretch), keep + least):
                least = min(least, between_edges(edge, stretch) - keep)
    return least


@kernel
def clears(scene: Scene, one: Shift, two: Shift) -> bool:
    """Whether the part keeps clear all the way from one place to another, evenly."""
    worth = _speed(scene, one, two) + 2.0 * UNSURE_MM
    return _clears_from(scene, one, two, slack_at(scene, one, worth))


@kernel
def _speed(scene: Scene, one: Shift, two: Shift) -> float:
    """The furthest that any point moves from one place to the other [mm]."""
    turn: float = scene.far * abs(two.tilt - one.tilt)
    return math.hypot(two.x - one.x, two.y - one.y) + turn


@kernel
def _clears_from(scene: Scene, one: Shift, two: Shift, slack: float) -> bool:
    """``clears`` where the slack at the first place is known."""
    speed, done = _speed(scene, one, two), 0.0
    while True:
        left = speed * (1.0 - done)
        if slack <= UNSURE_MM:
            return False
        if slack > left:
            return True
        done += slack / speed
        at = Shift(
            one.x + done * (two.x - one.x),
            one.y + done * (two.y - one.y),
            one.tilt + done * (two.tilt - one.tilt),
        )
        slack = slack_at(scene, at, speed * (1.0 - done) + 2.0 * UNSURE_MM)


@kernel
def distances_at(scene: Scene, at: Shift, out: Floats) -> None:
    """Put the distance of each stretch from each kind of tool at one place into ``out``,
    (m - 1, tools); what ``out`` holds stays where it is less."""
    _put_at(scene.line, at, scene.moved)
    for e in range(len(scene.edges)):
        kind = scene.of[e]
        for i in range(len(scene.line) - 1):
            apart = between_edges(edge_at(scene.edges, e), stretch_at(scene.moved, i))
            out[i, kind] = min(out[i, kind], apart)


@kernel
def free_in_front(scene: Scene, at: Shift) -> bool:
    """Whether the part can be drawn level to the front (-x) from here, as far as one likes."""
    _put_at(scene.line, at, scene.moved)
    for e in range(len(scene.edges)):
        edge = edge_at(scene.edges, e)
        low, high = min(edge.ay, edge.by), max(edge.ay, edge.by)
        for i in range(len(scene.line) - 1):
            stretch, keep = stretch_at(scene.moved, i), scene.wanted[i, scene.of[e]] + UNSURE_MM
            under, over = min(stretch.ay, stretch.by), max(stretch.ay, stretch.by)
            if under > high + keep or over < low - keep:
                continue
            furthest = _end_x(stretch, low - keep, high + keep, 1.0)
            nearest = _end_x(edge, under - keep, over + keep, -1.0)
            if nearest - keep < furthest:
                return False
    return True


@kernel
def _put_at(line: Floats, at: Shift, moved: Floats) -> None:
    """The line shifted and tilted into ``moved``."""
    cos, sin = math.cos(at.tilt), math.sin(at.tilt)
    for i in range(len(line)):
        moved[i, 0] = at.x + cos * line[i, 0] - sin * line[i, 1]
        moved[i, 1] = at.y + sin * line[i, 0] + cos * line[i, 1]


@kernel
def _end_x(edge: Edge, low: float, high: float, way: float) -> float:
    """The furthest x (way 1.0) or the least (-1.0) of what of an edge lies between two heights."""
    ax, ay, bx, by = edge
    if ay > by:
        ax, ay, bx, by = bx, by, ax, ay
    start, stop = ax, bx
    if by > ay:
        if low > ay:
            start = ax + (bx - ax) * (low - ay) / (by - ay)
        if high < by:
            stop = ax + (bx - ax) * (high - ay) / (by - ay)
    return max(start, stop) if way > 0.0 else min(start, stop)


@kernel
def way_to_front(scene: Scene, start: Shift, tilts: int, out: Floats) -> int:
    """Put the places (x, y, tilt) of a way from ``start`` to where the part can be drawn level to
    the front into ``out``, and say how many; NO_WAY when none is found.

    tilts: how many steps of tilt it may take either way, 0 for none.
    """
    wide, high, deep = IN_FRONT + BEHIND + 1, DOWN + UP + 1, 2 * tilts + 1
    places = wide * high * deep
    cost, came, slack = np.empty(places), np.empty(places, np.int64), np.empty(places)
    for i in range(places):
        cost[i], came[i], slack[i] = np.inf, -1, np.inf  # infinite: not looked at yet
    heap, rank = np.empty(_ROOM, np.int64), np.empty(_ROOM)
    tools_left = np.inf
    for e in range(len(scene.edges)):
        if abs(scene.edges[e, 0]) < 1000.0:
            tools_left = min(tools_left, scene.edges[e, 0], scene.edges[e, 2])
    worth = max(CELL_MM, scene.far * TILT_RAD) + 2.0 * UNSURE_MM
    first = (IN_FRONT * high + DOWN) * deep + tilts
    cost[first], heap[0], rank[0], waiting, looked = 0.0, first, 0.0, 1, 0
    while waiting > 0 and looked < MOST_PLACES:
        here, ahead = heap[0], rank[0]
        waiting = _take_first(heap, rank, waiting)
        one = _place(here, high, deep, tilts, start)
        if ahead > cost[here] + _to_go(scene.line, one, tools_left) + 1e-6:
            continue  # reached more cheaply since
        looked += 1
        if free_in_front(scene, one):
            return _written(here, came, high, deep, tilts, start, out)
        room = _kept_slack(slack, here, scene, one, worth)
        i, j, k = here // (high * deep), here // deep % high, here % deep
        for step in range(6):
            a = i + (-1 if step == 0 else 1 if step == 1 else 0)
            b = j + (-1 if step == 2 else 1 if step == 3 else 0)
            c = k + (-1 if step == 4 else 1 if step == 5 else 0)
            if min(a, b, c) < 0 or a >= wide or b >= high or c >= deep:
                continue
            there = (a * high + b) * deep + c
            price = cost[here] + (TILT_COST if step > 3 else 1.0)
            if price >= cost[there] or waiting >= _ROOM:
                continue
            two = _place(there, high, deep, tilts, start)
            there_room = _kept_slack(slack, there, scene, two, worth)
            if there_room <= 0.0 or not _clears_from(scene, one, two, room):
                continue
            cost[there], came[there] = price, here
            ahead = price + _to_go(scene.line, two, tools_left)
            waiting = _put(heap, rank, waiting, there, ahead)
    return NO_WAY


@kernel
def _kept_slack(slack: Floats, at: int, scene: Scene, place: Shift, worth: float) -> float:
    """The slack at a place of the lattice, looked at once: six ways lead to each."""
    if slack[at] == np.inf:
        slack[at] = slack_at(scene, place, worth)
    known: float = slack[at]
    return known


@kernel
def _place(at: int, high: int, deep: int, tilts: int, start: Shift) -> Shift:
    """Where a place of the lattice is."""
    return Shift(
        start.x + (at // (high * deep) - IN_FRONT) * CELL_MM,
        start.y + (at // deep % high - DOWN) * CELL_MM,
        start.tilt + (at % deep - tilts) * TILT_RAD,
    )


@kernel
def _to_go(line: Floats, at: Shift, tools_left: float) -> float:
    """How many cells the part's rearmost point is from before the tools."""
    cos, sin = math.cos(at.tilt), math.sin(at.tilt)
    right = -np.inf
    for i in range(len(line)):
        right = max(right, at.x + cos * line[i, 0] - sin * line[i, 1])
    return max(0.0, right - tools_left) / CELL_MM


@kernel
def _written(
    last: int, came: Ints, high: int, deep: int, tilts: int, start: Shift, out: Floats
) -> int:
    """The places up to the last one into ``out``, from the first on; how many."""
    count, at = 0, last
    while at >= 0:
        count += 1
        at = came[at]
    if count > len(out):
        return NO_WAY
    at = last
    for i in range(count - 1, -1, -1):
        out[i, 0], out[i, 1], out[i, 2] = _place(at, high, deep, tilts, start)
        at = came[at]
    return count


@kernel
def _put(heap: Ints, rank: Floats, waiting: int, what: int, by: float) -> int:
    """Put one into the heap, the least rank first; how many are in it then."""
    i = waiting
    while i > 0 and rank[(i - 1) // 2] > by:
        heap[i], rank[i] = heap[(i - 1) // 2], rank[(i - 1) // 2]
        i = (i - 1) // 2
    heap[i], rank[i] = what, by
    return waiting + 1


@kernel
def _take_first(heap: Ints, rank: Floats, waiting: int) -> int:
    """Take the first out of the heap; how many are left."""
    waiting -= 1
    what, by, i = heap[waiting], rank[waiting], 0
    while True:
        child = 2 * i + 1
        if child >= waiting:
            break
        if child + 1 < waiting and rank[child + 1] < rank[child]:
            child += 1
        if rank[child] >= by:
            break
        heap[i], rank[i] = heap[child], rank[child]
        i = child
    heap[i], rank[i] = what, by
    return waiting
