"""Offsets: two bends of opposite direction close together."""

from __future__ import annotations

import math


def offset_height_mm(
    straight_mm: float, bend_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """Height by which two equal and opposite bends set the sheet off [mm]."""
    b = math.radians(bend_angle_deg)
    return (2.0 * inside_radius_mm + thickness_mm) * (1.0 - math.cos(b)) + straight_mm * math.sin(b)
