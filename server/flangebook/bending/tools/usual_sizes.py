"""Sizes to count with where a shop has entered none: usual proportions, common practice, no source.

Whoever counts with one of these says so: what comes of them is unknown, never "ok".
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from flangebook.bending.errors import InputError
from flangebook.bending.tools.tooling import Die
from flangebook.bending.tools.v_block import Block, Face, Opening, block_outline

FAR_MM = 1.0e5
"""Nothing ends there: what is not known limits nothing, and is a finding."""
PRESS_SIZES: Mapping[str, float] = {
    "between_frames_mm": FAR_MM,
    "throat_mm": FAR_MM,
    "open_height_mm": FAR_MM,
    "stroke_mm": 100.0,
    "gauge_x_min_mm": 0.0,
    "gauge_x_max_mm": 5000.0,
    "gauge_r_min_mm": -20.0,
    "gauge_r_max_mm": 150.0,
    "finger_height_mm": 12.0,
    "finger_depth_mm": 40.0,
    "ram_width_mm": 80.0,
    "ram_height_mm": 200.0,
    "bed_width_mm": 100.0,
    "bed_height_mm": 200.0,
}
"""Sizes of a press that may be unknown, and what is counted with then [mm]."""

SHOULDER_OVER_V = 0.1
PLAIN_PUNCH_MM = (100.0, 20.0)
GOOSENECK_MM = (125.0, 26.0)
RELIEF_OVER_WIDTH = 0.85
STEP_MM = 5.0


def usual_punch(
    shape: str, angle_deg: float, tip_radius_mm: float, **given: float
) -> dict[str, float]:
    """Height, width of the body and, of a gooseneck, its throat [mm], for what is engraved.

    given: sizes that are known [mm]; they stay. As high as the nose and the throat need.
    """
    height, width = GOOSENECK_MM if shape == "gooseneck" else PLAIN_PUNCH_MM
    width = max(width, _up(2.5 * tip_radius_mm))
    width = given.get("body_width_mm", width)
    sizes = {"height_mm": height, "body_width_mm": width, **given}
    if shape == "gooseneck":
        sizes.setdefault("neck_relief_mm", RELIEF_OVER_WIDTH * width)
    half_nose = math.radians(angle_deg) / 2.0
    nose = tip_radius_mm + width / 2.0 / math.tan(half_nose)
    least = nose + 30.0
    if shape == "gooseneck":  # its neck and throat run at 45 degrees where there is little room
        least = (nose + 2.0 * sizes["neck_relief_mm"] + 1.5 * width) / 0.85 + 1.0
    return {**sizes, "height_mm": given.get("height_mm", max(height, _up(least)))}


def usual_die(v_opening_mm: float, angle_deg: float, **given: float) -> dict[str, float]:
    """Shoulder radius, height and width of a die with one V [mm]; what is given [mm] stays."""
    depth = v_depth_mm(v_opening_mm, angle_deg)
    return {
        "shoulder_radius_mm": SHOULDER_OVER_V * v_opening_mm,
        "height_mm": max(60.0, _up(depth + 20.0)),
        "width_mm": _up(1.3 * v_opening_mm + 20.0),
        **given,
    }


def v_depth_mm(v_opening_mm: float, angle_deg: float) -> float:
    """How deep a V [mm] of this angle runs down to a point [mm].

    Source: elementary geometry.

    >>> round(v_depth_mm(16.0, 90.0), 3)
    8.0
    """
    return v_opening_mm / 2.0 / math.tan(math.radians(angle_deg) / 2.0)


@dataclass(frozen=True, slots=True)
class UsualBlock:
    """A square block. places: face and middle of each V in its order [mm]."""

    side_mm: float
    places: tuple[tuple[Face, float], ...]


def usual_block(vs: Sequence[tuple[float, float]]) -> UsualBlock:
    """A square block that takes these V's, each an opening [mm] and an angle [deg].

    The largest on top, the next smaller opposite to it, the others on front and back; more than
    four share the faces.
    """
    faces: tuple[Face, ...] = ("top", "bottom", "back", "front")
    order = sorted(range(len(vs)), key=lambda i: -vs[i][0])
    on: dict[Face, list[int]] = {face: order[k :: len(faces)] for k, face in enumerate(faces)}
    takes = {i: 1.3 * v + 6.0 for i, (v, _) in enumerate(vs)}
    places: dict[int, tuple[Face, float]] = {}
    for face, here in on.items():
        at = -sum(takes[i] for i in here) / 2.0
        for i in here:
            places[i] = (face, at + takes[i] / 2.0)
            at += takes[i]
    widest = max(sum(takes[i] for i in here) for here in on.values())
    in_order = tuple(places[i] for i in range(len(vs)))
    return UsualBlock(_least_side_mm(_up(widest), vs, in_order), in_order)


def _least_side_mm(
    from_mm: float, vs: Sequence[tuple[float, float]], places: Sequence[tuple[Face, float]]
) -> float:
    """The least side [mm] with which no V runs into another, and steel left between them."""
    openings = [
        Opening("", "", v, angle, SHOULDER_OVER_V * v, face, centre)
        for (v, angle), (face, centre) in zip(vs, places, strict=True)
    ]
    side = from_mm
    while not _takes(openings, side):
        side = _up(side + max(STEP_MM, side / 20.0))
    return side + 2.0 * STEP_MM


def _takes(openings: Sequence[Opening], side_mm: float) -> bool:
    like = Die("", "", 1.0, 90.0, 0.0, side_mm, side_mm, None, ())
    try:
        block_outline(Block(like, tuple(openings)), 1)
    except InputError:
        return False
    return True


def _up(mm: float) -> float:
    return STEP_MM * math.ceil(mm / STEP_MM)
