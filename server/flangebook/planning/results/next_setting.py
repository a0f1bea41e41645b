"""What to set next after a bend was measured, from the numbers saved with the card.

Only the saved step is used, its table of corrections above all: a die that was re-entered
since then does not change what an old card says.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError
from flangebook.bending.learning.at_the_press import BentPiece, NextSetting
from flangebook.bending.learning.at_the_press import next_setting as at_the_press
from flangebook.bending.prediction.correction import LARGE_ERROR_DEG, tilt_mm_per_m
from flangebook.planning.answers.answer import JsonDict, maybe, number, sentence_json
from flangebook.planning.answers.crown_answer import PLACES, crown_json, deg_to_set_by
from flangebook.planning.answers.no_setting import error_words, no_setting
from flangebook.planning.answers.setting_json import limits_of
from flangebook.planning.results.gauged_flange import next_gauge
from flangebook.planning.results.saved_table import SAME, Line

_NOTHING_TO_SET = "There is no angle to set at this step: the measurement is kept."

Step = Mapping[str, Any]
ResultJson = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class _Table:
    """The step's own table of corrections: angle to set [deg] by measured angle [deg], punch
    depth [mm] by angle to set, and that the other way round."""

    angle: Line
    depth: Line
    angle_by_depth: Line

    @classmethod
    def of(cls, step: Step) -> _Table | None:
        """The table, or None where the step has none that could be read between the rows."""
        rows = step.get("corrections") or ()
        if len({row["set_angle_deg"] for row in rows}) < 2:
            return None
        by_angle = [(row["set_angle_deg"], row["punch_depth_mm"]) for row in rows]
        if len({depth for _, depth in by_angle}) < 2:
            return None
        return cls(
            Line.of((row["measured_deg"], row["set_angle_deg"]) for row in rows),
            Line.of(by_angle),
            Line.of((depth, angle) for angle, depth in by_angle),
        )

    def closes_mm(self, set_angle_deg: float) -> float:
        """Punch depth [mm] that closes the loaded angle by a degree there."""
        return -self.depth.slope(set_angle_deg)


@dataclass(frozen=True, slots=True)
class Made:
    """A piece that was made before: its result, and its card's own setting then, if it had one."""

    result: ResultJson
    setting: Mapping[str, Any] | None = None


def measured_angle_deg(result: ResultJson) -> float:
    """The angle a result is about [deg]: the one given, or the mean of left, middle and right.

    >>> measured_angle_deg({"measured_deg": None, "left_deg": 90.0, "right_deg": 91.0})
    90.5
    """
    given = result.get("measured_deg")
    return (
        float(given)
        if given is not None
        else fmean(result[place] for place in PLACES if result.get(place) is not None)
    )


def next_setting(
    step: Step,
    result: ResultJson,
    bend_length_mm: float,
    setting: Mapping[str, Any] | None = None,
    earlier: Sequence[Made] = (),
) -> JsonDict:
    """The correction that a result leads to; never one that tools and press cannot reach.

    step: of the saved plan. result: with at least one angle, and what was set where it was not
    the setting in force. setting: the card's own for this step, where it is not the plan's.
    earlier: pieces of this step made before this one, in order; from two of which the setting
    was changed in between follows how the press answers.
    """
    wanted, mean = float(step["included_angle_deg"]), measured_angle_deg(result)
    measured = deg_to_set_by(result, mean)
    answer: JsonDict = {
        "wanted_deg": number(wanted),
        "measured_deg": number(mean, 2),
        "error_deg": number(mean - wanted, 2),
        "set_angle_deg": None,
        "punch_depth_mm": None,
        "tilt_mm_per_m": None,
        "crown": None,
        "flange": next_gauge(step, result, mean, setting),
        "limited_by": [],
        "to_check": [],
        "basis": "",
        "said": sentence_json(Sentence(_NOTHING_TO_SET)),
    }
    limits, table = limits_of(step), _Table.of(step)
    in_force = _in_force("set_angle_deg", setting, step)
    if limits is None or table is None or in_force is None or wanted <= 0.0:
        return answer
    base = set_angle_deg(step, result, setting)
    if base is None:
        return {**answer, **no_setting(wanted, measured, limits, ())}
    moved = _moved(step, result, bend_length_mm, setting, earlier, table, base)
    by = limits.beyond(moved.set_angle_deg, moved.punch_depth_mm)
    if by or not moved.by_table:
        return {**answer, **no_setting(wanted, measured, limits, by)}
    per_degree = _per_released_mm(table, base, measured)
    return {
        **answer,
        "set_angle_deg": number(moved.set_angle_deg),
        "punch_depth_mm": maybe(moved.punch_depth_mm),
        "tilt_mm_per_m": _tilt(result, bend_length_mm, per_degree),
        "crown": crown_json(result, bend_length_mm, per_degree),
        "basis": moved.basis,
        "said": sentence_json(Sentence(_words(wanted, measured, at_the_ends=measured != mean))),
    }


@dataclass(frozen=True, slots=True)
class _Moved:
    """Where a result moves the setting to. by_table: the step's own table tells all of it;
    otherwise the angle is a guess which only says what the tools would stand against."""

    set_angle_deg: float
    punch_depth_mm: float | None
    basis: str
    by_table: bool


