"""Hems, offsets, stepped radii, holes near bends."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from bending_parts import DIE, PRESS, bend, folded, part
from hypothesis import given, settings
from hypothesis import strategies as st

from flangebook.bending.errors import InputError
from flangebook.bending.geometry.strip import outline, pose_at, trace
from flangebook.bending.handbook import hems
from flangebook.bending.handbook.allowance import k_factor_din6935
from flangebook.bending.motion import gauging
from flangebook.bending.part import bump_bends, offsets
from flangebook.bending.part.blank import blank
from flangebook.bending.part.holes import distortion_checks, distortion_limit_mm
from flangebook.bending.part.part import Bend, Direction, Hole
from flangebook.bending.part.section import FoldedBend, strip_of

CLOSED = Bend(0.0, "up", kind="closed_hem")


def open_hem(gap_mm: float) -> Bend:
    return Bend(0.0, "up", kind="open_hem", hem_gap_mm=gap_mm)


def test_closed_hem_takes_off_the_shops_figure() -> None:
    """0.43 t off the outside lengths (common practice, no source)."""
    of = part((12.0, 60.0), (CLOSED,))
    fold = hems.hem(CLOSED, 2.0)
    length = strip_of(of, [fold.folded]).length_mm
    assert 72.0 - length == pytest.approx(0.43 * 2.0, abs=0.005)
    assert fold.standing == "common practice, no source"


def test_open_hem_follows_din_6935_at_0_degrees() -> None:
    """DIN 6935: v = 2 (r + s) - pi (180 - beta)/180 (r + s/2 k), beta = 0."""
    fold = hems.hem(open_hem(3.0), 2.0)
    k = 2.0 * k_factor_din6935(1.5, 2.0)
    assert fold.inside_radius_mm == 1.5
    assert fold.allowance_mm == pytest.approx(math.pi * (1.5 + 2.0 / 2.0 * k))
    assert fold.standing == "published"


def test_open_hem_below_the_standards_range_says_so() -> None:
    fold = hems.hem(open_hem(0.1), 2.0)
    assert fold.allowance_mm == pytest.approx(math.pi * (0.05 + 1.0))
    assert fold.standing == "common practice, no source"


def test_seen_a_hems_blank_has_a_band() -> None:
    """Up to 0.4 a hem's blank was as sure as if it had been measured. The figures shops use for a
    closed hem's deduction, 0.43 t, and Groover's K of 0.33 at no radius lie inside."""
    for hemmed in (CLOSED, open_hem(0.1), open_hem(3.0), open_hem(9.0)):
        of, fold = part((12.0, 60.0), (hemmed,)), hems.hem(hemmed, 2.0)
        sheet = blank(of, [fold.folded], 7850.0)
        assert sheet.length_low_mm < sheet.length_mm < sheet.length_high_mm
        assert sheet.length_high_mm - sheet.length_low_mm < 2.5, "of use at the shears"
        assert fold.allowance_low_mm <= fold.allowance_mm <= fold.allowance_high_mm
    closed = hems.hem(CLOSED, 2.0)
    assert closed.allowance_low_mm == pytest.approx(math.pi * 0.33 * 2.0)
    assert closed.allowance_high_mm == pytest.approx(math.pi * (0.2 + 1.0))
    assert closed.deduction_low_mm < 0.43 * 2.0 < closed.deduction_high_mm


def test_closed_hem_is_two_sheets_thick() -> None:
    of = part((12.0, 60.0), (CLOSED,))
    ring = outline(strip_of(of, [hems.hem(CLOSED, 2.0).folded]))
    ys = [y for _, y in ring]
    assert max(ys) - min(ys) == pytest.approx(4.0)


def test_open_hem_keeps_its_gap() -> None:
    of = part((12.0, 60.0), (open_hem(1.5),))
    ys = [y for _, y in outline(strip_of(of, [hems.hem(of.bends[0], 2.0).folded]))]
    assert max(ys) - min(ys) == pytest.approx(4.0 + 1.5)


@pytest.mark.parametrize(
    ("punch", "die", "spring", "expected"),
    [(26.0, 26.0, 2.0, 30.0), (28.0, 30.0, 2.0, 32.0), (85.0, 60.0, 1.0, 86.0)],
)
def test_acute_bend_before_flattening(
    punch: float, die: float, spring: float, expected: float
) -> None:
    assert hems.pre_bend_included_deg(punch, die, spring) == expected


def test_hem_findings() -> None:
    codes = [c.code for c in hems.hem_checks(CLOSED, 7.0, 2.0, 60.0)]
    assert codes == ["hem-pre-bend-too-open", "hem-short", "hem-crack"]
    assert hems.hem_checks(open_hem(2.0), 8.0, 2.0, 45.0) == ()


@settings(max_examples=60)
@given(st.floats(5.0, 90.0), st.floats(0.5, 6.0), st.floats(1.0, 40.0))
def test_offset_height_is_what_the_folded_sheet_measures(
    angle: float, radius: float, straight: float
) -> None:
    of = part((80.0, 1.0, 80.0), (bend(180.0 - angle), bend(180.0 - angle, "down")), 2.0, "inside")
    bends = folded(of, radius)
    taken = radius * math.tan(math.radians(angle) / 2.0)
    of = replace(of, flats_mm=(80.0, straight + 2.0 * taken, 80.0))
    strip = strip_of(of, bends)
    height = pose_at(strip, 3)[1] - pose_at(strip, 0)[1]
    assert offsets.offset_height_mm(straight, angle, radius, 2.0) == pytest.approx(height)
    arcs = offsets.offset_height_mm(0.0, angle, radius, 2.0)
    assert (height - arcs) / math.sin(math.radians(angle)) == pytest.approx(straight)
    (found,) = offsets.offsets_in(of, bends)
    assert (found.bend, found.height_mm) == (1, pytest.approx(height))


def test_offset_too_low_for_the_dies() -> None:
    of = part((60.0, 9.0, 60.0), (bend(), bend(90.0, "down")))
    (check,) = offsets.offset_checks(of, folded(of), (12.0, 11.0))
    assert (check.level, check.code, check.bend) == ("stop", "offset-too-low", 2)
    assert "its web is 9 mm, the narrowest V needs 12 mm" in check.words
    assert offsets.offset_checks(of, folded(of), (9.0, 9.0)) == ()
    channel = part((60.0, 9.0, 60.0), (bend(), bend()))
    assert offsets.offset_checks(channel, folded(channel), (12.0, 12.0)) == ()


@given(st.floats(20.0, 170.0), st.floats(20.0, 500.0), st.floats(0.5, 6.0), st.floats(0.05, 3.0))
def test_bumps_share_out_angle_and_length(
    angle: float, radius: float, thickness: float, most: float
) -> None:
    taken = math.radians(angle) * (radius + thickness / 2.0)
    bumps = bump_bends.bumps_for(angle, radius, thickness, taken, most)
    assert bumps.count * bumps.angle_each_deg == pytest.approx(angle)
    assert bumps.count * bumps.pitch_mm == pytest.approx(taken)
    assert sum(bumps.offsets_mm) == pytest.approx(0.0, abs=1e-6)
    assert bumps.chord_error_mm <= most * (1 + 1e-9) or bumps.count == bump_bends.MOST_BUMPS
    if 2 < bumps.count < bump_bends.MOST_BUMPS:
        fewer = bump_bends.bumps_of(bumps.count - 1, angle, radius, thickness, taken)
        assert fewer.chord_error_mm > most


def test_chord_error_is_the_sagitta_of_a_drawn_circle() -> None:
    each = math.radians(6.0)
    a, b = (100.0, 0.0), (100.0 * math.cos(each), 100.0 * math.sin(each))
    middle = math.hypot((a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0)
    assert bump_bends.chord_error_mm(100.0, 6.0) == pytest.approx(100.0 - middle)


def test_one_hit_is_no_step() -> None:
    with pytest.raises(InputError):
        bump_bends.bumps_of(1, 90.0, 50.0, 2.0, 80.0)


@pytest.mark.parametrize("direction", ["up", "down"])
def test_stepped_radius_ends_where_the_round_bend_ends(direction: Direction) -> None:
    """Facets: same turn, same length, the end within the chord error of the true arc's."""
    of = part((150.0, 150.0), (bend(90.0, direction),))
    radius = 80.0
    taken = math.radians(90.0) * (radius + 1.0)
    round_strip = strip_of(of, [FoldedBend(radius, taken)])
    bumps = bump_bends.bumps_for(90.0, radius, 2.0, taken, 0.1)
    each = math.radians(bumps.angle_each_deg)
    small = FoldedBend(2.0, each * 3.0)
    numbers = range(1, bumps.count + 1)
    faceted = bump_bends.stepped(round_strip, 1, bumps, direction, small, numbers)
    assert len(faceted.folds) == bumps.count
    one, two = pose_at(round_strip, 2), pose_at(faceted, bumps.count + 1)
    assert two[2] == pytest.approx(one[2])
    assert math.dist(one[:2], two[:2]) < bumps.chord_error_mm
    straights, _ = trace(faceted)
    whole = sum(s.length_mm for s in straights) + sum(f.allowance_mm for f in faceted.folds)
    assert whole == pytest.approx(round_strip.length_mm)


