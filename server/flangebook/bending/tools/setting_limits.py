"""How far a setting may go: the sharpest loaded angle and the deepest punch depth of two tools.

Every angle and depth that is shown as a setting passes here. A setting is inside, or there is
none: it is never moved to the limit, because a bend that needs more than the tools have is a
sign that something else is wrong.

The sharpest loaded included angle [deg] is the largest of

    die angle       the legs lie on the flanks of the V
    punch angle     the legs lie on the flanks of the nose
    die depth       the sheet round the tip fills the V: (r + t + rd) sin(theta) = x_c, with theta
                    half the bend angle, as in ``air_bend_geometry``

and a margin of 0.5 degrees (common practice, no source), which keeps the sheet off the flanks:
on them the force rises to several times that of an air bend. The deepest punch depth is the
depth at that angle. Where the legs lie on the flanks the sheet under the tip still clears the
floor of a V that runs down to a point, by (r + t) (1 / cos(theta) - 1), so the floor never
limits earlier. A press whose stroke ends sooner sets the depth, and the angle that goes with it.

Own derivation from elementary geometry. Assumed: the tools' angles and radii are as entered, the
depth is counted from first touch of the flat sheet, the die's V is no shallower than its flanks
make it, and the inside radius is not larger than given.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, degrees, inf
from typing import Literal

from flangebook.bending.geometry.air_bend_geometry import (
    angle_at_depth,
    punch_depth_mm,
    shoulder_centre_x_mm,
)
from flangebook.bending.requirements import need
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

LimitedBy = Literal[
    "punch angle", "die angle", "die depth", "press stroke", "open height", "saved table", "flat"
]
"""What limits a setting. "saved table": nothing is known of the tools but what a card of an
earlier release saved. "flat": the setting would not bend the sheet at all."""
MARGIN_DEG = 0.5
SAME_DEG = 1e-6


@dataclass(frozen=True, slots=True)
class SettingLimits:
    """What two tools and a press can be set to.

    sharpest_deg: sharpest loaded included angle that may be set [deg], margin included.
    deepest_mm: deepest punch depth that may be set [mm], from first touch of the flat sheet.
    limited_by: what limits there; more than one where they limit alike.
    """

    sharpest_deg: float
    deepest_mm: float
    limited_by: tuple[LimitedBy, ...]

    def beyond(
        self, set_angle_deg: float | None, punch_depth_mm: float | None = None
    ) -> tuple[LimitedBy, ...]:
        """What stands against a setting; empty where it is inside. None is not asked for.

        >>> SettingLimits(85.5, 6.5, ("die angle",)).beyond(88.0, 6.3)
        ()
        >>> SettingLimits(85.5, 6.5, ("die angle",)).beyond(81.3, 6.84)
        ('die angle',)
        """
        angle = self.sharpest_deg if set_angle_deg is None else set_angle_deg
        depth = self.deepest_mm if punch_depth_mm is None else punch_depth_mm
        # A comparison with "not a number" is false, so such a setting is outside too.
        if not (angle >= self.sharpest_deg and depth <= self.deepest_mm):
            return self.limited_by
        flat = angle >= 180.0 or (punch_depth_mm is not None and depth <= 0.0)
        return ("flat",) if flat else ()

    def less_press_error(self, short_deg: float, short_mm: float) -> SettingLimits:
        """The limits to set by on a press that shows less than it does.

        Where the punch goes deeper than the press shows, a setting at the limit would be beyond
        it, so the limit comes earlier by that. A press that comes short moves no limit: the
        error is only known within a band.

        Args:
            short_deg: how much more open the press comes than set [deg]; below 0 it is sharper.
            short_mm: how much less deep the punch goes than shown [mm]; below 0 it is deeper.
        """
        if short_deg >= 0.0 and short_mm >= 0.0:
            return self
        sharpest = min(self.sharpest_deg - min(short_deg, 0.0), 180.0)
        return SettingLimits(sharpest, self.deepest_mm + min(short_mm, 0.0), self.limited_by)


def setting_limits(
    die: Die,
    punch: Punch,
    thickness_mm: float,
    inside_radius_mm: float,
    press: Press | None = None,
    holder: Holder | None = None,
) -> SettingLimits:
    """How far a bend may be set in these tools.

    Args:
        die: the die; its V opening, angle and shoulder radius count.
        punch: the punch; its nose angle and tip radius count, with a press its height too.
        thickness_mm: sheet thickness t [mm].
        inside_radius_mm: predicted inside radius r [mm]; the punch tip's counts where larger.
        press: the press, None if it is not known: then it does not limit.
        holder: what holds the punch in the ram, None if it is not known.

    Raises:
        InputError: a size is unusable.

    Source: own derivation, see the top of this file; margin: common practice, no source.
    """
    need(
        thickness_mm=thickness_mm,
        angle_deg=punch.angle_deg,
        inside_radius_mm=inside_radius_mm,
        tip_radius_mm=punch.tip_radius_mm,
    )
    radius = max(inside_radius_mm, punch.tip_radius_mm)
    v = (die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    ends: dict[LimitedBy, float] = {
        "punch angle": punch.angle_deg,
        "die angle": die.angle_deg,
        "die depth": _filled_deg(radius + thickness_mm, *v),
    }
    sharpest = max(ends.values())
    by = tuple(name for name, angle in ends.items() if angle >= sharpest - SAME_DEG)
    sharpest += MARGIN_DEG
    if sharpest >= 180.0:
        return SettingLimits(180.0, 0.0, by)
    sheet_and_v = (radius, thickness_mm, *v)
    tools_end = SettingLimits(sharpest, punch_depth_mm(sharpest, *sheet_and_v), by)
    if press is None:
        return tools_end
    reach = press_depth_mm(press, die, punch, thickness_mm, holder)
    if reach >= tools_end.deepest_mm:
        return tools_end
    if reach <= 0.0:
        none_at_all = daylight_mm(press, die, punch, thickness_mm, holder) <= 0.0
        return SettingLimits(180.0, 0.0, ("open height" if none_at_all else "press stroke",))
    return SettingLimits(angle_at_depth(reach, *sheet_and_v), reach, ("press stroke",))


def _filled_deg(
    outer_radius_mm: float, v_opening_mm: float, die_angle_deg: float, shoulder_radius_mm: float
) -> float:
    """Loaded included angle [deg] at which the sheet round the tip fills the V; 0 where the
    flanks come first whatever the angle."""
    x_c = shoulder_centre_x_mm(v_opening_mm, die_angle_deg, shoulder_radius_mm)
    radii = outer_radius_mm + shoulder_radius_mm
    return 0.0 if radii <= x_c else 180.0 - 2.0 * degrees(asin(x_c / radii))


def daylight_mm(
    press: Press, die: Die, punch: Punch, thickness_mm: float, holder: Holder | None = None
) -> float:
    """What the open press leaves between the punch's tip and the sheet on the die [mm]; 0 or
    less: the tools do not go in.

    Args:
        press: its open height and the riser or die holder on its bed count.
        die: its height counts.
        punch: its height counts.
        thickness_mm: sheet thickness [mm].
        holder: its height counts; None counts as none.

    Source: definition: the heights are added up.

    >>> from flangebook.bending.samples import BRAKE, STRAIGHT, V16
    >>> daylight_mm(BRAKE, V16, STRAIGHT, 2.0)  # 400 - 110 - 80 - 2
    208.0
    """
    held = holder.height_mm if holder is not None else 0.0
    stack = punch.height_mm + die.height_mm + held + press.die_holder_height_mm
    return press.open_height_mm - stack - thickness_mm


def press_depth_mm(
    press: Press | None,
    die: Die,
    punch: Punch,
    thickness_mm: float,
    holder: Holder | None = None,
) -> float:
    """How deep a press can push the punch from first touch of the sheet [mm].

    Its full stroke less the way to the sheet; 0 where it does not get there or the tools do not
    go in, infinite where the press, its open height, its stroke or a tool's height is not known.
    A holder that is not known makes the depth smaller, never larger.

    Args:
        press: its open height, stroke and riser count; None is not known.
        die: its height counts.
        punch: its height counts.
        thickness_mm: sheet thickness [mm].
        holder: its height counts; None counts as none.

    Source: definition: the stroke less the way to the sheet.

    >>> from flangebook.bending.samples import BRAKE, STRAIGHT, V16
    >>> press_depth_mm(BRAKE, V16, STRAIGHT, 2.0)  # 250 of stroke, 208 to the sheet
    42.0
    """
    if press is None or not press.knows("open_height_mm", "stroke_mm"):
        return inf
    if "height_mm" in (*die.assumed, *punch.assumed):
        return inf
    way = daylight_mm(press, die, punch, thickness_mm, holder)
    return 0.0 if way <= 0.0 else max(0.0, press.stroke_mm - way)
