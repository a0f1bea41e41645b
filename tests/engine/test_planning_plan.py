"""Parts planned: figures worked by hand, turns, gauge, tools to fetch, findings."""

from __future__ import annotations

import json
from dataclasses import replace
from itertools import pairwise
from math import ceil, log10, pi

import pytest
from one_bend_asked import check_bend
from plan_reading import codes, finding, furthest_back, outside_lengths, words_of
from planning_shop import (
    ANGLE,
    BLUNT,
    CHANNEL,
    CRIB,
    DOWN,
    GOOSENECK,
    HAT,
    HOLDER,
    METALS,
    MILD,
    PRESS,
    SHARP,
    SIX,
    STRAIGHT,
    UP,
    ZED,
    die,
    part,
)

from flangebook.bending.errors import InputError, MissingToolError, NotAPartError
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend, Hole, Part
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan


def planned(one: Part, crib: Crib = CRIB, press: Press | None = PRESS) -> JsonDict:
    return plan(one, press, crib, METALS)


def test_an_angle_by_hand() -> None:
    """40 x 60, t 2: the radius r is the bend model's; DIN 6935 with that r, s = 2."""
    answer = planned(ANGLE)
    r = answer["steps"][0]["inside_radius_mm"]
    k = 0.65 + 0.5 * log10(r / 2)
    allowance = pi / 2 * (r + k / 2 * 2)
    blank = 100 - 2 * (r + 2) + allowance
    assert answer["blank_length_mm"] == pytest.approx(blank, abs=2e-4)
    assert answer["bend_lines_mm"] == [pytest.approx(40 - r - 2 + allowance / 2, abs=2e-4)]
    assert answer["blank_mass_kg"] == pytest.approx(blank * 500 * 2 * 7850e-9, abs=2e-4)
    step = answer["steps"][0]
    assert (step["punch"], step["die"]) == ("P4", "V16-84")
    assert step["gauge_x_mm"] == pytest.approx(40 - r - 2 + allowance / 2, abs=2e-3)
    assert step["gauge_r_mm"] == 1.0
    assert step["gauged_end"] == "left", "the longer side is held"
    one = check_bend(MILD, 2.0, 500.0, 90.0, press=PRESS, crib=CRIB, die="V16-84", punch="P4")
    for name in ("force_kn", "force_kn_high", "inside_radius_mm", "punch_depth_mm"):
        assert step[name] == one[name]
    assert set(step["origin"].values()) == {"model", "handbook"}


def test_the_mould_line_convention_changes_only_sharp_bends() -> None:
    sharp = part((40.0, 60.0), Bend(60.0, "up"))
    by_tangent, by_line = planned(sharp), planned(replace(sharp, dimension="mould_line"))
    radius = by_tangent["blank"]["bend_lines"][0]["inside_radius_mm"]
    longer = 2 * (radius + 2) * (3**0.5 - 1)  # tan(60 deg) - 1, on either side
    assert by_tangent["blank_length_mm"] - by_line["blank_length_mm"] == pytest.approx(
        longer, abs=1e-3
    )
    square = planned(replace(ANGLE, dimension="mould_line"))
    assert square["blank_length_mm"] == planned(ANGLE)["blank_length_mm"]


def test_inside_dimensions_add_two_thicknesses_a_bend() -> None:
    inside, outside = planned(replace(ANGLE, dimension="inside")), planned(ANGLE)
    assert inside["blank_length_mm"] - outside["blank_length_mm"] == pytest.approx(4.0, abs=1e-3)


@pytest.mark.parametrize("one", [ANGLE, CHANNEL, ZED, HAT, SIX])
def test_folding_the_blank_by_the_plan_gives_the_section_back(one: Part) -> None:
    answer = planned(one)
    assert outside_lengths(answer) == pytest.approx(list(one.flats_mm), abs=0.01)
    assert answer["blank"]["sum_check_mm"] == pytest.approx(0.0, abs=0.01)


