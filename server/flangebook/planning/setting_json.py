"""A step's setting and its limits as the API gives them and a card keeps them.

Every set angle and punch depth of an answer is made here: where tools and press do not reach the
setting both are null, and the ends of their bands stop where the tools stop.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from flangebook.bending.predicted_bend import AirBend
from flangebook.bending.setting_limits import SettingLimits
from flangebook.planning.answer import JsonDict, banded, number


def within(bend: AirBend | None, limits: SettingLimits | None) -> bool:
    """Whether tools and press reach the setting that is predicted for a bend."""
    if bend is None or limits is None:
        return False
    return not limits.beyond(bend.set_angle_deg.nominal, bend.punch_depth_mm.nominal)


def setting_json(bend: AirBend | None, limits: SettingLimits | None) -> JsonDict:
    """Set angle and punch depth with their bands; nulls where there is no setting."""
    if bend is None or limits is None or not within(bend, limits):
        return {**banded("set_angle_deg", None), **banded("punch_depth_mm", None)}
    angle, depth = bend.set_angle_deg, bend.punch_depth_mm
    # What may have to be set beyond the limit is no setting, so the band ends there.
    angle = replace(angle, low=max(angle.low, limits.sharpest_deg))
    depth = replace(depth, high=min(depth.high, limits.deepest_mm))
    return {**banded("set_angle_deg", angle), **banded("punch_depth_mm", depth)}


def limits_json(limits: SettingLimits | None) -> JsonDict | None:
    """The limits of a step; null where it has no tools."""
    if limits is None:
        return None
    return {
        "sharpest_deg": number(limits.sharpest_deg),
        "deepest_mm": number(limits.deepest_mm),
        "limited_by": list(limits.limited_by),
    }


def limits_of(step: Mapping[str, Any]) -> SettingLimits | None:
    """The limits that a saved step carries; None where it has none.

    A step of a card that an earlier release saved does not carry them: the sharpest and the
    deepest of its own setting and its own table of corrections count then.
    """
    saved = step.get("limits")
    if saved is not None:
        return SettingLimits(
            float(saved["sharpest_deg"]), float(saved["deepest_mm"]), tuple(saved["limited_by"])
        )
    rows = [row for row in (step, *(step.get("corrections") or ())) if _is_setting(row)]
    if not rows:
        return None
    return SettingLimits(
        min(float(row["set_angle_deg"]) for row in rows),
        max(float(row["punch_depth_mm"]) for row in rows),
        ("saved table",),
    )


def _is_setting(row: Mapping[str, Any]) -> bool:
    return row.get("set_angle_deg") is not None and row.get("punch_depth_mm") is not None
