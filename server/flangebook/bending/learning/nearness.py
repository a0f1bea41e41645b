"""How much a trial counts for another thickness, V opening, bend angle or lot.

What a trial teaches is carried as a departure from what was expected of it, so most of the
effect of V and thickness is in the expectation already. What remains is less alike the further
away the trial was. One trial counts

    w = (1/2) ^ ((ln(V/V') / ln 1.4)^2 + (ln(t/t') / ln 1.25)^2 + ((b - b') / 45 deg)^2)

so by half for the next V opening but one, for the next usual sheet, or for 135 degrees instead
of 90; and by a quarter of that for another lot, or one that is not known, when the lot that is
to be bent is known. Common practice, no source.

Many trials at one such place agree with each other better than with this bend. If w is what
one trial counts, m of them together count m / (1 + m (1/w - 1)), never more than w / (1 - w):
the weight of m readings whose common departure is itself uncertain, where (1/w - 1) is its
variance over that of one reading (own derivation; that a power prior and a hierarchical model
are two views of one thing: M.-H. Chen and J. G. Ibrahim, The relationship between the power
prior and hierarchical models, Bayesian Analysis 1 (2006), read in summary).
"""

from __future__ import annotations

from math import log

from flangebook.bending.errors import InputError
from flangebook.bending.learning.trial import SetUp
from flangebook.bending.limits import need_positive

HALF_AT_V_RATIO = 1.4
HALF_AT_THICKNESS_RATIO = 1.25
HALF_AT_ANGLE_DEG = 45.0
OTHER_LOT = 0.25
HERE = 0.9  # a trial that counts so much, or more, was made "here"
LEAST_WEIGHT = 0.01  # below it a trial is too far away to be named among those that count


def nearness(
    v_ratio: float, thickness_ratio: float, angle_apart_deg: float, same_lot: bool = True
) -> float:
    """What one trial made elsewhere counts [-], 0 to 1; the module gives the formula.

    Args:
        v_ratio: V opening there over V opening here [-].
        thickness_ratio: thickness there over thickness here [-].
        angle_apart_deg: bend angle there less bend angle here [deg].
        same_lot: False if the lot here is known and the trial is of another or unknown one.

    Raises:
        InputError: a ratio is not above zero.

    >>> nearness(1.4, 1.0, 0.0), nearness(1.0, 1.0, 0.0, same_lot=False)
    (0.5, 0.25)
    """
    need_positive(v_ratio=v_ratio, thickness_ratio=thickness_ratio)
    away = (
        (log(v_ratio) / log(HALF_AT_V_RATIO)) ** 2
        + (log(thickness_ratio) / log(HALF_AT_THICKNESS_RATIO)) ** 2
        + (angle_apart_deg / HALF_AT_ANGLE_DEG) ** 2
    )
    alike: float = 0.5**away
    return alike if same_lot else OTHER_LOT * alike


def nearness_of(there: SetUp, here: SetUp) -> float:
    """What one trial made there counts here [-]; nothing for another metal.

    Args:
        there: the trial's set-up.
        here: the bend that is to be made.

    Raises:
        InputError: a size is not above zero.
    """
    if there.metal != here.metal:
        return 0.0
    return nearness(
        there.die.v_opening_mm / here.die.v_opening_mm,
        there.thickness_mm / here.thickness_mm,
        there.included_angle_deg - here.included_angle_deg,
        here.lot in ("", there.lot),
    )


def place_of(set_up: SetUp) -> tuple[float, float, float, str]:
    """What makes two trials neighbours at one place: V, thickness, angle and lot."""
    return (
        set_up.die.v_opening_mm,
        set_up.thickness_mm,
        set_up.included_angle_deg,
        set_up.lot,
    )


def share_of_one(weight: float, together: int) -> float:
    """What each of several trials at one place counts, if one alone counts ``weight`` [-].

    Args:
        weight: of one alone [-], above 0 to 1.
        together: how many there are at that place.

    Raises:
        InputError: the weight is not above 0 to 1, or there is none.

    >>> share_of_one(1.0, 7), round(7 * share_of_one(0.5, 7), 3)
    (1.0, 0.875)
    """
    if not 0.0 < weight <= 1.0 or together < 1:
        raise InputError(f"{together} trials of weight {weight}?", "weight", "Above 0, up to 1.")
    return weight / (weight + together * (1.0 - weight))
