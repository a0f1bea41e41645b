"""The demo shop and the starter metals as the engine takes them."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from flangebook.bending.tools.tooling import Crib
from flangebook.shop import demo
from flangebook.shop.crib import dies_from, holder_from, metal_from, press_from, punch_from

ROOT = Path(__file__).resolve().parents[2]


def _read(path: Path) -> Any:
    return json.loads(path.read_text("utf-8"))[path.stem.removeprefix("starter_")]


DEMO = {name: _read(ROOT / f"demo_data/{name}.json") for name in ("punches", "dies", "holders")}
DEMO_CRIB = Crib(
    tuple(punch_from(one) for one in DEMO["punches"]),
    tuple(die for one in DEMO["dies"] for die in dies_from(one)),
    tuple(holder_from(one) for one in DEMO["holders"]),
)
DEMO_PRESS = press_from(_read(ROOT / "demo_data/press.json"))
STARTER_METALS = {one["code"]: metal_from(one) for one in _read(demo.STARTER_METALS)}
