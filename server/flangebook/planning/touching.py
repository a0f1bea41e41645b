"""Whether the sheet runs into a tool as drawn: before and at the bottom of the stroke only.

Finding something here means the step cannot be made as planned. Finding nothing proves
nothing: what happens between the two poses is not looked at.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from flangebook.bending.pose import StepDrawing
from flangebook.bending.ring import bounds
from flangebook.bending.tooling import Point, Ring

DEPTH_MM = 0.5
"""How deep the drawn rings must run into one another to count [mm]."""
SPACING_MM = 2.0

Touch = tuple[str, str]
"""The tool, and "before" or "after"."""


def touches(drawing: StepDrawing) -> list[Touch]:
    """The tools that the sheet runs into as drawn."""
    found: list[Touch] = []
    for pose, sheet, tools in (
        ("before", drawing.sheet_before, _tools(drawing, "before")),
        ("after", drawing.sheet_after, _tools(drawing, "after")),
    ):
        box = bounds(sheet)
        for name, ring in tools:
            if ring and _boxes_meet(box, bounds(ring)) and overlap(sheet, ring):
                found.append((name, pose))
    return found


def _tools(drawing: StepDrawing, pose: str) -> Iterator[tuple[str, Ring]]:
    for name in ("punch", "holder", "ram"):
        yield name, getattr(drawing, f"{name}_{pose}")
    yield "die", drawing.die
    yield "bed", drawing.bed


def overlap(sheet: Ring, tool: Ring) -> bool:
    """Whether the two rings run into one another by more than DEPTH_MM."""
    sheet_box, tool_box = bounds(sheet), bounds(tool)
    for point in _along(sheet, tool_box):
        if _inside(point, tool) and _depth(point, tool) > DEPTH_MM:
            return True
    for point in tool:
        if _in_box(point, sheet_box) and _inside(point, sheet) and _depth(point, sheet) > DEPTH_MM:
            return True
    return False


def _along(ring: Ring, box: tuple[float, float, float, float]) -> Iterator[Point]:
    """Points along the ring's edges, SPACING_MM apart, that lie in the box."""
    ax, ay = ring[-1]
    for bx, by in ring:
        if (
            min(ax, bx) < box[2]
            and max(ax, bx) > box[0]
            and min(ay, by) < box[3]
            and max(ay, by) > box[1]
        ):
            count = max(1, math.ceil(math.hypot(bx - ax, by - ay) / SPACING_MM))
            for i in range(1, count + 1):
                point = (ax + (bx - ax) * i / count, ay + (by - ay) * i / count)
                if _in_box(point, box):
                    yield point
        ax, ay = bx, by


def _boxes_meet(
    one: tuple[float, float, float, float], two: tuple[float, float, float, float]
) -> bool:
    return one[0] < two[2] and two[0] < one[2] and one[1] < two[3] and two[1] < one[3]


def _in_box(point: Point, box: tuple[float, float, float, float]) -> bool:
    return box[0] < point[0] < box[2] and box[1] < point[1] < box[3]


def _inside(point: Point, ring: Ring) -> bool:
    """Even-odd rule."""
    x, y = point
    inside = False
    ax, ay = ring[-1]
    for bx, by in ring:
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
        ax, ay = bx, by
    return inside


def _depth(point: Point, ring: Ring) -> float:
    """Distance from a point to the ring's nearest edge [mm]."""
    x, y = point
    least = math.inf
    ax, ay = ring[-1]
    for bx, by in ring:
        dx, dy = bx - ax, by - ay
        length = dx * dx + dy * dy
        share = (
            0.0 if length == 0.0 else min(1.0, max(0.0, ((x - ax) * dx + (y - ay) * dy) / length))
        )
        least = min(least, math.hypot(x - ax - share * dx, y - ay - share * dy))
        ax, ay = bx, by
    return least
