"""The next setting after a measured piece, and what the ends say of the ram.

The error is carried to the loaded angle (part of every added degree springs back again) and
divided by how this press answers: the change of angle that came over the change that was asked
for, from every pair of pieces of which the setting was changed in between. A press that has
not shown that yet is taken to answer as asked, within 20 % nine times in ten (common practice,
no source). The depth moves by the model's slope between the two loaded angles, so an offset of
its zero stays out of it.

Each correction takes away all but the share by which slope and answer are wrong. One that is
assumed a tenth wrong leaves a tenth of the error after the first piece and less than a hundredth
after the second. The springback itself need not be known: the pieces show it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import fsum, isfinite, sqrt
from statistics import fmean

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.estimate import NINE_IN_TEN, Estimate
from flangebook.bending.prediction.correction import large_error, tilt_mm_per_m
from flangebook.bending.requirements import need

Slope = Callable[[float], float]
"""Punch depth [mm] that closes the loaded angle by a degree, at a loaded included angle [deg]."""

FIRST_ANSWER_HALF_WIDTH = 0.2
ANSWER_READING = 0.15 / 2.0  # standard deviation of an answer: a reading over a full step
FULL_STEP_DEG = 2.0  # a change this large is read well enough to count in full
LEAST_STEP_DEG = 0.3  # a smaller one is lost in the reading
LEAST_ANSWER, MOST_ANSWER = 0.5, 2.0


@dataclass(frozen=True, slots=True)
class BentPiece:
    """A piece that was bent: what was set, and the included angles that came.

    set_angle_deg: included angle under load that was set [deg]. punch_depth_mm: depth set [mm],
    None if the press is set by angle. left_deg, middle_deg, right_deg: measured after release
    [deg]; at least one.
    """

    set_angle_deg: float
    punch_depth_mm: float | None = None
    left_deg: float | None = None
    middle_deg: float | None = None
    right_deg: float | None = None

    @property
    def measured_deg(self) -> float:
        """The mean of what was measured [deg]."""
        return fmean(self._measured())

    def _measured(self) -> list[float]:
        given = (self.left_deg, self.middle_deg, self.right_deg)
        return [angle for angle in given if angle is not None]

    def __post_init__(self) -> None:
        need(set_angle_deg=self.set_angle_deg)
        if not self._measured():
            raise InputError("No angle was measured.", "measured_deg", "Measure at least one.")
        for angle in self._measured():
            need(measured_deg=angle)
        if self.punch_depth_mm is not None and not isfinite(self.punch_depth_mm):
            raise InputError(f"{self.punch_depth_mm} is no depth.", "punch_depth_mm", "Give mm.")


@dataclass(frozen=True, slots=True)
class NextSetting:
    """What to set for the next piece, and why.

    wanted_deg, measured_deg [deg]. set_angle_deg: under load, to set [deg]. punch_depth_mm: to
    set [mm], None if the piece had none. answer: how this press answers a change [-].
    tilt_mm_per_m: more depth at the right end [mm/m], None unless both ends were measured.
    crown_mm: more depth in the middle than at the ends [mm], None unless all three were.
    checks: findings.
    """

    wanted_deg: float
    measured_deg: float
    set_angle_deg: float
    punch_depth_mm: float | None
    answer: Estimate
    tilt_mm_per_m: float | None
    crown_mm: float | None
    checks: tuple[Check, ...]


def next_setting(
    wanted_deg: float,
    pieces: Sequence[BentPiece],
    slope: Slope,
    bend_length_mm: float,
    before: Iterable[Sequence[BentPiece]] = (),
    sharpest_deg: float | None = None,
) -> NextSetting:
    """What to set after the last of the pieces of this bend [deg, mm].

    Args:
        wanted_deg: wanted included angle [deg].
        pieces: those made of this bend in this set-up, in the order they were made.
        slope: depth per degree at a loaded angle, from the model.
        bend_length_mm: distance of left from right [mm].
        before: runs of pieces made on this press earlier, each of one bend in one set-up.
        sharpest_deg: loaded angle the tools allow [deg]; None does not ask.

    Raises:
        InputError: a number cannot be used, there is no piece, or the error is too far off to
            correct.
        RangeError: from the slope, where the sheet fills the V.

    Source: own method, as at the top of the module; common practice, no source, for its figures.

    >>> made = [BentPiece(set_angle_deg=88.0, left_deg=91.0)]
    >>> after = next_setting(90.0, made, lambda angle_deg: 0.08, 1000.0)
    >>> round(after.set_angle_deg, 2)
    86.97
    """
    need(wanted_deg=wanted_deg, bend_length_mm=bend_length_mm)
    if not pieces:
        raise InputError("No piece was measured.", "pieces", "Bend one and measure it.")
    last = pieces[-1]
    answer, odd = press_answer((*before, pieces))
    share = _loaded_per_released(last)
    error = last.measured_deg - wanted_deg
    angle = last.set_angle_deg - error * share / answer.nominal
    _need_reachable(wanted_deg, last.measured_deg, angle, sharpest_deg)
    depth = last.punch_depth_mm
    if depth is not None:
        depth += depth_between_mm(last.set_angle_deg, angle, slope)
    per_deg = slope(last.set_angle_deg) * share / answer.nominal
    doubt = large_error(wanted_deg, last.measured_deg)
    return NextSetting(
        wanted_deg, last.measured_deg, angle, depth, answer,
        _tilt(last, bend_length_mm, per_deg), _crown(last, per_deg),
        (doubt, *odd) if doubt else odd,
    )  # fmt: skip


def press_answer(runs: Iterable[Sequence[BentPiece]]) -> tuple[Estimate, tuple[Check, ...]]:
    """How a press answers [-]: change of angle that came over change that was asked for.

    A change that came out less than half or more than twice as asked is a mix-up of pieces or
    tools: it is left out, and a finding says so.

    Args:
        runs: pieces in the order they were made, each run of one bend in one set-up.

    >>> press_answer([])[0].nominal
    1.0
    """
    usable: list[tuple[float, float]] = []
    odd: list[Check] = []
    for one, other in (pair for run in runs for pair in pairwise(run)):
        asked = (other.set_angle_deg - one.set_angle_deg) / _loaded_per_released(one)
        came = other.measured_deg - one.measured_deg
        if abs(asked) < LEAST_STEP_DEG:
            continue
        if LEAST_ANSWER <= came / asked <= MOST_ANSWER:
            usable.append((came / asked, min(1.0, (asked / FULL_STEP_DEG) ** 2)))
        else:
            odd.append(_odd_answer(asked, came))
    return _answer(usable), tuple(odd)


def _answer(usable: Sequence[tuple[float, float]]) -> Estimate:
    half = FIRST_ANSWER_HALF_WIDTH
    if not usable:
        return Estimate(1.0 - half, 1.0, 1.0 + half, "handbook", "common practice, no source")
    # Normal readings beside a normal expectation, each by its own precision.
    before, each = (NINE_IN_TEN / half) ** 2, ANSWER_READING**-2
    known = before + each * fsum(weight for _, weight in usable)
    mean = (before + each * fsum(weight * came for came, weight in usable)) / known
    changes = "1 change" if len(usable) == 1 else f"{len(usable)} changes"
    half = min(NINE_IN_TEN * sqrt(1.0 / known), mean)
    basis = f"{changes} of setting on this press"
    return Estimate(mean - half, mean, mean + half, "your test bends", basis)


def _odd_answer(asked_deg: float, came_deg: float) -> Check:
    return Check(
        "caution",
        "press-answer-odd",
        "The setting was changed to turn the bend by {asked_deg}, and it turned by {came_deg}. "
        "That pair of pieces is left out.",
        "Check that both pieces are of the same bend, sheet and tools, and measure again.",
        {"asked_deg": asked_deg, "came_deg": came_deg},
    )


def depth_between_mm(from_deg: float, to_deg: float, slope: Slope) -> float:
    """Change of depth [mm] between two loaded angles: the slope, added up (Simpson's rule).

    Args:
        from_deg: loaded included angle set before [deg].
        to_deg: loaded included angle to set [deg].
        slope: depth per degree at a loaded angle.

    Source: Simpson's rule (from memory).

    >>> round(depth_between_mm(90.0, 88.0, lambda angle: 0.08), 9)
    0.16
    """
    middle = 0.5 * (from_deg + to_deg)
    return (from_deg - to_deg) / 6.0 * (slope(from_deg) + 4.0 * slope(middle) + slope(to_deg))


def _loaded_per_released(piece: BentPiece) -> float:
    """Degrees to add under load for a degree after release, as this piece shows it."""
    return (180.0 - piece.set_angle_deg) / (180.0 - piece.measured_deg)


def _need_reachable(
    wanted_deg: float, measured_deg: float, angle: float, sharpest_deg: float | None
) -> None:
    if not 0.0 < angle < 180.0:
        raise InputError(
            f"{measured_deg:g} degrees is too far from the wanted {wanted_deg:g} to correct.",
            "measured_deg",
            "Check tools, thickness and which angle was measured, then bend a test piece.",
        )
    if sharpest_deg is not None and angle < sharpest_deg:
        raise InputError(
            f"To come out at {wanted_deg:g} degrees the bend would have to be pressed further "
            f"than the tools go: they end at {sharpest_deg:g}.",
            "measured_deg",
            "Use a sharper punch and die, or a narrower V, which springs back less.",
        )


def _tilt(piece: BentPiece, bend_length_mm: float, depth_per_degree_mm: float) -> float | None:
    if piece.left_deg is None or piece.right_deg is None:
        return None
    return tilt_mm_per_m(piece.left_deg, piece.right_deg, bend_length_mm, depth_per_degree_mm)


def _crown(piece: BentPiece, depth_per_degree_mm: float) -> float | None:
    if piece.left_deg is None or piece.middle_deg is None or piece.right_deg is None:
        return None
    ends = 0.5 * (piece.left_deg + piece.right_deg)
    return (piece.middle_deg - ends) * depth_per_degree_mm
