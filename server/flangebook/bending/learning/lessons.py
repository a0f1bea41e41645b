"""A result beside what was expected of it: the departures that can be carried to other bends.

    figure         departure                                              scatter
    -------------  -----------------------------------------------------  ---------------------
    springback     measured - expected [deg]                              0.3 degrees
    inside radius  ln(measured / expected) [-]                            8 %
    deduction      K-factor above the expected one at the expected radius 0.15 mm of deduction
                   by a gauged flange, of which the gauge's error is a part  0.1 mm of flange
    punch depth    shown - expected at the angle under load [mm]          0.05 mm and 0.02 t

"Expected" is always worked out for the thickness and the angle that were measured, so those two
explain nothing that is learned.

Springback is what was measured less the angle under load. Where nobody measured that one, the
setting stands for it, and then the press's own error is in it: the angle that was set on a press
that is set by angle, the depth on one that is set by depth or by a stop; the other of the two
where that was not given.

What springs back less than nothing, or more than the upper end of the band of the metal's figures
(its highest strength is in that), by more than reading and press explain, is asked about and does
not count until somebody confirms it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import exp, hypot, inf, log, radians
from typing import Literal

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.estimate import NINE_IN_TEN, Estimate
from flangebook.bending.geometry.air_bend_geometry import angle_at_depth, punch_depth_mm
from flangebook.bending.learning.plausible import implausible
from flangebook.bending.learning.readings import (
    DEPTH_MM,
    FLANGE_MM,
    LENGTHS_MM,
    RADIUS_SHARE,
    SPRINGBACK_DEG,
    deduction_measured,
    springback_measured,
)
from flangebook.bending.learning.result import Result, SetUp
from flangebook.bending.prediction.air_bend import AirBend, BendCase, air_bend
from flangebook.bending.prediction.correction import depth_per_deg_mm
from flangebook.bending.prediction.predicted_bend import depth_at_mm
from flangebook.bending.tools.tooling import SetBy

FigureName = Literal["springback", "inside radius", "deduction", "punch depth"]

OTHER_ZERO_SHARE = 1.0 / 3.0  # of the expected depth; common practice
OTHER_ZERO_MM = 1.0
DEPTH_DOUBT_PER_T = 0.02  # of the expected depth at a known angle, as ``sheet_model.bands`` has it
SHARPEST_SHARE = 0.2  # of the expected inside radius: no bend of whole sheet is sharper
# What reading may add to what a metal can do, downwards [deg] (a protractor's own error, common
# practice) and upwards (three times its scatter); and what the press's depth may add [mm].
READ_TOO_LOW_DEG, READ_TOO_HIGH_DEG = 0.45, 3.0 * SPRINGBACK_DEG
PRESS_OFF_MM = 0.1


@dataclass(frozen=True, slots=True)
class Lesson:
    """What one result says of one figure.

    measured, expected: in the figure's own unit [deg or mm]. unit: what a departure of one
    amounts to in it; for the inside radius the departure is a logarithm instead.
    departure: measured against expected. reading: its scatter. spread: standard deviation of the
    metal's own departure there. per_mm: what a millimetre of the press's depth error adds to it,
    or of a gauge that stands too far back.
    possible: departures that the metal and a press without error can show. confirmed: the shop
    says it was measured right.
    """

    result_id: str
    label: str
    figure: FigureName
    set_up: SetUp
    measured: float
    expected: float
    unit: float
    departure: float
    reading: float
    spread: float
    per_mm: float = 0.0
    possible: tuple[float, float] = (-inf, inf)
    confirmed: bool = False

    @property
    def under_load(self) -> bool:
        """The press has no part in it."""
        return self.per_mm == 0.0

    @property
    def by_gauge(self) -> bool:
        """Whether it is of a flange that the back gauge set."""
        return self.figure == "deduction" and self.per_mm != 0.0

    def is_possible(self, press_mm: float) -> bool:
        """Whether the metal can have done it in a press that goes so much less deep [mm]."""
        low, high = (end + self.per_mm * press_mm for end in self.possible)
        return low <= self.departure <= high

    def at(self, departure: float) -> float:
        """What would have been measured for another departure, in the figure's own unit."""
        if self.figure == "inside radius":
            return self.expected * exp(departure)
        return self.expected + departure * self.unit


def half_band(band: Estimate) -> float:
    """Half a band, in its figure's unit [mm, deg, -]; the wider side counts for both.

    Source: definition.

    >>> half_band(Estimate(1.0, 2.0, 2.5))
    1.0
    """
    return max(band.high - band.nominal, band.nominal - band.low)


