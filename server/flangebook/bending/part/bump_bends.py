"""Step bending: a large radius made by many small bumps at an even pitch."""

from __future__ import annotations

import math
from collections.abc import Collection
from dataclasses import dataclass, replace

from flangebook.bending.checks import Check, shown_less
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.strip import Fold, Strip
from flangebook.bending.part.part import Direction, End
from flangebook.bending.part.section import FoldedBend

MOST_BUMPS = 90
LEAST_BUMPS = 2
MOST_CHORD_ERROR_MM = 0.3
"""Facets that stand off further are a caution; common practice, no source."""
SMOOTH_DEG = 2.0


@dataclass(frozen=True, slots=True)
class Bumps:
    """How a radius is stepped.

    count: number of bumps. angle_each_deg: bend angle of one [deg]. pitch_mm: between bumps on
    the blank [mm]. chord_error_mm: how far the facets leave the outside radius, at most
    [mm]. offsets_mm: each bump from the bend line, left to right on the blank [mm].
    """

    count: int
    angle_each_deg: float
    pitch_mm: float
    chord_error_mm: float
    offsets_mm: tuple[float, ...]


def chord_error_mm(outside_radius_mm: float, angle_each_deg: float) -> float:
    """Sagitta of one facet [mm]: R (1 - cos(angle / 2)).

    Args:
        outside_radius_mm: R [mm], inside radius plus thickness.
        angle_each_deg: bend angle of one bump [deg].

    Source: geometry of a chord.

    >>> round(chord_error_mm(100.0, 6.0), 3)
    0.137
    """
    return outside_radius_mm * (1.0 - math.cos(math.radians(angle_each_deg) / 2.0))


def bumps_of(
    count: int,
    bend_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    allowance_mm: float,
) -> Bumps:
    """The radius stepped with this many bumps.

    The arc's developed length is shared out evenly, a bump in the middle of each share, so
    pitch = allowance / count and angle = bend angle / count.

    Raises:
        InputError: fewer than two bumps.
    """
    if count < LEAST_BUMPS:
        raise InputError(f"{count} bumps make no radius.", "hits", "Give two or more.")
    pitch = allowance_mm / count
    each = bend_angle_deg / count
    error = chord_error_mm(inside_radius_mm + thickness_mm, each)
    places = tuple((i - (count - 1) / 2.0) * pitch for i in range(count))
    return Bumps(count, each, pitch, error, places)


def bumps_for(
    bend_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    allowance_mm: float,
    most_chord_error_mm: float = MOST_CHORD_ERROR_MM,
) -> Bumps:
    """The fewest bumps that keep the chord error within bounds, at most MOST_BUMPS.

    >>> bumps_for(90.0, 100.0, 2.0, 158.0).count
    11
    """
    outside = inside_radius_mm + thickness_mm
    share = min(max(1.0 - most_chord_error_mm / outside, -1.0), 1.0)
    each = 2.0 * math.degrees(math.acos(share))
    count = MOST_BUMPS if each <= 0.0 else math.ceil(bend_angle_deg / each)
    count = min(max(LEAST_BUMPS, count), MOST_BUMPS)
    return bumps_of(count, bend_angle_deg, inside_radius_mm, thickness_mm, allowance_mm)


def bump_numbers(count: int, gauged_end: End) -> tuple[int, ...]:
    """The bumps (1 is the leftmost on the blank) in the order they are made.

    Furthest from the gauge first, so that what lies between bump and gauge is still flat.
    """
    numbers = tuple(range(1, count + 1))
    return numbers if gauged_end == "right" else numbers[::-1]


def bump_gauge_x_mm(bumps: Bumps, line_gauge_x_mm: float, gauged_end: End) -> tuple[float, ...]:
    """Gauge X of each bump in the order made [mm].

    line_gauge_x_mm: gauge X with the bend line itself on the tools' centre line, the radius
    not begun yet [mm].

    Source: plane geometry.

    >>> bumps = bumps_of(3, 90.0, 50.0, 2.0, 80.0)
    >>> [round(x, 2) for x in bump_gauge_x_mm(bumps, 100.0, "right")]
    [126.67, 100.0, 73.33]
    """
    sign = 1.0 if gauged_end == "right" else -1.0
    return tuple(
        line_gauge_x_mm - sign * bumps.offsets_mm[n - 1]
        for n in bump_numbers(bumps.count, gauged_end)
    )


def stepped(
    strip: Strip,
    number: int,
    bumps: Bumps,
    direction: Direction,
    bump: FoldedBend,
    made: Collection[int],
) -> Strip:
    """The strip with bend ``number`` replaced by its bumps, those in ``made`` bent.

    bump: inside radius and allowance of a single bump. made: bumps from 1, leftmost first.
    Bump n is bend ``number + n - 1`` of the strip that comes back; later bends move on.
    """
    line = strip.folds[number - 1].at_mm
    angle = bumps.angle_each_deg if direction == "up" else -bumps.angle_each_deg
    small = tuple(
        Fold(line + offset, angle, bump.inside_radius_mm, bump.allowance_mm)
        if n in made
        else Fold(line + offset)
        for n, offset in enumerate(bumps.offsets_mm, 1)
    )
    return replace(strip, folds=(*strip.folds[: number - 1], *small, *strip.folds[number:]))


def step_checks(bumps: Bumps, v_opening_mm: float) -> tuple[Check, ...]:
    """Findings on a stepped radius: pitch against the die, facets that will show.

    Source: MetalForming magazine, "Creative approaches to common press-brake challenges,
    part 1: step bending": a pitch below half the V lets earlier bumps fall into the opening;
    2 degrees a bump for a smooth finish in thin sheet.
    """
    found = []
    if shown_less(bumps.pitch_mm, v_opening_mm / 2.0):
        found.append(
            Check(
                "caution",
                "step-pitch-small",
                "The pitch of {pitch_mm} is less than half the V opening of {v_mm}: "
                "earlier bumps lie in the opening and change the depth.",
                "Use a V of {most_v_mm} or less or fewer bumps, and watch the first pieces.",
                {
                    "pitch_mm": bumps.pitch_mm,
                    "v_mm": v_opening_mm,
                    "most_v_mm": 2.0 * bumps.pitch_mm,
                },
            )
        )
    if bumps.angle_each_deg > SMOOTH_DEG:
        coarse = bumps.chord_error_mm > MOST_CHORD_ERROR_MM
        found.append(
            Check(
                "caution" if coarse else "ok",
                "step-facets",
                "Each bump bends {each_deg}: facets stand off the radius by {chord_error_mm}.",
                "For a smoother finish use more bumps in a narrower V.",
                {"each_deg": bumps.angle_each_deg, "chord_error_mm": bumps.chord_error_mm},
            )
        )
    return tuple(found)
