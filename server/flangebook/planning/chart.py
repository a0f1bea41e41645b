"""The wall chart's numbers: this press, this crib and one metal, thickness against die."""

from __future__ import annotations

from collections.abc import Sequence

from flangebook.bending.checks import SEVERITY, Level
from flangebook.bending.part import sheet_gauge
from flangebook.bending.part.metals import GaugeFamily, Metal
from flangebook.bending.requirements import need_asked
from flangebook.bending.tools.ratings import Rating
from flangebook.bending.tools.tooling import Crib, Die, Press, Punch
from flangebook.planning.answers.answer import JsonDict, maybe, number
from flangebook.planning.results.evidence import Evidence
from flangebook.planning.tools.candidates import Candidates
from flangebook.planning.tools.fit import LEAST_V_OVER_T, Equipment, Fit, Wanted
from flangebook.planning.tools.stand_ins import punch_by_rule

SQUARE_DEG = 90.0
MOST_V_OVER_T = 16.0  # as far as the published charts that were read go
USUAL_LENGTH_MM = 1000.0
# Stocked metric thicknesses and the gauge numbers most sheet is sold in; common practice.
METRIC_MM = (0.5, 0.6, 0.8, 1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0)
GAUGES: dict[GaugeFamily, tuple[int, ...]] = {
    "steel": (24, 22, 20, 18, 16, 14, 12, 11, 10, 7),
    "galvanised": (24, 22, 20, 18, 16, 14, 12, 10),
    "stainless": (24, 22, 20, 18, 16, 14, 12, 11, 10),
    "aluminium": (24, 22, 20, 18, 16, 14, 12, 11, 10),
}
SAME_THICKNESS = 0.02


def chart(
    metal: Metal,
    press: Press | None,
    crib: Crib,
    bend_length_mm: float = USUAL_LENGTH_MM,
    evidence: Evidence | None = None,
) -> JsonDict:
    """The numbers of the wall chart, in the shape of ``GET /api/v1/chart``.

    A cell is ``usable`` when the die's V suits the thickness and makes a square bend; its
    ``level`` says whether press, die, punch and holder bear it. The thicknesses are the usual
    ones for the metal that some die of the crib can take.
    evidence: of the metal; None where the shop has none.

    Raises:
        InputError: the length is out of range.
    """
    need_asked(bend_length_mm=bend_length_mm)
    equipment = Equipment(press, crib, evidence)
    dies = sorted(crib.dies, key=lambda d: (d.v_opening_mm, -d.angle_deg, d.code))
    rows = [_row(metal, t, bend_length_mm, dies, equipment) for t in usual_thicknesses_mm(metal)]
    if dies:
        rows = [row for row in rows if any(cell["usable"] for cell in row["cells"])]
    return {
        "metal": {"code": metal.code, "name": metal.name},
        "press": None if press is None else {"name": press.name, "force_kn": press.force_kn},
        "bend_length_mm": number(bend_length_mm),
        "included_angle_deg": SQUARE_DEG,
        "dies": [_die(die) for die in dies],
        "thicknesses_mm": [row["thickness_mm"] for row in rows],
        "rows": rows,
        "words": _words(equipment, dies),
    }


def usual_thicknesses_mm(metal: Metal) -> list[float]:
    """Preferred metric thicknesses and the usual gauges of the metal's family, thinnest first.

    A gauge within 2 % of a metric thickness shares its row.
    """
    listed = list(METRIC_MM)
    if metal.gauge_family is not None:
        for gauge in GAUGES[metal.gauge_family]:
            t = round(sheet_gauge.thickness_of_gauge_mm(gauge, metal.gauge_family), 3)
            if all(abs(t - m) > SAME_THICKNESS * t for m in METRIC_MM):
                listed.append(t)
    return sorted(listed)


def _die(die: Die) -> JsonDict:
    return {
        "code": die.code,
        "name": die.name,
        "v_opening_mm": number(die.v_opening_mm),
        "angle_deg": number(die.angle_deg),
        "rating_kn_per_m": maybe(die.rating_kn_per_m),
        "tray": die.place.tray,
        "slot": die.place.slot,
    }


