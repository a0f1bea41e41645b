"""Which V opening suits a thickness."""

from __future__ import annotations

from math import inf

from flangebook.bending.requirements import need_positive
from flangebook.bending.tools.tooling import Die

PREFERRED_OVER_T = 8.0  # common practice, no source
# Openings in the heads of a published metric force chart for mild steel.
NOMINAL_V_MM = (4, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200)
# The rule printed with a published US chart: from and to which thickness [in], V over t.
_PUBLISHED_STEPS = (
    (0.0, 0.105, 6.0),
    (0.120, 0.313, 8.0),
    (0.375, 0.5, 10.0),
    (0.625, inf, 12.0),
)
ASSUMED_SHOULDER_OVER_V = 0.1  # common practice, no source


def preferred_v_mm(thickness_mm: float) -> float:
    """The V opening [mm] to look for first: 8 t.

    Raises:
        InputError: the thickness is not above zero.

    Source: common practice, no source.

    >>> preferred_v_mm(2.0)
    16.0
    """
    need_positive(thickness_mm=thickness_mm)
    return PREFERRED_OVER_T * thickness_mm


def published_v_range_mm(thickness_mm: float) -> tuple[float, float]:
    """The opening [mm] a published chart rule gives, as (least, most).

    6 t up to 0.105 in, 8 t from 0.120 to 0.313 in, 10 t from 0.375 to 0.5 in, 12 t from 0.625
    in up. Between two steps the rule says nothing, so least and most are those of the steps on
    either side; on a step they are equal.

    Raises:
        InputError: the thickness is not above zero.

    Source: die opening rule printed on a US averaged air-bend force chart.

    >>> published_v_range_mm(0.25 * 25.4)
    (50.8, 50.8)
    """
    need_positive(thickness_mm=thickness_mm)
    inches = round(thickness_mm / 25.4, 6)  # so that 3/8 in, given in mm, is on its step
    # The step the sheet has reached at the least, and the one it has not passed at the most.
    reached = [over_t for start, _, over_t in _PUBLISHED_STEPS if inches >= start]
    allowed = [over_t for _, end, over_t in _PUBLISHED_STEPS if inches <= end]
    return reached[-1] * thickness_mm, allowed[0] * thickness_mm


def nearest_nominal_v_mm(thickness_mm: float) -> float:
    """The opening [mm] of the published series that is nearest to 8 t.

    Raises:
        InputError: the thickness is not above zero.

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

    Raises:
        InputError: the opening is not above zero.
    """
    need_positive(v_opening_mm=v_opening_mm)
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
