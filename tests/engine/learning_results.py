"""Test bends of a sheet whose real behaviour a test decides, and the expectation they meet."""

from __future__ import annotations

from dataclasses import replace
from math import radians

from sheet_metals import die, metal

from flangebook.bending.geometry.setback import Dimension
from flangebook.bending.handbook.allowance import deduction
from flangebook.bending.learning.learned import Learning, put_in, teach
from flangebook.bending.learning.lessons import lessons
from flangebook.bending.learning.result import Result, SetUp
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.bending.prediction.predicted_bend import depth_at_mm
from flangebook.bending.tools.tooling import SetBy

STEEL = metal()
HERE = SetUp(BendCase(STEEL, 2.0, 100.0, 90.0, die(16.0, 60.0, 2.0), 1.0), 60.0)


def deduction_from_k(
    k_factor: float,
    included_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    dimension: Dimension = "din6935",
) -> float:
    """Bend deduction [mm] for a K-factor, by its definition; it may lie outside 0 to 0.5 here."""
    arc = radians(180.0 - included_angle_deg) * (inside_radius_mm + k_factor * thickness_mm)
    return deduction(included_angle_deg, inside_radius_mm, thickness_mm, arc, dimension)


def expected(set_up: SetUp) -> AirBend:
    """The prediction that results are held against."""
    return air_bend(set_up.case)


def with_case(set_up: SetUp, **changes) -> SetUp:
    """The set-up with another sheet, bend or tools."""
    return replace(set_up, case=replace(set_up.case, **changes))


def of_metal(set_up: SetUp, code: str) -> SetUp:
    """The set-up of a metal that is called otherwise."""
    return with_case(set_up, metal=replace(set_up.case.metal, code=code))


def elsewhere(
    v_mm: float = 16.0, thickness_mm: float = 2.0, angle_deg: float = 90.0, **other
) -> SetUp:
    """Another set-up of the same metal."""
    return with_case(
        HERE,
        die=die(v_mm, 60.0, 2.0),
        thickness_mm=thickness_mm,
        included_angle_deg=angle_deg,
        **other,
    )


def learn(bend: AirBend, set_up: SetUp, results, set_by: SetBy | None = None) -> Learning:
    """What results of the set-up's metal make of a predicted bend; those of others are passed over.

    A shop's own evidence is put together the same way, piece by piece.
    """
    metal = set_up.case.metal.code
    mine = [result for result in results if result.set_up.case.metal.code == metal]
    return put_in(bend, set_up, teach(mine, lambda result: lessons(result, set_by)))


def learned(bend: AirBend, set_up: SetUp, results, set_by: SetBy | None = None) -> AirBend:
    """The bend that :func:`learn` comes to."""
    return learn(bend, set_up, results, set_by).bend


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
) -> Result:
    """A strip as it would come out if springback and radius were these multiples of the expected.

    k: the sheet's K-factor at the expected radius; None is as expected. offset_mm: how much
    more the press shows.
    """
    case = set_up.case
    measured = case.included_angle_deg if measured_deg is None else measured_deg
    as_made = replace(
        case, thickness_mm=thickness_mm or case.thickness_mm, included_angle_deg=measured
    )
    bend = air_bend(as_made)
    loaded = measured - springs * bend.springback_deg.nominal
    r = bend.inside_radius_mm.nominal
    deduction = bend.bend_deduction_mm.nominal
    if k is not None:
        deduction = deduction_from_k(k, measured, r, as_made.thickness_mm, as_made.dimension)
    return Result(
        name,
        set_up,
        measured,
        loaded_deg=loaded if under_load else None,
        set_angle_deg=None if under_load else loaded,
        punch_depth_mm=depth_at_mm(bend, as_made, loaded) + offset_mm,
        thickness_mm=thickness_mm,
        radius_mm=radius * r,
        flat_length_mm=100.0,
        flange_left_mm=50.0,
        flange_right_mm=50.0 + deduction,
        wrong=wrong,
    )


def set_strip(name: str, set_up: SetUp = HERE) -> Result:
    """A strip of which only the set angle and what came is known."""
    whole = strip(name, set_up, under_load=False)
    return replace(whole, punch_depth_mm=None, radius_mm=None, flat_length_mm=None,
                   flange_left_mm=None, flange_right_mm=None)  # fmt: skip
