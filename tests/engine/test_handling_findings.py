"""Hands and handling: mass, lifting, edges that swing up."""

from __future__ import annotations

from math import cos, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sheet_metals import die

from flangebook.bending.errors import InputError, RangeError
from flangebook.bending.geometry.air_bend_geometry import edge_rate_mm_per_mm, punch_depth_mm
from flangebook.bending.motion.handling import (
    general_cautions,
    hand_distance,
    hanging_flange,
    lifting,
    swing_up,
)

DIE = die(16.0, 30.0, 2.0)
TOOL = (16.0, 30.0, 2.0)


@pytest.mark.parametrize(
    ("mass", "width", "level", "code"),
    [
        (2.9, 1200, "ok", "lifting"),  # light, however wide
        (8.0, 400, "ok", "lifting"),
        (15.0, 400, "caution", "lifting-two"),
        (25.0, 400, "caution", "lifting-hoist"),
        (8.0, 900, "caution", "lifting-wide"),
    ],
)
def test_lifting(mass, width, level, code):
    found = lifting(mass, 1000.0, width)
    assert (found.level, found.code) == (level, code)
    assert lifting(mass, width, 1000.0) == found  # whichever way the sides are named


@given(st.floats(3.1, 60.0), st.floats(100, 800), st.floats(1.01, 2.0))
def test_wider_is_never_easier(mass, width, more):
    order = ["lifting", "lifting-two", "lifting-hoist", "lifting-wide"]
    narrow, wide = lifting(mass, 2000, width), lifting(mass, 2000, min(width * more, 2000))
    assert order.index(wide.code) >= order.index(narrow.code)


def edge_by_drawing(flange, angle, r=2.56, t=2.0):
    """Height of the outer edge, from the sheet's lowest point: arc, leg, all by hand."""
    theta = radians(180 - angle) / 2
    bottom = -punch_depth_mm(angle, r, t, *TOOL)
    mould_line = bottom + (r + t) - (r + t) / cos(theta)
    return mould_line + flange * sin(theta)


@given(st.floats(50.0, 170.0), st.floats(20.0, 900.0))
def test_edge_height_is_the_drawing_s(angle, flange):
    found = swing_up(flange, angle, 2.56, 2.0, DIE, 10.0)
    assert found.numbers["edge_height_mm"] == pytest.approx(
        max(edge_by_drawing(flange, angle), 0.0), abs=1e-9
    )


@given(st.floats(40.0, 170.0), st.floats(20.0, 900.0), st.floats(1.0, 20.0))
def test_edge_speed_is_the_fastest_of_the_stroke(angle, flange, speed):
    found = swing_up(flange, angle, 2.56, 2.0, DIE, speed)
    along = [
        edge_rate_mm_per_mm(180 - (180 - angle) * i / 500, flange, 2.56, 2.0, *TOOL) * speed
        for i in range(501)
    ]
    assert found.numbers["edge_speed_mm_s"] >= max(along) - 1e-9
    assert found.numbers["edge_speed_mm_s"] == pytest.approx(max(along), rel=1e-3)


@pytest.mark.parametrize(
    ("flange", "speed", "level"),
    [
        (50, 10, "ok"),
        (300, 2, "ok"),
        (500, 2, "caution"),  # high
        (300, 20, "caution"),  # fast
        (50, None, "ok"),
        (300, None, "unknown"),
        (600, None, "caution"),
    ],
)
def test_swing_up(flange, speed, level):
    assert swing_up(flange, 90, 2.56, 2.0, DIE, speed).level == level


def test_swing_up_refuses_an_angle_out_of_reach():
    with pytest.raises(RangeError):
        swing_up(300, 40, 12.0, 2.0, DIE, 10.0)


@given(st.floats(1.0, 500.0), st.floats(0.0, 200.0))
def test_hand_distance_counts_from_the_front_of_the_die(held, width):
    assume(abs(held - width / 2 - 102) > 1e-6)
    found = hand_distance(held, width)
    assert (found.level == "ok") == (held - width / 2 > 102)
    assert found.numbers["room_mm"] >= 0


@pytest.mark.parametrize(("hangs", "words"), [(20.0, "."), (90.0, "past the die")])
def test_hanging_flange(hangs, words):
    found = hanging_flange(hangs, 80.0)
    assert found.level == "caution"
    assert words in found.words


@pytest.mark.parametrize("hangs", [0.0, -5.0])
def test_nothing_hangs(hangs):
    assert hanging_flange(hangs, 80.0) is None


def test_general_cautions_cover_what_hurts_and_defer():
    text = " ".join(f"{c.words} {c.do}" for c in general_cautions()).lower()
    for word in ("hand", "pedal", "guard", "edge", "wing", "rating", "manual", "local codes",
                 "trained"):  # fmt: skip
        assert word in text
    assert "not a safety assessment" in text
    for promise in ("complies", "compliant", "safe to", "certified"):
        assert promise not in text
    codes = [c.code for c in general_cautions()]
    assert len(set(codes)) == len(codes)
    assert all(c.level == "caution" and c.do for c in general_cautions())


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
def test_refuses_unusable_sizes(bad):
    for call in (
        lambda: lifting(bad, 100, 100),
        lambda: swing_up(bad, 90, 2, 2, DIE, 10),
        lambda: swing_up(100, 90, 2, 2, DIE, bad),
        lambda: hand_distance(bad, 60),
    ):
        with pytest.raises(InputError):
            call()
