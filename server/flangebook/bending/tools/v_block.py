"""A block with several V's: its outline with one of them up, and a die for each of them.

The block is a rectangle in section. Its faces are named as it is drawn, with "top" up; a V's
place is measured along its face from the face's middle, as seen with that face up, +x to the
back gauge. To use a V the block is turned until its face is up and shifted until the V's middle
lies on the tools' centre line.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.geometry.ring import Point, Ring, arc, first_crossing, tidy
from flangebook.bending.tools.tooling import Die

Face = Literal["top", "back", "bottom", "front"]
# Quarter turns, counter-clockwise, that bring a face up.
_TURNS: dict[Face, int] = {"top": 0, "back": 1, "bottom": 2, "front": 3}


@dataclass(frozen=True, slots=True)
class Opening:
    """One V of a block. code, name: of the die it makes. centre_mm: where its middle lies along
    its face. rating_kn_per_m None is unknown."""

    code: str
    name: str
    v_opening_mm: float
    angle_deg: float
    shoulder_radius_mm: float
    face: Face = "top"
    centre_mm: float = 0.0
    rating_kn_per_m: float | None = None


@dataclass(frozen=True, slots=True)
class Block:
    """A block of V's. like: what is the same for all its dies (pieces, place, condition, code
    and name of the block); its width and height are those of the block with its top face up."""

    like: Die
    openings: tuple[Opening, ...]


def block_outline(block: Block, number: int) -> Ring:
    """The block with opening ``number`` (from 1) up: top face at y = 0, its V's middle at x = 0.

    Raises:
        InputError: a V does not fit on its face, or runs into another or through the block.
    """
    points, owners = _drawn(block)
    ring = tidy(points)
    crossing = first_crossing(ring)
    if crossing is not None:
        ends = [ring[(n + i) % len(ring)] for n in crossing for i in (-1, 0)]
        ways = {owners[points.index(p)] for p in ends} - {0}
        one = max(ways, default=1)
        raise InputError(
            "This V runs into another V or through the block."
            if len(ways) < 2
            else f"V's {' and '.join(str(n) for n in sorted(ways))} run into each other.",
            f"openings.{one - 1}.v_opening_mm",
            "Move them apart, or give the block's real sizes.",
        )
    up = block.openings[number - 1]
    turned = [_turn(p, _TURNS[up.face]) for p in ring]
    top = _face(block, up.face)[1] / 2.0
    return tuple((x - up.centre_mm, y - top) for x, y in turned)


def die_of(block: Block, number: int) -> Die:
    """The die that opening ``number`` (from 1) makes, its outline that of the whole block.

    Raises:
        InputError: see :func:`block_outline`.
    """
    up = block.openings[number - 1]
    width, height = _face(block, up.face)
    return replace(
        block.like,
        code=up.code,
        name=up.name,
        v_opening_mm=up.v_opening_mm,
        angle_deg=up.angle_deg,
        shoulder_radius_mm=up.shoulder_radius_mm,
        height_mm=height,
        width_mm=width + 2.0 * abs(up.centre_mm),
        rating_kn_per_m=up.rating_kn_per_m,
        shape="points",
        points_mm=block_outline(block, number),
        block=block.like.code,
    )  # turned stays as it is: the whole block is put in back to front


def _face(block: Block, face: Face) -> tuple[float, float]:
    """How wide the block is with that face up, and how high."""
    width, height = block.like.width_mm, block.like.height_mm
    return (height, width) if face in ("back", "front") else (width, height)


def _drawn(block: Block) -> tuple[list[Point], list[int]]:
    """The block about its middle, top face up, counter-clockwise; which opening a point
    belongs to, 0 for the block itself."""
    points: list[Point] = []
    owners: list[int] = []
    for face in ("top", "front", "bottom", "back"):  # the order in which the ring meets them
        width, height = _face(block, face)
        here = [n for n, o in enumerate(block.openings, 1) if o.face == face]
        runs: list[tuple[int, list[Point]]] = [(0, [(width / 2.0, 0.0)])]
        for n in sorted(here, key=lambda n: -block.openings[n - 1].centre_mm):
            runs.append((n, _notch(block.openings[n - 1], n, width, height)))
        for owner, run in runs:
            points += [_turn((x, y + height / 2.0), -_TURNS[face]) for x, y in run]
            owners += [owner] * len(run)
    return points, owners


def _notch(opening: Opening, number: int, width: float, height: float) -> list[Point]:
    """The V in a face whose line is y = 0, from its back shoulder to its front one."""
    v, rd, where = opening.v_opening_mm, opening.shoulder_radius_mm, f"openings.{number - 1}"
    if not 0.0 < opening.angle_deg < 180.0:
        raise InputError(
            "A V is sharper than 180°.", f"{where}.angle_deg", "Give the angle of the V."
        )
    centre = shoulder_centre_x_mm(v, opening.angle_deg, rd)
    beta = 90.0 - opening.angle_deg / 2.0
    depth = v / 2.0 * math.tan(math.radians(beta))
    if centre + abs(opening.centre_mm) > width / 2.0:
        raise InputError(
            "The V does not fit on its face.",
            f"{where}.centre_mm",
            "From its middle it takes {side_mm} to either side of a face {wide_mm} wide.",
            {"side_mm": centre, "wide_mm": width},
        )
    if depth >= height:
        raise InputError(
            "The V is deeper than the block.",
            f"{where}.v_opening_mm",
            "It is {deep_mm} deep, the block {block_mm}.",
            {"deep_mm": depth, "block_mm": height},
        )
    right = arc((centre, -rd), rd, 90.0, 90.0 + beta)
    if right[-1][1] < -depth:
        raise InputError(
            "The shoulders are rounder than the V is deep.",
            f"{where}.shoulder_radius_mm",
            "Make the shoulder radius smaller.",
        )
    left = [(-x, y) for x, y in reversed(right)]
    return [(x + opening.centre_mm, y) for x, y in [*right, (0.0, -depth), *left]]


def _turn(p: Point, quarters: int) -> Point:
    """The point turned about the middle by quarter turns, counter-clockwise."""
    x, y = p
    for _ in range(quarters % 4):
        x, y = -y, x
    return x, y
