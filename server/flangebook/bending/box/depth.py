"""Walls that stand beside the punch: whether they clear holder and ram through the whole swing.

When the second pair of sides is bent, the finished first pair stands on the base and swings with
it. They lie in planes across the bed, so punch and die have to fit between them, while holder
and ram run on above them and the bed below. Each flat of theirs is a rectangle in the plane of
the press's cross-section; its least distance to a tool over the bend is found by halving the
stroke wherever the speed of its points does not yet rule a nearer approach out.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from flangebook.bending.box.box import ENDS_OF, SideName
from flangebook.bending.box.pieces import clipped, pieces
from flangebook.bending.box.shape import BoxShape, Section, base_from_mm
from flangebook.bending.clearance.rings import Corners, apart
from flangebook.bending.geometry.air_bend_geometry import punch_depth_mm
from flangebook.bending.geometry.ring import Point, Ring, bounds
from flangebook.bending.geometry.strip import start_for, trace
from flangebook.bending.motion.lying import Stroke, facing
from flangebook.bending.part.part import Direction, End
from flangebook.bending.part.section import strip_of
from flangebook.bending.tools.outline import ToolStack, tool_stack
from flangebook.bending.tools.tooling import Die, Holder, Press, Punch

FINEST_SHARE = 1.0 / 2048.0
FACE_MM = 0.01
TOOLS = ("punch", "holder", "ram", "die", "bed")


@dataclass(frozen=True, slots=True)
class Standing:
    """A flat of a finished side as it stands on the base, seen along the bend line: from y1 to
    y2 from the base's left or front tangent line, from z1 to z2 above its underside [mm]."""

    side: SideName
    flat: int
    y1_mm: float
    y2_mm: float
    z1_mm: float
    z2_mm: float


@dataclass(frozen=True, slots=True)
class WallStep:
    """A bend of the second pair. number: in its section. made: finished before it there."""

    number: int
    direction: Direction
    gauged_end: End
    made: frozenset[int]
    stroke: Stroke


@dataclass(frozen=True, slots=True)
class Approach:
    """How near a standing flat comes to a tool: negative when it runs in [mm], at which included
    angle [deg]."""

    tool: str
    side: SideName
    flat: int
    distance_mm: float
    included_angle_deg: float


def standing(shape: BoxShape) -> tuple[Standing, ...]:
    """The flats of the sides that are bent first, as they stand on the base."""
    pair = shape.box.first_pair
    section = shape.sections.get(pair)
    if section is None:
        return ()
    found = []
    for piece in pieces(section.strip, section.base):
        if piece.flat == 0 or piece.arc:
            continue
        side = ENDS_OF[pair][0 if piece.flat < 0 else 1]
        y1, y2 = shape.along_mm(side, abs(piece.flat))
        _, z1, _, z2 = bounds(piece.ring)
        found.append(Standing(side, abs(piece.flat), y1, y2, z1, z2))
    return tuple(found)


def inside_reach_mm(shape: BoxShape, side: SideName, direction: Direction) -> float | None:
    """How far a side that is bent first reaches inwards from the tangent line of its bend [mm],
    on the punch's side of the base when bending that way; None where nothing stands there.

    Source: plane geometry.

    >>> from flangebook.bending.samples import tray_shape
    >>> inside_reach_mm(tray_shape(), "left", "up") < 0.0  # a plain wall reaches over nothing
    True
    """
    pair = shape.box.first_pair
    section = shape.sections.get(pair)
    if section is None or shape.box.side(side) is None:
        return None
    low = side == ENDS_OF[pair][0]
    t, width = shape.box.thickness_mm, shape.base_mm[pair]
    reached = None
    for piece in pieces(section.strip, section.base):
        if piece.flat == 0 or (piece.flat < 0) != low:
            continue
        ring = clipped(
            piece.ring,
            1,
            t + FACE_MM if direction == "up" else None,
            None if direction == "up" else -FACE_MM,
        )
        for x, _ in ring:
            inwards = x if low else width - x
            reached = inwards if reached is None else max(reached, inwards)
    return reached


def clear_length_mm(shape: BoxShape, direction: Direction) -> float | None:
    """Clear inside length between the sides bent first on that side of the base [mm].

    The inside radii at their feet count, since no tool may press on them. None where the two do
    not both stand there.

    Source: plane geometry.

    >>> from flangebook.bending.samples import tray_shape
    >>> round(clear_length_mm(tray_shape(), "up"), 1)
    292.0
    """
    pair = shape.box.first_pair
    reaches = [inside_reach_mm(shape, side, direction) for side in ENDS_OF[pair]]
    if any(one is None for one in reaches):
        return None
    return shape.base_mm[pair] - sum(one for one in reaches if one is not None)


