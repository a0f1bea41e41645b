"""Where each flat's dimension starts and ends on a drawing of the finished section."""

from __future__ import annotations

import math
from collections.abc import Sequence

from flangebook.bending.geometry.ring import Point
from flangebook.bending.geometry.strip import trace
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, setbacks_mm, strip_of


def dimension_lines(part: Part, bends: Sequence[FoldedBend]) -> tuple[tuple[Point, Point], ...]:
    """Both ends of each flat's dimension, in the part frame [mm].

    The ends lie on the flat's mid-line, moved out by the setbacks of its bends: how far they
    are apart is the dimension itself, in whichever convention it was given.

    bends: how each bend comes out of the tools, one for each of the part's.

    >>> from flangebook.bending.part.part import Bend
    >>> part = Part("", "steel", 2.0, 100.0, (30.0, 40.0), (Bend(90.0, "up"),))
    >>> lines = dimension_lines(part, [FoldedBend(3.0, 6.0)])
    >>> [round(math.dist(*line), 6) for line in lines]
    [30.0, 40.0]
    """
    setbacks = (0.0, *setbacks_mm(part, bends), 0.0)
    straights, _ = trace(strip_of(part, bends))
    lines = []
    for i, (flat, straight) in enumerate(zip(part.flats_mm, straights, strict=True)):
        x, y, heading = straight.start
        along = (math.cos(heading), math.sin(heading))
        start = (x - along[0] * setbacks[i], y - along[1] * setbacks[i])
        lines.append((start, (start[0] + along[0] * flat, start[1] + along[1] * flat)))
    return tuple(lines)
