"""The gauge: what the numbers say is what the emitted drawing measures."""

from __future__ import annotations

from dataclasses import replace

import pytest
from bending_parts import DIE, HOLDER, PRESS, PUNCH, bend, folded, folded_parts, part, stroke
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LinearRing, Point, Polygon, box
from test_pose import sheet_during

from flangebook.bending.geometry.strip import Strip
from flangebook.bending.motion import gauging, pose
from flangebook.bending.motion.gauging import Gauge
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import FoldedBend, strip_of
from flangebook.bending.tools.tooling import Die

Made = tuple[Part, list[FoldedBend]]
WIDE_PRESS = replace(
    PRESS, gauge_x_max_mm=3000.0, gauge_r_min_mm=-500.0, gauge_r_max_mm=900.0, bed_width_mm=60.0
)


def drawing(of: Part, bends: list[FoldedBend], strip: Strip, number: int, gauge: Gauge):  # type: ignore[no-untyped-def]
    tight = [FoldedBend(1.0, b.allowance_mm) for b in bends]  # any radius fits this V
    return pose.step_drawing(
        strip, number, of.bends[number - 1].direction, stroke(of, tight, number),
        press=WIDE_PRESS, holder=HOLDER, punch=PUNCH, die=DIE, gauge=gauge,
    )  # fmt: skip


@settings(max_examples=150, deadline=None)
@given(
    folded_parts(most_bends=5, least_angle_deg=80.0, least_radius_mm=1.0),
    st.data(),
)
def test_x_and_r_are_what_the_drawing_measures(made: Made, data: st.DataObject) -> None:
    of, bends = made
    numbers = range(1, len(of.bends) + 1)
    number = data.draw(st.sampled_from(numbers))
    done = data.draw(st.sets(st.sampled_from(numbers))) - {number}
    strip = strip_of(of, bends, done)
    way = of.bends[number - 1].direction
    for gauge in gauging.gauge_options(strip, number, way, WIDE_PRESS, DIE, punch=PUNCH):
        if not gauge.reachable:
            assert gauge.reason
            continue
        drawn = drawing(of, bends, strip, number, gauge)
        sheet, finger = Polygon(drawn.sheet_before).buffer(0), Polygon(drawn.gauge)
        low, high = finger.bounds[1], finger.bounds[3]
        reach = LinearRing(drawn.sheet_before).intersection(box(-5000, low, 5000, high))
        # X: how far back the sheet reaches at the finger's height; R: height of the contact.
        assert reach.bounds[2] == pytest.approx(gauge.x_mm, abs=1e-6)
        assert finger.bounds[0] == pytest.approx(gauge.x_mm, abs=1e-9)
        assert drawn.gauge_point == pytest.approx((gauge.x_mm, gauge.r_mm))
        touch = Point(drawn.gauge_point)
        assert LinearRing(drawn.sheet_before).distance(touch) < 1e-6
        assert LinearRing(drawn.gauge).distance(touch) < 1e-9
        assert sheet.intersection(finger).area < 1e-4
        assert finger.intersection(Polygon(drawn.die)).area < 1e-6
        assert finger.intersection(Polygon(drawn.bed)).area < 1e-6
        assert finger.intersection(Polygon(drawn.punch_before)).area < 1e-6


@settings(max_examples=100, deadline=None)
@given(folded_parts(most_bends=6, least_angle_deg=80.0, least_radius_mm=1.0), st.data())
def test_flat_sheet_is_gauged_by_its_edges(made: Made, data: st.DataObject) -> None:
    of, bends = made
    number = data.draw(st.integers(1, len(of.bends)))
    strip = strip_of(of, bends, ())
    at = strip.folds[number - 1].at_mm
    way = of.bends[number - 1].direction
    found = {g.end: g for g in gauging.gauge_options(strip, number, way, WIDE_PRESS, DIE)}
    assert found["left"].x_mm == pytest.approx(at)
    assert found["right"].x_mm == pytest.approx(strip.length_mm - at)
    for gauge in found.values():
        assert gauge.against == "flat edge"
        assert gauge.r_mm == pytest.approx(of.thickness_mm / 2.0)
        assert gauge.bends_between == 0


