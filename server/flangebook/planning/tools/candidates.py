"""Every pair of punch and die for one bend, and the best of them on the bend model's figures.

One bend, a step of a plan, a cell of the wall chart and a side of a box all choose here, so the
same bend gets the same tools everywhere.

The model solves once for each die and punch tip, which takes far longer than the handbook's
relations. So each pair starts with what certainly speaks against it whatever the model says (see
``ranking.least_merit``). The cheapest pair is then predicted by the model until the cheapest is
one that the model has seen: no other can be better, and no decision rests on the handbook.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from flangebook.bending.estimate import Estimate
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.tools.fit import Equipment, Fit, Wanted, fit
from flangebook.planning.tools.ranking import Merit, least_merit, merit

Pair = tuple[str, str]
"""Codes of punch and die."""
Keep = Callable[[Fit], bool]
Options = list[tuple[Merit, Fit]]
"""Merit and fit of each die's best tools, best first."""


NO_SPRINGBACK = Estimate(0.0, 0.0, 0.0, "model", "no sheet bends further when it is let go")
HARDLY_TOUCHED = 1.6
"""Inside radius over tip radius from which the tip no longer counts: the springback of the starter
metals is then the same for all sharper tips within SLACK_DEG (own runs of the model)."""
SLACK_DEG = 0.1
LEARNED_DEG = 5.0
"""More than test bends change the springback between punches in one die [deg]."""


@dataclass(slots=True)
class Candidates:
    """The pairs of these punches and dies for one bend, each predicted only once.

    costs: of each pair, what speaks against it and its fit; both by the handbook, and the cost
    the least it can be, until the model has seen the pair.
    """

    wanted: Wanted
    equipment: Equipment
    costs: dict[Pair, tuple[float, Fit]] = field(default_factory=dict)
    _merits: dict[Pair, Merit] = field(default_factory=dict)

    @classmethod
    def of(
        cls, wanted: Wanted, dies: Sequence[Die], punches: Sequence[Punch], equipment: Equipment
    ) -> Candidates:
        """Every pair of these tools."""
        made = cls(wanted, equipment)
        for die in dies:
            for punch in punches:
                one = fit(wanted, die, punch, equipment, handbook_only=True)
                made.costs[punch.code, die.code] = (made._least(one, NO_SPRINGBACK), one)
        return made

    def _least(self, one: Fit, springback: Estimate) -> float:
        """The least a pair can cost when the bend springs back so much or more."""
        learned = self.equipment.evidence is not None and bool(self.equipment.evidence.results)
        flattest = self.wanted.included_angle_deg + (LEARNED_DEG if learned else SLACK_DEG)
        return least_merit(one, flattest - springback.nominal, flattest - springback.high).cost

    def look(self, pair: Pair) -> bool:
        """Have a pair predicted by the bend model; False where it already was."""
        if pair in self._merits:
            return False
        _, one = self.costs[pair]
        again = fit(one.wanted, one.die, one.punch, self.equipment)
        self._merits[pair] = merit(again)
        self.costs[pair] = (self._merits[pair].cost, again)
        self._learn(again)
        return True

    def _learn(self, seen: Fit) -> None:
        """What a bend says of the same die with other punches: under a rounder tip the sheet
        springs back no less, and one that it hardly touches makes no difference."""
        if seen.bend is None:
            return
        tip, radius = seen.punch.tip_radius_mm, seen.bend.inside_radius_mm.nominal
        for pair, (cost, one) in self.costs.items():
            if pair in self._merits or one.die.code != seen.die.code:
                continue
            if one.punch.tip_radius_mm >= tip or radius >= HARDLY_TOUCHED * tip:
                least = self._least(one, seen.bend.springback_deg)
                self.costs[pair] = (max(cost, least), one)

    def seen(self, pair: Pair) -> bool:
        """Whether the bend model has predicted a pair."""
        return pair in self._merits

    def fit(self, pair: Pair) -> Fit:
        """A pair as the model predicts it."""
        self.look(pair)
        return self.costs[pair][1]

    def merit(self, pair: Pair) -> Merit:
        """A pair's merit on the model's figures."""
        self.look(pair)
        return self._merits[pair]

    def best(self, keep: Keep | None = None) -> Pair | None:
        """The pair with least against it on the model's figures; None when there is none.

        keep: only pairs that it says yes to, which looks at their tools and not at the prediction.
        """
        pairs = [p for p, (_, one) in self.costs.items() if keep is None or keep(one)]
        while pairs:
            pair = min(pairs, key=lambda p: (self.costs[p][0], p))
            if not self.look(pair):
                return pair
        return None

    def best_in(self, die: Die) -> Pair | None:
        """The pair with least against it in one die."""
        return self.best(lambda one: one.die.code == die.code)

    def options(self, dies: Sequence[Die]) -> Options:
        """The best pair of each die with its merit, best first."""
        found = [pair for die in dies if (pair := self.best_in(die)) is not None]
        ordered = sorted(found, key=lambda p: (self.costs[p][0], p))
        return [(self.merit(pair), self.fit(pair)) for pair in ordered]
