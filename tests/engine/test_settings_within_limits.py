"""No setting that is shown is beyond what punch, die and press can do, whatever is asked."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from math import radians, tan
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from one_bend_asked import check_bend, check_stroke
from plan_reading import words_of
from planning_shop import HOLDER, METALS, MILD, PRESS, STAINLESS, STRAIGHT, UP, die, part

from flangebook.bending.errors import InputError
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.answers.setting_json import in_force
from flangebook.planning.plan import plan
from flangebook.planning.results.next_setting import Made, next_setting

Json = dict[str, Any]
S85 = replace(STRAIGHT, code="S85-2", angle_deg=85.0, tip_radius_mm=2.0)
V16 = replace(die(16.0, angle=85.0), code="V16", shoulder_radius_mm=1.6)
SEEN = Crib(punches=(S85,), dies=(V16,), holders=(HOLDER,))
ANGLE = part((40.0, 60.0), UP)


def planned(crib: Crib = SEEN, press: Press | None = PRESS, **more: Any) -> Json:
    return plan(replace(ANGLE, **more), press, crib, METALS)


def step_of(answer: Json) -> Json:
    step: Json = answer["steps"][0]
    return step


def settings_in(answer: Any) -> Iterator[tuple[str, float]]:
    """Every angle and depth to set, by the names the API gives them, at any depth."""
    if isinstance(answer, Mapping):
        for name, value in answer.items():
            number = isinstance(value, float)
            if name.startswith(("set_angle_deg", "loaded_angle_deg")) and number:
                yield "angle", value
            elif name.startswith("punch_depth_mm") and number:
                yield "depth", value
            else:
                yield from settings_in(value)
    elif isinstance(answer, list):
        for value in answer:
            yield from settings_in(value)


@pytest.mark.parametrize("measured", [97.0, 110.0, 120.0])
def test_a_result_that_asks_for_more_than_the_tools_have_gets_no_number(measured):
    """Seen: 81.3, 68.1 and 58.0 degrees, 6.84, 7.96 and 8.82 mm; the tools end at 85 degrees,
    about 6.5 mm, and the V is 8.7 mm deep."""
    step = step_of(planned())
    said = next_setting(step, {"measured_deg": measured}, 500.0)
    assert (said["set_angle_deg"], said["punch_depth_mm"], said["tilt_mm_per_m"]) == (None,) * 3
    assert said["limited_by"] == ["punch angle", "die angle"]
    words = " ".join((words_of(said["said"]), *said["to_check"]))
    assert "punch" in words
    assert "die" in words
    assert "85.5°" in words
    order = [words.lower().index(word) for word in ("angle again", "tools", "thickness", "zero")]
    assert order == sorted(order)
    assert "Set " not in words


def test_a_result_within_reach_is_answered_as_before():
    step = step_of(planned())
    said = next_setting(step, {"measured_deg": 91.0}, 500.0)
    assert said["set_angle_deg"] == pytest.approx(step["set_angle_deg"] - 1.0, abs=0.1)
    assert step["punch_depth_mm"] < said["punch_depth_mm"] < step["limits"]["deepest_mm"]
    assert said["limited_by"] == []


def test_the_table_of_corrections_ends_where_the_tools_end():
    step = step_of(planned(bends=(replace(UP, included_angle_deg=88.0),)))
    sharpest, deepest = step["limits"]["sharpest_deg"], step["limits"]["deepest_mm"]
    assert (sharpest, deepest) == (85.5, pytest.approx(6.5, abs=0.1))
    rows = step["corrections"]
    assert rows[-1]["measured_deg"] < 92.0
    assert rows[-1]["set_angle_deg"] == pytest.approx(sharpest)
    assert all(row["set_angle_deg"] >= sharpest for row in rows)
    assert all(row["punch_depth_mm"] <= deepest for row in rows)


def test_a_bend_sharper_than_the_tools_has_no_setting_anywhere():
    for answer in (
        check_bend(MILD, 2.0, 500.0, 80.0, press=PRESS, crib=SEEN, die="V16", punch="S85-2"),
        planned(bends=(replace(UP, included_angle_deg=80.0),)),
        check_stroke(MILD, 2.0, 500.0, 80.0, press=PRESS, crib=SEEN, die="V16", punch="S85-2"),
    ):
        shown = list(settings_in(answer))
        assert all(value >= 85.5 for kind, value in shown if kind == "angle")
        assert all(value <= 6.56 for kind, value in shown if kind == "depth")
        stops = [c for c in answer["checks"] if c["level"] == "stop"]
        assert {"sharper-than-die", "sharper-than-punch"} <= {c["code"] for c in stops}
        for stop in stops:
            assert all(value > 0 for value in stop["numbers"].values())


# Whatever the tools, the sheet and the result: what may be set is worked out here once more,
# from the tools' own angles and sizes.

angles_of_tools = st.floats(20.0, 120.0)
presses = st.one_of(
    st.none(),
    st.builds(
        lambda stroke, opens: replace(PRESS, stroke_mm=stroke, open_height_mm=opens),
        st.floats(1.0, 200.0),
        st.floats(100.0, 500.0),
    ),
)
MORE_THAN_THERE_IS = st.floats(-50.0, 400.0)


@st.composite
def set_ups(draw: st.DrawFn) -> tuple[Crib, Press | None, float, float]:
    """A crib of one die and one punch, a press or none, a thickness and an angle that is wanted."""
    v = draw(st.floats(5.0, 60.0))
    one = replace(die(v, angle=draw(angles_of_tools)), code="V", height_mm=120.0)
    other = replace(
        STRAIGHT,
        code="P",
        angle_deg=draw(angles_of_tools),
        tip_radius_mm=draw(st.floats(0.2, v / 3.0)),
    )
    crib = Crib(punches=(other,), dies=(one,), holders=(HOLDER,))
    thickness = v / draw(st.floats(3.0, 20.0))
    return crib, draw(presses), thickness, draw(st.floats(25.0, 174.0))


def outside(crib: Crib, press: Press | None, thickness_mm: float, answer: Any) -> list[Any]:
    """The settings of an answer that tools and press cannot be set to."""
    (one,), (other,) = crib.dies, crib.punches
    sharpest = max(one.angle_deg, other.angle_deg) + 0.5
    deepest = one.v_opening_mm / 2.0 / tan(radians(one.angle_deg / 2.0))
    if press is not None:
        stack = one.height_mm + other.height_mm + HOLDER.height_mm + thickness_mm
        way = press.open_height_mm - stack
        deepest = min(deepest, max(press.stroke_mm - way, 0.0)) if way > 0.0 else 0.0
    return [
        (kind, value)
        for kind, value in settings_in(answer)
        if (kind == "angle" and not sharpest - 1e-3 <= value <= 180.0)
        or (kind == "depth" and not 0.0 <= value <= deepest + 1e-3)
    ]


@settings(max_examples=60)
@given(set_ups(), st.sampled_from([MILD, STAINLESS]))
def test_one_bend_and_its_stroke_show_nothing_outside(set_up, metal):
    crib, press, t, wanted = set_up
    named = {"press": press, "crib": crib, "die": "V", "punch": "P"}
    for ask in (check_bend, check_stroke):
        try:
            answer = ask(metal, t, 300.0, wanted, **named)
        except InputError:
            continue
        assert outside(crib, press, t, answer) == []
        shown = answer if ask is check_bend else answer["set"]
        said = {c["code"] for c in answer["checks"] if c["level"] == "stop"}
        if ask is check_bend and shown["set_angle_deg"] is None:
            assert said & STOPS, "a setting that is not there has a reason"


STOPS = {
    "sharper-than-die",
    "sharper-than-punch",
    "die-too-shallow",
    "tools-too-low",
    "tools-too-tall",
}
results = st.fixed_dictionaries(
    {"measured_deg": st.floats(0.5, 179.5)},
    optional={"set_angle_deg": st.floats(0.5, 179.5), "punch_depth_mm": MORE_THAN_THERE_IS},
)
kept = st.one_of(
    st.none(),
    st.fixed_dictionaries(
        {"step": st.just(1)},
        optional={"set_angle_deg": st.floats(0.5, 179.5), "punch_depth_mm": MORE_THAN_THERE_IS},
    ),
)


@settings(max_examples=15)
@given(set_ups(), st.data())
def test_plan_table_and_every_next_setting_show_nothing_outside(set_up, data):
    crib, press, t, wanted = set_up
    flats = (30.0 * t + 60.0, 30.0 * t + 80.0)
    one = replace(
        ANGLE, thickness_mm=t, flats_mm=flats, bends=(replace(UP, included_angle_deg=wanted),)
    )
    answer = plan(one, press, crib, METALS)
    assert outside(crib, press, t, answer) == []
    for step in answer["steps"]:
        for _ in range(20):
            result = data.draw(results)
            earlier = [
                Made(each, data.draw(kept)) for each in data.draw(st.lists(results, max_size=2))
            ]
            said = next_setting(step, result, 500.0, data.draw(kept), earlier)
            assert outside(crib, press, t, said) == []
            if said["set_angle_deg"] is None and step["set_angle_deg"] is not None:
                assert said["to_check"]
                assert said["tilt_mm_per_m"] is None


@given(results, kept)
def test_a_step_of_an_earlier_release_gives_nothing_outside_either(result, own):
    """Its table goes past the flanks of the die, and it carries no limits: the V is drawn."""
    step = step_of(PLANNED)
    old = {name: value for name, value in step.items() if name != "limits"}
    last = step["corrections"][-1]
    beyond = [
        {
            "measured_deg": last["measured_deg"] + i / 2,
            "set_angle_deg": last["set_angle_deg"] - i / 2,
            "punch_depth_mm": last["punch_depth_mm"] + 0.04 * i,
        }
        for i in range(1, 5)
    ]
    old["corrections"] = [*step["corrections"], *beyond]
    assert outside(SEEN, PRESS, 2.0, next_setting(old, result, 500.0, own)) == []
    angle, depth = in_force(old, own)
    assert angle is None or angle >= 85.5 - 1e-6
    assert depth is None or depth <= step["limits"]["deepest_mm"] + 0.01


PLANNED = planned()


@pytest.mark.parametrize(
    "own", [{"set_angle_deg": 58.0, "punch_depth_mm": 8.82}, {"punch_depth_mm": 8.82}]
)
def test_a_setting_that_was_kept_beyond_the_limits_is_not_shown(own):
    step = step_of(PLANNED)
    assert in_force(step, own) == (None, None)
    assert in_force(step, None) == (step["set_angle_deg"], step["punch_depth_mm"])
    assert in_force({**step, "limits": None}, None) == (None, None)
