"""A test bend, and a first piece, as evidence: with the set-up it was made in."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from flangebook.bending.part.metals import Metal
from flangebook.bending.tools.tooling import Die, Punch
from flangebook.planning.chart import usual_thicknesses_mm
from flangebook.planning.plan import find_metal
from flangebook.planning.results.evidence import tools_json
from flangebook.planning.results.gauged_flange import deduction_of_flange_mm
from flangebook.planning.results.next_setting import measured_angle_deg
from flangebook.planning.tools.named_tools import find_die, find_punch
from flangebook.shop import documents
from flangebook.shop.crib import tooling
from flangebook.shop.store import Store
from flangebook.shop.zeros import zeros_of

JsonDict = dict[str, Any]
SAME_SHEET = 0.12
"""Sheet measures within this share of the thickness it was ordered as."""
SAME_MM = 0.005
_MEASURED = (
    "left_deg", "middle_deg", "right_deg", "set_angle_deg", "loaded_deg", "punch_depth_mm",
    "thickness_mm", "flat_length_mm", "flange_left_mm", "flange_right_mm", "radius_mm", "note",
    "made_at", "by",
)  # fmt: skip


def test_bend(store: Store, asked: Mapping[str, Any]) -> JsonDict:
    """A test bend as it is kept.

    Raises MissingToolError for a metal, die or punch that is not there.
    """
    shop = tooling(store)
    metal = find_metal(shop.metals, asked["metal"])
    die, punch = find_die(shop.crib, asked["die"]), find_punch(shop.crib, asked["punch"])
    ordered = asked["ordered_thickness_mm"] or usual_mm(metal, asked["thickness_mm"])
    return {
        "id": asked["id"],
        "metal": metal.code,
        "lot": asked["lot"],
        "ordered_mm": ordered,
        "bend_length_mm": asked["bend_length_mm"],
        "included_angle_deg": asked["included_angle_deg"],
        "dimension": "din6935",
        **tools_json(die, punch),
        **_zeros(store, asked),
        "measured_deg": measured_angle_deg(asked),
        **{name: asked[name] for name in _MEASURED},
        "sent": dict(asked),
    }


def usual_mm(metal: Metal, measured_mm: float) -> float:
    """The thickness a sheet was most likely ordered as [mm].

    The nearest usual one where there is one near, else what was measured.
    """
    near = min(usual_thicknesses_mm(metal), key=lambda t: abs(t - measured_mm))
    return near if abs(near - measured_mm) <= SAME_SHEET * near else measured_mm


def first_piece(
    store: Store,
    code: str,
    part: Mapping[str, Any],
    step: Mapping[str, Any],
    setting: Mapping[str, Any] | None,
    result: Mapping[str, Any],
    first: bool,
    flange: Mapping[str, Any] | None = None,
) -> JsonDict | None:
    """What a result at a card's step is evidence of; None where it teaches nothing.

    first: it is the first of its run. One after it that does not say what was set may have been
    made with the correction that was offered, so nothing is assumed of it. flange: what the
    measured flange said of the gauge.

    That is where the step has no tools or is no plain bend (a hem's closing, a radius in
    hits), and where the tools of those codes are others now than the card was planned with.
    """
    tools = tools_of(store, step)
    if tools is None or step["hits"] is not None:
        return None
    body = {
        "id": result["id"],
        "code": code,
        "revision": result["revision"],
        "step": step["number"],
        "metal": part["metal"],
        "lot": result["lot"],
        "ordered_mm": part["thickness_mm"],
        "bend_length_mm": bend_length_mm(part, step),
        "included_angle_deg": step["included_angle_deg"],
        "dimension": part["dimension"],
        **tools_json(*tools),
        **_zeros(store, result),
        "gauged_deduction_mm": deduction_of_flange_mm(step, flange),
        "measured_deg": result["measured_deg"],
        **{name: result[name] for name in _MEASURED},
    }
    return {**body, **_set_and_shown(result, setting or {}, step, first)}


def _zeros(store: Store, made: Mapping[str, Any]) -> JsonDict:
    """How press and gauge were set when it was made."""
    press = json.loads(documents.read(store, "press").body)
    found = zeros_of(press, made.get("made_at"))
    return {"press_zero": found.press, "gauge_zero": found.gauge}


def bend_length_mm(part: Mapping[str, Any], step: Mapping[str, Any]) -> float:
    """How long the bend of a step is [mm]: in a box each has its own."""
    return float(step.get("bend_length_mm") or part["bend_length_mm"])


def tools_of(store: Store, step: Mapping[str, Any]) -> tuple[Die, Punch] | None:
    """The tools of a step, where those of its codes are still what it was planned with."""
    crib = tooling(store).crib
    die = next((d for d in crib.dies if d.code == step["die"]), None)
    punch = next((p for p in crib.punches if p.code == step["punch"]), None)
    if die is None or punch is None or abs(die.v_opening_mm - step["v_opening_mm"]) > SAME_MM:
        return None
    return die, punch


def _set_and_shown(
    result: Mapping[str, Any], setting: Mapping[str, Any], step: Mapping[str, Any], first: bool
) -> JsonDict:
    """The angle and the depth that were set.

    An angle that was not given is the one in force, but only if the depth was that setting's
    too. A depth that goes with an angle that was only set, not measured under load, comes from
    the same calculation: it is kept for the picture and marked as no reading.
    """
    in_force = {
        name: setting[name] if setting.get(name) is not None else step.get(name)
        for name in ("set_angle_deg", "punch_depth_mm")
    }
    angle, depth = result["set_angle_deg"], result["punch_depth_mm"]
    known = first if depth is None else _same(depth, in_force["punch_depth_mm"])
    if angle is None and known:
        angle = in_force["set_angle_deg"]
    calculated = angle is not None and depth is not None and result["loaded_deg"] is None
    return {"set_angle_deg": angle, "punch_depth_mm": depth, "depth_calculated": calculated}


def _same(given: float, in_force: float | None) -> bool:
    return in_force is not None and abs(given - in_force) <= SAME_MM
