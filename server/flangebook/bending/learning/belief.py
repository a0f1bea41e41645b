"""One figure: what was expected, what the results say, the band that follows, the odd ones out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, hypot, sqrt

from flangebook.bending.checks import Check
from flangebook.bending.estimate import NINE_IN_TEN
from flangebook.bending.learning.joint import GAUGE, Solved, Split
from flangebook.bending.learning.lessons import FigureName, Lesson
from flangebook.bending.learning.nearness import HERE, nearness_of
from flangebook.bending.learning.result import SetUp

ODD = 2.58  # standard deviations; one result in a hundred lies as far out
CONTRADICTION = 3.0  # spread over the usual scatter; common practice, no source
_UNIT = {"springback": "deg", "inside radius": "mm", "deduction": "mm", "punch depth": "mm"}


@dataclass(frozen=True, slots=True)
class Counted:
    """A lesson with what it counts.

    nearness: what it would count alone [-]. weight: the same, less what it lost by lying far
    from the others. error_mm: what is believed of the press's or the gauge's error in it. usual:
    the band, in the figure's own unit at the result, that the other results
    (or the expectation alone) would let it fall in. odd: the finding, if it does not by far.
    """

    lesson: Lesson
    nearness: float
    weight: float
    error_mm: float
    usual: tuple[float, float]
    odd: Check | None


@dataclass(frozen=True, slots=True)
class Belief:
    """What is believed of one figure after the results, as a departure from the expected.

    split: the departure, causes apart. share: how much of the expected band's doubt is left.
    scatter: what the next bend adds to it, wider where the results contradict each other.
    counted: every lesson of this metal, the nearest first. together: what they say as a whole.
    """

    figure: FigureName
    split: Split
    share: float
    scatter: float
    counted: tuple[Counted, ...]
    together: Check | None

    @property
    def basis(self) -> str:
        """How many results it rests on, in words."""
        if self.figure == "deduction":
            return pieces_words(*self.pieces)
        return basis_words(
            sum(c.nearness >= HERE for c in self.counted),
            sum(c.nearness < HERE for c in self.counted),
        )

    @property
    def pieces(self) -> tuple[int, int]:
        """Of a deduction: on how many gauged flanges of the metal it rests, and on how many
        pieces that were measured flat and bent."""
        flanges = sum(one.lesson.by_gauge for one in self.counted)
        return flanges, len(self.counted) - flanges

    @property
    def checks(self) -> tuple[Check, ...]:
        """Its findings: what the results say as a whole, then the odd ones."""
        odd = tuple(c.odd for c in self.counted if c.odd is not None)
        return (self.together, *odd) if self.together else odd

    def half(self, before: float) -> float:
        """What is left of half an expected band, the scatter of the next bend included.

        Args:
            before: the half band as expected, on the side that is asked for.
        """
        bends = NINE_IN_TEN * self.scatter
        return min(hypot(self.share * before, bends), max(before, bends))


def pieces_words(flanges: int, strips: int) -> str:
    """What a deduction rests on.

    >>> pieces_words(4, 1)
    '4 measured flanges and 1 strip of this metal'
    """
    counts = ((flanges, "measured flange"), (strips, "strip"))
    said = [f"{n} {what}{'s' if n > 1 else ''}" for n, what in counts if n]
    return f"{' and '.join(said)} of this metal"


def basis_words(here: int, elsewhere: int) -> str:
    """How many results a figure rests on.

    >>> basis_words(1, 0)
    '1 of your test bends'
    >>> basis_words(3, 2)
    '3 of your test bends, and 2 with other sheet, die or angle that count less'
    """
    near = f"{elsewhere} with other sheet, die or angle that count less"
    if not here:
        return f"{elsewhere} of your test bends with other sheet, die or angle, counting less"
    said = f"{here} of your test bends"
    return f"{said}, and {near}" if elsewhere else said


def believe(
    figure: FigureName,
    solved: Solved | None,
    here: SetUp,
    spread: float,
    per_mm: float,
    scatter: float,
) -> Belief | None:
    """What the results make of a figure of one bend, or None if none is of its metal.

    Args:
        figure: which figure.
        solved: all results that count, solved together.
        here: the bend that is to be made.
        spread: standard deviation of the metal's departure there.
        per_mm: what a millimetre of the press's error is worth there.
        scatter: standard deviation from bend to bend there.
    """
    if solved is None:
        return None
    metal = here.case.metal.code
    mine = [
        i
        for i, lesson in enumerate(solved.lessons)
        if lesson.figure == figure and lesson.set_up.case.metal.code == metal
    ]
    if not mine:
        return None
    split = solved.at(here, spread, per_mm)
    counted = [_counted(solved, i, nearness_of(solved.lessons[i].set_up, here), len(mine) > 1)
               for i in mine]  # fmt: skip
    counted.sort(key=lambda one: (-one.nearness, one.lesson.label, one.lesson.result_id))
    torn = _torn(solved, mine)
    return Belief(
        figure,
        split,
        split.metal_sd / spread if spread else 0.0,
        scatter * torn,
        tuple(counted),
        _together(figure, solved, mine),
    )


def _counted(solved: Solved, number: int, near: float, has_others: bool) -> Counted:
    lesson, (mean, sd) = solved.lessons[number], solved.others[number]
    low, high = sorted((lesson.at(mean - NINE_IN_TEN * sd), lesson.at(mean + NINE_IN_TEN * sd)))
    is_odd = abs(lesson.departure - mean) > ODD * sd
    weight = near * min(1.0, solved.weights[number])
    return Counted(lesson, near, weight, solved.errors_mm[number], (low, high),
                   _odd(lesson, low, high, has_others) if is_odd else None)  # fmt: skip


def _odd(lesson: Lesson, low: float, high: float, has_others: bool) -> Check:
    unit = _UNIT[lesson.figure]
    whose = (
        "the other results lead to expect" if has_others else "what is published leads to expect"
    )
    return Check(
        "caution",
        "trial-unlike-the-others" if has_others else "trial-unlike-expected",
        f"Result {lesson.label}: {lesson.figure} {{measured_{unit}}}, where {whose} "
        f"{{low_{unit}}} to {{high_{unit}}}.",
        "It counts less the further off it lies. Look for what was different: sheet, lot, tools, "
        "zero, reading. If it was wrong, mark it wrong.",
        {f"measured_{unit}": lesson.measured, f"low_{unit}": low, f"high_{unit}": high},
    )


def _torn(solved: Solved, mine: Sequence[int]) -> float:
    """How many times the usual scatter the results really show, at least once [-]: their weighted
    squares, to which one misreading adds little and two camps add much."""
    squares = fsum(solved.weights[i] * solved.residuals[i] ** 2 for i in mine)
    return max(1.0, sqrt(squares / len(mine)))


def _together(figure: FigureName, solved: Solved, mine: Sequence[int]) -> Check | None:
    """What the results say as a whole: that they contradict each other, or the expectation."""
    if len(mine) < 2:  # one alone has its own finding
        return None
    spread = sqrt(fsum(solved.residuals[i] ** 2 for i in mine) / (len(mine) - 1))
    numbers = {"trials": float(len(mine))}
    if spread > CONTRADICTION:
        return Check(
            "caution",
            "trials-contradict",
            f"The test bends do not agree on the {figure}: {{trials}} of them spread {{times}} "
            "times as far as bends of one sheet do.",
            "Look for what differs between them: lot, thickness, tools, zero, readings. Those far "
            "from the others hardly count.",
            numbers | {"times": spread},
        )
    far = [_off(solved, i) for i in mine]
    if min(far) <= 1.0:
        return None
    return Check(
        "caution",
        "trials-unlike-expected",
        f"{{trials}} test bends agree on the {figure}, and it lies outside what is published: "
        "{times} times half the band from its middle.",
        "They count. Check the metal, the tools' sizes and the press's zero on the card.",
        numbers | {"times": min(far)},
    )


def _off(solved: Solved, number: int) -> float:
    """A departure over half the expected band there, reading included [-]. What is the gauge's is
    said of the gauge, and is no departure."""
    lesson = solved.lessons[number]
    doubt = NINE_IN_TEN * hypot(lesson.spread, lesson.reading)
    of_gauge = lesson.per_mm * solved.errors_mm[number] if solved.machine is GAUGE else 0.0
    return abs(lesson.departure - of_gauge) / doubt
