"""What is done at the press, step by step: bends, hems in two steps, large radii in bumps."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.errors import InputError
from flangebook.bending.handbook.allowance import allowance_from_k, k_factor_band
from flangebook.bending.handbook.hems import hem, pre_bend_included_deg
from flangebook.bending.handbook.inside_radius import SHARP_TIP_OVER_T
from flangebook.bending.handbook.springback import springback
from flangebook.bending.handbook.v_opening import assumed_die, nearest_nominal_v_mm, preferred_v_mm
from flangebook.bending.part.bump_bends import LEAST_BUMPS, Bumps, bumps_for
from flangebook.bending.part.bump_bends import bumps_of as stepped_in
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.part import Bend, Direction, Part
from flangebook.bending.part.section import FoldedBend, setback_mm, strip_of
from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.tools.fit import LEAST_V_OVER_T, USUAL_V_OVER_T
from flangebook.planning.tools.stand_ins import ACUTE_NOSE_DEG

Kind = Literal["bend", "hem pre-bend", "hem flatten", "step bend"]

STEP_OVER_NATURAL = 1.3  # a radius this much larger than the tools give is stepped
WIDEST_V_OVER_T = 12.0
TO_SPARE_DEG = 0.5  # between what the tools allow and what is asked of them


@dataclass(frozen=True, slots=True)
class Operation:
    """One step. number: from 1. made: bends finished before it. included_angle_deg: what this
    step leaves, of one bump for a stepped radius. bumps: of a stepped radius, else None."""

    number: int
    bend: int
    kind: Kind
    direction: Direction
    included_angle_deg: float
    made: frozenset[int]
    radius_mm: float | None = None
    bumps: Bumps | None = None

    @property
    def flattens(self) -> bool:
        """Whether this step closes a hem; it needs other tools than a die and a punch."""
        return self.kind == "hem flatten"


def folded_by_rule(part: Part, metal: Metal) -> tuple[FoldedBend, ...]:
    """How the bends come out of the nominal V nearest to 8 t, before any tool is known.

    The radius asked for where there is one, else the metal's share of that opening.
    """
    t = part.thickness_mm
    natural = metal.radius_over_v.nominal * _rule_v_mm(t)
    return tuple(
        hem(bend, t).folded
        if bend.kind != "bend"
        else folded_to(part, bend, metal, natural if not bend.inside_radius_mm
                       else bend.inside_radius_mm)
        for bend in part.bends
    )  # fmt: skip


def _rule_v_mm(thickness_mm: float) -> float:
    nominal, wanted = nearest_nominal_v_mm(thickness_mm), preferred_v_mm(thickness_mm)
    return nominal if 0.7 < nominal / wanted < 1.4 else wanted


def folded_to(part: Part, bend: Bend, metal: Metal, radius_mm: float) -> FoldedBend:
    """A bend that comes out at this radius, with the band the K-factor's band gives."""
    t = part.thickness_mm
    k = k_factor_band(radius_mm, t, metal.gauge_family)
    low, nominal, high = (
        allowance_from_k(bend.included_angle_deg, radius_mm, t, one)
        for one in (k.low, k.nominal, k.high)
    )
    twice = 2.0 * setback_mm(bend, radius_mm, t, part.dimension)
    return FoldedBend(radius_mm, nominal, twice - high, twice - low)


def operations(
    part: Part,
    metal: Metal,
    crib: Crib,
    sequence: Sequence[int],
    largest_radius_mm: float,
) -> tuple[Operation, ...]:
    """The steps of the order: a hem takes two, a radius too large for the tools is stepped.

    sequence: bend numbers from 1. largest_radius_mm: what the shop's tools can give in one
    bend [mm].
    """
    steps: list[Operation] = []
    made: set[int] = set()
    for number in sequence:
        bend = part.bends[number - 1]
        for kind, angle, bumps in _kinds(part, bend, metal, crib, largest_radius_mm):
            asked = bend.inside_radius_mm if kind == "bend" else None
            done = frozenset(made)
            step = Operation(
                len(steps) + 1, number, kind, bend.direction, angle, done, asked, bumps
            )
            steps.append(step)
        made.add(number)
    return tuple(steps)


def _kinds(
    part: Part, bend: Bend, metal: Metal, crib: Crib, largest_radius_mm: float
) -> list[tuple[Kind, float, Bumps | None]]:
    if bend.kind != "bend":
        acute = acute_angle_deg(metal, part.thickness_mm, crib)
        return [("hem pre-bend", acute, None), ("hem flatten", 0.0, None)]
    asked = bend.inside_radius_mm
    if asked is not None and asked > STEP_OVER_NATURAL * largest_radius_mm:
        bumps = bumps_of(part, bend, metal, crib)
        if bumps is not None:
            return [("step bend", 180.0 - bumps.angle_each_deg, bumps)]
    return [("bend", bend.included_angle_deg, None)]


