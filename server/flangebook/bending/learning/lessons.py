"""A trial beside what was expected of it: the departures that can be carried to other bends.

    figure         departure                                              read to
    -------------  -----------------------------------------------------  ---------------------
    springback     (measured - expected) / expected [-]                   0.15 degrees
    inside radius  ln(measured / expected) [-]                            5 %
    deduction      K-factor above the expected one at the expected radius 0.1 mm of deduction
    punch depth    shown - expected at the loaded angle [mm]              0.02 mm

"Expected" is always worked out for the thickness and the angle that were measured, so those two
explain nothing that is learned.

The loaded angle is the one measured in the press. Without it the angle that was set stands for
it, and then whatever the press's own angle is off by is part of the springback that is learned.
Without that either, the depth shown stands for it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from math import exp, log, radians
from typing import Literal

from flangebook.bending.air_bend import AirBend
from flangebook.bending.air_bend_geometry import angle_at_depth, punch_depth_mm
from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.learning.plausible import implausible
from flangebook.bending.learning.readings import (
    DEPTH_MM,
    LENGTHS_MM,
    RADIUS_SHARE,
    SPRINGBACK_DEG,
    Scatter,
    deduction_measured,
    springback_measured,
)
from flangebook.bending.learning.trial import SetUp, Trial

FigureName = Literal["springback", "inside radius", "deduction", "punch depth"]
Expected = Callable[[SetUp], AirBend]

# Under this a springback is read no better than guessed, and is no measure to scale with.
SMALL_SPRINGBACK_DEG = 0.1
OTHER_ZERO_SHARE = 1.0 / 3.0  # of the expected depth; common practice
OTHER_ZERO_MM = 1.0


@dataclass(frozen=True, slots=True)
class Lesson:
    """What one trial says of one figure.

    measured, expected: in the figure's own unit [deg or mm]. unit: what a departure of one
    amounts to in it; for the inside radius the departure is a logarithm instead.
    departure, reading: measured against expected, and the scatter of one reading of it.
    under_load: the loaded angle was measured in the press, not taken from a setting.
    """

    trial_id: str
    label: str
    figure: FigureName
    set_up: SetUp
    measured: float
    expected: float
    unit: float
    departure: float
    reading: float
    under_load: bool = True

    def at(self, departure: float) -> float:
        """What would have been measured for another departure, in the figure's own unit."""
        if self.figure == "inside radius":
            return self.expected * exp(departure)
        return self.expected + departure * self.unit


def springback_unit_deg(springback_deg: float) -> float:
    """What a springback departs in units of [deg]: itself, unless it is next to nothing.

    >>> springback_unit_deg(2.0), springback_unit_deg(0.02)
    (2.0, 0.1)
    """
    return max(springback_deg, SMALL_SPRINGBACK_DEG)


def depth_beside_mm(bend: AirBend, set_up: SetUp, loaded_angle_deg: float) -> float:
    """Expected depth [mm] at a loaded angle near the expected one, along the contact geometry.

    Args:
        bend: the expectation; its nominal depth and set angle are the anchor.
        set_up: thickness and die.
        loaded_angle_deg: included angle under load [deg].

    Raises:
        RangeError: the sheet fills the V before that angle.
    """
    tool = _tool(bend, set_up)
    anchor = punch_depth_mm(bend.set_angle_deg.nominal, *tool)
    return bend.punch_depth_mm.nominal + punch_depth_mm(loaded_angle_deg, *tool) - anchor


def lessons(trial: Trial, expected: Expected) -> tuple[tuple[Lesson, ...], tuple[Check, ...]]:
    """What a trial teaches, and what is odd about it.

    A trial that cannot be, or that cannot be compared with any expectation, teaches nothing
    and says why in a finding of level "stop".

    Args:
        trial: one that is not marked wrong.
        expected: predicts a bend without knowing of any trial.
    """
    try:
        odd = implausible(trial)
        if _stops(odd):
            return (), _named(trial, odd)
        as_made = trial.as_it_came()
        bend = expected(as_made)
        odd = implausible(trial, bend.inside_radius_mm.nominal)
        if _stops(odd):
            return (), _named(trial, odd)
        zero = _other_zero(trial, bend)
        # A depth counted from another zero says nothing, and neither does an angle got from it.
        usable = trial if zero is None else replace(trial, punch_depth_mm=None)
        taught = tuple(_all(usable, as_made, bend))
    except InputError as error:
        said = Check("stop", "trial-not-comparable", f"It cannot be compared: {error.what}",
                     error.right)  # fmt: skip
        return (), _named(trial, (said,))
    return taught, _named(trial, odd if zero is None else (*odd, zero))


