"""The shape of a box from how its bends come out: where every flat of every side ends.

Ends are counted from the base's corner, that is where the inside tangent lines of the two
bends cross: how far inwards, along the bend line, the flat begins; negative when it stands out
over the neighbour's bend.

Rules (common practice, no source, where nothing else is said):

- Closed corner: the walls that are bent first run out to the outer faces of the others; those
  stand between them, a gap away from their inner faces, and no further out than the middle of
  their neighbour's bend, so that tools longer than that bend touch nothing.
- Open corner: walls begin at the tangent lines.
- Flats beyond the walls of the first pair are cut back until the second clear them on their
  whole way up; flats beyond the second pair's walls are cut back until they clear what stands on
  the first.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from flangebook.bending.box.box import (
    ENDS_OF,
    PAIRS,
    Box,
    Pair,
    SideName,
    across,
    base_flat,
    flat_name,
    place_of,
    section_of,
)
from flangebook.bending.box.pieces import FoldedPiece, pieces, reach
from flangebook.bending.box.relief import corner_gap_mm, relief_hole_faa_mm
from flangebook.bending.checks import Sentence
from flangebook.bending.errors import NotAPartError
from flangebook.bending.geometry.ring import Ring, mirrored, moved
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.part.part import Part
from flangebook.bending.part.section import FoldedBend, straight_lengths_mm, strip_of

SHARES = 24
SAME_MM = 0.01

Corner = tuple[SideName, SideName]
"""Two neighbouring sides."""
CORNERS: tuple[Corner, ...] = (
    ("left", "front"), ("right", "front"), ("right", "back"), ("left", "back"),
)  # fmt: skip
"""A side of left and right with one of front and back."""


@dataclass(frozen=True, slots=True)
class Section:
    """A pair of sides as folded. base: index of the base among the flats. order: numbers of the
    bends in the order they are made. over_deg: how much further than finished each is bent
    under load, by bend."""

    part: Part
    folded: tuple[FoldedBend, ...]
    strip: Strip
    base: int
    order: tuple[int, ...]
    over_deg: tuple[float, ...]

    @property
    def base_from_mm(self) -> float:
        """Where the base's straight begins on the strip [mm]."""
        return base_from_mm(self.strip, self.base)


@dataclass(frozen=True, slots=True)
class End:
    """Where a side's flats and arcs begin at one corner [mm]. wanted_mm: where its flats would
    begin if nothing had to be cut back."""

    flats_mm: tuple[float, ...]
    arcs_mm: tuple[float, ...]
    wanted_mm: float


@dataclass(frozen=True, slots=True)
class BoxShape:
    """A box with the ends of all its flats.

    base_mm: straight of the base by pair [mm]. sections: by pair, those that are there.
    ends: by side and the neighbour at that end. relief_mm: diameter or side of the cut-out,
    0 for none. gap_mm: of closed corners. meetings: what still runs into one another.
    """

    box: Box
    base_mm: Mapping[Pair, float]
    sections: Mapping[Pair, Section]
    ends: Mapping[tuple[SideName, SideName], End]
    relief_mm: float
    gap_mm: float
    meetings: tuple[Sentence, ...]

    def along_mm(self, side: SideName, flat: int, *, arc: bool = False) -> tuple[float, float]:
        """From where to where a flat (from 1), or the arc before it, runs along its bend line,
        from the base's left or front tangent line [mm]."""
        low, high = ENDS_OF[other_pair(side)]
        first, last = (self.ends[side, name] for name in (low, high))
        one = (first.arcs_mm if arc else first.flats_mm)[flat - 1]
        two = (last.arcs_mm if arc else last.flats_mm)[flat - 1]
        return one, self.base_mm[other_pair(side)] - two


def pair_of(side: SideName) -> Pair:
    """The pair a side belongs to."""
    return "left-right" if side in ENDS_OF["left-right"] else "front-back"


def other_pair(side: SideName) -> Pair:
    """The pair of a side's neighbours."""
    return across(pair_of(side))


def base_from_mm(strip: Strip, base: int) -> float:
    """Where the straight of flat ``base`` (index) begins on a strip [mm].

    Source: definition.

    >>> from flangebook.bending.samples import Z_STRIP
    >>> base_from_mm(Z_STRIP, 1)  # the bend line at 18, half an allowance of 4 behind it
    20.0
    """
    if base == 0:
        return 0.0
    fold = strip.folds[base - 1]
    return fold.at_mm + fold.allowance_mm / 2.0


