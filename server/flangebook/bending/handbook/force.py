"""Peak force of an air bend, from published relations.

Each relation is a factor c in F = c * R_m * L * t^2 / V:

    relation        c            source
    --------------  -----------  --------------------------------------------------------------
    force_textbook  1.33         Groover, Fundamentals of Modern Manufacturing
    force_lange     1 + 4 t / V  Lange, Umformtechnik, vol. 3 (after Oehler)
    force_us_chart  1.597        575 t^2/V short tons a foot at 60 000 psi, US shop charts

They differ by a fifth at V = 8 t, and published charts scatter between them and a little
above. :func:`force_band` shows that instead of hiding it:

    low      the lowest of the three with the metal's lowest tensile strength
    nominal  the middle one of the three with its nominal tensile strength
    high     the highest of the three with its highest tensile strength: for safety checks

All of this is air bending. Bottoming, coining and flattening a hem take several times as much.
"""

from __future__ import annotations

from dataclasses import dataclass

from flangebook.bending.errors import RangeError
from flangebook.bending.estimate import Estimate
from flangebook.bending.part.metals import Metal
from flangebook.bending.requirements import need

TEXTBOOK_FACTOR = 1.33
NEWTON_PER_SHORT_TON = 8896.443
US_CHART_TENSILE_MPA = 413.685  # 60 000 psi
US_CHART_FACTOR = 575.0 * NEWTON_PER_SHORT_TON / (12.0 * 25.4**2) / US_CHART_TENSILE_MPA
BAND_BASIS = (
    "lowest, middle and highest of three published relations "
    "(Groover; Lange; US 575 t²/V chart) over the metal's tensile strength"
)


@dataclass(frozen=True, slots=True)
class ForceOpinion:
    """What one published relation makes of the force [N]."""

    name: str
    source: str
    force_n: float


def force_textbook(
    tensile_mpa: float,
    bend_length_mm: float,
    thickness_mm: float,
    v_opening_mm: float,
    die_factor: float = TEXTBOOK_FACTOR,
) -> float:
    """Bending force [N] of the textbooks: F = K_bf * R_m * L * t^2 / V.

    Args:
        tensile_mpa: tensile strength R_m [MPa].
        bend_length_mm: length of the bend L [mm].
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].
        die_factor: K_bf [-], 1.33 for a V die, 0.33 for a wiping die.

    Raises:
        InputError: a size is not above zero.

    Source: M. P. Groover, Fundamentals of Modern Manufacturing, sheet metalworking: eq. 19.8 and
    example 19.2 in the copy read, chapter 20 in the 4th edition. No range is given there.

    >>> round(force_textbook(450, 44.5, 3.2, 25))  # Groover, example with t 3.2 and D 25 mm
    10909
    """
    need(
        tensile_mpa=tensile_mpa,
        bend_length_mm=bend_length_mm,
        thickness_mm=thickness_mm,
        v_opening_mm=v_opening_mm,
        die_factor=die_factor,
    )
    return die_factor * tensile_mpa * bend_length_mm * thickness_mm**2 / v_opening_mm


def force_lange(
    tensile_mpa: float, bend_length_mm: float, thickness_mm: float, v_opening_mm: float
) -> float:
    """Bending force [N] after Oehler and Lange: F = (1 + 4 t/V) * R_m * L * t^2 / V.

    Args:
        tensile_mpa: tensile strength R_m [MPa].
        bend_length_mm: length of the bend L [mm].
        thickness_mm: sheet thickness t [mm], 0.5 to 10.
        v_opening_mm: die opening V [mm], 5 t to 20 t.

    Raises:
        InputError: a size is not above zero.
        RangeError: t or V/t outside the range given with the formula. (It also asks for
            V of at least 5 punch radii, which this function is not told.)

    Source: K. Lange, Umformtechnik, vol. 3 Blechbearbeitung, 2nd ed., Springer 1990.

    >>> round(force_lange(310, 100, 1, 10))  # the worked case printed with it: 4.34 kN
    4340
    """
    if not 0.5 <= thickness_mm <= 10.0:
        raise RangeError(
            f"Lange's force is given for sheet of 0.5 to 10 mm, not {thickness_mm} mm.",
            "thickness_mm",
            "Use another relation.",
        )
    if not 5.0 <= v_opening_mm / thickness_mm <= 20.0:
        raise RangeError(
            f"Lange's force is given for openings of 5 t to 20 t, not {v_opening_mm} mm.",
            "v_opening_mm",
            "Use another relation.",
        )
    factor = 1.0 + 4.0 * thickness_mm / v_opening_mm
    return force_textbook(tensile_mpa, bend_length_mm, thickness_mm, v_opening_mm, factor)


