"""Bending the second pair of a box: pieces of tools between the finished sides, and whether
those clear holder, ram and bed on their way."""

from __future__ import annotations

import math
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from typing import Literal

from flangebook.bending.box.blank import BoxBlank, BoxLine
from flangebook.bending.box.box import CALLED, ENDS_OF, Pair, bends_of
from flangebook.bending.box.depth import Approach, WallStep, clear_length_mm, nearest_approaches
from flangebook.bending.box.shape import BoxShape, Section
from flangebook.bending.checks import Check
from flangebook.bending.errors import InputError
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.part.part import Direction
from flangebook.bending.part.section import allowance_at
from flangebook.bending.tools.segments import longest_within, segments_for
from flangebook.bending.tools.tooling import Crib, Die, Holder, Press, Punch
from flangebook.planning.deadline import PlanLimits
from flangebook.planning.planned import StepPlan

SIDE_PLAY_MM = 0.5
"""Room left between the tools and the finished sides, both ends together (common practice)."""
FLUSH_MM = 0.5
"""What the flush end of a side may seem to run into the die it stands beside [mm]."""
ENOUGH_OVER_V = 1.0
"""How much of a bend line may lie beyond the tools at either end, in openings V: an end that long
no longer follows (a rule of ours, no source)."""


@dataclass(frozen=True, slots=True)
class ToolsOf:
    """The tools that a planned step uses."""

    punch: Punch
    die: Die

    def of(self, kind: Literal["punch", "die"]) -> Punch | Die:
        """The tool of that kind."""
        return self.punch if kind == "punch" else self.die


@dataclass(frozen=True, slots=True)
class Pieces:
    """Pieces of one tool for one step. most_mm: no longer than this, None where nothing is in
    the way. recorded: whether the shop says which pieces it has."""

    segments_mm: tuple[float, ...]
    wanted_mm: float
    most_mm: float | None
    recorded: bool

    @property
    def total_mm(self) -> float:
        """How long they are together [mm]."""
        return math.fsum(self.segments_mm)


@dataclass(frozen=True, slots=True)
class WalledStep:
    """A step with its pieces of tools and what the finished sides come near to."""

    punch: Pieces
    die: Pieces
    near: tuple[Approach, ...] = ()
    clear_mm: float | None = None

    def pieces(self, kind: Literal["punch", "die"]) -> Pieces:
        """Those of the tool of that kind."""
        return self.punch if kind == "punch" else self.die


def tools_of(step: StepPlan) -> ToolsOf | None:
    """The step's tools; None where it has none, or no setting."""
    return ToolsOf(step.fit.punch, step.fit.die) if step.fit and step.setting else None


def wall_steps(shape: BoxShape, steps: Sequence[StepPlan]) -> list[WallStep | None]:
    """The steps of the pair bent second as motions; None without a setting.

    The sharper end of the setting's band counts.
    """
    section = shape.sections[shape.box.pairs[1]]
    made: set[int] = set()
    found: list[WallStep | None] = []
    for step in steps:
        operation = step.step.operation
        stroke = _stroke(section, step, shape.box.thickness_mm)
        found.append(
            None
            if stroke is None
            else WallStep(
                operation.bend, operation.direction, step.step.end, frozenset(made), stroke
            )
        )
        made.add(operation.bend)
    return found


def _stroke(section: Section, step: StepPlan, thickness_mm: float) -> Stroke | None:
    setting, number = step.setting, step.step.operation.bend
    if setting is None or step.fit is None or step.fit.bend is None:
        return None
    loaded, radius = setting.angle_deg.low, step.fit.bend.inside_radius_mm.nominal
    bend, folded = section.part.bends[number - 1], section.folded[number - 1]
    allowance = allowance_at(loaded, radius, bend, folded, thickness_mm)
    return Stroke(loaded, radius, allowance, setting.depth_mm.high)


