"""Loads against ratings: 80 % caution, 100 % stop, no rating unknown."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sheet_metals import die, holder, press, punch

from flangebook.bending.errors import InputError
from flangebook.bending.tools.ratings import Rating, off_centre, ratings


@pytest.mark.parametrize(
    ("share", "level"),
    [(0.01, "ok"), (0.80, "ok"), (0.8001, "caution"), (1.0, "caution"), (1.0001, "stop")],
)
@pytest.mark.parametrize("what", ["press", "press per metre", "punch", "die", "holder"])
def test_levels(what, share, level):
    row = Rating(what, "X", 100.0 * share, 100.0)
    assert row.level == row.check().level == level
    assert row.share_percent == pytest.approx(100 * share)
    assert bool(row.check().do) == (level != "ok")


@given(st.floats(0.001, 1e6))
def test_no_rating_is_never_ok(load):
    row = Rating("die", "X", load, None)
    assert row.level == "unknown"
    assert row.share_percent is None
    check = row.check()
    assert check.level == "unknown"
    assert "not known" in check.words
    assert check.do


def test_each_thing_gets_its_own_load():
    rows = ratings(300_000.0, 500.0, press(400.0), punch(), die(), holder())
    by_what = {row.what: row for row in rows}
    assert by_what["press"].load == 300.0  # kN
    assert not by_what["press"].per_metre
    assert by_what["press"].share_percent == 75.0
    for what in ("press per metre", "punch", "die", "holder"):
        assert by_what[what].load == 600.0  # kN/m over half a metre
        assert by_what[what].per_metre
    assert by_what["press per metre"].share_percent == 75.0


@given(st.floats(1e3, 4e5), st.floats(20.0, 1500.0))
def test_a_short_bend_is_held_against_the_load_per_metre(force_n, length):
    per_m = next(r for r in ratings(force_n, length, press()) if r.what == "press per metre")
    assert per_m.level == ("stop" if force_n / length > 800 else
                           "caution" if force_n / length > 640 else "ok")  # fmt: skip


def test_only_what_is_given_is_rated():
    assert ratings(1000.0, 100.0) == ()
    assert [r.what for r in ratings(1000.0, 100.0, die=die())] == ["die"]


def test_words_carry_load_share_and_rating():
    check = Rating("punch", "P12", 900.0, 1000.0).check()
    assert check.words == "Punch P12: up to 900 kN/m, 90 % of the rating of 1000 kN/m."
    assert check.code == "punch-load"
    stop = Rating("press", "Big press", 500.0, 400.0).check()
    assert stop.words == "The press Big press: up to 500 kN, 125 % of the rating of 400 kN."
    assert stop.do.startswith("Do not bend this.")


def test_braces_in_a_name_stay_words():
    words = Rating("die", "{load_kn_per_m}", 1.0, 2.0).check().words
    assert "(load_kn_per_m)" in words


@pytest.mark.parametrize("rating", [0.0, -5.0, float("nan")])
def test_a_rating_that_is_no_rating_is_refused(rating):
    with pytest.raises(InputError):
        ratings(1000.0, 100.0, die=die(rating_kn_per_m=rating))


@pytest.mark.parametrize(("force", "length"), [(0.0, 100.0), (1000.0, 0.0), (float("nan"), 1.0)])
def test_refuses_unusable_loads(force, length):
    with pytest.raises(InputError):
        ratings(force, length, press())


@pytest.mark.parametrize(
    ("allowed", "offset", "force_kn", "level"),
    [
        (200.0, 0.0, 399, None),
        (200.0, 150.0, 399, "ok"),
        (200.0, -150.0, 399, "ok"),
        (200.0, 201.0, 100, "caution"),
        (200.0, -201.0, 321, "stop"),
        (None, 1.0, 10, "unknown"),
        (None, 0.0, 399, None),
    ],
)
def test_off_centre(allowed, offset, force_kn, level):
    found = off_centre(press(400.0, off_centre_mm=allowed), force_kn * 1000.0, offset)
    assert (found.level if found else None) == level
    if level in ("caution", "stop", "unknown"):
        assert "manual" in found.do


def test_off_centre_refuses_what_is_no_distance():
    with pytest.raises(InputError):
        off_centre(press(), 1000.0, float("nan"))
