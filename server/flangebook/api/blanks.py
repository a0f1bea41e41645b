"""The blank's drawings, from a plan as it was answered or saved."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flangebook.bending.blank import BendLine, Blank


def blank_from(plan: Mapping[str, Any]) -> Blank:
    """The blank that a plan's JSON describes."""
    kept = plan["blank"]
    return Blank(
        length_mm=kept["length_mm"],
        length_low_mm=kept["length_mm_low"],
        length_high_mm=kept["length_mm_high"],
        width_mm=kept["width_mm"],
        thickness_mm=plan["part"]["thickness_mm"],
        mass_kg=kept["mass_kg"],
        bend_lines=tuple(_line(one) for one in kept["bend_lines"]),
        sum_check_mm=kept["sum_check_mm"],
    )


def _line(kept: Mapping[str, Any]) -> BendLine:
    return BendLine(
        bend=kept["bend"],
        at_mm=kept["at_mm"],
        direction=kept["direction"],
        included_angle_deg=kept["included_angle_deg"],
        inside_radius_mm=kept["inside_radius_mm"],
        allowance_mm=kept["bend_allowance_mm"],
        deduction_mm=kept["bend_deduction_mm"],
    )
