"""The blank: its size, its mass and where the bend lines go."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.geometry.strip import Arc, Fold, Pose, Straight, Strip, trace
from flangebook.bending.part import section
from flangebook.bending.part.part import Bend, Direction, Part
from flangebook.bending.part.section import FoldedBend


@dataclass(frozen=True, slots=True)
class BendLine:
    """A bend line on the blank, with what is needed to fold it.

    bend: number from 1. at_mm: from the left end of the blank [mm]. inside_radius_mm,
    allowance_mm, deduction_mm: of the finished bend [mm].
    """

    bend: int
    at_mm: float
    direction: Direction
    included_angle_deg: float
    inside_radius_mm: float
    allowance_mm: float
    deduction_mm: float


@dataclass(frozen=True, slots=True)
class Blank:
    """The flat sheet a part is bent from.

    length_mm: along the section [mm], with the band that the deductions' bands give.
    width_mm: along the bend lines [mm]. mass_kg: [kg].
    sum_check_mm: the largest difference between a flat's dimension and the one measured
    after folding the blank by these numbers [mm].
    """

    length_mm: float
    length_low_mm: float
    length_high_mm: float
    width_mm: float
    thickness_mm: float
    mass_kg: float
    bend_lines: tuple[BendLine, ...]
    sum_check_mm: float


def blank(part: Part, bends: Sequence[FoldedBend], density_kg_m3: float) -> Blank:
    """The blank of a part whose bends come out as ``bends`` say.

    A bend that takes more than expected makes the blank too long, so the deductions' high
    ends give the length's low end.
    """
    length = section.developed_length_mm(part, bends)
    deductions = _deductions(part, bends)
    pairs = tuple(zip(deductions, bends, strict=True))
    shorter = sum(max(_or(b.deduction_high_mm, d) - d, 0.0) for d, b in pairs)
    longer = sum(max(d - _or(b.deduction_low_mm, d), 0.0) for d, b in pairs)
    lines = _lines(part, bends, deductions)
    strip = Strip(part.thickness_mm, length, tuple(_fold(line) for line in lines))
    measured = measured_flats_mm(strip, part.bends, part.dimension)
    return Blank(
        length_mm=length,
        length_low_mm=length - shorter,
        length_high_mm=length + longer,
        width_mm=part.bend_length_mm,
        thickness_mm=part.thickness_mm,
        mass_kg=length * part.bend_length_mm * part.thickness_mm * 1e-9 * density_kg_m3,
        bend_lines=lines,
        sum_check_mm=max(abs(m - f) for m, f in zip(measured, part.flats_mm, strict=True)),
    )


def _or(value: float | None, otherwise: float) -> float:
    return otherwise if value is None else value


def _deductions(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    setbacks = section.setbacks_mm(part, bends)
    return tuple(2.0 * s - b.allowance_mm for s, b in zip(setbacks, bends, strict=True))


def _lines(
    part: Part, bends: Sequence[FoldedBend], deductions: Sequence[float]
) -> tuple[BendLine, ...]:
    places = section.bend_lines_mm(part, bends)
    return tuple(
        BendLine(
            bend=i + 1,
            at_mm=places[i],
            direction=bend.direction,
            included_angle_deg=bend.included_angle_deg,
            inside_radius_mm=bends[i].inside_radius_mm,
            allowance_mm=bends[i].allowance_mm,
            deduction_mm=deductions[i],
        )
        for i, bend in enumerate(part.bends)
    )


def _fold(line: BendLine) -> Fold:
    angle = 180.0 - line.included_angle_deg
    signed = angle if line.direction == "up" else -angle
    return Fold(line.at_mm, signed, line.inside_radius_mm, line.allowance_mm)


def measured_flats_mm(
    strip: Strip, bends: Sequence[Bend], dimension: Dimension
) -> tuple[float, ...]:
    """Each flat's dimension as a gauge would measure it on the folded strip [mm].

    To where its face meets the next flat's face, or to the outermost point of the bend.

    Source: outside dimensions as in DIN 6935.

    >>> from flangebook.bending.samples import Z, Z_STRIP
    >>> [round(flat, 6) for flat in measured_flats_mm(Z_STRIP, Z.bends, Z.dimension)]
    [20.0, 30.0, 20.0]
    """
    straights, arcs = trace(strip)
    measured = []
    for i, flat in enumerate(straights):
        left, right = 0.0, flat.length_mm
        if i > 0:
            left = _end(flat, straights[i - 1], arcs[i - 1], bends[i - 1], dimension, -1.0)
        if i < len(bends):
            right = _end(flat, straights[i + 1], arcs[i], bends[i], dimension, 1.0)
        measured.append(right - left)
    return tuple(measured)


def _end(
    flat: Straight,
    other: Straight,
    bent: Arc | None,
    bend: Bend,
    dimension: Dimension,
    way: float,
) -> float:
    """Where a flat's dimension ends, along the flat from its start [mm]; way: -1 left, 1 right."""
    if bent is None:
        return flat.length_mm if way > 0 else 0.0
    x, y, heading = flat.start
    ux, uy = math.cos(heading), math.sin(heading)
    to_tangent = dimension == "din6935" and bend.included_angle_deg < 90.0
    if bend.kind != "bend" or to_tangent:
        centre = (bent.centre[0] - x) * ux + (bent.centre[1] - y) * uy
        return centre + way * bent.outside_mm
    half = (bent.outside_mm - bent.inside_mm) / 2.0
    side = bent.sign * half if dimension == "inside" else -bent.sign * half
    return _meet(_face(flat.start, side), _face(other.start, side))


def _face(pose: Pose, side: float) -> Pose:
    """The pose moved to the sheet's face, ``side`` to its left."""
    x, y, heading = pose
    return (x - side * math.sin(heading), y + side * math.cos(heading), heading)


def _meet(one: Pose, two: Pose) -> float:
    """How far along the first line the second one meets it [mm]."""
    ux, uy = math.cos(one[2]), math.sin(one[2])
    vx, vy = math.cos(two[2]), math.sin(two[2])
    dx, dy = two[0] - one[0], two[1] - one[1]
    return (dx * vy - dy * vx) / (ux * vy - uy * vx)
