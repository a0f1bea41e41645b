"""A leg of a half-made part constructed by hand: complex numbers for the middle line, shapely
for the sheet. Nothing of the product is used but the names of what a finger stands against."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass

from shapely import Polygon

from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE, ROUNDED


@dataclass(frozen=True)
class Leg:
    """Runs of flat sheet between finished bends (signed angle, inside radius), outwards."""

    thickness: float
    runs: tuple[float, ...]
    bends: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Slack:
    """How strictly lengths are compared: to find out what is a tie."""

    same: float = 0.02
    travel: float = 0.0
    lean: float = 0.0


def walked(leg: Leg) -> list[tuple[str, complex, complex, complex]]:
    """Pieces of the middle line: ("flat", from, to, direction) or ("arc", from, centre, direction).

    Points and directions are complex numbers; the sheet lies on y = 0 at the bend line.
    """
    at, along = complex(0.0, leg.thickness / 2.0), complex(1.0)
    found: list[tuple[str, complex, complex, complex]] = []
    for i, run in enumerate(leg.runs):
        found.append(("flat", at, at + run * along, along))
        at += run * along
        if i < len(leg.bends):
            angle, radius = leg.bends[i]
            centre = at + along * 1j * math.copysign(radius + leg.thickness / 2.0, angle)
            found.append(("arc", at, centre, along))
            turn = cmath.exp(1j * angle)
            at, along = centre + (at - centre) * turn, along * turn
    return found


def polygons(leg: Leg) -> list[Polygon]:
    half, shapes = leg.thickness / 2.0, []
    bends = iter(leg.bends)
    for what, start, other, along in walked(leg):
        across = along * 1j * half
        if what == "flat":
            corners = [start + across, start - across, other - across, other + across]
        else:
            angle, _ = next(bends)
            turns = [cmath.exp(1j * angle * k / 60) for k in range(61)]
            inner = [other + (start + across - other) * turn for turn in turns]
            outer = [other + (start - across - other) * turn for turn in turns]
            corners = inner + outer[::-1]
        shape = Polygon([(c.real, c.imag) for c in corners])
        if shape.area > 1e-9:
            shapes.append(shape)
    return shapes


def faces(leg: Leg, slack: Slack) -> list[tuple[int, int, complex, complex]]:
    """(kind, bends between, near end, far end) of all that looks to the back."""
    half, straight = leg.thickness / 2.0, math.cos(math.radians(10.0) + slack.lean)
    found, between = [], 0
    pieces = walked(leg)
    for what, start, other, along in pieces:
        if what == "flat":
            for normal in (along * 1j, along * -1j):
                if between and normal.real >= straight and abs(other - start) > 1e-6:
                    found.append((FLANGE, between, start + normal * half, other + normal * half))
            continue
        angle, radius = leg.bends[between]
        between += 1
        outwards = (start - other) / abs(start - other)
        turn = cmath.phase(1.0 / outwards)  # from where the arc begins to where it looks back
        for way in (turn - 2.0 * math.pi, turn, turn + 2.0 * math.pi):
            edge = math.radians(5.0) + slack.lean
            if edge < math.copysign(1.0, angle) * way < abs(angle) - edge:
                point = other + radius + leg.thickness
                found.append((ROUNDED, between, point, point))
    _, _, end, along = pieces[-1]
    if along.real >= straight:
        found.append((EDGE, between, end - along * 1j * half, end + along * 1j * half))
    return found
