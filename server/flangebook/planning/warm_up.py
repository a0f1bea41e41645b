"""Compiles what bend model and search are made of, or loads it, before anybody waits for it.

    python -m flangebook.planning.warm_up

Two at a time do no harm: both compile, and what is kept is replaced whole.
"""

from __future__ import annotations

import numpy as np

from flangebook.bending.clearance.approach import approaches
from flangebook.bending.clearance.problem import LEFT, RIGHT
from flangebook.bending.clearance.rings import apart
from flangebook.bending.clearance.taking_out import Step, step_passes, way_out
from flangebook.bending.compiled import forget_old
from flangebook.bending.motion.tolerance import expected_errors_mm
from flangebook.bending.ordering.gauge_rule import COLUMNS, gauge_places
from flangebook.bending.ordering.retract import reach_through_bend
from flangebook.bending.ordering.search import Known, Move, codes_of, search
from flangebook.bending.samples import smallest_problem
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


if __name__ == "__main__":
    warm_up()
    forget_old()
