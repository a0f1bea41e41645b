"""Whether an outline by points stands where the calculations look for it.

A punch's tip, a die's V and a seat are expected at (0, 0); the height typed beside the outline
places the tool above it or below it. An outline that lies elsewhere would be checked for clearance
where the real tool is not. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import lru_cache

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import Ring, bounds
from flangebook.bending.tools.outline import die_outline, holder_outline, punch_outline
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch
from flangebook.bending.tools.v_notch import mouth

Tool = Punch | Die | Holder
OFF_MM = 0.1  # further than this a tip, a seat or a V is not where it is looked for


@lru_cache(maxsize=512)
def punch_checks(punch: Punch) -> tuple[Check, ...]:
    """Findings on a punch by points: tip at (0, 0), as high as its height says."""
    ring = _drawn(lambda: punch_outline(punch)) if punch.shape == "points" else ()
    return tuple(_above(ring, punch.height_mm, "punch", "Its tip")) if ring else ()


@lru_cache(maxsize=512)
def holder_checks(holder: Holder) -> tuple[Check, ...]:
    """Findings on a holder by points: as high as its height says, on both sides of its seat."""
    by_points = holder.points_mm and holder.shape != "clamps"
    ring = _drawn(lambda: holder_outline(holder)) if by_points else ()
    if not ring:
        return ()
    return tuple(
        check
        for check in _above(ring, holder.height_mm, "holder", "Its seat")
        if check.code != "holder-low"  # clamps may reach down beside the punch
    )


@lru_cache(maxsize=512)
def die_checks(die: Die) -> tuple[Check, ...]:
    """Findings on a die by points: its top face at y = 0, its V at x = 0 and as wide as typed."""
    ring = _drawn(lambda: die_outline(die)) if die.shape == "points" else ()
    return tuple(_die(die, ring)) if ring else ()


def press_checks(press: Press) -> tuple[Check, ...]:
    """Findings on a press: whether tools fit between bed and ram at all."""
    if press.die_holder_height_mm < press.open_height_mm:
        return ()
    return (too_tall("die holder", press.die_holder_height_mm, press.open_height_mm),)


def too_tall(
    what: str, height_mm: float, open_height_mm: float, die_holder_mm: float = 0.0
) -> Check:
    """The finding on a tool that does not go between bed and ram, or die holder and ram."""
    above = " above the die holder" if die_holder_mm else ""
    return Check(
        "stop",
        "tool-too-tall",
        f"The {what} is {{height_mm}} tall, the press opens {{open_height_mm}}{above}.",
        "Check both figures; a tool this tall does not go into this press.",
        {"height_mm": height_mm, "open_height_mm": open_height_mm - die_holder_mm},
    )


def taller_than_the_press(tool: Tool, press: Press) -> Check | None:
    """The finding on a tool that by itself is as tall as the press opens, or None."""
    if tool.height_mm < press.open_height_mm - press.die_holder_height_mm:
        return None
    what = {Punch: "punch", Die: "die", Holder: "holder"}[type(tool)]
    return too_tall(what, tool.height_mm, press.open_height_mm, press.die_holder_height_mm)


def _above(ring: Ring, height_mm: float, what: str, name: str) -> Iterator[Check]:
    """Whether the ring stands on (0, 0) and ends at its height."""
    left, low, right, top = bounds(ring)
    lowest = [x for x, y in ring if y <= low + OFF_MM]
    if abs(low) > OFF_MM:
        yield Check(
            "caution",
            f"{what}-low",
            f"{name} is looked for at height 0, the outline's lowest point is at {{low_mm}}.",
            "Shift the outline's points.",
            {"low_mm": low},
        )
    if not min(lowest) - OFF_MM <= 0.0 <= max(lowest) + OFF_MM and what == "punch":
        yield Check(
            "caution",
            f"{what}-beside",
            f"{name} is looked for at x 0, the outline's lowest point is at {{x_mm}}.",
            "Shift the outline's points.",
            {"x_mm": min(lowest, key=abs)},
        )
    if what == "holder" and not left < 0.0 < right:
        yield Check(
            "caution",
            f"{what}-beside",
            f"{name} is looked for at x 0, the outline reaches from {{left_mm}} to {{right_mm}}.",
            "Shift the outline's points.",
            {"left_mm": left, "right_mm": right},
        )
    if abs(top - height_mm) > OFF_MM:
        yield _height(what, top, height_mm)


def _drawn(draw: Callable[[], Ring]) -> Ring:
    """The outline, empty where it is none: whoever needs it says what is wrong with it."""
    try:
        return draw()
    except InputError:
        return ()


def _die(die: Die, ring: Ring) -> Iterator[Check]:
    _, low, _, top = bounds(ring)
    if abs(top) > OFF_MM and not die.block:
        yield Check(
            "caution",
            "die-top",
            "The die's top face is looked for at height 0, the outline's highest point is at "
            "{top_mm}.",
            "Shift the outline's points.",
            {"top_mm": top},
        )
    found = mouth(ring, 0.0)
    if found is None:
        yield Check(
            "caution",
            "die-no-v",
            "The outline has no opening in its top face at x 0.",
            "The V's middle is at x 0, the top face at height 0; shift the outline's points.",
        )
    elif abs(found[0] + found[1]) / 2.0 > OFF_MM:
        yield Check(
            "caution",
            "die-beside",
            "The V's middle is looked for at x 0, the outline's lies at {x_mm}.",
            "Shift the outline's points.",
            {"x_mm": (found[0] + found[1]) / 2.0},
        )
    if abs(-low - die.height_mm) > OFF_MM:
        yield _height("die", -low, die.height_mm)


def _height(what: str, drawn_mm: float, height_mm: float) -> Check:
    """The finding on an outline that is not as high as its height says."""
    return Check(
        "caution",
        f"{what}-height",
        f"The outline ends {{drawn_mm}} from the {what}'s line, its height says {{height_mm}}.",
        "Correct the height or the outline: the tools are stacked by the height.",
        {"drawn_mm": drawn_mm, "height_mm": height_mm},
    )
