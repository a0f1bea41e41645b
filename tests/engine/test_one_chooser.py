"""One bend, a plan, the wall chart and a box choose the same tools for the same bend."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from one_bend_asked import check_bend
from plan_reading import why_tools, words_of
from quick_ones import but_for

from flangebook.bending.box.box import Box, Side
from flangebook.bending.errors import MissingToolError
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.answers.plan_json import plan_json
from flangebook.planning.box.merge import merged
from flangebook.planning.box.plan import planned_box
from flangebook.planning.chart import METRIC_MM, chart, usual_thicknesses_mm
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.plan import plan
from flangebook.planning.plan import planned as planned_section
from flangebook.planning.planned import Plan
from flangebook.planning.tools.candidates import Candidates
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.planning.tools.ranking import DOUBTFUL_COST, doubtful, merit

LENGTH_MM = 600.0
THICKEST_MM = 4.6  # the demo shop's widest V is 40 mm
SHOP = Equipment(DEMO_PRESS, DEMO_CRIB)
MILD, STAINLESS = "mild-steel-cr", "stainless-304"


def bend(
    metal: str, t: float, angle: float = 90.0, crib: Crib = DEMO_CRIB, **tools: Any
) -> JsonDict:
    return check_bend(
        STARTER_METALS[metal], t, LENGTH_MM, angle, press=DEMO_PRESS, crib=crib, **tools
    )


def planned(
    metal: str, t: float, flats: tuple[float, ...], *bends: Bend, crib: Crib = DEMO_CRIB,
    **other: Any,
) -> JsonDict:  # fmt: skip
    part = Part("Test part", metal, t, LENGTH_MM, flats, bends, **other)
    return plan(part, DEMO_PRESS, crib, STARTER_METALS)


def thicknesses(metal: str) -> list[float]:
    """Two metric thicknesses and the gauges that the metal is sold in, as the wall chart lists
    them, as far as the demo shop's dies go."""
    listed = usual_thicknesses_mm(STARTER_METALS[metal])
    return [t for t in listed if 0.6 < t < THICKEST_MM and (t not in METRIC_MM or t in (1.0, 2.0))]


def chosen(answer: JsonDict, bend_line: JsonDict) -> tuple[object, ...]:
    """Tools and figures, as the bend and a step of a plan both give them."""
    figures = ("set_angle_deg", "punch_depth_mm", "force_kn", "inside_radius_mm", "min_flange_mm")
    deduction = bend_line["bend_deduction_mm"]
    return (answer["die"], answer["punch"], deduction, *(answer[name] for name in figures))


@pytest.mark.parametrize("metal", but_for(["mild-steel-cr"], STARTER_METALS))
def test_bend_plan_and_chart_give_one_answer(metal: str) -> None:
    """Both flats are longer than any die needs and shorter than what the holder stands over."""
    listed = thicknesses(metal)
    rows = chart(STARTER_METALS[metal], DEMO_PRESS, DEMO_CRIB, LENGTH_MM)["rows"]
    cells = {row["thickness_mm"]: row["cells"] for row in rows}
    for i, t in enumerate(listed):
        for angle in (90.0,) if i % 3 else (60.0, 90.0, 135.0):
            one = bend(metal, t, angle)
            whole = planned(metal, t, (60.0, 60.0), Bend(angle, "up"))
            line = whole["blank"]["bend_lines"][0]
            step = whole["steps"][0]
            if f"clears the tools with {one['die']}" in why_tools(step):
                continue  # the flats run into the tools of the bend: only the plan knows them
            assert chosen(one, one) == chosen(step, line), (t, angle)
            if angle == 90.0:
                in_row = {c["die"]: c["punch"] for c in cells[t] if c["usable"]}
                options = {o["die"]: o["punch"] for o in one["options"]}
                assert in_row.items() <= options.items(), t
                assert in_row[one["die"]] == one["punch"], t


def test_a_box_takes_the_same_tools() -> None:
    side = Side((40.0,), (Bend(90.0, "up"),))
    box = Box("Tray", MILD, 1.5, 300.0, LENGTH_MM, left=side, right=side)

    def planner(section: Part, crib: Crib, _limits: PlanLimits) -> Plan:
        return planned_section(section, DEMO_PRESS, crib, STARTER_METALS)

    found = planned_box(box, DEMO_PRESS, DEMO_CRIB, STARTER_METALS[MILD], planner)
    one = bend(MILD, 1.5)
    steps = plan_json(merged(found, DEMO_PRESS, DEMO_CRIB))["steps"]
    assert {(s["die"], s["punch"]) for s in steps} == {(one["die"], one["punch"])}


