"""The plans of a box's two sections as one: steps, tools, stations, order and findings.

Steps and bends of the second section go on counting where the first one's end.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from flangebook.bending.box.box import (
    CALLED,
    ENDS_OF,
    Pair,
    bends_of,
    flat_name,
    flats_before,
    renamed,
)
from flangebook.bending.checks import SEVERITY, Check
from flangebook.planning.answers.answer import JsonDict, check_json, maybe, number
from flangebook.planning.box.plan import PlannedBox
from flangebook.planning.box.walls import Pieces, WalledStep, steps_lines, walled_checks
from flangebook.planning.order.search import HANDLING_WORDS

PAIR_WORDS: dict[Pair, str] = {pair: words.capitalize() for pair, words in CALLED.items()}
ALWAYS = ("general-", "air-bending-only")
SAID_BETTER = ("lifting", "punch-too-short", "die-too-short")
"""Findings of a section's plan that the box makes for itself."""
FORCES = ("force_kn", "force_kn_low", "force_kn_high")
COUNTS = ("looked_at", *HANDLING_WORDS)
IN_THE_WAY = "But as a box it cannot be made like this: see what says stop."


def merged_steps(found: PlannedBox) -> list[JsonDict]:
    """All steps, each with the length of its own bend and its own pieces of tools."""
    lines = steps_lines(found.shape, found.blank)
    numbers = {(b.pair, b.in_section): b.number for b in bends_of(found.box)}
    steps: list[JsonDict] = []
    for pair, plan in found.plans.items():
        before, first = len(steps), True
        names = Flats(found, pair, flats_before(found.box, pair))
        for i, step in enumerate(plan["steps"]):
            line, walled = lines[pair, step["bend"]], found.walled[pair, i]
            bend = numbers[pair, step["bend"]]
            share = line.length_mm / _planned_length(plan)
            said = [
                *(_check(found, pair, one, before, numbers) for one in step["checks"]),
                *_walled(found, pair, i, before + i + 1, bend),
            ]
            steps.append(
                {
                    **step,
                    **{k: number(step[k] * share) if step[k] is not None else None for k in FORCES},
                    "number": before + i + 1,
                    "bend": bend,
                    "bend_length_mm": number(line.length_mm),
                    "side": line.side,
                    "gauged_side": ENDS_OF[pair][0 if step["gauged_end"] == "left" else 1],
                    "turn_quarter": first and before > 0,
                    "segments_mm": _segments(found, pair, i),
                    "clear_between_mm": maybe(walled.clear_mm),
                    "sides_near": near_of(walled),
                    "checks": [c for c in said if not _said_better(c)],
                    **_over(step, names),
                }
            )
            first = False
    return _numbered_stations(steps)


def _planned_length(plan: JsonDict) -> float:
    return float(plan["part"]["bend_length_mm"])


@dataclass(frozen=True, slots=True)
class Flats:
    """The flats of a section in the box: how many come before them, and what they are called."""

    found: PlannedBox
    pair: Pair
    before: int

    def further(self, near: JsonDict | None) -> JsonDict | None:
        """What speaks of a flat of the section, speaking of the box's."""
        if near is None:
            return None
        name = flat_name(self.found.box, self.pair, near["flat"])
        return {**near, "flat": near["flat"] + self.before, "flat_name": name}


def _over(step: JsonDict, flats: Flats) -> JsonDict:
    """What speaks of flats by number, the numbers counted over the box."""
    moved: JsonDict = {}
    if step.get("gauges_flat") is not None:
        moved["gauges_flat"] = step["gauges_flat"] + flats.before
    clear = step.get("clearance")
    if clear is not None:
        moved["clearance"] = {
            **clear,
            "nearest": flats.further(clear["nearest"]),
            "hits": [flats.further(one) for one in clear["hits"]],
        }
    return moved


def _segments(found: PlannedBox, pair: Pair, i: int) -> JsonDict:
    walled = found.walled[pair, i]
    return {
        "punch": [number(x) for x in _shared(found, pair, i, "punch", walled.punch)],
        "die": [number(x) for x in _shared(found, pair, i, "die", walled.die)],
    }


def _shared(found: PlannedBox, pair: Pair, i: int, kind: str, own: Pieces) -> tuple[float, ...]:
    """The pieces that another step has in the same tool, where they do here as well: so that the
    set-up stays as it is. The pieces that have to fit between finished sides come first."""
    here = _tool(found, pair, i, kind)
    best = own.segments_mm
    for (other_pair, j), walled in found.walled.items():
        other: Pieces = getattr(walled, kind)
        if here is None or _tool(found, other_pair, j, kind) != here or not other.segments_mm:
            continue
        if other.total_mm < own.wanted_mm - 1e-6:
            continue
        if own.most_mm is not None and other.total_mm > own.most_mm:
            continue
        if other.total_mm > math.fsum(best):
            best = other.segments_mm
    return best


