"""What to set after a bend has been measured.

The next bend's loaded angle moves by the error, a touch more because part of every added
degree springs back again. Angle and depth move as the bend model says for that change of the
released angle; where the model does not hold, the angle moves by the ratio of loaded to
released bend angle and the depth by what the contact geometry makes of it. Only changes count,
so an offset of the press or an error of the first depth stays out of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil
from typing import NamedTuple

from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm
from flangebook.bending.prediction.air_bend import AirBend
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.prediction.modelled_bend import ModelledBend, beside
from flangebook.bending.requirements import need
from flangebook.bending.tools.setting_limits import SettingLimits
from flangebook.bending.tools.tooling import Die

LARGE_ERROR_DEG = 5.0  # more than that is a wrong tool, sheet or zero; common practice


@dataclass(frozen=True, slots=True)
class Correction:
    """A new setting after a measured angle.

    wanted_deg, measured_deg: included angles after release [deg]. set_angle_deg: included angle
    under load to set next [deg]. punch_depth_mm: depth to set next [mm].
    """

    wanted_deg: float
    measured_deg: float
    set_angle_deg: float
    punch_depth_mm: float


def correct_setting(
    wanted_deg: float,
    measured_deg: float,
    set_angle_deg: float,
    inside_radius_mm: float,
    thickness_mm: float,
    die: Die,
    set_depth_mm: float | None = None,
) -> Correction:
    """New set angle [deg] and punch depth [mm] after a bend came out at a measured angle.

    Args:
        wanted_deg: wanted included angle [deg].
        measured_deg: included angle that came out [deg].
        set_angle_deg: included angle under load that had been set [deg].
        inside_radius_mm: predicted inside radius [mm].
        thickness_mm: sheet thickness [mm].
        die: the die that was used.
        set_depth_mm: punch depth that had been set [mm]; None takes the geometry's own.

    Raises:
        InputError: an angle is no bend, or the new setting would be none.
        RangeError: the new setting cannot be reached in this die.

    Source: springback ratio kept constant, as in metal-trade tables books (bend angle after
    over bend angle in the tool); depth by own geometry.
    """
    need(wanted_deg=wanted_deg, measured_deg=measured_deg, set_angle_deg=set_angle_deg)
    loaded_per_released = (180.0 - set_angle_deg) / (180.0 - wanted_deg)
    new_angle = set_angle_deg - (measured_deg - wanted_deg) * loaded_per_released
    if not 0.0 < new_angle < 180.0:
        raise InputError(
            f"{measured_deg:g} degrees is too far from the wanted {wanted_deg:g} to correct.",
            "measured_deg",
            "Check tools, thickness and which angle was measured, then bend a test piece.",
        )
    tool = (inside_radius_mm, thickness_mm, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    before, after = punch_depth_mm(set_angle_deg, *tool), punch_depth_mm(new_angle, *tool)
    start = before if set_depth_mm is None else set_depth_mm
    return Correction(wanted_deg, measured_deg, new_angle, start + after - before)


class _Base(NamedTuple):
    """What the measured piece was set to."""

    set_angle_deg: float
    punch_depth_mm: float


def correction_table(
    bend: AirBend,
    case: BendCase,
    limits: SettingLimits,
    reach_deg: float = 5.0,
    step_deg: float = 0.5,
    start: FirstHit | None = None,
) -> tuple[Correction, ...]:
    """What to set next for each angle that may be measured, within reach of the wanted one.

    A row that could not be set (flatter than flat, beyond what tools and press reach) is left
    out rather than bent to fit. Where tools or press end between two rows, the last row is there.
    A first hit's rows reach further open by as much as it is milder than the expected setting, so
    that later hits are still read between rows.

    Args:
        bend: the prediction; its nominal set angle, depth and radius are the starting point.
        case: what was predicted.
        limits: how far tools and press may be set.
        reach_deg: how far to either side [deg].
        step_deg: from row to row [deg].
        start: the first hit that the measured piece was made with; None is the nominal setting.

    Raises:
        InputError: reach or step is not above zero.
    """
    need(reach_deg=reach_deg, step_deg=step_deg)
    steps = round(reach_deg / step_deg)
    most = steps
    if start is not None:
        milder = start.set_angle_deg - bend.set_angle_deg.nominal
        most = ceil((reach_deg + max(milder, 0.0)) / step_deg - 1e-9)
    measured = [case.included_angle_deg + i * step_deg for i in range(-steps, most + 1)]
    base = _Base(bend.set_angle_deg.nominal, bend.punch_depth_mm.nominal)
    if start is not None:
        base = _Base(start.set_angle_deg, start.punch_depth_mm)
    if bend.model is not None:
        rows = (_by_model(bend, bend.model, base, one) for one in measured)
    else:
        rows = (_by_geometry(bend, case, base, one) for one in measured)
    return _within([row for row in rows if row is not None], limits)


def _within(rows: Sequence[Correction], limits: SettingLimits) -> tuple[Correction, ...]:
    """The rows that can be set, and the one where tools or press end between two of them."""
    inside = [row for row in rows if not limits.beyond(row.set_angle_deg, row.punch_depth_mm)]
    after = rows[rows.index(inside[-1]) + 1 :] if inside else ()
    last = _at_the_limit(inside[-1], after[0], limits) if after else None
    return (*inside, last) if last is not None else tuple(inside)


def _at_the_limit(
    inside: Correction, outside: Correction, limits: SettingLimits
) -> Correction | None:
    """The row between two at which tools or press end; None at the inner one."""
    turn = inside.set_angle_deg - outside.set_angle_deg
    deeper = outside.punch_depth_mm - inside.punch_depth_mm
    by_angle = (inside.set_angle_deg - limits.sharpest_deg) / turn if turn > 0.0 else 1.0
    by_depth = (limits.deepest_mm - inside.punch_depth_mm) / deeper if deeper > 0.0 else 1.0
    share = min(by_angle, by_depth)
    if not 0.0 < share < 1.0:
        return None
    return Correction(
        inside.wanted_deg,
        inside.measured_deg + share * (outside.measured_deg - inside.measured_deg),
        max(inside.set_angle_deg - share * turn, limits.sharpest_deg),
        min(inside.punch_depth_mm + share * deeper, limits.deepest_mm),
    )


def _by_geometry(
    bend: AirBend, case: BendCase, base: _Base, measured_deg: float
) -> Correction | None:
    try:
        return correct_setting(
            case.included_angle_deg, measured_deg, base.set_angle_deg,
            bend.inside_radius_mm.nominal, case.thickness_mm, case.die, base.punch_depth_mm,
        )  # fmt: skip
    except InputError:
        return None


def _by_model(
    bend: AirBend, found: ModelledBend, base: _Base, measured_deg: float
) -> Correction | None:
    """The model's own change of angle and depth from where it releases what was set to as far on
    the other side of it as the measured angle is of the wanted one; None where the tools do not
    go there."""
    near, wanted_deg = beside(found), found.case.included_angle_deg
    at = near.set_at(wanted_deg) + base.set_angle_deg - bend.set_angle_deg.nominal
    aim = near.released_at(at) + wanted_deg - measured_deg
    if not (0.0 < measured_deg < 180.0 and near.released_deg[-1] <= aim <= near.released_deg[0]):
        return None
    angle = base.set_angle_deg + near.set_at(aim) - at
    depth = base.punch_depth_mm + near.depth_at(aim) - near.depth_at_angle(at)
    return Correction(wanted_deg, measured_deg, angle, depth)


def large_error(wanted_deg: float, measured_deg: float) -> Check | None:
    """A caution when the error is larger than a correction should be, else None."""
    error = measured_deg - wanted_deg
    if abs(error) <= LARGE_ERROR_DEG:
        return None
    return Check(
        "caution",
        "large-angle-error",
        "The bend came out {error_deg} off: more than a correction should have to mend.",
        "Check the tools against the card, the thickness, the depth's zero and which angle was "
        "measured, before the next piece.",
        {"error_deg": error},
    )


def depth_per_deg_mm(
    set_angle_deg: float, inside_radius_mm: float, thickness_mm: float, die: Die
) -> float:
    """Punch depth [mm] that closes the loaded included angle by one degree, at the set angle.

    Raises:
        InputError, RangeError: as ``air_bend_geometry.punch_depth_mm``.

    Source: own derivation: the slope of ``air_bend_geometry.punch_depth_mm``.

    >>> from flangebook.bending.samples import V16
    >>> round(depth_per_deg_mm(88.0, 2.5, 2.0, V16), 3)
    0.076
    """
    tool = (inside_radius_mm, thickness_mm, die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    half = 0.05
    closed, open_ = set_angle_deg - half, set_angle_deg + half
    return (punch_depth_mm(closed, *tool) - punch_depth_mm(open_, *tool)) / (2.0 * half)


def tilt_mm_per_m(
    left_deg: float, right_deg: float, bend_length_mm: float, depth_per_degree_mm: float
) -> float:
    """Ram tilt [mm/m] that would even out the ends; positive: more depth at the right end.

    Args:
        left_deg: included angle measured at the left end [deg].
        right_deg: included angle measured at the right end [deg].
        bend_length_mm: distance between the two [mm].
        depth_per_degree_mm: from :func:`depth_per_deg_mm` [mm].

    Raises:
        InputError: the length is not above zero.

    Source: plane geometry.

    >>> tilt_mm_per_m(90.0, 91.0, 1000.0, 0.08)
    0.08
    """
    need(bend_length_mm=bend_length_mm)
    return (right_deg - left_deg) * depth_per_degree_mm * 1000.0 / bend_length_mm
