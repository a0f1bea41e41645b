"""How well one die and one punch suit one bend: what is predicted, and every finding on it."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Literal

from flangebook.bending.checks import Check, Level, worst
from flangebook.bending.errors import InputError
from flangebook.bending.estimate import Estimate
from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.part.metals import Metal
from flangebook.bending.prediction import bend_checks, witnesses
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.bending.prediction.first_hit import FirstHit, first_hit
from flangebook.bending.prediction.handbook_bend import handbook_bend
from flangebook.bending.requirements import need_asked
from flangebook.bending.tools.ratings import Rating, ratings
from flangebook.bending.tools.setting_limits import SettingLimits, daylight_mm, setting_limits
from flangebook.bending.tools.tooling import Condition, Crib, Die, Holder, Press, Punch
from flangebook.planning.results.evidence import Evidence, odd_ids

LEAST_V_OVER_T = 4.0  # no published force chart that was read goes below 4.8 t
USUAL_V_OVER_T = (6.0, 12.0)  # the rule printed with a published US chart, by thickness


@dataclass(frozen=True, slots=True)
class Equipment:
    """The press, if one is known, the crib, and what is known of the metal from test bends.

    left_out: the findings on tools that are not in this crib because they cannot be drawn.
    """

    press: Press | None
    crib: Crib
    evidence: Evidence | None = None
    left_out: tuple[Check, ...] = ()

    @property
    def holder(self) -> Holder | None:
        """The holder that sits in the ram, if it is known."""
        code = self.press.holder if self.press else None
        return next((h for h in self.crib.holders if h.code == code), None) if code else None

    def stack_mm(self, punch: Punch, die: Die) -> float:
        """How tall the tools stand, closed, with what holds them [mm]."""
        holder = self.holder.height_mm if self.holder else 0.0
        riser = self.press.die_holder_height_mm if self.press else 0.0
        return punch.height_mm + die.height_mm + holder + riser

    def opens_mm(self, punch: Punch, die: Die, thickness_mm: float) -> float:
        """What the press opens between the tip and sheet on the die [mm]; 0 or less: not at all.

        Endless without a press, or where a tool's height is assumed.
        """
        if self.press is None or _assumed_heights(die, punch):
            return math.inf
        return daylight_mm(self.press, die, punch, thickness_mm, self.holder)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What one bend asks of its tools.

    radius_mm: the inside radius asked for, None for any. flange_mm: the shorter straight run
    beside the bend line in the part's dimension [mm], None when not known. bump_of_mm: the whole
    inside radius that this bend is one bump of [mm], None for a bend of one stroke.

    Raises InputError for a size that is out of range or an angle that is no bend.
    """

    metal: Metal
    thickness_mm: float
    bend_length_mm: float
    included_angle_deg: float
    radius_mm: float | None = None
    flange_mm: float | None = None
    dimension: Dimension = "din6935"
    grain: Literal["with", "across"] | None = None
    bump_of_mm: float | None = None

    def __post_init__(self) -> None:
        need_asked(
            thickness_mm=self.thickness_mm,
            bend_length_mm=self.bend_length_mm,
            included_angle_deg=self.included_angle_deg,
        )

    def case(self, die: Die, punch: Punch) -> BendCase:
        """The bend to predict in these tools.

        Raises InputError.
        """
        return BendCase(
            self.metal, self.thickness_mm, self.bend_length_mm, self.included_angle_deg,
            die, punch.tip_radius_mm, self.dimension,
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Fit:
    """One die and one punch for one bend.

    bend: what is predicted, with what test bends taught; None where it cannot be (a check says
    why). expected: the same without test bends. limits: how far these tools may be set, None
    without a prediction. ratings: every load;
    checks has those that are not plain "ok". refused_where: what it was that cannot be.
    tried: whether the shop has measured a piece of this metal in this V. angle_doubt_deg: how near
    the press comes to a set angle, None as is usual.
    """

    wanted: Wanted
    die: Die
    punch: Punch
    bend: AirBend | None
    ratings: tuple[Rating, ...]
    checks: tuple[Check, ...]
    refused_where: str = ""
    expected: AirBend | None = None
    limits: SettingLimits | None = None
    tried: bool = False
    angle_doubt_deg: float | None = None

    @property
    def first_hit(self) -> FirstHit | None:
        """What to set for the first piece; None where the expected setting leads, because a piece
        was measured, or where there is no setting."""
        if self.bend is None or self.limits is None or self.tried:
            return None
        return first_hit(self.bend, self.case, self.limits, self.angle_doubt_deg)

    @property
    def case(self) -> BendCase:
        """What is predicted."""
        return self.wanted.case(self.die, self.punch)

    def force_n(self, length_mm: float) -> Estimate | None:
        """The force for this bend over another length [N]."""
        share = length_mm / self.wanted.bend_length_mm
        return self.bend.force_n.mapped(lambda force: force * share) if self.bend else None

    @property
    def level(self) -> Level:
        """The most serious finding."""
        return worst(self.checks)

    @property
    def stops(self) -> tuple[Check, ...]:
        """The findings that forbid it."""
        return tuple(c for c in self.checks if c.level == "stop")

    @property
    def v_over_t(self) -> float:
        """V opening over thickness [-]."""
        return self.die.v_opening_mm / self.wanted.thickness_mm

    def with_flange(self, flange_mm: float | None) -> Fit:
        """The same tools for the same bend beside a flange of this length."""
        if flange_mm is None or self.bend is None:
            return self
        flange = bend_checks.flange_length(flange_mm, self.bend.min_flange_mm)
        return replace(
            self,
            wanted=replace(self.wanted, flange_mm=flange_mm),
            checks=(*self.checks, flange),
        )


def fit(
    wanted: Wanted, die: Die, punch: Punch, equipment: Equipment, *, handbook_only: bool = False
) -> Fit:
    """Predict the bend in these tools and collect every finding; never raises for a bad fit.

    handbook_only: by the handbook's relations alone, which is quick: to compare many tools of
    which few will be shown.
    """
    predict = handbook_bend if handbook_only else air_bend
    try:
        case = wanted.case(die, punch)
        expected = predict(case)
        evidence = None if handbook_only else equipment.evidence
        bend = expected if evidence is None else evidence.taught(expected, evidence.set_up(case))
        limits = _limits(wanted, die, punch, bend, equipment)
        rows = ratings(
            bend.force_n.high,
            wanted.bend_length_mm,
            equipment.press,
            punch if punch.code else None,
            die if die.code else None,
            equipment.holder,
        )
    except InputError as error:
        refused = Check("stop", "cannot-be-predicted", error.template, error.do, error.numbers)
        return Fit(wanted, die, punch, None, (), (refused,), error.where)
    checks = (
        *bend_checks.sharper_than_tools(
            bend.set_angle_deg, die, punch, equipment.crib.dies, equipment.crib.punches
        ),
        *bend_checks.fills_the_v(bend.set_angle_deg, bend.punch_depth_mm, limits, die),
        *_height(wanted, die, punch, bend, equipment),
        *_opening(wanted, die),
        *_owned_length(wanted, die, punch),
        *_assumed_sizes(die, punch),
        *(row.check() for row in rows if row.level != "ok"),
        *_metal(wanted, bend, punch, equipment.crib),
        *(c for c in said_by_both(wanted, expected) if c.level != "ok"),
        *_condition("die", die.code, die.condition, die.condition_note),
        *_condition("punch", punch.code, punch.condition, punch.condition_note),
    )
    tried = (
        evidence is not None
        and bend.set_angle_deg.origin == "your test bends"
        and evidence.tried(evidence.set_up(case))
    )
    made = Fit(
        wanted, die, punch, bend, rows, checks, expected=expected, limits=limits, tried=tried,
        angle_doubt_deg=equipment.press.angle_doubt_deg if equipment.press else None,
    )  # fmt: skip
    return made.with_flange(wanted.flange_mm)


def _limits(
    wanted: Wanted, die: Die, punch: Punch, bend: AirBend, equipment: Equipment
) -> SettingLimits:
    """How far these tools may be set; the press counts where both are the shop's own."""
    owned = bool(die.code and punch.code)
    limits = setting_limits(
        die, punch, wanted.thickness_mm, bend.inside_radius_mm.nominal,
        equipment.press if owned else None, equipment.holder,
    )  # fmt: skip
    return limits.less_press_error(bend.press_short_deg, bend.press_short_mm)


def _height(
    wanted: Wanted, die: Die, punch: Punch, bend: AirBend, equipment: Equipment
) -> Iterable[Check]:
    """The tools' heights against the open height and the stroke."""
    press = equipment.press
    if press is None or not (punch.code and die.code):
        return
    known, assumed = press.knows("open_height_mm", "stroke_mm"), _assumed_heights(die, punch)
    if not known or assumed:
        yield _heights_unknown(press, assumed)
    if assumed:
        return
    stack = equipment.stack_mm(punch, die)
    below = " and die holder" if press.die_holder_height_mm else ""
    numbers = {"stack_mm": stack, "open_height_mm": press.open_height_mm}
    if equipment.opens_mm(punch, die, wanted.thickness_mm) <= 0.0:
        yield Check(
            "stop",
            "tools-too-tall",
            f"Punch, holder, die{below} stand {{stack_mm}} tall, "
            "the press opens {open_height_mm}.",
            "Use lower tools.",
            numbers,
        )
        return
    if not known:
        return
    reach = press.open_height_mm - press.stroke_mm
    bottom = stack + wanted.thickness_mm - bend.punch_depth_mm.high
    if bottom < reach:
        yield Check(
            "stop",
            "tools-too-low",
            "With its full stroke the press closes to {reach_mm}; the tools need {bottom_mm}.",
            "Use taller tools or put a riser under the die.",
            {"reach_mm": reach, "bottom_mm": bottom},
        )


def _assumed_heights(die: Die, punch: Punch) -> list[str]:
    """The tools whose height nobody has measured."""
    return [
        f"the height of {kind} {tool.code}"
        for kind, tool in (("punch", punch), ("die", die))
        if "height_mm" in tool.assumed
    ]


def _heights_unknown(press: Press, heights: list[str]) -> Check:
    of_press = {"open_height_mm": "the press's open height", "stroke_mm": "the press's stroke"}
    missing = [words for name, words in of_press.items() if not press.knows(name)] + heights
    listed = " and ".join(missing)
    return Check(
        "unknown",
        "heights-unknown",
        f"Not on record: {listed}. Whether these tools go in and the ram closes far enough is not "
        "known.",
        f"To know whether the tools fit, measure {listed}.",
    )


_SIZE_NAMES = {
    "height_mm": "height",
    "body_width_mm": "width of the body",
    "neck_relief_mm": "throat",
    "width_mm": "width",
    "shoulder_radius_mm": "shoulder radius",
}


def _assumed_sizes(die: Die, punch: Punch) -> Iterable[Check]:
    """What is counted with that nobody has measured on the tools, in words."""
    for kind, tool in (("die", die), ("punch", punch)):
        names = [name for name in _SIZE_NAMES if name in tool.assumed]
        if tool.code and names:
            listed = ", ".join(f"{_SIZE_NAMES[name]} {{{name}}}" for name in names)
            yield Check(
                "unknown",
                f"{kind}-sizes-assumed",
                f"{kind.capitalize()} {tool.code} is counted with usual sizes: {listed}, assumed.",
                "Measure them and enter them with the tool.",
                {name: getattr(tool, name) for name in names},
            )


def said_by_results(one: Fit, equipment: Equipment) -> tuple[Check, ...]:
    """That test bends near this bend contradict each other or what is published, or cannot be
    used; their odd ones by themselves are shown where the evidence is."""
    evidence, expected = equipment.evidence, one.expected
    if evidence is None or expected is None:
        return ()
    learning = evidence.learning(expected, evidence.set_up(one.case))
    together = [belief.together for belief in learning.beliefs if belief.together is not None]
    return (*together, *(c for c in learning.checks if c.code == "trials-not-used"))


def odd_results(one: Fit, evidence: Evidence) -> frozenset[str]:
    """Ids of the results that stand out at this bend."""
    if one.expected is None:
        return frozenset()
    return odd_ids(evidence.learning(one.expected, evidence.set_up(one.case)))


def said_by_both(wanted: Wanted, bend: AirBend) -> tuple[Check, ...]:
    """Where handbook and bend model differ, or that the handbook answers alone."""
    bump = wanted.bump_of_mm is not None
    return (
        *witnesses.handbook_differs(bend, wanted.bend_length_mm, one_bump=bump),
        *witnesses.model_not_used(bend),
    )


def _metal(wanted: Wanted, bend: AirBend, punch: Punch, crib: Crib) -> Iterable[Check]:
    """What the bend does to the metal."""
    t = wanted.thickness_mm
    whole = wanted.bump_of_mm
    radius = bend.inside_radius_mm if whole is None else Estimate.exact(whole)
    found = (
        bend_checks.radius_asked(wanted.radius_mm, bend.inside_radius_mm, wanted.metal),
        bend_checks.crease(t, punch.tip_radius_mm) if punch.code else None,
        bend_checks.large_tip(bend.v_opening_mm, punch.tip_radius_mm),
        bend_checks.smallest_radius(
            wanted.metal,
            t,
            radius,
            wanted.grain,
            [d for d in crib.dies if d.angle_deg <= bend.set_angle_deg.low],
            [p for p in crib.punches if p.angle_deg <= bend.set_angle_deg.low],
            bend.v_opening_mm if whole is None else None,
        ),
    )
    return (check for check in found if check is not None)


def _opening(wanted: Wanted, die: Die) -> tuple[Check, ...]:
    """The V opening against the thickness."""
    over_t = die.v_opening_mm / wanted.thickness_mm
    if over_t >= USUAL_V_OVER_T[0]:
        return ()
    least_mm = USUAL_V_OVER_T[0] * wanted.thickness_mm
    numbers = {"v_opening_mm": die.v_opening_mm, "least_mm": least_mm, "v_over_t": over_t}
    words = "A V of {v_opening_mm} is only {v_over_t} times the thickness"
    do = "Use a V of {least_mm} or more."
    if over_t >= LEAST_V_OVER_T:
        words += ": narrower than usual, the force rises and the sheet marks."
        return (Check("caution", "v-narrow", words, do, numbers),)
    words += ": no published chart goes so narrow, the force would be a guess."
    return (Check("stop", "v-too-narrow", words, do, numbers),)


def _owned_length(wanted: Wanted, die: Die, punch: Punch) -> Iterable[Check]:
    """Whether the pieces owned make up the bend length."""
    for kind, code, pieces in (
        ("die", die.code, die.segments_mm),
        ("punch", punch.code, punch.segments_mm),
    ):
        total = sum(pieces)
        if code and not pieces:
            yield Check(
                "unknown",
                f"{kind}-pieces-unknown",
                f"Which pieces of {kind} {code} the shop has is not on record: counted with one "
                "piece as long as needed, assumed.",
                f"Enter the lengths of {kind} {code}.",
            )
        elif code and total < wanted.bend_length_mm:
            yield Check(
                "stop",
                f"{kind}-too-short",
                f"The pieces of {kind} {code} make {{owned_mm}}, the bend is {{wanted_mm}} long.",
                f"Use another {kind}, or enter the pieces that are missing.",
                {"owned_mm": total, "wanted_mm": wanted.bend_length_mm},
            )


def _condition(kind: str, code: str, condition: Condition, note: str) -> Iterable[Check]:
    """What is known of a tool's condition."""
    if not code or condition == "good":
        return
    said = f" {note}" if note else ""
    if condition == "unknown":
        words = f"The condition of {kind} {code} is not on record.{said}"
        yield Check("unknown", f"{kind}-condition", words, "Look it over before use.")
    else:
        words = f"The {kind} {code} is {condition}.{said}"
        do = "Do not use it." if condition == "damaged" else "Look it over, keep off the worn part."
        level: Level = "stop" if condition == "damaged" else "caution"
        yield Check(level, f"{kind}-condition", words, do)
