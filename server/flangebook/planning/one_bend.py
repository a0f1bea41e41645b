"""One bend: which die and punch, how it loads them, what comes out, and every other choice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending.checks import Check, Sentence, worst
from flangebook.bending.errors import InputError
from flangebook.bending.requirements import need_asked
from flangebook.bending.tools.tooling import Crib, Die, Punch
from flangebook.planning.answers.answer import (
    JsonDict,
    always_said,
    checks_json,
    gauge_text,
    number,
    tools_reason_json,
)
from flangebook.planning.answers.bend_json import (
    bend_sources,
    handbook_json,
    opinions,
    options_json,
    predicted,
    rating_json,
)
from flangebook.planning.answers.setting_json import limits_json, within
from flangebook.planning.answers.stroke import stroke_json
from flangebook.planning.steps.drawing import drawing_json, drawn, not_drawn, simple_angle
from flangebook.planning.tools.candidates import Candidates, Options
from flangebook.planning.tools.fit import Equipment, Fit, Wanted, fit, said_by_both, said_by_results
from flangebook.planning.tools.named_tools import find_die, find_punch
from flangebook.planning.tools.press_fit import press_checks
from flangebook.planning.tools.stand_ins import assumed_checks, die_by_rule, punch_by_rule
from flangebook.planning.tools.unusual import Chosen, Kind, why_unusual

SAME_MM = 0.005
"""Two sizes closer than this are the same [mm]."""


@dataclass(frozen=True, slots=True)
class Named:
    """The tools asked for, by code or by size [mm]; None is free.

    Raises InputError for a size that is out of range.
    """

    die: str | None = None
    punch: str | None = None
    v_opening_mm: float | None = None
    punch_radius_mm: float | None = None

    def __post_init__(self) -> None:
        sizes = {"v_opening_mm": self.v_opening_mm, "punch_radius_mm": self.punch_radius_mm}
        need_asked(**{name: size for name, size in sizes.items() if size is not None})

    @property
    def fields(self) -> list[str]:
        """The names of those that were given."""
        return [f for f in ("die", "v_opening_mm", "punch", "punch_radius_mm") if getattr(self, f)]


def check_bend(wanted: Wanted, equipment: Equipment, named: Named) -> JsonDict:
    """Everything about one bend, in the shape of ``POST /api/v1/bend``.

    What is not named is chosen from the crib, and where the crib has nothing, counted with a
    plain tool by rule.

    Raises:
        InputError: a size contradicts the tool named with it, or the bend cannot be.
        MissingToolError: the crib has no tool of that code.
    """
    return _answer(*_selected(wanted, equipment, named), equipment, named)


def check_stroke(wanted: Wanted, equipment: Equipment, named: Named) -> JsonDict:
    """The same bend over its stroke, in the shape of ``POST /api/v1/stroke``.

    Raises:
        InputError, MissingToolError: as :func:`check_bend`.
    """
    return stroke_json(_selected(wanted, equipment, named)[0], equipment.evidence)


def _selected(wanted: Wanted, equipment: Equipment, named: Named) -> tuple[Fit, Options]:
    """The fit to answer with, which is predicted, and every die's best one."""
    crib = equipment.crib
    punches = _punches(crib, wanted, named.punch, named.punch_radius_mm)
    die = _die(crib, named.die, named.v_opening_mm)
    options = Candidates.of(wanted, crib.dies, punches, equipment).options(crib.dies)
    chosen = _chosen(options, wanted, punches, equipment, die, named.v_opening_mm)
    if chosen.bend is None and not (named.die or named.punch):
        chosen = _by_rule(wanted, punches, equipment, named.v_opening_mm)
    if chosen.bend is None:
        raise _refusal(chosen, named.fields)
    return chosen, options


def _punches(
    crib: Crib, wanted: Wanted, code: str | None, tip_radius_mm: float | None
) -> tuple[Punch, ...]:
    """The punches to try: the one named, those of the tip asked for, all, or one by rule."""
    if code:
        named = find_punch(crib, code)
        if tip_radius_mm is not None and abs(named.tip_radius_mm - tip_radius_mm) > SAME_MM:
            raise InputError(
                f"The punch {code} has a tip of {{tip_mm}}.",
                "punch_radius_mm",
                "Leave the radius out, or name no punch.",
                {"tip_mm": named.tip_radius_mm},
            )
        return (named,)
    of_tip = tuple(
        p
        for p in crib.punches
        if tip_radius_mm is None or abs(p.tip_radius_mm - tip_radius_mm) <= SAME_MM
    )
    by_rule = punch_by_rule(wanted.thickness_mm, wanted.included_angle_deg, tip_radius_mm)
    return of_tip or (by_rule,)


def _die(crib: Crib, code: str | None, v_opening_mm: float | None) -> Die | None:
    if not code:
        return None
    named = find_die(crib, code)
    if v_opening_mm is not None and abs(named.v_opening_mm - v_opening_mm) > SAME_MM:
        raise InputError(
            f"The die {code} has a V of {{v_mm}}.",
            "v_opening_mm",
            "Leave the opening out, or name no die.",
            {"v_mm": named.v_opening_mm},
        )
    return named


