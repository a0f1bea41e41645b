"""Hands and handling in a step: what is held, what swings, hangs, sags, tips and traps fingers."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import bounds, centre
from flangebook.bending.motion import handling, holding
from flangebook.bending.motion.lying import Pressing
from flangebook.bending.motion.pose import StepDrawing
from flangebook.bending.ordering.cost import HAND_DISTANCE_MM
from flangebook.bending.part.metals import Metal
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment, Fit


def hand_checks(step: PlannedStep, equipment: Equipment) -> Iterator[Check]:
    """What the drawing of a step says of hands and handling; nothing where tools are by rule."""
    drawing, one = step.drawing, step.fit
    if drawing is None or one is None or one.bend is None or not step.owned:
        return
    speed = equipment.press.bending_speed_mm_s if equipment.press else None
    tries: tuple[Callable[[], Check | None], ...] = (
        lambda: _swing_up(drawing, one, speed),
        lambda: _hold(drawing, one),
        lambda: _hanging(drawing, one),
        lambda: _drops(drawing, one),
        lambda: _sags(step, drawing, one, one.wanted.metal),
        lambda: _at_gauge(step, drawing, one),
    )
    for attempt in tries:
        try:
            check = attempt()
        except InputError:
            continue
        if check is not None:
            yield check


def _held_mm(drawing: StepDrawing) -> float:
    """From the tools' centre line to the edge on the operator's side [mm]."""
    return -bounds(drawing.sheet_before)[0]


def _swing_up(drawing: StepDrawing, one: Fit, speed_mm_s: float | None) -> Check:
    assert one.bend is not None
    return handling.swing_up(
        _held_mm(drawing),
        one.bend.set_angle_deg.low,
        one.bend.inside_radius_mm.nominal,
        one.wanted.thickness_mm,
        one.die,
        speed_mm_s,
    )


def _hold(drawing: StepDrawing, one: Fit) -> Check:
    held, width = _held_mm(drawing), one.die.width_mm
    front = -width / 2.0
    away = max(
        (math.hypot(x - front, y) for x, y in drawing.sheet_before if x < front), default=0.0
    )
    nothing = handling.nothing_to_hold(held, width)
    return nothing or handling.hand_distance(held, width, one.wanted.bend_length_mm, away)


def _hanging(drawing: StepDrawing, one: Fit) -> Check | None:
    bottom = bounds(drawing.sheet_before)[1]
    return handling.hanging_flange(round(-bottom, 3), one.die.height_mm)


def _drops(drawing: StepDrawing, one: Fit) -> Check | None:
    before, after = centre(drawing.sheet_before)[0], centre(drawing.sheet_after)[0]
    die = one.die
    return holding.drops_behind(before - die.width_mm / 2.0, after - die.v_opening_mm / 2.0)


def _sags(step: PlannedStep, drawing: StepDrawing, one: Fit, metal: Metal) -> Check | None:
    """Only where the sheet runs flat from die to gauge: a flange between would stiffen nothing,
    but the way along the sheet is no longer the way to the gauge."""
    gauge, moves = step.gauge, drawing.moves
    if gauge is None or gauge.bends_between or not isinstance(moves, Pressing):
        return None
    behind = moves.strip.length_mm - moves.strip.folds[moves.number - 1].at_mm
    t = one.wanted.thickness_mm
    sag = holding.sag_mm(
        max(0.0, gauge.x_mm - one.die.width_mm / 2.0),
        max(0.0, behind - gauge.x_mm),
        t,
        metal.youngs_modulus_mpa.nominal,
        metal.poisson,
        metal.density_kg_m3.nominal,
    )
    return holding.sagging(sag, t - gauge.finger_bottom_mm)


def _at_gauge(step: PlannedStep, drawing: StepDrawing, one: Fit) -> Check | None:
    gauge = step.gauge
    if gauge is None:
        return None
    room = _held_mm(drawing) - one.die.width_mm / 2.0
    return holding.between_part_and_gauge(
        gauge.retract_mm,
        against_flange=gauge.against == "finished flange",
        held_close=room < HAND_DISTANCE_MM,
    )
