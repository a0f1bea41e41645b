"""Invented parts and tools for the geometry tests, and ways to make many of them."""

from __future__ import annotations

import math
from collections.abc import Sequence

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy, composite

from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm
from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.part.part import Bend, Direction, Part
from flangebook.bending.part.section import FoldedBend, allowance_at
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

PRESS = Press(
    name="Test press",
    force_kn=400.0,
    bed_length_mm=1600.0,
    between_frames_mm=1300.0,
    open_height_mm=400.0,
    stroke_mm=150.0,
    throat_mm=200.0,
    gauge_x_min_mm=5.0,
    gauge_x_max_mm=600.0,
    gauge_r_min_mm=-60.0,
    gauge_r_max_mm=150.0,
    finger_height_mm=12.0,
    finger_depth_mm=40.0,
)
DIE = Die("V16", "V 16", 16.0, 86.0, 2.0, 60.0, 50.0, None, (500.0,))
PUNCH = Punch("S", "Straight", 86.0, 1.0, 110.0, 20.0, None, (500.0,))
GOOSENECK = Punch(
    "G", "Gooseneck", 85.0, 1.0, 150.0, 20.0, None, (500.0,), shape="gooseneck", neck_relief_mm=25.0
)
HOLDER = Holder("H", "Holder", 80.0, 30.0, 35.0, None)

DIRECTIONS: SearchStrategy[Direction] = st.sampled_from(("up", "down"))
DIMENSIONS: SearchStrategy[Dimension] = st.sampled_from(("din6935", "mould_line", "inside"))


def part(
    flats_mm: Sequence[float],
    bends: Sequence[Bend],
    thickness_mm: float = 2.0,
    dimension: Dimension = "din6935",
) -> Part:
    return Part("Test", "metal", thickness_mm, 500.0, tuple(flats_mm), tuple(bends), dimension)


def bend(included_angle_deg: float = 90.0, direction: Direction = "up") -> Bend:
    return Bend(included_angle_deg, direction)


def folded(of: Part, inside_radius_mm: float = 2.5, k_factor: float = 0.4) -> list[FoldedBend]:
    depth = inside_radius_mm + k_factor * of.thickness_mm
    return [
        FoldedBend(inside_radius_mm, math.radians(180.0 - b.included_angle_deg) * depth)
        for b in of.bends
    ]


def stroke(of: Part, bends: Sequence[FoldedBend], number: int, die: Die = DIE) -> Stroke:
    """The stroke that bends number ``number`` by 2 degrees more than it keeps."""
    b, f, t = of.bends[number - 1], bends[number - 1], of.thickness_mm
    loaded, radius = b.included_angle_deg - 2.0, f.inside_radius_mm
    depth = punch_depth_mm(
        loaded, radius, t, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm
    )
    return Stroke(loaded, radius, allowance_at(loaded, radius, b, f, t), depth)


@composite
def folded_parts(
    draw: DrawFn,
    most_bends: int = 6,
    least_angle_deg: float = 25.0,
    most_angle_deg: float = 170.0,
    least_radius_mm: float = 0.0,
    dimensions: SearchStrategy[Dimension] = DIMENSIONS,
) -> tuple[Part, list[FoldedBend]]:
    """A part whose every flat keeps a straight stretch, and how its bends come out."""
    thickness = draw(st.sampled_from((0.5, 1.0, 2.0, 3.0, 6.0)))
    count = draw(st.integers(1, most_bends))
    dimension = draw(dimensions)
    angles = st.floats(least_angle_deg, most_angle_deg)
    bends = [Bend(draw(angles), draw(DIRECTIONS)) for _ in range(count)]
    finished = []
    for b in bends:
        radius = draw(st.floats(least_radius_mm, 8.0))
        depth = radius + draw(st.floats(0.3, 0.5)) * thickness
        finished.append(FoldedBend(radius, math.radians(180.0 - b.included_angle_deg) * depth))
    flats = [draw(st.floats(1.0, 200.0)) for _ in range(count + 1)]
    for i, (b, f) in enumerate(zip(bends, finished, strict=True)):
        half = math.radians(180.0 - b.included_angle_deg) / 2.0
        takes = (f.inside_radius_mm + thickness) * max(1.0, math.tan(half))
        flats[i] += takes
        flats[i + 1] += takes
    return part(flats, bends, thickness, dimension), finished
