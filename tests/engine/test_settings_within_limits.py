"""No setting that is shown is beyond what punch, die and press can do, whatever is asked."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

import pytest
from planning_shop import HOLDER, METALS, MILD, PRESS, STRAIGHT, UP, die, part

from flangebook.bending.tooling import Crib, Press
from flangebook.planning.next_setting import next_setting
from flangebook.planning.one_bend import check_bend, check_stroke
from flangebook.planning.plan import plan

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
    words = said["words"]
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
    step = step_of(planned())
    sharpest, deepest = step["limits"]["sharpest_deg"], step["limits"]["deepest_mm"]
    assert (sharpest, deepest) == (85.5, pytest.approx(6.5, abs=0.1))
    rows = step["corrections"]
    assert rows[-1]["measured_deg"] < 94.0
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
