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
from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.handbook.force import force_band
from flangebook.bending.handbook.inside_radius import inside_radius
from flangebook.bending.handbook.k_factor import k_factor_band
from flangebook.bending.handbook.springback import springback
from flangebook.bending.part.metals import Metal
from flangebook.bending.prediction.predicted_bend import (
    FIRST_BEND_DOUBT_DEG,
    AirBend,
    flat,
    set_angle,
    shortest_flange_mm,
)
from flangebook.bending.requirements import need_bend, need_positive
from flangebook.bending.tools.tooling import Die


def handbook_bend(
    metal: Metal,
    thickness_mm: float,
    bend_length_mm: float,
    included_angle_deg: float,
    die: Die,
    punch_radius_mm: float,
    dimension: Dimension = "din6935",
) -> AirBend:
    """Predict one air bend in one die from handbook relations [N, mm, deg].

    Args:
        metal: the sheet's metal.
        thickness_mm: sheet thickness [mm].
        bend_length_mm: length of the bend [mm].
        included_angle_deg: wanted angle between the flats after release [deg].
        die: the V die; its opening, angle and shoulder radius count here.
        punch_radius_mm: punch tip radius [mm].
        dimension: how the part's flats are measured.

    Raises:
        InputError: a size is unusable or the angle is no bend.
        RangeError: the sheet cannot be air bent to that angle in this die with this punch;
            the words say why and what would do.

    Source: the relations of ``handbook``, each with its own.

    >>> from flangebook.bending.samples import STEEL, V16
    >>> bend = handbook_bend(STEEL, 2.0, 1000.0, 90.0, V16, 1.0)
    >>> round(bend.force_n.nominal), bend.inside_radius_mm.nominal, bend.springback_deg.nominal
    (127500, 2.56, 1.2)
    """
    need_positive(thickness_mm=thickness_mm, bend_length_mm=bend_length_mm)
    need_bend(included_angle_deg)
    v = die.v_opening_mm
    radius = inside_radius(metal, v, punch_radius_mm, thickness_mm)
    spring = springback(metal, thickness_mm, v, radius.nominal, included_angle_deg)
    loaded = set_angle(included_angle_deg, spring)
    k_factor = k_factor_band(radius.nominal, thickness_mm, metal.gauge_family)
    allowance, deducted = flat(included_angle_deg, radius, thickness_mm, k_factor, dimension)
    return AirBend(
        v_opening_mm=v,
        force_n=force_band(metal, thickness_mm, bend_length_mm, v, included_angle_deg),
        inside_radius_mm=radius,
        springback_deg=spring,
        set_angle_deg=loaded,
        punch_depth_mm=_depth(loaded, radius, thickness_mm, die),
        bend_allowance_mm=allowance,
        bend_deduction_mm=deducted,
        k_factor=k_factor,
        min_flange_mm=shortest_flange_mm(
            included_angle_deg, loaded.low, radius.nominal, allowance.nominal,
            thickness_mm, die, dimension,
        ),
    )  # fmt: skip


def _depth(loaded: Estimate, radius: Estimate, thickness_mm: float, die: Die) -> Estimate:
    tool = (thickness_mm, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
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
