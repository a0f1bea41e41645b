"""The blank's drawings, from a plan as it was answered or saved."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flangebook.bending.box.blank import BoxBlank, BoxLine, area_mm2, ring_of
from flangebook.bending.box.dxf import box_dxf
from flangebook.bending.box.svg import box_svg
from flangebook.bending.part.blank import BendLine, Blank
from flangebook.bending.part.blank_dxf import blank_dxf
from flangebook.bending.part.blank_svg import blank_svg


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


def svg_of(plan: Mapping[str, Any], title: str) -> str:
    """The blank drawn to scale."""
    box = box_blank_from(plan)
    return blank_svg(blank_from(plan), title) if box is None else box_svg(box, plan, title)


def dxf_of(plan: Mapping[str, Any]) -> str:
    """The blank for the cutter: cut line and bend lines on their layers."""
    box = box_blank_from(plan)
    return blank_dxf(blank_from(plan)) if box is None else box_dxf(box)


def box_blank_from(plan: Mapping[str, Any]) -> BoxBlank | None:
    """The blank of a box that a plan's JSON describes; None for a plain part's."""
    kept = plan["blank"]
    if "cut" not in kept:
        return None
    cut = tuple((x, y, bulge) for x, y, bulge in kept["cut"])
    lines = tuple(
        _box_line(drawn, said)
        for drawn, said in zip(kept["lines"], kept["bend_lines"], strict=True)
    )
    ring = ring_of(cut)
    return BoxBlank(
        kept["length_mm"], kept["width_mm"], plan["part"]["thickness_mm"], cut, ring, lines,
        area_mm2(cut), kept["sum_check_mm"],
    )  # fmt: skip


def _box_line(drawn: Mapping[str, Any], said: Mapping[str, Any]) -> BoxLine:
    return BoxLine(
        **drawn,
        included_angle_deg=said["included_angle_deg"],
        inside_radius_mm=said["inside_radius_mm"],
        allowance_mm=said["bend_allowance_mm"],
        deduction_mm=said["bend_deduction_mm"],
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
