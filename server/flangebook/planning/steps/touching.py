"""Whether the sheet runs into a tool as drawn: before and at the bottom of the stroke only.

Finding something here means the step cannot be made as planned. Finding nothing proves
nothing: what happens between the two poses is not looked at.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.geometry.ring import Point, Ring, bounds
from flangebook.bending.motion.pose import StepDrawing

DEPTH_MM = 0.5
"""How deep the drawn rings must run into one another to count [mm]."""
SPACING_MM = 4.0
FINE_MM = 0.8

UPPER = ("punch", "holder", "ram")
LOWER = ("die", "bed")

Pose = Literal["before", "after"]
Touch = tuple[str, Pose]
"""The tool and the pose."""

Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Sheets:
    """The sheet before and after a bend, coarse enough to compare with tools quickly."""

    before: Ring
    after: Ring

    @classmethod
    def of(cls, drawing: StepDrawing) -> Sheets:
        """The sheets of a drawing."""
        return cls(_coarse(drawing.sheet_before), _coarse(drawing.sheet_after))

    def run_into(self, drawing: StepDrawing, names: Sequence[str]) -> tuple[Touch, ...]:
        """Which of the named tools of the drawing the sheet runs into."""
        found: list[Touch] = []
        poses: tuple[tuple[Pose, Ring], ...] = (("before", self.before), ("after", self.after))
        for pose, sheet in poses:
            box = bounds(sheet)
            for name in names:
                ring = getattr(drawing, name if name in LOWER else f"{name}_{pose}")
                if ring and overlap(sheet, ring, box):
                    found.append((name, pose))
        return tuple(found)


def touches(drawing: StepDrawing) -> tuple[Touch, ...]:
    """The tools that the sheet runs into as drawn."""
    return Sheets.of(drawing).run_into(drawing, (*UPPER, *LOWER))


def _coarse(sheet: Ring) -> Ring:
    """The ring without the finest chords of its arcs, far less off than DEPTH_MM."""
    kept = [sheet[0]]
    for i in range(1, len(sheet) - 1):
        near = math.dist(kept[-1], sheet[i]) < FINE_MM
        if not (near and math.dist(kept[-1], sheet[i + 1]) < 2.0 * FINE_MM):
            kept.append(sheet[i])
    return (*kept, sheet[-1])


def overlap(sheet: Ring, tool: Ring, sheet_box: Box) -> bool:
    """Whether the two rings run into one another by more than DEPTH_MM."""
    tool_box = bounds(tool)
    if not (
        sheet_box[0] < tool_box[2]
        and tool_box[0] < sheet_box[2]
        and sheet_box[1] < tool_box[3]
        and tool_box[1] < sheet_box[3]
    ):
        return False
    return any(_deep_in(point, tool) for point in _along(sheet, tool_box)) or any(
        _deep_in(point, sheet) for point in tool if _in_box(point, sheet_box)
    )


def _along(ring: Ring, box: Box) -> Iterator[Point]:
    """Points along the ring's edges, SPACING_MM apart, that lie in the box."""
    left, bottom, right, top = box
    ax, ay = ring[-1]
    for bx, by in ring:
        beside = (ax <= left and bx <= left) or (ax >= right and bx >= right)
        if not beside and not (ay <= bottom and by <= bottom) and not (ay >= top and by >= top):
            count = max(1, math.ceil(math.hypot(bx - ax, by - ay) / SPACING_MM))
            for i in range(1, count + 1):
                x, y = ax + (bx - ax) * i / count, ay + (by - ay) * i / count
                if left < x < right and bottom < y < top:
                    yield (x, y)
        ax, ay = bx, by


def _in_box(point: Point, box: Box) -> bool:
    return box[0] < point[0] < box[2] and box[1] < point[1] < box[3]


def _deep_in(point: Point, ring: Ring) -> bool:
    """Whether a point lies inside the ring and further than DEPTH_MM from its edges."""
    return _inside(point, ring) and not _near(point, ring)


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


def _near(point: Point, ring: Ring) -> bool:
    """Whether a point lies within DEPTH_MM of an edge of the ring."""
    x, y = point
    ax, ay = ring[-1]
    for bx, by in ring:
        dx, dy = bx - ax, by - ay
        length = dx * dx + dy * dy
        share = ((x - ax) * dx + (y - ay) * dy) / length if length else 0.0
        share = min(1.0, max(0.0, share))
        if math.hypot(x - ax - share * dx, y - ay - share * dy) <= DEPTH_MM:
            return True
        ax, ay = bx, by
    return False
