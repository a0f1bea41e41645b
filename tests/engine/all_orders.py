"""One order problem solved the plain way, for the search to be held against.

Whether a step can be made is asked of the compiled functions (their own tests hold them against
other constructions). What it costs is counted again here, and the cheapest order is found twice,
neither way like the search:

- one by one: every order, every end, every tool pair, nothing left out but what follows a step
  that cannot be made;
- by last moves: for each set of finished bends and each step that can be its last, the least
  that it costs to get there. What follows knows no more than that of what was.

Costs are whole numbers of any length, one digit of BASE for each count, dearest first.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from flangebook.bending.clearance.problem import LEFT, RIGHT, SLIDES, Problem
from flangebook.bending.geometry.strip import Arc, Fold, Strip, trace
from flangebook.bending.ordering import cost as costs
from flangebook.bending.ordering.cost import HAND_DISTANCE_MM
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE
from flangebook.bending.ordering.search import Known, Move
from flangebook.bending.ordering.step_facts import KINDS, Bending, leg_row, step_facts

Counts = tuple[int, ...]
BASE = 10**7
"""More than any count of any order comes to."""
BLOCKED = BASE ** (len(costs.NAMES) - 1)
"""What costs as much or more has a step that cannot be made, or goes against a limit."""


@dataclass(frozen=True)
class Answer:
    """least: what the cheapest order costs; None if none can be made. orders: how many can."""

    least: Counts | None
    orders: int


def packed(counts: Counts) -> int:
    """The counts as the digits of one number."""
    number = 0
    for count in counts:
        assert count < BASE
        number = number * BASE + count
    return number


def unpacked(number: int) -> Counts:
    """The digits again."""
    digits = []
    for _ in costs.NAMES:
        number, digit = divmod(number, BASE)
        digits.append(digit)
    return tuple(reversed(digits))


def upright(arc: Arc) -> list[float]:
    """Where an arc's middle line stands upright, if it does."""
    shares = [(k * math.pi / 2.0 - arc.heading) / arc.sweep for k in range(-9, 10, 2)]
    middle = (arc.inside_mm + arc.outside_mm) / 2.0
    return [arc.point(share, middle)[0] for share in shares if 0.0 < share < 1.0]


