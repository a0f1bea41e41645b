"""Compiles what bend model and search are made of, or loads it, before anybody waits for it.

    python -m flangebook.planning.warm_up

Two at a time do no harm: both compile, and what is kept is replaced whole.
"""

from __future__ import annotations

import math

import numpy as np

from flangebook.bending.clearance.approach import approaches
from flangebook.bending.clearance.problem import BED, DIE, LEFT, PUNCH, RAM, RIGHT, Problem
from flangebook.bending.clearance.rings import apart
from flangebook.bending.clearance.taking_out import Step, step_passes, way_out
from flangebook.bending.compiled import forget_old
from flangebook.bending.motion.tolerance import expected_errors_mm
from flangebook.bending.ordering.draw_back import reach_through_bend
from flangebook.bending.ordering.gauge_rule import COLUMNS, gauge_places
from flangebook.bending.ordering.search import Known, Move, codes_of, search
from flangebook.bending.sheet_model.hardening_from_strength import n_from_strengths
from flangebook.bending.sheet_model.moment_curvature import sheet_law
from flangebook.bending.sheet_model.stroke import set_bend
from flangebook.bending.sheet_model.tools import tools


def warm_up() -> None:
    """Have every compiled function ready in this process, and on disk for the next."""
    problem = smallest_problem()
    known = Known(problem)
    search(problem, banned=[(0, Move(0, LEFT, 0))], known=known)
    codes_of(problem, 1, known)
    gauge_places(known.problem, 0, RIGHT, 0, 1, np.empty((4, COLUMNS)))
    reach_through_bend(known.problem, 0, RIGHT, 0, 1, -5.0, 5.0)
    approaches(known.problem, 1, 1, LEFT, 0)
    step = Step(made=1, bend=1, end=LEFT, pair=0)
    way_out(known.problem, step, passes=step_passes(known.problem, step, known.memo.sweeps),
            can_slide=True)  # fmt: skip
    apart(np.zeros((4, 2)), np.ones((4, 2)))
    n_from_strengths(175.0, 300.0, 209_000.0)
    set_bend(sheet_law(207_000.0, 200.0, 530.0, 0.22, 2.0), tools(16.0, 86.0, 2.4, 1.0), 90.0)
    expected_errors_mm(known.problem, [Move(0, LEFT, 0), Move(1, LEFT, 0)])


def smallest_problem() -> Problem:
    """A Z of two bends, a punch, a ram, a die, a bed: small, but an order problem like any."""
    boxes = [
        (PUNCH, [(0.0, 0.0), (8.0, 20.0), (8.0, 100.0), (-8.0, 100.0), (-8.0, 20.0)]),
        (RAM, [(-40.0, 100.0), (40.0, 100.0), (40.0, 300.0), (-40.0, 300.0)]),
        (DIE, [(-20.0, -60.0), (20.0, -60.0), (20.0, 0.0), (8.0, 0.0), (0.0, -7.0), (-8.0, 0.0),
               (-20.0, 0.0)]),
        (BED, [(-50.0, -260.0), (50.0, -260.0), (50.0, -60.0), (-50.0, -60.0)]),
    ]  # fmt: skip
    edges = [(*p, *q) for _, ring in boxes for p, q in zip(ring, ring[1:] + ring[:1], strict=True)]
    of = [tool for tool, ring in boxes for _ in ring]
    upper = sum(tool in (PUNCH, RAM) for tool in of)
    quarter = math.pi / 2.0
    stroke = (quarter / 2.0, 1.5, 3.0, 5.0)
    return Problem(
        thickness=2.0,
        length=120.0,
        at=np.array([40.0, 80.0]),
        angle=np.array([quarter, -quarter]),
        radius=np.full(2, 1.5),
        allowance=np.full(2, 3.0),
        strokes=np.full((2, 1, 4), stroke),
        least_run=np.full((2, 1), 12.0),
        allowed=np.ones((2, 1), np.bool_),
        change=np.zeros((1, 1), np.int64),
        edges=np.array(edges),
        edge_of=np.array(of),
        upper=np.array([[0, upper]]),
        lower=np.array([[upper, len(edges)]]),
        die=np.array([[8.0, 1.0, 20.0]]),
        die_height=np.array([60.0]),
        lift=np.array([100.0]),
        margin=2.0,
        can_slide=True,
        finger=np.array([5.0, 600.0, -20.0, 200.0, 10.0, 60.0, 50.0]),
        gauge_variance=0.01,
        bend_variance=np.full(2, 0.01),
        critical=np.zeros(3, np.bool_),
        before=np.zeros(2, np.int64),
        no_turn_over=False,
        no_turn_end=False,
        no_change=False,
    )


if __name__ == "__main__":
    warm_up()
    forget_old()
