"""The order, the tools and the ends of a part: searched for exactly, and checked once more.

The dies are taken first as the choice of tools has them, since they give the radii and so the
shape of the half-made part; every punch of the crib is open to the search with them, then each
other die by itself, best first, then all dies together. Tools that are worn or have no rating are
open to the search only where there is no order without them.
What is found is drawn up with the bends as the chosen tools really give them, and every step is
looked at again on that shape; where that refuses a step, the search is gone again.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from flangebook.bending.clearance.problem import LEFT, TRAPPED, Problem
from flangebook.bending.errors import InputError
from flangebook.bending.ordering.explain import Refused, reasons, refused_steps
from flangebook.bending.ordering.search import Found, Known, Move, code_of, codes_of, search
from flangebook.bending.part.order import Order, Rule, order_for
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import End, Part
from flangebook.bending.part.section import FoldedBend
from flangebook.bending.tools.tooling import Die, Press
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order.attempts import Attempt, best_attempt, folded_in
from flangebook.planning.order.problem import (
    Bending,
    ToolPair,
    bending_of,
    can_slide,
    order_problem,
    pairs_of,
)
from flangebook.planning.order.ways import comes_off
from flangebook.planning.steps.gauge_choice import ENDS
from flangebook.planning.steps.operations import Operation, operations
from flangebook.planning.steps.steps import StepMaker
from flangebook.planning.tools.candidates import Pair
from flangebook.planning.tools.fit import Fit
from flangebook.planning.tools.ranking import STOP_COST
from flangebook.planning.tools.tool_choice import ToolChoice

EXPLAIN_S = 1.0
"""How long is looked for the order with the fewest steps refused [s]."""
MOST_ROUNDS = 4
MOST_DIES = 16
"""So many dies are looked at one by one: each gives the part another shape."""
MOST_PAIRS = 100
"""More pairs than a shop's crib gives; those that suit the bends best are looked at."""
SMALL = 12
"""Up to so many bends a search takes moments, so that several can be made."""
HANDLING = ("critical", "turn_overs", "held_close", "turn_ends", "tool_changes", "slides")
HANDLING_WORDS = {
    "turn_overs": ("turn-over", "turn-overs"),
    "turn_ends": ("end turn", "end turns"),
    "tool_changes": ("tool change", "tool changes"),
    "slides": ("slide or tilt", "slides or tilts"),
}
"""What is told of an order's handling, and what one and more of each are called."""


@dataclass(frozen=True, slots=True)
class Searched:
    """What the search says of a part.

    found: its answer; None where it could not be asked (no press, no tools of the shop's own).
    problem, pairs, known: what it was asked. refused: steps of the order that cannot be made.
    every_tool: without an order, whether every pair of tools that may make a bend was open to the
    search. every_way: without one, whether none was given up because no way to take the part out
    was found. can_slide: whether there is room beside the tools to slide it out. no_order: dies
    with which, one by one, the search found that there is no order.
    """

    attempt: Attempt
    order: Order
    found: Found | None = None
    problem: Problem | None = None
    pairs: tuple[ToolPair, ...] = ()
    known: Known | None = None
    refused: tuple[Refused, ...] = ()
    looked_at: int = 0
    moves: tuple[Move, ...] = ()
    every_tool: bool = True
    every_way: bool = True
    can_slide: bool = True
    no_order: tuple[str, ...] = ()

    @property
    def none(self) -> bool:
        """Whether the search found that there is no order."""
        return self.found is not None and self.found.status == "none"


@dataclass(frozen=True, slots=True)
class _Asked:
    """What is searched for. unhooked: the part may also be unhooked from the punch, if a way to
    do so is found."""

    choice: ToolChoice
    bending: Bending
    base: Attempt
    pairs: tuple[ToolPair, ...]
    press: Press
    order_limits: OrderLimits
    unhooked: bool = False

    def known(self, folded: Sequence[FoldedBend]) -> Known:
        """The order problem with the bends coming out as ``folded``; nothing known of it yet."""
        problem = order_problem(
            self.choice, self.bending, folded, self.pairs, self.press, self.order_limits
        )
        return Known(problem._replace(can_slide=bool(problem.can_slide) or self.unhooked))


