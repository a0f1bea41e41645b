"""Root sum of squares with sensitivities, against a published worked example.

JCGM 100:2008 (Guide to the expression of uncertainty in measurement), H.1: an end gauge of 50 mm
is compared with a standard. Model H.3: l = lS + d - lS (da * theta + aS * dtheta). Inputs as in
Table H.1; the printed result is u_c(l) = 32 nm, u_c^2 = 1002 nm2, the printed contributions are
25, 9.7, 0, 0, 2.9 and 16.6 nm. Figures taken from public reproductions of that table that agree
with one another, not from the guide itself.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from flangebook.bending.motion.tolerance import root_sum_square

VALUES = {
    "lS": (50_000_623.0, 25.0),  # nm
    "d": (215.0, 9.7),  # nm
    "aS": (11.5e-6, 1.2e-6),  # 1/K
    "theta": (-0.1, 0.41),  # K
    "da": (0.0, 0.58e-6),  # 1/K
    "dtheta": (0.0, 0.029),  # K
}
CONTRIBUTIONS_NM = (25.0, 9.7, 0.0, 0.0, 2.9, 16.6)


def length_nm(lS: float, d: float, aS: float, theta: float, da: float, dtheta: float) -> float:
    return lS + d - lS * (da * theta + aS * dtheta)


def slope(of: Callable[..., float], name: str) -> float:
    """How fast the model goes with one input, by a small step either way."""
    here = {key: value for key, (value, _) in VALUES.items()}
    step = VALUES[name][1] / 10.0
    high, low = (of(**{**here, name: here[name] + way * step}) for way in (1.0, -1.0))
    return (high - low) / (2.0 * step)


def test_the_end_gauge_of_the_guide() -> None:
    slopes = np.array([slope(length_nm, name) for name in VALUES])
    deviations = np.array([u for _, u in VALUES.values()])
    each = [root_sum_square(slopes[i : i + 1], deviations[i : i + 1] ** 2) for i in range(6)]
    assert each == pytest.approx(CONTRIBUTIONS_NM, abs=0.1)
    combined = root_sum_square(slopes, deviations**2)
    assert round(combined) == 32
    assert combined**2 == pytest.approx(1002.0, rel=0.005)


def test_ten_equal_tolerances_grow_with_the_root() -> None:
    """Ten parts of +-0.1 mm in a row: +-0.316 mm, not +-1 mm (arithmetic)."""
    assert root_sum_square(np.ones(10), np.full(10, 0.01)) == pytest.approx(0.316, abs=5e-4)
