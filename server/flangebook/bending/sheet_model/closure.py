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
elastic one over kappa and the plastic one over log(u + a), u = e0 + c p of the surface
(``moment_curvature``), from which the curvature follows without solving for it; by Gauss and
Legendre's rule. Each angle is solved by itself, compiled, since it takes some two hundred such
integrals for a bend with its bands.

Own derivation from the elementary theory of bending, no source; judged in the tests by its
limits, its energy balance and finite elements.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, exp, log, sin, sqrt
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from flangebook.bending.compiled import kernel
from flangebook.bending.sheet_model.moment_curvature import (
    LEAST_PRESTRAIN,
    PLANE_STRAIN,
    Sheet,
    SheetLaw,
    bent_at,
    hardened,
    sheet_of,
    sheet_rows,
    strain_at,
)
from flangebook.bending.sheet_model.roots import NoRootError, next_share
from flangebook.bending.sheet_model.tools import Tools

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]
    Bools = npt.NDArray[np.bool_]

ELASTIC_POINTS, PLASTIC_POINTS = 8, 24
_ELASTIC_AT, _ELASTIC_SHARE = np.polynomial.legendre.leggauss(ELASTIC_POINTS)
_PLASTIC_AT, _PLASTIC_SHARE = np.polynomial.legendre.leggauss(PLASTIC_POINTS)
_SHORT_OF = 1.0 - 1e-7
_SINE, _COSINE, _SHARE, _MOMENT, _ENERGY = range(5)
_MOST_ROUNDS, _TOLERANCE, _NO_GAP = 100, 1e-9, 1e-12
CLOSED, OPEN, UNSETTLED = 1, 0, -1


@dataclass(frozen=True, slots=True)
class Line:
    """The sheet's line from the shoulder (first column) to the nose, one row an angle.

    sine, cosine: of psi at the integration points [-]; friction_angle: lambda [rad], a row each;
    length_share: ds belonging to each point [mm]; moment: M [N] and energy: U [N/mm] there.
    shoulder_force: R [N/mm]. nose_curvature [1/mm], nose_length [mm]: of the arc under the nose.
    closes: whether the line closes on the tools; where it does not, the other figures mean nothing.
    """

    sine: Array
    cosine: Array
    friction_angle: Array
    length_share: Array
    moment: Array
    energy: Array
    shoulder_force: Array
    nose_curvature: Array
    nose_length: Array
    closes: Bools

    @property
    def rotation(self) -> Array:
        """The angle phi [rad] at the integration points."""
        return np.arcsin(self.sine) + self.friction_angle[:, None]


@kernel
def _draw(
    sheet: Sheet, lam: float, theta: float, nose: float, arc: float, points: Array
) -> tuple[float, float, bool]:
    """The sheet's line for an arc under the nose, whether it closes on the tools or not.

    What :class:`Line` says of the points goes into the rows of ``points``; given back are R, the
    line's reach from the centre line [mm] and whether the shoulder's end of it is elastic.
    """
    half_t = sheet.thickness / 2.0
    stiffness = sheet.e_mod * sheet.thickness**3 / 12.0
    u_nose = hardened(sheet, nose * half_t)
    complementary = bent_at(sheet, nose, u_nose)[3]
    force = _shoulder_force(theta - nose * arc - lam, lam, half_t, stiffness, complementary)
    start = min(force * sin(lam) * half_t / stiffness, 0.999 * nose)
    yields = sheet.yield_strain / half_t
    edge = min(max(yields, start), nose)
    u_edge = hardened(sheet, start * half_t)
    half = 0.5 * (edge - start)
    for i in range(ELASTIC_POINTS):
        at = start + half * (1.0 + _ELASTIC_AT[i])
        _point(sheet, at, u_edge, half * _ELASTIC_SHARE[i] / at, points, i)
    aside = _aside(sheet)
    half = 0.5 * log((u_nose + aside) / (u_edge + aside))
    for i in range(PLASTIC_POINTS):
        beside = (u_edge + aside) * exp(half * (1.0 + _PLASTIC_AT[i]))
        u = max(beside - aside, sheet.prestrain, 1e-300)
        strain, growth = strain_at(sheet, u)
        weight = half * _PLASTIC_SHARE[i] * beside / u * growth / strain
        _point(sheet, strain / half_t, u, weight, points, ELASTIC_POINTS + i)
    reach = _lay(lam, theta, force, 0.5 * stiffness * start * start, points)
    return force, reach + sin(nose * arc) / nose, start <= yields


@kernel
def _aside(sheet: Sheet) -> float:
    """What is added to u before its logarithm is taken, so that the points are dense after yield.

    A small e0 makes the stress rise steeply there, and log(u) follows it; beside a large one, and
    without any, u itself would hardly tell, and the strain in it is counted from the elastic one.
    """
    elastic = PLANE_STRAIN * sheet.yield_strain
    if LEAST_PRESTRAIN <= sheet.prestrain < elastic:
        return 0.0
    return elastic - sheet.prestrain


@kernel
def _point(sheet: Sheet, at: float, u: float, weight: float, points: Array, i: int) -> None:
    """M, U, for now W in place of the sine, and the moment that the point stands for."""
    moment, slope, energy, complementary = bent_at(sheet, at, u)
    points[_SINE, i], points[_SHARE, i] = complementary, slope * weight
    points[_MOMENT, i], points[_ENERGY, i] = moment, energy


