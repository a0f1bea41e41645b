"""How large the cut-out is where two bends of a box meet, and how wide the corner's gap.

The relief is centred where the inside tangent lines of the two bends cross on the flat sheet.
"""

from __future__ import annotations

from flangebook.bending.requirements import need

MM_PER_INCH = 25.4
THIN_UP_TO_MM = 0.064 * MM_PER_INCH
MIDDLE_UP_TO_MM = 0.128 * MM_PER_INCH
LEAST_THIN_MM = MM_PER_INCH / 8.0
LEAST_MIDDLE_MM = 3.0 * MM_PER_INCH / 16.0
THICK_SHARE = 1.5
GAP_SHARE = 0.1
LEAST_GAP_MM = 0.2
FAA_RULE = (
    "FAA-H-8083-31: a hole about twice the bend radius across, at least 1/8 in up to 0.064 in "
    "sheet and 3/16 in up to 0.128 in, centred where the inside tangent lines cross"
)
THICK_RULE = "thicker than that source goes: at least 1.5 t (common practice, no source)"
SQUARE_RULE = "as large across as the hole; square is common practice, no source"


def relief_hole_faa_mm(inside_radius_mm: float, thickness_mm: float) -> float:
    """Diameter [mm] of a corner's relief hole: twice the bend radius, and not less than a least.

    The least is 1/8 in up to 0.064 in thick, 3/16 in up to 0.128 in (the source speaks of
    aluminium sheet). Thicker sheet is not in the source; 1.5 t is taken there, common practice,
    no source.

    Args:
        inside_radius_mm: the larger of the two bends' [mm], not below 0.
        thickness_mm: [mm], above 0.

    Raises:
        InputError: a number is out of range.

    Source: FAA-H-8083-31, Aviation Maintenance Technician Handbook: Airframe, vol. 1, ch. 4,
    "Folding a Box".

    >>> relief_hole_faa_mm(1.0, 1.0)
    3.175
    >>> relief_hole_faa_mm(3.0, 2.0)
    6.0
    """
    need(inside_radius_mm=inside_radius_mm, thickness_mm=thickness_mm)
    if thickness_mm <= THIN_UP_TO_MM:
        least = LEAST_THIN_MM
    elif thickness_mm <= MIDDLE_UP_TO_MM:
        least = LEAST_MIDDLE_MM
    else:
        least = max(LEAST_MIDDLE_MM, THICK_SHARE * thickness_mm)
    return max(2.0 * inside_radius_mm, least)


def relief_rule(thickness_mm: float, *, square: bool) -> str:
    """Where the size comes from, in words."""
    rules = [FAA_RULE]
    if thickness_mm > MIDDLE_UP_TO_MM:
        rules.append(THICK_RULE)
    if square:
        rules.append(SQUARE_RULE)
    return "; ".join(rules)


def corner_gap_mm(thickness_mm: float) -> float:
    """Gap [mm] between the walls of a closed corner: a tenth of the thickness, at least 0.2 mm.

    Source: common practice, no source.

    >>> corner_gap_mm(3.0)
    0.3
    """
    return round(max(LEAST_GAP_MM, GAP_SHARE * thickness_mm), 3)
