"""What evidence changes on a card that was planned before: the same steps in the same tools.

Quick, so that many cards can be looked through: it does not choose tools anew. A whole fresh
plan of one card is what ``differences`` is for.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import fsum
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.bending.prediction.first_hit import FirstHit, first_hit
from flangebook.bending.tools.setting_limits import setting_limits
from flangebook.bending.tools.tooling import Crib, Die, Punch
from flangebook.planning.answers.setting_json import within
from flangebook.planning.results.evidence import SAME_V_MM, Evidence
from flangebook.planning.tools.fit import Equipment

BLANK_DRIFT_MM = 0.02
MOST_CHANGES = 12
_SETTINGS = ("set_angle_deg", "punch_depth_mm")
# Figure, words, unit, how far it may drift: as a fresh plan is held against a saved one.
_WATCHED = (
    ("set_angle_deg", "angle to set", "deg", 0.05),
    ("punch_depth_mm", "punch depth", "mm", 0.01),
    ("inside_radius_mm", "inside radius", "mm", 0.05),
)


@dataclass(frozen=True, slots=True)
class _Two:
    """A bend with the one evidence and with the other, and whether its tools reach either."""

    old: AirBend
    new: AirBend
    old_reached: bool
    new_reached: bool
    old_first: FirstHit | None = None
    new_first: FirstHit | None = None

    def figures(self, name: str) -> tuple[float, float]:
        """What a plan shows of a figure with the one evidence and with the other."""
        return _shown(self.old, self.old_first, name), _shown(self.new, self.new_first, name)


def _shown(bend: AirBend, first: FirstHit | None, name: str) -> float:
    if first is not None and name in _SETTINGS:
        return float(getattr(first, name))
    return float(getattr(bend, name).nominal)


def changes(
    plan: Mapping[str, Any], shop: Equipment, before: Evidence, after: Evidence
) -> list[Sentence]:
    """What differs between a plan made with one evidence and with the other.

    plan: as saved. shop: its press and tools. before, after: of the part's metal.
    """
    two = {step["number"]: _two(plan["part"], step, shop, before, after) for step in plan["steps"]}
    found = [
        words
        for step in plan["steps"]
        for words in _step(step, two[step["number"]])
    ]  # fmt: skip
    found += _blank(plan, two)
    return found[:MOST_CHANGES]


def _two(
    part: Mapping[str, Any],
    step: Mapping[str, Any],
    shop: Equipment,
    before: Evidence,
    after: Evidence,
) -> _Two | None:
    """The step's bend with either evidence; None where it is none or has other tools now."""
    tools = _tools(step, shop.crib)
    if tools is None or step["hits"] is not None:
        return None
    die, punch = tools
    try:
        case = BendCase(
            after.metal, part["thickness_mm"], part["bend_length_mm"], step["included_angle_deg"],
            die, punch.tip_radius_mm, part["dimension"],
        )  # fmt: skip
        bend, set_up = air_bend(case), after.set_up(case)
        taught = before.taught(bend, set_up), after.taught(bend, set_up)
        ends = setting_limits(die, punch, case.thickness_mm, taught[1].inside_radius_mm.nominal)
        reach = [ends.less_press_error(one.press_short_deg, one.press_short_mm) for one in taught]
        led = step["operation"] == "bend"
        doubt = shop.press.angle_doubt_deg if shop.press else None
        old, new = (
            first_hit(one, case, limits, doubt) if led and not evidence.tried(set_up) else None
            for one, evidence, limits in zip(taught, (before, after), reach, strict=True)
        )
        return _Two(*taught, within(taught[0], reach[0]), within(taught[1], reach[1]), old, new)
    except InputError:
        return None


def _tools(step: Mapping[str, Any], crib: Crib) -> tuple[Die, Punch] | None:
    die = next((d for d in crib.dies if d.code == step["die"]), None)
    punch = next((p for p in crib.punches if p.code == step["punch"]), None)
    if die is None or punch is None or abs(die.v_opening_mm - step["v_opening_mm"]) > SAME_V_MM:
        return None
    return die, punch


def _step(step: Mapping[str, Any], two: _Two | None) -> Iterator[Sentence]:
    if two is None:
        return
    if two.old_reached and not two.new_reached:
        yield Sentence(f"step {step['number']}: its tools no longer reach the setting")
    for name, words, unit, drift in _WATCHED:
        if name in _SETTINGS and not (two.old_reached and two.new_reached):
            continue
        old, new = two.figures(name)
        if abs(new - old) > drift:
            yield Sentence(
                f"step {step['number']}: {words} {{old_{unit}}} to {{new_{unit}}}",
                {f"old_{unit}": old, f"new_{unit}": new},
            )


def _blank(plan: Mapping[str, Any], two: Mapping[int, _Two | None]) -> Sequence[Sentence]:
    """The blank's length, which loses what every plain bend deducts."""
    plain = {s["number"] for s in plan["steps"] if s["operation"] == "bend"}
    longer = fsum(
        pair.old.bend_deduction_mm.nominal - pair.new.bend_deduction_mm.nominal
        for number, pair in two.items()
        if pair is not None and number in plain
    )
    if abs(longer) <= BLANK_DRIFT_MM:
        return ()
    said = f"blank length {'longer' if longer > 0.0 else 'shorter'} by {{off_mm}}"
    return (Sentence(said, {"off_mm": abs(longer)}),)
