"""A strip: the sheet seen on edge, with bend lines, each bent by so much now.

Any state of bends made is a strip, so the blank, the half-made part and the finished
section are drawn by one rule, and the developed length never changes.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from flangebook.bending.geometry.ring import Point, Ring, chords

REPEAT_MM = 1e-9  # nearer than this, two points of an outline are one
CHORD_ERROR_MM = 0.01
MOST_RING_POINTS = 200

Pose = tuple[float, float, float]
"""Where a point of the mid-line lies and which way it heads: x [mm], y [mm], heading [rad]."""
START: Pose = (0.0, 0.0, 0.0)


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
        self,
        number: int,
        bend_angle_deg: float,
        inside_radius_mm: float,
        allowance_mm: float,
    ) -> Strip:
        """The strip with bend ``number`` (from 1) bent otherwise; its line stays in place."""
        folds = list(self.folds)
        at = folds[number - 1].at_mm
        folds[number - 1] = Fold(at, bend_angle_deg, inside_radius_mm, allowance_mm)
        return replace(self, folds=tuple(folds))

    def flattened(self, number: int) -> Strip:
        """The strip with bend ``number`` (from 1) not bent."""
        return self.with_fold(number, 0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Straight:
    """A flat between two arcs: the mid-line's start pose and its length."""

    start: Pose
    length_mm: float

    @property
    def end(self) -> Pose:
        """Pose at the far end."""
        x, y, h = self.start
        return (x + self.length_mm * math.cos(h), y + self.length_mm * math.sin(h), h)


@dataclass(frozen=True, slots=True)
class Arc:
    """A bend: centre, signed sweep, inside and outside radius, heading where it starts."""

    centre: Point
    heading: float
    sweep: float
    inside_mm: float
    outside_mm: float

    @property
    def sign(self) -> float:
        """1.0 for an up bend, -1.0 for a down bend."""
        return math.copysign(1.0, self.sweep)

    def point(self, share: float, radius_mm: float) -> Point:
        """The point ``share`` (0 to 1) along the arc at a radius from its centre."""
        now = self.heading + self.sweep * share
        return (
            self.centre[0] + self.sign * radius_mm * math.sin(now),
            self.centre[1] - self.sign * radius_mm * math.cos(now),
        )


def trace(strip: Strip, start: Pose = START) -> tuple[tuple[Straight, ...], tuple[Arc | None, ...]]:
    """The strip's straights, left to right, and the arcs between them (None where flat)."""
    straights: list[Straight] = []
    arcs: list[Arc | None] = []
    pose, reached = start, 0.0
    for fold in strip.folds:
        straight = Straight(pose, fold.at_mm - fold.allowance_mm / 2.0 - reached)
        straights.append(straight)
        reached = fold.at_mm + fold.allowance_mm / 2.0
        pose, bent = _around(fold, strip.thickness_mm, straight.end)
        arcs.append(bent)
    straights.append(Straight(pose, strip.length_mm - reached))
    return tuple(straights), tuple(arcs)


def _around(fold: Fold, thickness_mm: float, pose: Pose) -> tuple[Pose, Arc | None]:
    """The pose after a fold, and its arc."""
    if fold.bend_angle_deg == 0.0:
        return pose, None
    x, y, heading = pose
    sweep = math.radians(fold.bend_angle_deg)
    radius = math.copysign(fold.inside_radius_mm + thickness_mm / 2.0, sweep)
    cx, cy = x - radius * math.sin(heading), y + radius * math.cos(heading)
    inside = fold.inside_radius_mm
    turned = heading + sweep
    end = (cx + radius * math.sin(turned), cy - radius * math.cos(turned), turned)
    return end, Arc((cx, cy), heading, sweep, inside, inside + thickness_mm)


