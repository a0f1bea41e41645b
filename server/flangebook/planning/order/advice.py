"""What would help where there is no order, what each limit costs, and which other orders there are.

Nothing here is a guess: every piece of advice has been searched with, and found to help.
"""

from __future__ import annotations

import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.checks import Sentence, joined
from flangebook.bending.errors import FlangebookError
from flangebook.bending.ordering.search import Found, Move, search
from flangebook.bending.part.order_limits import NO_ORDER_LIMITS, OrderLimits
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import check_part
from flangebook.bending.tools.outline import punch_outline
from flangebook.bending.tools.ratings import Rating
from flangebook.bending.tools.tooling import Die, Holder, Punch
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order.attempts import Attempt
from flangebook.planning.order.problem import ToolPair, bending_of, order_problem
from flangebook.planning.order.search import (
    SMALL,
    Searched,
    handling_counts,
    in_words,
    searched_order,
)
from flangebook.planning.tools.named_tools import names_dropped
from flangebook.planning.tools.tool_choice import ToolChoice

ADVICE_S = 1.0
"""How long is looked for what would help [s]."""
NOT_LOOKED_AT = "what it costs was not looked at in the time"
RELIEFS_MM = (15.0, 25.0, 35.0, 45.0, 60.0, 80.0)
NARROW_MM = (30.0, 20.0, 12.0)
LONGER_MM = (5.0, 10.0, 20.0, 40.0)
CLOSER_MM = (1.0, 0.5)
MOST_OTHERS = 3


@dataclass(frozen=True, slots=True)
class Advice:
    """Something that helps."""

    kind: str
    said: Sentence


@dataclass(frozen=True, slots=True)
class Other:
    """Another order. words: how it differs."""

    sequence: tuple[int, ...]
    counts: dict[str, int]
    words: str


def remedies(choice: ToolChoice, searched: Searched, limits: PlanLimits) -> list[Advice]:
    """What would make the part possible, each found by a search of its own; the least of each."""
    if limits.over:
        return []
    until = time.monotonic() + limits.left_s(ADVICE_S)
    found: list[Advice] = []
    order_limits, dies_used = choice.part.order_limits, [pair.die for pair in searched.pairs]
    for tries in (_fewer_limits(choice, order_limits), _closer(choice, order_limits),
                  _reliefs(choice, order_limits, list(dict.fromkeys(dies_used))),
                  _holders(choice, order_limits), *_flats(choice, order_limits)):  # fmt: skip
        for attempt in tries:
            limits.heed()
            left = until - time.monotonic()
            if left <= 0.0:
                return found
            if _can_be_made(searched, attempt, left):
                found.append(attempt.advice)
                break
    return found


@dataclass(frozen=True, slots=True)
class _Try:
    """One thing that may help: the part, tools or limits on the order changed, or pairs added.

    whole: look with every die, as a plan would, not only with those first chosen."""

    advice: Advice
    choice: ToolChoice
    order_limits: OrderLimits
    pairs: tuple[ToolPair, ...] = ()
    whole: bool = False


def _can_be_made(searched: Searched, attempt: _Try, seconds: float) -> bool:
    """Whether there is an order then, with the bends as the tools chosen give them."""
    if attempt.whole:
        limits = PlanLimits(seconds, explain=False)
        return searched_order(attempt.choice, attempt.order_limits, limits).order.clear_on_paper
    press = attempt.choice.equipment.press
    assert press is not None
    bending = bending_of(attempt.choice.part, searched.attempt.steps)
    try:
        problem = order_problem(
            attempt.choice, bending, searched.attempt.maker.folded,
            (*searched.pairs, *attempt.pairs), press, attempt.order_limits,
        )  # fmt: skip
    except FlangebookError:
        return False
    return search(problem, deadline_s=seconds).status == "found"


def _fewer_limits(choice: ToolChoice, order_limits: OrderLimits) -> Iterator[_Try]:
    part = choice.part
    if part.order is not None:
        advice = Advice("order", Sentence("Without the given order it can be made."))
        yield _Try(advice, _with_part(choice, replace(part, order=None)), order_limits, whole=True)
    for name, said, other in names_dropped(part):
        advice = Advice(name, joined("Without ", said, " it can be made."))
        yield _Try(advice, _with_part(choice, other), order_limits, whole=True)
    for name, said, changed in limits_dropped(order_limits):
        advice = Advice(name, joined("Without the limit “", said, "” it can be made."))
        yield _Try(advice, choice, changed, whole=True)


def _closer(choice: ToolChoice, order_limits: OrderLimits) -> Iterator[_Try]:
    for margin in CLOSER_MM:
        if margin < order_limits.margin_mm:
            words = "With a clearance of {margin_mm} in place of {wanted_mm} it can be made."
            numbers = {"margin_mm": margin, "wanted_mm": order_limits.margin_mm}
            changed = replace(order_limits, margin_mm=margin)
            yield _Try(Advice("closer", Sentence(words, numbers)), choice, changed)


