"""Whether tools and part fit the press: length, open height, stroke, throat."""

from __future__ import annotations

from collections.abc import Iterable

from flangebook.bending.checks import Check
from flangebook.bending.tooling import Press
from flangebook.planning.fit import Equipment, Fit


def press_checks(one: Fit, equipment: Equipment) -> tuple[Check, ...]:
    """What speaks against making this bend on this press, loads apart."""
    press = equipment.press
    if press is None:
        return ()
    return (*_length(one.wanted.bend_length_mm, press), *_height(one, equipment, press),
            *_holder(equipment, press))  # fmt: skip


def _length(bend_length_mm: float, press: Press) -> Iterable[Check]:
    numbers = {"bend_length_mm": bend_length_mm, "bed_length_mm": press.bed_length_mm}
    if bend_length_mm > press.bed_length_mm:
        yield Check(
            "stop",
            "longer-than-bed",
            "The bend of {bend_length_mm} is longer than the bed of {bed_length_mm}.",
            "Use a longer press.",
            numbers,
        )
    elif bend_length_mm > press.between_frames_mm:
        yield Check(
            "caution",
            "wider-than-frames",
            "The bend of {bend_length_mm} does not go between the side frames, which stand "
            "{between_frames_mm} apart: what reaches further back than {throat_mm} hits them.",
            "Keep what goes to the back shorter than the throat.",
            {
                "bend_length_mm": bend_length_mm,
                "between_frames_mm": press.between_frames_mm,
                "throat_mm": press.throat_mm,
            },
        )


def _height(one: Fit, equipment: Equipment, press: Press) -> Iterable[Check]:
    """The tools' heights against the open height and the stroke."""
    if not (one.punch.code and one.die.code and one.bend):
        return
    holder = equipment.holder.height_mm if equipment.holder else 0.0
    stack = one.punch.height_mm + one.die.height_mm + holder
    numbers = {"stack_mm": stack, "open_height_mm": press.open_height_mm}
    if stack + one.wanted.thickness_mm >= press.open_height_mm:
        yield Check(
            "stop",
            "tools-too-tall",
            "Punch, holder and die stand {stack_mm} tall, the press opens {open_height_mm}.",
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


def _holder(equipment: Equipment, press: Press) -> Iterable[Check]:
    if press.holder and equipment.holder is None:
        yield Check(
            "unknown",
            "holder-unknown",
            f"The holder {press.holder} is not in the crib: its load and overhang are not checked.",
            "Enter the holder, or name the one that sits in the ram.",
        )