def spread_of(figure: FigureName, bend: AirBend, case: BendCase) -> float:
    """Standard deviation of the metal's own departure at a bend, from the expected band [deg, -].

    Of springback the band reaches far down and little up, and half its width counts.

    Args:
        figure: which figure; the punch depth has none, it is the press's.
        bend: as expected.
        case: what is expected to come out so.

    Source: own method, as at the top of the module; common practice, no source, for its figures.

    >>> from flangebook.bending.samples import CASE
    >>> round(spread_of("springback", air_bend(CASE), CASE), 2)
    0.46
    """
    if figure == "springback":
        return 0.5 * (bend.springback_deg.high - bend.springback_deg.low) / NINE_IN_TEN
    if figure == "deduction":
        return half_band(bend.bend_deduction_mm) / abs(deduction_unit_mm(case)) / NINE_IN_TEN
    radius = bend.inside_radius_mm
    # A metal may be on record with no lower end of its radius at all.
    sharpest = max(radius.low, SHARPEST_SHARE * radius.nominal)
    if figure == "punch depth" or not sharpest:
        return 0.0
    return log(max(radius.high / radius.nominal, radius.nominal / sharpest)) / NINE_IN_TEN


def degrees_per_mm(bend: AirBend, case: BendCase) -> float:
    """How much a millimetre of punch depth closes the bend at its setting [deg/mm].

    Raises:
        RangeError: the sheet fills the V there.

    Source: own derivation: the slope of ``air_bend_geometry.punch_depth_mm``.

    >>> from flangebook.bending.samples import CASE
    >>> round(degrees_per_mm(air_bend(CASE), CASE), 1)
    12.9
    """
    return 1.0 / depth_per_deg_mm(
        bend.set_angle_deg.nominal, bend.inside_radius_mm.nominal, case.thickness_mm, case.die
    )


def lessons(
    result: Result, set_by: SetBy | None = None
) -> tuple[tuple[Lesson, ...], tuple[Check, ...]]:
    """What a result teaches, and what is odd about it.

    A result that cannot be, or that cannot be compared with any expectation, teaches nothing
    and says why in a finding of level "stop". One beyond what the metal can do teaches what it
    would if it was measured right; "trial-beyond-metal" asks whether it was.

    Args:
        result: one that is not marked wrong.
        set_by: how the press is set; None is not known and counts as by angle.
    """
    try:
        odd = implausible(result)
        if _stops(odd):
            return (), _named(result, odd)
        as_made = result.as_it_came()
        bend = air_bend(as_made)
        odd = implausible(result, bend.inside_radius_mm.nominal)
        if _stops(odd):
            return (), _named(result, odd)
        zero = _other_zero(result, bend)
        # A depth counted from another zero says nothing, and neither does an angle got from it.
        usable = result if zero is None else replace(result, punch_depth_mm=None)
        taught = tuple(_all(usable, as_made, bend, set_by))
    except InputError as error:
        said = Check("stop", "trial-not-comparable", f"It cannot be compared: {error.template}",
                     error.do, error.numbers)  # fmt: skip
        return (), _named(result, (said,))
    return taught, _named(result, odd if zero is None else (*odd, zero))


def _all(
    result: Result, as_made: BendCase, bend: AirBend, set_by: SetBy | None
) -> Iterator[Lesson]:
    def lesson(
        figure: FigureName, measured: float, expected: float, unit: float, scatter: float
    ) -> Lesson:
        return Lesson(
            result.id, result.name, figure, result.set_up, measured, expected, unit,
            (measured - expected) / unit, scatter / abs(unit), spread_of(figure, bend, as_made),
            confirmed=result.confirmed,
        )  # fmt: skip

    loaded = _loaded_deg(result, as_made, bend, set_by)
    if loaded is not None:
        spring = bend.springback_deg
        came = springback_measured(result.measured_deg, loaded)
        per_mm = 0.0 if result.loaded_deg is not None else degrees_per_mm(bend, as_made)
        plain = lesson("springback", came, spring.nominal, 1.0, SPRINGBACK_DEG)
        yield _placed(plain, spring, per_mm)
    if result.loaded_deg is not None and result.punch_depth_mm is not None:
        at_angle = depth_at_mm(bend, as_made, result.loaded_deg)
        scatter = hypot(DEPTH_MM, DEPTH_DOUBT_PER_T * as_made.thickness_mm)
        shown = lesson("punch depth", result.punch_depth_mm, at_angle, 1.0, scatter)
        yield replace(shown, per_mm=1.0)
    radius = bend.inside_radius_mm.nominal
    if result.radius_mm and radius > 0.0:  # a radius of nothing has no ratio to anything
        yield replace(
            lesson("inside radius", result.radius_mm, radius, 1.0, RADIUS_SHARE),
            departure=log(result.radius_mm / radius),
        )
    flat, left, right = result.flat_length_mm, result.flange_left_mm, result.flange_right_mm
    if flat is not None and left is not None and right is not None:
        yield lesson(
            "deduction", deduction_measured(flat, left, right), bend.bend_deduction_mm.nominal,
            deduction_unit_mm(as_made), LENGTHS_MM,
        )  # fmt: skip
    if result.gauged_deduction_mm is not None:
        # A flange has half of the deduction in it, and all of the gauge's error.
        unit = deduction_unit_mm(as_made)
        by_gauge = lesson(
            "deduction", result.gauged_deduction_mm, bend.bend_deduction_mm.nominal, unit,
            2.0 * FLANGE_MM,
        )  # fmt: skip
        yield replace(by_gauge, per_mm=2.0 / unit)


