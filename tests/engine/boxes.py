"""Boxes for the tests, their shapes with bends given outright, and blanks folded independently."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from shapely.geometry import Polygon
from shapely.geometry import box as rectangle

from flangebook.bending.box.blank import BoxBlank, BoxLine
from flangebook.bending.box.box import PAIRS, Box, Side, check_box, section_of
from flangebook.bending.box.shape import BoxShape, box_shape, section_as_folded
from flangebook.bending.part.part import Bend
from flangebook.bending.part.section import FoldedBend

Vectors = NDArray[np.float64]
UP, DOWN = Bend(90.0, "up"), Bend(90.0, "down")


def wall(height: float = 30.0, *lips: float) -> Side:
    """A wall with lips beyond it: a length above 0 turns inwards, below 0 outwards."""
    bends = tuple(UP if lip > 0 else DOWN for lip in lips)
    return Side((height, *(abs(lip) for lip in lips)), (UP, *bends))


def tray(*sides: Side | None, **other: Any) -> Box:
    """A 300 x 200 tray of 2 mm sheet; sides in the order left, right, front, back."""
    plain: dict[str, Any] = {
        "title": "Tray", "metal": "mild-steel-cr", "thickness_mm": 2.0,
        "length_mm": 300.0, "width_mm": 200.0,
    }  # fmt: skip
    named = dict(zip(("left", "right", "front", "back"), sides, strict=True))
    return Box(**{**plain, **named, **other})


def shaped(box: Box, radius_mm: float = 2.0, k: float = 0.4, over_deg: float = 2.0) -> BoxShape:
    """The shape of a box whose bends all come out at one radius, neutral line at k t."""
    check_box(box)
    sections = {}
    for pair in PAIRS:
        section = section_of(box, pair)
        if section is not None:
            bends = [
                FoldedBend(
                    radius_mm,
                    math.radians(180.0 - b.included_angle_deg) * (radius_mm + k * box.thickness_mm),
                )
                for b in section.bends
            ]
            folded = section_as_folded(box, pair, bends, over_deg=[over_deg] * len(bends))
            assert folded is not None
            sections[pair] = folded
    return box_shape(box, sections)


@dataclass(frozen=True)
class Slab:
    """A flat piece of the folded sheet: middle, its three axes as rows, half sizes along them."""

    side: str
    flat: int
    middle: Vectors
    axes: Vectors
    half: Vectors

    @property
    def corners(self) -> Vectors:
        """Its eight corners."""
        signs = np.array([[i, j, k] for i in (-1, 1) for j in (-1, 1) for k in (-1, 1)])
        return self.middle + (signs * self.half) @ self.axes


def slabs(blank: BoxBlank) -> list[Slab]:
    """The blank folded by nothing but its cut line, its bend lines and their figures.

    Flats between the bends' arcs become slabs of the sheet's thickness; what they span along the
    bend is read from the cut line.
    """
    sheet = Polygon(blank.outline)
    by_side: dict[str, list[BoxLine]] = {}
    for line in blank.lines:
        by_side.setdefault(line.side, []).append(line)
    ends = {side: _outwards(side, lines) for side, lines in by_side.items()}
    left, right, front, back = (
        _tangent(ends, side, whole)
        for side, whole in (("left", 0.0), ("right", blank.length_mm), ("front", 0.0),
                            ("back", blank.width_mm))
    )  # fmt: skip
    t = blank.thickness_mm
    middle = np.array([(left + right) / 2, (front + back) / 2, t / 2])
    base = Slab("base", 0, middle, np.eye(3), np.array([right - left, back - front, t]) / 2)
    found = [base]
    for side, lines in ends.items():
        found += _chain(sheet, blank, side, lines, (left, right, front, back))
    return found


def _outwards(side: str, lines: Sequence[BoxLine]) -> list[BoxLine]:
    return sorted(lines, key=lambda line: line.at_mm, reverse=side in ("left", "front"))


def _tangent(ends: Mapping[str, list[BoxLine]], side: str, edge: float) -> float:
    """Where the flat base ends on that side."""
    if side not in ends:
        return edge
    line = ends[side][0]
    inwards = 1.0 if side in ("left", "front") else -1.0
    return line.at_mm + inwards * line.allowance_mm / 2


def _chain(
    sheet: Polygon,
    blank: BoxBlank,
    side: str,
    lines: Sequence[BoxLine],
    base: tuple[float, float, float, float],
) -> list[Slab]:
    """The flats of one side, walked outwards from the base's tangent line."""
    left, right, front, back = base
    out, along, start = {
        "left": ((-1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (left, 0.0, 0.0)),
        "right": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (right, 0.0, 0.0)),
        "front": ((0.0, -1.0, 0.0), (1.0, 0.0, 0.0), (0.0, front, 0.0)),
        "back": ((0.0, 1.0, 0.0), (1.0, 0.0, 0.0), (0.0, back, 0.0)),
    }[side]
    heading, normal = np.array(out), np.array((0.0, 0.0, 1.0))
    at = np.array(start) + normal * blank.thickness_mm / 2  # on the middle of the sheet
    sign = -1.0 if side in ("left", "front") else 1.0
    edge = {"left": 0.0, "right": blank.length_mm, "front": 0.0, "back": blank.width_mm}[side]
    found = []
    for i, line in enumerate(lines):
        turn = math.radians(180.0 - line.included_angle_deg)
        up = 1.0 if line.direction == "up" else -1.0
        radius = line.inside_radius_mm + blank.thickness_mm / 2
        centre = at + up * normal * radius
        spoke = at - centre
        cos, sin = math.cos(turn), math.sin(turn)
        # Turned in the plane of heading and normal, towards the normal for an up bend.
        spoke = spoke * cos + heading * radius * sin
        heading, normal = (
            heading * cos + up * normal * sin,
            normal * cos - up * heading * sin,
        )
        at = centre + spoke
        near = line.at_mm + sign * line.allowance_mm / 2
        last = i + 1 == len(lines)
        far = edge if last else lines[i + 1].at_mm - sign * lines[i + 1].allowance_mm / 2
        length = abs(far - near)
        low, high = _span(sheet, side, near, far)
        middle = at + heading * length / 2 + np.array(along) * (low + high) / 2
        axes = np.array([heading, along, normal])
        half = np.array([length / 2, (high - low) / 2, blank.thickness_mm / 2])
        found.append(Slab(side, i + 1, middle, axes, half))
        at = at + heading * length
    return found


def _span(sheet: Polygon, side: str, near: float, far: float) -> tuple[float, float]:
    """What the cut line leaves of a flat, in the middle of its stretch."""
    a, b = sorted((near, far))
    third = (b - a) / 3
    big = 1e5
    if side in ("left", "right"):
        cut = sheet.intersection(rectangle(a + third, -big, b - third, big))
        return cut.bounds[1], cut.bounds[3]
    cut = sheet.intersection(rectangle(-big, a + third, big, b - third))
    return cut.bounds[0], cut.bounds[2]


def overlap_mm(one: Slab, two: Slab) -> float:
    """How deep two slabs run into one another, below 0 when apart: by separating axes."""
    axes = [*one.axes, *two.axes]
    axes += [np.cross(a, b) for a in one.axes for b in two.axes]
    least = math.inf
    for axis in axes:
        size = float(np.linalg.norm(axis))
        if size < 1e-9:
            continue
        unit = axis / size
        reach = sum(float(np.abs(s.axes @ unit) @ s.half) for s in (one, two))
        least = min(least, reach - abs(float((one.middle - two.middle) @ unit)))
    return least
