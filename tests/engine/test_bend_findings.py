"""Findings about one bend: angle, radius, flange; each names what would do."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sheet_metals import about, die, metal, punch

from flangebook.bending.checks import fill, shown_less, tidy
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Figure
from flangebook.bending.prediction.bend_checks import (
    air_bending_only,
    crease,
    flange_length,
    large_tip,
    radius_asked,
    sharper_than_tools,
    smallest_radius,
)

SET_87 = Estimate(86.5, 87.0, 87.8)
RADIUS = Estimate(2.2, 2.56, 2.8)


@pytest.mark.parametrize(
    ("tool_angle", "level"),
    [(80.0, None), (86.0, None), (86.3, "caution"), (86.6, "stop"), (87.1, "stop")],
)
@pytest.mark.parametrize("kind", ["die", "punch"])
def test_sharper_than_a_tool(kind, tool_angle, level):
    chosen = {
        "die": die(angle_deg=tool_angle) if kind == "die" else None,
        "punch": punch(tool_angle) if kind == "punch" else None,
    }
    found = sharper_than_tools(SET_87, chosen["die"], chosen["punch"])
    assert [c.level for c in found] == ([level] if level else [])
    for check in found:
        assert check.code == f"sharper-than-{kind}"
        assert f"No {kind} on record is sharp enough" in check.do
        assert check.numbers["limit_deg"] == tool_angle + 0.5
        assert check.numbers["short_deg"] == pytest.approx(
            tool_angle + 0.5 - (87.0 if level == "stop" else 86.5)
        )


def test_names_the_tools_that_would_do_nearest_first():
    owned = [
        die(40.0, 30.0, code="V40-30"),
        die(16.0, 60.0, code="V16-60"),
        die(12.0, 88.0, code="V12-88"),
        die(20.0, 80.0, code="V20-80"),
    ]
    (found,) = sharper_than_tools(SET_87, die(16.0, 88.0), None, dies=owned)
    assert found.do == "Use die V16-60 or V20-80 or V40-30."
    punches = [punch(30.0, 1.0, code="P30"), punch(88.0, 1.0, code="P88")]
    (found,) = sharper_than_tools(SET_87, None, punch(88.0), punches=punches)
    assert found.do == "Use punch P30."


@given(st.floats(30, 150), st.floats(0.1, 5), st.floats(20, 120))
def test_an_angle_the_tools_reach_is_no_finding(nominal, spread, tool_angle):
    band = Estimate(nominal - spread, nominal, nominal + spread)
    found = sharper_than_tools(band, die(angle_deg=tool_angle), punch(tool_angle))
    assert bool(found) == (band.low < tool_angle + 0.5)


@given(st.floats(0.5, 10.0), st.floats(0.0, 2.0))
def test_crease(t, tip_over_t):
    found = crease(t, tip_over_t * t)
    assert (found is None) == (not shown_less(tip_over_t * t, 0.63 * t))
    if found:
        assert found.level == "caution"
        assert found.numbers["least_mm"] == pytest.approx(0.63 * t)


@pytest.mark.parametrize(("tip", "found"), [(4.0, False), (4.1, True)])
def test_tip_over_a_quarter_of_the_v(tip, found):
    """A punch/opening ratio above 1/4 is large-radius bending: Vorkov et al. 2018."""
    assert (large_tip(16.0, tip) is not None) == found


def bears(across=None, along=None):
    return metal(min_radius_over_t_across=across, min_radius_over_t_with=along)


def test_a_rounding_that_contradicts_itself_is_no_finding():
    """0.63 of 6.35 mm is 4.0005 mm: "the tip of 4 mm is sharp, use 4 mm or more" is never said."""
    assert crease(6.35, 4.0) is None
    assert crease(6.3, 3.96) is None  # under 3.969, but both are 0.156 in
    assert crease(6.35, 3.9) is not None
    assert flange_length(10.999, 11.0).code == "flange-close"
    assert smallest_radius(bears(about(1.28)), 2.0, RADIUS).level == "ok"  # 2.56 against 2.56


@pytest.mark.parametrize(
    ("across", "along", "grain", "level"),
    [
        (None, None, None, "unknown"),
        (about(1.0), None, None, "ok"),
        (about(1.5), None, None, "caution"),
        (about(1.0), about(1.5), None, "caution"),  # grain not known: the worse one counts
        (about(1.0), about(2.0), None, "stop"),
        (about(1.0), about(2.0), "across", "ok"),
        (about(1.0), about(1.5), "with", "caution"),
        (about(1.0), about(2.0), "with", "stop"),
        (about(1.0), None, "with", "unknown"),  # over the figure across, but along needs more
        (about(1.5), None, "with", "caution"),  # under it, along is worse still
        (about(3.0), None, "with", "stop"),
        (None, about(1.0), "across", "ok"),  # what does along does across
    ],
)
def test_smallest_radius(across, along, grain, level):
    found = smallest_radius(bears(across, along), 2.0, RADIUS, grain)
    assert found.level == level
    assert (found.do == "") == (level == "ok")


@given(st.floats(0.0, 4.0), st.none() | st.floats(0.0, 4.0), st.floats(0.1, 8.0))
def test_the_worse_direction_never_gets_fewer_warnings(across, along, radius):
    """With the grain, and with an unknown grain where along is on record."""
    m = bears(about(across), None if along is None else about(along))
    band = Estimate(radius, radius, radius)
    severity = {"ok": 0, "unknown": 1, "caution": 2, "stop": 3}
    level = {g: severity[smallest_radius(m, 2.0, band, g).level] for g in ("across", "with", None)}
    assert level["with"] >= level["across"]
    assert level[None] >= level["across"]


SIX = metal(
    min_radius_over_t_across=Figure(1.5, 3.0, 4.0, "a hard aluminium", "typical"),
)


@pytest.mark.parametrize(
    ("radius", "level"), [(0.86, "stop"), (2.3, "stop"), (2.5, "caution"), (4.7, "caution")]
)
def test_far_under_the_smallest_radius_is_a_stop_a_little_under_a_caution(radius, level):
    """6061-T6 of 1.6 mm: usually 3 t, 1.5 t where necessary (bjg-design.com, designbook)."""
    found = smallest_radius(SIX, 1.6, Estimate(radius, radius, radius), "across")
    assert found.level == level
    assert f"{tidy(radius)} mm" in found.words
    assert "4.8 mm" in found.words


def test_a_radius_some_source_allows_is_no_stop():
    """Soft steel bends flat on itself by some tables (lowest figure 0 t)."""
    soft = bears(Figure(0.0, 1.0, 1.5, "two tables", "typical"))
    assert smallest_radius(soft, 2.0, Estimate(0.5, 0.5, 0.5)).level == "caution"


def test_names_the_smallest_v_and_tip_that_would_do_and_who_of_the_crib_does():
    small = Estimate(0.86, 0.86, 0.86)
    none = smallest_radius(SIX, 1.6, small, None, [die(25.0)], [punch(tip_mm=4.0)])
    do = fill(none.do, none.numbers)
    assert do.startswith(
        "Use a V of 30 mm or more, or a punch with a tip of 4.8 mm or more in a V of 19.2 mm or "
        "more. No tool in the crib does it."
    )
    owned = [die(25.0, code="V25"), die(32.0, code="V32")]
    some = smallest_radius(SIX, 1.6, small, None, owned, [punch(tip_mm=5.0, code="P5")])
    assert "die V32 or punch P5." in some.do
    assert "V25" not in some.do
    narrow = smallest_radius(SIX, 1.6, small, None, [die(12.0)], [punch(tip_mm=5.0, code="P5")])
    assert "No tool in the crib" in narrow.do  # a tip over a quarter of the V does not bend it
    assert "crib" not in smallest_radius(SIX, 1.6, small).do


def test_what_would_do_goes_by_this_bend_where_it_comes_out_smaller_than_usual():
    """1.2 mm in a V of 12 is a share of 0.1: the V just above 4.8 / 0.16 would not do."""
    found = smallest_radius(SIX, 1.6, Estimate(1.2, 1.2, 1.2), v_opening_mm=12.0)
    assert found.numbers["wanted_v_mm"] == pytest.approx(48.0)


def test_tables_that_disagree_are_both_told():
    disagree = Figure(0.5, 1.0, 2.0, "two tables", "typical")
    found = smallest_radius(bears(disagree), 2.0, RADIUS)
    assert found.level == "ok"
    assert "some tables ask for 4 mm" in found.words


@pytest.mark.parametrize(
    ("asked", "level"),
    [(None, None), (2.56, "ok"), (2.2, "ok"), (3.1, "ok"), (3.3, "caution"), (1.0, "caution")],
)
def test_radius_asked(asked, level):
    found = radius_asked(asked, RADIUS, metal())
    assert (found.level if found else None) == level


def test_radius_asked_names_what_would_make_it():
    wider = radius_asked(4.0, RADIUS, metal())
    assert wider.do == "A V of about {wanted_v_mm} makes it, or a punch with a tip of {asked_mm}."
    assert wider.numbers["wanted_v_mm"] == pytest.approx(25.0)
    narrower = radius_asked(1.0, RADIUS, metal())
    assert narrower.do == "A V of about {wanted_v_mm} makes it with a punch tip no larger."
    assert "no sharp corner" in radius_asked(0.0, RADIUS, metal()).do


@pytest.mark.parametrize(
    ("flange", "level", "code"),
    [
        (10.9, "stop", "flange-too-short"),
        (11.0, "caution", "flange-close"),
        (12.0, "caution", "flange-close"),
        (12.2, "ok", "flange-length"),
    ],
)
def test_flange_length(flange, level, code):
    found = flange_length(flange, 11.0)
    assert (found.level, found.code) == (level, code)


def test_says_that_it_is_air_bending_only():
    assert "several times the force" in air_bending_only().words


def test_every_number_in_the_words_is_given():
    """No template asks for a number that its check does not carry."""
    found = [
        *sharper_than_tools(SET_87, die(angle_deg=88), punch(86.7)),
        crease(3.0, 1.0),
        large_tip(16.0, 5.0),
        smallest_radius(bears(about(1.5)), 2.0, RADIUS),
        smallest_radius(bears(), 2.0, RADIUS),
        radius_asked(4.0, RADIUS, metal()),
        flange_length(5.0, 11.0),
        flange_length(11.5, 11.0),
        air_bending_only(),
    ]
    for check in found:
        for text in (check.words, check.do.format(**dict.fromkeys(check.numbers, "1"))):
            assert "{" not in text
