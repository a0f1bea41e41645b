"""The closest approach of a part to each tool through one bend, with the two points."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from flangebook.bending.clearance.motion import depth_at, motion_of, turned
from flangebook.bending.clearance.nearest import nearest, piece_at
from flangebook.bending.clearance.pieces import MOST_SEGMENTS
from flangebook.bending.clearance.problem import (
    DIE,
    LEFT,
    RIGHT,
    Floats,
    Leg,
    Problem,
    leg_set,
)
from flangebook.bending.geometry.ring import Point

TOOLS = ("punch", "holder", "ram", "die", "bed", "floor")
SHOWN_WITHIN_MM = 1000.0
OVERLAP_POSES = 25


@dataclass(frozen=True, slots=True)
class Near:
    """Where the part comes nearest to a tool.

    distance_mm: below 0 they run into one another, by so much at the worst. included_angle_deg:
    of the bend at that moment; punch_travel_mm: from first touch. on_sheet, on_tool: press frame
    at that moment. flat: number of the part's flat, from 1.
    """

    tool: str
    distance_mm: float
    included_angle_deg: float
    punch_travel_mm: float
    on_sheet: Point
    on_tool: Point
    flat: int


def approaches(problem: Problem, made: int, bend: int, end: int, pair: int) -> tuple[Near, ...]:
    """The closest approach to each tool, nearest first; contact that belongs to bending apart.

    made: bends finished before, as a set. end: at the gauge. Bends, ends, pairs as in ``Problem``.
    """
    found = []
    for tool in range(len(TOOLS)):
        best = None
        for side in (LEFT, RIGHT):
            leg = Leg(bend, side, int(leg_set(made, bend, side, len(problem.at))))
            away, theta, piece = nearest(problem, leg, side == end, pair, tool)
            if piece >= 0 and (best is None or away < best[0]):
                best = (away, theta, piece, leg)
        if best is not None and best[0] < SHOWN_WITHIN_MM:
            found.append(_near(problem, end, pair, tool, best))
    return tuple(sorted(found, key=lambda near: near.distance_mm))


def _near(
    problem: Problem, end: int, pair: int, tool: int, best: tuple[float, float, int, Leg]
) -> Near:
    away, theta, piece, leg = best
    in_press = tool >= DIE
    motion = motion_of(problem, leg.bend, pair)
    mirror = 1.0 if leg.side == end else -1.0
    tools = _tool_edges(problem, pair, tool, in_press=in_press)

    def sheet(at: float) -> Floats:
        out = np.empty((MOST_SEGMENTS, 4))
        moment = turned(motion, at, 0.0, in_press)
        count = piece_at(problem, leg, piece, moment, mirror, out)
        return out[:count]

    overlap = 0.0
    if away <= 0.0:
        poses = np.linspace(theta, motion.theta_max, OVERLAP_POSES)
        depths = [_overlap_mm(sheet(float(at)), tools) for at in poses]
        overlap = max(depths)
        theta = float(poses[int(np.argmax(depths))])
    on_sheet, on_tool = _nearest_points(sheet(theta), tools)
    depth = depth_at(motion, theta)
    up = 0.0 if in_press else motion.thickness - depth
    return Near(
        tool=TOOLS[tool],
        distance_mm=-overlap if away <= 0.0 else away,
        included_angle_deg=180.0 - 2.0 * math.degrees(theta),
        punch_travel_mm=depth,
        on_sheet=(on_sheet[0], on_sheet[1] + up),
        on_tool=(on_tool[0], on_tool[1] + up),
        flat=leg.bend + 1 - piece if leg.side == LEFT else leg.bend + 2 + piece,
    )


def _tool_edges(problem: Problem, pair: int, tool: int, *, in_press: bool) -> Floats:
    first, past = (problem.lower if in_press else problem.upper)[pair]
    mine = problem.edges[first:past]
    chosen: Floats = mine[problem.edge_of[first:past] == tool]
    return chosen


def _nearest_points(one: Floats, two: Floats) -> tuple[Point, Point]:
    """The nearest points of two sets of edges: an end of one and a point of the other."""
    best = (math.inf, (0.0, 0.0), (0.0, 0.0))
    for points, edges, swapped in ((one, two, False), (two, one, True)):
        ends = points.reshape(-1, 1, 2)
        start, along = edges[None, :, :2], (edges[:, 2:] - edges[:, :2])[None]
        length2 = np.maximum((along**2).sum(axis=2), 1e-12)
        share = np.clip(((ends - start) * along).sum(axis=2) / length2, 0.0, 1.0)
        there = start + along * share[..., None]
        apart = np.hypot(ends[..., 0] - there[..., 0], ends[..., 1] - there[..., 1])
        i, k = np.unravel_index(int(np.argmin(apart)), apart.shape)
        if apart[i, k] < best[0]:
            p = (float(ends[i, 0, 0]), float(ends[i, 0, 1]))
            q = (float(there[i, k, 0]), float(there[i, k, 1]))
            best = (float(apart[i, k]), q, p) if swapped else (float(apart[i, k]), p, q)
    return best[1], best[2]


def _overlap_mm(sheet: Floats, tool: Floats) -> float:
    """How deep corners of the piece lie inside the tool [mm]."""
    deepest = 0.0
    ax, ay, bx, by = tool.T
    for x, y in sheet.reshape(-1, 2):
        across = (ay > y) != (by > y)
        with np.errstate(divide="ignore", invalid="ignore"):
            cut = (bx - ax) * (y - ay) / (by - ay) + ax
        if int((across & (x < cut)).sum()) % 2:
            _, here = _nearest_points(np.array([[x, y, x, y]]), tool)
            deepest = max(deepest, math.hypot(here[0] - x, here[1] - y))
    return deepest
