"""A result: the set-up of a bend, and what was measured before, at and after it."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from flangebook.bending.prediction.bend_case import BendCase


@dataclass(frozen=True, slots=True)
class SetUp:
    """What a bend was, or is to be, made of and in.

    case: sheet as ordered, bend and tools as they were then. punch_angle_deg: nose angle of the
    punch [deg, None unknown]. lot: of the sheet, as written on it; "" is not known. press, gauge:
    name the setting of the press's depth and of its back gauge that was in force: what was made
    after a zero was set anew, or on another press, shares no error with what was made before.
    """

    case: BendCase
    punch_angle_deg: float | None = None
    lot: str = ""
    press: str = ""
    gauge: str = ""


@dataclass(frozen=True, slots=True)
class Result:
    """What was set and what came. None is not measured.

    id: names the result. set_up: what it was made in. measured_deg: included angle after release.
    loaded_deg: included angle measured in the press, under load. set_angle_deg: included angle
    that the press was set to. punch_depth_mm: depth that the press showed, from first touch.
    thickness_mm: of the sheet, measured. radius_mm: inside radius after release.
    flat_length_mm: of the strip before the bend, across the bend line. flange_left_mm,
    flange_right_mm: after it, in the set-up's dimension. gauged_deduction_mm: the bend deduction
    that a flange amounts to whose length the back gauge gave, if the gauge's zero is right. wrong:
    the shop took it back; it is shown and no longer counts. confirmed: the shop says it was
    measured right, although no metal does that. label: what people call it, such as "strip 2".
    """

    id: str
    set_up: SetUp
    measured_deg: float
    loaded_deg: float | None = None
    set_angle_deg: float | None = None
    punch_depth_mm: float | None = None
    thickness_mm: float | None = None
    radius_mm: float | None = None
    flat_length_mm: float | None = None
    flange_left_mm: float | None = None
    flange_right_mm: float | None = None
    gauged_deduction_mm: float | None = None
    wrong: bool = False
    confirmed: bool = False
    label: str = field(default="", compare=False)

    @property
    def real_thickness_mm(self) -> float:
        """The measured thickness [mm], else the ordered one."""
        return self.set_up.case.thickness_mm if self.thickness_mm is None else self.thickness_mm

    @property
    def name(self) -> str:
        """What to call it in words."""
        return self.label or self.id

    def as_it_came(self) -> BendCase:
        """What was bent, with the thickness and to the angle that were measured."""
        return replace(
            self.set_up.case,
            thickness_mm=self.real_thickness_mm,
            included_angle_deg=self.measured_deg,
        )
