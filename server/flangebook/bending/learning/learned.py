"""A predicted bend with what the shop's own test bends taught put in.

    figure          after the results
    --------------  -----------------------------------------------------------------------
    springback      expected, and what the metal's results add; the press's error is kept out
    set angle       wanted angle less that springback and less what the press comes short by
    inside radius   expected, times what the results make of it
    deduction       what was measured of it; the allowance is the setbacks less it
    K-factor        what that deduction amounts to at the inside radius; its band is the
                    deduction's, which readings of a length widen and handbooks do not know of
    punch depth     expected, moved along the contact geometry to the new angle under load, plus
                    what the press comes short by
    smallest flange for the sharpest loaded angle of the new band, and never less than before
    force           as before: nothing that is measured at a result tells it

The expected band is nine in ten, so is the one after. Springback is never put under a tenth of
the expected one, as the model's own band is not: sheet springs open. With no result that counts,
the prediction is handed back as it came.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from math import exp, hypot, log, sqrt

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.estimate import NINE_IN_TEN, Estimate
from flangebook.bending.geometry.setback import setback_mm
from flangebook.bending.learning.belief import Belief, believe
from flangebook.bending.learning.joint import GAUGE, PRESS, Solved, solve, that_count
from flangebook.bending.learning.lessons import (
    SHARPEST_SHARE,
    FigureName,
    Lesson,
    beyond_metal,
    deduction_unit_mm,
    degrees_per_mm,
    half_band,
    spread_of,
)
from flangebook.bending.learning.readings import (
    DEPTH_MM,
    LENGTHS_MM,
    RADIUS_SHARE,
    SPRINGBACK_DEG,
    k_factor_from_deduction,
)
from flangebook.bending.learning.result import Result, SetUp
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.predicted_bend import (
    AirBend,
    depth_at_mm,
    flat,
    shortest_flange_mm,
)

LEAST_SHARE = 0.1  # of the expected springback
LEAST_FLANGES = 3
"""Fewer gauged flanges of a metal move no deduction: one may have been gauged or read wrong, and
there is no other to tell (common practice, no source)."""
_GROUPS: tuple[tuple[FigureName, ...], ...] = (
    ("springback", "punch depth"),
    ("inside radius",),
    ("deduction",),
)

TaughtBy = Callable[[Result], tuple[tuple[Lesson, ...], tuple[Check, ...]]]


@dataclass(frozen=True, slots=True)
class Taught:
    """What all results of a metal teach, and other metals' of the press.

    by_figure: the results that count, solved together, by the first figure of each kind. checks:
    what is odd about each result by itself. asked: ids of those that do not count until somebody
    confirms them. silent: ids of those that teach nothing.
    """

    by_figure: dict[FigureName, Solved | None]
    checks: tuple[Check, ...]
    asked: frozenset[str]
    silent: tuple[str, ...]

    def press_error(self, name: str) -> tuple[float, float] | None:
        """The error d [mm] of the press of that name and its standard deviation; None where no
        result tells of it."""
        solved = self.by_figure["springback"]
        return solved.error(name) if solved is not None and solved.telling(name) else None

    @property
    def counting(self) -> frozenset[str]:
        """Ids of the results that count for some figure."""
        return frozenset(
            lesson.result_id
            for solved in self.by_figure.values()
            if solved is not None
            for lesson in solved.lessons
        )


@dataclass(frozen=True, slots=True)
class Learning:
    """What the results make of a bend.

    expected: the prediction without them. bend: the prediction with them. beliefs: one for each
    figure that some result counts for. checks: what is odd, result by result and over all.
    not_counted: ids of the results that teach nothing: marked wrong, impossible (a finding of
    level "stop" says why), or beyond what the metal can do and not confirmed.
    """

    expected: AirBend
    bend: AirBend
    beliefs: tuple[Belief, ...]
    checks: tuple[Check, ...]
    not_counted: tuple[str, ...]

    def belief(self, figure: FigureName) -> Belief | None:
        """What is believed of a figure, if any result counts for it."""
        return next((b for b in self.beliefs if b.figure == figure), None)


def teach(
    results: Iterable[Result], taught_by: TaughtBy, of_others: Sequence[Lesson] = ()
) -> Taught:
    """What results teach together, worked out once for all bends of a metal.

    Args:
        results: of the metal, in any order.
        taught_by: what a result teaches, as :func:`lessons.lessons` gives it.
        of_others: lessons of other metals; those that tell of press or gauge count.
    """
    found: list[Lesson] = [one for one in of_others if one.per_mm]
    checks: list[Check] = []
    silent: list[str] = []
    for result in sorted(results, key=lambda t: t.id):
        said: tuple[Lesson, ...] = ()
        if not result.wrong:
            said, odd = taught_by(result)
            checks.extend(odd)
        if not said:
            silent.append(result.id)
        found.extend(said)
    counting = that_count([one for one in found if one.figure in _GROUPS[0]])
    asked = frozenset(one.result_id for one in found if one.figure == "springback") - counting
    others = {one.result_id for one in of_others}
    found = _without_few_flanges(found, others)
    checks.extend(
        beyond_metal(one)
        for one in found
        if one.figure == "springback" and one.result_id in asked - others
    )
    by_figure = {
        names[0]: solve(
            [x for x in found if x.figure in names and x.result_id not in asked],
            GAUGE if names[0] == "deduction" else PRESS,
        )
        for names in _GROUPS
    }
    return Taught(by_figure, tuple(checks), asked, tuple(silent))


def _without_few_flanges(found: list[Lesson], others: set[str]) -> list[Lesson]:
    few = [one for one in found if one.by_gauge and one.result_id not in others]
    return found if len(few) >= LEAST_FLANGES else [one for one in found if one not in few]


def put_in(bend: AirBend, set_up: SetUp, taught: Taught) -> Learning:
    """A predicted bend with what was taught.

    Args:
        bend: the prediction without results.
        set_up: the bend that it is for.
        taught: of its metal.
    """
    beliefs = _beliefs(bend, set_up, taught)
    checks = [*taught.checks, *(check for belief in beliefs for check in belief.checks)]
    try:
        new = _put_in(bend, set_up, beliefs, taught)
    except InputError as error:
        new = bend
        checks.append(Check("caution", "trials-not-used", error.template, error.do, error.numbers))
    silent = tuple(sorted({*taught.silent, *taught.asked}))
    return Learning(bend, new, beliefs, tuple(checks), silent)


def _beliefs(bend: AirBend, set_up: SetUp, taught: Taught) -> tuple[Belief, ...]:
    case = set_up.case
    unit = abs(deduction_unit_mm(case))
    scatter: dict[FigureName, float] = {
        "springback": SPRINGBACK_DEG,
        "inside radius": RADIUS_SHARE,
        "deduction": LENGTHS_MM / unit,
    }
    per_mm = degrees_per_mm(bend, case)
    found = (
        believe(
            name, solved, set_up, spread_of(name, bend, case),
            per_mm if name == "springback" else 0.0, scatter[name],
        )
        for name, solved in taught.by_figure.items()
    )  # fmt: skip
    return tuple(belief for belief in found if belief is not None)


def _put_in(bend: AirBend, set_up: SetUp, beliefs: tuple[Belief, ...], taught: Taught) -> AirBend:
    by_name = {belief.figure: belief for belief in beliefs}
    new, case = bend, set_up.case
    if belief := by_name.get("springback"):
        new = _with_springback(new, case, belief)
    if belief := by_name.get("inside radius"):
        new = _with_radius(new, case, belief)
    if belief := by_name.get("deduction"):
        new = _with_deduction(bend, new, case, belief)
    solved = taught.by_figure["springback"]
    if solved is not None and ("springback" in by_name or solved.telling(set_up.press)):
        new = _with_setting(bend, new, set_up, solved, by_name.get("springback"))
    return new if new is bend else _with_flange(new, case)


def _with_springback(bend: AirBend, case: BendCase, belief: Belief) -> AirBend:
    expected, wanted = bend.springback_deg, case.included_angle_deg
    least = LEAST_SHARE * expected.nominal
    nominal = max(expected.nominal + belief.split.metal, least)
    low = max(nominal - belief.half(expected.nominal - expected.low), min(least, nominal))
    high = nominal + belief.half(expected.high - expected.nominal)
    if wanted - high <= 0.0:
        raise RangeError(
            f"By the test bends a bend of {wanted:.3g} degrees springs back between {low:.3g} and "
            f"{high:.3g} degrees: there is nothing that could be set, so they are not used.",
            "trials",
            "Mark the results wrong that are wrong; their list says which stand out.",
        )
    spring = Estimate(low, nominal, high, "your test bends", belief.basis)
    return replace(bend, springback_deg=spring, set_angle_deg=_set_angle(wanted, spring))


def _set_angle(wanted_deg: float, spring: Estimate) -> Estimate:
    return Estimate(
        wanted_deg - spring.high,
        wanted_deg - spring.nominal,
        min(wanted_deg - spring.low, 180.0),
        "your test bends",
        f"wanted angle less springback; {spring.basis}",
    )


def _with_setting(
    before: AirBend, bend: AirBend, set_up: SetUp, solved: Solved, belief: Belief | None
) -> AirBend:
    """Set angle and punch depth, the press's own error included.

    Springback and press are often known together far better than apart; the set angle's band is
    then that of both. The doubt of a press that nothing is known of stays the depth's alone.
    """
    case = set_up.case
    per_mm = degrees_per_mm(before, case)
    split = solved.at(set_up, spread_of("springback", before, case), per_mm)
    scatter = belief.scatter if belief is not None else SPRINGBACK_DEG
    loaded = bend.set_angle_deg
    depth = depth_at_mm(before, case, loaded.nominal) + split.press_mm
    if not solved.telling(set_up.press):
        doubt = hypot(_depth_doubt_mm(before, per_mm), half_band(loaded) / per_mm)
        return replace(bend, punch_depth_mm=_depth(depth, doubt, loaded.basis))
    short = per_mm * split.press_mm
    nominal = loaded.nominal - short
    if not 0.0 < nominal < 180.0:
        raise RangeError(
            f"By the test bends the angle to set would be {nominal:.3g} degrees: there is nothing "
            "that could be set, so they are not used.",
            "trials",
            "Mark the results wrong that are wrong; their list says which stand out.",
        )
    together = NINE_IN_TEN * hypot(split.together_sd, scatter)
    basis = f"{loaded.basis}; the press's error of {split.press_mm:.2f} mm in it"
    angle = Estimate(
        max(nominal - min(together, loaded.nominal - loaded.low), 0.0),
        nominal,
        min(nominal + min(together, loaded.high - loaded.nominal), 180.0),
        "your test bends",
        basis,
    )
    doubt = hypot(NINE_IN_TEN * DEPTH_MM, together / per_mm)
    return replace(
        bend,
        set_angle_deg=angle,
        punch_depth_mm=_depth(depth, doubt, basis),
        press_short_mm=split.press_mm,
        press_short_deg=short,
    )


def _depth(nominal_mm: float, half_mm: float, basis: str) -> Estimate:
    # The punch cannot be set higher than the first touch, but a display may read below zero.
    low = min(max(nominal_mm - half_mm, 0.0), nominal_mm)
    return Estimate(low, nominal_mm, nominal_mm + half_mm, "your test bends", basis)


def _with_radius(bend: AirBend, case: BendCase, belief: Belief) -> AirBend:
    expected = bend.inside_radius_mm
    nominal = expected.nominal * exp(belief.split.metal)
    sharpest = max(expected.low, SHARPEST_SHARE * expected.nominal)
    low = nominal / exp(belief.half(log(expected.nominal / sharpest)))
    high = nominal * exp(belief.half(log(expected.high / expected.nominal)))
    radius = Estimate(low, nominal, high, "your test bends", belief.basis)
    words = f"inside radius from {belief.basis}; {bend.k_factor.basis}"
    allowance, deducted = flat(case, radius, replace(bend.k_factor, basis=words))
    return replace(
        bend,
        inside_radius_mm=radius,
        bend_allowance_mm=allowance,
        bend_deduction_mm=deducted,
    )


def _with_deduction(before: AirBend, bend: AirBend, case: BendCase, belief: Belief) -> AirBend:
    expected, unit = before.bend_deduction_mm, deduction_unit_mm(case)
    nominal = expected.nominal + belief.split.metal * unit
    half = abs(unit) * belief.half(half_band(expected) / abs(unit))
    deducted = Estimate(nominal - half, nominal, nominal + half, "your test bends", belief.basis)
    bent = (case.included_angle_deg, bend.inside_radius_mm.nominal, case.thickness_mm)
    setbacks = 2.0 * setback_mm(*bent, case.dimension)
    return replace(
        bend,
        bend_deduction_mm=deducted,
        bend_allowance_mm=deducted.mapped(lambda d: setbacks - d),
        k_factor=deducted.mapped(lambda d: k_factor_from_deduction(d, *bent, case.dimension)),
    )


def _with_flange(bend: AirBend, case: BendCase) -> AirBend:
    least = shortest_flange_mm(
        case, bend.set_angle_deg.low, bend.inside_radius_mm.nominal, bend.bend_allowance_mm.nominal
    )
    return replace(bend, min_flange_mm=max(bend.min_flange_mm, least))


def _depth_doubt_mm(bend: AirBend, per_mm: float) -> float:
    """Half the band of the depth at a known loaded angle: the whole less the set angle's part.

    Taken apart as if the two were independent; where they were added up, that leaves too much
    rather than too little.
    """
    of_angle = half_band(bend.set_angle_deg) / per_mm
    return sqrt(max(half_band(bend.punch_depth_mm) ** 2 - of_angle**2, DEPTH_MM**2))
