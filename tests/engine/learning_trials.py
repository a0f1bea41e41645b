"""Test bends of a sheet whose real behaviour a test decides, and the expectation they meet."""

from __future__ import annotations

from dataclasses import replace

from sheet_metals import die, metal

from flangebook.bending.learning.learned import expected_from
from flangebook.bending.learning.lessons import depth_beside_mm
from flangebook.bending.learning.readings import deduction_from_k
from flangebook.bending.learning.trial import SetUp, Trial

STEEL = metal()
EXPECTED = expected_from(STEEL)
HERE = SetUp(STEEL.code, 2.0, 100.0, 90.0, die(16.0, 60.0, 2.0), 1.0, 60.0)


def elsewhere(v_mm: float = 16.0, thickness_mm: float = 2.0, angle_deg: float = 90.0, **other):
    """Another set-up of the same metal."""
    return replace(
        HERE,
        die=die(v_mm, 60.0, 2.0),
        thickness_mm=thickness_mm,
        included_angle_deg=angle_deg,
        **other,
    )


def strip(
    name: str,
    set_up: SetUp = HERE,
    *,
    springs: float = 1.0,
    radius: float = 1.0,
    k: float | None = None,
    offset_mm: float = 0.0,
    measured_deg: float | None = None,
    thickness_mm: float | None = None,
    under_load: bool = True,
    wrong: bool = False,
) -> Trial:
    """A strip as it would come out if springback and radius were these multiples of the expected.

    k: the sheet's K-factor at the expected radius; None is as expected. offset_mm: how much
    more the press shows.
    """
    measured = set_up.included_angle_deg if measured_deg is None else measured_deg
    as_made = set_up.at(
        thickness_mm=thickness_mm or set_up.thickness_mm, included_angle_deg=measured
    )
    bend = EXPECTED(as_made)
    loaded = measured - springs * bend.springback_deg.nominal
    r = bend.inside_radius_mm.nominal
    deduction = bend.bend_deduction_mm.nominal
    if k is not None:
        deduction = deduction_from_k(k, measured, r, as_made.thickness_mm, as_made.dimension)
    return Trial(
        name,
        set_up,
        measured,
        loaded_deg=loaded if under_load else None,
        set_angle_deg=None if under_load else loaded,
        punch_depth_mm=depth_beside_mm(bend, as_made, loaded) + offset_mm,
        thickness_mm=thickness_mm,
        radius_mm=radius * r,
        flat_length_mm=100.0,
        flange_left_mm=50.0,
        flange_right_mm=50.0 + deduction,
        wrong=wrong,
    )


def set_strip(name: str, set_up: SetUp = HERE) -> Trial:
    """A strip of which only the set angle and what came is known."""
    whole = strip(name, set_up, under_load=False)
    return replace(whole, punch_depth_mm=None, radius_mm=None, flat_length_mm=None,
                   flange_left_mm=None, flange_right_mm=None)  # fmt: skip
