"""The blank, its bend lines and the finished section as the API gives them."""

from __future__ import annotations

import math
from collections.abc import Iterable

from flangebook.bending.geometry.ring import bounds
from flangebook.bending.geometry.strip import bend_points, centre_line, outline
from flangebook.bending.part.blank import BendLine, Blank
from flangebook.bending.part.dimension_lines import dimension_lines
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.section import strip_of
from flangebook.planning.answers.answer import JsonDict, number, ring_json
from flangebook.planning.answers.bend_json import allowance_opinions
from flangebook.planning.planned import Section
from flangebook.planning.tools.fit import Fit

SAME_ALLOWANCE_MM = 0.1
"""Sources that agree within this are one opinion [mm a bend]."""


def blank_json(section: Section, metal: Metal) -> JsonDict:
    """The blank and its bend lines, with the sources' opinions where they differ."""
    sheet = section.sheet
    return {
        "length_mm": number(sheet.length_mm),
        "length_mm_low": number(sheet.length_low_mm),
        "length_mm_high": number(sheet.length_high_mm),
        "width_mm": number(sheet.width_mm),
        "mass_kg": number(sheet.mass_kg),
        "sum_check_mm": number(sheet.sum_check_mm, 6),
        "bend_lines": [bend_line_json(line, sheet, metal) for line in sheet.bend_lines],
        "rests_on": rests_on(section.fits),
    }


def bend_line_json(line: BendLine, sheet: Blank, metal: Metal) -> JsonDict:
    """A bend line with what is needed to fold it."""
    angle, radius, t = line.included_angle_deg, line.inside_radius_mm, sheet.thickness_mm
    k = (line.allowance_mm / math.radians(180.0 - angle) - radius) / t
    return {
        "bend": line.bend,
        "at_mm": number(line.at_mm),
        "included_angle_deg": number(angle),
        "direction": line.direction,
        "inside_radius_mm": number(radius),
        "bend_allowance_mm": number(line.allowance_mm),
        "bend_deduction_mm": number(line.deduction_mm),
        "k_factor": number(k),
        "opinions": _opinions(metal, angle, radius, t, line.allowance_mm),
    }


def rests_on(fits: Iterable[Fit | None]) -> str:
    """Which pieces of the metal the deductions rest on; empty for none."""
    for one in fits:
        if one is not None and one.bend is not None:
            taken = one.bend.bend_deduction_mm
            if taken.origin == "your test bends":
                return taken.basis
    return ""


def _opinions(
    metal: Metal, angle_deg: float, radius_mm: float, thickness_mm: float, own_mm: float
) -> list[JsonDict]:
    """What the sources say, if any differs from the plan's allowance by more than a little."""
    if angle_deg <= 0.0:
        return []
    said = allowance_opinions(metal, angle_deg, radius_mm, thickness_mm)
    differs = any(abs(one["bend_allowance_mm"] - own_mm) > SAME_ALLOWANCE_MM for one in said)
    return said if differs else []


def section_json(section: Section) -> JsonDict:
    """The finished section, part frame."""
    part, folded = section.part, section.folded
    strip = strip_of(part, folded)
    ring = outline(strip)
    left, bottom, right, top = bounds(ring)
    return {
        "outline": ring_json(ring),
        "centre_line": ring_json(centre_line(strip)),
        "bend_points": ring_json(bend_points(strip)),
        "dimensions": [ring_json(line) for line in dimension_lines(part, folded)],
        "width_mm": number(right - left),
        "height_mm": number(top - bottom),
    }
