"""A part and the shop's tools as the order problem that the search understands.

Which pairs of punch and die may make which bend is said by the same fits as everywhere else:
a pair with anything against it that forbids the bend is not allowed. A gooseneck may also sit
reversed. The strokes are the sharpest that the settings' band allows, so that what clears
here clears with the over-bend that the press will really be set to.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from flangebook.bending.clearance.problem import Problem
from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm, shoulder_centre_x_mm
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.motion.tolerance import SIGMAS, gauge_variance_mm2
from flangebook.bending.ordering.tool_edges import edges_of
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import FoldedBend, allowance_at, strip_of
from flangebook.bending.tools.outline import bed_outline, die_outline
from flangebook.bending.tools.tooling import Die, Press, Punch
from flangebook.planning.steps.operations import Operation, run_in_dimension_mm
from flangebook.planning.tools.candidates import Pair
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.ranking import STOP_COST, doubtful
from flangebook.planning.tools.tool_choice import ToolChoice, here_of

LEAST_LIFT_MM = 1.0
"""Of a pair that the press cannot open for, and that is not allowed."""
SHORT_FLANGE = "flange-too-short"


@dataclass(frozen=True, slots=True)
class ToolPair:
    """A punch, perhaps reversed, with a die."""

    punch: Punch
    die: Die

    @property
    def doubtful(self) -> bool:
        """Whether punch or die is worn or has no rating."""
        return doubtful(self.punch) or doubtful(self.die)

    @property
    def codes(self) -> Pair:
        """Codes of punch and die."""
        return (self.punch.code, self.die.code)


@dataclass(frozen=True, slots=True)
class Bending:
    """What has to be done at the press for each bend, whatever the order.

    steps: the bending step of each bend, flattening apart, in the part's order.
    """

    part: Part
    steps: tuple[Operation, ...]


def bending_of(part: Part, steps: Sequence[Operation]) -> Bending:
    """The bending step of each bend."""
    by_bend = {step.bend: step for step in steps if not step.flattens}
    return Bending(part, tuple(by_bend[n] for n in range(1, len(part.bends) + 1)))


def pairs_of(
    choice: ToolChoice, bending: Bending, dies: Sequence[Die], punches: Sequence[Punch]
) -> list[ToolPair]:
    """Every pair that may make at least one of the bends, goosenecks also reversed."""
    found = []
    for die in dies:
        for punch in punches:
            if any(_allowed(choice, step, (punch.code, die.code)) for step in bending.steps):
                found.append(ToolPair(punch, die))
                if punch.shape != "straight" or punch.points_mm:
                    found.append(ToolPair(replace(punch, turned=not punch.turned), die))
    return found


def _allowed(choice: ToolChoice, step: Operation, pair: Pair) -> bool:
    if choice.cost(step, pair) >= STOP_COST:
        return False  # for certain, without asking the bend model
    one = choice.for_step(step).fit(pair)
    return one.bend is not None and all(stop.code == SHORT_FLANGE for stop in one.stops)


def order_problem(
    choice: ToolChoice,
    bending: Bending,
    folded: Sequence[FoldedBend],
    pairs: Sequence[ToolPair],
    press: Press,
    order_limits: OrderLimits,
) -> Problem:
    """The order problem of a part whose bends come out as ``folded``, with these pairs.

    Raises:
        InputError: a tool's outline cannot be worked out.
    """
    part, equipment = choice.part, choice.equipment
    strip, count = strip_of(part, folded), len(part.bends)
    strokes = np.ones((count, len(pairs), 4))
    least_run = np.zeros((count, len(pairs)))
    allowed = np.zeros((count, len(pairs)), np.bool_)
    opens = [equipment.opens_mm(pair.punch, pair.die, part.thickness_mm) for pair in pairs]
    for b, step in enumerate(bending.steps):
        for p, pair in enumerate(pairs):
            able = _allowed(choice, step, pair.codes)
            _, one = choice.for_step(step).costs[pair.codes]
            strokes[b, p] = (0.5, 1.0, 1.0, 1.0)
            if one.bend is None:
                continue
            stroke = sharpest_stroke(one)
            if stroke is None:
                continue
            allowed[b, p] = able and opens[p] > 0.0
            strokes[b, p] = stroke
            here = here_of(one)
            beside = run_in_dimension_mm(0.0, part, step, here)
            least_run[b, p] = one.bend.min_flange_mm - beside
    edges, edge_of, upper, lower = _edges(press, equipment, pairs)
    change = [[_changes(one, two) for two in pairs] for one in pairs]
    finger = (
        press.gauge_x_min_mm, _furthest_x_mm(part, press),
        press.gauge_r_min_mm, press.gauge_r_max_mm, press.finger_height_mm, press.finger_depth_mm,
        bounds(bed_outline(press))[2],
    )  # fmt: skip
    return Problem(
        thickness=part.thickness_mm,
        length=strip.length_mm,
        at=np.array([f.at_mm for f in strip.folds]),
        angle=np.array([math.radians(f.bend_angle_deg) for f in strip.folds]),
        radius=np.array([f.inside_radius_mm for f in strip.folds]),
        allowance=np.array([f.allowance_mm for f in strip.folds]),
        strokes=strokes,
        least_run=least_run,
        allowed=allowed,
        change=np.array(change, np.int64),
        edges=edges,
        edge_of=edge_of,
        upper=upper,
        lower=lower,
        die=np.array([_die_numbers(pair.die) for pair in pairs]),
        die_height=np.array([pair.die.height_mm for pair in pairs]),
        lift=np.array([max(min(mm, press.stroke_mm), LEAST_LIFT_MM) for mm in opens]),
        margin=order_limits.margin_mm,
        can_slide=can_slide(part, press, strip.length_mm),
        finger=np.array(finger),
        gauge_variance=gauge_variance_mm2(press),
        bend_variance=np.array([_variance_mm2(f) for f in folded]),
        critical=np.array(
            [n + 1 in order_limits.critical_flats for n in range(count + 1)], np.bool_
        ),
        before=np.array(before_masks(part, order_limits), np.int64),
        no_turn_over=order_limits.no_turn_over,
        no_turn_end=order_limits.no_turn_end,
        no_change=order_limits.one_set_up,
    )


def sharpest_stroke(one: Fit) -> tuple[float, float, float, float] | None:
    """Half the sharpest loaded bend angle [rad], inside radius, allowance there and depth [mm].

    The depth follows the contact geometry, moved so that it meets the setting's own.
    """
    bend, t, die = one.bend, one.wanted.thickness_mm, one.die
    if bend is None:
        return None
    loaded, usual = bend.set_angle_deg.low, bend.set_angle_deg.nominal
    radius = max(bend.inside_radius_mm.nominal, one.punch.tip_radius_mm)
    theta = math.radians(180.0 - loaded) / 2.0
    if not 0.0 < theta < math.pi / 2.0:
        return None
    try:
        sharp, set_ = (
            punch_depth_mm(a, radius, t, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
            for a in (loaded, usual)
        )
    except (InputError, RangeError):
        return None
    depth = sharp + bend.punch_depth_mm.nominal - set_
    released = Bend(one.wanted.included_angle_deg, "up")
    allowance = allowance_at(loaded, radius, released, here_of(one), t)
    return theta, radius, allowance, max(depth, 0.1)


def _furthest_x_mm(part: Part, press: Press) -> float:
    """Furthest gauge X [mm]: what is longer than the space between the frames goes in as far as
    the throat is deep, and what is gauged reaches at least to the finger."""
    if part.bend_length_mm <= press.between_frames_mm:
        return press.gauge_x_max_mm
    return min(press.gauge_x_max_mm, press.throat_mm)


def can_slide(part: Part, press: Press, blank_mm: float) -> bool:
    """Whether the part can be slid out along the tools: between the frames, or past them."""
    if part.walled:
        return False
    free = press.between_frames_mm - part.bend_length_mm
    return free >= part.bend_length_mm or blank_mm <= press.throat_mm


def before_masks(part: Part, order_limits: OrderLimits) -> list[int]:
    """The bends that must be finished before each bend: hems first, then what is asked for."""
    count = len(part.bends)
    everyone = (1 << count) - 1
    masks = [0] * count
    if part.order is not None:
        done = 0
        for number in part.order:
            masks[number - 1] = done
            done |= 1 << (number - 1)
        return masks
    hems = sum(1 << b for b, bend in enumerate(part.bends) if bend.kind != "bend")
    for b in range(count):
        if not hems >> b & 1:
            masks[b] |= hems
        if order_limits.first is not None and b != order_limits.first - 1:
            masks[b] |= 1 << (order_limits.first - 1)
    if order_limits.last is not None:
        masks[order_limits.last - 1] |= everyone & ~(1 << (order_limits.last - 1))
    return masks


def _changes(one: ToolPair, two: ToolPair) -> int:
    return (one.punch != two.punch) + (one.die.code != two.die.code)


def _die_numbers(die: Die) -> tuple[float, float, float]:
    centre = shoulder_centre_x_mm(die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    return centre, die.shoulder_radius_mm, _half_width_mm(die)


def _half_width_mm(die: Die) -> float:
    return bounds(die_outline(die))[2]


def _variance_mm2(folded: FoldedBend) -> float:
    """Variance of what a bend takes; its deduction's band spans SIGMAS either way [mm2]."""
    low, high = folded.deduction_low_mm, folded.deduction_high_mm
    if low is None or high is None:
        return 0.0
    return ((high - low) / (2.0 * SIGMAS)) ** 2


def _edges(
    press: Press, equipment: Equipment, pairs: Sequence[ToolPair]
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    made: dict[tuple[Punch, Die], tuple[np.ndarray, np.ndarray, int]] = {}
    edges, belongs, upper, lower, first = [], [], [], [], 0
    for pair in pairs:
        key = (pair.punch, pair.die)
        if key not in made:
            made[key] = edges_of(press, equipment.holder, pair.punch, pair.die)
        mine, of, above = made[key]
        edges.append(mine)
        belongs.append(of)
        upper.append((first, first + above))
        lower.append((first + above, first + len(mine)))
        first += len(mine)
    return np.concatenate(edges), np.concatenate(belongs), np.array(upper), np.array(lower)