def _row(
    metal: Metal, thickness_mm: float, length_mm: float, dies: Sequence[Die], equipment: Equipment
) -> JsonDict:
    family = metal.gauge_family
    gauge = sheet_gauge.nearest_gauge(thickness_mm, family) if family else None
    wanted = Wanted(metal, thickness_mm, length_mm, SQUARE_DEG)
    punches = equipment.crib.punches or (punch_by_rule(thickness_mm, SQUARE_DEG),)
    return {
        "thickness_mm": number(thickness_mm),
        "gauge": None if gauge is None else f"{gauge} ga",
        "cells": [_cell(wanted, die, punches, equipment) for die in dies],
    }


def _cell(wanted: Wanted, die: Die, punches: Sequence[Punch], equipment: Equipment) -> JsonDict:
    over_t = die.v_opening_mm / wanted.thickness_mm
    if over_t < LEAST_V_OVER_T:
        return _unusable(
            die, f"V is only {over_t:.1f} × thickness: no published chart goes so narrow."
        )
    if over_t > MOST_V_OVER_T:
        return _unusable(die, f"V is {over_t:.0f} × thickness: wider than published charts go.")
    candidates = Candidates.of(wanted, (die,), punches, equipment)
    pair = candidates.best()
    assert pair is not None
    one = candidates.fit(pair)
    refused = [c for c in one.stops if c.code in ("cannot-be-predicted", "sharper-than-die")]
    if one.bend is None or refused:
        return _unusable(die, refused[0].words)
    return _usable(one)


def _usable(one: Fit) -> JsonDict:
    bend = one.bend
    assert bend is not None
    length = one.wanted.bend_length_mm
    worst = _worst(one.ratings)
    level: Level = worst.level if worst else "unknown"
    return {
        "die": one.die.code,
        "usable": True,
        "why": _why(worst),
        "punch": one.punch.code or None,
        "force_kn_per_m": number(bend.force_n.nominal / length, 2),
        "force_kn_per_m_high": number(bend.force_n.high / length, 2),
        "inside_radius_mm": number(bend.inside_radius_mm.nominal, 3),
        "min_flange_mm": number(bend.min_flange_mm, 3),
        "level": level,
        "limit": worst.what if worst and level != "ok" else None,
        "share_percent": maybe(worst.share_percent if worst else None, 1),
    }


def _unusable(die: Die, why: str) -> JsonDict:
    return {
        "die": die.code,
        "usable": False,
        "why": why,
        "punch": None,
        "force_kn_per_m": None,
        "force_kn_per_m_high": None,
        "inside_radius_mm": None,
        "min_flange_mm": None,
        "level": "stop",
        "limit": None,
        "share_percent": None,
    }


def _worst(rows: Sequence[Rating]) -> Rating | None:
    """The rating that limits: the most serious level, then the largest share."""
    return max(rows, key=lambda r: (SEVERITY[r.level], r.share_percent or 0.0), default=None)


def _why(worst: Rating | None) -> str:
    return "No rating is on record." if worst is None else worst.check().words


def _words(equipment: Equipment, dies: Sequence[Die]) -> list[str]:
    """What the chart's reader must know."""
    words = [
        "Air bending at 90° only: bottoming, coining and flattening take several times the force.",
        "The large figure is the force to allow for, and ratings are checked with it: the highest "
        "of the bend model and three published relations, with the strongest sheet of this metal. "
        "The small figure is the force expected; a press set to no more may stall.",
        "Smallest flange is outside, to the mould line. Radius is with the crib's best punch tip "
        "for the die.",
        "The plates of press and tools and their papers come first.",
    ]
    if equipment.press is None:
        words.append("No press is entered: its force is not checked.")
    elif equipment.press.force_per_m_limit_kn_per_m is None:
        words.append("What the press bears per metre of bed is not on record.")
    if equipment.press is not None and equipment.holder is None:
        words.append("The holder is not entered: its rating is not checked.")
    if not equipment.crib.punches:
        words.append("No punch is entered: their ratings are not checked.")
    unrated = [die.code for die in dies if die.rating_kn_per_m is None]
    if unrated:
        words.append(f"No rating on record for die {', '.join(unrated)}.")
    return words
