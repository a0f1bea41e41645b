"""Sizes to count with where a shop has entered none: usual proportions, common practice, no source.

Whoever counts with one of these says so: what comes of them is unknown, never "ok".
"""

from __future__ import annotations

from collections.abc import Mapping

FAR_MM = 1.0e5
"""Nothing ends there: what is not known limits nothing, and is a finding."""
PRESS_SIZES: Mapping[str, float] = {
    "between_frames_mm": FAR_MM,
    "throat_mm": FAR_MM,
    "open_height_mm": FAR_MM,
    "stroke_mm": 100.0,
    "gauge_x_min_mm": 0.0,
    "gauge_x_max_mm": 5000.0,
    "gauge_r_min_mm": -20.0,
    "gauge_r_max_mm": 150.0,
    "finger_height_mm": 12.0,
    "finger_depth_mm": 40.0,
    "ram_width_mm": 80.0,
    "ram_height_mm": 200.0,
    "bed_width_mm": 100.0,
    "bed_height_mm": 200.0,
}
"""Sizes of a press that may be unknown, and what is counted with then [mm]."""
