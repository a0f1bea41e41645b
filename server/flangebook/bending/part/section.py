"""The section of a part: what its bends take from its flats, and the strip it is folded from.

Outside dimensions follow ``Part.dimension``; a hem is always dimensioned to the outermost
tangent of its fold, since two parallel faces have no mould line.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from flangebook.bending.checks import Check
from flangebook.bending.errors import NotAPartError
from flangebook.bending.geometry import crossing, setback
from flangebook.bending.geometry.ring import bounds
from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.geometry.strip import (
    Fold,
    Pose,
    Strip,
    bend_points,
    centre_line,
    outline,
    pose_at,
    start_for,
)
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.part_numbers import check_numbers

__all__ = [
    "Fold",
    "FoldedBend",
    "Pose",
    "Strip",
    "allowance_at",
    "as_drawn",
    "bend_lines_mm",
    "bend_points",
    "bounds",
    "centre_line",
    "check_part",
    "developed_length_mm",
    "outline",
    "pose_at",
    "section_checks",
    "setback_mm",
    "setbacks_mm",
    "start_for",
    "straight_lengths_mm",
    "strip_of",
]

NONE_LEFT_MM = 1e-6


@dataclass(frozen=True, slots=True)
class FoldedBend:
    """How a bend comes out of the tools at its finished angle.

    inside_radius_mm: [mm]. allowance_mm: developed length of the arc [mm].
    deduction_low_mm, deduction_high_mm: band of the bend deduction [mm], None when exact.
    """

    inside_radius_mm: float
    allowance_mm: float
    deduction_low_mm: float | None = None
    deduction_high_mm: float | None = None


def setback_mm(
    bend: Bend, inside_radius_mm: float, thickness_mm: float, dimension: Dimension
) -> float:
    """From the tangent of a bend's arc to where its flats' dimension ends [mm].

    Source: outside dimensions as in DIN 6935; for a hem, common practice, no source.

    >>> setback_mm(Bend(90.0, "up"), 3.0, 2.0, "din6935")
    5.0
    >>> setback_mm(Bend(0.0, "up", kind="closed_hem"), 0.0, 2.0, "inside")
    2.0
    """
    if bend.kind != "bend":
        return inside_radius_mm + thickness_mm
    if bend.included_angle_deg == 90.0:
        return inside_radius_mm + (0.0 if dimension == "inside" else thickness_mm)
    return setback.setback_mm(bend.included_angle_deg, inside_radius_mm, thickness_mm, dimension)


def setbacks_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """The setback of each bend [mm]; it counts once on either side.

    Source: as :func:`setback_mm`.

    >>> from flangebook.bending.samples import FOLDED, Z
    >>> setbacks_mm(Z, FOLDED)
    (4.0, 4.0)
    """
    return tuple(
        setback_mm(bend, folded.inside_radius_mm, part.thickness_mm, part.dimension)
        for bend, folded in zip(part.bends, bends, strict=True)
    )


def straight_lengths_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """The straight stretch of each flat between its arcs [mm]; negative when too short.

    Source: definition.

    >>> from flangebook.bending.samples import FOLDED, Z
    >>> straight_lengths_mm(Z, FOLDED)  # flats of 20, 30, 20 less setbacks of 4
    (16.0, 22.0, 16.0)
    """
    setbacks = (0.0, *setbacks_mm(part, bends), 0.0)
    return tuple(flat - setbacks[i] - setbacks[i + 1] for i, flat in enumerate(part.flats_mm))


def developed_length_mm(part: Part, bends: Sequence[FoldedBend]) -> float:
    """Length of the blank: straights plus allowances [mm].

    Source: definition.

    >>> from flangebook.bending.samples import FOLDED, Z
    >>> developed_length_mm(Z, FOLDED)  # 16 + 4 + 22 + 4 + 16
    62.0
    """
    return sum(straight_lengths_mm(part, bends)) + sum(b.allowance_mm for b in bends)


def bend_lines_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """Middle of each allowance arc, from the left end of the blank [mm].

    Source: definition.

    >>> from flangebook.bending.samples import FOLDED, Z
    >>> bend_lines_mm(Z, FOLDED)
    (18.0, 44.0)
    """
    lines: list[float] = []
    reached = 0.0
    for straight, folded in zip(straight_lengths_mm(part, bends), bends, strict=False):
        reached += straight
        lines.append(reached + folded.allowance_mm / 2.0)
        reached += folded.allowance_mm
    return tuple(lines)


def strip_of(part: Part, bends: Sequence[FoldedBend], made: Collection[int] | None = None) -> Strip:
    """The part's strip with the bends in ``made`` (numbers from 1) finished, the rest flat.

    made: None for all of them (the finished part), empty for the blank.
    """
    folds = []
    lines = bend_lines_mm(part, bends)
    for number, (bend, folded, at) in enumerate(zip(part.bends, bends, lines, strict=True), 1):
        if made is not None and number not in made:
            folds.append(Fold(at))
            continue
        angle = 180.0 - bend.included_angle_deg
        signed = angle if bend.direction == "up" else -angle
        folds.append(Fold(at, signed, folded.inside_radius_mm, folded.allowance_mm))
    return Strip(part.thickness_mm, developed_length_mm(part, bends), tuple(folds))


def allowance_at(
    included_angle_deg: float,
    inside_radius_mm: float,
    bend: Bend,
    folded: FoldedBend,
    thickness_mm: float,
) -> float:
    """Developed length of a bend's arc at another angle and radius, same neutral fibre [mm].

    The neutral fibre lies as deep in the sheet as the finished bend's allowance says. Used
    for the bend under load and for the acute bend of a hem.

    Source: definition of the neutral fibre.

    >>> from flangebook.bending.samples import FOLDED
    >>> bend = Bend(90.0, "up")
    >>> round(allowance_at(90.0, 2.0, bend, FOLDED[0], 2.0), 6)
    4.0
    >>> round(allowance_at(88.0, 2.0, bend, FOLDED[0], 2.0), 3)
    4.089
    """
    finished = math.radians(180.0 - bend.included_angle_deg)
    depth = folded.allowance_mm / finished - folded.inside_radius_mm
    depth = min(max(depth, 0.0), thickness_mm)
    return math.radians(180.0 - included_angle_deg) * (inside_radius_mm + depth)


def as_drawn(part: Part) -> tuple[FoldedBend, ...]:
    """The bends as the part describes them before any tool is known.

    Radius asked for, or 0; a hem's from its gap. The allowance follows the mid-line, which
    shapes no outside dimension.
    """
    return tuple(
        FoldedBend(r, math.radians(180.0 - bend.included_angle_deg) * (r + part.thickness_mm / 2))
        for bend in part.bends
        for r in (_radius_as_drawn(bend),)
    )


def _radius_as_drawn(bend: Bend) -> float:
    if bend.kind == "open_hem":
        return bend.hem_gap_mm / 2.0
    return bend.inside_radius_mm or 0.0


def check_part(part: Part) -> None:
    """Refuse what is not a part, before any tool is known.

    Raises:
        InputError: a number is out of range; ``where`` names it, lists counted from 0.
        NotAPartError: the section cannot exist: a flat is shorter than its bends need, or
            flats run into one another.
    """
    check_numbers(part)
    bends = as_drawn(part)
    for i, straight in enumerate(straight_lengths_mm(part, bends)):
        at_end = i in (0, len(part.bends))
        if straight < -NONE_LEFT_MM or (at_end and straight < NONE_LEFT_MM):
            need = part.flats_mm[i] - straight
            raise NotAPartError(
                "{Flat} is {flat_mm}, its bends alone take {need_mm}.",
                f"flats_mm.{i}",
                "Make it longer than {need_mm}, or the bends less sharp or less round.",
                {"flat": i + 1, "flat_mm": part.flats_mm[i], "need_mm": need},
            )
    meeting = crossing.meeting(strip_of(part, bends))
    if meeting is not None:
        raise NotAPartError(
            f"{meeting.said.template}.",
            f"flats_mm.{meeting.flat - 1}",
            "Shorten one of them, or change an angle or a direction between them.",
            meeting.said.numbers,
        )


def section_checks(part: Part, bends: Sequence[FoldedBend]) -> tuple[Check, ...]:
    """Findings on the section with the radii the tools give.

    Flats too short for their arcs, flats that run into one another.
    """
    found = []
    for i, straight in enumerate(straight_lengths_mm(part, bends)):
        if straight < -NONE_LEFT_MM:
            flat = part.flats_mm[i]
            numbers = {"flat": i + 1, "flat_mm": flat, "need_mm": flat - straight}
            found.append(
                Check(
                    "stop",
                    "flat-too-short",
                    "{Flat} is {flat_mm}; its bends' arcs alone take {need_mm}.",
                    "Choose tools with a smaller radius, or make the flat longer.",
                    numbers,
                )
            )
    if not found:
        meeting = crossing.meeting(strip_of(part, bends))
        if meeting is not None:
            words = f"{meeting.said.template} with the radii these tools give."
            do, numbers = "Change a flat or an angle.", dict(meeting.said.numbers)
            found.append(Check("stop", "section-meets-itself", words, do, numbers))
    return tuple(found)
