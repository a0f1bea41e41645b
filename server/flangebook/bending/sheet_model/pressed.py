"""What a solved line says of the bend: force, depth, springback, radii, energy.

From the line that closes on the tools (``closure``), for each half bend angle theta:

    force       F = 2 R cos(theta - lambda), both shoulders
    depth       how far the middle line has sunk under the punch since the flat sheet was touched
    springback  2 * integral of M / (E' t^3/12) ds: the sheet unloads elastically
    radius      r = h / (1/cos(theta) - 1) - t/2, with h the gap between the middle line under the
                punch and the crossing of the two legs' tangents: the arc that touches both legs
                and the middle of the bend, which is what a radius gauge finds. Released: the same
                of the line that is left when every curvature has lost M / (E' t^3/12)
    energy      of the sheet: integral of U ds; of it elastic: integral of M^2 / (2 E' t^3/12) ds
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.sheet_model import closure
from flangebook.bending.sheet_model.moment_curvature import SheetLaw, bent
from flangebook.bending.sheet_model.tools import Tools

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Pressed:
    """The bend at each half angle under load, per millimetre of bend length.

    theta: half bend angle under load [rad]. force: F [N/mm]. line_depth: how far the middle line
    has sunk [mm]. depth: punch travel from first touch [mm], the same until ``inner_face``
    corrects it. springback: of the whole bend angle [rad]. loaded_radius, released_radius: inside
    [mm]. energy, elastic_energy: in the sheet [N]. wrap: half angle the sheet lies on the punch
    tip [rad]. peak_curvature [1/mm]. closes: where False the sheet fills the opening.
    """

    theta: Array
    force: Array
    line_depth: Array
    depth: Array
    springback: Array
    loaded_radius: Array
    released_radius: Array
    energy: Array
    elastic_energy: Array
    wrap: Array
    peak_curvature: Array
    closes: Bools


def pressed(law: SheetLaw, tool: Tools, theta: Array) -> Pressed:
    """Solve the bend at half angles theta [rad] under load.

    Raises:
        NoRootError: an equation did not settle.
    """
    drawn = closure.closed(law, tool, theta)
    arc = drawn.nose_length
    peak = bent(law, drawn.nose_curvature)
    stiffness = law.stiffness + np.zeros_like(theta)
    turned = drawn.moment * drawn.length_share / stiffness[:, None]
    arc_turned = peak.moment * arc / stiffness
    half_springback = turned.sum(axis=1) + arc_turned
    rise = closure.rise(theta, drawn)
    x, y = closure.contact(law, tool, theta)
    bending = (drawn.energy * drawn.length_share).sum(axis=1) + peak.energy * arc
    elastic = (drawn.moment * turned).sum(axis=1) + peak.moment * arc_turned
    depth = law.thickness_mm / 2.0 - y + rise
    return Pressed(
        theta=theta,
        force=2.0 * drawn.shoulder_force * np.cos(theta - tool.friction_angle_rad),
        line_depth=depth,
        depth=depth,
        springback=2.0 * half_springback,
        loaded_radius=inside_radius(law, theta, x, rise),
        released_radius=_released_radius(law, theta, drawn, turned, arc_turned),
        energy=2.0 * bending,
        elastic_energy=elastic,
        wrap=drawn.nose_curvature * arc,
        peak_curvature=drawn.nose_curvature,
        closes=drawn.closes,
    )


def inside_radius(law: SheetLaw, theta: Array, reach: Array, rise: Array) -> Array:
    """Inside radius [mm] of a line that reaches out and rises so far; infinite when flat."""
    bend = np.maximum(theta, 1e-6)
    gap = reach * np.tan(bend) - rise
    radius = gap * np.cos(bend) / (2.0 * np.sin(bend / 2.0) ** 2) - law.thickness_mm / 2.0
    return np.where(theta > 1e-6, np.maximum(radius, 0.0), np.inf)


def _released_radius(
    law: SheetLaw,
    theta: Array,
    drawn: closure.Line,
    turned: Array,
    arc_turned: Array,
) -> Array:
    """Inside radius of the line that is left after release [mm]."""
    arc, half_springback = drawn.nose_length, turned.sum(axis=1) + arc_turned
    back = half_springback[:, None] - turned @ _CUMULATIVE.T
    slope = theta[:, None] - drawn.rotation - back
    arc_turn = drawn.nose_curvature * arc - arc_turned
    small = np.abs(arc_turn) < 1e-9
    safe = np.where(small, 1.0, arc_turn)
    across = np.where(small, 1.0, np.sin(safe) / safe)
    up = np.where(small, 0.0, (1.0 - np.cos(safe)) / safe)
    reach = (np.cos(slope) * drawn.length_share).sum(axis=1) + arc * across
    rise = (np.sin(slope) * drawn.length_share).sum(axis=1) + arc * up
    return inside_radius(law, theta - half_springback, reach, rise)


def _cumulative_rule(count: int) -> Array:
    """Matrix from shares at Gauss-Legendre points to their running sum at those points."""
    x, w = np.polynomial.legendre.leggauss(count)
    basis = np.polynomial.legendre.legvander(x, count - 1)
    integrals = np.column_stack(
        [
            np.polynomial.legendre.legval(x, np.polynomial.legendre.legint(unit, lbnd=-1))
            for unit in np.eye(count)
        ]
    )
    return np.asarray(integrals @ np.linalg.inv(basis) / w)


def _both_pieces() -> Array:
    e, p = closure.ELASTIC_POINTS, closure.PLASTIC_POINTS
    rule = np.zeros((e + p, e + p))
    rule[:e, :e] = _cumulative_rule(e)
    rule[e:, e:] = _cumulative_rule(p)
    rule[e:, :e] = 1.0
    return rule


_CUMULATIVE = _both_pieces()
