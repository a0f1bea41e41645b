"""One figure: what was expected, what the trials say, the band that follows, the odd ones out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, sqrt

from flangebook.bending.checks import Check
from flangebook.bending.learning.conjugate import (
    NINE_IN_TEN,
    NormalInverseGamma,
    belief_of_band,
)
from flangebook.bending.learning.lessons import FigureName, Lesson
from flangebook.bending.learning.nearness import (
    HERE,
    LEAST_WEIGHT,
    nearness_of,
    place_of,
    share_of_one,
)
from flangebook.bending.learning.readings import Scatter
from flangebook.bending.learning.student import quantile
from flangebook.bending.learning.trial import SetUp

ODD_ONE_IN = 100.0  # a trial is called odd when one in so many lies as far out
CONTRADICTION = 3.0  # spread over the usual scatter; common practice, no source
READING_BAND = 1.645  # nine in ten of a normal reading, in its standard deviations
_UNIT = {"springback": "deg", "inside radius": "mm", "deduction": "mm", "punch depth": "mm"}


@dataclass(frozen=True, slots=True)
class Counted:
    """A lesson with what it counts.

    nearness: what it would count alone [-]. weight: what it counts beside the others of its
    place, its reading compared with one made here [-]. usual: the band, in the figure's own
    unit at the trial, that the other trials (or the expectation alone) would let it fall in.
    odd: the finding, if it does not by far.
    """

    lesson: Lesson
    nearness: float
    weight: float
    usual: tuple[float, float]
    odd: Check | None


@dataclass(frozen=True, slots=True)
class Belief:
    """What is believed of one figure after the trials, as a departure from the expected.

    low, nominal, high: the band of the next bend's departure. half_before: half the expected
    band, likewise. counted: every lesson that counts, the nearest first.
    """

    figure: FigureName
    low: float
    nominal: float
    high: float
    half_before: float
    counted: tuple[Counted, ...]
    together: Check | None

    @property
    def basis(self) -> str:
        """How many trials it rests on, in words."""
        return basis_words(
            sum(c.nearness >= HERE for c in self.counted),
            sum(c.nearness < HERE for c in self.counted),
        )

    @property
    def checks(self) -> tuple[Check, ...]:
        """Its findings: what the trials say as a whole, then the odd ones."""
        odd = tuple(c.odd for c in self.counted if c.odd is not None)
        return (self.together, *odd) if self.together else odd


def basis_words(here: int, elsewhere: int) -> str:
    """How many trials a figure rests on.

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
    figure: FigureName, half_width: float, scatter: Scatter, said: Sequence[Lesson], here: SetUp
) -> Belief | None:
    """What the lessons make of a figure, or None if none of them counts here.

    Args:
        figure: which figure.
        half_width: half the expected band, as a departure.
        scatter: of a reading made here and of bends of one sheet, as departures.
        said: all lessons; those of other figures and of far-away set-ups are passed over.
        here: the bend that is to be made.

    Raises:
        InputError: a number cannot be used.
    """
    reading = scatter.reading
    weighed = _weighed([x for x in said if x.figure == figure], reading, here)
    if not weighed:
        return None
    # An expectation that is surer than a reading is no reason to call every reading odd.
    half_before = max(half_width, READING_BAND * reading)
    before = belief_of_band(0.0, half_before, scatter.bends)
    after = before.after([(lesson.departure, weight) for lesson, _, weight in weighed])
    half = max(after.half_width, min(half_before, READING_BAND * reading))
    sums = _Sums.of(weighed)
    counted = tuple(
        _counted(lesson, near, weight, sums.without(lesson.departure, weight).taken_into(before),
                 sums.trials > 1)
        for lesson, near, weight in weighed
    )  # fmt: skip
    return Belief(
        figure, after.mean - half, after.mean, after.mean + half, half_before, counted,
        _together(figure, half_before, after.mean, sums, scatter.bends),
    )  # fmt: skip


def _weighed(
    said: Sequence[Lesson], reading: float, here: SetUp
) -> list[tuple[Lesson, float, float]]:
    near = [(lesson, nearness_of(lesson.set_up, here)) for lesson in said]
    near = [(lesson, weight) for lesson, weight in near if weight >= LEAST_WEIGHT]
    together = Counter(place_of(lesson.set_up) for lesson, _ in near)
    weighed = [
        (
            lesson,
            weight,
            share_of_one(weight, together[place_of(lesson.set_up)])
            * min(1.0, (reading / lesson.reading) ** 2),
        )
        for lesson, weight in near
    ]
    return sorted(weighed, key=lambda one: (-one[1], one[0].label, one[0].trial_id))


