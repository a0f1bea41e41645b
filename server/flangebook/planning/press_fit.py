"""Whether tools and part fit the press: length, open height, stroke, throat."""

from __future__ import annotations

from collections.abc import Iterable

from flangebook.bending import outline_checks
from flangebook.bending.checks import Check
from flangebook.bending.frames import bend_length_fits
from flangebook.bending.tooling import Press
from flangebook.planning.fit import Equipment, Fit


def press_checks(
    one: Fit, equipment: Equipment, behind_mm: float | None = None
) -> tuple[Check, ...]:
    """What speaks against making this bend on this press, loads apart.

    behind_mm: how far the sheet reaches behind the tools' centre line at any moment [mm], None
    where it is not known.
    """
    press = equipment.press
    if press is None:
        return ()
    length = bend_length_fits(press, one.wanted.bend_length_mm, behind_mm)
    found = (
        *_height(one, equipment, press),
        *_holder(equipment, press),
        *_outlines(one, equipment),
    )
    return found if length is None else (length, *found)


def _height(one: Fit, equipment: Equipment, press: Press) -> Iterable[Check]:
    """The tools' heights against the open height and the stroke."""
    if not (one.punch.code and one.die.code and one.bend):
        return
    stack = equipment.stack_mm(one.punch, one.die)
    below = " and die holder" if press.die_holder_height_mm else ""
    numbers = {"stack_mm": stack, "open_height_mm": press.open_height_mm}
    if equipment.opens_mm(one.punch, one.die, one.wanted.thickness_mm) <= 0.0:
        yield Check(
            "stop",
            "tools-too-tall",
            f"Punch, holder, die{below} stand {{stack_mm}} tall, "
            "the press opens {open_height_mm}.",
            "Use lower tools.",
            numbers,
        )
        return
    reach = press.open_height_mm - press.stroke_mm
    bottom = stack + one.wanted.thickness_mm - one.bend.punch_depth_mm.high
    if bottom < reach:
        yield Check(
            "stop",
            "tools-too-low",
            "With its full stroke the press closes to {reach_mm}; the tools need {bottom_mm}.",
            "Use taller tools or put a riser under the die.",
            {"reach_mm": reach, "bottom_mm": bottom},
        )


def _outlines(one: Fit, equipment: Equipment) -> Iterable[Check]:
    """Outlines by points that do not stand where the tool is: clearance is checked with them."""
    if equipment.holder is not None:
        yield from outline_checks.holder_checks(equipment.holder)
    if one.punch.code and one.die.code:
        yield from outline_checks.punch_checks(one.punch)
        yield from outline_checks.die_checks(one.die)


def _holder(equipment: Equipment, press: Press) -> Iterable[Check]:
    if press.holder and equipment.holder is None:
        yield Check(
            "unknown",
            "holder-unknown",
            f"The holder {press.holder} is not in the crib: its load and overhang are not checked.",
            "Enter the holder, or name the one that sits in the ram.",
        )
