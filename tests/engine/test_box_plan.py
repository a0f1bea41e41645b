"""Boxes planned on the invented shop: steps, pieces, finished sides in the way, findings."""

from __future__ import annotations

import math
import time
from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from typing import Any

import pytest
from boxes import DOWN, UP, tray, wall
from plan_reading import words_of
from planning_shop import CRIB, METALS, MILD, PRESS

from flangebook.bending.box.box import Box, Side
from flangebook.bending.errors import NotAPartError
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.answers.plan_json import plan_json
from flangebook.planning.box.merge import merged
from flangebook.planning.box.plan import planned_box
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.plan import planned as planned_section
from flangebook.planning.planned import Plan


@cache
def planned(box: Box, crib: Crib = CRIB, press: Press | None = PRESS) -> JsonDict:
    def planner(section: Part, tools: Crib, limits: PlanLimits) -> Plan:
        return planned_section(section, press, tools, METALS, limits=limits)

    return plan_json(merged(planned_box(box, press, crib, MILD, planner), press, crib))


def codes(answer: Mapping[str, Any], level: str) -> set[str]:
    return {c["code"] for c in answer["checks"] if c["level"] == level}


TRAY = tray(*[wall(30.0)] * 4)
LIPS = tray(*[wall(30.0, 10.0)] * 4)


def test_left_and_right_come_first_then_a_quarter_turn() -> None:
    answer = planned(LIPS)
    sides = [s["side"] for s in answer["steps"]]
    assert set(sides[:4]) == {"left", "right"}
    assert set(sides[4:]) == {"front", "back"}
    assert [s["number"] for s in answer["steps"]] == list(range(1, 9))
    assert [s["turn_quarter"] for s in answer["steps"]] == [i == 4 for i in range(8)]
    assert answer["order"]["sequence"] == [s["bend"] for s in answer["steps"]]
    assert sorted(answer["order"]["sequence"]) == list(range(1, 9))
    for step in answer["steps"]:
        line = next(b for b in answer["blank"]["lines"] if b["bend"] == step["bend"])
        assert line["side"] == step["side"]
        length = math.dist((line["x1_mm"], line["y1_mm"]), (line["x2_mm"], line["y2_mm"]))
        assert step["bend_length_mm"] == pytest.approx(length, abs=1e-3)
        pair = {"left", "right"} if step["side"] in ("left", "right") else {"front", "back"}
        assert step["gauged_side"] in pair


def test_force_is_that_of_each_bend_line() -> None:
    for step in planned(LIPS)["steps"]:
        wanted = step["force_kn_per_m"] * step["bend_length_mm"] / 1000
        assert step["force_kn"] == pytest.approx(wanted, rel=1e-4)


def test_pieces_fit_between_the_finished_sides() -> None:
    """Lips of 10 leave 280 between them; front's and back's tools keep within that."""
    answer = planned(LIPS)
    for step in answer["steps"][4:]:
        assert step["clear_between_mm"] == pytest.approx(280.0, abs=0.05)
        assert 250.0 < sum(step["segments_mm"]["punch"]) <= 279.0
    assert "box-punch-short" in codes(answer, "caution")


def test_pieces_are_exact_where_the_shop_has_them() -> None:
    """A punch with fine pieces makes up the bend line, never the clear length."""
    fine = tuple(float(n) for n in (200, 50, 20, 10, 5, 5, 2, 2, 1, 1))
    crib = replace(CRIB, punches=tuple(replace(p, segments_mm=fine) for p in CRIB.punches))
    answer = planned(TRAY, crib)
    assert not codes(answer, "caution") & {"box-punch-short"}
    for step in answer["steps"][2:]:
        total = sum(step["segments_mm"]["punch"])
        assert step["bend_length_mm"] <= total < step["bend_length_mm"] + 1.0
        assert total < step["clear_between_mm"]


