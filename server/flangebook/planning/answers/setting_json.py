"""A step's setting and its limits as the API gives them and a card keeps them.

Every set angle and punch depth of an answer is made here: where tools and press do not reach the
setting both are null, and the ends of their bands stop where the tools stop. Until a piece was
measured, what leads is the first hit, which comes out exact or open.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from math import atan, degrees
from typing import Any

from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.correction import Correction
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.prediction.predicted_bend import AirBend
from flangebook.bending.tools.setting_limits import MARGIN_DEG, LimitedBy, SettingLimits
from flangebook.planning.answers.answer import JsonDict, banded, number

ON_CENTRE_MM = 0.05


def within(bend: AirBend | None, limits: SettingLimits | None) -> bool:
    """Whether tools and press reach the setting that is predicted for a bend."""
    if bend is None or limits is None:
        return False
    return not limits.beyond(bend.set_angle_deg.nominal, bend.punch_depth_mm.nominal)


@dataclass(frozen=True, slots=True)
class Setting:
    """What to set, with its bands: the angle under load [deg] and the punch depth [mm]."""

    angle_deg: Estimate
    depth_mm: Estimate


def setting_of(
    bend: AirBend | None, limits: SettingLimits | None, first: FirstHit | None = None
) -> Setting | None:
    """Set angle and punch depth with their bands; None where there is no setting.

    first: the first hit, where it leads; its figures then stand for the expected ones, and the
    bands reach to both.
    """
    if bend is None or limits is None or not within(bend, limits):
        return None
    angle, depth = bend.set_angle_deg, bend.punch_depth_mm
    if first is not None:
        angle, depth = _led_by(first.set_angle_deg, angle), _led_by(first.punch_depth_mm, depth)
    # What may have to be set beyond the limit is no setting, so the band ends there.
    return Setting(
        replace(angle, low=max(angle.low, limits.sharpest_deg)),
        replace(depth, high=min(depth.high, limits.deepest_mm)),
    )


def setting_json(
    bend: AirBend | None, limits: SettingLimits | None, first: FirstHit | None = None
) -> JsonDict:
    """The setting, and beside it what is expected; nulls where there is none."""
    found = setting_of(bend, limits, first)
    own = bend if found else None
    return {
        **banded("set_angle_deg", found.angle_deg if found else None),
        **banded("punch_depth_mm", found.depth_mm if found else None),
        "expected_set_angle_deg": number(own.set_angle_deg.nominal) if own else None,
        "expected_punch_depth_mm": number(own.punch_depth_mm.nominal) if own else None,
        "first_hit": _first_hit_json(first) if found else None,
    }


def _led_by(value: float, band: Estimate) -> Estimate:
    return replace(band, low=min(band.low, value), nominal=value, high=max(band.high, value))


def _first_hit_json(first: FirstHit | None) -> JsonDict | None:
    if first is None:
        return None
    low, high = first.comes_out_deg
    return {"comes_out_deg_low": number(low), "comes_out_deg_high": number(high)}


def rows_json(rows: Iterable[Correction]) -> list[JsonDict]:
    """A table of corrections, a row for each angle that may be measured."""
    return [
        {
            "measured_deg": number(row.measured_deg, 2),
            "set_angle_deg": number(row.set_angle_deg),
            "punch_depth_mm": number(row.punch_depth_mm),
        }
        for row in rows
    ]


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

    A step of a card that an earlier release saved does not carry them. They follow then from
    what it did save: the V of the die as drawn, its own setting and its table of corrections.
    """
    if "limits" in step:
        return _given(step["limits"])
    rows = [row for row in (step, *(step.get("corrections") or ())) if _is_setting(row)]
    if not rows:
        return None
    drawn = _drawn_v_deg(step)
    sharpest = max(min(float(row["set_angle_deg"]) for row in rows), drawn + MARGIN_DEG)
    depths = [float(r["punch_depth_mm"]) for r in rows if r["set_angle_deg"] >= sharpest]
    if not depths:
        return SettingLimits(180.0, 0.0, ("die angle",))
    by: LimitedBy = "die angle" if sharpest == drawn + MARGIN_DEG else "saved table"
    return SettingLimits(sharpest, max(depths), (by,))


def in_force(
    step: Mapping[str, Any], setting: Mapping[str, Any] | None
) -> tuple[float | None, float | None]:
    """Angle [deg] and depth [mm] to show for a saved step: the card's own, else the plan's; two
    None where tools and press do not reach them."""
    own = setting or {}
    angle, depth = (
        own[name] if own.get(name) is not None else step.get(name)
        for name in ("set_angle_deg", "punch_depth_mm")
    )
    limits = limits_of(step)
    if limits is None or limits.beyond(angle, depth):
        return None, None
    return angle, depth


def _given(saved: Mapping[str, Any] | None) -> SettingLimits | None:
    if saved is None:
        return None
    return SettingLimits(
        float(saved["sharpest_deg"]), float(saved["deepest_mm"]), tuple(saved["limited_by"])
    )


def _is_setting(row: Mapping[str, Any]) -> bool:
    return row.get("set_angle_deg") is not None and row.get("punch_depth_mm") is not None


def _drawn_v_deg(step: Mapping[str, Any]) -> float:
    """The angle of the V in a saved drawing [deg], from its opening and its lowest point under
    the tools' centre line; 0 where none is drawn."""
    ring = (step.get("drawing") or {}).get("die") or ()
    floor = max((y for x, y in ring if abs(x) < ON_CENTRE_MM and y < 0.0), default=None)
    opening = step.get("v_opening_mm")
    if floor is None or opening is None:
        return 0.0
    return 2.0 * degrees(atan(opening / 2.0 / -floor))
