"""What every calculation asks of its numbers before it uses them, and how large they may be.

The tables are the API's and the calculations' alike. The least values are for what is typed;
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
MOST = {
    "thickness_mm": MOST_THICKNESS_MM,
    "bend_length_mm": MOST_LENGTH_MM,
    "flats_mm": MOST_LENGTH_MM,
    "diameter_mm": MOST_LENGTH_MM,
    "v_opening_mm": MOST_V_OPENING_MM,
    "punch_radius_mm": MOST_RADIUS_MM,
    "hem_gap_mm": MOST_HEM_GAP_MM,
}
"""How large what is asked for may be, by the field's name."""
FROM_ZERO = frozenset((
    "inside_radius_mm", "loaded_radius_mm", "punch_radius_mm", "shoulder_radius_mm",
    "tip_radius_mm", "radius_mm", "depth_mm", "punch_depth_mm", "die_width_mm", "away_mm",
    "along_mm", "free_mm", "beyond_mm", "end_mm", "off_centre_mm",
    "k_factor", "friction", "poisson", "hardening_n",
))  # fmt: skip
"""What may be 0; every other size is above it."""
FOLDED = "included_angle_deg"
"""The angle that may be 0, folded flat, and is below 180; what is measured or set is above 0."""
ANGLES = frozenset((FOLDED, "wanted_deg", "measured_deg", "loaded_deg", "set_angle_deg"))


def need(**values: float) -> None:
    """Refuse what no such figure can be: below or at its least value, infinite, not a number.

    values: each under the name of its field, which says what it may be.

    Raises:
        InputError: naming the field.

    >>> need(thickness_mm=2.0, inside_radius_mm=0.0, included_angle_deg=90.0)
    >>> need(thickness_mm=0.0)
    Traceback (most recent call last):
    flangebook.bending.errors.InputError: thickness_mm: 0.0 cannot be used. Give a number above 0.
    """
    for where, value in values.items():
        if where in ANGLES and not 0.0 <= value < 180.0:
            raise InputError(
                f"{value} degrees is not a bend.",
                where,
                "The included angle is between 0 and 180 degrees: 90 is square, 180 would be flat.",
            )
        if where in FROM_ZERO or where == FOLDED:
            if not 0.0 <= value < inf:
                raise InputError(f"{value} cannot be used.", where, "Give 0 or a number above 0.")
        else:
            _need_positive(where, value)


def _need_positive(where: str, value: float) -> None:
    if not 0.0 < value < inf:
        raise InputError(f"{value} cannot be used.", where, "Give a number above 0.")


def need_asked(**values: float) -> None:
    """Refuse what nobody may ask for: as ``need``, and a size of ``MOST`` that is 0 or larger.

    values: names may be dotted, from the outside in (``flats_mm.2``).

    Raises:
        InputError: naming the field.

    >>> need_asked(thickness_mm=30.0)
    Traceback (most recent call last):
    flangebook.bending.errors.InputError: thickness_mm: 30 mm is too large. Give 25 mm or less.
    """
    for where, value in values.items():
        most = next((MOST[name] for name in where.split(".") if name in MOST), None)
        if most is None:
            need(**{where: value})
            continue
        _need_positive(where, value)
        if value > most:
            numbers = {"given_mm": value, "most_mm": most}
            raise InputError("{given_mm} is too large.", where, "Give {most_mm} or less.", numbers)
