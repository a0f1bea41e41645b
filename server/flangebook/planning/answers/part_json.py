"""A part or a box as understood, in the shape it was asked in."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from flangebook.bending.box.box import (
    PAIRS,
    SIDES,
    Box,
    bends_of,
    flat_name,
    flats_in,
    section_of,
)
from flangebook.bending.part.part import Part
from flangebook.planning.answers.answer import JsonDict

BOX = ("length_mm", "width_mm", "relief", "relief_mm", "corner", "gap_mm", "first_pair")
"""What is said of a box besides its sides and what is said of a part."""


def part_json(part: Part) -> JsonDict:
    """The part as understood, in the shape it was asked in."""
    given = _listed(asdict(part))
    del given["walled"]  # worked out, never asked
    given["wishes"] = given.pop("order_limits")
    tools = {kind: given.pop(kind) for kind in ("die", "punch")}
    return {**given, "tools": tools, "box": None}


def _listed(value: Any) -> Any:
    """The same with lists for tuples, as JSON has them."""
    if isinstance(value, dict):
        return {name: _listed(one) for name, one in value.items()}
    return [_listed(one) for one in value] if isinstance(value, tuple) else value


def box_part_json(box: Box) -> JsonDict:
    """The box as understood, in the shape it was asked in.

    Its flats and bends are there as well, in the order of their numbers, for who reads parts.
    """
    sections = [section for pair in PAIRS if (section := section_of(box, pair))]
    part = Part(
        box.title,
        box.metal,
        box.thickness_mm,
        max(box.length_mm, box.width_mm),
        tuple(flat for section in sections for flat in section.flats_mm),
        tuple(one.bend for one in bends_of(box)),
        dimension=box.dimension,
        order=box.order,
        order_limits=box.order_limits,
        die=box.die,
        punch=box.punch,
    )
    given = _listed(asdict(box))
    own = {name: given[name] for name in BOX}
    return {**part_json(part), "box": {**own, "sides": {name: given[name] for name in SIDES}}}


def flat_names(box: Box) -> list[str]:
    """What the flats are called, in the order of the part's ``flats_mm``."""
    return [flat_name(box, pair, n) for pair in PAIRS for n in range(1, flats_in(box, pair) + 1)]
