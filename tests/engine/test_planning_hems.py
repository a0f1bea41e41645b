"""Hems in two steps, large radii in bumps."""

from __future__ import annotations

import itertools
from dataclasses import replace
from math import cos, pi, radians

import pytest
from plan_reading import codes, finding, remedy_of, words_of
from planning_shop import BLUNT, CRIB, HOLDER, METALS, MILD, PRESS, STRAIGHT, UP, die, part

from flangebook.bending.part.metals import Figure
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan

HEM = Bend(0.0, "up", None, "closed_hem")
OPEN_HEM = Bend(0.0, "up", None, "open_hem", 2.0)
THIN = replace(part((20.0, 60.0, 30.0), HEM, UP), thickness_mm=1.0)
ROUND = part((80.0, 80.0), replace(UP, inside_radius_mm=50.0))


def planned(one: Part, crib: Crib = CRIB) -> JsonDict:
    return plan(one, PRESS, crib, METALS)


def test_a_hem_is_an_acute_bend_and_a_flattening_made_first() -> None:
    steps = planned(THIN)["steps"]
    assert [(s["bend"], s["operation"]) for s in steps] == [
        (1, "hem pre-bend"),
        (1, "hem flatten"),
        (2, "bend"),
    ]
    acute = steps[0]
    assert (acute["punch"], acute["die"]) == ("P2", "V12-30")
    most = 30.0 + acute["springback_deg_high"] + 1.0
    assert 30.0 <= acute["included_angle_deg"] <= most, "no flatter than its springback asks"
    assert acute["set_angle_deg_low"] >= 30.0, "no sharper than the die"


def test_the_flattening_has_no_die_of_ours_and_says_what_is_not_known() -> None:
    answer = planned(THIN)
    flat = answer["steps"][1]
    nulls = ("punch", "die", "gauge_x_mm", "set_angle_deg", "punch_depth_mm", "force_kn")
    assert [flat[name] for name in nulls] == [None] * 6
    assert (flat["turn_over"], flat["turn_end"]) == (False, False)
    assert flat["corrections"] == []
    assert finding(answer, "hem-flattening")["level"] == "unknown"
    assert finding(answer, "hem-flattening")["step"] == 2
    sheet = flat["drawing"]["after"]["sheet"]
    assert max(y for _, y in sheet) - min(y for _, y in sheet) == pytest.approx(2.0, abs=0.02)
    before = flat["drawing"]["before"]["sheet"]
    assert max(y for _, y in before) > 4.0


def test_a_closed_hem_takes_043_t_off_the_outside_lengths() -> None:
    """Common practice for thin sheet: the blank is 0.43 t shorter than the flats."""
    alone = replace(part((14.0, 60.0), HEM), thickness_mm=1.0)
    answer = planned(alone)
    assert answer["blank_length_mm"] == pytest.approx(14 + 60 - 0.43, abs=0.005)


def test_an_open_hem_stands_open_by_its_gap() -> None:
    one = replace(part((14.0, 60.0), OPEN_HEM), thickness_mm=1.0)
    answer = planned(one)
    ring = answer["section"]["outline"]
    assert max(y for _, y in ring) - min(y for _, y in ring) == pytest.approx(4.0, abs=0.02)
    assert "hem-crack" not in codes(answer)
    assert "hem-crack" in codes(planned(THIN), "caution")


def test_without_acute_tools_a_hem_is_a_stop() -> None:
    crib = Crib((BLUNT, STRAIGHT), (die(8.0), die(16.0)), (HOLDER,))
    answer = planned(THIN, crib)
    assert "hem-pre-bend-too-open" in codes(answer, "stop")


def test_a_hem_at_either_end_and_both() -> None:
    right = replace(part((30.0, 60.0, 14.0), UP, replace(HEM, direction="down")), thickness_mm=1.0)
    assert [s["bend"] for s in planned(right)["steps"]] == [2, 2, 1]
    both = replace(part((14.0, 60.0, 14.0), HEM, HEM), thickness_mm=1.0)
    operations = [s["operation"] for s in planned(both)["steps"]]
    assert operations == ["hem pre-bend", "hem flatten"] * 2


def test_a_hem_too_short_for_the_acute_die_is_a_stop() -> None:
    """At 31 degrees the shoulder of a V of 12 is reached some 17 mm from the fold's outside."""
    short = replace(part((14.0, 60.0), HEM), thickness_mm=1.0)
    crib = replace(CRIB, dies=(die(12.0, 400.0, 30.0),))
    assert "flange-too-short" in codes(planned(short, crib), "stop")
    long = replace(short, flats_mm=(20.0, 60.0))
    assert "flange-too-short" not in codes(planned(long, crib))


def test_a_radius_too_large_for_the_tools_is_made_in_bumps() -> None:
    answer = planned(ROUND)
    step = answer["steps"][0]
    bumps = step["hits"]
    assert step["operation"] == "step bend"
    assert bumps["count"] * bumps["angle_each_deg"] == pytest.approx(90.0, abs=0.01)
    allowance = answer["blank"]["bend_lines"][0]["bend_allowance_mm"]
    assert bumps["count"] * bumps["pitch_mm"] == pytest.approx(allowance, abs=0.01)
    assert allowance == pytest.approx(pi / 2 * (50 + 0.5 * 2), abs=1e-3), "r/s over 5: k is 1"
    assert answer["blank"]["bend_lines"][0]["inside_radius_mm"] == 50.0
    assert step["included_angle_deg"] == pytest.approx(180 - bumps["angle_each_deg"], abs=1e-3)
    assert "stepped-radius" in codes(answer, "caution")
    assert step["corrections"] == []


