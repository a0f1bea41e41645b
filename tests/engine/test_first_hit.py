"""The first hit comes out exact or open, as far open as it says, and inside what tools reach."""

from __future__ import annotations

import random
from dataclasses import replace
from math import hypot

import numpy as np
import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from hypothesis import assume, given
from hypothesis import strategies as st
from one_bend_asked import check_bend
from sheet_metals import die, metal, punch

from flangebook.bending.errors import InputError
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.prediction.first_hit import (
    FirstHit,
    depth_doubt_deg,
    first_hit,
    first_hit_angle,
    together,
)
from flangebook.bending.sheet_model.hardening_from_strength import law_of
from flangebook.bending.sheet_model.stroke import stroke
from flangebook.bending.sheet_model.tools import tools
from flangebook.bending.tools.setting_limits import SettingLimits, setting_limits
from flangebook.planning.plan import plan

DIE, PUNCH = die(16.0, 60.0, 2.4), punch(60.0, 1.5)
wanted_angles = st.floats(40.0, 150.0)
sides = st.floats(0.0, 4.0)
within = st.floats(0.0, 1.0)


def between(ends, share):
    return ends[0] + share * (ends[1] - ends[0])


@given(wanted_angles, st.tuples(sides, sides), st.tuples(sides, sides), within, within)
def test_never_over_bent_with_springback_and_depth_in_their_bands(wanted, springs, doubt, s, d):
    """The real springback and the real depth are drawn anywhere in their bands, ends included."""
    spring = (springs[0], springs[0] + springs[1])
    sharper_by = (-doubt[0], doubt[1])
    angle, (least, most) = first_hit_angle(wanted, spring, sharper_by)
    came_out = angle - between(sharper_by, d) + between(spring, s)
    assert least - 1e-9 <= came_out <= most + 1e-9
    assert least == wanted


@given(wanted_angles, st.tuples(sides, sides), st.tuples(sides, sides))
def test_the_interval_is_no_wider_than_it_has_to_be(wanted, springs, doubt):
    spring, sharper_by = (springs[0], sum(springs)), (-doubt[0], doubt[1])
    angle, (least, most) = first_hit_angle(wanted, spring, sharper_by)
    assert angle - sharper_by[1] + spring[0] == pytest.approx(least)
    assert angle - sharper_by[0] + spring[1] == pytest.approx(most)


@pytest.mark.parametrize("bad", [((2.0, 1.0), (0.0, 0.0)), ((1.0, float("nan")), (0.0, 0.0))])
def test_a_band_out_of_order_is_refused(bad):
    with pytest.raises(InputError):
        first_hit_angle(90.0, *bad)


@given(st.floats(0.5, 4.0), sides, sides, st.floats(0.0, 3.0), st.floats(0.0, 3.0))
def test_nine_in_ten_of_both_together_add_up_as_a_root_of_squares(low, down, up, flat, sharp):
    spring = Estimate(low, low + down, low + down + up)
    (least, most), (flatter, sharper) = together(spring, flat, sharp)
    assert spring.low - 1e-9 <= least <= spring.nominal + 1e-9
    assert spring.nominal - 1e-9 <= most <= spring.high + 1e-9
    assert spring.nominal - least + sharper == pytest.approx(hypot(down, sharp), abs=1e-9)
    assert most - spring.nominal - flatter == pytest.approx(hypot(up, flat), abs=1e-9)


@pytest.mark.parametrize("code", STARTER_METALS)
def test_nine_in_ten_first_hits_come_out_exact_or_open(code):
    """Springback and depth drawn by themselves, each with nine in ten inside its band: normal on
    either side of the nominal, or evenly. The interval is counted for the normal one."""
    case = BendCase(STARTER_METALS[code], 2.0, 1.0, 90.0, DIE, 1.5)
    one = air_bend(case)
    spring, (flatter, sharper) = one.springback_deg, depth_doubt_deg(one)
    hit = first_hit(one, case, SettingLimits(60.5, 99.0, ("die angle",)))
    assert hit is not None
    draw = random.Random(code)

    def normal():
        """A standard normal in units in which nine in ten lie within one."""
        return draw.gauss(0.0, 1.0 / 1.645)

    def even():
        return draw.uniform(-1.0, 1.0) / 0.9

    for one_of in (normal, even):
        came = []
        for _ in range(4000):
            s, d = one_of(), one_of()
            d *= sharper if d > 0.0 else flatter
            side = spring.high - spring.nominal if s > 0.0 else spring.nominal - spring.low
            came.append(hit.set_angle_deg - d + spring.nominal + s * side)
        least, most = hit.comes_out_deg
        assert most < 96.5, "still of use"
        assert sum(y >= 90.0 - 1e-9 for y in came) >= 0.9 * len(came)
        if one_of is normal:
            assert sum(least <= y <= most for y in came) >= 0.88 * len(came)


