"""Where the back gauge goes for a bend: X, R, which end, against what."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from flangebook.bending import section
from flangebook.bending.section import Strip
from flangebook.bending.tooling import Die, Point, Press

End = Literal["left", "right"]
Against = Literal["flat edge", "finished flange"]


@dataclass(frozen=True, slots=True)
class Gauge:
    """A place for the gauge finger at one end of the part, before the bend.

    x_mm: from the tools' centre line to the finger's face [mm]. r_mm: height of the contact
    above the die's top face [mm]. contact: that point, on the sheet's outline.
    end: which end of the part is at the gauge. reachable: the finger can stand there;
    reason: in words, why or why not. bends_between: finished bends between the contact and
    the active bend; each adds its own error. finger_bottom_mm: lower edge of the finger [mm].
    draw_back_mm: how far the finger must draw back during the bend [mm]: from a few poses
    of the stroke, not a proof of clearance.
    """

    x_mm: float
    r_mm: float
    end: End
    against: Against
    reachable: bool
    reason: str
    contact: Point
    bends_between: int = 0
    finger_bottom_mm: float = 0.0
    draw_back_mm: float = 0.0


def gauge_options(
    strip: Strip, number: int, direction: Literal["up", "down"], press: Press, die: Die
) -> tuple[Gauge, ...]:
    """Places for the finger at both ends, best first; unreachable ones last with the reason.

    strip: part frame, earlier bends made. number: the active bend, from 1.
    """
    found = []
    for end in ("right", "left"):
        faced = strip.flipped() if direction == "down" else strip
        n = number
        if end == "left":
            faced, n = faced.reversed(), len(strip.folds) + 1 - number
        flat = faced.flattened(n)
        t = flat.thickness_mm
        ring = section.outline(flat, section.start_for(flat, n, (0.0, t / 2, 0.0)))
        x = max(p[0] for p in ring)
        ok = press.gauge_x_min_mm <= x <= press.gauge_x_max_mm
        where: End = "right" if end == "right" else "left"
        found.append(Gauge(x, t / 2, where, "flat edge", ok, "", (x, t / 2)))
    return tuple(sorted(found, key=lambda g: (not g.reachable, g.x_mm)))


def choose(options: Iterable[Gauge], keep_end: End | None = None) -> Gauge | None:
    """The best reachable place, on ``keep_end`` if there is one as good there; None without."""
    reachable = [g for g in options if g.reachable]
    return reachable[0] if reachable else None


def gauge_for(
    strip: Strip,
    number: int,
    direction: Literal["up", "down"],
    press: Press,
    die: Die,
    *,
    keep_end: End | None = None,
) -> Gauge | None:
    """The place chosen for the finger, or None when neither end can be gauged."""
    return choose(gauge_options(strip, number, direction, press, die), keep_end)
