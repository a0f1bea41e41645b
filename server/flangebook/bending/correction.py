"""What to set after a bend has been measured."""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.air_bend import AirBend
from flangebook.bending.air_bend_geometry import punch_depth_mm
from flangebook.bending.errors import InputError
from flangebook.bending.limits import need_bend, need_positive
from flangebook.bending.tooling import Die


@dataclass(frozen=True, slots=True)
class Correction:
    """The new setting after a measured angle [deg, mm]."""

    wanted_deg: float
    measured_deg: float
    set_angle_deg: float
    punch_depth_mm: float

    @property
    def error_deg(self) -> float:
        """Measured less wanted [deg]; positive is too open."""
        return self.measured_deg - self.wanted_deg


def correct_setting(
    wanted_deg: float,
    measured_deg: float,
    set_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    die: Die,
    set_depth_mm: float | None = None,
) -> Correction:
    """New set angle [deg] and punch depth [mm] after a bend came out at measured_deg."""
    need_bend(wanted_deg, "wanted_deg")
    need_bend(measured_deg, "measured_deg")
    need_bend(set_angle_deg, "set_angle_deg")
    slope = (180.0 - set_angle_deg) / (180.0 - wanted_deg)
    new_angle = set_angle_deg - (measured_deg - wanted_deg) * slope
    need_bend(new_angle, "measured_deg")
    tool = (
        inside_radius_mm,
        thickness_mm,
        die.v_opening_mm,
        die.angle_deg,
        die.shoulder_radius_mm,
    )
    old_depth, new_depth = punch_depth_mm(set_angle_deg, *tool), punch_depth_mm(new_angle, *tool)
    base = old_depth if set_depth_mm is None else set_depth_mm
    return Correction(wanted_deg, measured_deg, new_angle, base + new_depth - old_depth)


def correction_table(
    bend: AirBend,
    wanted_deg: float,
    thickness_mm: float,
    die: Die,
    reach_deg: float = 5.0,
    step_deg: float = 0.5,
) -> tuple[Correction, ...]:
    """What to set for each angle that may be measured, from wanted - reach to wanted + reach."""
    need_positive(reach_deg=reach_deg, step_deg=step_deg)
    rows: list[Correction] = []
    steps = round(reach_deg / step_deg)
    for i in range(-steps, steps + 1):
        measured = wanted_deg + i * step_deg
        try:
            rows.append(
                correct_setting(
                    wanted_deg,
                    measured,
                    bend.set_angle_deg.nominal,
                    bend.inside_radius_mm.nominal,
                    thickness_mm,
                    die,
                    bend.punch_depth_mm.nominal,
                )
            )
        except InputError:
            continue
    return tuple(rows)


def tilt_mm_per_m(
    left_deg: float, right_deg: float, bend_length_mm: float, depth_per_deg_mm: float
) -> float:
    """Ram tilt [mm/m] that would even out the ends; positive: the right end needs more depth."""
    need_positive(bend_length_mm=bend_length_mm)
    return (right_deg - left_deg) * depth_per_deg_mm / (bend_length_mm / 1000.0)


def depth_per_deg_mm(
    set_angle_deg: float, inside_radius_mm: float, thickness_mm: float, die: Die
) -> float:
    """Punch depth [mm] for one degree of loaded included angle, at the set angle."""
    tool = (
        inside_radius_mm,
        thickness_mm,
        die.v_opening_mm,
        die.angle_deg,
        die.shoulder_radius_mm,
    )
    half = 0.05
    return (
        punch_depth_mm(set_angle_deg - half, *tool) - punch_depth_mm(set_angle_deg + half, *tool)
    ) / (2 * half)
