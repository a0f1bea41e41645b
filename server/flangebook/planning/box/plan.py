"""From a box to its set-up: both pairs of sides planned as sections, then put together.

A section's plan knows tools, order, gauge and clearance of its own bends. What a box adds is
worked out here: where the flats end at the corners, the blank, what the finished sides of the
first pair are in the way of, and the pieces of tools that go between them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.box.blank import BoxBlank, BoxLine, box_blank
from flangebook.bending.box.box import (
    ENDS_OF,
    Box,
    Pair,
    across,
    check_box,
    names_in_box,
    place_of,
    section_of,
)
from flangebook.bending.box.depth import WallStep
from flangebook.bending.box.fold import FoldedView, folded_view
from flangebook.bending.box.shape import BoxShape, Section, box_shape, section_as_folded
from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.part import Part
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.box.walls import (
    ToolsOf,
    WalledStep,
    plain_step,
    punches_that_clear,
    steps_lines,
    tools_of,
    tools_that_do_not_fit,
    wall_steps,
    walled_step,
)
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.planned import Plan
from flangebook.planning.steps.operations import folded_by_rule
from flangebook.planning.tools.fit import Equipment

MOST_ROUNDS = 4
Planner = Callable[[Part, Crib, PlanLimits], Plan]
"""Plans one section with a crib within limits."""


@dataclass(frozen=True, slots=True)
class PlannedBox:
    """A box with everything found of it. plans: of each pair's section. walled: by pair and
    index of the step in its plan, what its tools have to do with the finished sides. tools:
    likewise. clearing: names of the punches that would clear the finished sides."""

    box: Box
    shape: BoxShape
    blank: BoxBlank
    view: FoldedView
    plans: Mapping[Pair, Plan]
    walled: Mapping[tuple[Pair, int], WalledStep]
    tools: Mapping[tuple[Pair, int], ToolsOf | None]
    clearing: tuple[str, ...]
    metal: Metal


def planned_box(
    box: Box, press: Press | None, crib: Crib, metal: Metal, planner: Planner,
    limits: PlanLimits | None = None,
) -> PlannedBox:  # fmt: skip
    """Plan both sections and what they have to do with one another.

    limits: of the whole box. With the time up, no other tools are tried for its second pair.

    Raises:
        InputError, NotAPartError: the box cannot be read or cannot exist.
    """
    check_box(box)
    limits = (limits or PlanLimits()).begun()
    plans: dict[Pair, Plan] = {}
    both = all(section_of(box, pair) is not None for pair in box.pairs)
    for pair in box.pairs:
        time_for_it = limits.for_half() if both and not plans else limits
        if plan := _planned(box, pair, metal, crib, planner, time_for_it):
            plans[pair] = plan
    found = _assembled(box, plans, press, crib, metal, limits)
    if press is None or box.pairs[1] not in plans:
        return found
    if _bumps_above(found) and not limits.over:
        found = _with_other_punches(found, press, crib, planner, limits)
    return _with_pieces_that_fit(found, press, crib, planner, limits)


def _planned(
    box: Box, pair: Pair, metal: Metal, crib: Crib, planner: Planner, limits: PlanLimits
) -> Plan | None:
    section = section_of(box, pair)
    if section is None:
        return None
    try:
        part = replace(section, bend_length_mm=_bend_length(box, pair, metal))
        return planner(part, crib, limits)
    except (InputError, NotAPartError) as error:
        error.where = place_of(box, pair, error.where)
        error.call(names_in_box(box, pair))
        raise


def _bend_length(box: Box, pair: Pair, metal: Metal) -> float:
    """About how long a pair's bends will be [mm]: the base between its neighbours' bends."""
    other = across(pair)
    section = section_of(box, other)
    length = box.base_mm(other)
    if section is None:
        return length
    radius = folded_by_rule(section, metal)[0].inside_radius_mm
    count = sum(box.side(name) is not None for name in ENDS_OF[other])
    return max(length - count * (radius + box.thickness_mm), length / 2.0)


def _assembled(
    box: Box, plans: Mapping[Pair, Plan], press: Press | None, crib: Crib, metal: Metal,
    limits: PlanLimits,
) -> PlannedBox:  # fmt: skip
    sections = {pair: one for pair in box.pairs if (one := _section(box, pair, plans)) is not None}
    shape = box_shape(box, sections)
    blank = box_blank(shape)
    tools = {
        (pair, i): tools_of(step)
        for pair, plan in plans.items()
        for i, step in enumerate(plan.steps)
    }
    walled = _walled(shape, blank, plans, tools, press, crib, limits)
    return PlannedBox(box, shape, blank, folded_view(shape), plans, walled, tools, (), metal)


def _section(box: Box, pair: Pair, plans: Mapping[Pair, Plan]) -> Section | None:
    plan = plans.get(pair)
    if plan is None:
        return None
    folded = plan.sections[0].folded
    over = [0.0] * len(folded)
    for step in plan.steps:
        operation, setting = step.step.operation, step.setting
        if operation.kind == "bend" and setting is not None:
            low = setting.angle_deg.low
            over[operation.bend - 1] = max(operation.included_angle_deg - low, 0.0)
    return section_as_folded(box, pair, folded, plan.order.sequence, over)


def _walled(
    shape: BoxShape,
    blank: BoxBlank,
    plans: Mapping[Pair, Plan],
    tools: Mapping[tuple[Pair, int], ToolsOf | None],
    press: Press | None,
    crib: Crib,
    limits: PlanLimits,
) -> dict[tuple[Pair, int], WalledStep]:
    lines = steps_lines(shape, blank)
    found: dict[tuple[Pair, int], WalledStep] = {}
    for pair, plan in plans.items():
        motions = _motions(shape, pair, plan)
        for i, (step, motion) in enumerate(zip(plan.steps, motions, strict=True)):
            limits.heed()
            found[pair, i] = _one(
                shape, lines[pair, step.step.operation.bend], tools[pair, i], motion, press, crib
            )
    return found


def _motions(shape: BoxShape, pair: Pair, plan: Plan) -> Sequence[WallStep | None]:
    """The motions of the second pair's steps; none for the first, beside which nothing stands."""
    first, second = shape.box.pairs
    if pair != second or first not in shape.sections:
        return [None] * len(plan.steps)
    return wall_steps(shape, plan.steps)


