"""Whose outline is counted with usual sizes: what clears it on paper may not clear the real one."""

from __future__ import annotations

from collections.abc import Iterable

from flangebook.bending.checks import Check
from flangebook.bending.tools.tooling import Press
from flangebook.planning.tools.fit import Equipment, Fit

_OF_THE_PRESS = {
    "the ram": ("ram_width_mm", "ram_height_mm"),
    "the bed": ("bed_width_mm", "bed_height_mm"),
    "the gauge fingers": ("finger_height_mm", "finger_depth_mm"),
    "the stroke": ("stroke_mm",),
}


def assumed_outlines(fits: Iterable[Fit | None], equipment: Equipment) -> list[str]:
    """What the clearance of these fits is counted with and nobody has measured, in words."""
    tools = dict.fromkeys(
        f"{kind} {tool.code}"
        for one in fits
        if one is not None
        for kind, tool in (("punch", one.punch), ("die", one.die))
        if tool.code and tool.assumed
    )
    return [*tools, *(_of_the_press(equipment.press) if equipment.press else [])]


def _of_the_press(press: Press) -> list[str]:
    return [words for words, sizes in _OF_THE_PRESS.items() if not press.knows(*sizes)]


def assumed_clearance(assumed: list[str]) -> list[Check]:
    """The finding that clearance is counted with assumed sizes; nothing where there are none."""
    if not assumed:
        return []
    return [
        Check(
            "unknown",
            "clearance-assumed",
            f"Clearance is counted with assumed sizes of {_listed(assumed)}: whether the part "
            "clears the real ones is not known.",
            "Measure them and enter them, or walk through the steps with a scrap piece, slowly.",
        )
    ]


def _listed(words: list[str]) -> str:
    return ", ".join(words[:-1]) + f" and {words[-1]}" if len(words) > 1 else words[0]
