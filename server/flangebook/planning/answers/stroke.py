"""One bend over its whole stroke: force and angles against punch depth, with the limits beside.

From the bend model, to where the tools end the bend. The band of the force has the shape of
the curve: at every depth as wide, in share, as the band at the peak, and its upper edge is
what press and tools are held against. Where the model does not hold there is no curve, and a
finding says so.
"""

from __future__ import annotations

from math import isfinite
from typing import NamedTuple

import numpy as np

from flangebook.bending.checks import Check, worst
from flangebook.bending.prediction.modelled_bend import ModelledBend, energy_gap, whole_stroke
from flangebook.bending.prediction.predicted_bend import AirBend
from flangebook.bending.sheet_model.stroke import StrokeCurve
from flangebook.bending.tools.ratings import Rating
from flangebook.bending.tools.setting_limits import SettingLimits
from flangebook.planning.answers.answer import N_PER_KN, JsonDict, checks_json, maybe, number
from flangebook.planning.answers.setting_json import setting_json
from flangebook.planning.results.evidence import SAME_V_MM, Evidence
from flangebook.planning.tools.fit import Fit, odd_results, said_by_both

J_PER_N_MM = 1.0e-3


SAME_SHEET = 0.05
MOST_TRIALS = 100


def stroke_json(chosen: Fit, evidence: Evidence | None = None) -> JsonDict:
    """The stroke of a bend in its tools, in the shape of ``POST /api/v1/stroke``.

    chosen: the fit, predicted. evidence: of the metal.
    """
    wanted, bend = chosen.wanted, chosen.bend
    reach = chosen.limits
    assert bend is not None
    assert reach is not None
    setting = setting_json(bend, reach, chosen.first_hit)
    length = wanted.bend_length_mm
    found = bend.model
    reached = _reached(found, setting["set_angle_deg"]) if found else None
    findings = (*chosen.checks, *(c for c in said_by_both(wanted, bend) if c.level == "ok"))
    if found is None:
        findings = (*findings, _no_curve())
    return {
        "metal": wanted.metal.code,
        "thickness_mm": number(wanted.thickness_mm),
        "bend_length_mm": number(length),
        "included_angle_deg": number(wanted.included_angle_deg),
        "die": chosen.die.code or None,
        "punch": chosen.punch.code or None,
        "v_opening_mm": number(bend.v_opening_mm),
        "punch_radius_mm": number(chosen.punch.tip_radius_mm),
        "set": {
            "set_angle_deg": setting["set_angle_deg"],
            "punch_depth_mm": setting["punch_depth_mm"],
            **_at_setting(reached, bend, length),
        },
        "curve": _curve(whole_stroke(found), bend, length, reach) if found else [],
        "peak": _peak(found, bend, length, reach) if found else None,
        "limits": [_limit(row, length) for row in chosen.ratings],
        "work_j": maybe(reached.work_n * length * J_PER_N_MM if reached else None),
        "energy_gap_percent": maybe(100.0 * energy_gap(found) if found else None),
        "trials": _trials(chosen, evidence) if evidence is not None else [],
        "checks": checks_json(findings),
        "worst": worst(findings),
    }


def _trials(chosen: Fit, evidence: Evidence) -> list[JsonDict]:
    """The newest results in this V with this sheet, whatever angle was wanted of them."""
    t, v = chosen.wanted.thickness_mm, chosen.die.v_opening_mm
    odd = odd_results(chosen, evidence)
    here = [
        result
        for result in evidence.results
        if abs(result.set_up.case.die.v_opening_mm - v) <= SAME_V_MM
        and abs(result.set_up.case.thickness_mm - t) <= SAME_SHEET * t
    ]
    return [
        {
            "id": result.id,
            "punch_depth_mm": maybe(result.punch_depth_mm),
            "set_angle_deg": maybe(
                result.set_angle_deg if result.loaded_deg is None else result.loaded_deg
            ),
            "measured_deg": number(result.measured_deg),
            "outlier": result.id in odd,
        }
        for result in here[-MOST_TRIALS:]
    ]


def _no_curve() -> Check:
    return Check(
        "unknown",
        "no-stroke",
        "There is no curve of the stroke: the bend model does not hold for this bend.",
        "Use the peak force by the handbook, on the bend's own page.",
    )


