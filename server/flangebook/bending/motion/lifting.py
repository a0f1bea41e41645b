"""The revised NIOSH lifting equation: what one person should lift.

    RWL = 23 kg * HM * VM * DM * AM * FM * CM

Source of everything here: T. R. Waters, V. Putz-Anderson, A. Garg, Applications Manual for the
Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication 94-110, revised 9/2021. It is for two
hands of one standing person. It does not cover one-handed, seated or team lifts, carrying, or
holding a sheet while it swings up, and says nothing of local law.
"""

from __future__ import annotations

from typing import Literal

from flangebook.bending.errors import RangeError
from flangebook.bending.requirements import need

LOAD_CONSTANT_KG = 23.0
MOST_HORIZONTAL_CM = 63.0
Coupling = Literal["good", "fair", "poor"]
# By hours of lifting a day: at most 0.2 lifts a minute, and at 1 a minute (from memory).
FREQUENCY_MULTIPLIER: dict[float, dict[int, float]] = {
    0.2: {1: 1.00, 2: 0.95, 8: 0.85},
    1.0: {1: 0.94, 2: 0.88, 8: 0.75},
}
COUPLING_MULTIPLIER: dict[Coupling, float] = {"good": 1.00, "fair": 0.95, "poor": 0.90}


def horizontal_multiplier(horizontal_cm: float) -> float:
    """HM [-]: 25/H, and 1 for H of 25 cm and less, as the method itself sets it.

    Args:
        horizontal_cm: H, from between the ankles to between the hands [cm].

    Raises:
        InputError: H is not above zero.
        RangeError: H over 63 cm, where the method allows no load.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> horizontal_multiplier(50)
    0.5
    """
    need(horizontal_cm=horizontal_cm)
    if horizontal_cm > MOST_HORIZONTAL_CM:
        raise RangeError(
            f"Held {horizontal_cm:.0f} cm away from the body, the lifting equation allows no load.",
            "horizontal_cm",
            "Bring the load within 63 cm, or lift it another way.",
        )
    return min(1.0, 25.0 / horizontal_cm)


def vertical_multiplier(vertical_cm: float) -> float:
    """VM [-]: 1 - 0.003 |V - 75|.

    Args:
        vertical_cm: V, height of the hands above the floor [cm], 0 to 175.

    Raises:
        RangeError: V outside 0 to 175 cm.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> vertical_multiplier(75)
    1.0
    """
    if not 0.0 <= vertical_cm <= 175.0:
        raise RangeError(
            f"Hands at {vertical_cm:.0f} cm are outside the lifting equation.",
            "vertical_cm",
            "Lift between the floor and 175 cm.",
        )
    return 1.0 - 0.003 * abs(vertical_cm - 75.0)


def distance_multiplier(distance_cm: float) -> float:
    """DM [-]: 0.82 + 4.5/D, with D taken as 25 cm at least, as the method itself sets it.

    Args:
        distance_cm: D, how far the load is raised or lowered [cm], 0 to 175.

    Raises:
        RangeError: D outside 0 to 175 cm.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> distance_multiplier(25)
    1.0
    """
    if not 0.0 <= distance_cm <= 175.0:
        raise RangeError(
            f"A lift over {distance_cm:.0f} cm is outside the lifting equation.",
            "distance_cm",
            "Lift over 175 cm at most.",
        )
    return 0.82 + 4.5 / max(25.0, distance_cm)


def asymmetric_multiplier(asymmetry_deg: float) -> float:
    """AM [-]: 1 - 0.0032 A.

    Args:
        asymmetry_deg: A, how far the load stands to the side [deg], 0 to 135.

    Raises:
        RangeError: A outside 0 to 135 degrees.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> asymmetric_multiplier(90)
    0.712
    """
    if not 0.0 <= asymmetry_deg <= 135.0:
        raise RangeError(
            f"A turn of {asymmetry_deg:.0f} degrees is outside the lifting equation.",
            "asymmetry_deg",
            "Turn the feet instead of the back.",
        )
    return 1.0 - 0.0032 * asymmetry_deg


def recommended_weight_kg(
    horizontal_cm: float,
    vertical_cm: float,
    distance_cm: float,
    asymmetry_deg: float = 0.0,
    frequency_multiplier: float = 1.0,
    coupling: Coupling = "good",
) -> float:
    """Recommended weight limit RWL [kg] of one lift.

    Args:
        horizontal_cm: H [cm].
        vertical_cm: V [cm].
        distance_cm: D [cm].
        asymmetry_deg: A [deg].
        frequency_multiplier: FM [-], 0 to 1; see FREQUENCY_MULTIPLIER.
        coupling: how well the hands hold; in doubt the poorer.

    Raises:
        InputError, RangeError: as the multipliers.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> round(recommended_weight_kg(40, 75, 25), 1)
    14.4
    """
    if not 0.0 <= frequency_multiplier <= 1.0:
        raise RangeError(
            f"{frequency_multiplier} is no frequency multiplier.",
            "frequency_multiplier",
            "Give 0 to 1.",
        )
    return (
        LOAD_CONSTANT_KG
        * horizontal_multiplier(horizontal_cm)
        * vertical_multiplier(vertical_cm)
        * distance_multiplier(distance_cm)
        * asymmetric_multiplier(asymmetry_deg)
        * frequency_multiplier
        * COUPLING_MULTIPLIER[coupling]
    )


def horizontal_of_width_cm(width_cm: float) -> float:
    """H [cm] of a load as wide as this, away from the body: 20 + W/2, hands at 25 cm or higher.

    Source: Waters, Putz-Anderson, Garg, DHHS (NIOSH) Publication 94-110, as at the top of the
    module.

    >>> horizontal_of_width_cm(40)
    40.0
    """
    need(width_cm=width_cm)
    return 20.0 + width_cm / 2.0
