"""The blank of a box: its cut line with the reliefs, its bend lines, its mass.

Frame: the inside of the box up, x from the left end, y from the front end of the blank.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from flangebook.bending.box.box import ENDS_OF, BoxBend, Pair, SideName, bends_of
from flangebook.bending.box.shape import BoxShape, Section, other_pair, pair_of
from flangebook.bending.errors import NotAPartError
from flangebook.bending.geometry.ring import Point, Ring, area, chords, first_crossing
from flangebook.bending.geometry.strip import Fold, Strip
from flangebook.bending.part.blank import measured_flats_mm
from flangebook.bending.part.part import Direction
from flangebook.bending.part.section import setbacks_mm, straight_lengths_mm

ROUND_ERROR_MM = 0.01
SAME_MM = 1e-6

Cut = tuple[tuple[float, float, float], ...]
"""Corners of the cut line, counter-clockwise: x, y [mm] and the bulge of the way to the next
one, the tangent of a quarter of its arc's angle, 0 for straight, positive to the left."""

_ROUND: tuple[tuple[SideName, SideName], ...] = (
    ("left", "front"), ("front", "right"), ("right", "back"), ("back", "left"),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class BoxLine:
    """A bend line with what is needed to fold it. bend: number over the box. at_mm: from the
    left end of the blank for left and right, from its front end for front and back [mm]."""

    bend: int
    side: SideName
    place: int
    x1_mm: float
    y1_mm: float
    x2_mm: float
    y2_mm: float
    direction: Direction
    included_angle_deg: float
    inside_radius_mm: float
    allowance_mm: float
    deduction_mm: float

    @property
    def at_mm(self) -> float:
        """Where it lies across itself [mm]."""
        return self.x1_mm if pair_of(self.side) == "left-right" else self.y1_mm

    @property
    def length_mm(self) -> float:
        """How long the bend is [mm]."""
        return math.dist((self.x1_mm, self.y1_mm), (self.x2_mm, self.y2_mm))


@dataclass(frozen=True, slots=True)
class BoxBlank:
    """The flat sheet of a box. length_mm along x, width_mm along y [mm]. outline: the cut line
    as a ring, arcs as fine chords. area_mm2: of the sheet. sum_check_mm: the largest difference
    between a dimension and the one measured after folding by these numbers."""

    length_mm: float
    width_mm: float
    thickness_mm: float
    cut: Cut
    outline: Ring
    lines: tuple[BoxLine, ...]
    area_mm2: float
    sum_check_mm: float

    def mass_kg(self, density_kg_m3: float) -> float:
        """Mass of the sheet [kg]."""
        return self.area_mm2 * self.thickness_mm * 1e-9 * density_kg_m3


def box_blank(shape: BoxShape) -> BoxBlank:
    """The blank of a box.

    Raises:
        NotAPartError: sides run into one another in the flat sheet.
    """
    left, front = _before_base(shape, "left-right"), _before_base(shape, "front-back")
    cut = tuple((x + left, y + front, bulge) for x, y, bulge in _cut(shape))
    ring = ring_of(cut)
    if first_crossing(ring) is not None:
        raise NotAPartError(
            "The sides run into one another in the flat sheet.",
            "box.sides",
            "Make the sides shorter, or the corners open.",
        )
    lines = tuple(_lines(shape, left, front))
    return BoxBlank(
        length_mm=max(p[0] for p in ring),
        width_mm=max(p[1] for p in ring),
        thickness_mm=shape.box.thickness_mm,
        cut=cut,
        outline=ring,
        lines=lines,
        area_mm2=area_mm2(cut),
        sum_check_mm=_sum_check(shape, lines),
    )


def _before_base(shape: BoxShape, pair: Pair) -> float:
    section = shape.sections.get(pair)
    return section.base_from_mm if section else 0.0


def _cut(shape: BoxShape) -> Iterator[tuple[float, float, float]]:
    """The cut line from the base's left front corner, tangent lines at 0."""
    width, depth = shape.base_mm["left-right"], shape.base_mm["front-back"]
    points: list[tuple[float, float, float]] = []
    for coming, going in _ROUND:
        first, second = (coming, going) if coming in ENDS_OF["left-right"] else (going, coming)
        path = _corner(shape, first, second)
        if coming != first:
            path = _reversed(path)
        turn_x, turn_y = first == "right", second == "back"
        # Mirrored once, an arc bends the other way.
        sign = -1.0 if turn_x != turn_y else 1.0
        points += [
            (width - x if turn_x else x, depth - y if turn_y else y, bulge * sign)
            for x, y, bulge in path
        ]
    yield from _without_repeats(points)


def _corner(shape: BoxShape, first: SideName, second: SideName) -> list[tuple[float, float, float]]:
    """From the end of the first side's chain through the corner to that of the second's, both
    coordinates inwards from the tangent lines."""
    one = [(x, y) for y, x in _side_end(shape, first, second)]
    two = _side_end(shape, second, first)
    middle = _relief(shape, first, second)
    before = [(x, y, 0.0) for x, y in one]
    after = [(x, y, 0.0) for x, y in reversed(two)]
    return [*before, *middle, *after]


def _side_end(shape: BoxShape, side: SideName, neighbour: SideName) -> list[Point]:
    """The end of a chain at one corner from its outermost edge to the first arc's far side:
    (along its bend line, inwards across it)."""
    chain = shape.box.side(side)
    if chain is None:
        return []
    end = shape.ends[side, neighbour]
    found: list[Point] = []
    for flat, (near, far) in enumerate(_stretches(shape, side), 1):
        start = end.flats_mm[flat - 1]
        if flat > 1:
            arc = end.arcs_mm[flat - 1]
            reached = -found[-1][1]
            found += [(arc, -reached), (arc, -near)]
        found += [(start, -near), (start, -far)]
    return found[::-1]


def _stretches(shape: BoxShape, side: SideName) -> list[tuple[float, float]]:
    """From where to where each flat's straight lies outwards of the tangent line [mm]."""
    section = shape.sections[pair_of(side)]
    straights = straight_lengths_mm(section.part, section.folded)
    low = side == ENDS_OF[pair_of(side)][0]
    numbers = range(section.base - 1, -1, -1) if low else range(section.base + 1, len(straights))
    found, reached = [], 0.0
    for i in numbers:
        reached += section.folded[i if low else i - 1].allowance_mm
        found.append((reached, reached + straights[i]))
        reached += straights[i]
    return found


def _relief(shape: BoxShape, first: SideName, second: SideName) -> list[tuple[float, float, float]]:
    """From the first side's wall to the second's past the corner, with the cut-out."""
    there = [shape.box.side(name) is not None for name in (first, second)]
    if not all(there):
        return [(0.0, 0.0, 0.0)]
    one, two = shape.ends[first, second].flats_mm[0], shape.ends[second, first].flats_mm[0]
    arcs = (_stretches(shape, first)[0][0], _stretches(shape, second)[0][0])
    cut = shape.relief_mm / 2.0
    if shape.box.relief == "round" and cut > 0.0:
        before, after = _onto(one, arcs[0], cut), _onto(two, arcs[1], cut)
        start, finish = before[-1][::-1], after[-1]
        sweep = _sweep(start, finish)
        path = [(x, y, 0.0) for y, x in before[:-1]]
        # Round a hole that lies on the right hand: the arc runs clockwise.
        path.append((*start, -math.tan(sweep / 4.0)))
        return [*path, *((x, y, 0.0) for x, y in reversed(after))]
    if cut == 0.0:
        flat_one, flat_two = max(one, 0.0), max(two, 0.0)
        points = [(-arcs[0], flat_one), (0.0, flat_one), (0.0, 0.0), (flat_two, 0.0),
                  (flat_two, -arcs[1])]  # fmt: skip
        return [(x, y, 0.0) for x, y in points]
    wide_one, wide_two = max(one, cut), max(two, cut)
    points = [(-arcs[0], wide_one), (0.0, wide_one), (0.0, cut), (cut, cut), (cut, 0.0),
              (wide_two, 0.0), (wide_two, -arcs[1])]  # fmt: skip
    return [(x, y, 0.0) for x, y in _straightened(points)]


def _straightened(points: list[Point]) -> list[Point]:
    """The path without the steps that lead there and back."""
    kept: list[Point] = []
    for p in points:
        if len(kept) > 1 and _between(kept[-2], kept[-1], p):
            kept.pop()
        kept.append(p)
    return kept


def _between(a: Point, b: Point, c: Point) -> bool:
    """Whether b lies on a straight line with its neighbours."""
    return abs((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])) <= SAME_MM


