"""What gauged flanges teach: the metal's deduction, apart from the gauge's zero."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from learning_results import HERE, elsewhere, expected, learn, of_metal, with_case

from flangebook.bending.learning.gauge_zero import gauge_zero
from flangebook.bending.learning.joint import GAUGE_SD_MM
from flangebook.bending.learning.learned import put_in, teach
from flangebook.bending.learning.lessons import lessons
from flangebook.bending.learning.readings import FLANGE_MM
from flangebook.bending.learning.result import Result

PLAIN = expected(HERE)
PLACES = (HERE, elsewhere(20.0), elsewhere(10.0, 1.2), elsewhere(12.0, 1.5), elsewhere(25.0, 3.0))
few = settings(max_examples=25)


def gauged(name: str, off_mm: float, set_up=HERE, measured_deg: float | None = None) -> Result:
    """A piece whose gauged flange came out too long by so much, whatever the cause."""
    measured = set_up.case.included_angle_deg if measured_deg is None else measured_deg
    bend = expected(with_case(set_up, included_angle_deg=measured))
    deduction = bend.bend_deduction_mm.nominal + 2.0 * off_mm
    return Result(name, set_up, measured, gauged_deduction_mm=deduction)


def flanges(draw: Random, more_mm: float, zero_mm: float, places, many: int):
    """Flanges of a metal that takes so much more, gauged so much too far back."""
    return [
        gauged(f"{p}.{i}", zero_mm + more_mm / 2.0 + draw.gauss(0.0, FLANGE_MM), place)
        for p, place in enumerate(places)
        for i in range(many)
    ]


def deduction(results) -> float:
    return learn(PLAIN, HERE, results).bend.bend_deduction_mm.nominal


def zero_of(results):
    solved = teach(results, lessons).by_figure["deduction"]
    return gauge_zero(solved, "")


def test_several_flanges_move_the_deduction_and_so_the_blank():
    """What one metal's flanges have in common may be the gauge's: other metals' tell."""
    results = flanges(Random(1), 0.4, 0.0, (HERE,), 6)
    moved = deduction(results) - PLAIN.bend_deduction_mm.nominal
    assert 0.1 < moved < 0.35
    others = [
        replace(result, set_up=of_metal(result.set_up, "another"))
        for result in flanges(Random(2), 0.0, 0.0, PLACES, 4)
    ]
    of_others = [x for t in others for x in lessons(t)[0]]
    apart = put_in(PLAIN, HERE, teach(results, lessons, of_others)).bend
    told = apart.bend_deduction_mm.nominal - PLAIN.bend_deduction_mm.nominal
    assert told == pytest.approx(0.4, abs=0.1)
    assert abs(told - 0.4) < abs(moved - 0.4)


@pytest.mark.parametrize("off", [-1.4, -0.7, 0.7, 1.4])
def test_one_or_two_flanges_move_no_deduction(off):
    """One may have been gauged or read wrong, and nothing tells."""
    two = [gauged("odd", off), gauged("good", 0.0)]
    assert deduction(two[:1]) == deduction(two) == PLAIN.bend_deduction_mm.nominal


@pytest.mark.parametrize("off", [-1.4, -0.7, 0.7, 1.4])
def test_one_odd_flange_of_three_hardly_moves_it(off):
    three = [gauged("odd", off), gauged("good", 0.03), gauged("better", -0.03)]
    assert abs(deduction(three) - PLAIN.bend_deduction_mm.nominal) < 0.1


@few
@given(
    st.lists(st.floats(-FLANGE_MM, FLANGE_MM), min_size=3, max_size=6),
    st.floats(-0.3, 0.3),
    st.floats(-1.5, 1.5),
)
@example([-0.093, 0.096, -0.084], -0.3, 0.36)
def test_one_odd_flange_among_good_ones_moves_nothing(scatter, more, off):
    """Good ones agree: they lie within their own scatter of what the metal takes."""
    good = [gauged(f"good {i}", more + each) for i, each in enumerate(scatter)]
    moved = abs(deduction([*good, gauged("odd", more + off)]) - deduction(good))
    assert moved < (0.06 if abs(off) < 0.8 else 0.03), "the farther off, the less"