def _moved(
    step: Step,
    result: ResultJson,
    bend_length_mm: float,
    setting: Mapping[str, Any] | None,
    earlier: Sequence[Made],
    table: _Table,
    base_deg: float,
) -> _Moved:
    wanted = float(step["included_angle_deg"])
    measured = deg_to_set_by(result, measured_angle_deg(result))
    # Both are readings of one curve, so an offset of the press or of the plan stays out.
    change = table.angle.between(wanted, measured)
    if change is None or _too_open(step, measured):
        guess = (wanted - measured) * (180.0 - base_deg) / (180.0 - wanted)
        return _Moved(base_deg + guess, None, "", by_table=False)
    angle = base_deg + change
    basis = "The measured error, by the step's own table of corrections."
    shown = _shown(step, result, bend_length_mm, setting, earlier, table)
    if shown is not None:
        angle = shown.set_angle_deg
        basis = f"The measured error, and how the press answered: {shown.answer.basis}."
    deeper = table.depth.between(base_deg, angle)
    depth = _depth_at(base_deg, result, setting, step, table.depth)
    known = depth is not None or _in_force("punch_depth_mm", setting, step) is None
    if deeper is None or not known:
        return _Moved(angle, None, "", by_table=False)
    return _Moved(angle, None if depth is None else depth + deeper, basis, by_table=True)


def _too_open(step: Step, measured_deg: float) -> bool:
    """Whether a first hit came out further open than it can: the rows there are for later hits."""
    first = step.get("first_hit")
    if first is None:
        return False
    most = max(
        float(step["included_angle_deg"]) + LARGE_ERROR_DEG, float(first["comes_out_deg_high"])
    )
    return measured_deg > most + SAME


def set_angle_deg(
    step: Step, result: ResultJson, setting: Mapping[str, Any] | None = None
) -> float | None:
    """The loaded angle a piece was set to [deg]: as its result says, else the one in force.

    Where only a depth was given and it is not the one in force, the angle that belongs to that
    depth by the step's own table; None where the table does not go so far.
    """
    if result.get("set_angle_deg") is not None:
        return float(result["set_angle_deg"])
    angle = _in_force("set_angle_deg", setting, step)
    depth = _in_force("punch_depth_mm", setting, step)
    given, table = result.get("punch_depth_mm"), _Table.of(step)
    if angle is None or depth is None or given is None or table is None:
        return angle
    planned = table.depth.at(angle)
    return None if planned is None else table.angle_by_depth.at(planned + float(given) - depth)


def _shown(
    step: Step,
    result: ResultJson,
    bend_length_mm: float,
    setting: Mapping[str, Any] | None,
    earlier: Sequence[Made],
    table: _Table,
) -> NextSetting | None:
    """What follows from all pieces together; None where they do not tell how the press answers."""
    pieces = [_piece(step, made, table) for made in (*earlier, Made(result, setting))]
    found = [piece for piece in pieces if piece is not None]
    if len(found) < 2 or pieces[-1] is None:
        return None
    try:
        shown = at_the_press(
            float(step["included_angle_deg"]), found, table.closes_mm, bend_length_mm
        )
    except InputError:
        return None
    return shown if shown.answer.origin == "your test bends" else None


def _piece(step: Step, made: Made, table: _Table) -> BentPiece | None:
    angle = set_angle_deg(step, made.result, made.setting)
    if angle is None:
        return None
    try:
        return BentPiece(
            angle,
            _depth_at(angle, made.result, made.setting, step, table.depth),
            # By the ends throughout: a shim laid between two pieces moves the middle alone.
            middle_deg=deg_to_set_by(made.result, measured_angle_deg(made.result)),
        )
    except InputError:
        return None


def _in_force(name: str, setting: Mapping[str, Any] | None, step: Step) -> float | None:
    for holder in (setting or {}, step):
        if holder.get(name) is not None:
            return float(holder[name])
    return None


def _depth_at(
    base_deg: float, result: ResultJson, setting: Mapping[str, Any] | None, step: Step, line: Line
) -> float | None:
    """The depth [mm] the piece was made with: as the result says, else the one in force, moved
    along the table when another angle had been set than the one it belongs to."""
    if result.get("punch_depth_mm") is not None:
        return float(result["punch_depth_mm"])
    depth = _in_force("punch_depth_mm", setting, step)
    belongs_to = _in_force("set_angle_deg", setting, step)
    if depth is None or belongs_to is None:
        return depth
    deeper = line.between(belongs_to, base_deg)
    return None if deeper is None else depth + deeper


def _per_released_mm(table: _Table, base_deg: float, measured_deg: float) -> float:
    """Punch depth [mm] that closes the released angle by a degree there."""
    return table.closes_mm(base_deg) * -table.angle.slope(measured_deg)


def _tilt(result: ResultJson, bend_length_mm: float, depth_per_degree_mm: float) -> float | None:
    left, right = result.get("left_deg"), result.get("right_deg")
    if left is None or right is None:
        return None
    return number(tilt_mm_per_m(left, right, bend_length_mm, depth_per_degree_mm), 3)


def _words(wanted_deg: float, measured_deg: float, *, at_the_ends: bool) -> str:
    words = error_words(wanted_deg, measured_deg)
    if words == error_words(0.0, 0.0):
        words = f"{words[:-1]}: leave the setting as it is."
    return f"At the ends {words[0].lower()}{words[1:]}" if at_the_ends else words
