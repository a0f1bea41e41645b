"""The outlines of one pair of tools, with what holds them, as edges for the order problem."""

from __future__ import annotations

import numpy as np

from flangebook.bending.clearance.problem import BED, DIE, FLOOR, HOLDER, PUNCH, RAM, Floats, Ints
from flangebook.bending.geometry.ring import Ring, box
from flangebook.bending.tools.outline import tool_stack
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

FLOOR_WIDTH_MM = 10_000.0
FLOOR_DEPTH_MM = 1_000.0


def edges_of(
    press: Press, holder: Holder | None, punch: Punch, die: Die
) -> tuple[Floats, Ints, int]:
    """Edges (E, 4) [mm], what each belongs to (E,), and how many are of punch, holder and ram.

    Those come first, the punch's tip at (0, 0); then die, bed and floor, die's top face y = 0.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
    """
    stack = tool_stack(press, holder, punch, die, 0.0)
    above = [(PUNCH, stack.punch), (HOLDER, stack.holder), (RAM, stack.ram)]
    below = [(DIE, stack.die), (BED, stack.bed), (FLOOR, _floor(press, die))]
    edges: list[tuple[float, float, float, float]] = []
    belongs: list[int] = []
    for tool, ring in above + below:
        edges += [(*p, *q) for p, q in zip(ring, ring[1:] + ring[:1], strict=True)]
        belongs += [tool] * len(ring)
    upper = sum(len(ring) for _, ring in above)
    return np.array(edges, np.float64).reshape(-1, 4), np.array(belongs, np.int64), upper


def _floor(press: Press, die: Die) -> Ring:
    """The floor as a thick plate; nothing where its height is not on record."""
    if press.floor_below_die_mm is None:
        return ()
    top = -die.height_mm - press.floor_below_die_mm
    half = FLOOR_WIDTH_MM / 2.0
    return box(-half, top - FLOOR_DEPTH_MM, half, top)
