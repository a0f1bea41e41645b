"""One bend under load: the sheet's line between punch and shoulder, closed on the tools.

Half of the sheet, per unit of width. theta: half the bend angle; phi: rotation from the leg's
tangent inwards, 0 at the shoulder; psi = phi - lambda with lambda the friction angle. The only
force between shoulder and punch is R at the shoulder, so along the sheet

    dM = R cos(psi) ds,   d phi = kappa ds   hence   dW = kappa dM = R cos(psi) d phi
    W(M) - W(M_0) = R (sin(psi) + sin(lambda))

which gives psi at every M without integrating a differential equation. M_0 = R sin(lambda) t/2 is
the moment of the friction, which acts on the outer face, half a thickness off the middle line.

Under the punch the sheet either carries an unknown peak curvature (free), or wraps the tip,
radius r_m = rp + t/2, over an unknown angle theta_w. One equation closes the geometry:

    integral from M_0 to M_m of cos(theta - phi) / (R cos(psi)) dM + r_m sin(theta_w) = X

with X the distance from the centre line to the contact. Integrals are taken in two pieces, the
elastic one over kappa and the plastic one over log(kappa), by Gauss and Legendre's rule; all
angles of a stroke are solved at once.

Own derivation from the elementary theory of bending, no source; judged in the tests by its
limits, its energy balance and finite elements.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.sheet_model.moment_curvature import Bent, SheetLaw, bent, column
from flangebook.bending.sheet_model.roots import roots
from flangebook.bending.sheet_model.tools import Tools

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Bools = npt.NDArray[np.bool_]

ELASTIC_POINTS, PLASTIC_POINTS = 8, 24
_ELASTIC = np.polynomial.legendre.leggauss(ELASTIC_POINTS)
_PLASTIC = np.polynomial.legendre.leggauss(PLASTIC_POINTS)
_SHORT_OF = 1.0 - 1e-7


@dataclass(frozen=True, slots=True)
class Line:
    """The sheet's line from the shoulder (first column) to the nose, one row an angle.

    rotation: phi [rad] at the integration points; length_share: ds belonging to each point [mm];
    at: the sheet's state at each point. shoulder_force: R [N/mm]. nose_curvature [1/mm],
    nose_moment [N], nose_length [mm]: of the arc under the nose. closes: whether the line closes
    on the tools; where it does not, the other figures mean nothing.
    """

    rotation: Array
    length_share: Array
    at: Bent
    shoulder_force: Array
    nose_curvature: Array
    nose_moment: Array
    nose_length: Array
    closes: Bools


def line(
    law: SheetLaw, tool: Tools, theta: Array, nose_curvature: Array, nose_length: Array
) -> Line:
    """The sheet's line for an arc under the nose, whether it closes on the tools or not."""
    lam = tool.friction_angle_rad
    top = bent(law, nose_curvature)
    psi = theta - nose_curvature * nose_length - lam
    force = _shoulder_force(law, tool, psi, top.complementary)
    sin_lam = np.sin(lam)
    start = np.minimum(
        force * sin_lam * law.thickness_mm / 2.0 / law.stiffness, 0.999 * nose_curvature
    )
    curvature, weight = _points(law, start, nose_curvature)
    at = bent(column(law), curvature)
    d_moment = at.slope * weight
    start_energy = 0.5 * law.stiffness * start**2
    sine = (at.complementary - start_energy[:, None]) / force[:, None] - _column(sin_lam)
    rotation = np.arcsin(np.clip(sine, -1.0, 1.0)) + _column(lam)
    cosine = np.sqrt(np.maximum(1.0 - sine**2, 1e-12))
    share = d_moment / (force[:, None] * cosine)
    holds = start <= law.yield_curvature
    return Line(rotation, share, at, force, nose_curvature, top.moment, nose_length, holds)


def _shoulder_force(law: SheetLaw, tool: Tools, psi: Array, complementary: Array) -> Array:
    """R from W(M) - (R sin(lambda) t/2)^2 / (2 E' I) = R (sin + sin): a quadratic in R."""
    sin_lam = np.sin(tool.friction_angle_rad)
    sines = np.sin(psi) + sin_lam
    square = (sin_lam * law.thickness_mm / 2.0) ** 2 / (2.0 * law.stiffness)
    return np.asarray(
        2.0 * complementary / (sines + np.sqrt(sines**2 + 4.0 * square * complementary))
    )