@dataclass(frozen=True, slots=True)
class _Drawn:
    """An order drawn up with the bends as its tools give them."""

    attempt: Attempt
    problem: Problem
    known: Known
    bad: tuple[tuple[int, Move], ...]


def searched_order(
    choice: ToolChoice, order_limits: OrderLimits, limits: PlanLimits | None = None
) -> Searched:
    """The cheapest order of the part, or why there is none.

    Raises:
        InputError: the part's own order does not name every bend once.
    """
    limits = (limits or PlanLimits()).begun()
    part, equipment = choice.part, choice.equipment
    unchecked = order_for(part)
    base = _attempt_by_rule(choice, unchecked.sequence, limits)
    press, crib = equipment.press, equipment.crib
    bending = bending_of(part, base.steps)
    if press is None or not crib.punches or not crib.dies:
        return Searched(base, unchecked)
    looked_at, whole, every_way = 0, not equipment.left_out, True
    asked: Searched | None = None
    without: list[str] = []
    for tools in _tool_sets(choice, bending, base):
        limits.heed()
        if asked is not None and limits.over:
            whole = False
            break
        try:
            tried = _with_tools(choice, bending, base, tools, press, order_limits, limits)
        except InputError:
            whole = False
            continue
        if tried is None:
            continue
        every_way = every_way and tried.every_way
        looked_at += tried.looked_at
        whole = whole and len(tried.pairs) < MOST_PAIRS
        asked = asked or tried
        if not tried.none:
            asked = tried
            break
        if len(tools.dies) == 1 and tried.every_way:
            without.append(tools.dies[0].code)
    if asked is None:
        return Searched(base, unchecked)
    if asked.found is not None and not asked.found.sequence and limits.explain:
        asked = _least_bad(choice, base, asked, limits)
    return replace(
        asked, looked_at=looked_at, every_tool=whole, every_way=every_way, no_order=tuple(without)
    )


def _attempt_by_rule(choice: ToolChoice, sequence: Sequence[int], limits: PlanLimits) -> Attempt:
    return best_attempt(choice, _steps(choice, sequence), limits)


def _steps(choice: ToolChoice, sequence: Sequence[int]) -> tuple[Operation, ...]:
    """The steps at the press in this order of bends."""
    crib, largest_mm = choice.equipment.crib, choice.largest_radius_mm()
    return operations(choice.part, choice.metal, crib, sequence, largest_mm)


@dataclass(frozen=True, slots=True)
class _Tools:
    """The dies to search with, with every punch. doubtful: also such as are worn or unrated."""

    dies: tuple[Die, ...]
    doubtful: bool


def _tool_sets(choice: ToolChoice, bending: Bending, base: Attempt) -> Iterator[_Tools]:
    """The dies to search with, without doubtful tools and then with them."""
    tried: list[tuple[Die, ...]] = []
    for dies in _die_sets(choice, bending, base):
        tried.append(dies)
        yield _Tools(dies, doubtful=False)
    for dies in tried:
        yield _Tools(dies, doubtful=True)


def _die_sets(choice: ToolChoice, bending: Bending, base: Attempt) -> Iterator[tuple[Die, ...]]:
    """The dies of the attempt by rule, each other die that may make every bend, then all dies
    together: a part that no single die makes may want two."""
    chosen = {one.die.code: one.die for one in base.fits if one is not None and one.die.code}
    if chosen:
        yield tuple(chosen.values())
    ranked, usable = [], []
    for die in choice.equipment.crib.dies:
        costs = [_least_cost(choice, step, die) for step in bending.steps]
        if any(cost < STOP_COST for cost in costs):
            usable.append(die)
        if all(cost < STOP_COST for cost in costs) and [die.code] != list(chosen):
            ranked.append((sum(costs), die.code, die))
    for _, _, die in sorted(ranked)[:MOST_DIES]:
        yield (die,)
    if len(usable) > 1:
        yield tuple(usable)


def _least_cost(choice: ToolChoice, step: Operation, die: Die) -> float:
    """What speaks least against a die for a bend; infinite where other tools are asked for."""
    open_to = set(choice.pairs(step))
    candidates = choice.for_step(step)
    pair = candidates.best(lambda f: f.die.code == die.code and (f.punch.code, die.code) in open_to)
    return math.inf if pair is None else candidates.costs[pair][0]


