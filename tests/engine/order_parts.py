"""Invented parts with invented tools as order problems, many of them, from a seed."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence

import numpy as np
from bending_parts import DIE, GOOSENECK, HOLDER, PRESS, PUNCH, bend, folded, part, stroke

from flangebook.bending.clearance.problem import Problem
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.geometry.crossing import meeting
from flangebook.bending.ordering.tool_edges import edges_of
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import straight_lengths_mm, strip_of
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

TALL = Punch("T", "Tall straight", 85.0, 1.0, 180.0, 16.0, None, (500.0,))
DEEP = Punch(
    "D", "Deep gooseneck", 85.0, 1.0, 200.0, 22.0, None, (500.0,), shape="gooseneck",
    neck_relief_mm=45.0,
)  # fmt: skip
PUNCHES = (PUNCH, GOOSENECK, DEEP, TALL)
KNIFE = Punch("K", "Acute", 28.0, 1.0, 120.0, 18.0, None, (500.0,))
ACUTE = Die("A", "Acute V", 20.0, 30.0, 2.0, 70.0, 44.0, None, (500.0,))
NARROW = Holder("N", "Narrow holder", 60.0, 18.0, 18.0, None)


def problem_of(
    of: Part,
    punches: Sequence[Punch] = (PUNCH,),
    *,
    press: Press = PRESS,
    holder: Holder | None = HOLDER,
    die: Die = DIE,
    margin_mm: float = 2.0,
    can_slide: bool = True,
) -> Problem:
    """The order problem of a part with one die and any of these punches."""
    bends = folded(of)
    strip = strip_of(of, bends)
    strokes = [stroke(of, bends, number + 1, die) for number in range(len(of.bends))]
    halves = [math.radians(180.0 - s.included_angle_deg) / 2.0 for s in strokes]
    of_bend = [
        (half, s.inside_radius_mm, s.allowance_mm, s.punch_depth_mm)
        for half, s in zip(halves, strokes, strict=True)
    ]
    centre = shoulder_centre_x_mm(die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    edges, edge_of, upper, lower = [], [], [], []
    for punch in punches:
        mine, belongs, above = edges_of(press, holder, punch, die)
        first = sum(len(e) for e in edges)
        edges.append(mine)
        edge_of.append(belongs)
        upper.append((first, first + above))
        lower.append((first + above, first + len(mine)))
    pairs, count = len(punches), len(strip.folds)
    top = [p.height_mm + (holder.height_mm if holder else 0.0) for p in punches]
    room = [press.open_height_mm - h - die.height_mm - of.thickness_mm for h in top]
    return Problem(
        thickness=of.thickness_mm,
        length=strip.length_mm,
        at=np.array([f.at_mm for f in strip.folds]),
        angle=np.array([math.radians(f.bend_angle_deg) for f in strip.folds]),
        radius=np.array([f.inside_radius_mm for f in strip.folds]),
        allowance=np.array([f.allowance_mm for f in strip.folds]),
        strokes=np.array([[one] * pairs for one in of_bend]),
        least_run=np.full((count, pairs), centre),
        allowed=np.ones((count, pairs), np.bool_),
        change=np.ones((pairs, pairs), np.int64) - np.eye(pairs, dtype=np.int64),
        edges=np.concatenate(edges),
        edge_of=np.concatenate(edge_of),
        upper=np.array(upper),
        lower=np.array(lower),
        die=np.array([(centre, die.shoulder_radius_mm, die.width_mm / 2.0)] * pairs),
        die_height=np.full(pairs, die.height_mm),
        lift=np.array(room),
        margin=margin_mm,
        can_slide=can_slide,
        finger=np.array([
            press.gauge_x_min_mm, press.gauge_x_max_mm, press.gauge_r_min_mm,
            press.gauge_r_max_mm, press.finger_height_mm, press.finger_depth_mm,
            press.bed_width_mm / 2.0,
        ]),
        gauge_variance=0.01,
        bend_variance=np.full(count, 0.04),
        critical=np.zeros(count + 1, np.bool_),
        before=np.zeros(count, np.int64),
        no_turn_over=False,
        no_turn_end=False,
        no_change=False,
    )  # fmt: skip


def random_part(rnd: random.Random, bends: int, kind: str = "winding") -> Part:
    """A part of that many bends, flats short to long, not through itself.

    kind: "winding", mostly square and free to turn back on itself, as few real parts with many
    bends do; "panel", mostly square but going on from left to right; "deck", a corrugated sheet
    of blunt bends.
    """
    while True:
        made, headings = _deck(rnd, bends) if kind == "deck" else _bends(rnd, bends)
        shortest = 14.0 if kind == "winding" else 25.0
        made_part = part([rnd.uniform(shortest, 120.0) for _ in range(bends + 1)], made)
        goes_on = kind == "winding" or max(map(abs, headings)) <= 91.0
        if goes_on and fits(made_part):
            return made_part


def _bends(rnd: random.Random, count: int) -> tuple[list[Bend], list[float]]:
    """Bends each way, and the heading after each [deg]; turns back as soon as it is past square."""
    made: list[Bend] = []
    headings = [0.0]
    for _ in range(count):
        included = rnd.choice([90.0] * 5 + [135.0, 120.0])
        up = rnd.random() < 0.5 if abs(headings[-1]) < 89.0 else headings[-1] < 0.0
        if rnd.random() < 0.1:
            up = not up
        made.append(bend(included, "up" if up else "down"))
        headings.append(headings[-1] + (180.0 - included) * (1.0 if up else -1.0))
    return made, headings


def _deck(rnd: random.Random, count: int) -> tuple[list[Bend], list[float]]:
    """Down, up, up, down and so on, all alike, and the heading after each [deg]."""
    included = rnd.choice([150.0, 135.0, 120.0])
    ways = [("up", "down", "down", "up")[i % 4] for i in range(count)]
    headings = [0.0]
    for way in ways:
        headings.append(headings[-1] + (180.0 - included) * (1.0 if way == "up" else -1.0))
    return [bend(included, "up" if way == "up" else "down") for way in ways], headings


def fits(of: Part) -> bool:
    """Whether every flat keeps a straight stretch and the section does not meet itself."""
    bends = folded(of)
    if min(straight_lengths_mm(of, bends)) < 1.0:
        return False
    return meeting(strip_of(of, bends)) is None
