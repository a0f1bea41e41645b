"""The compiled sweep against a dense look with a general geometry library (shapely).

None may be accepted that comes too near at any moment looked at; one that is refused must be
within 0.05 mm of too near. ``FLANGEBOOK_SWEEPS`` asks for another number of random steps.
"""

from __future__ import annotations

import os
import random

import pytest
from bending_parts import DIE, HOLDER, PRESS, folded
from order_parts import NARROW, PUNCHES, problem_of, random_part
from swept_oracle import least_slack_mm, step_of

from flangebook.bending.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.clearance.wings import new_sweeps, wing_code
from flangebook.bending.ordering.problem import HITS_SHEET, LEFT, RIGHT, wing_set
from flangebook.bending.ordering.search import as_arrays
from flangebook.bending.section import strip_of

STEPS = int(os.environ.get("FLANGEBOOK_SWEEPS", "600"))
NEAR_MM = 0.05
BATCHES = 6


@pytest.mark.parametrize("batch", range(BATCHES))
def test_random_steps_as_a_dense_look_sees_them(batch: int) -> None:
    rnd = random.Random(4100 + batch)
    refused = accepted = 0
    for _ in range(STEPS // BATCHES):
        code, slack = _one(rnd)
        if code & HITS_SHEET:
            continue  # judged in its own test
        if code:
            refused += 1
            assert slack < NEAR_MM, f"refused though {slack:.3f} mm clear"
        else:
            accepted += 1
            assert slack > -1e-6, f"accepted though {-slack:.4f} mm too near"
    assert refused > STEPS // BATCHES // 10
    assert accepted > STEPS // BATCHES // 10


def _one(rnd: random.Random) -> tuple[int, float]:
    """A random step of a random part: the sweep's bits and the oracle's slack."""
    part = random_part(rnd, rnd.randint(1, 6))
    punch = rnd.choice(PUNCHES)
    holder = rnd.choice((HOLDER, NARROW, None))
    margin = rnd.choice((0.5, 2.0, 4.0))
    problem = as_arrays(problem_of(part, (punch,), holder=holder, margin_mm=margin))
    problem = problem._replace(least_run=problem.least_run * 0.0)
    count = len(part.bends)
    bend = rnd.randrange(count)
    made = rnd.randrange(1 << count) & ~(1 << bend)
    end = rnd.choice((LEFT, RIGHT))
    sweeps = new_sweeps(problem)
    code = 0
    for side in (LEFT, RIGHT):
        wing = wing_set(made, bend, side, count)
        code |= wing_code(problem, bend, side, side == end, 0, wing, sweeps)
    strip = strip_of(part, folded(part), [b + 1 for b in range(count) if made >> b & 1])
    shoulder = shoulder_centre_x_mm(DIE.v_opening_mm, DIE.angle_deg, DIE.shoulder_radius_mm)
    step = step_of(
        strip, bend + 1, part.bends[bend].direction, "left" if end == LEFT else "right",
        tuple(problem.strokes[bend, 0]), PRESS, holder, punch, DIE, shoulder, margin,
    )  # fmt: skip
    return code, least_slack_mm(step)
