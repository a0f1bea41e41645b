"""What to set next after a bend was measured, from the numbers saved with the card.

Only the saved step is used, its table of corrections above all: a die that was re-entered
since then does not change what an old card says.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Any

from flangebook.bending.checks import tidy
from flangebook.bending.correction import large_error, tilt_mm_per_m
from flangebook.planning.answer import JsonDict, maybe, number

AS_WANTED_DEG = 0.05
_ENDS = ("left_deg", "middle_deg", "right_deg")
_NOTHING_TO_SET = "There is no angle to set at this step: the measurement is kept."
_OUT_OF_REACH = "That is too far off to correct from: check the set-up before the next piece."

Step = Mapping[str, Any]
Trial = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class _Line:
    """Punch depth [mm] by loaded angle [deg], from the saved table; straight between its rows
    and on beyond its ends."""

    rows: tuple[tuple[float, float], ...]

    def depth_mm(self, set_angle_deg: float) -> float:
        """The depth [mm] for a loaded angle [deg]."""
        low, high = self._around(set_angle_deg)
        share = (set_angle_deg - low[0]) / (high[0] - low[0])
        return low[1] + share * (high[1] - low[1])

    def depth_per_deg_mm(self, set_angle_deg: float) -> float:
        """The depth [mm] that closes the angle by one degree there."""
        low, high = self._around(set_angle_deg)
        return (low[1] - high[1]) / (high[0] - low[0])

    def _around(self, angle: float) -> tuple[tuple[float, float], tuple[float, float]]:
        after = next((i for i, row in enumerate(self.rows) if row[0] > angle), len(self.rows))
        high = min(max(after, 1), len(self.rows) - 1)
        return self.rows[high - 1], self.rows[high]


def measured_angle_deg(trial: Trial) -> float:
    """The angle a trial is about [deg]: the one given, or the mean of left, middle and right.

    >>> measured_angle_deg({"measured_deg": None, "left_deg": 90.0, "right_deg": 91.0})
    90.5
    """
    given = trial.get("measured_deg")
    return (
        float(given)
        if given is not None
        else fmean(trial[end] for end in _ENDS if trial.get(end) is not None)
    )


def next_setting(
    step: Step, trial: Trial, bend_length_mm: float, setting: Mapping[str, Any] | None = None
) -> JsonDict:
    """The correction that a trial leads to.

    step: of the saved plan. trial: with at least one angle, and what was set where it was not
    the setting in force. setting: the card's own for this step, where it is not the plan's.
    """
    wanted, measured = float(step["included_angle_deg"]), measured_angle_deg(trial)
    base = _in_force("set_angle_deg", trial, setting, step)
    line = _line(step.get("corrections") or ())
    answer: JsonDict = {
        "wanted_deg": number(wanted),
        "measured_deg": number(measured, 2),
        "error_deg": number(measured - wanted, 2),
        "set_angle_deg": None,
        "punch_depth_mm": None,
        "tilt_mm_per_m": None,
        "basis": "",
        "words": _NOTHING_TO_SET,
    }
    if base is None or line is None or not 0.0 < base < 180.0 or wanted <= 0.0:
        return answer
    # The sheet opens by a share of what it was bent, so an error grows with the bend angle.
    angle = base - (measured - wanted) * (180.0 - base) / (180.0 - wanted)
    if not 0.0 < angle < 180.0:
        return {**answer, "words": _OUT_OF_REACH}
    depth, new_depth = _depth_at(base, trial, setting, step, line), None
    if depth is not None:
        new_depth = depth + line.depth_mm(angle) - line.depth_mm(base)
    return {
        **answer,
        "set_angle_deg": number(angle, 2),
        "punch_depth_mm": maybe(new_depth, 3),
        "tilt_mm_per_m": _tilt(trial, bend_length_mm, line.depth_per_deg_mm(base)),
        "basis": "The measured error, carried to the loaded angle in proportion to the bend.",
        "words": _words(wanted, measured, angle, new_depth),
    }


def _in_force(
    name: str, trial: Trial, setting: Mapping[str, Any] | None, step: Step
) -> float | None:
    for holder in (trial, setting or {}, step):
        if holder.get(name) is not None:
            return float(holder[name])
    return None


def _depth_at(
    set_angle_deg: float, trial: Trial, setting: Mapping[str, Any] | None, step: Step, line: _Line
) -> float | None:
    """The depth [mm] the piece was made with: as the trial says, else the one in force, moved
    along the table when another angle had been set than the one it belongs to."""
    if trial.get("punch_depth_mm") is not None:
        return float(trial["punch_depth_mm"])
    depth = _in_force("punch_depth_mm", {}, setting, step)
    belongs_to = _in_force("set_angle_deg", {}, setting, step)
    if depth is None or belongs_to is None:
        return depth
    return depth + line.depth_mm(set_angle_deg) - line.depth_mm(belongs_to)


def _line(rows: Sequence[Mapping[str, Any]]) -> _Line | None:
    pairs = sorted({row["set_angle_deg"]: row["punch_depth_mm"] for row in rows}.items())
    return _Line(tuple(pairs)) if len(pairs) > 1 else None


def _tilt(trial: Trial, bend_length_mm: float, depth_per_degree_mm: float) -> float | None:
    left, right = trial.get("left_deg"), trial.get("right_deg")
    if left is None or right is None:
        return None
    return number(tilt_mm_per_m(left, right, bend_length_mm, depth_per_degree_mm), 3)


def _words(wanted: float, measured: float, angle: float, depth_mm: float | None) -> str:
    error = measured - wanted
    if abs(error) < AS_WANTED_DEG:
        return "As wanted: leave the setting as it is."
    way = "open" if error > 0 else "closed"
    to_depth = f", punch depth {depth_mm:.2f} mm" if depth_mm is not None else ""
    said = f"{tidy(abs(error))}° too {way}. Set {angle:.1f}°{to_depth}."
    doubt = large_error(wanted, measured)
    return f"{said} {doubt.do}" if doubt else said
