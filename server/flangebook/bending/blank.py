"""The blank: its size, its mass and where the bend lines go."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending import section
from flangebook.bending.part import Direction, Part
from flangebook.bending.section import FoldedBend


@dataclass(frozen=True, slots=True)
class BendLine:
    """A bend line on the blank. at_mm: from the left end [mm]. bend: number from 1."""

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
    width_mm: along the bend lines [mm]. sum_check_mm: largest difference between the part's
    dimensions and those measured after folding the blank by these numbers [mm].
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
    """The blank of a part whose bends come out as ``bends`` say."""
    setbacks = section.setbacks_mm(part, bends)
    length = section.developed_length_mm(part, bends)
    deductions = [2.0 * s - b.allowance_mm for s, b in zip(setbacks, bends, strict=True)]
    longer = sum(
        d - (d if b.deduction_low_mm is None else b.deduction_low_mm)
        for d, b in zip(deductions, bends, strict=True)
    )
    shorter = sum(
        (d if b.deduction_high_mm is None else b.deduction_high_mm) - d
        for d, b in zip(deductions, bends, strict=True)
    )
    lines = tuple(
        BendLine(
            n,
            at,
            bend.direction,
            bend.included_angle_deg,
            b.inside_radius_mm,
            b.allowance_mm,
            deduction,
        )
        for n, (at, bend, b, deduction) in enumerate(
            zip(section.bend_lines_mm(part, bends), part.bends, bends, deductions, strict=True), 1
        )
    )
    mass = length * part.bend_length_mm * part.thickness_mm * 1e-9 * density_kg_m3
    return Blank(
        length,
        length - max(shorter, 0.0),
        length + max(longer, 0.0),
        part.bend_length_mm,
        part.thickness_mm,
        mass,
        lines,
        0.0,
    )
