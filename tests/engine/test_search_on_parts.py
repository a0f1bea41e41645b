"""The order search on parts with tools, against all orders one by one.

Whether a step can be made is asked of the compiled functions here too (their own tests hold
them against other constructions); prices, transitions and the search are done again, plainly.
"""

from __future__ import annotations

import itertools
import math
import random

import numpy as np
import pytest
from order_parts import DEEP, GOOSENECK, NARROW, PUNCH, problem_of, random_part

from flangebook.bending.handling import HAND_DISTANCE_MM
from flangebook.bending.ordering import cost as costs
from flangebook.bending.ordering.explain import dead_ends, refused_steps
from flangebook.bending.ordering.gauge_rule import EDGE, FLANGE
from flangebook.bending.ordering.problem import AGAINST_WISH, BANNED, LEFT, RIGHT, SLIDES, Problem
from flangebook.bending.ordering.search import Found, Known, Move, code_of, search
from flangebook.bending.ordering.step_facts import KINDS, step_facts, wing_row
from flangebook.bending.strip import Fold, Strip, centre_line

Counts = tuple[int, ...]


class Plain:
    """One problem solved the plain way: every order, every end, every pair."""

    def __init__(self, problem: Problem, banned: frozenset[tuple[int, Move]] = frozenset()) -> None:
        self.problem, self.banned = problem, banned
        self.bends, self.pairs = len(problem.at), len(problem.change)
        self.scale = costs.scale_for(self.bends, problem.change)
        self.known = Known(problem)
        self.priced: dict[tuple[int, Move], Counts] = {}

    def step(self, made: int, move: Move) -> Counts:
        """What a step costs by itself."""
        if (made, move) not in self.priced:
            self.priced[made, move] = self._step(made, move)
        return self.priced[made, move]

    def _step(self, made: int, move: Move) -> Counts:
        problem = self.problem
        if not self.known.has_room(self.bends):
            self.known.grow()
        problem, memo = self.known.problem, self.known.memo
        left, right = (wing_row(problem, memo.wings, made, move.bend, side) for side in (0, 1))
        code, contact = step_facts(
            problem, memo, made, left, right, move.bend, move.end, move.pair, True
        )
        counts = [0] * len(costs.NAMES)
        counts[costs.BLOCKED] = int(bool(code & ~SLIDES) or (made, move) in self.banned)
        counts[costs.SLIDE] = int(bool(code & SLIDES))
        counts[costs.CRITICAL] = self.missed(made, move, contact)
        back, front = self.reach(made, move, move.end), self.reach(made, move, 1 - move.end)
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

    def reach(self, made: int, move: Move, side: int) -> float:
        """How far that side stands out from the bend line, by tracing the strip."""
        p = self.problem
        folds = [
            Fold(p.at[b], math.degrees(p.angle[b]), p.radius[b], p.allowance[b])
            if made >> b & 1 else Fold(p.at[b])
            for b in range(self.bends)
        ]  # fmt: skip
        wing = Strip(p.thickness, p.length, tuple(folds))
        line = p.at[move.bend]
        if side == LEFT:
            wing, line = wing.reversed(), p.length - line
        beyond = [f for f in wing.folds if f.at_mm > line]
        wing = Strip(p.thickness, p.length - line, tuple(
            Fold(f.at_mm - line, f.bend_angle_deg, f.inside_radius_mm, f.allowance_mm)
            for f in beyond
        ))  # fmt: skip
        return max(x for x, _ in centre_line(wing))

    def counts(self, sequence: tuple[Move, ...]) -> Counts:
        """What a sequence costs, dearest first."""
        problem = self.problem
        total = [0] * len(costs.NAMES)
        made = 0
        for move, before in zip(sequence, (None, *sequence), strict=False):
            total = [a + b for a, b in zip(total, self.step(made, move), strict=True)]
            made |= 1 << move.bend
            if before is None:
                continue
            turn = (problem.angle[before.bend] > 0) != (problem.angle[move.bend] > 0)
            end = before.end != move.end
            changed = int(problem.change[before.pair, move.pair])
            total[costs.TURN_OVER] += int(turn)
            total[costs.TURN_END] += end
            total[costs.CHANGE] += changed
            against = (turn and problem.no_turn_over, end and problem.no_turn_end,
                       changed and problem.no_change)  # fmt: skip
            total[costs.BLOCKED] += int(any(against))
        return tuple(total)

    def cheapest(self, *, soft: bool = False) -> Counts | None:
        """The least that any order costs; None if none can be made."""
        choices = [(e, p) for e in range(2) for p in range(self.pairs)]
        least: Counts | None = None
        for order in itertools.permutations(range(self.bends)):
            for chosen in itertools.product(choices, repeat=self.bends):
                sequence = tuple(Move(b, e, p) for b, (e, p) in zip(order, chosen, strict=True))
                counts = self.counts(sequence)
                if (soft or counts[0] == 0) and (least is None or counts < least):
                    least = counts
        return least


