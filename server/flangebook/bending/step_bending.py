"""Step bending: a large radius made by many small hits."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Hits:
    """How a radius is stepped. angle_each_deg: bend angle a hit. pitch_mm: between hits on
    the blank. offsets_mm: each hit from the bend line, left to right.
    chord_error_mm: how far the facets leave the radius, at most."""

    count: int
    angle_each_deg: float
    pitch_mm: float
    chord_error_mm: float
    offsets_mm: tuple[float, ...]


def chord_error_mm(inside_radius_mm: float, angle_each_deg: float) -> float:
    """Sagitta of one facet [mm]: r (1 - cos(angle/2))."""
    return inside_radius_mm * (1.0 - math.cos(math.radians(angle_each_deg) / 2.0))


def hits_for(
    bend_angle_deg: float,
    inside_radius_mm: float,
    allowance_mm: float,
    most_chord_error_mm: float = 0.5,
    most_hits: int = 60,
) -> Hits:
    """Number, pitch and angle of the hits that keep the chord error within bounds."""
    each = 2.0 * math.degrees(math.acos(max(1.0 - most_chord_error_mm / inside_radius_mm, -1.0)))
    count = min(max(2, math.ceil(bend_angle_deg / each)), most_hits)
    pitch = allowance_mm / count
    places = tuple((i - (count - 1) / 2.0) * pitch for i in range(count))
    angle = bend_angle_deg / count
    return Hits(count, angle, pitch, chord_error_mm(inside_radius_mm, angle), places)
