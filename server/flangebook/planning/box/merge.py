"""The plans of a box's two sections as one: steps, tools, stations, order and findings.

Steps and bends of the second section go on counting where the first one's end.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Literal, TypeVar

from flangebook.bending.box.box import (
    CALLED,
    ENDS_OF,
    Pair,
    base_flat,
    names_in_box,
)
from flangebook.bending.checks import Check, Names, Sentence, joined
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.box.checks import box_checks
from flangebook.planning.box.plan import PlannedBox
from flangebook.planning.box.walls import Pieces, steps_lines, walled_checks
from flangebook.planning.order.said import OrderPlan
from flangebook.planning.planned import BesideSides, BoxForm, Plan, StepPlan, gathered
from flangebook.planning.steps.dimensions import Dimension
from flangebook.planning.tools.fit import Fit
from flangebook.planning.tools.stations import Station

SAID_BETTER = ("lifting", "punch-too-short", "die-too-short")
"""Findings of a section's plan that the box makes for itself."""
T = TypeVar("T")
IN_THE_WAY = "But as a box it cannot be made like this: see what says stop."


def merged(found: PlannedBox, press: Press | None, crib: Crib) -> Plan:
    """The set-up of a whole box from those of its sections."""
    names, steps_before = dict[Pair, Names](), 0
    for pair, plan in found.plans.items():
        names[pair] = names_in_box(found.box, pair, steps_before)
        steps_before += len(plan.steps)
    plans = tuple(found.plans.values())
    steps = _in_stations(list(_steps(found, names)))
    findings = gathered(
        (
            *((check, ()) for check in box_checks(found, press, crib)),
            *((check, (step.number,)) for step in steps for check in step.checks),
            *((check, ()) for check in _of_sections(found, names)),
        )
    )
    return replace(
        plans[0],
        sections=tuple(replace(plan.sections[0], pair=pair) for pair, plan in found.plans.items()),
        steps=tuple(steps),
        order=_order(found, names, clear=not any(_is_in_the_way(f.check) for f in findings)),
        stations=tuple(_stations(plans, steps)),
        dimensions=tuple(_dimensions(found, names)),
        findings=findings,
        form=BoxForm(found.box, found.shape, found.blank, found.view),
    )


def _is_in_the_way(check: Check) -> bool:
    return check.level == "stop" and check.code.startswith("box-")


def _steps(found: PlannedBox, names: Mapping[Pair, Names]) -> Iterator[StepPlan]:
    """All steps, each with the length of its own bend and its own pieces of tools."""
    lines = steps_lines(found.shape, found.blank)
    for pair, plan in found.plans.items():
        first, last = ENDS_OF[pair]
        for i, step in enumerate(plan.steps):
            line, walled = lines[pair, step.step.operation.bend], found.walled[pair, i]
            own = replace(step, names=names[pair])
            yield replace(
                own,
                length_mm=line.length_mm,
                checks=(*_checks(own), *_walled(found, pair, i, own)),
                punch_mm=_shared(found, pair, i, "punch", walled.punch),
                die_mm=_shared(found, pair, i, "die", walled.die),
                beside=BesideSides(
                    line.side,
                    first if step.step.end == "left" else last,
                    i == 0 and names[pair].steps_before > 0,
                    walled.clear_mm,
                    walled.near,
                ),
            )


def _checks(step: StepPlan) -> list[Check]:
    return [check.called(step.names) for check in step.checks if not _said_better(check)]


def _walled(found: PlannedBox, pair: Pair, i: int, step: StepPlan) -> list[Check]:
    checks = walled_checks(found.shape, found.walled[pair, i], found.tools[pair, i], found.clearing)
    return [check.at(step=step.number, bend=step.bend) for check in checks]


def _said_better(check: Check) -> bool:
    return check.code.startswith(SAID_BETTER)


def _shared(
    found: PlannedBox, pair: Pair, i: int, kind: Literal["punch", "die"], own: Pieces
) -> tuple[float, ...]:
    """The pieces that another step has in the same tool, where they do here as well: so that the
    set-up stays as it is. The pieces that have to fit between finished sides come first."""
    here = found.tools[pair, i]
    best = own.segments_mm
    for at, walled in found.walled.items():
        there, other = found.tools[at], walled.pieces(kind)
        if here is None or there is None or here.of(kind) != there.of(kind):
            continue
        if not other.segments_mm or other.total_mm < own.wanted_mm - 1e-6:
            continue
        if own.most_mm is not None and other.total_mm > own.most_mm:
            continue
        if other.total_mm > math.fsum(best):
            best = other.segments_mm
    return best


