"""Findings about one bend: angle, radius, flange, opening."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from flangebook.bending.checks import Check
from flangebook.bending.estimate import Estimate
from flangebook.bending.metals import Metal
from flangebook.bending.tooling import Die, Punch

CREASE_TIP_OVER_T = 0.63  # common practice, no source


def sharper_than_tools(
    set_angle_deg: Estimate,
    die: Die | None,
    punch: Punch | None,
    dies: Sequence[Die] = (),
    punches: Sequence[Punch] = (),
) -> tuple[Check, ...]:
    """Stop when the loaded angle is sharper than the die's or punch's own angle."""
    found: list[Check] = []
    for kind, tool, owned in (("die", die, dies), ("punch", punch, punches)):
        if tool is None or set_angle_deg.low >= tool.angle_deg:
            continue
        level = "stop" if set_angle_deg.nominal < tool.angle_deg else "caution"
        others = [t.code for t in owned if t.angle_deg <= set_angle_deg.low]
        do = f"Use {kind} {', '.join(others)}." if others else f"Get a sharper {kind}."
        found.append(
            Check(
                level,  # type: ignore[arg-type]
                f"sharper-than-{kind}",
                f"The bend must be pressed to {{set_angle_deg}}, but the {kind} {tool.code} has {{tool_angle_deg}}.",
                do,
                {"set_angle_deg": set_angle_deg.nominal, "tool_angle_deg": tool.angle_deg},
            )
        )
    return tuple(found)


def crease(thickness_mm: float, punch_radius_mm: float) -> Check | None:
    """Caution when the punch tip is sharper than 0.63 t (common practice)."""
    if punch_radius_mm >= CREASE_TIP_OVER_T * thickness_mm:
        return None
    return Check(
        "caution",
        "punch-may-crease",
        "The punch tip of {tip_mm} is sharp for this sheet and may crease it.",
        "Use a punch with a tip of {least_mm} or more.",
        {"tip_mm": punch_radius_mm, "least_mm": CREASE_TIP_OVER_T * thickness_mm},
    )


def smallest_radius(
    metal: Metal,
    thickness_mm: float,
    radius_mm: Estimate,
    grain: Literal["with", "across"] | None = None,
) -> Check:
    """The predicted radius against the metal's smallest."""
    figure = metal.min_radius_over_t_across if grain == "across" else metal.min_radius_over_t_with
    numbers = {"radius_mm": radius_mm.nominal}
    if figure is None:
        return Check(
            "unknown",
            "smallest-radius",
            "The smallest radius of {radius_mm} is not on record.",
            "",
            numbers,
        )
    numbers["least_mm"] = figure.nominal * thickness_mm
    if radius_mm.nominal >= numbers["least_mm"]:
        return Check("ok", "smallest-radius", "The radius is {radius_mm}.", "", numbers)
    return Check(
        "caution",
        "smallest-radius",
        "The radius of {radius_mm} may crack the metal.",
        "Use a wider V or a rounder punch: at least {least_mm}.",
        numbers,
    )


def radius_asked(asked_mm: float | None, radius_mm: Estimate, metal: Metal) -> Check | None:
    """The radius asked for against the predicted one."""
    if asked_mm is None:
        return None
    numbers = {"asked_mm": asked_mm, "radius_mm": radius_mm.nominal}
    if radius_mm.low <= asked_mm <= radius_mm.high:
        return Check(
            "ok", "radius-asked", "The radius comes out near the {asked_mm} asked for.", "", numbers
        )
    return Check(
        "caution",
        "radius-asked",
        "The radius comes out at {radius_mm}, not {asked_mm}.",
        "Use another V.",
        numbers,
    )


def flange_length(flange_mm: float, min_flange_mm: float) -> Check:
    """A flange against the shortest the die can bend."""
    numbers = {"flange_mm": flange_mm, "min_flange_mm": min_flange_mm}
    if flange_mm >= min_flange_mm:
        return Check(
            "ok", "flange-length", "The flange of {flange_mm} bears on the die.", "", numbers
        )
    return Check(
        "stop",
        "flange-too-short",
        "The flange of {flange_mm} is too short: it drops into the V.",
        "Use a narrower V; this one needs {min_flange_mm}.",
        numbers,
    )
