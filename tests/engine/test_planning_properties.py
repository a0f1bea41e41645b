"""Random parts in random cribs: always an answer, always consistent."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, assume, example, given, settings
from hypothesis import strategies as st
from one_bend_asked import check_bend
from plan_reading import codes, outside_lengths
from planning_shop import CRIB, METALS, PRESS, die

from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part.part import Bend, Part
from flangebook.bending.part.section import check_part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.order.search import PlanLimits
from flangebook.planning.plan import plan

SHORT_S = 5.0  # of a search; what is said of a plan holds whatever it has found by then
ANGLES = st.sampled_from(
    [30.0, 45.0, 60.0, 88.0, 90.0, 90.0, 90.0, 91.0, 120.0, 135.0, 165.0, 175.0]
)
RADII = st.sampled_from([None, None, None, 0.5, 3.0, 8.0, 40.0])


@st.composite
def bends(draw: st.DrawFn, at_end: bool) -> Bend:
    direction = draw(st.sampled_from(["up", "down"]))
    kind = draw(st.sampled_from(["bend"] * 8 + (["closed_hem", "open_hem"] if at_end else [])))
    if kind == "bend":
        return Bend(draw(ANGLES), direction, draw(RADII))  # type: ignore[arg-type]
    gap = 2.0 if kind == "open_hem" else 0.0
    return Bend(0.0, direction, None, kind, gap)  # type: ignore[arg-type]


@st.composite
def parts(draw: st.DrawFn) -> Part:
    count = draw(st.integers(1, 6))
    one = Part(
        title="Random",
        metal=draw(st.sampled_from(sorted(METALS))),
        thickness_mm=draw(st.sampled_from([0.5, 1.0, 1.5, 2.0, 3.0, 6.0])),
        bend_length_mm=draw(st.sampled_from([20.0, 137.5, 500.0, 1400.0, 3000.0])),
        flats_mm=tuple(draw(st.floats(6.0, 250.0)) for _ in range(count + 1)),
        bends=tuple(draw(bends(i in (0, count - 1))) for i in range(count)),
        dimension=draw(st.sampled_from(["din6935", "din6935", "inside"])),
        grain=draw(st.sampled_from([None, "with", "across"])),
    )
    try:
        check_part(one)
    except (InputError, NotAPartError):
        assume(False)
    return one


CRIBS = st.sampled_from(
    [
        CRIB,
        CRIB,
        Crib(),
        replace(CRIB, punches=()),
        replace(CRIB, dies=()),
        Crib(CRIB.punches[:1], (die(16.0),), ()),
        replace(CRIB, dies=(die(40.0), replace(die(6.0), rating_kn_per_m=None))),
    ]
)


def step_sums(answer: JsonDict) -> None:
    """What must be true of every plan."""
    made = [s["bend"] for s in answer["steps"]]
    assert sorted(set(made)) == list(range(1, len(answer["part"]["bends"]) + 1))
    for number, bend in enumerate(answer["part"]["bends"], start=1):
        operations = [s["operation"] for s in answer["steps"] if s["bend"] == number]
        if bend["kind"] == "bend":
            assert operations in (["bend"], ["step bend"])
        else:
            assert operations == ["hem pre-bend", "hem flatten"]
    assert [s["number"] for s in answer["steps"]] == list(range(1, len(made) + 1))
    assert list(dict.fromkeys(made)) == answer["order"]["sequence"]
    lines = answer["bend_lines_mm"]
    assert len(lines) == len(answer["part"]["bends"])
    assert answer["blank"]["length_mm_low"] <= answer["blank"]["length_mm"]
    assert answer["blank"]["length_mm"] <= answer["blank"]["length_mm_high"]
    for step in answer["steps"]:
        if step["force_kn"] is not None:
            per_m = step["force_kn"] / answer["part"]["bend_length_mm"] * 1000
            assert step["force_kn_per_m"] == pytest.approx(per_m, rel=1e-3, abs=1e-3)
            assert step["punch"] is not None
            assert step["die"] is not None


def not_called_clear(answer: JsonDict) -> None:
    """It is said why; where there is no order, what stands in the way, and that it is no proof."""
    said = codes(answer)
    assert said & {"no-order", "order-not-found", "clearance-not-checked", "order-not-proven"}
    words = answer["order"]["words"]
    if "order-not-found" in said:
        assert "no-order" not in said
        assert "no proof" in words or "in the time" in words
    if said & {"no-order", "order-not-found"}:
        assert answer["blank"]["length_mm"] > 0.0
        reasons = answer["order"]["blocked"] or codes(answer, "stop") - {"no-order"}
        assert reasons or "in the time" in words


INTO_AND_TOO_SHARP = Part(
    title="Bends too sharp for the tools, and a radius made in hits",
    metal="mild-steel-cr",
    thickness_mm=0.5,
    bend_length_mm=20.0,
    flats_mm=(6.0, 6.0, 6.0, 9.0, 9.0),
    bends=(Bend(30.0, "up"), Bend(88.0, "up"), Bend(30.0, "up"), Bend(30.0, "down", 8.0)),
)
"""The search ends at once without an order; with bumps among its bends that is no proof."""


NOTHING_AGAINST_IT = Part(
    title="Nothing against it, of tools in an unknown condition",
    metal="mild-steel-cr",
    thickness_mm=0.5,
    bend_length_mm=100.0,
    flats_mm=(6.0, 118.0),
    bends=(Bend(88.0, "up"),),
)


@pytest.mark.slow
@settings(
    max_examples=60, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow]
)
@example(INTO_AND_TOO_SHARP, CRIB, PRESS)
@example(NOTHING_AGAINST_IT, CRIB, PRESS)
@given(parts(), CRIBS, st.sampled_from([PRESS, PRESS, None]))
def test_a_part_that_can_be_described_always_gets_an_answer(
    one: Part, crib: Crib, press: object
) -> None:
    limits = PlanLimits(deadline_s=SHORT_S)
    answer = plan(one, press, crib, METALS, limits=limits)  # type: ignore[arg-type]
    json.dumps(answer, allow_nan=False)
    step_sums(answer)
    known = press is not None and crib.dies and crib.punches
    if not known:
        assert "clearance-not-checked" in codes(answer, "caution")
    elif not answer["order"]["proven"]:
        not_called_clear(answer)
    else:
        assert "no-order" not in codes(answer)
    # Nobody has said in which condition these tools are: that is unknown, never ok.
    assert answer["worst"] in ("unknown", "caution", "stop")
    if not (crib.dies and crib.punches):
        assert answer["worst"] == "stop"
    plain = all(b.kind == "bend" for b in one.bends) and one.dimension == "din6935"
    if plain and "flat-too-short" not in codes(answer):
        assert outside_lengths(answer) == pytest.approx(list(one.flats_mm), abs=0.01)


@settings(max_examples=60)
@given(
    st.sampled_from(sorted(METALS)),
    st.floats(0.3, 12.0),
    st.floats(10.0, 3000.0),
    st.floats(5.0, 179.0),
    CRIBS,
    st.sampled_from([PRESS, None]),
)
def test_a_bend_gets_an_answer_or_a_refusal_that_names_the_angle(
    metal: str, thickness: float, length: float, angle: float, crib: Crib, press: object
) -> None:
    refused: InputError | None = None
    answer: JsonDict = {}
    try:
        answer = check_bend(METALS[metal], thickness, length, angle, press=press, crib=crib)  # type: ignore[arg-type]
    except InputError as error:
        refused = error
    if refused is not None:
        assert refused.where == "included_angle_deg"
        assert angle < 40.0, "only a bend pressed shut is refused"
        return
    json.dumps(answer, allow_nan=False)
    assert answer["force_kn_low"] <= answer["force_kn"] <= answer["force_kn_high"]
    assert sum(o["chosen"] for o in answer["options"]) <= 1
    chosen = next((o for o in answer["options"] if o["chosen"]), None)
    if chosen and chosen["level"] == "stop":
        assert answer["worst"] == "stop"


@pytest.mark.slow
@given(st.floats(0.8, 3.0), st.floats(1.05, 1.6))
def test_force_rises_with_thickness_in_the_same_die(thickness: float, times: float) -> None:
    only = replace(CRIB, dies=tuple(die for die in CRIB.dies if die.code == "V40-84"))

    def force(t: float) -> float:
        answer = check_bend(
            METALS["mild-steel-cr"], t, 500, 90, press=None, crib=only, die="V40-84"
        )
        return float(answer["force_kn_high"])

    assert force(thickness * times) > force(thickness)


@pytest.mark.slow
def test_forty_bends_are_planned() -> None:
    """As many as a part may have: a long saw-tooth. No time is enough to look through all of its
    orders, so what is left when the time is up is what a shop gets, here as with 20 seconds."""
    count = 40
    flats = tuple(20.0 for _ in range(count + 1))
    teeth = tuple(Bend(120.0, "up" if i % 2 else "down") for i in range(count))
    one = Part("Saw-tooth", "mild-steel-cr", 1.0, 300.0, flats, teeth)
    answer = plan(one, PRESS, CRIB, METALS, limits=PlanLimits(deadline_s=SHORT_S))
    step_sums(answer)
    assert len(answer["steps"]) == count
    assert all(len(s["drawing"]["before"]["sheet"]) <= 450 for s in answer["steps"])
