"""A step as it is for a sheet of another thickness than its card was planned for.

A piece's thickness, once measured, gives the slopes by which its setting is corrected, and how far
the tools may be set: both come from the model and from ``setting_limits`` at that thickness. What
was set, and what came, stay as they were. The limits are the nearer of both sheets', since the
next sheet may be as ordered again.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from flangebook.bending.checks import Sentence
from flangebook.bending.prediction.correction import correction_table
from flangebook.bending.tools.setting_limits import SettingLimits
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.answers.answer import JsonDict, sentence_json
from flangebook.planning.answers.setting_json import limits_json, limits_of, rows_json, within
from flangebook.planning.tools.fit import Equipment, Wanted, fit

SAME_SHEET = 0.12
"""Sheet measures within this share of the thickness it was ordered as; beyond, it is another."""
AS_ORDERED = 0.005
"""Nearer than this share is as ordered: no micrometer at a press tells more."""
TO_CHECK = (
    "Measure the sheet again, away from the edge and its burr.",
    "Compare the sheet with the card: thickness and metal.",
    "If it is the sheet to bend, plan the card for its thickness.",
)


def is_another_sheet(ordered_mm: float, measured_mm: float) -> bool:
    """Whether a thickness is too far from the ordered one to be that sheet.

    >>> is_another_sheet(2.0, 2.1), is_another_sheet(2.0, 2.5)
    (False, True)
    """
    return abs(measured_mm - ordered_mm) > SAME_SHEET * ordered_mm


def step_at_thickness(
    step: Mapping[str, Any],
    wanted: Wanted,
    die: Die,
    punch: Punch,
    equipment: Equipment,
) -> JsonDict:
    """The step with the table and the limits of this thickness; without them where the tools do
    not make the bend in it, so that no setting follows.

    wanted: the step's bend in the thickness that was measured.
    """
    here = fit(wanted, die, punch, equipment)
    ordered = limits_of(step)
    if here.bend is None or here.limits is None or ordered is None:
        return {**step, "limits": None, "corrections": []}
    rows = (
        correction_table(here.bend, here.case, here.limits)
        if within(here.bend, here.limits)
        else ()
    )
    return {
        **step,
        "limits": limits_json(_nearer(ordered, here.limits)),
        "corrections": rows_json(rows),
    }


def _nearer(one: SettingLimits, other: SettingLimits) -> SettingLimits:
    by = one.limited_by if one.deepest_mm <= other.deepest_mm else other.limited_by
    return SettingLimits(
        max(one.sharpest_deg, other.sharpest_deg), min(one.deepest_mm, other.deepest_mm), by
    )


def another_sheet(answer: JsonDict, ordered_mm: float, measured_mm: float) -> JsonDict:
    """The answer to a result on a sheet that is not the card's: no setting, and what to check."""
    said = Sentence(
        "The sheet measures {measured_mm}, the card is planned for {ordered_mm}.",
        {"measured_mm": measured_mm, "ordered_mm": ordered_mm},
    )
    apart, flange = sentence_json(said), answer["flange"]
    return {
        **answer,
        "set_angle_deg": None,
        "punch_depth_mm": None,
        "tilt_mm_per_m": None,
        "crown": None,
        "flange": flange and {**flange, "gauge_x_mm": None, "said": apart},
        "limited_by": [],
        "to_check": list(TO_CHECK),
        "said": apart,
    }
