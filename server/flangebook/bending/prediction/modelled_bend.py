"""The bend model solved for one bend; ``air_bend`` keeps what it found.

Everything is per millimetre of bend length, so the length of a bend does not matter. Where a
die's flanks would end the bend before it is sharp enough, the sheet is followed past them with
the same shoulders: the loaded angle that comes out is then sharper than the die's, and
``bend_checks.sharper_than_tools`` says stop.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from functools import lru_cache
from math import radians, tan
from typing import NamedTuple

import numpy as np

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.sheet_model.bands import FRICTION_USUAL, banded_bend
from flangebook.bending.sheet_model.hardening_from_strength import law_of
from flangebook.bending.sheet_model.moment_curvature import SheetLaw
from flangebook.bending.sheet_model.roots import NoRootError
from flangebook.bending.sheet_model.stroke import FLATTEST_DEG, SetBend, StrokeCurve, solved, stroke
from flangebook.bending.sheet_model.tools import (
    LEAST_V_OVER_T,
    MOST_V_OVER_T,
    Tools,
    steepest_half_angle,
    tools,
)

KEPT_CURVES = 256
SHARPER_THAN_WANTED_DEG = 15.0
SHARPEST_DIE_DEG = 5.0
BESIDE_DEG, BESIDE_POINTS = 10.0, 21
LEAST_RADIUS_OVER_T = 0.05
"""A sharper inside radius than this [t] is no answer: it lies far below the cases that the radius
is fitted to (tests/reference/finite_elements), and no sheet folds to nothing. Own limit."""


@dataclass(frozen=True, slots=True, eq=False)
class ModelledBend:
    """The model's own figures for a bend, with its own bands, per millimetre of bend length.

    A solution is equal to itself alone: its curves are kept by it.

    case: what it was solved for. nominal: at the nominal figures. force_n_per_mm: greatest on
    the way to the set angle. depth_mm: from first touch. radius_mm: inside, released.
    """

    case: BendCase
    nominal: SetBend
    force_n_per_mm: Estimate
    springback_deg: Estimate
    depth_mm: Estimate
    radius_mm: Estimate

    def depth_at_set(self, set_angle_deg: float) -> float:
        """Punch depth [mm] at a loaded angle near the set one; by the slope there where the tools
        or the flat sheet end before it."""
        near, own = beside(self), self.nominal
        if near.set_deg and near.set_deg[-1] <= set_angle_deg <= near.set_deg[0]:
            turned = near.depth_at_angle(set_angle_deg) - near.depth_at_angle(own.set_angle_deg)
        else:
            turned = own.depth_per_degree_mm * (own.set_angle_deg - set_angle_deg)
        return self.depth_mm.nominal + turned

    def springback_at(self, released_deg: float) -> float | None:
        """Springback [deg] of the same sheet in the same tools at another released angle; None
        where the tools end the bend before it."""
        if released_deg == self.nominal.released_angle_deg:
            return self.nominal.springback_deg
        curve = whole_stroke(self)
        released, loaded = curve.released_angle_deg, curve.loaded_angle_deg
        if not released[-1] <= released_deg <= released[0]:
            return None
        at = float(np.interp(-released_deg, np.negative(released), loaded))
        return released_deg - at


class Beside(NamedTuple):
    """The bend near its setting, flattest first: released and loaded included angle [deg] and
    punch depth [mm]."""

    released_deg: tuple[float, ...]
    set_deg: tuple[float, ...]
    depth_mm: tuple[float, ...]

    def set_at(self, released_deg: float) -> float:
        """Loaded angle [deg] for a released one, straight between the points."""
        return float(np.interp(-released_deg, np.negative(self.released_deg), self.set_deg))

    def released_at(self, set_deg: float) -> float:
        """Released angle [deg] of a loaded one, straight between the points."""
        return float(np.interp(-set_deg, np.negative(self.set_deg), self.released_deg))

    def depth_at_angle(self, set_deg: float) -> float:
        """Punch depth [mm] at a loaded angle [deg], straight between the points."""
        return float(np.interp(-set_deg, np.negative(self.set_deg), self.depth_mm))

    def depth_at(self, released_deg: float) -> float:
        """Punch depth [mm] for a released angle [deg], straight between the points."""
        return float(np.interp(-released_deg, np.negative(self.released_deg), self.depth_mm))


def modelled_bend(case: BendCase) -> ModelledBend | str:
    """The model's solution [N/mm, mm, deg], or why the model does not hold for this bend.

    Args:
        case: sheet, bend and tools; its length does not count.

    Raises:
        InputError: punch or shoulders do not fit the opening.
        RangeError: the sheet fills the opening before it is bent so far.

    Source: the bend model (``sheet_model``) with its own.

    >>> from flangebook.bending.samples import CASE
    >>> found = modelled_bend(CASE)
    >>> round(found.force_n_per_mm.nominal), round(found.springback_deg.nominal, 1)
    (111, 1.8)
    """
    die_and_punch = _tools(case)
    why = _outside(case)
    if why:
        return why
    try:
        found = _banded(case, die_and_punch)
    except NoRootError:
        return "its equations did not settle"
    if found.nominal.released_radius_mm < LEAST_RADIUS_OVER_T * case.thickness_mm:
        return "it finds next to no inside radius, which no sheet has"
    return found


def _outside(case: BendCase) -> str:
    """Why the model is not for this bend, empty where it is."""
    over_t = case.die.v_opening_mm / case.thickness_mm
    if not LEAST_V_OVER_T <= over_t <= MOST_V_OVER_T:
        return f"it holds for openings of 4 t to 40 t, this one is {over_t:.3g} t"
    if case.included_angle_deg > FLATTEST_DEG:
        return f"it holds from {FLATTEST_DEG:g} degrees down"
    try:
        law_of(case.metal, case.thickness_mm)
    except InputError as error:
        return f"it cannot use the metal's figures: {error.what}"
    return ""


def _tools(case: BendCase) -> Tools:
    return tools(*case.v, case.punch_radius_mm, FRICTION_USUAL)


def _banded(case: BendCase, die_and_punch: Tools) -> ModelledBend:
    metal, t, wanted = case.metal, case.thickness_mm, case.included_angle_deg
    try:
        found = banded_bend(metal, t, die_and_punch, wanted)
    except RangeError:
        past = _past_the_flanks(die_and_punch, wanted)
        if past is None or past.v_opening_mm < LEAST_V_OVER_T * t:
            raise
        found = banded_bend(metal, t, past, wanted)
    return ModelledBend(
        case,
        SetBend(*(float(getattr(found.nominal, f.name)) for f in fields(SetBend))),
        _plain(found.force_n_per_mm),
        _plain(found.springback_deg),
        _plain(found.depth_mm),
        _plain(found.released_radius_mm),
    )


def _plain(one: Estimate) -> Estimate:
    """The same with Python's own floats, which are quicker to work with one by one."""
    return Estimate(float(one.low), float(one.nominal), float(one.high), one.origin, one.basis)


