"""How a part comes between the tools and how it is taken out again, punch at its top.

Either the punch comes and goes straight past the part: then it lies on the die, and is drawn out
to the front, level or with a tilt. Or a flange reaches round the punch: then it rides up with the
punch, and is unhooked there by shifting and tilting. What can do neither has to slide along the
tools, if there is room beside them. The gauge is taken to be retracted, out of the way.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from flangebook.bending.clearance.by_hand import (
    NO_WAY,
    TILTS,
    UNSURE_MM,
    Scene,
    Shift,
    clears,
    distances_at,
    scene_of,
    way_to_front,
)
from flangebook.bending.clearance.legs import approach_code
from flangebook.bending.clearance.motion import motion_of, released
from flangebook.bending.clearance.part_line import (
    OTHER,
    RUN,
    SAGITTA_SHARE,
    part_line,
    punch_travel,
)
from flangebook.bending.clearance.problem import (
    DIE,
    FLOOR,
    LEFT,
    PUNCH,
    RIGHT,
    Bools,
    Floats,
    Ints,
    Leg,
    Problem,
    leg_set,
)
from flangebook.bending.clearance.sheet_on_sheet import TOUCH_MM
from flangebook.bending.clearance.sweeps import Sweeps

Way = Literal["straight", "swing", "slide", "unknown"]
Place = tuple[float, float, float]
"""The part away from where it lay at the bend: shift x, y [mm], tilt about (0, 0), the die's top
face under the punch [rad]."""

OFF_MM = 1.0
"""How far the part is first moved off what it lies on, straight or aslant."""
_ASLANT = (0.0, -1.0, 1.0)
MOST_PLACES = 400
_NOT_LOOKED_AT = -1e9
_LIES = Shift(0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class TakingOut:
    """How a part goes out after a bend, or in before it (the same way backwards).

    straight: drawn level to the front; swing: with a tilt, or unhooked from the punch; slide:
    along the tools; unknown: no way was found. rides_up: it goes up with the punch. places: the
    part's, one after another, evenly moved between; empty for slide and unknown.
    """

    way: Way
    rides_up: bool = False
    places: tuple[Place, ...] = ()


@dataclass(frozen=True, slots=True)
class Step:
    """A bend to be made: bends finished before it, as a set, and the end at the gauge."""

    made: int
    bend: int
    end: int
    pair: int


def way_out(problem: Problem, step: Step, *, passes: bool, can_slide: bool) -> TakingOut:
    """The way out after a bend.

    passes: the punch is known to come and go straight (``step_passes``). can_slide: there is
    room beside the tools.
    """
    theta = float(released(problem, motion_of(problem, step.bend, step.pair), step.bend))
    loaded = float(problem.strokes[step.bend, step.pair, 0])
    scene = _Held(problem, step, theta, can_slide=can_slide)
    if passes or all(
        _Held(problem, step, at, can_slide=can_slide).punch_passes() for at in (theta, loaded)
    ):
        return scene.from_die()
    return scene.from_punch()


def way_in(problem: Problem, step: Step, *, passes: bool, can_slide: bool) -> TakingOut:
    """The way to the die before a bend, as the way out that is gone backwards."""
    scene = _Held(problem, step, 0.0, can_slide=can_slide)
    return scene.from_die() if passes or scene.punch_passes() else scene.sideways()


def step_passes(problem: Problem, step: Step, sweeps: Sweeps) -> bool:
    """Whether the punch comes straight to the sheet and rises straight from the bend."""
    bends = len(problem.at)
    return not any(
        approach_code(
            problem,
            Leg(step.bend, side, int(leg_set(step.made, step.bend, side, bends))),
            side == step.end,
            step.pair,
            sweeps,
        )
        for side in (LEFT, RIGHT)
    )


class _Held:
    """A part at one moment of a bend, and the tools."""

    def __init__(self, problem: Problem, step: Step, theta: float, *, can_slide: bool) -> None:
        bend, pair = step.bend, step.pair
        self.can_slide = can_slide
        self.line, self.kinds = part_line(problem, step.made, bend, step.end, pair, theta)
        self.half = 0.5 * float(problem.thickness)
        self.wanted = self._wanted(problem)
        depth = punch_travel(problem, bend, pair, theta)
        self.rise = float(problem.lift[pair]) + depth
        self.tip_y = float(problem.thickness) - depth
        first, past = problem.upper[pair]
        self.upper, self.upper_of = problem.edges[first:past], problem.edge_of[first:past]
        first, past = problem.lower[pair]
        self.lower, self.lower_of = problem.edges[first:past], problem.edge_of[first:past]

    def _wanted(self, problem: Problem) -> Floats:
        """Distance of the line's stretches from each tool: half the sheet, and the margin where
        it does not lie on the tool by right."""
        half = self.half
        widest = max([*map(float, problem.radius), float(problem.strokes[:, :, 1].max())]) + half
        off = SAGITTA_SHARE * widest
        wanted = np.full((len(self.kinds), FLOOR + 1), half + float(problem.margin) + off)
        touching = half - TOUCH_MM - off
        wanted[self.kinds != OTHER, DIE] = touching
        wanted[self.kinds == RUN, PUNCH] = touching
        return wanted

    def punch_passes(self) -> bool:
        """Whether the punch comes and goes straight past the part as it lies on the die."""
        edges, of = self._upper_at(0.0), self.upper_of
        wanted = self._as_it_lies(_LIES, edges, of)
        wanted[self.kinds == RUN] = _NOT_LOOKED_AT
        scene = scene_of(self.line, edges, of, wanted)
        return bool(clears(scene, _LIES, Shift(0.0, -self.rise, 0.0)))

    def from_die(self) -> TakingOut:
        """Out from where it lies, the punch at its top."""
        return self._out(0.0, OFF_MM, self.kinds != OTHER, DIE)

    def from_punch(self) -> TakingOut:
        """Up with the punch, then off it."""
        wanted = self._as_it_lies(_LIES, self.lower, self.lower_of)
        wanted[self.kinds != OTHER, DIE] = _NOT_LOOKED_AT
        scene = scene_of(self.line, self.lower, self.lower_of, wanted)
        if not clears(scene, _LIES, Shift(0.0, self.rise, 0.0)):
            return self.sideways()
        return self._out(self.rise, -OFF_MM, self.kinds == RUN, PUNCH)

    def sideways(self) -> TakingOut:
        """Along the tools, where there is room."""
        return TakingOut("slide" if self.can_slide else "unknown")

    def _out(self, at: float, off: float, lying: Bools, on: int) -> TakingOut:
        """Out from ``at`` above where it lay at the bend, first ``off`` up or down; the stretches
        ``lying`` on a tool are not held apart from it until then."""
        edges = np.concatenate([self._upper_at(self.rise), self.lower])
        of = np.concatenate([self.upper_of, self.lower_of])
        lies, rides_up = Shift(0.0, at, 0.0), on == PUNCH
        wanted = self._as_it_lies(lies, edges, of)
        moved_off = wanted.copy()
        moved_off[lying, on] = _NOT_LOOKED_AT
        moving_off = scene_of(self.line, edges, of, moved_off)
        starts = [Shift(aslant * OFF_MM, at + off, 0.0) for aslant in _ASLANT]
        starts = [start for start in starts if clears(moving_off, lies, start)]
        scene = scene_of(self.line, edges, of, wanted)
        out = np.empty((MOST_PLACES, 3))
        for tilts in (0, TILTS):
            for start in starts:
                count = way_to_front(scene, start, tilts, out)
                if count != NO_WAY:
                    way: Way = "swing" if tilts or rides_up else "straight"
                    places = _evenly(out[:count], scene)
                    return TakingOut(way, rides_up, (lies, *places))
        return self.sideways()

    def _as_it_lies(self, at: Shift, edges: Floats, of: Ints) -> Floats:
        """What is wanted, but no more of a margin than the part has where it lies: it was shown to
        keep it there, and the line's round ends come up to half a sheet nearer than the sheet."""
        apart = np.full_like(self.wanted, np.inf)
        distances_at(scene_of(self.line, edges, of, self.wanted), at, apart)
        least = np.maximum(apart - 2.0 * UNSURE_MM, self.wanted - self.half)
        return np.where(self.wanted > self.half, np.minimum(self.wanted, least), self.wanted)

    def _upper_at(self, up: float) -> Floats:
        """The upper tools as far above where they are at this moment [mm]."""
        return np.ascontiguousarray(self.upper + np.array([0.0, 1.0, 0.0, 1.0]) * (self.tip_y + up))


def _evenly(rows: Floats, scene: Scene) -> list[Shift]:
    """The way in as few even moves as clear: from each place on to the furthest that can be
    reached in one."""
    places = [Shift(*map(float, row)) for row in rows]
    found, at, last = [places[0]], 0, len(places) - 1
    while at < last:
        further = range(last, at + 1, -1)
        at = next((i for i in further if clears(scene, places[at], places[i])), at + 1)
        found.append(places[at])
    return found
