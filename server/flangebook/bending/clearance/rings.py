"""How far two outlines are apart, or how deep one lies in the other."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from flangebook.bending.clearance.distance import Edge, between_edges, to_edge2
from flangebook.bending.compiled import kernel

Corners = NDArray[np.float64]
"""A closed outline's corners [mm], shape (corners, 2)."""


@kernel
def apart(one: Corners, two: Corners) -> float:
    """Distance between two outlines [mm]; negative by how deep a corner lies in the other.

    Source: plane geometry.

    >>> square = np.array([[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]])
    >>> apart(square, square + np.array([4.0, 0.0]))
    3.0
    >>> round(apart(square, square + np.array([0.9, 0.9])), 6)
    -0.1
    """
    deep = max(_deepest(one, two), _deepest(two, one))
    if deep > 0.0:
        return -deep
    least = math.inf
    for i in range(len(one)):
        side = _side(one, i)
        for j in range(len(two)):
            least = min(least, between_edges(side, _side(two, j)))
    return least


@kernel
def _side(ring: Corners, i: int) -> Edge:
    """From the corner before to corner i."""
    return Edge(ring[i - 1, 0], ring[i - 1, 1], ring[i, 0], ring[i, 1])


@kernel
def _deepest(corners: Corners, ring: Corners) -> float:
    """How deep the deepest corner lies in a ring [mm]; 0 where none does."""
    deepest = 0.0
    for i in range(len(corners)):
        x, y = corners[i, 0], corners[i, 1]
        if _holds(ring, x, y):
            nearest2 = math.inf
            for j in range(len(ring)):
                nearest2 = min(nearest2, to_edge2(x, y, _side(ring, j)))
            deepest = max(deepest, math.sqrt(nearest2))
    return deepest


@kernel
def _holds(ring: Corners, x: float, y: float) -> bool:
    """Whether a point is in a ring, by the even-odd rule."""
    found = False
    for j in range(len(ring)):
        ax, ay, bx, by = _side(ring, j)
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            found = not found
    return found