@pytest.mark.parametrize("one", [ANGLE, CHANNEL, ZED, HAT, SIX])
def test_the_gauge_measured_on_the_drawing_is_the_gauge_in_numbers(one: Part) -> None:
    for step in planned(one)["steps"]:
        finger = step["drawing"]["before"]["gauge"]
        low, high = min(y for _, y in finger), max(y for _, y in finger)
        sheet = step["drawing"]["before"]["sheet"]
        assert furthest_back(sheet, low, high) == pytest.approx(step["gauge_x_mm"], abs=0.01)
        assert min(x for x, _ in finger) == pytest.approx(step["gauge_x_mm"], abs=0.002)
        assert step["drawing"]["gauge_point"] == pytest.approx(
            [step["gauge_x_mm"], step["gauge_r_mm"]], abs=0.002
        )
        assert low <= step["gauge_r_mm"] <= high


def test_turns_follow_from_the_faces_and_ends() -> None:
    for one in (CHANNEL, ZED, HAT, SIX):
        steps = planned(one)["steps"]
        assert (steps[0]["turn_over"], steps[0]["turn_end"]) == (False, False)
        for before, after in pairwise(steps):
            assert after["turn_over"] == (before["inside_face"] != after["inside_face"])
            assert after["turn_end"] == (before["gauged_end"] != after["gauged_end"])
            assert after["inside_face"] == one.bends[after["bend"] - 1].direction


def test_a_zed_is_turned_over_and_a_channel_is_not() -> None:
    assert [s["turn_over"] for s in planned(ZED)["steps"]] == [False, True]
    assert [s["turn_over"] for s in planned(CHANNEL)["steps"]] == [False, False]


def test_one_set_up_serves_the_whole_part() -> None:
    answer = planned(HAT)
    assert len({(s["punch"], s["die"]) for s in answer["steps"]}) == 1
    kinds = {t["kind"]: t for t in answer["tools"]}
    assert set(kinds) == {"punch", "die", "holder"}
    assert kinds["die"]["steps"] == [1, 2, 3, 4]
    assert (kinds["die"]["tray"], kinds["die"]["slot"]) == ("D", "16")
    assert kinds["punch"]["segments_mm"] == [500.0]
    assert kinds["punch"]["segments_total_mm"] == 500.0


def test_segments_make_up_the_length_with_the_least_over() -> None:
    answer = planned(replace(ANGLE, bend_length_mm=637.0))
    punch = next(t for t in answer["tools"] if t["kind"] == "punch")
    assert punch["segments_total_mm"] == 640.0
    assert sum(punch["segments_mm"]) == 640.0


def test_a_tool_changes_where_one_set_up_cannot_do_it() -> None:
    """The short flange slips off the acute die, the acute bend needs it; the punch stays."""
    steps = {s["bend"]: s for s in planned(part((8.8, 60.0, 40.0), UP, Bend(45.0, "up")))["steps"]}
    assert (steps[1]["punch"], steps[1]["die"]) == ("P2", "V12-84")
    assert (steps[2]["punch"], steps[2]["die"]) == ("P2", "V12-30")


def test_a_return_flange_that_runs_into_a_straight_punch_gets_the_gooseneck() -> None:
    """At the bottom the lip's edge stands 7 mm from the middle; the punch is 22 mm wide."""
    cee = part((30.0, 40.0, 60.0), UP, UP)
    assert {s["punch"] for s in planned(cee)["steps"]} == {GOOSENECK.code}
    without = replace(CRIB, punches=(STRAIGHT, BLUNT))
    answer = planned(cee, without)
    assert {"no-order", "too-near-punch"} <= codes(answer, "stop")
    near = finding(answer, "too-near-punch")
    assert answer["order"]["blocked"][0]["hits"] == ["punch"]
    assert near["step"] == answer["order"]["blocked"][0]["step"]
    shorter = planned(part((12.0, 40.0, 60.0), UP, UP), without)
    assert shorter["order"]["proven"]
    assert not {"no-order", "too-near-punch", "runs-into-punch"} & codes(shorter)


def test_a_punch_that_the_press_cannot_open_for_is_neither_chosen_nor_advised() -> None:
    """A deep channel of short web: only a deep gooseneck would do, and a tall one is offered."""
    deep = part((75.0, 30.0, 75.0), UP, UP)
    room = PRESS.open_height_mm - HOLDER.height_mm - deep.thickness_mm
    tall = replace(
        GOOSENECK, code="TALL", neck_relief_mm=80.0, height_mm=room - 60.0 + 1.0, body_width_mm=20.0
    )
    assert min(d.height_mm for d in CRIB.dies) >= 60.0
    answer = planned(deep, replace(CRIB, punches=(STRAIGHT, tall)))
    assert "no-order" in codes(answer, "stop")
    assert {s["punch"] for s in answer["steps"]} == {STRAIGHT.code}
    lowest = min(d.height_mm for d in CRIB.dies)
    for remedy in answer["order"]["remedies"]:
        assert remedy["numbers"].get("height_mm", 0.0) < room - lowest