def _tool(found: PlannedBox, pair: Pair, i: int, kind: str) -> Any:
    tools = found.tools[pair, i]
    return None if tools is None else getattr(tools, kind)


def _walled(found: PlannedBox, pair: Pair, i: int, step: int, bend: int) -> list[JsonDict]:
    checks = walled_checks(found.shape, found.walled[pair, i], found.tools[pair, i], found.clearing)
    return [check_json(one.at(step=step, bend=bend)) for one in checks]


def _check(
    found: PlannedBox,
    pair: Pair,
    check: JsonDict,
    steps: int,
    numbers: Mapping[tuple[Pair, int], int],
) -> JsonDict:
    """A section's finding with the names and numbers that things have in the box."""
    texts = {k: renamed(found.box, pair, check[k]) for k in ("words", "template", "do")}
    step, bend = check["step"], check["bend"]
    return {
        **check,
        **texts,
        "do_template": renamed(found.box, pair, check["do_template"]),
        "step": step + steps if step is not None else None,
        "bend": numbers[pair, bend] if bend is not None else None,
    }


def _said_better(check: JsonDict) -> bool:
    return bool(check["code"].startswith(SAID_BETTER))


def _numbered_stations(steps: list[JsonDict]) -> list[JsonDict]:
    """Steps of the same pieces of the same tools share a station."""
    known: dict[Any, int] = {}
    for step in steps:
        if step["punch"] is None or "station" not in step:
            continue
        key = _station_key(step)
        step["station"] = known.setdefault(key, len(known) + 1)
    return steps


def _station_key(step: JsonDict) -> tuple[Any, ...]:
    pieces = step["segments_mm"]
    return (step["punch"], step["die"], step.get("punch_turned"), tuple(pieces["punch"]),
            tuple(pieces["die"]))  # fmt: skip


def merged_stations(found: PlannedBox, steps: Sequence[JsonDict]) -> list[JsonDict]:
    """The stations of the whole job, each in the middle in its turn or as its section has it."""
    planned = {
        (s["punch"], s["die"], s.get("turned")): s
        for plan in reversed(list(found.plans.values()))
        for s in plan.get("stations", ())
    }
    grouped: dict[int, list[JsonDict]] = {}
    for step in steps:
        if step["punch"] is not None and step.get("station") is not None:
            grouped.setdefault(step["station"], []).append(step)
    stations = []
    for one, group in grouped.items():
        first = group[0]
        base = planned.get((first["punch"], first["die"], first.get("punch_turned")))
        if base is None:
            continue
        pieces = first["segments_mm"]
        lengths = [math.fsum(pieces["punch"]), math.fsum(pieces["die"])]
        stations.append(
            {
                **base,
                "number": one,
                "length_mm": number(max(*lengths, *(s["bend_length_mm"] for s in group))),
                "punch_segments_mm": pieces["punch"],
                "die_segments_mm": pieces["die"],
                "force_kn": max(s["force_kn"] for s in group),
                "force_kn_high": max(s["force_kn_high"] for s in group),
                "steps": [s["number"] for s in group],
            }
        )
    return stations


def merged_tools(found: PlannedBox, steps: Sequence[JsonDict]) -> list[JsonDict]:
    """Every tool to fetch with all pieces that the steps need of it."""
    tools: dict[tuple[str, str], JsonDict] = {}
    for plan in found.plans.values():
        for tool in plan["tools"]:
            tools.setdefault((tool["kind"], tool["code"]), tool)
    said = []
    for (kind, code), tool in tools.items():
        users = [s for s in steps if s[kind] == code]
        needed: Counter[float] = Counter()
        for step in users:
            needed |= Counter(step["segments_mm"].get(kind, ()))
        pieces = sorted(needed.elements(), reverse=True)
        said.append(
            {
                **tool,
                "segments_mm": pieces,
                "segments_total_mm": number(math.fsum(pieces)),
                "steps": [s["number"] for s in users],
            }
        )
    return said


