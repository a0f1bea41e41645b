"""The section of a part: straight lengths, the strip it is folded from, its outline.

A part says what it should measure. A *strip* says what is in the hand: a sheet of known
developed length with bend lines, each bent by so much now. Any state of bends made is a
strip, so the blank, the half-made part and the finished section are drawn by one rule, and
the developed length never changes.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.checks import Check
from flangebook.bending.errors import NotAPartError
from flangebook.bending.part import Bend, Dimension, Part
from flangebook.bending.tooling import Point, Ring

CHORD_ERROR_MM = 0.01
MOST_RING_POINTS = 200


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


@dataclass(frozen=True, slots=True)
class Fold:
    """One bend line of a strip as it is now.

    at_mm: middle of the bend from the strip's left end [mm]. bend_angle_deg: how far it is
    bent now, 0 when flat; positive turns what follows counter-clockwise ("up").
    allowance_mm: developed length its arc takes now, centred on at_mm [mm].
    """

    at_mm: float
    bend_angle_deg: float = 0.0
    inside_radius_mm: float = 0.0
    allowance_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class Strip:
    """A sheet seen on edge: thickness, developed length and its bend lines from the left."""

    thickness_mm: float
    length_mm: float
    folds: tuple[Fold, ...]

    def reversed(self) -> Strip:
        """The strip seen mirrored left to right: its right end comes first."""
        turned = tuple(replace(f, at_mm=self.length_mm - f.at_mm) for f in reversed(self.folds))
        return replace(self, folds=turned)

    def flipped(self) -> Strip:
        """The strip seen mirrored top to bottom: up bends become down bends."""
        turned = tuple(replace(f, bend_angle_deg=-f.bend_angle_deg) for f in self.folds)
        return replace(self, folds=turned)

    def with_fold(
        self, number: int, bend_angle_deg: float, inside_radius_mm: float, allowance_mm: float
    ) -> Strip:
        """The strip with bend ``number`` (from 1) bent otherwise; its line stays in place."""
        folds = list(self.folds)
        at = folds[number - 1].at_mm
        folds[number - 1] = Fold(at, bend_angle_deg, inside_radius_mm, allowance_mm)
        return replace(self, folds=tuple(folds))

    def flattened(self, number: int) -> Strip:
        """The strip with bend ``number`` (from 1) not bent."""
        return self.with_fold(number, 0.0, 0.0, 0.0)


Pose = tuple[float, float, float]
"""Where a point of the mid-line lies and which way it heads: x [mm], y [mm], heading [rad]."""


def setback_mm(
    bend: Bend, inside_radius_mm: float, thickness_mm: float, dimension: Dimension
) -> float:
    """From the tangent of a bend's arc to where its flats' dimension ends [mm]."""
    outside = inside_radius_mm + thickness_mm
    half = math.radians(180.0 - bend.included_angle_deg) / 2.0
    if bend.kind != "bend":
        return outside
    if dimension == "inside":
        return inside_radius_mm * math.tan(half)
    if dimension == "din6935" and bend.included_angle_deg < 90.0:
        return outside
    return outside * math.tan(half)


def setbacks_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """The setback of each bend [mm]; it counts once on either side."""
    return tuple(
        setback_mm(bend, folded.inside_radius_mm, part.thickness_mm, part.dimension)
        for bend, folded in zip(part.bends, bends, strict=True)
    )


def straight_lengths_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """The straight stretch of each flat between its arcs [mm]; negative when too short."""
    setbacks = (0.0, *setbacks_mm(part, bends), 0.0)
    return tuple(flat - setbacks[i] - setbacks[i + 1] for i, flat in enumerate(part.flats_mm))


def developed_length_mm(part: Part, bends: Sequence[FoldedBend]) -> float:
    """Length of the blank: straights plus allowances [mm]."""
    return sum(straight_lengths_mm(part, bends)) + sum(b.allowance_mm for b in bends)


def bend_lines_mm(part: Part, bends: Sequence[FoldedBend]) -> tuple[float, ...]:
    """Middle of each allowance arc, from the left end of the blank [mm]."""
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
    for number, (bend, folded, at) in enumerate(
        zip(part.bends, bends, bend_lines_mm(part, bends), strict=True), start=1
    ):
        if made is not None and number not in made:
            folds.append(Fold(at))
            continue
        sign = 1.0 if bend.direction == "up" else -1.0
        angle = sign * (180.0 - bend.included_angle_deg)
        folds.append(Fold(at, angle, folded.inside_radius_mm, folded.allowance_mm))
    return Strip(part.thickness_mm, developed_length_mm(part, bends), tuple(folds))


def allowance_at(
    bend_angle_deg: float,
    inside_radius_mm: float,
    folded: FoldedBend,
    finished_bend_angle_deg: float,
    thickness_mm: float,
) -> float:
    """Developed length of a bend's arc at another angle and radius, same neutral fibre [mm].

    The neutral fibre lies as deep as the finished bend's allowance says.
    """
    finished = math.radians(finished_bend_angle_deg)
    depth = folded.allowance_mm / finished - folded.inside_radius_mm
    depth = min(max(depth, 0.0), thickness_mm)
    return math.radians(bend_angle_deg) * (inside_radius_mm + depth)


def outline(
    strip: Strip, start: Pose = (0.0, 0.0, 0.0), chord_error_mm: float = CHORD_ERROR_MM
) -> Ring:
    """The closed outline of the sheet, counter-clockwise, arcs as fine chords.

    start: where the mid-line of the left end lies and heads.
    """
    half = strip.thickness_mm / 2.0
    x, y, heading = start
    below: list[Point] = []
    above: list[Point] = []

    def add(px: float, py: float, nx: float, ny: float) -> None:
        below.append((px - half * nx, py - half * ny))
        above.append((px + half * nx, py + half * ny))

    add(x, y, -math.sin(heading), math.cos(heading))
    coarse = _coarsening(strip, chord_error_mm)
    reached = 0.0
    for fold in strip.folds:
        length = fold.at_mm - fold.allowance_mm / 2.0 - reached
        x += length * math.cos(heading)
        y += length * math.sin(heading)
        reached = fold.at_mm + fold.allowance_mm / 2.0
        if fold.bend_angle_deg == 0.0:
            continue
        sign = math.copysign(1.0, fold.bend_angle_deg)
        radius = fold.inside_radius_mm + half
        cx, cy = x - sign * radius * math.sin(heading), y + sign * radius * math.cos(heading)
        sweep = math.radians(fold.bend_angle_deg)
        chords = _chords(fold, strip.thickness_mm, coarse)
        for i in range(chords + 1):
            now = heading + sweep * i / chords
            nx, ny = -math.sin(now), math.cos(now)
            add(cx - sign * radius * nx, cy - sign * radius * ny, nx, ny)
        heading += sweep
        nx, ny = -math.sin(heading), math.cos(heading)
        x, y = cx - sign * radius * nx, cy - sign * radius * ny
    length = strip.length_mm - reached
    x += length * math.cos(heading)
    y += length * math.sin(heading)
    add(x, y, -math.sin(heading), math.cos(heading))
    return _without_repeats(below + above[::-1])


def _chords(fold: Fold, thickness_mm: float, chord_error_mm: float) -> int:
    """Even number of chords for an arc, so that its middle is a point of the outline."""
    outside = fold.inside_radius_mm + thickness_mm
    most = 2.0 * math.acos(max(1.0 - chord_error_mm / outside, 0.0))
    return 2 * max(1, math.ceil(math.radians(abs(fold.bend_angle_deg)) / most / 2.0))


def _coarsening(strip: Strip, chord_error_mm: float) -> float:
    """The chord error that keeps a ring of many bends within MOST_RING_POINTS."""
    error = chord_error_mm
    if chord_error_mm < CHORD_ERROR_MM:
        return error
    bent = [f for f in strip.folds if f.bend_angle_deg]
    while sum(2 * _chords(f, strip.thickness_mm, error) + 2 for f in bent) > MOST_RING_POINTS:
        error *= 2.0
        if error > 1.0:
            break
    return error


def _without_repeats(points: list[Point]) -> Ring:
    kept: list[Point] = []
    for p in points:
        if not kept or math.hypot(p[0] - kept[-1][0], p[1] - kept[-1][1]) > 1e-9:
            kept.append(p)
    if math.hypot(kept[0][0] - kept[-1][0], kept[0][1] - kept[-1][1]) <= 1e-9:
        kept.pop()
    return tuple(kept)


def pose_at(strip: Strip, number: int, start: Pose = (0.0, 0.0, 0.0)) -> Pose:
    """Pose of the mid-line in the middle of bend ``number`` (from 1); 0 is the left end,
    one more than the last bend the right end."""
    x, y, heading = start
    reached = 0.0
    half = strip.thickness_mm / 2.0
    for i, fold in enumerate(strip.folds, start=1):
        if number == 0:
            return (x, y, heading)
        length = fold.at_mm - fold.allowance_mm / 2.0 - reached
        x += length * math.cos(heading)
        y += length * math.sin(heading)
        reached = fold.at_mm + fold.allowance_mm / 2.0
        sweep = math.radians(fold.bend_angle_deg)
        if i == number:
            sweep /= 2.0
        if sweep:
            sign = math.copysign(1.0, sweep)
            radius = sign * (fold.inside_radius_mm + half)
            x += radius * (math.sin(heading + sweep) - math.sin(heading))
            y -= radius * (math.cos(heading + sweep) - math.cos(heading))
            heading += sweep
        if i == number:
            return (x, y, heading)
    length = strip.length_mm - reached
    return (x + length * math.cos(heading), y + length * math.sin(heading), heading)


def start_for(strip: Strip, number: int, target: Pose) -> Pose:
    """The start pose that puts the middle of bend ``number`` on ``target``."""
    x, y, heading = pose_at(strip, number)
    turn = target[2] - heading
    cos, sin = math.cos(turn), math.sin(turn)
    return (target[0] - (cos * x - sin * y), target[1] - (sin * x + cos * y), turn)


def centre_line(strip: Strip, start: Pose = (0.0, 0.0, 0.0)) -> tuple[Point, ...]:
    """The mid-line of the sheet from the left end, arcs as chords."""
    ring = outline(
        replace(
            strip,
            thickness_mm=1e-6,
            folds=tuple(
                replace(f, inside_radius_mm=f.inside_radius_mm + strip.thickness_mm / 2.0)
                for f in strip.folds
            ),
        ),
        start,
    )
    return ring[: len(ring) // 2]


def bend_points(strip: Strip, start: Pose = (0.0, 0.0, 0.0)) -> tuple[Point, ...]:
    """The middle of each bend on the mid-line."""
    return tuple(pose_at(strip, n, start)[:2] for n in range(1, len(strip.folds) + 1))


def bounds(ring: Ring) -> tuple[float, float, float, float]:
    """Smallest x, smallest y, largest x, largest y of the points [mm]."""
    xs, ys = [p[0] for p in ring], [p[1] for p in ring]
    return (min(xs), min(ys), max(xs), max(ys))


def check_part(part: Part) -> None:
    """Refuse what is not a part, before any tool is known.

    Raises:
        InputError: a number is out of range; ``where`` names it, lists counted from 0.
        NotAPartError: the section cannot exist: a flat is shorter than its bends need or
            flats run into one another.
    """
    if len(part.flats_mm) != len(part.bends) + 1:
        raise NotAPartError(
            "flats and bends do not match", "flats_mm", "There is one more flat than bends."
        )


def section_checks(part: Part, bends: Sequence[FoldedBend]) -> tuple[Check, ...]:
    """Findings on the section with the radii the tools give: flats too short for their
    arcs, flats that run into one another."""
    return ()
