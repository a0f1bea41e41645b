"""The V in a die's outline, found in its points."""

from __future__ import annotations

import math

from flangebook.bending.geometry.ring import Ring, counter_clockwise

LEVEL_MM = 0.05  # points of the top face may differ this much in height


def mouths(ring: Ring) -> list[tuple[float, float]]:
    """Openings in the outline's top face, left to right: from x, to x [mm].

    They end where the level face does.

    Where a shoulder is round, the level face ends where the rounding begins.

    Source: plane geometry.

    >>> mouths(((-9.0, -9.0), (9.0, -9.0), (9.0, 0.0), (4.0, 0.0), (0.0, -4.0), (-4.0, 0.0),
    ...         (-9.0, 0.0)))
    [(-4.0, 4.0)]
    """
    ring = counter_clockwise(ring)
    top = max(y for _, y in ring)
    # Gone round counter-clockwise the top face is met from its back to its front.
    level = [i for i, (_, y) in enumerate(ring) if y >= top - LEVEL_MM]
    found = []
    for here, following in zip(level, [*level[1:], level[0]], strict=True):
        between = (following - here) % len(ring)
        if between > 1 and ring[following][0] < ring[here][0]:
            found.append((ring[following][0], ring[here][0]))
    return sorted(found)


def mouth(ring: Ring, x_mm: float) -> tuple[float, float] | None:
    """The opening in the top face over ``x_mm``, from x, to x [mm]; None where there is none.

    Source: plane geometry.

    >>> block = ((-9.0, -9.0), (9.0, -9.0), (9.0, 0.0), (4.0, 0.0), (0.0, -4.0), (-4.0, 0.0),
    ...          (-9.0, 0.0))
    >>> mouth(block, 1.0)
    (-4.0, 4.0)
    >>> mouth(block, 8.0) is None
    True
    """
    return next((m for m in mouths(ring) if m[0] < x_mm < m[1]), None)


def widest_mouth(ring: Ring) -> tuple[float, float] | None:
    """The widest opening in the top face, from x, to x [mm]; None without one.

    Source: plane geometry.

    >>> block = ((-9.0, -9.0), (9.0, -9.0), (9.0, 0.0), (4.0, 0.0), (0.0, -4.0), (-4.0, 0.0),
    ...          (-9.0, 0.0))
    >>> widest_mouth(block)
    (-4.0, 4.0)
    """
    return max(mouths(ring), key=lambda m: m[1] - m[0], default=None)


def middle(ring: Ring) -> float:
    """The middle of the lowest points [mm]: where a tip or a level foot stands.

    Source: plane geometry.

    >>> middle(((-1.0, 0.0), (3.0, 0.0), (1.0, 5.0)))
    1.0
    """
    low = min(y for _, y in ring)
    xs = [x for x, y in ring if y <= low + LEVEL_MM]
    return math.fsum((min(xs), max(xs))) / 2.0