def _chosen(
    options: Options,
    wanted: Wanted,
    punches: Sequence[Punch],
    equipment: Equipment,
    named_die: Die | None,
    v_opening_mm: float | None,
) -> Fit:
    """The fit to answer with: the die named, the best of the opening asked for, or the best."""
    fits = [one for _, one in options]
    if named_die is not None:
        return next(one for one in fits if one.die.code == named_die.code)
    if v_opening_mm is not None:
        fits = [one for one in fits if abs(one.die.v_opening_mm - v_opening_mm) <= SAME_MM]
    usable = [one for one in fits if one.bend is not None]
    return usable[0] if usable else _by_rule(wanted, punches, equipment, v_opening_mm)


def _by_rule(
    wanted: Wanted, punches: Sequence[Punch], equipment: Equipment, v_opening_mm: float | None
) -> Fit:
    """A plain die with the best of the punches, or a plain punch where that one is too blunt."""
    t, angle = wanted.thickness_mm, wanted.included_angle_deg
    die = die_by_rule(t, angle, v_opening_mm)
    candidates = Candidates.of(wanted, (die,), punches, equipment)
    pair = candidates.best()
    assert pair is not None
    one = candidates.fit(pair)
    if one.bend is None and one.punch.code:
        return fit(wanted, die, punch_by_rule(t, angle), equipment)
    return one


def _refusal(chosen: Fit, named: Sequence[str]) -> InputError:
    """Why nothing can be said of the bend, at the field that is to be changed."""
    why = chosen.stops[0]
    of_angle = chosen.refused_where == "included_angle_deg" or not named
    return InputError(why.words, "included_angle_deg" if of_angle else named[0], why.do)


def _answer(chosen: Fit, options: Options, equipment: Equipment, named: Named) -> JsonDict:
    bend = chosen.bend
    assert bend is not None
    wanted = chosen.wanted
    findings = (
        *chosen.checks,
        *(row.check() for row in chosen.ratings if row.level == "ok"),
        *assumed_checks(chosen.die, chosen.punch, equipment.press),
        *press_checks(chosen, equipment),
        *said_by_results(chosen, equipment),
        *(c for c in said_by_both(wanted, chosen.expected or bend) if c.level == "ok"),
        *_no_die(chosen, options),
    )
    drawing, why_not = _drawing(chosen, equipment)
    findings = (*findings, *why_not)
    return {
        "metal": wanted.metal.code,
        "thickness_mm": number(wanted.thickness_mm),
        "thickness_gauge": gauge_text(wanted.metal, wanted.thickness_mm),
        "bend_length_mm": number(wanted.bend_length_mm),
        "included_angle_deg": number(wanted.included_angle_deg),
        "die": chosen.die.code or None,
        "die_name": chosen.die.name if chosen.die.code else None,
        "punch": chosen.punch.code or None,
        "punch_name": chosen.punch.name if chosen.punch.code else None,
        "punch_radius_mm": number(chosen.punch.tip_radius_mm),
        **tools_reason_json(_reason(chosen, equipment, named)),
        "v_opening_mm": number(bend.v_opening_mm),
        **predicted(bend, wanted.bend_length_mm, chosen.limits, chosen.first_hit),
        "limits": limits_json(chosen.limits),
        "sources": bend_sources(bend),
        "handbook": handbook_json(chosen.expected or bend, wanted.bend_length_mm, chosen.limits),
        "opinions": opinions(wanted, bend),
        "ratings": [rating_json(row) for row in chosen.ratings],
        "options": options_json(chosen, options, named=named.die is not None),
        "drawing": drawing,
        "checks": [*checks_json(findings), *always_said()],
        "worst": worst(findings),
    }


def _reason(chosen: Fit, equipment: Equipment, named: Named) -> Sentence:
    """Why unusual tools were chosen, against all of the crib."""
    by_name: set[Kind] = set()
    if named.die or named.v_opening_mm:
        by_name.add("die")
    if named.punch or named.punch_radius_mm:
        by_name.add("punch")
    crib = equipment.crib
    candidates = Candidates.of(chosen.wanted, crib.dies, crib.punches, equipment)
    return why_unusual(Chosen(chosen, candidates, frozenset(by_name)))


def _drawing(chosen: Fit, equipment: Equipment) -> tuple[JsonDict | None, tuple[Check, ...]]:
    """A plain angle in the tools, or why it cannot be drawn; nothing where there is no setting,
    which a finding says already."""
    if not within(chosen.bend, chosen.limits):
        return None, ()
    strip, line = simple_angle(chosen)
    try:
        drawing = drawn(strip, line, "up", chosen, equipment, None, chosen.first_hit)
        return drawing_json(drawing, equipment), ()
    except InputError as error:
        return None, (not_drawn(error.what),)


def _no_die(chosen: Fit, options: Options) -> tuple[Check, ...]:
    """The finding that no die of the crib makes this bend as it stands."""
    if not options or not chosen.stops or any(not one.stops for _, one in options):
        return ()
    return (
        Check(
            "stop",
            "no-die",
            "No die of the crib makes this bend with the punches it has.",
            "See the reason beside each die: change the bend, or get the tool it names.",
        ),
    )
