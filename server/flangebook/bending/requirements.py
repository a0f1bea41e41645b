"""What every calculation asks of its numbers before it uses them, and how large they may be.

The table is the API's and the calculations' alike. Its least values are for what is typed;
calculations take anything above 0.
"""

from __future__ import annotations

from math import inf

from flangebook.bending.errors import InputError

LEAST_THICKNESS_MM, MOST_THICKNESS_MM = 0.05, 25.0
LEAST_LENGTH_MM, MOST_LENGTH_MM = 0.1, 10_000.0  # of a flat, a bend, a strip
MOST_V_OPENING_MM = 500.0
MOST_RADIUS_MM = 500.0  # of a bend or a punch tip
MOST_HEM_GAP_MM = 50.0


def need_positive(**values: float) -> None:
    """Refuse a size that is not a number above zero (zero, negative, infinite, not a number).

    Raises:
        InputError: naming the field.

    >>> need_positive(thickness_mm=2.0)
    >>> need_positive(thickness_mm=0.0)
    Traceback (most recent call last):
    flangebook.bending.errors.InputError: thickness_mm: 0.0 cannot be used. Give a number above 0.
    """
    for where, value in values.items():
        if not 0.0 < value < inf:
            raise InputError(f"{value} cannot be used.", where, "Give a number above 0.")


def need_at_most(most: float, **values: float) -> None:
    """Refuse a size that is not a number above zero, or above the most there may be.

    Raises:
        InputError: naming the field.

    >>> need_at_most(MOST_THICKNESS_MM, thickness_mm=30.0)
    Traceback (most recent call last):
    flangebook.bending.errors.InputError: thickness_mm: 30 mm is too large. Give 25 mm or less.
    """
    need_positive(**values)
    for where, value in values.items():
        if value > most:
            numbers = {"given_mm": value, "most_mm": most}
            raise InputError("{given_mm} is too large.", where, "Give {most_mm} or less.", numbers)


def need_not_negative(**values: float) -> None:
    """Refuse a size below zero, infinite or not a number.

    Raises:
        InputError: naming the field.
    """
    for where, value in values.items():
        if not 0.0 <= value < inf:
            raise InputError(f"{value} cannot be used.", where, "Give 0 or a number above 0.")


def need_bend(included_angle_deg: float, where: str = "included_angle_deg") -> None:
    """Refuse an included angle [deg] that is no bend; 0 (folded flat) is allowed, 180 is not.

    Raises:
        InputError: naming the field.
    """
    if not 0.0 <= included_angle_deg < 180.0:
        raise InputError(
            f"{included_angle_deg} degrees is not a bend.",
            where,
            "The included angle is between 0 and 180 degrees: 90 is square, 180 would be flat.",
        )
