"""Holes and edges so near a bend that they are pulled out of shape."""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.checks import Check
from flangebook.bending.part import Part
from flangebook.bending.section import FoldedBend


def distortion_limit_mm(thickness_mm: float, inside_radius_mm: float) -> float:
    """Least distance from a bend's tangent to a hole's edge [mm]: 2.5 t + r."""
    return 2.5 * thickness_mm + inside_radius_mm


def distortion_checks(part: Part, bends: Sequence[FoldedBend]) -> tuple[Check, ...]:
    """A caution for each hole nearer to a bend than the limit, with the distance."""
    return ()