@pytest.mark.parametrize("metal", [MILD, STAINLESS, "aluminium-5052-h32"])
@pytest.mark.parametrize(("t", "angle"), [(0.8, 90.0), (1.5, 90.0), (3.0, 90.0), (2.0, 45.0)])
def test_no_pair_costs_less_than_was_known_before_the_model_saw_it(
    metal: str, t: float, angle: float
) -> None:
    """So the first pair that the model has seen and that is cheapest is the best of all."""
    wanted = Wanted(STARTER_METALS[metal], t, LENGTH_MM, angle)
    candidates = Candidates.of(wanted, DEMO_CRIB.dies, DEMO_CRIB.punches, SHOP)
    for pair in list(candidates.costs):
        least = candidates.costs[pair][0]
        candidates.look(pair)
        assert candidates.costs[pair][0] >= least - 1e-9, pair


@pytest.mark.parametrize(("metal", "t"), [(STAINLESS, 1.519), ("aluminium-5052-h32", 1.6)])
def test_an_85_degree_punch_that_the_models_setting_fits_is_not_dropped(
    metal: str, t: float
) -> None:
    one = bend(metal, t)
    assert one["punch"] == "S85-2"
    assert one["worst"] == "ok"
    assert why_tools(one) == ""


def test_tools_are_sharp_enough_at_the_unfavourable_end() -> None:
    """The sharp end of the setting is inside what tools allow, wherever any tools of the crib are
    that sharp."""
    for metal in STARTER_METALS.values():
        candidates = Candidates.of(
            Wanted(metal, 1.5, LENGTH_MM, 90.0), DEMO_CRIB.dies, DEMO_CRIB.punches, SHOP
        )
        pair = candidates.best()
        assert pair is not None
        one = candidates.fit(pair)
        assert one.bend is not None
        assert one.limits is not None
        assert not one.limits.beyond(one.bend.set_angle_deg.low), metal.code


def test_ok_tools_never_have_more_against_them_than_a_worn_or_unrated_one() -> None:
    for metal in (MILD, STAINLESS):
        for t in (0.8, 1.5, 3.0):
            wanted = Wanted(STARTER_METALS[metal], t, LENGTH_MM, 90.0)
            candidates = Candidates.of(wanted, DEMO_CRIB.dies, DEMO_CRIB.punches, SHOP)
            for pair in list(candidates.costs):
                one = candidates.fit(pair)
                if one.level == "ok":
                    assert merit(one).cost < DOUBTFUL_COST, pair


@pytest.mark.parametrize("t", [2.5, 4.0])
def test_a_worn_or_unrated_die_is_not_chosen_while_another_is_ok(t: float) -> None:
    one = bend(MILD, t)
    assert one["die"] not in ("V20", "V32")
    assert planned(MILD, t, (60.0, 60.0), Bend(90.0, "up"))["steps"][0]["die"] == one["die"]


def test_where_there_is_no_other_the_reason_says_so() -> None:
    only = replace(DEMO_CRIB, dies=tuple(d for d in DEMO_CRIB.dies if d.code == "V20"))
    for reason in (
        why_tools(bend(MILD, 2.5, crib=only)),
        why_tools(planned(MILD, 2.5, (60.0, 60.0), Bend(90.0, "up"), crib=only)["steps"][0]),
    ):
        assert reason == "Die V20 is worn: the crib has no other die to take."
    two = replace(DEMO_CRIB, dies=tuple(d for d in DEMO_CRIB.dies if d.code in ("V20", "V6")))
    reason = why_tools(bend(MILD, 2.5, crib=two))
    assert reason.startswith("Die V20 is worn, not V6: ")


def test_a_search_takes_an_unrated_punch_only_where_no_order_does_without() -> None:
    for answer in (planned(MILD, 1.5, (40.0, 20.0, 40.0), Bend(90.0, "up"), Bend(90.0, "down")),):
        assert not any(
            doubtful(tool)
            for step in answer["steps"]
            for tool in (*DEMO_CRIB.dies, *DEMO_CRIB.punches)
            if tool.code in (step["die"], step["punch"])
        )


def test_a_short_flange_takes_the_narrower_v_that_the_shop_has() -> None:
    answer = planned(MILD, 1.5, (8.3, 60.0), Bend(90.0, "up"))
    (step,) = answer["steps"]
    assert step["die"] == "V10"
    assert "flange-close" not in {c["code"] for c in answer["checks"]}


def test_a_flange_that_only_just_bears_names_no_die_that_is_not_there() -> None:
    only = replace(DEMO_CRIB, dies=tuple(d for d in DEMO_CRIB.dies if d.code == "V12"))
    answer = planned(MILD, 1.5, (8.3, 60.0), Bend(90.0, "up"), crib=only)
    close = next(c for c in answer["checks"] if c["code"] == "flange-close")
    assert close["do"].startswith("No die of the crib takes it better.")


