"""The order, and what each step keeps clear of, as the API gives them."""

from __future__ import annotations

from flangebook.bending.checks import PLAIN, Names
from flangebook.bending.clearance.approach import Near
from flangebook.planning.answers.answer import JsonDict, number, sentence_json
from flangebook.planning.order.said import Clearance, OrderPlan, because


def clearance_json(said: Clearance | None, names: Names = PLAIN) -> JsonDict | None:
    """A step's clearance as the API gives it."""
    if said is None:
        return None
    nearest = said.near[0] if said.near else None
    return {
        "clear": said.clear,
        "needed_mm": number(said.needed_mm),
        "nearest": _near_json(nearest, names) if nearest else None,
        "hits": [_near_json(n, names) for n in said.collisions],
        "way_in": said.ways.into.way if said.ways else "unknown",
        "way_out": _way_out(said),
        "rides_up": bool(said.ways and said.ways.out.rides_up),
        "words": said.words,
    }


def _near_json(near: Near, names: Names) -> JsonDict:
    return {
        "tool": near.tool,
        "phase": "bend",
        "included_angle_deg": number(near.included_angle_deg, 2),
        "punch_travel_mm": number(near.punch_travel_mm, 3),
        "distance_mm": number(near.distance_mm, 3),
        "on_sheet": [number(v, 3) for v in near.on_sheet],
        "on_tool": [number(v, 3) for v in near.on_tool],
        "flat": names.flat_number(near.flat),
        **({"flat_name": names.flat(near.flat)} if names.flats else {}),
    }


def _way_out(said: Clearance) -> str:
    if said.ways:
        return said.ways.out.way
    return "trapped" if "trapped" in said.reasons else "unknown"


def order_json(order: OrderPlan) -> JsonDict:
    """The order as the API gives it."""
    return {
        "sequence": list(order.sequence),
        "rule": order.rule,
        "proven": order.clear_on_paper,
        "words": order.words.words,
        "looked_at": order.looked_at,
        **order.counts,
        "wishes": [{"wish": name, **sentence_json(said)} for name, said in order.order_limits],
        "alternatives": [
            {"sequence": list(o.sequence), **o.counts, "words": o.words} for o in order.others
        ],
        "blocked": [
            {
                "step": one.step,
                "bend": one.bend,
                "hits": list(one.reasons),
                "words": f"{because(one.reasons).capitalize()}.",
            }
            for one in order.blocked
        ],
        "remedies": [{"kind": one.kind, **sentence_json(one.said)} for one in order.advice],
    }
