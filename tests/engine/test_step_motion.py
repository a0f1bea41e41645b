"""The frames of a step: rigid legs, from the sheet before to the sheet after, small enough."""

from __future__ import annotations

import json
import math
from typing import Any, Literal

import pytest
from bending_parts import DIE, PRESS, PUNCH, bend, folded, part, stroke
from hypothesis import HealthCheck, assume, example, given, settings
from hypothesis import strategies as st
from planning_shop import CRIB, METALS
from planning_shop import PRESS as SHOP_PRESS
from shapely import Polygon
from test_pose import sheet_during

from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.motion import pose
from flangebook.bending.motion.step_motion import Frame, Placed, StepMotion, pressed_motion
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import check_part, strip_of
from flangebook.planning.order.search import PlanLimits
from flangebook.planning.plan import plan

MOST_BYTES = 4096
"""A step's motion on the wire, so that a card of many bends stays light on a phone."""
ARC_POINTS = 24
COARSE_MM = 0.5
"""A leg of many folds has few chords a fold; this is how far its outline may cut a corner."""


def placed(points: Any, where: Any) -> list[tuple[float, float]]:
    x, y, turned = where
    cos, sin = math.cos(math.radians(turned)), math.sin(math.radians(turned))
    return [(x + cos * px - sin * py, y + sin * px + cos * py) for px, py in points]


def arc(start: Any, end: Any, radius: float, degrees: float) -> list[tuple[float, float]]:
    """From start to end round a centre above the chord, as the legs' tangents ask for."""
    if math.dist(start, end) < 1e-9 or radius <= 0.0 or degrees < 1e-6:
        return [start, end]
    half = math.radians(degrees) / 2.0
    dx, dy = end[0] - start[0], end[1] - start[1]
    chord = math.hypot(dx, dy)
    up = math.copysign(radius * math.cos(half), 1.0)
    cx = (start[0] + end[0]) / 2.0 - dy / chord * up
    cy = (start[1] + end[1]) / 2.0 + dx / chord * up
    first = math.atan2(start[1] - cy, start[0] - cx)
    return [
        (cx + radius * math.cos(first + 2.0 * half * i / ARC_POINTS),
         cy + radius * math.sin(first + 2.0 * half * i / ARC_POINTS))
        for i in range(ARC_POINTS + 1)
    ]  # fmt: skip


def sheet(motion: dict[str, Any], frame: dict[str, Any]) -> Polygon:
    """The whole sheet of a frame, put together as the web does it."""
    half, d = motion["thickness_mm"] / 2.0, frame["half_arc_mm"]
    r, bent = frame["inside_radius_mm"], 180.0 - frame["included_angle_deg"]
    below = [placed([(s * d, -half)], frame[side])[0] for side, s in (("left", -1), ("right", 1))]
    above = [placed([(s * d, half)], frame[side])[0] for side, s in (("left", -1), ("right", 1))]
    inner = arc(*above, r, bent)
    return Polygon(
        [
            *arc(*below, r + 2.0 * half, bent),
            *placed(motion["right"], frame["right"]),
            *inner[::-1],
            *placed(motion["left"], frame["left"]),
        ]
    )


def as_json(motion: StepMotion) -> dict[str, Any]:
    def where(p: Placed) -> list[float]:
        return [p.x_mm, p.y_mm, p.turned_deg]

    return {
        "thickness_mm": motion.thickness_mm,
        "left": motion.left,
        "right": motion.right,
        "frames": [
            {
                "left": where(f.left),
                "right": where(f.right),
                "half_arc_mm": f.half_arc_mm,
                "inside_radius_mm": f.inside_radius_mm,
                "included_angle_deg": f.included_angle_deg,
            }
            for f in motion.frames
        ],
    }


def apart(one: Polygon, other: Polygon) -> float:
    return float(one.exterior.hausdorff_distance(other.exterior))


@st.composite
def steps(draw: st.DrawFn) -> tuple[Strip, int, pose.Stroke]:
    """A strip as it lies in the press, some bends made, and the next one's stroke."""
    count = draw(st.integers(1, 6))
    of = part(
        [draw(st.floats(15.0, 120.0)) for _ in range(count + 1)],
        [bend(draw(st.floats(60.0, 170.0)), draw(st.sampled_from(("up", "down"))))
         for _ in range(count)],
        draw(st.sampled_from((1.0, 2.0))),
    )  # fmt: skip
    bends = folded(of)
    number = draw(st.integers(1, count))
    made = draw(st.sets(st.integers(1, count))) - {number}
    end: Literal["left", "right"] = draw(st.sampled_from(("left", "right")))
    faced, n = pose.facing(strip_of(of, bends, made), number, of.bends[number - 1].direction, end)
    return faced, n, stroke(of, bends, number)


def moving(step: tuple[Strip, int, pose.Stroke], **more: Any) -> StepMotion:
    strip, number, press = step
    released = min(180.0, press.included_angle_deg + 2.0)
    pressing = pose.Pressing(strip, number, press, DIE)
    return pressed_motion(pressing, released_deg=released, lift_mm=50.0, **more)


