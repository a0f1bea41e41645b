"""Up to where a flat is measured at a bend, and what its dimension loses to the arc."""

from __future__ import annotations

from math import radians, tan
from typing import Literal

from flangebook.bending.errors import RangeError
from flangebook.bending.requirements import need

Dimension = Literal["din6935", "mould_line", "inside"]


def setback_mm(
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """What a flat's dimension loses to a bend at its end [mm], up to the start of the arc.

    "din6935": to the mould line from 90 degrees up, to the outermost tangent below;
    "mould_line": to where the outer faces would meet; "inside": to where the inner ones would.

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: a mould line is asked of a fold of 0 degrees.

    Source: DIN 6935 (convention inferred from its formulas); geometry.

    >>> setback_mm(90, 2.0, 1.0)
    3.0
    """
    need(
        included_angle_deg=included_angle_deg,
        inside_radius_mm=inside_radius_mm,
        thickness_mm=thickness_mm,
    )
    if dimension == "din6935" and included_angle_deg <= 90.0:
        return inside_radius_mm + thickness_mm
    if included_angle_deg == 0.0:
        raise RangeError(
            "A fold of 0 degrees has no mould line.",
            "dimension",
            "Dimension it to the outermost tangent (din6935).",
        )
    reach = inside_radius_mm + (0.0 if dimension == "inside" else thickness_mm)
    return reach * tan(radians(180.0 - included_angle_deg) / 2.0)