def drawn(figure: Figure, share: float) -> Figure:
    """A sheet's own figure out of the metal's row; at a share of 1 and -1 it is at the ends."""
    side = figure.high - figure.nominal if share > 0.0 else figure.nominal - figure.low
    return replace(figure, nominal=figure.nominal + share * side)


def first_piece(draw: random.Random, row: Metal, t: float, v: float, hit: FirstHit, spring):
    """What one sheet in one shop's tools comes out at: thickness, strength, tool radii and the zero
    of the depth are off as far as is usual, each by itself, and so is the springback."""

    def off(by: float) -> float:
        """Nine in ten lie within."""
        return draw.gauss(0.0, by / 1.645)

    strong = off(1.0)
    tensile, k = drawn(row.tensile_mpa, strong), row.hardening_k_mpa
    harder = tensile.nominal / row.tensile_mpa.nominal
    sheet = replace(
        row, yield_mpa=drawn(row.yield_mpa, strong), tensile_mpa=tensile,
        hardening_k_mpa=k and replace(k, nominal=k.nominal * harder),
    )  # fmt: skip
    shoulder = 0.15 * v + off(max(0.1, 0.015 * v))
    tip = 0.75 * t + off(max(0.1, 0.075 * t))
    law = law_of(sheet, t * (1.0 + off(0.05)))
    pressed = stroke(law, tools(v, 60.0, shoulder, tip, 0.1))
    depth = hit.punch_depth_mm + off(0.1)
    loaded = np.interp(depth, pressed.depth_mm, pressed.loaded_angle_deg)
    side = off(1.0)
    up, down = spring.high - spring.nominal, spring.nominal - spring.low
    return loaded + spring.nominal + side * (up if side > 0.0 else down)


@pytest.mark.slow
@pytest.mark.parametrize(
    "code",
    ["mild-steel-cr", "stainless-304", "stainless-316", "aluminium-5052-h32", "brass-half-hard"],
)
def test_nine_in_ten_first_pieces_of_drawn_shops_come_out_exact_or_open(code):
    """The same counted from the causes, in a small V, where a tenth of a millimetre is worth more
    than 2 degrees, and in a large one, where it is worth less. Up to 0.4 the doubt was 2 degrees
    for every bend: 84 in 100 of 304 over V 8 came out exact or open."""
    draw, row, pieces = random.Random(code), STARTER_METALS[code], 300
    for t, v in ((1.0, 8.0), (3.0, 24.0)):
        case = BendCase(row, t, 1.0, 90.0, die(v, 60.0, 0.15 * v), 0.75 * t)
        one = air_bend(case)
        hit = first_hit(one, case, SettingLimits(60.5, 99.0, ("",)))
        assert hit is not None
        came = [first_piece(draw, row, t, v, hit, one.springback_deg) for _ in range(pieces)]
        assert sum(y >= 90.0 for y in came) >= 0.9 * pieces
        assert sum(y <= hit.comes_out_deg[1] for y in came) >= 0.9 * pieces