def _onto(start: float, arc: float, cut: float) -> list[Point]:
    """From a wall's edge onto the round relief: (along the bend line, inwards across it)."""
    along = max(start, 0.0)
    if along >= cut:
        return [(along, -arc), (along, 0.0), (cut, 0.0)]
    down = math.sqrt(cut * cut - along * along)
    if down >= arc:
        return [(math.sqrt(cut * cut - arc * arc), -arc)]
    return [(along, -arc), (along, -down)]


def _sweep(start: Point, finish: Point) -> float:
    """The angle [rad] from one point of the relief to the other through the base."""
    one, two = math.atan2(start[1], start[0]), math.atan2(finish[1], finish[0])
    return (one - two) % (2.0 * math.pi)


def _reversed(path: list[tuple[float, float, float]]) -> list[tuple[float, float, float]]:
    """The same way back; a bulge belongs to the way that begins at its point."""
    bulges = [bulge for _, _, bulge in path]
    turned = [-b for b in reversed(bulges[:-1])]
    return [(x, y, b) for (x, y, _), b in zip(reversed(path), [*turned, 0.0], strict=True)]


def _without_repeats(
    points: list[tuple[float, float, float]],
) -> Iterator[tuple[float, float, float]]:
    for one, after in zip(points, [*points[1:], points[0]], strict=True):
        if math.dist(one[:2], after[:2]) > SAME_MM:
            yield one


