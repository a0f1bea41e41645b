"""A finished flange that hangs down where the die is solid: its fold begins inside the die.

The sheet between bend line and flange lies on the die by right and is not looked at against it.
What hangs behind has no edge of the die to cross on its way in: where rounding puts its first
point a hair below the top face, it is inside from the first moment on.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from bending_parts import DIE, HOLDER, PRESS, PUNCH
from bending_parts import part as section
from order_parts import problem_of
from plan_reading import codes
from planning_shop import DOWN, METALS, SHARP, UP, part
from planning_shop import HOLDER as SHOP_HOLDER
from planning_shop import PRESS as SHOP_PRESS
from planning_shop import die as die_of
from test_swept_oracle import Case, Step, compiled, worst

from flangebook.bending.clearance import problem as bits
from flangebook.bending.clearance.problem import LEFT, RIGHT
from flangebook.bending.clearance.sweeps import new_sweeps
from flangebook.bending.ordering.search import as_arrays
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.plan import plan

THICKNESSES = (0.7, 0.8, 0.9, 1.2, 1.7)
"""Some of them put the fold's first point on the top face, some a rounding above or below it."""
SLIM = replace(SHARP, body_width_mm=8.0)


@pytest.mark.parametrize("web_mm", [18.0, 22.0])
@pytest.mark.parametrize("thickness_mm", THICKNESSES)
def test_no_plan_has_it(thickness_mm: float, web_mm: float) -> None:
    """The die is 20 mm wide to each side, the punch so slim that only the die is in the way."""
    zed = part((25.0, web_mm, 60.0), DOWN, UP, thickness_mm=thickness_mm)
    answer = plan(zed, SHOP_PRESS, Crib((SLIM,), (die_of(16.0),), (SHOP_HOLDER,)), METALS)
    assert not answer["order"]["proven"]
    assert {"no-order", "too-near-die"} <= codes(answer, "stop")
    assert "die" in answer["order"]["blocked"][0]["hits"]
    assert not answer["steps"][-1]["clearance"]["clear"]


@pytest.mark.parametrize("end", [LEFT, RIGHT])
@pytest.mark.parametrize("thickness_mm", THICKNESSES)
def test_the_step_is_refused_as_the_oracle_refuses_it(thickness_mm: float, end: int) -> None:
    zed = section((25.0, 20.0, 60.0), (DOWN, UP), thickness_mm)
    none = as_arrays(problem_of(zed, (PUNCH,)))
    problem = none._replace(least_run=none.least_run * 0.0, margin=0.1)
    case, step = Case(zed, PRESS, HOLDER, PUNCH, DIE, problem), Step(1, 1, end, 2)
    assert compiled(case, step, new_sweeps(problem))[0] == bits.INTO_DIE
    slacks = worst(case.oracle(), step)
    assert {tool for tool, slack in slacks.items() if slack < 0.0} == {"die"}