def _with_tools(
    choice: ToolChoice, bending: Bending, base: Attempt, tools: _Tools, press: Press,
    order_limits: OrderLimits, limits: PlanLimits,
) -> Searched | None:  # fmt: skip
    """The cheapest order with these tools, drawn up and looked at again; None without a pair that
    was not open to the search before.

    Where the part cannot be slid along the tools, the punch has to come and go straight past it.
    If no order does that, those are looked at whose part can be unhooked from the punch.
    """
    pairs = pairs_of(choice, bending, tools.dies, choice.punches)
    pairs = _by_merit(choice, bending, pairs, base.maker)
    sound = [pair for pair in pairs if not pair.doubtful]
    if tools.doubtful and len(sound) == len(pairs):
        return None
    pairs = (pairs if tools.doubtful else sound)[:MOST_PAIRS]
    if not pairs:
        return None
    asked = _Asked(choice, bending, base, tuple(pairs), press, order_limits)
    folded = _folded_with(choice, bending, base, tools.dies)
    strict = _in_rounds(asked, folded, limits)
    if strict.can_slide or choice.part.walled or not strict.none:
        return strict
    unhooked = _in_rounds(replace(asked, unhooked=True), folded, limits)
    looked_at = strict.looked_at + unhooked.looked_at
    if unhooked.moves and not unhooked.refused:
        return replace(unhooked, looked_at=looked_at)
    every_way = unhooked.every_way and unhooked.none
    return replace(strict, looked_at=looked_at, every_way=every_way)


def _in_rounds(asked: _Asked, folded: Sequence[FoldedBend], limits: PlanLimits) -> Searched:
    """Search, draw up, look again; what is refused then is banned from the next round."""
    banned: list[tuple[int, Move]] = []
    looked_at, every_way = 0, True
    for _ in range(MOST_ROUNDS):
        known = asked.known(folded)
        room = can_slide(asked.choice.part, asked.press, float(known.problem.length))
        found = _preferring(known.problem, known, asked.pairs, banned, limits)
        looked_at += found.looked_at
        if not found.sequence:
            order = Order((), "search", False, "")
            return Searched(
                asked.base, order, found, known.problem, asked.pairs, known, looked_at=looked_at,
                every_way=every_way, can_slide=room,
            )  # fmt: skip
        drawn = _drawn_up(asked, found.sequence, folded, known)
        if asked.unhooked and not drawn.bad:
            drawn = _with_ways(asked.choice.part, drawn, found.sequence)
            every_way = every_way and not drawn.bad
        if not drawn.bad:
            bumps = any(step.bumps for step in asked.bending.steps)
            clear_on_paper = found.certain and every_way and not bumps
            order = Order(_numbers(found.sequence), _rule(asked.choice.part), clear_on_paper, "")
            return Searched(
                drawn.attempt, order, found, drawn.problem, asked.pairs, drawn.known,
                looked_at=looked_at, moves=found.sequence, can_slide=room,
            )  # fmt: skip
        folded = drawn.attempt.maker.folded
        banned += drawn.bad
    order = Order(_numbers(found.sequence), "search", False, "")
    refused = tuple(
        Refused(move, made, code, reasons(code))
        for made, move in drawn.bad
        for code in (code_of(drawn.problem, made, move, drawn.known) or TRAPPED,)
    )
    return Searched(
        drawn.attempt, order, found, drawn.problem, asked.pairs, drawn.known, refused,
        looked_at, found.sequence, every_way=every_way, can_slide=room,
    )  # fmt: skip


def _with_ways(part: Part, drawn: _Drawn, moves: Sequence[Move]) -> _Drawn:
    """The same; steps that the part does not come out of are bad. For a part that cannot slide."""
    bad, made = [], 0
    for move in moves:
        if not comes_off(drawn.known, part, made, move):
            bad.append((made, move))
        made |= 1 << move.bend
    return replace(drawn, bad=tuple(bad))


