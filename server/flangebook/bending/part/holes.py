"""Holes so near a bend that it pulls them out of shape."""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.checks import Check
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, setbacks_mm


def distortion_limit_mm(thickness_mm: float, inside_radius_mm: float) -> float:
    """Least distance from a bend's tangent to a hole's edge [mm]: 2.5 t + r.

    Source: common practice, no source.

    >>> distortion_limit_mm(2.0, 3.0)
    8.0
    """
    return 2.5 * thickness_mm + inside_radius_mm


def distortion_checks(part: Part, bends: Sequence[FoldedBend]) -> tuple[Check, ...]:
    """A caution for each hole nearer to a bend than the limit, with the distance."""
    setbacks = setbacks_mm(part, bends)
    found = []
    for number, hole in enumerate(part.holes, 1):
        left, right = hole.flat - 1, hole.flat
        if left >= 1:
            tangent = setbacks[left - 1]
            distance = hole.position_mm - hole.diameter_mm / 2.0 - tangent
            found += _finding(part, bends, number, left, distance)
        if right <= len(bends):
            tangent = part.flats_mm[hole.flat - 1] - setbacks[right - 1]
            distance = tangent - hole.position_mm - hole.diameter_mm / 2.0
            found += _finding(part, bends, number, right, distance)
    return tuple(found)


def _finding(
    part: Part, bends: Sequence[FoldedBend], hole: int, bend: int, distance_mm: float
) -> list[Check]:
    limit = distortion_limit_mm(part.thickness_mm, bends[bend - 1].inside_radius_mm)
    if distance_mm >= limit:
        return []
    words = (
        f"Hole {hole} begins {{distance_mm}} from the round of bend {{bend}}; "
        "nearer than {limit_mm} it is pulled out of shape (common practice)."
        if distance_mm >= 0.0
        else f"Hole {hole} reaches {{inside_mm}} into the round of bend {{bend}}."
    )
    return [
        Check(
            "caution",
            "hole-near-bend",
            words,
            "Move it, cut it after bending, or relieve the bend beside it.",
            {
                "distance_mm": distance_mm,
                "limit_mm": limit,
                "inside_mm": max(-distance_mm, 0.0),
                "bend": bend,
            },
            bend=bend,
        )
    ]