def compare(plain: Plain, *, soft: bool = False) -> Found:
    """Hold the search against every order there is."""
    least = plain.cheapest(soft=soft)
    found = search(plain.problem, soft=soft, banned=plain.banned)
    assert found.proven
    if least is None:
        assert (found.status, found.cost) == ("none", None)
        return found
    assert found.status == "found"
    assert plain.counts(found.sequence) == least
    assert found.cost == plain.scale.cost(plain.scale.packed(least))
    return found


def random_problem(seed: int, bends: int, pairs: int) -> Problem:
    """A random part with random tools and wishes."""
    rnd = random.Random(seed)
    problem = problem_of(
        random_part(rnd, bends, rnd.choice(("winding", "panel", "deck"))),
        rnd.sample((PUNCH, GOOSENECK, DEEP), pairs),
        holder=rnd.choice((NARROW, None)),
        can_slide=rnd.random() < 0.7,
    )
    return problem._replace(
        critical=np.array([rnd.random() < 0.3 for _ in range(bends + 1)]),
        before=np.array([rnd.choice([0, 0, 0, rnd.randrange(1 << b)]) for b in range(bends)]),
        no_turn_over=rnd.random() < 0.05,
        no_turn_end=rnd.random() < 0.1,
        no_change=rnd.random() < 0.2,
    )


SIZES = [(1, 1), (2, 1), (2, 2), (3, 1), (3, 2), (4, 1)]


def test_random_parts_of_up_to_four_bends() -> None:
    outcomes = []
    for seed in range(120):
        bends, pairs = SIZES[seed % len(SIZES)]
        plain = Plain(random_problem(seed, bends, pairs))
        outcomes.append(compare(plain, soft=seed % 4 == 0).status)
    assert outcomes.count("found") > 40
    assert outcomes.count("none") > 5


def test_banned_steps_are_not_taken() -> None:
    """The step that the cheapest order begins with is banned, again and again."""
    problem = problem_of(random_part(random.Random(1), 3, "deck"), (PUNCH, GOOSENECK))
    banned: frozenset[tuple[int, Move]] = frozenset()
    costs_so_far = []
    for _ in range(6):
        found = compare(Plain(problem, banned))
        if found.cost is None:
            break
        costs_so_far.append(found.cost)
        assert (0, found.sequence[0]) not in banned
        banned |= {(0, found.sequence[0])}
    assert len(costs_so_far) > 1
    soft = search(problem, soft=True, banned=[(0, Move(b, e, p)) for b in range(3)
                                              for e in range(2) for p in range(2)])  # fmt: skip
    assert soft.codes[0] & BANNED


def test_what_is_known_serves_the_next_search() -> None:
    """Another wish on the same part: same answer with and without what was learned."""
    problem = random_problem(31, 4, 2)._replace(before=np.zeros(4, np.int64))
    known = Known(problem)
    for wish in ({}, {"no_change": True}, {"before": np.array([0, 1, 0, 0])}):
        wished = problem._replace(**wish)
        alone, with_known = search(wished), search(wished, known=known)
        assert alone.status == with_known.status
        assert alone.cost == with_known.cost


def test_the_fields_may_be_of_any_kind_of_number() -> None:
    """Whole numbers where others are meant compile nothing anew and give the same."""
    problem = random_problem(3, 3, 1)
    loose = problem._replace(
        thickness=2,
        margin=2,
        before=problem.before.astype(np.int32),
        at=list(problem.at),
        can_slide=np.bool_(problem.can_slide),
    )
    assert search(loose).cost == search(problem).cost


def test_an_impossible_wish_is_named() -> None:
    """Each bend before the other: nothing can come first."""
    problem = random_problem(2, 2, 1)._replace(before=np.array([2, 1]))
    assert search(problem).status == "none"
    soft = search(problem, soft=True)
    assert any("wish" in refused.reasons for refused in refused_steps(soft))
    assert any(code & AGAINST_WISH for code in soft.codes)


def test_dead_ends_name_every_bend_that_is_left() -> None:
    for seed in range(200):
        problem = random_problem(seed, 4, 1)
        found = search(problem)
        if found.status == "none":
            break
    else:
        pytest.fail("no part without an order among these")
    for dead_end in dead_ends(problem, found):
        assert [r.move.bend for r in sorted(dead_end.refused, key=lambda r: r.move.bend)] == list(
            dead_end.bends
        )
        for refused in dead_end.refused:
            assert refused.reasons
            assert code_of(problem, refused.made, refused.move) == refused.code
