"""What test bends changed, as the API gives it: figures before and after, and why, in words."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from math import exp
from typing import Any

from flangebook.bending.checks import Sentence, fill
from flangebook.bending.errors import InputError
from flangebook.bending.estimate import Estimate
from flangebook.bending.learning.belief import Belief, Counted
from flangebook.bending.learning.learned import Learning
from flangebook.bending.learning.lessons import FigureName, spread_of
from flangebook.bending.learning.result import Result, SetUp
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.planning.answers.answer import JsonDict, number, said_json
from flangebook.planning.results.evidence import Evidence, odd_ids
from flangebook.planning.results.press_learned import factor_json

# Name of the figure in the answer, the belief behind it, its field, its unit.
FIGURES: tuple[tuple[str, FigureName, str, str], ...] = (
    ("springback", "springback", "springback_deg", "deg"),
    ("inside radius", "inside radius", "inside_radius_mm", "mm"),
    ("K-factor", "deduction", "k_factor", ""),
)
MOST_POINTS = 60
TEACHES_NOTHING = "It is kept and teaches nothing"
NOT_PREDICTED = Sentence("This bend cannot be predicted, so nothing can be held against it.")
Place = tuple[float, float, str]
"""Thickness as ordered, V opening [mm], lot."""


def learning_at(evidence: Evidence, set_up: SetUp) -> Learning | None:
    """What the evidence makes of a bend; None where that bend cannot be predicted."""
    try:
        return evidence.learning(air_bend(set_up.case), set_up)
    except InputError:
        return None


def figures_json(before: AirBend, after: Learning, case: BendCase) -> list[JsonDict]:
    """The figures that some result counts for: what they were, what they are, and each result as
    a point on the same scale."""
    found = []
    for what, name, field, unit in FIGURES:
        belief = after.belief(name)
        if belief is None:
            continue
        found.append(
            {
                "what": what,
                "before": _band(getattr(before, field)),
                "after": _band(getattr(after.bend, field)),
                "unit": unit,
                "trials": len(belief.counted),
                "points": _points(belief, after, case, field),
            }
        )
    return found


def deduction_json(learning: Learning | None) -> JsonDict | None:
    """What a bend takes of the blank by the metal's flanges and strips; None where none counts."""
    belief = learning.belief("deduction") if learning is not None else None
    if learning is None or belief is None:
        return None
    flanges, strips = belief.pieces
    return {
        "before_mm": _band(learning.expected.bend_deduction_mm),
        "after_mm": _band(learning.bend.bend_deduction_mm),
        "flanges": flanges,
        "strips": strips,
    }


def _band(figure: Estimate) -> JsonDict:
    return {
        "low": number(figure.low),
        "nominal": number(figure.nominal),
        "high": number(figure.high),
        "origin": figure.origin,
    }


def _points(belief: Belief, after: Learning, case: BendCase, field: str) -> list[JsonDict]:
    """The nearest results carried to this bend: the metal's part of the departure, as much of its
    band there as here, put on what was expected here."""
    nominal = getattr(after.expected, field).nominal
    spread = spread_of(belief.figure, after.expected, case)
    return [
        {
            "id": one.lesson.result_id,
            "value": number(_carried(one, nominal, spread)),
            "weight": number(one.weight, 3),
            "outlier": one.odd is not None,
        }
        for one in belief.counted[:MOST_POINTS]
    ]


def _carried(counted: Counted, nominal: float, spread: float) -> float:
    lesson = counted.lesson
    metal = lesson.departure - lesson.per_mm * counted.error_mm
    there = lesson.spread or spread
    carried = metal * spread / there if there else metal
    if lesson.figure == "inside radius":
        return nominal * exp(carried)
    return nominal + carried  # [deg], or of the deduction in K-factors


