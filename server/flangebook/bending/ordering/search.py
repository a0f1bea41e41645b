"""The cheapest order of a part's bends with given tools, or the proof that there is none."""

from __future__ import annotations

from collections.abc import Callable, Collection
from functools import cache
from itertools import product
from typing import Any, get_type_hints

import numpy as np

from flangebook.bending.clearance.problem import LEFT, RIGHT, SLIDES, Bools, Floats, Ints, Problem
from flangebook.bending.ordering.best_first import (
    Found,
    Look,
    Move,
    Progress,
    Search,
    SearchLimits,
    new_table,
)
from flangebook.bending.ordering.cost import (
    BLOCKED,
    HAND_DISTANCE_MM,
    MOST,
    SHARE,
    VARIANCE,
    Scale,
    no_better,
    scale_for,
    transitions,
    ways_for,
)
from flangebook.bending.ordering.frontier import (
    CODE,
    HALF_KNOWN,
    MADE,
    MOST_KINDS,
    NO_ROOM,
    STAGE,
    Rules,
    Table,
)
from flangebook.bending.ordering.last_steps import Prices, look, share, step_key
from flangebook.bending.ordering.state_table import Keys, new_keys, row_of
from flangebook.bending.ordering.step_facts import more_legs, new_memo

__all__ = ["Found", "Known", "Move", "Progress", "code_of", "codes_of", "search"]

BannedStep = tuple[int, Move]
"""Bends made before, as a set, and the step."""

_LEGS = 1024
_MOST_ANSWERS = 1 << 17


class Known:
    """What searches have learned of one part with its tools, for the next search of the same.

    Limits, costs and bans may differ from search to search; geometry, tools and margin not.
    """

    def __init__(self, problem: Problem) -> None:
        self.problem = as_arrays(problem)
        self.memo = new_memo(self.problem, _LEGS)

    def has_room(self, bends: int) -> bool:
        """Whether the steps of one more set of bends can be remembered."""
        keys = self.memo.legs.keys
        return int(keys.used[0]) + 2 * bends <= len(keys.keys)

    def grow(self) -> None:
        """Make room for more legs."""
        self.memo = self.memo._replace(legs=more_legs(self.memo.legs))


def search(
    problem: Problem,
    *,
    deadline_s: float | None = None,
    cancelled: Callable[[], bool] | None = None,
    progress: Callable[[Progress], None] | None = None,
    soft: bool = False,
    banned: Collection[BannedStep] = (),
    known: Known | None = None,
) -> Found:
    """The cheapest order, by ``cost.NAMES``; or the proof that there is none.

    deadline_s: how long it may take. cancelled: asked every few milliseconds. progress: told
    about every tenth of a second. soft: steps that cannot be made are allowed, but as few as
    can be: what to show when there is no order. banned: steps that a closer look refused.
    known: from an earlier search of the same part and tools.
    """
    problem = as_arrays(problem)
    known = known or Known(problem)
    scale = scale_for(len(problem.at), problem.change)
    rules = rules_for(problem, scale, soft=soft)
    look_on = _looking_on(problem, known, scale, banned)
    limits = SearchLimits(deadline_s, cancelled, progress)
    return Search(rules, scale, look_on, limits).run()


def codes_of(problem: Problem, made: int, known: Known | None = None) -> dict[Move, int]:
    """Every way to make one of these bends last, and every reason why it cannot; 0: it can.

    made: bends finished after that step, as a set.
    """
    problem = as_arrays(problem)
    known = known or Known(problem)
    scale = scale_for(len(problem.at), problem.change)
    rules = rules_for(problem, scale, soft=True)
    table = new_table(rules)
    look_on = _looking_on(problem, known, scale, ())
    found = {}
    for bend, end, pair in product(range(rules.bends), (LEFT, RIGHT), range(rules.pairs)):
        if made >> bend & 1:
            table.told[MADE : STAGE + 1] = made ^ (1 << bend), bend, end, pair, HALF_KNOWN
            look_on(rules, table, MOST, -1)
            found[Move(bend, end, pair)] = int(table.told[CODE]) & ~SLIDES
    return found


