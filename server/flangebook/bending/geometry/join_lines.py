"""Lines that were drawn one by one, joined into closed rings where their ends meet."""

from __future__ import annotations

import itertools
import math
from collections import defaultdict
from collections.abc import Sequence

from flangebook.bending.errors import OutlineError
from flangebook.bending.geometry.ring import Point, Ring, tidy

JOIN_MM = 0.02  # ends nearer than this are one point
_MOST_MARKS = 20


def joined(lines: Sequence[Sequence[Point]]) -> list[Ring]:
    """The closed rings that lines make; a line drawn twice counts once.

    Raises:
        OutlineError: an end meets nothing, or more than two lines meet in a point.

    >>> joined([((0.0, 0.0), (9.0, 0.0)), ((0.0, 5.0), (0.0, 0.0)), ((9.0, 0.0), (0.0, 5.0))])
    [((0.0, 0.0), (9.0, 0.0), (0.0, 5.0))]
    """
    nodes = _Nodes()
    once: dict[tuple[int, ...], tuple[int, int, Sequence[Point]]] = {}
    for line in lines:
        length = sum(math.dist(p, q) for p, q in itertools.pairwise(line))
        if length <= JOIN_MM:
            continue
        a, b = nodes.of(line[0]), nodes.of(line[-1])
        halfway = nodes.of(_halfway(line, length))
        once.setdefault((*sorted((a, b)), halfway), (a, b, line))
    drawn = list(once.values())
    at: dict[int, list[int]] = defaultdict(list)
    for number, (a, b, _) in enumerate(drawn):
        at[a].append(number)
        at[b].append(number)
    _all_meet(drawn, at, nodes)
    return _traced(drawn, at)


class _Nodes:
    """Points that count as one within JOIN_MM."""

    def __init__(self) -> None:
        self.points: list[Point] = []
        self._cells: dict[tuple[int, int], list[int]] = defaultdict(list)

    def of(self, point: Point) -> int:
        """The number of the point that this one is."""
        i, j = (math.floor(c / JOIN_MM) for c in point)
        for di in (-1, 0, 1):
            for dj in (-1, 0, 1):
                for number in self._cells.get((i + di, j + dj), ()):
                    if math.dist(self.points[number], point) <= JOIN_MM:
                        return number
        self.points.append(point)
        self._cells[i, j].append(len(self.points) - 1)
        return len(self.points) - 1


def _halfway(line: Sequence[Point], length: float) -> Point:
    """The point halfway along a line."""
    left = length / 2.0
    for (ax, ay), (bx, by) in itertools.pairwise(line):
        step = math.hypot(bx - ax, by - ay)
        if step >= left > 0.0:
            return (ax + (bx - ax) * left / step, ay + (by - ay) * left / step)
        left -= step
    return line[-1]


def _count(ends: int) -> str:
    return "1 end meets" if ends == 1 else f"{ends} ends meet"


_AT = "x {x_mm}, y {y_mm}"


def _at(point: Point) -> dict[str, float]:
    return {"x_mm": point[0], "y_mm": point[1]}


def _all_meet(
    drawn: Sequence[tuple[int, int, Sequence[Point]]], at: dict[int, list[int]], nodes: _Nodes
) -> None:
    """Refuse ends that meet nothing, and points where more than two lines meet."""
    lines = tuple(tuple(line) for _, _, line in drawn[:200])
    ends = [nodes.points[n] for n, there in at.items() if len(there) == 1]
    if ends:
        numbers = _at(ends[0])
        near, one = "", "at"
        if len(ends) > 1:
            numbers["gap_mm"] = min(math.dist(ends[0], other) for other in ends[1:])
            near, one = "; the next loose end is {gap_mm} away", "one at"
        raise OutlineError(
            f"The outline is open: {_count(len(ends))} no other line, {one} {_AT}{near}.",
            "",
            "Close the gaps in the drawing, or choose the outline's own layer.",
            numbers=numbers,
            code="open",
            lines_mm=lines,
            marks_mm=tuple(ends[:_MOST_MARKS]),
        )
    forks = [nodes.points[n] for n, there in at.items() if len(there) > 2]
    if forks:
        raise OutlineError(
            f"More than two lines meet at {_AT}.",
            "",
            "An outline goes one way round: take the other lines out, or choose its own layer.",
            numbers=_at(forks[0]),
            code="branching",
            lines_mm=lines,
            marks_mm=tuple(forks[:_MOST_MARKS]),
        )


def _traced(
    drawn: Sequence[tuple[int, int, Sequence[Point]]], at: dict[int, list[int]]
) -> list[Ring]:
    """Each ring once, every point having two ways on."""
    left = set(range(len(drawn)))
    rings = []
    for first in range(len(drawn)):
        if first not in left:
            continue
        points: list[Point] = []
        number, node = first, drawn[first][0]
        while number in left:
            left.discard(number)
            a, b, line = drawn[number]
            points += line[:-1] if node == a else tuple(reversed(line))[:-1]
            node = b if node == a else a
            number = next((n for n in at[node] if n in left), -1)
        rings.append(tidy(points))
    return rings
