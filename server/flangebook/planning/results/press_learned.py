"""What results say of the press, apart from the metals, and which strip would tell more."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError
from flangebook.bending.estimate import NINE_IN_TEN
from flangebook.bending.learning.joint import PRESS_SD_MM, Solved
from flangebook.bending.learning.lessons import degrees_per_mm, spread_of
from flangebook.bending.learning.readings import SPRINGBACK_DEG
from flangebook.bending.learning.result import SetUp
from flangebook.bending.prediction.air_bend import BendCase, air_bend
from flangebook.bending.tools.tooling import Crib, Die
from flangebook.planning.answers.answer import JsonDict, number, said_json
from flangebook.planning.chart import usual_thicknesses_mm
from flangebook.planning.results.evidence import Evidence

APART_SHARE = 0.5
"""Press and metal count as told apart when so much of the press's first doubt is left, or less."""
USUAL_V_OVER_T = 8.0
MOST_STRIPS = 12
STRIP_LENGTH_MM, STRIP_ANGLE_DEG = 100.0, 90.0


@dataclass(frozen=True, slots=True)
class Strip:
    """A strip that would tell press and metal apart. sd_mm: how well d would be known then."""

    die: Die
    thickness_mm: float
    sd_mm: float


def press_json(evidence: Evidence, crib: Crib) -> JsonDict:
    """The press's own error with its band, whether it is told apart from the metal, what to do."""
    solved = evidence.together.by_figure["springback"]
    press = evidence.together.press_error(evidence.press)
    if solved is None or press is None:
        said = Sentence(
            "No result tells of the press yet: none has a set angle or a depth that counts."
        )
        return {"set_by": evidence.set_by, "offset_mm": None, "results": 0, "apart": False,
                "strip": None, **said_json([said])}  # fmt: skip
    apart = press[1] <= APART_SHARE * PRESS_SD_MM
    strip = None if apart else _best_strip(solved, evidence, crib)
    return {
        "set_by": evidence.set_by,
        "offset_mm": _band(press),
        "results": len({lesson.result_id for lesson in solved.telling(evidence.press)}),
        "apart": apart,
        "strip": _strip_json(strip, evidence),
        **said_json(_said(evidence, apart, strip)),
    }


def factor_json(evidence: Evidence, set_up: SetUp) -> JsonDict | None:
    """How many times as much as expected the metal springs back there, the press kept out; None
    where no result of it counts or the bend cannot be predicted."""
    try:
        bend = air_bend(set_up.case)
        belief = evidence.learning(bend, set_up).belief("springback")
    except InputError:
        return None
    spring = bend.springback_deg.nominal
    if belief is None or spring <= 0.0:
        return None
    nominal = max(1.0 + belief.split.metal / spring, 0.0)
    half = NINE_IN_TEN * belief.split.metal_sd / spring
    return {
        "low": number(max(nominal - half, 0.0)),
        "nominal": number(nominal),
        "high": number(nominal + half),
        "origin": "your test bends",
    }


def _band(press: tuple[float, float]) -> JsonDict:
    mean, half = press[0], NINE_IN_TEN * press[1]
    return {
        "low": number(mean - half),
        "nominal": number(mean),
        "high": number(mean + half),
        "origin": "your test bends",
    }


def _best_strip(solved: Solved, evidence: Evidence, crib: Crib) -> Strip | None:
    """Of the shop's dies, each with the sheet that suits it, the one that tells most."""
    told = (_told(solved, evidence, die, t) for die, t in _to_bend(evidence, crib))
    return min((one for one in told if one is not None), key=lambda s: s.sd_mm, default=None)


def _to_bend(evidence: Evidence, crib: Crib) -> Iterable[tuple[Die, float]]:
    """Each V of the crib with the metal's usual thickness that is nearest to an eighth of it."""
    usual = usual_thicknesses_mm(evidence.metal)
    found: dict[float, tuple[Die, float]] = {}
    for die in crib.dies:
        if die.condition != "damaged" and die.angle_deg < STRIP_ANGLE_DEG:
            wanted = die.v_opening_mm / USUAL_V_OVER_T
            nearest = min(usual, key=lambda t: abs(t - wanted))
            found.setdefault(die.v_opening_mm, (die, nearest))
    return list(found.values())[:MOST_STRIPS]


def _told(solved: Solved, evidence: Evidence, die: Die, thickness_mm: float) -> Strip | None:
    tip = (
        evidence.results[-1].set_up.case.punch_radius_mm if evidence.results else 0.5 * thickness_mm
    )
    case = BendCase(evidence.metal, thickness_mm, STRIP_LENGTH_MM, STRIP_ANGLE_DEG, die, tip)
    try:
        bend = air_bend(case)
        per_mm, spread = degrees_per_mm(bend, case), spread_of("springback", bend, case)
    except InputError:
        return None
    sd = solved.press_sd_after_mm(evidence.set_up(case), spread, per_mm, SPRINGBACK_DEG)
    return Strip(die, thickness_mm, sd)


def _strip_json(strip: Strip | None, evidence: Evidence) -> JsonDict | None:
    if strip is None:
        return None
    return {
        "metal": evidence.metal.code,
        "thickness_mm": number(strip.thickness_mm),
        "die": strip.die.code,
        "v_opening_mm": number(strip.die.v_opening_mm),
    }


def _said(evidence: Evidence, apart: bool, strip: Strip | None) -> Iterable[Sentence]:
    yield Sentence("Set angle and punch depth of every metal allow for it.")
    if apart:
        return
    yield Sentence(
        "Press and metal cannot be told apart yet: both bands stay wide. Their sum is known better."
    )
    if strip is not None:
        yield Sentence(
            f"To tell them apart bend a strip of {evidence.metal.name} {{thickness_mm}} in "
            f"die {strip.die.code} as planned, and measure it. The press is then known to "
            "{after_mm} either way.",
            {"thickness_mm": strip.thickness_mm, "after_mm": NINE_IN_TEN * strip.sd_mm},
        )
    yield Sentence("Or measure one bend under load, in the press, before it springs open.")
