"""Results as plain JSON-ready dicts: the unit in each name, a band beside each prediction."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from typing import Any

from flangebook.bending.checks import PLAIN, Check, Sentence
from flangebook.bending.estimate import Estimate
from flangebook.bending.motion.handling import general_cautions
from flangebook.bending.part.metals import Metal
from flangebook.bending.part.sheet_gauge import nearest_gauge
from flangebook.bending.prediction.bend_checks import air_bending_only

JsonDict = dict[str, Any]

N_PER_KN = 1000.0


def number(value: float, digits: int = 4) -> float:
    """A finite number, rounded; a minus zero becomes a plain one.

    >>> number(1.23456789)
    1.2346
    >>> number(-0.00000001)
    0.0
    """
    if not math.isfinite(value):
        raise ValueError(f"not a finite number: {value}")
    return round(value, digits) + 0.0


def maybe(value: float | None, digits: int = 4) -> float | None:
    """A number, rounded, or None where it is not known."""
    return None if value is None else number(value, digits)


def gauge_text(metal: Metal, thickness_mm: float) -> str | None:
    """The sheet gauge a thickness goes by in this metal, "16 ga", or None when there is none."""
    family = metal.gauge_family
    gauge = nearest_gauge(thickness_mm, family) if family else None
    return None if gauge is None else f"{gauge} ga"


def banded(
    name: str, estimate: Estimate | None, scale: float = 1.0, digits: int = 4
) -> dict[str, float | None]:
    """A predicted value and its band: ``name``, ``name_low``, ``name_high``.

    >>> banded("force_kn", Estimate(1000.0, 2000.0, 2500.0), 0.001)
    {'force_kn': 2.0, 'force_kn_low': 1.0, 'force_kn_high': 2.5}
    """
    if estimate is None:
        return {name: None, f"{name}_low": None, f"{name}_high": None}
    return {
        name: number(estimate.nominal * scale, digits),
        f"{name}_low": number(estimate.low * scale, digits),
        f"{name}_high": number(estimate.high * scale, digits),
    }


def sources(estimates: Mapping[str, Estimate]) -> dict[str, str]:
    """Where each prediction comes from, one line each."""
    return {
        name: f"{e.origin}: {e.basis}" if e.basis else e.origin for name, e in estimates.items()
    }


def check_json(check: Check) -> JsonDict:
    """One finding; its numbers stand apart, for the reader's units."""
    check = check.called(PLAIN)
    return {
        "level": check.level,
        "code": check.code,
        "template": check.template,
        "do": check.do,
        "numbers": {k: number(v) for k, v in check.numbers.items() if math.isfinite(v)},
        "step": check.step,
        "bend": check.bend,
    }


def sentence_json(said: Sentence) -> JsonDict:
    """Words with their numbers apart."""
    said = said.called(PLAIN)
    return {
        "template": said.template,
        "numbers": {name: number(value) for name, value in said.numbers.items()},
    }


def tools_reason_json(said: Sentence) -> JsonDict:
    """Why the tools are unusual ones; nothing where they are not."""
    return {"tools_reason_said": sentence_json(said)} if said.template else {}


def said_json(said: Iterable[Sentence]) -> JsonDict:
    """Sentences, their numbers apart."""
    return {"said": [sentence_json(one) for one in said]}


def checks_json(checks: Iterable[Check]) -> list[JsonDict]:
    """All findings in the order given, the same one never twice."""
    seen: set[tuple[str, str, int | None, int | None]] = set()
    answer = []
    for check in checks:
        key = (check.code, check.words, check.step, check.bend)
        if key not in seen:
            seen.add(key)
            answer.append(check_json(check))
    return answer


@cache
def _always() -> tuple[JsonDict, ...]:
    return tuple(check_json(c) for c in (air_bending_only(), *general_cautions()))


def always_said() -> list[JsonDict]:
    """What is true of every bend; it stays out of the worst level of an answer."""
    return [dict(one) for one in _always()]


def ring_json(points: Sequence[tuple[float, float]]) -> list[list[float]]:
    """An outline in mm, to a thousandth."""
    return [[round(x, 3) + 0.0, round(y, 3) + 0.0] for x, y in points]