class Plain:
    """One problem; banned: steps that may not be, with the bends made before them as a set."""

    def __init__(self, problem: Problem, banned: frozenset[tuple[int, Move]] = frozenset()) -> None:
        self.problem, self.banned = problem, banned
        self.bends, self.pairs = len(problem.at), len(problem.change)
        self.scale = costs.scale_for(self.bends, problem.change)
        self.known = Known(problem)
        self.moves = [
            Move(bend, end, pair)
            for bend in range(self.bends) for end in (LEFT, RIGHT) for pair in range(self.pairs)
        ]  # fmt: skip
        self.going = [[packed(self.between(a, b)) for b in self.moves] for a in self.moves]
        self.priced: dict[tuple[int, Move], Counts] = {}
        self.reaches: dict[tuple[int, int, int], float] = {}
        self.steps: dict[tuple[int, int], int] = {}
        self.rows: dict[tuple[int, int], tuple[int, int]] = {}

    def step(self, made: int, move: Move) -> Counts:
        """What a step costs by itself; made: the bends finished before it."""
        if (made, move) not in self.priced:
            self.priced[made, move] = self._step(made, move)
        return self.priced[made, move]

    def _step(self, made: int, move: Move) -> Counts:
        left, right = self.legs(made, move.bend)
        problem, memo = self.known.problem, self.known.memo
        step = Bending(move.bend, move.end, move.pair, left, right)
        code, contact = step_facts(problem, memo, made, step, True)
        counts = [0] * len(costs.NAMES)
        counts[costs.BLOCKED] = int(bool(code & ~SLIDES) or (made, move) in self.banned)
        counts[costs.SLIDE] = int(bool(code & SLIDES))
        counts[costs.CRITICAL] = self.missed(made, move, contact)
        back, front = (self.reach(made, move.bend, s) for s in (move.end, 1 - move.end))
        room = front - problem.die[move.pair, 2]
        counts[costs.HELD_CLOSE] = int(front < back and room < HAND_DISTANCE_MM)
        between = contact // KINDS
        outwards = [b for b in self.side(move.bend, move.end) if made >> b & 1]
        variance = problem.gauge_variance + sum(problem.bend_variance[outwards[:between]])
        counts[costs.VARIANCE] = round(variance / self.scale.variance_step_mm2)
        share = problem.at[move.bend] / problem.length
        share = share if move.end == LEFT else 1.0 - share
        counts[costs.SHARE] = max(0, round((share - 0.5) / costs.SHARE_STEP))
        return tuple(counts)

    def legs(self, made: int, bend: int) -> tuple[int, int]:
        """Rows of the legs on either side of a bend."""
        if (made, bend) not in self.rows:
            if not self.known.has_room(self.bends):
                self.known.grow()
            problem, memo = self.known.problem, self.known.memo
            left, right = (leg_row(problem, memo.legs, made, bend, side) for side in (0, 1))
            self.rows[made, bend] = left, right
        return self.rows[made, bend]

    def side(self, bend: int, side: int) -> range:
        """The bends on that side, outwards."""
        return range(bend - 1, -1, -1) if side == LEFT else range(bend + 1, self.bends)

    def missed(self, made: int, move: Move, contact: int) -> int:
        """Critical flats that this step decides and does not gauge directly."""
        missed = 0
        for flat, neighbour, end in (
            (move.bend, move.bend - 1, LEFT), (move.bend + 1, move.bend + 1, RIGHT)
        ):  # fmt: skip
            outside = not 0 <= neighbour < self.bends
            decided = outside or made >> neighbour & 1
            at_edge = outside and contact == EDGE
            at_flange = not outside and contact == KINDS + FLANGE
            direct = end == move.end and (at_edge or at_flange)
            missed += int(bool(self.problem.critical[flat] and decided and not direct))
        return missed

    def reach(self, made: int, bend: int, side: int) -> float:
        """How far that side stands out from the bend line, by tracing the strip."""
        mine = sum(1 << b for b in self.side(bend, side) if made >> b & 1)
        if (mine, bend, side) not in self.reaches:
            self.reaches[mine, bend, side] = self._reach(mine, bend, side)
        return self.reaches[mine, bend, side]

    def _reach(self, made: int, bend: int, side: int) -> float:
        p = self.problem
        folds = [
            Fold(p.at[b], math.degrees(p.angle[b]), p.radius[b], p.allowance[b])
            if made >> b & 1 else Fold(p.at[b])
            for b in range(self.bends)
        ]  # fmt: skip
        leg = Strip(p.thickness, p.length, tuple(folds))
        line = p.at[bend]
        if side == LEFT:
            leg, line = leg.reversed(), p.length - line
        beyond = [f for f in leg.folds if f.at_mm > line]
        leg = Strip(p.thickness, p.length - line, tuple(
            Fold(f.at_mm - line, f.bend_angle_deg, f.inside_radius_mm, f.allowance_mm)
            for f in beyond
        ))  # fmt: skip
        straights, arcs = trace(leg)
        return max(
            *(x for straight in straights for x, _, _ in (straight.start, straight.end)),
            *(x for arc in arcs if arc is not None for x in upright(arc)),
        )

    def between(self, before: Move, move: Move) -> Counts:
        """What it costs to go from one step to the next."""
        problem = self.problem
        turn = (problem.angle[before.bend] > 0) != (problem.angle[move.bend] > 0)
        end = before.end != move.end
        changed = int(problem.change[before.pair, move.pair])
        against = (turn and problem.no_turn_over, end and problem.no_turn_end,
                   changed and problem.no_change)  # fmt: skip
        counts = [0] * len(costs.NAMES)
        counts[costs.TURN_OVER], counts[costs.TURN_END] = int(turn), int(end)
        counts[costs.CHANGE], counts[costs.BLOCKED] = changed, int(any(against))
        return tuple(counts)

    def counts(self, sequence: tuple[Move, ...]) -> Counts:
        """What a sequence costs, dearest first."""
        total = [0] * len(costs.NAMES)
        made = 0
        for move, before in zip(sequence, (None, *sequence), strict=False):
            those = [self.step(made, move)]
            those += [] if before is None else [self.between(before, move)]
            total = [sum(counts) for counts in zip(total, *those, strict=True)]
            made |= 1 << move.bend
        return tuple(total)

    def onwards(self, made: int, last: int | None, most: int) -> list[tuple[int, int, int]]:
        """Every next step after these bends and that last move, if it costs less than ``most``:
        the bends made then, its move, and what it adds."""
        found = []
        for number, move in enumerate(self.moves):
            if made >> move.bend & 1:
                continue
            if (made, number) not in self.steps:
                self.steps[made, number] = packed(self.step(made, move))
            more = self.steps[made, number] + (0 if last is None else self.going[last][number])
            if more < most:
                found.append((made | 1 << move.bend, number, more))
        return found

    def one_by_one(self, *, soft: bool = False) -> Answer:
        """Every order, end and tool pair that can be made; soft: also those that cannot."""
        most = BASE * BLOCKED if soft else BLOCKED
        full, least, orders = (1 << self.bends) - 1, None, 0
        next_steps: dict[tuple[int, int | None], list[tuple[int, int, int]]] = {}
        waiting: list[tuple[int, int | None, int]] = [(0, None, 0)]
        while waiting:
            made, last, cost = waiting.pop()
            if made == full:
                orders += 1
                least = cost if least is None else min(least, cost)
                continue
            if (made, last) not in next_steps:
                next_steps[made, last] = self.onwards(made, last, most)
            for then, move, more in next_steps[made, last]:
                waiting.append((then, move, cost + more))
        return Answer(None if least is None else unpacked(least), orders)

    def by_last_moves(self, *, soft: bool = False) -> Answer:
        """The same from a table of sets of finished bends and their last moves."""
        most = BASE * BLOCKED if soft else BLOCKED
        reached: dict[tuple[int, int | None], tuple[int, int]] = {(0, None): (0, 1)}
        for _ in range(self.bends):
            then: dict[tuple[int, int | None], tuple[int, int]] = {}
            for (made, last), (cost, orders) in reached.items():
                for after, move, more in self.onwards(made, last, most):
                    known, ways = then.get((after, move), (cost + more, 0))
                    then[after, move] = (min(known, cost + more), ways + orders)
            reached = then
        if not reached:
            return Answer(None, 0)
        least = min(cost for cost, _ in reached.values())
        return Answer(unpacked(least), sum(orders for _, orders in reached.values()))