def plain_step(line: BoxLine, tools: ToolsOf | None) -> WalledStep:
    """A step of the first pair: nothing stands beside its tools."""
    return WalledStep(_pieces(tools.punch if tools else None, line.length_mm, None),
                      _pieces(tools.die if tools else None, line.length_mm, None))  # fmt: skip


def _pieces(tool: Punch | Die | None, wanted_mm: float, most_mm: float | None) -> Pieces:
    owned = tool.segments_mm if tool is not None else ()
    chosen = segments_for(owned, wanted_mm, most_mm)
    if chosen is None and most_mm is not None:
        chosen = longest_within(owned, most_mm)
    return Pieces(chosen or (), wanted_mm, most_mm, bool(owned))


def walled_step(
    shape: BoxShape,
    step: WallStep,
    line: BoxLine,
    tools: ToolsOf,
    press: Press,
    holder: Holder | None,
) -> WalledStep:
    """A step of the second pair, the first standing on the base.

    Raises:
        InputError: a tool's outline cannot be.
    """
    near = nearest_approaches(
        shape, step, press=press, holder=holder, punch=tools.punch, die=tools.die
    )
    margin = shape.box.order_limits.margin_mm
    most: dict[str, float | None] = {}
    for tool, least in (("punch", margin), ("die", -FLUSH_MM)):
        sides = {a.side for a in near if a.tool == tool and a.distance_mm < least}
        clear = clear_length_mm(shape, _beside(tool, step))
        both = len(sides) == len(ENDS_OF[shape.box.first_pair]) and clear is not None
        most[tool] = max(clear - SIDE_PLAY_MM, 0.0) if both and clear is not None else None
    return WalledStep(
        _pieces(tools.punch, line.length_mm, most["punch"]),
        _pieces(tools.die, line.length_mm, most["die"]),
        near,
        clear_length_mm(shape, step.direction),
    )


def _beside(tool: str, step: WallStep) -> Direction:
    """On which side of the base the tool works: the punch on the bend's inside."""
    if tool == "punch":
        return step.direction
    return "down" if step.direction == "up" else "up"


def punches_that_clear(
    shape: BoxShape,
    steps: Sequence[tuple[WallStep, ToolsOf]],
    press: Press,
    crib: Crib,
    holder: Holder | None,
    limits: PlanLimits,
) -> tuple[Punch, ...]:
    """The crib's punches under which the finished sides clear holder and ram in every step; those
    that were looked at when the time is up."""

    def clears(punch: Punch) -> bool:
        for step, tools in steps:
            limits.heed()
            near = nearest_approaches(
                shape, step, press=press, holder=holder, punch=punch, die=tools.die,
                tools=("holder", "ram"),
            )  # fmt: skip
            if any(one.distance_mm < shape.box.order_limits.margin_mm for one in near):
                return False
        return True

    found = []
    for punch in crib.punches:
        if limits.over:
            break
        with suppress(InputError):
            if clears(punch):
                found.append(punch)
    return tuple(found)


def walled_checks(
    shape: BoxShape, step: WalledStep, tools: ToolsOf | None, crib_punches: Sequence[str]
) -> list[Check]:
    """What speaks against a step: finished sides in the way, tools that do not fit between.

    crib_punches: names of the crib's punches that would clear.
    """
    found = [*_near_checks(shape, step, crib_punches)]
    if tools is None:
        return found
    for name, pieces in (("punch", step.punch), ("die", step.die)):
        found += _piece_checks(name, pieces, tools.die.v_opening_mm)
    return found


def tools_that_do_not_fit(step: WalledStep, tools: ToolsOf) -> set[str]:
    """Codes of the step's tools whose pieces speak against it: too long to go between the finished
    sides, or not enough of them."""
    v_mm = tools.die.v_opening_mm
    used = ((tools.punch.code, "punch", step.punch), (tools.die.code, "die", step.die))
    return {
        code
        for code, name, pieces in used
        if any(check.level == "stop" for check in _piece_checks(name, pieces, v_mm))
    }


