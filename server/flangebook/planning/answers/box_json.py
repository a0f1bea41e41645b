"""What only a box's plan has in the API's shape: its blank, its drawing, its steps' sides."""

from __future__ import annotations

from flangebook.bending.box.box import PAIRS, bends_of
from flangebook.bending.box.fold import FoldedView
from flangebook.bending.box.relief import relief_rule
from flangebook.bending.part.blank import Blank
from flangebook.planning.answers.answer import JsonDict, maybe, number, ring_json
from flangebook.planning.answers.blank_json import bend_line_json, rests_on
from flangebook.planning.planned import BesideSides, BoxForm, Plan


def box_blank_json(plan: Plan, form: BoxForm) -> JsonDict:
    """The blank, and its bend lines with what the sections say of them."""
    box, sheet = form.box, form.blank
    own = {section.pair: section.sheet for section in plan.sections}
    lines = []
    for line, bend in zip(sheet.lines, bends_of(box), strict=True):
        flat = own[bend.pair]
        said = bend_line_json(flat.bend_lines[bend.in_section - 1], flat, plan.metal)
        lines.append({**said, "bend": line.bend, "at_mm": number(line.at_mm)})
    along, across = (_band(own.get(pair)) for pair in PAIRS)
    square = box.relief == "square"
    return {
        "length_mm": number(sheet.length_mm),
        "length_mm_low": number(sheet.length_mm + along[0]),
        "length_mm_high": number(sheet.length_mm + along[1]),
        "width_mm": number(sheet.width_mm),
        "width_mm_low": number(sheet.width_mm + across[0]),
        "width_mm_high": number(sheet.width_mm + across[1]),
        "mass_kg": number(sheet.mass_kg(plan.metal.density_kg_m3.nominal)),
        "sum_check_mm": number(sheet.sum_check_mm, 6),
        "bend_lines": lines,
        "rests_on": rests_on(plan.sections[0].fits),
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
            "shape": box.relief,
            "size_mm": number(form.shape.relief_mm),
            "rule": "as asked for"
            if box.relief_mm is not None
            else relief_rule(box.thickness_mm, square=square),
        },
    }


def _band(sheet: Blank | None) -> tuple[float, float]:
    """How far a section's length may come out shorter and longer [mm]."""
    if sheet is None:
        return 0.0, 0.0
    return sheet.length_low_mm - sheet.length_mm, sheet.length_high_mm - sheet.length_mm


def beside_json(beside: BesideSides, length_mm: float) -> JsonDict:
    """What a step has because it is a box's."""
    return {
        "bend_length_mm": number(length_mm),
        "side": beside.side,
        "gauged_side": beside.gauged_side,
        "turn_quarter": beside.quarter_turn,
        "clear_between_mm": maybe(beside.clear_mm),
        "sides_near": [
            {
                "tool": one.tool,
                "side": one.side,
                "flat": one.flat,
                "distance_mm": number(one.distance_mm, 3),
                "included_angle_deg": number(one.included_angle_deg, 2),
            }
            for one in beside.near
            if one.tool in ("holder", "ram", "bed")
        ],
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