def code_of(problem: Problem, made: int, move: Move, known: Known | None = None) -> int:
    """Every reason why a step cannot be made with the bends of ``made`` finished; 0: it can."""
    return codes_of(problem, made | 1 << move.bend, known)[move]


def as_arrays(problem: Problem) -> Problem:
    """The same problem with every field in the one form that functions are compiled for."""
    kinds: dict[Any, Any] = {Floats: np.float64, Ints: np.int64, Bools: np.bool_}
    fields: dict[str, Any] = {}
    for name, kind in _fields().items():
        value = getattr(problem, name)
        fields[name] = np.ascontiguousarray(value, kinds[kind]) if kind in kinds else kind(value)
    return Problem(**fields)


@cache
def _fields() -> dict[str, Any]:
    """A problem's fields and what each holds."""
    return get_type_hints(Problem)


def rules_for(problem: Problem, scale: Scale, *, soft: bool) -> Rules:
    """What does not change during a search of this problem."""
    if 4 * len(problem.change) > MOST_KINDS:
        raise ValueError(f"A search takes at most {MOST_KINDS // 4} tool pairs.")
    up = sum(1 << b for b, angle in enumerate(problem.angle) if angle > 0)
    down = (1 << len(problem.at)) - 1 - up
    order_limits = {
        "turn": problem.no_turn_over,
        "end": problem.no_turn_end,
        "tools": problem.no_change,
    }
    transition = transitions(scale, problem.change, **order_limits)
    least = min(round(problem.gauge_variance / scale.variance_step_mm2), scale.most_variance)
    shares = [[share(problem, b, end) for end in (LEFT, RIGHT)] for b in range(len(problem.at))]
    hint = np.array(shares, np.int64) * scale.units[SHARE] + least * scale.units[VARIANCE]
    blocked = None if soft else scale.units[BLOCKED]
    ways, way_cost = ways_for(transition, hint, problem.angle > 0, blocked)
    return Rules(
        bends=len(problem.at),
        pairs=len(problem.change),
        opposite=np.array([down, up], np.int64),
        units=np.array(scale.units, np.int64),
        transition=transition,
        no_better=no_better(transition, blocked),
        least=least * scale.units[VARIANCE],
        hint=hint,
        ways=ways,
        way_cost=way_cost,
        soft=soft,
        greedy=True,
    )


def _looking_on(
    problem: Problem, known: Known, scale: Scale, banned: Collection[BannedStep]
) -> Look:
    """The kernel that looks at states of this problem, given more room when it asks for it."""
    keys = _banned_keys(problem, banned)
    answers = np.zeros((_room_for_answers(problem), 3), np.int64)
    prices = Prices(scale.variance_step_mm2, scale.most_variance, HAND_DISTANCE_MM, keys, answers)

    def look_on(rules: Rules, table: Table, bound: int, until: int) -> int:
        while True:
            why = look(problem, known.memo, prices, rules, table, bound, until)
            if why != NO_ROOM or known.has_room(rules.bends):
                return why
            known.grow()

    return look_on


def _room_for_answers(problem: Problem) -> int:
    """A power of two: room for every step that there is, or the most."""
    steps = len(problem.at) * 2 * len(problem.change) << len(problem.at)
    return min(_MOST_ANSWERS, 1 << steps.bit_length())


def _banned_keys(problem: Problem, banned: Collection[BannedStep]) -> Keys:
    room = 1
    while room < len(banned):
        room *= 2
    keys = new_keys(room)
    bends, pairs = len(problem.at), len(problem.change)
    for made, move in banned:
        row_of(keys, step_key(bends, pairs, made, move.bend, move.end, move.pair))
    return keys