def _one(
    shape: BoxShape,
    line: BoxLine,
    tools: ToolsOf | None,
    motion: WallStep | None,
    press: Press | None,
    crib: Crib,
) -> WalledStep:
    if motion is None or tools is None or press is None:
        return plain_step(line, tools)
    try:
        return walled_step(shape, motion, line, tools, press, Equipment(press, crib).holder)
    except InputError:
        return plain_step(line, tools)


def _bumps_above(found: PlannedBox) -> bool:
    """Whether a finished side comes too near to holder or ram in some step."""
    margin = found.box.order_limits.margin_mm
    return any(
        one.tool in ("holder", "ram") and one.distance_mm < margin
        for walled in found.walled.values()
        for one in walled.near
    )


def _with_other_punches(
    found: PlannedBox, press: Press, crib: Crib, planner: Planner, limits: PlanLimits
) -> PlannedBox:
    """The second pair planned again with the punches under which the finished sides clear."""
    second = found.box.pairs[1]
    plan = found.plans[second]
    steps = [
        (motion, tools)
        for i, motion in enumerate(_motions(found.shape, second, plan))
        if motion is not None and (tools := found.tools[second, i]) is not None
    ]
    clearing = punches_that_clear(
        found.shape, steps, press, crib, Equipment(press, crib).holder, limits
    )
    names = tuple(punch.name or punch.code for punch in clearing)
    found = replace(found, clearing=names)
    if not clearing:
        return found
    other = _second_again(found, press, crib, replace(crib, punches=clearing), planner, limits)
    if other is None or (other.plans[second].worst == "stop" and plan.worst != "stop"):
        return found
    return found if _bumps_above(other) else replace(other, clearing=names)


def _second_again(
    found: PlannedBox, press: Press, crib: Crib, tools: Crib, planner: Planner, limits: PlanLimits
) -> PlannedBox | None:
    """The box with its second pair planned with these tools of the crib; None where it cannot be,
    such as with the radii that they give."""
    second = found.box.pairs[1]
    try:
        again = _planned(found.box, second, found.metal, tools, planner, limits)
        if again is None:
            return None
        plans = {**found.plans, second: again}
        return _assembled(found.box, plans, press, crib, found.metal, limits)
    except (InputError, NotAPartError):
        return None


def _with_pieces_that_fit(
    found: PlannedBox, press: Press, crib: Crib, planner: Planner, limits: PlanLimits
) -> PlannedBox:
    """The second pair planned again without tools whose pieces do not go between the finished
    sides, as long as others can make it and there is time; as found where not."""
    second, tools, tried = found.box.pairs[1], crib, found
    for _ in range(MOST_ROUNDS):
        unfit = _unfit(tried, second)
        if not unfit:
            return tried
        if limits.over:
            break
        tools = replace(
            tools,
            punches=tuple(p for p in tools.punches if p.code not in unfit),
            dies=tuple(d for d in tools.dies if d.code not in unfit),
        )
        other = _second_again(found, press, crib, tools, planner, limits)
        if other is None or other.plans[second].worst == "stop":
            break
        if _bumps_above(other) and not _bumps_above(found):
            break
        tried = replace(other, clearing=found.clearing)
    return found


def _unfit(found: PlannedBox, pair: Pair) -> set[str]:
    """Codes of the pair's tools whose pieces do not go between the finished sides."""
    codes: set[str] = set()
    for (of, i), walled in found.walled.items():
        tools = found.tools[of, i]
        if of == pair and tools is not None:
            codes |= tools_that_do_not_fit(walled, tools)
    return codes
