"""A part or a box as understood, in the shape it was asked in."""

from __future__ import annotations

from flangebook.bending.box.box import (
    PAIRS,
    SIDES,
    Box,
    SideName,
    bends_of,
    flat_name,
    flats_in,
    section_of,
)
from flangebook.bending.part.order_limits import Wishes
from flangebook.bending.part.part import Bend, Part
from flangebook.planning.answers.answer import JsonDict


def part_json(part: Part) -> JsonDict:
    """The part as understood, in the shape it was asked in."""
    return {
        "title": part.title,
        "metal": part.metal,
        "thickness_mm": part.thickness_mm,
        "bend_length_mm": part.bend_length_mm,
        "flats_mm": list(part.flats_mm),
        "bends": [_bend(bend) for bend in part.bends],
        "dimension": part.dimension,
        "order": list(part.order) if part.order is not None else None,
        "holes": [
            {"flat": h.flat, "position_mm": h.position_mm, "diameter_mm": h.diameter_mm}
            for h in part.holes
        ],
        "grain": part.grain,
        "wishes": _wishes(part.wishes),
        "tools": {"die": part.die, "punch": part.punch},
        "box": None,
    }


def _wishes(wishes: Wishes) -> JsonDict:
    return {
        "first": wishes.first,
        "last": wishes.last,
        "no_turn_over": wishes.no_turn_over,
        "no_turn_end": wishes.no_turn_end,
        "one_set_up": wishes.one_set_up,
        "critical_flats": list(wishes.critical_flats),
        "margin_mm": wishes.margin_mm,
    }


def box_part_json(box: Box) -> JsonDict:
    """The box as understood, in the shape it was asked in.

    Its flats and bends are there as well, in the order of their numbers, for who reads parts.
    """
    sections = [section for pair in PAIRS if (section := section_of(box, pair))]
    return {
        "title": box.title,
        "metal": box.metal,
        "thickness_mm": box.thickness_mm,
        "bend_length_mm": max(box.length_mm, box.width_mm),
        "flats_mm": [flat for section in sections for flat in section.flats_mm],
        "bends": [_bend(one.bend) for one in bends_of(box)],
        "dimension": box.dimension,
        "order": list(box.order) if box.order is not None else None,
        "holes": [],
        "grain": None,
        "wishes": _wishes(box.wishes),
        "tools": {"die": box.die, "punch": box.punch},
        "box": {
            "length_mm": box.length_mm,
            "width_mm": box.width_mm,
            "sides": {name: _side(box, name) for name in SIDES},
            "relief": box.relief,
            "relief_mm": box.relief_mm,
            "corner": box.corner,
            "gap_mm": box.gap_mm,
            "first_pair": box.first_pair,
        },
    }


def _side(box: Box, name: SideName) -> JsonDict | None:
    side = box.side(name)
    if side is None:
        return None
    return {"flats_mm": list(side.flats_mm), "bends": [_bend(b) for b in side.bends]}


def _bend(bend: Bend) -> JsonDict:
    return {
        "included_angle_deg": bend.included_angle_deg,
        "direction": bend.direction,
        "inside_radius_mm": bend.inside_radius_mm,
        "kind": bend.kind,
        "hem_gap_mm": bend.hem_gap_mm,
        "die": bend.die,
        "punch": bend.punch,
    }


def flat_names(box: Box) -> list[str]:
    """What the flats are called, in the order of the part's ``flats_mm``."""
    return [flat_name(box, pair, n) for pair in PAIRS for n in range(1, flats_in(box, pair) + 1)]
