"""What a fresh plan would change against the one that was saved, in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from flangebook.bending.checks import SEVERITY, degrees, fill
from flangebook.planning.answers.answer import JsonDict

MOST_DIFFERENCES = 400


@dataclass(frozen=True, slots=True)
class Watched:
    """A figure that matters at the press: its field, its words, its unit, and how far it may
    drift before it counts as different [in the field's unit]."""

    field: str
    words: str
    unit: str = ""
    drift: float = 0.0


BLANK = (
    Watched("length_mm", "blank length", " mm", 0.02),
    Watched("width_mm", "blank width", " mm", 0.02),
    Watched("mass_kg", "blank mass", " kg", 0.005),
)
BEND_LINE = (Watched("at_mm", "bend line", " mm", 0.02),)
STEP = (
    Watched("bend", "bend made"),
    Watched("operation", "kind of step"),
    Watched("punch", "punch"),
    Watched("die", "die"),
    Watched("holder", "holder"),
    Watched("inside_face", "face up"),
    Watched("gauged_end", "end at the gauge"),
    Watched("turn_over", "turn over first"),
    Watched("turn_end", "turn end for end first"),
    Watched("gauge_x_mm", "gauge X", " mm", 0.02),
    Watched("gauge_r_mm", "gauge R", " mm", 0.1),
    Watched("set_angle_deg", "angle to set", "°", 0.05),
    Watched("punch_depth_mm", "punch depth", " mm", 0.01),
    Watched("force_kn_high", "force to allow for", " kN", 0.5),
    Watched("force_kn", "expected force", " kN", 0.5),
    Watched("inside_radius_mm", "inside radius", " mm", 0.05),
    Watched("min_flange_mm", "smallest flange", " mm", 0.05),
)


def differences(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> list[JsonDict]:
    """Every difference that matters between two plans of the same part, worst places first.

    saved, fresh: plans as ``plan()`` gives them. Each difference has ``where`` ("blank",
    "step 2", "checks", ...), ``what``, ``saved`` and ``fresh`` in words, and the ``field`` with
    its bare values for a screen that shows other units.
    """
    found = [*_blank(saved, fresh), *_order(saved, fresh), *_steps(saved, fresh),
             *_tools(saved, fresh), *_checks(saved, fresh)]  # fmt: skip
    return found[:MOST_DIFFERENCES]


def in_words(found: Sequence[Mapping[str, Any]]) -> str:
    """One sentence for all of it."""
    if not found:
        return "A fresh plan comes out the same."
    places: list[str] = []
    for one in found:
        if one["where"] not in places:
            places.append(one["where"])
    count = "1 difference" if len(found) == 1 else f"{len(found)} differences"
    more = f" and {len(places) - 4} more places" if len(places) > 4 else ""
    return f"A fresh plan differs: {count}, in {', '.join(places[:4])}{more}."


def _difference(where: str, one: Watched, saved: Any, fresh: Any) -> JsonDict:
    return {
        "where": where,
        "what": one.words,
        "field": one.field,
        "saved": _said(saved, one.unit),
        "fresh": _said(fresh, one.unit),
        "saved_value": saved,
        "fresh_value": fresh,
    }


def _said(value: Any, unit: str) -> str:
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (int, float)):
        if unit == "°":
            return degrees(value) + unit
        return f"{value:.2f}".rstrip("0").rstrip(".") + unit
    return str(value)


def _differs(saved: Any, fresh: Any, drift: float) -> bool:
    for value in (saved, fresh):
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            return bool(saved != fresh)
    return bool(abs(saved - fresh) > drift)


def _watched(
    where: str, watch: Sequence[Watched], saved: Mapping[str, Any], fresh: Mapping[str, Any]
) -> Iterator[JsonDict]:
    for one in watch:
        before, after = saved.get(one.field), fresh.get(one.field)
        if _differs(before, after, one.drift):
            yield _difference(where, one, before, after)


def _blank(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> Iterator[JsonDict]:
    before, after = saved.get("blank") or {}, fresh.get("blank") or {}
    yield from _watched("blank", BLANK, before, after)
    lines = (before.get("bend_lines") or [], after.get("bend_lines") or [])
    for old, new in zip(*lines, strict=False):
        yield from _watched(f"bend line {new.get('bend')}", BEND_LINE, old, new)
    if len(lines[0]) != len(lines[1]):
        yield _difference("blank", Watched("bend_lines", "number of bend lines"),
                          len(lines[0]), len(lines[1]))  # fmt: skip


def _order(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> Iterator[JsonDict]:
    before = (saved.get("order") or {}).get("sequence") or []
    after = (fresh.get("order") or {}).get("sequence") or []
    if list(before) != list(after):
        words = (", ".join(map(str, before)), ", ".join(map(str, after)))
        yield _difference("order", Watched("sequence", "order of bends"), *words)


def _steps(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> Iterator[JsonDict]:
    before, after = saved.get("steps") or [], fresh.get("steps") or []
    for old, new in zip(before, after, strict=False):
        yield from _watched(f"step {new.get('number')}", STEP, old, new)
    if len(before) != len(after):
        yield _difference("steps", Watched("steps", "number of steps"), len(before), len(after))


def _tools(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> Iterator[JsonDict]:
    """Tools used by both plans that lie elsewhere or are put together otherwise now."""
    before = {(t.get("kind"), t.get("code")): t for t in saved.get("tools") or []}
    watch = (
        Watched("tray", "tray"),
        Watched("slot", "slot"),
        Watched("condition", "condition"),
        Watched("rating_kn_per_m", "rating", " kN/m", 0.01),
        Watched("segments_mm", "segments"),
    )
    for new in fresh.get("tools") or []:
        old = before.get((new.get("kind"), new.get("code")))
        if old is not None:
            yield from _watched(f"{new.get('kind')} {new.get('code')}", watch, old, new)


def _checks(saved: Mapping[str, Any], fresh: Mapping[str, Any]) -> Iterator[JsonDict]:
    before, after = _findings(saved), _findings(fresh)
    for key in [*before, *(k for k in after if k not in before)]:
        old, new = before.get(key), after.get(key)
        level = (old or {}).get("level"), (new or {}).get("level")
        if level[0] == level[1]:
            continue
        said = [f"{x['level']}: {_in_words(x)}" if x else "not there" for x in (old, new)]
        words = f"check: {_in_words(new or old or {})}"
        yield _difference(_place(key), Watched("checks", words), *said)


def _in_words(check: Mapping[str, Any]) -> str:
    return fill(check.get("template", ""), check.get("numbers", {}))


def _place(key: tuple[str, int | None, int | None]) -> str:
    _, step, bend = key
    if step is not None:
        return f"step {step}"
    return f"bend {bend}" if bend is not None else "checks"


def _findings(
    plan: Mapping[str, Any],
) -> dict[tuple[str, int | None, int | None], Mapping[str, Any]]:
    """The plan's findings by code and place; of several alike the most serious."""
    found: dict[tuple[str, int | None, int | None], Mapping[str, Any]] = {}
    for check in plan.get("checks") or []:
        key = (check.get("code", ""), check.get("step"), check.get("bend"))
        held = found.get(key)
        if held is None or SEVERITY.get(check["level"], 0) > SEVERITY.get(held["level"], 0):
            found[key] = check
    return found
