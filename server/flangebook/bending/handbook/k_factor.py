"""K-factor: how deep the neutral line lies, as a share of the thickness.

What the sources make of it:

    source                K                                               range
    --------------------  ----------------------------------------------  -----------------
    DIN 6935              half of 0.65 + 0.5 lg(r/t), 0.5 above r/t 5     r/t above 0.05
    Machinery's Handbook  0.350, 0.407 or 0.452 by hardness               for 90 deg; scaled
    Groover               0.33 for r under 2 t, 0.50 from there up        none given
    US Navy               0.447                                           1 to 180 deg

:func:`k_factor_band` chooses: nominal is DIN 6935, or Groover's where DIN 6935 has no value
(r/t of about 0.05 and less); low and high are the lowest and highest of the sources.
"""

from __future__ import annotations

from math import log10, pi
from typing import Literal

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import GaugeFamily
from flangebook.bending.requirements import need

HandbookGroup = Literal["soft copper and brass", "soft steel and aluminium", "hard"]
HANDBOOK_T_FACTOR: dict[HandbookGroup, float] = {
    "soft copper and brass": 0.55,
    "soft steel and aluminium": 0.64,
    "hard": 0.71,
}
# Which groups may apply where the record only says a gauge family; from memory, not the book's.
HANDBOOK_GROUPS: dict[GaugeFamily | None, tuple[HandbookGroup, ...]] = {
    "steel": ("soft steel and aluminium", "hard"),
    "galvanised": ("soft steel and aluminium", "hard"),
    "stainless": ("hard",),
    "aluminium": ("soft steel and aluminium",),
    None: ("soft copper and brass", "soft steel and aluminium", "hard"),
}
NAVY_K = 0.0078 * 180.0 / pi


def k_factor_din6935(inside_radius_mm: float, thickness_mm: float) -> float:
    """K-factor [-] of DIN 6935: half of k = 0.65 + 0.5 lg(r/s), and k = 1 above r/s = 5.

    Args:
        inside_radius_mm: inside radius r [mm].
        thickness_mm: sheet thickness s [mm].

    Raises:
        InputError: a size is unusable.
        RangeError: r/s so small (about 0.05) that k would be negative.

    Source: DIN 6935, as quoted in German metal-trade tables books. (k = 1 above 5: from memory.)

    >>> k_factor_din6935(1, 1)
    0.325
    """
    need(inside_radius_mm=inside_radius_mm, thickness_mm=thickness_mm)
    ratio = inside_radius_mm / thickness_mm
    if ratio > 5.0:
        return 0.5
    k = 0.65 + 0.5 * log10(ratio) if ratio > 0.0 else -1.0
    if k < 0.0:
        raise RangeError(
            f"DIN 6935 gives no K-factor for a radius of {ratio:.3f} t.",
            "inside_radius_mm",
            "Use a radius above 0.05 t or another source of the K-factor.",
        )
    return k / 2.0


def k_factor_groover(inside_radius_mm: float, thickness_mm: float) -> float:
    """K-factor [-] of Groover: 0.33 for R under 2 t, 0.50 from there up.

    Source: Groover, Fundamentals of Modern Manufacturing, 4th ed., ch. 20.

    >>> k_factor_groover(4.75, 3.2)
    0.33
    """
    need(inside_radius_mm=inside_radius_mm, thickness_mm=thickness_mm)
    return 0.33 if inside_radius_mm < 2.0 * thickness_mm else 0.50


def k_factor_band(
    inside_radius_mm: float, thickness_mm: float, family: GaugeFamily | None = None
) -> Estimate:
    """K-factor [-] with the spread of the sources; the module's table says which.

    Args:
        inside_radius_mm: inside radius [mm].
        thickness_mm: sheet thickness [mm].
        family: the metal's gauge family, which narrows the handbook's groups.

    Raises:
        InputError: a size is unusable.

    Source: DIN 6935, Groover, Machinery's Handbook and the US Navy's manual, as in the functions
    for each.

    >>> k = k_factor_band(2.0, 2.0)
    >>> round(k.low, 3), round(k.nominal, 3), round(k.high, 3)
    (0.325, 0.325, 0.452)
    """
    groover = k_factor_groover(inside_radius_mm, thickness_mm)
    try:
        nominal = k_factor_din6935(inside_radius_mm, thickness_mm)
        basis = "DIN 6935; the band is the spread of the handbooks"
    except RangeError:
        nominal = groover
        basis = "Groover, because DIN 6935 has no K for a radius below 0.05 t"
    handbook = [HANDBOOK_T_FACTOR[group] * 2.0 / pi for group in HANDBOOK_GROUPS[family]]
    others = (groover, NAVY_K, *handbook)
    return Estimate(min(nominal, *others), nominal, max(nominal, *others), "handbook", basis)
