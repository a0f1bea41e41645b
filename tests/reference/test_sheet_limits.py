"""The bend model against the closed solutions it must run into.

- Elastic: a beam on two supports with a load in the middle, F = 48 E' I d / L^3 (Timoshenko,
  Strength of Materials, part I).
- Rigid, perfectly plastic: M = 2/sqrt(3) Y t^2 / 4 in plane strain under von Mises (Hill, The
  Mathematical Theory of Plasticity, ch. XI), and a bend that folds about one hinge.
- Elastic, perfectly plastic: Gardiner, Trans. ASME 79 (1957), which has neither Poisson's ratio
  nor the plane-strain factor in it, so both are taken out of the law for the comparison.
- Work: what the punch does must be in the sheet.
"""

from __future__ import annotations

from math import cos, radians, sin, sqrt

import numpy as np
import pytest

from flangebook.bending.handbook.springback import springback_ratio_gardiner
from flangebook.bending.sheet_model.moment_curvature import (
    PLANE_STRAIN,
    SheetLaw,
    bent,
    bent_each,
    curvature_released,
    moment,
    sheet_law,
    sheet_rows,
)
from flangebook.bending.sheet_model.pressed import pressed
from flangebook.bending.sheet_model.stroke import set_bend, stroke
from flangebook.bending.sheet_model.tools import tools

METALS = {
    "low-carbon steel": (207_000, 200, 530, 0.22),
    "stainless 304": (193_000, 290, 1350, 0.45),
    "aluminium 5052-H32": (70_000, 193, 365, 0.13),
    "no hardening": (207_000, 355, 355, 0.0),
}


def yield_curvature(law: SheetLaw) -> float:
    """Curvature at first yield [1/mm]."""
    return 2.0 * law.yield_strain / law.thickness_mm


def plastic_moment(law: SheetLaw) -> float:
    """Moment per width [N] of a sheet that yields at Y throughout (R. Hill, The Mathematical
    Theory of Plasticity, Oxford 1950, ch. XI)."""
    return PLANE_STRAIN * law.yield_mpa * law.thickness_mm**2 / 4.0


def stress(law: SheetLaw, strain: np.ndarray) -> np.ndarray:
    """Stress across the bend line [MPa] at a strain of 0 or more [-]."""
    found = np.empty((len(strain), 5))
    bent_each(sheet_rows(law, len(strain)), 2.0 * strain / law.thickness_mm, found)
    plastic = PLANE_STRAIN * law.k_mpa * found[:, 0] ** law.n
    return np.where(strain > law.yield_strain, plastic, law.plane_strain_modulus_mpa * strain)


def ratio_released(law: SheetLaw, middle_radius_mm: float) -> float:
    """Bend angle after over bend angle before release [-], sheet bent by a moment alone: radius
    of the middle line loaded over released, the springback factor of the handbooks."""
    curvature = np.array([1.0 / middle_radius_mm])
    return float(curvature_released(law, curvature)[0] * middle_radius_mm)


@pytest.mark.parametrize("v_over_t", [8, 20, 40])
def test_elastic_sheet_is_a_beam_on_two_supports(v_over_t):
    law = sheet_law(207_000, 2000, 3000, 0.2, 1.0)
    die = tools(v_over_t, 86, 1.0, 0.5)
    found = pressed(law, die, np.radians([0.02, 0.05]))
    span = 2.0 * die.shoulder_x_mm
    beam = 48.0 * law.stiffness * found.depth / span**3
    # The contact moves in by (rd + t/2) theta, which is all that is left at these angles.
    assert found.force == pytest.approx(beam, rel=1.5e-3)


@pytest.mark.parametrize("v_over_t", [8, 40])
def test_elastic_sheet_springs_back_flat(v_over_t):
    law = sheet_law(207_000, 2000, 3000, 0.2, 1.0)
    theta = np.radians([0.1, 0.3])
    found = pressed(law, tools(v_over_t, 86, 1.0, 0.5), theta)
    assert found.springback == pytest.approx(2.0 * theta, rel=1e-6)
    assert np.all(np.isinf(found.released_radius))
    assert found.elastic_energy == pytest.approx(found.energy, rel=1e-9)


