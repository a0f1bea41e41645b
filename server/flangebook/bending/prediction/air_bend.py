"""One air bend in one die: everything predicted about it, each figure with its band.

Everything that planning asks about a bend goes through :func:`air_bend`. The bend model
(``sheet_model``) answers; the handbook's relations stand beside it as a second witness and
answer alone, openly, where the model does not hold. Answers are kept per millimetre of bend
length by the exact numbers that went in.

    figure          low / nominal / high
    --------------  ---------------------------------------------------------------------
    force           the model's; high is the higher of the model's and the handbook's, for
                    the safety checks
    inside radius   the model's, inner face; the band reaches to the handbook's nominal
    springback      between the model's and what is usual for the metal, weighted by how sure
                    either is; from usual low to the higher of usual high and the model's nominal
    set angle       wanted angle less the high / nominal / low springback
    punch depth     the model's at that set angle; the ends are the wider of the model's band and
                    2 degrees beyond the set angle's band, by the model's slope
    K-factor        as ``k_factor.k_factor_band`` at the nominal radius
    allowance,      lowest / nominal / highest over the ends of the radius and of the K-factor
    deduction
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.handbook.force import force_band
from flangebook.bending.handbook.inside_radius import inside_radius
from flangebook.bending.handbook.k_factor import k_factor_band
from flangebook.bending.handbook.springback import between_witnesses, usual_springback
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.handbook_bend import handbook_bend
from flangebook.bending.prediction.modelled_bend import ModelledBend, modelled_bend
from flangebook.bending.prediction.predicted_bend import (
    FIRST_BEND_DOUBT_DEG,
    AirBend,
    flat,
    set_angle,
    shortest_flange_mm,
)

KEPT = 2048
FORCE_BASIS = (
    "bend model; the high end is the higher of the model's and the handbook's (Groover; Lange; "
    "US 575 t²/V chart)"
)
RADIUS_BASIS = "bend model, inner face; the band reaches to the handbook's share of V"
SPRINGBACK_BASIS = "between the bend model and common practice for the metal"
DEPTH_BASIS = "bend model, with 2 degrees of doubt before the first bend is measured"


def air_bend(case: BendCase) -> AirBend:
    """Predict one air bend in one die [N, mm, deg].

    Args:
        case: sheet, bend and tools.

    Raises:
        RangeError: the sheet cannot be air bent to that angle in this die with this punch;
            the words say why and what would do.
        InputError: punch or shoulders do not fit the opening.

    Source: the bend model (``sheet_model``) and the relations of ``handbook``, each with its own.

    >>> from flangebook.bending.samples import CASE
    >>> bend = air_bend(CASE)
    >>> round(bend.force_n.nominal / 1000.0), round(bend.springback_deg.nominal, 1)
    (111, 1.4)
    """
    per_mm = _per_mm(case.per_mm)
    if isinstance(per_mm, InputError):
        raise per_mm.again()
    return _of_length(per_mm, case.bend_length_mm)


@lru_cache(maxsize=KEPT)
def _per_mm(case: BendCase) -> AirBend | InputError:
    """The bend a millimetre long, or the error to raise; kept by the exact numbers."""
    try:
        found = modelled_bend(case)
        if isinstance(found, str):
            return _without_model(handbook_bend(case), found)
        return _modelled(found, _handbook(case))
    except InputError as error:
        return error


def _handbook(case: BendCase) -> AirBend | None:
    """The second witness, None where it has nothing to say."""
    try:
        return handbook_bend(case)
    except RangeError:
        return None


def _of_length(per_mm: AirBend, bend_length_mm: float) -> AirBend:
    """The bend of that length: only its force depends on it."""
    handbook = per_mm.handbook
    return replace(
        per_mm,
        force_n=per_mm.force_n.mapped(lambda f: f * bend_length_mm),
        handbook=None if handbook is None else _of_length(handbook, bend_length_mm),
    )


def _without_model(handbook: AirBend, why: str) -> AirBend:
    """The handbook's answer, each basis saying why it is not the model's."""

    def said(one: Estimate) -> Estimate:
        return replace(one, basis=f"{one.basis}; not the bend model: {why}")

    return replace(
        handbook,
        force_n=said(handbook.force_n),
        inside_radius_mm=said(handbook.inside_radius_mm),
        springback_deg=said(handbook.springback_deg),
        set_angle_deg=said(handbook.set_angle_deg),
        punch_depth_mm=said(handbook.punch_depth_mm),
        why_no_model=why,
    )


def _modelled(found: ModelledBend, handbook: AirBend | None) -> AirBend:
    case = found.case
    metal, t, wanted, v = (
        case.metal, case.thickness_mm, case.included_angle_deg, case.die.v_opening_mm,
    )  # fmt: skip
    radius = _radius(found, inside_radius(metal, v, case.punch_radius_mm, t).nominal)
    practice = _practice(found, handbook, usual_springback(metal, t, v, wanted))
    spring = replace(between_witnesses(found.springback_deg, practice), basis=SPRINGBACK_BASIS)
    loaded = set_angle(wanted, spring)
    k_factor = k_factor_band(radius.nominal, t, metal.gauge_family)
    allowance, deducted = flat(case, radius, k_factor)
    return AirBend(
        v_opening_mm=v,
        force_n=_force(found, force_band(metal, t, 1.0, v, wanted).high),
        inside_radius_mm=radius,
        springback_deg=spring,
        set_angle_deg=loaded,
        punch_depth_mm=_depth(found, spring, loaded.nominal),
        bend_allowance_mm=allowance,
        bend_deduction_mm=deducted,
        k_factor=k_factor,
        min_flange_mm=shortest_flange_mm(case, loaded.low, radius.nominal, allowance.nominal),
        model=found,
        handbook=handbook,
    )


def _practice(found: ModelledBend, handbook: AirBend | None, usual: Estimate) -> Estimate:
    """What is usual for the metal [deg], at another angle than 90 degrees turned as the model does.

    The handbook turns it in proportion to the bend angle; finite elements show that a bend half as
    sharp springs back by far more than half (tests/reference/test_finite_elements.py).
    """
    wanted = found.case.included_angle_deg
    square, here = found.springback_at(90.0), found.springback_at(wanted)
    share = 1.0
    if square is not None and here is not None and square > 0.0:
        share = here / square * 90.0 / (180.0 - wanted)
    # What a tip rounder than the sheet's own radius adds, practice does not know of.
    rounder = max(0.0, handbook.springback_deg.nominal - usual.nominal) if handbook else 0.0
    return usual.mapped(lambda deg: share * (deg + rounder))


def _force(found: ModelledBend, handbook_high: float) -> Estimate:
    own = found.force_n_per_mm
    return Estimate(own.low, own.nominal, max(own.high, handbook_high), "model", FORCE_BASIS)


def _radius(found: ModelledBend, handbook_mm: float) -> Estimate:
    own = found.radius_mm
    return Estimate(
        min(own.low, handbook_mm), own.nominal, max(own.high, handbook_mm), "model", RADIUS_BASIS
    )


def _depth(found: ModelledBend, spring: Estimate, set_angle_deg: float) -> Estimate:
    own, slope = found.depth_mm, found.nominal.depth_per_degree_mm
    nominal = found.depth_at_set(set_angle_deg)
    moved = nominal - own.nominal
    flatter = FIRST_BEND_DOUBT_DEG + spring.nominal - spring.low
    sharper = FIRST_BEND_DOUBT_DEG + spring.high - spring.nominal
    return Estimate(
        max(0.0, min(own.low + moved, nominal - slope * flatter)),
        max(0.0, nominal),
        max(own.high + moved, nominal + slope * sharper, 0.0),
        "model",
        DEPTH_BASIS,
    )


__all__ = ["FIRST_BEND_DOUBT_DEG", "AirBend", "BendCase", "air_bend"]
