"""Parts that take long to plan, for tests of what happens meanwhile."""

from __future__ import annotations

from typing import Any


def worst_box(length_mm: float) -> dict[str, Any]:
    """Six flats a side, turned in: seconds of work, whatever its length is; nothing of one is known
    for another."""
    side = {
        "flats_mm": [60, 25, 20, 15, 12, 10],
        "bends": [{"included_angle_deg": 90, "direction": "up"}] * 6,
    }
    sides = dict.fromkeys(("left", "right", "front", "back"), side)
    box = {"length_mm": length_mm, "width_mm": 300, "sides": sides}
    return {"title": "", "metal": "mild-steel-cr", "thickness_mm": 1.5, "box": box}