def section_as_folded(
    box: Box,
    pair: Pair,
    folded: Sequence[FoldedBend],
    order: Sequence[int] = (),
    over_deg: Sequence[float] = (),
) -> Section | None:
    """A pair's section with its bends as they come out; None when neither side is there.

    order: bend numbers of the section; without one from the ends inwards, left side first.
    over_deg: over-bend of each; none without.
    """
    part = section_of(box, pair)
    if part is None:
        return None
    base = base_flat(box, pair)
    count = len(part.bends)
    sequence = tuple(order) or (*range(1, base + 1), *range(count, base, -1))
    over = tuple(over_deg) or (0.0,) * count
    return Section(part, tuple(folded), strip_of(part, folded), base, sequence, over)


def box_shape(box: Box, sections: Mapping[Pair, Section]) -> BoxShape:
    """Where every flat ends.

    Raises:
        NotAPartError: nothing is left of a flat or of the base.
    """
    base = {pair: _base_mm(box, pair, sections) for pair in PAIRS}
    relief = _relief_mm(box, sections)
    gap = box.gap_mm if box.gap_mm is not None else corner_gap_mm(box.thickness_mm)
    ends: dict[tuple[SideName, SideName], End] = {}
    meetings: list[Sentence] = []
    for corner_of in CORNERS:
        one, two = corner_of if box.first_pair == "left-right" else corner_of[::-1]
        corner = _Corner.of(box, sections, base, (one, two), relief, gap)
        first, second, met = corner.ends()
        ends[one, two], ends[two, one] = first, second
        meetings += met
    shape = BoxShape(box, base, sections, ends, relief, gap, tuple(meetings))
    _check_left(shape)
    return shape


def _base_mm(box: Box, pair: Pair, sections: Mapping[Pair, Section]) -> float:
    section = sections.get(pair)
    if section is None:
        return box.base_mm(pair)
    return straight_lengths_mm(section.part, section.folded)[section.base]


def _relief_mm(box: Box, sections: Mapping[Pair, Section]) -> float:
    if box.relief == "none":
        return 0.0
    if box.relief_mm is not None:
        return box.relief_mm
    return round(relief_hole_faa_mm(wall_radius_mm(sections), box.thickness_mm), 3)


def wall_radius_mm(sections: Mapping[Pair, Section]) -> float:
    """The largest inside radius of the bends at the base [mm].

    Source: definition.

    >>> from flangebook.bending.samples import tray_shape
    >>> wall_radius_mm(tray_shape().sections)
    2.0
    """
    return max(
        section.folded[i].inside_radius_mm
        for section in sections.values()
        for i in (section.base - 1, section.base)
        if 0 <= i < len(section.folded)
    )


