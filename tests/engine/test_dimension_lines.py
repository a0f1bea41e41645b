"""Dimension lines end where the finished section ends, in every convention of measuring."""

from __future__ import annotations

import math

import pytest

from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.geometry.strip import outline
from flangebook.bending.part.dimension_lines import dimension_lines
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import FoldedBend, strip_of

T = 2.0
R = 3.0


def _folded(part: Part) -> list[FoldedBend]:
    return [
        FoldedBend(R, math.radians(180.0 - bend.included_angle_deg) * (R + T / 2.0))
        for bend in part.bends
    ]


def _part(bends: tuple[Bend, ...], flats: tuple[float, ...], dimension: Dimension) -> Part:
    return Part("", "steel", T, 100.0, flats, bends, dimension)


@pytest.mark.parametrize("dimension", ["din6935", "mould_line", "inside"])
@pytest.mark.parametrize("angle", [150.0, 90.0, 60.0, 35.0])
def test_a_line_is_as_long_as_its_flat(dimension: Dimension, angle: float) -> None:
    bends = (Bend(angle, "up"), Bend(angle, "down"), Bend(angle, "down"))
    part = _part(bends, (40.0, 60.0, 55.0, 35.0), dimension)
    lengths = [math.dist(*line) for line in dimension_lines(part, _folded(part))]
    assert lengths == pytest.approx(part.flats_mm, abs=1e-9)


@pytest.mark.parametrize("angle", [90.0, 60.0, 35.0])
def test_outside_lines_end_at_the_outermost_point(angle: float) -> None:
    part = _part((Bend(angle, "up"),), (40.0, 50.0), "din6935")
    (_, end), _ = dimension_lines(part, _folded(part))
    furthest = max(x for x, _ in outline(strip_of(part, _folded(part))))
    assert end[0] == pytest.approx(furthest, abs=0.02)  # the outline's arcs are chords


def test_inside_lines_end_at_the_inside_face() -> None:
    part = _part((Bend(90.0, "up"),), (40.0, 50.0), "inside")
    (_, end), (start, _) = dimension_lines(part, _folded(part))
    furthest = max(x for x, _ in outline(strip_of(part, _folded(part))))
    assert end[0] == pytest.approx(furthest - T, abs=1e-9)
    assert start[1] == pytest.approx(T / 2.0, abs=1e-9)  # the top face of the first flat
