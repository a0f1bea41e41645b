"""Which V opening suits a thickness."""

from __future__ import annotations

from flangebook.bending.tools.tooling import Die

PREFERRED_OVER_T = 8.0  # common practice, no source
# Openings in the heads of a published metric force chart for mild steel.
NOMINAL_V_MM = (4, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200)
ASSUMED_SHOULDER_OVER_V = 0.1  # common practice, no source


def preferred_v_mm(thickness_mm: float) -> float:
    """The V opening [mm] to look for first: 8 t.

    Source: common practice, no source.

    >>> preferred_v_mm(2.0)
    16.0
    """
    return PREFERRED_OVER_T * thickness_mm


def nearest_nominal_v_mm(thickness_mm: float) -> float:
    """The opening [mm] of the published series that is nearest to 8 t.

    Source: the openings are those in the heads of published metric force charts; 8 t is common
    practice, no source.

    >>> nearest_nominal_v_mm(1.5)
    12.0
    """
    wanted = preferred_v_mm(thickness_mm)
    return float(min(NOMINAL_V_MM, key=lambda v: abs(v - wanted)))


def assumed_die(v_opening_mm: float, angle_deg: float = 86.0) -> Die:
    """A die that stands in where only an opening [mm] is known.

    Shoulder radius V/10 (common practice, no source), the given angle, nothing owned and no
    rating; its code is empty so that it cannot be taken for one of the shop's.
    """
    return Die(
        code="",
        name="assumed die",
        v_opening_mm=v_opening_mm,
        angle_deg=angle_deg,
        shoulder_radius_mm=ASSUMED_SHOULDER_OVER_V * v_opening_mm,
        height_mm=0.0,
        width_mm=0.0,
        rating_kn_per_m=None,
        segments_mm=(),
    )
