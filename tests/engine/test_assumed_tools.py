"""Tools of which only what is engraved is known: usual sizes fill the rest and prove nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from planning_shop import CHANNEL, CRIB, HOLDER, METALS, PRESS, STRAIGHT, die

from flangebook.bending.tools.outline import die_outline, punch_outline
from flangebook.bending.tools.tooling import Crib, Punch
from flangebook.bending.tools.usual_sizes import usual_block, usual_die, usual_punch
from flangebook.planning.one_bend import Named, check_bend
from flangebook.planning.plan import plan
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.shop.crib import dies_from

OUTLINE = ("height_mm", "body_width_mm")


def checks_of(answer, level):
    return {c["code"] for c in answer["checks"] if c["level"] == level}


def one_bend(punch=STRAIGHT, lower=None, press=PRESS):
    crib = Crib((punch,), (lower or die(16.0),), (HOLDER,))
    wanted = Wanted(METALS["mild-steel-cr"], 2.0, 200.0, 90.0)
    return check_bend(wanted, Equipment(press, crib), Named())


@given(
    angle=st.floats(10.0, 178.0), radius=st.floats(0.0, 60.0),
    shape=st.sampled_from(["straight", "gooseneck"]),
)  # fmt: skip
def test_usual_sizes_of_a_punch_make_an_outline(angle, radius, shape):
    sizes = usual_punch(shape, angle, radius)
    made = Punch("P", "", angle, radius, sizes["height_mm"], sizes["body_width_mm"], None, (),
                 shape=shape, neck_relief_mm=sizes.get("neck_relief_mm", 0.0))  # fmt: skip
    top = max(y for _, y in punch_outline(made))
    assert top == pytest.approx(made.height_mm)


@given(v=st.floats(2.0, 300.0), angle=st.floats(20.0, 160.0))
def test_usual_sizes_of_a_die_make_an_outline(v, angle):
    made = replace(die(16.0), v_opening_mm=v, angle_deg=angle, **usual_die(v, angle))
    assert min(y for _, y in die_outline(made)) == pytest.approx(-made.height_mm)


@given(st.lists(st.tuples(st.floats(4.0, 120.0), st.floats(30.0, 120.0)), min_size=1, max_size=8))
def test_usual_sizes_of_a_block_take_all_its_vs(vs):
    sizes = usual_block(vs)
    kept = {"code": "B", "name": "", "shape": "multi_v", "rating_kn_per_m": None,
            "height_mm": sizes.side_mm, "width_mm": sizes.side_mm, "segments_mm": (),
            "v_opening_mm": 1, "angle_deg": 90, "shoulder_radius_mm": 1, "up": 1,
            "openings": [
                {"code": f"B.{n}", "v_opening_mm": v, "angle_deg": angle,
                 "shoulder_radius_mm": 0.1 * v, "face": face, "centre_mm": centre,
                 "rating_kn_per_m": None}
                for n, ((v, angle), (face, centre)) in enumerate(zip(vs, sizes.places, strict=True))
            ]}  # fmt: skip
    assert len(dies_from(kept)) == len(vs)


def test_a_usual_block_is_no_larger_than_it_need_be():
    assert usual_block([(16.0, 85.0), (22.0, 85.0), (35.0, 85.0), (50.0, 85.0)]).side_mm <= 90.0


def test_a_block_is_endless_for_no_v_that_can_be():
    """A growing block takes every V at last: what is deeper than any block is refused before."""
    assert usual_block([(500.0, 5.0)]).side_mm < 10_000.0


def test_sizes_that_are_given_are_kept():
    assert usual_punch("straight", 85.0, 1.0, body_width_mm=30.0)["body_width_mm"] == 30.0
    assert usual_die(16.0, 85.0, height_mm=90.0)["height_mm"] == 90.0


def test_the_answer_names_what_is_assumed():
    answer = one_bend(replace(STRAIGHT, assumed=OUTLINE))
    said = next(c for c in answer["checks"] if c["code"] == "punch-sizes-assumed")
    assert said["level"] == "unknown"
    assert "height {height_mm}" in said["template"]
    assert said["numbers"]["height_mm"] == STRAIGHT.height_mm
    lower = replace(die(16.0), assumed=("shoulder_radius_mm",))
    said = next(c for c in one_bend(lower=lower)["checks"] if c["code"] == "die-sizes-assumed")
    assert "shoulder radius" in said["template"]


def test_an_assumed_height_neither_stops_nor_passes():
    tall = replace(STRAIGHT, height_mm=1000.0)
    assert "tools-too-tall" in checks_of(one_bend(tall), "stop")
    answer = one_bend(replace(tall, assumed=OUTLINE))
    assert checks_of(answer, "stop") == set()
    assert "heights-unknown" in checks_of(answer, "unknown")
    assert answer["set_angle_deg"] is not None


@pytest.mark.parametrize("kind", ["punch", "die"])
def test_pieces_left_empty_are_one_piece_as_long_as_needed_and_unknown(kind):
    punch, lower = STRAIGHT, die(16.0)
    if kind == "punch":
        punch = replace(punch, segments_mm=())
    else:
        lower = replace(lower, segments_mm=())
    answer = one_bend(punch, lower)
    assert checks_of(answer, "stop") == set()
    assert f"{kind}-pieces-unknown" in checks_of(answer, "unknown")


def test_the_clearance_of_an_assumed_outline_is_unknown():
    sure = plan(CHANNEL, PRESS, CRIB, METALS)
    assert sure["order"]["proven"]
    crib = replace(CRIB, punches=tuple(replace(p, assumed=OUTLINE) for p in CRIB.punches))
    answer = plan(CHANNEL, PRESS, crib, METALS)
    assert "clearance-assumed" in checks_of(answer, "unknown")
    said = next(c for c in answer["checks"] if c["code"] == "clearance-assumed")
    assert f"punch {answer['steps'][0]['punch']}" in said["template"]
    assert answer["order"]["proven"] is False
