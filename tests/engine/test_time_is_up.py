"""A plan whose time is up ends with the best it has: nothing that could wait is begun any more."""

from __future__ import annotations

from dataclasses import replace

import pytest
from demo_shop import DEMO_CRIB, DEMO_PRESS, STARTER_METALS
from plan_reading import words_of

from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend, Part
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order import advice, attempts, search
from flangebook.planning.order.attempts import MOST_ATTEMPTS
from flangebook.planning.plan import plan
from flangebook.shop.work import NotWantedError

UP = PlanLimits(deadline_s=0.0)


def winding(bends: int, flat_mm: float, radius_mm: float | None = None) -> Part:
    """Two up, two down, and so on: no order of it clears the demo shop's tools."""
    made = tuple(Bend(90.0, "down" if i // 2 % 2 else "up", radius_mm) for i in range(bends))
    return Part("", "mild-steel-cr", 1.0, 500.0, (flat_mm,) * (bends + 1), made)


PARTS = {
    "short flats": winding(16, 5.0),
    "twenty": winding(20, 30.0),
    "radii in hits": winding(4, 200.0, 60.0),
    "limits on the order": replace(
        winding(6, 12.0),
        order_limits=OrderLimits(first=3, last=1, no_turn_over=True, no_turn_end=True),
    ),
}


@pytest.fixture
def begun(monkeypatch: pytest.MonkeyPatch) -> dict[str, int]:
    """How often each kind of work was begun."""
    counts: dict[str, int] = {}

    def count(module: object, name: str) -> None:
        real = getattr(module, name)

        def counted(*arguments: object, **named: object) -> object:
            counts[name] = counts.get(name, 0) + 1
            return real(*arguments, **named)

        monkeypatch.setattr(module, name, counted)

    for module, name in (
        (search, "search"), (search, "_with_tools"), (advice, "search"),
        (advice, "searched_order"), (attempts, "_attempt"),
    ):  # fmt: skip
        count(module, name)
    return counts


@pytest.mark.parametrize("of", PARTS.values(), ids=PARTS)
def test_no_other_tools_are_tried_and_nothing_is_asked_for_advice(
    begun: dict[str, int], of: Part
) -> None:
    answer = plan(of, DEMO_PRESS, DEMO_CRIB, STARTER_METALS, limits=UP)
    assert begun["_with_tools"] == 1
    assert begun["_attempt"] == 1
    assert begun["search"] <= search.MOST_ROUNDS
    assert "searched_order" not in begun
    assert answer["steps"]
    assert answer["worst"] == "stop"


@pytest.mark.slow
def test_with_time_all_of_that_is_done(begun: dict[str, int]) -> None:
    """So that the other tests cannot pass because nothing was ever begun."""
    plan(PARTS["short flats"], DEMO_PRESS, DEMO_CRIB, STARTER_METALS, limits=PlanLimits(1000.0))
    assert begun["_with_tools"] > 4
    assert 1 < begun["_attempt"] <= MOST_ATTEMPTS
    plan(
        PARTS["limits on the order"],
        DEMO_PRESS,
        DEMO_CRIB,
        STARTER_METALS,
        limits=PlanLimits(1000.0),
    )
    assert begun["searched_order"] >= 1


def test_what_limits_cost_is_said_not_to_be_known() -> None:
    answer = plan(PARTS["limits on the order"], DEMO_PRESS, DEMO_CRIB, STARTER_METALS, limits=UP)
    said = [words_of(one) for one in answer["order"]["wishes"]]
    assert len(said) == 4
    assert all("in the time" in words for words in said)


def test_what_nobody_waits_for_ends_between_two_pieces_of_work() -> None:
    asked = 0

    def cancelled() -> bool:
        nonlocal asked
        asked += 1
        if asked > 2:
            raise NotWantedError
        return False

    with pytest.raises(NotWantedError):
        plan(
            PARTS["short flats"], DEMO_PRESS, DEMO_CRIB, STARTER_METALS,
            limits=PlanLimits(1000.0, cancelled),
        )  # fmt: skip
    assert asked == 3
