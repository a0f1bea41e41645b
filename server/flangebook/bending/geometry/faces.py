"""What of a sheet faces the back of the press, nearly upright: something to gauge against."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.geometry.ring import TOUCH_MM, Point
from flangebook.bending.geometry.strip import Arc, Straight

Against = Literal["flat edge", "finished flange"]

MOST_LEAN_DEG = 10.0
ROUND_DEG = 5.0


@dataclass(frozen=True, slots=True)
class Face:
    """Something of the sheet that faces the back: from the point nearer the bend to the far one."""

    near: Point
    far: Point
    against: Against
    bends_between: int
    rounded: bool = False

    @property
    def low(self) -> float:
        """Height of its lower end [mm]."""
        return min(self.near[1], self.far[1])

    @property
    def high(self) -> float:
        """Height of its upper end [mm]."""
        return max(self.near[1], self.far[1])

    @property
    def upright(self) -> bool:
        """Whether the face stands exactly upright, so that the finger lies flat on it."""
        return not self.rounded and abs(self.near[0] - self.far[0]) < TOUCH_MM

    def reach(self, low: float, high: float) -> float:
        """The largest x of the face at heights from low to high [mm]."""
        (x1, y1), (x2, y2) = self.near, self.far
        if y1 == y2:
            return max(x1, x2)
        slope = (x2 - x1) / (y2 - y1)
        return max(x1 + slope * (y - y1) for y in (max(low, self.low), min(high, self.high)))


def faces(
    straights: tuple[Straight, ...], arcs: tuple[Arc | None, ...], active: int, half: float
) -> Iterator[Face]:
    """What faces the back on the gauge's side of the active bend, edge first."""
    upright = math.cos(math.radians(MOST_LEAN_DEG))
    behind = sum(bent is not None for bent in arcs[active:])
    x, y, heading = straights[-1].end
    cos, sin = math.cos(heading), math.sin(heading)
    if cos >= upright:
        low, high = (x + half * sin, y - half * cos), (x - half * sin, y + half * cos)
        yield Face(low, high, "flat edge", behind)
    between = 0
    for i in range(active, len(straights)):
        flat = straights[i]
        sin, cos = math.sin(flat.start[2]), math.cos(flat.start[2])
        if abs(sin) >= upright and flat.length_mm > 0.0:
            side = math.copysign(half, sin)
            dx, dy = side * sin, -side * cos
            near = (flat.start[0] + dx, flat.start[1] + dy)
            far = (flat.end[0] + dx, flat.end[1] + dy)
            yield Face(near, far, "finished flange", between)
        bent = arcs[i] if i < len(arcs) else None
        if bent is not None:
            between += 1
            if _rounds_back(bent):
                point = (bent.centre[0] + bent.outside_mm, bent.centre[1])
                yield Face(point, point, "finished flange", between, rounded=True)


def _rounds_back(bent: Arc) -> bool:
    """Whether the outside of a bend's arc faces straight back somewhere between its ends."""
    facing_back = math.copysign(math.pi / 2.0, bent.sweep)
    turn = math.remainder(facing_back - bent.heading, 2.0 * math.pi) / bent.sweep
    margin = math.radians(ROUND_DEG) / abs(bent.sweep)
    return margin < turn < 1.0 - margin