def _past_the_flanks(real: Tools, wanted_deg: float) -> Tools | None:
    """A sharper die with the same shoulders, or None where the die is sharp already."""
    angle = max(wanted_deg - SHARPER_THAN_WANTED_DEG, SHARPEST_DIE_DEG)
    if angle >= real.die_angle_deg:
        return None
    flank = radians(90.0 - angle / 2.0)
    reach = real.shoulder_radius_mm * tan(flank / 2.0)
    opening = 2.0 * (float(real.shoulder_x_mm) - reach)
    return Tools(opening, angle, real.shoulder_radius_mm, real.punch_radius_mm, real.friction)


@lru_cache(maxsize=KEPT_CURVES)
def beside(found: ModelledBend) -> Beside:
    """The bend some degrees to either side of its setting, past the die's flanks: where the
    depth's zero or the sheet is not as thought, the die is not yet reached."""
    law, real = _sheet_and_tools(found)
    die_and_punch = _past_the_flanks(real, found.case.included_angle_deg) or real
    middle = np.radians(180.0 - found.nominal.set_angle_deg) / 2.0
    step = np.radians(np.linspace(-BESIDE_DEG, BESIDE_DEG, BESIDE_POINTS)) / 2.0
    theta = middle + step
    steepest = steepest_half_angle(law.thickness_mm, die_and_punch)
    theta = theta[(theta > np.radians(0.25)) & (theta < steepest)]
    at = solved(law, die_and_punch, theta)
    closes = at.closes
    turn = 2.0 * np.degrees(theta[closes])
    released = 180.0 - turn + np.degrees(at.springback[closes])
    return Beside(
        tuple(map(float, released)),
        tuple(map(float, 180.0 - turn)),
        tuple(map(float, at.depth[closes])),
    )


@lru_cache(maxsize=KEPT_CURVES)
def whole_stroke(found: ModelledBend) -> StrokeCurve:
    """The bend from first touch to where the tools end it."""
    return stroke(*_sheet_and_tools(found))


@lru_cache(maxsize=KEPT_CURVES)
def energy_gap(found: ModelledBend) -> float:
    """By what share [-] the punch's work misses the sheet's energy at the set angle when the
    shoulders do not rub: a measure of the solution, which should be nought.

    Source: balance of energy.

    >>> from flangebook.bending.samples import CASE
    >>> energy_gap(modelled_bend(CASE)) < 0.01
    True
    """
    law, die_and_punch = _sheet_and_tools(found)
    smooth = stroke(law, replace(die_and_punch, friction=0.0))
    at = -found.nominal.set_angle_deg
    work, energy = (
        float(np.interp(at, -smooth.loaded_angle_deg, one))
        for one in (smooth.work_n, smooth.sheet_energy_n)
    )
    return abs(work - energy) / work


def _sheet_and_tools(found: ModelledBend) -> tuple[SheetLaw, Tools]:
    """The sheet and the tools the solution holds for; past the flanks where it went there."""
    case = found.case
    law, real = law_of(case.metal, case.thickness_mm), _tools(case)
    half = radians(180.0 - found.nominal.set_angle_deg) / 2.0
    if half < steepest_half_angle(case.thickness_mm, real):
        return law, real
    return law, _past_the_flanks(real, case.included_angle_deg) or real
