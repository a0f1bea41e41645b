"""What a shop's test bends and first pieces make of a predicted bend.

Planning asks :meth:`Evidence.taught` for every bend it predicts. What a result teaches is worked
out once and kept, all of it is solved together once, and every bend is kept, until the evidence
changes and a new ``Evidence`` is made.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from flangebook.bending.checks import Check
from flangebook.bending.learning.learned import Learning, Taught, put_in, teach
from flangebook.bending.learning.lessons import Lesson, beyond_metal, lessons
from flangebook.bending.learning.nearness import nearness_of
from flangebook.bending.learning.result import Result, SetUp
from flangebook.bending.part.metals import Metal
from flangebook.bending.prediction.air_bend import AirBend, BendCase
from flangebook.bending.tools.tooling import Die, Punch, SetBy

MOST_KEPT = 4096
NEAR = 0.2
"""A result that counts less at a bend says nothing of it here: its own doubt is most of what it
would bring. Another lot of the same sheet in the same V counts 0.25."""
SAME_V_MM = 0.005
"""V openings within this are the same, whatever rounding did to a saved one."""
Said = tuple[tuple[Lesson, ...], tuple[Check, ...]]
Lessons = dict[str, Said]
"""What each result teaches, by its id; depends on the metal's figures, on how the press is set and
on nothing else."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """The evidence there is of one metal, and what other metals say of the press.

    results: those not marked wrong; of every lot. lot: of the sheet to be bent, "" where it is not
    known. calculated: ids of results whose depth was calculated with the angle that was set, not
    read: it says nothing by itself. of_others: lessons of other metals that tell of the press or
    its gauge. set_by: how the press is set. press, gauge: name the settings of its depth's and
    its gauge's zero that are in force. known: what the results teach, as far as it was worked out;
    may be shared.
    """

    metal: Metal
    results: tuple[Result, ...]
    lot: str = ""
    calculated: frozenset[str] = frozenset()
    of_others: tuple[Lesson, ...] = ()
    set_by: SetBy | None = None
    press: str = ""
    gauge: str = ""
    known: Lessons = field(default_factory=dict)
    _learned: dict[tuple[BendCase, str], Learning] = field(default_factory=dict)
    _together: list[Taught] = field(default_factory=list)

    def of_lot(self, lot: str) -> Evidence:
        """The same for sheet of a lot."""
        return self if lot == self.lot else replace(self, lot=lot, _learned={})

    def without(self, result_id: str) -> Evidence:
        """The same without one result."""
        return self._of(tuple(result for result in self.results if result.id != result_id))

    def with_one(self, result: Result, calculated: bool) -> Evidence:
        """The same with one result more. calculated: its depth is no reading."""
        found = self._of((*self.without(result.id).results, result))
        ids = self.calculated | {result.id} if calculated else self.calculated
        return replace(found, calculated=ids)

    def _of(self, results: tuple[Result, ...]) -> Evidence:
        return replace(self, results=results, _learned={}, _together=[])

    @property
    def together(self) -> Taught:
        """What all results teach, solved once."""
        if not self._together:
            self._together.append(teach(self.results, self.said_by, self.of_others))
        return self._together[0]

    def set_up(self, case: BendCase) -> SetUp:
        """A bend of this lot that is to be made on the press as it is set now."""
        return SetUp(case, None, self.lot, self.press, self.gauge)

    def taught(self, bend: AirBend, set_up: SetUp) -> AirBend:
        """The bend with what the results taught put in.

        bend: as predicted for the set-up without them.
        """
        return self.learning(bend, set_up).bend

    def learning(self, bend: AirBend, set_up: SetUp) -> Learning:
        """What the results make of the bend, with the reasons."""
        key = set_up.case, set_up.lot
        found = self._learned.get(key)
        if found is None:
            now = replace(set_up, press=self.press, gauge=self.gauge)
            found = put_in(bend, now, self.together)
            if len(self._learned) >= MOST_KEPT:
                self._learned.clear()
            self._learned[key] = found
        return found

    def tried(self, set_up: SetUp) -> bool:
        """Whether a piece that counts was measured near this bend in a V of this opening, on the
        press as it is set now: only then is a setting more than a prediction."""
        v_mm = set_up.case.die.v_opening_mm
        return any(
            result.set_up.press == self.press
            and abs(result.set_up.case.die.v_opening_mm - v_mm) <= SAME_V_MM
            and nearness_of(result.set_up, set_up) >= NEAR
            and result.id not in self.together.asked
            and any(lesson.figure == "springback" for lesson in self.said_by(result)[0])
            for result in self.results
        )

    def said_by(self, result: Result) -> Said:
        """What a result teaches, and what is odd about it by itself."""
        key = f"{result.id} confirmed" if result.confirmed else result.id
        said = self.known.get(key)
        if said is None:
            read = result
            if result.id in self.calculated:
                read = replace(result, punch_depth_mm=None)
            said = self.known[key] = lessons(read, self.set_by)
        return said

    def question_about(self, result: Result) -> Check | None:
        """What to ask about a result that does not count until somebody confirms it."""
        if result.id not in self.together.asked:
            return None
        said, _ = self.said_by(result)
        return next((beyond_metal(x) for x in said if x.figure == "springback"), None)


def odd_ids(learning: Learning) -> frozenset[str]:
    """Ids of the results that stand out."""
    return frozenset(
        one.lesson.result_id
        for belief in learning.beliefs
        for one in belief.counted
        if one.odd is not None
    )


def tools_json(die: Die, punch: Punch) -> dict[str, Any]:
    """Tools as they are kept beside what was measured: with the sizes they have now."""
    return {
        "die": {
            "code": die.code,
            "name": die.name,
            "v_opening_mm": die.v_opening_mm,
            "angle_deg": die.angle_deg,
            "shoulder_radius_mm": die.shoulder_radius_mm,
            "height_mm": die.height_mm,
            "width_mm": die.width_mm,
        },
        "punch": {
            "code": punch.code,
            "name": punch.name,
            "tip_radius_mm": punch.tip_radius_mm,
            "angle_deg": punch.angle_deg,
        },
    }


def result_from(
    body: Mapping[str, Any], metal: Metal, label: str, confirmed: bool = False
) -> Result:
    """A result from its evidence as kept.

    metal: of the sheet, as the shop has it now. body: the set-up and what was measured, by the
    names that :func:`tools_json` and the results' own fields have. label: what to call it.
    confirmed: it was measured right.
    """
    return Result(
        body["id"],
        _set_up(body, metal),
        body["measured_deg"],
        loaded_deg=body.get("loaded_deg"),
        set_angle_deg=body.get("set_angle_deg"),
        punch_depth_mm=body.get("punch_depth_mm"),
        thickness_mm=body.get("thickness_mm"),
        radius_mm=body.get("radius_mm"),
        flat_length_mm=body.get("flat_length_mm"),
        flange_left_mm=body.get("flange_left_mm"),
        flange_right_mm=body.get("flange_right_mm"),
        gauged_deduction_mm=body.get("gauged_deduction_mm"),
        confirmed=confirmed,
        label=label,
    )


def _set_up(body: Mapping[str, Any], metal: Metal) -> SetUp:
    die, punch = body["die"], body["punch"]
    case = BendCase(
        metal,
        body["ordered_mm"],
        body["bend_length_mm"],
        body["included_angle_deg"],
        Die(
            die["code"], die["name"], die["v_opening_mm"], die["angle_deg"],
            die["shoulder_radius_mm"], die["height_mm"], die["width_mm"], None, (),
        ),
        punch["tip_radius_mm"],
        body["dimension"],
    )  # fmt: skip
    return SetUp(
        case, punch["angle_deg"], body.get("lot") or "",
        body.get("press_zero") or "", body.get("gauge_zero") or "",
    )  # fmt: skip
