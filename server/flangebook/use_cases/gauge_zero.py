"""What the measured flanges of the shop's parts say of its back gauge."""

from __future__ import annotations

from flangebook.bending.learning.gauge_zero import gauge_zero
from flangebook.bending.learning.joint import Solved
from flangebook.bending.learning.lessons import Lesson, deduction_unit_mm
from flangebook.planning.answers.answer import JsonDict, number
from flangebook.shop.crib import tooling
from flangebook.shop.store import Store
from flangebook.use_cases.learning import gauge_evidence


def gauge_answer(store: Store) -> JsonDict:
    """The gauge's zero that is proposed, and what is left to the deductions; nothing is set."""
    solved, name = gauge_evidence(store), tooling(store).zeros.gauge
    found = gauge_zero(solved, name)
    return {
        "zero_mm": number(found.zero_mm),
        "sd_mm": number(found.sd_mm),
        "flanges": found.flanges,
        "systematic": found.systematic,
        "deductions": [] if solved is None else _deductions(solved, name),
    }


def _deductions(solved: Solved, name: str) -> list[JsonDict]:
    """Of each metal, thickness and V: how much more the bend takes than was expected."""
    groups: dict[str, list[Lesson]] = {}
    for lesson in solved.telling(name):
        here = lesson.set_up.case
        group = f"{here.metal.code} {here.thickness_mm:g} mm, V {here.die.v_opening_mm:g}"
        groups.setdefault(group, []).append(lesson)
    return [
        {"of": group, "flanges": len(lessons), "more_mm": number(_more_mm(solved, lessons[0]))}
        for group, lessons in sorted(groups.items())
    ]


def _more_mm(solved: Solved, lesson: Lesson) -> float:
    here = lesson.set_up
    return solved.at(here, lesson.spread, 0.0).metal * deduction_unit_mm(here.case)
