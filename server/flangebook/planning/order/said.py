"""What is said of the order and of what each step keeps clear of: in words and as findings."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.checks import Check, Names, Sentence, apart, joined
from flangebook.bending.clearance.approach import TOOLS, Near, approaches
from flangebook.bending.part.order import Rule
from flangebook.bending.part.part import Part
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.order.advice import Advice, Other, other_orders, remedies, what_limits_cost
from flangebook.planning.order.search import Searched, handling_counts, in_words
from flangebook.planning.order.ways import Ways, ways_of
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.assumed_sizes import assumed_outlines
from flangebook.planning.tools.named_tools import names_dropped
from flangebook.planning.tools.tool_choice import ToolChoice

REFUSALS = {
    "sheet": "the part would run into itself",
    "gauge": "nothing can be gauged",
    "short flange": "the flange is too short for the die",
    "trapped": "the punch can neither be lifted away nor the part slid out or unhooked",
    "wrong tool": "no pair of tools can make it",
    "wish": "a limit on the order or the given order forbids it",
    "closer look": "drawn up with its tools it does not clear",
}


@dataclass(frozen=True, slots=True)
class Clearance:
    """What a step keeps clear of. near: to each tool, nearest first. reasons: why it cannot be
    made, empty when it can. ways: how the part goes in and out, None for a step that cannot be
    made."""

    needed_mm: float
    near: tuple[Near, ...] = ()
    reasons: tuple[str, ...] = ()
    ways: Ways | None = None

    @property
    def clear(self) -> bool:
        """Whether the whole motion was shown to clear."""
        return not self.reasons

    @property
    def words(self) -> str:
        """How it goes, in a sentence."""
        if self.reasons or self.ways is None:
            return f"{because(self.reasons).capitalize()}."
        ways = {self.ways.into.way, self.ways.out.way}
        if "unknown" in ways:
            return "Clears the tools through the whole stroke; how it comes out was not found."
        if "slide" in ways:
            return "Clears the tools; slide it in or out sideways along them."
        if "swing" in ways:
            return "Clears the tools; tilt it in or out, the punch standing still at its top."
        return "Clears the tools through the whole stroke; the punch lifts straight away."

    @property
    def collisions(self) -> tuple[Near, ...]:
        """Where the part comes nearer than it may, as the reasons say."""
        return tuple(n for n in self.near if n.tool in self.reasons)


def clearances(
    part: Part, searched: Searched, steps: Sequence[PlannedStep]
) -> list[Clearance | None]:
    """What each planned step keeps clear of; None for a step without tools."""
    problem, known = searched.problem, searched.known
    if problem is None or known is None or not searched.moves:
        return [None] * len(steps)
    by_bend = {move.bend + 1: move for move in searched.moves}
    refused = {r.move.bend + 1: r.reasons for r in searched.refused}
    said: list[Clearance | None] = []
    for step in steps:
        operation = step.operation
        if operation.flattens or operation.bumps is not None:
            said.append(None)
            continue
        move = by_bend[operation.bend]
        made = sum(1 << (n - 1) for n in operation.made)
        near = approaches(problem, made, move.bend, move.end, move.pair)
        reasons = refused.get(operation.bend, ())
        ways = None
        if not reasons:
            ways = ways_of(known, part, made, move, can_slide=searched.can_slide)
        said.append(Clearance(problem.margin, near, reasons, ways))
    return said


def clearance_checks(said: Clearance | None, step: PlannedStep) -> list[Check]:
    """The findings on a step's clearance."""
    if said is None:
        return []
    found = []
    for near in said.collisions:
        numbers = {
            "flat": near.flat,
            "distance_mm": abs(near.distance_mm),
            "angle_deg": near.included_angle_deg,
            "wanted_mm": said.needed_mm,
        }
        how = "runs {distance_mm} into" if near.distance_mm <= 0.0 else "comes {distance_mm} near"
        words = f"{{Flat}} {how} the {near.tool} when the bend is at {{angle_deg}}"
        words += "." if near.distance_mm <= 0.0 else "; {wanted_mm} is wanted."
        do = "Take another order or other tools; see what would help."
        found.append(Check("stop", f"too-near-{near.tool}", words, do, numbers))
    told = {near.tool for near in said.collisions}
    for reason in said.reasons:
        if reason in told or reason in ("gauge", "short flange"):
            continue  # said by its own finding
        words = f"Bend {{bend}}: {because((reason,))}."
        do, numbers = "See what would help.", {"bend": step.operation.bend}
        found.append(Check("stop", f"no-way-{reason.replace(' ', '-')}", words, do, numbers))
    found += _way_checks(said.ways) if said.ways else []
    return found


