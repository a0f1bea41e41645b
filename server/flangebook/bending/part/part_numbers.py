"""The numbers of a part as given: counts, sizes, angles, hems and holes within range."""

from __future__ import annotations

from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part.order import check_order
from flangebook.bending.part.part import MOST_BENDS, Bend, Part

MOST_THICKNESS_MM = 50.0
MOST_SIZE_MM = 20_000.0


def check_numbers(part: Part) -> None:
    """Refuse numbers that mean no part, whatever its shape.

    Raises:
        InputError: a number is out of range; ``where`` names it, lists counted from 0.
        NotAPartError: no bend, flats that do not go with the bends, a hem not at an end.
    """
    _check_counts(part)
    _check_bends(part)
    _check_holes(part)
    if part.order is not None:
        check_order(part.order, len(part.bends))


def _need(value: float, where: str, most: float, what: str) -> None:
    """Refuse a number that is not above 0 and at most ``most``."""
    if not 0.0 < value <= most:
        raise InputError(
            f"{value:g} is no {what}.", where, "Give a number above 0, at most {most_mm}.",
            {"most_mm": most},
        )  # fmt: skip


def _check_counts(part: Part) -> None:
    _need(part.thickness_mm, "thickness_mm", MOST_THICKNESS_MM, "thickness")
    _need(part.bend_length_mm, "bend_length_mm", MOST_SIZE_MM, "bend length")
    count = len(part.bends)
    if count == 0:
        raise NotAPartError("The part has no bend.", "bends", "Give at least one bend.")
    if count > MOST_BENDS:
        raise InputError(f"{count} bends are too many.", "bends", f"At most {MOST_BENDS}.")
    if len(part.flats_mm) != count + 1:
        raise NotAPartError(
            f"{len(part.flats_mm)} flats do not go with {count} bends.",
            "flats_mm",
            f"There is one more flat than bends: give {count + 1}.",
        )
    for i, flat in enumerate(part.flats_mm):
        _need(flat, f"flats_mm.{i}", MOST_SIZE_MM, "length for a flat")


def _check_bends(part: Part) -> None:
    ends = (0, len(part.bends) - 1)
    for i, bend in enumerate(part.bends):
        where = f"bends.{i}"
        if bend.direction not in ("up", "down"):
            raise InputError("No such direction.", f"{where}.direction", "Give up or down.")
        if bend.kind != "bend":
            _check_hem(bend, where, at_end=i in ends)
            continue
        angle = bend.included_angle_deg
        if not 0.0 < angle < 180.0:
            raise InputError(
                f"{angle:g}° is no bend.",
                f"{where}.included_angle_deg",
                "Give the angle between the flats, above 0 and below 180; 0 is a hem, 180 flat.",
            )
        radius = bend.inside_radius_mm
        if radius is not None and not 0.0 <= radius <= MOST_SIZE_MM:
            raise InputError(
                f"{radius:g} is no inside radius.",
                f"{where}.inside_radius_mm",
                "Give 0 or more, or leave it to the tools.",
            )


def _check_hem(bend: Bend, where: str, *, at_end: bool) -> None:
    if not at_end:
        raise NotAPartError(
            "A hem lies at an end of the section.",
            f"{where}.kind",
            "Make it the first or the last bend, or a bend with an angle.",
        )
    if bend.included_angle_deg != 0.0:
        raise InputError(
            "A hem is folded right back.", f"{where}.included_angle_deg", "Give 0 for a hem."
        )
    if bend.inside_radius_mm is not None:
        raise InputError(
            "A hem's radius follows from its gap.",
            f"{where}.inside_radius_mm",
            "Leave it out; give hem_gap_mm for an open hem.",
        )
    if bend.kind == "open_hem":
        _need(bend.hem_gap_mm, f"{where}.hem_gap_mm", MOST_SIZE_MM, "gap for an open hem")
    elif bend.hem_gap_mm != 0.0:
        raise InputError(
            "A closed hem has no gap.", f"{where}.hem_gap_mm", "Give 0, or make it an open hem."
        )


def _check_holes(part: Part) -> None:
    for i, hole in enumerate(part.holes):
        if not 1 <= hole.flat <= len(part.flats_mm):
            raise InputError(
                f"There is no flat {hole.flat}.",
                f"holes.{i}.flat",
                f"Give a flat from 1 to {len(part.flats_mm)}.",
            )
        flat = part.flats_mm[hole.flat - 1]
        _need(hole.diameter_mm, f"holes.{i}.diameter_mm", MOST_SIZE_MM, "size for a hole")
        if not 0.0 <= hole.position_mm <= flat:
            raise InputError(
                "The hole lies beside its flat.",
                f"holes.{i}.position_mm",
                "{Flat} runs from 0 to {flat_mm}.",
                {"flat": hole.flat, "flat_mm": flat},
            )
