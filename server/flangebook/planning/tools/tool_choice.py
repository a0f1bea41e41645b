"""Which punch and die for each step: one set-up for all where it can be, else fewest changes.

Every pair of the crib is tried on every different bend of the part; a walk through the steps
then picks the cheapest run of pairs, where a change of tool costs more than a lesser fit but
far less than something that forbids the bend.

The pairs are those of ``candidates``: a walk that picks a pair which the bend model has not seen
yet is gone again with what the model says of it, until it picks only pairs that it has seen. What
a pair costs before that is the least it can, so no other walk is cheaper.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from flangebook.bending.checks import Level
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend
from flangebook.bending.prediction.bend_checks import flange_length
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.steps.operations import (
    WIDEST_V_OVER_T,
    Operation,
    bare_runs_mm,
    run_in_dimension_mm,
)
from flangebook.planning.tools.candidates import Candidates, Pair
from flangebook.planning.tools.fit import Equipment, Fit, Wanted
from flangebook.planning.tools.stand_ins import die_by_rule, punch_by_rule

CHANGE_COST = 30.0
FLANGE_COST: dict[Level, float] = {"ok": 0.0, "unknown": 0.0, "caution": 2.0, "stop": 1000.0}
TOUCH_COST = 400.0
WIDE_FOR_PITCH_COST = 20.0

_Bend = tuple[float, float | None, float | None]
"""Included angle [deg], radius asked for [mm], and the radius that it is one bump of [mm]."""


@dataclass(slots=True)
class ToolChoice:
    """Every pair of tools tried on every different bend of a part, each only once."""

    part: Part
    metal: Metal
    equipment: Equipment
    _of: dict[_Bend, Candidates] = field(default_factory=dict)

    @property
    def punches(self) -> tuple[Punch, ...]:
        """The crib's punches, or one by rule."""
        part = self.part
        sharpest = min((b.included_angle_deg for b in part.bends if b.kind == "bend"), default=30.0)
        return self.equipment.crib.punches or (punch_by_rule(part.thickness_mm, sharpest),)

    def dies(self, included_angle_deg: float) -> tuple[Die, ...]:
        """The crib's dies, or one by rule."""
        by_rule = die_by_rule(self.part.thickness_mm, included_angle_deg)
        return self.equipment.crib.dies or (by_rule,)

    def of(
        self,
        included_angle_deg: float,
        radius_mm: float | None,
        bump_of_mm: float | None = None,
    ) -> Candidates:
        """The pairs for a bend of this angle and radius, whatever its flanges."""
        key = round(included_angle_deg, 6), radius_mm, bump_of_mm
        if key not in self._of:
            part = self.part
            wanted = Wanted(
                self.metal,
                part.thickness_mm,
                part.bend_length_mm,
                included_angle_deg,
                radius_mm,
                None,
                part.dimension,
                part.grain,
                bump_of_mm,
            )
            dies = self.dies(included_angle_deg)
            self._of[key] = Candidates.of(wanted, dies, self.punches, self.equipment)
        return self._of[key]

    def for_step(self, step: Operation) -> Candidates:
        """The pairs for a step, flanges and tools asked for apart."""
        return self.of(step.included_angle_deg, step.radius_mm, self._bump_of_mm(step))

    def _bump_of_mm(self, step: Operation) -> float | None:
        return None if step.bumps is None else self.part.bends[step.bend - 1].inside_radius_mm

    def cost(self, step: Operation, pair: Pair) -> float:
        """What speaks against a pair in a step; infinite where other tools were asked for."""
        punch, die = self.part.asked_for(step.bend)
        if (punch and pair[0] != punch) or (die and pair[1] != die):
            return math.inf
        return self.for_step(step).costs[pair][0]

    def pairs(self, step: Operation) -> list[Pair]:
        """The pairs that may be taken for a step: all, or those with the tools asked for."""
        return [p for p in self.for_step(step).costs if math.isfinite(self.cost(step, p))]

    def largest_radius_mm(self) -> float:
        """The largest inside radius that a pair gives a square bend with nothing against it.

        Only worked out when the part asks for a radius.
        """
        t = self.part.thickness_mm
        widest = self.metal.radius_over_v.nominal * WIDEST_V_OVER_T * t
        if all(bend.inside_radius_mm is None for bend in self.part.bends):
            return widest
        radii = [
            one.bend.inside_radius_mm.high
            for _, one in self.of(90.0, None).costs.values()
            if one.bend is not None and not one.stops
        ]
        return max(radii, default=widest)


