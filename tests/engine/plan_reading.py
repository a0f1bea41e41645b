"""Reading a plan as a shop would: fold the blank by its numbers, measure the drawing."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

from flangebook.bending.checks import fill
from flangebook.planning.answers.answer import JsonDict

Point = tuple[float, float]


def codes(plan: JsonDict, level: str | None = None) -> set[str]:
    """Codes of the findings, of one level or all."""
    return {c["code"] for c in plan["checks"] if level in (None, c["level"])}


def finding(plan: JsonDict, code: str) -> JsonDict:
    """The first finding with this code."""
    return next(c for c in plan["checks"] if c["code"] == code)


def words_of(said: Mapping[str, Any]) -> str:
    """What a finding or another sentence of an answer says, metric."""
    return fill(said["template"], said["numbers"])


def said_in(answer: Mapping[str, Any]) -> list[str]:
    """The sentences of an answer, metric."""
    return [words_of(one) for one in answer["said"]]


def remedy_of(check: Mapping[str, Any]) -> str:
    """What a finding says is to be done, metric."""
    return fill(check["do"], check["numbers"])


def why_tools(step: Mapping[str, Any]) -> str:
    """Why the tools of a bend or a step are unusual ones, metric; empty where they are not."""
    said = step.get("tools_reason_said")
    return words_of(said) if said else ""


def folded_mid_line(plan: JsonDict) -> list[tuple[Point, Point]]:
    """The straights of the section's mid-line when the blank is folded by the plan's numbers.

    Own construction: walk the blank from the left, turn by each bend on its arc. Bends only.
    """
    t = plan["part"]["thickness_mm"]
    x = y = heading = reached = 0.0
    straights = []
    for line in plan["blank"]["bend_lines"]:
        half = line["bend_allowance_mm"] / 2
        length = line["at_mm"] - half - reached
        end = (x + length * math.cos(heading), y + length * math.sin(heading))
        straights.append(((x, y), end))
        reached = line["at_mm"] + half
        turn = math.radians(180 - line["included_angle_deg"])
        sign = 1 if line["direction"] == "up" else -1
        chord = 2 * (line["inside_radius_mm"] + t / 2) * math.sin(turn / 2)
        x = end[0] + chord * math.cos(heading + sign * turn / 2)
        y = end[1] + chord * math.sin(heading + sign * turn / 2)
        heading += sign * turn
    length = plan["blank"]["length_mm"] - reached
    straights.append(((x, y), (x + length * math.cos(heading), y + length * math.sin(heading))))
    return straights


def outside_lengths(plan: JsonDict) -> list[float]:
    """What a rule would read on each flat of the folded blank, by DIN 6935's convention."""
    t = plan["part"]["thickness_mm"]
    setbacks = [0.0]
    for line in plan["blank"]["bend_lines"]:
        angle, outside = line["included_angle_deg"], line["inside_radius_mm"] + t
        half = math.radians(180 - angle) / 2
        setbacks.append(outside * math.tan(half) if angle >= 90 else outside)
    setbacks.append(0.0)
    return [
        math.dist(a, b) + setbacks[i] + setbacks[i + 1]
        for i, (a, b) in enumerate(folded_mid_line(plan))
    ]


def furthest_back(ring: Sequence[Sequence[float]], low: float, high: float) -> float:
    """The largest x of a ring at heights from low to high."""
    found = -math.inf
    for (ax, ay), (bx, by) in zip(ring, [*ring[1:], ring[0]], strict=True):
        if max(ay, by) < low or min(ay, by) > high:
            continue
        for y in (min(max(ay, low), high), min(max(by, low), high)):
            share = 0.0 if ay == by else (y - ay) / (by - ay)
            if 0 <= share <= 1:
                found = max(found, ax + share * (bx - ax))
        if low <= ay <= high:
            found = max(found, ax)
        if low <= by <= high:
            found = max(found, bx)
    return found