def bumps_of(part: Part, bend: Bend, metal: Metal, crib: Crib) -> Bumps | None:
    """How the radius asked for is made in bumps; None where it cannot be.

    As many as keep the facets small, but no more than leave a pitch of half the V of a die that
    the crib has: bumps that lie in the next one's V change its depth.
    """
    radius = bend.inside_radius_mm
    if not radius:
        return None
    angle, t = 180.0 - bend.included_angle_deg, part.thickness_mm
    allowance = folded_to(part, bend, metal, radius).allowance_mm
    try:
        wanted = bumps_for(angle, radius, t, allowance)
        count = _bumps_that_fit(wanted.count, allowance, t, crib)
        return wanted if count == wanted.count else stepped_in(count, angle, radius, t, allowance)
    except InputError:
        return None


def _bumps_that_fit(count: int, allowance_mm: float, thickness_mm: float, crib: Crib) -> int:
    """The most bumps, up to ``count``, that a die of the crib takes; a V of the usual width first.

    ``count`` where no die takes even two.
    """
    for over_t in (USUAL_V_OVER_T[0], LEAST_V_OVER_T):
        widths = [d.v_opening_mm for d in crib.dies if d.v_opening_mm >= over_t * thickness_mm]
        fits = math.floor(2.0 * allowance_mm / min(widths)) if widths else 0
        if fits >= LEAST_BUMPS:
            return min(count, fits)
    return count


def acute_angle_deg(metal: Metal, thickness_mm: float, crib: Crib) -> float:
    """Included angle of a hem's first bend: as sharp as the sharpest tools of the crib leave."""
    die = min((d.angle_deg for d in crib.dies), default=ACUTE_NOSE_DEG)
    punch = min((p.angle_deg for p in crib.punches), default=ACUTE_NOSE_DEG)
    v = WIDEST_V_OVER_T * thickness_mm
    radius = metal.radius_over_v.nominal * v
    try:
        opens = springback(metal, thickness_mm, v, radius, max(die, punch)).high
    except InputError:
        opens = 2.0 * metal.springback_at_90_deg.high
    opens = max(opens, _opens_by_model(metal, thickness_mm, v, max(die, punch) + opens, crib))
    return min(pre_bend_included_deg(punch, die, opens + TO_SPARE_DEG), 150.0)


def _opens_by_model(
    metal: Metal, thickness_mm: float, v_mm: float, angle_deg: float, crib: Crib
) -> float:
    """The high end of the springback [deg] in a V so wide; 0 where none is predicted."""
    sharpest = min(crib.punches, key=lambda p: p.angle_deg, default=None)
    tip = sharpest.tip_radius_mm if sharpest is not None else SHARP_TIP_OVER_T * thickness_mm
    wide = assumed_die(v_mm, angle_deg)
    try:
        case = BendCase(metal, thickness_mm, 1.0, angle_deg, wide, tip)
        return air_bend(case).springback_deg.high
    except InputError:
        return 0.0


def bare_runs_mm(part: Part, folded: Sequence[FoldedBend], step: Operation) -> tuple[float, float]:
    """From a step's bend line to the next finished bend or the edge, left and right [mm].

    A run goes over bends not made yet. Of a stepped radius the outermost bumps count.
    """
    strip = strip_of(part, folded, step.made)
    at = strip.folds[step.bend - 1].at_mm
    made = [f for f in strip.folds if f.bend_angle_deg]
    left = max((f.at_mm + f.allowance_mm / 2.0 for f in made if f.at_mm < at), default=0.0)
    right = min(
        (f.at_mm - f.allowance_mm / 2.0 for f in made if f.at_mm > at), default=strip.length_mm
    )
    reach = max((abs(o) for o in step.bumps.offsets_mm), default=0.0) if step.bumps else 0.0
    return (at - left - reach, right - at - reach)


def beyond_run_mm(part: Part, folded: Sequence[FoldedBend], step: Operation) -> float:
    """What the finished bend at the end of a step's shorter run adds to it to make up the flat as
    the part dimensions it [mm]; 0 where the run ends at an edge or goes over bends not made."""
    left, right = bare_runs_mm(part, folded, step)
    neighbour = step.bend - 1 if left <= right else step.bend + 1
    if neighbour not in step.made:
        return 0.0
    radius = folded[neighbour - 1].inside_radius_mm
    return setback_mm(part.bends[neighbour - 1], radius, part.thickness_mm, part.dimension)


def run_in_dimension_mm(bare_mm: float, part: Part, step: Operation, here: FoldedBend) -> float:
    """A run from the bend line as the part dimensions a flat: to the mould line or as asked.

    here: how the bend comes out in this step.
    """
    bend = Bend(step.included_angle_deg, step.direction)
    beyond = setback_mm(bend, here.inside_radius_mm, part.thickness_mm, part.dimension)
    return bare_mm - here.allowance_mm / 2.0 + beyond