def test_an_order_given_is_kept_and_what_it_runs_into_is_said() -> None:
    """With the middle of the hat bent first, its brims cannot be reached under the punch."""
    answer = planned(replace(HAT, order=(2, 3, 1, 4)))
    assert [s["bend"] for s in answer["steps"]] == [2, 3, 1, 4]
    assert answer["order"]["rule"] == "given"
    assert answer["order"]["proven"] is False
    assert "no-order" in codes(answer, "stop")
    assert "order" in {r["kind"] for r in answer["order"]["remedies"]}
    free = planned(HAT)
    assert free["order"]["rule"] == "search"
    assert free["order"]["proven"]
    again = planned(replace(HAT, order=tuple(free["order"]["sequence"])))
    assert again["order"]["rule"] == "given"
    assert again["order"]["proven"]


@pytest.mark.parametrize("order", [(1,), (1, 1, 2, 3), (1, 2, 3, 5), (0, 1, 2, 3)])
def test_an_order_that_is_none_is_refused(order: tuple[int, ...]) -> None:
    with pytest.raises(InputError) as caught:
        planned(replace(HAT, order=order))
    assert caught.value.where.startswith("order")


@pytest.mark.parametrize("one", [ANGLE, CHANNEL, SIX])
def test_an_order_clear_on_paper_clears_in_every_step(one: Part) -> None:
    answer = planned(one)
    assert answer["order"]["proven"]
    assert "clearance-not-checked" not in codes(answer)
    for step in answer["steps"]:
        assert step["clearance"]["clear"]
        assert step["clearance"]["hits"] == []
        nearest = step["clearance"]["nearest"]
        assert nearest is None or nearest["distance_mm"] >= step["clearance"]["needed_mm"] - 0.02


def test_without_a_press_clearance_is_said_not_to_be_checked() -> None:
    answer = plan(HAT, None, CRIB, METALS)
    assert finding(answer, "clearance-not-checked")["level"] == "caution"
    assert not answer["order"]["proven"]
    assert [s["clearance"] for s in answer["steps"]] == [None] * 4


def test_a_flange_too_short_for_the_set_up_gets_a_narrower_die() -> None:
    answer = planned(part((9.0, 60.0), UP))
    assert answer["steps"][0]["die"] == "V12-84"
    assert "flange-too-short" not in codes(answer)


def test_a_flange_too_short_for_every_die_is_a_stop_that_says_how_long() -> None:
    answer = planned(part((5.5, 60.0), UP))
    stop = finding(answer, "flange-too-short")
    assert stop["level"] == "stop"
    assert "No die of the crib takes it" in stop["do"]
    assert 5.5 < stop["numbers"]["least_mm"] < 9.0
    assert answer["blank_length_mm"] > 50, "the blank stands"


def test_a_flange_too_short_names_the_die_that_would_take_it() -> None:
    """The die is given away by its rating, yet it takes the flange."""
    crib = Crib((BLUNT,), (die(16.0), die(12.0, 600.0, 88.9)), (HOLDER,))
    answer = planned(part((9.0, 60.0), Bend(120.0, "up")), crib)
    assert answer["steps"][0]["die"] == "V12-88.9"


def test_an_offset_too_narrow_for_the_dies_is_a_stop() -> None:
    answer = planned(part((40.0, 8.0, 40.0), UP, DOWN))
    assert "offset-too-low" in codes(answer, "stop")
    assert "flange-too-short" in codes(answer, "stop")


def test_a_bend_sharper_than_the_tools_is_a_stop_with_a_full_plan() -> None:
    crib = Crib((STRAIGHT,), (die(16.0), die(12.0)), (HOLDER,))
    answer = planned(part((40.0, 60.0), Bend(45.0, "up")), crib)
    assert {"sharper-than-die", "sharper-than-punch"} <= codes(answer, "stop")
    assert answer["blank_length_mm"] > 90.0
    (step,) = answer["steps"]
    assert (step["punch"], step["force_kn"] > 0) == ("P1", True)
    for name in ("set_angle_deg", "punch_depth_mm", "drawing", "motion"):
        assert step[name] is None, "it would show the punch further in than it can go"


