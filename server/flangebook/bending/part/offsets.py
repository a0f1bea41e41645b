"""Offsets: two neighbouring bends of equal angle and opposite direction."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending.checks import Check
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, straight_lengths_mm


@dataclass(frozen=True, slots=True)
class Offset:
    """An offset in a part. bend: number of its first bend; the second is the next.

    height_mm: how far the sheet is set off, face to the same face [mm].
    """

    bend: int
    height_mm: float


def offset_height_mm(
    straight_mm: float, bend_angle_deg: float, inside_radius_mm: float, thickness_mm: float
) -> float:
    """How far two equal and opposite bends set the sheet off [mm].

    h = (2 r + t) (1 - cos b) + s sin b, from the geometry of two arcs on the mid-line and
    the straight s between them.

    Args:
        straight_mm: s [mm], 0 or more.
        bend_angle_deg: b [deg], 180 less the included angle.
        inside_radius_mm: r of both bends [mm].
        thickness_mm: t [mm].

    Source: geometry, derived here.

    >>> offset_height_mm(4.0, 90.0, 2.0, 1.0)
    9.0
    """
    b = math.radians(bend_angle_deg)
    return (2.0 * inside_radius_mm + thickness_mm) * (1.0 - math.cos(b)) + straight_mm * math.sin(b)


def offsets_in(part: Part, bends: Sequence[FoldedBend]) -> tuple[Offset, ...]:
    """The part's offsets: neighbouring bends of equal angle, opposite direction, equal radius."""
    straights = straight_lengths_mm(part, bends)
    found = []
    for i in range(len(part.bends) - 1):
        one, two = part.bends[i], part.bends[i + 1]
        radius = bends[i].inside_radius_mm
        opposite = one.direction != two.direction and one.kind == two.kind == "bend"
        equal = math.isclose(one.included_angle_deg, two.included_angle_deg)
        if opposite and equal and math.isclose(radius, bends[i + 1].inside_radius_mm):
            angle = 180.0 - one.included_angle_deg
            height = offset_height_mm(straights[i + 1], angle, radius, part.thickness_mm)
            found.append(Offset(i + 1, height))
    return tuple(found)


def offset_checks(
    part: Part, bends: Sequence[FoldedBend], smallest_flanges_mm: Sequence[float]
) -> tuple[Check, ...]:
    """A stop for each offset whose web is too short to be made as two air bends.

    smallest_flanges_mm: the shortest web that each bend takes, the other bend's round included,
    in the part's dimension [mm].
    """
    found = []
    for offset in offsets_in(part, bends):
        web = part.flats_mm[offset.bend]
        least = max(smallest_flanges_mm[offset.bend - 1 : offset.bend + 1])
        if web < least:
            bends_of = {"bend": offset.bend, "next_bend": offset.bend + 1}
            numbers = {"height_mm": offset.height_mm, "web_mm": web, "least_mm": least}
            found.append(
                Check(
                    "stop",
                    "offset-too-low",
                    "Bends {bend} and {next_bend} make an offset of {height_mm}; "
                    "its web is {web_mm}, the narrowest V needs {least_mm}.",
                    "Use a narrower V, or an offset tool that makes both bends in one hit.",
                    bends_of | numbers,
                    bend=offset.bend + 1,
                )
            )
    return tuple(found)