@pytest.mark.parametrize("end", ["left", "right"])
def test_gauge_x_of_each_hit_is_measured_on_the_half_made_radius(end: str) -> None:
    of = part((150.0, 200.0), (bend(90.0),))
    taken = math.radians(90.0) * 81.0
    flat = strip_of(of, [FoldedBend(80.0, taken)], ())
    bumps = bump_bends.bumps_of(6, 90.0, 80.0, 2.0, taken)
    each = FoldedBend(2.0, math.radians(bumps.angle_each_deg) * 3.0)
    line = next(g for g in gauging.gauge_options(flat, 1, "up", PRESS, DIE) if g.end == end)
    listed = bump_bends.bump_gauge_x_mm(bumps, line.x_mm, end)  # type: ignore[arg-type]
    made: list[int] = []
    for hit, x in zip(bump_bends.bump_numbers(6, end), listed, strict=True):  # type: ignore[arg-type]
        strip = bump_bends.stepped(flat, 1, bumps, "up", each, made)
        options = gauging.gauge_options(strip, hit, "up", PRESS, DIE)
        gauge = next(g for g in options if g.end == end)
        assert gauge.x_mm == pytest.approx(x)
        assert gauge.bends_between == 0
        made.append(hit)


def test_step_findings() -> None:
    bumps = bump_bends.bumps_of(10, 90.0, 50.0, 2.0, 80.0)
    assert [c.code for c in bump_bends.step_checks(bumps, 20.0)] == [
        "step-pitch-small",
        "step-facets",
    ]
    assert [c.level for c in bump_bends.step_checks(bumps, 16.0)] == ["ok"]
    fine = bump_bends.bumps_of(45, 90.0, 500.0, 2.0, 787.0)
    assert bump_bends.step_checks(fine, 16.0) == ()