def force_us_chart(
    tensile_mpa: float, bend_length_mm: float, thickness_mm: float, v_opening_mm: float
) -> float:
    """Bending force [N] of the US shop charts: 575 t^2/V short tons a foot, t and V in inches.

    The charts are for mild steel of 60 000 psi; other strengths scale it.

    Args:
        tensile_mpa: tensile strength R_m [MPa].
        bend_length_mm: length of the bend L [mm].
        thickness_mm: sheet thickness t [mm].
        v_opening_mm: die opening V [mm].

    Raises:
        InputError: a size is not above zero.

    Source: shop rule behind published US air-bend charts; the constant 575 is common
    practice with no single source, and the charts scatter from 0.7 to 1.15 of it.

    >>> tons_per_foot = force_us_chart(413.685, 304.8, 6.35, 50.8) / 8896.443
    >>> round(tons_per_foot, 2)  # 575 * 0.25 ** 2 / 2
    17.97
    """
    return force_textbook(tensile_mpa, bend_length_mm, thickness_mm, v_opening_mm, US_CHART_FACTOR)


def force_band(
    metal: Metal,
    thickness_mm: float,
    bend_length_mm: float,
    v_opening_mm: float,
    included_angle_deg: float,
) -> Estimate:
    """Peak force [N] of the stroke with its band; the module's table says what the ends are.

    The relations are for the peak and say nothing of the angle: a bend much flatter than
    square may end before the peak, so the figure is never too low for it.

    Args:
        metal: gives the tensile strength [MPa].
        thickness_mm: sheet thickness t [mm].
        bend_length_mm: length of the bend L [mm].
        v_opening_mm: die opening V [mm].
        included_angle_deg: wanted angle between the flats [deg], 0 to under 180.

    Raises:
        InputError: a size is not above zero or the angle is no bend.

    Source: :func:`force_textbook`, :func:`force_lange`, :func:`force_us_chart`.

    >>> from flangebook.bending.samples import STEEL
    >>> force = force_band(STEEL, 2.0, 1000.0, 16.0, 90.0)
    >>> round(force.low), round(force.nominal), round(force.high)
    (93100, 127500, 163715)
    """
    need(
        thickness_mm=thickness_mm,
        bend_length_mm=bend_length_mm,
        v_opening_mm=v_opening_mm,
        included_angle_deg=included_angle_deg,
    )
    # Lange's factor stays in outside its range: for a narrow V, dropping it would lower
    # the end that the safety checks use.
    low, middle, high = sorted(
        (TEXTBOOK_FACTOR, 1.0 + 4.0 * thickness_mm / v_opening_mm, US_CHART_FACTOR)
    )
    per_mpa = bend_length_mm * thickness_mm**2 / v_opening_mm
    tensile = metal.tensile_mpa
    return Estimate(
        low * tensile.low * per_mpa,
        middle * tensile.nominal * per_mpa,
        high * tensile.high * per_mpa,
        "handbook",
        BAND_BASIS,
    )


def force_opinions(
    metal: Metal, thickness_mm: float, bend_length_mm: float, v_opening_mm: float
) -> tuple[ForceOpinion, ...]:
    """What each relation makes of the force [N] at the metal's nominal tensile strength.

    Lange's is left out where the bend is outside its range.
    """
    size = (metal.tensile_mpa.nominal, bend_length_mm, thickness_mm, v_opening_mm)
    found = [
        ForceOpinion(
            "Textbook, 1.33", "Groover, Fundamentals of Modern Manufacturing", force_textbook(*size)
        ),
        ForceOpinion(
            "US shop chart, 575 t²/V", "common practice, no single source", force_us_chart(*size)
        ),
    ]
    try:
        lange = force_lange(*size)
    except RangeError:
        return tuple(found)
    source = "Lange, Umformtechnik vol. 3, 1990"
    return (found[0], ForceOpinion("Lange, 1 + 4 t/V", source, lange), found[1])
