"""Which tools suit a bend best, and the reason in words for each place in the ranking.

In this order: nothing forbids it; the radius asked for; the V within the usual range (6 t to
12 t, which bounds force and smallest flange together); the loads against the ratings; what
else speaks against it; closeness to 8 t (common practice, no source). A flange too short for
a die forbids that die, so the smallest flange decides with the first.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from flangebook.bending.bend_checks import LARGE_TIP_OVER_V
from flangebook.bending.checks import Level, tidy
from flangebook.bending.inside_radius import SHARP_TIP_OVER_T
from flangebook.bending.tooling import Die, Punch
from flangebook.bending.v_opening import PREFERRED_OVER_T
from flangebook.bending.witnesses import CODE as HANDBOOK_DIFFERS
from flangebook.planning.fit import USUAL_V_OVER_T, Equipment, Fit, Wanted, fit

_WEIGHT: dict[Level, int] = {"ok": 0, "unknown": 1, "caution": 2, "stop": 3}
_LOAD_CODES = {
    "press-load", "press-per-metre-load", "punch-load", "die-load", "holder-load",
    "die-holder-load",
}  # fmt: skip
# What two ways to predict make of a bend says little about the tools it is made in.
_NOT_OF_THE_TOOLS = {*_LOAD_CODES, HANDBOOK_DIFFERS}
UNPREDICTABLE = 20  # worse than any number of findings that forbid a bend
_RADIUS_STEP = 0.05  # radii closer than this share of the one asked for rank alike


@dataclass(frozen=True, slots=True, order=True)
class Merit:
    """What the ranking goes by, most important first; less is better everywhere."""

    stops: int
    radius_miss: float
    out_of_range: float
    load: int
    cautions: int
    from_8t: float
    tools_second_choice: float
    code: str

    @property
    def cost(self) -> float:
        """All of it as one number, for weighing a tool change against a lesser fit."""
        return (
            1000.0 * self.stops
            + (20.0 if self.radius_miss else 0.0)
            + 40.0 * min(self.radius_miss, 2.0)
            + 15.0 * min(self.out_of_range, 2.0)
            + 4.0 * self.load
            + 2.0 * self.cautions
            + min(self.from_8t, 3.0)
            + 0.1 * self.tools_second_choice
        )


def merit(one: Fit) -> Merit:
    """The merit of tools for a bend."""
    cautions = sum(c.level == "caution" and c.code not in _NOT_OF_THE_TOOLS for c in one.checks)
    over_t = one.v_over_t
    return Merit(
        stops=len(one.stops) if one.bend is not None else UNPREDICTABLE,
        radius_miss=_radius_miss(one),
        out_of_range=_out_of_range(over_t),
        load=_WEIGHT[one.load_level],
        cautions=cautions,
        from_8t=round(abs(math.log(over_t / PREFERRED_OVER_T)), 3),
        tools_second_choice=_punch_second_choice(one.punch, one.wanted.thickness_mm)
        + _acute(one.die),
        code=f"{one.die.code} {one.punch.code}",
    )


def _radius_miss(one: Fit) -> float:
    asked = one.wanted.radius_mm
    if asked is None or one.bend is None:
        return 0.0
    radius = one.bend.inside_radius_mm
    if radius.low <= asked <= radius.high:
        return 0.0
    miss = abs(radius.nominal - asked) / max(asked, 0.1 * one.wanted.thickness_mm)
    return max(1.0, round(miss / _RADIUS_STEP)) * _RADIUS_STEP


def _out_of_range(over_t: float) -> float:
    """How far V lies outside the usual range, as a logarithm."""
    low, high = USUAL_V_OVER_T
    return round(max(0.0, math.log(low / over_t), math.log(over_t / high)), 2)


def _punch_second_choice(punch: Punch, thickness_mm: float) -> float:
    """Straight before gooseneck, blunt before acute, a tip near the thickness."""
    neck = 0.0 if punch.shape == "straight" else 2.0
    return (
        neck + _acute(punch) + min(abs(math.log(max(punch.tip_radius_mm, 0.1) / thickness_mm)), 2.0)
    )


def _acute(tool: Punch | Die) -> float:
    """Acute tools are kept for acute bends."""
    return 1.0 if tool.angle_deg < 60.0 else 0.0


def best_punch(
    wanted: Wanted, die: Die, punches: Sequence[Punch], needed_angle_deg: float
) -> Punch | None:
    """The punch to try first in this die, by plain comparison; None when there is none.

    needed_angle_deg: the sharpest loaded angle expected [deg].
    """
    natural = wanted.metal.radius_over_v.nominal * die.v_opening_mm
    t = wanted.thickness_mm

    def order(punch: Punch) -> tuple[float, ...]:
        radius = max(punch.tip_radius_mm, natural)
        miss = abs(radius - wanted.radius_mm) if wanted.radius_mm is not None else 0.0
        return (
            punch.angle_deg > needed_angle_deg,
            sum(punch.segments_mm) < wanted.bend_length_mm,
            punch.condition == "damaged",
            round(miss / (0.25 * t)),
            punch.tip_radius_mm > LARGE_TIP_OVER_V * die.v_opening_mm,
            punch.tip_radius_mm < SHARP_TIP_OVER_T * t,
            punch.tip_radius_mm > 1.05 * natural,
            punch.rating_kn_per_m is None,
            _punch_second_choice(punch, t),
        )

    return min(punches, key=order, default=None)


def ranked(
    wanted: Wanted, dies: Iterable[Die], punches: Sequence[Punch], equipment: Equipment
) -> list[tuple[Merit, Fit]]:
    """Every die with the punch that suits it best, best first."""
    springback = wanted.metal.springback_at_90_deg.high * 1.5
    needed = wanted.included_angle_deg - springback * (180.0 - wanted.included_angle_deg) / 90.0
    found = []
    for die in dies:
        punch = best_punch(wanted, die, punches, needed)
        if punch is not None:
            one = fit(wanted, die, punch, equipment)
            found.append((merit(one), one))
    return sorted(found, key=lambda pair: pair[0])


def reason(mine: tuple[Merit, Fit], best: tuple[Merit, Fit], *, named: bool) -> str:
    """Why these tools stand where they stand, against the best ones.

    named: these tools were asked for by name.
    """
    (merit_here, one), (merit_best, _) = mine, best
    if one.stops:
        words = one.stops[0].words
        return f"Asked for by name, but: {words}" if named else words
    if named:
        return "Asked for by name."
    if one is best[1]:
        return f"Best: {_why_best(one)}"
    return _what_is_worse(merit_here, merit_best, one)


def _why_best(one: Fit) -> str:
    asked = one.wanted.radius_mm
    radius = "" if asked is None else f" and its radius nearest to the {tidy(asked)} mm asked for"
    return f"V is {tidy(one.v_over_t)} t, the nearest to 8 t with least against it{radius}."


def _what_is_worse(here: Merit, best: Merit, one: Fit) -> str:
    over_t = f"{tidy(one.v_over_t)} t"
    if here.radius_miss > best.radius_miss and one.bend is not None:
        return (
            f"The radius would be {tidy(one.bend.inside_radius_mm.nominal)} mm, "
            f"further from the {tidy(one.wanted.radius_mm or 0.0)} mm asked for."
        )
    if here.out_of_range > best.out_of_range:
        side = (
            "wide: longer flanges needed"
            if one.v_over_t > PREFERRED_OVER_T
            else "narrow: more force"
        )
        return f"V is {over_t}, {side}; usual is 6 t to 12 t."
    if here.load > best.load:
        worst = max(one.ratings, key=lambda r: _WEIGHT[r.level])
        return worst.check().words
    if here.cautions > best.cautions:
        worst_caution = next(
            c for c in one.checks if c.level == "caution" and c.code not in _NOT_OF_THE_TOOLS
        )
        return worst_caution.words
    if here.from_8t > best.from_8t:
        return f"V is {over_t}, further from 8 t."
    return "As good, but the other punch or die is the more usual one."
