"""The shop's press, tooling and metals as the calculations see them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields
from typing import Any

from flangebook.bending.geometry.ring import Ring
from flangebook.bending.part.metals import Figure, Metal
from flangebook.bending.tools.tooling import Crib, Die, Holder, Place, Press, Punch
from flangebook.bending.tools.usual_sizes import PRESS_SIZES
from flangebook.bending.tools.v_block import Block, Opening, die_of
from flangebook.shop import documents
from flangebook.shop.storage.database import reading
from flangebook.shop.store import Store
from flangebook.shop.zeros import Zeros, zeros_of

JsonDict = Mapping[str, Any]
_RINGS = ("points_mm", "ram_points_mm", "bed_points_mm", "die_holder_points_mm")


@dataclass(frozen=True, slots=True)
class Tooling:
    """Everything a plan needs to know of the shop. press: None in a shop that has none yet. zeros:
    the settings of its depth and its gauge that are in force."""

    press: Press | None
    crib: Crib
    metals: Mapping[str, Metal]
    zeros: Zeros


def tooling(store: Store) -> Tooling:
    """The shop as it stands; what was read before is used again while nothing changed."""
    return store.cache.get_or_compute("tooling", lambda: _read(store), lambda _: 0)


def _read(store: Store) -> Tooling:
    with reading(store.engine) as connection:
        kept = documents.all_newest(store, connection)
    return _tooling({name: json.loads(one.body) for name, one in kept.items()})


def _tooling(kept: Mapping[documents.Name, Any]) -> Tooling:
    return Tooling(
        press=press_from(kept["press"]) if kept["press"] else None,
        crib=Crib(
            tuple(punch_from(one) for one in kept["punches"]),
            tuple(die for one in kept["dies"] for die in dies_from(one)),
            tuple(holder_from(one) for one in kept["holders"]),
        ),
        metals={one["code"]: metal_from(one) for one in kept["metals"]},
        zeros=zeros_of(kept["press"]),
    )


def press_from(kept: JsonDict) -> Press:
    """The press from its JSON; where it has no size, a usual one that is named as unknown."""
    plain = _plain(kept, Press)
    unknown = tuple(name for name in PRESS_SIZES if name in plain and plain[name] is None)
    return Press(**{**plain, **{name: PRESS_SIZES[name] for name in unknown}, "unknown": unknown})


def punch_from(kept: JsonDict) -> Punch:
    """A punch from its JSON."""
    return Punch(**_tool(kept, Punch))


def die_from(kept: JsonDict) -> Die:
    """A die from its JSON; of a block the one that is up.

    Raises InputError when a block's V's do not fit it.
    """
    if kept.get("shape") == "multi_v":
        return die_of(_block(kept), kept["up"])
    return Die(**_tool(kept, Die))


def dies_from(kept: JsonDict) -> list[Die]:
    """The dies that a die's JSON makes: one, or one for each V of a block.

    Raises InputError when a block's V's do not fit it.
    """
    if kept.get("shape") != "multi_v":
        return [die_from(kept)]
    block = _block(kept)
    return [die_of(block, number) for number in range(1, len(block.openings) + 1)]


def _block(kept: JsonDict) -> Block:
    like = Die(**_tool({**kept, "shape": "single_v", "points_mm": ()}, Die))
    return Block(like, tuple(_opening(one, like) for one in kept["openings"]))


def _opening(kept: JsonDict, like: Die) -> Opening:
    rating = kept["rating_kn_per_m"]
    return Opening(
        kept["code"],
        f"{like.name or like.code}, V {kept['v_opening_mm']:g}",
        kept["v_opening_mm"],
        kept["angle_deg"],
        kept["shoulder_radius_mm"],
        kept["face"],
        kept["centre_mm"],
        like.rating_kn_per_m if rating is None else rating,
    )


def holder_from(kept: JsonDict) -> Holder:
    """A holder from its JSON."""
    return Holder(**_tool(kept, Holder))


def metal_from(kept: JsonDict) -> Metal:
    """A metal from its JSON; every figure an object with low, nominal, high, source, standing."""
    plain = _plain(kept, Metal)
    figures: dict[str, Any] = {k: Figure(**v) for k, v in plain.items() if isinstance(v, dict)}
    return Metal(**(plain | figures))


def _tool(kept: JsonDict, kind: type) -> dict[str, Any]:
    plain = _plain(kept, kind)
    if "segments_mm" in plain:
        plain["segments_mm"] = tuple(plain["segments_mm"])
        plain["assumed"] = tuple(kept.get("assumed") or ())
    plain["place"] = Place(kept.get("tray") or "", kept.get("slot") or "")
    return plain


def _plain(kept: JsonDict, kind: type) -> dict[str, Any]:
    names = {f.name for f in fields(kind)}
    plain = {k: v for k, v in kept.items() if k in names}
    for name in _RINGS:
        if name in plain:
            plain[name] = _ring(plain[name])
    return plain


def _ring(points: Iterable[Iterable[float]]) -> Ring:
    return tuple((float(x), float(y)) for x, y in points)