def outline(strip: Strip, start: Pose = START, chord_error_mm: float = CHORD_ERROR_MM) -> Ring:
    """The closed outline of the sheet, counter-clockwise, arcs as fine chords.

    start: where the mid-line of the left end lies and heads. A strip of many bends gets
    coarser chords, to keep the ring near MOST_RING_POINTS, unless a chord error finer than
    the usual one is asked for.
    """
    half = strip.thickness_mm / 2.0
    below: list[Point] = []
    above: list[Point] = []

    def face(x: float, y: float, heading: float) -> None:
        dx, dy = half * math.sin(heading), half * math.cos(heading)
        below.append((x + dx, y - dy))
        above.append((x - dx, y + dy))

    straights, arcs = trace(strip, start)
    error = _affordable(strip, chord_error_mm)
    face(*start)
    for bent in arcs:
        if bent is None:
            continue
        count = chords(bent.outside_mm, math.degrees(bent.sweep), error)
        middle = (bent.inside_mm + bent.outside_mm) / 2.0
        for i in range(count + 1):
            share = i / count
            face(*bent.point(share, middle), bent.heading + bent.sweep * share)
    face(*straights[-1].end)
    return _without_repeats(below + above[::-1])


def _affordable(strip: Strip, chord_error_mm: float) -> float:
    """The chord error that keeps a ring of many bends near MOST_RING_POINTS."""
    if chord_error_mm < CHORD_ERROR_MM:
        return chord_error_mm
    bent = [(f.inside_radius_mm + strip.thickness_mm, f.bend_angle_deg)
            for f in strip.folds if f.bend_angle_deg]  # fmt: skip
    error = chord_error_mm
    while (
        sum(2 * chords(r, angle, error) + 2 for r, angle in bent) > MOST_RING_POINTS and error < 1.0
    ):
        error *= 2.0
    return error


def _without_repeats(points: list[Point]) -> Ring:
    """The points without those that touch the one before, however the ring lies."""
    kept: list[Point] = []
    last = points[-1]
    for p in points:
        if math.dist(p, last) > REPEAT_MM:
            kept.append(p)
            last = p
    return tuple(kept)


def pose_at(strip: Strip, number: int, start: Pose = START) -> Pose:
    """Pose of the mid-line in the middle of bend ``number`` (from 1).

    0 is the left end, one more than the last bend the right end.
    """
    straights, arcs = trace(strip, start)
    if number == 0:
        return start
    if number > len(arcs):
        return straights[-1].end
    bent = arcs[number - 1]
    if bent is None:
        return straights[number - 1].end
    x, y = bent.point(0.5, (bent.inside_mm + bent.outside_mm) / 2.0)
    return (x, y, bent.heading + bent.sweep / 2.0)


def start_for(strip: Strip, number: int, target: Pose) -> Pose:
    """The start pose that puts the middle of bend ``number`` on ``target``."""
    x, y, heading = pose_at(strip, number)
    turn = target[2] - heading
    cos, sin = math.cos(turn), math.sin(turn)
    return (target[0] - (cos * x - sin * y), target[1] - (sin * x + cos * y), turn)


def centre_line(strip: Strip, start: Pose = START) -> tuple[Point, ...]:
    """The mid-line of the sheet from the left end, arcs as chords."""
    straights, arcs = trace(strip, start)
    error = _affordable(strip, CHORD_ERROR_MM)
    points: list[Point] = [start[:2]]
    for bent in arcs:
        if bent is not None:
            count = chords(bent.outside_mm, math.degrees(bent.sweep), error)
            middle = (bent.inside_mm + bent.outside_mm) / 2.0
            points += [bent.point(i / count, middle) for i in range(count + 1)]
    points.append(straights[-1].end[:2])
    return tuple(points)


def bend_points(strip: Strip, start: Pose = START) -> tuple[Point, ...]:
    """The middle of each bend on the mid-line."""
    straights, arcs = trace(strip, start)
    return tuple(
        flat.end[:2] if bent is None else bent.point(0.5, (bent.inside_mm + bent.outside_mm) / 2.0)
        for flat, bent in zip(straights, arcs, strict=False)
    )