@kernel
def _lay(lam: float, theta: float, force: float, start_energy: float, points: Array) -> float:
    """Turn each point of the line as its W says, and add up how far the line reaches [mm]."""
    across, along, friction = cos(theta - lam), sin(theta - lam), sin(lam)
    reach = 0.0
    for i in range(points.shape[1]):
        sine = (points[_SINE, i] - start_energy) / force - friction
        sine = min(max(sine, -1.0), 1.0)
        cosine = sqrt(max(1.0 - sine * sine, 1e-12))
        share = points[_SHARE, i] / (force * cosine)
        points[_SINE, i], points[_COSINE, i], points[_SHARE, i] = sine, cosine, share
        reach += (across * cosine + along * sine) * share  # cos(theta - phi) ds
    return reach


@kernel
def _shoulder_force(
    psi: float, lam: float, half_t: float, stiffness: float, complementary: float
) -> float:
    """R from W(M) - (R sin(lambda) t/2)^2 / (2 E' I) = R (sin + sin): a quadratic in R."""
    sines = sin(psi) + sin(lam)
    square = (sin(lam) * half_t) ** 2 / (2.0 * stiffness)
    return 2.0 * complementary / (sines + sqrt(sines * sines + 4.0 * square * complementary))


def rise(theta: Array, drawn: Line) -> Array:
    """Height of the end of the line above its lowest point [mm]: the sum of sin(theta - phi) ds."""
    leg = (theta - drawn.friction_angle)[:, None]
    up = np.sin(leg) * drawn.cosine - np.cos(leg) * drawn.sine
    turn = drawn.nose_curvature * drawn.nose_length
    return np.asarray(
        (up * drawn.length_share).sum(axis=1) + (1.0 - np.cos(turn)) / drawn.nose_curvature
    )


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
    rows = len(theta)
    lam = tool.friction_angle_rad + np.zeros(rows)
    bends = np.empty((rows, 4))
    bends[:, 0], bends[:, 1], bends[:, 2] = lam, theta, contact(law, tool, theta)[0]
    bends[:, 3] = 1.0 / (tool.punch_radius_mm + law.thickness_mm / 2.0)
    points = np.empty((rows, 5, ELASTIC_POINTS + PLASTIC_POINTS))
    ends = np.empty((rows, 4))
    ended = np.empty(rows, np.int64)
    _close_each(sheet_rows(law, rows), bends, points, ends, ended)
    if (ended == UNSETTLED).any():
        raise NoRootError("the equations did not settle")
    at = points.transpose(1, 0, 2)
    force, nose, arc, _ = ends.T
    return Line(
        at[_SINE], at[_COSINE], lam, at[_SHARE], at[_MOMENT], at[_ENERGY], force, nose, arc,
        ended == CLOSED,
    )  # fmt: skip


@kernel
def _close_each(
    sheets: Array, bends: Array, points: Array, ends: Array, ended: npt.NDArray[np.int64]
) -> None:
    """Every row of :func:`closed`; for ``ends`` see ``_gap``.

    bends: friction angle and theta [rad], span [mm], curvature of the punch's tip [1/mm].
    """
    for i in range(len(bends)):
        lam, theta, span, tip = bends[i, 0], bends[i, 1], bends[i, 2], bends[i, 3]
        # The nose's curvature is never under the mean one, half of which is a safe lower bound.
        least = log(min(0.5 * theta * cos(theta) / span, 0.5 * tip))
        bend = _Bend(lam, theta, span, least, log(tip) - least, theta / tip * _SHORT_OF)
        ended[i] = _close(sheet_of(sheets, i), bend, points[i], ends[i])


class _Bend(NamedTuple):
    """Friction angle and theta [rad], span [mm], and what the unknown stands for: see
    :func:`closed`."""

    lam: float
    theta: float
    span: float
    least: float
    grow: float
    longest: float


@kernel
def _close(sheet: Sheet, bend: _Bend, points: Array, ends: Array) -> int:
    """Solve one row by Chandrupatla's rule (``roots``); whether and how it ended."""
    b, fb = 1.0, _gap(sheet, bend, 1.0, points, ends)
    wrapped = fb > 0.0
    a = 2.0 if wrapped else 0.0
    fa = _gap(sheet, bend, a, points, ends)
    if wrapped and fa >= 0.0:
        return OPEN
    if not fa * fb <= 0.0:
        return UNSETTLED
    c, fc, share = a, fa, 0.5
    for _ in range(_MOST_ROUNDS):
        x = a + share * (b - a)
        fx = _gap(sheet, bend, x, points, ends)
        if (fx > 0.0) == (fa > 0.0):
            c, fc = a, fa
        else:
            c, fc, b, fb = b, fb, a, fa
        a, fa = x, fx
        wide = abs(b - a)
        if wide < 2.0 * _TOLERANCE or abs(fa) < _NO_GAP:
            if abs(fb) < abs(fa):
                _gap(sheet, bend, b, points, ends)
            return CLOSED if ends[3] == 1.0 else OPEN
        share = next_share(a, b, c, fa, fb, fc)
        share = min(max(share, _TOLERANCE / wide), 1.0 - _TOLERANCE / wide)
    return UNSETTLED


@kernel
def _nose(bend: _Bend, unknown: float) -> tuple[float, float]:
    """Curvature and length of the arc under the nose."""
    nose = exp(bend.least + bend.grow * min(unknown, 1.0))
    return nose, bend.longest * max(unknown - 1.0, 0.0)


@kernel
def _gap(sheet: Sheet, bend: _Bend, unknown: float, points: Array, ends: Array) -> float:
    """By what share the line reaches farther than the shoulder, as a logarithm [-].

    R, curvature and length of the nose and whether the line's end is elastic go into ``ends``.
    """
    nose, arc = _nose(bend, unknown)
    force, reach, elastic = _draw(sheet, bend.lam, bend.theta, nose, arc, points)
    ends[0], ends[1], ends[2], ends[3] = force, nose, arc, 1.0 if elastic else 0.0
    return log(max(reach, 1e-300) / bend.span)
