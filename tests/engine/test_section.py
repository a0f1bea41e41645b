"""What a part's bends take from its flats, and what is refused as no part."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from bending_parts import bend, folded, folded_parts, part
from hypothesis import assume, given, settings
from shapely import Polygon

from flangebook.bending.errors import FlangebookError, InputError, NotAPartError
from flangebook.bending.geometry import crossing
from flangebook.bending.geometry.strip import START, Strip, outline
from flangebook.bending.handbook.allowance import allowance_groover
from flangebook.bending.part import section
from flangebook.bending.part.part import Bend, Hole, Part
from flangebook.bending.part.section import FoldedBend

INCH = 25.4
CLOSED = Bend(0.0, "up", kind="closed_hem")


def test_straights_of_the_faa_channel() -> None:
    """FAA Airframe handbook, layout of a U-channel: 2024-T3 t .040, R .16, mould lines
    1.00/2.00/1.00 in: setback .200, flats .8, 1.6, .8 in (exact)."""
    of = part([INCH, 2 * INCH, INCH], [bend(), bend()], 0.040 * INCH, "mould_line")
    bends = folded(of, 0.16 * INCH)
    assert section.setbacks_mm(of, bends) == pytest.approx([0.2 * INCH] * 2)
    straights = [x / INCH for x in section.straight_lengths_mm(of, bends)]
    assert straights == pytest.approx([0.8, 1.6, 0.8])


def test_blank_of_groovers_example() -> None:
    """M. P. Groover, Fundamentals of Modern Manufacturing, Example 19.2: straight 38 and
    25 mm, t 3.2, R 4.75, included angle 120: blank 69.08 mm (rounded)."""
    taken = allowance_groover(120.0, 4.75, 3.2)
    setback = (4.75 + 3.2) * math.tan(math.radians(30.0))
    of = part([38.0 + setback, 25.0 + setback], [bend(120.0)], 3.2)
    bends = [FoldedBend(4.75, taken)]
    assert section.developed_length_mm(of, bends) == pytest.approx(69.08, abs=0.005)
    assert section.bend_lines_mm(of, bends) == pytest.approx([38.0 + 6.08 / 2], abs=0.005)


@pytest.mark.parametrize(
    ("angle", "dimension", "expected"),
    [
        (90.0, "din6935", 5.0),
        (120.0, "din6935", 5.0 * math.tan(math.radians(30.0))),
        (60.0, "din6935", 5.0),
        (60.0, "mould_line", 5.0 * math.tan(math.radians(60.0))),
        (90.0, "inside", 3.0),
        (120.0, "inside", 3.0 * math.tan(math.radians(30.0))),
    ],
)
def test_setback_by_dimension(angle: float, dimension: str, expected: float) -> None:
    got = section.setback_mm(bend(angle), 3.0, 2.0, dimension)  # type: ignore[arg-type]
    assert got == pytest.approx(expected)


@pytest.mark.parametrize("dimension", ["din6935", "mould_line", "inside"])
def test_a_hem_is_dimensioned_to_its_outermost_tangent(dimension: str) -> None:
    assert section.setback_mm(CLOSED, 0.0, 2.0, dimension) == 2.0  # type: ignore[arg-type]


def test_loaded_allowance_keeps_the_neutral_fibre() -> None:
    b, f = bend(90.0), FoldedBend(2.0, math.pi / 2 * 2.8)
    assert section.allowance_at(90.0, 2.0, b, f, 2.0) == pytest.approx(f.allowance_mm)
    assert section.allowance_at(30.0, 1.0, b, f, 2.0) == pytest.approx(math.radians(150) * 1.8)


GOOD = {
    "channel": part([30, 60, 30], [bend()] * 2),
    "acute": part([60, 60], [bend(30.0)]),
    "Z": part([60, 4.1, 60], [bend(), bend(90, "down")]),
    "tube with a gap": part([60, 60, 60, 57], [bend()] * 3),
    "closed hem": part([12, 60, 30], [CLOSED, bend()]),
    "closed hem outside": part([62, 60, 30], [CLOSED, bend(90, "down")]),
    "two hems": part([12, 60, 12], [CLOSED, replace(CLOSED, direction="down")]),
    "open hem": part([12, 60], [Bend(0.0, "up", kind="open_hem", hem_gap_mm=1.5)]),
    "forty bends": part([40] * 41, [bend(90, "up" if i % 4 < 2 else "down") for i in range(40)]),
    "holes": replace(part([30, 60], [bend()]), holes=(Hole(2, 40.0, 5.0),), order=(1,)),
    "half round": part([60, 24, 60], [replace(bend(), inside_radius_mm=10.0)] * 2),
}


@pytest.mark.parametrize("of", GOOD.values(), ids=GOOD)
def test_parts_are_accepted(of: Part) -> None:
    section.check_part(of)


NAN = float("nan")
BAD: dict[str, tuple[Part, type[FlangebookError], str, str]] = {
    "no thickness": (part([30, 60], [bend()], 0.0), InputError, "thickness_mm", "0.0 cannot"),
    "negative": (part([30, 60], [bend()], -1.0), InputError, "thickness_mm", "-1.0 cannot"),
    "huge": (part([30, 60], [bend()], 1e9), InputError, "thickness_mm", "too large"),
    "nan": (part([30, NAN], [bend()]), InputError, "flats_mm.1", "nan"),
    "inf": (part([30, math.inf], [bend()]), InputError, "flats_mm.1", "inf"),
    "length": (replace(GOOD["channel"], bend_length_mm=0.0), InputError, "bend_length_mm", "0"),
    "no bends": (part([30], []), NotAPartError, "bends", "no bend"),
    "41 bends": (part([30] * 42, [bend()] * 41), InputError, "bends", "41"),
    "counts": (part([30, 60], [bend()] * 2), NotAPartError, "flats_mm", "2 flats"),
    "180": (part([30, 60], [bend(180)]), InputError, "bends.0.included_angle_deg", "180"),
    "0": (part([30, 60], [bend(0)]), InputError, "bends.0.included_angle_deg", "0"),
    "radius": (
        part([30, 60], [replace(bend(), inside_radius_mm=-1.0)]),
        InputError,
        "bends.0.inside_radius_mm",
        "-1",
    ),
    "hem in the middle": (
        part([30, 30, 30, 30], [bend(), CLOSED, bend()]),
        NotAPartError,
        "bends.1.kind",
        "end",
    ),
    "hem with an angle": (
        part([30, 60], [replace(CLOSED, included_angle_deg=30.0)]),
        InputError,
        "bends.0.included_angle_deg",
        "right back",
    ),
    "hem with a radius": (
        part([30, 60], [replace(CLOSED, inside_radius_mm=1.0)]),
        InputError,
        "bends.0.inside_radius_mm",
        "gap",
    ),
    "open hem without a gap": (
        part([30, 60], [replace(CLOSED, kind="open_hem")]),
        InputError,
        "bends.0.hem_gap_mm",
        "0.0 cannot be used",
    ),
    "closed hem with a gap": (
        part([30, 60], [replace(CLOSED, hem_gap_mm=1.0)]),
        InputError,
        "bends.0.hem_gap_mm",
        "no gap",
    ),
    "hole off its flat": (
        replace(GOOD["channel"], holes=(Hole(1, 31.0, 5.0),)),
        InputError,
        "holes.0.position_mm",
        "beside",
    ),
    "hole on no flat": (
        replace(GOOD["channel"], holes=(Hole(4, 3.0, 5.0),)),
        InputError,
        "holes.0.flat",
        "no flat 4",
    ),
    "order": (replace(GOOD["channel"], order=(1, 1)), InputError, "order", "every bend"),
    "flange of one thickness": (
        part([2, 60], [bend()]),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 is 2 mm",
    ),
    "web too short": (part([60, 3, 60], [bend()] * 2), NotAPartError, "flats_mm.1", "Flat 2"),
    "radius too round": (
        part([30, 60], [replace(bend(), inside_radius_mm=50.0)]),
        NotAPartError,
        "flats_mm.0",
        "alone take 52",
    ),
    "closed box": (
        part([30, 60, 30, 60, 30], [bend()] * 4),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 runs into flat 5",
    ),
    "flanges face to face": (
        part([60, 4, 60], [bend()] * 2),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 touches flat 3",
    ),
    "triangle": (
        part([60, 60, 60], [bend(60)] * 2),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 runs into flat 3",
    ),
    "hem into the next flange": (
        part([62, 60, 30], [CLOSED, bend()]),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 runs into flat 3",
    ),
    "seam that touches": (
        part([60, 60, 60, 58], [bend()] * 3),
        NotAPartError,
        "flats_mm.0",
        "Flat 1 touches flat 4",
    ),
}


@pytest.mark.parametrize(("of", "kind", "where", "words"), BAD.values(), ids=BAD)
def test_what_is_no_part_is_refused_with_words(
    of: Part, kind: type[FlangebookError], where: str, words: str
) -> None:
    with pytest.raises(kind) as caught:
        section.check_part(of)
    assert caught.value.where == where
    assert words in caught.value.what
    assert caught.value.right.endswith(".")


def thicker(strip: Strip, by_mm: float) -> Strip:
    """The same mid-line, thicker or thinner."""
    folds = tuple(
        replace(f, inside_radius_mm=f.inside_radius_mm - by_mm / 2.0) for f in strip.folds
    )
    return Strip(strip.thickness_mm + by_mm, strip.length_mm, folds)


def simple(strip: Strip) -> bool:
    return bool(Polygon(outline(strip, START, 1e-3)).is_valid)


@settings(max_examples=150, deadline=None)
@given(folded_parts(most_bends=6, least_radius_mm=0.3))
def test_meeting_is_found_exactly_when_the_outline_crosses(
    made: tuple[Part, list[FoldedBend]],
) -> None:
    """Shapely decides whether the outline crosses; a fiftieth of a mm either way is left open."""
    strip = section.strip_of(*made)
    if crossing.meeting(strip) is None:
        assert simple(thicker(strip, -0.04))
    else:
        assert not simple(thicker(strip, 0.04))


@settings(max_examples=60, deadline=None)
@given(folded_parts(most_bends=6, least_radius_mm=0.3))
def test_meeting_does_not_depend_on_the_end_it_is_drawn_from(
    made: tuple[Part, list[FoldedBend]],
) -> None:
    strip = section.strip_of(*made)
    found = crossing.meeting(strip) is None
    assume(found == (crossing.meeting(thicker(strip, 0.02)) is None))
    assert (crossing.meeting(strip.reversed()) is None) == found
    assert (crossing.meeting(strip.flipped()) is None) == found


def test_flat_too_short_for_the_tools_radius_is_a_finding() -> None:
    of = part([30, 8, 30], [bend(), bend(90, "down")])
    section.check_part(of)
    (check,) = section.section_checks(of, folded(of, 3.0))
    assert (check.level, check.code) == ("stop", "flat-too-short")
    assert check.words == "Flat 2 is 8 mm; its bends' arcs alone take 10 mm."
    assert section.section_checks(of, folded(of, 1.0)) == ()


def test_meeting_by_the_tools_radius_is_a_finding() -> None:
    """Acute flats dimensioned to the tangent come together when the radius grows."""
    of = part([49, 56, 51, 50], [bend(75.0), bend(), bend()])
    section.check_part(of)
    (check,) = section.section_checks(of, folded(of, 5.0))
    assert (check.level, check.code) == ("stop", "section-meets-itself")
    assert check.words == "Flat 1 runs into flat 4 with the radii these tools give."
    assert not simple(section.strip_of(of, folded(of, 5.0)))
