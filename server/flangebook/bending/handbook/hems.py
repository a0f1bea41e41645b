"""Hems: an edge folded back on the sheet, made as an acute bend and a flattening."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.checks import Check
from flangebook.bending.errors import RangeError
from flangebook.bending.handbook.allowance import allowance_din6935
from flangebook.bending.handbook.k_factor import k_factor_groover
from flangebook.bending.part.part import Bend
from flangebook.bending.part.section import FoldedBend

PRE_BEND_DEG = 30.0
MOST_PRE_BEND_DEG = 45.0
LEAST_HEM_OVER_T = 4.0
MID_K = 0.5


@dataclass(frozen=True, slots=True)
class Hem:
    """A hem's fold.

    inside_radius_mm: [mm]. allowance_mm: developed length of its arc [mm], with the ends of its
    band. deduction_low_mm, deduction_high_mm: band of the deduction from the outside lengths [mm].
    relation: what the developed length follows. standing: how far that can be trusted.
    """

    inside_radius_mm: float
    allowance_mm: float
    allowance_low_mm: float
    allowance_high_mm: float
    deduction_low_mm: float
    deduction_high_mm: float
    relation: str
    standing: Literal["published", "common practice, no source"]

    @property
    def folded(self) -> FoldedBend:
        """The fold as the section takes it."""
        return FoldedBend(
            self.inside_radius_mm, self.allowance_mm, self.deduction_low_mm, self.deduction_high_mm
        )


def closed_hem_allowance_mm(thickness_mm: float) -> float:
    """Developed length of a closed hem's fold [mm]: pi t / 2.

    The sheet folds about its inner corner, neutral line at mid thickness. Against outside
    dimensions that takes off 2 t - pi t / 2 = 0.43 t, the figure shops use.

    Args:
        thickness_mm: [mm], above 0. Shops give the figure for sheet up to about 2 mm.

    Source: common practice, no source.

    >>> round(2 * 1.0 - closed_hem_allowance_mm(1.0), 2)
    0.43
    """
    return math.pi * thickness_mm / 2.0


def hem(bend: Bend, thickness_mm: float) -> Hem:
    """The fold of a closed or open hem.

    Open hems take DIN 6935, whose range of opening angles reaches down to 0 degrees; where it
    gives no K-factor (inside radius below 0.05 t) the closed hem's rule is carried over.

    Band: the K-factor from Groover's, the handbooks' lowest, to 0.5 (mid thickness), and a gap
    that is off by as much as :func:`gap_doubt_mm` says.
    """
    radius = 0.0 if bend.kind == "closed_hem" else bend.hem_gap_mm / 2.0
    if bend.kind == "closed_hem":
        taken = closed_hem_allowance_mm(thickness_mm)
        words = "closed hem: 0.43 t less than the outside lengths"
        return _banded(radius, taken, thickness_mm, words, "common practice, no source")
    try:
        taken = allowance_din6935(0.0, radius, thickness_mm)
    except RangeError:
        taken = math.pi * radius + closed_hem_allowance_mm(thickness_mm)
        words = "open hem: neutral line at mid thickness"
        return _banded(radius, taken, thickness_mm, words, "common practice, no source")
    return _banded(radius, taken, thickness_mm, "open hem: DIN 6935 at 0°", "published")


def gap_doubt_mm(thickness_mm: float) -> float:
    """How far the gap of a flattened hem may be off [mm]: a fifth of the thickness.

    A closed hem may stay that much open.

    Source: common practice, no source.

    >>> gap_doubt_mm(2.0)
    0.4
    """
    return 0.2 * thickness_mm


def _banded(
    radius_mm: float,
    taken_mm: float,
    thickness_mm: float,
    relation: str,
    standing: Literal["published", "common practice, no source"],
) -> Hem:
    """The fold with its band: lowest and highest K at the smallest and the largest gap."""
    off = gap_doubt_mm(thickness_mm) / 2.0
    smallest, largest = max(radius_mm - off, 0.0), radius_mm + off
    least_k = k_factor_groover(radius_mm, thickness_mm)
    low = min(math.pi * (smallest + least_k * thickness_mm), taken_mm)
    high = max(math.pi * (largest + MID_K * thickness_mm), taken_mm)
    # What the hem takes is counted at the same outside lengths, whatever its gap.
    outside = 2.0 * (radius_mm + thickness_mm)
    return Hem(radius_mm, taken_mm, low, high, outside - high, outside - low, relation, standing)


def pre_bend_included_deg(
    punch_angle_deg: float, die_angle_deg: float, springback_deg: float
) -> float:
    """Included angle of the acute bend before flattening, released [deg].

    30 degrees, or what the blunter of the two tools allows.

    Source: common practice, no source.

    >>> pre_bend_included_deg(28.0, 30.0, 2.0)
    32.0
    """
    return max(PRE_BEND_DEG, max(punch_angle_deg, die_angle_deg) + springback_deg)


def hem_checks(
    bend: Bend, hem_flat_mm: float, thickness_mm: float, pre_bend_deg: float
) -> tuple[Check, ...]:
    """Findings on a hem: acute bend not sharp enough, hem short, crack and hand cautions.

    hem_flat_mm: outside length of the hem [mm]. pre_bend_deg: included angle of the acute
    bend, released [deg].
    """
    found = []
    if pre_bend_deg > MOST_PRE_BEND_DEG:
        found.append(
            Check(
                "stop",
                "hem-pre-bend-too-open",
                "The acute bend before flattening would be {pre_bend_deg}; "
                "above {most_deg} the hem buckles instead of closing (common practice).",
                "Use a sharper punch and die for the first hit.",
                {"pre_bend_deg": pre_bend_deg, "most_deg": MOST_PRE_BEND_DEG},
            )
        )
    least = LEAST_HEM_OVER_T * thickness_mm
    if hem_flat_mm < least:
        found.append(
            Check(
                "caution",
                "hem-short",
                "The hem is {hem_mm} long; below {least_mm}, 4 times the thickness, "
                "it is hard to fold (common practice).",
                "Make the hem longer.",
                {"hem_mm": hem_flat_mm, "least_mm": least},
            )
        )
    if bend.kind == "closed_hem":
        found.append(
            Check(
                "caution",
                "hem-crack",
                "A closed hem folds the sheet about a zero radius: "
                "metals that ask for a larger radius crack.",
                "Try a piece first, or leave the hem open.",
            )
        )
    return tuple(found)
