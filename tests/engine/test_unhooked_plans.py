"""A long part that cannot slide along the tools: unhooked from the punch, or not made at all."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
import shapely
from plan_reading import codes, finding
from planning_shop import CRIB, GOOSENECK, HAT, METALS, PRESS, STRAIGHT, UP, part
from shapely import affinity
from test_step_motion import sheet

from flangebook.bending.part.part import Part
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.plan import plan

SHALLOW = replace(PRESS, throat_mm=60.0)
"""No room behind the frames: what is longer than half the way between them cannot slide out."""
SMALL_CRIB = replace(CRIB, punches=(STRAIGHT, GOOSENECK), dies=CRIB.dies[2:4])


def channel(web_mm: float, bend_length_mm: float = 900.0) -> Part:
    """Its first flange comes to lie over the gooseneck's nose at the second bend."""
    return part((30.0, web_mm, 30.0), UP, UP, bend_length_mm=bend_length_mm)


def planned(of: Part) -> JsonDict:
    return plan(of, SHALLOW, SMALL_CRIB, METALS)


def test_a_long_channel_is_unhooked_from_the_gooseneck() -> None:
    answer = planned(channel(24.0))
    last = answer["steps"][-1]
    assert answer["order"]["proven"]
    assert last["punch"] == GOOSENECK.code
    assert last["clearance"]["clear"]
    assert (last["clearance"]["way_in"], last["clearance"]["way_out"]) == ("straight", "swing")
    assert last["clearance"]["rides_up"]
    assert finding(answer, "tilt-out")["level"] == "caution"
    assert "slide-out" not in codes(answer)


def test_a_short_one_too_though_it_could_slide() -> None:
    answer = planned(channel(24.0, 400.0))
    assert answer["steps"][-1]["clearance"]["way_out"] == "swing"


def test_where_it_cannot_be_unhooked_it_slides_if_there_is_room() -> None:
    answer = planned(channel(20.0, 400.0))
    assert answer["order"]["proven"]
    assert answer["steps"][-1]["clearance"]["way_out"] == "slide"
    assert finding(answer, "slide-out")["level"] == "caution"


def test_where_it_can_do_neither_nothing_is_called_clear() -> None:
    answer = planned(channel(20.0))
    order = answer["order"]
    assert not order["proven"]
    assert "That is no proof" in order["words"]
    assert "order-not-found" in codes(answer, "caution")
    assert "no-order" not in codes(answer)
    assert answer["worst"] == "stop"
    assert any("trapped" in one["hits"] or "punch" in one["hits"] for one in order["blocked"])
    assert order["remedies"]


def test_an_order_of_ones_own_is_looked_at_the_same_way() -> None:
    answer = planned(replace(channel(24.0), order=(2, 1)))
    assert answer["order"]["proven"]
    assert answer["steps"][-1]["clearance"]["way_out"] == "swing"
    refused = planned(replace(channel(20.0), order=(2, 1)))
    assert not refused["order"]["proven"]
    assert "That is no proof" in refused["order"]["words"]


@pytest.mark.parametrize("throat_mm", [60.0, 200.0])
def test_a_hat_goes_in_and_out_level_though_its_brims_hang_close_to_the_die(
    throat_mm: float,
) -> None:
    """Lifted by the brims' 25 mm it passes over the die: the punch opens by more than 100."""
    of = replace(HAT, bend_length_mm=900.0)
    answer = plan(of, replace(PRESS, throat_mm=throat_mm), CRIB, METALS)
    ways = [(s["clearance"]["way_in"], s["clearance"]["way_out"]) for s in answer["steps"]]
    assert ways == [("straight", "straight")] * 4


def moments(frames: list[dict[str, Any]], phase: str) -> list[dict[str, Any]]:
    """Frames of a phase and evenly between them, as the web shows them."""
    found = []
    for one, two in pairwise(frames):
        if two["phase"] == phase:
            for i in range(21):
                mix = lambda a, b, at=i / 20: a + (b - a) * at  # noqa: E731
                found.append(
                    {**two, "punch_y_mm": mix(one["punch_y_mm"], two["punch_y_mm"])}
                    | {s: list(map(mix, one[s], two[s])) for s in ("left", "right")}
                )
    return found


@pytest.mark.parametrize("web_mm", [22.0, 26.0, 35.0])
def test_the_picture_shows_it_taken_off_the_punch(web_mm: float) -> None:
    """No moment of the slider draws the sheet into punch, holder or die."""
    step = planned(channel(web_mm))["steps"][-1]
    frames = step["motion"]["frames"]
    shares = [frame["share"] for frame in frames]
    assert shares == sorted(shares)
    assert (shares[0], shares[-1]) == (0.0, 1.0)
    out = moments(frames, "taking out")
    assert len(out) > 40
    before = step["drawing"]["before"]
    for moment in [*moments(frames, "withdrawal"), *out]:
        drawn = sheet(step["motion"], moment)
        for name in ("punch", "holder"):
            tool = affinity.translate(shapely.Polygon(before[name]), 0.0, moment["punch_y_mm"])
            assert drawn.intersection(tool).area < 0.2, (name, moment["punch_y_mm"])
        if moment["phase"] == "taking out":
            assert drawn.intersection(shapely.Polygon(step["drawing"]["die"])).area < 0.2
    assert sheet(step["motion"], frames[-1]).bounds[2] < -20.0