def here_of(one: Fit) -> FoldedBend:
    """How a bend comes out of these tools."""
    assert one.bend is not None
    ded = one.bend.bend_deduction_mm
    return FoldedBend(
        one.bend.inside_radius_mm.nominal, one.bend.bend_allowance_mm.nominal, ded.low, ded.high
    )


def shorter_run_mm(
    part: Part, folded: Sequence[FoldedBend], step: Operation, one: Fit
) -> float | None:
    """The shorter straight run beside a step's bend line when made in these tools [mm]."""
    if one.bend is None:
        return None
    return run_in_dimension_mm(min(bare_runs_mm(part, folded, step)), part, step, here_of(one))


def choose_tools(
    choice: ToolChoice,
    steps: Sequence[Operation],
    folded: Sequence[FoldedBend],
    penalties: Mapping[tuple[int, Pair], float],
) -> list[Fit | None]:
    """The fit of each step, None for a step that needs no die and punch.

    folded: how the bends come out, for the runs beside the bend lines. penalties: what speaks
    against a pair in a step, by step number.
    """
    bent = [step for step in steps if not step.flattens]
    if not bent or not all(choice.pairs(step) for step in bent):
        return [None for _ in steps]
    while True:
        walk = _cheapest_walk([_costs(choice, step, folded, penalties) for step in bent])
        looks = [choice.for_step(s).look(pair) for s, pair in zip(bent, walk, strict=True)]
        if not any(looks):
            break
    pairs = iter(walk)
    return [None if s.flattens else choice.for_step(s).fit(next(pairs)) for s in steps]


def _costs(
    choice: ToolChoice,
    step: Operation,
    folded: Sequence[FoldedBend],
    penalties: Mapping[tuple[int, Pair], float],
) -> dict[Pair, float]:
    costs = {}
    bare = min(bare_runs_mm(choice.part, folded, step))
    candidates = choice.for_step(step)
    for pair, (_, one) in candidates.costs.items():
        total = choice.cost(step, pair) + penalties.get((step.number, pair), 0.0)
        if step.bumps is not None and one.die.v_opening_mm > 2.0 * step.bumps.pitch_mm:
            total += WIDE_FOR_PITCH_COST
        if one.bend is not None and candidates.seen(pair):
            run = run_in_dimension_mm(bare, choice.part, step, here_of(one))
            total += FLANGE_COST[flange_length(run, one.bend.min_flange_mm).level]
        costs[pair] = total
    return costs


def _cheapest_walk(table: Sequence[Mapping[Pair, float]]) -> list[Pair]:
    """The run of pairs, one a step, of least cost with CHANGE_COST for every tool changed."""
    best: dict[Pair, float] = dict(table[0])
    came_from: list[dict[Pair, Pair]] = []
    for costs in table[1:]:
        back: dict[Pair, Pair] = {}
        after: dict[Pair, float] = {}
        by_punch, by_die = _best_by(best, 0), _best_by(best, 1)
        overall = min(best, key=lambda p: (best[p], p))
        for pair, cost in costs.items():
            ways = (
                (best[pair], pair),
                (best[by_punch[pair[0]]] + CHANGE_COST, by_punch[pair[0]]),
                (best[by_die[pair[1]]] + CHANGE_COST, by_die[pair[1]]),
                (best[overall] + 2.0 * CHANGE_COST, overall),
            )
            least, back[pair] = min(ways)
            after[pair] = least + cost
        came_from.append(back)
        best = after
    last = min(best, key=lambda p: (best[p], p))
    walk = [last]
    for back in reversed(came_from):
        walk.append(back[walk[-1]])
    return walk[::-1]


def _best_by(best: Mapping[Pair, float], which: int) -> dict[str, Pair]:
    """The cheapest pair so far of each punch (0) or die (1)."""
    found: dict[str, Pair] = {}
    for pair, cost in best.items():
        held = found.get(pair[which])
        if held is None or (cost, pair) < (best[held], held):
            found[pair[which]] = pair
    return found
