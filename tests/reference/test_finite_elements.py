"""The bend model against an independent witness: finite elements, CalculiX ccx 2.20.

2D plane strain, large deformation, contact, the same E, hardening curve and tools. Cases, decks
and how they are read: tests/reference/finite_elements; results kept in results.json. Metals:
low-carbon steel E 207000, Y 200, K 530, n 0.22; 304 E 193000, Y 290, K 1350, n 0.45; 5052-H32
E 70000, Y 193, K 365, n 0.13; HSLA E 207000, Y 380, K 720, n 0.13 (nu 0.3); half-hard brass
E 103000, Y 303, K 621, n 0.135; 5052-O E 70300, Y 90, K 348, n 0.24 (nu 0.33); MPa, 2 mm thick.

A stroke is pressed to near 120 degrees, released, pressed to near 90, released. Goals: peak force
3 %, springback 0.15 degrees, released inside radius 4 %, depth 0.03 mm. Depth is compared at
the loaded angle that the solver has at that depth, springback at the released angle. Model less
solver (V 16: rd 2.4; V 24: rd 3; V 12: rd 2; r1, r3 punch tip 1 and 3 mm):

    case                    released  peak force  springback  radius  depth
    ----------------------  --------  ----------  ----------  ------  ------
    low carbon V16 r1         119.3     -0.4 %      -0.02     -0.1 %  -0.005
    low carbon V16 r1          89.7                 -0.01     -1.0 %  +0.006
    304 V16 r1                119.8     +0.3 %      -0.03     -1.0 %   0.000
    304 V16 r1                 90.2                 -0.03     -0.2 %  -0.007
    5052-H32 V16 r1           118.8     -1.2 %      -0.01     -1.7 %  -0.002
    5052-H32 V16 r1            90.0                 +0.05     +3.3 %  -0.038  beyond the goal
    HSLA V16 r1               118.7     -1.2 %      -0.01     -2.5 %  +0.003
    HSLA V16 r1                90.1     -1.2 %      +0.04     +1.7 %  -0.023
    low carbon V12 r3         118.9     -2.8 %      -0.03     -1.9 %  +0.011
    low carbon V12 r3          89.3                 -0.05     -2.6 %  +0.007
    5052-H32 V12 r3           119.5     +1.0 %      -0.05     -1.4 %  -0.008
    5052-H32 V12 r3            90.7     -1.4 %      -0.12     +1.8 %  -0.013
    HSLA V12 r3                90.7     -1.4 %      -0.08     +2.3 %  -0.012
    304 V12 r3                 90.1     -1.8 %      -0.07     -0.2 %  -0.001
    low carbon V24 r3         119.1     -0.2 %       0.00     -2.2 %  +0.016
    304 V24 r3                119.6     +0.3 %      +0.01     -0.7 %  +0.002
    304 V24 r3                 90.0     +0.3 %      +0.01     -1.3 %  +0.024
    HSLA V24 r3               119.5     -0.6 %      +0.02     -0.5 %  -0.002
    low carbon V16 r1 mu 0.1   90.1     +0.2 %      -0.01     -1.5 %  +0.010
    304 V16 r1 mu 0.1          90.3     +0.7 %      -0.02     -0.1 %  -0.008
    low carbon V16 r1, fine   119.2     -0.1 %      -0.02     -0.6 %  -0.001
    brass V16 r1              120.1     -1.1 %      -0.02     +0.3 %  -0.013
    brass V16 r1               90.2     -1.1 %      +0.07     +3.1 %  -0.036  beyond the goal
    5052-O V16 r1             120.2     -0.2 %      -0.03     +0.8 %  -0.012
    5052-O V16 r1              90.0     -0.2 %       0.00     +1.5 %  -0.025

Force and springback have nothing fitted. Depth and radius have six constants fitted to these same
strokes (``inner_face``), so those columns say how well they fit; a fit that leaves a case out
misses that case's depth by 0.029 mm at most (finite_elements/fit_inner_face.py). Before V12 r3
was among them, its bends to 90 were predicted to 0.03 mm and 10 % in radius: that is what to expect
of a blunt tip in a narrow die that is unlike all of these. The cases with friction, brass and
5052-O were not fitted to.

Where a goal is missed the case stands in ``BEYOND`` with what is reached instead: 5052-H32 and
brass under the sharp tip, past 100 degrees, where the thickness under the tip suddenly gives way in
the solver's mesh. The force of 5052-H32 is 5 % off there too, after the peak.
"""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from flangebook.bending.sheet_model.moment_curvature import sheet_law
from flangebook.bending.sheet_model.stroke import set_bend, solved, stroke
from flangebook.bending.sheet_model.tools import tools

DATA = Path(__file__).parent / "finite_elements" / "results.json"
CASES = {case["name"]: case for case in json.loads(DATA.read_text("utf-8"))["cases"]}
BENDS = [(name, i) for name, case in CASES.items() for i in range(len(case["bends"]))]
GOAL_FORCE, GOAL_SPRINGBACK_DEG, GOAL_RADIUS, GOAL_DEPTH_MM = 0.03, 0.15, 0.04, 0.03
# (quantity, case): the bound that is reached instead of the goal.
BEYOND = {("depth", "aluminium_v16_r1"): 0.04, ("depth", "brass_v16_r1_90"): 0.04}


