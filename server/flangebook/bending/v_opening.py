"""Which V opening suits a thickness."""

from __future__ import annotations

from flangebook.bending.limits import need_positive
from flangebook.bending.tooling import Die

PREFERRED_OVER_T = 8.0  # common practice, no source
NOMINAL_V_MM = (4, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200)


def preferred_v_mm(thickness_mm: float) -> float:
    """The V opening [mm] to look for first: 8 t (common practice, no source)."""
    need_positive(thickness_mm=thickness_mm)
    return PREFERRED_OVER_T * thickness_mm


def nearest_nominal_v_mm(thickness_mm: float) -> float:
    """The nearest opening [mm] of the published charts' series to the preferred one."""
    wanted = preferred_v_mm(thickness_mm)
    return float(min(NOMINAL_V_MM, key=lambda v: abs(v - wanted)))


def assumed_die(v_opening_mm: float, angle_deg: float = 86.0) -> Die:
    """A die that stands in where only an opening is known: shoulder radius V/10, no rating."""
    need_positive(v_opening_mm=v_opening_mm)
    return Die("", "assumed", v_opening_mm, angle_deg, v_opening_mm / 10.0, 0.0, 0.0, None, ())