def test_a_z_with_a_short_web_takes_the_widest_v_that_makes_it_and_says_why() -> None:
    """V10 and V12 have no order; V8 has one, at half the load of V6."""
    answer = planned(MILD, 1.5, (40.0, 20.0, 40.0), Bend(90.0, "up"), Bend(90.0, "down"))
    assert answer["order"]["proven"]
    for step in answer["steps"]:
        assert step["die"] == "V8"
        reason = why_tools(step)
        assert (
            "V of 8 mm, 5.33 × thickness, not V12: no order of the bends clears the tools" in reason
        )
        assert "Acute punch A28-06, not S85-2: with S85-2 it takes 1 tool change more." in reason
    assert not {"punch-load", "die-load"} & {c["code"] for c in answer["checks"]}


def test_every_sentence_about_one_web_names_the_same_least() -> None:
    answer = planned(MILD, 1.5, (40.0, 4.0, 40.0), Bend(90.0, "up"), Bend(90.0, "down"))
    said = {c["code"]: c for c in answer["checks"]}
    flange, offset = said["flange-too-short"], said["offset-too-low"]
    assert flange["numbers"]["flange_mm"] == pytest.approx(4.0)
    assert offset["numbers"]["web_mm"] == pytest.approx(4.0)
    assert flange["numbers"]["least_mm"] == pytest.approx(offset["numbers"]["least_mm"], abs=0.01)


@pytest.mark.parametrize(
    ("thickness", "web", "too_low"),
    [(1.5, 6.0, True), (1.5, 9.0, False), (3.0, 12.0, True), (3.0, 20.0, False)],
)
def test_a_web_that_the_chosen_tools_take_needs_no_look_at_other_dies(
    thickness: float, web: float, too_low: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    part = (MILD, thickness, (40.0, web, 40.0), Bend(90.0, "up"), Bend(90.0, "down"))
    quick = planned(*part)["checks"]
    monkeypatch.setattr("flangebook.planning.plan._tools_take_the_webs", lambda *_: False)
    assert planned(*part)["checks"] == quick
    assert any(c["code"] == "offset-too-low" for c in quick) == too_low


def test_an_acute_punch_for_a_square_bend_says_why() -> None:
    acute = replace(
        DEMO_CRIB, punches=tuple(p for p in DEMO_CRIB.punches if p.code in ("A28-06", "S80-4"))
    )
    reason = why_tools(bend(MILD, 0.8, crib=acute))
    assert reason.startswith("Acute punch A28-06, not S80-4: ")
    assert why_tools(bend(MILD, 1.5)) == ""


def test_tools_named_for_a_part_are_taken_and_what_they_cost_is_said() -> None:
    answer = planned(MILD, 1.5, (60.0, 60.0), Bend(90.0, "up"), die="V8", punch="A28-06")
    (step,) = answer["steps"]
    assert (step["die"], step["punch"]) == ("V8", "A28-06")
    assert why_tools(step) == ("Die V8 was asked for by name. Punch A28-06 was asked for by name.")
    costs = {w["wish"]: words_of(w) for w in answer["order"]["wishes"]}
    assert set(costs) == {"tools.die", "tools.punch"}
    assert costs["tools.die"].startswith("Die V8 for every bend: punch A28-06 at ")
    assert answer["part"]["tools"] == {"die": "V8", "punch": "A28-06"}


def test_tools_named_for_one_bend_leave_the_others_free() -> None:
    flats, up = (60.0, 90.0, 60.0), Bend(90.0, "up")
    answer = planned(MILD, 1.5, flats, replace(up, die="V16"), replace(up, die="V12"))
    by_bend = {step["bend"]: step["die"] for step in answer["steps"]}
    assert by_bend == {1: "V16", 2: "V12"}
    costs = {w["wish"]: words_of(w) for w in answer["order"]["wishes"]}
    assert costs["bends.0.die"] == "Die V16 for bend 1: 1 tool change more."
    free = planned(MILD, 1.5, flats, replace(up, die="V16"), up)
    assert {step["bend"]: step["die"] for step in free["steps"]}[1] == "V16"


def test_a_tool_named_that_cannot_make_the_bend_is_a_stop_and_says_it_costs_that() -> None:
    answer = planned(MILD, 1.5, (60.0, 60.0), Bend(60.0, "up"), die="V12")
    assert answer["worst"] == "stop"
    (cost,) = answer["order"]["wishes"]
    assert words_of(cost).startswith("Die V12 for every bend: stop: The bend must be pressed ")


@pytest.mark.parametrize(
    ("whole", "one", "where"),
    [
        ({"die": "Q"}, {}, "tools.die"),
        ({"punch": "Q"}, {}, "tools.punch"),
        ({}, {"die": "Q"}, "bends.0.die"),
        ({}, {"punch": "Q"}, "bends.0.punch"),
    ],
)
def test_a_tool_named_that_the_crib_has_not_is_refused_by_its_field(
    whole: dict[str, str], one: dict[str, str], where: str
) -> None:
    with pytest.raises(MissingToolError) as caught:
        planned(MILD, 1.5, (60.0, 60.0), Bend(90.0, "up", **one), **whole)  # type: ignore[arg-type]
    assert caught.value.where == where