def test_ideal_plastic_moment():
    """M / M_p = 1 - (kappa_y / kappa)^2 / 3, elastic core and all."""
    law = sheet_law(207_000, 200, 200, 0.0, 2.0)
    assert plastic_moment(law) == pytest.approx(2.0 / sqrt(3.0) * 200 * 2.0**2 / 4.0)
    times = np.array([1.0, 1.5, 3.0, 10.0, 100.0])
    expected = plastic_moment(law) * (1.0 - 1.0 / (3.0 * times**2))
    assert moment(law, times * yield_curvature(law)) == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize("angle", [150, 120, 95])
def test_rigid_plastic_sheet_folds_about_one_hinge(angle):
    """F = 2 R cos(theta), R times the straight leg's length = M_p.

    The hinge is an arc of t/2 about the sharp tip; the leg begins where it ends.
    """
    law = sheet_law(2e7, 200, 200, 0.0, 1.0)
    die = tools(40, 60, 2.0, 0.0)
    theta = radians(180 - angle) / 2
    found = pressed(law, die, np.array([theta]))
    leg = (die.shoulder_x_mm - (2.0 + 0.5) * sin(theta) - 0.5 * sin(theta)) / cos(theta)
    assert found.force[0] == pytest.approx(2.0 * plastic_moment(law) / leg * cos(theta), rel=2e-3)


@pytest.mark.parametrize("name", METALS)
def test_moment_is_the_stress_times_its_arm(name):
    """The closed moment and energy against the stress integrated through the thickness."""
    law = sheet_law(*METALS[name], 2.0)
    slices = 100_000
    y = (np.arange(slices) + 0.5) / slices  # from the middle to the face, 1 mm
    for curvature in yield_curvature(law) * np.array([0.5, 1.0, 2.0, 30.0, 300.0]):
        by_sum = 2.0 * float(np.mean(y * stress(law, curvature * y)))
        assert moment(law, np.array([curvature]))[0] == pytest.approx(by_sum, rel=2e-6)
    grid = np.linspace(1e-6, 0.5, 200_001)
    at = bent(law, grid)
    assert at.energy[-1] == pytest.approx(np.trapezoid(at.moment, grid), rel=1e-5)
    assert at.complementary[-1] == pytest.approx(np.trapezoid(grid, at.moment), rel=1e-4)


@pytest.mark.parametrize("x", [0.001, 0.05, 0.1, 0.25, 0.4, 0.499])
def test_gardiner_in_its_range(x):
    """With x = R Y / (E t), R the middle line's radius."""
    radius = x * 207_000 / 200
    law = sheet_law(207_000, 200 / PLANE_STRAIN, 1, 0.0, 1.0, poisson=0.0)
    expected = springback_ratio_gardiner(200, 207_000, 1.0, radius)
    assert ratio_released(law, radius) == pytest.approx(expected, abs=1e-12)


@pytest.mark.parametrize("name", METALS)
@pytest.mark.parametrize(("v", "tip"), [(16, 1.0), (12, 3.0), (24, 1.0), (80, 3.0)])
def test_work_of_the_punch_is_in_the_sheet(name, v, tip):
    """Without friction, within 1 % at every angle from 170 degrees down."""
    law = sheet_law(*METALS[name], 2.0)
    found = stroke(law, tools(v, 80, 2.4, tip), 60)
    bent_enough = found.loaded_angle_deg < 170
    share = found.work_n[bent_enough] / found.sheet_energy_n[bent_enough]
    assert share == pytest.approx(np.ones_like(share), abs=0.01)
    assert np.all(found.elastic_energy_n <= found.sheet_energy_n * (1.0 + 1e-9))


@pytest.mark.parametrize("name", METALS)
def test_friction_takes_work_that_is_not_in_the_sheet(name):
    law = sheet_law(*METALS[name], 2.0)
    bend = set_bend(law, tools(16, 80, 2.4, 1.0, friction=0.1), 90)
    assert 1.01 < bend.work_n / bend.sheet_energy_n < 1.08