def test_a_punch_whose_pieces_do_not_fit_between_gives_way_to_one_whose_do() -> None:
    """The best punch comes in pieces of 400 only: too long between the finished sides."""
    best = planned(TRAY)["steps"][-1]["punch"]

    def owned(code: str, *lengths: float) -> Crib:
        cut = [replace(p, segments_mm=lengths) if p.code == code else p for p in CRIB.punches]
        return replace(CRIB, punches=tuple(cut))

    answer = planned(TRAY, owned(best, 400.0, 400.0))
    assert not codes(answer, "stop")
    assert answer["order"]["proven"]
    assert best not in {step["punch"] for step in answer["steps"][2:]}
    alone = owned(best, 400.0, 400.0)
    alone = replace(alone, punches=tuple(p for p in alone.punches if p.code == best))
    assert "box-punch-between" in codes(planned(TRAY, alone), "stop")


def test_tools_are_fetched_once_for_all_steps() -> None:
    for tool in planned(TRAY)["tools"]:
        for step in planned(TRAY)["steps"]:
            if tool["kind"] in ("punch", "die") and step[tool["kind"]] == tool["code"]:
                left = list(tool["segments_mm"])
                for piece in step["segments_mm"][tool["kind"]]:
                    left.remove(piece)
                assert step["number"] in tool["steps"]


def test_stations_hold_every_step_once() -> None:
    answer = planned(LIPS)
    steps = [n for station in answer["stations"] for n in station["steps"]]
    assert sorted(steps) == list(range(1, 9))
    for step in answer["steps"]:
        station = next(s for s in answer["stations"] if s["number"] == step["station"])
        assert step["number"] in station["steps"]
        assert station["punch_segments_mm"] == step["segments_mm"]["punch"]


def test_a_plain_tray_is_clear_on_paper_and_nothing_stops_it() -> None:
    answer = planned(TRAY)
    assert answer["order"]["proven"] is True
    assert not codes(answer, "stop")
    assert answer["blank"]["sum_check_mm"] < 1e-3
    assert answer["folded"]["length_mm"] == pytest.approx(300.0, abs=1e-3)
    assert answer["folded"]["height_mm"] == pytest.approx(30.0, abs=1e-3)
    assert answer["blank"]["relief"]["rule"].startswith("FAA-H-8083-31")


def test_deep_sides_get_a_taller_punch_if_there_is_one() -> None:
    """Sides of 80 run into the holder over a punch of 100; one of 220 clears them."""
    box = tray(wall(80.0), wall(80.0), wall(30.0), wall(30.0))
    stopped = planned(box)
    assert "box-wall-holder" in codes(stopped, "stop")
    assert stopped["order"]["proven"] is False
    (finding,) = (c for c in stopped["checks"] if c["code"] == "box-wall-holder")
    assert "stands beside the punch" in words_of(finding)
    assert finding["numbers"]["distance_mm"] > 0
    assert {s["side"] for s in stopped["steps"] if s["number"] in finding["steps"]} <= {
        "front", "back"}  # fmt: skip
    tall = replace(CRIB.punches[3], code="TALL", name="Tall", height_mm=220.0)
    press = replace(PRESS, open_height_mm=600.0, stroke_mm=250.0)
    cured = planned(box, replace(CRIB, punches=(*CRIB.punches, tall)), press)
    assert not any(c.startswith("box-wall") for c in codes(cured, "stop"))
    assert {s["punch"] for s in cured["steps"] if s["side"] in ("front", "back")} == {"TALL"}


def test_deep_sides_can_be_bent_last() -> None:
    """Left and right of 80 run into the holder when they stand first; bent after front and back
    of 30 they swing up clear of it."""
    deep = tray(wall(80.0), wall(80.0), wall(30.0), wall(30.0))
    (finding,) = (c for c in planned(deep)["checks"] if c["code"] == "box-wall-holder")
    assert "have front and back bent first" in finding["do"]
    answer = planned(replace(deep, first_pair="front-back"))
    assert answer["worst"] != "stop"
    assert answer["order"]["proven"] is True
    assert [s["side"] in ("front", "back") for s in answer["steps"]] == [True, True, False, False]
    assert [s["turn_quarter"] for s in answer["steps"]] == [False, False, True, False]
    assert answer["part"]["box"]["first_pair"] == "front-back"
    for step in answer["steps"]:
        line = next(b for b in answer["blank"]["lines"] if b["bend"] == step["bend"])
        assert line["side"] == step["side"]
    for one in answer["dimensions"]:
        assert one["flat_name"].startswith(answer["flat_names"][one["flat"] - 1])


