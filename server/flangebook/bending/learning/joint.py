"""What all results together say of the metal and of the press, causes apart.

A result i, held against what was expected of its set-up, departs by

    y_i = u_i z_i + J_i (d + v_i) + e_i

    z_i  the metal's own departure, in standard deviations of its band: 0 +- 1
    u_i  what one of them amounts to in that set-up (of springback: degrees)
    d    how much less deep the punch goes than the press shows [mm]: 0 +- 0.12; of a deduction,
         how much too far back the gauge stands: 0 +- 0.2
    v_i  the same of that set-up alone [mm]: 0 +- 0.08; its tools' real radii and heights are
         never quite as entered, nor is the depth that goes with an angle there; no gauge has it
    J_i  what a millimetre is worth there [deg/mm]; 0 where the angle was measured under load
    e_i  reading and scatter from bend to bend

z of two set-ups of one metal agree by ``nearness.alike``: half is the metal's own, a quarter the
lot's, and a quarter falls off with V, thickness and angle. v agrees by that falling off, in every
metal. Other metals share d and v and nothing else; results of another press, or from before a
zero was set, share the metal and neither d nor v. All of it is linear and Gaussian, so what is
believed of any bend is one covariance solve (C. E. Rasmussen and C. K. I. Williams, Gaussian
Processes for Machine Learning, 2006, section 2.2, equations 2.23 and 2.24, from memory; the tests
hold it against the normal equations).

A misreading must not spoil the rest: e is Student t with 4 degrees of freedom, solved by weights
w = (nu + 1) / (nu + r^2 / sigma^2), again and again until they stay (K. L. Lange, R. J. A. Little
and J. M. G. Taylor, J. Am. Stat. Assoc. 84 (1989) 881-896, from memory).

d is the press's because it is in every metal and every V by J of that V. Results of one set-up
cannot tell it from the metal; other V's, other thicknesses or an angle under load can.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt
from typing import TYPE_CHECKING, Literal

import numpy as np

from flangebook.bending.learning.lessons import Lesson
from flangebook.bending.learning.nearness import alike, near_by, same
from flangebook.bending.learning.result import SetUp

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

# Before anything was measured; common practice, no source.
PRESS_SD_MM = 0.12  # zero and scale of the press
SET_UP_SD_MM = 0.08  # tools of one set-up
GAUGE_SD_MM = 0.2  # zero of the back gauge
STUDENT_NU = 4.0
MOST_ROUNDS = 100
SETTLED = 1e-7


@dataclass(frozen=True, slots=True)
class Machine:
    """What adds an error of its own to results. kind: which setting of a set-up names it.
    sd_mm, set_up_sd_mm: standard deviations of d and v before anything was measured."""

    kind: Literal["press", "gauge"]
    sd_mm: float
    set_up_sd_mm: float

    def name(self, set_up: SetUp) -> str:
        """Which of its kind, set how, a bend is made on."""
        return set_up.press if self.kind == "press" else set_up.gauge

    def together(self, there: Sequence[SetUp], here: Sequence[SetUp]) -> Array:
        """Covariance of d + v, each there with each here [mm2]."""
        agree = same([self.name(one) for one in there], [self.name(one) for one in here])
        found = agree * (self.sd_mm**2 + self.set_up_sd_mm**2 * near_by(there, here))
        return np.asarray(found, dtype=np.float64)


PRESS = Machine("press", PRESS_SD_MM, SET_UP_SD_MM)
GAUGE = Machine("gauge", GAUGE_SD_MM, 0.0)


@dataclass(frozen=True, slots=True)
class Split:
    """What is believed of one bend, causes apart.

    metal, metal_sd: its departure by the metal, in the figure's unit. press_mm, press_sd_mm: of
    d + v [mm]. together_sd: of metal + J (d + v), which is often far better known than either.
    """

    metal: float
    metal_sd: float
    press_mm: float
    press_sd_mm: float
    together_sd: float


@dataclass(frozen=True, slots=True)
class Solved:
    """The results, each with the weight it got.

    lessons: in the order of the arrays. weights: 1.25 for one that fits, towards 0 for one far
    off. residuals: what is left of each [sigma]. others: what the rest of the results would
    lead to expect of each, and its standard deviation with the reading's, in the figure's unit.
    errors_mm: what is believed of d + v of each. machine: whose error d is.
    """

    lessons: tuple[Lesson, ...]
    weights: tuple[float, ...]
    residuals: tuple[float, ...]
    others: tuple[tuple[float, float], ...]
    errors_mm: tuple[float, ...]
    machine: Machine
    _inverse: Array
    _answer: Array

    def telling(self, name: str) -> tuple[Lesson, ...]:
        """The results that tell of the machine of that name."""
        mine = (one for one in self.lessons if self.machine.name(one.set_up) == name)
        return tuple(one for one in mine if one.per_mm)

    def error(self, name: str) -> tuple[float, float]:
        """D of the machine of that name [mm], in every set-up, and its standard deviation."""
        mean, left = self._after(
            self._way_of(name)[None, :], np.array([[self.machine.sd_mm**2]])
        )  # fmt: skip
        return float(mean[0]), _root(left[0, 0])

    def at(self, here: SetUp, spread: float, per_mm: float) -> Split:
        """What is believed of a bend.

        Args:
            here: the bend.
            spread: u of its set-up.
            per_mm: J of its set-up [deg/mm].
        """
        mean, left = self._after(*self._ways(here, spread))
        both = left[0, 0] + 2.0 * per_mm * left[0, 1] + per_mm**2 * left[1, 1]
        sd, press_sd = _root(left[0, 0]), _root(left[1, 1])
        return Split(float(mean[0]), sd, float(mean[1]), press_sd, _root(both))

    def press_sd_after_mm(
        self, there: SetUp, spread: float, per_mm: float, reading: float
    ) -> float:
        """How well d [mm] would be known after one more result, set and not measured under load.

        Args:
            there: the strip's set-up.
            spread: u there.
            per_mm: J there [deg/mm].
            reading: standard deviation of the result.
        """
        ways, before = self._ways(there, spread)
        of_press = self.machine.sd_mm**2
        ways = np.vstack([ways, self._way_of(self.machine.name(there))])
        before = np.pad(before, ((0, 1), (0, 1)))
        before[1, 2] = before[2, 1] = before[2, 2] = of_press
        _, left = self._after(ways, before)
        result = np.array([1.0, per_mm, 0.0])
        told = float(left[2] @ result) ** 2 / float(result @ left @ result + reading**2)
        return _root(left[2, 2] - told)

    def _per_mm(self) -> Array:
        return np.array([lesson.per_mm for lesson in self.lessons])

    def _way_of(self, name: str) -> Array:
        """How d of the machine of that name goes with each result."""
        mine = [self.machine.name(lesson.set_up) == name for lesson in self.lessons]
        return np.asarray(self.machine.sd_mm**2 * self._per_mm() * mine, dtype=np.float64)

    def _ways(self, here: SetUp, spread: float) -> tuple[Array, Array]:
        """How the metal's departure and the press's error of a bend go with each result, and
        their own variances, before anything was measured."""
        places = [lesson.set_up for lesson in self.lessons]
        u = np.array([lesson.spread for lesson in self.lessons])
        metal = spread * u * alike([here], places)[0]
        error = self.machine.together([here], places)[0] * self._per_mm()
        own = self.machine.sd_mm**2 + self.machine.set_up_sd_mm**2
        return np.array([metal, error]), np.diag([spread**2, own])

    def _after(self, ways: Array, before: Array) -> tuple[Array, Array]:
        """Means and covariances after the results."""
        return ways @ self._answer, before - ways @ self._inverse @ ways.T


def solve(lessons: Sequence[Lesson], machine: Machine = PRESS) -> Solved | None:
    """All results of one kind solved together; None where there is none.

    Args:
        lessons: of springback and punch depth, or of one other figure; in any order.
        machine: whose error is in them.
    """
    if not lessons:
        return None
    found = tuple(sorted(lessons, key=lambda one: (one.result_id, one.figure)))
    u = np.array([one.spread for one in found])
    j = np.array([one.per_mm for one in found])
    y = np.array([one.departure for one in found])
    sigma = np.array([one.reading for one in found])
    places = [one.set_up for one in found]
    error = machine.together(places, places)
    prior = np.outer(u, u) * alike(places, places) + np.outer(j, j) * error
    weights = _weights(prior, y, sigma)
    inverse = np.linalg.inv(prior + np.diag(sigma**2 / weights))
    answer = inverse @ y
    # Each held against the others in one step: S. Sundararajan and S. S. Keerthi, Neural
    # Computation 13 (2001), from memory; the tests leave each one out in earnest.
    alone = 1.0 / np.diag(inverse)
    spare = np.maximum(alone - sigma**2 / weights, 0.0) + sigma**2
    return Solved(
        found,
        tuple(map(float, weights)),
        tuple(map(float, (y - prior @ answer) / sigma)),
        tuple(zip(map(float, y - answer * alone), map(float, np.sqrt(spare)), strict=True)),
        tuple(map(float, error @ (j * answer))),
        machine,
        np.asarray(inverse, dtype=np.float64),
        np.asarray(answer, dtype=np.float64),
    )


def _weights(prior: Array, y: Array, sigma: Array) -> Array:
    weights = np.ones_like(y)
    for _ in range(MOST_ROUNDS):
        fitted = prior @ np.linalg.solve(prior + np.diag(sigma**2 / weights), y)
        new = (STUDENT_NU + 1.0) / (STUDENT_NU + ((y - fitted) / sigma) ** 2)
        moved = float(np.abs(new - weights).max())
        weights = new
        if moved < SETTLED:
            break
    return weights


def that_count(lessons: Sequence[Lesson]) -> frozenset[str]:
    """Ids of the results that count: those that the metal can have done, or that were confirmed.

    A press whose depth is known to be off shifts what is possible: what the results that count
    anyway say of d is looked at once, and each result is held against that as well.
    """
    found = solve([one for one in lessons if one.confirmed or one.is_possible(0.0)])
    not_so = {
        one.result_id
        for one in lessons
        if not (one.confirmed or one.is_possible(0.0) or _is_explained(one, found))
    }
    return frozenset(one.result_id for one in lessons) - not_so


def _is_explained(lesson: Lesson, found: Solved | None) -> bool:
    if found is None:
        return False
    return lesson.is_possible(found.at(lesson.set_up, lesson.spread, lesson.per_mm).press_mm)


def _root(variance: float) -> float:
    return sqrt(max(float(variance), 0.0))
