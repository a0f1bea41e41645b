"""How long the order search takes, warm, on one core: by bends, punches, and outcome.

Every figure is the median and the worst of many random parts, each searched once with nothing
known of it. Times are the processor's for this process, which is what a search takes on a quiet
machine; a busy one only adds to the wait. A machine's speed is in the first row, and growth and
the plain way's time are ratios within the same run.
"""

from __future__ import annotations

import itertools
import random
import statistics
import time
from collections import Counter
from collections.abc import Callable, Sequence

import pytest
from order_parts import DEEP, GOOSENECK, NARROW, PUNCH, problem_of, random_part

from flangebook.bending.clearance.problem import Problem
from flangebook.bending.ordering.search import Found, Known, codes_of, search
from flangebook.planning.warm_up import warm_up

from .conftest import Figures

pytestmark = pytest.mark.benchmark

PUNCHES = {1: (GOOSENECK,), 3: (PUNCH, GOOSENECK, DEEP)}
PARTS = {6: 50, 8: 50, 10: 50, 12: 50, 14: 50, 16: 30, 18: 15, 20: 9}
"""By bends: how many; fewer where each takes long, the table says of how many."""
MOST_S = 60.0
"""A search that has not ended by then counts as not ended."""
KINDS = ("winding", "panel", "deck")
GOALS = {(12, 3): "worst under 0.2 s", (16, 3): "worst under 2 s", (20, 3): "worst under 5 s"}


def problems(bends: int, punches: int, count: int) -> list[Problem]:
    """That many random parts with those punches, always the same."""
    rnd = random.Random(bends * 100 + punches)
    return [
        problem_of(random_part(rnd, bends, KINDS[i % 3]), PUNCHES[punches], holder=NARROW)
        for i in range(count)
    ]


def timed(what: Callable[[], Found]) -> tuple[float, Found]:
    """How long it took [s], and what came out."""
    began = time.process_time()
    found = what()
    return time.process_time() - began, found


def ended(problem: Problem) -> Found:
    """What the search finds in MOST_S of the processor's time."""
    began = time.process_time()
    return search(problem, cancelled=lambda: time.process_time() - began > MOST_S)


def ms(times: Sequence[float]) -> str:
    if not times:
        return "none among them"
    median, worst = statistics.median(times) * 1000, max(times) * 1000
    return f"{len(times)}: median {median:.2f} ms, worst {worst:.0f} ms"


@pytest.fixture(scope="module", autouse=True)
def warm() -> None:
    warm_up()


def test_machine(figures: Figures) -> None:
    """What to hold the milliseconds against: a million additions in plain Python."""
    took = []
    for _ in range(5):
        began = time.process_time()
        sum(range(1_000_000))
        took.append(time.process_time() - began)
    figures.add("a million additions in Python", f"{min(took) * 1000:.1f} ms")


@pytest.mark.parametrize("punches", [1, 3])
def test_searches(punches: int, figures: Figures) -> None:
    worst: dict[int, float] = {}
    for bends, parts in PARTS.items():
        took: dict[str, list[float]] = {"found": [], "none": [], "stopped": []}
        looked_at = []
        for problem in problems(bends, punches, parts):
            seconds, found = timed(lambda: ended(problem))  # noqa: B023
            took[found.status].append(seconds)
            looked_at.append(found.looked_at)
        everything = [*took["found"], *took["none"], *took["stopped"]]
        worst[bends] = max(everything)
        name = f"order of {bends} bends, {punches} punch{'es' if punches > 1 else ''}"
        figures.add(f"{name}, found", ms(took["found"]), GOALS.get((bends, punches), ""))
        figures.add(f"{name}, proven impossible", ms(took["none"]))
        if took["stopped"]:
            figures.add(
                f"{name}, not ended in {MOST_S:.0f} s", f"{len(took['stopped'])} of {parts}"
            )
        figures.add(f"{name}, states looked at", f"at most {max(looked_at)} of {2**bends} sets")
    growth = (worst[20] / worst[12]) ** (1 / 8)
    figures.add(f"worst, for each bend more, {punches}", f"{growth:.2f} times", "2 times")


@pytest.mark.parametrize("bends", [6, 7])
def test_ratio_to_all_orders(bends: int, figures: Figures) -> None:
    """The plain way looks each step up once, so that only the orders themselves count."""
    ratios = []
    for problem in problems(bends, 1, 5):
        seconds, found = timed(lambda: search(problem))  # noqa: B023
        began = time.process_time()
        orders = all_orders(problem)
        plain = time.process_time() - began
        assert (orders == 0) == (found.status == "none")
        ratios.append(plain / seconds)
    figures.add(
        f"all orders of {bends} bends against the search",
        f"{statistics.median(ratios):.0f} times as long (median of {len(ratios)})",
    )


def all_orders(problem: Problem) -> int:
    """How many ways there are to make the part: every order, both ends, one punch."""
    bends, known = len(problem.at), Known(problem)
    can: Counter[tuple[int, int]] = Counter()
    for then in range(1, 1 << bends):
        for move, code in codes_of(problem, then, known).items():
            can[then ^ 1 << move.bend, move.bend] += code == 0
    ways = 0
    for order in itertools.permutations(range(bends)):
        made, these = 0, 1
        for bend in order:
            these *= can[made, bend]
            made |= 1 << bend
        ways += these
    return ways
