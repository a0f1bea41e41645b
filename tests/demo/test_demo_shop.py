"""The invented shop and the starter metals: complete, readable, and honest about sources."""

from __future__ import annotations

import dataclasses
import json
from pathlib import Path
from typing import Any, get_args

import pytest

from flangebook.bending.part.metals import Figure, Metal, Standing
from flangebook.bending.tools.tooling import Die, Holder, Place, Press, Punch
from flangebook.labels.codes import is_code, with_check

ROOT = Path(__file__).resolve().parents[2]
DEMO = ROOT / "demo_data"
STARTER = ROOT / "server/flangebook/shop/starter_metals.json"


def load(path: Path) -> Any:
    return json.loads(path.read_text("utf-8"))


def demo(name: str) -> Any:
    return load(DEMO / f"{name}.json")[name]


METALS = [("starter", m) for m in load(STARTER)["metals"]] + [("demo", m) for m in demo("metals")]
CARDS: list[dict[str, Any]] = load(DEMO / "parts.json")["cards"]


def str_or_code(value: Any) -> str:
    return value if isinstance(value, str) else str(value["code"])


def fields_of(kind: Any) -> set[str]:
    names = {field.name for field in dataclasses.fields(kind)}
    placed = {field.name for field in dataclasses.fields(Place)}
    # Every size of the demo shop was measured: none is assumed, none unknown.
    kept = names - {"place", "block", "assumed", "unknown"}
    kept |= placed if "place" in names else set()
    return kept | {"openings", "up"} if kind is Die else kept


@pytest.mark.parametrize(
    ("name", "kind"), [("punches", Punch), ("dies", Die), ("holders", Holder), ("metals", Metal)]
)
def test_every_tool_and_metal_has_every_field_and_its_own_code(name: str, kind: Any) -> None:
    things = demo(name)
    assert all(set(thing) == fields_of(kind) for thing in things)
    codes = [thing["code"].casefold() for thing in things]
    assert len(set(codes)) == len(codes)


def test_the_press_has_every_field_and_a_holder_that_is_there() -> None:
    press = demo("press")
    assert set(press) == fields_of(Press)
    assert press["holder"] in {holder["code"] for holder in demo("holders")}
    assert press["force_kn"] == 400
    assert press["bed_length_mm"] == 1600


def test_the_dies_are_the_preferred_numbers() -> None:
    """ISO 3, series R10, as published force charts take them for V openings."""
    openings = {die["v_opening_mm"] for die in demo("dies")}
    assert openings == {6, 8, 10, 12, 16, 20, 25, 32, 40}


def test_the_crib_is_like_a_real_one() -> None:
    tools = [*demo("punches"), *demo("dies"), *demo("holders")]
    assert {p["shape"] for p in demo("punches")} == {"straight", "gooseneck"}
    assert min(p["angle_deg"] for p in demo("punches")) < 45
    assert len({p["tip_radius_mm"] for p in demo("punches")}) >= 3
    assert any(tool["rating_kn_per_m"] is None for tool in tools)
    assert any(tool["condition"] == "worn" and tool["condition_note"] for tool in tools)
    assert all(tool["tray"] for tool in tools)
    holder = next(h for h in demo("holders") if h["code"] == demo("press")["holder"])
    widest = max(p["body_width_mm"] for p in demo("punches"))
    assert holder["overhang_front_mm"] > widest


@pytest.mark.parametrize(
    ("where", "metal"), METALS, ids=lambda v: v if isinstance(v, str) else v["code"]
)
def test_every_figure_of_a_metal_has_a_source_and_a_standing(
    where: str, metal: dict[str, Any]
) -> None:
    figures = {k: v for k, v in metal.items() if isinstance(v, dict)}
    assert len(figures) >= 6
    for name, raw in figures.items():
        figure = Figure(**raw)
        assert figure.low <= figure.nominal <= figure.high, name
        assert figure.source, name
        assert figure.standing in get_args(Standing), name
        if figure.source.startswith("From memory"):
            assert figure.standing == "from memory", name
        if "ommon practice, no source" in figure.source and "published" not in figure.source:
            assert figure.standing == "common practice", name
    Metal(**{k: Figure(**v) if isinstance(v, dict) else v for k, v in metal.items()})


def test_the_demo_metals_are_starter_metals() -> None:
    starter = {m["code"]: m for m in load(STARTER)["metals"]}
    assert len(demo("metals")) >= 5
    assert {"mild-steel-cr", "galvanised", "stainless-304"} <= {m["code"] for m in demo("metals")}
    assert all(starter[m["code"]] == m for m in demo("metals"))


