"""The shop's tooling and press as the calculations see them.

Outlines are closed rings of (x, y) in mm, counter-clockwise, not repeating the first
point; x to the back of the press (the gauge's side), y up. A punch's tip is at (0, 0) and
its body above; a die's top face is at y = 0, its V centred on x = 0; a holder's seat for
the punch is at (0, 0), its body above; ram and bed outlines likewise from the face that
carries the holder or the die.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Point = tuple[float, float]
Ring = tuple[Point, ...]
Condition = Literal["good", "worn", "damaged", "unknown"]
PunchShape = Literal["straight", "gooseneck", "points"]
DieShape = Literal["single_v", "points"]


@dataclass(frozen=True, slots=True)
class Place:
    """Where a tool lies: tray and slot as written on the rack."""

    tray: str = ""
    slot: str = ""


@dataclass(frozen=True, slots=True)
class Punch:
    """A punch. height_mm: tip to seat. angle_deg: nose angle. body_width_mm: widest thickness
    of the body. neck_relief_mm: how far a gooseneck's throat lies behind the tip (0 for
    straight). rating_kn_per_m None is unknown. segments_mm: lengths owned, one entry a piece.
    turned: put in back to front, the outline mirrored in x."""

    code: str
    name: str
    angle_deg: float
    tip_radius_mm: float
    height_mm: float
    body_width_mm: float
    rating_kn_per_m: float | None
    segments_mm: tuple[float, ...]
    shape: PunchShape = "straight"
    neck_relief_mm: float = 0.0
    points_mm: Ring = ()
    place: Place = Place()
    condition: Condition = "unknown"
    condition_note: str = ""
    turned: bool = False


@dataclass(frozen=True, slots=True)
class Die:
    """A V die. v_opening_mm: between the sharp corners of top face and flanks.
    angle_deg: of the V. shoulder_radius_mm: rounding of those corners."""

    code: str
    name: str
    v_opening_mm: float
    angle_deg: float
    shoulder_radius_mm: float
    height_mm: float
    width_mm: float
    rating_kn_per_m: float | None
    segments_mm: tuple[float, ...]
    shape: DieShape = "single_v"
    points_mm: Ring = ()
    place: Place = Place()
    condition: Condition = "unknown"
    condition_note: str = ""


@dataclass(frozen=True, slots=True)
class Holder:
    """What holds the punch in the ram. overhang_front_mm / overhang_back_mm: from the tip's
    line to the holder's faces, clamps included."""

    code: str
    name: str
    height_mm: float
    overhang_front_mm: float
    overhang_back_mm: float
    rating_kn_per_m: float | None
    points_mm: Ring = ()
    place: Place = Place()
    condition: Condition = "unknown"
    condition_note: str = ""


@dataclass(frozen=True, slots=True)
class Press:
    """The press brake.

    force_kn: full force. bed_length_mm, between_frames_mm, open_height_mm, stroke_mm,
    throat_mm: as on its plate. force_per_m_limit_kn_per_m: what bed and ram bear over a short
    length, None is unknown. off_centre_mm: how far from the middle full force may act, None is
    unknown. gauge_x_*, gauge_r_*: travel of the back gauge, R from the die's top face.
    finger_height_mm, finger_depth_mm: size of the gauge finger. bending_speed_mm_s: ram speed
    while bending, None is unknown. holder: code of the holder in the ram. ram and bed: outline
    by points, or width and height of a plain beam. floor_below_die_mm: from the bed's face that
    carries the die down to the floor, None is not looked at.
    """

    name: str
    force_kn: float
    bed_length_mm: float
    between_frames_mm: float
    open_height_mm: float
    stroke_mm: float
    throat_mm: float
    gauge_x_min_mm: float
    gauge_x_max_mm: float
    gauge_r_min_mm: float
    gauge_r_max_mm: float
    finger_height_mm: float
    finger_depth_mm: float
    force_per_m_limit_kn_per_m: float | None = None
    off_centre_mm: float | None = None
    bending_speed_mm_s: float | None = None
    ram_width_mm: float = 80.0
    ram_height_mm: float = 200.0
    bed_width_mm: float = 100.0
    bed_height_mm: float = 200.0
    ram_points_mm: Ring = ()
    bed_points_mm: Ring = ()
    holder: str | None = None
    note: str = ""
    floor_below_die_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Crib:
    """All the shop's tooling."""

    punches: tuple[Punch, ...] = ()
    dies: tuple[Die, ...] = ()
    holders: tuple[Holder, ...] = ()
