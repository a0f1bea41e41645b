"""The whole stroke of an air bend, and the setting for a wanted angle.

:func:`stroke` solves the bend at a fan of angles from first touch to where the tools end it.
:func:`set_bend` finds the loaded angle that springs back to a wanted one: the fan brackets it,
a second solve of three angles beside it pins it down, and five more beside the greatest force.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.errors import RangeError
from flangebook.bending.sheet_model.inner_face import at_the_inner_face
from flangebook.bending.sheet_model.moment_curvature import SheetLaw
from flangebook.bending.sheet_model.pressed import Pressed, pressed
from flangebook.bending.sheet_model.tools import Tools, need_model_range, steepest_half_angle

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Bools = npt.NDArray[np.bool_]

ANGLES = 24
KEPT_FANS = 64
FIRST_HALF_ANGLE_DEG = 0.25
FLATTEST_DEG = 175.0


@dataclass(frozen=True, slots=True)
class StrokeCurve:
    """The bend over the stroke, per millimetre of bend length, from first touch on.

    loaded_angle_deg, released_angle_deg: included [deg]. depth_mm: punch travel from first
    touch. force_n_per_mm. springback_deg. loaded_radius_mm, released_radius_mm: inside face;
    infinite where the sheet is or springs back flat. wrap_deg: of the bend angle, how much lies
    on the punch tip. work_n: done by the punch on the middle line so far [N mm per mm].
    sheet_energy_n, elastic_energy_n: in the sheet, and what of it comes back.
    """

    loaded_angle_deg: Array
    depth_mm: Array
    force_n_per_mm: Array
    springback_deg: Array
    released_angle_deg: Array
    loaded_radius_mm: Array
    released_radius_mm: Array
    wrap_deg: Array
    work_n: Array
    sheet_energy_n: Array
    elastic_energy_n: Array

    @property
    def peak(self) -> int:
        """Which row has the greatest force."""
        return int(np.argmax(self.force_n_per_mm))


@dataclass(frozen=True, slots=True)
class SetBend:
    """What to set for a wanted angle, per millimetre of bend length.

    released_angle_deg: the wanted one. set_angle_deg: included, under load. depth_mm: punch
    travel from first touch. force_n_per_mm: at that depth. peak_force_n_per_mm, peak_depth_mm,
    peak_angle_deg: the greatest force on the way there. loaded_radius_mm, released_radius_mm:
    inside face. depth_per_degree_mm: more depth for one degree less of released angle.
    work_n, sheet_energy_n, elastic_energy_n: as in :class:`StrokeCurve`.
    """

    released_angle_deg: float
    set_angle_deg: float
    springback_deg: float
    depth_mm: float
    depth_per_degree_mm: float
    force_n_per_mm: float
    peak_force_n_per_mm: float
    peak_depth_mm: float
    peak_angle_deg: float
    loaded_radius_mm: float
    released_radius_mm: float
    wrap_deg: float
    work_n: float
    sheet_energy_n: float
    elastic_energy_n: float


def solved(law: SheetLaw, tool: Tools, theta: Array) -> Pressed:
    """The bend at half angles under load [rad], depth and radii at the inner face."""
    return at_the_inner_face(law, tool, pressed(law, tool, theta))


def stroke(law: SheetLaw, tool: Tools, angles: int = ANGLES) -> StrokeCurve:
    """Solve a fan of angles from first touch to where the tools end the bend.

    Args:
        law: the sheet.
        tool: die and punch.
        angles: how many.

    Raises:
        RangeError: the opening is outside 4 t to 40 t.
    """
    need_model_range(law.thickness_mm, tool)
    return _as_stroke(law, _fan(law, tool, angles))


@lru_cache(maxsize=KEPT_FANS)
def _fan(law: SheetLaw, tool: Tools, angles: int) -> Pressed:
    """The whole stroke, kept: another angle, or the whole stroke after one bend, asks again."""
    first, last = np.radians(FIRST_HALF_ANGLE_DEG), steepest_half_angle(law.thickness_mm, tool)
    share = np.linspace(0.0, 1.0, angles)
    theta = first + (last - first) * share**2  # closer together where the force rises
    found = solved(law, tool, theta)
    ends = int(np.argmin(found.closes)) if not found.closes.all() else angles
    # Very springy sheet: the long legs of a sharp bend may spring back by more than deeper
    # pressing bends. The stroke is of use up to there.
    bent_by = (2.0 * found.theta - found.springback)[:ends]
    return rows(found, slice(0, int(np.argmax(bent_by)) + 1))


def rows(found: Pressed, which: slice | Bools) -> Pressed:
    """Some rows of a solved bend."""
    return Pressed(*(getattr(found, name)[which] for name in Pressed.__slots__))


def _as_stroke(law: SheetLaw, p: Pressed) -> StrokeCurve:
    turn = 2.0 * np.degrees(p.theta)
    return StrokeCurve(
        loaded_angle_deg=180.0 - turn,
        depth_mm=p.depth,
        force_n_per_mm=p.force,
        springback_deg=np.degrees(p.springback),
        released_angle_deg=180.0 - turn + np.degrees(p.springback),
        loaded_radius_mm=p.loaded_radius,
        released_radius_mm=p.released_radius,
        wrap_deg=2.0 * np.degrees(p.wrap),
        work_n=punch_work(p.line_depth, p.force),
        sheet_energy_n=p.energy,
        elastic_energy_n=p.elastic_energy,
    )


def punch_work(depth_mm: Array, force: Array) -> Array:
    """Running integral of force over depth from first touch [N], by Hermite cubics.

    The first piece, from the touch to the first row, is a triangle: the sheet is elastic there.
    """
    slope = np.gradient(force, depth_mm)
    step = np.diff(depth_mm)
    pieces = step * (force[1:] + force[:-1]) / 2.0 + step**2 * (slope[:-1] - slope[1:]) / 12.0
    # Where the sheet all but fills the opening the force runs away and a cubic would overshoot.
    least, most = np.minimum(force[1:], force[:-1]), np.maximum(force[1:], force[:-1])
    pieces = np.clip(pieces, step * least, step * most)
    return np.asarray(np.cumsum(np.concatenate([[0.5 * depth_mm[0] * force[0]], pieces])))


def set_bend(law: SheetLaw, tool: Tools, released_angle_deg: float) -> SetBend:
    """Find what to set for a wanted released angle.

    Args:
        law: the sheet.
        tool: die and punch.
        released_angle_deg: wanted included angle after release [deg], 175 or less.

    Raises:
        RangeError: flatter than 175 degrees; sharper than the tools allow; the opening is
            outside 4 t to 40 t.
    """
    need_model_range(law.thickness_mm, tool)
    if not 0.0 < released_angle_deg <= FLATTEST_DEG:
        raise RangeError(
            f"The bend model holds from 175 degrees down, not for {released_angle_deg:g}.",
            "included_angle_deg",
            "Give an included angle of 175 degrees or less.",
        )
    fan = _fan(law, tool, ANGLES)
    left = fan.springback - 2.0 * fan.theta + np.radians(180.0 - released_angle_deg)
    reached = np.flatnonzero(left <= 0.0)
    if not len(reached):
        raise _too_sharp(fan, tool, released_angle_deg)
    at = int(reached[0])
    guess = np.interp(0.0, [-left[at - 1], -left[at]], [fan.theta[at - 1], fan.theta[at]])
    return _pinned(law, tool, rows(fan, slice(0, at + 1)), float(guess), released_angle_deg)


def _too_sharp(fan: Pressed, tool: Tools, released_angle_deg: float) -> RangeError:
    loaded = 180.0 - 2.0 * np.degrees(fan.theta[-1])
    sharpest = loaded + np.degrees(fan.springback[-1])
    on_flanks = loaded < tool.die_angle_deg + 0.1
    return RangeError(
        f"These tools bend this sheet to {sharpest:.1f} degrees after release at the sharpest, "
        f"not to {released_angle_deg:g}"
        + (": there it lies on the die's flanks." if on_flanks else "."),
        "included_angle_deg",
        "Give a larger angle, or use a sharper die or a narrower V."
        if on_flanks
        else "Give a larger angle, or use a punch with a smaller tip or another V.",
    )


def _pinned(law: SheetLaw, tool: Tools, fan: Pressed, guess: float, wanted: float) -> SetBend:
    step = np.radians(0.4)
    last = steepest_half_angle(law.thickness_mm, tool)
    middle = np.clip(guess, np.radians(FIRST_HALF_ANGLE_DEG) / 2 + step, last - step)
    beside = middle + step * np.array([-1.0, 0.0, 1.0])
    top = int(np.argmax(fan.force))
    around = np.linspace(fan.theta[max(top - 1, 0)], fan.theta[min(top + 1, len(fan.theta) - 1)], 5)
    found = solved(law, tool, np.concatenate([beside, around]))
    near, high = rows(found, slice(0, 3)), rows(found, slice(3, None))
    left = near.springback - 2.0 * near.theta + np.radians(180.0 - wanted)
    theta = float(parabola(left, beside, 0.0))

    def at(values: Array) -> float:
        return float(parabola(near.theta, values, theta))

    peak = _greatest(high, theta, at(near.force), at(near.depth))
    depth, force = at(near.depth), at(near.force)
    before = fan.theta < theta
    work = punch_work(
        np.append(fan.line_depth[before], at(near.line_depth)),
        np.append(fan.force[before], force),
    )
    per_degree = np.gradient(near.depth, np.degrees(2.0 * near.theta - near.springback))[1]
    return SetBend(
        released_angle_deg=wanted,
        set_angle_deg=180.0 - 2.0 * np.degrees(theta),
        springback_deg=wanted - 180.0 + 2.0 * float(np.degrees(theta)),
        depth_mm=depth,
        depth_per_degree_mm=float(per_degree),
        force_n_per_mm=force,
        peak_force_n_per_mm=peak[0],
        peak_depth_mm=peak[1],
        peak_angle_deg=peak[2],
        loaded_radius_mm=at(near.loaded_radius),
        # A parabola through radii that end at nothing may dip below it.
        released_radius_mm=max(at(near.released_radius), 0.0),
        wrap_deg=2.0 * float(np.degrees(at(near.wrap))),
        work_n=float(work[-1]),
        sheet_energy_n=at(near.energy),
        elastic_energy_n=at(near.elastic_energy),
    )


def parabola(x: Array, y: Array, at: float) -> float:
    """Value at ``at`` of the parabola through three points [-]: in the unit of ``y``.

    Source: Lagrange's formula (from memory).

    >>> parabola(np.array([0.0, 1.0, 2.0]), np.array([0.0, 1.0, 4.0]), 3.0)
    9.0
    """
    a, b, c = x
    return float(
        y[0] * (at - b) * (at - c) / ((a - b) * (a - c))
        + y[1] * (at - a) * (at - c) / ((b - a) * (b - c))
        + y[2] * (at - a) * (at - b) / ((c - a) * (c - b))
    )


def _greatest(
    high: Pressed, theta: float, force: float, depth: float
) -> tuple[float, float, float]:
    """Greatest force on the way to theta [N/mm], its depth [mm] and loaded angle [deg]."""
    reached = rows(high, high.theta <= theta)
    forces = np.append(reached.force, force)
    depths, thetas = np.append(reached.depth, depth), np.append(reached.theta, theta)
    i = int(np.argmax(forces))
    best = (forces[i], depths[i], thetas[i])
    if 0 < i < len(forces) - 1:
        three = slice(i - 1, i + 2)
        curve = np.polyfit(thetas[three] - thetas[i], forces[three], 2)
        if curve[0] < 0.0:
            shift = -curve[1] / (2.0 * curve[0])
            depth_fit = np.polyfit(thetas[three] - thetas[i], depths[three], 2)
            best = (np.polyval(curve, shift), np.polyval(depth_fit, shift), thetas[i] + shift)
    return float(best[0]), float(best[1]), float(180.0 - 2.0 * np.degrees(best[2]))