# What the sources print, beside what the file says: (metal, figure, end, printed value, source).
PRINTED = [
    ("aluminium-5052-h32", "youngs_modulus_mpa", "nominal", 70_300, "data sheet"),
    ("aluminium-5052-h32", "yield_mpa", "nominal", 193, "data sheet"),
    ("aluminium-5052-h32", "tensile_mpa", "nominal", 228, "data sheet"),
    ("aluminium-5052-h32", "yield_mpa", "low", 160, "Aluminum Design Manual table 3.3-1M"),
    ("aluminium-5052-h32", "tensile_mpa", "low", 215, "Aluminum Design Manual table 3.3-1M"),
    ("aluminium-5052-o", "yield_mpa", "low", 65, "Aluminum Design Manual table 3.3-1M"),
    ("aluminium-5052-o", "tensile_mpa", "low", 170, "Aluminum Design Manual table 3.3-1M"),
    ("aluminium-6061-t6", "tensile_mpa", "nominal", 310, "data sheet"),
    ("aluminium-3003-h14", "yield_mpa", "nominal", 145, "Kutz table 5, 21 ksi"),
    ("mild-steel-cr", "youngs_modulus_mpa", "nominal", 209_000, "Groover table 3.1"),
    ("mild-steel-cr", "yield_mpa", "low", 175, "Groover table 3.2"),
    ("mild-steel-cr", "yield_mpa", "high", 280, "EN 10130:2006, DC01"),
    ("mild-steel-cr", "tensile_mpa", "low", 270, "EN 10130:2006, DC01"),
    ("mild-steel-cr", "hardening_k_mpa", "low", 500, "Groover table 3.4"),
    ("mild-steel-cr", "hardening_k_mpa", "high", 600, "Callister"),
    ("stainless-304", "tensile_mpa", "low", 515, "ASTM A240"),
    ("stainless-304", "yield_mpa", "low", 205, "ASTM A240"),
    ("stainless-304", "hardening_k_mpa", "low", 1200, "Groover table 3.4"),
    ("stainless-304", "hardening_k_mpa", "high", 1400, "Callister"),
    ("copper-annealed", "youngs_modulus_mpa", "nominal", 110_000, "Groover table 3.1"),
    ("copper-annealed", "tensile_mpa", "nominal", 205, "Groover table 3.2"),
]


@pytest.mark.parametrize(("code", "figure", "end", "printed", "source"), PRINTED)
def test_figures_are_the_printed_ones(
    code: str, figure: str, end: str, printed: float, source: str
) -> None:
    metal = next(m for m in load(STARTER)["metals"] if m["code"] == code)
    assert metal[figure][end] == printed, source


def test_safety_checks_find_the_upper_end_of_the_force_charts() -> None:
    """Published charts: mild steel at 450 MPa, stainless at 700 MPa."""
    tensile = {m["code"]: m["tensile_mpa"]["high"] for m in load(STARTER)["metals"]}
    assert tensile["mild-steel-cr"] >= 450
    assert tensile["stainless-304"] >= 700


def test_the_parts_make_a_varied_shop() -> None:
    parts = [card["part"] for card in CARDS]
    assert len(parts) >= 8
    known = {metal["code"] for metal in demo("metals")}
    assert {part["metal"] for part in parts} <= known
    assert len({part["metal"] for part in parts}) >= 4
    sections = [part for part in parts if "box" not in part]
    (box,) = [part["box"] for part in parts if "box" in part]
    assert set(box["sides"]) == {"left", "right", "front", "back"}
    bends = [bend for part in sections for bend in part["bends"]]
    assert any(0 < bend["included_angle_deg"] < 80 for bend in bends)
    assert any(bend.get("kind") == "closed_hem" for bend in bends)
    assert max(len(part["bends"]) for part in sections) == 6
    assert all(len(part["flats_mm"]) == len(part["bends"]) + 1 for part in sections)
    assert all(card["note"] for card in CARDS)


def test_the_cards_codes_are_fixed_and_right() -> None:
    codes = [with_check(card["body"]) for card in CARDS]
    assert len(set(codes)) == len(codes)
    assert all(is_code(code) for code in codes)
    assert [code[:-1] for code in codes] == [card["body"] for card in CARDS]


def test_some_cards_have_results() -> None:
    results = [result for card in CARDS for result in card.get("results", ())]
    assert len(results) >= 4
    assert len({result["id"] for result in results}) == len(results)
