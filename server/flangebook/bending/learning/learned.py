"""A predicted bend with what the shop's own test bends taught put in.

    figure          after the trials
    --------------  -----------------------------------------------------------------------
    springback      expected, times what the trials make of it
    set angle       wanted angle less that springback
    inside radius   expected, times what the trials make of it
    deduction       what was measured of it; the allowance is the setbacks less it
    K-factor        what that deduction amounts to at the inside radius; its band is the
                    deduction's, which readings of a length widen and handbooks do not know of
    punch depth     expected, moved along the contact geometry to the new set angle, plus what
                    the press showed more or less than expected at a known angle
    smallest flange for the sharpest loaded angle of the new band, and never less than before
    force           as before: nothing that is measured at a trial tells it

The expected band is nine in ten, so is the one after. A side that is wider than the other
counts for both. With no trial that counts, the prediction is handed back as it came.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache, partial
from math import exp, hypot, log, sqrt

from flangebook.bending.air_bend import AirBend, air_bend
from flangebook.bending.air_bend_geometry import smallest_flange_mm
from flangebook.bending.allowance import allowance_from_k, setback_mm
from flangebook.bending.checks import Check
from flangebook.bending.correction import depth_per_deg_mm
from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.learning.belief import Belief, believe
from flangebook.bending.learning.lessons import (
    Expected,
    FigureName,
    Lesson,
    deduction_unit_mm,
    depth_beside_mm,
    lessons,
    springback_unit_deg,
)
from flangebook.bending.learning.nearness import LEAST_WEIGHT, nearness_of
from flangebook.bending.learning.readings import (
    DEPTH_MM,
    LENGTHS_MM,
    RADIUS_SHARE,
    SPRINGBACK_DEG,
    Scatter,
    k_factor_from_deduction,
)
from flangebook.bending.learning.trial import SetUp, Trial
from flangebook.bending.metals import Metal

_WITH_SETTING = (
    "; what was set is taken for the angle under load, so the press's own error is in it"
)

Taught = Callable[[Trial], tuple[tuple[Lesson, ...], tuple[Check, ...]]]
SHARPEST_SHARE = 0.2  # of the expected inside radius: no bend of whole sheet is sharper


@dataclass(frozen=True, slots=True)
class Learning:
    """What the trials make of a bend.

    expected: the prediction without them. bend: the prediction with them. beliefs: one for each
    figure that some trial counts for. checks: what is odd, trial by trial and over all.
    not_counted: ids of the trials that teach nothing: marked wrong, impossible (a finding of
    level "stop" says why), of another metal, or too far away in V, thickness or angle.
    """

    expected: AirBend
    bend: AirBend
    beliefs: tuple[Belief, ...]
    checks: tuple[Check, ...]
    not_counted: tuple[str, ...]

    def belief(self, figure: FigureName) -> Belief | None:
        """What is believed of a figure, if any trial counts for it."""
        return next((b for b in self.beliefs if b.figure == figure), None)


def expected_from(metal: Metal) -> Expected:
    """The prediction that trials are held against: :func:`air_bend` for this metal."""

    def expected(set_up: SetUp) -> AirBend:
        return air_bend(
            metal,
            set_up.thickness_mm,
            set_up.bend_length_mm,
            set_up.included_angle_deg,
            set_up.die,
            set_up.punch_radius_mm,
            set_up.dimension,
        )

    return expected


def learned(bend: AirBend, set_up: SetUp, trials: Iterable[Trial], expected: Expected) -> AirBend:
    """The prediction with what the trials taught put in; see :func:`learn` for the reasons.

    Args:
        bend: the prediction without trials.
        set_up: the bend that it is for.
        trials: all there are of this metal, in any order; those of others are passed over.
        expected: what made ``bend``; it is asked for every trial's own thickness and angle.
    """
    return learn(bend, set_up, trials, expected).bend


def learn(bend: AirBend, set_up: SetUp, trials: Iterable[Trial], expected: Expected) -> Learning:
    """What the trials make of a predicted bend, with what each of them counts and why.

    Args:
        bend: the prediction without trials.
        set_up: the bend that it is for.
        trials: all there are of this metal, in any order; those of others are passed over.
        expected: what made ``bend``; it is asked for every trial's own thickness and angle.

    Trials that together put the setting beyond flat, or beyond what the die lets in, leave the
    prediction as it came; the finding "trials-not-used" says so.
    """
    asked = cache(expected)  # strips of one batch ask for the same prediction
    return learn_from(bend, set_up, trials, lambda trial: lessons(trial, asked))


def learn_from(
    bend: AirBend, set_up: SetUp, trials: Iterable[Trial], taught_by: Taught
) -> Learning:
    """As :func:`learn`, for whoever keeps what each trial teaches from one bend to the next.

    Args:
        bend: the prediction without trials.
        set_up: the bend that it is for.
        trials: as for :func:`learn`.
        taught_by: what a trial teaches, as :func:`lessons.lessons` gives it.
    """
    taught: list[Lesson] = []
    checks: list[Check] = []
    silent: list[str] = []
    for trial in sorted(trials, key=lambda t: t.id):
        said: tuple[Lesson, ...] = ()
        if not trial.wrong and nearness_of(trial.set_up, set_up) >= LEAST_WEIGHT:
            said, odd = taught_by(trial)
            checks.extend(odd)
        if not said:
            silent.append(trial.id)
        taught.extend(said)
    beliefs = _beliefs(bend, set_up, taught)
    checks.extend(check for belief in beliefs for check in belief.checks)
    try:
        new = _put_in(bend, set_up, beliefs)
    except InputError as error:
        new = bend
        checks.append(Check("caution", "trials-not-used", error.what, error.right))
    return Learning(bend, new, beliefs, tuple(checks), tuple(silent))


def _beliefs(bend: AirBend, set_up: SetUp, taught: Sequence[Lesson]) -> tuple[Belief, ...]:
    radius, unit = bend.inside_radius_mm, -deduction_unit_mm(set_up)
    spring = springback_unit_deg(bend.springback_deg.nominal)
    half_deg = _half(bend.springback_deg)
    if any(x.figure == "springback" and not x.under_load for x in taught):
        half_deg = hypot(half_deg, _depth_doubt_mm(bend, set_up) / _slope(bend, set_up))
    # A metal may be on record with no lower end of its radius at all.
    sharpest = max(radius.low, SHARPEST_SHARE * radius.nominal)
    wide = log(max(radius.high / radius.nominal, radius.nominal / sharpest)) if sharpest else 0.0
    asked: tuple[tuple[FigureName, float, Scatter], ...] = (
        ("springback", half_deg / spring, SPRINGBACK_DEG.per(spring)),
        ("inside radius", wide, RADIUS_SHARE),
        ("deduction", _half(bend.bend_deduction_mm) / unit, LENGTHS_MM.per(unit)),
        ("punch depth", _depth_doubt_mm(bend, set_up), DEPTH_MM),
    )
    found = (believe(name, half, scatter, taught, set_up) for name, half, scatter in asked)
    return tuple(belief for belief in found if belief is not None)


def _put_in(bend: AirBend, set_up: SetUp, beliefs: tuple[Belief, ...]) -> AirBend:
    by_name = {belief.figure: belief for belief in beliefs}
    new = bend
    if belief := by_name.get("springback"):
        new = _with_springback(new, set_up, belief)
    if belief := by_name.get("inside radius"):
        new = _with_radius(new, set_up, belief)
    if belief := by_name.get("deduction"):
        new = _with_deduction(bend, new, set_up, belief)
    if "springback" in by_name or "punch depth" in by_name:
        new = _with_depth(bend, new, set_up, by_name.get("punch depth"))
    return new if new is bend else _with_flange(new, set_up)


def _with_springback(bend: AirBend, set_up: SetUp, belief: Belief) -> AirBend:
    expected, wanted = bend.springback_deg.nominal, set_up.included_angle_deg
    unit = springback_unit_deg(expected)
    from_setting = any(not c.lesson.under_load for c in belief.counted)
    basis = belief.basis + (_WITH_SETTING if from_setting else "")
    low, nominal, high = (expected + d * unit for d in (belief.low, belief.nominal, belief.high))
    if wanted - high <= 0.0 or wanted - nominal >= 180.0:
        raise RangeError(
            f"By the test bends a bend of {wanted:.3g} degrees springs back between {low:.3g} and "
            f"{high:.3g} degrees: there is nothing that could be set, so they are not used.",
            "trials",
            "Mark the trials wrong that are wrong; their list says which stand out.",
        )
    return replace(
        bend,
        springback_deg=Estimate(low, nominal, high, "your test bends", basis),
        set_angle_deg=Estimate(
            wanted - high, wanted - nominal, min(wanted - low, 180.0), "your test bends",
            f"wanted angle less springback; {basis}",
        ),
    )  # fmt: skip


def _with_radius(bend: AirBend, set_up: SetUp, belief: Belief) -> AirBend:
    expected = bend.inside_radius_mm.nominal
    low, nominal, high = (expected * exp(d) for d in (belief.low, belief.nominal, belief.high))
    radius = Estimate(low, nominal, high, "your test bends", belief.basis)
    angle, t = set_up.included_angle_deg, set_up.thickness_mm
    k = bend.k_factor
    taken, deducted = [], []
    for r in (radius.nominal, radius.low, radius.high):
        setbacks = 2.0 * setback_mm(angle, r, t, set_up.dimension)
        for share in (k.nominal, k.low, k.high):
            arc = allowance_from_k(angle, r, t, share)
            taken.append(arc)
            deducted.append(setbacks - arc)
    words = f"inside radius from {belief.basis}; {k.basis}"
    return replace(
        bend,
        inside_radius_mm=radius,
        bend_allowance_mm=Estimate(min(taken), taken[0], max(taken), k.origin, words),
        bend_deduction_mm=Estimate(min(deducted), deducted[0], max(deducted), k.origin, words),
    )


def _with_deduction(before: AirBend, bend: AirBend, set_up: SetUp, belief: Belief) -> AirBend:
    expected, unit = before.bend_deduction_mm.nominal, deduction_unit_mm(set_up)
    low, nominal, high = sorted(
        expected + d * unit for d in (belief.low, belief.nominal, belief.high)
    )
    deducted = Estimate(low, nominal, high, "your test bends", belief.basis)
    radius = bend.inside_radius_mm.nominal
    bent = (set_up.included_angle_deg, radius, set_up.thickness_mm)
    setbacks = 2.0 * setback_mm(*bent, set_up.dimension)
    k = partial(_k_factor, bent=bent, set_up=set_up)
    return replace(
        bend,
        bend_deduction_mm=deducted,
        bend_allowance_mm=deducted.mapped(lambda d: setbacks - d),
        k_factor=deducted.mapped(k),
    )


def _k_factor(bend_deduction_mm: float, bent: tuple[float, float, float], set_up: SetUp) -> float:
    return k_factor_from_deduction(bend_deduction_mm, *bent, set_up.dimension)


def _with_depth(before: AirBend, bend: AirBend, set_up: SetUp, offset: Belief | None) -> AirBend:
    nominal = depth_beside_mm(before, set_up, bend.set_angle_deg.nominal)
    doubt = _depth_doubt_mm(before, set_up)
    if offset is not None:
        nominal += offset.nominal
        doubt = offset.high - offset.nominal
    half = hypot(doubt, _slope(bend, set_up) * _half(bend.set_angle_deg))
    # Without an offset of the display the punch cannot stand higher than the first touch.
    least = nominal - half if offset is not None else min(max(nominal - half, 0.0), nominal)
    basis = bend.set_angle_deg.basis if offset is None else f"depth shown at {offset.basis}"
    depth = Estimate(least, nominal, nominal + half, "your test bends", basis)
    return replace(bend, punch_depth_mm=depth)


def _with_flange(bend: AirBend, set_up: SetUp) -> AirBend:
    angle, t, die = set_up.included_angle_deg, set_up.thickness_mm, set_up.die
    bent = (angle, bend.inside_radius_mm.nominal, t)
    to_mould_line = setback_mm(*bent, "mould_line")
    least = smallest_flange_mm(
        bend.set_angle_deg.low, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm,
        2.0 * to_mould_line - bend.bend_allowance_mm.nominal,
    ) - to_mould_line + setback_mm(*bent, set_up.dimension)  # fmt: skip
    return replace(bend, min_flange_mm=max(bend.min_flange_mm, least))


def _half(band: Estimate) -> float:
    return max(band.high - band.nominal, band.nominal - band.low)


def _slope(bend: AirBend, set_up: SetUp) -> float:
    return depth_per_deg_mm(bend.set_angle_deg.nominal, bend.inside_radius_mm.nominal,
                            set_up.thickness_mm, set_up.die)  # fmt: skip


def _depth_doubt_mm(bend: AirBend, set_up: SetUp) -> float:
    """Half the band of the depth at a known loaded angle: the whole less the set angle's part.

    Taken apart as if the two were independent; where they were added up, that leaves too much
    rather than too little.
    """
    of_angle = _slope(bend, set_up) * _half(bend.set_angle_deg)
    return sqrt(max(_half(bend.punch_depth_mm) ** 2 - of_angle**2, DEPTH_MM.reading**2))
