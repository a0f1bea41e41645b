"""The first hit of a bend that nobody has measured yet: it comes out exact or open.

A bend that is too open is pressed again, one that is over-bent is scrap. So the first hit counts
on as little springback as the metal may have, and on a punch that goes as deep as the doubt about
its depth allows. With s the springback, d by how much sharper than set the loaded angle comes
[deg], and a the angle that is set, a bend comes out at

    y = a - d + s

With s and d known as bands only, a = wanted - s_low + d_high gives

    wanted  <=  y  <=  wanted + (s_high - s_low) + (d_high - d_low)

The depth's doubt is the bend model's own, of thickness, strength, hardening, friction and tool
radii (``sheet_model.bands``), and a zero that is a tenth of a millimetre off: more degrees in a
small V than in a large one. Where the model has no answer it is 2 degrees. A press that measures
the angle in the sheet while it bends goes on until the set angle stands, whatever the depth: d is
then no more than that measuring's own accuracy.

Springback and depth have nothing to do with each other, so it would be rare for both to be at
their ends at once. Their bands hold nine in ten each; :func:`together` takes of each the share with
which nine in ten of both together lie inside, as a root of squares.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from flangebook.bending.errors import InputError
from flangebook.bending.estimate import Estimate
from flangebook.bending.prediction.air_bend import AirBend
from flangebook.bending.prediction.bend_case import BendCase
from flangebook.bending.prediction.predicted_bend import FIRST_BEND_DOUBT_DEG, depth_at_mm
from flangebook.bending.requirements import need
from flangebook.bending.tools.setting_limits import SettingLimits

Ends = tuple[float, float]
"""Low and high end."""

ZERO_DOUBT_MM = 0.1  # of the depth's zero, nine in ten; common practice, no source


@dataclass(frozen=True, slots=True)
class FirstHit:
    """What to set for the first piece, and what to expect of it.

    set_angle_deg: included angle under load to set [deg]. punch_depth_mm: depth that goes with it
    [mm]. comes_out_deg: the least and the most that nine in ten come out at, after release [deg].
    """

    set_angle_deg: float
    punch_depth_mm: float
    comes_out_deg: Ends


def first_hit_angle(
    wanted_deg: float, springback_deg: Ends, sharper_by_deg: Ends
) -> tuple[float, Ends]:
    """Angle to set [deg] so that no springback and depth in their bands over-bend, and the least
    and the most that comes out [deg].

    Args:
        wanted_deg: wanted included angle after release [deg].
        springback_deg: least and most springback [deg].
        sharper_by_deg: least and most by which the loaded angle comes sharper than set [deg].

    Raises:
        InputError: the wanted angle is no bend, or a band is out of order.

    Source: own derivation, see the top of this file.

    >>> first_hit_angle(90.0, (0.5, 1.5), (-0.25, 0.25))
    (89.75, (90.0, 91.5))
    """
    need(wanted_deg=wanted_deg)
    for low, high in (springback_deg, sharper_by_deg):
        if not low <= high:
            raise InputError(f"{low:g} to {high:g} is no band.", "springback_deg", "Low end first.")
    doubt = springback_deg[1] - springback_deg[0] + sharper_by_deg[1] - sharper_by_deg[0]
    angle = wanted_deg - springback_deg[0] + sharper_by_deg[1]
    return angle, (wanted_deg, wanted_deg + doubt)


def together(springback: Estimate, flatter_deg: float, sharper_deg: float) -> tuple[Ends, Ends]:
    """The ends of springback and of the depth's doubt [deg] that together hold nine in ten.

    Args:
        springback: its band holds nine in ten by itself.
        flatter_deg: how much flatter than set nine in ten come at most, by depth alone [deg].
        sharper_deg: how much sharper.

    Source: as ``sheet_model.bands``: independent causes add up as a root of squares.

    >>> together(Estimate(1.0, 4.0, 7.0), 4.0, 4.0)
    ((2.2, 5.8), (-3.2, 3.2))
    """
    down, up = springback.nominal - springback.low, springback.high - springback.nominal
    (least, sharper), (most, flatter) = _shared(down, sharper_deg), _shared(up, flatter_deg)
    return (springback.nominal - least, springback.nominal + most), (-flatter, sharper)


def _shared(one: float, other: float) -> Ends:
    """Two sides cut so that their sum is their root of squares."""
    both = hypot(one, other)
    return (one * one / both, other * other / both) if both > 0.0 else (0.0, 0.0)


def depth_doubt_deg(bend: AirBend) -> Ends:
    """How much flatter and how much sharper than set nine in ten first bends come [deg], by what
    is not known of sheet, tools and the depth's zero.

    Args:
        bend: the prediction.
    """
    if bend.model is None:
        return FIRST_BEND_DOUBT_DEG, FIRST_BEND_DOUBT_DEG
    depth, per_degree = bend.model.depth_mm, bend.model.nominal.depth_per_degree_mm
    # A sheet that takes more depth than was set comes out flatter.
    sides = (depth.high - depth.nominal, depth.nominal - depth.low)
    flatter, sharper = (hypot(side, ZERO_DOUBT_MM) / per_degree for side in sides)
    return flatter, sharper


def first_hit(
    bend: AirBend, case: BendCase, limits: SettingLimits, angle_doubt_deg: float | None = None
) -> FirstHit | None:
    """The first hit of a predicted bend; None where tools and press do not reach the expected
    setting, or where the sheet would not be bent at all.

    Args:
        bend: the prediction.
        case: what was predicted.
        limits: how far tools and press may be set.
        angle_doubt_deg: how near the press comes to a set angle [deg]; None where it does
            not measure it.
    """
    doubt = depth_doubt_deg(bend) if angle_doubt_deg is None else (angle_doubt_deg, angle_doubt_deg)
    if limits.beyond(bend.set_angle_deg.nominal, bend.punch_depth_mm.nominal):
        return None
    # A learned set angle may stand off from the springback: count from what would be set.
    wanted = case.included_angle_deg
    spring = bend.set_angle_deg.mapped(lambda angle: wanted - angle)
    angle, comes_out = first_hit_angle(wanted, *together(spring, *doubt))
    if angle >= 180.0:
        return None
    if bend.model is None:
        depth = depth_at_mm(bend, case, angle)
    else:
        turned = bend.model.depth_at_set(angle) - bend.model.depth_at_set(
            bend.set_angle_deg.nominal
        )
        depth = bend.punch_depth_mm.nominal + turned
    if limits.beyond(angle, depth):
        return None
    return FirstHit(angle, depth, comes_out)
