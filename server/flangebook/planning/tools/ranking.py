"""What speaks for and against tools for a bend, and the reason in words for their place.

In this order, more or less, since a little of one may outweigh much of another: nothing forbids
it; a tool that is rated and sound; the radius asked for; the V within the usual range (6 t to
12 t, which bounds force and smallest flange together); tools sharp enough even where the sheet
springs more than usual; the loads against the ratings; what else speaks against it; closeness to
8 t (common practice, no source).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from flangebook.bending.checks import SEVERITY, Check
from flangebook.bending.handbook.v_opening import PREFERRED_OVER_T
from flangebook.bending.prediction.bend_checks import crease, large_tip
from flangebook.bending.prediction.witnesses import CODE as HANDBOOK_DIFFERS
from flangebook.bending.tools.setting_limits import MARGIN_DEG
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.tools.fit import USUAL_V_OVER_T, Fit

_LOAD_CODES = {
    "press-load", "press-per-metre-load", "punch-load", "die-load", "holder-load",
    "die-holder-load",
}  # fmt: skip
SHARPER_CODES = {"sharper-than-die", "sharper-than-punch"}
_FLANGE_CODES = {"flange-too-short", "flange-close"}
# What two ways to predict make of a bend says little about the tools it is made in; loads, sharp
# ends and flanges count by themselves.
COUNTED_APART = {*_LOAD_CODES, *SHARPER_CODES, *_FLANGE_CODES, HANDBOOK_DIFFERS}
_OF_TOOLS_ALONE = {
    "v-narrow", "v-too-narrow", "die-too-short", "punch-too-short", "die-condition",
    "punch-condition", "punch-may-crease", "punch-large-for-v",
}  # fmt: skip
"""Findings that tools and thickness alone decide, whatever is predicted of the bend."""
UNPREDICTABLE = 20  # worse than any number of findings that forbid a bend
_RADIUS_STEP = 0.05  # radii closer than this share of the one asked for rank alike
ACUTE_DEG = 60.0

STOP_COST = 1000.0
DOUBTFUL_COST = 80.0
"""More than all that can speak against tools whose every finding is "ok"."""


@dataclass(frozen=True, slots=True)
class Merit:
    """What the choice goes by; less is better everywhere.

    blunt: with more springback than expected the setting is beyond what the tools allow.
    doubtful: tools without a rating, or worn. unknowns: tools whose condition is not on record.
    """

    stops: int
    blunt: bool
    doubtful: int
    radius_miss: float
    out_of_range: float
    load: int
    cautions: int
    unknowns: int
    from_8t: float
    tools_second_choice: float

    @property
    def terms(self) -> dict[str, float]:
        """What each of them weighs."""
        missed = 20.0 + 40.0 * min(self.radius_miss, 2.0) if self.radius_miss else 0.0
        return {
            "stops": STOP_COST * self.stops,
            "blunt": 12.0 if self.blunt else 0.0,
            "doubtful": DOUBTFUL_COST if self.doubtful else 0.0,
            "radius_miss": missed,
            "out_of_range": 15.0 * min(self.out_of_range, 2.0),
            "load": 4.0 * self.load,
            "cautions": 2.0 * self.cautions,
            "unknowns": 1.0 * self.unknowns,
            "from_8t": min(self.from_8t, 3.0),
            "tools_second_choice": 0.1 * self.tools_second_choice,
        }

    @property
    def cost(self) -> float:
        """All of it as one number, for weighing a tool change against a lesser fit."""
        return sum(self.terms.values())


def merit(one: Fit) -> Merit:
    """The merit of tools for a bend, as predicted."""
    stops = len(one.stops) if one.bend is not None else UNPREDICTABLE
    return _merit(one, one.checks, stops, blunt(one), _radius_miss(one))


def least_merit(one: Fit, set_at_most_deg: float, sharp_at_most_deg: float) -> Merit:
    """The best merit that tools can have for a bend, whatever else the bend model says of it.

    one: as the handbook predicts it, whose force is never above what the loads are held against.
    set_at_most_deg, sharp_at_most_deg: no flatter than this [deg] are the angle to set and the
    sharp end of its band.
    """
    alone = [c for c in (*one.checks, *_of_the_tip(one)) if c.code in _OF_TOOLS_ALONE]
    loads = [c for c in one.checks if c.code in _LOAD_CODES]
    ends = [tool.angle_deg + MARGIN_DEG for tool in (one.die, one.punch)]
    stops = sum(c.level == "stop" for c in (*alone, *loads))
    stops += sum(set_at_most_deg < end for end in ends)
    return _merit(one, alone, stops, sharp_at_most_deg < max(ends), 0.0)


def _of_the_tip(one: Fit) -> tuple[Check, ...]:
    """What is said of the punch's tip where the handbook refuses the bend and says only that."""
    if one.bend is not None or not one.punch.code:
        return ()
    tip = one.punch.tip_radius_mm
    found = crease(one.wanted.thickness_mm, tip), large_tip(one.die.v_opening_mm, tip)
    return tuple(check for check in found if check is not None)


def _merit(
    one: Fit, checks: tuple[Check, ...] | list[Check], stops: int, blunt: bool, radius_miss: float
) -> Merit:
    over_t = one.v_over_t
    cautions = sum(c.level == "caution" and c.code not in COUNTED_APART for c in checks)
    return Merit(
        stops=stops,
        blunt=blunt,
        doubtful=sum(doubtful(tool) for tool in (one.punch, one.die)),
        radius_miss=radius_miss,
        out_of_range=_out_of_range(over_t),
        load=max((SEVERITY[r.level] for r in one.ratings), default=0),
        cautions=cautions,
        unknowns=sum(c.level == "unknown" and c.code.endswith("-condition") for c in checks),
        from_8t=round(abs(math.log(over_t / PREFERRED_OVER_T)), 3),
        tools_second_choice=_punch_second_choice(one.punch, one.wanted.thickness_mm)
        + acute(one.die),
    )


def doubtful(tool: Punch | Die) -> bool:
    """Whether a tool of the shop's is worn or damaged, or nobody knows its rating."""
    return bool(tool.code) and (
        tool.rating_kn_per_m is None or tool.condition in ("worn", "damaged")
    )


def blunt(one: Fit) -> bool:
    """Whether the tools are too blunt for the sharp end of the setting's band, which more
    springback than expected asks for; a setting that is beyond them is a stop of its own."""
    if one.bend is None or one.limits is None:
        return False
    return bool(one.limits.beyond(one.bend.set_angle_deg.low))


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
        neck + acute(punch) + min(abs(math.log(max(punch.tip_radius_mm, 0.1) / thickness_mm)), 2.0)
    )


def acute(tool: Punch | Die) -> bool:
    """Acute tools are kept for acute bends."""
    return tool.angle_deg < ACUTE_DEG
