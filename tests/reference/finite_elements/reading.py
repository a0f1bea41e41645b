"""What the solver printed, read as a press brake's operator would: force, depth, angle, radius."""

from __future__ import annotations

from math import atan2, cos, degrees, radians
from pathlib import Path
from typing import Any

import numpy as np
from deck import Case, columns_mm, path

Table = dict[float, np.ndarray]
MOST_FORCE_LEFT = 0.21


def printed(dat: Path) -> dict[str, Table]:
    """The printed tables by set and time: totals as one row, displacements a row a node."""
    found: dict[str, dict[float, list[list[float]]]] = {}
    rows: list[list[float]] = []
    for line in dat.read_text().splitlines():
        words = line.split()
        if "time" in words and "set" in words:
            rows = []
            name = words[words.index("set") + 1]
            found.setdefault(name, {})[float(words[-1]) - 1.0] = rows  # step one lasts 1
        elif words and words[0].lstrip("-")[:1].isdigit():
            rows.append([float(w) for w in words])
    return {s: {t: np.array(r) for t, r in by.items() if r} for s, by in found.items()}


def line_positions(case: Case, y_mm: float, moved: np.ndarray) -> np.ndarray:
    """Where a line of the sheet's nodes is now, (x, y) from the bend line outwards [mm]."""
    x = columns_mm(case)
    halves = np.interp(np.arange(2 * len(x) - 1) / 2.0, np.arange(len(x)), x)
    flat = np.column_stack([halves, np.full(len(halves), y_mm)])
    return flat + moved[np.argsort(moved[:, 0])][:, 1:3]


def leg(line: np.ndarray) -> tuple[float, float]:
    """Slope angle [rad] and height at x = 0 [mm] of the straight free end of a line."""
    end = line[-5:]
    slope, height = np.polyfit(end[:, 0], end[:, 1], 1)
    return atan2(slope, 1.0), float(height)


def face_radius(line: np.ndarray) -> float:
    """Radius [mm] of the circle that touches both legs and the middle of the bend's face."""
    half, crossing = leg(line)
    return float((line[0, 1] - crossing) / (1.0 / cos(half) - 1.0))


def state(case: Case, outer: np.ndarray, inner: np.ndarray) -> dict[str, float]:
    """Angle and radii of the sheet as it is [deg, mm]."""
    outer_line = line_positions(case, 0.0, outer)
    inner_line = line_positions(case, case.sheet.thickness_mm, inner)
    return {
        "angle_deg": 180.0 - 2.0 * degrees(leg(outer_line)[0]),
        "inner_radius_mm": face_radius(inner_line),
        "outer_radius_mm": face_radius(outer_line),
        "thickness_at_bend_mm": float(inner_line[0, 1] - outer_line[0, 1]),
    }


def free_state(last: list[tuple[float, dict[str, float]]]) -> dict[str, float]:
    """The sheet with no force on it, from the last two (force, state) of the lift.

    A sheet that floats free may not settle any more, so a run may end just before that. Lifting
    is elastic, a straight line over the force, and is drawn out to zero over what little is left.
    """
    (before, earlier), (force, state_then) = last
    share = force / (before - force) if before > force > 0.0 else 0.0
    return {name: value + share * (value - earlier[name]) for name, value in state_then.items()}


def presses(corners: list[tuple[float, float, float]]) -> list[tuple[Any, Any]]:
    """Where each press into new depth starts and stops."""
    return list(zip(corners[0::3], corners[1::3], strict=True))


def results(case: Case, dat: Path) -> dict[str, Any]:
    """Force and loaded angle over the stroke, and the sheet loaded and released, as data.

    A run that ended after its first release gives that bend, and the stroke as far as it went.
    """
    tables = printed(dat)
    outer, inner, force = tables["NOUTER"], tables["NINNER"], tables["NPUNCH"]
    times = sorted(outer)
    corners = path(case)[0]
    at_force = {t: 2.0 * abs(float(force[t][0, 1])) for t in times}
    curve = []
    for start, stop in presses(corners):
        for t in times:
            if start[0] + 0.1 < t <= stop[0] + 1e-6:
                depth = float(np.interp(t, [start[0], stop[0]], [start[1], stop[1]]))
                now = state(case, outer[t], inner[t])
                curve.append((depth, at_force[t], now["angle_deg"], now["inner_radius_mm"]))
    bends = []
    for turn, lifted in zip(corners[1::3], corners[2::3], strict=True):
        down = min(times, key=lambda t: abs(t - turn[0]))
        lifting = [t for t in times if turn[0] < t <= lifted[0] + 1e-3]
        if len(lifting) < 2 or at_force[lifting[-1]] > MOST_FORCE_LEFT * at_force[down]:
            break
        loaded = state(case, outer[down], inner[down])
        released = free_state(
            [(at_force[t], state(case, outer[t], inner[t])) for t in lifting[-2:]]
        )
        bends.append(
            {
                "depth_mm": turn[1],
                "force_n_per_mm": at_force[down],
                "force_left_n_per_mm": at_force[lifting[-1]],
                **{f"loaded_{k}": v for k, v in loaded.items()},
                **{f"released_{k}": v for k, v in released.items()},
                "springback_deg": released["angle_deg"] - loaded["angle_deg"],
            }
        )
    if not bends:
        raise ValueError(f"the run ended before the first release, at {times[-1]:.3f} mm")
    thinned = curve[:: max(1, len(curve) // 70)]
    return _rounded(
        {
            "name": case.name,
            "metal": case.sheet.metal,
            "youngs_modulus_mpa": case.sheet.youngs_modulus_mpa,
            "poisson": case.sheet.poisson,
            "yield_mpa": case.sheet.yield_mpa,
            "hardening_k_mpa": case.sheet.k_mpa,
            "hardening_n": case.sheet.n,
            "thickness_mm": case.sheet.thickness_mm,
            "v_opening_mm": case.v_opening_mm,
            "die_angle_deg": case.die_angle_deg,
            "shoulder_radius_mm": case.shoulder_radius_mm,
            "punch_radius_mm": case.punch_radius_mm,
            "friction": case.friction,
            "elements_through_thickness": case.elements_through,
            "column_mm": case.column_mm,
            "peak_force_n_per_mm": max(f for _, f, _, _ in curve),
            "peak_force_depth_mm": max(curve, key=lambda row: row[1])[0],
            "bends": bends,
            "curve_depth_mm": [round(row[0], 4) for row in thinned],
            "curve_force_n_per_mm": [round(row[1], 3) for row in thinned],
            "curve_loaded_angle_deg": [round(row[2], 3) for row in thinned],
            "curve_loaded_inner_radius_mm": [round(row[3], 4) for row in thinned],
        }
    )


def _rounded(value: Any) -> Any:
    if isinstance(value, dict):
        return {name: _rounded(item) for name, item in value.items()}
    if isinstance(value, list):
        return [_rounded(item) for item in value]
    return round(value, 6) if isinstance(value, float) else value


def crossing_check(half_deg: float, radius_mm: float) -> float:
    """Gap [mm] between the legs' crossing and the middle of an arc, as :func:`face_radius` reads.

    >>> round(crossing_check(45.0, 2.0), 4)
    0.8284
    """
    return radius_mm * (1.0 / cos(radians(half_deg)) - 1.0)
