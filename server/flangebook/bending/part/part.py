"""What is to be made: flats and bends, a length, a metal, a thickness."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.part.order_limits import NO_ORDER_LIMITS, OrderLimits

Direction = Literal["up", "down"]
End = Literal["left", "right"]
"""Which end of the part."""
BendKind = Literal["bend", "closed_hem", "open_hem"]
MOST_BENDS = 40


@dataclass(frozen=True, slots=True)
class Bend:
    """A bend between two flats.

    included_angle_deg: between the flats after release; 90 is square, 180 flat; hems are 0.
    direction: "up" turns what follows (drawn from the left end, to the right) counter-clockwise.
    inside_radius_mm: the radius asked for, or None for what the tools give.
    kind: "bend", or a "closed_hem"/"open_hem" (only at the part's ends).
    hem_gap_mm: clear gap inside an open hem.
    die, punch: codes of the tools asked for, or None for what suits best.
    """

    included_angle_deg: float
    direction: Direction
    inside_radius_mm: float | None = None
    kind: BendKind = "bend"
    hem_gap_mm: float = 0.0
    die: str | None = None
    punch: str | None = None


@dataclass(frozen=True, slots=True)
class Hole:
    """A hole or cut-out whose edge may be pulled out of shape by a bend near it.

    flat: number of the flat, from 1. position_mm: its centre, from the left end of that
    flat's dimension. diameter_mm: its size across the bend.
    """

    flat: int
    position_mm: float
    diameter_mm: float


@dataclass(frozen=True, slots=True)
class Part:
    """A part of one constant section.

    flats_mm: one more than bends; outside dimensions as ``dimension`` says:
        "din6935" (mould line from 90 deg up, outermost tangent below), "mould_line", "inside".
    bend_length_mm: along the bend lines.
    metal: code of the metal. grain: rolling direction against the bend line, if known.
    order: bend numbers from 1 to force an order; None lets the planner choose.
    order_limits: what else the user asks of the order. walled: finished sides stand at the ends of
        its bends, as in a box, so nothing is slid out along the tools.
    die, punch: codes of the tools asked for, for every bend that names none of its own.
    """

    title: str
    metal: str
    thickness_mm: float
    bend_length_mm: float
    flats_mm: tuple[float, ...]
    bends: tuple[Bend, ...]
    dimension: Dimension = "din6935"
    order: tuple[int, ...] | None = None
    holes: tuple[Hole, ...] = ()
    grain: Literal["with", "across"] | None = None
    order_limits: OrderLimits = NO_ORDER_LIMITS
    walled: bool = False
    die: str | None = None
    punch: str | None = None

    def asked_for(self, bend: int) -> tuple[str | None, str | None]:
        """Codes of the punch and the die asked for, for a bend by its number from 1."""
        own = self.bends[bend - 1]
        return own.punch or self.punch, own.die or self.die