def bound(quantity, name, goal):
    return BEYOND.get((quantity, name), goal)


def model(case):
    law = sheet_law(
        case["youngs_modulus_mpa"], case["yield_mpa"], case["hardening_k_mpa"],
        case["hardening_n"], case["thickness_mm"], case["poisson"],
    )  # fmt: skip
    tool = tools(
        case["v_opening_mm"], case["die_angle_deg"], case["shoulder_radius_mm"],
        case["punch_radius_mm"], case["friction"],
    )  # fmt: skip
    return law, tool


def test_enough_cases():
    """16 bends: six metals, V/t 6 to 12, two punch tips, two angles."""
    assert len(BENDS) >= 16
    assert len({case["metal"] for case in CASES.values()}) == 6
    assert {case["punch_radius_mm"] for case in CASES.values()} == {1, 3}
    assert {case["v_opening_mm"] / case["thickness_mm"] for case in CASES.values()} >= {6, 8, 12}
    angles = [CASES[name]["bends"][i]["released_angle_deg"] for name, i in BENDS]
    assert sum(abs(a - 120) < 2 for a in angles) >= 4
    assert sum(abs(a - 90) < 2 for a in angles) >= 4


@pytest.mark.parametrize("name", CASES)
def test_peak_force(name):
    """The greatest force of the stroke as far as the solver went."""
    case = CASES[name]
    law, tool = model(case)
    theta = np.radians(180.0 - np.array(case["curve_loaded_angle_deg"])) / 2.0
    peak = solved(law, tool, theta[theta > 0.02]).force.max()
    goal = bound("force", name, GOAL_FORCE)
    assert peak == pytest.approx(case["peak_force_n_per_mm"], rel=goal)


@pytest.mark.parametrize("name", CASES)
def test_force_over_the_stroke(name):
    """At every loaded angle from 170 degrees down, within 5 %."""
    case = CASES[name]
    law, tool = model(case)
    angle = np.array(case["curve_loaded_angle_deg"])
    used = angle < 170
    found = solved(law, tool, np.radians(180.0 - angle[used]) / 2.0)
    printed = np.array(case["curve_force_n_per_mm"])[used]
    assert np.abs(found.force / printed - 1.0).max() < bound("stroke", name, 0.05)


@pytest.mark.parametrize("name", CASES)
def test_depth_over_the_stroke(name):
    """At every loaded angle from 170 degrees down, within the goal for depth."""
    case = CASES[name]
    law, tool = model(case)
    angle = np.array(case["curve_loaded_angle_deg"])
    used = angle < 170
    found = solved(law, tool, np.radians(180.0 - angle[used]) / 2.0)
    off = found.depth - np.array(case["curve_depth_mm"])[used]
    assert np.abs(off).max() < bound("depth", name, GOAL_DEPTH_MM)


@pytest.mark.parametrize(("name", "which"), BENDS)
def test_springback(name, which):
    bend = CASES[name]["bends"][which]
    found = set_bend(*model(CASES[name]), bend["released_angle_deg"])
    goal = bound("springback", name, GOAL_SPRINGBACK_DEG)
    assert found.springback_deg == pytest.approx(bend["springback_deg"], abs=goal)


@pytest.mark.parametrize(("name", "which"), BENDS)
def test_released_inside_radius(name, which):
    bend = CASES[name]["bends"][which]
    found = set_bend(*model(CASES[name]), bend["released_angle_deg"])
    goal = bound("radius", name, GOAL_RADIUS)
    assert found.released_radius_mm == pytest.approx(bend["released_inner_radius_mm"], rel=goal)


def test_what_is_beyond_the_goals_is_not_more_than_said():
    """The cases really are beyond the goal: a bound that is not needed goes."""
    assert {quantity for quantity, _ in BEYOND} == {"depth"}
    for _, name in BEYOND:
        case = CASES[name]
        law, tool = model(case)
        angle = np.array(case["curve_loaded_angle_deg"])
        found = solved(law, tool, np.radians(180.0 - angle) / 2.0)
        off = np.abs(found.depth - np.array(case["curve_depth_mm"]))
        assert off.max() > GOAL_DEPTH_MM
        assert off[angle > 92].max() < GOAL_DEPTH_MM


def test_mesh_convergence():
    """The same bend to 120 degrees on 1.5 times as many elements each way."""
    coarse, fine = CASES["low_carbon_v16_r1"], CASES["low_carbon_v16_r1_fine"]
    a, b = coarse["bends"][0], fine["bends"][0]
    assert fine["peak_force_n_per_mm"] == pytest.approx(coarse["peak_force_n_per_mm"], rel=0.01)
    assert b["springback_deg"] == pytest.approx(a["springback_deg"], abs=0.05)
    assert b["loaded_angle_deg"] == pytest.approx(a["loaded_angle_deg"], abs=0.2)
    assert b["released_inner_radius_mm"] == pytest.approx(a["released_inner_radius_mm"], rel=0.02)


def test_stroke_reaches_as_far_as_the_solver_went():
    for case in CASES.values():
        found = stroke(*model(case))
        assert found.loaded_angle_deg[-1] < min(case["curve_loaded_angle_deg"])
