"""The numbers of a part as given: counts, sizes, angles, hems and holes within range."""

from __future__ import annotations

from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part.order import check_order
from flangebook.bending.part.part import MOST_BENDS, Bend, Part
from flangebook.bending.requirements import MOST_RADIUS_MM, need_asked


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


def _check_counts(part: Part) -> None:
    need_asked(thickness_mm=part.thickness_mm, bend_length_mm=part.bend_length_mm)
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
    need_asked(**{f"flats_mm.{i}": flat for i, flat in enumerate(part.flats_mm)})


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
        if radius is not None and not 0.0 <= radius <= MOST_RADIUS_MM:
            raise InputError(
                f"{radius:g} is no inside radius.",
                f"{where}.inside_radius_mm",
                "Give 0 or more, at most {most_mm}, or leave it to the tools.",
                {"most_mm": MOST_RADIUS_MM},
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
        need_asked(**{f"{where}.hem_gap_mm": bend.hem_gap_mm})
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
        need_asked(**{f"holes.{i}.diameter_mm": hole.diameter_mm})
        if not 0.0 <= hole.position_mm <= flat:
            raise InputError(
                "The hole lies beside its flat.",
                f"holes.{i}.position_mm",
                "{Flat} runs from 0 to {flat_mm}.",
                {"flat": hole.flat, "flat_mm": flat},
            )