def _reliefs(choice: ToolChoice, order_limits: OrderLimits, dies: Sequence[Die]) -> Iterator[_Try]:
    """A gooseneck that the shop has not, of growing relief, with the nose of one it has."""
    punches = choice.equipment.crib.punches
    base = max(punches, key=lambda p: (p.neck_relief_mm, p.height_mm))
    for relief in RELIEFS_MM:
        if relief <= base.neck_relief_mm and base.shape == "gooseneck":
            continue
        punch = _gooseneck(base, relief)
        if punch is None:
            continue
        pairs = [ToolPair(one, die) for one in (punch, replace(punch, turned=True)) for die in dies]
        numbers = {"relief_mm": relief, "height_mm": punch.height_mm}
        words = "A gooseneck with a relief of {relief_mm}, {height_mm} high, would make it."
        advice = Advice("gooseneck", Sentence(words, numbers))
        yield _Try(advice, choice, order_limits, tuple(pairs))


def _gooseneck(base: Punch, relief_mm: float) -> Punch | None:
    for height in (base.height_mm, 120.0, 150.0, 180.0, 210.0, 250.0):
        if height < base.height_mm:
            continue
        punch = replace(
            base, shape="gooseneck", neck_relief_mm=relief_mm, points_mm=(),
            height_mm=height, rating_kn_per_m=None, condition="good", turned=False,
        )  # fmt: skip
        try:
            punch_outline(punch)
        except FlangebookError:
            continue
        return punch
    return None


def _holders(choice: ToolChoice, order_limits: OrderLimits) -> Iterator[_Try]:
    holder = choice.equipment.holder
    if holder is None:
        return
    for overhang in NARROW_MM:
        if overhang >= max(holder.overhang_front_mm, holder.overhang_back_mm):
            continue
        narrow = _narrower(holder, overhang)
        crib = choice.equipment.crib
        holders = tuple(narrow if h.code == holder.code else h for h in crib.holders)
        words = "A holder that stands out no more than {overhang_mm} would make it possible."
        equipment = replace(choice.equipment, crib=replace(crib, holders=holders))
        advice = Advice("holder", Sentence(words, {"overhang_mm": overhang}))
        yield _Try(advice, replace(choice, equipment=equipment), order_limits)


def _narrower(holder: Holder, overhang_mm: float) -> Holder:
    return replace(
        holder,
        points_mm=(),
        overhang_front_mm=min(holder.overhang_front_mm, overhang_mm),
        overhang_back_mm=min(holder.overhang_back_mm, overhang_mm),
    )


def _flats(choice: ToolChoice, order_limits: OrderLimits) -> list[Iterator[_Try]]:
    return [_longer(choice, order_limits, i) for i in range(len(choice.part.flats_mm))]


def _longer(choice: ToolChoice, order_limits: OrderLimits, i: int) -> Iterator[_Try]:
    part = choice.part
    for more in LONGER_MM:
        flats = list(part.flats_mm)
        flats[i] += more
        longer = replace(part, flats_mm=tuple(flats))
        try:
            check_part(longer)
        except FlangebookError:
            continue
        words = "With {flat} {flat_mm} long (now {now_mm}) it can be made."
        numbers = {"flat": i + 1, "flat_mm": flats[i], "now_mm": part.flats_mm[i]}
        advice = Advice("flat", Sentence(words, numbers))
        yield _Try(advice, _with_part(choice, longer), order_limits)


def _with_part(choice: ToolChoice, part: Part) -> ToolChoice:
    """The same tools for another part of the same bends; what is known of the bends is kept."""
    return replace(choice, part=part)


def limits_dropped(order_limits: OrderLimits) -> list[tuple[str, Sentence, OrderLimits]]:
    """Each limit by its name and in words, and the limits on the order without it."""
    flats = {f"n{i}_flat": number for i, number in enumerate(order_limits.critical_flats)}
    gauged = ", ".join(f"{{{name}}}" for name in flats)
    every = (
        ("first", Sentence("bend {bend} first", {"bend": order_limits.first or 0})),
        ("last", Sentence("bend {bend} last", {"bend": order_limits.last or 0})),
        ("no_turn_over", Sentence("no turning over")),
        ("no_turn_end", Sentence("no turning end for end")),
        ("one_set_up", Sentence("no change of tools")),
        ("critical_flats", Sentence(f"gauged directly: {gauged}", flats)),
    )
    return [
        (
            name.removesuffix("_flats"),
            said,
            replace(order_limits, **{name: getattr(NO_ORDER_LIMITS, name)}),
        )
        for name, said in every
        if getattr(order_limits, name)
    ]


