"""One leg of one step of any strip, as the order problem sees it.

What the search asks of a part before its order is known, a plan asks of one step as it is drawn:
with this they ask it of the same compiled functions.
"""

from __future__ import annotations

import math
from functools import lru_cache

import numpy as np

from flangebook.bending.clearance.problem import Bools, Floats, Ints, Problem
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.ordering.tool_edges import edges_of
from flangebook.bending.tools.outline import bed_outline, die_outline
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

BEND = 0
"""The active bend's number in ``back_leg``; the leg is its RIGHT one, in tool pair 0."""
ALL_MADE = -1
"""Every fold of the leg is finished."""

Motion = tuple[float, float, float, float]
"""Half the loaded bend angle [rad], inside radius, allowance and punch depth there [mm]."""
_NO_MOTION: Motion = (0.5, 1.0, 1.0, 1.0)


def back_leg(
    strip: Strip,
    number: int,
    press: Press,
    die: Die,
    *,
    holder: Holder | None = None,
    punch: Punch | None = None,
    motion: Motion = _NO_MOTION,
) -> Problem:
    """The leg behind bend ``number`` of a strip as it lies in the press (faced already).

    Folds that are not bent take nothing and are left out. Without a punch nothing is above.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
    """
    active = strip.folds[number - 1]
    bent = [fold for fold in strip.folds[number:] if fold.bend_angle_deg]
    count = len(bent) + 1
    edges, edge_of, upper, shoulder_x, half_die, half_bed = _tools(press, holder, punch, die)
    return Problem(
        thickness=strip.thickness_mm,
        length=strip.length_mm,
        at=np.array([active.at_mm, *(fold.at_mm for fold in bent)]),
        angle=np.array([1.0, *(math.radians(fold.bend_angle_deg) for fold in bent)]),
        radius=np.array([0.0, *(fold.inside_radius_mm for fold in bent)]),
        allowance=np.array([0.0, *(fold.allowance_mm for fold in bent)]),
        strokes=np.full((count, 1, 4), motion),
        least_run=np.zeros((count, 1)),
        allowed=np.ones((count, 1), np.bool_),
        change=np.zeros((1, 1), np.int64),
        edges=edges,
        edge_of=edge_of,
        upper=np.array([[0, upper]], np.int64),
        lower=np.array([[upper, len(edges)]], np.int64),
        die=np.array([[shoulder_x, die.shoulder_radius_mm, half_die]]),
        die_height=np.array([float(die.height_mm)]),
        lift=np.ones(1),
        margin=0.0,
        can_slide=False,
        finger=_finger(press, half_bed),
        gauge_variance=0.0,
        bend_variance=np.zeros(count),
        critical=_none(count + 1),
        before=np.zeros(count, np.int64),
        no_turn_over=False,
        no_turn_end=False,
        no_change=False,
    )


@lru_cache(maxsize=256)
def _tools(
    press: Press, holder: Holder | None, punch: Punch | None, die: Die
) -> tuple[Floats, Ints, int, float, float, float]:
    """Edges of the tools, how many are above; shoulder centre, half width of die and bed [mm]."""
    edges, edge_of, upper = np.zeros((0, 4)), np.zeros(0, np.int64), 0
    if punch is not None:
        edges, edge_of, upper = edges_of(press, holder, punch, die)
    centre = shoulder_centre_x_mm(die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    half_die, half_bed = bounds(die_outline(die))[2], bounds(bed_outline(press))[2]
    return edges, edge_of, upper, centre, half_die, half_bed


def _finger(press: Press, half_bed: float) -> Floats:
    travel = (
        press.gauge_x_min_mm, press.gauge_x_max_mm, press.gauge_r_min_mm, press.gauge_r_max_mm,
    )  # fmt: skip
    sizes = (*travel, press.finger_height_mm, press.finger_depth_mm, half_bed)
    return np.array(sizes, np.float64)


def _none(count: int) -> Bools:
    return np.zeros(count, np.bool_)