def ring_of(cut: Cut) -> Ring:
    """A cut line as a ring of points, its arcs as fine chords."""
    found: list[Point] = []
    for (x, y, bulge), (x2, y2, _) in zip(cut, (*cut[1:], cut[0]), strict=True):
        found.append((x, y))
        if bulge:
            found += _chords((x, y), (x2, y2), bulge)
    return tuple(found)


def _arc(start: Point, finish: Point, bulge: float) -> tuple[Point, float, float]:
    """Centre, radius [mm] and signed angle [rad] of an arc."""
    angle = 4.0 * math.atan(bulge)
    half = math.dist(start, finish) / 2.0
    middle = ((start[0] + finish[0]) / 2.0, (start[1] + finish[1]) / 2.0)
    off = half / math.tan(angle / 2.0)
    ux, uy = (finish[0] - start[0]) / (2.0 * half), (finish[1] - start[1]) / (2.0 * half)
    centre = (middle[0] - uy * off, middle[1] + ux * off)
    return centre, half / abs(math.sin(angle / 2.0)), angle


def _chords(start: Point, finish: Point, bulge: float) -> list[Point]:
    centre, radius, angle = _arc(start, finish, bulge)
    count = chords(radius, math.degrees(angle), ROUND_ERROR_MM)
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    return [
        (centre[0] + radius * math.cos(first + angle * i / count),
         centre[1] + radius * math.sin(first + angle * i / count))
        for i in range(1, count)
    ]  # fmt: skip


def area_mm2(cut: Cut) -> float:
    """Area inside a cut line, its arcs true [mm2].

    Source: Gauss's area formula, and segments of circles (from memory).

    >>> area_mm2(((0.0, 0.0, 0.0), (4.0, 0.0, 0.0), (4.0, 2.0, 0.0), (0.0, 2.0, 0.0)))
    8.0
    >>> round(area_mm2(((-1.0, 0.0, 1.0), (1.0, 0.0, 1.0))), 6)  # two half circles
    3.141593
    """
    more = area(ring_of(cut))
    for (x, y, bulge), (x2, y2, _) in zip(cut, (*cut[1:], cut[0]), strict=True):
        if bulge:
            _, radius, angle = _arc((x, y), (x2, y2), bulge)
            count = chords(radius, math.degrees(angle), ROUND_ERROR_MM)
            more += radius * radius / 2.0 * (angle - count * math.sin(angle / count))
    return more


def _lines(shape: BoxShape, left: float, front: float) -> Iterator[BoxLine]:
    for one in bends_of(shape.box):
        section = shape.sections[one.pair]
        i = one.in_section - 1
        at = section.strip.folds[i].at_mm
        start, end = _line_ends(shape, one, at, section)
        folded = section.folded[i]
        deduction = 2.0 * setbacks_mm(section.part, section.folded)[i] - folded.allowance_mm
        upright = one.pair == "left-right"
        low, high = (start + front, end + front) if upright else (start + left, end + left)
        yield BoxLine(
            one.number, one.side, one.place,
            at if upright else low, low if upright else at,
            at if upright else high, high if upright else at,
            one.bend.direction, one.bend.included_angle_deg,
            folded.inside_radius_mm, folded.allowance_mm, deduction,
        )  # fmt: skip


def _line_ends(
    shape: BoxShape, one: BoxBend, at_mm: float, section: Section
) -> tuple[float, float]:
    """From where to where a bend line runs, from the base's tangent line [mm]."""
    start, end = shape.along_mm(one.side, one.place, arc=True)
    if one.place > 1 or shape.box.relief != "round":
        return start, end
    across = section.folded[one.in_section - 1].allowance_mm / 2.0
    cut = shape.relief_mm / 2.0
    inside = math.sqrt(cut * cut - across * across) if cut > across else 0.0
    low, high = ENDS_OF[other_pair(one.side)]
    far = shape.base_mm[other_pair(one.side)]
    if shape.box.side(low) is not None:
        start = max(start, inside)
    if shape.box.side(high) is not None:
        end = min(end, far - inside)
    return start, end


def _sum_check(shape: BoxShape, lines: tuple[BoxLine, ...]) -> float:
    """Fold both sections by the blank's own lines and measure them [mm]."""
    worst = 0.0
    for pair, section in shape.sections.items():
        mine = sorted((line for line in lines if pair_of(line.side) == pair), key=lambda b: b.at_mm)
        strip = Strip(
            shape.box.thickness_mm, section.strip.length_mm, tuple(_fold(line) for line in mine)
        )
        part = section.part
        measured = measured_flats_mm(strip, part.bends, part.dimension)
        worst = max(worst, *(abs(m - f) for m, f in zip(measured, part.flats_mm, strict=True)))
    return worst


def _fold(line: BoxLine) -> Fold:
    angle = 180.0 - line.included_angle_deg
    signed = angle if line.direction == "up" else -angle
    return Fold(line.at_mm, signed, line.inside_radius_mm, line.allowance_mm)