@dataclass(frozen=True, slots=True)
class _Sums:
    trials: int
    n: float
    mean: float
    scatter: float

    @classmethod
    def of(cls, weighed: Sequence[tuple[Lesson, float, float]]) -> _Sums:
        n = fsum(weight for *_, weight in weighed)
        mean = fsum(weight * lesson.departure for lesson, _, weight in weighed) / n
        scatter = fsum(weight * (x.departure - mean) ** 2 for x, _, weight in weighed)
        return cls(len(weighed), n, mean, scatter)

    def without(self, value: float, weight: float) -> _Sums:
        """The sums of all the others, so that each can be held against the rest in one step."""
        n = self.n - weight
        if self.trials == 1 or n <= 1e-9:
            return _Sums(0, 0.0, 0.0, 0.0)
        mean = self.mean - weight * (value - self.mean) / n
        scatter = self.scatter - weight * self.n / n * (value - self.mean) ** 2
        return _Sums(self.trials - 1, n, mean, max(scatter, 0.0))

    def taken_into(self, before: NormalInverseGamma) -> NormalInverseGamma:
        return before.after_sums(self.n, self.mean, self.scatter)


def _counted(
    lesson: Lesson, near: float, weight: float, others: NormalInverseGamma, has_others: bool
) -> Counted:
    # A trial that counts little is expected to lie further out: its variance is that over w.
    scale = sqrt(others.beta / others.alpha * (1.0 / weight + 1.0 / others.kappa))
    # To a tenth, so that hundreds of trials that weigh nearly alike share what is known of t.
    freedom = max(round(others.degrees_of_freedom, 1), 1.0)
    reach = scale * quantile(NINE_IN_TEN, freedom)
    far = scale * quantile(1.0 - 0.5 / ODD_ONE_IN, freedom)
    low, high = sorted((lesson.at(others.mean - reach), lesson.at(others.mean + reach)))
    is_odd = abs(lesson.departure - others.mean) > far
    return Counted(lesson, near, weight, (low, high),
                   _odd(lesson, low, high, has_others) if is_odd else None)  # fmt: skip


def _odd(lesson: Lesson, low: float, high: float, has_others: bool) -> Check:
    unit = _UNIT[lesson.figure]
    whose = "the other trials lead to expect" if has_others else "what is published leads to expect"
    return Check(
        "caution",
        "trial-unlike-the-others" if has_others else "trial-unlike-expected",
        f"Trial {lesson.label}: {lesson.figure} {{measured_{unit}}}, where {whose} "
        f"{{low_{unit}}} to {{high_{unit}}}.",
        "It counts, and makes the band wider. Look for what was different: sheet, lot, tools, "
        "zero, reading. If it was wrong, mark it wrong and the figures go back.",
        {f"measured_{unit}": lesson.measured, f"low_{unit}": low, f"high_{unit}": high},
    )


def _together(
    figure: FigureName, half_before: float, mean: float, sums: _Sums, usual: float
) -> Check | None:
    """What the trials say as a whole: that they contradict each other, or the expectation."""
    if sums.trials < 2:  # one alone has its own finding
        return None
    spread = sqrt(sums.scatter / sums.n * sums.trials / (sums.trials - 1))
    numbers = {"trials": float(sums.trials)}
    if spread > CONTRADICTION * usual:
        return Check(
            "caution",
            "trials-contradict",
            f"The test bends do not agree on the {figure}: {{trials}} of them spread {{times}} "
            "times as far as bends of one sheet do.",
            "Look for what differs between them: lot, thickness, tools, zero, readings. The band "
            "is as wide as they are apart.",
            numbers | {"times": spread / usual},
        )
    if abs(mean) <= half_before:
        return None
    return Check(
        "caution",
        "trials-unlike-expected",
        f"{{trials}} test bends agree on the {figure}, and it lies outside what is published: "
        "{times} times half the band from its middle.",
        "They count. Check the metal, the tools' sizes and the press's zero on the card.",
        numbers | {"times": abs(mean) / half_before},
    )
