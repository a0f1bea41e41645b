"""What a label says: taken from a card as the API gives it, in the units of its owner."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from flangebook.planning.answers.setting_json import in_force

Units = Literal["mm", "inch"]
_MM_PER_INCH = 25.4
_KN_PER_SHORT_TON = 8.896443
_WORST = {"stop": "STOP: read the card", "caution": "Caution: read the card",
          "unknown": "Unknown: read the card", "ok": ""}  # fmt: skip

_MOVES = (
    ("turn_quarter", "quarter turn"),
    ("turn_over", "turn over"),
    ("turn_end", "turn end"),
)
_SHORT = {"hem pre-bend": " pre-bend", "hem flatten": " flatten", "step bend": " in steps"}


@dataclass(frozen=True, slots=True)
class StepFact:
    """One step in words: "1 90° up", "set 88.8°", "X 57.3", "turn over"; tools if they differ."""

    name: str
    setting: str
    gauge: str
    moves: str
    tools: str


@dataclass(frozen=True, slots=True)
class LabelFacts:
    """The essentials of a card as words. allow_for, expected: the greatest force of its steps, to
    allow for and expected; empty where no step has one. worst: level of the worst finding."""

    code: str
    shown_code: str
    revision: int
    title: str
    metal: str
    thickness: str
    blank: str
    tools: str
    allow_for: str
    expected: str
    bends: str
    worst: str
    warning: str
    order_warning: str
    steps: tuple[StepFact, ...]


def facts_of_card(
    card: Mapping[str, Any], units: Units = "mm", metal_names: Mapping[str, str] | None = None
) -> LabelFacts:
    """The essentials of a card.

    card: as ``GET /api/v1/cards/CODE`` gives it. units: of the lengths on the label.
    metal_names: the shop's metals by code; one that is not there is shown by its code.
    """
    part, plan = card["part"], card["plan"]
    steps = plan.get("steps", [])
    named = [tool for tool in dict.fromkeys(_tools(step) for step in steps) if tool]
    same = len(named) == 1
    settings = {s["step"]: s for s in card.get("settings", [])}
    return LabelFacts(
        code=card["code"],
        shown_code=card.get("display_code") or card["code"],
        revision=int(card["revision"]),
        title=str(card["title"]),
        metal=(metal_names or {}).get(part["metal"], part["metal"]),
        thickness=_thickness(part, plan, units),
        blank=_blank(part, plan, units),
        tools=" / ".join(named),
        allow_for=_greatest(steps, "force_kn_high", units),
        expected=_greatest(steps, "force_kn", units),
        bends=_bends(part["bends"]),
        worst=plan.get("worst", "ok"),
        warning=_WORST.get(plan.get("worst", "ok"), ""),
        order_warning=_order_warning(plan.get("order")),
        steps=tuple(
            _step(
                step, settings.get(step["number"], {}), units, "" if same else _tools(step, "", " ")
            )
            for step in steps
        ),
    )


def length(mm: float | None, units: Units, digits_mm: int = 1) -> str:
    """A length without its unit: decimals of a mm, thousandths of an inch.

    >>> length(57.25, "mm"), length(25.4, "inch"), length(None, "mm")
    ('57.3', '1', '?')
    """
    if mm is None:
        return "?"
    value, digits = (mm / _MM_PER_INCH, 3) if units == "inch" else (mm, digits_mm)
    # Half away from zero, as people round; a hair is added so that 57.25 is not 57.2.
    text = f"{value + (1e-9 if value >= 0 else -1e-9):.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def unit(units: Units) -> str:
    """The unit's sign behind a length."""
    return "in" if units == "inch" else "mm"


def force(kn: float, units: Units) -> str:
    """A force with its unit, rounded up: a press set by it must not come short.

    >>> force(57.12, "mm"), force(5.71, "mm"), force(57.12, "inch")
    ('58 kN', '5.8 kN', '6.5 tons')
    """
    value, sign = (kn / _KN_PER_SHORT_TON, "tons") if units == "inch" else (kn, "kN")
    parts = 1 if units == "mm" and kn >= 10.0 else 10
    return f"{math.ceil(value * parts - 1e-9) / parts:.10g} {sign}"


def _greatest(steps: Iterable[Mapping[str, Any]], name: str, units: Units) -> str:
    """The greatest of the steps' forces in words, empty where none is known."""
    known = [step[name] for step in steps if step.get(name) is not None]
    return force(max(known), units) if known else ""


def _thickness(part: Mapping[str, Any], plan: Mapping[str, Any], units: Units) -> str:
    text = f"{length(part['thickness_mm'], units, 2)} {unit(units)}"
    gauge = plan.get("thickness_gauge")
    return f"{text} ({gauge})" if gauge else text


def _blank(part: Mapping[str, Any], plan: Mapping[str, Any], units: Units) -> str:
    long = length(plan.get("blank_length_mm"), units)
    wide = plan["blank"]["width_mm"] if part.get("box") else part["bend_length_mm"]
    return f"Blank {long} × {length(wide, units)} {unit(units)}"


def _tools(step: Mapping[str, Any], space: str = " ", between: str = " · ") -> str:
    if _is_flattening(step):
        return ""
    v = step.get("v_opening_mm")
    opening = f"V{space}{length(v, 'mm')}" if v is not None else "no die"
    return f"{opening}{between}{step.get('punch') or 'no punch'}"


def _is_flattening(step: Mapping[str, Any]) -> bool:
    """Whether the step presses a hem flat: there is no angle to set and no gauge."""
    return step.get("operation") == "hem flatten" and step.get("set_angle_deg") is None


def _bends(bends: Iterable[Mapping[str, Any]]) -> str:
    count = len(list(bends))
    return "1 bend" if count == 1 else f"{count} bends"


def _order_warning(order: Mapping[str, Any] | None) -> str:
    clear = bool(order and order.get("proven"))
    return "" if clear else "Clearance not checked"


def _step(
    step: Mapping[str, Any], setting: Mapping[str, Any], units: Units, tools: str
) -> StepFact:
    angle, _ = in_force(step, setting)
    if _is_flattening(step):
        return StepFact(f"{step['number']} flatten the hem", "", "", "", tools)
    what = _SHORT.get(step.get("operation", "bend"), "")
    moves = [words for key, words in _MOVES if step.get(key)]
    return StepFact(
        name=f"{step['number']}  {_of_side(step)}{length(step['included_angle_deg'], 'mm')}° "
        f"{step['direction']}{what}",
        setting=_setting(step, setting, angle),
        gauge=f"X {length(step.get('gauge_x_mm'), units)}",
        moves=", ".join(moves),
        tools=tools,
    )


def _setting(step: Mapping[str, Any], own: Mapping[str, Any], angle_deg: float | None) -> str:
    """What to set; the first hit by its name, so that nobody takes it for the last word."""
    if angle_deg is None:
        return "no setting"
    first = step.get("first_hit") is not None and own.get("set_angle_deg") is None
    return f"{'first hit' if first else 'set'} {length(angle_deg, 'mm')}°"


def _of_side(step: Mapping[str, Any]) -> str:
    """Which side of a box the step bends."""
    return f"{step['side']} " if step.get("side") else ""