def test_overload_is_a_stop_and_an_unknown_rating_is_unknown() -> None:
    thick = replace(ANGLE, thickness_mm=6.0, bend_length_mm=1200.0)
    assert "press-load" in codes(planned(thick), "stop")
    unrated = Crib((replace(BLUNT, rating_kn_per_m=None),), (die(16.0, None),), (HOLDER,))
    answer = planned(ANGLE, unrated)
    assert {"die-load", "punch-load"} <= codes(answer, "unknown")


def test_a_radius_asked_for_that_the_tools_do_not_give_is_said() -> None:
    answer = planned(part((40.0, 60.0), replace(UP, inside_radius_mm=0.2)))
    assert "radius-asked" in codes(answer, "caution")


def test_a_radius_asked_for_chooses_the_die_that_gives_it() -> None:
    answer = planned(part((60.0, 60.0), replace(UP, inside_radius_mm=5.1)))
    assert answer["steps"][0]["die"] == "V32-84"
    step = answer["steps"][0]
    assert step["inside_radius_mm"] == pytest.approx(5.1, abs=0.1)
    one = check_bend(MILD, 2.0, 500.0, 90.0, press=PRESS, crib=CRIB, die="V32-84", punch="P4")
    assert step["inside_radius_mm"] == one["inside_radius_mm"]
    assert one["handbook"]["inside_radius_mm"] == pytest.approx(0.16 * 32)


def test_the_grain_counts_for_the_smallest_radius() -> None:
    thin_bend = replace(ANGLE, metal="m")
    metal = replace(MILD, code="m", min_radius_over_t_with=replace(
        MILD.min_radius_over_t_across, low=4.0, nominal=4.0, high=4.0))  # fmt: skip
    along = plan(replace(thin_bend, grain="with"), PRESS, CRIB, {"m": metal})
    across = plan(replace(thin_bend, grain="across"), PRESS, CRIB, {"m": metal})
    assert "smallest-radius" in codes(along, "caution")
    assert "smallest-radius" not in codes(across)


def test_a_hole_near_a_bend_is_a_caution() -> None:
    answer = planned(replace(ANGLE, holes=(Hole(1, 30.0, 5.0), Hole(2, 50.0, 5.0))))
    assert "hole-near-bend" in codes(answer, "caution")
    assert finding(answer, "hole-near-bend")["bend"] == 1


def test_hands_and_weight_are_said() -> None:
    assert "hand-distance" in codes(planned(CHANNEL), "caution")
    heavy = replace(part((300.0, 700.0), UP), thickness_mm=3.0, bend_length_mm=1200.0)
    answer = planned(heavy)
    assert {"swing-up"} <= codes(answer, "caution")
    assert any(c.startswith("lifting") for c in codes(answer, "caution"))


def test_a_gauge_out_of_reach_is_a_caution_and_its_numbers_are_null() -> None:
    short = replace(PRESS, gauge_x_max_mm=30.0)
    answer = planned(part((60.0, 80.0), UP), press=short)
    step = answer["steps"][0]
    assert (step["gauge_x_mm"], step["gauge_r_mm"]) == (None, None)
    assert "no-gauge" in codes(answer, "caution")


def test_no_tools_at_all_still_give_a_blank_and_the_reasons() -> None:
    answer = planned(HAT, Crib())
    step = answer["steps"][0]
    assert [step[n] for n in ("punch", "die", "set_angle_deg", "punch_depth_mm", "force_kn")] == [
        None
    ] * 5
    assert {"no-die", "no-punch"} <= codes(answer, "stop")
    assert "blank-by-rule" in codes(answer)
    assert answer["tools"] == []
    assert step["drawing"]["before"]["punch"] == step["drawing"]["die"] == []
    assert outside_lengths(answer) == pytest.approx(list(HAT.flats_mm), abs=0.01)


def test_no_press_is_unknown_and_the_plan_stands() -> None:
    answer = planned(HAT, press=None)
    assert "press-unknown" in codes(answer, "unknown")
    assert all(s["force_kn"] > 0 for s in answer["steps"])
    assert answer["steps"][0]["drawing"]["after"]["ram"] == []