def test_an_order_of_ones_own_is_kept() -> None:
    """Lips before walls is how it must be; which of the two ends comes first is one's own."""
    own = (4, 1, 3, 2, 8, 5, 7, 6)
    answer = planned(replace(LIPS, order=own))
    assert answer["order"]["sequence"] == list(own)
    assert [s["bend"] for s in answer["steps"]] == list(own)
    assert answer["part"]["order"] == list(own)
    other = planned(replace(LIPS, order_limits=OrderLimits(first=4, last=6)))
    assert (other["order"]["sequence"][0], other["order"]["sequence"][-1]) == (4, 6)


@pytest.mark.parametrize(
    ("flat", "name"), [(2, "the base, left to right"), (5, "the base, front to back")]
)
def test_a_flat_of_the_box_is_gauged_directly(flat: int, name: str) -> None:
    """Flats 1 to 3 are left, base and right, 4 to 6 front, base and back."""
    wished = planned(replace(TRAY, order_limits=OrderLimits(critical_flats=(flat,))))
    (critical,) = (d for d in wished["dimensions"] if d["critical"])
    assert (critical["flat"], critical["flat_name"]) == (flat, name)
    assert critical["gauged_directly"] is True
    assert wished["part"]["wishes"]["critical_flats"] == [flat]


def test_walls_that_hang_below_reach_the_bed() -> None:
    down = Side((80.0,), (DOWN,))
    answer = planned(tray(down, down, wall(30.0), wall(30.0)))
    assert "box-wall-bed" in codes(answer, "stop")


def test_a_wall_too_high_to_pass_under_the_punch_is_said() -> None:
    """380 open less 100, 60, 90 and 2 leaves 128."""
    answer = planned(tray(wall(20.0), wall(20.0), wall(135.0), wall(20.0)))
    found = [c for c in answer["checks"] if c["code"] == "box-way-out"]
    assert len(found) == 1
    assert found[0]["numbers"]["wall_mm"] == pytest.approx(135.0)
    assert found[0]["numbers"]["daylight_mm"] <= 128.0


@pytest.mark.parametrize(
    ("change", "code", "level"),
    [
        ({"relief": "none"}, "box-no-relief", "caution"),
        ({"relief_mm": 1.0}, "box-relief-small", "caution"),
        ({"relief_mm": 110.0}, "box-relief-eats", "stop"),
    ],
)
def test_reliefs_that_are_not_right(change: dict[str, Any], code: str, level: str) -> None:
    assert code in codes(planned(replace(TRAY, **change)), level)


def test_cut_back_sides_are_named() -> None:
    said = [c for c in planned(LIPS)["checks"] if c["code"] == "box-cut-back"]
    assert {words_of(c).split(" is ")[0] for c in said} == {"Front flat 2", "Back flat 2"}
    assert all(c["numbers"]["back_mm"] == pytest.approx(8.0, abs=0.05) for c in said)


def test_findings_speak_of_the_box() -> None:
    """A lip too short for any die: named by its side, its bend counted over the box."""
    answer = planned(tray(wall(), wall(), wall(30.0, 4.5), None))
    short = [c for c in answer["checks"] if c["code"].startswith("flange-too-short")]
    assert short
    assert all(c["bend"] in (3, 4) for c in short)
    words = " ".join(words_of(c) + c["do"] for c in answer["checks"]).lower()
    assert "flat 1 of" not in words


def test_a_lip_that_its_bend_uses_up_is_refused() -> None:
    with pytest.raises(NotAPartError, match=r"Front flat 2 is 3\.2 mm") as caught:
        planned(tray(wall(), wall(), wall(30.0, 3.2), None))
    assert caught.value.where == "box.sides.front.flats_mm.1"


def test_without_press_or_tools_the_blank_stands() -> None:
    bare = planned(TRAY, Crib(), None)
    assert bare["blank"]["lines"]
    assert bare["worst"] == "stop"
    assert all(s["segments_mm"] == {"punch": [], "die": []} for s in bare["steps"])


def test_one_side_alone() -> None:
    answer = planned(tray(None, None, wall(), None))
    assert [s["side"] for s in answer["steps"]] == ["front"]
    assert answer["steps"][0]["turn_quarter"] is False
    assert answer["blank"]["length_mm"] == 300.0