@dataclass(frozen=True, slots=True)
class _Corner:
    """Two neighbouring sides seen from the corner between them, the one that is bent first named
    first: pieces with their first coordinate inwards from the tangent line."""

    box: Box
    names: Corner
    first: Section | None
    second: Section | None
    base_mm: Mapping[Pair, float]
    cut_mm: float
    gap_mm: float

    @classmethod
    def of(
        cls,
        box: Box,
        sections: Mapping[Pair, Section],
        base_mm: Mapping[Pair, float],
        names: Corner,
        relief_mm: float,
        gap_mm: float,
    ) -> _Corner:
        there = [
            sections.get(pair_of(name)) if box.side(name) is not None else None for name in names
        ]
        both = all(one is not None for one in there)
        cut = relief_mm / 2.0 if both else 0.0
        return cls(box, names, there[0], there[1], base_mm, cut, gap_mm)

    def ends(self) -> tuple[End, End, list[Sentence]]:
        """Ends of the first side's and of the second side's flats, and what still meets."""
        counts = [len(side.flats_mm) if (side := self.box.side(n)) else 0 for n in self.names]
        wanted = self._wanted()
        one, two = ([w] * n for w, n in zip(wanted, counts, strict=True))
        met: list[Sentence] = []
        if self.first is not None and self.second is not None:
            fixed = self._standing(self.first, self.names[0])
            swept = self._swept(self.second, self.names[1])
            self._cut_walls(one, two, fixed, swept)
            self._cut_first(one, two, fixed, swept)
            self._cut_second(one, two, fixed, swept)
            met = self._meetings(one, two, fixed, swept)
        return (
            End(tuple(one), self._arcs(one), wanted[0]),
            End(tuple(two), self._arcs(two), wanted[1]),
            met,
        )

    def _arcs(self, starts: Sequence[float]) -> tuple[float, ...]:
        """An arc runs where both flats beside it do; the first no nearer than the relief."""
        cut = self.cut_mm if self.box.relief == "square" else 0.0
        before = [cut, *starts[:-1]]
        return tuple(max(one, two) for one, two in zip(starts, before, strict=False))

    def _start(self, starts: Sequence[float], piece: FoldedPiece) -> float:
        """Where one piece of a side begins."""
        return (self._arcs(starts) if piece.arc else starts)[piece.flat - 1]

    def _wanted(self) -> tuple[float, float]:
        if self.first is None or self.second is None or not self._closed():
            return 0.0, 0.0
        first, second = (self._wall(i) for i in (0, 1))
        outer = second.inside_radius_mm + self.box.thickness_mm
        inner = first.inside_radius_mm - self.gap_mm
        return -outer, -min(inner, first.allowance_mm / 2.0)

    def _closed(self) -> bool:
        if self.box.corner == "open":
            return False
        walls = [side.bends[0] for n in self.names if (side := self.box.side(n))]
        return (
            all(b.kind == "bend" and b.included_angle_deg == 90.0 for b in walls)
            and len({b.direction for b in walls}) == 1
        )

    def _wall(self, which: int) -> FoldedBend:
        """How the bend between base and wall comes out."""
        section = (self.first, self.second)[which]
        assert section is not None
        low = self.names[which] == ENDS_OF[pair_of(self.names[which])][0]
        return section.folded[section.base - 1 if low else section.base]

    def _standing(self, section: Section, name: SideName) -> list[FoldedPiece]:
        return self._seen(pieces(section.strip, section.base), name)

    def _seen(self, found: Sequence[FoldedPiece], name: SideName) -> list[FoldedPiece]:
        """One side's pieces, counted from 1, first coordinate inwards from the corner."""
        pair = pair_of(name)
        if name == ENDS_OF[pair][0]:
            return [FoldedPiece(-p.flat, p.arc, p.ring) for p in found if p.flat < 0]
        width = self.base_mm[pair]
        return [FoldedPiece(p.flat, p.arc, _turned(p.ring, width)) for p in found if p.flat > 0]

    def _swept(self, section: Section, name: SideName) -> list[FoldedPiece]:
        """The second side's pieces on the way through its bends, finished last."""
        made: set[int] = set()
        states: list[Strip] = []
        finished_from = section.base_from_mm
        for number in section.order:
            now = strip_of(section.part, section.folded, made)
            full = section.strip.folds[number - 1]
            if (number <= section.base) == (name == ENDS_OF[pair_of(name)][0]):
                for k in range(SHARES + 1):
                    share = k / SHARES
                    angle = full.bend_angle_deg * share
                    if k == SHARES:
                        angle += section.over_deg[number - 1] * (1 if angle > 0 else -1)
                    states.append(
                        now.with_fold(
                            number, angle, full.inside_radius_mm, full.allowance_mm * share
                        )
                    )
            made.add(number)
        states.append(section.strip)
        return [
            piece
            for s in states
            for piece in self._seen(
                pieces(s, section.base, base_from_mm(s, section.base) - finished_from), name
            )
        ]

    def _cut_walls(
        self,
        one: list[float],
        two: list[float],
        fixed: Sequence[FoldedPiece],
        swept: Sequence[FoldedPiece],
    ) -> None:
        """The second side's wall clears the first side's."""
        for piece in _walls(swept):
            for other in (p for p in fixed if p.flat == 1):
                far = reach(other.ring, self._start(one, other), piece.ring)
                if far is not None and far > two[0] + SAME_MM:
                    two[0] = far + self.gap_mm
        two[1:] = [max(two[0], w) for w in two[1:]]

    def _cut_first(
        self,
        one: list[float],
        two: list[float],
        fixed: Sequence[FoldedPiece],
        swept: Sequence[FoldedPiece],
    ) -> None:
        """What the first side carries beyond its wall clears the second side's wall."""
        for piece in _walls(swept):
            for other in (p for p in fixed if p.flat > 1):
                i = other.flat - 1
                far = reach(piece.ring, two[0], other.ring)
                if far is not None and far > one[i] + SAME_MM:
                    one[i] = far + self.gap_mm

    def _cut_second(
        self,
        one: list[float],
        two: list[float],
        fixed: Sequence[FoldedPiece],
        swept: Sequence[FoldedPiece],
    ) -> None:
        """What the second side carries beyond its wall clears all of the first side."""
        for piece in (p for p in swept if p.flat > 1):
            i = piece.flat - 1
            for other in fixed:
                far = reach(other.ring, self._start(one, other), piece.ring)
                if far is not None and far > two[i] + SAME_MM:
                    two[i] = far + self.gap_mm

    def _meetings(
        self,
        one: Sequence[float],
        two: Sequence[float],
        fixed: Sequence[FoldedPiece],
        swept: Sequence[FoldedPiece],
    ) -> list[Sentence]:
        """What still runs into one another with these ends."""
        found: dict[tuple[int, int], float] = {}
        for piece in swept:
            start = self._start(two, piece)
            for other in fixed:
                far = reach(other.ring, self._start(one, other), piece.ring)
                if far is not None and far > start + SAME_MM:
                    key = (other.flat, piece.flat)
                    found[key] = max(found.get(key, 0.0), far - start)
        return [
            Sentence(
                f"{self.names[0]} flat {a} and {self.names[1]} flat {b} run into one another at "
                "their corner by up to {deep_mm}",
                {"deep_mm": deep},
            )
            for (a, b), deep in found.items()
        ]