def tight() -> JsonDict:
    """As seen: a radius of 10 mm in 3 mm sheet, in a V of 25 with bumps 4.5 mm apart."""
    return planned(part((60.0, 60.0), replace(UP, inside_radius_mm=10.0), thickness_mm=3.0))


def test_bumps_and_die_are_chosen_together() -> None:
    """Fewer bumps in a narrower V: the plan does not call its own pitch too small."""
    answer = tight()
    step = answer["steps"][0]
    assert step["operation"] == "step bend"
    assert step["hits"]["pitch_mm"] >= step["v_opening_mm"] / 2
    assert "step-pitch-small" not in codes(answer)
    assert not codes(answer, "stop")


def test_few_bumps_say_how_far_their_facets_stand_off() -> None:
    answer = tight()
    bumps = answer["steps"][0]["hits"]
    # Sagitta by hand: outside radius 13 mm, half of one bump's angle.
    sagitta = 13.0 * (1 - cos(radians(bumps["angle_each_deg"] / 2)))
    assert finding(answer, "step-facets")["numbers"]["chord_error_mm"] == pytest.approx(
        sagitta, abs=1e-3
    )
    assert finding(answer, "step-facets")["level"] == "caution"


def test_bumps_name_the_v_and_the_punch_of_one_stroke() -> None:
    found = finding(tight(), "stepped-radius")
    assert found["numbers"]["stroke_v_mm"] == pytest.approx(10.0 / 0.16)
    assert "In one stroke a V of about 62.5 mm would make it" in remedy_of(found)
    assert "a tip of 10 mm in a V of 40 mm or more" in remedy_of(found)


def test_one_bump_is_not_compared_with_the_whole_radius() -> None:
    """As seen: "4 mm against 14.5 mm, 263 % apart". The blank is counted with the 10 mm."""
    for answer in (tight(), planned(ROUND)):
        apart = [words_of(c) for c in answer["checks"] if c["code"] == "handbook-differs"]
        assert not any("inside radius" in words for words in apart)


def test_the_whole_radius_is_what_the_metal_bears() -> None:
    """One bump alone is sharper; the sheet is bent to the large radius."""
    metal = replace(
        MILD, code="m", min_radius_over_t_across=Figure(3.0, 3.0, 3.0, "invented", "typical")
    )
    round_part = part((60.0, 60.0), replace(UP, inside_radius_mm=10.0), thickness_mm=3.0)
    answer = plan(replace(round_part, metal="m", grain="across"), PRESS, CRIB, {"m": metal})
    assert answer["steps"][0]["operation"] == "step bend"
    assert "smallest-radius" not in codes(answer)


def test_bumps_are_said_not_to_be_looked_at_and_not_to_want_time() -> None:
    """The search ends at once; more time would not prove the bumps."""
    answer = planned(ROUND)
    words = answer["order"]["words"]
    assert "does not look at a radius made in bumps: bend 1" in words
    assert "in the time" not in words
    assert answer["order"]["proven"] is False
    assert "bend 1" in words_of(finding(answer, "clearance-not-checked"))
    assert "order-not-proven" not in codes(answer)


def test_no_order_with_bumps_is_no_proof() -> None:
    """A closed section with one round corner: refused, but its bumps were not looked at."""
    round_corner = replace(UP, inside_radius_mm=50.0)
    tube = part((80.0, 160.0, 160.0, 160.0, 76.0), round_corner, UP, UP, UP)
    answer = planned(tube, replace(CRIB, punches=CRIB.punches[:1]))
    assert "no-order" not in codes(answer)
    assert finding(answer, "order-not-found")["level"] == "caution"
    assert "the bumps of bend 1 taken as one bend. That is no proof." in answer["order"]["words"]


def test_the_bumps_are_gauged_a_pitch_apart_the_furthest_first() -> None:
    step = planned(ROUND)["steps"][0]
    xs = step["hits"]["gauge_x_mm"]
    assert len(xs) == step["hits"]["count"]
    assert step["gauge_x_mm"] == xs[0]
    gaps = [a - b for a, b in itertools.pairwise(xs)]
    assert gaps == pytest.approx([step["hits"]["pitch_mm"]] * len(gaps), abs=0.003)
    # The last bump is drawn: its gauge stands at the last X.
    finger = step["drawing"]["before"]["gauge"]
    assert min(x for x, _ in finger) == pytest.approx(xs[-1], abs=0.002)


def test_the_bumps_add_up_to_the_bend_in_the_drawing() -> None:
    """At the last bump the held side has turned by all bumps but half the last one."""
    step = planned(ROUND)["steps"][0]
    bumps = step["hits"]
    ring = step["drawing"]["before"]["sheet"]
    far = min(ring, key=lambda p: p[0])
    made = radians(bumps["angle_each_deg"] * (bumps["count"] - 1))
    assert far[1] > 40.0 * made / 2, "the held side stands up"


def test_a_radius_the_tools_give_is_one_bend() -> None:
    answer = planned(part((60.0, 60.0), replace(UP, inside_radius_mm=6.0)))
    assert answer["steps"][0]["operation"] == "bend"
    assert answer["steps"][0]["hits"] is None
