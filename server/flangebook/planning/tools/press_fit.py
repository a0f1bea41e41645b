"""Whether part, holder and outlines fit the press; the tools' heights are looked at in ``fit``."""

from __future__ import annotations

from collections.abc import Iterable

from flangebook.bending.checks import Check
from flangebook.bending.motion.frames import bend_length_fits
from flangebook.bending.tools import outline_checks
from flangebook.bending.tools.tooling import Press
from flangebook.planning.tools.fit import Equipment, Fit


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
        *_holder(equipment, press),
        *_outlines(one, equipment),
    )
    return found if length is None else (length, *found)


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
