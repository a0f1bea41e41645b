"""Folding the blank by its own numbers gives the section back.

The fold here knows nothing of the engine's geometry: it takes the blank's length, bend
lines, allowances, radii and angles, walks the sheet's two faces point by point with complex
numbers, and measures the outside dimensions on the points.
"""

from __future__ import annotations

import cmath
import math
from itertools import pairwise

import pytest
from bending_parts import bend, folded, folded_parts, part
from hypothesis import given, settings
from hypothesis import strategies as st

from flangebook.bending.handbook.hems import hem
from flangebook.bending.part.blank import Blank, blank
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import FoldedBend

CHORDS = 300
Run = tuple[complex, complex]


class Folded:
    """A sheet folded from a blank: its flats as runs of the mid-line, its arcs as points."""

    def __init__(self, sheet: Blank) -> None:
        self.t = sheet.thickness_mm
        self.runs: list[Run] = []
        self.arcs: list[list[tuple[complex, complex]]] = []  # (inner face, outer face) points
        self.signs: list[int] = []
        at, way, along = 0j, 1 + 0j, 0.0
        for line in sheet.bend_lines:
            end = line.at_mm - line.allowance_mm / 2.0
            self.runs.append((at, at + way * (end - along)))
            at, along = self.runs[-1][1], end + line.allowance_mm
            sign = 1 if line.direction == "up" else -1
            total = math.radians(180.0 - line.included_angle_deg) * sign
            to_centre = way * 1j * sign
            centre = at + to_centre * (line.inside_radius_mm + self.t / 2.0)
            points = []
            for i in range(CHORDS + 1):
                out = -to_centre * cmath.exp(1j * total * i / CHORDS)
                r = line.inside_radius_mm
                points.append((centre + out * r, centre + out * (r + self.t)))
            self.arcs.append(points)
            self.signs.append(sign)
            at = (points[-1][0] + points[-1][1]) / 2.0
            way *= cmath.exp(1j * total)
        self.runs.append((at, at + way * (sheet.length_mm - along)))

    def dimension(self, i: int, of: Part) -> float:
        """The dimension of flat i (from 0), measured on the points."""
        start, end = self.runs[i]
        way = (end - start) / abs(end - start)
        right = self._end(i, i, i + 1, of, way) if i < len(self.arcs) else along(end, way)
        left = self._end(i, i - 1, i - 1, of, way) if i > 0 else along(start, way)
        return right - left

    def _end(self, i: int, arc: int, other: int, of: Part, way: complex) -> float:
        b = of.bends[arc]
        if b.kind != "bend" or (of.dimension == "din6935" and b.included_angle_deg < 90.0):
            reach = [along(outer, way) for _, outer in self.arcs[arc]]
            return max(reach) if arc == i else min(reach)
        side = self.signs[arc] * (1 if of.dimension == "inside" else -1) * self.t / 2.0
        return along(meet(self._face(i, side), self._face(other, side)), way)

    def _face(self, i: int, side: float) -> Run:
        start, end = self.runs[i]
        normal = 1j * (end - start) / abs(end - start)
        return start + side * normal, end + side * normal


def along(point: complex, way: complex) -> float:
    return (point * way.conjugate()).real


def meet(one: Run, two: Run) -> complex:
    """Where two lines cross, by Cramer's rule."""
    u, v, d = one[1] - one[0], two[1] - two[0], two[0] - one[0]
    turn = (u.conjugate() * v).imag
    return one[0] + u * ((d.conjugate() * v).imag / turn)


@settings(max_examples=100, deadline=None)
@given(folded_parts(most_bends=8))
def test_folding_the_blank_gives_the_section_back(made: tuple[Part, list[FoldedBend]]) -> None:
    of, bends = made
    sheet = blank(of, bends, 7850.0)
    again = Folded(sheet)
    for i, flat in enumerate(of.flats_mm):
        assert again.dimension(i, of) == pytest.approx(flat, abs=0.01)
    assert sheet.sum_check_mm < 1e-6


@settings(max_examples=60, deadline=None)
@given(
    st.floats(8.0, 30.0),
    st.floats(40.0, 90.0),
    st.floats(0.0, 5.0),
    st.sampled_from((0.5, 1.0, 2.0)),
    st.booleans(),
)
def test_a_hem_folds_back_to_its_outside_length(
    hem_mm: float, flat_mm: float, gap_mm: float, thickness_mm: float, at_left: bool
) -> None:
    fold = (
        Bend(0.0, "up", kind="open_hem", hem_gap_mm=gap_mm)
        if gap_mm > 0.0
        else Bend(0.0, "up", kind="closed_hem")
    )
    flats, kinds = [hem_mm, flat_mm, 40.0], [fold, bend(90.0, "down")]
    bends = [hem(fold, thickness_mm).folded, FoldedBend(2.0, 3.9)]
    if not at_left:
        flats, kinds, bends = flats[::-1], kinds[::-1], bends[::-1]
    of = part(flats, kinds, thickness_mm)
    again = Folded(blank(of, bends, 7850.0))
    for i, flat in enumerate(of.flats_mm):
        assert again.dimension(i, of) == pytest.approx(flat, abs=0.01)


def test_a_wrong_bend_line_is_noticed() -> None:
    """The measurement above is able to fail: move one bend line by 0.05 mm."""
    from dataclasses import replace

    of = part((30.0, 60.0, 40.0), (bend(), bend(60.0, "down")))
    sheet = blank(of, folded(of), 7850.0)
    moved = replace(sheet.bend_lines[0], at_mm=sheet.bend_lines[0].at_mm + 0.05)
    wrong = Folded(replace(sheet, bend_lines=(moved, sheet.bend_lines[1])))
    assert abs(wrong.dimension(0, of) - 30.0) > 0.04


@given(folded_parts(most_bends=8))
def test_bend_lines_run_from_left_to_right_on_the_blank(
    made: tuple[Part, list[FoldedBend]],
) -> None:
    of, bends = made
    sheet = blank(of, bends, 7850.0)
    places = [0.0, *(line.at_mm for line in sheet.bend_lines), sheet.length_mm]
    assert all(a < b for a, b in pairwise(places))
