"""The outside dimensions that an order leaves: which step makes each, and how far it may be off."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from flangebook.bending.checks import Check, Sentence
from flangebook.bending.motion.tolerance import expected_errors_mm, repeatability_mm
from flangebook.bending.part.part import Part
from flangebook.bending.tools.tooling import Press
from flangebook.planning.answers.answer import JsonDict, maybe, number, sentence_json
from flangebook.planning.order.search import Searched
from flangebook.planning.steps.steps import PlannedStep


@dataclass(frozen=True, slots=True)
class Dimension:
    """A flat's outside dimension. error_mm: to be expected either way, None where the order is
    not known to be possible. step: that gives the flat its size; gauged_directly: the gauge
    stands at the flat's other end then. basis: what the error was counted with, in words.
    name: of a box's flat, where its length is spoken of."""

    flat: int
    wanted_mm: float
    error_mm: float | None
    critical: bool
    gauged_directly: bool
    step: int
    basis: Sentence | None
    name: str = ""


def dimensions(
    part: Part, press: Press | None, searched: Searched, steps: Sequence[PlannedStep]
) -> tuple[Dimension, ...]:
    """Every flat's dimension, from the left end on; none of a part without bends."""
    errors = None
    if searched.problem is not None and searched.moves and not searched.refused:
        errors = expected_errors_mm(searched.problem, searched.moves)
    basis = None if errors is None else _basis(press)
    gives = {step.operation.bend: step for step in steps if not step.operation.flattens}
    found = []
    for flat, wanted in enumerate(part.flats_mm, 1):
        beside = [gives[bend] for bend in (flat - 1, flat) if bend in gives]
        if not beside:
            continue
        last = max(beside, key=lambda step: step.operation.number)
        found.append(
            Dimension(
                flat,
                wanted,
                None if errors is None else errors[flat - 1],
                flat in part.order_limits.critical_flats,
                gauged_flat(part, last) == flat,
                last.operation.number,
                basis,
            )
        )
    return tuple(found)


def _basis(press: Press | None) -> Sentence | None:
    """What the errors were counted with."""
    if press is None:
        return None
    repeats, own = repeatability_mm(press)
    whose = "as this press says" if own else "common practice, since the press does not say"
    return Sentence(
        f"19 of 20 parts: the gauge comes back within ±{{gauge_mm}} ({whose}), each bend takes "
        "what its band allows, angles and blank are true.",
        {"gauge_mm": repeats},
    )


def gauged_flat(part: Part, step: PlannedStep) -> int | None:
    """The flat whose size the gauge sets directly in this step, None where there is none.

    The finger stands at the flat's other end: at the sheet's edge with no bend between, or at
    the finished flange next to the line.
    """
    gauge, bend = step.gauge, step.operation.bend
    if gauge is None or gauge.rounded:
        return None
    flat, neighbour = (bend + 1, bend + 1) if gauge.end == "right" else (bend, bend - 1)
    if gauge.against == "flat edge":
        is_end_flat = not 1 <= neighbour <= len(part.bends)
        return flat if is_end_flat else None
    next_to_it = gauge.bends_between == 1 and neighbour in step.operation.made
    return flat if next_to_it else None


def dimension_checks(found: Sequence[Dimension]) -> list[Check]:
    """Critical flats that no step gauges directly."""
    missed = [one for one in found if one.critical and not one.gauged_directly]
    return [
        Check(
            "caution",
            "critical-not-gauged",
            "{Flat} is critical, but step {step}, which gives it its size, is not "
            "gauged at its other end"
            + (": expect it within {error_mm}." if one.error_mm is not None else "."),
            "Measure it on the first piece and shift the gauge of that step.",
            {"flat": one.flat, "step": one.step}
            | ({} if one.error_mm is None else {"error_mm": one.error_mm}),
        )
        for one in missed
    ]


def dimensions_json(found: Sequence[Dimension]) -> list[JsonDict]:
    """The dimensions as the API gives them."""
    return [
        {
            "flat": one.flat,
            "wanted_mm": number(one.wanted_mm),
            "error_mm": maybe(one.error_mm, 3),
            "critical": one.critical,
            "gauged_directly": one.gauged_directly,
            "step": one.step,
            **({"basis_said": sentence_json(one.basis)} if one.basis else {}),
            **({"flat_name": one.name} if one.name else {}),
        }
        for one in found
    ]