def _rule(part: Part) -> Rule:
    """Where an order that was searched for comes from."""
    return "given" if part.order is not None else "search"


def _by_merit(
    choice: ToolChoice, bending: Bending, pairs: Sequence[ToolPair], maker: StepMaker
) -> list[ToolPair]:
    """The pairs, those that suit the bends best first, turned ones behind.

    The search takes a radius made in bumps for one bend: what the last bump runs into as drawn
    counts here.
    """

    def cost(step: Operation, pair: ToolPair) -> float:
        least, one = choice.cost(step, pair.codes), choice.for_step(step).costs[pair.codes][1]
        if step.bumps is not None and one.bend is not None:
            least += min(maker.trouble_cost(step, one, end) for end in ENDS)
        return min(least, 1000.0)

    def merit(pair: ToolPair) -> tuple[bool, float]:
        return pair.punch.turned, sum(cost(step, pair) for step in bending.steps)

    return sorted(pairs, key=merit)


def _preferring(
    problem: Problem, known: Known, pairs: Sequence[ToolPair],
    banned: Sequence[tuple[int, Move]], limits: PlanLimits,
) -> Found:  # fmt: skip
    """The cheapest order; among equals the one that needs the fewest of the lesser pairs."""
    best = _search(problem, known, banned, limits)
    if best.status != "found" or len(problem.at) > SMALL:
        return best
    most, chosen = len(pairs), best
    least = 1
    while least < most:  # with more pairs the handling is never worse
        count = (least + most) // 2
        found = _with_first(problem, known, count, banned, limits)
        if found is not None and _handling(found) == _handling(best):
            most, chosen = count, found
        else:
            least = count + 1
    return chosen


def _with_first(
    problem: Problem,
    known: Known,
    count: int,
    banned: Sequence[tuple[int, Move]],
    limits: PlanLimits,
) -> Found | None:
    """The cheapest order with so many of the best pairs; None where there is none."""
    allowed = problem.allowed.copy()
    allowed[:, count:] = False
    if not allowed.any(axis=1).all():
        return None
    found = _search(problem._replace(allowed=allowed), known, banned, limits)
    return found if found.status == "found" else None


def _search(
    problem: Problem, known: Known, banned: Sequence[tuple[int, Move]], limits: PlanLimits,
    *, soft: bool = False,
) -> Found:  # fmt: skip
    return search(
        problem,
        deadline_s=limits.left_s(EXPLAIN_S if soft else math.inf),
        cancelled=limits.cancelled,
        progress=limits.progress,
        soft=soft,
        banned=banned,
        known=known,
    )


def _handling(found: Found) -> tuple[float, ...]:
    return tuple(getattr(found.cost, name) for name in HANDLING)


def with_pair(searched: Searched, bend: int, codes: Pair, limits: PlanLimits) -> Found | None:
    """The cheapest order with one bend made in these tools; None where that was not open to the
    search.

    bend: its number from 1.
    """
    problem, known = searched.problem, searched.known
    these = [pair.codes == codes for pair in searched.pairs]
    if problem is None or known is None or not searched.moves:
        return None
    allowed = problem.allowed.copy()
    allowed[bend - 1] &= np.array(these, np.bool_)
    if not allowed[bend - 1].any():
        return None
    return _search(problem._replace(allowed=allowed), known, (), limits, soft=False)


def _numbers(moves: Sequence[Move]) -> tuple[int, ...]:
    return tuple(move.bend + 1 for move in moves)


def _folded_with(
    choice: ToolChoice, bending: Bending, base: Attempt, dies: Sequence[Die]
) -> tuple[FoldedBend, ...]:
    """How the bends come out of these dies, with the punch that suits each best."""
    codes = {die.code for die in dies}
    made = zip(base.steps, base.fits, strict=True)
    fits = {step.bend: one for step, one in made if not step.flattens}
    chosen: list[Fit | None] = []
    for step in bending.steps:
        one = fits.get(step.bend)
        if one is None or one.die.code not in codes:
            candidates = choice.for_step(step)
            pair = candidates.best(lambda f: f.die.code in codes)
            assert pair is not None
            one = candidates.fit(pair)
        chosen.append(one)
    return folded_in(choice, bending.steps, chosen)


