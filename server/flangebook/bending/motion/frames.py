"""Length of the bend against bed and frames, and whether a long sheet hits the frames.

A sheet longer than the space between the frames goes in as far as the throat is deep. The throat
is measured from the tools' centre line back to the frame; it is taken as open at every height
that the sheet comes to.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from flangebook.bending.checks import Check
from flangebook.bending.motion.lying import Pressing
from flangebook.bending.motion.step_motion import pressed_outline
from flangebook.bending.tools.tooling import Press

FRAMES_CODE = "longer-than-frames"
NEAR_FRAME_MM = 10.0  # closer than this to the frame is a caution; common practice, no source
LOOK_EVERY_DEG = 1.0


def reach_behind_mm(pressing: Pressing) -> float:
    """How far the sheet reaches behind the tools' centre line at any moment of the stroke [mm].

    Looked at every degree of half the bend angle: between two looks a point 500 mm from the bend
    moves less than 0.02 mm past the further of them.

    Source: plane geometry.

    >>> from flangebook.bending.samples import V16, Z_STRIP
    >>> from flangebook.bending.motion.lying import Stroke
    >>> pressing = Pressing(Z_STRIP, 1, Stroke(88.0, 2.0, 4.1, 6.4), V16)
    >>> round(reach_behind_mm(pressing), 1)
    34.3
    """
    return max(x for theta in _moments(pressing) for x, _ in pressed_outline(pressing, theta))


def _moments(pressing: Pressing) -> Iterator[float]:
    whole = math.radians(180.0 - pressing.stroke.included_angle_deg) / 2.0
    count = max(2, math.ceil(math.degrees(whole) / LOOK_EVERY_DEG))
    return (whole * i / count for i in range(count + 1))


def bend_length_fits(
    press: Press, bend_length_mm: float, behind_mm: float | None = None
) -> Check | None:
    """A finding when the bend is longer than the bed or than the space between the frames.

    Args:
        press: bed, frames and throat [mm].
        bend_length_mm: length of the bend [mm].
        behind_mm: how far the sheet reaches behind the tools' centre line at any moment of the
            step [mm], None where it is not known.
    """
    numbers = {"bend_length_mm": bend_length_mm}
    if bend_length_mm > press.bed_length_mm:
        return Check(
            "stop",
            "longer-than-bed",
            "The bend is {bend_length_mm} long, the bed {bed_mm}.",
            "Use a longer press.",
            numbers | {"bed_mm": press.bed_length_mm},
        )
    if not _frames_known(press, bend_length_mm):
        return _frames_unknown(press, behind_mm)
    if bend_length_mm <= press.between_frames_mm:
        return None
    numbers |= {"between_frames_mm": press.between_frames_mm, "throat_mm": press.throat_mm}
    words = "The bend is {bend_length_mm} long, the frames stand {between_frames_mm} apart"
    if behind_mm is None:
        return Check(
            "caution",
            FRAMES_CODE,
            f"{words}: only what lies within the throat of {{throat_mm}} goes in.",
            "Check that the part clears the frames on both sides.",
            numbers,
        )
    return _in_throat(press, words, numbers | {"behind_mm": behind_mm})


def _frames_known(press: Press, bend_length_mm: float) -> bool:
    """Whether what is on record says how this bend lies between the frames, or in the throat."""
    if not press.knows("between_frames_mm"):
        return False
    return bend_length_mm <= press.between_frames_mm or press.knows("throat_mm")


def _frames_unknown(press: Press, behind_mm: float | None) -> Check | None:
    """What is missing to know whether the sheet clears the frames; None where it does anyway."""
    throat = press.knows("throat_mm")
    if throat and behind_mm is not None and behind_mm <= press.throat_mm - NEAR_FRAME_MM:
        return None
    missing = {
        "the room between the frames": press.knows("between_frames_mm"),
        "the throat, from the tools' centre line back to the frame": throat,
    }
    return Check(
        "unknown",
        FRAMES_CODE,
        "How the frames of the press stand is not on record: whether the sheet clears them is not "
        "known.",
        "To know whether the sheet clears the frames, measure "
        f"{' and '.join(name for name, known in missing.items() if not known)}, and enter it with "
        "the press.",
    )


def _in_throat(press: Press, words: str, numbers: dict[str, float]) -> Check:
    """How a sheet longer than the space between the frames lies in the throat."""
    behind_mm = numbers["behind_mm"]
    if behind_mm > press.throat_mm:
        return Check(
            "stop",
            FRAMES_CODE,
            f"{words}, and the sheet reaches {{behind_mm}} behind the tools: it hits the frames, "
            "the throat is {throat_mm} deep.",
            "Gauge the shorter side if it fits, make the part in shorter lengths, or use a press "
            "with more room between its frames.",
            numbers,
        )
    if behind_mm > press.throat_mm - NEAR_FRAME_MM:
        return Check(
            "caution",
            FRAMES_CODE,
            f"{words}. The sheet reaches {{behind_mm}} behind the tools, close to the frames: the "
            "throat is {throat_mm} deep.",
            "Put it in slowly and watch both frames.",
            numbers,
        )
    return Check(
        "ok",
        FRAMES_CODE,
        f"{words}. The sheet reaches {{behind_mm}} behind the tools at most and clears the frames: "
        "the throat is {throat_mm} deep.",
        "Put it in and take it out straight from the front.",
        numbers,
    )