def _in_stations(steps: Sequence[StepPlan]) -> list[StepPlan]:
    """The steps; those of the same pieces of the same tools share a station."""
    known: dict[tuple[object, ...], int] = {}
    return [
        step
        if step.fit is None
        else replace(
            step,
            station=known.setdefault(
                (*_pair_of(step.fit), step.punch_mm, step.die_mm), len(known) + 1
            ),
        )
        for step in steps
    ]


def _pair_of(fit: Fit) -> tuple[str, str, bool]:
    return fit.punch.code, fit.die.code, fit.punch.turned


def _stations(plans: Sequence[Plan], steps: Sequence[StepPlan]) -> Iterator[Station]:
    """The stations of the whole job, each in the middle in its turn or as its section has it."""
    planned = {
        (one.punch, one.die, one.turned): one for plan in reversed(plans) for one in plan.stations
    }
    grouped: dict[int, list[tuple[StepPlan, Fit]]] = {}
    for step in steps:
        if step.fit is not None and step.station is not None:
            grouped.setdefault(step.station, []).append((step, step.fit))
    for number, group in grouped.items():
        first, fit = group[0]
        lengths = (math.fsum(first.punch_mm), math.fsum(first.die_mm))
        forces = [force for one, own in group if (force := own.force_n(one.length_mm))]
        yield replace(
            planned[_pair_of(fit)],
            number=number,
            length_mm=max(*lengths, *(one.length_mm for one, _ in group)),
            punch_segments_mm=first.punch_mm,
            die_segments_mm=first.die_mm,
            force_n=max(force.nominal for force in forces),
            force_high_n=max(force.high for force in forces),
            steps=tuple(one.number for one, _ in group),
        )


def _order(found: PlannedBox, names: Mapping[Pair, Names], *, clear: bool) -> OrderPlan:
    """The order of all bends; clear on paper if both sections' are and no finished side is in the
    way."""
    orders = {pair: plan.order.called(names[pair]) for pair, plan in found.plans.items()}
    both = tuple(orders.values())
    words = [
        joined("" if len(both) == 1 else f"{_pair_words(pair)}: ", order.words)
        for pair, order in orders.items()
    ]
    if not clear:
        words.append(Sentence(IN_THE_WAY))
    spaced = [one for each in words for one in (" ", each)]
    return replace(
        both[0],
        sequence=tuple(bend for order in both for bend in order.sequence),
        clear_on_paper=clear and all(order.clear_on_paper for order in both),
        words=joined(*spaced[1:]),
        looked_at=sum(order.looked_at for order in both),
        counts={name: sum(order.counts[name] for order in both) for name in both[0].counts},
        blocked=tuple(one for order in both for one in order.blocked),
        order_limits=_once(one for order in both for one in order.order_limits),
        advice=_once(one for order in both for one in order.advice),
        others=(),
    )


def _pair_words(pair: Pair) -> str:
    return CALLED[pair].capitalize()


def _once(listed: Iterable[T]) -> tuple[T, ...]:
    found: list[T] = []
    for one in listed:
        if one not in found:
            found.append(one)
    return tuple(found)


def _of_sections(found: PlannedBox, names: Mapping[Pair, Names]) -> Iterator[Check]:
    """What the sections' plans say of the whole; what only one says is tied to its pair."""
    said = {
        pair: [f.check for f in plan.findings if not f.steps and not _said_better(f.check)]
        for pair, plan in found.plans.items()
    }
    for pair, checks in said.items():
        others = {(c.code, c.words) for other, cs in said.items() if other != pair for c in cs}
        for check in checks:
            one = replace(check, step=None).called(names[pair])
            if len(said) > 1 and (check.code, check.words) not in others:
                one = replace(one, template=f"{_pair_words(pair)}: {one.template}")
            yield one


def _dimensions(found: PlannedBox, names: Mapping[Pair, Names]) -> Iterator[Dimension]:
    """The sections' dimensions, flats numbered over the box; the base has two."""
    for pair, plan in found.plans.items():
        base, own = base_flat(found.box, pair) + 1, names[pair]
        for one in plan.dimensions:
            name = own.flat(one.flat)
            if one.flat == base:
                name = f"{name}, {' to '.join(ENDS_OF[pair])}"
            yield replace(one, flat=own.flat_number(one.flat), step=own.step(one.step), name=name)
