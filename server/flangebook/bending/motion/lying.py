"""How the sheet lies in the press for a stroke, and what the punch does to it."""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.geometry.strip import Pose, Strip, start_for
from flangebook.bending.part.part import Direction, End
from flangebook.bending.tools.tooling import Die


@dataclass(frozen=True, slots=True)
class Stroke:
    """What the punch does to the active bend.

    included_angle_deg: loaded, at the bottom of the stroke. inside_radius_mm: [mm].
    allowance_mm: developed length of the arc at that angle [mm] (``section.allowance_at``).
    punch_depth_mm: travel from first touch [mm] (``air_bend_geometry.punch_depth_mm``).
    """

    included_angle_deg: float
    inside_radius_mm: float
    allowance_mm: float
    punch_depth_mm: float


@dataclass(frozen=True, slots=True)
class Pressing:
    """What a step's motion is worked out from (``step_motion``): the strip as it lies in the
    press, the active bend's number there, what the punch does to it, and the die."""

    strip: Strip
    number: int
    stroke: Stroke
    die: Die


@dataclass(frozen=True, slots=True)
class Closing:
    """The same for the flattening of a hem: included angle [deg], inside radius [mm] and
    allowance [mm] of its fold before and after."""

    strip: Strip
    number: int
    acute: tuple[float, float, float]
    closed: tuple[float, float, float]


def facing(strip: Strip, number: int, direction: Direction, gauged_end: End) -> tuple[Strip, int]:
    """The strip as it lies in the press, and the number of the active bend there.

    The gauged end comes to the right, the inside of the active bend up.
    """
    if direction == "down":
        strip = strip.flipped()
    if gauged_end == "left":
        return strip.reversed(), len(strip.folds) + 1 - number
    return strip, number


def lying(strip: Strip, number: int) -> tuple[Strip, Pose]:
    """The strip with its active bend flat on the die, and where it starts (faced already)."""
    flat = strip.flattened(number)
    return flat, start_for(flat, number, (0.0, flat.thickness_mm / 2.0, 0.0))