def _walls(found: Sequence[FoldedPiece]) -> list[FoldedPiece]:
    """The straights of the first flat above the base."""
    return [p for p in found if p.flat == 1 and not p.arc]


def _turned(ring: Ring, width_mm: float) -> Ring:
    return moved(mirrored(ring), width_mm, 0.0)


def _check_left(shape: BoxShape) -> None:
    """Refuse a shape that leaves nothing of the base or of a flat."""
    for pair, straight in shape.base_mm.items():
        if straight <= max(shape.relief_mm, SAME_MM):
            where = "box.length_mm" if pair == "left-right" else "box.width_mm"
            if straight > SAME_MM:
                raise NotAPartError(
                    "The reliefs are {relief_mm} across; they leave nothing of the {between_mm} "
                    "between the bends.",
                    "box.relief_mm" if shape.box.relief_mm is not None else where,
                    "Make them smaller, or the base larger.",
                    {"relief_mm": shape.relief_mm, "between_mm": straight},
                )
            raise NotAPartError(
                "The bends with the radii of these tools leave nothing of the base.",
                where,
                "Make the base larger.",
            )
    for pair, section in shape.sections.items():
        _check_straights(shape.box, pair, section)
    for name in (n for pair in PAIRS for n in ENDS_OF[pair]):
        side = shape.box.side(name)
        for flat in range(1, len(side.flats_mm) + 1 if side else 1):
            for arc in (False, True):
                start, end = shape.along_mm(name, flat, arc=arc)
                if end - start <= SAME_MM:
                    raise NotAPartError(
                        f"Cut back to clear the sides next to it, nothing is left of {name} flat "
                        f"{flat}.",
                        f"box.sides.{name}.flats_mm.{flat - 1}",
                        "Make the sides next to it shorter, or the base larger.",
                    )


def _check_straights(box: Box, pair: Pair, section: Section) -> None:
    """Refuse flats that the arcs of their own bends use up."""
    for i, straight in enumerate(straight_lengths_mm(section.part, section.folded)):
        if i != section.base and straight < SAME_MM:
            flat = section.part.flats_mm[i]
            name = flat_name(box, pair, i + 1)
            raise NotAPartError(
                f"{name[0].upper()}{name[1:]} is {{flat_mm}}; with the radii of these tools its "
                "bends alone take {need_mm}.",
                place_of(box, pair, f"flats_mm.{i}"),
                "Make it longer, or ask for tools with a smaller radius.",
                {"flat_mm": flat, "need_mm": flat - straight},
            )
