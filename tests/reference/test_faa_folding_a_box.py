"""FAA-H-8083-31, Aviation Maintenance Technician Handbook: Airframe, vol. 1, ch. 4: a box.

Section "Folding a Box".

Read at http://www.flight-mechanic.com/layout-and-forming-part-four/ and
https://aircraftsystemstech.com/p/folding-box.html. Printed: relief holes of about twice the bend
radius, never under 1/8 in up to 0.064 in sheet nor under 3/16 in from 0.072 to 0.128 in, centred
where the inside bend tangent lines cross, reaching 1/32 to 1/16 in behind those lines or more;
two opposite sides are bent first, then the other two between them.
(One copy prints the second least as "3/160-inch", a slip for 3/16.)
"""

from __future__ import annotations

import math

import pytest

from flangebook.bending.box.blank import box_blank
from flangebook.bending.box.box import Box, Side
from flangebook.bending.box.relief import relief_hole_faa_mm
from flangebook.bending.box.shape import box_shape, section_as_folded
from flangebook.bending.errors import InputError
from flangebook.bending.part.part import Bend
from flangebook.bending.part.section import FoldedBend

INCH = 25.4


@pytest.mark.parametrize(
    ("thickness_in", "radius_in", "hole_in"),
    [
        (0.064, 1 / 32, 1 / 8),
        (0.032, 1 / 32, 1 / 8),
        (0.072, 1 / 16, 3 / 16),
        (0.128, 1 / 16, 3 / 16),
        (0.040, 0.16, 0.32),  # the handbook's own U-channel: twice the radius
        (0.128, 5 / 32, 5 / 16),
    ],
)
def test_hole(thickness_in: float, radius_in: float, hole_in: float) -> None:
    found = relief_hole_faa_mm(radius_in * INCH, thickness_in * INCH)
    assert found == pytest.approx(hole_in * INCH, abs=1e-9)


@pytest.mark.parametrize(("radius_mm", "thickness_mm"), [(-1.0, 1.0), (1.0, 0.0), (1.0, math.nan)])
def test_no_size(radius_mm: float, thickness_mm: float) -> None:
    with pytest.raises(InputError):
        relief_hole_faa_mm(radius_mm, thickness_mm)


def test_the_hole_is_centred_where_the_tangent_lines_cross_and_reaches_behind_them() -> None:
    """0.040 in sheet, radius 0.16 in: every round point of the cut line lies 0.16 in from the
    crossing, which is more than 1/32 in behind the tangent lines."""
    side = Side((INCH,), (Bend(90.0, "up"),))
    box = Box("Box", "m", 0.040 * INCH, 6 * INCH, 4 * INCH, side, side, side, side)
    folded = [FoldedBend(0.16 * INCH, math.pi / 2 * (0.16 + 0.4 * 0.040) * INCH)] * 2
    sections = {
        pair: found
        for pair in ("left-right", "front-back")
        if (found := section_as_folded(box, pair, folded)) is not None  # type: ignore[arg-type]
    }
    shape = box_shape(box, sections)  # type: ignore[arg-type]
    assert shape.relief_mm == pytest.approx(0.32 * INCH, abs=1e-3)
    blank = box_blank(shape)
    at_left = next(line for line in blank.lines if line.side == "left")
    at_front = next(line for line in blank.lines if line.side == "front")
    crossing = (
        at_left.at_mm + at_left.allowance_mm / 2,
        at_front.at_mm + at_front.allowance_mm / 2,
    )
    near = [p for p in blank.outline if math.dist(p, crossing) < 0.17 * INCH]
    assert len(near) > 8
    for p in near:
        assert math.dist(p, crossing) == pytest.approx(0.16 * INCH, abs=1e-3)
    deepest = max(min(p[0] - crossing[0], p[1] - crossing[1]) for p in near)
    assert deepest > INCH / 32