def figure_sentences(figures: Iterable[Mapping[str, Any]]) -> list[Sentence]:
    """A sentence for each figure.

    >>> band = {"low": 1.0, "nominal": 2.0, "high": 3.0}
    >>> now = {"low": 2.0, "nominal": 2.5, "high": 2.8}
    >>> said = figure_sentences([{"what": "springback", "before": band, "after": now,
    ...                           "unit": "deg", "trials": 2}])
    >>> said[0].words
    'The springback was 2° (1° to 3°) and is now 2.5° (2° to 2.8°), by 2 results.'
    """
    return [_sentence(one) for one in figures]


def _sentence(one: Mapping[str, Any]) -> Sentence:
    end = f"_{one['unit']}" if one["unit"] else ""
    by = "1 result" if one["trials"] == 1 else f"{one['trials']} results"
    numbers = {
        f"{which}_{name}{end}": one[which][name]
        for which in ("before", "after")
        for name in ("nominal", "low", "high")
    }
    before, after = (
        f"{{{which}_nominal{end}}} ({{{which}_low{end}}} to {{{which}_high{end}}})"
        for which in ("before", "after")
    )
    same = all(
        fill(f"{{x{end}}}", {f"x{end}": one["before"][name]})
        == fill(f"{{x{end}}}", {f"x{end}": one["after"][name]})
        for name in ("nominal", "low", "high")
    )
    if same:
        return Sentence(f"The {one['what']} stays {after}, by {by}.", numbers)
    return Sentence(f"The {one['what']} was {before} and is now {after}, by {by}.", numbers)


def odd_sentences(evidence: Evidence, result: Result, learning: Learning | None) -> list[Sentence]:
    """What is odd about a result: by itself, and beside the others."""
    said, alone = evidence.said_by(result)
    question = evidence.question_about(result)
    if question is not None:
        alone = (*alone, question)
    found = [check.whole for check in alone]
    if learning is not None:
        found += [
            one.odd.whole
            for belief in learning.beliefs
            for one in belief.counted
            if one.odd is not None and one.lesson.result_id == result.id
        ]
    if not said:
        why = "" if alone else ": no figure can be got from what was measured"
        found.append(Sentence(f"{TEACHES_NOTHING}{why}."))
    return found


def together_sentences(learning: Learning) -> list[Sentence]:
    """What the results say as a whole: that they contradict each other, or what is published."""
    found = [b.together for b in learning.beliefs if b.together is not None]
    found += [check for check in learning.checks if check.code == "trials-not-used"]
    return [check.whole for check in found]


def outliers_json(evidence: Evidence, learning: Learning | None) -> list[JsonDict]:
    """The results that stand out here, each with why."""
    odd = odd_ids(learning) if learning is not None else ()
    return [
        {"id": result.id, **said_json(odd_sentences(evidence, result, learning))}
        for result in evidence.results
        if result.id in odd
    ]


def places(results: Sequence[Result]) -> dict[Place, SetUp]:
    """Where results were made: for each thickness, V and lot the newest one's set-up.

    Under the lot "" all lots count together.
    """
    found: dict[Place, SetUp] = {}
    for result in results:
        here = result.set_up
        for lot in {"", here.lot}:
            place = (here.case.thickness_mm, here.case.die.v_opening_mm, lot)
            found[place] = replace(here, lot=lot)
    return dict(sorted(found.items()))


def learned_json(evidence: Evidence) -> list[JsonDict]:
    """Every place's figures before and after."""
    groups = []
    for (thickness, v_opening, lot), set_up in places(evidence.results).items():
        learning, case = learning_at(evidence, set_up), set_up.case
        groups.append(
            {
                "thickness_mm": number(thickness),
                "v_opening_mm": number(v_opening),
                "lot": lot or None,
                "included_angle_deg": number(case.included_angle_deg),
                "die": case.die.code,
                "punch_radius_mm": number(case.punch_radius_mm),
                "factor": factor_json(evidence, set_up),
                "deduction": deduction_json(learning),
                "figures": figures_json(learning.expected, learning, case) if learning else [],
                **said_json(together_sentences(learning) if learning else [NOT_PREDICTED]),
                "outliers": outliers_json(evidence, learning),
            }
        )
    return groups
