"""The isometric drawing: to scale, and what stands in front hides what is behind."""

from __future__ import annotations

import math

import pytest
from boxes import shaped, tray, wall

from flangebook.bending.box.fold import drawn_at, folded_view
from flangebook.bending.geometry.ring import Point


def covered(lines: list[tuple[Point, Point]], start: Point, end: Point) -> float:
    """How much of a stretch lies on the lines, as a share."""
    count, hit = 60, 0
    for i in range(count):
        share = (i + 0.5) / count
        p = (start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share)
        hit += any(distance(p, a, b) < 0.05 for a, b in lines)
    return hit / count


def distance(p: Point, a: Point, b: Point) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    size = dx * dx + dy * dy
    share = min(1.0, max(0.0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / size)) if size else 0.0
    return math.hypot(p[0] - a[0] - share * dx, p[1] - a[1] - share * dy)


def test_axes_are_equally_long_and_120_degrees_apart() -> None:
    ends = [drawn_at(p) for p in ((10.0, 0.0, 0.0), (0.0, 10.0, 0.0), (0.0, 0.0, 10.0))]
    assert [math.hypot(*p) for p in ends] == pytest.approx([10.0] * 3)
    turns = sorted(math.degrees(math.atan2(y, x)) % 360 for x, y in ends)
    assert turns == pytest.approx([30.0, 90.0, 330.0])


def test_overall_size() -> None:
    view = folded_view(shaped(tray(*[wall(30.0, -12.0)] * 4)))
    assert view.size_mm == pytest.approx((300.0 + 2 * 10.0, 200.0 + 2 * 10.0, 30.0), abs=1e-6)
    assert {name: mm for name, *_, mm in view.dimensions} == pytest.approx(
        {"length": 320.0, "width": 220.0, "height": 30.0}
    )


@pytest.mark.parametrize("height", [20.0, 90.0])
def test_a_tall_front_hides_what_is_low_behind_it(height: float) -> None:
    """The top edge of the left wall, 20 high, from its front end: behind a front wall of 90 for
    the first stretch, seen whole over one of 20."""
    shape = shaped(tray(wall(20.0), None, wall(height), None))
    view = folded_view(shape)
    seen = [(line.start, line.end) for line in view.lines if line.kind == "edge"]
    hidden = [(line.start, line.end) for line in view.lines if line.kind == "hidden"]
    edge = [drawn_at((-2.0, y, 20.0)) for y in (2.0, 40.0)]  # the wall's inner top edge
    if height > 20.0:
        assert covered(seen, *edge) == 0.0
        assert covered(hidden, *edge) == 1.0
    else:
        assert covered(seen, *edge) == 1.0


def test_nothing_is_drawn_twice_as_seen_and_hidden() -> None:
    view = folded_view(shaped(tray(*[wall(40.0, 10.0)] * 4)))
    assert all(math.dist(line.start, line.end) > 0.0 for line in view.lines)
    assert {line.kind for line in view.lines} == {"edge", "bend", "hidden"}
    outer = drawn_at((296.0, -4.0, 4.0)), drawn_at((296.0, -4.0, 36.0))
    assert covered([(q.start, q.end) for q in view.lines if q.kind == "edge"], *outer) > 0.9
