"""Fit the constants of ``sheet_model.inner_face`` to the strokes of the finite element cases.

    python tests/reference/finite_elements/fit_inner_face.py

Prints the constants, how well they fit, and for each case how far a fit without it misses it.
"""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np

from flangebook.bending.sheet_model.inner_face import off_parts, sunk_parts
from flangebook.bending.sheet_model.moment_curvature import sheet_law
from flangebook.bending.sheet_model.pressed import pressed
from flangebook.bending.sheet_model.tools import tools

DATA = Path(__file__).with_name("results.json")
LEAST_HALF_ANGLE = np.radians(3.0)
# Reduced integration gives way under the sharp nose in soft aluminium at the end of its stroke.
LEFT_OUT = {"aluminium_v16_r1": np.radians(40.0)}

# Solved after the constants were fitted.
NOT_FITTED_TO = ("brass half-hard", "aluminium 5052-O")


def points(case: dict) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Parts of the sinking, what it was, off-the-tip part, what it was; per thickness."""
    t = case["thickness_mm"]
    law = sheet_law(
        case["youngs_modulus_mpa"], case["yield_mpa"], case["hardening_k_mpa"],
        case["hardening_n"], t, case["poisson"],
    )  # fmt: skip
    tool = tools(
        case["v_opening_mm"], case["die_angle_deg"], case["shoulder_radius_mm"],
        case["punch_radius_mm"], case["friction"],
    )  # fmt: skip
    theta = np.radians(180.0 - np.array(case["curve_loaded_angle_deg"])) / 2.0
    used = (theta > LEAST_HALF_ANGLE) & (theta < LEFT_OUT.get(case["name"], 2.0))
    theta = theta[used]
    middle = pressed(law, tool, theta)
    sunk = middle.depth - np.array(case["curve_depth_mm"])[used]
    radius = np.array(case["curve_loaded_inner_radius_mm"])[used]
    gap = (radius - middle.loaded_radius) * (1.0 / np.cos(theta) - 1.0)
    off = np.column_stack(off_parts(law, tool, middle.wrap))
    parts = np.column_stack(sunk_parts(law, tool, middle, theta))
    return parts, sunk / t, off, sunk - gap


def main() -> None:
    """Fit and print."""
    rows = json.loads(DATA.read_text("utf-8"))["cases"]
    cases = [c for c in rows if not c["friction"] and "fine" not in c["name"]]
    cases = [c for c in cases if c["metal"] not in NOT_FITTED_TO]
    found = [points(case) for case in cases]

    def fit(which: list[int], of: int) -> np.ndarray:
        parts = np.concatenate([found[i][of] for i in which])
        wanted = np.concatenate([found[i][of + 1] for i in which])
        return np.linalg.lstsq(parts, wanted, rcond=None)[0]

    everyone = list(range(len(cases)))
    constants = fit(everyone, 0)
    print("A, B, C, D:", np.round(constants, 4), " G, H:", np.round(fit(everyone, 2), 4))
    for i, case in enumerate(cases):
        parts, sunk, *_ = found[i]
        t = case["thickness_mm"]
        without = fit([j for j in everyone if j != i], 0)
        print(
            f"{case['name']:30} worst miss {t * np.abs(sunk - parts @ constants).max():.3f} mm, "
            f"left out {t * np.abs(sunk - parts @ without).max():.3f} mm"
        )


if __name__ == "__main__":
    main()
