"""Small invented things that the examples in docstrings are worked with.

A soft steel sheet of 2 mm, a V of 16 mm with its punch, a press; a Z of two square bends, and a
tray. None of them is a recommendation.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.box.box import PAIRS, Box, Pair, Side
from flangebook.bending.box.shape import BoxShape, Section, box_shape, section_as_folded
from flangebook.bending.clearance.problem import BED, DIE, PUNCH, RAM, Problem
from flangebook.bending.learning.result import SetUp
from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import FoldedBend, strip_of
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.tools.tooling import Die, Press, Punch


def _figure(low: float, nominal: float, high: float) -> Figure:
    return Figure(low, nominal, high, "invented for examples", "typical")


STEEL = Metal(
    code="steel",
    name="Soft steel of the examples",
    youngs_modulus_mpa=_figure(200_000.0, 207_000.0, 210_000.0),
    yield_mpa=_figure(180.0, 200.0, 280.0),
    tensile_mpa=_figure(280.0, 340.0, 410.0),
    density_kg_m3=_figure(7_800.0, 7_850.0, 7_900.0),
    radius_over_v=_figure(0.125, 0.16, 0.175),
    springback_at_90_deg=_figure(0.5, 1.2, 1.7),
    hardening_k_mpa=_figure(500.0, 570.0, 600.0),
    hardening_n=_figure(0.16, 0.21, 0.26),
    gauge_family="steel",
)
V16 = Die("V16", "V 16 mm", 16.0, 86.0, 2.0, 80.0, 40.0, 600.0, (835.0,))
STRAIGHT = Punch("S1", "Straight", 85.0, 1.0, 110.0, 20.0, 600.0, (835.0,))
BRAKE = Press(
    "Press of the examples",
    force_kn=400.0,
    bed_length_mm=1600.0,
    between_frames_mm=1280.0,
    open_height_mm=400.0,
    stroke_mm=250.0,
    throat_mm=200.0,
    gauge_x_min_mm=4.0,
    gauge_x_max_mm=600.0,
    gauge_r_min_mm=-10.0,
    gauge_r_max_mm=140.0,
    finger_height_mm=10.0,
    finger_depth_mm=60.0,
    gauge_repeatability_mm=0.1,
)
CASE = BendCase(STEEL, 2.0, 1000.0, 90.0, V16, 1.0)
SET_UP = SetUp(CASE)

FOLDED = (FoldedBend(inside_radius_mm=2.0, allowance_mm=4.0),) * 2
Z = Part(
    "Z", "steel", 2.0, 100.0, (20.0, 30.0, 20.0), (Bend(90.0, "up"), Bend(90.0, "down"))
)  # fmt: skip
Z_STRIP = strip_of(Z, FOLDED)

_WALL = Side((30.0,), (Bend(90.0, "up"),))
TRAY = Box(
    "Tray", "steel", 2.0, length_mm=300.0, width_mm=200.0, left=_WALL, right=_WALL, front=_WALL,
    back=_WALL,
)  # fmt: skip


def tray_shape() -> BoxShape:
    """The tray with every bend coming out like those of the Z."""
    sections: dict[Pair, Section | None] = {
        pair: section_as_folded(TRAY, pair, FOLDED) for pair in PAIRS
    }
    return box_shape(TRAY, {pair: one for pair, one in sections.items() if one is not None})


def smallest_problem() -> Problem:
    """A Z of two bends, a punch, a ram, a die, a bed: small, but an order problem like any."""
    boxes = [
        (PUNCH, [(0.0, 0.0), (8.0, 20.0), (8.0, 100.0), (-8.0, 100.0), (-8.0, 20.0)]),
        (RAM, [(-40.0, 100.0), (40.0, 100.0), (40.0, 300.0), (-40.0, 300.0)]),
        (DIE, [(-20.0, -60.0), (20.0, -60.0), (20.0, 0.0), (8.0, 0.0), (0.0, -7.0), (-8.0, 0.0),
               (-20.0, 0.0)]),
        (BED, [(-50.0, -260.0), (50.0, -260.0), (50.0, -60.0), (-50.0, -60.0)]),
    ]  # fmt: skip
    edges = [(*p, *q) for _, ring in boxes for p, q in zip(ring, ring[1:] + ring[:1], strict=True)]
    of = [tool for tool, ring in boxes for _ in ring]
    upper = sum(tool in (PUNCH, RAM) for tool in of)
    quarter = math.pi / 2.0
    stroke = (quarter / 2.0, 1.5, 3.0, 5.0)
    return Problem(
        thickness=2.0,
        length=120.0,
        at=np.array([40.0, 80.0]),
        angle=np.array([quarter, -quarter]),
        radius=np.full(2, 1.5),
        allowance=np.full(2, 3.0),
        strokes=np.full((2, 1, 4), stroke),
        least_run=np.full((2, 1), 12.0),
        allowed=np.ones((2, 1), np.bool_),
        change=np.zeros((1, 1), np.int64),
        edges=np.array(edges),
        edge_of=np.array(of),
        upper=np.array([[0, upper]]),
        lower=np.array([[upper, len(edges)]]),
        die=np.array([[8.0, 1.0, 20.0]]),
        die_height=np.array([60.0]),
        lift=np.array([100.0]),
        margin=2.0,
        can_slide=True,
        finger=np.array([5.0, 600.0, -20.0, 200.0, 10.0, 60.0, 50.0]),
        gauge_variance=0.01,
        bend_variance=np.full(2, 0.01),
        critical=np.zeros(3, np.bool_),
        before=np.zeros(2, np.int64),
        no_turn_over=False,
        no_turn_end=False,
        no_change=False,
    )
