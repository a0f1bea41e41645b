"""Cards as the API gives them, cut down to what a label reads."""

from __future__ import annotations

from typing import Any


def step(number: int, **changes: Any) -> dict[str, Any]:
    return {
        "number": number,
        "bend": number,
        "operation": "bend",
        "direction": "up",
        "included_angle_deg": 90.0,
        "set_angle_deg": 88.63,
        "punch_depth_mm": 10.1,
        "limits": {"sharpest_deg": 85.5, "deepest_mm": 10.4, "limited_by": ["die angle"]},
        "v_opening_mm": 25.0,
        "punch": "S85-1",
        "gauge_x_mm": 57.25,
        "force_kn": 41.2,
        "force_kn_high": 57.12,
        "turn_over": False,
        "turn_end": False,
        **changes,
    }


def card(steps: int = 1, **changes: Any) -> dict[str, Any]:
    return {
        "code": "SHE7FA1",
        "display_code": "SHE-7FA1",
        "revision": 3,
        "title": "Shelf bracket, reading room",
        "part": {
            "metal": "mild-steel-cr",
            "thickness_mm": 3.0,
            "bend_length_mm": 220.0,
            "bends": [{}] * steps,
        },
        "plan": {
            "thickness_gauge": "11 ga",
            "blank_length_mm": 141.62,
            "worst": "ok",
            "order": {"proven": False},
            "steps": [step(n) for n in range(1, steps + 1)],
        },
        "settings": [],
        **changes,
    }


def with_plan(base: dict[str, Any], **changes: Any) -> dict[str, Any]:
    return {**base, "plan": {**base["plan"], **changes}}
