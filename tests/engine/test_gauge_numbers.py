"""X and R of 200 plans of invented parts, measured again on the drawings the plans give out.

Only the answer as it goes out is read: what a shop could measure on the picture with a rule.
"""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace

import pytest
from order_parts import random_part
from planning_shop import GOOSENECK, HOLDER, METALS, MILD, PRESS, SHARP, STRAIGHT, die
from quick_ones import but_for
from shapely import LinearRing, Point, Polygon, box

from flangebook.bending.part.part import Bend, Part
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.answer import JsonDict
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.plan import plan

SHOP = Crib(punches=(STRAIGHT, SHARP, GOOSENECK), dies=(die(12.0), die(16.0)), holders=(HOLDER,))
ROUNDED_MM = 0.002  # the answer's coordinates are to 0.001 mm
GRAZED_MM2 = 0.1  # of a rounded outline lying against another
BLOCKS, PLANS = 10, 20


def invented(rnd: random.Random) -> Part:
    """Winding parts, panels and corrugated sheets of one to four bends, some with a hem."""
    kind = rnd.choice(("winding", "winding", "panel", "deck"))
    of = random_part(rnd, rnd.randint(1, 4), kind)
    if rnd.random() < 0.15:
        hem = Bend(0.0, rnd.choice(("up", "down")), kind="closed_hem")
        of = replace(of, bends=(hem, *of.bends), flats_mm=(12.0, *of.flats_mm))
    ways = rnd.choice(("din6935", "mould_line", "inside"))
    if any(b.kind != "bend" for b in of.bends):
        ways = "din6935"
    return replace(of, metal=MILD.code, dimension=ways)  # type: ignore[arg-type]


def measured(step: JsonDict) -> str:
    """Check one step's numbers on its drawing; what the finger stands against."""
    before, after = step["drawing"]["before"], step["drawing"]["after"]
    die_ring, bed_ring = step["drawing"]["die"], step["drawing"]["bed"]
    sheet, finger = LinearRing(before["sheet"]), Polygon(before["gauge"])
    x, r = step["gauge_x_mm"], step["gauge_r_mm"]
    # What is measured from: the punch's tip stands over the tools' centre line, the die's top
    # face is the zero of heights.
    tip = min(before["punch"], key=lambda p: p[1])
    assert abs(tip[0]) < ROUNDED_MM
    assert max(p[1] for p in die_ring) == pytest.approx(0.0, abs=ROUNDED_MM)
    # X: how far back the sheet reaches at the finger's heights, and where the finger's face is.
    left, low, _, high = finger.bounds
    reach = sheet.intersection(box(-5000.0, low, 5000.0, high)).bounds[2]
    assert reach == pytest.approx(x, abs=ROUNDED_MM)
    assert left == pytest.approx(x, abs=ROUNDED_MM)
    # R: the contact's height, a point of the sheet and of the finger.
    point = step["drawing"]["gauge_point"]
    assert point == pytest.approx([x, r], abs=ROUNDED_MM)
    assert sheet.distance(Point(point)) < ROUNDED_MM
    assert finger.exterior.distance(Point(point)) < ROUNDED_MM
    # The finger is in nothing's place, before the bend and, retracted, after it.
    for ring in (before["sheet"], before["punch"], before["holder"], before["ram"],
                 die_ring, bed_ring):  # fmt: skip
        assert Polygon(ring).buffer(0).intersection(finger).area < GRAZED_MM2
    gone = Polygon(after["gauge"])
    assert gone.bounds[0] - left == pytest.approx(step["gauge_draw_back_mm"], abs=ROUNDED_MM)
    assert Polygon(after["sheet"]).buffer(0).intersection(gone).area < 1.0
    assert PRESS.gauge_x_min_mm - 1e-3 <= x <= PRESS.gauge_x_max_mm + 1e-3
    assert PRESS.gauge_r_min_mm - 1e-3 <= r <= PRESS.gauge_r_max_mm + 1e-3
    return str(step["gauged_against"])


def edge_mm(answer: JsonDict, step: JsonDict) -> float:
    """From the bend line to the blank's edge at the gauged end."""
    line = next(b for b in answer["blank"]["bend_lines"] if b["bend"] == step["bend"])["at_mm"]
    return float(answer["blank"]["length_mm"] - line if step["gauged_end"] == "right" else line)


@pytest.mark.parametrize("block", but_for([0], range(BLOCKS)))
def test_gauge_numbers_of_plans_on_their_drawings(block: int) -> None:
    rnd = random.Random(200 * 1000 + block)
    stood: Counter[str] = Counter()
    for _ in range(PLANS):
        answer = plan(invented(rnd), PRESS, SHOP, METALS, limits=PlanLimits(deadline_s=5.0))
        done: set[int] = set()
        for step in answer["steps"]:
            if step["gauge_x_mm"] is not None:
                stood[measured(step)] += 1
                right = step["gauged_end"] == "right"
                behind = {n for n in done if (n > step["bend"]) == right}
                if not behind:  # nothing is bent on that side: the blank's own numbers
                    x = edge_mm(answer, step)
                    assert step["gauge_x_mm"] == pytest.approx(x, abs=ROUNDED_MM)
            elif step["operation"] != "hem flatten":
                assert not answer["order"]["proven"]
            done.add(step["bend"])
    assert stood["flat edge"] >= 20
    assert stood["finished flange"] >= 3