def _points(law: SheetLaw, start: Array, end: Array) -> tuple[Array, Array]:
    """Integration points: curvature, and weight over its logarithm."""
    edge = np.clip(law.yield_curvature, start, end)
    half = 0.5 * (edge - start)
    elastic = start[:, None] + half[:, None] * (1.0 + _ELASTIC[0])
    log_half = 0.5 * np.log(end / edge)
    plastic = edge[:, None] * np.exp(log_half[:, None] * (1.0 + _PLASTIC[0]))
    return (
        np.concatenate([elastic, plastic], axis=1),
        np.concatenate(
            [half[:, None] * _ELASTIC[1] / elastic, log_half[:, None] * _PLASTIC[1]], axis=1
        ),
    )


def reach(theta: Array, drawn: Line) -> Array:
    """Distance from the centre line to the end of the line [mm]."""
    along = np.cos(theta[:, None] - drawn.rotation) * drawn.length_share
    turn = drawn.nose_curvature * drawn.nose_length
    return np.asarray(along.sum(axis=1) + np.sin(turn) / drawn.nose_curvature)


def rise(theta: Array, drawn: Line) -> Array:
    """Height of the end of the line above its lowest point [mm]."""
    up = np.sin(theta[:, None] - drawn.rotation) * drawn.length_share
    turn = drawn.nose_curvature * drawn.nose_length
    return np.asarray(up.sum(axis=1) + (1.0 - np.cos(turn)) / drawn.nose_curvature)


def contact(law: SheetLaw, tool: Tools, theta: Array) -> tuple[Array, Array]:
    """Where the middle line meets the shoulder's normal, x and y [mm]."""
    radius = tool.shoulder_radius_mm + law.thickness_mm / 2.0
    return (
        tool.shoulder_x_mm - radius * np.sin(theta),
        radius * np.cos(theta) - tool.shoulder_radius_mm,
    )


def closed(law: SheetLaw, tool: Tools, theta: Array) -> Line:
    """The line that closes on the tools at each half bend angle [rad], solved.

    One unknown a row, from 0 to 2: up to 1 the nose's curvature grows to the tip's, beyond it
    the length that lies on the tip. With friction a sheet that all but fills the opening has no
    solution: the friction would have to bend it. Such rows come back with ``closes`` false.

    Args:
        law: the sheet, or one a row.
        tool: die and punch, or one a row.
        theta: half the bend angles under load [rad], above 0, within
            :func:`~flangebook.bending.sheet_model.tools.steepest_half_angle`.

    Raises:
        NoRootError: an equation did not settle.
    """
    span = contact(law, tool, theta)[0]
    tip = 1.0 / (tool.punch_radius_mm + law.thickness_mm / 2.0) + 0.0 * theta
    # The nose's curvature is never under the mean one, half of which is a safe lower bound.
    least = np.log(np.minimum(0.5 * theta * np.cos(theta) / span, 0.5 * tip))
    grow, longest = np.log(tip) - least, theta / tip * _SHORT_OF

    def drawn(unknown: Array) -> Line:
        curvature = np.exp(least + grow * np.minimum(unknown, 1.0))
        return line(law, tool, theta, curvature, longest * np.maximum(unknown - 1.0, 0.0))

    def gap(unknown: Array) -> Array:
        return reach(theta, drawn(unknown)) / span - 1.0

    one = np.ones_like(theta)
    at_tip = gap(one)
    wrapped = at_tip > 0.0
    far = np.where(wrapped, 2.0, 0.0)
    at_far = gap(far)
    fills = wrapped & (at_far >= 0.0)
    found = roots(gap, one, far, at_tip, at_far, skip=fills)
    solved = drawn(found)
    return replace(solved, closes=solved.closes & ~fills)


def _column(value: Array | float) -> Array:
    return np.asarray(value)[..., None] if np.ndim(value) else np.asarray(value)
