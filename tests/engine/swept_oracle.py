"""One step's motion looked at densely with a general geometry library, for comparison.

Nothing here is taken from the compiled sweep: the sheet is folded by ``bending.strip`` at each
moment, cut into straights and arcs, and every distance is shapely's.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from flangebook.bending.outline import tool_stack
from flangebook.bending.part import Direction
from flangebook.bending.pose import End, facing
from flangebook.bending.strip import Arc, Straight, Strip, start_for, trace
from flangebook.bending.tooling import Die, Holder, Press, Punch

POSES = 48
CLOSER = 3
SLACK_MM = 0.02
ARC_DEG = 3.0


@dataclass(frozen=True)
class Step:
    """A step: the faced strip before it, the active bend in it, and how it is bent.

    theta: half the loaded bend angle [rad]. radius, allowance, depth: of the stroke [mm].
    """

    strip: Strip
    number: int
    theta: float
    radius: float
    allowance: float
    depth: float
    press: Press
    holder: Holder | None
    punch: Punch
    die: Die
    shoulder_x: float
    margin: float


def step_of(
    strip: Strip, number: int, direction: Direction, end: End, stroke: tuple[float, ...],
    press: Press, holder: Holder | None, punch: Punch, die: Die, shoulder_x: float, margin: float,
) -> Step:  # fmt: skip
    """The step as it lies in the press, that end at the back."""
    faced, n = facing(strip, number, direction, end)
    return Step(faced, n, *stroke, press, holder, punch, die, shoulder_x, margin)


def least_slack_mm(step: Step) -> float:
    """By how much the worst moment keeps more distance than it must [mm]; < 0 is too near."""
    shares = np.linspace(0.0, 1.0, POSES)
    slack = np.array([_slack(step, float(s)) for s in shares])
    width = shares[1]
    for _ in range(CLOSER):
        i = int(np.argmin(slack))
        near = np.clip(shares[i] + width * np.linspace(-1.0, 1.0, 9), 0.0, 1.0)
        slack = np.concatenate([slack, [_slack(step, float(s)) for s in near]])
        shares = np.concatenate([shares, near])
        width /= 4.0
    return float(slack.min())


def _depth(step: Step, theta: float) -> float:
    reach = step.radius + step.strip.thickness_mm + step.die.shoulder_radius_mm

    def formula(at: float) -> float:
        return step.shoulder_x * math.tan(at) - reach * (1.0 / math.cos(at) - 1.0)

    return formula(theta) * step.depth / formula(step.theta)


def _slack(step: Step, share: float) -> float:
    theta, t = step.theta * share, step.strip.thickness_mm
    depth = _depth(step, theta)
    bent = step.strip.with_fold(
        step.number, math.degrees(2.0 * theta), step.radius, step.allowance * share
    )
    straights, arcs = trace(bent, start_for(bent, step.number, (0.0, t / 2.0 - depth, 0.0)))
    stack = tool_stack(step.press, step.holder, step.punch, step.die, t - depth)
    tools = {
        name: shapely.Polygon(getattr(stack, name))
        for name in ("punch", "holder", "ram", "die", "bed")
        if getattr(stack, name)
    }
    worst = math.inf
    for side in (-1, 1):
        for piece, place in _wing(straights, arcs, step.number, side, t):
            for name, tool in tools.items():
                slack = _wanted(piece, place, name, tool, step.margin)
                worst = min(worst, slack)
    return worst


def _wanted(piece: BaseGeometry, place: str, name: str, tool: BaseGeometry, margin: float) -> float:
    """The distance beyond what is wanted of this piece from this tool."""
    if place == "run" and name == "die":
        return math.inf
    if (place == "run" and name == "punch") or (place == "resting" and name == "die"):
        thinner = piece.buffer(-SLACK_MM, join_style="mitre")
        overlap = shapely.intersection(thinner, tool).area
        return -overlap if overlap > 0.0 else math.inf
    return float(shapely.distance(piece, tool)) - margin


def _wing(
    straights: tuple[Straight, ...], arcs: tuple[Arc | None, ...], number: int, side: int, t: float
) -> list[tuple[BaseGeometry, str]]:
    """The pieces on one side of the active bend, outwards, and how each may lie on the tools."""
    flats = straights[number:] if side > 0 else straights[number - 1 :: -1]
    bends = arcs[number:] if side > 0 else arcs[number - 2 :: -1] if number > 1 else ()
    found, place, folds = [], "run", 0
    for i, flat in enumerate(flats):
        if flat.length_mm > 1e-9:
            found.append((_rectangle(flat, t), place))
        if i < len(bends):
            arc = bends[i]
            if arc is not None:
                folds += 1
                up = (arc.sign > 0.0) if side > 0 else (arc.sign > 0.0)
                place = "resting" if folds == 1 and up else "free"
                found.append((_ring(arc), place))
    return found


def _rectangle(flat: Straight, t: float) -> BaseGeometry:
    line = shapely.LineString([flat.start[:2], flat.end[:2]])
    return line.buffer(t / 2.0, cap_style="flat")


def _ring(arc: Arc) -> BaseGeometry:
    count = max(2, math.ceil(math.degrees(abs(arc.sweep)) / ARC_DEG))
    shares = [i / count for i in range(count + 1)]
    outer = [arc.point(s, arc.outside_mm) for s in shares]
    inner = [arc.point(s, max(arc.inside_mm, 1e-6)) for s in reversed(shares)]
    return shapely.Polygon(outer + inner).buffer(0.0)
