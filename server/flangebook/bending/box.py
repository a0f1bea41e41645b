"""A box or tray: a base, and on up to four of its sides a chain of flats.

Frame: the base lies with its inside up, x runs from its left to its right side, y from its
front to its back. A chain is counted outwards from the base: flat 1 is the wall. Direction
"up" folds towards the inside of the box, so a wall up and a lip up close over it, a lip down
turns outwards.

Seen along y, left chain, base and right chain are one section; seen along x, front chain, base
and back chain are another. All bends of a section are bent with what is known of sections; the
bends of the first are numbered first, then those of the second.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, get_args

from flangebook.bending.errors import InputError, NotAPartError
from flangebook.bending.part import MOST_BENDS, Bend, Dimension, Part
from flangebook.bending.section import check_part
from flangebook.bending.wishes import NO_WISHES, Wishes

SideName = Literal["left", "right", "front", "back"]
Pair = Literal["left-right", "front-back"]
ReliefShape = Literal["square", "round", "none"]
Corner = Literal["closed", "open"]
SIDES: tuple[SideName, ...] = get_args(SideName)
ENDS_OF: dict[Pair, tuple[SideName, SideName]] = {
    "left-right": ("left", "right"),
    "front-back": ("front", "back"),
}
PAIRS: tuple[Pair, Pair] = ("left-right", "front-back")
MOST_SIDE_BENDS = 6


@dataclass(frozen=True, slots=True)
class Side:
    """What stands on one side of the base, outwards. flats_mm: as many as bends; bends[0] is
    between base and flat 1."""

    flats_mm: tuple[float, ...]
    bends: tuple[Bend, ...]


@dataclass(frozen=True, slots=True)
class Box:
    """A base with sides.

    length_mm: of the base from left to right, width_mm: from front to back, outside as
    ``dimension`` says. relief, relief_mm: cut-out where two bends meet, its diameter or the side
    of its square [mm], None by rule. corner: "closed" walls meet edge to edge where both are
    square; "open" walls end where the neighbour's bend begins. gap_mm: between them [mm], None
    by rule.
    """

    title: str
    metal: str
    thickness_mm: float
    length_mm: float
    width_mm: float
    left: Side | None = None
    right: Side | None = None
    front: Side | None = None
    back: Side | None = None
    relief: ReliefShape = "round"
    relief_mm: float | None = None
    corner: Corner = "closed"
    gap_mm: float | None = None
    dimension: Dimension = "din6935"
    wishes: Wishes = NO_WISHES

    def side(self, name: SideName) -> Side | None:
        """The chain on that side, None for a plain edge."""
        return {"left": self.left, "right": self.right, "front": self.front, "back": self.back}[
            name
        ]

    def base_mm(self, pair: Pair) -> float:
        """The base's dimension along a section [mm]."""
        return self.length_mm if pair == "left-right" else self.width_mm


@dataclass(frozen=True, slots=True)
class BoxBend:
    """One bend. number: from 1 over the box. place: from 1 outwards on its side. in_section:
    its number in its pair's section."""

    number: int
    side: SideName
    place: int
    pair: Pair
    in_section: int
    bend: Bend


def section_of(box: Box, pair: Pair) -> Part | None:
    """The section through a pair of sides, None when neither is there.

    Its bends are as long as the base is across the section, outside.
    """
    first, last = (box.side(name) for name in ENDS_OF[pair])
    if first is None and last is None:
        return None
    other: Pair = "front-back" if pair == "left-right" else "left-right"
    before = first or Side((), ())
    after = last or Side((), ())
    return Part(
        title=box.title,
        metal=box.metal,
        thickness_mm=box.thickness_mm,
        bend_length_mm=box.base_mm(other),
        flats_mm=(*before.flats_mm[::-1], box.base_mm(pair), *after.flats_mm),
        bends=(*before.bends[::-1], *after.bends),
        dimension=box.dimension,
        wishes=box.wishes,
        walled=pair == "front-back" and not (box.left is None and box.right is None),
    )


def base_flat(box: Box, pair: Pair) -> int:
    """The index of the base among the flats of a section."""
    first = box.side(ENDS_OF[pair][0])
    return len(first.flats_mm) if first else 0


def bends_of(box: Box) -> tuple[BoxBend, ...]:
    """All bends by number."""
    found: list[BoxBend] = []
    for pair in PAIRS:
        for i, (side, place, bend) in enumerate(_along(box, pair), 1):
            found.append(BoxBend(len(found) + 1, side, place, pair, i, bend))
    return tuple(found)


