"""One air bend to predict: the sheet, the bend asked of it and the tools, checked once, here."""

from __future__ import annotations

from dataclasses import dataclass, replace

from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.part.metals import Metal
from flangebook.bending.requirements import need
from flangebook.bending.tools.tooling import Die


@dataclass(frozen=True, slots=True)
class BendCase:
    """All that a predicted bend depends on.

    metal, thickness_mm [mm]: the sheet. bend_length_mm: length of the bend [mm].
    included_angle_deg: wanted angle between the flats after release [deg]. die: the V die; its
    opening, angle and shoulder radius count. punch_radius_mm: punch tip radius [mm]. dimension:
    how the part's flats are measured.

    Raises:
        InputError: a size is unusable or the angle is no bend.
    """

    metal: Metal
    thickness_mm: float
    bend_length_mm: float
    included_angle_deg: float
    die: Die
    punch_radius_mm: float
    dimension: Dimension = "din6935"

    def __post_init__(self) -> None:
        need(
            thickness_mm=self.thickness_mm,
            bend_length_mm=self.bend_length_mm,
            v_opening_mm=self.die.v_opening_mm,
            die_angle_deg=self.die.angle_deg,
            included_angle_deg=self.included_angle_deg,
            shoulder_radius_mm=self.die.shoulder_radius_mm,
            punch_radius_mm=self.punch_radius_mm,
        )

    @property
    def per_mm(self) -> BendCase:
        """The same a millimetre long, in a die of which only the V is left: bends that are alike
        in all that counts are equal."""
        die = self.die
        v = Die("", "", die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm, 1.0, 1.0, None, ())
        return replace(self, bend_length_mm=1.0, die=v)

    @property
    def v(self) -> tuple[float, float, float]:
        """V opening [mm], die angle [deg] and shoulder radius [mm]."""
        return self.die.v_opening_mm, self.die.angle_deg, self.die.shoulder_radius_mm
