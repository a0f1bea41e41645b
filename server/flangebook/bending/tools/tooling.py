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

from flangebook.bending.geometry.ring import Ring

Condition = Literal["good", "worn", "damaged", "unknown"]
PunchShape = Literal["straight", "gooseneck", "points"]
DieShape = Literal["single_v", "points"]
HolderShape = Literal["block", "clamps", "points"]


@dataclass(frozen=True, slots=True)
class Place:
    """Where a tool lies: tray and slot as written on the rack."""

    tray: str = ""
    slot: str = ""


@dataclass(frozen=True, slots=True)
class Punch:
    """A punch. height_mm: tip to seat. angle_deg: nose angle. body_width_mm: widest thickness
    of the body. neck_relief_mm: how far a gooseneck's throat lies behind the tip (0 for
    straight). neck_width_mm: thickness of a gooseneck's neck, None as the body. throat_top_mm:
    how high above the tip its throat begins to close again, None as high as the sizes allow.
    rating_kn_per_m None is unknown. segments_mm: lengths owned, one entry a piece; none is not on
    record. turned: put in back to front, the outline mirrored in x. assumed: names of the sizes
    that nobody has measured (``usual_sizes``); they prove nothing."""

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
    neck_width_mm: float | None = None
    throat_top_mm: float | None = None
    assumed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Die:
    """A V die. v_opening_mm: between the sharp corners of top face and flanks.
    angle_deg: of the V. shoulder_radius_mm: rounding of those corners. turned: put in back to
    front, the outline mirrored in x. block: code of the block that this V is cut in, whose other
    V's are dies too and share its pieces; empty for a die of its own. width_mm of a V in a block
    is twice its reach from the V's middle to the farther side. segments_mm, assumed: see Punch."""

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
    turned: bool = False
    block: str = ""
    assumed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Holder:
    """What holds the punch in the ram. overhang_front_mm / overhang_back_mm: from the tip's
    line to the holder's faces, clamps included. Shape "clamps": clamps that wide stand
    clamp_height_mm up from the seat, the body above reaches body_front_mm and body_back_mm."""

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
    shape: HolderShape = "block"
    clamp_height_mm: float | None = None
    body_front_mm: float | None = None
    body_back_mm: float | None = None


SetBy = Literal["angle", "depth", "stop"]
"""How a press is set for a bend."""


@dataclass(frozen=True, slots=True)
class Press:
    """The press brake.

    force_kn: full force. bed_length_mm, between_frames_mm, open_height_mm, stroke_mm,
    throat_mm: as on its plate. force_per_m_limit_kn_per_m: what bed and ram bear over a short
    length, None is unknown. off_centre_mm: how far from the middle full force may act, None is
    unknown. gauge_x_*, gauge_r_*: travel of the back gauge, R from the die's top face.
    finger_height_mm, finger_depth_mm: size of the gauge finger. bending_speed_mm_s: ram speed
    while bending, None is unknown. holder: code of the holder in the ram. ram and bed: outline
    by points, or width and height of a plain beam. die_holder_*: the riser or die holder between
    bed and die, height 0 for none; its outline is part of the bed's. floor_below_die_mm: from
    the face that the die stands on down to the floor, None is not looked at.
    gauge_repeatability_mm: the back gauge comes back to a place within so much either way, in 19
    of 20 stops (two standard deviations), None is unknown and counted with as is usual.
    set_by: what is set on it for a bend: an angle, a punch depth, or a stop that the ram runs
    against; None is not known.
    angle_accuracy_deg: how near a press that measures the angle in the sheet comes to the angle
    that is set, either way in nine of ten bends; None is unknown, or it does not measure.
    deflection_mm: how far bed and ram together give way in the middle, against the ends, at full
    force over the whole bed, None is unknown.
    unknown: names of the sizes that nobody has entered; what stands there is counted with
    (``usual_sizes``) and proves nothing.
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
    die_holder_height_mm: float = 0.0
    die_holder_width_mm: float | None = None
    die_holder_points_mm: Ring = ()
    die_holder_rating_kn_per_m: float | None = None
    gauge_repeatability_mm: float | None = None
    set_by: SetBy | None = None
    deflection_mm: float | None = None
    angle_accuracy_deg: float | None = None
    unknown: tuple[str, ...] = ()

    def knows(self, *sizes: str) -> bool:
        """Whether all of these sizes were entered."""
        return not set(sizes) & set(self.unknown)

    @property
    def angle_doubt_deg(self) -> float | None:
        """How near the loaded angle of a first piece comes to the set one; None as is usual. A
        depth or a stop that is set measures no angle."""
        return self.angle_accuracy_deg if self.set_by == "angle" else None


@dataclass(frozen=True, slots=True)
class Crib:
    """All the shop's tooling."""

    punches: tuple[Punch, ...] = ()
    dies: tuple[Die, ...] = ()
    holders: tuple[Holder, ...] = ()
