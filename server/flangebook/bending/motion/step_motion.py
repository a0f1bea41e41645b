"""A step as it moves: the punch comes down, bends, lets go and rises, in frames to draw.

The two legs of the active bend are rigid; a frame says where each lies. Between two frames
place and turn run evenly, near enough for the eye (a tenth of a mm in a V of 80). Clearance is
shown elsewhere, on the same motion without gaps between frames.

With theta half the bend angle so far and the punch as deep as theta asks for, a leg that lies
along +x from the bend line has drawn in by half of what the arc took, turned by theta about its
start on the arc, and lies in the press frame at

    (R sin(theta), t/2 - depth(theta) + R (1 - cos(theta))),   R = r + t/2

the other leg is its mirror image in x. depth(theta) is the contact geometry of
``air_bend_geometry``, scaled to the stroke's own depth at the bottom.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from flangebook.bending.clearance.taking_out import Place
from flangebook.bending.geometry.air_bend_geometry import shoulder_centre_x_mm
from flangebook.bending.geometry.ring import Point, Ring, mirrored
from flangebook.bending.geometry.strip import CHORD_ERROR_MM, Fold, Strip, outline, trace
from flangebook.bending.motion.lying import Closing, Pressing

Phase = Literal["putting in", "approach", "bend", "release", "withdrawal", "taking out"]

MOST_LEG_POINTS = 76
MOST_CHORD_ERROR_MM = 1.0
STEP_DEG = 9.0
FLATTEN_FRAMES = 6
BY_HAND = 0.2
"""Share of the whole that putting in takes, and taking out, where it is shown."""
DRAWN_OUT_MM = 80.0
TOUCHED, DRAWN_BACK, PRESSED, RELEASED = 0.2, 0.25, 0.75, 0.8
"""Shares of the whole motion at which the punch touches, the gauge is back, and so on."""


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a leg's own origin, its end of the bend line, lies and how far it has turned."""

    x_mm: float
    y_mm: float
    turned_deg: float


@dataclass(frozen=True, slots=True)
class Frame:
    """One moment. share: of the whole motion, 0 to 1. punch_y_mm: the tip above first touch.

    half_arc_mm: how far along each leg, from its origin, the arc reaches. gauge_x_mm: where
    the finger's face is, None without a gauge.
    """

    share: float
    phase: Phase
    included_angle_deg: float
    punch_y_mm: float
    left: Placed
    right: Placed
    inside_radius_mm: float
    half_arc_mm: float
    gauge_x_mm: float | None = None


@dataclass(frozen=True, slots=True)
class StepMotion:
    """A step in frames. left, right: outlines of the legs without the corners at the bend.

    Each lies with the bend line at (0, 0) and its mid-line on y = 0, the right one along +x from
    its lower face round to its upper, the left one along -x from its upper face round to its
    lower: arc below, right, arc above, left is the whole sheet counter-clockwise.
    """

    thickness_mm: float
    left: Ring
    right: Ring
    frames: tuple[Frame, ...]


