"""The wall chart's numbers."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from one_bend_asked import check_bend
from planning_shop import CRIB, MILD, PRESS, STAINLESS, die

from flangebook.bending.errors import InputError
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.chart import MOST_V_OVER_T, chart, usual_thicknesses_mm


def cell(answer: JsonDict, thickness_mm: float, code: str) -> JsonDict:
    row = next(r for r in answer["rows"] if r["thickness_mm"] == thickness_mm)
    return next(c for c in row["cells"] if c["die"] == code)


def test_a_cell_is_what_the_bend_check_says() -> None:
    answer = chart(MILD, PRESS, CRIB, 800.0)
    for thickness, code in ((1.0, "V8-84"), (2.0, "V16-84"), (3.0, "V25-84"), (2.5, "V20-84")):
        one = check_bend(MILD, thickness, 800.0, 90.0, press=PRESS, crib=CRIB, die=code)
        found = cell(answer, thickness, code)
        assert found["punch"] == one["punch"]
        assert found["force_kn_per_m"] == pytest.approx(one["force_kn_per_m"], abs=0.006)
        assert found["force_kn_per_m_high"] == pytest.approx(one["force_kn_per_m_high"], abs=0.006)
        assert found["inside_radius_mm"] == pytest.approx(one["inside_radius_mm"], abs=1e-3)
        assert found["min_flange_mm"] == pytest.approx(one["min_flange_mm"], abs=1e-3)
        levels = {r["level"] for r in one["ratings"]}
        assert (found["level"] == "ok") == (levels == {"ok"})


def test_the_limit_is_the_rating_that_is_used_most() -> None:
    weak = Crib(CRIB.punches, (die(16.0, rating=200.0),), CRIB.holders)
    found = cell(chart(MILD, PRESS, weak, 1000.0), 2.0, "V16-84")
    assert (found["level"], found["limit"]) == ("caution", "die")
    assert found["share_percent"] == pytest.approx(100 * 179.69 / 200, abs=0.1)
    over = cell(chart(MILD, PRESS, CRIB, 1600.0), 3.0, "V16-84")
    assert (over["level"], over["limit"]) == ("stop", "press")
    assert over["share_percent"] > 100
    assert over["usable"], "the die would do it; the press does not bear it"


def test_an_unknown_rating_is_marked() -> None:
    found = cell(chart(MILD, PRESS, CRIB, 500.0), 2.0, "V16-30")
    assert (found["level"], found["limit"], found["share_percent"]) == ("unknown", "die", None)


def test_cells_out_of_range_have_no_numbers_but_a_reason() -> None:
    answer = chart(MILD, PRESS, CRIB, 1000.0)
    narrow, wide = cell(answer, 4.0, "V12-84"), cell(answer, 1.0, "V40-84")
    for found in (narrow, wide):
        assert not found["usable"]
        assert found["force_kn_per_m"] is None
        assert " t" in found["why"]


def test_every_usable_cell_lies_in_the_charts_range() -> None:
    answer = chart(STAINLESS, PRESS, CRIB)
    for row in answer["rows"]:
        for die_, found in zip(answer["dies"], row["cells"], strict=True):
            assert found["die"] == die_["code"]
            if found["usable"]:
                assert 4.0 <= die_["v_opening_mm"] / row["thickness_mm"] <= MOST_V_OVER_T
    json.dumps(answer, allow_nan=False)


def test_force_per_metre_rises_down_a_column_and_falls_along_a_row() -> None:
    answer = chart(MILD, PRESS, CRIB)
    # Only for one punch: a blunter tip takes more.
    for i in range(len(answer["dies"])):
        columns: dict[str, list[float]] = {}
        for cells in (r["cells"][i] for r in answer["rows"]):
            if cells["usable"]:
                columns.setdefault(cells["punch"], []).append(cells["force_kn_per_m"])
        assert all(forces == sorted(forces) for forces in columns.values())
    # Along a row also only for dies of one angle: a die whose flanks leave the shoulders closer
    # together may take more.
    openings = {d["code"]: (d["v_opening_mm"], d["angle_deg"]) for d in answer["dies"]}
    compared = 0
    for row in answer["rows"]:
        alike: dict[object, list[float]] = {}
        for c in row["cells"]:
            if c["usable"]:
                key = (c["punch"], openings[c["die"]][1])
                alike.setdefault(key, []).append(c["force_kn_per_m"])
        for forces in alike.values():
            assert forces == sorted(forces, reverse=True)
            compared += len(forces) - 1
    assert compared > 50


def test_the_usual_thicknesses_hold_the_metric_ones_and_the_gauges_between() -> None:
    steel = usual_thicknesses_mm(MILD)
    assert {1.0, 1.5, 2.0, 3.0} <= set(steel)
    assert steel == sorted(steel)
    assert any(abs(t - 0.912) < 0.001 for t in steel), "20 ga"
    assert not any(1.5 < t < 1.53 for t in steel), "16 ga shares the row of 1.5"
    assert usual_thicknesses_mm(replace(MILD, gauge_family=None)) == [
        t for t in steel if t in usual_thicknesses_mm(replace(MILD, gauge_family=None))
    ]
    rows = {r["thickness_mm"]: r["gauge"] for r in chart(MILD, PRESS, CRIB)["rows"]}
    assert (rows[1.5], rows[2.0]) == ("16 ga", None)


def test_rows_no_die_can_take_are_left_out() -> None:
    answer = chart(MILD, PRESS, Crib(CRIB.punches, (die(8.0),), CRIB.holders))
    assert next(r["thickness_mm"] for r in answer["rows"]) >= 0.5
    assert max(r["thickness_mm"] for r in answer["rows"]) <= 2.0


def test_an_empty_shop_gets_an_empty_chart_that_says_so() -> None:
    answer = chart(MILD, None, Crib())
    assert answer["dies"] == []
    assert answer["press"] is None
    assert any("No press" in w for w in answer["words"])
    assert any("No punch" in w for w in answer["words"])
    unpressed = chart(MILD, None, CRIB)
    assert unpressed["rows"]


@pytest.mark.parametrize("bad", [0.0, -1.0, 1e9, float("nan"), float("inf")])
def test_sizes_out_of_range_are_refused(bad: float) -> None:
    with pytest.raises(InputError) as caught:
        chart(MILD, PRESS, CRIB, bad)
    assert caught.value.where == "bend_length_mm"
