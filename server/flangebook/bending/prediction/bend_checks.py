"""Findings about one bend: its angle, its radius, its flange.

Limits marked common practice have no published source. A finding says what is the matter, with
the numbers, and what would do instead.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from flangebook.bending.checks import Check, Level, shown_less
from flangebook.bending.estimate import Estimate
from flangebook.bending.handbook.inside_radius import SHARP_TIP_OVER_T
from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.tools.setting_limits import MARGIN_DEG, SettingLimits
from flangebook.bending.tools.tooling import Die, Punch

LARGE_TIP_OVER_V = 0.25  # Vorkov et al., Int. J. Material Forming, doi 10.1007/s12289-018-1422-7
RADIUS_TOLERANCE = 0.2  # a radius nobody asked to be exact may be this far off; common practice
FLANGE_IN_HAND = 1.1  # over the shortest flange, before the edge may slip in; common practice
FAR_UNDER = 2.0 / 3.0  # of the smallest radius a metal usually bears; common practice
RADIUS_CODE = "smallest-radius"
MOST_NAMED = 3

Grain = Literal["with", "across"]
"""Which way the bend line runs against the rolling direction."""


def sharper_than_tools(
    set_angle_deg: Estimate,
    die: Die | None,
    punch: Punch | None,
    dies: Sequence[Die] = (),
    punches: Sequence[Punch] = (),
) -> tuple[Check, ...]:
    """A stop when the loaded angle is sharper than the die's or the punch's own and its margin.

    It is a caution when only the sharp end of the springback band is. The words name no angle
    that the tools cannot be set to.

    Args:
        set_angle_deg: included angle under load with its band [deg].
        die: the die, None if not chosen.
        punch: the punch, None if not chosen.
        dies: all dies owned, to name what would do.
        punches: all punches owned, likewise.
    """
    found: list[Check] = []
    if die is not None and set_angle_deg.low < die.angle_deg + MARGIN_DEG:
        own = sorted(dies, key=lambda d: abs(d.v_opening_mm - die.v_opening_mm))
        would_do = [d.code for d in own if d.angle_deg + MARGIN_DEG <= set_angle_deg.low]
        found.append(_too_sharp("die", die.code, die.angle_deg, set_angle_deg, would_do))
    if punch is not None and set_angle_deg.low < punch.angle_deg + MARGIN_DEG:
        near = sorted(punches, key=lambda p: abs(p.tip_radius_mm - punch.tip_radius_mm))
        would_do = [p.code for p in near if p.angle_deg + MARGIN_DEG <= set_angle_deg.low]
        found.append(_too_sharp("punch", punch.code, punch.angle_deg, set_angle_deg, would_do))
    return tuple(found)


def _too_sharp(
    kind: Literal["die", "punch"],
    code: str,
    tool_angle_deg: float,
    set_angle_deg: Estimate,
    would_do: Sequence[str],
) -> Check:
    limit = tool_angle_deg + MARGIN_DEG
    stopped = set_angle_deg.nominal < limit
    short_deg = limit - (set_angle_deg.nominal if stopped else set_angle_deg.low)
    numbers = {"short_deg": short_deg, "limit_deg": limit, "tool_angle_deg": tool_angle_deg}
    name = _plain(f"{kind} {code}".rstrip())
    ends = f"{name}, of {{tool_angle_deg}}, may be set to {{limit_deg}} and no further"
    if stopped:
        level: Level = "stop"
        words = f"The bend must be pressed {{short_deg}} sharper: {ends}."
    else:
        level = "caution"
        words = f"With more springback than usual {{short_deg}} are missing: {ends}."
    if would_do:
        do = f"Use {kind} {_plain(' or '.join(would_do[:MOST_NAMED]))}."
    else:
        numbers["would_do_deg"] = set_angle_deg.low - MARGIN_DEG
        do = f"No {kind} on record is sharp enough: a {kind} of {{would_do_deg}} or less would do."
    return Check(level, f"sharper-than-{kind}", words, do, numbers)


def fills_the_v(
    set_angle_deg: Estimate, punch_depth_mm: Estimate, limits: SettingLimits, die: Die
) -> tuple[Check, ...]:
    """A stop when the sheet fills the V, or the punch goes too deep for it, before the bend is
    sharp enough.

    Args:
        set_angle_deg: included angle under load with its band [deg].
        punch_depth_mm: from first touch, with its band [mm].
        limits: how far tools and press may be set.
        die: the die, to be named.
    """
    by = limits.beyond(set_angle_deg.nominal, punch_depth_mm.nominal)
    angle_alone = limits.beyond(set_angle_deg.nominal)
    if not by or by[0] in ("press stroke", "open height"):
        return ()  # said where the press is looked at
    if angle_alone and "die depth" not in by:
        return ()  # said of the tools' angles
    name = _plain(f"die {die.code}".rstrip())
    return (
        Check(
            "stop",
            "die-too-shallow",
            f"The bend needs more depth than {name} has for this sheet: {{deepest_mm}}.",
            "Use a wider V or a punch with a smaller tip.",
            {"deepest_mm": limits.deepest_mm},
        ),
    )


def crease(thickness_mm: float, punch_radius_mm: float) -> Check | None:
    """A caution when the punch tip is sharper than 0.63 t (common practice): it may crease.

    Published for one case: 5052-H32 of 3.2 mm with a 1 mm tip came out at a third of the
    usual radius (The Fabricator, column on air-formed inside radius).
    """
    least_mm = SHARP_TIP_OVER_T * thickness_mm
    if not shown_less(punch_radius_mm, least_mm):
        return None
    return Check(
        "caution",
        "punch-may-crease",
        "The punch tip of {tip_mm} is sharp for {thickness_mm} sheet: it may press a crease, and "
        "the inside radius comes out smaller than shown.",
        "Use a punch with a tip of {least_mm} or more, or measure the first piece.",
        {"tip_mm": punch_radius_mm, "thickness_mm": thickness_mm, "least_mm": least_mm},
    )


def large_tip(v_opening_mm: float, punch_radius_mm: float) -> Check | None:
    """A caution when the punch tip is over a quarter of the V: the bend no longer follows it."""
    most_mm = LARGE_TIP_OVER_V * v_opening_mm
    if punch_radius_mm <= most_mm:
        return None
    return Check(
        "caution",
        "punch-large-for-v",
        "The punch tip of {tip_mm} is more than a quarter of the V of {v_opening_mm}: the sheet "
        "bends in several places, and angle and radius are guesses.",
        "Use a wider V, or bend the radius in small steps.",
        {"tip_mm": punch_radius_mm, "v_opening_mm": v_opening_mm, "most_mm": most_mm},
    )


def smallest_radius(
    metal: Metal,
    thickness_mm: float,
    radius_mm: Estimate,
    grain: Grain | None = None,
    dies: Sequence[Die] = (),
    punches: Sequence[Punch] = (),
    v_opening_mm: float | None = None,
) -> Check:
    """The predicted radius against the smallest the metal bears.

    A stop when it is under two thirds of the usual smallest (common practice, no source) and
    under the lowest figure on record; a caution when it is only a little under. Along the grain
    a metal bears less than across it: where only one figure is on record, the one across counts
    as the least that a bend along the grain needs.

    Args:
        metal: gives the smallest radius over thickness [-].
        thickness_mm: sheet thickness [mm].
        radius_mm: predicted inside radius with its band [mm].
        grain: rolling direction against the bend line; None counts as along it.
        dies: the dies owned that reach the angle, to name what would do.
        punches: the punches owned that reach it, likewise.
        v_opening_mm: V that the radius is predicted in [mm]; where it gives less than the
            metal's usual share, what would do goes by this bend's own.
    """
    figure = _smallest_over_t(metal, grain)
    numbers = {"radius_mm": radius_mm.nominal}
    if figure is None:
        return Check(
            "unknown",
            RADIUS_CODE,
            "The smallest radius this metal bears is not on record; the bend comes out at about "
            "{radius_mm}.",
            "Bend a test piece and look for cracks on the outside.",
            numbers,
        )
    numbers["least_mm"] = figure.nominal * thickness_mm
    numbers["surely_mm"] = figure.high * thickness_mm
    only_across = grain == "with" and metal.min_radius_over_t_with is None
    if shown_less(radius_mm.nominal, numbers["least_mm"]):
        far = radius_mm.nominal < min(figure.low, FAR_UNDER * figure.nominal) * thickness_mm
        words = _may_crack(far=far, only_across=only_across)
        share = metal.radius_over_v.nominal
        if v_opening_mm is not None:
            share = min(share, radius_mm.nominal / v_opening_mm)
        do, more = _larger_radius(numbers["least_mm"], share, dies, punches)
        return Check("stop" if far else "caution", RADIUS_CODE, words, do, numbers | more)
    if only_across:
        return Check(
            "unknown",
            RADIUS_CODE,
            "The inside radius of about {radius_mm} is over the {least_mm} this metal bears across "
            "the grain. Along the grain it needs more; how much is not on record.",
            "Turn the blank so that the bend runs across the grain, or bend a test piece along it "
            "and look for cracks.",
            numbers,
        )
    if grain != "across" and shown_less(radius_mm.nominal, numbers["surely_mm"]):
        return Check(
            "ok",
            RADIUS_CODE,
            "The inside radius of about {radius_mm} is over the usual smallest of {least_mm}, "
            "though some tables ask for {surely_mm}.",
            "If the outside shows cracks, turn the blank so that the bend runs across the grain.",
            numbers,
        )
    words = "The inside radius of about {radius_mm} is over the smallest of {least_mm}."
    return Check("ok", RADIUS_CODE, words, "", numbers)


def _smallest_over_t(metal: Metal, grain: Grain | None) -> Figure | None:
    """The figure that counts: the larger of the two, but across the grain its own if known."""
    across, along = metal.min_radius_over_t_across, metal.min_radius_over_t_with
    if grain == "across":
        return across or along
    known = [figure for figure in (along, across) if figure is not None]
    return max(known, key=lambda figure: figure.nominal, default=None)


def _may_crack(*, far: bool, only_across: bool) -> str:
    words = "The inside radius of about {radius_mm} is "
    words += (
        "far under the {least_mm} this metal usually bears: expect cracks."
        if far
        else "under the {least_mm} this metal usually bears: it may crack."
    )
    if only_across:
        words += " That figure is for across the grain; along the grain it needs more."
    return words


def _larger_radius(
    least_mm: float, radius_over_v: float, dies: Sequence[Die], punches: Sequence[Punch]
) -> tuple[str, dict[str, float]]:
    """The smallest V and punch tip that make this inside radius, and who of the crib does."""
    v_mm, v_for_tip_mm = least_mm / radius_over_v, least_mm / LARGE_TIP_OVER_V
    wide = sorted((d.v_opening_mm, d.code) for d in dies if d.v_opening_mm >= v_mm)
    would = [f"die {code}" for _, code in wide]
    if any(d.v_opening_mm >= v_for_tip_mm for d in dies):
        would += [f"punch {p.code}" for p in punches if p.tip_radius_mm >= least_mm]
    do = (
        "Use a V of {wanted_v_mm} or more, or a punch with a tip of {least_mm} or more in a V of "
        "{v_for_tip_mm} or more"
    )
    if would:
        do += f": {_plain(' or '.join(would[:MOST_NAMED]))}."
    else:
        do += ". No tool in the crib does it." if dies or punches else "."
    do += " Bend across the grain, and try a test piece."
    return do, {"wanted_v_mm": v_mm, "v_for_tip_mm": v_for_tip_mm}


def radius_asked(asked_mm: float | None, radius_mm: Estimate, metal: Metal) -> Check | None:
    """The radius asked for against the predicted one; None when none is asked for.

    Args:
        asked_mm: inside radius asked for [mm].
        radius_mm: predicted inside radius with its band [mm].
        metal: gives the V that would make it.
    """
    if asked_mm is None:
        return None
    numbers = {"asked_mm": asked_mm, "radius_mm": radius_mm.nominal}
    within = radius_mm.low <= asked_mm <= radius_mm.high
    if within or abs(radius_mm.nominal - asked_mm) <= RADIUS_TOLERANCE * asked_mm:
        words = "The inside radius comes out at about {radius_mm}, near the {asked_mm} asked for."
        return Check("ok", "radius-asked", words, "", numbers)
    words = "The inside radius comes out at about {radius_mm}, not the {asked_mm} asked for."
    if asked_mm == 0.0:
        do = "Air bending makes no sharp corner; take the radius that comes."
    else:
        numbers["wanted_v_mm"] = asked_mm / metal.radius_over_v.nominal
        do = "A V of about {wanted_v_mm} makes it"
        wider = asked_mm > radius_mm.nominal
        do += ", or a punch with a tip of {asked_mm}." if wider else " with a punch tip no larger."
    return Check("caution", "radius-asked", words, do, numbers)


def flange_length(flange_mm: float, min_flange_mm: float) -> Check:
    """A flange [mm] against the shortest the die can bend [mm], both in the part's dimension."""
    numbers = {"flange_mm": flange_mm, "min_flange_mm": min_flange_mm}
    if shown_less(flange_mm, min_flange_mm):
        return Check(
            "stop",
            "flange-too-short",
            "The flange of {flange_mm} is too short for this V: its edge slips off the shoulder "
            "and drops in.",
            "Use a narrower V, or make the flange {min_flange_mm} or longer.",
            numbers,
        )
    if flange_mm < FLANGE_IN_HAND * min_flange_mm:
        return Check(
            "caution",
            "flange-close",
            "The flange of {flange_mm} only just bears on the die, which needs {min_flange_mm}.",
            "Use a narrower V if there is one; gauge exactly, and watch for a marked edge.",
            numbers,
        )
    words = "The flange of {flange_mm} bears on the die, which needs {min_flange_mm}."
    return Check("ok", "flange-length", words, "", numbers)


def air_bending_only() -> Check:
    """What these figures are for, said once with every answer."""
    return Check(
        "ok",
        "air-bending-only",
        "The figures are for air bending. Bottoming, coining and flattening a hem take several "
        "times the force, which is not worked out here.",
        "Do not bottom the punch in the die on these figures.",
    )


def _plain(text: str) -> str:
    # Braces in a tool's code must not be taken for one of the template's numbers.
    return text.replace("{", "(").replace("}", ")")