@settings(max_examples=60, deadline=None)
@given(folded_parts(most_bends=4, least_angle_deg=80.0, least_radius_mm=1.0), st.data())
def test_drawing_the_part_from_its_other_end_changes_only_the_name_of_the_end(
    made: Made, data: st.DataObject
) -> None:
    of, bends = made
    number = data.draw(st.integers(1, len(of.bends)))
    others = [n for n in range(1, len(of.bends) + 1) if n != number]
    done = data.draw(st.sets(st.sampled_from(others))) if others else set()
    strip = strip_of(of, bends, done)
    way = of.bends[number - 1].direction
    here = gauging.gauge_options(strip, number, way, PRESS, DIE)
    there = gauging.gauge_options(strip.reversed(), len(of.bends) + 1 - number, way, PRESS, DIE)

    def key(g: Gauge, swap: bool) -> tuple[object, ...]:
        end = {"left": "right", "right": "left"}[g.end] if swap else g.end
        return (end, round(g.x_mm, 6), round(g.r_mm, 6), g.against, g.reachable)

    assert sorted(key(g, False) for g in here) == sorted(key(g, True) for g in there)


CHANNEL = part((30.0, 80.0, 30.0), (bend(), bend()))


def test_outside_of_a_finished_flange_is_gauged_to_the_outside_dimension() -> None:
    """U channel, second bend against the first flange: X is the web less half a deduction."""
    bends = folded(CHANNEL)
    strip = strip_of(CHANNEL, bends, {1})
    (gauge,) = [
        g for g in gauging.gauge_options(strip, 2, "up", PRESS, DIE) if g.against != "flat edge"
    ]
    deduction = 2.0 * (2.5 + 2.0) - bends[1].allowance_mm
    assert gauge.end == "left"
    assert gauge.x_mm == pytest.approx(80.0 - deduction / 2.0)
    assert (gauge.bends_between, gauge.reachable) == (1, True)


def test_edge_with_no_bend_between_comes_first() -> None:
    strip = strip_of(CHANNEL, folded(CHANNEL), {1})
    first, second = gauging.gauge_options(strip, 2, "up", PRESS, DIE)
    assert (first.end, first.against) == ("right", "flat edge")
    assert (second.end, second.against) == ("left", "finished flange")


def test_the_shorter_leg_comes_first() -> None:
    strip = strip_of(CHANNEL, folded(CHANNEL), ())
    options = gauging.gauge_options(strip, 1, "up", PRESS, DIE)
    assert [g.end for g in options] == ["left", "right"]


def test_what_the_finger_cannot_reach_is_said() -> None:
    strip = strip_of(CHANNEL, folded(CHANNEL), ())
    short = replace(PRESS, gauge_x_max_mm=100.0)
    options = gauging.gauge_options(strip, 1, "up", short, DIE)
    assert [g.reachable for g in options] == [True, False]
    assert "outside the gauge's travel, 5 mm to 100 mm" in options[1].reason.words
    none = replace(PRESS, gauge_x_min_mm=200.0)
    assert not any(g.reachable for g in gauging.gauge_options(strip, 1, "up", none, DIE))
    high = replace(PRESS, gauge_r_min_mm=10.0)
    assert "R 1 mm" in gauging.gauge_options(strip, 1, "up", high, DIE)[0].reason.words


def test_a_lip_past_the_flange_is_in_the_finger_s_way() -> None:
    """The flange's face can be met only below the lip: a tall finger has to go down for it."""
    of = part((60.0, 80.0, 16.0, 14.0), (bend(), bend(), bend(90.0, "down")))
    bends = folded(of)
    strip = strip_of(of, bends, {2, 3})

    def at_flange(finger_mm: float, die: Die, bed_mm: float) -> Gauge:
        press = replace(PRESS, finger_height_mm=finger_mm, bed_width_mm=bed_mm)
        options = gauging.gauge_options(strip, 1, "up", press, die)
        return next(g for g in options if g.end == "right" and g.against == "finished flange")

    lip_mm = 16.0 - 2.0 - 2.5  # where the lip's round begins, from the outside of the web
    assert at_flange(6.0, DIE, 100.0).reachable
    lowered = at_flange(30.0, DIE, 100.0)
    assert lowered.reachable
    assert lowered.finger_bottom_mm + 30.0 == pytest.approx(lip_mm)
    blocked = at_flange(30.0, replace(DIE, height_mm=12.0), 200.0)  # the bed is in the way below
    assert not blocked.reachable
    assert "in the way" in blocked.reason.words
    assert at_flange(20.0, replace(DIE, height_mm=12.0), 200.0).reachable