def _along(box: Box, pair: Pair) -> Iterator[tuple[SideName, int, Bend]]:
    """The bends of a section from its left end: side, place on it, bend."""
    first, last = ENDS_OF[pair]
    one, two = box.side(first), box.side(last)
    for i, bend in reversed(list(enumerate(one.bends if one else ()))):
        yield first, i + 1, bend
    for i, bend in enumerate(two.bends if two else ()):
        yield last, i + 1, bend


def flat_name(box: Box, pair: Pair, flat: int) -> str:
    """What flat ``flat`` (from 1) of a section is called: "the base", "left flat 1"."""
    base = base_flat(box, pair)
    if flat - 1 == base:
        return "the base"
    first, last = ENDS_OF[pair]
    if flat - 1 < base:
        return f"{first} flat {base - flat + 1}"
    return f"{last} flat {flat - 1 - base}"


def check_box(box: Box) -> None:
    """Refuse what is not a box, before any tool is known.

    Raises:
        InputError, NotAPartError: ``where`` names the field, lists counted from 0.
    """
    _check_counts(box)
    for pair in PAIRS:
        section = section_of(box, pair)
        if section is not None:
            _check_section(box, pair, section)


def _check_counts(box: Box) -> None:
    if not any(box.side(name) for name in SIDES):
        raise NotAPartError("The box has no side.", "box.sides", "Give at least one side.")
    total = 0
    for name in SIDES:
        side = box.side(name)
        if side is None:
            continue
        where = f"box.sides.{name}"
        if len(side.flats_mm) != len(side.bends) or not side.flats_mm:
            raise NotAPartError(
                f"{len(side.flats_mm)} flats do not go with {len(side.bends)} bends.",
                f"{where}.flats_mm",
                "Give as many flats as bends, from the base outwards.",
            )
        if len(side.bends) > MOST_SIDE_BENDS:
            raise InputError(
                f"{len(side.bends)} bends on one side are too many.",
                f"{where}.bends",
                f"At most {MOST_SIDE_BENDS}.",
            )
        total += len(side.bends)
    if total > MOST_BENDS:
        raise InputError(f"{total} bends are too many.", "box.sides", f"At most {MOST_BENDS}.")
    for field, value in (("relief_mm", box.relief_mm), ("gap_mm", box.gap_mm)):
        if value is not None and not 0.0 <= value < min(box.length_mm, box.width_mm):
            raise InputError(
                f"{value:g} mm does not fit the base.",
                f"box.{field}",
                "Give less, or leave it out.",
            )


def _check_section(box: Box, pair: Pair, section: Part) -> None:
    try:
        check_part(section)
    except (InputError, NotAPartError) as error:
        error.where = place_of(box, pair, error.where)
        error.what = renamed(box, pair, error.what)
        raise


def place_of(box: Box, pair: Pair, where: str) -> str:
    """Where a field of a section is in the box: "flats_mm.0" is "box.sides.left.flats_mm.1"."""
    name, _, rest = where.partition(".")
    number, _, field = rest.partition(".")
    if name == "bend_length_mm":
        return "box.width_mm" if pair == "left-right" else "box.length_mm"
    if name not in ("flats_mm", "bends") or not number.isdigit():
        return f"box.{where}" if name in ("flats_mm", "bends") else where
    base, index = base_flat(box, pair), int(number)
    if name == "flats_mm" and index == base:
        return "box.length_mm" if pair == "left-right" else "box.width_mm"
    before = index < base
    side = ENDS_OF[pair][0 if before else 1]
    at = base - 1 - index if before else index - base - (1 if name == "flats_mm" else 0)
    return ".".join(one for one in (f"box.sides.{side}.{name}.{at}", field) if one)


def renamed(box: Box, pair: Pair, words: str) -> str:
    """Words about a section's flats and bends, by the names they have in the box."""
    bends = {one.in_section: one for one in bends_of(box) if one.pair == pair}
    section = section_of(box, pair)
    flats = len(section.flats_mm) if section else 0
    return _renamed(words, {n: flat_name(box, pair, n) for n in range(1, flats + 1)},
                    {n: one.number for n, one in bends.items()})  # fmt: skip


def _renamed(words: str, flats: dict[int, str], bends: dict[int, int]) -> str:
    """Names put in for "flat 2" and "bend 3", in any case, sentence starts kept."""

    def flat(found: re.Match[str]) -> str:
        name = flats.get(int(found[2]), found[0])
        return name[0].upper() + name[1:] if found[1] == "F" else name

    def bend(found: re.Match[str]) -> str:
        return f"{found[1]}end {bends.get(int(found[2]), int(found[2]))}"

    return re.sub(r"\b([Bb])end (\d+)\b", bend, re.sub(r"\b([Ff])lat (\d+)\b", flat, words))