def test_an_error_of_a_section_is_told_of_the_box() -> None:
    with pytest.raises(NotAPartError) as caught:
        planned(tray(wall(), wall(30.0, 2.0), None, None))
    assert caught.value.where == "box.sides.right.flats_mm.1"
    assert caught.value.what.startswith("Right flat 2")


def test_the_part_can_be_posted_again() -> None:
    part = planned(LIPS)["part"]
    assert len(part["bends"]) == 8
    assert len(part["flats_mm"]) == 10
    assert part["box"]["sides"]["left"]["flats_mm"] == [30.0, 10.0]
    assert len(planned(LIPS)["flat_names"]) == 10
    assert planned(LIPS)["flat_names"][2] == "the base"


def test_both_bends_of_an_offset_have_their_numbers_in_the_box() -> None:
    offset = Side((40.0, 10.0, 25.0), (UP, DOWN, UP))
    answer = planned(tray(wall(30.0), wall(30.0), None, offset))
    found = next(c for c in answer["checks"] if c["code"] == "offset-too-low")
    assert found["bend"] in (4, 5)
    assert f"Bends {found['bend'] - 1} and {found['bend']} make an offset" in words_of(found)


PLEATS = Side((25.0,) * 4, (Bend(120.0, "up"), Bend(120.0, "down")) * 2)


def test_all_sections_of_a_box_share_one_deadline() -> None:
    given: list[PlanLimits] = []

    def planner(section: Part, tools: Crib, limits: PlanLimits) -> Plan:
        given.append(limits)
        return planned_section(section, PRESS, tools, METALS, limits=limits)

    box = tray(*[PLEATS] * 4, length_mm=400.0)
    planned_box(
        box, PRESS, CRIB, MILD, planner, PlanLimits(ends_at=(ends_at := time.monotonic() + 60))
    )
    assert len(given) > 1
    assert given[0].left_s() <= 31.0, "the second pair has half of the time"
    assert {one.ends_at for one in given[1:]} == {ends_at}


def test_with_the_time_up_no_more_tools_are_tried() -> None:
    """The best punch comes in pieces of 400 only, so the second pair is planned with another."""
    calls: list[Part] = []
    best = planned(TRAY)["steps"][-1]["punch"]
    cut = [replace(p, segments_mm=(400.0,)) if p.code == best else p for p in CRIB.punches]
    crib = replace(CRIB, punches=tuple(cut))

    def planner(section: Part, tools: Crib, limits: PlanLimits) -> Plan:
        calls.append(section)
        return planned_section(section, PRESS, tools, METALS, limits=limits)

    planned_box(TRAY, PRESS, crib, MILD, planner)
    assert len(calls) > 2
    calls.clear()
    late = planned_box(TRAY, PRESS, crib, MILD, planner, PlanLimits(ends_at=time.monotonic() - 1.0))
    assert len(calls) == 2
    assert "box-punch-between" in codes(plan_json(merged(late, PRESS, crib)), "stop")


class NotWantedError(Exception):
    """Nobody waits any more."""


def test_a_box_that_nobody_waits_for_ends_between_two_steps() -> None:
    asked = 0

    def cancelled() -> bool:
        nonlocal asked
        asked += 1
        if asked > 3:
            raise NotWantedError
        return False

    def planner(section: Part, tools: Crib, limits: PlanLimits) -> Plan:
        return planned_section(section, PRESS, tools, METALS)

    with pytest.raises(NotWantedError):
        planned_box(TRAY, PRESS, CRIB, MILD, planner, PlanLimits(cancelled=cancelled))


def test_a_box_with_one_pair_of_sides_has_all_of_the_time() -> None:
    given: list[PlanLimits] = []

    def planner(section: Part, tools: Crib, limits: PlanLimits) -> Plan:
        given.append(limits)
        return planned_section(section, PRESS, tools, METALS, limits=limits)

    ends_at = time.monotonic() + 60
    box = tray(wall(), wall(), None, None)
    planned_box(box, PRESS, CRIB, MILD, planner, PlanLimits(ends_at=ends_at))
    assert {one.ends_at for one in given} == {ends_at}
