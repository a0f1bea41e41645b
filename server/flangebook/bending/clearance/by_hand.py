"""Moving a part by hand between tools that stand still: shifted and tilted in their section.

The part is its middle line (``part_line``). A move is shown to clear as everywhere here: at each
moment looked at the distance to what it must keep from is known, and nothing can come nearer
before it has had the time. The way is searched for on a lattice of places and tilts, cheapest
first: a way that is found is shown to clear; that none is found on the lattice is no proof that
there is none.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.distance import between_edges, boxes_apart
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


@kernel
def slack_at(
    line: Floats, wanted: Floats, most: float, edges: Floats, of: Ints,
    x: float, y: float, tilt: float, worth: float, moved: Floats,
) -> float:  # fmt: skip
    """How much further away than it must the part keeps at one place [mm]; ``worth`` if more.

    line: its middle line, (m, 2). wanted: distance of each stretch from each kind of tool,
    (m - 1, tools); most: the largest of them. edges, of: the tools' outlines and kinds. x, y:
    shift; tilt: about (0, 0), before the shift. moved: room to work in, (m, 2).

    Source: plane geometry.

    >>> line, edges = np.array([[0.0, 0.0], [10.0, 0.0]]), np.array([[0.0, 5.0, 10.0, 5.0]])
    >>> wanted, kinds, room = np.array([[2.0]]), np.array([0]), line.copy()
    >>> slack_at(line, wanted, 2.0, edges, kinds, 0.0, 0.0, 0.0, 99.0, room)
    3.0
    """
    _put_at(line, x, y, tilt, moved)
    left, bottom, right, top = np.inf, np.inf, -np.inf, -np.inf
    for i in range(len(moved)):
        left, right = min(left, moved[i, 0]), max(right, moved[i, 0])
        bottom, top = min(bottom, moved[i, 1]), max(top, moved[i, 1])
    least = worth
    for e in range(len(edges)):
        ax, ay, bx, by = edges[e, 0], edges[e, 1], edges[e, 2], edges[e, 3]
        if boxes_apart(ax, ay, bx, by, left, bottom, right, top, most + least):
            continue
        for i in range(len(line) - 1):
            keep = wanted[i, of[e]]
            cx, cy, dx, dy = moved[i, 0], moved[i, 1], moved[i + 1, 0], moved[i + 1, 1]
            if boxes_apart(
                ax, ay, bx, by, min(cx, dx), min(cy, dy), max(cx, dx), max(cy, dy), keep + least
            ):
                continue
            least = min(least, between_edges(ax, ay, bx, by, cx, cy, dx, dy) - keep)
    return least


@kernel
def clears(
    line: Floats, wanted: Floats, edges: Floats, of: Ints, one: Floats, two: Floats, far: float,
    moved: Floats,
) -> bool:  # fmt: skip
    """Whether the part keeps clear all the way from one place to another (x, y, tilt), evenly.

    far: the furthest that any of its points lies from (0, 0) [mm].
    """
    speed, most = _speed(one, two, far), _most(wanted)
    worth = speed + 2.0 * UNSURE_MM
    slack = slack_at(line, wanted, most, edges, of, one[0], one[1], one[2], worth, moved)
    return _clears_from(line, wanted, most, edges, of, one, two, speed, slack, moved)


@kernel
def _speed(one: Floats, two: Floats, far: float) -> float:
    """The furthest that any point moves from one place to the other [mm]."""
    speed: float = math.hypot(two[0] - one[0], two[1] - one[1]) + far * abs(two[2] - one[2])
    return speed


@kernel
def _most(wanted: Floats) -> float:
    """The largest distance that is wanted of anything."""
    most = -np.inf
    for i in range(len(wanted)):
        for tool in range(wanted.shape[1]):
            most = max(most, wanted[i, tool])
    return most


@kernel
def _clears_from(
    line: Floats, wanted: Floats, most: float, edges: Floats, of: Ints, one: Floats, two: Floats,
    speed: float, slack: float, moved: Floats,
) -> bool:  # fmt: skip
    """``clears`` where the slack at the first place is known."""
    done = 0.0
    while True:
        left = speed * (1.0 - done)
        if slack <= UNSURE_MM:
            return False
        if slack > left:
            return True
        done += slack / speed
        x, y = one[0] + done * (two[0] - one[0]), one[1] + done * (two[1] - one[1])
        tilt = one[2] + done * (two[2] - one[2])
        worth = speed * (1.0 - done) + 2.0 * UNSURE_MM
        slack = slack_at(line, wanted, most, edges, of, x, y, tilt, worth, moved)


@kernel
def distances_at(
    line: Floats, edges: Floats, of: Ints, x: float, y: float, tilt: float, moved: Floats,
    out: Floats,
) -> None:  # fmt: skip
    """Put the distance of each stretch from each kind of tool at one place into ``out``,
    (m - 1, tools); what ``out`` holds stays where it is less."""
    _put_at(line, x, y, tilt, moved)
    for e in range(len(edges)):
        for i in range(len(line) - 1):
            apart = between_edges(
                edges[e, 0], edges[e, 1], edges[e, 2], edges[e, 3],
                moved[i, 0], moved[i, 1], moved[i + 1, 0], moved[i + 1, 1],
            )  # fmt: skip
            out[i, of[e]] = min(out[i, of[e]], apart)


@kernel
def free_in_front(
    line: Floats, wanted: Floats, edges: Floats, of: Ints, x: float, y: float, tilt: float,
    moved: Floats,
) -> bool:  # fmt: skip
    """Whether the part can be drawn level to the front (-x) from here, as far as one likes."""
    _put_at(line, x, y, tilt, moved)
    for e in range(len(edges)):
        low, high = min(edges[e, 1], edges[e, 3]), max(edges[e, 1], edges[e, 3])
        for i in range(len(line) - 1):
            keep = wanted[i, of[e]] + UNSURE_MM
            under, over = min(moved[i, 1], moved[i + 1, 1]), max(moved[i, 1], moved[i + 1, 1])
            if under > high + keep or over < low - keep:
                continue
            furthest = _end_x(moved[i, 0], moved[i, 1], moved[i + 1, 0], moved[i + 1, 1],
                              low - keep, high + keep, 1.0)  # fmt: skip
            nearest = _end_x(edges[e, 0], edges[e, 1], edges[e, 2], edges[e, 3],
                             under - keep, over + keep, -1.0)  # fmt: skip
            if nearest - keep < furthest:
                return False
    return True


@kernel
def _put_at(line: Floats, x: float, y: float, tilt: float, moved: Floats) -> None:
    """The line shifted and tilted into ``moved``."""
    cos, sin = math.cos(tilt), math.sin(tilt)
    for i in range(len(line)):
        moved[i, 0] = x + cos * line[i, 0] - sin * line[i, 1]
        moved[i, 1] = y + sin * line[i, 0] + cos * line[i, 1]


@kernel
def _end_x(
    ax: float, ay: float, bx: float, by: float, low: float, high: float, way: float
) -> float:
    """The furthest x (way 1.0) or the least (-1.0) of what of an edge lies between two heights."""
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
def way_to_front(
    line: Floats, wanted: Floats, edges: Floats, of: Ints, start: Floats, tilts: int, out: Floats
) -> int:  # fmt: skip
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
    moved, one, two = np.empty((len(line), 2)), np.empty(3), np.empty(3)
    far, tools_left = 0.0, np.inf
    for i in range(len(line)):
        far = max(far, math.hypot(line[i, 0], line[i, 1]))
    for e in range(len(edges)):
        if abs(edges[e, 0]) < 1000.0:
            tools_left = min(tools_left, edges[e, 0], edges[e, 2])
    most, worth = _most(wanted), max(CELL_MM, far * TILT_RAD) + 2.0 * UNSURE_MM
    first = (IN_FRONT * high + DOWN) * deep + tilts
    cost[first], heap[0], rank[0], waiting, looked = 0.0, first, 0.0, 1, 0
    while waiting > 0 and looked < MOST_PLACES:
        here, ahead = heap[0], rank[0]
        waiting = _take_first(heap, rank, waiting)
        _place(here, high, deep, tilts, start, one)
        to_go = _to_go(line, one, tools_left)
        if ahead > cost[here] + to_go + 1e-6:
            continue  # reached more cheaply since
        looked += 1
        if free_in_front(line, wanted, edges, of, one[0], one[1], one[2], moved):
            return _written(here, came, high, deep, tilts, start, out)
        room = _kept_slack(slack, here, line, wanted, most, edges, of, one, worth, moved)
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
            _place(there, high, deep, tilts, start, two)
            there_room = _kept_slack(slack, there, line, wanted, most, edges, of, two, worth, moved)
            if there_room <= 0.0 or not _clears_from(
                line, wanted, most, edges, of, one, two, _speed(one, two, far), room, moved
            ):
                continue
            cost[there], came[there] = price, here
            waiting = _put(heap, rank, waiting, there, price + _to_go(line, two, tools_left))
    return NO_WAY


@kernel
def _kept_slack(
    slack: Floats, at: int, line: Floats, wanted: Floats, most: float, edges: Floats, of: Ints,
    place: Floats, worth: float, moved: Floats,
) -> float:  # fmt: skip
    """The slack at a place of the lattice, looked at once: six ways lead to each."""
    if slack[at] == np.inf:
        slack[at] = slack_at(
            line, wanted, most, edges, of, place[0], place[1], place[2], worth, moved
        )
    known: float = slack[at]
    return known


@kernel
def _place(at: int, high: int, deep: int, tilts: int, start: Floats, out: Floats) -> None:
    """Where a place of the lattice is."""
    out[0] = start[0] + (at // (high * deep) - IN_FRONT) * CELL_MM
    out[1] = start[1] + (at // deep % high - DOWN) * CELL_MM
    out[2] = start[2] + (at % deep - tilts) * TILT_RAD


@kernel
def _to_go(line: Floats, at: Floats, tools_left: float) -> float:
    """How many cells the part's rearmost point is from before the tools."""
    cos, sin = math.cos(at[2]), math.sin(at[2])
    right = -np.inf
    for i in range(len(line)):
        right = max(right, at[0] + cos * line[i, 0] - sin * line[i, 1])
    return max(0.0, right - tools_left) / CELL_MM


@kernel
def _written(
    last: int, came: Ints, high: int, deep: int, tilts: int, start: Floats, out: Floats
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
        _place(at, high, deep, tilts, start, out[i])
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