def _curve(
    stroke: StrokeCurve, bend: AirBend, length_mm: float, reach: SettingLimits
) -> list[JsonDict]:
    """From first touch to where tools or press end, without points whose figures mean nothing."""
    force = bend.force_n
    low, high = force.low / force.nominal, force.high / force.nominal
    points: list[_Point] = [(0.0, 0.0, 180.0, 180.0)]
    for i in range(len(stroke.depth_mm)):
        point = (
            float(stroke.depth_mm[i]),
            float(stroke.force_n_per_mm[i]) * length_mm / N_PER_KN,
            float(stroke.loaded_angle_deg[i]),
            min(float(stroke.released_angle_deg[i]), 180.0),
        )
        if not all(isfinite(value) for value in point):
            continue
        if reach.beyond(point[2], point[0]):
            points.append(_where_it_ends(points[-1], point, reach))
            break
        points.append(point)
    return [_point(*point, (low, high)) for point in points]


_Point = tuple[float, float, float, float]
"""Depth [mm], force [kN], loaded and released included angle [deg]."""


def _where_it_ends(inside: _Point, outside: _Point, reach: SettingLimits) -> _Point:
    """The place between two points where tools or press end, straight between them."""
    by_angle = (inside[2] - reach.sharpest_deg) / (inside[2] - outside[2])
    by_depth = (reach.deepest_mm - inside[0]) / (outside[0] - inside[0])
    share = min(by_angle, by_depth)
    depth, force, loaded, released = (
        a + share * (b - a) for a, b in zip(inside, outside, strict=True)
    )
    return min(depth, reach.deepest_mm), force, max(loaded, reach.sharpest_deg), released


def _point(
    depth_mm: float, force_kn: float, loaded: float, released: float, band: tuple[float, float]
) -> JsonDict:
    return {
        "punch_depth_mm": number(depth_mm),
        "force_kn": number(force_kn),
        "force_kn_low": number(force_kn * band[0]),
        "force_kn_high": number(force_kn * band[1]),
        "loaded_angle_deg": number(loaded),
        "released_angle_deg": number(released),
    }


class _Reached(NamedTuple):
    """Force [N/mm] at the set angle, and work of the punch up to it [N], per mm of length."""

    force_n_per_mm: float
    work_n: float


def _reached(found: ModelledBend, set_angle_deg: float | None) -> _Reached:
    """Force and work at the set angle; at the model's own where there is none to set."""
    at = found.nominal
    if set_angle_deg is None:
        return _Reached(at.force_n_per_mm, at.work_n)
    curve = whole_stroke(found)
    force, work = (
        float(np.interp(-set_angle_deg, -curve.loaded_angle_deg, one))
        for one in (curve.force_n_per_mm, curve.work_n)
    )
    return _Reached(force, work)


def _at_setting(reached: _Reached | None, bend: AirBend, length_mm: float) -> JsonDict:
    """The force at the set angle: expected, and to allow for in the share of the peak's."""
    if reached is None:
        return {"force_kn": None, "force_kn_high": None}
    expected = reached.force_n_per_mm * length_mm / N_PER_KN
    allow_for = expected * bend.force_n.high / bend.force_n.nominal
    return {"force_kn": number(expected), "force_kn_high": number(allow_for)}


def _peak(
    found: ModelledBend, bend: AirBend, length_mm: float, reach: SettingLimits
) -> JsonDict | None:
    """The greatest force on the way to the setting; None where it is beyond the limits."""
    at = found.nominal
    if reach.beyond(at.peak_angle_deg, at.peak_depth_mm):
        return None
    return {
        "force_kn": number(at.peak_force_n_per_mm * length_mm / N_PER_KN),
        "force_kn_high": number(bend.force_n.high / N_PER_KN),
        "punch_depth_mm": number(at.peak_depth_mm),
        "loaded_angle_deg": number(at.peak_angle_deg),
    }


def _limit(row: Rating, length_mm: float) -> JsonDict:
    """A rating as a force on this bend [kN]; None is unknown."""
    limit = row.rating
    if limit is not None and row.per_metre:
        limit = limit * length_mm / 1000.0
    return {"what": row.what, "name": row.name, "limit_kn": maybe(limit)}
