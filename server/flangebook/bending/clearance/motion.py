"""Where a leg is at each moment of a bend, and how fast its points go.

While the bend is made the leg turns about the bend line by theta, half of the bend angle so
far, and draws in as the arc takes its allowance. In the punch's frame (tip at (0, 0)):

    p = (R sin(theta), -t/2 + R (1 - cos(theta))) + turned by theta (q - (a/2, 0))

with R the radius of the middle line, a = allowance theta / theta_max, q in the leg's own frame.
In the press's frame (die's top face y = 0) it lies t - depth(theta) higher, with the depth of
``air_bend_geometry`` scaled to the stroke's own at theta_max. While the punch comes or goes the
leg stays, the punch is ``rise`` above it.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from flangebook.bending.clearance.problem import Problem
from flangebook.bending.compiled import kernel


class Motion(NamedTuple):
    """One bend's motion. theta_max: half the loaded bend angle [rad]. radius: of the middle line
    [mm]. allowance: of the arc at theta_max [mm]. thickness [mm]. shoulder_x, reach: of the
    depth's formula [mm]. scale: from that formula to the stroke's depth."""

    theta_max: float
    radius: float
    allowance: float
    thickness: float
    shoulder_x: float
    reach: float
    scale: float


class Turned(NamedTuple):
    """Where a leg is at one moment: turned by theta [rad] after it was drawn in, then shifted to
    x, y [mm]."""

    theta: float
    x: float
    y: float
    drawn_in: float


@kernel
def motion_of(problem: Problem, bend: int, pair: int) -> Motion:
    """The motion of a bend in a pair of tools."""
    theta_max, inside = problem.strokes[bend, pair, 0], problem.strokes[bend, pair, 1]
    t, shoulder_x = problem.thickness, problem.die[pair, 0]
    reach = inside + t + problem.die[pair, 1]
    depth = shoulder_x * math.tan(theta_max) - reach * (1.0 / math.cos(theta_max) - 1.0)
    scale = problem.strokes[bend, pair, 3] / depth if depth > 0.0 else 1.0
    return Motion(
        theta_max,
        inside + 0.5 * t,
        problem.strokes[bend, pair, 2],
        t,
        shoulder_x,
        reach,
        scale,
    )


@kernel
def released(problem: Problem, motion: Motion, bend: int) -> float:
    """Theta when the bend has sprung back [rad]; a step that ends sharper later stays as it is.

    Source: definition.

    >>> from flangebook.bending.samples import smallest_problem
    >>> problem = smallest_problem()
    >>> math.degrees(released(problem, motion_of(problem, 0, 0), 0))  # half of a bend of 90
    45.0
    """
    return float(min(0.5 * abs(problem.angle[bend]), motion.theta_max))


@kernel
def depth_at(motion: Motion, theta: float) -> float:
    """How deep the punch is at theta, from first touch [mm].

    Source: own derivation, as ``air_bend_geometry.punch_depth_mm``.

    >>> fold = Motion(math.pi / 4.0, 0.0, 0.0, 0.0, shoulder_x=8.0, reach=0.0, scale=1.0)
    >>> round(depth_at(fold, math.pi / 4.0), 6)  # a sharp fold to 90 degrees: V/2
    8.0
    """
    across = motion.shoulder_x * math.tan(theta)
    return motion.scale * (across - motion.reach * (1.0 / math.cos(theta) - 1.0))


@kernel
def turned(motion: Motion, theta: float, rise: float, in_press: bool) -> Turned:
    """Where a leg is at theta, the punch that much above it.

    Source: own derivation, as at the top of the module.

    >>> fold = Motion(math.pi / 4.0, 0.0, 0.0, 0.0, shoulder_x=8.0, reach=0.0, scale=1.0)
    >>> at = turned(fold, math.pi / 4.0, 0.0, True)
    >>> round(at.x, 6), round(at.y, 6), at.drawn_in
    (0.0, -8.0, 0.0)
    """
    drawn_in = 0.5 * motion.allowance * theta / motion.theta_max
    x = motion.radius * math.sin(theta)
    y = -0.5 * motion.thickness + motion.radius * (1.0 - math.cos(theta)) - rise
    if in_press:
        y += motion.thickness - depth_at(motion, theta)
    return Turned(theta, x, y, drawn_in)


@kernel
def speed_bound(motion: Motion, furthest: float, in_press: bool) -> float:
    """No point within ``furthest`` of the bend line goes faster than this [mm/rad], by theta.

    Source: own derivation, as at the top of the module.

    >>> fold = Motion(math.pi / 4.0, 0.0, 0.0, 0.0, shoulder_x=8.0, reach=0.0, scale=1.0)
    >>> round(speed_bound(fold, 100.0, True), 6)  # the turn's 100, the punch's 8/cos² of 45 degrees
    116.0
    """
    drawn_in = 0.5 * motion.allowance / motion.theta_max
    speed = furthest + abs(motion.radius - drawn_in)
    if in_press:
        sec = 1.0 / math.cos(motion.theta_max)
        speed += motion.scale * max(motion.shoulder_x, motion.reach) * sec * sec
    return speed