def what_limits_cost(
    choice: ToolChoice, searched: Searched, limits: PlanLimits
) -> list[tuple[str, Sentence]]:
    """Each limit with what it costs against the best order without it."""
    part, order_limits = choice.part, choice.part.order_limits
    tries = [(name, words, part, less) for name, words, less in limits_dropped(order_limits)]
    if part.order is not None:
        tries.append(
            ("order", Sentence("the given order"), replace(part, order=None), order_limits)
        )
    tries += [(name, words, other, order_limits) for name, words, other in names_dropped(part)]
    said = []
    limits = replace(limits, explain=False)  # only whether there is an order, and what it costs
    for name, words, other, less in tries:
        limits.heed()
        if limits.over:
            said.append((name, joined(words.capital, f": {NOT_LOOKED_AT}.")))
            continue
        without = searched_order(_with_part(choice, other), less, limits)
        said.append((name, joined(words.capital, ": ", _costs(searched, without), ".")))
    return said


def _costs(wished: Searched, without: Searched) -> Sentence | str:
    """What a limit costs, or that the part cannot be made with it, or neither way."""
    able, able_without = _can_be(wished), _can_be(without)
    if wished.found is None and (heavier := _heavier(wished.attempt, without.attempt)):
        return heavier
    if able and able_without:
        mine, other = handling_counts(wished.found), handling_counts(without.found)
        dearer, heavier = _dearer(mine, other), _heavier(wished.attempt, without.attempt)
        both = [dearer, "; " if dearer and heavier else "", heavier or ""]
        return joined(*both) if any(both) else "costs nothing"
    if able_without:
        return "cannot be had" if able is False else "no way was found in the time"
    if able:
        return "what it costs was not found in the time"
    if able is False and able_without is False:
        return "cannot be made, neither with it nor without"
    return "no way was found in the time, neither with it nor without"


def _heavier(wished: Attempt, without: Attempt) -> Sentence | None:
    """What other tools cost besides handling: a stop, or more of a rating used up."""
    stops = [[c for one in a.fits if one is not None for c in one.stops] for a in (wished, without)]
    if stops[0] and not stops[1]:
        stop = stops[0][0].said
        return joined("stop: ", replace(stop, template=stop.template.rstrip(".")))
    mine, other = _fullest(wished), _fullest(without)
    if mine is None:
        return None
    share, before = mine.share_percent or 0.0, (other.share_percent if other else None) or 0.0
    if round(share) <= round(before):
        return None
    return Sentence(
        f"{mine.what} {mine.name}".rstrip() + f" at {share:.0f} % of its rating, not {before:.0f} %"
    )


def _fullest(attempt: Attempt) -> Rating | None:
    """The rating that is used up most in any step; None where none is known."""
    rows = [row for one in attempt.fits if one is not None for row in one.ratings if row.rating]
    return max(rows, key=lambda row: row.share_percent or 0.0, default=None)


def _can_be(searched: Searched) -> bool | None:
    """Whether there is an order, with every step looked at again; None where it is not known."""
    found = searched.found
    if searched.none:
        return False if searched.every_way else None
    return True if found is not None and found.sequence and not searched.refused else None


def other_orders(searched: Searched, limits: PlanLimits) -> list[Other]:
    """Other orders worth knowing: the best that begin with another bend."""
    problem, found = searched.problem, searched.found
    if (
        problem is None
        or found is None
        or not searched.order.clear_on_paper
        or len(problem.at) > SMALL
    ):
        return []
    if problem.can_slide and not searched.can_slide:
        return []  # of each other one it would have to be found out whether the part comes out
    mine = handling_counts(found)
    others: list[Other] = []
    begun = {found.sequence[0].bend}
    while len(others) < MOST_OTHERS and not limits.over:
        other = _beginning_otherwise(searched, begun, limits)
        if other is None:
            break
        begun.add(other.sequence[0].bend)
        counts = handling_counts(other)
        words = _dearer(counts, mine) or "as good"
        others.append(Other(tuple(m.bend + 1 for m in other.sequence), counts, words))
    return others


def _beginning_otherwise(searched: Searched, begun: set[int], limits: PlanLimits) -> Found | None:
    """The cheapest order whose first bend is none of these."""
    problem = searched.problem
    assert problem is not None
    pairs = range(len(problem.change))
    banned = [(0, Move(b, end, pair)) for b in begun for end in (0, 1) for pair in pairs]
    found = search(problem, deadline_s=limits.left_s(), cancelled=limits.cancelled,
                   banned=banned, known=searched.known)  # fmt: skip
    return found if found.status == "found" else None


def _dearer(mine: dict[str, int], other: dict[str, int]) -> str:
    """How much more handling the first needs, in words; empty where none."""
    more = {name: count - other[name] for name, count in mine.items()}
    parts = (
        f"{in_words(name, abs(n))} {'more' if n > 0 else 'fewer'}" for name, n in more.items() if n
    )
    return ", ".join(parts)