def merged_order(found: PlannedBox, checks: Sequence[JsonDict]) -> JsonDict:
    """The order of all bends; proven only if both sections' are and no finished side is in the
    way."""
    orders = {pair: plan["order"] for pair, plan in found.plans.items()}
    numbers = {(b.pair, b.in_section): b.number for b in bends_of(found.box)}
    first = next(iter(orders.values()))
    clear = not any(c["level"] == "stop" and c["code"].startswith("box-") for c in checks)
    steps = 0
    blocked: list[JsonDict] = []
    for pair, plan in found.plans.items():
        for one in plan["order"].get("blocked", ()):
            step = one["step"]
            blocked.append(
                {
                    **one,
                    "bend": numbers[pair, one["bend"]],
                    "step": step + steps if step is not None else None,
                    "words": renamed(found.box, pair, one["words"]),
                }
            )
        steps += len(plan["steps"])
    return {
        **first,
        "sequence": [numbers[pair, n] for pair, order in orders.items() for n in order["sequence"]],
        "proven": clear and all(order["proven"] for order in orders.values()),
        "words": " ".join([*_order_words(found, orders), *([] if clear else [IN_THE_WAY])]),
        **{k: sum(order[k] or 0 for order in orders.values()) for k in COUNTS if k in first},
        **{k: _listed(found, orders, k) for k in ("wishes", "remedies") if k in first},
        **({"alternatives": [], "blocked": blocked} if "blocked" in first else {}),
    }


def _order_words(found: PlannedBox, orders: Mapping[Pair, JsonDict]) -> Iterator[str]:
    for pair, order in orders.items():
        words = renamed(found.box, pair, order["words"])
        yield words if len(orders) == 1 else f"{PAIR_WORDS[pair]}: {words}"


def _listed(found: PlannedBox, orders: Mapping[Pair, JsonDict], name: str) -> list[JsonDict]:
    """What the sections' orders list, each thing once."""
    texts = ("words", "template")
    listed = [
        {**one, **{k: renamed(found.box, pair, one[k]) for k in texts if k in one}}
        for pair, order in orders.items()
        for one in order.get(name, ())
    ]
    return [one for i, one in enumerate(listed) if one not in listed[:i]]


def merged_checks(
    found: PlannedBox, steps: Sequence[JsonDict], own: Iterable[Check]
) -> list[JsonDict]:
    """All findings, the most serious first; what several steps share is said once."""
    gathered: dict[tuple[str, str], JsonDict] = {}

    def add(check: JsonDict, at: Sequence[int]) -> None:
        held = gathered.setdefault((check["code"], check["words"]), {**check, "steps": []})
        held["steps"] += [n for n in at if n not in held["steps"]]

    for one in own:
        add(check_json(one), ())
    for step in steps:
        for check in step["checks"]:
            add(check, (step["number"],))
    for check in _of_sections(found):
        add(check, ())
    always = [c for c in gathered.values() if _is_always(c)]
    rest = [c for c in gathered.values() if not _is_always(c)]
    return [*sorted(rest, key=lambda c: -SEVERITY[c["level"]]), *always]


def _of_sections(found: PlannedBox) -> Iterator[JsonDict]:
    """What the sections' plans say of the whole; what only one says is tied to its pair."""
    numbers = {(b.pair, b.in_section): b.number for b in bends_of(found.box)}
    said = {
        pair: [c for c in plan["checks"] if not c["steps"] and not _said_better(c)]
        for pair, plan in found.plans.items()
    }
    for pair, checks in said.items():
        others = {(c["code"], c["words"]) for p, cs in said.items() if p != pair for c in cs}
        for check in checks:
            one = _check(found, pair, {k: v for k, v in check.items() if k != "steps"}, 0, numbers)
            shared = (check["code"], check["words"]) in others or len(said) == 1
            if not shared and not _is_always(one):
                start = f"{PAIR_WORDS[pair]}: "
                one = {**one, "words": start + one["words"], "template": start + one["template"]}
            yield one


def _is_always(check: JsonDict) -> bool:
    return bool(check["code"].startswith(ALWAYS))


def worst_of(checks: Iterable[JsonDict]) -> str:
    """The most serious level, what is always said apart."""
    levels = [c["level"] for c in checks if not _is_always(c)]
    return max(levels, key=SEVERITY.__getitem__, default="ok")


def near_of(walled: WalledStep) -> list[JsonDict]:
    """What the finished sides come near to in a step."""
    return [
        {
            "tool": one.tool,
            "side": one.side,
            "flat": one.flat,
            "distance_mm": number(one.distance_mm, 3),
            "included_angle_deg": number(one.included_angle_deg, 2),
        }
        for one in walled.near
        if one.tool in ("holder", "ram", "bed")
    ]