@few
@given(st.integers(3, 6), st.floats(-1.5, 1.5), st.integers(0, 10_000))
@example(many=3, off=0.5, seed=178)
@example(many=3, off=-0.3, seed=369)
@example(many=3, off=-0.3, seed=2174)
def test_one_more_flange_moves_the_deduction_within_its_doubt(many, off, seed):
    """Flanges that disagree leave open which of them is odd, and one more may settle it: of
    -0.03, 0.16 and 0.29 mm either the first or the last is, and 0.5 speaks for the last. So the
    deduction may move by more than among good ones, but by less than half of what it is given
    with as doubt."""
    before = flanges(Random(seed), 0.1, 0.0, (HERE,), many)
    band = learn(PLAIN, HERE, before).bend.bend_deduction_mm
    moved = deduction([*before, gauged("odd", off)]) - band.nominal
    assert abs(moved) < 0.5 * (band.high - band.nominal)


def test_a_gauge_that_is_off_shows_in_every_metal_and_leaves_the_deductions():
    results = flanges(Random(4), 0.0, 0.3, PLACES, 3)
    found = zero_of(results)
    assert found.systematic
    assert found.zero_mm == pytest.approx(0.3, abs=0.12)
    one = replace(gauged("b", 0.3), set_up=of_metal(HERE, "another"))
    solved = teach(results, lessons, lessons(one)[0])
    more = gauge_zero(solved.by_figure["deduction"], "")
    assert more.sd_mm < found.sd_mm


def test_what_one_metal_has_alone_is_mostly_its_deductions():
    def of(metal: str, off: float):
        return [
            x
            for i in range(5)
            for x in lessons(replace(gauged(f"{metal}{i}", off), set_up=of_metal(HERE, metal)))[0]
        ]

    others = [x for metal in "bcd" for x in of(metal, 0.0)]
    mine = [gauged(f"t{i}", 0.2) for i in range(5)]
    solved = teach(mine, lessons, others).by_figure["deduction"]
    found = gauge_zero(solved, "")
    assert not found.systematic
    assert found.zero_mm < 0.1


@given(st.floats(-0.6, 0.6), st.integers(1, 2))
@few
def test_two_flanges_prove_nothing(error, count):
    assert not zero_of([gauged(f"t{i}", error) for i in range(count)]).systematic


def test_flanges_before_the_zero_was_set_teach_the_metal_and_not_the_new_zero():
    old = [replace(t, set_up=replace(t.set_up, gauge="before")) for t in
           flanges(Random(5), 0.0, 0.4, PLACES, 4)]  # fmt: skip
    solved = teach(old, lessons).by_figure["deduction"]
    assert gauge_zero(solved, "before").systematic
    now = gauge_zero(solved, "")
    assert (now.zero_mm, now.flanges, now.systematic) == (0.0, 0, False)
    assert now.sd_mm == pytest.approx(GAUGE_SD_MM)


def test_the_angle_that_came_is_taken_out_first():
    open_one = gauged("t", 0.0, measured_deg=93.0)
    (lesson,) = [x for x in lessons(open_one)[0] if x.figure == "deduction"]
    assert lesson.departure == pytest.approx(0.0, abs=1e-9)


def test_strips_and_flanges_rest_on_one_another():
    """A strip's lengths know of no gauge: with one the flanges tell the zero."""
    results = flanges(Random(6), 0.0, 0.3, (HERE,), 4)
    bend = PLAIN.bend_deduction_mm.nominal
    strip = Result("strip", HERE, 90.0, flat_length_mm=100.0, flange_left_mm=50.0,
                  flange_right_mm=50.0 + bend)  # fmt: skip
    alone, both = zero_of(results), zero_of([*results, strip, replace(strip, id="strip 2")])
    assert both.sd_mm < alone.sd_mm
    assert both.zero_mm > alone.zero_mm
