"""A planned box in the API's shape: two sections' plans as one, with the box's own drawings."""

from __future__ import annotations

from typing import Any

from flangebook.bending.box.box import (
    ENDS_OF,
    PAIRS,
    SIDES,
    Box,
    Pair,
    base_flat,
    bends_of,
    flat_name,
    flats_before,
    flats_in,
    section_of,
)
from flangebook.bending.box.fold import FoldedView
from flangebook.bending.box.relief import relief_rule
from flangebook.bending.part.part import Bend
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.answers.answer import JsonDict, number, ring_json
from flangebook.planning.answers.plan_json import wishes_json
from flangebook.planning.box.checks import box_checks
from flangebook.planning.box.merge import (
    merged_checks,
    merged_order,
    merged_stations,
    merged_steps,
    merged_tools,
    worst_of,
)
from flangebook.planning.box.plan import PlannedBox


def box_answer(found: PlannedBox, press: Press | None, crib: Crib) -> JsonDict:
    """The set-up of a box, in the shape of ``POST /api/v1/plan``."""
    steps = merged_steps(found)
    checks = merged_checks(found, steps, box_checks(found, press, crib))
    first = next(iter(found.plans.values()))
    blank = _blank(found)
    answer = {
        "title": found.box.title,
        "thickness_gauge": first["thickness_gauge"],
        "part": part_json(found.box),
        "blank_length_mm": blank["length_mm"],
        "blank_mass_kg": blank["mass_kg"],
        "bend_lines_mm": [line["at_mm"] for line in blank["bend_lines"]],
        "blank": blank,
        "section": first["section"],
        "sections": [{"pair": pair, **plan["section"]} for pair, plan in found.plans.items()],
        "folded": folded_json(found.view),
        "flat_names": flat_names(found.box),
        "tools": merged_tools(found, steps),
        "order": merged_order(found, checks),
        "stations": merged_stations(found, steps),
        "steps": steps,
        "checks": checks,
        "worst": worst_of(checks),
        "engine": first["engine"],
    }
    if "dimensions" in first:
        answer["dimensions"] = _dimensions(found)
    return answer


def _dimensions(found: PlannedBox) -> list[JsonDict]:
    """The sections' expected errors, flats numbered over the box."""
    said: list[JsonDict] = []
    steps = 0
    for pair, plan in found.plans.items():
        for one in plan["dimensions"]:
            step = one.get("step")
            said.append(
                {
                    **one,
                    "flat": one["flat"] + flats_before(found.box, pair),
                    "flat_name": _measured(found.box, pair, one["flat"]),
                    "step": step + steps if step is not None else None,
                }
            )
        steps += len(plan["steps"])
    return said


def _measured(box: Box, pair: Pair, flat: int) -> str:
    """What a flat is called where its length is spoken of: the base has two."""
    name = flat_name(box, pair, flat)
    return name if flat != base_flat(box, pair) + 1 else f"{name}, {' to '.join(ENDS_OF[pair])}"


def flat_names(box: Box) -> list[str]:
    """What the flats are called, in the order of the part's ``flats_mm``."""
    return [flat_name(box, pair, n) for pair in PAIRS for n in range(1, flats_in(box, pair) + 1)]


def part_json(box: Box) -> JsonDict:
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
        "wishes": wishes_json(box.wishes),
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


def _side(box: Box, name: Any) -> JsonDict | None:
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


def _blank(found: PlannedBox) -> JsonDict:
    """The blank, and its bend lines with what the sections' plans say of them."""
    sheet, shape = found.blank, found.shape
    bends = bends_of(found.box)
    lines = []
    for line, bend in zip(sheet.lines, bends, strict=True):
        said = found.plans[bend.pair]["blank"]["bend_lines"][bend.in_section - 1]
        lines.append({**said, "bend": line.bend, "at_mm": number(line.at_mm)})
    band = {
        pair: [plan["blank"][f"length_mm{end}"] - plan["blank"]["length_mm"]
               for end in ("_low", "_high")]
        for pair, plan in found.plans.items()
    }  # fmt: skip
    along, across = (band.get(pair, [0.0, 0.0]) for pair in PAIRS)
    square = found.box.relief == "square"
    return {
        "length_mm": number(sheet.length_mm),
        "length_mm_low": number(sheet.length_mm + along[0]),
        "length_mm_high": number(sheet.length_mm + along[1]),
        "width_mm": number(sheet.width_mm),
        "width_mm_low": number(sheet.width_mm + across[0]),
        "width_mm_high": number(sheet.width_mm + across[1]),
        "mass_kg": number(sheet.mass_kg(found.metal.density_kg_m3.nominal)),
        "sum_check_mm": number(sheet.sum_check_mm, 6),
        "bend_lines": lines,
        "rests_on": next(iter(found.plans.values()))["blank"]["rests_on"],
        "outline": ring_json(sheet.outline),
        "cut": [[number(x), number(y), number(bulge, 9)] for x, y, bulge in sheet.cut],
        "lines": [
            {
                "bend": line.bend,
                "side": line.side,
                "place": line.place,
                "x1_mm": number(line.x1_mm),
                "y1_mm": number(line.y1_mm),
                "x2_mm": number(line.x2_mm),
                "y2_mm": number(line.y2_mm),
                "direction": line.direction,
            }
            for line in sheet.lines
        ],
        "relief": {
            "shape": found.box.relief,
            "size_mm": number(shape.relief_mm),
            "rule": "as asked for"
            if found.box.relief_mm is not None
            else relief_rule(found.box.thickness_mm, square=square),
        },
    }


def folded_json(view: FoldedView) -> JsonDict:
    """The isometric drawing: lines as x1, y1, x2, y2 [mm of the drawing, y up]."""
    kinds = ("edge", "bend", "hidden")
    drawn = {
        kind: [
            [number(v, 2) for v in (*line.start, *line.end)]
            for line in view.lines
            if line.kind == kind
        ]
        for kind in kinds
    }
    points = [p for line in view.lines for p in (line.start, line.end)]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    length, width, height = view.size_mm
    return {
        "lines": drawn,
        "faces": [
            {"side": side, "flat": flat, "outline": ring_json(ring)}
            for side, flat, ring in view.faces
        ],
        "dimensions": [
            {"name": name, "from": [number(v, 2) for v in a], "to": [number(v, 2) for v in b],
             "mm": number(mm)}
            for name, a, b, mm in view.dimensions
        ],
        "bounds": [number(v, 2) for v in (min(xs), min(ys), max(xs), max(ys))],
        "length_mm": number(length),
        "width_mm": number(width),
        "height_mm": number(height),
    }  # fmt: skip