def _near_checks(shape: BoxShape, step: WalledStep, crib_punches: Sequence[str]) -> list[Check]:
    margin = shape.box.order_limits.margin_mm
    worst: dict[str, Approach] = {}
    for one in step.near:
        if one.tool in ("holder", "ram", "bed") and one.distance_mm < margin:
            held = worst.get(one.tool)
            if held is None or one.distance_mm < held.distance_mm:
                worst[one.tool] = one
    found = []
    for tool, one in worst.items():
        how = "runs {distance_mm} into" if one.distance_mm < 0.0 else "comes {distance_mm} near"
        wanted = "" if one.distance_mm < 0.0 else "; {wanted_mm} is wanted"
        where = "under the die" if tool == "bed" else "beside the punch"
        words = (
            f"The finished {one.side} flat {one.flat}, which stands {where}, {how} the {tool} "
            f"when the bend is at {{angle_deg}}{wanted}."
        )
        numbers = {
            "distance_mm": abs(one.distance_mm),
            "angle_deg": one.included_angle_deg,
            "wanted_mm": margin,
        }
        do = _taller(shape, tool, crib_punches)
        found.append(Check("stop", f"box-wall-{tool}", words, do, numbers))
    return found


def _taller(shape: BoxShape, tool: str, crib_punches: Sequence[str]) -> str:
    if tool == "bed":
        return "Use a taller die or a riser, or make that side shorter."
    if crib_punches:
        return f"{' or '.join(crib_punches[:3])} would clear it, but does not make these bends."
    return (
        "No punch of the crib is tall enough: make that side shorter, get a taller punch, or "
        f"have {CALLED[shape.box.pairs[1]]} bent first."
    )


def _piece_checks(name: str, pieces: Pieces, v_mm: float) -> list[Check]:
    if not pieces.recorded:
        words = f"The {name}'s pieces are not on record: whether they fit between the finished "
        words += "sides is for you to see."
        return [Check("unknown", f"box-{name}-pieces", words, "Enter the lengths owned.")]
    if pieces.most_mm is None or pieces.total_mm >= pieces.wanted_mm - 1e-6:
        return _short(name, pieces)
    uncovered = (pieces.wanted_mm - pieces.total_mm) / 2.0
    numbers = {
        "clear_mm": pieces.most_mm,
        "wanted_mm": pieces.wanted_mm,
        "total_mm": pieces.total_mm,
        "end_mm": uncovered,
    }
    if not pieces.segments_mm or uncovered > ENOUGH_OVER_V * v_mm:
        return [
            Check(
                "stop",
                f"box-{name}-between",
                f"The bend is {{wanted_mm}} long; between the finished sides only {{total_mm}} of "
                f"the {name}'s pieces go (clear {{clear_mm}}).",
                "Get pieces that fit, make the lips of the finished sides shorter, or open the "
                "corner.",
                numbers,
            )
        ]
    return [
        Check(
            "caution",
            f"box-{name}-short",
            f"The {name}'s pieces between the finished sides make {{total_mm}}; {{end_mm}} of the "
            "bend at either end has no tool over it.",
            "Look at the ends of the first piece; they come out more open.",
            numbers,
        )
    ]


def _short(name: str, pieces: Pieces) -> list[Check]:
    if pieces.segments_mm:
        return []
    numbers = {"wanted_mm": pieces.wanted_mm}
    words = f"The {name}'s pieces do not make up {{wanted_mm}}."
    return [Check("stop", f"box-{name}-too-short", words, "Get more pieces.", numbers)]


def steps_lines(shape: BoxShape, blank: BoxBlank) -> dict[tuple[Pair, int], BoxLine]:
    """The bend line of each pair and bend number in its section."""
    lines = {line.bend: line for line in blank.lines}
    return {(b.pair, b.in_section): lines[b.number] for b in bends_of(shape.box)}
