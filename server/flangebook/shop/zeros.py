"""Since when the press's depth and its back gauge stand as they do.

An error of either holds until its zero is set anew or another press comes. What was measured
before goes on teaching the metals, and says nothing of the press or the gauge as they stand now:
each result is kept with the names of both settings that were in force.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from flangebook.shop.storage.writing import now

PLATE = ("force_kn", "bed_length_mm")
"""Figures that stay as long as it is the same press."""
PRESS, GAUGE = "depth_zeroed_at", "gauge_zeroed_at"


@dataclass(frozen=True, slots=True)
class Zeros:
    """Names of the settings in force: of the press's depth, of its gauge; empty before either was
    ever set anew."""

    press: str = ""
    gauge: str = ""


NEVER_SET = Zeros()


def zeros_of(press: Mapping[str, Any] | None, made_at: str | None = None) -> Zeros:
    """The settings in force at a moment; None is now.

    press: its document, None without one. made_at: moment in UTC; what was made before the zeros
    were set and comes after it, from a device without network, belongs to neither.
    """
    found = press or {}
    return Zeros(*(_name(str(found.get(field) or ""), made_at) for field in (PRESS, GAUGE)))


def _name(since: str, made_at: str | None) -> str:
    if since and made_at and datetime.fromisoformat(made_at) < datetime.fromisoformat(since):
        return f"before {since}"
    return since


def with_zeros(new: Mapping[str, Any], kept: Mapping[str, Any] | None) -> dict[str, Any]:
    """A press's document as it is to be kept in the place of another.

    A moment that is left out stays as it was. Another plate is another press: both errors are
    learned anew from now on.
    """
    old = kept or {}
    same = {field: new.get(field, old.get(field)) for field in (PRESS, GAUGE)}
    if kept is not None and any(new[figure] != old.get(figure) for figure in PLATE):
        moment = now()
        same = {field: moment if same[field] == old.get(field) else same[field] for field in same}
    rest = {field: value for field, value in new.items() if field not in same}
    return {**rest, **same}  # always in the same place: the same content is kept once
