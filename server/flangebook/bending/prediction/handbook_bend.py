"""One air bend by handbook relations: the second witness, and the answer where the model ends.

figure          low / nominal / high
--------------  ---------------------------------------------------------------------
force           as ``force.force_band``
inside radius   as ``inside_radius.inside_radius``
springback      as ``springback.springback``
punch depth     nominal geometry at nominal set angle and radius; the ends add 2 degrees
                either way to the set angle's band and take the radius that is against it
K-factor        as ``k_factor.k_factor_band`` at the nominal radius
"""

from __future__ import annotations

from flangebook.bending.estimate import Estimate
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm
from flangebook.bending.handbook.force import force_band
from flangebook.bending.handbook.inside_radius import inside_radius
from flangebook.bending.handbook.k_factor import k_factor_band
from flangebook.bending.handbook.springback import springback
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.predicted_bend import (
    FIRST_BEND_DOUBT_DEG,
    AirBend,
    flat,
    set_angle,
    shortest_flange_mm,
)


def handbook_bend(case: BendCase) -> AirBend:
    """Predict one air bend in one die from handbook relations [N, mm, deg].

    Args:
        case: sheet, bend and tools.

    Raises:
        RangeError: the sheet cannot be air bent to that angle in this die with this punch;
            the words say why and what would do.
        InputError: the shoulders do not fit the opening.

    Source: the relations of ``handbook``, each with its own.

    >>> from flangebook.bending.samples import CASE
    >>> bend = handbook_bend(CASE)
    >>> round(bend.force_n.nominal), bend.inside_radius_mm.nominal, bend.springback_deg.nominal
    (127500, 2.56, 1.2)
    """
    metal, t, wanted, v = (
        case.metal, case.thickness_mm, case.included_angle_deg, case.die.v_opening_mm,
    )  # fmt: skip
    radius = inside_radius(metal, v, case.punch_radius_mm, t)
    spring = springback(metal, t, v, radius.nominal, wanted)
    loaded = set_angle(wanted, spring)
    k_factor = k_factor_band(radius.nominal, t, metal.gauge_family)
    allowance, deducted = flat(case, radius, k_factor)
    return AirBend(
        v_opening_mm=v,
        force_n=force_band(metal, t, case.bend_length_mm, v, wanted),
        inside_radius_mm=radius,
        springback_deg=spring,
        set_angle_deg=loaded,
        punch_depth_mm=_depth(case, loaded, radius),
        bend_allowance_mm=allowance,
        bend_deduction_mm=deducted,
        k_factor=k_factor,
        min_flange_mm=shortest_flange_mm(case, loaded.low, radius.nominal, allowance.nominal),
    )


def _depth(case: BendCase, loaded: Estimate, radius: Estimate) -> Estimate:
    tool = (case.thickness_mm, *case.v)
    flattest = loaded.high + FIRST_BEND_DOUBT_DEG
    # A bend so flat that the doubt reaches 180 degrees may need no more than the first touch.
    least = 0.0 if flattest >= 180.0 else punch_depth_mm(flattest, radius.high, *tool)
    return Estimate(
        least,
        punch_depth_mm(loaded.nominal, radius.nominal, *tool),
        punch_depth_mm(loaded.low - FIRST_BEND_DOUBT_DEG, radius.low, *tool),
        "handbook",
        "contact geometry of sheet, punch tip and die shoulders, with 2 degrees of doubt",
    )