def pressed_motion(
    pressing: Pressing,
    *,
    released_deg: float,
    lift_mm: float,
    gauge_x_mm: float | None = None,
    retract_mm: float = 0.0,
    puts_in: Sequence[Place] = (),
    takes_out: Sequence[Place] = (),
) -> StepMotion:
    """The motion of a bend under the punch.

    released_deg: included angle after springback. lift_mm: how far the punch comes down and
    rises again, from first touch [mm]. The gauge retracts after the punch has touched.
    puts_in, takes_out: the places of the part on its way in and out, punch at its top, each way
    begun where it lies; empty where that is not shown.
    """
    whole = math.radians(180.0 - pressing.stroke.included_angle_deg) / 2.0
    let_go = min(whole, max(0.0, math.radians(180.0 - released_deg) / 2.0))
    back = None if gauge_x_mm is None else gauge_x_mm + retract_mm

    def at(
        share: float, phase: Phase, theta: float, gauge: float | None, lift: float = 0.0
    ) -> Frame:
        return replace(_at(pressing, theta, lift), share=share, phase=phase, gauge_x_mm=gauge)

    frames = [
        at(0.0, "approach", 0.0, gauge_x_mm, lift_mm),
        at(TOUCHED, "approach", 0.0, gauge_x_mm),
    ]
    count = max(2, math.ceil(math.degrees(whole) / STEP_DEG))
    start = TOUCHED
    if retract_mm:
        start = DRAWN_BACK
        frames.append(at(start, "approach", 0.0, back))
    for i in range(1, count + 1):
        share = start + (PRESSED - start) * i / count
        frames.append(at(share, "bend", whole * i / count, back))
    top = at(1.0, "withdrawal", let_go, back, lift_mm + _depth_mm(pressing, let_go))
    # A part that hangs on the punch rises with it.
    raised = _moved(top, takes_out[0]) if takes_out else top
    frames += [at(RELEASED, "release", let_go, back), raised]
    before = [replace(_moved(frames[0], p), phase="putting in") for p in _out_of(puts_in)[::-1]]
    after = [replace(_moved(top, p), phase="taking out") for p in _out_of(takes_out)]
    return _motion(pressing.strip, pressing.number, _in_turn(before, frames, after))


def _out_of(places: Sequence[Place]) -> list[Place]:
    """The places after the first, and one drawn out to the front."""
    if not places:
        return []
    x, y, tilt = places[-1]
    return [*places[1:], (x - DRAWN_OUT_MM, y, tilt)]


def _in_turn(before: list[Frame], frames: list[Frame], after: list[Frame]) -> list[Frame]:
    """All frames, each of the three at its share of the whole."""
    start, stop = BY_HAND * bool(before), 1.0 - BY_HAND * bool(after)
    return [
        *(replace(f, share=start * i / len(before)) for i, f in enumerate(before)),
        *(replace(f, share=start + (stop - start) * f.share) for f in frames),
        *(replace(f, share=stop + (1.0 - stop) * i / len(after)) for i, f in enumerate(after, 1)),
    ]


def _moved(frame: Frame, place: Place) -> Frame:
    """The frame with the part away from where it lies."""
    x, y, tilt = place
    cos, sin = math.cos(tilt), math.sin(tilt)

    def to(p: Placed) -> Placed:
        return Placed(
            x + cos * p.x_mm - sin * p.y_mm,
            y + sin * p.x_mm + cos * p.y_mm,
            p.turned_deg + math.degrees(tilt),
        )

    return replace(frame, left=to(frame.left), right=to(frame.right))


def pressed_outline(pressing: Pressing, theta: float) -> list[Point]:
    """Points of the sheet when half the bend angle has come to theta [rad]; the arc's left out.

    Flats and finished bends of both legs, in the press frame [mm].
    """
    strip, number = pressing.strip, pressing.number
    frame = _at(pressing, theta, 0.0)
    left = mirrored(_leg(_beyond(strip.reversed(), len(strip.folds) + 1 - number), CHORD_ERROR_MM))
    right = _leg(_beyond(strip, number), CHORD_ERROR_MM)
    return [*_put(left, frame.left), *_put(right, frame.right)]


def _put(ring: Ring, place: Placed) -> list[Point]:
    cos, sin = math.cos(math.radians(place.turned_deg)), math.sin(math.radians(place.turned_deg))
    return [(place.x_mm + cos * x - sin * y, place.y_mm + sin * x + cos * y) for x, y in ring]


def closing_motion(closing: Closing) -> StepMotion:
    """The flattening of a hem: the long leg lies still, the hem comes down on it."""
    frames = [_closing_at(closing, i / FLATTEN_FRAMES) for i in range(FLATTEN_FRAMES + 1)]
    return _motion(closing.strip, closing.number, frames)


def _motion(strip: Strip, number: int, frames: list[Frame]) -> StepMotion:
    right = _beyond(strip, number)
    left = _beyond(strip.reversed(), len(strip.folds) + 1 - number)
    error = CHORD_ERROR_MM
    while (
        len(_leg(left, error)) + len(_leg(right, error)) > MOST_LEG_POINTS
        and error < MOST_CHORD_ERROR_MM
    ):
        error *= 2.0
    return StepMotion(
        strip.thickness_mm, mirrored(_leg(left, error)), _leg(right, error), tuple(frames)
    )


