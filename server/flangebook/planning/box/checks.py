"""Findings on a box as a whole: corners, reliefs, sides that were cut back, the way out."""

from __future__ import annotations

from collections.abc import Iterator

from flangebook.bending.box.box import ENDS_OF, SIDES
from flangebook.bending.box.depth import standing
from flangebook.bending.box.relief import relief_hole_faa_mm
from flangebook.bending.box.shape import SAME_MM, BoxShape, other_pair, wall_radius_mm
from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.motion import handling
from flangebook.bending.tools.tooling import Crib, Press
from flangebook.planning.box.plan import PlannedBox
from flangebook.planning.tools.fit import Equipment

EATEN_SHARE = 0.5
"""How much of a base's edge the reliefs may take before the wall hangs on too little (a rule of
ours, no source)."""


def box_checks(found: PlannedBox, press: Press | None, crib: Crib) -> list[Check]:
    """Findings on the whole box, plain "ok" left out."""
    checks = [
        *_meetings(found.shape),
        *_reliefs(found.shape),
        *_cut_back(found.shape),
        *_way_out(found, press, crib),
    ]
    mass = found.blank.mass_kg(found.metal.density_kg_m3.nominal)
    try:
        lifting = handling.lifting(mass, found.blank.length_mm, found.blank.width_mm)
    except InputError:
        return checks
    return checks if lifting.level == "ok" else [*checks, lifting]


def _meetings(shape: BoxShape) -> Iterator[Check]:
    for met in shape.meetings:
        yield Check(
            "stop",
            "box-sides-meet",
            f"{met.capital.template}.",
            "Shorten one of them, or open the corner.",
            met.numbers,
        )


def _corners_there(shape: BoxShape) -> bool:
    return any(
        shape.box.side(one) is not None and shape.box.side(two) is not None
        for one in ENDS_OF["left-right"]
        for two in ENDS_OF["front-back"]
    )


def _reliefs(shape: BoxShape) -> Iterator[Check]:
    if not _corners_there(shape):
        return
    if shape.relief_mm == 0.0:
        yield Check(
            "caution",
            "box-no-relief",
            "The corners have no relief: the sheet tears or bulges where two bends meet.",
            "Cut round or square reliefs.",
        )
        return
    rule = relief_hole_faa_mm(wall_radius_mm(shape.sections), shape.box.thickness_mm)
    if shape.relief_mm < rule - SAME_MM:
        yield Check(
            "caution",
            "box-relief-small",
            "The reliefs are {relief_mm} across; for these bends {rule_mm} is usual.",
            "Make them larger, or leave the size to the rule.",
            {"relief_mm": shape.relief_mm, "rule_mm": rule},
        )
    for pair, straight in shape.base_mm.items():
        if shape.relief_mm > EATEN_SHARE * straight:
            side = next((n for n in SIDES if other_pair(n) == pair and shape.box.side(n)), None)
            if side is None:
                continue
            yield Check(
                "stop",
                "box-relief-eats",
                f"The reliefs take {{relief_mm}} of the {{edge_mm}} that the {side} side hangs on.",
                "Make the reliefs smaller, or the base larger.",
                {"relief_mm": shape.relief_mm, "edge_mm": straight},
            )


def _cut_back(shape: BoxShape) -> Iterator[Check]:
    """Sides that could not run as far as the corner asks for; both ends alike said once."""
    found: dict[tuple[str, int, float], list[str]] = {}
    for (side, neighbour), end in shape.ends.items():
        for flat, start in enumerate(end.flats_mm, 1):
            back = start - end.wanted_mm
            if back > SAME_MM:
                found.setdefault((side, flat, round(back, 2)), []).append(neighbour)
    for (name, flat, back), neighbours in found.items():
        yield Check(
            "caution",
            "box-cut-back",
            f"{name.capitalize()} flat {flat} is cut back by {{back_mm}} next to "
            f"{' and '.join(sorted(neighbours))}, so that the sides clear one another.",
            "Look at the corner in the drawing.",
            {"back_mm": back},
        )


def _way_out(found: PlannedBox, press: Press | None, crib: Crib) -> Iterator[Check]:
    """Whether a wall just bent passes under the punch on the way out to the front.

    The sides that are bent first keep the part from being slid out along the tools.
    """
    if press is None or not standing(found.shape):
        return
    equipment = Equipment(press, crib)
    for (pair, _), tools in found.tools.items():
        if pair != found.box.pairs[1] or tools is None:
            continue
        daylight = equipment.opens_mm(tools.punch, tools.die, found.box.thickness_mm)
        tallest = max(
            (sum(side.flats_mm) for n in ENDS_OF[pair] if (side := found.box.side(n))),
            default=0.0,
        )
        wall = min(tallest, found.view.size_mm[2])
        if wall > daylight:
            yield Check(
                "caution",
                "box-way-out",
                "With the punch up, {daylight_mm} are free above the die, and the walls stand "
                "{wall_mm} high: the box has to be tipped out under the punch, it cannot be slid "
                "out sideways past its own sides.",
                "Try it with a scrap box or with lower tools before the first piece.",
                {"daylight_mm": max(daylight, 0.0), "wall_mm": wall},
            )
            return