def _all(trial: Trial, as_made: SetUp, bend: AirBend) -> Iterator[Lesson]:
    def lesson(
        figure: FigureName, measured: float, expected: float, unit: float, scatter: Scatter
    ) -> Lesson:
        return Lesson(
            trial.id, trial.name, figure, trial.set_up, measured, expected, unit,
            (measured - expected) / unit, scatter.per(unit).reading, trial.loaded_deg is not None,
        )  # fmt: skip

    loaded = _loaded_deg(trial, as_made, bend)
    if loaded is not None:
        spring = bend.springback_deg.nominal
        measured = springback_measured(trial.measured_deg, loaded)
        yield lesson("springback", measured, spring, springback_unit_deg(spring),
                     SPRINGBACK_DEG)  # fmt: skip
        if trial.punch_depth_mm is not None and _knows_angle(trial):
            at_angle = depth_beside_mm(bend, as_made, loaded)
            yield lesson("punch depth", trial.punch_depth_mm, at_angle, 1.0, DEPTH_MM)
    radius = bend.inside_radius_mm.nominal
    if trial.radius_mm and radius > 0.0:  # a radius of nothing has no ratio to anything
        yield replace(
            lesson("inside radius", trial.radius_mm, radius, 1.0, RADIUS_SHARE),
            departure=log(trial.radius_mm / radius),
        )
    flat, left, right = trial.flat_length_mm, trial.flange_left_mm, trial.flange_right_mm
    if flat is not None and left is not None and right is not None:
        yield lesson(
            "deduction", deduction_measured(flat, left, right), bend.bend_deduction_mm.nominal,
            deduction_unit_mm(as_made), LENGTHS_MM,
        )  # fmt: skip


def deduction_unit_mm(set_up: SetUp) -> float:
    """Change of the deduction [mm] for a K-factor higher by one: less by b t.

    >>> from flangebook.bending.tooling import Die
    >>> die = Die("V16", "V16", 16, 86, 2, 80, 60, None, ())
    >>> round(deduction_unit_mm(SetUp("steel", 2.0, 100, 90, die, 1.0)), 3)
    -3.142
    """
    return -radians(180.0 - set_up.included_angle_deg) * set_up.thickness_mm


def _knows_angle(trial: Trial) -> bool:
    return trial.loaded_deg is not None or trial.set_angle_deg is not None


def _loaded_deg(trial: Trial, as_made: SetUp, bend: AirBend) -> float | None:
    if _knows_angle(trial):
        return trial.loaded_deg if trial.loaded_deg is not None else trial.set_angle_deg
    if trial.punch_depth_mm is None:
        return None
    tool = _tool(bend, as_made)
    anchor = punch_depth_mm(bend.set_angle_deg.nominal, *tool)
    return angle_at_depth(trial.punch_depth_mm - bend.punch_depth_mm.nominal + anchor, *tool)


def _other_zero(trial: Trial, bend: AirBend) -> Check | None:
    shown, expected = trial.punch_depth_mm, bend.punch_depth_mm.nominal
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


def _tool(bend: AirBend, set_up: SetUp) -> tuple[float, float, float, float, float]:
    die = set_up.die
    return (bend.inside_radius_mm.nominal, set_up.thickness_mm, die.v_opening_mm, die.angle_deg,
            die.shoulder_radius_mm)  # fmt: skip


def _stops(checks: tuple[Check, ...]) -> bool:
    return any(check.level == "stop" for check in checks)


def _named(trial: Trial, checks: tuple[Check, ...]) -> tuple[Check, ...]:
    return tuple(replace(c, template=f"Trial {trial.name}: {c.template}") for c in checks)