def _placed(lesson: Lesson, spring: Estimate, per_mm: float) -> Lesson:
    """A springback with what of it a metal can show."""
    press = per_mm * PRESS_OFF_MM
    low = -spring.nominal - READ_TOO_LOW_DEG - press
    high = spring.high - spring.nominal + READ_TOO_HIGH_DEG + press
    return replace(lesson, per_mm=per_mm, possible=(low, high))


def beyond_metal(lesson: Lesson) -> Check:
    """The question that a springback beyond what the metal can do raises."""
    low, high = lesson.at(lesson.possible[0]), lesson.at(lesson.possible[1])
    less = lesson.departure < lesson.possible[0]
    what = "closed by {off_deg} on release; sheet springs open" if less else (
        "sprung back {off_deg}; this sheet in this V does not spring back more than {most_deg}"
    )  # fmt: skip
    press = "" if lesson.under_load else ", even if the press is off by {press_mm}"
    return Check(
        "unknown",
        "trial-beyond-metal",
        f"Result {lesson.label}: the bend would have {what}{press}. It does not count.",
        "Check the thickness of the sheet, then die and punch against the card, then the zero of "
        "the depth, then which angle was read. Was it measured right?",
        {"off_deg": abs(lesson.measured), "most_deg": max(high, low), "press_mm": PRESS_OFF_MM},
    )


def deduction_unit_mm(case: BendCase) -> float:
    """Change of the deduction [mm] for a K-factor higher by one: less by b t.

    Source: own derivation: the slope of ``allowance.deduction`` by K.

    >>> from flangebook.bending.samples import CASE
    >>> round(deduction_unit_mm(CASE), 3)
    -3.142
    """
    return -radians(180.0 - case.included_angle_deg) * case.thickness_mm


def _loaded_deg(
    result: Result, as_made: BendCase, bend: AirBend, set_by: SetBy | None
) -> float | None:
    """The angle under load [deg], or what was set for it; None where nothing tells it."""
    if result.loaded_deg is not None:
        return result.loaded_deg
    by_depth = result.punch_depth_mm is not None and (
        set_by in ("depth", "stop") or result.set_angle_deg is None
    )
    if not by_depth:
        return result.set_angle_deg
    assert result.punch_depth_mm is not None
    tool = (bend.inside_radius_mm.nominal, as_made.thickness_mm, *as_made.v)
    anchor = punch_depth_mm(bend.set_angle_deg.nominal, *tool)
    return angle_at_depth(result.punch_depth_mm - bend.punch_depth_mm.nominal + anchor, *tool)


def _other_zero(result: Result, bend: AirBend) -> Check | None:
    shown, expected = result.punch_depth_mm, bend.punch_depth_mm.nominal
    if shown is None or abs(shown - expected) <= max(OTHER_ZERO_MM, OTHER_ZERO_SHARE * expected):
        return None
    return Check(
        "caution",
        "trial-depth-other-zero",
        "A depth of {shown_mm} for a bend that takes about {expected_mm}: the press counts from "
        "another zero. The depth is left out.",
        "Lower the punch until it just touches the flat sheet and count the depth from there.",
        {"shown_mm": shown, "expected_mm": expected},
    )


def _stops(checks: tuple[Check, ...]) -> bool:
    return any(check.level == "stop" for check in checks)


def _named(result: Result, checks: tuple[Check, ...]) -> tuple[Check, ...]:
    return tuple(replace(c, template=f"Result {result.name}: {c.template}") for c in checks)
