"""Inside radius of an air bend: the sheet's own share of the V, or the punch tip.

    low      the larger of the punch tip and the metal's lowest share of the V opening;
             30 % under the usual share where the tip is sharper than 0.63 t
    nominal  the larger of the punch tip and the metal's usual share of the V opening
    high     the larger of the punch tip and the metal's highest share of the V opening

Published charts for mild steel near 450 MPa print about 0.16 V whatever the thickness, a US
chart about 0.125 V at V = 8 t. The shares of other metals are common practice, carried by the
metal's own record with its source.
"""

from __future__ import annotations

from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Metal
from flangebook.bending.requirements import need

SHARP_TIP_OVER_T = 0.63  # common practice, no source
# A sharp tip left 0.142 V on low-carbon steel and 0.105 V on 5052-H32 (t 2, V 16, tip 1 mm) in
# a finite-element comparison, up to 30 % under the usual share. One published shop measurement
# lies lower still, 63 % under: such bends crease, and bend_checks.crease says so.
SHARP_TIP_SHARE = 0.7


def inside_radius(
    metal: Metal,
    v_opening_mm: float,
    punch_radius_mm: float,
    thickness_mm: float | None = None,
) -> Estimate:
    """Inside radius [mm] of an air bend: max(punch tip, share of V), with its band.

    Args:
        metal: gives the radius as a share of V [-].
        v_opening_mm: die opening V [mm].
        punch_radius_mm: punch tip radius [mm]; 0 is a sharp punch.
        thickness_mm: sheet thickness [mm]; lets a sharp tip widen the band downwards.

    Raises:
        InputError: a size is not above zero (the tip: below zero).

    Source: common practice, no source; the metal's own record says where its share of V comes from.

    >>> from flangebook.bending.samples import STEEL
    >>> radius = inside_radius(STEEL, 16.0, 1.0)
    >>> radius.low, radius.nominal, round(radius.high, 3)
    (2.0, 2.56, 2.8)
    """
    need(v_opening_mm=v_opening_mm, punch_radius_mm=punch_radius_mm)
    share = metal.radius_over_v
    lowest = share.low
    if thickness_mm is not None and punch_radius_mm < SHARP_TIP_OVER_T * thickness_mm:
        lowest = min(lowest, SHARP_TIP_SHARE * share.nominal)
    return Estimate(
        max(punch_radius_mm, lowest * v_opening_mm),
        max(punch_radius_mm, share.nominal * v_opening_mm),
        max(punch_radius_mm, share.high * v_opening_mm),
        "handbook",
        "the larger of the punch tip and the metal's share of the V opening",
    )