def test_the_finger_stays_out_of_the_die() -> None:
    """A flange that hangs down beside the bend line lies over the die: not to be gauged."""
    of = part((60.0, 20.0, 12.0), (bend(), bend(90.0, "down")))
    strip = strip_of(of, folded(of), {2})
    right = [g for g in gauging.gauge_options(strip, 1, "up", PRESS, DIE) if g.end == "right"]
    assert [g.reachable for g in right] == [False]
    assert "inside the die" in right[0].reason.words


def test_a_bend_past_square_is_gauged_by_its_round() -> None:
    of = part((60.0, 50.0, 30.0), (bend(), bend(60.0)))
    strip = strip_of(of, folded(of), {2})
    right = [g for g in gauging.gauge_options(strip, 1, "up", PRESS, DIE) if g.end == "right"]
    assert [(g.rounded, g.reachable) for g in right] == [(True, True)]
    assert right[0].r_mm == pytest.approx(2.0 + 2.5, abs=0.5)  # a corner of the drawn arc


def test_a_closed_hem_is_gauged_by_its_fold() -> None:
    fold = Bend(0.0, "up", kind="closed_hem")
    of = part((60.0, 50.0, 12.0), (bend(), fold))
    bends = [folded(of)[0], FoldedBend(0.0, 3.14159)]
    strip = strip_of(of, bends, {2})
    right = [g for g in gauging.gauge_options(strip, 1, "up", PRESS, DIE) if g.end == "right"]
    assert [(g.rounded, g.reachable) for g in right] == [(True, True)]
    deduction = 2.0 * (2.5 + 2.0) - bends[0].allowance_mm
    assert right[0].x_mm == pytest.approx(50.0 - deduction / 2.0)


def swept(of: Part, bends: list[FoldedBend], strip: Strip, number: int, gauge: Gauge) -> float:
    """Deepest the leg comes past the finger's face over 200 poses, by shapely."""
    step = stroke(of, bends, number)
    faced, n = pose.facing(strip, number, of.bends[number - 1].direction, gauge.end)
    low, high = gauge.finger_bottom_mm, gauge.finger_bottom_mm + PRESS.finger_height_mm
    worst = 0.0
    for i in range(1, 201):
        ring = LinearRing(sheet_during(faced, n, step, DIE, i / 200))
        cut = ring.intersection(box(-5000, low, 5000, high))
        if not cut.is_empty:
            worst = max(worst, cut.bounds[2] - gauge.x_mm)
    return worst


@pytest.mark.parametrize(
    ("flats", "ways", "made", "number"),
    [
        ((60, 50, 25), ("up", "down"), {2}, 1),
        ((60, 50, 25), ("up", "up"), {2}, 1),
        ((60, 60, 40, 15), ("up", "down", "down"), {2, 3}, 1),
        ((30, 80, 30), ("up", "up"), {1}, 2),
        ((15, 40, 60, 40, 15), ("up", "down", "down", "up"), {1, 2, 4}, 3),
    ],
)
def test_the_finger_retracts_where_the_leg_sweeps_through_it(
    flats: tuple[float, ...], ways: tuple[str, ...], made: set[int], number: int
) -> None:
    of = part(flats, [bend(90.0, w) for w in ways])  # type: ignore[arg-type]
    bends = folded(of)
    strip = strip_of(of, bends, made)
    way = of.bends[number - 1].direction
    for gauge in gauging.gauge_options(strip, number, way, PRESS, DIE):
        if not gauge.reachable:
            continue
        back = gauging.retract_mm(
            gauge, strip, number, way, stroke=stroke(of, bends, number), press=PRESS, die=DIE
        )
        worst = swept(of, bends, strip, number, gauge)
        if worst > 0.4:
            assert back > worst
        if worst < 0.15:
            assert back == 0.0


def test_a_hanging_flange_needs_the_finger_drawn_back() -> None:
    of = part((60.0, 50.0, 25.0), (bend(), bend(90.0, "down")))
    bends = folded(of)
    strip = strip_of(of, bends, {2})
    options = [g for g in gauging.gauge_options(strip, 1, "up", PRESS, DIE) if g.end == "right"]
    back = gauging.retract_mm(
        options[0], strip, 1, "up", stroke=stroke(of, bends, 1), press=PRESS, die=DIE
    )
    assert back > 2.0
    first = gauging.gauge_options(strip, 1, "up", PRESS, DIE)[0]
    assert first.end == "left"  # the free edge is better, and nothing sweeps there
    clear = gauging.retract_mm(
        first, strip, 1, "up", stroke=stroke(of, bends, 1), press=PRESS, die=DIE
    )
    assert clear == 0.0