def nearest_approaches(
    shape: BoxShape,
    step: WallStep,
    *,
    press: Press,
    holder: Holder | None,
    punch: Punch,
    die: Die,
    tools: Sequence[str] = TOOLS,
) -> tuple[Approach, ...]:
    """The nearest approach of every standing flat to every tool over a bend.

    Raises:
        InputError: a tool's sizes do not fit together, or its points are no simple outline.
    """
    section = shape.sections[shape.box.pairs[1]]
    swing = _Swing(section, step, die, tool_stack(press, holder, punch, die, 0.0))
    found = []
    known: dict[tuple[float, float, float, float, str], tuple[float, float]] = {}
    for flat in standing(shape):
        for tool in tools:
            if getattr(swing.tools, tool):
                key = (flat.y1_mm, flat.y2_mm, flat.z1_mm, flat.z2_mm, tool)
                if key not in known:
                    known[key] = swing.least(flat, tool)
                distance, share = known[key]
                angle = 180.0 - (180.0 - step.stroke.included_angle_deg) * share
                found.append(Approach(tool, flat.side, flat.flat, distance, angle))
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Frame:
    """Where the base lies: its start, the cosine and sine of its heading, where along the sheet
    it begins, how long that is [mm], and the punch's travel [mm]."""

    x: float
    y: float
    cos: float
    sin: float
    begins_mm: float
    length_mm: float
    depth_mm: float


@dataclass(frozen=True, slots=True)
class _Swing:
    """The motion of the base in a bend. tools: with the punch's tip on the die's top face."""

    section: Section
    step: WallStep
    die: Die
    tools: ToolStack
    _frames: dict[float, _Frame] = field(default_factory=dict)

    def least(self, flat: Standing, tool: str) -> tuple[float, float]:
        """The least distance of a standing flat to a tool [mm] and the share of the bend."""
        ring = np.array(getattr(self.tools, tool))
        moving = tool in ("punch", "holder", "ram")
        speed = self._speed(flat)
        best = min(
            ((self._distance(flat, ring, share, moving=moving), share) for share in (0.0, 1.0)),
            key=lambda one: one[0],
        )
        todo = [(0.0, 1.0)]
        while todo:
            start, end = todo.pop()
            middle, half = (start + end) / 2.0, (end - start) / 2.0
            distance = self._distance(flat, ring, middle, moving=moving)
            if distance < best[0]:
                best = (distance, middle)
            if distance - speed * half < best[0] and half > FINEST_SHARE:
                todo += [(start, middle), (middle, end)]
        return best[0] - speed * FINEST_SHARE, best[1]

    def _speed(self, flat: Standing) -> float:
        """More than any point of the flat moves in one whole bend, punch apart [mm]."""
        theta = math.radians(180.0 - self.step.stroke.included_angle_deg) / 2.0
        far = max(math.hypot(*p) for p in self._placed(flat, 0.0))
        depth = abs(self.step.stroke.punch_depth_mm)
        return theta * (far + depth + self.step.stroke.allowance_mm) + 3.0 * depth

    def _distance(self, flat: Standing, ring: Corners, share: float, *, moving: bool) -> float:
        lifted = self.section.part.thickness_mm - self._frame(share).depth_mm if moving else 0.0
        placed = np.array(self._placed(flat, share))
        placed[:, 1] -= lifted
        return float(apart(placed, ring))

    def _depth(self, share: float) -> float:
        stroke, t = self.step.stroke, self.section.part.thickness_mm
        if share <= 0.0:
            return 0.0

        def travel(part_way: float) -> float:
            return punch_depth_mm(
                180.0 - (180.0 - stroke.included_angle_deg) * part_way,
                stroke.inside_radius_mm,
                t,
                self.die.v_opening_mm,
                self.die.angle_deg,
                self.die.shoulder_radius_mm,
            )

        whole = travel(1.0)
        return travel(share) * stroke.punch_depth_mm / whole if whole else 0.0

    def _frame(self, share: float) -> _Frame:
        if share not in self._frames:
            self._frames[share] = self._framed(share)
        return self._frames[share]

    def _framed(self, share: float) -> _Frame:
        section, step, stroke = self.section, self.step, self.step.stroke
        now = strip_of(section.part, section.folded, step.made)
        faced, number = facing(now, step.number, step.direction, step.gauged_end)
        bent = faced.with_fold(
            number,
            (180.0 - stroke.included_angle_deg) * share,
            stroke.inside_radius_mm,
            stroke.allowance_mm * share,
        )
        depth = self._depth(share)
        start = start_for(bent, number, (0.0, section.part.thickness_mm / 2.0 - depth, 0.0))
        straights, _ = trace(bent, start)
        index = len(bent.folds) - section.base if step.gauged_end == "left" else section.base
        x, y, h = straights[index].start
        return _Frame(
            x, y, math.cos(h), math.sin(h), base_from_mm(bent, index), bent.length_mm, depth
        )

    def _placed(self, flat: Standing, share: float) -> Ring:
        """The rectangle in the press frame, after this share of the bend."""
        frame, up = self._frame(share), self.step.direction == "up"
        half = self.section.part.thickness_mm / 2.0

        def place(along_mm: float, height_mm: float) -> Point:
            developed = self.section.base_from_mm + along_mm
            if self.step.gauged_end == "left":
                developed = frame.length_mm - developed
            u, v = developed - frame.begins_mm, height_mm - half if up else half - height_mm
            return (frame.x + u * frame.cos - v * frame.sin,
                    frame.y + u * frame.sin + v * frame.cos)  # fmt: skip

        return (place(flat.y1_mm, flat.z1_mm), place(flat.y2_mm, flat.z1_mm),
                place(flat.y2_mm, flat.z2_mm), place(flat.y1_mm, flat.z2_mm))  # fmt: skip
