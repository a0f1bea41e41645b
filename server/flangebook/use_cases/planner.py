"""From a request as read to the planner's answer, on the shop as it stands."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from typing import Any

from flangebook.api.leaving import limits_of_request
from flangebook.bending.box.box import Box, Side
from flangebook.bending.errors import InputError
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.order_limits import OrderLimits
from flangebook.bending.part.part import Bend, Hole, Part
from flangebook.bending.part.sheet_gauge import thickness_of_gauge_mm
from flangebook.bending.tools.tooling import Crib
from flangebook.planning.answers.plan_json import plan_json
from flangebook.planning.box.merge import merged
from flangebook.planning.box.plan import planned_box
from flangebook.planning.chart import chart
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.one_bend import Named, check_bend, check_stroke
from flangebook.planning.plan import find_metal, plan, planned
from flangebook.planning.planned import Plan
from flangebook.planning.tools.fit import Equipment, Wanted
from flangebook.schemas.places import within
from flangebook.schemas.quantities import SheetGauge
from flangebook.shop.crib import tooling
from flangebook.shop.storage.writing import digest, json_text
from flangebook.shop.store import Store
from flangebook.use_cases.learning import evidence_of

JsonDict = dict[str, Any]


def bend_text(store: Store, asked: Mapping[str, Any]) -> str:
    """One bend, checked, as JSON text; kept while nothing is written.

    Raises InputError and MissingToolError.
    """
    name = f"bend {sorted(asked.items())!r}"
    return store.cache.get_or_compute(
        name, lambda: store.work(_of_one_bend, check_bend, asked), len
    )


def stroke_text(store: Store, asked: Mapping[str, Any]) -> str:
    """One bend over its stroke, as JSON text; kept while nothing is written.

    Raises InputError and MissingToolError.
    """
    name = f"stroke {sorted(asked.items())!r}"
    return store.cache.get_or_compute(
        name, lambda: store.work(_of_one_bend, check_stroke, asked), len
    )


def _of_one_bend(store: Store, answer: Callable[..., JsonDict], asked: Mapping[str, Any]) -> str:
    shop = tooling(store)
    metal = find_metal(shop.metals, asked["metal"])
    wanted = Wanted(
        metal,
        thickness_of(asked["thickness_mm"], metal),
        asked["bend_length_mm"],
        asked["included_angle_deg"],
    )
    equipment = Equipment(shop.press, shop.crib, evidence_of(store, metal, asked["lot"]))
    named = Named(asked["die"], asked["punch"], asked["v_opening_mm"], asked["punch_radius_mm"])
    return json_text(answer(wanted, equipment, named))


def chart_text(store: Store, metal: str, bend_length_mm: float) -> str:
    """The wall chart as JSON text.

    Raises InputError and MissingToolError.
    """
    limits = limits_of_request()

    def make() -> str:
        return store.work(_chart, metal, bend_length_mm, limits=limits)

    name = f"chart {metal} {bend_length_mm!r}"
    return store.cache.get_or_compute(name, make, len)


def _chart(store: Store, code: str, bend_length_mm: float, _limits: PlanLimits) -> str:
    shop = tooling(store)
    metal = find_metal(shop.metals, code)
    evidence = evidence_of(store, metal)
    return json_text(chart(metal, shop.press, shop.crib, bend_length_mm, evidence=evidence))


def plan_of(
    store: Store, asked: Mapping[str, Any], place: str = "", limits: PlanLimits | None = None
) -> JsonDict:
    """A part, planned. place: of the part in the request, for errors. limits: of the search.

    Kept while nothing is written, whatever the part is called: a card saved after a long search
    gets the very plan that was on the screen.

    Raises InputError, NotAPartError and MissingToolError.
    """
    untitled = {**asked, "title": ""}
    name = f"plan {digest(untitled)}"
    limits = limits or limits_of_request()

    def make() -> str:
        return store.work(_planned, untitled, limits=limits)

    made = within(place, lambda: store.cache.get_or_compute(name, make, len))
    plan: JsonDict = json.loads(made)
    return {**plan, "title": asked["title"], "part": {**plan["part"], "title": asked["title"]}}


def _planned(store: Store, asked: Mapping[str, Any], limits: PlanLimits) -> str:
    return json_text(_plan(store, asked, limits))


def _plan(store: Store, asked: Mapping[str, Any], limits: PlanLimits) -> JsonDict:
    shop = tooling(store)
    metal = find_metal(shop.metals, asked["metal"])
    thickness, evidence = thickness_of(asked["thickness_mm"], metal), evidence_of(store, metal)
    if asked["box"] is None:
        part = part_from(asked, thickness)
        return plan(part, shop.press, shop.crib, shop.metals, evidence, limits)

    def planner(section: Part, crib: Crib, within: PlanLimits) -> Plan:
        return planned(section, shop.press, crib, shop.metals, evidence, within)

    box = box_from(asked, thickness)
    found = planned_box(box, shop.press, shop.crib, metal, planner, limits)
    return plan_json(merged(found, shop.press, shop.crib))


def thickness_of(given: float | SheetGauge, metal: Metal) -> float:
    """A thickness in mm, from a gauge number by the metal's own table.

    Raises InputError.
    """
    if not isinstance(given, SheetGauge):
        return given
    if metal.gauge_family is None:
        raise InputError(
            f"A gauge number says nothing for {metal.name}.",
            "thickness_mm",
            "Give the thickness in mm or inches.",
        )
    return thickness_of_gauge_mm(given.number, metal.gauge_family)


def part_from(asked: Mapping[str, Any], thickness_mm: float) -> Part:
    """The part as the calculations take it."""
    plain = {k: asked[k] for k in ("title", "metal", "bend_length_mm", "dimension", "grain")}
    return Part(
        **plain,
        thickness_mm=thickness_mm,
        flats_mm=tuple(asked["flats_mm"]),
        bends=tuple(Bend(**one) for one in asked["bends"]),
        order=tuple(asked["order"]) if asked["order"] else None,
        holes=tuple(Hole(**one) for one in asked["holes"]),
        **asked["tools"],
        order_limits=order_limits_from(asked["wishes"]),
    )


def box_from(asked: Mapping[str, Any], thickness_mm: float) -> Box:
    """The box as the calculations take it."""
    given = {k: asked[k] for k in ("title", "metal", "dimension")}
    given |= {k: v for k, v in asked["box"].items() if k != "sides"}
    given |= asked["tools"]
    for name, side in asked["box"]["sides"].items():
        if side is not None:
            bends = tuple(Bend(**one) for one in side["bends"])
            given[name] = Side(tuple(side["flats_mm"]), bends)
    return Box(
        **given,
        thickness_mm=thickness_mm,
        order=tuple(asked["order"]) if asked["order"] else None,
        order_limits=order_limits_from(asked["wishes"]),
    )


def order_limits_from(asked: Mapping[str, Any]) -> OrderLimits:
    """The limits on the order as the planner takes them; what is not given is not asked for."""
    given = dict(asked)
    if "critical_flats" in given:
        given["critical_flats"] = tuple(sorted(set(given["critical_flats"])))
    return OrderLimits(**given)
