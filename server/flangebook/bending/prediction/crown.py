"""What takes out a bend that is more open in its middle than at its ends.

The middle lacks depth by the difference of the angles times the depth that closes a degree. A shim
under the middle of the die, or crowning, that lifts it by as much takes it out. Between the middle
and the ends the shim falls off as the bow does, close to a parabola: full in the middle, three
quarters of it half-way to an end, nothing at the ends (``deflection`` has the exact curve; the
two differ by less than a tenth of the shim).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from flangebook.bending.requirements import need

STRIP_MM = 0.05
"""Shims are laid of strips so thick: half a sheet of office paper (common practice)."""
LEAST_CROWN_DEG = 0.3
"""Less than this between middle and ends is reading, not crown [deg]."""
MOST_STRIPS = 12
MOST_SHIM_MM = STRIP_MM * MOST_STRIPS
"""A middle that lacks more depth is no matter of shims (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Shim:
    """Strips to lay under the middle of the die. middle_mm: height there, whole strips.
    lengths_mm: of each strip, longest first, each centred."""

    middle_mm: float
    strip_mm: float
    lengths_mm: tuple[float, ...]

    def height_mm(self, from_middle_mm: float) -> float:
        """How high it is at a place [mm]."""
        return self.strip_mm * sum(2.0 * abs(from_middle_mm) < one for one in self.lengths_mm)


def middle_open_deg(left_deg: float, middle_deg: float, right_deg: float) -> float:
    """How much more open the middle is than the mean of the ends [deg]; negative: more closed.

    Source: definition.

    >>> middle_open_deg(90.0, 91.5, 91.0)
    1.0
    """
    return middle_deg - 0.5 * (left_deg + right_deg)


def shim_for(lack_mm: float, length_mm: float, strip_mm: float = STRIP_MM) -> Shim | None:
    """The strips that make up for a lack of depth in the middle of a bend; None where that is less
    than half a strip, or more than shims should make up.

    Strip i of n reaches as far as the parabola is higher than the middle of that strip.

    Args:
        lack_mm: depth that the middle lacks against the ends [mm].
        length_mm: of the bend [mm].
        strip_mm: thickness of a strip [mm].

    Raises:
        InputError: length or strip is not above zero.

    >>> shim_for(0.1, 1000.0).lengths_mm
    (866.0, 500.0)
    """
    need(length_mm=length_mm, strip_mm=strip_mm)
    count = round(lack_mm / strip_mm)
    if count < 1 or lack_mm > MOST_SHIM_MM:
        return None
    reach = (sqrt(1.0 - (i + 0.5) / count) for i in range(count))
    lengths = tuple(float(round(length_mm * share)) for share in reach)
    return Shim(count * strip_mm, strip_mm, lengths)
