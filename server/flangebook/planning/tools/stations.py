"""Where each pair of tools stands along the bed, with its load and how far off the middle it is.

Several pairs stand side by side where the bed has room and they close at one height, so that no
tool is changed during the job; otherwise each stands in the middle in its turn.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from flangebook.bending.checks import Check
from flangebook.bending.tools.ratings import off_centre
from flangebook.bending.tools.segments import segments_for
from flangebook.bending.tools.tooling import Press
from flangebook.planning.answers.answer import N_PER_KN, JsonDict, number
from flangebook.planning.steps.steps import PlannedStep
from flangebook.planning.tools.fit import Equipment

BETWEEN_MM = 50.0
"""Room between two stations (common practice, no source)."""
SAME_HEIGHT_MM = 0.1


@dataclass(frozen=True, slots=True)
class Station:
    """One pair of tools on the bed.

    centre_mm: from the bed's middle, to the right > 0. length_mm: of its longer tool.
    force_n, force_high_n: the largest of its steps.
    """

    number: int
    punch: str
    die: str
    turned: bool
    length_mm: float
    punch_segments_mm: tuple[float, ...]
    die_segments_mm: tuple[float, ...]
    force_n: float
    force_high_n: float
    steps: tuple[int, ...]
    centre_mm: float = 0.0
    load: Check | None = None
    in_turn: bool = False


def stations(
    steps: Sequence[PlannedStep], equipment: Equipment, bend_length_mm: float
) -> list[Station]:
    """The stations of a job, in the order they are first used."""
    grouped: dict[tuple[str, str, bool], list[PlannedStep]] = {}
    for step in steps:
        if step.owned and step.fit is not None:
            key = (step.fit.punch.code, step.fit.die.code, step.fit.punch.turned)
            grouped.setdefault(key, []).append(step)
    made = [_station(i, group, bend_length_mm) for i, group in enumerate(grouped.values(), 1)]
    press = equipment.press
    if press is None or not made:
        return made
    if len(made) > 1:
        heights = {_height_mm(group[0]) for group in grouped.values()}
        total = sum(s.length_mm for s in made) + BETWEEN_MM * (len(made) - 1)
        if total > press.bed_length_mm or max(heights) - min(heights) > SAME_HEIGHT_MM:
            made = [replace(s, in_turn=True) for s in made]
        else:
            made = _side_by_side(made, total)
    return [replace(s, load=_load(press, s)) for s in made]


def _station(number_: int, steps: Sequence[PlannedStep], wanted_mm: float) -> Station:
    fit = steps[0].fit
    assert fit is not None
    punch = segments_for(fit.punch.segments_mm, wanted_mm) or ()
    die = segments_for(fit.die.segments_mm, wanted_mm) or ()
    forces = [s.fit.bend.force_n for s in steps if s.fit is not None and s.fit.bend is not None]
    return Station(
        number=number_,
        punch=fit.punch.code,
        die=fit.die.code,
        turned=fit.punch.turned,
        length_mm=max(math.fsum(punch), math.fsum(die), wanted_mm),
        punch_segments_mm=punch,
        die_segments_mm=die,
        force_n=max(f.nominal for f in forces),
        force_high_n=max(f.high for f in forces),
        steps=tuple(s.operation.number for s in steps),
    )


def _height_mm(step: PlannedStep) -> float:
    assert step.fit is not None
    return step.fit.punch.height_mm + step.fit.die.height_mm


def _side_by_side(made: Sequence[Station], total_mm: float) -> list[Station]:
    """Beside one another about the middle, the heaviest load nearest to it."""
    left: list[Station] = []
    right: list[Station] = []
    for i, one in enumerate(sorted(made, key=lambda s: -s.force_high_n)):
        (left if i % 2 else right).append(one)
    row = [*reversed(left), *right]
    at = -total_mm / 2.0
    placed = {}
    for one in row:
        placed[one.number] = replace(one, centre_mm=at + one.length_mm / 2.0)
        at += one.length_mm + BETWEEN_MM
    return [placed[n] for n in sorted(placed)]


def _load(press: Press, one: Station) -> Check | None:
    return off_centre(press, one.force_high_n, round(one.centre_mm, 3))


def station_checks(made: Sequence[Station]) -> list[Check]:
    """What is to be said of the stations: loads off the middle, tools changed in turn."""
    found = []
    for one in made:
        if one.load is not None and one.load.level != "ok":
            template = f"Station {one.number}: {one.load.template}"
            found.append(replace(one.load, template=template))
    if any(one.in_turn for one in made):
        found.append(
            Check(
                "caution",
                "tools-in-turn",
                "The tools of this job do not stand side by side: they are changed on the way.",
                "Bend all pieces up to the change, then change the tools and set the depth anew.",
            )
        )
    return found


def stations_json(made: Sequence[Station]) -> list[JsonDict]:
    """The stations as the API gives them."""
    return [
        {
            "number": one.number,
            "punch": one.punch,
            "die": one.die,
            "turned": one.turned,
            "centre_mm": number(one.centre_mm, 3),
            "length_mm": number(one.length_mm),
            "punch_segments_mm": [number(x) for x in one.punch_segments_mm],
            "die_segments_mm": [number(x) for x in one.die_segments_mm],
            "force_kn": number(one.force_n / N_PER_KN),
            "force_kn_high": number(one.force_high_n / N_PER_KN),
            "off_centre_level": one.load.level if one.load else "ok",
            "steps": list(one.steps),
        }
        for one in made
    ]
