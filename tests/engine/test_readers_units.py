"""Every sentence of an answer has its lengths, forces and masses apart, for the reader's units."""

from __future__ import annotations

import pickle
import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from hypothesis import given
from hypothesis import strategies as st
from one_bend_asked import check_bend

from flangebook.bending.box.box import Box, Side
from flangebook.bending.checks import Sentence, fill, joined
from flangebook.bending.errors import RangeError
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.answers.plan_json import plan_json
from flangebook.planning.box.merge import merged
from flangebook.planning.box.plan import planned_box
from flangebook.planning.order.search import PlanLimits
from flangebook.planning.plan import plan, planned
from flangebook.planning.planned import Plan

METRIC = re.compile(r"\d ?(mm|kN|kg|MPa)\b")
# What the shop itself has called so, and where a figure comes from.
OWN_WORDS = {"name", "die_name", "punch_name", "holder", "sources", "note", "title"}
UP, DOWN = Bend(90.0, "up"), Bend(90.0, "down")


def sentences(answer: Any, key: str = "") -> Iterator[tuple[str, str, JsonDict]]:
    """Every text with its key and what stands beside it."""
    if isinstance(answer, dict):
        for name, inner in answer.items():
            if isinstance(inner, str) and name not in OWN_WORDS:
                yield name, inner, answer
            elif name not in OWN_WORDS:
                yield from sentences(inner, name)
    elif isinstance(answer, list):
        for inner in answer:
            yield from sentences(inner, key)


def templates(beside: JsonDict, key: str) -> str | None:
    """The words with places for the numbers, where a text has them beside it."""
    if key in ("do", "template"):
        return str(beside[key])
    said = beside.get(f"{key}_said")
    return None if said is None else said["template"]


def metric_only(answer: JsonDict) -> set[tuple[str, str]]:
    """What an inch reader would read in mm, kN or kg."""
    return {
        (key, words)
        for key, words, beside in sentences(answer)
        if METRIC.search(words) and ((own := templates(beside, key)) is None or METRIC.search(own))
    }


@pytest.mark.parametrize("metal", ["mild-steel-cr", "stainless-304", "aluminium-5052-h32"])
@pytest.mark.parametrize("t", [1.0, 1.6, 3.0])
@pytest.mark.parametrize("tools", [{}, {"punch_radius_mm": 1.0}, {"die": "V12"}])
def test_one_bend_and_why_each_die_stands_where_it_does(metal, t, tools):
    answer = check_bend(
        STARTER_METALS[metal], t, 1400.0, 90.0, press=DEMO_PRESS, crib=DEMO_CRIB, **tools
    )
    assert metric_only(answer) == set()
    for option in answer["options"]:
        said = option["reason_said"]
        filled = fill(said["template"], said["numbers"])
        assert len(filled) > 10
        assert "{" not in filled, "every place has its number"


PARTS = {
    "a short flange": ((8.3, 60.0), (UP,), 1.5, 300.0),
    "a narrow Z": ((40.0, 20.0, 40.0), (UP, DOWN), 1.5, 300.0),
    "a web too short": ((40.0, 6.0, 40.0), (UP, DOWN), 1.5, 300.0),
    "bumps": ((60.0, 80.0), (Bend(90.0, "up", 10.0),), 3.0, 300.0),
    "a hem": ((12.0, 188.0), (Bend(0.0, "up", None, "open_hem", 2.0),), 1.0, 300.0),
    "past the frames": ((300.0, 500.0), (UP,), 1.5, 1500.0),
    "beyond the gauge": ((700.0, 800.0), (UP,), 1.5, 400.0),
    "a deep channel": ((60.0, 40.0, 60.0), (UP, UP), 2.0, 600.0),
}


@pytest.mark.parametrize("name", PARTS)
def test_a_plan(name):
    flats, bends, t, length = PARTS[name]
    part = Part(name, "mild-steel-cr", t, length, flats, bends)
    press = replace(DEMO_PRESS, gauge_x_max_mm=400.0)
    answer = plan(part, press, DEMO_CRIB, STARTER_METALS)
    assert metric_only(answer) == set()
    for step in answer["steps"]:
        assert step.get("tools_reason_said") != {"template": "", "numbers": {}}
        for check in step["checks"]:
            assert "{" not in fill(check["template"] + check["do"], check["numbers"])


def test_a_box():
    sides = {one: Side((20.0,), (UP,)) for one in ("left", "right", "front", "back")}
    box = Box("Tray", "mild-steel-cr", 1.0, 200.0, 150.0, **sides)

    def planner(section: Part, crib: Crib, _: PlanLimits) -> Plan:
        return planned(section, DEMO_PRESS, crib, STARTER_METALS)

    found = planned_box(box, DEMO_PRESS, DEMO_CRIB, STARTER_METALS["mild-steel-cr"], planner)
    assert metric_only(plan_json(merged(found, DEMO_PRESS, DEMO_CRIB))) == set()


@given(st.lists(st.floats(0.1, 900.0), min_size=1, max_size=4))
def test_sentences_in_a_row_keep_their_own_numbers(lengths):
    parts = [Sentence("{v_mm} and {t_mm}; ", {"v_mm": v, "t_mm": 2.0}) for v in lengths]
    one = joined("So: ", *parts)
    assert one.words == "So: " + "".join(part.words for part in parts)
    assert not METRIC.search(one.template)


def test_an_error_keeps_its_numbers_apart_on_its_way_from_a_worker():
    """What cannot be predicted is worked out in another process, which sends the error."""
    error = RangeError(
        "A V of {v_mm} is full.", "v_mm", "Use {wide_mm}.", {"v_mm": 8.0, "wide_mm": 12.0}
    )
    come = pickle.loads(pickle.dumps(error))
    assert (come.what, come.right) == ("A V of 8 mm is full.", "Use 12 mm.")
    assert (come.template, come.numbers) == (error.template, error.numbers)