def test_a_tool_whose_outline_is_broken_does_not_break_the_plan() -> None:
    broken = replace(STRAIGHT, shape="points", points_mm=((0, 0), (10, 10), (10, 0), (0, 10)))
    answer = planned(ANGLE, Crib((broken,), (die(16.0),), (HOLDER,)))
    assert answer["steps"][0]["drawing"] is None
    assert "not-drawn" in codes(answer, "unknown")
    assert answer["steps"][0]["punch_depth_mm"] > 0


def test_the_corrections_table_runs_to_five_degrees_or_where_the_tools_end() -> None:
    acute = Crib((SHARP,), (die(16.0, angle=30.0),), (HOLDER,))
    far = planned(ANGLE, acute)["steps"][0]
    milder = far["set_angle_deg"] - far["expected_set_angle_deg"]
    reach = ceil((5.0 + milder) * 2.0)  # the deepest row is as deep as the expected setting's
    assert [r["measured_deg"] for r in far["corrections"]] == [
        85 + i / 2 for i in range(11 + reach)
    ]
    step = planned(replace(ANGLE, bends=(Bend(87.0, "up"),)))["steps"][0]
    rows = step["corrections"]
    assert [r["measured_deg"] for r in rows[:-1]] == [82 + i / 2 for i in range(len(rows) - 1)]
    assert len(rows) < 20
    assert rows[-1]["set_angle_deg"] == pytest.approx(84.5), "the tools end there"
    as_wanted = rows[10]
    assert as_wanted["set_angle_deg"] == pytest.approx(step["set_angle_deg"], abs=1e-3)
    assert as_wanted["punch_depth_mm"] == pytest.approx(step["punch_depth_mm"], abs=1e-3)
    depths = [r["punch_depth_mm"] for r in rows]
    assert depths == sorted(depths), "too open wants a deeper punch"


def test_the_part_comes_back_so_that_it_can_be_posted_again() -> None:
    one = replace(HAT, holes=(Hole(1, 10.0, 3.0),), grain="with")
    back = planned(one)["part"]
    assert back.pop("box", None) is None
    tools, asked = back.pop("tools"), back.pop("wishes")
    again = Part(**{**back, **tools, "flats_mm": tuple(back["flats_mm"]),
                    "bends": tuple(Bend(**b) for b in back["bends"]),
                    "holes": tuple(Hole(**h) for h in back["holes"]),
                    "order_limits": OrderLimits(**{**asked, "critical_flats": ()})})  # fmt: skip
    assert again == one


def test_steps_carry_their_own_findings_and_the_list_gathers_them() -> None:
    answer = planned(part((9.0, 60.0, 5.5), UP, UP))
    short = next(s for s in answer["steps"] if s["bend"] == 2)
    stops = [c for c in short["checks"] if c["level"] == "stop"]
    assert stops
    assert stops[0]["step"] == short["number"]
    assert stops[0]["code"] in codes(answer, "stop")
    levels = [c["level"] for c in answer["checks"] if not c["code"].startswith("general")]
    rank = {"stop": 0, "caution": 1, "unknown": 2, "ok": 3}
    assert levels == sorted(levels, key=rank.__getitem__)


def test_a_metal_that_is_not_there_is_refused() -> None:
    with pytest.raises(MissingToolError) as caught:
        planned(replace(ANGLE, metal="cheese"))
    assert caught.value.where == "metal"
    assert "mild-steel-cr" in caught.value.right


def test_a_section_that_crosses_itself_is_no_part() -> None:
    with pytest.raises(NotAPartError) as caught:
        planned(part((80.0, 40.0, 40.0, 80.0), UP, UP, UP))
    assert caught.value.right


@pytest.mark.parametrize("bad", [0.0, -2.0, 1e9, float("nan"), float("inf")])
@pytest.mark.parametrize("field", ["thickness_mm", "bend_length_mm"])
def test_sizes_that_are_none_are_refused(field: str, bad: float) -> None:
    with pytest.raises(InputError) as caught:
        planned(replace(ANGLE, **{field: bad}))  # type: ignore[arg-type]
    assert caught.value.where == field


def test_words_of_tools_are_not_read_as_templates() -> None:
    named = replace(BLUNT, code="{load_kn}", rating_kn_per_m=None)
    answer = planned(ANGLE, Crib((named,), (die(16.0),), (HOLDER,)))
    json.dumps(answer, allow_nan=False)
    assert "(load_kn)" in words_of(finding(answer, "punch-load"))