def at_touch(motion: StepMotion) -> Frame:
    return next(f for f in motion.frames if f.punch_y_mm == 0.0)


def at_bottom(motion: StepMotion) -> Frame:
    return min(motion.frames, key=lambda f: f.punch_y_mm)


def test_the_ways_in_and_out_are_shown_before_and_after() -> None:
    """In from the front, tilted at first; out hanging on the punch, then off it."""
    of = part([40.0, 60.0], [bend()])
    bends = folded(of)
    faced, n = pose.facing(strip_of(of, bends, []), 1, "up", "right")
    step = (faced, n, stroke(of, bends, 1))
    plain = moving(step)
    way_in = ((0.0, 0.0, 0.0), (-40.0, 20.0, 0.0), (-90.0, 30.0, 0.5))
    way_out = ((0.0, 60.0, 0.0), (-30.0, 20.0, -0.25))
    motion = moving(step, puts_in=way_in, takes_out=way_out)
    phases = [frame.phase for frame in motion.frames]
    shares = [frame.share for frame in motion.frames]
    assert phases == ["putting in"] * 3 + [f.phase for f in plain.frames] + ["taking out"] * 2
    assert (shares[0], shares[-1]) == (0.0, 1.0)
    assert shares == sorted(set(shares))
    first, raised, last = motion.frames[0], motion.frames[-3], motion.frames[-1]
    assert first.right.turned_deg - plain.frames[0].right.turned_deg == pytest.approx(
        math.degrees(0.5)
    )
    assert first.right.x_mm < motion.frames[2].right.x_mm < plain.frames[0].right.x_mm
    assert raised.left.y_mm - plain.frames[-1].left.y_mm == pytest.approx(60.0)
    assert raised.punch_y_mm == last.punch_y_mm == plain.frames[-1].punch_y_mm
    assert last.left.turned_deg - plain.frames[-1].left.turned_deg == pytest.approx(
        math.degrees(-0.25)
    )
    assert motion.frames[3:-2][0].left == plain.frames[0].left


@settings(max_examples=40, deadline=None)
@given(steps())
def test_first_touch_is_the_sheet_before_and_the_bottom_the_sheet_after(step: Any) -> None:
    strip, number, press = step
    motion = moving(step)
    drawn = as_json(motion)
    frames = {id(f): j for f, j in zip(motion.frames, drawn["frames"], strict=True)}
    before, after = frames[id(at_touch(motion))], frames[id(at_bottom(motion))]
    assert apart(sheet(drawn, before), Polygon(pose.sheet_before(strip, number))) < 0.15
    assert apart(sheet(drawn, after), Polygon(pose.sheet_after(strip, number, press))) < 0.15


@settings(max_examples=40, deadline=None)
@given(steps(), st.floats(0.05, 0.95))
def test_part_way_is_the_sheet_during(step: Any, share: float) -> None:
    """Between two frames too: place and turn run evenly from one to the next."""
    strip, number, press = step
    motion = moving(step)
    drawn = as_json(motion)
    wanted = 180.0 - (180.0 - press.included_angle_deg) * share
    up_to = [i for i, f in enumerate(motion.frames) if f.phase != "release"]
    i = next(i for i in up_to[1:] if motion.frames[i].included_angle_deg <= wanted)
    a, b = drawn["frames"][i - 1], drawn["frames"][i]
    k = (a["included_angle_deg"] - wanted) / (a["included_angle_deg"] - b["included_angle_deg"])
    between = {
        name: [u + (v - u) * k for u, v in zip(a[name], b[name], strict=True)]
        if isinstance(a[name], list)
        else a[name] + (b[name] - a[name]) * k
        for name in a
    }
    during = Polygon(sheet_during(strip, number, press, DIE, share))
    assert apart(sheet(drawn, between), during) < 0.3


@settings(max_examples=40, deadline=None)
@given(steps())
def test_the_legs_mirror_each_other_and_the_sheet_stays_joined(step: Any) -> None:
    """The area of what the legs and the arc enclose changes only by what the arc takes."""
    strip, _number, press = step
    motion = moving(step)
    drawn = as_json(motion)
    length = strip.length_mm
    for frame, moved in zip(motion.frames, drawn["frames"], strict=True):
        assert frame.left == Placed(-frame.right.x_mm, frame.right.y_mm, -frame.right.turned_deg)
        bent = math.radians(180.0 - frame.included_angle_deg)
        middle = (press.inside_radius_mm + motion.thickness_mm / 2.0) * bent
        folds = sum(
            math.radians(abs(f.bend_angle_deg)) * (f.inside_radius_mm + motion.thickness_mm / 2.0)
            - f.allowance_mm
            for f in strip.folds
        )
        mid_line = length + folds + middle - 2.0 * frame.half_arc_mm
        assert sheet(drawn, moved).area == pytest.approx(
            motion.thickness_mm * mid_line, rel=2e-3, abs=0.3
        )


