"""Bands of a modelled bend: what the spread of sheet, metal, friction and tools is worth.

Each cause is moved to its two ends, one at a time, and the bend solved again; all of those
solves run together as rows of one. The effects of a side add up as a root of squares with the
model's own doubt, since it would be rare for all to be at their ends at once. The own doubt is set
so that nine in ten of the published figures lie inside; tests/reference/test_modelled_bands.py
has the table. A safety check still takes the highest of this band and the published relations.

    cause           ends
    --------------  ----------------------------------------------------------------------
    thickness       the sheet's tolerance, either way
    strength        the metal's lowest and highest yield strength, K with it
    hardening       the lowest and highest n, K so that the tensile strength stays
    friction        0.05 to 0.2 about the usual 0.1 (common practice, no source)
    punch tip       worn or not as marked: 10 %, at least 0.1 mm (common practice, no source)
    die shoulder    the same
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import TYPE_CHECKING, Any

import numpy as np

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Metal
from flangebook.bending.sheet_model.hardening_from_strength import (
    Hardening,
    hardening_of,
    k_from_tensile,
    law_of,
)
from flangebook.bending.sheet_model.moment_curvature import SheetLaw, sheet_law
from flangebook.bending.sheet_model.pressed import Pressed
from flangebook.bending.sheet_model.stroke import SetBend, parabola, rows, set_bend, solved
from flangebook.bending.sheet_model.tools import Tools, steepest_half_angle

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

FRICTION_LOW, FRICTION_USUAL, FRICTION_HIGH = 0.05, 0.10, 0.20
RADIUS_DOUBT_SHARE, RADIUS_DOUBT_LEAST_MM = 0.10, 0.1
THICKNESS_DOUBT_SHARE = 0.05
# Own doubt of the model, down and up, as shares of the value. Force: the published charts lie from
# 0.9 to 1.4 of it. Springback: finite elements agree to 0.06 degrees, but common practice speaks of
# less by up to half. Radius and depth: finite elements, and the shares of V that shops go by.
FORCE_DOUBT = (0.10, 0.40)
SPRINGBACK_DOUBT = (0.45, 0.10)
RADIUS_DOUBT = (0.12, 0.12)
DEPTH_DOUBT_PER_T = 0.02
LEAST_SPRINGBACK_DOUBT_DEG = 0.15
BASIS = "bend model over the spread of thickness, strength, hardening, friction and tool radii"


@dataclass(frozen=True, slots=True)
class Effect:
    """What one cause is worth, low end and high end, beside the nominal."""

    cause: str
    force_n_per_mm: tuple[float, float]
    springback_deg: tuple[float, float]
    depth_mm: tuple[float, float]
    released_radius_mm: tuple[float, float]


@dataclass(frozen=True, slots=True)
class BandedBend:
    """A modelled bend with its bands and what each cause adds to them.

    nominal: at the nominal figures. force_n_per_mm: greatest on the way to the set angle.
    """

    nominal: SetBend
    force_n_per_mm: Estimate
    springback_deg: Estimate
    set_angle_deg: Estimate
    depth_mm: Estimate
    released_radius_mm: Estimate
    effects: tuple[Effect, ...]


def banded_bend(
    metal: Metal,
    thickness_mm: float,
    tool: Tools,
    released_angle_deg: float,
    thickness_tolerance_mm: float | None = None,
    uniform_elongation: float | None = None,
) -> BandedBend:
    """Model one bend with its bands [N/mm, mm, deg].

    Args:
        metal: the sheet's metal, with the ends of its figures.
        thickness_mm: t [mm].
        tool: die and punch, with the usual friction.
        released_angle_deg: wanted included angle after release [deg].
        thickness_tolerance_mm: how far t may be off [mm]; None takes 5 % of t.
        uniform_elongation: A_g [-] where known; only used for a metal without K and n.

    Raises:
        InputError: a figure is unusable.
        RangeError: the tools do not allow the angle; the words say what would.

    Source: own method, as at the top of the module; the bend model with its own.

    >>> from flangebook.bending.samples import STEEL
    >>> found = banded_bend(STEEL, 2.0, Tools(16.0, 86.0, 2.0, 1.0, 0.1), 90.0)
    >>> round(found.springback_deg.nominal, 1)
    1.8
    """
    off = THICKNESS_DOUBT_SHARE * thickness_mm if thickness_tolerance_mm is None else (
        thickness_tolerance_mm
    )  # fmt: skip
    if not 0.0 <= off < 0.5 * thickness_mm:
        raise InputError(f"A tolerance of {off:g} mm on {thickness_mm:g} mm sheet is no tolerance.",
                         "thickness_tolerance_mm", "Give a smaller one.")  # fmt: skip
    law = law_of(metal, thickness_mm, uniform_elongation)
    nominal = set_bend(law, tool, released_angle_deg)
    causes = _causes(metal, hardening_of(metal, uniform_elongation), law, tool, off)
    effects = _effects(law, tool, nominal, causes)
    return _banded(nominal, effects, thickness_mm)


Ends = tuple[str, tuple[SheetLaw, Tools], tuple[SheetLaw, Tools]]


def _causes(
    metal: Metal, hardening: Hardening, law: SheetLaw, tool: Tools, off_mm: float
) -> list[Ends]:
    def sheet(low: SheetLaw, high: SheetLaw, cause: str) -> Ends:
        return cause, (low, tool), (high, tool)

    def tooling(low: Tools, high: Tools, cause: str) -> Ends:
        return cause, (law, low), (law, high)

    tip, shoulder = tool.punch_radius_mm, tool.shoulder_radius_mm
    tip_off, shoulder_off = _radius_doubt(tip), _radius_doubt(shoulder)
    half = tool.v_opening_mm / 2.0
    return [
        sheet(
            replace(law, thickness_mm=law.thickness_mm - off_mm),
            replace(law, thickness_mm=law.thickness_mm + off_mm),
            "thickness",
        ),
        sheet(
            _of_strength(law, metal, metal.yield_mpa.low, metal.tensile_mpa.low),
            _of_strength(law, metal, metal.yield_mpa.high, metal.tensile_mpa.high),
            "strength",
        ),
        sheet(
            _of_hardening(law, hardening.n.low),
            _of_hardening(law, hardening.n.high),
            "hardening",
        ),
        tooling(
            replace(tool, friction=min(FRICTION_LOW, tool.friction)),
            replace(tool, friction=max(FRICTION_HIGH, tool.friction)),
            "friction",
        ),
        tooling(
            replace(tool, punch_radius_mm=max(tip - tip_off, 0.0)),
            replace(tool, punch_radius_mm=min(tip + tip_off, half)),
            "punch tip",
        ),
        tooling(
            replace(tool, shoulder_radius_mm=max(shoulder - shoulder_off, 0.0)),
            replace(tool, shoulder_radius_mm=min(shoulder + shoulder_off, half)),
            "die shoulder",
        ),
    ]


def _radius_doubt(radius_mm: float) -> float:
    return max(RADIUS_DOUBT_SHARE * radius_mm, RADIUS_DOUBT_LEAST_MM)


def _of_strength(law: SheetLaw, metal: Metal, yield_mpa: float, tensile_mpa: float) -> SheetLaw:
    """The sheet at one end of its strength: Y as given, K in the share of the tensile strength.

    Y stays under what K would be at a strain of 0.2, so that the metal still hardens.
    """
    k = law.k_mpa * tensile_mpa / metal.tensile_mpa.nominal
    if law.n == 0.0:
        return _remade(law, yield_mpa, yield_mpa, 0.0)
    return _remade(law, min(yield_mpa, k * 0.2**law.n), k, law.n)


def _of_hardening(law: SheetLaw, n: float) -> SheetLaw:
    """The sheet at another n, K changed so that the tensile strength stays what it was."""
    if law.n == 0.0 or n == 0.0:
        return law
    k = law.k_mpa * k_from_tensile(1.0, n) / k_from_tensile(1.0, law.n)
    return _remade(law, min(law.yield_mpa, k * 0.2**n), k, n)


def _remade(law: SheetLaw, yield_mpa: float, k_mpa: float, n: float) -> SheetLaw:
    return sheet_law(law.youngs_modulus_mpa, yield_mpa, k_mpa, n, law.thickness_mm, law.poisson)


def _effects(law: SheetLaw, tool: Tools, nominal: SetBend, causes: list[Ends]) -> list[Effect]:
    variants = [(law, tool), *[end for _, *ends in causes for end in ends]]
    steepest = min(steepest_half_angle(s.thickness_mm, d) for s, d in variants)
    at_set = np.radians((180.0 - nominal.set_angle_deg) / 2.0)
    at_peak = np.radians((180.0 - nominal.peak_angle_deg) / 2.0)
    top = min(at_set + np.radians(1.5), steepest * 0.999)
    angles = np.concatenate(
        [top - np.radians([3.0, 1.5, 0.0]), at_peak * np.array([0.8, 1.0, 1.2])]
    )
    angles = np.clip(angles, 1e-3, steepest * 0.999)
    sheets = [s for s, _ in variants for _ in angles]
    dies = [d for _, d in variants for _ in angles]
    figures: list[Any] = [_stack(sheets, f.name) for f in fields(SheetLaw)]
    sizes: list[Any] = [_stack(dies, f.name) for f in fields(Tools)]
    found = solved(SheetLaw(*figures), Tools(*sizes), np.tile(angles, len(variants)))
    count = len(angles)
    results = [
        _at_wanted(rows(found, slice(i * count, (i + 1) * count)), nominal, float(at_set))
        for i in range(len(variants))
    ]
    base = results[0]
    return [
        Effect(
            cause,
            *[
                (float(results[1 + 2 * i][q] - base[q]), float(results[2 + 2 * i][q] - base[q]))
                for q in range(4)
            ],
        )
        for i, (cause, *_) in enumerate(causes)
    ]


def _stack(items: list[SheetLaw] | list[Tools], name: str) -> Array:
    return np.array([getattr(item, name) for item in items], dtype=float)


def _at_wanted(found: Pressed, nominal: SetBend, at_set: float) -> Array:
    """Force, springback, depth and radius of one variant at the wanted released angle."""
    near = rows(found, slice(0, 3))
    released = 180.0 - np.degrees(2.0 * near.theta - near.springback)
    along = parabola(released, near.theta, nominal.released_angle_deg)

    def there(values: Array) -> float:
        return parabola(near.theta, values, along)

    if not np.all(found.closes) or not np.isfinite(along):
        raise RangeError(
            "With the sheet at the ends of its tolerance the bend all but fills the opening.",
            "v_opening_mm",
            "Use a wider V or a punch with a smaller tip.",
        )
    high = rows(found, slice(3, None))
    within = high.force[high.theta <= at_set + 1e-9]
    peak = max(within.max() if len(within) else 0.0, there(near.force))
    return np.array(
        [
            peak,
            float(np.degrees(there(near.springback))),
            there(near.depth),
            there(near.released_radius),
        ]
    )


def _banded(nominal: SetBend, effects: list[Effect], thickness_mm: float) -> BandedBend:
    def band(value: float, name: str, own: tuple[float, float]) -> Estimate:
        ends = np.array([getattr(e, name) for e in effects])
        down = np.sqrt((np.minimum(ends.min(axis=1), 0.0) ** 2).sum() + own[0] ** 2)
        up = np.sqrt((np.maximum(ends.max(axis=1), 0.0) ** 2).sum() + own[1] ** 2)
        low = max(value - float(down), 0.1 * value)
        return Estimate(low, value, value + float(up), "model", BASIS)

    def shares(value: float, doubt: tuple[float, float], least: float = 0.0) -> tuple[float, float]:
        return max(doubt[0] * value, least), max(doubt[1] * value, least)

    force, spring = nominal.peak_force_n_per_mm, nominal.springback_deg
    radius, off = nominal.released_radius_mm, DEPTH_DOUBT_PER_T * thickness_mm
    springback = band(
        spring, "springback_deg", shares(spring, SPRINGBACK_DOUBT, LEAST_SPRINGBACK_DOUBT_DEG)
    )
    wanted = nominal.released_angle_deg
    return BandedBend(
        nominal=nominal,
        force_n_per_mm=band(force, "force_n_per_mm", shares(force, FORCE_DOUBT)),
        springback_deg=springback,
        set_angle_deg=springback.mapped(lambda s: wanted - s),
        depth_mm=band(nominal.depth_mm, "depth_mm", (off, off)),
        released_radius_mm=band(radius, "released_radius_mm", shares(radius, RADIUS_DOUBT)),
        effects=tuple(effects),
    )