@pytest.mark.parametrize("set_by", ["angle", "depth", "stop", None])
def test_a_press_that_measures_the_angle_leaves_the_springback_s_doubt(set_by):
    """Mild steel, t 2: 90 to 93.8 where the depth's doubt is in it; the springback's own band where
    the press goes on until the set angle stands. A depth or a stop measures nothing."""
    press = replace(DEMO_PRESS, set_by=set_by, angle_accuracy_deg=0.3)
    asked = (STARTER_METALS["mild-steel-cr"], 2.0, 400.0, 90.0)
    usual = check_bend(*asked, press=DEMO_PRESS, crib=DEMO_CRIB)
    answer = check_bend(*asked, press=press, crib=DEMO_CRIB)
    most = answer["first_hit"]["comes_out_deg_high"]
    if set_by != "angle":
        assert answer["first_hit"] == usual["first_hit"]
        return
    assert most < 92.0
    assert usual["first_hit"]["comes_out_deg_high"] > 93.5
    assert answer["first_hit"]["comes_out_deg_low"] == 90.0
    assert answer["set_angle_deg"] < usual["set_angle_deg"]
    band = answer["springback_deg_high"] - answer["springback_deg_low"]
    assert most - 90.0 >= band - 0.01, "not narrower than the springback alone"


@given(wanted_angles, st.floats(0.8, 3.0), st.floats(0.5, 2.0))
def test_a_first_hit_is_milder_than_the_expected_setting_and_inside_the_limits(wanted, t, tip):
    case = BendCase(metal(), t, 1.0, wanted, die(8 * t, 30.0, t), tip)
    one = air_bend(case)
    limits = setting_limits(die(8 * t, 30.0, t), punch(28.0, tip), t, one.inside_radius_mm.nominal)
    hit = first_hit(one, case, limits)
    assume(not limits.beyond(one.set_angle_deg.nominal, one.punch_depth_mm.nominal))
    assume(hit is not None)
    assert hit.set_angle_deg > one.set_angle_deg.nominal
    assert 0.0 < hit.punch_depth_mm < one.punch_depth_mm.nominal
    assert not limits.beyond(hit.set_angle_deg, hit.punch_depth_mm)


def test_where_even_the_expected_setting_is_out_of_reach_there_is_no_first_hit():
    case = BendCase(metal(), 2.0, 1.0, 90.0, DIE, 1.5)
    one = air_bend(case)
    between_both = one.set_angle_deg.nominal + 0.2
    limits = SettingLimits(between_both, 99.0, ("die angle",))
    assert first_hit(one, case, limits) is None


def test_a_bend_so_flat_that_a_first_hit_would_not_bend_it_has_none():
    case = BendCase(metal(), 2.0, 1.0, 178.8, DIE, 1.5)
    one = air_bend(case)
    assert first_hit(one, case, SettingLimits(60.5, 99.0, ("die angle",))) is None


@pytest.mark.parametrize("code", STARTER_METALS)
def test_seen_the_setting_of_a_fresh_shop_leads_with_the_nominal(code):
    """Up to 0.4 the first piece of a metal was set as expected, so half of them over-bent."""
    answer = check_bend(STARTER_METALS[code], 2.0, 400.0, 90.0, press=DEMO_PRESS, crib=DEMO_CRIB)
    hit = answer["first_hit"]
    assert hit is not None
    assert answer["set_angle_deg"] > answer["expected_set_angle_deg"]
    assert answer["punch_depth_mm"] < answer["expected_punch_depth_mm"]
    softest = 90.0 - answer["springback_deg_low"]
    assert answer["set_angle_deg"] >= softest, "sheet that springs least comes out open"
    assert hit["comes_out_deg_low"] == 90.0 < hit["comes_out_deg_high"]
    assert answer["punch_depth_mm"] > 0.9 * answer["expected_punch_depth_mm"], "nearly there"


def test_a_hems_acute_bend_and_bumps_are_set_as_expected():
    """A hem too open buckles when it is flattened, and every bump's error adds up."""
    hemmed = Part(
        "Hem", "mild-steel-cr", 1.0, 400.0, (12.0, 80.0, 40.0),
        (Bend(0.0, "up", None, "closed_hem"), Bend(90.0, "up")),
    )  # fmt: skip
    steps = plan(hemmed, DEMO_PRESS, DEMO_CRIB, STARTER_METALS)["steps"]
    by = {step["operation"]: step for step in steps}
    assert by["hem pre-bend"]["first_hit"] is None
    assert by["bend"]["first_hit"] is not None
    acute = by["hem pre-bend"]
    assert acute["set_angle_deg"] == acute["expected_set_angle_deg"]