def _drawn_up(
    asked: _Asked, moves: Sequence[Move], before: Sequence[FoldedBend], known: Known
) -> _Drawn:
    """The order with the bends as the model gives them in its tools, each step looked at again.

    before, known: bends of the search that found the moves, and what is known of its problem;
    where the bends come out as they were there, nothing is left to look at.
    """
    attempt = _attempt_with(asked.choice, asked.pairs, moves)
    folded = attempt.maker.folded
    if tuple(before) == folded:
        return _Drawn(attempt, known.problem, known, ())
    known = asked.known(folded)
    bad, made = [], 0
    for move in moves:
        if code_of(known.problem, made, move, known):
            bad.append((made, move))
        made |= 1 << move.bend
    return _Drawn(attempt, known.problem, known, tuple(bad))


def _attempt_with(choice: ToolChoice, pairs: Sequence[ToolPair], moves: Sequence[Move]) -> Attempt:
    """The order drawn up: its steps, its tools as the model predicts them, its ends."""
    part = choice.part
    steps = _steps(choice, _numbers(moves))
    by_bend = {move.bend + 1: move for move in moves}
    fits: list[Fit | None] = []
    for step in steps:
        if step.flattens:
            fits.append(None)
            continue
        pair = pairs[by_bend[step.bend].pair]
        one = choice.for_step(step).fit(pair.codes)
        fits.append(one if one.punch == pair.punch else replace(one, punch=pair.punch))
    ends: list[End] = ["left" if by_bend[s.bend].end == LEFT else "right" for s in steps]
    folded = folded_in(choice, steps, fits)
    maker = StepMaker(part, folded, choice.equipment)
    return Attempt(maker, tuple(steps), tuple(fits), tuple(ends))


def _least_bad(choice: ToolChoice, base: Attempt, asked: Searched, limits: PlanLimits) -> Searched:
    """With no order: the one with the fewest steps that cannot be made, to show why."""
    assert asked.problem is not None
    assert asked.known is not None
    able = asked.problem.allowed.any(axis=1)
    order = Order(_numbers_of(base), _rule(choice.part), False, "")
    if not able.all():
        return replace(asked, attempt=base, order=order)
    if choice.part.order is not None:
        moves, refused = _kept_to(choice.part.order, asked.problem, asked.known)
    else:
        found = _search(asked.problem, asked.known, (), limits, soft=True)
        if not found.sequence:
            return replace(asked, attempt=base, order=order)
        moves, refused = found.sequence, refused_steps(found)
    attempt = _attempt_with(choice, asked.pairs, moves)
    order = replace(order, sequence=_numbers(moves))
    return replace(asked, attempt=attempt, order=order, refused=refused, moves=moves)


def _kept_to(
    sequence: Sequence[int], problem: Problem, known: Known
) -> tuple[tuple[Move, ...], tuple[Refused, ...]]:
    """The given order with the ends and tools that are refused for the fewest reasons."""
    moves: list[Move] = []
    refused: list[Refused] = []
    made = 0
    for number in sequence:
        ways = codes_of(problem, made | 1 << (number - 1), known)
        mine = {move: code for move, code in ways.items() if move.bend == number - 1}
        end = moves[-1].end if moves else LEFT
        move = min(mine, key=lambda m: (mine[m].bit_count(), m.end != end, m.pair))
        if mine[move]:
            refused.append(Refused(move, made, mine[move], reasons(mine[move])))
        moves.append(move)
        made |= 1 << (number - 1)
    return tuple(moves), tuple(refused)


def _numbers_of(attempt: Attempt) -> tuple[int, ...]:
    return tuple(dict.fromkeys(step.bend for step in attempt.steps))


def handling_counts(found: Found | None) -> dict[str, int]:
    """Turn-overs, end turns, tool changes and slides of an order."""
    cost = found.cost if found else None
    return {name: int(getattr(cost, name)) if cost else 0 for name in HANDLING_WORDS}


def in_words(name: str, count: int) -> str:
    """So many of one kind of handling.

    >>> in_words("turn_ends", 2)
    '2 end turns'
    """
    return f"{count} {HANDLING_WORDS[name][count != 1]}"
