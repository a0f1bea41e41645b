"""Depth and radius where a gauge touches: at the inner face, not at the beam's middle line.

The beam model bends a line. Real sheet is as thick as its hinge is long: the punch's force
enters over a width of about half a thickness, which rounds the bend and lifts its bottom, while
the sheet thins under the nose, which lowers it. And on a blunt tip the sheet, once it has wrapped
some way, bends on between the two lines where it bears and comes off the middle of the tip
(Vorkov et al., Int. J. Material Forming 2018, call it multi-breakage). With

    x = kappa t       curvature under the nose times thickness [-]
    theta, w          half the bend angle, half the angle wrapped on the tip [rad]
    S = 1 - exp(-(theta / 0.25)^2),  Q = 1 - exp(-(w / 0.3)^2)

the line lies lower than the inner face by

    sunk = t x S (A + (B - D Q) rp/t - C (1 - Q) n theta)

so the depth is less by that, and the gap that makes the radius is more by that, less

    off = rp (G - H n) max(w - 0.3, 0)      by which the sheet comes off the tip.

On release the nose keeps the share q = 1 - M / (E' t^3/12 kappa) of its curvature, and no more of
what it came off the tip: a sheet that springs back flat has kept none of either. So off counts q
times in the released radius. (The cases, with q of 0.97 and more, say nothing of this share.)

A, B, C, D, G, H are fitted, not derived: to the strokes of the finite element cases in
tests/reference/finite_elements, by fit_inner_face.py there, which also leaves each case out in
turn. The form is own, no source. The cases span V/t 6 to 12, rp/t 0.5 to 1.5, n 0.13 to 0.45,
angles down to 88 degrees; theta counts up to 0.85 rad. Force and springback are left as they are.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.sheet_model.moment_curvature import SheetLaw, curvature_released
from flangebook.bending.sheet_model.pressed import Pressed
from flangebook.bending.sheet_model.tools import Tools

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

ONSET_RAD, WRAPPED_RAD = 0.25, 0.30
SHARPEST_RAD = 0.85
OFF_FROM_RAD = 0.30
SUNK_A, SUNK_B, SUNK_C, SUNK_D = 0.0420, 0.0376, 0.1759, 0.0527
OFF_G, OFF_H = 0.1917, 0.2718


def onset(theta: Array) -> Array:
    """S [-] at half bend angles [rad]."""
    return np.asarray(1.0 - np.exp(-((theta / ONSET_RAD) ** 2)))


def sunk_parts(law: SheetLaw, tool: Tools, middle: Pressed, theta: Array) -> tuple[Array, ...]:
    """What A, B, C and D are multiplied with, per thickness [-]."""
    grown = middle.peak_curvature * law.thickness_mm * onset(theta)
    blunt = grown * tool.punch_radius_mm / law.thickness_mm
    wrapped = 1.0 - np.exp(-((middle.wrap / WRAPPED_RAD) ** 2))
    free = grown * (1.0 - wrapped) * law.n * np.minimum(theta, SHARPEST_RAD)
    return grown, blunt, -free, -blunt * wrapped


def sunk_mm(law: SheetLaw, tool: Tools, middle: Pressed, theta: Array) -> Array:
    """How far the middle line lies lower than the inner face says [mm]."""
    parts = sunk_parts(law, tool, middle, theta)
    shares = (SUNK_A, SUNK_B, SUNK_C, SUNK_D)
    total = sum(share * part for share, part in zip(shares, parts, strict=True))
    return np.asarray(total * law.thickness_mm)


def off_parts(law: SheetLaw, tool: Tools, wrap: Array) -> tuple[Array, Array]:
    """What G and H are multiplied with [mm]."""
    beyond = tool.punch_radius_mm * np.maximum(wrap - OFF_FROM_RAD, 0.0)
    return beyond, -law.n * beyond


def off_the_tip_mm(law: SheetLaw, tool: Tools, wrap: Array) -> Array:
    """How far the sheet comes off the middle of a blunt tip [mm]."""
    beyond, hardening = off_parts(law, tool, wrap)
    return np.maximum(OFF_G * beyond + OFF_H * hardening, 0.0)


def at_the_inner_face(law: SheetLaw, tool: Tools, middle: Pressed) -> Pressed:
    """The bend with depth and radii corrected from the middle line to the inner face."""
    off = off_the_tip_mm(law, tool, middle.wrap)
    kept = curvature_released(law, middle.peak_curvature) / middle.peak_curvature
    loaded, released = middle.theta, middle.theta - middle.springback / 2.0
    return replace(
        middle,
        depth=middle.depth - sunk_mm(law, tool, middle, loaded),
        loaded_radius=_widened(
            middle.loaded_radius, sunk_mm(law, tool, middle, loaded) - off, loaded
        ),
        released_radius=_widened(
            middle.released_radius, sunk_mm(law, tool, middle, released) - kept * off, released
        ),
    )


def _widened(radius: Array, gap: Array, theta: Array) -> Array:
    """A radius [mm] after its gap to the legs' crossing has grown [mm]."""
    bend = np.maximum(theta, 1e-6)
    more = gap * np.cos(bend) / (2.0 * np.sin(bend / 2.0) ** 2)
    return np.where(theta > 1e-6, np.maximum(radius + more, 0.0), np.inf)
