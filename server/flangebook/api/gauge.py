"""What the measured flanges of the shop's parts say of its back gauge."""

from __future__ import annotations

import json
from typing import Any

from flangebook.bending.gauge_zero import GaugeZero, gauge_zero
from flangebook.planning.answer import JsonDict, number
from flangebook.shop import documents, trials
from flangebook.shop.store import Store


def gauge_answer(store: Store) -> JsonDict:
    """The gauge's zero that is proposed, and what is left to the deductions; nothing is set."""
    press: dict[str, Any] | None = json.loads(documents.read(store, "press").body)
    since = str((press or {}).get("gauge_zeroed_at") or "")
    errors: dict[str, list[float]] = {}
    for sheet, flange in trials.flanges(store, since):
        group = f"{sheet}, V {flange['v_opening_mm']:g}"
        errors.setdefault(group, []).append(flange["off_plan_mm"])
    found = gauge_zero(errors)
    return {
        "zero_mm": number(found.zero_mm),
        "sd_mm": number(found.sd_mm),
        "flanges": found.flanges,
        "systematic": found.systematic,
        "deductions": [
            {"of": group, "flanges": len(errors[group]), "more_mm": number(more)}
            for group, more in sorted(found.deductions_mm.items())
        ],
        "words": _words(found),
    }


def _words(found: GaugeZero) -> str:
    if not found.systematic:
        return ""
    where = "back" if found.zero_mm > 0.0 else "forward"
    return (
        f"{found.flanges} flanges agree: the gauge stands {abs(found.zero_mm):.2f} mm too far "
        f"{where}. Set its zero by as much at the press, then say so here."
    )
