"""What changed from one revision to the next, in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from flangebook.bending.checks import degrees, tidy
from flangebook.shop.cards import Content

MOST_CHANGES = 60
_SHOWN = 60

_FIELDS = {
    "metal": ("metal", ""),
    "thickness_mm": ("thickness", " mm"),
    "bend_length_mm": ("bend length", " mm"),
    "dimension": ("dimensions", ""),
    "grain": ("grain", ""),
}
_SIDES = ("left", "right", "front", "back")
_BOX_FIELDS = {
    "length_mm": ("length", " mm"),
    "width_mm": ("width", " mm"),
    "relief": ("relief", ""),
    "relief_mm": ("size of the relief", " mm"),
    "corner": ("corners", ""),
    "gap_mm": ("gap at the corners", " mm"),
    "first_pair": ("sides bent first", ""),
}
_TOOL_FIELDS = {"die": ("die", ""), "punch": ("punch", "")}
_BEND_FIELDS = {
    "included_angle_deg": ("angle", "°"),
    "direction": ("direction", ""),
    "inside_radius_mm": ("inside radius", " mm"),
    "kind": ("kind", ""),
    "hem_gap_mm": ("hem gap", " mm"),
    **_TOOL_FIELDS,
}
_SETTING_FIELDS = {
    "set_angle_deg": ("angle to set", "°"),
    "punch_depth_mm": ("punch depth", " mm"),
}


def changes(before: Content, after: Content) -> list[str]:
    """Every difference between two revisions of a card that a person made.

    >>> old = Content("Bracket", "", {"flats_mm": [20, 30]}, "{}", "ok")
    >>> new = Content("Bracket, left", "", {"flats_mm": [20, 32.5]}, "{}", "ok")
    >>> changes(old, new)
    ['title: "Bracket" to "Bracket, left"', 'flat 2: 30 mm to 32.5 mm']
    """
    found = [
        *_text("title", before.title, after.title),
        *_text("note", before.note, after.note),
        *_part(before.part, after.part),
        *_settings(before.settings, after.settings),
        *_archived(before.archived, after.archived),
    ]
    if len(found) > MOST_CHANGES:
        return [*found[: MOST_CHANGES - 1], f"and {len(found) - MOST_CHANGES + 1} more"]
    return found


def _text(what: str, before: str, after: str) -> Iterator[str]:
    if before != after:
        yield f"{what}: {_quoted(before)} to {_quoted(after)}"


def _quoted(text: str) -> str:
    if not text:
        return "nothing"
    return f'"{text if len(text) <= _SHOWN else text[:_SHOWN] + "…"}"'


def _part(before: Mapping[str, Any], after: Mapping[str, Any]) -> Iterator[str]:
    if before.get("box") or after.get("box"):
        yield from _box(before, after)
        return
    yield from _fields("", _FIELDS, before, after)
    yield from _named_tools(before, after)
    yield from _each("flat", before.get("flats_mm") or [], after.get("flats_mm") or [])
    old, new = before.get("bends") or [], after.get("bends") or []
    for number, (one, other) in enumerate(zip(old, new, strict=False), start=1):
        yield from _fields(f"bend {number} ", _BEND_FIELDS, one, other)
    if len(old) != len(new):
        yield f"bends: {len(old)} to {len(new)}"
    yield from _orders(before, after)
    if (before.get("holes") or []) != (after.get("holes") or []):
        yield f"holes: {len(before.get('holes') or [])} to {len(after.get('holes') or [])}"


def _box(before: Mapping[str, Any], after: Mapping[str, Any]) -> Iterator[str]:
    """Differences of a box; its flats and bends are those of its sides."""
    fields = {k: v for k, v in _FIELDS.items() if k != "bend_length_mm"}
    yield from _fields("", fields, before, after)
    yield from _named_tools(before, after)
    old, new = before.get("box") or {}, after.get("box") or {}
    if not old or not new:
        yield "a box in place of a section" if new else "a section in place of a box"
        return
    # A box of before this could be asked for was bent left and right first.
    old = {"first_pair": "left-right", **old}
    yield from _fields("", _BOX_FIELDS, old, new)
    yield from _orders(before, after)
    for name in _SIDES:
        one, other = old["sides"].get(name), new["sides"].get(name)
        if (one is None) != (other is None):
            yield f"{name} side: {'taken away' if other is None else 'added'}"
        elif one is not None and other is not None:
            yield from _each(f"{name} flat", one["flats_mm"], other["flats_mm"])
            pairs = zip(one["bends"], other["bends"], strict=False)
            for number, (bend, changed) in enumerate(pairs, start=1):
                yield from _fields(f"{name} bend {number} ", _BEND_FIELDS, bend, changed)


def _named_tools(before: Mapping[str, Any], after: Mapping[str, Any]) -> Iterator[str]:
    old, new = before.get("tools") or {}, after.get("tools") or {}
    yield from _fields("asked for: ", _TOOL_FIELDS, old, new)


def _orders(before: Mapping[str, Any], after: Mapping[str, Any]) -> Iterator[str]:
    if (before.get("order") or []) != (after.get("order") or []):
        yield f"order: {_order(before)} to {_order(after)}"


def _order(part: Mapping[str, Any]) -> str:
    return ", ".join(str(n) for n in part.get("order") or []) or "left to the planner"


def _each(what: str, before: Sequence[float], after: Sequence[float]) -> Iterator[str]:
    for number, (one, other) in enumerate(zip(before, after, strict=False), start=1):
        if one != other:
            yield f"{what} {number}: {_said(one, ' mm')} to {_said(other, ' mm')}"
    if len(before) != len(after):
        yield f"{what}s: {len(before)} to {len(after)}"


def _settings(
    before: Sequence[Mapping[str, Any]], after: Sequence[Mapping[str, Any]]
) -> Iterator[str]:
    old = {one["step"]: one for one in before}
    new = {one["step"]: one for one in after}
    for step in sorted(old.keys() | new.keys()):
        if step not in new:
            yield f"step {step}: back to the planned setting"
        else:
            yield from _fields(f"step {step} ", _SETTING_FIELDS, old.get(step, {}), new[step])


def _archived(before: bool, after: bool) -> Iterator[str]:
    if before != after:
        yield "put away" if after else "taken out again"


def _fields(
    where: str,
    fields: Mapping[str, tuple[str, str]],
    before: Mapping[str, Any],
    after: Mapping[str, Any],
) -> Iterator[str]:
    for name, (what, unit) in fields.items():
        one, other = before.get(name), after.get(name)
        if one != other:
            yield f"{where}{what}: {_said(one, unit)} to {_said(other, unit)}"


def _said(value: Any, unit: str) -> str:
    if value is None:
        return "none"
    if isinstance(value, bool) or not isinstance(value, int | float):
        return str(value)
    return f"{degrees(value) if unit == '°' else tidy(value)}{unit}"