def _way_checks(ways: Ways) -> list[Check]:
    """The findings on how the part goes in and out."""
    found, both = [], (ways.into.way, ways.out.way)
    if "slide" in both:
        words = "No way past the punch was found to the front: the part goes in or out sideways."
        do = "Slide the part along the tools, with room for it beside them; never force it."
        found.append(Check("caution", "slide-out", words, do))
    if "swing" in both:
        words = "The part does not go in or out level: it has to be tilted, as drawn."
        if ways.out.rides_up:
            words = "A flange reaches round the punch: the part rides up with it, to be unhooked."
        do = "Only with the punch standing still at its top; fingers never between part and punch."
        found.append(Check("caution", "tilt-out", words, do))
    if "unknown" in both:
        words = "No way was found to get the part in or out with the punch at its top."
        do = "Try it with a scrap piece before you bend, the press off; or take other tools."
        found.append(Check("caution", "way-out-unknown", words, do))
    return found


def because(reasons: Sequence[str]) -> str:
    """The reasons as half a sentence."""
    tools = [r for r in reasons if r in TOOLS]
    rest = [REFUSALS[r] for r in reasons if r in REFUSALS]
    said = [f"it would hit the {' and the '.join(tools)}"] if tools else []
    return ", and ".join([*said, *rest])


@dataclass(frozen=True, slots=True)
class Blocked:
    """A step of the order shown that cannot be made, and why; step None for one not reached."""

    step: int | None
    bend: int
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class OrderPlan:
    """An order and everything said of it. counts: of its handling. order_limits: cost of each."""

    sequence: tuple[int, ...]
    rule: Rule
    clear_on_paper: bool
    words: Sentence
    looked_at: int
    counts: Mapping[str, int]
    blocked: tuple[Blocked, ...] = ()
    order_limits: tuple[tuple[str, Sentence], ...] = ()
    others: tuple[Other, ...] = ()
    advice: tuple[Advice, ...] = ()

    def called(self, names: Names) -> OrderPlan:
        """The same with bends and flats by these names."""
        return replace(
            self,
            sequence=tuple(names.bend(bend) for bend in self.sequence),
            words=self.words.called(names),
            blocked=tuple(
                Blocked(one.step and names.step(one.step), names.bend(one.bend), one.reasons)
                for one in self.blocked
            ),
            order_limits=tuple((wish, said.called(names)) for wish, said in self.order_limits),
            advice=tuple(Advice(one.kind, one.said.called(names)) for one in self.advice),
        )


def order_plan(choice: ToolChoice, searched: Searched, limits: PlanLimits) -> OrderPlan:
    """The order with its words, what its limits cost, other orders, and what would help.

    Nothing is clear on paper where sizes of press or tools are assumed.
    """
    said = _order_plan(choice, searched, limits)
    assumed = assumed_outlines(searched.attempt.fits, choice.equipment)
    if not (said.clear_on_paper and assumed):
        return said
    words = joined(" ", said.words, "Assumed sizes are counted with: that is no proof.")
    return replace(said, words=words, clear_on_paper=False)


def _order_plan(choice: ToolChoice, searched: Searched, limits: PlanLimits) -> OrderPlan:
    bare = _bare(searched)
    named = bool(names_dropped(choice.part)) and choice.equipment.press is not None
    if searched.found is None and not named:
        return bare
    bare = replace(bare, order_limits=tuple(what_limits_cost(choice, searched, limits)))
    if searched.found is None:
        return bare
    if not searched.moves or searched.refused:
        sure = _is_proof(searched) or not searched.every_way
        advice = tuple(remedies(choice, searched, limits)) if sure else ()
        return replace(bare, words=_none_words(searched), advice=advice)
    others = tuple(other_orders(searched, limits))
    return replace(bare, words=_found_words(searched), others=others)


def _bare(searched: Searched) -> OrderPlan:
    """The order with its own words alone."""
    order, refused = searched.order, searched.refused
    at = {bend: i + 1 for i, bend in enumerate(order.sequence)}
    blocked = (Blocked(at.get(r.move.bend + 1), r.move.bend + 1, r.reasons) for r in refused)
    return OrderPlan(
        order.sequence,
        order.rule,
        order.clear_on_paper,
        Sentence(order.words),
        searched.looked_at,
        handling_counts(searched.found),
        tuple(blocked),
    )


def _is_proof(searched: Searched) -> bool:
    """Whether there is no order for certain: not where a radius is made in bumps, which the search
    takes as one bend in the middle of them."""
    return searched.none and searched.every_way and not stepped_bends(searched)


