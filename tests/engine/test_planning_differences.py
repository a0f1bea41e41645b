"""What a fresh plan changes, in words."""

from __future__ import annotations

from copy import deepcopy
from dataclasses import replace

import pytest
from planning_shop import BLUNT, CRIB, HAT, METALS, MILD, PRESS, die

from flangebook.bending.part.metals import Metal
from flangebook.bending.tools.tooling import Crib, Place
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.answers.differences import MOST_DIFFERENCES, differences, in_words
from flangebook.planning.plan import plan

SAVED = plan(HAT, PRESS, CRIB, METALS)


def fresh(crib: Crib = CRIB, metal: Metal = MILD) -> JsonDict:
    return plan(HAT, PRESS, crib, {"mild-steel-cr": metal})


def said(found: list[JsonDict]) -> set[tuple[str, str]]:
    return {(d["where"], d["what"]) for d in found}


def test_the_same_shop_gives_the_same_plan() -> None:
    assert differences(SAVED, fresh()) == []
    assert in_words([]) == "A fresh plan comes out the same."


def test_a_die_that_is_gone_is_named_step_by_step() -> None:
    crib = replace(CRIB, dies=tuple(d for d in CRIB.dies if d.code != "V16-84"))
    found = differences(SAVED, fresh(crib))
    tools = [d for d in found if d["what"] == "die"]
    assert [d["where"] for d in tools] == ["step 1", "step 2", "step 3", "step 4"]
    assert all(d["saved"] == "V16-84" and d["fresh"] != "V16-84" for d in tools)
    assert ("step 1", "punch depth") in said(found)
    assert "differences, in " in in_words(found)


def test_a_changed_shoulder_changes_the_depth_with_its_unit() -> None:
    other = tuple(
        replace(d, shoulder_radius_mm=3.0) if d.code == "V16-84" else d for d in CRIB.dies
    )
    found = differences(SAVED, fresh(replace(CRIB, dies=other)))
    depth = next(d for d in found if d["field"] == "punch_depth_mm")
    assert depth["saved"].endswith(" mm")
    assert float(depth["saved"][:-3]) == pytest.approx(depth["saved_value"], abs=0.005)
    assert depth["saved"] != depth["fresh"]


def test_a_springier_metal_changes_the_angle_and_no_tool() -> None:
    """Its row says half as much springback again, and its Young's modulus is lower by as much."""
    back, stiff = MILD.springback_at_90_deg, MILD.youngs_modulus_mpa
    assert back
    springier = replace(
        MILD,
        springback_at_90_deg=replace(
            back, low=1.5 * back.low, nominal=1.5 * back.nominal, high=1.5 * back.high
        ),
        youngs_modulus_mpa=replace(
            stiff, low=stiff.low / 1.5, nominal=stiff.nominal / 1.5, high=stiff.high / 1.5
        ),
    )
    found = differences(SAVED, fresh(metal=springier))
    assert ("step 1", "angle to set") in said(found)
    assert not any(d["what"] in ("die", "punch") for d in found)


def test_a_tool_that_lies_elsewhere_or_is_worn_is_told() -> None:
    moved = replace(BLUNT, place=Place("Q", "9"), condition="worn", condition_note="Nose.")
    saved = fresh(replace(CRIB, punches=(BLUNT,)))
    found = differences(saved, fresh(replace(CRIB, punches=(moved,))))
    assert not any(d["what"] == "punch" for d in found), "there is no other"
    assert {("punch P4", "tray"), ("punch P4", "condition")} <= said(found)


def test_a_tool_that_is_worn_now_makes_room_for_a_sound_one() -> None:
    punches = tuple(replace(p, condition="worn") if p.code == "P4" else p for p in CRIB.punches)
    found = differences(SAVED, fresh(replace(CRIB, punches=punches)))
    assert any(d["what"] == "punch" and d["saved"] == "P4" for d in found)


def test_a_rating_that_came_to_light_changes_the_findings() -> None:
    unrated = tuple(replace(d, rating_kn_per_m=None) for d in CRIB.dies)
    old = plan(HAT, PRESS, replace(CRIB, dies=unrated), METALS)
    known = tuple(replace(d, rating_kn_per_m=100.0) for d in unrated)
    found = differences(old, fresh(replace(CRIB, dies=known)))
    checks = [d for d in found if d["field"] == "checks" and d["saved"].startswith("unknown")]
    assert checks


def test_an_order_of_another_sort_is_one_line() -> None:
    other = deepcopy(SAVED)
    other["order"]["sequence"] = [2, 3, 1, 4]
    saved = ", ".join(str(n) for n in SAVED["order"]["sequence"])
    found = differences(SAVED, other)
    assert [(d["where"], d["saved"], d["fresh"]) for d in found] == [("order", saved, "2, 3, 1, 4")]


def test_more_or_fewer_steps_and_lines_are_said() -> None:
    other = deepcopy(SAVED)
    other["steps"].pop()
    other["blank"]["bend_lines"].pop()
    assert {("steps", "number of steps"), ("blank", "number of bend lines")} <= said(
        differences(SAVED, other)
    )


def test_small_drift_is_no_difference_and_a_null_is() -> None:
    other = deepcopy(SAVED)
    other["steps"][0]["gauge_x_mm"] += 0.01
    assert differences(SAVED, other) == []
    other["steps"][0]["gauge_x_mm"] = None
    only = differences(SAVED, other)
    assert [(d["where"], d["fresh"]) for d in only] == [("step 1", "none")]


def test_yes_and_no_are_words() -> None:
    other = deepcopy(SAVED)
    other["steps"][1]["turn_over"] = not other["steps"][1]["turn_over"]
    only = differences(SAVED, other)
    assert {only[0]["saved"], only[0]["fresh"]} == {"yes", "no"}


def test_plans_of_an_older_shape_do_not_break_it() -> None:
    assert isinstance(differences({}, SAVED), list)
    assert isinstance(differences(SAVED, {}), list)
    assert differences({}, {}) == []
    assert len(differences({}, SAVED)) <= MOST_DIFFERENCES


def test_die_for_die_the_words_name_the_places() -> None:
    found = differences(SAVED, fresh(Crib((BLUNT,), (die(12.0),), ())))
    assert in_words(found).startswith("A fresh plan differs: ")
