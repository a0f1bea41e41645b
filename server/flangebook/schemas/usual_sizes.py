"""A tool's sizes that were left out and named as assumed: filled before the rest is read."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import marshmallow as ma

from flangebook.bending.tools.usual_sizes import usual_block, usual_die

JsonDict = dict[str, Any]


def read_sizes(schema: ma.Schema, data: Any, names: Sequence[str]) -> list[float] | None:
    """What the others follow from, in order; None where nothing is to be filled, or one of them
    cannot be read, which is told at its own field."""
    if not isinstance(data, dict) or not isinstance(data.get("assumed"), list):
        return None
    known = known_sizes(schema, data, names)
    return [known[name] for name in names] if len(known) == len(names) else None


def known_sizes(schema: ma.Schema, data: JsonDict, names: Sequence[str]) -> dict[str, float]:
    """Those of the sizes that are given and can be read."""
    found = {}
    for name in names:
        if data.get(name) is None:
            continue
        try:
            value = schema.fields[name].deserialize(data[name])
        except ma.ValidationError:
            continue
        if isinstance(value, float):
            found[name] = value
    return found


def filled(data: JsonDict, usual: dict[str, float]) -> JsonDict:
    """With the usual size of each that is named as assumed and has none."""
    named = {name for name in data["assumed"] if isinstance(name, str)}
    return data | {
        name: size for name, size in usual.items() if name in named and data.get(name) is None
    }


def block_filled(opening: ma.Schema, data: JsonDict) -> JsonDict:
    """A block with its usual side, and its V's with shoulders and places, where left out."""
    openings = data.get("openings")
    if not isinstance(openings, list) or not all(isinstance(one, dict) for one in openings):
        return data
    sizes = [
        read_sizes(opening, {**one, "assumed": data.get("assumed")}, ("v_opening_mm", "angle_deg"))
        for one in openings
    ]
    vs = [(size[0], size[1]) for size in sizes if size is not None]
    if not vs or len(vs) < len(openings):
        return data
    block = usual_block(vs)
    assumed_width = data.get("width_mm") is None
    made = []
    for given, v, (face, centre) in zip(openings, vs, block.places, strict=True):
        shoulder = {"shoulder_radius_mm": usual_die(*v)["shoulder_radius_mm"]}
        one = filled({**given, "assumed": data["assumed"]}, shoulder)
        place = {"face": face, "centre_mm": centre} if assumed_width else {}
        made.append({key: it for key, it in {**one, **place}.items() if key != "assumed"})
    side = {"height_mm": block.side_mm, "width_mm": block.side_mm}
    return filled({**data, "openings": made}, side)