def test_distortion_limit() -> None:
    assert distortion_limit_mm(2.0, 2.5) == 7.5


@pytest.mark.parametrize(
    ("hole", "bends", "words"),
    [
        (Hole(2, 40.0, 10.0), [], ""),
        (Hole(2, 16.9, 10.0), [1], "begins 7.4 mm from the round of bend 1"),
        (Hole(2, 17.1, 10.0), [], ""),
        (Hole(2, 63.1, 10.0), [2], "begins 7.4 mm from the round of bend 2"),
        (Hole(2, 6.0, 10.0), [1], "reaches 3.5 mm into the round of bend 1"),
        (Hole(1, 24.0, 4.0), [1], "into the round of bend 1"),
        (Hole(1, 4.0, 4.0), [], ""),
        (Hole(2, 40.0, 60.0), [1, 2], "begins 5.5 mm from the round of bend 1"),
    ],
)
def test_holes_near_a_bend(hole: Hole, bends: list[int], words: str) -> None:
    """Flats 30, 80, 30 outside, t 2, r 2.5: the tangent lies 4.5 mm in, the limit is 7.5 mm."""
    of = replace(part((30.0, 80.0, 30.0), (bend(), bend())), holes=(hole,))
    found = distortion_checks(of, folded(of))
    assert [c.bend for c in found] == bends
    if found:
        assert words in found[0].words
        assert found[0].level == "caution"