def _found_words(searched: Searched) -> Sentence:
    counts = handling_counts(searched.found)
    said = [in_words(name, count) for name, count in counts.items() if count]
    handling = ", ".join(said) if said else "no turning, no change of tools"
    if bumps := _bumps_not_checked(searched):
        return joined(
            f"The best order that the search knows of ({handling}). It does not look at a "
            "radius made in bumps: bend ", _numbers(bumps), ". The other strokes clear.",
        )  # fmt: skip
    if not searched.order.clear_on_paper:
        return Sentence(
            f"The best order found in the time ({handling}). It may not be the best one and is not "
            "clear on paper."
        )
    flattens = any(step.flattens for step in searched.attempt.steps)
    clear = "Clear of the tools through every stroke"
    clear += "; the flattening of hems is for you to watch." if flattens else "."
    if searched.order.rule == "given":
        return Sentence(f"The order given, with the best ends and tools ({handling}). {clear}")
    return Sentence(f"Best order on paper with {_dies(searched)} ({handling}). {clear}")


def stepped_bends(searched: Searched) -> tuple[int, ...]:
    """The bends that are made in bumps."""
    return tuple(step.bend for step in searched.attempt.steps if step.bumps is not None)


def _bumps_not_checked(searched: Searched) -> tuple[int, ...]:
    """The bends in bumps, where they alone keep what the search proved from holding of the part."""
    certain = searched.found is not None and searched.found.certain
    return stepped_bends(searched) if certain else ()


def _numbers(bends: Sequence[int]) -> Sentence:
    """The numbers of bends in a row."""
    named = {f"n{i}_bend": number for i, number in enumerate(sorted(bends))}
    return Sentence(" and ".join(f"{{{name}}}" for name in named), named)


def _dies(searched: Searched) -> str:
    codes = dict.fromkeys(pair.die.code for pair in searched.pairs)
    return f"die{'' if len(codes) == 1 else 's'} {', '.join(codes)}"


def _none_words(searched: Searched) -> Sentence:
    given = searched.order.rule == "given"
    start = "The given order" if given else "No order of the bends"
    if bumps := _bumps_not_checked(searched):
        found = "was not found to clear" if given else "was found to clear"
        taken = ", the bumps of bend ", _numbers(bumps), " taken as one bend. That is no proof."
        return joined(f"{start} {found}", *taken)
    if not searched.every_way:
        return Sentence(
            f"{start}: no way was found to get the part off the punch, and there is no room to "
            "slide it along the tools. That is no proof that there is none."
        )
    if not _is_proof(searched):
        if given:
            return Sentence(
                "The given order: no way to make it was found in the time, nor that there is none."
            )
        return Sentence("No order of the bends was found in the time, nor that there is none.")
    tools = "these tools" if searched.every_tool else "the tools looked at"
    said = f"{start} {'cannot' if given else 'can'} be made with {tools}."
    if not searched.refused:
        return Sentence(said)
    fails = [f"bend {{n{i}_bend}}: {because(r.reasons)}" for i, r in enumerate(searched.refused)]
    bends = {f"n{i}_bend": r.move.bend + 1 for i, r in enumerate(searched.refused)}
    return Sentence(f"{said} The one shown fails at {'; '.join(fails)}.", bends)


def order_checks(searched: Searched, said: OrderPlan) -> list[Check]:
    """The findings on the order as a whole."""
    clear_on_paper = searched.order.clear_on_paper
    if searched.found is None:
        return [_not_checked()]
    if clear_on_paper:
        return []
    if searched.refused or not searched.moves:
        do = _in_a_row(said.advice) or Sentence("Change the part, or get other tools.")
        do = apart(do, said.words.numbers, "do_")
        numbers = {**said.words.numbers, **do.numbers}
        if _is_proof(searched):
            return [Check("stop", "no-order", said.words.template, do.template, numbers)]
        return [Check("caution", "order-not-found", said.words.template, do.template, numbers)]
    if bumps := _bumps_not_checked(searched):
        return [_bumps_finding(bumps)]
    return [
        Check(
            "caution",
            "order-not-proven",
            said.words.template,
            "Walk through the steps with the drawings, or give the search more time.",
        )
    ]


def _in_a_row(advice: Sequence[Advice]) -> Sentence | None:
    """The advice in one text, None where there is none."""
    spaced = [one for each in advice for one in (" ", each.said)]
    return joined(*spaced[1:]) if spaced else None


def _bumps_finding(bends: Sequence[int]) -> Check:
    return Check(
        "caution",
        "clearance-not-checked",
        f"Clearance is not checked for the bumps of bend {_numbers(bends).template}: the search "
        "does not look at a radius made in bumps.",
        "Walk through these bumps with a scrap piece, slowly.",
        _numbers(bends).numbers,
    )


def _not_checked() -> Check:
    return Check(
        "caution",
        "clearance-not-checked",
        "Clearance is not checked: whether the part clears punch, holder, ram, die and "
        "gauge through every stroke is for you to see.",
        "Walk through the steps with the drawings, then with a scrap piece, slowly.",
    )
