"""How much alike two bends are: for another thickness, V opening, bend angle or lot.

What a result teaches is carried as a departure from what was expected of it, so most of the
effect of V and thickness is in the expectation already. What remains is less alike the further
away the result was:

    w = (1/2) ^ ((ln(V/V') / ln 1.4)^2 + (ln(t/t') / ln 1.25)^2 + ((b - b') / 45 deg)^2)

so half for the next V opening but one, for the next usual sheet, or for 135 degrees instead of
90. Of the departure of a metal half belongs to the metal wherever it is bent, a quarter to the
place by w, and a quarter to the lot. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import log
from typing import TYPE_CHECKING

import numpy as np

from flangebook.bending.learning.result import SetUp

if TYPE_CHECKING:
    import numpy.typing as npt

HALF_AT_V_RATIO = 1.4
HALF_AT_THICKNESS_RATIO = 1.25
HALF_AT_ANGLE_DEG = 45.0
OTHER_LOT = 0.25  # what a result of another lot counts, to order and draw results by
HERE = 0.9  # a result that counts so much, or more, was made "here"
OF_THE_METAL, OF_THE_PLACE, OF_THE_LOT = 0.5, 0.25, 0.25


def nearness(
    v_ratio: float, thickness_ratio: float, angle_apart_deg: float, same_lot: bool = True
) -> float:
    """What one result made elsewhere counts [-], 0 to 1; the module gives the formula.

    Args:
        v_ratio: V opening there over V opening here [-].
        thickness_ratio: thickness there over thickness here [-].
        angle_apart_deg: bend angle there less bend angle here [deg].
        same_lot: False if the lot here is known and the result is of another or unknown one.

    Source: common practice, no source.

    >>> nearness(1.4, 1.0, 0.0), nearness(1.0, 1.0, 0.0, same_lot=False)
    (0.5, 0.25)
    """
    away = (
        (log(v_ratio) / log(HALF_AT_V_RATIO)) ** 2
        + (log(thickness_ratio) / log(HALF_AT_THICKNESS_RATIO)) ** 2
        + (angle_apart_deg / HALF_AT_ANGLE_DEG) ** 2
    )
    alike: float = 0.5**away
    return alike if same_lot else OTHER_LOT * alike


def nearness_of(there: SetUp, here: SetUp) -> float:
    """What one result made there counts here [-]; nothing for another metal.

    Args:
        there: the result's set-up.
        here: the bend that is to be made.

    Source: common practice, no source.

    >>> from flangebook.bending.samples import CASE, SET_UP
    >>> from dataclasses import replace
    >>> nearness_of(SET_UP, SET_UP)
    1.0
    >>> nearness_of(replace(SET_UP, case=replace(CASE, included_angle_deg=135.0)), SET_UP)
    0.5
    """
    one, other = there.case, here.case
    if one.metal.code != other.metal.code:
        return 0.0
    return nearness(
        one.die.v_opening_mm / other.die.v_opening_mm,
        one.thickness_mm / other.thickness_mm,
        one.included_angle_deg - other.included_angle_deg,
        here.lot in ("", there.lot),
    )


def alike(there: Sequence[SetUp], here: Sequence[SetUp]) -> npt.NDArray[np.float64]:
    """How far the metal's departures agree [-], each there with each here; 0 for other metals.

    Args:
        there: set-ups, one a row.
        here: set-ups, one a column.
    """
    near = near_by(there, here)
    metal = same(*([one.case.metal.code for one in side] for side in (there, here)))
    lot = same([one.lot for one in there], [one.lot for one in here])
    found = metal * (OF_THE_METAL + OF_THE_PLACE * near + OF_THE_LOT * lot)
    return np.asarray(found, dtype=np.float64)


def near_by(there: Sequence[SetUp], here: Sequence[SetUp]) -> npt.NDArray[np.float64]:
    """W of the module for each there with each here [-], whatever the metal."""
    away = _columns(there)[:, None, :] - _columns(here)[None, :, :]
    return np.asarray(0.5 ** (away**2).sum(axis=2), dtype=np.float64)


def _columns(bends: Sequence[SetUp]) -> npt.NDArray[np.float64]:
    """V, thickness and angle of each, in steps that halve what a result counts."""
    return np.array(
        [
            (
                log(case.die.v_opening_mm) / log(HALF_AT_V_RATIO),
                log(case.thickness_mm) / log(HALF_AT_THICKNESS_RATIO),
                case.included_angle_deg / HALF_AT_ANGLE_DEG,
            )
            for case in (one.case for one in bends)
        ]
    )


def same(there: Sequence[str], here: Sequence[str]) -> npt.NDArray[np.bool_]:
    """Whether each name there is each name here.

    Args:
        there: names, one a row.
        here: names, one a column.
    """
    return np.array([[one == other for other in here] for one in there], dtype=bool)