def test_punch_and_gauge_move_in_their_turn() -> None:
    of = part((40.0, 60.0), (bend(90.0),))
    bends = folded(of)
    strip, press = strip_of(of, bends, ()), stroke(of, bends, 1)
    motion = pressed_motion(
        pose.Pressing(strip, 1, press, DIE),
        released_deg=press.included_angle_deg + 2.0, lift_mm=60.0, gauge_x_mm=38.0,
        retract_mm=12.0,
    )  # fmt: skip
    frames = motion.frames
    assert [f.share for f in frames] == sorted(f.share for f in frames)
    assert (frames[0].share, frames[-1].share) == (0.0, 1.0)
    assert (frames[0].punch_y_mm, frames[-1].punch_y_mm) == (60.0, pytest.approx(60.0))
    assert at_bottom(motion).punch_y_mm == pytest.approx(-press.punch_depth_mm)
    assert at_bottom(motion).phase == "bend"
    assert frames[-1].included_angle_deg == pytest.approx(press.included_angle_deg + 2.0)
    assert [f.gauge_x_mm for f in frames[:3]] == [38.0, 38.0, 50.0]  # first touch, then back
    assert {f.gauge_x_mm for f in frames[3:]} == {50.0}
    assert all(f.included_angle_deg == 180.0 for f in frames if f.phase == "approach")
    drawing = pose.step_drawing(
        strip, 1, "up", press, press=PRESS, holder=None, punch=PUNCH, die=DIE, gauge=None
    )
    rise = frames[0].punch_y_mm - at_touch(motion).punch_y_mm
    assert rise == 60.0
    tip = min(y for _, y in drawing.punch_after) - min(y for _, y in drawing.punch_before)
    assert tip == pytest.approx(at_bottom(motion).punch_y_mm)


ANGLES = st.sampled_from([35.0, 60.0, 88.0, 90.0, 90.0, 120.0, 165.0])


@st.composite
def parts(draw: st.DrawFn) -> Part:
    count = draw(st.integers(1, 10))
    of = Part(
        "Random", "mild-steel-cr", draw(st.sampled_from((0.8, 1.5, 3.0))), 400.0,
        tuple(draw(st.floats(15.0, 300.0)) for _ in range(count + 1)),
        tuple(Bend(draw(ANGLES), draw(st.sampled_from(("up", "down")))) for _ in range(count)),
    )  # fmt: skip
    try:
        check_part(of)
    except (InputError, NotAPartError):
        assume(False)
    return of


@pytest.mark.slow
@settings(max_examples=8, deadline=None, suppress_health_check=[HealthCheck.filter_too_much])
@given(parts())
@example(
    Part(
        "Nine bends whose motion was too long for a phone", "mild-steel-cr", 0.8, 400.0,
        (
            34.226870461467186, 86.0, 266.8904885647388, 165.14373735748805, 267.52103348562935,
            47.68182775869778, 120.19083083250166, 174.4291550812269, 81.4150740662691,
            138.20309569531736,
        ),
        (
            Bend(90.0, "down"), Bend(165.0, "up"), Bend(90.0, "down"), Bend(60.0, "up"),
            Bend(60.0, "down"), Bend(88.0, "up"), Bend(120.0, "up"), Bend(165.0, "down"),
            Bend(90.0, "up"),
        ),
        "din6935",
    )
)  # fmt: skip
def test_every_planned_step_moves_and_is_small(of: Part) -> None:
    """What goes over the wire, rounded as it is, still is the drawing before and after."""
    answer = plan(of, SHOP_PRESS, CRIB, METALS, limits=PlanLimits(deadline_s=1.0))
    for step in answer["steps"]:
        if step["drawing"] is None:
            continue
        motion, drawing = step["motion"], step["drawing"]
        assert len(json.dumps(motion, separators=(",", ":"))) < MOST_BYTES
        frames = motion["frames"]
        touch = next(f for f in frames if f["punch_y_mm"] == 0.0)
        bottom = min(frames, key=lambda f: f["punch_y_mm"])
        for frame, name in ((touch, "before"), (bottom, "after")):
            ring = Polygon(drawing[name]["sheet"])
            if ring.is_valid:
                assert apart(sheet(motion, frame), ring) < COARSE_MM
        if drawing["gauge_point"] is not None:
            assert touch["gauge_x_mm"] == pytest.approx(drawing["gauge_point"][0], abs=6e-3)
            retracted = min(x for x, _ in drawing["after"]["gauge"])
            assert bottom["gauge_x_mm"] == pytest.approx(retracted, abs=6e-3)


def test_the_flattening_of_a_hem_moves_from_acute_to_closed() -> None:
    of = Part(
        "Hem", "mild-steel-cr", 1.0, 400.0, (12.0, 80.0), (Bend(0.0, "up", None, "closed_hem"),)
    )
    answer = plan(of, SHOP_PRESS, CRIB, METALS)
    step = next(s for s in answer["steps"] if s["operation"] == "hem flatten")
    motion, frames = step["motion"], step["motion"]["frames"]
    assert frames[0]["left"][1:] == frames[-1]["left"][1:] == [0.5, 0.0]  # the long leg lies still
    assert frames[-1]["included_angle_deg"] == 0.0
    for frame, name in ((frames[0], "before"), (frames[-1], "after")):
        assert apart(sheet(motion, frame), Polygon(step["drawing"][name]["sheet"])) < 0.1
