"""Inside radius of an air bend.

low      the larger of the punch tip and the metal's lowest share of the V opening
nominal  the larger of the punch tip and the metal's usual share of the V opening
high     the larger of the punch tip and the metal's highest share of the V opening
"""

from __future__ import annotations

from flangebook.bending.estimate import Estimate
from flangebook.bending.limits import need_not_negative, need_positive
from flangebook.bending.metals import Metal


def inside_radius(metal: Metal, v_opening_mm: float, punch_radius_mm: float) -> Estimate:
    """Inside radius [mm]: the sheet's own share of V, or the punch tip where that is larger."""
    need_positive(v_opening_mm=v_opening_mm)
    need_not_negative(punch_radius_mm=punch_radius_mm)
    share = metal.radius_over_v
    return Estimate(
        max(punch_radius_mm, share.low * v_opening_mm),
        max(punch_radius_mm, share.nominal * v_opening_mm),
        max(punch_radius_mm, share.high * v_opening_mm),
        "handbook",
        "the larger of the punch tip and the metal's share of the V opening",
    )