def _beyond(strip: Strip, number: int) -> Strip:
    """What lies right of a bend's line, as a strip of its own."""
    line = strip.folds[number - 1].at_mm
    folds = tuple(replace(f, at_mm=f.at_mm - line) for f in strip.folds[number:])
    return Strip(strip.thickness_mm, strip.length_mm - line, folds)


def _leg(strip: Strip, chord_error_mm: float) -> Ring:
    return outline(strip, chord_error_mm=chord_error_mm)[1:-1]


def _depth_mm(pressing: Pressing, theta: float) -> float:
    """Punch depth at theta, on the way to the stroke's own [mm]."""
    stroke, die = pressing.stroke, pressing.die
    x_c = shoulder_centre_x_mm(die.v_opening_mm, die.angle_deg, die.shoulder_radius_mm)
    radii = stroke.inside_radius_mm + pressing.strip.thickness_mm + die.shoulder_radius_mm

    def by_contact(half: float) -> float:
        return x_c * math.tan(half) - radii * (1.0 / math.cos(half) - 1.0)

    whole = math.radians(180.0 - stroke.included_angle_deg) / 2.0
    bottom = by_contact(whole)
    if bottom <= 0.0:  # the radius fills the V: no such contact, the bend's own check says so
        return stroke.punch_depth_mm * theta / whole
    return by_contact(theta) * stroke.punch_depth_mm / bottom


def _at(pressing: Pressing, theta: float, lift_mm: float) -> Frame:
    """The moment at theta with the punch ``lift_mm`` above where it presses."""
    t, stroke = pressing.strip.thickness_mm, pressing.stroke
    included = 180.0 - 2.0 * math.degrees(theta)
    half_arc = stroke.allowance_mm / 2.0 * (180.0 - included) / (180.0 - stroke.included_angle_deg)
    depth, radius = _depth_mm(pressing, theta), stroke.inside_radius_mm + t / 2.0
    x = radius * math.sin(theta) - half_arc * math.cos(theta)
    y = t / 2.0 - depth + radius * (1.0 - math.cos(theta)) - half_arc * math.sin(theta)
    turned = math.degrees(theta)
    return Frame(
        0.0, "bend", included, lift_mm - depth, Placed(-x, y, -turned), Placed(x, y, turned),
        stroke.inside_radius_mm, half_arc,
    )  # fmt: skip


def _closing_at(closing: Closing, share: float) -> Frame:
    """The moment when a share of the way from the acute fold to the closed one is done."""
    included, inside, taken = (
        a + (b - a) * share for a, b in zip(closing.acute, closing.closed, strict=True)
    )
    t, angle = closing.strip.thickness_mm, math.radians(180.0 - included)
    radius, half_arc = inside + t / 2.0, taken / 2.0
    hem = replace(
        closing.strip.folds[closing.number - 1], bend_angle_deg=180.0 - included,
        inside_radius_mm=inside, allowance_mm=taken,
    )  # fmt: skip
    arc_starts = _hem_length_mm(closing.strip, closing.number, hem) / 2.0
    end_x = arc_starts + radius * math.sin(angle) - half_arc * math.cos(angle)
    end_y = t / 2.0 + radius * (1.0 - math.cos(angle)) - half_arc * math.sin(angle)
    return Frame(
        share, "bend", included, 0.0, Placed(arc_starts + half_arc, t / 2.0, 0.0),
        Placed(end_x, end_y, math.degrees(angle)), inside, half_arc,
    )  # fmt: skip


def _hem_length_mm(strip: Strip, number: int, hem: Fold) -> float:
    """Straight length behind the hem's fold [mm]."""
    bent = strip.with_fold(number, hem.bend_angle_deg, hem.inside_radius_mm, hem.allowance_mm)
    return trace(bent)[0][number].length_mm
