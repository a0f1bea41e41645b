"""The choices in planning, each against a slow search that needs no cleverness."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise, product

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from planning_shop import (
    CHANNEL,
    CRIB,
    HAT,
    METALS,
    MILD,
    PRESS,
    SIX,
    STAINLESS,
    STRAIGHT,
    UP,
    die,
    part,
)

from flangebook.bending.part.part import End
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.plan import plan
from flangebook.planning.steps.gauge_choice import ENDS, choose_ends, turn_cost
from flangebook.planning.steps.operations import (
    bare_runs_mm,
    folded_by_rule,
    operations,
    run_in_dimension_mm,
)
from flangebook.planning.steps.touching import DEPTH_MM, overlap
from flangebook.planning.tools.candidates import Candidates, Options
from flangebook.planning.tools.fit import Equipment, Wanted, fit
from flangebook.planning.tools.ranking import merit
from flangebook.planning.tools.tool_choice import CHANGE_COST, ToolChoice, _cheapest_walk, here_of

SHOP = Equipment(PRESS, CRIB)
PAIRS = [(p, d) for p in "AB" for d in "xyz"]
COSTS = st.lists(
    st.lists(st.integers(0, 90).map(float), min_size=6, max_size=6), min_size=1, max_size=4
)


def _walk_cost(
    walk: tuple[tuple[str, str], ...], table: list[dict[tuple[str, str], float]]
) -> float:
    fits = sum(costs[pair] for costs, pair in zip(table, walk, strict=True))
    changes = sum((a[0] != b[0]) + (a[1] != b[1]) for a, b in pairwise(walk))
    return fits + CHANGE_COST * changes


@given(COSTS)
def test_the_run_of_tools_is_the_cheapest_there_is(costs: list[list[float]]) -> None:
    table = [dict(zip(PAIRS, row, strict=True)) for row in costs]
    least = min(_walk_cost(walk, table) for walk in product(PAIRS, repeat=len(table)))
    found = tuple(_cheapest_walk(table))
    assert _walk_cost(found, table) == pytest.approx(least)


@given(
    st.lists(
        st.tuples(st.sampled_from(["up", "down"]), st.integers(0, 9), st.integers(0, 9)),
        min_size=1,
        max_size=6,
    )
)
def test_the_ends_at_the_gauge_are_the_cheapest_there_are(rows: list[tuple[str, int, int]]) -> None:
    directions = [row[0] for row in rows]
    costs: list[dict[End, float]] = [{"left": row[1] / 2, "right": row[2] / 2} for row in rows]

    def total(ends: tuple[End, ...]) -> float:
        turns = sum(
            turn_cost(over=directions[i] != directions[i - 1], end=ends[i] != ends[i - 1])
            for i in range(1, len(ends))
        )
        return turns + sum(c[e] for c, e in zip(costs, ends, strict=True))

    least = min(total(ends) for ends in product(ENDS, repeat=len(rows)))
    assert total(tuple(choose_ends(directions, costs))) == pytest.approx(least)  # type: ignore[arg-type]


@st.composite
def rings(draw: st.DrawFn) -> list[tuple[float, float]]:
    """A star-shaped ring about a point, counter-clockwise."""
    count = draw(st.integers(3, 12))
    x, y = draw(st.floats(-30, 30)), draw(st.floats(-30, 30))
    return [
        (x + r * math.cos(a), y + r * math.sin(a))
        for i in range(count)
        for a in (2 * math.pi * i / count,)
        for r in (draw(st.floats(8, 30)),)
    ]


@given(rings(), rings())
def test_overlap_agrees_with_a_geometry_library(
    one: list[tuple[float, float]], two: list[tuple[float, float]]
) -> None:
    """Clearly apart is never a touch; a point deep in both always is."""
    sheet, tool = shapely.Polygon(one), shapely.Polygon(two)
    found = overlap(tuple(one), tuple(two), sheet.bounds)
    if not sheet.intersects(tool):
        assert not found
    if found:
        shared = sheet.intersection(tool)
        assert not shared.is_empty
    deep = [p for p in one if tool.buffer(-DEPTH_MM - 0.01).contains(shapely.Point(p))]
    deep += [p for p in two if sheet.buffer(-DEPTH_MM - 0.01).contains(shapely.Point(p))]
    if deep:
        assert found


@pytest.mark.parametrize("one", [CHANNEL, HAT, SIX])
def test_no_step_runs_into_a_tool_by_a_geometry_library(one: object) -> None:
    """Sheet and tools as drawn share no more than the arcs' chords where they touch."""
    for step in plan(one, PRESS, CRIB, METALS)["steps"]:  # type: ignore[arg-type]
        drawing = step["drawing"]
        for pose in ("before", "after"):
            sheet = shapely.Polygon(drawing[pose]["sheet"])
            tools = [drawing[pose][n] for n in ("punch", "holder", "ram")]
            for ring in [*tools, drawing["die"], drawing["bed"]]:
                shared = sheet.intersection(shapely.Polygon(ring))
                assert shared.buffer(-DEPTH_MM).is_empty


