"""How the sheet lies between hands, die and gauge: what sags, what tips, what traps fingers.

Reminders with numbers, as in ``handling``: the press's manual and guards come first.
"""

from __future__ import annotations

from flangebook.bending.checks import Check
from flangebook.bending.requirements import need

GRAVITY_N_PER_KG = 9.80665
GAUGE_FINGERS_CODE = "fingers-at-gauge"
MOST_SAG_MM = 3.0  # more is guessed, not gauged; common practice, no source


def sag_mm(
    free_mm: float,
    beyond_mm: float,
    thickness_mm: float,
    youngs_modulus_mpa: float,
    poisson: float,
    density_kg_m3: float,
) -> float:
    """How far a sheet hangs down at the gauge under its own weight [mm].

    A cantilever held flat on the die and free at the back, wide enough that it cannot contract
    sideways: E' = E / (1 - nu^2), I = t^3 / 12 and q = rho g t for each mm of width. Its own
    weight gives q a^4 / (8 E' I) = 1.5 rho g a^4 / (E' t^2); what lies beyond the gauge hangs
    at its end as P = q b and adds P a^3 / (3 E' I). Small deflections: past a tenth of the free
    length the true one is a little less.

    Args:
        free_mm: a, from the die's rear edge to the gauge [mm].
        beyond_mm: b, developed length of what hangs on beyond the gauge [mm].
        thickness_mm: t [mm].
        youngs_modulus_mpa: E [MPa].
        poisson: nu [-].
        density_kg_m3: rho [kg/m3].

    Raises:
        InputError: a size is not above zero.

    Source: beam tables of any strength of materials, such as Machinery's Handbook, beam fixed at
    one end, load evenly spread, and load at the other end.

    >>> round(sag_mm(300.0, 0.0, 1.0, 207000.0, 0.3, 7850.0), 2)
    4.11
    """
    need(
        thickness_mm=thickness_mm,
        youngs_modulus_mpa=youngs_modulus_mpa,
        density_kg_m3=density_kg_m3,
        free_mm=free_mm,
        beyond_mm=beyond_mm,
        poisson=poisson,
    )
    stiffness = youngs_modulus_mpa / (1.0 - poisson**2) * thickness_mm**3 / 12.0
    load = density_kg_m3 * 1e-9 * GRAVITY_N_PER_KG * thickness_mm
    return load * (free_mm**4 / 8.0 + beyond_mm * free_mm**3 / 3.0) / stiffness


def sagging(sag_at_gauge_mm: float, to_finger_bottom_mm: float) -> Check | None:
    """A caution when the sheet sags so far that the gauge cannot be trusted; None when not.

    Args:
        sag_at_gauge_mm: how far it hangs down at the gauge [mm].
        to_finger_bottom_mm: from the contact's top edge down to the finger's lower edge [mm].
    """
    if sag_at_gauge_mm <= MOST_SAG_MM:
        return None
    numbers = {"sag_mm": sag_at_gauge_mm, "finger_mm": to_finger_bottom_mm}
    words = "The sheet sags {sag_mm} between die and gauge"
    if sag_at_gauge_mm >= to_finger_bottom_mm:
        words += ": it drops under the finger, which takes only {finger_mm}."
    else:
        words += ": it does not meet the finger square, and the flange comes out wrong."
    return Check(
        "caution",
        "sags-off-gauge",
        words,
        "Support the sheet behind the die at the height of the die, or gauge the other end.",
        numbers,
    )


def drops_behind(before_mm: float, after_mm: float) -> Check | None:
    """A caution when the part tips over the back of the die once it is let go; None when not.

    Args:
        before_mm: how far its weight lies behind the die's rear edge before the bend [mm].
        after_mm: how far it lies behind the V's rear shoulder after the bend [mm].
    """
    if max(before_mm, after_mm) <= 0.0:
        return None
    if before_mm > 0.0:
        when = "before or after the bend" if after_mm > 0.0 else "before the bend"
        numbers = {"behind_mm": before_mm}
        edge = "the die's rear edge"
    else:
        when, numbers, edge = "after the bend", {"behind_mm": after_mm}, "the V's rear shoulder"
    return Check(
        "caution",
        "drops-behind",
        f"Let go {when}, the part drops behind the die: its weight lies {{behind_mm}} behind "
        f"{edge}.",
        "Hold it in front or support it behind. Never reach between the tools for it.",
        numbers,
    )


def between_part_and_gauge(
    retract_mm: float, *, against_flange: bool, held_close: bool
) -> Check | None:
    """What traps fingers between part and gauge; None where an edge lies against a still finger.

    A caution where the gauge has to retract during the bend while hands hold the part close to
    the tools; a note where they hold it well in front, or hook a finished flange on to a finger.

    Args:
        retract_mm: how far the gauge retracts during the bend [mm].
        against_flange: whether a finished flange lies against the finger.
        held_close: whether less than the safe distance stands in front of the die.
    """
    if retract_mm > 0.0:
        return Check(
            "caution" if held_close else "ok",
            GAUGE_FINGERS_CODE,
            "The gauge retracts by {draw_back_mm} during the bend and can crush fingers.",
            "Keep both hands in front of the tools until it stands still.",
            {"draw_back_mm": retract_mm},
        )
    if against_flange:
        return Check(
            "ok",
            GAUGE_FINGERS_CODE,
            "A finished flange lies against the gauge.",
            "Guide it there from the front or the ends. Keep fingers from between flange and "
            "gauge.",
        )
    return None
