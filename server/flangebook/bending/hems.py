"""Hems: an edge folded back on the sheet, made as an acute bend and a flattening."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.part import Bend
from flangebook.bending.section import FoldedBend


@dataclass(frozen=True, slots=True)
class Hem:
    """A hem's fold: inside radius, developed length of its arc, the relation and its standing."""

    inside_radius_mm: float
    allowance_mm: float
    relation: str
    standing: Literal["published", "common practice, no source"]

    @property
    def folded(self) -> FoldedBend:
        """The fold as the section takes it."""
        return FoldedBend(self.inside_radius_mm, self.allowance_mm)


def hem(bend: Bend, thickness_mm: float) -> Hem:
    """The fold of a closed or open hem."""
    r = 0.0 if bend.kind == "closed_hem" else bend.hem_gap_mm / 2.0
    return Hem(
        r,
        math.pi * (r + thickness_mm / 2.0),
        "neutral line at mid thickness",
        "common practice, no source",
    )


def pre_bend_angle_deg(sharpest_tool_angle_deg: float, springback_deg: float = 0.0) -> float:
    """Included angle of the acute bend before flattening."""
    return sharpest_tool_angle_deg + springback_deg