def options(wanted: Wanted, crib: Crib = CRIB) -> Options:
    """Every die's best punch, best first."""
    shop = Equipment(PRESS, crib)
    return Candidates.of(wanted, crib.dies, crib.punches, shop).options(crib.dies)


def test_what_is_forbidden_costs_more_than_all_that_is_allowed() -> None:
    order = options(Wanted(MILD, 2.0, 500.0, 90.0))
    free = [m.cost for m, one in order if not one.stops]
    stopped = [m.cost for m, one in order if one.stops]
    assert free
    assert stopped
    assert min(stopped) > max(free)


def test_the_best_tools_are_those_that_asking_the_model_of_every_pair_finds() -> None:
    """The search that asks the model for few pairs finds what asking it for all finds."""
    for thickness, angle in ((1.0, 90.0), (2.0, 90.0), (3.0, 90.0), (1.5, 60.0), (2.0, 135.0)):
        for metal in (MILD, STAINLESS):
            wanted = Wanted(metal, thickness, 500.0, angle)
            fits = [fit(wanted, d, p, SHOP) for d in CRIB.dies for p in CRIB.punches]
            for one_die in (None, *CRIB.dies):
                candidates = Candidates.of(wanted, CRIB.dies, CRIB.punches, SHOP)
                quick = candidates.best() if one_die is None else candidates.best_in(one_die)
                assert quick is not None
                mine = [f for f in fits if one_die is None or f.die is one_die]
                least = min((merit(f).cost, (f.punch.code, f.die.code)) for f in mine)
                assert quick == least[1], (metal.code, thickness, angle, one_die)


def test_a_damaged_tool_is_passed_over() -> None:
    damaged = replace(die(16.0), condition="damaged", condition_note="Chipped at 200.")
    order = options(Wanted(MILD, 2.0, 500.0, 90.0), replace(CRIB, dies=(damaged, die(20.0))))
    assert order[0][1].die.code == "V20-84"
    stop = order[1][1].stops[0]
    assert "Chipped at 200." in stop.words


def test_straight_before_gooseneck_when_both_would_do() -> None:
    twins = (replace(STRAIGHT, shape="gooseneck", code="A", neck_relief_mm=10.0), STRAIGHT)
    wanted = Wanted(MILD, 1.0, 100.0, 90.0)
    assert Candidates.of(wanted, (die(8.0),), twins, SHOP).best() == (STRAIGHT.code, "V8-84")


def test_every_pair_is_tried_once_for_bends_alike() -> None:
    choice = ToolChoice(HAT, MILD, SHOP)
    steps = operations(HAT, MILD, CRIB, (1, 4, 3, 2), 100.0)
    tables = [choice.for_step(step) for step in steps]
    assert all(table is tables[0] for table in tables)
    assert len(tables[0].costs) == len(CRIB.dies) * len(CRIB.punches)


def test_a_run_goes_over_bends_not_made_yet() -> None:
    """Bend 1 of a channel made first: its right run is the web, the bend and the other leg."""
    channel = part((30.0, 20.0, 30.0), UP, UP)
    folded = folded_by_rule(channel, MILD)
    first, second = operations(channel, MILD, CRIB, (1, 2), 100.0)
    choice = ToolChoice(channel, MILD, SHOP)
    one = choice.for_step(first).fit(("P4", "V16-84"))
    left, right = (
        run_in_dimension_mm(bare, channel, first, here_of(one))
        for bare in bare_runs_mm(channel, folded, first)
    )
    assert left == pytest.approx(30.0, abs=0.5)
    assert right == pytest.approx(50.0 - 4.0, abs=0.5)
    back, _ = bare_runs_mm(channel, folded, second)
    web = run_in_dimension_mm(back, channel, second, here_of(one))
    assert web == pytest.approx(20.0 - (2.56 + 2.0), abs=0.5), "up to the round of bend 1"
